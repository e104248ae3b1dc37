// What all operations share: contents in, contents out, what was put in and what left.

import type { Formula } from "../../formula";
import type { Quantity } from "../../quantity";
import { Pot } from "../contents/pot";

/** Operations of the bench. */
export type Operation =
  | "weigh"
  | "dissolve"
  | "dilute"
  | "suspend"
  | "add"
  | "heat"
  | "hold"
  | "concentrate"
  | "cool"
  | "seed"
  | "filter"
  | "wash"
  | "rinse"
  | "dry"
  | "fire"
  | "collect";

/** What leaves a vessel. */
type Leaving = "vapour" | "gas" | "filtrate" | "wash water" | "residue" | "dust";

/** Contents that left. */
export interface Left {
  readonly what: Leaving;
  readonly pot: Pot;
}

/** An operation done on the contents of a vessel: before + put in = after + left. */
export interface Done {
  readonly operation: Operation;
  readonly before: Pot;
  readonly after: Pot;
  /** What came in: from another vessel, from the pack, from the tap or from the air. */
  readonly put: readonly Pot[];
  readonly left: readonly Left[];
}

export const done = (
  operation: Operation,
  before: Pot,
  after: Pot,
  put: readonly Pot[] = [],
  left: readonly Left[] = [],
): Done => ({ operation, before, after, put, left });

/** A vessel with nothing but water. */
export const justWater = ({ books }: Pot, water: Quantity): Pot =>
  Pot.empty(books.temperature, books.pressure).plusWater(water);

/** Water that leaves as vapour. */
export const vapour = (pot: Pot, water: Quantity): Left => ({ what: "vapour", pot: justWater(pot, water) });

/** Part of what is dissolved leaves as vapour; no vapour where there is none of it. */
export function evaporated(
  pot: Pot,
  leaves: (formula: Formula) => boolean,
): { readonly rest: Pot; readonly left: readonly Left[] } {
  const { dissolved, temperature, pressure } = pot.books;
  const gone = dissolved.filter(({ matter }) => leaves(matter.formula));
  if (gone.length === 0) return { rest: pot, left: [] };
  const steam = gone.reduce(
    (all, { matter, amount }) => all.plusDissolved(matter, amount),
    Pot.empty(temperature, pressure),
  );
  return {
    rest: pot.with({ dissolved: dissolved.filter((one) => !gone.includes(one)) }),
    left: [{ what: "vapour", pot: steam }],
  };
}
