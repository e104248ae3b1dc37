// The words a caller asks for: English, with what a translation puts in its place.
import { guard } from "./error";
import { type SheetWords, sheetWordsEnglish, WORD_KEYS } from "./words";

const KNOWN = /* @__PURE__ */ Object.fromEntries(/* @__PURE__ */ WORD_KEYS.map((key) => [key, true as const]));

/** English, or English with the given words in place of it. */
export function wordsInUse(given: Partial<SheetWords> | undefined): SheetWords {
  if (given === undefined) return sheetWordsEnglish;
  guard.fields(given, KNOWN, "words");
  for (const [key, text] of Object.entries(given)) guard.text(text, `words.${key}`);
  return { ...sheetWordsEnglish, ...given };
}
