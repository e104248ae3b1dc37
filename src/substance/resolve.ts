// A name or a formula, whichever was given, to one formula text of ours.
import { readableText, SubstanceError } from "./error";
import { type Notation, tryReadNotation } from "./notation";
import { rowOf, rowsNamed } from "./registry-index";

/** The text read as a formula, if it is one. */
export function asNotation(text: string): Notation | undefined {
  return tryReadNotation(text);
}

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
  const notation = asNotation(text);
  if (notation !== undefined && !(named.length > 0 && /^[A-Z]{3,}$/.test(text)))
    return [{ given: text, formula: formulaText(text, notation), notation }];
  return named.map(({ row }) => ({ given: text, formula: row.formula, notation: asNotation(row.formula)! }));
}

/** An error for a text that is neither a known name nor a formula. */
export function unknownName(text: string, nearest: readonly string[]): SubstanceError {
  return new SubstanceError("substance.unknown-name", `"${text}" is neither a formula nor a name known here`, {
    input: text,
    hint: nearest.length > 0 ? `nearest names: ${nearest.join("; ")}` : "give the formula on the label",
    details: { nearest },
  });
}
