// A mother liquor as water of the next batch.
import type { Quantity } from "../../quantity";

/** Something weighed for a batch of which its liquor still has some. */
export interface StillIn {
  /** As printed, without crystal water. */
  readonly formula: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** As much as is dissolved. */
  readonly mass: Quantity<"mass">;
}

/** What a mother liquor is to the next batch of the same. */
export interface NextWater {
  /** Water of the next batch that it stands for. */
  readonly water: Quantity<"volume">;
  /** Of the theory, dissolved in it as product: as much less is weighed of everything. */
  readonly share: Quantity<"number">;
  /** Excess of what was weighed that is dissolved in it: the next batch needs it no more. */
  readonly excess: readonly StillIn[];
  /** Batches until by-products in the crystals are as much as may stay in them; undefined where nothing is known to add up. */
  readonly batches: number | undefined;
}
