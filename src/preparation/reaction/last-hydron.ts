// Whether a base takes the last hydrogen of an acid salt, which makes another salt of it, or stays beside it.

import type { Formula } from "../../formula";
import { constitutionOf } from "../../ion";
import { ACID_STEPS, isHydrogenAnion } from "../../ion/internal";
import { isAmmonia } from "./acids";

/** pKa of the step that ends in a base; undefined where no table has it. */
const pKaTo = (base: string): number | undefined => {
  const row = ACID_STEPS().find((one) => one.base === base);
  return row === undefined ? undefined : Number(row.pKa);
};

/** Does it take hydrogen from the anion of an acid salt? By the constants of both; what neither table has is taken to. */
export function takesLastHydron(base: Formula, salt: Formula): boolean {
  const sour = constitutionOf(salt).anions.find(({ formula }) => isHydrogenAnion(formula));
  const step = ACID_STEPS().find(({ acid }) => acid === sour?.formula);
  const own = isAmmonia(base) ? pKaTo("NH3") : pKaTo(constitutionOf(base).anions[0]?.formula ?? "");
  return step === undefined || own === undefined || Number(step.pKa) < own;
}
