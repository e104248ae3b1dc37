// How a dry product is bottled, and what the air of a room does to it.
import type { Formula } from "../../formula";
import { isOneOf } from "../../ion/internal";
import { SLAKES } from "../data/drying";
import { sameCore, watersOf } from "../reaction/species";

/** Does the air of a room change what heat made: an oxide slakes, a salt dried from its hydrate takes water again? */
export function changedByAir(product: Formula, feeds: readonly Formula[]): "slakes" | "draws water" | undefined {
  if (isOneOf(product, ...SLAKES.formulas)) return "slakes";
  const isDried = feeds.some((feed) => sameCore(feed, product) && watersOf(feed).compare(watersOf(product)) > 0);
  return isDried ? "draws water" : undefined;
}

/** What is done with the dry product. */
export const bottling = (deliquescent: boolean): string =>
  deliquescent ? "Bottle it at once, tightly closed" : "Bottle and label it";

/** What is done with what heat has made. */
export function bottlingFired(product: Formula, feeds: readonly Formula[], deliquescent: boolean): string {
  const change = changedByAir(product, feeds);
  return change === undefined
    ? bottling(deliquescent)
    : `Bottle it at once, tightly closed: it ${change === "slakes" ? "slakes in air" : "takes water from the air again"}`;
}
