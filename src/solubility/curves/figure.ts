// The figure a calculation rests on: read from the table, or measured by the caller and passed in. And the few checks
// that every calculation of this layer makes of its arguments.

import { densityOfWater, type MassLike, type TemperatureLike } from "../../amount";
import type { Formula } from "../../formula";
import { attempt } from "../../foundation/error";
import { once } from "../../foundation/memo";
import { type Quantity, type QuantityLike, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard } from "../argument";
import { molarSolubility } from "../precipitating/molar-solubility";
import type { Solubility } from "../record";
import { solubilityOf, trySolubilityOf } from "./solubility";
import { anhydrousMolarMass, soluteOf } from "./solute";

/** A solubility as the caller knows it: g anhydrous per 100 g water, as a mass such as `"40 g"`. */
export type SolubilityFigure = MassLike;

/** A figure with what is known about it. */
export interface Figure {
  readonly perHundredGramsWater: Quantity;
  /** The table's answer; undefined when the caller passed a figure. */
  readonly solubility: Solubility | undefined;
  readonly solidPhase: string | undefined;
  readonly warnings: readonly string[];
}

/** The caller's figure if there is one, else the table's. */
export function figureAt(
  formula: string | Formula,
  temperature: TemperatureLike,
  own: SolubilityFigure | undefined,
  argument: string,
): Figure {
  if (own === undefined) {
    const solubility = solubilityOf(formula, temperature);
    const { perHundredGramsWater, solidPhase, warnings } = solubility;
    return { perHundredGramsWater, solubility, solidPhase, warnings };
  }
  const solute = soluteOf(formula);
  const at = expectDimension(temperature, "temperature", "temperature").to("°C").format();
  const perHundredGramsWater = guard.positive(expectDimension(own, "mass", argument), argument).named({
    symbol: `S(${solute.anhydrous}, ${at})`,
    label: `solubility of ${solute.anhydrous} at ${at}, g anhydrous per 100 g water, as given`,
  });
  const solidPhase = solute.isHydrate ? solute.formula.toString() : undefined;
  return { perHundredGramsWater, solubility: undefined, solidPhase, warnings: [] };
}

/** A solubility product answers for this many kelvin around its 25 °C. */
const PRODUCT_NEAR = 10;

/** As `figureAt`; where no solubility is tabulated, or only a single one too far off, what the solubility product gives ideally near 25 °C. */
export function figureOrProduct(
  formula: string | Formula,
  temperature: TemperatureLike,
  own: SolubilityFigure | undefined,
): Figure {
  if (own !== undefined) return figureAt(formula, temperature, own, "solubility");
  const known = trySolubilityOf(formula, temperature);
  if (known.ok) {
    const { perHundredGramsWater, solidPhase, warnings } = known.value;
    return { perHundredGramsWater, solubility: known.value, solidPhase, warnings };
  }
  const celsius = expectDimension(temperature, "temperature", "temperature").toNumber("°C");
  const solute = soluteOf(formula);
  const sparing = attempt(() => molarSolubility({ solid: solute.formula }));
  const silent = ["solubility.no-data", "solubility.far-from-single-figure"].includes(known.error.code);
  const usable = silent && Math.abs(celsius - 25) <= PRODUCT_NEAR && sparing.ok;
  if (!usable || sparing.value.warnings.some((warning) => warning.startsWith("a soluble salt"))) throw known.error;
  const perHundredGramsWater = sparing.value.concentration
    .times(anhydrousMolarMass(solute))
    .dividedBy(densityOfWater(temperature))
    .times(hundredGrams())
    .to("g")
    .named({
      symbol: `S(${solute.anhydrous})`,
      label: `solubility of ${solute.anhydrous} from its solubility product, g per 100 g water`,
      rule: "S = s × molar mass / density of water × 100 g",
    });
  const warnings = ["from the solubility product at 25 °C: an order of magnitude only", ...sparing.value.warnings];
  return { perHundredGramsWater, solubility: undefined, solidPhase: solute.formula.toString(), warnings };
}

/** A mass argument, more than zero, with words for the working. */
export function positiveMass(like: QuantityLike, argument: string, symbol: string, label: string): Quantity {
  const mass = guard.positive(expectDimension(like, "mass", argument), argument);
  return mass.symbol === undefined ? mass.named({ symbol, label: mass.label ?? label }) : mass;
}

/** Exactly 100 g, the water a solubility is given for. */
export const hundredGrams = /* @__PURE__ */ once((): Quantity => quantity("100 g"));
