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

/**
 * What a test takes: `liquor` and `precipitant` of wet work, `mother liquor` of crystals, the product or the materials `in fire`, which
 * not everything may be put into: a cyanide gives off poison, and of some solids nobody knows what fire leaves.
 */
export type TestNeed = "liquor" | "precipitant" | "mother liquor" | "product in fire" | "materials in fire";

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
  /** What no test of this run can take, for there is none of it or it is dangerous. */
  readonly without?: readonly TestNeed[];
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
