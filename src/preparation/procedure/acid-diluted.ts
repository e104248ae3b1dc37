// Strong acid of which a little is put into much water.
import type { Quantity } from "../../quantity";

/** Strong acid that a step dilutes. */
export interface AcidDiluted {
  /** What it is, as tables write it. */
  readonly formula: string;
  /** The pack of the plan that it comes from; undefined where none brings it. */
  readonly pack: string | undefined;
  /** As it is taken, by mass. */
  readonly strength: string;
  /** How much of it, by mass, or by volume where its density is known. */
  readonly portion: Quantity<"mass"> | Quantity<"volume">;
}
