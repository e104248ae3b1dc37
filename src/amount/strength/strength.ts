// From any strength of a solution to any other.

import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { type Quantity, quantity, type StrengthIn } from "../../quantity";
import { grouped, guard } from "../argument";
import { densityFor } from "../density/density";
import {
  isPerMass,
  kindOfUnit,
  readStrength,
  STRENGTH,
  type Strength,
  type StrengthKind,
  type StrengthLike,
  type StrengthOptions,
} from "./strength-kind";
import { Ways } from "./strength-ways";

const CONVERSION = { ...STRENGTH, to: true, facts: true } as const satisfies Fields<
  Parameters<typeof convertStrength>[1]
>;

/**
 * A strength in another unit: % w/w, % w/v, % v/v, ppm w/w, g/L, mol/L, mol/kg, mol %, N, °Bé, volumes.
 *
 * Going from a strength per mass to one per volume needs the density of the solution: given, or looked up for the solute
 * (linear in 1/density between tabulated points, never beyond the last). A bare `%` is refused unless `basis` says of what.
 * A mass fraction counts a hydrate with its water; for molality and mole fraction its crystal water is solvent.
 *
 * @param strength - any strength, >= 0
 * @param options - `to`, the wanted unit; `of`, the solute; `density`, `temperature`, `basis`, `equivalents` with
 *   `reaction` for normality, `soluteDensity` for % v/v, `solvent`, `baume`
 * @returns the strength in the unit `to`: normality in mol/L of equivalents, °Bé and volumes as plain numbers
 * @throws {AmountError} `amount.ambiguous-percent`, `amount.unknown-strength`, `amount.missing-formula`,
 *   `amount.missing-density`, `amount.missing-equivalents`, `amount.no-density-table`, `amount.outside-range`,
 *   `amount.several-readings`, `amount.not-possible`, `amount.negative`, `amount.fraction-above-one`, `amount.too-long`
 * @throws {QuantityError} those of reading a quantity
 * @throws {FormulaError} those of `parseFormula`
 * @source IUPAC Green Book, 3rd ed. (2007), section 2.10 (section number from memory); densities: the table in the working
 * @category Solutions
 * @example
 * convertStrength("37.2 % w/w", { of: "HCl", to: "mol/L", density: "1.19 g/mL" }).format({ decimals: 1, uncertainty: "none" }) // => "12.1 mol/L"
 * convertStrength("5 % w/w", { of: "CH3COOH", to: "mol/L" }).format({ decimals: 2, uncertainty: "none" }) // => "0.84 mol/L"
 * convertStrength("6 N", { of: "H2SO4", to: "mol/L", equivalents: 2, reaction: "both protons" }).format({ decimals: 1 }) // => "3.0 mol/L"
 */
export function convertStrength<const U extends string>(
  strength: StrengthLike,
  options: LookupOptions & StrengthOptions & { readonly to: U },
): Quantity<StrengthIn<U>> {
  if (bringsFacts(options)) return withItsFacts(options, guard, (others) => convertStrength(strength, others));
  const given = readStrength(strength, grouped(options, CONVERSION).basis);
  const { kind, unit } = kindOfUnit(options.to, options.to, options.basis);
  return along(new Ways(options), given, kind, unit);
}

function along(ways: Ways, given: Strength, kind: StrengthKind, unit: string): Quantity {
  if (given.kind === kind && !["normality", "degrees Baumé", "peroxide volumes"].includes(kind))
    return given.value.to(unit);
  if (isPerMass(given.kind)) {
    const w = ways.toMassFraction(given);
    if (isPerMass(kind)) return ways.fromMassFraction(w, kind, unit);
    return ways.fromPerVolume(ways.massConcentrationFromMass(w), kind, unit);
  }
  if (!isPerMass(kind)) return ways.fromPerVolume(given, kind, unit);
  return ways.fromMassFraction(ways.massFractionFromVolume(given), kind, unit);
}

/** @internal Mass fraction of a strength, whatever it was given as. */
export function massFractionOfStrength(strength: StrengthLike, options: StrengthOptions): Quantity {
  return along(new Ways(options), readStrength(strength, options.basis), "mass fraction", "% w/w");
}

/** @internal Concentration of a strength, whatever it was given as. */
export function concentrationOfStrength(strength: StrengthLike, options: StrengthOptions): Quantity {
  return along(new Ways(options), readStrength(strength, options.basis), "concentration", "mol/L");
}

/** @internal Density of a solution of a strength, given or looked up. */
export function densityOfStrength(strength: StrengthLike, options: StrengthOptions): Quantity {
  const ways = new Ways(options);
  if (options.density !== undefined) return densityFor(ways.formula, quantity("0"), options);
  return densityFor(ways.formula, massFractionOfStrength(strength, options), options);
}
