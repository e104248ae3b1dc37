// What a fired product is usually fired at.
import { type Formula, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { matterOf } from "../contents/matter";
import { FIRING } from "../data/firing";

const remembered = /* @__PURE__ */ remembering<(typeof FIRING)[number] | undefined>(50);

/** The row of a product that fire makes of several solids; undefined where none is tabulated. */
export const firingRow = (product: Formula): (typeof FIRING)[number] | undefined =>
  remembered(String(product), () => {
    const { key } = matterOf(product);
    return FIRING.find((row) => matterOf(parseFormula(row.formula)).key === key);
  });
