// The constants this layer rests on, each one object, so that a constant used twice is one input.

import { type Quantity, quantity } from "../../quantity";
import { cite } from "../data/sources";

let gas: Quantity | undefined;
let avogadro: Quantity | undefined;

/**
 * The molar gas constant, exact since 2019 as the product of the Boltzmann and Avogadro constants.
 *
 * @returns R in J/(mol K)
 * @source SI Brochure, 9th ed. (2019), section 2.2: k = 1.380 649e-23 J/K, N(A) = 6.022 140 76e23 mol^-1
 * @category Gas
 * @example
 * molarGasConstant().format({ significant: 10 }) // => "8.314462618 J/(mol K)"
 */
export function molarGasConstant(): Quantity<"molar heat capacity"> {
  gas ??= quantity(
    { value: "8.31446261815324", unit: "J/(mol K)" },
    { symbol: "R", label: "molar gas constant", source: cite("siBrochure9") },
  );
  return gas;
}

/**
 * The Avogadro constant, exact since 2019.
 *
 * @returns N(A) in 1/mol
 * @source SI Brochure, 9th ed. (2019), section 2.2
 * @category Weighing
 * @example
 * avogadroConstant().in("mol^-1").toString() // => "6.02214076e+23"
 */
export function avogadroConstant(): Quantity<"amount of substance^-1"> {
  avogadro ??= quantity(
    { value: "6.02214076e23", unit: "mol^-1" },
    { symbol: "N(A)", label: "Avogadro constant", source: cite("siBrochure9") },
  );
  return avogadro;
}
