// Salts that free alkali turns into others that dissolve better: with the lye they need little water; and what acid does that comes
// after lye.
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

/** Lye that took a metal, as the acid comes to it: how warm it may be from the stage before, and what the two must not reach. */
export const ACID_INTO_LYE = {
  mayBe: "70 °C",
  upTo: "80 °C",
  /** Start is one of these, the warmest that will do; the first is what a bath of cold water reaches soon. */
  from: ["30 °C", "40 °C", "50 °C", "60 °C"],
  source: "commonPractice",
} as const satisfies { readonly source: SourceKey } & Record<string, unknown>;

/** A hydroxide that the acid takes again: how long a haze stays in the hot liquor that is not product come out in the cold. */
export const HAZE_HOT = { time: "ten minutes", source: "commonPractice" } as const satisfies {
  time: string;
  source: SourceKey;
};
