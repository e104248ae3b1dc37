// Strong acid of which a little is put into much water.
import type { Quantity } from "../../quantity";

/** Strong acid that a step dilutes and no pack brings. */
export interface AcidDiluted {
  /** What it is, as tables write it. */
  readonly formula: string;
  /** As it is taken, by mass. */
  readonly strength: string;
  /** How much of it, by mass, or by volume where its density is known. */
  readonly portion: Quantity<"mass"> | Quantity<"volume">;
}
