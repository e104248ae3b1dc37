// How much room a dry powder takes: by its class where that is light, else as powders usually lie.
import type { Formula } from "../../formula";
import { constitutionOf } from "../../ion";
import type { Quantity } from "../../quantity";
import { LOOSE, type LooseRow } from "../data/loose";
import { exact, planned } from "../planning/exact";

const ANYWHERE = ["C", "H", "O"];

const isOf = (formula: Formula, { of, anions, hydrous }: LooseRow): boolean => {
  const others = formula.symbols.filter((symbol) => !ANYWHERE.includes(symbol));
  const has = new Set(constitutionOf(formula).anions.map((anion) => anion.formula));
  return (
    (of === undefined || (others.length > 0 && others.every((symbol) => of.includes(symbol)))) &&
    anions.every((anion) => has.has(anion)) &&
    (hydrous !== true || formula.symbols.includes("H"))
  );
};

/** Density of a powder as it lies in a crucible, not tapped down. */
export function looseDensityOf(formula: Formula): Quantity {
  const row = LOOSE.find((one) => isOf(formula, one));
  return row === undefined ? planned("looseDensity") : exact(row.density);
}
