// From an empirical formula to that of the molecule, by its measured molar mass.

import { type Quantity, type QuantityLike, quantity } from "../../quantity";
import { FormulaError } from "../error";
import { type Formula, parseFormula } from "../formula";
import type { Scored } from "./empirical-rank";
import { OTHER_WEIGHTS, roomOf } from "./found-composition";
import { molarMass } from "./molar-mass";
import type { MolarMassOptions } from "./options";

/** A measured molar mass, and the atomic weights it is compared on. */
interface Measured {
  readonly molarMass?: QuantityLike | undefined;
  readonly weights?: MolarMassOptions | undefined;
}

/** The molar mass as given, checked. */
export function measuredMass(options: Measured): Quantity | undefined {
  if (options.molarMass === undefined) return undefined;
  const measured = quantity(options.molarMass);
  if (measured.dimension === "molar mass") return measured;
  throw new FormulaError(
    "formula.molar-mass-mismatch",
    `a molar mass is expected, not ${measured} (${measured.dimension})`,
    { hint: 'such as "180.2 g/mol"' },
  );
}

/** How many formula units a molar mass is: within 5 % of a whole number, or two standard uncertainties of the mass. */
function unitsIn(
  empirical: Formula,
  measured: Quantity,
  options: Measured,
): { units: number; ratio: number; fits: boolean } {
  const ratio = measured.toNumber("g/mol") / molarMass(empirical, options.weights).toNumber("g/mol");
  const units = Math.round(ratio);
  const u = measured.standardUncertainty;
  const relative = u === undefined ? 0 : u.div(measured.value).toNumber();
  const allowed = Math.max(Math.min(0.1, 0.05 * units), 2 * relative * ratio);
  return { units, ratio, fits: units >= 1 && Math.abs(ratio - units) <= allowed };
}

/** Those a measured molar mass is a multiple of; first the ones that are so to its printed digits. */
export function ofMass(
  all: readonly Scored[],
  measured: Quantity,
  formulaOf: (one: Scored) => Formula,
  options: Measured,
): Scored[] {
  const room = OTHER_WEIGHTS + roomOf(measured, options.molarMass);
  const fits = all.flatMap((one) => {
    const { units, ratio, fits } = unitsIn(formulaOf(one), measured, options);
    const mass = measured.toNumber(measured.unit);
    return fits ? [{ one, exact: one.misfit <= 1 && Math.abs(mass - (mass * units) / ratio) <= room }] : [];
  });
  return [...fits.filter(({ exact }) => exact), ...fits.filter(({ exact }) => !exact)].map(({ one }) => one);
}

/** The formula of the molecule, how many empirical units it is, and that in words. */
export function molecular(
  empirical: Formula,
  measured: Quantity,
  options: Measured,
): { formula: Formula; units: number; words: string[] } {
  const { units, ratio, fits } = unitsIn(empirical, measured, options);
  if (!fits) {
    throw new FormulaError(
      "formula.molar-mass-mismatch",
      `${measured} is ${ratio.toFixed(3)} times the mass of ${empirical}, no whole number`,
      { details: { ratio, empirical: empirical.toString() } },
    );
  }
  const unit = molarMass(empirical, options.weights);
  const multiplied = empirical.parts.length > 1 ? empirical.times(units) : scaleElements(empirical, units);
  return {
    formula: multiplied,
    units,
    words: [`${measured} / ${unit.format({ decimals: 3 })} = ${ratio.toFixed(3)}: ${units} units, ${multiplied}`],
  };
}

/** Every count of a formula without groups multiplied. */
function scaleElements(formula: Formula, factor: number): Formula {
  if (factor === 1) return formula;
  return parseFormula(
    formula
      .toString()
      .replace(
        /([A-Z][a-z]?)(\d*)/g,
        (_, symbol: string, digits: string) => `${symbol}${Number(digits || 1) * factor}`,
      ),
  );
}
