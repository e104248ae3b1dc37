// How much ice water crystals are rinsed with, and what it takes of them.

import type { Formula } from "../../formula";
import { type Quantity, quantity } from "../../quantity";
import { leftAfter } from "../operation/rinse";
import { exact, planned } from "../planning/exact";
import { dissolvedBy } from "../reaction/fate";

/** What crystals are rinsed with, and what of them ice water would take at most. */
export interface Rinsing {
  readonly product: Formula;
  readonly crop: Quantity;
  /** As much liquid as the crystals keep of their liquor. */
  readonly water: Quantity;
  readonly cold: Quantity<"temperature">;
  readonly taken: Quantity | undefined;
  readonly takesMuch: boolean;
  /** Other salts in what the crystals keep of their liquor. */
  readonly others: Quantity;
}

/** Waters of a rinse, in what the crystals keep of their liquor, and in how many portions: the least that leaves little enough. */
const WATERS = [
  { times: 1, portions: 2 },
  { times: 2, portions: 2 },
  { times: 3, portions: 3 },
] as const;

/** A rinse with ice water. */
interface IceRinse {
  readonly water: Quantity;
  readonly portions: number;
  /** What it takes of the crystals at most. */
  readonly taken: Quantity | undefined;
}

/** As much ice water as brings the other salts down to what may stay, as long as it takes little of the crystals. */
export function iceRinseFor({ product, crop, water, cold, taken, others }: Rinsing): IceRinse {
  const most = crop.times(planned("rinsedFor"));
  const enough = crop.times(planned("residue"));
  let rinse: IceRinse = { water, portions: 2, taken };
  for (const { times, portions } of WATERS) {
    if (times > 1) {
      const all = water.times(exact(`${times}`)).to("g");
      const takes = takenBy(product, all, crop, cold);
      if (takes === undefined || takes.compare(most) > 0) break;
      rinse = { water: all, portions, taken: takes };
    }
    const left = leftAfter(1, times / portions, portions);
    if (others.times(quantity(left.toPrecision(4))).compare(enough) <= 0) break;
  }
  return rinse;
}

/** What so much ice water takes of crystals at most; by the figure of the liquor where none is known so cold. */
export const takenBy = (
  product: Formula,
  water: Quantity,
  crop: Quantity,
  cold: Quantity<"temperature">,
): Quantity<"mass"> | undefined =>
  dissolvedBy(product, water, planned("ice") as Quantity<"temperature">, crop) ??
  dissolvedBy(product, water, cold, crop);
