// Heat capacity of an acid in water, by its strength.

import type { Formula } from "../formula";
import { isOneOf } from "../ion/internal";
import { type Quantity, quantity } from "../quantity";
import { CALORIE, HEAT_CAPACITIES } from "./data/heat-capacities";
import { cite } from "./data/sources";

/** Between two rows, and some tens of kelvins above the temperature of the table, no figure is better than this. */
const RELATIVE = 0.02;

/**
 * Heat capacity of an acid in water, which has less of it than water the stronger it is; undefined where the table has no row for the
 * acid, or for so much of it.
 *
 * @param share - mass fraction of the pure acid, 0 to 1
 */
export function heatCapacityOf(acid: Formula, share: number): Quantity<"specific heat capacity"> | undefined {
  const row = HEAT_CAPACITIES.find((one) => isOneOf(acid, one.acid));
  const at = row?.capacities.map(([percent, calories]) => [Number(percent) / 100, Number(calories)] as const) ?? [];
  const next = at.findIndex(([w]) => w >= share);
  if (row === undefined || next < 0) return undefined;
  const [w1, c1] = at[next]!;
  const [w0, c0] = at[next - 1] ?? at[next]!;
  const calories = w1 === w0 ? c1 : c0 + ((c1 - c0) * (share - w0)) / (w1 - w0);
  const joules = calories * Number(CALORIE);
  return quantity(
    { value: joules.toFixed(4), unit: "J/(g K)", standardUncertainty: (joules * RELATIVE).toFixed(4) },
    { symbol: "c", label: `heat capacity of ${row.acid} in water, at ${row.celsius} °C`, source: cite(row.source) },
  ) as Quantity<"specific heat capacity">;
}
