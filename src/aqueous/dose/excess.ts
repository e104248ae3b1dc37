// A precipitant in excess: how much of a metal stays dissolved as more and more of it is added, and where least of it does.
// Excess lye, ammonia, oxalate or chloride takes back what it first precipitated.
import type { AmountLike } from "../../amount";
import { readable } from "../../foundation/readable";
import { type MassText, type Quantity, type QuantityLike, quantity, type VolumeText } from "../../quantity";
import { guard, positive } from "../argument";
import { AqueousError } from "../error";
import { uncovered } from "../mixture/coverage";
import type { Dissolved } from "../mixture/material";
import { TOO_STRONG } from "../mixture/mixture";
import { HYDRON } from "../mixture/notation";
import {
  ADDITION_FIELDS,
  type Addition,
  type AdditionOptions,
  pHFigure,
  pHNow,
  readAddition,
  solveAdded,
  solvedWith,
} from "./addition";
import { namedReagent, type Reagent } from "./reagent";

/** A solution of a metal, and a precipitant added to it beyond what it needs. */
export interface OverExcessRequest extends AdditionOptions {
  /** The ion that is to precipitate. */
  readonly ion: string;
  /** Mass of the water, or volume of the solution before the addition. */
  readonly water: QuantityLike<"mass" | "volume", MassText | VolumeText>;
  /** What is in the water at the beginning, the ion among it. */
  readonly dissolved: readonly Dissolved[];
  /** The precipitant: a formula, a solution of some strength, or a good of the shop by its name. */
  readonly add: Reagent | string;
  /** What the equation needs of it; points and figures then tell the excess. */
  readonly needed?: AmountLike;
  /** Where the curve ends. */
  readonly amount: AmountLike;
  /** Default 100. */
  readonly steps?: number;
}

/** The mixture with some of the precipitant. */
export interface AtExcess {
  /** Of the precipitant, mol. */
  readonly added: number;
  /** Over what the equation needs, as a fraction: 0.05 for 5 %; undefined where that was not given. */
  readonly excess: number | undefined;
  /** Of the mixture at this point. */
  readonly pH: number;
  /** Of the ion in all its forms, mol/L. */
  readonly dissolved: number;
  /** Of the ion that was put in: 1 for all. */
  readonly share: number;
  /** Standing, mol/L, by formula. */
  readonly solids: Readonly<Record<string, number>>;
}

/** What stays dissolved over an excess. */
export interface OverExcess {
  /** The ion that is to precipitate. */
  readonly ion: string;
  /** Formula of what is added. */
  readonly precipitant: string;
  /** In the order of the addition. */
  readonly points: readonly AtExcess[];
  /** Where least of the ion stays dissolved; undefined where no solid contains it. */
  readonly least:
    | {
        readonly added: Quantity<"amount of substance">;
        readonly excess: Quantity<"number"> | undefined;
        readonly concentration: Quantity<"concentration">;
        readonly share: Quantity<"number">;
        readonly pH: Quantity<"number">;
      }
    | undefined;
  /** Formulas of the solids that stand somewhere. */
  readonly solids: readonly string[];
  /** What was taken for a name of the shop, and where the curve ends before it was asked to. */
  readonly assumptions: readonly string[];
  /** What the constants do not cover, in words; figures that depend on it are doubtful. */
  readonly unknown: readonly string[];
}

const FIELDS = {
  ion: true,
  water: true,
  dissolved: true,
  add: true,
  needed: true,
  amount: true,
  steps: true,
  ...ADDITION_FIELDS,
} as const;

/** Narrowing of the least, relative to the whole way. */
const FINE = 1e-7;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Where a function with one least value between two places has it. */
function leastBetween(f: (x: number) => number, low: number, high: number, fine: number): number {
  let [a, b] = [low, high];
  let [c, d] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [fc, fd] = [f(c), f(d)];
  while (b - a > fine) {
    if (fc < fd) {
      [b, d, fd] = [d, c, fc];
      c = b - GOLDEN * (b - a);
      fc = f(c);
    } else {
      [a, c, fc] = [c, d, fd];
      d = a + GOLDEN * (b - a);
      fd = f(d);
    }
  }
  return (a + b) / 2;
}

/** The species that hold an ion, with how many of it; its total. */
function holdersOf({ model, network, baseMoles }: Addition, ion: string) {
  const key = [...network.express(ion).of.keys()].find((one) => one !== HYDRON);
  const place = key === undefined ? -1 : model.components.indexOf(key);
  if (place < 0 || !(baseMoles[place]! > 0)) {
    throw new AqueousError("aqueous.bad-option", `there is no ${ion} in what is dissolved`, {
      details: { argument: "ion", ion },
    });
  }
  const whole = network.express(ion).of.get(key!)!;
  const weights: (readonly [species: number, count: number])[] = [];
  for (const [i, { expression }] of model.species.entries()) {
    const count = expression.of.get(key!) ?? 0;
    if (count !== 0) weights.push([i, count / whole]);
  }
  return { weights, whole, place, key: key! };
}

/**
 * How much of an ion stays dissolved over an excess of the precipitant: the curve, and the dose at which least does. Excess
 * alkali, ammonia, oxalate or chloride takes back what it first precipitated; `redissolving` tells when all of it is gone.
 *
 * @param request - the ion, water and what is dissolved, the precipitant, how far (mol), and what the equation needs of it
 * @returns points with plain numbers in mol and mol/L, for a drawing; the least with its uncertainty
 * @throws {AqueousError} `aqueous.bad-option` for an ion that is not there, else as `aqueousComposition`
 * @category In the beaker
 * @example
 * const alumina = dissolvedOverExcess({
 *   ion: "Al^3+",
 *   water: "0.6 kg",
 *   dissolved: [{ formula: "AlCl3·6H2O", amount: "0.1 mol" }],
 *   add: "NaOH",
 *   needed: "0.3 mol",
 *   amount: "0.45 mol",
 * });
 * alumina.least?.excess?.format({ decimals: 0, uncertainty: "none" }) // => "0 %"
 * alumina.points.at(-1)?.share // => 1
 */
export function dissolvedOverExcess(request: OverExcessRequest): OverExcess {
  guard.fields(request, FIELDS, "request");
  guard.text(request.ion, "ion");
  const steps = request.steps ?? 100;
  guard.number(steps, "steps");
  if (!(Number.isInteger(steps) && steps >= 2 && steps <= 1000))
    throw new AqueousError("aqueous.bad-option", `steps must be a whole number from 2 to 1000, not ${steps}`);
  const all = positive(request.amount, "amount of substance", "amount").toNumber("mol");
  const needed =
    request.needed === undefined
      ? undefined
      : positive(request.needed, "amount of substance", "needed", { symbol: "n" });
  const { reagent, assumptions } = namedReagent(request.add);
  const addition = readAddition(request, reagent, request, "add");
  const { model, baseMoles, water } = addition;
  const { weights, whole, place, key } = holdersOf(addition, request.ion);
  const { equilibrium, conditions } = model;
  const litres = water.toNumber("kg");
  const put = baseMoles[place]! / whole;
  const excessAt = (added: number): number | undefined =>
    needed === undefined ? undefined : added / needed.toNumber("mol") - 1;
  /** The mixture with some of the precipitant: its water, and the ion that is dissolved, mol. */
  const at = (added: number, warm: boolean): { readonly kilograms: number; readonly moles: number } => {
    const { kilograms } = solveAdded(addition, added, warm);
    let sum = 0;
    for (const [i, count] of weights) sum += count * equilibrium.tableau.c[i]!;
    return { kilograms, moles: sum * kilograms };
  };
  const points: AtExcess[] = [];
  const stood = new Set<string>();
  let takes = false;
  let end = "";
  for (let i = 0; i <= steps; i += 1) {
    const added = (all * i) / steps;
    const { kilograms, moles } = at(added, i > 0);
    const { tableau } = equilibrium;
    if (tableau.ionicStrength > TOO_STRONG) {
      end = `beyond ${points.at(-1)?.added.toPrecision(3) ?? 0} mol the mixture is too strong for the activity model`;
      break;
    }
    const solids: Record<string, number> = {};
    for (let k = 0; k < tableau.basis.length; k += 1) {
      const condition = conditions[tableau.basis[k]! - tableau.system.m];
      if (condition?.kind !== "solid") continue;
      solids[condition.formula] = (equilibrium.amountOf(k) * kilograms) / litres;
      stood.add(condition.formula);
      takes ||= condition.expression.of.has(key);
    }
    points.push({
      added,
      excess: excessAt(added),
      pH: pHNow(model),
      dissolved: moles / litres,
      share: Math.min(1, moles / put),
      solids,
    });
  }
  if (points.length === 0)
    throw new AqueousError("aqueous.too-strong", "the mixture is too strong for the activity model as it is");
  const present = model.components.filter(
    (one, j) => one === HYDRON || baseMoles[j]! > 0 || addition.reagentMoles[j]! > 0,
  );
  const over = Object.freeze(
    readable({
      ion: request.ion,
      precipitant: reagent.formula,
      points,
      least: takes ? leastOf() : undefined,
      solids: [...stood],
      assumptions: [...assumptions, ...(end === "" ? [] : [end])],
      unknown: uncovered(model.network, present),
    }),
  );
  given.add(over);
  return over;

  function leastOf(): NonNullable<OverExcess["least"]> {
    let best = 0;
    for (const [i, point] of points.entries()) if (point.dissolved < points[best]!.dissolved) best = i;
    const [low, high] = [points[Math.max(0, best - 1)]!.added, points[Math.min(points.length - 1, best + 1)]!.added];
    at(low, false);
    const dose = leastBetween((added) => at(added, true).moles, low, high, FINE * all);
    const { solved, maker } = solvedWith(addition, dose);
    let sum = 0;
    for (const [i, count] of weights) sum += count * solved.solution.molality[i]!;
    const perLitre = solved.kilograms / litres;
    const share = (sum * solved.kilograms) / put;
    const figure = { molality: weights };
    const added = quantity(
      { value: dose.toPrecision(4), unit: "mol" },
      { symbol: `n(${reagent.formula})`, label: `${reagent.formula} at which least ${request.ion} stays dissolved` },
    ) as Quantity<"amount of substance">;
    return {
      added,
      excess:
        needed &&
        added
          .dividedBy(needed)
          .minus("1")
          .to("%")
          .named({ symbol: "excess", label: "excess above what the equation needs" }),
      concentration: maker.make(sum * perLitre, "mol/L", figure, perLitre, {
        symbol: `c(${request.ion})`,
        label: `least ${request.ion} dissolved`,
      }),
      share: maker.make(share, "", { ...figure, totals: [[place, -share / whole]] }, solved.kilograms / put, {
        symbol: `share(${request.ion})`,
        label: `least share of ${request.ion} that stays dissolved`,
      }),
      pH: maker.make(pHNow(model), "", pHFigure(model), 1 / Math.LN10, { symbol: "pH" }),
    };
  }
}

/** Answers of `dissolvedOverExcess`, so that a picture is drawn of nothing else. */
const given = /* @__PURE__ */ new WeakSet<object>();

/** Is this an answer of `dissolvedOverExcess`? */
export const isOverExcess = (value: unknown): value is OverExcess =>
  typeof value === "object" && value !== null && given.has(value);
