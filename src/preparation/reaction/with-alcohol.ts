// What alcohol does to what is dissolved in water: by the table, and nothing where it has no row.
import type { Formula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import type { Quantity } from "../../quantity";
import { ANTISOLVENT, type AntisolventRow, type WithAlcohol } from "../data/antisolvent";
import { exact } from "../planning/exact";
import { isAcid } from "./acids";
import { isVolatile } from "./fluids";

const remembered = /* @__PURE__ */ remembering<AntisolventRow | undefined>(200);

/** The row of a salt; undefined where it is not known. */
export const antisolventRow = (formula: Formula): AntisolventRow | undefined =>
  remembered(formula.toString(), () => {
    const { cations, groups, complex } = constitutionOf(formula);
    return ANTISOLVENT.find(
      (row) =>
        (row.complex === true) === (complex !== undefined) &&
        (row.cations === undefined ||
          (cations.length > 0 && cations.every((one) => row.cations!.includes(one.formula)))) &&
        (row.groups === undefined ||
          row.groups.some((name) =>
            groups.some((one) => one === name || (row.complex === true && one.includes(name))),
          )),
    );
  });

/** Share of the theory that as much alcohol as liquor usually brings out in the cold, at least; undefined where nobody says. */
export const usuallyBrought = (formula: Formula): Quantity | undefined => {
  const share = antisolventRow(formula)?.usually;
  return share === undefined ? undefined : exact(share);
};

/** What as much alcohol as liquor does to a salt; undefined where it is not known. What leaves with the water and free acids are no salts. */
export const withAlcohol = (formula: Formula): WithAlcohol | undefined =>
  isVolatile(formula) || isAcid(formula) ? "dissolves it" : antisolventRow(formula)?.alcohol;
