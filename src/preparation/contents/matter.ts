// A substance as the books of a vessel carry it: its formula, what it is without crystal water, and how much water that is.
import { type Formula, molarMass } from "../../formula";
import { isWater, withoutPhase } from "../../formula/internal";
import { remembering } from "../../foundation/memo";
import { crystalWater } from "../../hydrate";
import type { Quantity } from "../../quantity";
import { exact } from "../planning/exact";
import { nameOfFormula, watersOf } from "../reaction/species";

/** One substance. */
export interface Matter {
  readonly formula: Formula;
  /** As printed. */
  readonly name: string;
  /** Equal for equal compositions. */
  readonly key: string;
  readonly molarMass: Quantity;
  readonly isWater: boolean;
  /** Water of crystallization, per formula unit. */
  readonly waters: Quantity;
  /** The same without crystal water: how it is booked once it is dissolved. */
  readonly core: Matter;
}

const remembered = /* @__PURE__ */ remembering<Matter>(500);

export const matterOf = (formula: Formula): Matter =>
  remembered(withoutPhase(formula).toString(), () => worked(formula));

function worked(formula: Formula): Matter {
  const water = isWater(formula);
  const own = {
    formula,
    name: nameOfFormula(formula),
    key: formula.compositionText,
    molarMass: molarMass(formula),
    isWater: water,
    waters: water ? exact("0") : watersOf(formula),
  };
  if (water || own.waters.isZero()) {
    const dry: Matter = { ...own, core: undefined as unknown as Matter };
    return Object.assign(dry, { core: dry });
  }
  return { ...own, core: matterOf(crystalWater(formula).anhydrous) };
}

const molar = /* @__PURE__ */ remembering<Quantity>(1);

/** Mass of an amount of water. */
export function massOfWater(amount: Quantity): Quantity {
  return amount.times(molar("", () => molarMass("H2O"))).to("g");
}
