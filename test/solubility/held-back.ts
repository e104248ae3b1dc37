// Leave-one-out over the solubility table: every inner figure of every row with six or more is taken out of the row, and
// the row without it is read at its temperature, changes of solid and refusals included.

import { partsOf, readCurve } from "../../src/solubility/curves/reading";
import type { SolubilityRow } from "../../src/solubility/data/curves";
import { SOLUBILITY } from "../../src/solubility/data/curves";
import { SolubilityError } from "../../src/solubility/error";

/** Why a held-back figure is hard to foretell, as far as the table itself tells. */
export type Reason =
  /** The solid changes between its neighbours. */
  | "change of solid"
  /** Its neighbours are 20 K apart on one side or the other. */
  | "wide gap"
  /** Half a unit of the last digit printed, here or beside it, is 1 % or more. */
  | "few digits"
  /** None of these: the figures around it do not lie on one smooth curve. */
  | "scatter";

export interface HeldBack {
  readonly formula: string;
  readonly celsius: number;
  /** Foretold over printed, less one; undefined when the row refuses to answer without the figure. */
  readonly miss: number | undefined;
  /** Relative standard uncertainty stated for the foretold figure. */
  readonly stated: number;
  readonly reason: Reason;
}

const halfDigit = (text: string): number => {
  const decimals = /\.(\d+)/.exec(text)?.[1]?.length ?? 0;
  const power = Number(/e(.+)/.exec(text)?.[1] ?? 0);
  return (0.5 * 10 ** (power - decimals)) / Number(text);
};

function reasonFor(row: SolubilityRow, k: number): Reason {
  const near = row.points.slice(k - 1, k + 2);
  const [before, own, after] = near.map(([celsius]) => celsius) as [number, number, number];
  if (row.solids.some(({ upTo }) => Number(upTo) > before && Number(upTo) < after)) return "change of solid";
  if (Math.max(own - before, after - own) >= 20) return "wide gap";
  return near.some(([, text]) => halfDigit(text) >= 0.01) ? "few digits" : "scatter";
}

/** Every inner figure of every row with six or more, foretold without it. */
export function heldBack(): HeldBack[] {
  return SOLUBILITY()
    .filter(({ points }) => points.length >= 6)
    .flatMap((row) =>
      row.points.slice(1, -1).map(([celsius, text], i): HeldBack => {
        const without = {
          ...row,
          points: row.points.filter(([at]) => at !== celsius),
          ...(row.changesWithin && {
            // a change that lies on one side of the figure lies, without it, between its neighbours
            changesWithin: row.changesWithin.map(([from, to]): [number, number] => [
              from === celsius ? row.points[i]![0] : from,
              to === celsius ? row.points[i + 2]![0] : to,
            ]),
          }),
        };
        const place = { formula: row.formula, celsius, reason: reasonFor(row, i + 1) };
        try {
          const reading = readCurve(without, celsius);
          const stated = Math.sqrt(partsOf(reading).reduce((all, { relative }) => all + relative ** 2, 0));
          return { ...place, miss: reading.value / Number(text) - 1, stated };
        } catch (error) {
          if (!(error instanceof SolubilityError)) throw error;
          return { ...place, miss: undefined, stated: 0 };
        }
      }),
    );
}
