// What a liquor keeps of the product: the part of a yield that solubility takes.

import type { MassLike, TemperatureLike } from "../../amount";
import type { Formula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { type Facts, lookingIn } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import type { Quantity } from "../../quantity";
import { guard } from "../argument";
import { figureOrProduct, hundredGrams, positiveMass, type SolubilityFigure } from "../curves/figure";
import { massAsNamed, soluteOf } from "../curves/solute";
import type { Solubility } from "../record";

const RESIDUAL = {
  formula: true,
  water: true,
  temperature: true,
  of: true,
  solubility: true,
  facts: true,
} as const satisfies Fields<Parameters<typeof lossToLiquor>[0]>;

/** What a liquor keeps of a product. */
export interface LossToLiquor {
  /** Mass of the product, in the form named, that stays in the liquor. */
  readonly mass: Quantity<"mass">;
  /** Share of the whole product, when `of` was given. */
  readonly share: Quantity<"number"> | undefined;
  /** Solubility used: g anhydrous per 100 g of all water. */
  readonly perHundredGramsWater: Quantity<"mass">;
  /** The table's answer; undefined when a solubility was passed in. */
  readonly solubility: Solubility | undefined;
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

/**
 * How much product stays in a saturated mother liquor: recoverable by evaporating, not lost. Where no solubility is
 * tabulated, the solubility product answers between 15 and 35 °C, ideally and with a warning.
 *
 * @param request - product in the form it is wanted, all water of the liquor after crystallising, temperature;
 *   `of` the whole product for the share; `solubility` to use your own figure
 * @returns mass left, in the form named
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, the codes of `solubilityOf` when
 *   neither table speaks, `solubility.not-positive`
 * @source water balance over the saturated solution
 * @category Crystallising
 * @example
 * lossToLiquor({ formula: "KNO3", water: "200 g", temperature: "10 °C" }).mass.format({ decimals: 1 }) // => "42.8 g"
 */
export function lossToLiquor(request: {
  readonly formula: string | Formula;
  readonly water: MassLike;
  readonly temperature: TemperatureLike;
  readonly of?: MassLike;
  readonly solubility?: SolubilityFigure;
  /** Facts of the caller's own, looked up before the tables. */
  readonly facts?: Facts | undefined;
}): LossToLiquor {
  guard.fields(request, RESIDUAL, "request");
  if (request.facts !== undefined) {
    const { facts, ...others } = request;
    return lookingIn(facts, guard, () => lossToLiquor(others));
  }
  const solute = soluteOf(request.formula);
  const water = positiveMass(request.water, "water", "m(H2O)", "water of the liquor");
  const { perHundredGramsWater, solubility, warnings } = figureOrProduct(
    solute.formula,
    request.temperature,
    request.solubility,
  );
  const dry = perHundredGramsWater
    .times(water)
    .dividedBy(hundredGrams())
    .named({
      symbol: `m(${solute.anhydrous})`,
      label: `anhydrous ${solute.anhydrous} in the liquor`,
      rule: "solubility × water / 100 g",
    });
  const mass = massAsNamed(solute, dry, {
    symbol: `m(${solute.formula})`,
    label: `${solute.formula} in the liquor`,
  });
  const share =
    request.of === undefined
      ? undefined
      : mass.dividedBy(positiveMass(request.of, "of", `m(${solute.formula})`, "whole product")).to("%");
  return readable({ mass, share, perHundredGramsWater, solubility, warnings });
}
