// Signal word and pictograms from the statements of an entry: Regulation (EC) No 1272/2008, Annex I (label elements of each
// class) and Articles 20 and 26 (which pictograms a heavier one stands for). Article numbers: memory.
import { LABEL_STATEMENTS, LABEL_SUPPLEMENTS, PICTOGRAMS, type StatementRow } from "../data/statements";

type LabelRow = Pick<StatementRow, "code" | "paraphrase" | "pictograms" | "signalWord">;

let statements: ReadonlyMap<string, LabelRow> | undefined;

/** Row of a code; a suffix (`H360FD`, `H350i`) falls back to the bare number. */
export function statementRow(code: string): LabelRow | undefined {
  statements ??= new Map(
    [...PICTOGRAMS, ...LABEL_STATEMENTS(), ...LABEL_SUPPLEMENTS()].map((row) => [row.code, row as LabelRow] as const),
  );
  return statements.get(code) ?? statements.get(code.replace(/[A-Za-z]+$/, ""));
}

/**
 * The heavier of the signal words that the codes call for; most codes call for one, some for none.
 *
 * @param weaker - of the codes that two categories share (`H272`), those in the category of the weaker word
 */
export function signalWordOf(
  codes: readonly string[],
  weaker: readonly string[] = [],
): "Danger" | "Warning" | undefined {
  const words = codes.map((code) => {
    const word = statementRow(code)?.signalWord;
    return word === "by category" ? (weaker.includes(code) ? "Warning" : "Danger") : word;
  });
  return words.includes("Danger") ? "Danger" : words.includes("Warning") ? "Warning" : undefined;
}

const HARM = "GHS07";
const SKIN_AND_EYES = /^H3(15|19|20)/;

/** Does a heavier pictogram speak for this reason of the exclamation mark already? */
function spokenFor(code: string, codes: readonly string[], called: ReadonlySet<string>): boolean {
  if (called.has("GHS06")) return true;
  const sensitisesAirways = codes.includes("H334");
  if (SKIN_AND_EYES.test(code)) return called.has("GHS05") || sensitisesAirways;
  return code === "H317" && sensitisesAirways;
}

/** Pictograms that the codes call for, without the exclamation mark where a heavier one stands for all its reasons. */
export function pictogramsOf(codes: readonly string[]): string[] {
  const called = new Set(codes.flatMap((code) => statementRow(code)?.pictograms ?? []));
  const reasons = codes.filter((code) => statementRow(code)?.pictograms?.includes(HARM));
  if (reasons.every((code) => spokenFor(code, codes, called))) called.delete(HARM);
  return [...called].sort();
}
