// A feed for crystals that dissolves less hot than warm: dissolved where it dissolves best, in water that keeps it clear at the hottest
// of what follows.

import { molarMass } from "../../formula";
import type { Quantity } from "../../quantity";
import { exact, planned } from "../planning/exact";
import type { Material } from "../shelf/material";
import { crystalWaterOf, type Feed, type Feeding, waterToAdd } from "./feed";
import { leastWater } from "./feed-dissolved";
import { slowSolid } from "./slow-solid";
import { isStated } from "./stated-water";

type Temperature = Quantity<"temperature">;

/** Where a feed may be dissolved instead. */
const COOLER = ["30 °C", "40 °C", "50 °C", "60 °C", "70 °C"];

/** The same feed, where its table does not fall; what shares its water keeps that. */
export function fallingFeed(feed: Feed, material: Material, i: number, feeding: Feeding): Feed {
  const { setting, account, roles } = feeding;
  if (!feeding.crystals || feed.how !== "dissolve" || feed.shares === true || isStated(material)) return feed;
  if (setting.request.waterFactor !== undefined || feed.at.compare(setting.temperature) <= 0) return feed;
  const { amount } = account.supplied[i]!;
  const mass = amount.times(molarMass(material.form)).to("g");
  const least = (at: Temperature) => leastWater(material.form, mass, at);
  const slow = slowSolid(setting, roles);
  const kept = slow === undefined || slow.i === i ? undefined : (exact(slow.row.at) as Temperature);
  const hottest = kept !== undefined && kept.compare(feed.at) > 0 ? kept : feed.at;
  const there = least(hottest)?.totalWater;
  if (there === undefined) return feed;
  const [best] = COOLER.map((text) => exact(text) as Temperature)
    .filter((at) => at.compare(setting.temperature) > 0 && at.compare(feed.at) < 0)
    .flatMap((at) => {
      const known = least(at);
      return known === undefined ? [] : [{ at, known, water: known.totalWater }];
    })
    .sort((one, other) => one.water.compare(other.water));
  const little = exact("1").plus(planned("littleMore"));
  if (best === undefined || best.water.times(little).compare(there) >= 0) return feed;
  const totalWater = there.times(planned("pairFilter")).to("g") as Quantity<"mass">;
  const water = waterToAdd(
    totalWater.minus(crystalWaterOf(material, amount)),
    `water to add = ${planned("pairFilter")} times what keeps it dissolved at ${hottest} − crystal water`,
  );
  if (!water.isPositive()) return feed;
  return {
    ...feed,
    at: best.at,
    why: "it dissolves less hot than warm",
    dissolving: { ...best.known, water, totalWater, meltsInOwnWater: false },
  };
}
