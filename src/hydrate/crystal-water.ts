// Crystal water as it is written: parts `n H2O` after an adduct dot. Water inside brackets, as in [Cu(H2O)4]SO4·H2O, is
// part of the complex and stays.

import type { FormulaLike, MassLike } from "../amount";
import { formulaOfArgument, inSymbol, positive } from "../amount/internal";
import { type Formula, molarMass, parseFormula } from "../formula";
import { joined, numberText, splitWater } from "../formula/internal";
import { shownValue } from "../foundation/error";
import { type LookupOptions, lookingWith } from "../foundation/facts";
import { Fraction } from "../foundation/fraction";
import { withPlainJSON } from "../foundation/plain-json";
import { readable } from "../foundation/readable";
import type { Quantity } from "../quantity";
import { guard } from "./argument";
import { HydrateError } from "./error";

/** A formula split into what is not water and the water. */
export interface CrystalWater {
  /** The salt without its crystal water, in its smallest whole formula. */
  readonly anhydrous: Formula;
  /** How many of those stand in the formula: 3 in `3CdSO4·8H2O`. */
  readonly units: Fraction;
  /** Waters of crystallization for each anhydrous formula unit, exactly: 8/3 in `3CdSO4·8H2O`. */
  readonly waters: Fraction;
}

const WATER = "H2O";
/** Most waters a formula unit is given; no known hydrate comes near. */
export const MOST_WATERS = 1000;

/**
 * Split a formula into the anhydrous salt and its crystal water.
 *
 * @param formula - text or formula; water counts only after an adduct dot
 * @returns the anhydrous formula, how many of it the formula holds, and the waters for each
 * @throws {HydrateError} `hydrate.only-water` if there is nothing but water
 * @throws {FormulaError} those of `parseFormula`
 * @category Hydrates
 * @example
 * crystalWater("CuSO4·5H2O").waters // => 5
 * crystalWater("3CdSO4·8H2O").anhydrous.toString() // => "CdSO4"
 * crystalWater("3CdSO4·8H2O").waters.toFraction() // => "8/3"
 */
export function crystalWater(formula: FormulaLike): CrystalWater {
  const whole = formulaOfArgument(formula);
  const { dry, units, waters } = splitWater(whole);
  if (dry !== undefined) return withPlainJSON(readable({ anhydrous: dry, units, waters: waters.div(units) }));
  throw new HydrateError("hydrate.only-water", `${whole} contains nothing but water`, {
    hint: "give the salt with its water, such as CuSO4·5H2O",
    details: { formula: whole.toString() },
  });
}

/**
 * The salt without its crystal water.
 *
 * @param formula - text or formula; a phase is dropped with the water
 * @returns the anhydrous formula in its smallest whole form
 * @throws {HydrateError} `hydrate.only-water`
 * @throws {FormulaError} those of `parseFormula`
 * @category Hydrates
 * @example
 * anhydrousOf("CuSO4·5H2O").toString() // => "CuSO4"
 * anhydrousOf("KAl(SO4)2·12H2O").toString() // => "KAl(SO4)2"
 */
export function anhydrousOf(formula: FormulaLike): Formula {
  return crystalWater(formula).anhydrous;
}

/** How many waters: a whole number, decimal or fraction text, or a Fraction. */
export type WaterCount = number | bigint | string | Fraction;

function countOf(waters: WaterCount): Fraction {
  const refuse = (): never => {
    throw new HydrateError("hydrate.water-count", `'${shownValue(waters)}' is not a number of waters`, {
      hint: `give a number from 0 to ${MOST_WATERS}, such as 5, "0.5" or "8/3"`,
      details: { waters: shownValue(waters) },
    });
  };
  const text = waters instanceof Fraction ? waters.toFraction() : shownValue(waters).trim();
  if (text.length > 40 || !/^\d+(?:\.\d+)?(?:\/\d+)?$/.test(text)) return refuse();
  const [top, bottom] = text.split("/");
  const below = new Fraction(bottom ?? "1");
  if (below.equals(0)) return refuse();
  const count = new Fraction(top!).div(below);
  return count.compare(MOST_WATERS) > 0 ? refuse() : count;
}

/** Does the count end as a decimal, so that it can stand in front of H2O without a solidus? */
function endsAsDecimal(x: Fraction): boolean {
  let d = x.d;
  while (d % 2n === 0n) d /= 2n;
  while (d % 5n === 0n) d /= 5n;
  return d === 1n;
}

/**
 * The salt with a wanted number of waters, whatever number it is written with.
 *
 * @param formula - text or formula; water it already has is replaced
 * @param waters - waters for each anhydrous formula unit, 0 to 1000; 0 gives the anhydrous salt
 * @returns the hydrate; a count without a finite decimal is written over whole units, `3CdSO4·8H2O`
 * @throws {HydrateError} `hydrate.water-count`, `hydrate.only-water`
 * @throws {FormulaError} those of `parseFormula`
 * @category Hydrates
 * @example
 * hydrateOf("MgSO4", 7).toString() // => "MgSO4.7H2O"
 * hydrateOf("CaSO4·2H2O", "1/2").toString() // => "CaSO4.0.5H2O"
 * hydrateOf("CdSO4", "8/3").toString() // => "3CdSO4.8H2O"
 */
export function hydrateOf(formula: FormulaLike, waters: WaterCount): Formula {
  const { anhydrous } = crystalWater(formula);
  const count = countOf(waters);
  if (count.equals(0)) return anhydrous;
  const scale = new Fraction(endsAsDecimal(count) ? 1n : count.d);
  const dry = joined(anhydrous.parts, (x) => x.mul(scale));
  return parseFormula(`${dry}.${numberText(count.mul(scale))}${WATER}`);
}

/**
 * What part of a hydrate is crystal water.
 *
 * @param formula - text or formula; water counts only after an adduct dot
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns mass fraction of water in % w/w, 0 for an anhydrous salt
 * @throws {HydrateError} `hydrate.only-water`
 * @throws {FormulaError} those of `parseFormula`
 * @source w(H2O) = n M(H2O) / M
 * @category Hydrates
 * @example
 * waterContent("CuSO4·5H2O").format({ decimals: 2, uncertainty: "none" }) // => "36.08 % w/w"
 */
export function waterContent(formula: FormulaLike, options?: LookupOptions): Quantity<"number"> {
  if (options !== undefined) return lookingWith(options, guard, () => waterContent(formula));
  const whole = formulaOfArgument(formula);
  const { units, waters } = crystalWater(whole);
  return molarMass(WATER)
    .times(waters.mul(units))
    .dividedBy(molarMass(whole))
    .to("% w/w")
    .named({
      symbol: `w(H₂O in ${inSymbol(whole)})`,
      rule: "mass fraction of water = waters × M(H₂O) / molar mass of the hydrate",
    });
}

/**
 * How much crystal water a mass of hydrate brings with it.
 *
 * @param mass - mass of the hydrate, > 0
 * @param formula - the hydrate
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns mass of water in g
 * @throws {HydrateError} `hydrate.only-water`
 * @throws {AmountError} `amount.not-positive`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @category Hydrates
 * @example
 * crystalWaterIn("100.0 g", "KAl(SO4)2·12H2O").format({ decimals: 2, uncertainty: "none" }) // => "45.57 g"
 */
export function crystalWaterIn(mass: MassLike, formula: FormulaLike, options?: LookupOptions): Quantity<"mass"> {
  if (options !== undefined) return lookingWith(options, guard, () => crystalWaterIn(mass, formula));
  const whole = formulaOfArgument(formula);
  const name = inSymbol(whole);
  const m = positive(mass, "mass", "mass", { symbol: `m(${name})`, label: `mass of ${name}` });
  return m
    .times(waterContent(whole))
    .named({ symbol: "m(H₂O)", rule: "mass of crystal water = mass × mass fraction of water" });
}
