// Strong acid of which a little is put into much water.
import type { Quantity } from "../../quantity";

/** Strong acid that a step dilutes and no pack brings. */
export interface AcidDiluted {
  readonly formula: string;
  /** As it is taken, by mass. */
  readonly strength: string;
  readonly portion: Quantity<"mass"> | Quantity<"volume">;
}
