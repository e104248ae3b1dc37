// A name or a formula, whichever was given, to one formula text of ours.
import { readableText } from "./error";
import { type Notation, tryReadNotation } from "./notation";
import { rowOf, rowsNamed } from "./registry-index";

/** What was given, as formula text and as read. */
export interface Resolved {
  readonly given: string;
  readonly formula: string;
  readonly notation: Notation;
}

/** Formula text as this room writes it: the registry's own writing where the composition is listed. */
export function formulaText(text: string, notation: Notation): string {
  return rowOf(notation)?.formula ?? text.trim();
}

/**
 * Every formula a text can stand for: itself where it is a formula, else the registry rows of that name. Names made of
 * capitals only (`MAP`, `SOP`) are tried as trade names first. Empty when nothing is known.
 */
export function resolveAll(given: string): Resolved[] {
  const text = readableText(given, "a name or a formula");
  const named = rowsNamed(text);
  const notation = tryReadNotation(text);
  if (notation !== undefined && !(named.length > 0 && /^[A-Z]{3,}$/.test(text)))
    return [{ given: text, formula: formulaText(text, notation), notation }];
  return named.map(({ row }) => ({ given: text, formula: row.formula, notation: tryReadNotation(row.formula)! }));
}
