// What is in the beaker at equilibrium.

import { massOf } from "../../amount";
import { parseFormula } from "../../formula";
import { attempt, type Result } from "../../foundation/error";
import { lazily } from "../../foundation/lazy";
import { memoised, once } from "../../foundation/memo";
import type { Quantity } from "../../quantity";
import { AqueousError } from "../error";
import type { Constant } from "../mixture/constant";
import { redoxPartners, uncovered } from "../mixture/coverage";
import { type Solved, solveMixture } from "../mixture/mixture";
import type { Model } from "../mixture/model";
import type { Network } from "../mixture/network";
import { HYDRON } from "../mixture/notation";
import { type AqueousRequest, type Read, readRequest } from "../mixture/request";
import { debyeHueckelSlope } from "../solve/davies";
import type { Proof } from "../solve/proof";
import { gradientOf } from "../solve/sensitivity";
import { activityDoubt, type FigureMaker, figureMaker } from "./figures";

/** A dissolved species. */
export interface DissolvedSpecies {
  /** With its charge, as it is in solution: a free ion, an ion pair, a complex. */
  readonly formula: string;
  /** In elementary charges; 0 for a molecule. */
  readonly charge: number;
  /** In mol for each kg of water. */
  readonly molality: Quantity<"molality">;
  /** In the whole of the solution. */
  readonly amount: Quantity<"amount of substance">;
}

/** A solid that stands. */
export interface StandingSolid {
  /** Crystal water included. */
  readonly formula: string;
  /** From the table of solids; the formula where that has none. */
  readonly name: string;
  /** Mineral name, age or polymorph. */
  readonly form: string | undefined;
  /** Formula units of the solid, in mol. */
  readonly amount: Quantity<"amount of substance">;
  /** Of the dry solid, crystal water included. */
  readonly mass: Quantity<"mass">;
  /** The constants leave open whether it stands: moved by their standard uncertainties, they would let it dissolve. */
  readonly either: boolean;
}

/** A gas that has left, or, with a negative amount, come in. */
export interface EscapedGas {
  /** Of the gas, such as `CO2`. */
  readonly formula: string;
  /** Positive for what has left, negative for what has come in. */
  readonly amount: Quantity<"amount of substance">;
}

/** How a solid or gas that was considered stands. */
export interface Saturation {
  /** Of the solid or the gas. */
  readonly formula: string;
  /** Mineral name, age or polymorph of a solid; undefined where the table names none. */
  readonly form: string | undefined;
  /** log10(Q/K): 0 where it stands; its uncertainty tells how sure that is. Undefined for excluded solids. */
  readonly index: Quantity<"number"> | undefined;
  /** `either` where the constants leave open whether it stands; `excluded` where it was not allowed to form. */
  readonly state: "stands" | "under-saturated" | "either" | "excluded";
  /** Reason of the state in words, where there is something to say. */
  readonly why: string | undefined;
}

/** An ion or molecule that passes the filter, whatever it is bound to. */
export interface FiltrateIon {
  /** With its charge; none for a molecule. */
  readonly formula: string;
  /** In all the forms it is bound in. */
  readonly concentration: Quantity<"concentration">;
  /** In the whole filtrate, in all its forms. */
  readonly amount: Quantity<"amount of substance">;
  /** Of what was put in: 1 for all. Undefined for hydrons. */
  readonly share: Quantity<"number"> | undefined;
}

/** Another answer that the doubt of the constants allows. */
export interface OtherAnswer {
  /** Formulas of the solids that stand in it, most first. */
  readonly solids: readonly string[];
  /** The constant that leads to it, and how far it is moved. */
  readonly when: string;
  /** The whole of it. */
  readonly composition: AqueousComposition;
}

/** What is in the beaker. */
export interface AqueousComposition {
  /** Minus log10 of the activity of H+ at equilibrium. */
  readonly pH: Quantity<"number">;
  /** In mol/kg: half the sum of molality times squared charge over all ions. */
  readonly ionicStrength: Quantity<"molality">;
  /** Most abundant first. */
  readonly species: readonly DissolvedSpecies[];
  /** Solids at equilibrium; empty where everything dissolves. */
  readonly solids: readonly StandingSolid[];
  /** Gases that leave or come in until equilibrium. */
  readonly gas: readonly EscapedGas[];
  /** Hydrons or hydroxide that hold the pH; empty where it is not held. */
  readonly dose: { readonly "H+"?: Quantity<"amount of substance">; readonly "OH-"?: Quantity<"amount of substance"> };
  /** What passes the filter; as `dissolved` of another request it gives the same solution again. */
  readonly filtrate: readonly FiltrateIon[];
  /**
   * Where the doubt of the constants leaves open which solids stand it is this answer or one of these, one for each other set
   * of solids. Empty where there is no doubt.
   */
  readonly either: readonly OtherAnswer[];
  /** Every solid and gas considered, nearest to saturation first. */
  readonly saturation: readonly Saturation[];
  /** Water at equilibrium: given, brought and made or taken by the reactions. */
  readonly water: Quantity<"mass">;
  /** Temperature of the answer in °C. */
  readonly celsius: number;
  /** What this answer cannot know; figures that depend on it are doubtful. */
  readonly unknown: readonly string[];
  /** What was assumed to get the answer, in words. */
  readonly assumptions: readonly string[];
  /** What to mind when using the figures, in words. */
  readonly warnings: readonly string[];
  /** The proof: relative residuals of mass, charge and ionic strength, largest over-saturation as log10(Q/K). */
  readonly balance: {
    readonly mass: number;
    readonly charge: number;
    readonly ionicStrength: number;
    readonly saturation: number;
  };
}

/** Molality below which a species is not worth a line. */
const TRACE = 1e-30;

/** A formula as the formula layer prints it. */
const shownFormula = /* @__PURE__ */ memoised(2000, (text: string) => parseFormula(text).toString());

/** What the solved mixtures of a composition were made from; for the functions of this layer. */
const origins = new WeakMap<
  AqueousComposition,
  { readonly read: Read; readonly solved: Solved; readonly maker: FigureMaker }
>();

/** @internal The solved mixture behind a composition. */
export function originOf(composition: AqueousComposition) {
  const origin = origins.get(composition);
  if (origin !== undefined) return origin;
  throw new AqueousError("aqueous.bad-option", "expected what aqueousComposition gave");
}

/** Ions of one sign too many: an answer would be of another solution. */
function refuseCharge({ brought, pH }: Read): void {
  let [sum, all] = [0, 0];
  for (const { charge, ingredient } of brought) {
    const part = charge * ingredient.amount.toNumber("mol");
    sum += part;
    all += Math.abs(part);
  }
  if (pH !== undefined || Math.abs(sum) <= 1e-9 * all) return;
  throw new AqueousError(
    "aqueous.charged",
    `the ions given do not cancel: ${Math.abs(sum).toPrecision(3)} mol of ${sum > 0 ? "negative" : "positive"} charge is missing`,
    { hint: "name the ion that goes with them, give salts, or hold the pH", details: { charge: sum } },
  );
}

/**
 * What is in the beaker: pH, ions and complexes, solids that stand, gas that leaves, at equilibrium.
 *
 * Water of crystallization and of the reactions is counted. The answer is the end state; how long it takes, supersaturation,
 * co-precipitation and colloids are not computed, and oxidation states stay as put in.
 *
 * @param request - water (mass, or volume of the solution), what is dissolved or stirred in; what carbon dioxide may do;
 *   which solids may form; a pH to hold; own constants; activity model; temperature of 5 to 60 °C
 * @returns figures with uncertainty and working; `unknown` names what is missing, `balance` proves the answer
 * @throws {AqueousError} `aqueous.too-strong` above an ionic strength of 3 mol/kg, `aqueous.not-converged`,
 *   `aqueous.over-determined`, `aqueous.charged`, `aqueous.not-an-ion-maker`, `aqueous.missing-option`,
 *   `aqueous.bad-option`, `aqueous.unknown-option`, `aqueous.outside-range`, `aqueous.not-positive`
 * @source constants of the tables, each with its own; activity coefficients by Davies (1962), held beyond 0.5 mol/kg
 * @category In the beaker
 * @example
 * const liquor = aqueousComposition({
 *   water: "0.60 kg",
 *   dissolved: [{ formula: "ZnSO4·7H2O", mass: "28.7 g" }, { formula: "Na2CO3", amount: "0.105 mol" }],
 * });
 * liquor.pH.format({ decimals: 1, uncertainty: "none" }) // => "6.9"
 * liquor.solids.map((solid) => solid.formula) // => ["ZnCO3·H2O", "Zn5(OH)6(CO3)2"]
 */
export function aqueousComposition(request: AqueousRequest): AqueousComposition {
  return compositionBy(request);
}

/** @internal The same with reactions of one's own in place of the tables. */
export function compositionBy(request: AqueousRequest, reactions?: Network): AqueousComposition {
  const read = readRequest(request, reactions);
  refuseCharge(read);
  const solved = solveMixture(withHeldPH(read), read.brought, read.water, read.ideal);
  return report(read, solved);
}

/** Put the held pH into the model. */
function withHeldPH({ model, pH }: Read): Model {
  if (pH !== undefined) {
    const { lnK, m } = model.equilibrium.system;
    lnK[m + model.heldPH] = -pH.toNumber() * Math.LN10;
  }
  return model;
}

/** Constants moved within their standard uncertainty: one by all of it, or several that together do as much. */
type Move = readonly (readonly [constant: Constant, by: number])[];

/** The answer; what is not looked at is not worked out. `moved` tells which constant it is not taken at its value. */
function report(read: Read, solved: Solved, moved?: Move): AqueousComposition {
  const { model, solution, kilograms } = solved;
  const proof = model.equilibrium.proof!;
  const maker = figureMaker(solved, read.brought, read.water, read.pH, read.ideal);
  const hydron = model.components.indexOf(HYDRON);
  // another answer is not asked about its own doubt
  const doubt = once(() => (moved === undefined ? openOnes(read, solved) : SURE));
  const standing = lazily({ list: () => standingOf(solved, maker, doubt().open) });
  const composition = lazily<AqueousComposition>({
    pH: () =>
      maker.make(-solution.lnActivity[hydron]! / Math.LN10, "", { lnActivity: [[hydron, -1]] }, 1 / Math.LN10, {
        symbol: "pH",
        label: "pH",
        rule: "−log10 of the activity of H+ at equilibrium",
      }),
    ionicStrength: () => {
      const squares = model.species.map(({ charge }, i) => [i, (charge * charge) / 2] as const);
      return maker.make(
        solution.ionicStrength,
        "mol/kg",
        { molality: squares.filter(([, weight]) => weight !== 0) },
        1,
        { symbol: "I", label: "ionic strength", rule: "half the sum of molality × charge²" },
      );
    },
    species: () => speciesOf(solved, maker),
    solids: () => standing.list.filter(({ kind }) => kind === "solid").map(({ solid }) => solid!),
    gas: () => gasOf(solved, maker),
    dose: () => doseOf(read, solved, maker),
    filtrate: () => filtrateOf(read, solved, maker),
    either: () => doubt().others.map((move) => otherAnswer(read, move)),
    saturation: () => saturationOf(solved, maker, standing.list, doubt().open),
    water: () =>
      read.water.times((kilograms / read.water.toNumber("kg")).toPrecision(12)).named({
        label: "water at equilibrium",
        rule: "given, brought, made and taken by the reactions",
      }) as Quantity<"mass">,
    celsius: () => read.celsius,
    unknown: () => (read.own ? [] : uncovered(model.network, presentOf(solved))),
    assumptions: () => [...(moved === undefined ? [] : [takenAt(moved)]), ...assumptionsOf(read, solved)],
    warnings: () => warningsOf(read, solved),
    balance: () => balanceOf(solved, proof),
  });
  origins.set(composition, { read, solved, maker });
  return composition;
}

/** Components of which there is something. */
const presentOf = ({ model, totals }: Solved): string[] =>
  model.components.filter((_, j) => totals[j]! > 1e-9 || model.components[j] === HYDRON);

function speciesOf({ model, solution }: Solved, maker: FigureMaker): DissolvedSpecies[] {
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

function standingOf(solved: Solved, maker: FigureMaker, open: ReadonlySet<number>): Standing[] {
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

/** How many constants are moved to see whether the solids stay the same. */
const MOVED = 3;

/** What the doubt of the constants leaves open. */
interface Doubt {
  /** Conditions that may or may not stand. */
  readonly open: ReadonlySet<number>;
  /** A move for each other set of solids. */
  readonly others: readonly Move[];
}

const SURE: Doubt = { open: new Set(), others: [] };

/** Shifts smaller than this share of the largest are not named. */
const NAMED = 0.3;

/** How constants were taken in an answer that is not the likeliest. */
function takenAt(move: Move): string {
  const largest = Math.max(...move.map(([, by]) => Math.abs(by)));
  const named = move
    .filter(([, by]) => Math.abs(by) >= NAMED * largest)
    .sort(([, a], [, b]) => Math.abs(b) - Math.abs(a))
    .map(([{ symbol }, by]) => `${symbol} ${Number(Math.abs(by).toPrecision(2))} ${by > 0 ? "higher" : "lower"}`);
  return `within the standard uncertainty: ${named.join(", ")}`;
}

/** Do something with the constants of a model moved. */
function withMoved<T>({ equilibrium: { system }, uses }: Model, move: Move, act: () => T): T {
  const kept = system.lnK.slice();
  for (const [constant, by] of move)
    for (const [row, count] of uses.get(constant)!) system.lnK[row]! += by * Math.LN10 * count;
  try {
    return act();
  } finally {
    system.lnK.set(kept);
  }
}

/** The whole answer with constants moved. */
function otherAnswer(read: Read, move: Move): OtherAnswer {
  const model = withHeldPH(read);
  const composition = withMoved(model, move, () =>
    report(read, solveMixture(model, read.brought, read.water, read.ideal), move),
  );
  return { solids: composition.solids.map(({ formula }) => formula), when: takenAt(move), composition };
}

/** The move of all constants that most likely takes a solid away or brings it; undefined where one standard uncertainty does not. */
function moveFor({ model, solution }: Solved, j: number): Move | undefined {
  const { expression } = model.conditions[j]!;
  const amount = solution.amount[j]!;
  const margin = amount > 0 ? amount : solution.saturation[j]!;
  const gradient = gradientOf(
    solution,
    amount > 0
      ? { amount: [[j, 1]] }
      : {
          lnActivity: [...expression.of].map(([key, count]) => [model.components.indexOf(key), count] as const),
          lnK: [[model.species.length + j, -1]],
        },
  );
  const slopes: [Constant, number][] = [];
  let variance = 0;
  for (const [constant, uses] of model.uses) {
    let slope = 0;
    for (const [row, count] of uses) slope += gradient.lnK[row]! * count * Math.LN10;
    if (slope === 0 || constant.standardUncertainty === 0) continue;
    variance += (slope * constant.standardUncertainty) ** 2;
    slopes.push([constant, slope]);
  }
  const sigma = Math.sqrt(variance);
  if (!(Math.abs(margin) < sigma)) return undefined;
  // the likeliest way to lose or gain one standard uncertainty of the figure
  const way = amount > 0 ? -1 : 1;
  return slopes.map(
    ([constant, slope]) => [constant, (way * slope * constant.standardUncertainty ** 2) / sigma] as const,
  );
}

/** Farther from saturation than this, as ln(Q/K), no solid is asked about. */
const FAR = -7;

/**
 * What the constants leave open: solved again with the constant of each standing solid, and with those that carry most of the
 * doubt of the pH, moved by their standard uncertainties either way; and with all together moved as most likely takes away
 * each solid that stands and brings each one near saturation.
 */
function openOnes(read: Read, solved: Solved): Doubt {
  const { model, solution, totals } = solved;
  const { equilibrium } = withHeldPH(read);
  const { system, tableau } = equilibrium;
  const stands = (j: number): boolean => tableau.column[system.m + j]! >= 0;
  const isSolid = (j: number): boolean => model.conditions[j]!.kind === "solid";
  const before: number[] = [];
  for (let j = 0; j < system.s; j += 1) if (solution.amount[j]! > 0) before.push(j);
  const gradient = gradientOf(solution, { lnActivity: [[model.components.indexOf(HYDRON), -1]] });
  const weight = (constant: Constant): number => {
    let slope = 0;
    for (const [row, count] of model.uses.get(constant)!) slope += gradient.lnK[row]! * count;
    return Math.abs(slope) * constant.standardUncertainty;
  };
  const single = new Set<Constant>();
  for (const j of before) {
    const own = model.conditions[j]!.phase?.shares[0]?.[0];
    if (own !== undefined) single.add(own);
  }
  const ranked = [...model.uses.keys()].map((constant) => ({ constant, weight: weight(constant) }));
  ranked.sort((a, b) => b.weight - a.weight);
  for (const { constant } of ranked.slice(0, MOVED)) single.add(constant);
  const moves: Move[] = [];
  for (const constant of single) {
    const u = constant.standardUncertainty;
    if (u !== 0) moves.push([[constant, u]], [[constant, -u]]);
  }
  for (let j = 0; j < system.s; j += 1) {
    if (!isSolid(j) || system.open[j] === 0) continue;
    if (!(solution.amount[j]! > 0 || solution.saturation[j]! > FAR)) continue;
    const move = moveFor(solved, j);
    if (move !== undefined) moves.push(move);
  }
  const open = new Set<number>();
  const others = new Map<string, Move>();
  const slope = read.ideal ? 0 : debyeHueckelSlope(model.celsius);
  const same = before.filter(isSolid).join();
  for (const move of moves) {
    try {
      withMoved(model, move, () => equilibrium.solve(totals, slope));
    } catch (error) {
      // constants moved so far that the mixture has no answer tell nothing of the solids
      if (!(error instanceof AqueousError)) throw error;
      continue;
    }
    const now: number[] = [];
    for (let j = 0; j < system.s; j += 1) {
      if (stands(j)) now.push(j);
      if (stands(j) !== before.includes(j)) open.add(j);
    }
    const set = now.filter(isSolid).join();
    if (set !== same && !others.has(set)) others.set(set, move);
  }
  return { open, others: [...others.values()] };
}

function saturationOf(
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
      why: () => (state === "either" ? "within the doubt of the constants" : undefined),
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

function gasOf({ model, solution }: Solved, maker: FigureMaker): EscapedGas[] {
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

function doseOf({ pH }: Read, { model, solution }: Solved, maker: FigureMaker): AqueousComposition["dose"] {
  if (pH === undefined) return {};
  const taken = solution.amount[model.heldPH]!;
  const naming = { symbol: "n", label: `${taken < 0 ? "H+" : "OH-"} needed to hold the pH` };
  const sign = taken < 0 ? -1 : 1;
  const amount = maker.amount(sign * taken, { amount: [[model.heldPH, sign]] }, naming);
  return taken < 0 ? { "H+": amount } : { "OH-": amount };
}

function filtrateOf({ network }: Read, { model, solution, totals }: Solved, maker: FigureMaker): FiltrateIon[] {
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
    const naming = { symbol: `c(${formula})`, label: `${formula} in the filtrate, bound and free` };
    list.push(
      lazily<FiltrateIon>({
        formula: () => formula,
        concentration: () => maker.make(sign * sum, "mol/L", figure, 1, naming),
        amount: () => maker.amount(sign * sum, figure, { ...naming, symbol: `n(${formula})` }),
        share: () =>
          isHydron || !(totals[j]! > 0)
            ? undefined
            : maker.make(Math.min(1, sum / totals[j]!), "", figure, 1 / totals[j]!, {
                symbol: `share(${formula})`,
                label: `share of ${formula} that stays dissolved`,
              }),
      }),
    );
  }
  return list;
}

function assumptionsOf({ assumptions, celsius, ideal, pH }: Read, { model }: Solved): string[] {
  const list = [...assumptions];
  list.push(
    ideal
      ? "activities equal molalities"
      : "activity coefficients by Davies, constant beyond an ionic strength of 0.5 mol/kg; water at activity 1",
  );
  if (pH !== undefined) list.push("what holds the pH brings no counter-ion into the ionic strength");
  if (celsius !== 25) {
    const without = [...model.uses.keys()].filter(({ enthalpy, symbol }) => enthalpy === undefined && symbol !== "pKw");
    if (without.length > 0) {
      const named = without.slice(0, 6).map(({ symbol }) => symbol);
      list.push(
        `constants of 25 °C are used where the heat of reaction is not known: ${named.join(", ")}${
          without.length > named.length ? ` and ${without.length - named.length} more` : ""
        }`,
      );
    }
  }
  return list;
}

/** Share of the variance from which a doubtful constant is named first. */
const CARRIES = 0.3;

/** Doubtful constants on which much of the doubt of the pH rests. */
function doubtfulOf({ model, solution }: Solved): string[] {
  const gradient = gradientOf(solution, { lnActivity: [[model.components.indexOf(HYDRON), -1]] });
  const parts: { readonly label: string; readonly doubtful: boolean; readonly variance: number }[] = [];
  let all = 0;
  for (const [{ label, doubtful, standardUncertainty }, uses] of model.uses) {
    let slope = 0;
    for (const [row, count] of uses) slope += gradient.lnK[row]! * count;
    const variance = (slope * standardUncertainty) ** 2;
    all += variance;
    parts.push({ label, doubtful, variance });
  }
  return parts
    .filter(({ doubtful, variance }) => doubtful && variance > CARRIES * all)
    .map(
      ({ label, variance }) =>
        `doubtful: ${Math.round((100 * variance) / all)} % of the variance of the pH is that of the ${label}`,
    );
}

function warningsOf(read: Read, solved: Solved): string[] {
  const { model, solution } = solved;
  const list: string[] = read.pH === undefined ? doubtfulOf(solved) : [];
  if (!read.own) list.push(...redoxPartners(model.network, presentOf(solved)));
  if (!read.ideal && solution.ionicStrength > 0.5) {
    list.push(
      `rough: at an ionic strength of ${solution.ionicStrength.toPrecision(2)} mol/kg log γ is good to ± ${activityDoubt(solution.ionicStrength)} only`,
    );
  }
  for (const [j, { phase, kind, formula }] of model.conditions.entries()) {
    if (kind !== "solid" || !(solution.amount[j]! > 0)) continue;
    if (phase?.shares[0]?.[0].doubtful === true)
      list.push(`doubtful: the solubility product of ${formula} differs much between sources, or rests on memory`);
    for (const note of phase?.notes ?? []) list.push(`${formula}: ${note}`);
  }
  return list;
}

function balanceOf({ model, solution, totals }: Solved, proof: Proof): AqueousComposition["balance"] {
  let [charge, all] = [0, 0];
  for (const [i, { charge: z }] of model.species.entries()) {
    charge += z * solution.molality[i]!;
    all += Math.abs(z) * solution.molality[i]!;
  }
  let put = 0;
  for (let j = 0; j < totals.length; j += 1) put += model.species[j]!.charge * totals[j]!;
  for (const [j, { kind, phase }] of model.conditions.entries())
    if (kind === "held" && phase === undefined) put -= solution.amount[j]!;
  return {
    mass: proof.mass,
    charge: all === 0 ? 0 : Math.abs(charge - put) / all,
    ionicStrength: proof.ionicStrength,
    saturation: proof.saturation / Math.LN10,
  };
}

/**
 * As `aqueousComposition`, but gives the refusal back as data.
 *
 * @category In the beaker
 * @example
 * tryAqueousComposition({ water: "1 kg", dissolved: [{ formula: "NaCl", amount: "9 mol" }] }).ok // => false
 */
export const tryAqueousComposition = (request: AqueousRequest): Result<AqueousComposition> =>
  attempt(() => aqueousComposition(request));

/**
 * pH of a solution.
 *
 * @param request - as for `aqueousComposition`
 * @returns pH with its uncertainty
 * @throws {AqueousError} as `aqueousComposition`
 * @category In the beaker
 * @example
 * pHOf({ water: "1 L", dissolved: [{ formula: "CH3COOH", amount: "0.1 mol" }] }).format({ decimals: 2, uncertainty: "none" }) // => "2.88"
 */
export function pHOf(request: AqueousRequest): Quantity<"number"> {
  return aqueousComposition(request).pH;
}
