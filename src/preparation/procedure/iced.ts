// A hot liquor cooled in ice: where that brings so much more of the same crystals that it is worth it.

import type { Quantity } from "../../quantity";
import { planned } from "../planning/exact";
import { type Cooling, coolingOf, untilStirred } from "./cooling";
import { isKeptCovered } from "./protection";
import { balanceOf, type Salt, saturatedAt } from "./settling";

type Temperature = Quantity<"temperature">;

/** How a liquor is cooled. */
interface Cooled {
  readonly hot: Temperature;
  readonly cold: Temperature;
  /** Times the least hot water. */
  readonly times: number;
  readonly cooling: Cooling;
}

/** Does ice, clearly colder than the room, bring clearly more of the same solid, and is of what is beside it as much known? */
function isWorthIce(self: Salt, besides: readonly Salt[], { cold: room, cooling }: Cooled, ice: Temperature): boolean {
  if ("missing" in cooling || ice.plus(planned("coolsBy")).compare(room) > 0) return false;
  const { matter, dry } = self;
  if ([room, ice].some((at) => saturatedAt(matter, at)?.solid.key !== matter.key)) return false;
  const isBlind = (one: Salt): boolean =>
    saturatedAt(one.matter, ice) === undefined && saturatedAt(one.matter, room) !== undefined;
  if (besides.some(isBlind)) return false;
  const water = cooling.totalWater.toNumber("g");
  const [less, more] = [room, ice].map((at) => balanceOf([self], matter, water, at)?.dry[0]);
  return (
    less !== undefined &&
    more !== undefined &&
    more - less >= planned(isKeptCovered(matter.formula) ? "worthIceInAir" : "worthIce").toNumber("") * dry
  );
}

/** The cooling in ice; undefined where it is not worth it, or a run is not put into ice as its plan was not. */
export function coolingInIce(
  self: Salt,
  besides: readonly Salt[],
  theory: Quantity<"mass">,
  inRoom: Cooled,
  isPlanned?: boolean,
): Pick<Cooled, "cold" | "cooling"> | undefined {
  const ice = planned("iced") as Temperature;
  if (!(isPlanned ?? isWorthIce(self, besides, inRoom, ice))) return undefined;
  const { formula } = self.matter;
  const { hot, times } = inRoom;
  const cooling = coolingOf(formula, theory, hot, ice, times);
  if ("missing" in cooling) return undefined;
  return { cold: ice, cooling: untilStirred(formula, theory, { hot, cold: ice, times, cooling }).cooling };
}
