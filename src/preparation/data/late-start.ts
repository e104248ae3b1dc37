// Reactions that start late and then run fast: what forms in them helps them along. The sign for the next portion is that the one
// before it has reacted; foam is none, for at first there is none. Common practice of titration and of dissolving metals.
import type { SourceKey } from "./sources";

/** What is added, what it is added to, and what shows that a portion is done. */
interface LateRow {
  /** Group of what is added, or a metal. */
  readonly added: "permanganate" | "a metal";
  /** What it meets; everything where left out. */
  readonly to?: readonly string[];
  /** The first portion goes into it as warm as this. */
  readonly warm?: string;
  /** Why so. */
  readonly why?: string;
  /** The sign that a portion has reacted. */
  readonly done: string;
  /** What to do where the first portion does not start. */
  readonly otherwise?: string;
  readonly source: SourceKey;
}

export const LATE_START: readonly LateRow[] = [
  { added: "permanganate", to: ["H2C2O4", "Na2C2O4", "K2C2O4", "(NH4)2C2O4", "NaHC2O4", "KHC2O4"], warm: "45 °C", why: "cold the first portion does not start, and all that is added meanwhile reacts at once when it does; the manganese that forms keeps it going", done: "the purple is gone", source: "commonPractice" },
  { added: "permanganate", done: "the purple is gone", source: "commonPractice" },
  { added: "a metal", to: ["HNO3"], done: "its gas has come and gone", otherwise: "the first portion may take minutes to start: if it does not, warm the vessel to 40 °C with no more than that portion in it", source: "commonPractice" },
];

/** Pure metals that hardly give gas with an acid until a nobler one is on them; the rest of the metal keeps that out of the liquor. */
export const STARTED: readonly { readonly metal: string; readonly acid: string; readonly with: string; readonly source: SourceKey }[] = [
  { metal: "Zn", acid: "H2SO4", with: "a crystal of copper sulfate", source: "commonPractice" },
];

/** An acid that hardly dissolves cold, beside a carbonate. */
export const SPARING_ACID = {
  at: "60 °C",
  why: "the gas would stay in the liquor as hydrogencarbonate and come at once when that is warmed",
  source: "commonPractice",
} as const;
