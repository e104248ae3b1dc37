// What a name may mean, as it is answered and as a refusal lists it.
import type { SourceKey } from "../data/sources";

/** One meaning of a name. */
export interface NameReading {
  /** Of this meaning, crystal water included. */
  readonly formula: string;
  /** Systematic name of that formula. */
  readonly name: string;
  /** What speaks for this meaning; empty when it is the only one. */
  readonly decides: string;
  /** Spellings that were put right on the way, and what the rules had to assume. */
  readonly notes: readonly string[];
  /** What a pack of this name may contain as well, and how strong a solution of this name is. */
  readonly remarks: readonly string[];
  /** Of the table that gives this meaning; absent where the name is read word by word, by the rules. */
  readonly source?: SourceKey;
}
