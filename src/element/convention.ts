// How the weight of an element is to be taken where several figures are published.
import type { Facts } from "../foundation/facts";
import type { QuantityLike } from "../quantity";

/** Which figure stands for the weight of an element whose published weight is an interval. */
export type WeightConvention = "conventional" | "abridged" | "midpoint";

/** How an atomic weight is to be taken. */
export interface AtomicWeightOptions {
  /** Facts of the caller's own, whose atomic weights are taken. */
  readonly facts?: Facts | undefined;
  /**
   * `"conventional"` (default): the conventional value for elements with an interval, else the published value.
   * `"abridged"`: five figures with their own plus-minus. `"midpoint"`: the middle of the interval.
   */
  readonly convention?: WeightConvention | undefined;
  /** The weight of the caller's own material, such as `"6.9393(2) g/mol"` for a lithium salt depleted in lithium-6. */
  readonly value?: QuantityLike | undefined;
  /** For an element without a standard weight: use the mass number of its longest-lived nuclide. */
  readonly massNumberIfNone?: boolean | undefined;
}
