// What elements and ions are called besides, and their colours: reading a formula needs none of it.
import { once } from "../../foundation/memo";
import { ANIONS, CATIONS, ELEMENT_WORDS, type ElementWord, HYDROGENS, type Ion } from "../../ion/internal";

const words = /* @__PURE__ */ once(() => new Map(ELEMENT_WORDS().map((word) => [word.symbol, word] as const)));

/** All words of an element. */
export const wordOf = (symbol: string): ElementWord | undefined => words().get(symbol);

const key = (row: { readonly formula: string; readonly charge: number }): string => `${row.formula} ${row.charge}`;
const rows = /* @__PURE__ */ once(() => new Map([...ANIONS(), ...CATIONS()].map((row) => [key(row), row] as const)));

/** Older and other names of an ion; a hydrogen salt made by rule has those of its anion. */
export function otherNamesOf({ row, element, parent, charge }: Ion): readonly string[] {
  if (parent !== undefined) return otherNamesOf(parent).map((name) => `${HYDROGENS[charge - parent.charge]}${name}`);
  return (element === undefined ? rows().get(key(row))?.also : wordOf(element.symbol)?.ideAlso) ?? [];
}

/** Colour of its dilute solution; undefined for colourless. */
export const colourOf = ({ row, parent }: Ion): string | undefined =>
  parent === undefined ? rows().get(key(row))?.colour : undefined;
