// What a verdict says: findings by code, and yields.
import type { Quantity } from "../../quantity";

/** What a verdict says, as a stable code. */
export type FindingCode =
  | "consistent"
  | "still-drying"
  | "wet"
  | "unwashed"
  | "unreacted"
  | "second-solid"
  | "other-hydrate-fits"
  | "other-formula-fits"
  | "mixture-fits"
  | "hydrate-mix-up"
  | "not-weighed"
  | "reagent-short"
  | "too-heavy"
  | "loss-explained"
  | "lighter-than-losses-explain"
  | "boiled-further"
  | "balance-too-coarse"
  | "spilled"
  | "impure"
  | "liquor-ph";

/** One explanation with its numbers; findings are ordered by how well they fit. */
export interface Finding {
  /** Which explanation it is. */
  readonly code: FindingCode;
  /** One sentence for whoever stands at the bench. */
  readonly text: string;
  /** The mass the finding is about: water, salt, loss; undefined when none is. */
  readonly mass: Quantity<"mass"> | undefined;
  /** Another figure behind it: a ratio, a yield. */
  readonly figure: Quantity | undefined;
  /**
   * Likelihood of what was measured if it is so, its unknown taken where it fits best: 1 within what it allows, outside the normal
   * density of the distance in standard uncertainties; undefined where no measurement speaks for or against it.
   */
  readonly likelihood: number | undefined;
  /** What findings are ordered by, 0 to 1: the likelihood times what the trade expects of it. Not a probability. */
  readonly weight: number;
  /** What to do next to decide. */
  readonly next: string;
}

/** A yield against one formula. */
export interface Yield {
  /** The formula that the mass is compared with. */
  readonly formula: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** Is it the product of the plan, and not another form? */
  readonly wanted: boolean;
  /** Mass of this formula if nothing is lost. */
  readonly theoreticalYield: Quantity<"mass">;
  /** Mass found over mass expected, with its uncertainty. */
  readonly percentYield: Quantity<"number">;
}
