// How much water crystals are rinsed with, how warm it is, and what it takes of them.

import type { Formula } from "../../formula";
import { type Quantity, quantity } from "../../quantity";
import { leftAfter } from "../operation/rinse";
import { exact, planned } from "../planning/exact";
import { dissolvedBy } from "../reaction/fate";
import type { Crystallising } from "./crystallising";

/** What crystals are rinsed with, and what of them water would take at most. */
export interface Rinsing {
  readonly product: Formula;
  readonly crop: Quantity;
  /** As much liquid as the crystals keep of their liquor. */
  readonly water: Quantity;
  readonly cold: Quantity<"temperature">;
  /** How warm the water is that they are rinsed with. */
  readonly at: Quantity<"temperature">;
  readonly taken: Quantity | undefined;
  readonly takesMuch: boolean;
  /** Other salts in what the crystals keep of their liquor. */
  readonly others: Quantity;
  /** The same with what the packs have besides. */
  readonly besideIt: Quantity;
}

/** Waters of a rinse, in what the crystals keep of their liquor, and in how many portions: the least that leaves little enough. */
const WATERS = [
  { times: 1, portions: 2 },
  { times: 2, portions: 2 },
  { times: 3, portions: 3 },
] as const;

/** A rinse with water. */
interface WaterRinse {
  readonly water: Quantity;
  readonly portions: number;
  /** What it takes of the crystals at most. */
  readonly taken: Quantity | undefined;
}

/** From ice; hot for what dissolves less hot, and no colder than keeps the hydrate what it is. */
export function rinseAt(product: Formula, crystallising: Crystallising | undefined): Quantity<"temperature"> {
  const ice = planned("ice") as Quantity<"temperature">;
  if (crystallising === undefined) return ice;
  const { notBelow, cold, hot } = crystallising;
  if (notBelow !== undefined) return cold;
  return dissolvesLessHot(product, hot) ? hot : ice;
}

/** Does hot water dissolve less of it than ice water? */
export function dissolvesLessHot(product: Formula, hot: Quantity<"temperature">): boolean {
  const [inIce, inHot] = [planned("ice") as Quantity<"temperature">, hot].map((at) =>
    dissolvedBy(product, exact("1 g"), at),
  );
  return inIce !== undefined && inHot !== undefined && inHot.compare(inIce) < 0;
}

/** As much water as brings the other salts down to what may stay, as long as it takes little of the crystals. */
export function waterRinseFor({ product, crop, water, cold, at, taken, others }: Rinsing): WaterRinse {
  const most = crop.times(planned("rinsedFor"));
  const enough = crop.times(planned("residue"));
  let rinse: WaterRinse = { water, portions: 2, taken };
  for (const { times, portions } of WATERS) {
    if (times > 1) {
      const all = water.times(exact(`${times}`)).to("g");
      const takes = takenBy(product, all, crop, cold, at);
      if (takes === undefined || takes.compare(most) > 0) break;
      rinse = { water: all, portions, taken: takes };
    }
    const left = leftAfter(1, times / portions, portions);
    if (others.times(quantity(left.toPrecision(4))).compare(enough) <= 0) break;
  }
  return rinse;
}

/** What so much water takes of crystals at most; by the figure of the liquor where none is known so cold. */
export const takenBy = (
  product: Formula,
  water: Quantity,
  crop: Quantity,
  cold: Quantity<"temperature">,
  at: Quantity<"temperature">,
): Quantity<"mass"> | undefined => dissolvedBy(product, water, at, crop) ?? dissolvedBy(product, water, cold, crop);
