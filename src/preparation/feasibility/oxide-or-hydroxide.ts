// An oxide is asked for, and water gives the hydroxide: the same ions, another solid, another mass.

import type { Phase } from "../../aqueous/internal";
import { type Formula, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import { OXIDES_FROM_WATER, type OxideFromWaterRow } from "../data/products";
import { bySubstance } from "../reaction/by-substance";
import type { Setting } from "../request/setting";

/** How an oxide is got from water; undefined where water gives only its hydroxide. */
export const oxideFromWater: (formula: Formula) => OxideFromWaterRow | undefined =
  /* @__PURE__ */ bySubstance(OXIDES_FROM_WATER);

/** Is it a metal with oxygen and nothing else? */
export const isOxide = (formula: Formula): boolean => {
  const { anions, cations } = constitutionOf(formula);
  return cations.length > 0 && anions.length > 0 && anions.every((one) => one.formula === "O^2-");
};

const hydrated = /* @__PURE__ */ remembering<boolean>(300);
const holdsHydrogen = ({ formula }: Phase): boolean =>
  hydrated(formula, () => parseFormula(formula).count("H").n !== 0n);

/** Is a solid of the same ions the substance that was asked for? The hydroxide is not, where an oxide was. */
export const isFormOf = (phase: Phase, formula: Formula): boolean =>
  !isOxide(formula) || !holdsHydrogen(phase) || oxideFromWater(formula) !== undefined;

/** What the product may be beside what its metal is known to give: as asked, and the hydroxide of an oxide that was not kept warm. */
export function alternativesOf({ wet, product, request }: Setting): readonly string[] {
  const turns = wet ? oxideFromWater(product.formula)?.turns : undefined;
  return [...(request.alternatives ?? []), ...(turns === undefined ? [] : [turns.of])];
}
