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

/** Put reactions to the contents of a vessel. */
export function reacted(start: Pot, reactions: readonly Reaction[]): { pot: Pot; left: Left[]; taken: Pot[] } {
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
  const { pot, left, taken } = reacted(before.plusAll(other), reactions);
  return done("add", before, settle(pot), [other, ...taken], left);
}
