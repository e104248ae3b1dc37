// Double salts of the table that warmth or water takes apart.
import { type Formula, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import { DOUBLE_SALTS, type DoubleSaltRow } from "../../solubility/internal";
import { sameCore } from "./species";

const BASIC = ["OH-", "O^2-"];

const remembered = /* @__PURE__ */ remembering<DoubleSaltRow | undefined>(200);

/** Is it a salt of two metals, ammonium counted as one, that has none of its own hydroxide or oxide? */
const isOfTwo = (formula: Formula): boolean => {
  const { kind, complex, cations, anions } = constitutionOf(formula);
  if (kind !== "salt" || complex !== undefined || anions.some(({ formula: one }) => BASIC.includes(one))) return false;
  return new Set(cations.flatMap(({ formula: one, element = one }) => (one === "H+" ? [] : [element]))).size > 1;
};

/** A salt of two metals that no table of double salts names, with however much water. */
export const isUnnamedDoubleSalt = (formula: Formula): boolean =>
  isOfTwo(formula) && !DOUBLE_SALTS().some(({ solid }) => sameCore(parseFormula(solid), formula));

/** The row of a double salt; undefined for any other solid. */
export const doubleSaltOf = (formula: Formula): DoubleSaltRow | undefined =>
  remembered(formula.toString(), () => DOUBLE_SALTS().find(({ solid }) => isOneOf(formula, solid)));
