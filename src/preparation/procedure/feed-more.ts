// A feed with more water than dissolves it: what the liquor needs at the end.

import type { Quantity } from "../../quantity";
import { type Feed, type Feeding, waterToAdd } from "./feed";
import { dilutedBy } from "./feed-single";

/** Why a feed has more water than dissolves it. */
export const AT_THE_END = "as much water as the liquor is to have at the end";

/** A feed with more water; a solid without any stays what it is. */
export function withMore(feed: Feed, i: number, more: Quantity, { setting, portions }: Feeding): Feed {
  if (feed.how === "dissolve") {
    const { water, totalWater } = feed.dissolving;
    return {
      ...feed,
      why: AT_THE_END,
      by: [],
      dissolving: {
        ...feed.dissolving,
        water: waterToAdd(water.plus(more), "water to add = what the liquor needs at the end less all other water"),
        totalWater: totalWater.plus(more) as Quantity<"mass">,
      },
    };
  }
  if (feed.how === "unknown" || (feed.how === "solid" && feed.water !== undefined))
    return { ...feed, water: waterToAdd(feed.water!.plus(more), "what the liquor needs") };
  if (feed.how !== "solution") return feed;
  const material = setting.materials[i]!;
  const [mass, w] = [material.massOf(portions[i]!), material.massFraction()];
  if (mass === undefined || w === undefined) return feed;
  return { ...feed, dilution: dilutedBy(mass, w, feed.dilution?.water.plus(more) ?? more) };
}
