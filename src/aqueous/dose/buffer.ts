// Buffers: what to weigh, and how well one holds its pH.

import { massOf } from "../../amount";
import { readable } from "../../foundation/readable";
import type { ConcentrationText, NumberLike, Quantity, QuantityLike, VolumeText } from "../../quantity";
import { solvedFigure } from "../../quantity/internal";
import { guard, positive } from "../argument";
import type { AqueousComposition } from "../composition/answer";
import { aqueousComposition, originOf } from "../composition/composition";
import { withMoved } from "../composition/doubt";
import { activityInput } from "../composition/figures";
import { AqueousError } from "../error";
import type { Model } from "../mixture/model";
import { HYDRON } from "../mixture/notation";
import { pHInput } from "../mixture/request";
import { daviesTerm, debyeHueckelSlope } from "../solve/davies";
import { crossing } from "../solve/root";
import { gradientOf, solutionOf } from "../solve/sensitivity";
import { ADDITION_FIELDS, type AdditionOptions, pHFigure } from "./addition";

/** An acid and its base, as they are weighed. */
export type BufferPair = readonly [acid: string, base: string];

/** Pairs to choose from when none is named; the one whose even mixture comes nearest to the pH is taken. */
const PAIRS: readonly BufferPair[] = [
  ["C6H8O7·H2O", "Na3C6H5O7·2H2O"],
  ["HCOOH", "NaHCOO"],
  ["CH3COOH", "CH3COONa·3H2O"],
  ["KH2PO4", "Na2HPO4"],
  ["NH4Cl", "NH3"],
  ["H3BO3", "NaOH"],
  ["NaHCO3", "Na2CO3"],
];

/** The buffer that is wanted. */
export interface BufferRequest extends AdditionOptions {
  /** The pH that the finished buffer shall have. */
  readonly pH: NumberLike | QuantityLike;
  /** Of acid and base together. */
  readonly concentration: QuantityLike<"concentration", ConcentrationText>;
  /** Of the whole solution. */
  readonly volume: QuantityLike<"volume", VolumeText>;
  /** The acid and its base; chosen by the pH unless given. */
  readonly pair?: BufferPair;
}

/** What to weigh for a buffer. */
export interface BufferRecipe {
  /** The acid and its base that the buffer is made of. */
  readonly pair: BufferPair;
  /** What to take of each of the pair, the acid first. */
  readonly amounts: readonly {
    readonly formula: string;
    readonly amount: Quantity<"amount of substance">;
    readonly mass: Quantity<"mass">;
  }[];
  /** What is in it, at equilibrium. */
  readonly composition: AqueousComposition;
  /** mol/L of strong acid or base per pH unit. */
  readonly capacity: Quantity<"concentration">;
}

const BUFFER_FIELDS = { pH: true, concentration: true, volume: true, pair: true, ...ADDITION_FIELDS } as const;

/**
 * What to weigh for a buffer of some pH, with the activities of the finished solution counted.
 *
 * @param request - pH, total concentration of the pair, volume, and the pair as it is weighed, acid first; without a pair one
 *   that suits the pH is taken
 * @returns amounts and masses, what is in the buffer, and its capacity
 * @throws {AqueousError} `aqueous.out-of-reach` if the pair does not reach the pH; else as `aqueousComposition`
 * @category In the beaker
 * @example
 * const recipe = bufferRecipe({ pH: 4.8, concentration: "0.1 mol/L", pair: ["CH3COOH", "CH3COONa"], volume: "1 L" });
 * recipe.amounts.map((one) => one.amount.format({ decimals: 3, uncertainty: "none" })) // => ["0.043 mol", "0.057 mol"]
 */
export function bufferRecipe(request: BufferRequest): BufferRecipe {
  guard.fields(request, BUFFER_FIELDS, "request");
  const target = pHInput(request.pH).toNumber();
  const concentration = positive(request.concentration, "concentration", "concentration", { symbol: "c" });
  const volume = positive(request.volume, "volume", "volume", { symbol: "V" });
  const total = concentration.times(volume).to("mol");
  const { pH: _, concentration: __, volume: ___, pair: ____, ...options } = request;
  const mixed = (pair: BufferPair, base: number): AqueousComposition =>
    aqueousComposition({
      ...(options as object),
      water: volume as never,
      dissolved: [
        { formula: pair[0], amount: total.times((1 - base).toPrecision(12)) as never },
        { formula: pair[1], amount: total.times(base.toPrecision(12)) as never },
      ],
    });
  const away = (pair: BufferPair, base: number): number => mixed(pair, base).pH.toNumber() - target;
  const pair = request.pair ?? nearest(away);
  guard.list(pair, "pair");
  if (pair.length !== 2) throw new AqueousError("aqueous.bad-option", "pair must be an acid and its base");
  const [low, high] = [1e-6, 1 - 1e-6];
  if (away(pair, low) > 0 || away(pair, high) < 0) {
    throw new AqueousError("aqueous.out-of-reach", `${pair[0]} and ${pair[1]} make no buffer of pH ${target}`, {
      hint: "take a pair whose pKa is within one unit of the pH",
      details: { pair, pH: target },
    });
  }
  const base = crossing((x) => away(pair, x), [low, high], undefined, 1e-10);
  const amounts = ([1 - base, base] as const).map((share, i) => {
    const amount = total.times(share.toPrecision(12)).named({
      symbol: `n(${pair[i]})`,
      rule: "share of acid and base that gives the pH",
    }) as Quantity<"amount of substance">;
    return { formula: pair[i]!, amount, mass: massOf(amount as never, pair[i]!) };
  });
  const composition = mixed(pair, base);
  return readable({ pair, amounts, composition, capacity: bufferCapacity(composition) });
}

function nearest(away: (pair: BufferPair, base: number) => number): BufferPair {
  let [best, least] = [PAIRS[0]!, Infinity];
  for (const pair of PAIRS) {
    const distance = Math.abs(away(pair, 0.5));
    if (distance < least) [best, least] = [pair, distance];
  }
  return best;
}

/**
 * How much a solution buffers, its capacity: mol of strong acid per litre for one unit of pH, from the derivatives of the
 * equilibrium. Solids and gases that stand take part.
 *
 * @param composition - from `aqueousComposition`
 * @returns mol/L (per pH unit); a held pH has no capacity and is refused
 * @throws {AqueousError} `aqueous.bad-option`
 * @category In the beaker
 * @example
 * const buffer = aqueousComposition({
 *   water: "1 L",
 *   dissolved: [{ formula: "CH3COOH", amount: "0.05 mol" }, { formula: "CH3COONa", amount: "0.05 mol" }],
 * });
 * bufferCapacity(buffer).format({ decimals: 3, uncertainty: "none" }) // => "0.058 mol/L"
 */
export function bufferCapacity(composition: AqueousComposition): Quantity<"concentration"> {
  const { read, solved } = originOf(composition);
  if (read.pH !== undefined) throw new AqueousError("aqueous.bad-option", "a pH that is held has no capacity");
  const { model, totals } = solved;
  const slope = read.ideal ? 0 : debyeHueckelSlope(model.celsius);
  const value = capacityOf(model, totals, slope);
  return solvedFigure(
    value.toPrecision(8),
    "mol/L",
    "buffer capacity",
    { symbol: "β", label: "buffer capacity per unit of pH", rule: "1 / |d(pH)/d(strong acid)|" },
    () => capacityInputs(composition, slope, value),
  );
}

/** mol of strong acid per litre for one unit of pH, of some totals. */
function capacityOf(model: Model, totals: Float64Array, slope: number): number {
  model.equilibrium.solve(totals, slope);
  const gradient = gradientOf(solutionOf(model.equilibrium.tableau), pHFigure(model));
  // a strong acid brings an anion that only counts for the ionic strength
  const ofAcid = gradient.totals[model.components.indexOf(HYDRON)]! + gradient.bystanders / 2;
  return Math.abs(Math.LN10 / ofAcid);
}

/** Steps of the differences: of a decimal logarithm, and of an amount as a share. */
const STEP = 1e-3;

/** A capacity is a derivative itself: how it moves is found by differences, each input to both sides. */
function capacityInputs(composition: AqueousComposition, slope: number, value: number) {
  const { read, solved } = originOf(composition);
  const { model, totals, kilograms, solution } = solved;
  const between = (up: () => number, down: () => number): number => (up() - down()) / (2 * STEP);
  const list: { input: Quantity; partial: number }[] = [];
  for (const { ingredient, of } of read.brought) {
    const moles = ingredient.amount.toNumber("mol");
    if (moles === 0) continue;
    const at = (way: number): number => {
      const moved = totals.slice();
      for (const [key, count] of of) moved[model.components.indexOf(key)]! += (way * STEP * moles * count) / kilograms;
      return capacityOf(model, moved, slope);
    };
    const perShare = between(
      () => at(1),
      () => at(-1),
    );
    list.push({ input: ingredient.amount, partial: perShare / ingredient.amount.toNumber() });
  }
  const diluted = (way: number): number =>
    capacityOf(
      model,
      totals.map((t) => t / (1 + way * STEP)),
      slope,
    );
  const perWater = between(
    () => diluted(1),
    () => diluted(-1),
  );
  list.push({ input: read.water, partial: perWater / read.water.toNumber() });
  for (const constant of model.uses.keys()) {
    if (constant.standardUncertainty === 0) continue;
    const at = (way: number): number =>
      withMoved(model, [[constant, way * STEP]], () => capacityOf(model, totals, slope));
    const partial = between(
      () => at(1),
      () => at(-1),
    );
    if (Math.abs(partial) * constant.standardUncertainty > 1e-6 * value)
      list.push({ input: constant.input(), partial });
  }
  const term = daviesTerm(solution.ionicStrength);
  if (slope > 0 && term > 0) {
    // log10 γ of a singly charged ion is −slope × term / ln 10
    const at = (way: number): number => capacityOf(model, totals, slope - (way * STEP * Math.LN10) / term);
    const partial = between(
      () => at(1),
      () => at(-1),
    );
    list.push({ input: activityInput(solution.ionicStrength), partial });
  }
  return list;
}
