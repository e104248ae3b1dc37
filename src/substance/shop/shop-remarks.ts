// What the word on a pack hides: crystal water, other forms of the good, and how strong a solution is.

import { byElements } from "../../formula/internal";
import { list } from "../../foundation/wording";
import { anhydrousKey, readNotation, textOf } from "../../ion/internal";
import { SHOP_NAMES } from "../data/shop-materials";
import { addTo } from "../names/multimap";
import { kinOf } from "../registry/registry-index";
import { formulasSoldAs, solutionSoldAs } from "./sold-goods";

/** Formulas in the shops by what they are without crystal water, usual ones first. */
const soldByCore = /* @__PURE__ */ byElements(
  () => new Set([...SHOP_NAMES().map((row) => row.formula), ...SHOP_NAMES().flatMap((row) => row.alternatives ?? [])]),
  (formula) => formula,
  (formulas) => {
    const byCore = new Map<string, string[]>();
    for (const formula of formulas) addTo(byCore, anhydrousKey(readNotation(formula)).key, formula);
    return byCore;
  },
);

/** A name that tells its water itself hides none. */
const TELLS_WATER = /hydrate|anhydrous|h2o|water/;

const listed = (formulas: readonly string[]): string => list(formulas, "or");

/**
 * Remarks on a name with one meaning.
 *
 * @param name - in one spelling
 * @param formula - what it was read as
 */
export function remarksOfShop(name: string, formula: string): string[] {
  const remarks: string[] = [];
  const notation = readNotation(formula);
  const { key, water } = anhydrousKey(notation);
  const isKin = (other: string) => anhydrousKey(readNotation(other)).key === key;
  const under = formulasSoldAs(name).filter((other) => other !== formula);
  const kin = under.filter(isKin);
  if (!TELLS_WATER.test(name)) {
    const forms = water > 0 ? [] : (soldByCore(textOf(notation)).get(key) ?? []).filter((other) => other !== formula);
    // not on the shop's list: the hydrates that are known at all
    const known = water > 0 || forms.length > 0 ? [] : kinOf(notation).map((row) => row.formula);
    const hidden = [...new Set([...kin, ...forms, ...known.filter((other) => other !== formula)])];
    if (hidden.length > 0)
      remarks.push(`a pack of this name may contain ${listed(hidden)}: the word leaves the water out`);
  }
  const others = under.filter((other) => !isKin(other));
  if (others.length > 0) remarks.push(`also sold under this name: ${listed(others)}`);
  const solution = solutionSoldAs(name, formula);
  if (solution !== undefined)
    remarks.push(`a solution: ${solution.lower} to ${solution.upper} of ${formula}, not the pure substance`);
  return remarks;
}
