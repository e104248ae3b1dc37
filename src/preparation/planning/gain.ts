// A firing that makes heavier: what it takes up from the air is all that the mass tells of it.
import type { Quantity } from "../../quantity";
import type { Batch } from "./batch";
import { exact, lessThanAll, planned } from "./exact";

/** What a charge gains in the fire. */
export interface Gain {
  /** The charge as it was put in. */
  readonly start: Quantity;
  /** The same when all of it has reacted. */
  readonly end: Quantity;
  readonly gain: Quantity;
  /** Does a mass that only handling made smaller still show that it is done? */
  readonly tells: boolean;
}

/** The gain of a firing; undefined where nothing is fired or it loses mass. */
export function gainOf(batch: Pick<Batch, "isolation" | "steps">, handlingLoss: Quantity): Gain | undefined {
  if (batch.isolation.how !== "residue") return undefined;
  const fired = batch.steps.find(({ operation }) => operation === "fire");
  if (fired === undefined) return undefined;
  const start = fired.before.mass;
  const end = fired.after.mass;
  if (end.compare(start) <= 0) return undefined;
  const gain = end
    .minus(start)
    .to("g")
    .named({ symbol: "m(gain)", label: "gain when all has reacted", rule: "end - charge" });
  const least = shareDone({ start, gain }, end.times(lessThanAll(handlingLoss)));
  return { start, end, gain, tells: least.compare(planned("firedThrough")) >= 0 };
}

/** How much of a charge has reacted that weighs so much, if nothing of it was lost; nothing where it weighs less than it did. */
export function shareDone({ start, gain }: Pick<Gain, "start" | "gain">, mass: Quantity): Quantity {
  const gained = mass.minus(start);
  const naming = { symbol: "w(reacted)", label: "share that has reacted", rule: "(mass - charge) / gain" };
  return (gained.isPositive() ? gained.dividedBy(gain) : exact("0")).to("%").named(naming);
}
