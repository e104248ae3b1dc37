// Amounts of substances, as the books of a vessel list them.
import type { Quantity } from "../../quantity";
import type { Matter } from "./matter";

/** An amount of a substance. */
export interface Entry {
  readonly matter: Matter;
  readonly amount: Quantity;
}

/** How a solid came to be in the vessel. */
export type Origin = "put in" | "precipitated" | "crystallised" | "from the liquor" | "left by heat";

/** An amount of a solid. */
export interface SolidEntry extends Entry {
  readonly origin: Origin;
}

export const massOf = ({ matter, amount }: Entry): Quantity => amount.times(matter.molarMass).to("g");
