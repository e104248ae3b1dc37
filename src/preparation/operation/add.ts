// One vessel into another, and the reaction that follows.
import type { Quantity } from "../../quantity";
import type { Entry } from "../contents/entry";
import { Pot } from "../contents/pot";
import { react, type Term } from "../contents/react";
import { type Done, done, type Left } from "./operation";

/** What reacts once the vessels are together, and how far. */
export interface Reaction {
  readonly terms: readonly Term[];
  readonly extent: Quantity;
}

const asPot = ({ books }: Pot, entries: readonly Entry[]): Pot =>
  entries.reduce(
    (pot, { matter, amount }) => pot.plusSolid(matter, amount, "put in"),
    Pot.empty(books.temperature, books.pressure),
  );

/** What reactions come to. */
export interface Outcome {
  readonly pot: Pot;
  readonly left: readonly Left[];
  readonly taken: readonly Pot[];
}

/** Put reactions to the contents of a vessel. */
export function reacted(start: Pot, reactions: readonly Reaction[]): Outcome {
  const left: Left[] = [];
  const taken: Pot[] = [];
  let pot = start;
  for (const { terms, extent } of reactions) {
    const outcome = react(pot, terms, extent);
    pot = outcome.pot;
    if (outcome.gas.length > 0) left.push({ what: "gas", pot: asPot(start, outcome.gas) });
    if (outcome.taken.length > 0) taken.push(asPot(start, outcome.taken));
  }
  return { pot, left, taken };
}

/** Add the contents of another vessel, which react with what is there. */
export function add(
  before: Pot,
  other: Pot,
  reactions: readonly Reaction[],
  settle: (pot: Pot) => Pot = (p) => p,
): Done {
  return added(before, other, reacted(before.plusAll(other), reactions), settle);
}

/** The same, where what reacts is known already. */
export const added = (
  before: Pot,
  other: Pot,
  { pot, left, taken }: Outcome,
  settle: (pot: Pot) => Pot = (p) => p,
): Done => done("add", before, settle(pot), [other, ...taken], left);
