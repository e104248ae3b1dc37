// A name or a formula, whichever was given, to one formula text of ours.

import { type Notation, readNotation, tryReadNotation } from "../../ion/internal";
import { readableText } from "../error";
import { rowOf, rowsNamed } from "../registry/registry-index";
import { readingsOf } from "./readings";

/** What was given, as formula text and as read. */
export interface Resolved {
  readonly given: string;
  readonly formula: string;
  readonly notation: Notation;
}

/** Formula text as this layer writes it: the registry's own writing where the composition is listed. */
function formulaText(text: string, notation: Notation): string {
  return rowOf(notation)?.formula ?? text.trim();
}

/**
 * May these letters be a short name as well as a formula: `MAP`, `SOP`, `NaDCC`? Three capitals in a row, no digit; a name in
 * a table goes first, since no one writes the formula of sodium, deuterium and carbon so.
 */
export const mayBeShortName = (text: string): boolean => /^[A-Za-z]*[A-Z]{3}[A-Za-z]*$/.test(text);

/**
 * Every formula a text can stand for: itself where it is a formula, else all readings of the name, by table or rule, and the
 * registry rows that carry it. Short names in capitals (`MAP`, `SOP`) are tried as trade names first. Empty when nothing
 * is known.
 */
export function resolveAll(given: string): Resolved[] {
  const text = readableText(given, "a name or a formula");
  const notation = tryReadNotation(text);
  if (notation !== undefined && !(mayBeShortName(text) && rowsNamed(text).length > 0))
    return [{ given: text, formula: formulaText(text, notation), notation }];
  const named = rowsNamed(text);
  const formulas = new Set([...named.map(({ row }) => row.formula), ...readingsOf(text).map((one) => one.formula)]);
  return [...formulas]
    .map((formula) => ({ given: text, formula, notation: readNotation(formula) }))
    .filter((one) => one.notation.charge === 0);
}
