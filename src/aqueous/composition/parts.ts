// The lists of an answer: species, solids, saturation, gas, dose, filtrate.

import { massOf } from "../../amount";
import { parseFormula } from "../../formula";
import { lazily } from "../../foundation/lazy";
import { memoised } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import type { Solved } from "../mixture/mixture";
import { HYDRON } from "../mixture/notation";
import type { Read } from "../mixture/request";
import type {
  AqueousComposition,
  DissolvedSpecies,
  EscapedGas,
  FiltrateIon,
  Saturation,
  StandingSolid,
} from "./answer";
import type { FigureMaker } from "./figures";

/** Molality below which a species is not worth a line. */
const TRACE = 1e-30;

/** An ion as the table of ions writes it, anything else as the formula layer prints it. */
export const shownFormula = /* @__PURE__ */ memoised(2000, (text: string) => {
  const formula = parseFormula(text);
  const { cations, anions } = formula.charge === 0 ? { cations: [], anions: [] } : constitutionOf(formula);
  return (cations[0] ?? anions[0])?.formula ?? formula.toString();
});

export function speciesOf({ model, solution }: Solved, maker: FigureMaker): DissolvedSpecies[] {
  const order = model.species.map((_, i) => i).filter((i) => solution.molality[i]! > TRACE);
  order.sort((a, b) => solution.molality[b]! - solution.molality[a]!);
  return order.map((i) => {
    const { formula: text, charge } = model.species[i]!;
    const formula = shownFormula(text);
    const molality = solution.molality[i]!;
    const figure = { molality: [[i, 1]] } as const;
    return lazily<DissolvedSpecies>({
      formula: () => formula,
      charge: () => charge,
      molality: () =>
        maker.make(molality, "mol/kg", figure, 1, { symbol: `b(${formula})`, label: `molality of ${formula}` }),
      amount: () => maker.amount(molality, figure, { symbol: `n(${formula})`, label: `amount of ${formula}` }),
    });
  });
}

interface Standing {
  readonly condition: number;
  readonly kind: "solid" | "gas" | "held";
  readonly solid: StandingSolid | undefined;
  readonly either: boolean;
}

export function standingOf(solved: Solved, maker: FigureMaker, open: ReadonlySet<number>): Standing[] {
  const { model, solution } = solved;
  const list: Standing[] = [];
  for (const [j, { formula, phase, kind }] of model.conditions.entries()) {
    const amount = solution.amount[j]!;
    if (kind === "held" || !(amount > 0)) continue;
    const moles = maker.amount(
      amount,
      { amount: [[j, 1]] },
      {
        symbol: `n(${formula})`,
        label: `amount of ${formula} that stands`,
      },
    );
    const either = kind === "solid" && open.has(j);
    list.push({
      condition: j,
      kind,
      either,
      solid:
        kind === "gas"
          ? undefined
          : lazily<StandingSolid>({
              formula: () => formula,
              name: () => phase?.name ?? formula,
              form: () => phase?.form,
              amount: () => moles,
              // radium has no standard atomic weight
              mass: () => massOf(moles, formula),
              either: () => either,
            }),
    });
  }
  return list.sort((a, b) => solution.amount[b.condition]! - solution.amount[a.condition]!);
}

export function saturationOf(
  solved: Solved,
  maker: FigureMaker,
  standing: readonly Standing[],
  open: ReadonlySet<number>,
): Saturation[] {
  const { model, solution } = solved;
  const stands = new Map(standing.map((one) => [one.condition, one]));
  const list: { readonly one: Saturation; readonly order: number }[] = [];
  for (const [j, { formula, phase, kind, expression }] of model.conditions.entries()) {
    if (kind === "held" && phase === undefined) continue;
    const index = solution.saturation[j]! / Math.LN10;
    if (!(index > -300)) continue;
    const here = stands.get(j);
    const u = phase?.shares[0]?.[0].standardUncertainty ?? 0;
    // a twin of less soluble form keeps it from standing; the own constant alone says how near it is
    const near = here === undefined && kind === "solid" && (open.has(j) || index > -u);
    const state = here === undefined ? (near ? "either" : "under-saturated") : here.either ? "either" : "stands";
    const one = lazily<Saturation>({
      formula: () => formula,
      form: () => phase?.form,
      index: () =>
        maker.make(
          Math.abs(index) < 1e-12 ? 0 : index,
          "",
          {
            lnActivity: [...expression.of].map(([key, count]) => [model.components.indexOf(key), count] as const),
            lnK: [[model.species.length + j, -1]],
          },
          1 / Math.LN10,
          { symbol: `log(Q/K)(${formula})`, label: `saturation of ${formula}` },
        ),
      state: () => state,
      why: () => (state === "either" ? "within the uncertainty of the constants" : undefined),
    });
    list.push({ one, order: here === undefined ? -index : -Infinity });
  }
  list.sort((a, b) => a.order - b.order);
  return [
    ...list.map(({ one }) => one),
    ...model.excluded.map(
      ({ phase, why }): Saturation => ({
        formula: phase.formula,
        form: phase.form,
        index: undefined,
        state: "excluded",
        why,
      }),
    ),
  ];
}

export function gasOf({ model, solution }: Solved, maker: FigureMaker): EscapedGas[] {
  const list: EscapedGas[] = [];
  for (const [j, { formula, phase }] of model.conditions.entries()) {
    const amount = solution.amount[j]!;
    if (phase?.kind !== "gas" || amount === 0) continue;
    list.push({
      formula,
      amount: maker.amount(amount, { amount: [[j, 1]] }, { symbol: `n(${formula}↑)`, label: `${formula} that leaves` }),
    });
  }
  return list;
}

export function doseOf({ pH }: Read, { model, solution }: Solved, maker: FigureMaker): AqueousComposition["dose"] {
  if (pH === undefined) return {};
  const taken = solution.amount[model.heldPH]!;
  const naming = { symbol: "n", label: `${taken < 0 ? "H+" : "OH-"} needed to hold the pH` };
  const sign = taken < 0 ? -1 : 1;
  const amount = maker.amount(sign * taken, { amount: [[model.heldPH, sign]] }, naming);
  return taken < 0 ? { "H+": amount } : { "OH-": amount };
}

export function filtrateOf({ network }: Read, { model, solution, totals }: Solved, maker: FigureMaker): FiltrateIon[] {
  const list: FiltrateIon[] = [];
  for (const [j, key] of model.components.entries()) {
    const weights: (readonly [number, number])[] = [];
    let sum = 0;
    for (const [i, { expression }] of model.species.entries()) {
      const count = expression.of.get(key) ?? 0;
      if (count === 0) continue;
      weights.push([i, count]);
      sum += count * solution.molality[i]!;
    }
    const isHydron = key === HYDRON;
    if (!isHydron && sum < 1e-25) continue;
    // hydrons bound less those given off: with hydroxide the sum is negative
    const sign = isHydron && sum < 0 ? -1 : 1;
    const formula = isHydron ? (sign > 0 ? "H+" : "OH-") : shownFormula(network.formulaOf(key));
    const figure = { molality: weights.map(([i, count]) => [i, sign * count] as const) };
    const total = totals[j]!;
    const naming = { symbol: `c(${formula})`, label: `${formula} in the filtrate, bound and free` };
    list.push(
      lazily<FiltrateIon>({
        formula: () => formula,
        concentration: () => maker.make(sign * sum, "mol/L", figure, 1, naming),
        amount: () => maker.amount(sign * sum, figure, { ...naming, symbol: `n(${formula})` }),
        share: () =>
          isHydron || !(total > 0)
            ? undefined
            : maker.make(
                Math.min(1, sum / total),
                "",
                // what was put in stands in the share too: all of it stays all of it, however much that was
                sum < total ? { ...figure, totals: [[j, -sum / total]] } : {},
                1 / total,
                { symbol: `share(${formula})`, label: `share of ${formula} that stays dissolved` },
              ),
      }),
    );
  }
  return list;
}
