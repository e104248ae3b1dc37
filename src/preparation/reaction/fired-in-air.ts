// Solids that take up oxygen of the air in the fire: how hot, and where the product gives it back.
import { type Formula, parseFormula } from "../../formula";
import type { Quantity } from "../../quantity";
import { thermalStepsOf } from "../../substance/internal";
import { FIRED_IN_AIR } from "../data/firing";
import type { SourceKey } from "../data/sources";
import { exact } from "../planning/exact";

/** How hot a feed is fired to a product in air; undefined where no table says. */
export function firedInAir(
  feed: Formula,
  product: Formula,
): { readonly at: Quantity<"temperature">; readonly source: SourceKey } | undefined {
  const row = FIRED_IN_AIR.find(
    (one) => parseFormula(one.feed).hasSameComposition(feed) && parseFormula(one.product).hasSameComposition(product),
  );
  return row === undefined ? undefined : { at: exact(`${row.at} °C`) as Quantity<"temperature">, source: row.source };
}

/** Where heat takes the product apart again; undefined where no step is tabulated. */
export const givesBackFrom = (product: Formula): Quantity<"temperature"> | undefined =>
  thermalStepsOf(product)[0]?.from;
