// Double salts of the table that warmth or water takes apart.
import type { Formula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { isOneOf } from "../../ion/internal";
import { DOUBLE_SALTS, type DoubleSaltRow } from "../../solubility/internal";

const remembered = /* @__PURE__ */ remembering<DoubleSaltRow | undefined>(200);

/** The row of a double salt; undefined for any other solid. */
export const doubleSaltOf = (formula: Formula): DoubleSaltRow | undefined =>
  remembered(formula.toString(), () => DOUBLE_SALTS().find(({ solid }) => isOneOf(formula, solid)));
