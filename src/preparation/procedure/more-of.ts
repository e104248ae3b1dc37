// What a step takes of a pack of the plan beside what is weighed of it.
import type { Quantity } from "../../quantity";

/** So much more of a pack. */
export interface MoreOf {
  /** Name of the pack. */
  readonly material: string;
  /** How much; undefined for a pinch. */
  readonly portion: Quantity<"mass" | "volume"> | undefined;
}
