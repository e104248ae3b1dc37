// Salts that free alkali turns into others that dissolve better: with the lye they need little water.
import type { SourceKey } from "./sources";

/** A salt, the lye that joins it, and what is in the liquor then. */
interface WithLyeRow {
  readonly salt: string;
  readonly lye: string;
  readonly becomes: string;
  /** How warm the salt is dissolved. */
  readonly at: string;
  readonly source: SourceKey;
}

export const WITH_LYE: readonly WithLyeRow[] = [
  { salt: "Na2B4O7", lye: "NaOH", becomes: "NaBO2", at: "60 °C", source: "commonPractice" },
  { salt: "K2B4O7", lye: "KOH", becomes: "KBO2", at: "60 °C", source: "commonPractice" },
  { salt: "H3BO3", lye: "NaOH", becomes: "NaBO2", at: "60 °C", source: "commonPractice" },
];
