// Water that a precipitate keeps at constant mass and no formula fixes: the balance shows it, and no drying takes it.
import { type Formula, molarMass, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import type { Quantity } from "../../quantity";
import { VARIABLE_WATER } from "../data/products";
import { exact, planned } from "../planning/exact";

/** A precipitate whose water varies. */
interface HeldWater {
  /** Waters per formula unit as it dries in air, fewest and most. */
  readonly from: number;
  readonly to: number;
  /** Times the mass of the formula without that water. */
  readonly least: Quantity;
  readonly most: Quantity;
}

/** What a gel may weigh at constant mass, by the mass of its formula. */
export const withGelWater = (mass: Quantity): Quantity => mass.dividedBy(exact("1").minus(planned("dampHolds")));

const remembered = /* @__PURE__ */ remembering<HeldWater | undefined>(100);

/** The row of a precipitate that dries with water no formula fixes; undefined for all others. */
export const heldWaterOf = (formula: Formula): HeldWater | undefined =>
  remembered(formula.toString(), () => {
    const row = VARIABLE_WATER.find((one) => parseFormula(one.formula).hasSameComposition(formula));
    if (row === undefined) return undefined;
    const M = molarMass(formula);
    const times = (waters: number): Quantity => M.plus(molarMass("H2O").times(waters)).dividedBy(M);
    return { from: row.from, to: row.to, least: times(row.from), most: times(row.to) };
  });
