// How fast to add what gives off gas: so that each portion's gas fits the headspace, hand and vessel can follow, and the room stays
// under its limit.

import type { Quantity } from "../../quantity";
import { PLANNING } from "../data/planning";
import type { Room } from "../request/setting";
import { planned } from "./exact";
import type { GasEvolved, Vessel } from "./vessel";

/** Pace of adding. */
export interface Pace {
  /** Portions to divide the addition into, so that the gas of one fits the headspace and none warms the vessel much; at least 5. */
  readonly portions: number;
  /** Of all gases together, for each portion. */
  readonly gasPerPortion: Quantity<"volume">;
  /** Air above the liquid in the vessel. */
  readonly headspace: Quantity<"volume">;
  /** Share of the air of the room if all were given off at once, by gas. */
  readonly atOnce: readonly {
    readonly formula: string;
    readonly key: string;
    readonly share: Quantity<"number">;
    readonly limit: Quantity<"number"> | undefined;
  }[];
  /** Least time for the whole addition: by hand, by the foam in the vessel, and by the air of the room. */
  readonly leastTime: Quantity<"time">;
  /** Least time by the air changes of the room alone; undefined for gases that need a hood, or have no limit. */
  readonly leastTimeInRoom: Quantity<"time"> | undefined;
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

const MOST_PORTIONS = 10_000;

export function paceOf(
  gases: readonly GasEvolved[],
  vessel: Vessel | undefined,
  room: Room,
  rise: Quantity | undefined,
  isSlow: boolean,
): Pace | undefined {
  if (gases.length === 0 || vessel === undefined) return undefined;
  const total = gases.map((g) => g.volume).reduce((a, b) => a.plus(b));
  const size = vessel.smallest ?? vessel.needed;
  const headspace = size.minus(vessel.liquid).to("L").named({ symbol: "V(headspace)", label: "air above the liquid" });
  if (!headspace.isPositive()) return undefined;
  // pieces of metal give theirs off little by little, and no portion foams at once
  const needed = isSlow ? 0 : Math.ceil(total.dividedBy(headspace).toNumber(""));
  const byHeat = rise === undefined ? 0 : Math.ceil(rise.dividedBy(planned("portionWarms")).toNumber(""));
  const portions = Math.min(MOST_PORTIONS, Math.max(Number(PLANNING.leastPortions.value), needed, byHeat));
  const warnings: string[] = [];
  const atOnce = gases.map(({ formula, key, volume, hood, limit }) => {
    const share = volume
      .dividedBy(room.volume)
      .to("ppm")
      .named({ symbol: `φ(${formula})`, rule: "share of the room = volume of gas / volume of the room" });
    if (hood) warnings.push(`${formula}: under a hood only, whatever the quantity`);
    return { formula, key, share, limit };
  });
  // Steady state: concentration = rate / (changes × volume of the room), so time = volume / (limit × changes × room).
  const times = gases.flatMap(({ formula, volume, limit }) => {
    if (limit === undefined) return [];
    return [
      volume
        .dividedBy(limit)
        .dividedBy(room.changes)
        .dividedBy(room.volume)
        .to("min")
        .named({
          symbol: "t",
          label: `least time for the ${formula}`,
          rule: "time = volume / (limit × air changes × room)",
        }),
    ];
  });
  const hood = gases.some((g) => g.hood);
  const longest = (all: readonly Quantity[]): Quantity => all.reduce((a, b) => (b.compare(a) > 0 ? b : a));
  const inRoom = hood || times.length === 0 ? undefined : longest(times);
  const byHand = planned("portionLasts").times(portions);
  const byFoam = total.dividedBy(size).dividedBy(planned("gasFlow")).to("min");
  return {
    portions,
    gasPerPortion: total.dividedBy(portions),
    headspace,
    atOnce,
    leastTime: longest([byHand, byFoam, ...(inRoom === undefined ? [] : [inRoom])])
      .to("min")
      .named({
        symbol: "t",
        label: "least time for the addition",
        rule: "the longest of portions × half a minute, gas / (vessel in a minute), and the time that the room asks for",
      }) as Quantity<"time">,
    leastTimeInRoom: inRoom as Quantity<"time"> | undefined,
    warnings,
  };
}
