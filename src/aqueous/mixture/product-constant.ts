// The solubility product of a row as a shared constant: the same input wherever the library uses it.

import { SOLUTION_HEATS } from "../data/heats";
import type { SolubilityProductRow } from "../data/products";
import { type Constant, constant, LONE_SPREAD } from "./constant";

const made = /* @__PURE__ */ new WeakMap<SolubilityProductRow, Constant>();

/** pKsp of a row; its uncertainty is half the spread of the sources as a rectangle, 0.1 at least. */
export function productConstant(row: SolubilityProductRow): Constant {
  let one = made.get(row);
  if (one === undefined) {
    const [low, high] = row.range ?? [row.pKsp, row.pKsp];
    const heat = SOLUTION_HEATS[row.form === undefined ? row.solid : `${row.solid}|${row.form}`];
    const spread = Math.max(LONE_SPREAD, (Number(high) - Number(low)) / 2 / Math.sqrt(3));
    one = constant(
      `pKsp(${row.solid})`,
      `pKsp of ${row.name}${row.form === undefined ? "" : ` (${row.form})`}, 25 °C`,
      row.pKsp,
      spread,
      {
        source: row.source,
        doubtful: row.doubtful ?? false,
        enthalpy: heat === undefined ? undefined : Number(heat),
      },
    );
    made.set(row, one);
  }
  return one;
}
