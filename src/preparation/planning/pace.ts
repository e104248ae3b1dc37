// How fast to add what gives off gas: so that each portion's gas fits the headspace, and the room stays under its limit.

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
  /** Least time for the whole addition, with the room's air changes; undefined for gases that need a hood. */
  readonly leastTime: Quantity<"time"> | undefined;
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

const MOST_PORTIONS = 10_000;

export function paceOf(
  gases: readonly GasEvolved[],
  vessel: Vessel | undefined,
  room: Room,
  rise: Quantity | undefined,
): Pace | undefined {
  if (gases.length === 0 || vessel === undefined) return undefined;
  const total = gases.map((g) => g.volume).reduce((a, b) => a.plus(b));
  const size = vessel.smallest ?? vessel.needed;
  const headspace = size.minus(vessel.liquid).to("L").named({ symbol: "V(headspace)", label: "air above the liquid" });
  if (!headspace.isPositive()) return undefined;
  const needed = Math.ceil(total.dividedBy(headspace).toNumber(""));
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
  return {
    portions,
    gasPerPortion: total.dividedBy(portions),
    headspace,
    atOnce,
    leastTime: hood || times.length === 0 ? undefined : times.reduce((a, b) => (b.compare(a) > 0 ? b : a)),
    warnings,
  };
}
