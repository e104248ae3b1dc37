// Does it precipitate on mixing, and how much stays? The answer is that of the whole balance of the aqueous layer; beside it
// stands the calculation by hand: ion products against solubility products at 25 °C, ideal unless an ionic strength is given.

import type { VolumeLike } from "../../amount";
import type { Formula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { lazily } from "../../foundation/lazy";
import { once } from "../../foundation/memo";
import {
  applyFunction,
  type ConcentrationText,
  type NumberLike,
  type Quantity,
  type QuantityLike,
  quantity,
  sum,
} from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard } from "../argument";
import { positive } from "../curves/figure";
import { SolubilityError } from "../error";
import { type HeldProduct, productAtPH } from "./held-ph";
import { inMixture, type MixedIon } from "./in-mixture";
import {
  activityExponent,
  ION,
  type IonConcentration,
  type Remaining,
  residueAt,
  sameIon,
  solveResidue,
} from "./ion-balance";
import { type DissolvedIon, freshForm, type SolubilityProduct, solubilityProduct } from "./product";
import { mixedWarnings } from "./side-reactions";

const MIXED = { volume: true, ions: [ION] } as const satisfies Fields<MixedSolution>;

const PRECIPITATION = {
  solid: true,
  form: true,
  solutions: [MIXED],
  pH: true,
  ionicStrength: true,
} as const satisfies Fields<PrecipitationRequest>;

/** A solution that is poured in: its ions and its volume. */
export interface MixedSolution {
  readonly volume: VolumeLike;
  readonly ions: readonly IonConcentration[];
}

/** What `willPrecipitate` needs to know. */
export interface PrecipitationRequest {
  readonly solid: string | Formula;
  readonly form?: string;
  /** Solutions mixed; volumes are taken as additive. */
  readonly solutions: readonly MixedSolution[];
  /**
   * pH the mixture is held at, 0 to 14: hydroxide then counts from it, is not used up, and need not be among the ions; the
   * concentrations of the ions are those of all their forms, protonated and as hydroxide complex.
   */
  readonly pH?: NumberLike;
  /** For the Davies equation, up to 0.5 mol/L. */
  readonly ionicStrength?: QuantityLike<"concentration", ConcentrationText>;
}

/** What becomes of a mixture. */
export interface MixtureOutcome {
  readonly precipitates: boolean;
  /** Ion product over solubility product: above 1 it may fall, above about 1e4 it falls to 99 %. */
  readonly saturation: Quantity;
  /** Solid that precipitates, per volume of the mixture; 0 mol/L when none. */
  readonly fallsOut: Quantity<"concentration">;
  /** Each ion before and after, and the share left in the liquor. */
  readonly ions: readonly {
    readonly formula: string;
    readonly before: Quantity<"concentration">;
    readonly after: Quantity<"concentration">;
    readonly shareLeft: Quantity;
  }[];
  readonly warnings: readonly string[];
}

/** Verdict on a mixture. */
export interface PrecipitationVerdict extends MixtureOutcome {
  /**
   * What the figures are: `"equilibrium"` with protons, hydroxide, complexes and activities counted, each ion after in all its
   * forms (hydroxide is given by the pH, not here); `"hand calculation"` where the mixture is too strong for the activity
   * model, or holds ions of which nothing is known.
   */
  readonly basis: "equilibrium" | "hand calculation";
  readonly volume: Quantity<"volume">;
  readonly product: SolubilityProduct;
  /** As a textbook calculates: concentrations in the ion product, no side reactions but those of a pH that is given. */
  readonly byHand: MixtureOutcome;
}

/** Concentration of each ion of the solid after mixing. */
function mixed(ions: readonly DissolvedIon[], solutions: readonly MixedSolution[]) {
  if (solutions.length === 0) throw new SolubilityError("solubility.missing-option", "no solution named");
  const volumes = solutions.map(({ volume }, i) =>
    positive(expectDimension(volume, "volume", "volume"), "volume").named({
      symbol: `V${i + 1}`,
      label: `volume of solution ${i + 1}`,
    }),
  );
  const total = sum(volumes, {
    symbol: "V",
    label: "volume after mixing",
    rule: "sum of the volumes",
    assumption: "volumes add up on mixing",
  });
  const before = ions.map(({ formula }) => {
    const amounts = solutions.flatMap((solution, i) => {
      const found = solution.ions.find(({ ion }) => sameIon(ion, formula));
      if (found === undefined) return [];
      const c = positive(expectDimension(found.concentration, "concentration", "concentration"), "concentration");
      return [c.times(volumes[i]!)];
    });
    if (amounts.length === 0) {
      throw new SolubilityError("solubility.missing-option", `no ${formula} in any of the solutions`, {
        ...(sameIon(formula, "OH-") && { hint: "give the pH the mixture is held at" }),
        details: { ion: formula },
      });
    }
    return sum(amounts)
      .dividedBy(total)
      .to("mol/L")
      .named({
        symbol: `c(${formula})`,
        label: `${formula} after mixing`,
        rule: "concentration = sum of amounts / total volume",
      });
  });
  return { total, before };
}

/**
 * Does a sparingly soluble salt precipitate when solutions are mixed, and how much of each ion stays in solution?
 *
 * @param request - the solid, the solutions with their ions and volumes, ionic strength if wanted
 * @returns ion product over solubility product, what precipitates, and what is left of each ion, at equilibrium with protons,
 *   hydroxide, complexes and activities counted; `byHand` has the figures of a textbook calculation
 * @throws {SolubilityError} `solubility.bad-option`, `solubility.no-data`, `solubility.missing-option` when an ion is
 *   in none of the solutions, `solubility.not-positive`, `solubility.ionic-strength`
 * @source the equilibrium of the aqueous layer; by hand, the definition of the solubility product
 * @category Precipitation
 * @example
 * willPrecipitate({ solid: "BaSO4", solutions: [
 *   { volume: "10 mL", ions: [{ ion: "Ba^2+", concentration: "0.1 mol/L" }] },
 *   { volume: "10 mL", ions: [{ ion: "SO4^2-", concentration: "0.1 mol/L" }] },
 * ] }).precipitates // => true
 * const gypsum = willPrecipitate({ solid: "CaSO4·2H2O", solutions: [
 *   { volume: "50 mL", ions: [{ ion: "Ca^2+", concentration: "0.02 mol/L" }] },
 *   { volume: "50 mL", ions: [{ ion: "SO4^2-", concentration: "0.02 mol/L" }] },
 * ] });
 * gypsum.precipitates // => false
 * gypsum.byHand.precipitates // => true
 */
export function willPrecipitate(request: PrecipitationRequest): PrecipitationVerdict {
  guard.fields(request, PRECIPITATION, "request");
  guard.list(request.solutions, "solutions");
  for (const [i, solution] of request.solutions.entries()) guard.list(solution.ions, `solutions[${i}].ions`);
  const whole = solubilityProduct(request.solid, request.form);
  const product = request.pH === undefined ? { ...whole, prevailing: [] } : productAtPH(whole, request.pH);
  const { ions } = product;
  const { total, before } = mixed(ions, request.solutions);
  const ionicStrength =
    request.ionicStrength === undefined
      ? undefined
      : expectDimension(request.ionicStrength, "concentration", "ionicStrength").in("mol/L").toNumber();
  const exponent = activityExponent(ions, ionicStrength);
  const byHand = once(() => calculatedByHand(request, product, { before, exponent, total }));
  const outcome = once(() => atEquilibrium(request, whole, ions, before, total, byHand()));
  const figures = (): MixtureOutcome => outcome() ?? byHand();
  return lazily<PrecipitationVerdict>({
    basis: () => (outcome() === undefined ? "hand calculation" : "equilibrium"),
    precipitates: () => figures().precipitates,
    saturation: () => figures().saturation,
    volume: () => total,
    fallsOut: () => figures().fallsOut,
    ions: () => figures().ions,
    product: () => whole,
    byHand,
    warnings: () => [
      ...(outcome() === undefined
        ? ["too strong for the activity model, or not all of it known: calculated by hand only"]
        : []),
      ...figures().warnings,
    ],
  });
}

/** Ion product and solubility product alone. */
function calculatedByHand(
  request: PrecipitationRequest,
  product: HeldProduct,
  {
    before,
    exponent,
    total,
  }: {
    readonly before: readonly Quantity<"concentration">[];
    readonly exponent: number;
    readonly total: Quantity;
  },
): MixtureOutcome {
  const saturation = saturationOf(product, before, exponent);
  const precipitates = saturation.compare("1") > 0;
  const { after, fallsOut } = precipitates
    ? fallen(product, before, exponent)
    : { after: before, fallsOut: quantity("0 mol/L") };
  return {
    precipitates,
    saturation,
    fallsOut,
    ions: product.ions.map(({ formula }, i) => ({
      formula,
      before: before[i]!,
      after: after[i]!.named({ label: `${formula} left in the liquor` }),
      shareLeft: after[i]!.dividedBy(before[i]!).to("%"),
    })),
    warnings: [
      ...product.warnings,
      ...agedOnly(request, product, saturation),
      ...atThisPH(product),
      ...besides(request, product, { before, after, saturation, total }),
    ],
  };
}

/** Every ion of the solutions with its amount in the mixture. */
function amountsIn(solutions: readonly MixedSolution[]): MixedIon[] {
  const list: MixedIon[] = [];
  for (const { volume, ions } of solutions) {
    const v = expectDimension(volume, "volume", "volume");
    for (const { ion, concentration } of ions) {
      const amount = expectDimension(concentration, "concentration", "concentration").times(v).to("mol");
      list.push({ formula: ion, amount });
    }
  }
  return list;
}

/** The outcome of the whole balance; undefined where it ends. */
function atEquilibrium(
  request: PrecipitationRequest,
  product: SolubilityProduct,
  ions: readonly DissolvedIon[],
  before: readonly Quantity<"concentration">[],
  total: Quantity<"volume">,
  byHand: MixtureOutcome,
): MixtureOutcome | undefined {
  const found = inMixture(product, amountsIn(request.solutions), total, request.pH);
  if (found === undefined) return undefined;
  const { saturation, stands, warnings } = found;
  const precipitates = stands !== undefined;
  const fallsOut = (stands?.dividedBy(total).to("mol/L") ?? quantity("0 mol/L")).named({
    symbol: "precipitates",
    label: `${product.solid} that precipitates, per volume of the mixture`,
  }) as Quantity<"concentration">;
  return {
    precipitates,
    saturation,
    fallsOut,
    ions: ions.flatMap(({ formula }, i) => {
      const after = precipitates ? found.left(formula) : before[i]!;
      if (after === undefined) return [];
      const left = after.named({
        label: `${formula} left in the liquor, in all its forms`,
      }) as Quantity<"concentration">;
      return [{ formula, before: before[i]!, after: left, shareLeft: left.dividedBy(before[i]!).to("%") }];
    }),
    warnings: [
      ...product.warnings,
      ...warnings,
      ...agedOnly(request, product, saturation),
      ...(byHand.precipitates === precipitates
        ? []
        : [
            `a calculation by hand, without side reactions and activities, says that it ${byHand.precipitates ? "precipitates" : "stays clear"}`,
          ]),
    ],
  };
}

/** At the pH, what most of an ion is. */
const atThisPH = ({ prevailing }: HeldProduct): string[] =>
  prevailing.length === 0 ? [] : [`at this pH counted in: ${prevailing.join(", ")}`];

/** What ion products leave out and would change the answer. */
function besides(
  { solutions, pH, ionicStrength }: PrecipitationRequest,
  { ions }: HeldProduct,
  found: {
    readonly before: readonly Quantity[];
    readonly after: readonly Quantity[];
    readonly saturation: Quantity;
    readonly total: Quantity;
  },
): string[] {
  const inAll = found.total.in("L").toNumber();
  const named = solutions.flatMap((solution) => {
    const share = expectDimension(solution.volume, "volume", "volume").in("L").toNumber() / inAll;
    return solution.ions.map(({ ion, concentration }) => ({
      formula: ion,
      molar: share * expectDimension(concentration, "concentration", "concentration").in("mol/L").toNumber(),
    }));
  });
  return mixedWarnings({
    ions,
    before: found.before.map((c) => c.value.toNumber()),
    after: found.after.map((c) => c.in("mol/L").toNumber()),
    saturation: found.saturation.value.toNumber(),
    named,
    held: pH !== undefined,
    withActivity: ionicStrength !== undefined,
  });
}

/** A mixture over-saturated only with the aged form may stay clear for long: the fresh one, which precipitates first, cannot. */
function agedOnly(request: PrecipitationRequest, product: SolubilityProduct, saturation: Quantity): string[] {
  const fresh = request.form === undefined ? freshForm(request.solid)?.form : undefined;
  if (fresh === undefined || saturation.compare("1") <= 0) return [];
  const { pKsp } = solubilityProduct(request.solid, fresh);
  const times = 10 ** product.pKsp.minus(pKsp).value.toNumber();
  if (saturation.value.toNumber() > times) return [];
  return [
    `over-saturated with the form '${product.form}' only, not with '${fresh}', which precipitates first: may stay clear`,
  ];
}

/** Ion product over the constant; one computed step, because it spans many powers of ten. */
function saturationOf(product: SolubilityProduct, c: readonly Quantity[], exponent: number): Quantity {
  const counts = product.ions.map(({ count }) => count);
  const ratio = (v: readonly { toNumber(): number }[]): number =>
    Math.exp(
      counts.reduce(
        (all, n, i) => all + n * Math.log(v[i + 1]!.toNumber()),
        -Math.log(v[0]!.toNumber()) - exponent * Math.LN10,
      ),
    );
  return applyFunction(
    [product.value, ...c],
    {
      name: "Q/K",
      unit: "",
      value: (v) => ratio(v).toPrecision(12),
      partials: (v) => [
        (-ratio(v) / v[0]!.toNumber()).toPrecision(12),
        ...counts.map((n, i) => ((n * ratio(v)) / v[i + 1]!.toNumber()).toPrecision(12)),
      ],
    },
    { symbol: "Q/Ksp", label: "ion product over solubility product", rule: "product of concentrations^count / Ksp" },
  );
}

/**
 * What stays of each ion, and the formula units that precipitate per litre. What stays of the scarcest ion is solved for, since
 * it spans all powers of ten; the rest follows from it without a difference of near equals.
 */
function fallen(product: SolubilityProduct, before: readonly Quantity[], exponent: number) {
  const { ions } = product;
  const units = before.map((c, i) => c.dividedBy(String(ions[i]!.count)));
  const scarce = units.reduce((least, each, i) => (each.compare(units[least]!) < 0 ? i : least), 0);
  const over = units.map((each, i) => each.minus(units[scarce]!).times(String(ions[i]!.count)));
  const others = over.filter((_, i) => i !== scarce);
  const perScarce = ions.map(({ count }) => count / ions[scarce]!.count);
  const remaining = (v: readonly { toNumber(): number }[]): Remaining[] => {
    let next = 1;
    return ions.map(({ count }, i) => ({
      count,
      over: i === scarce ? 0 : Math.max(0, v[next++]!.toNumber()),
      perScarce: perScarce[i]!,
    }));
  };
  const start = Math.log(before[scarce]!.value.toNumber());
  const solve = (v: readonly { toNumber(): number }[]): number =>
    solveResidue(remaining(v), Math.log(v[0]!.toNumber()) + exponent * Math.LN10, start);
  const residue = applyFunction(
    [product.value, ...others],
    {
      name: "solve for what stays",
      unit: "mol/L",
      value: (v) => Math.exp(solve(v)).toPrecision(15),
      partials: (v) => {
        const ln = solve(v);
        const here = remaining(v);
        const { slope } = residueAt(here, ln);
        const left = Math.exp(ln);
        return [
          left / (slope * v[0]!.toNumber()),
          ...here
            .filter((_, i) => i !== scarce)
            .map(({ count, over: more, perScarce: per }) => (-left * count) / (more + per * left) / slope),
        ].map((p) => p.toPrecision(12));
      },
    },
    {
      symbol: `c(${ions[scarce]!.formula})`,
      label: `${ions[scarce]!.formula} left in the liquor`,
      rule: "product of (what is over + what stays)^count = Ksp",
    },
  );
  const after = ions.map(({ count }, i) =>
    i === scarce
      ? residue
      : over[i]!.plus(residue.times(String(count)).dividedBy(String(ions[scarce]!.count))).named({
          rule: "what is over when the scarcest ion is gone + what stays with it",
        }),
  );
  const fallsOut = before[scarce]!.minus(residue)
    .dividedBy(String(ions[scarce]!.count))
    .named({
      symbol: "x",
      label: `${product.solid} that precipitates, per litre`,
      rule: "(before − left) / count, of the scarcest ion",
    });
  return { after, fallsOut };
}
