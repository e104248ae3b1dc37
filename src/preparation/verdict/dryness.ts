// Is it dry? Constant mass by the stated criterion; and where it goes to, from how the last weighings fell.
import type { Quantity } from "../../quantity";
import { exact, lessThanAll, planned } from "../planning/exact";

/** The state of drying. */
export interface Dryness {
  /** Undefined where there are too few weighings to tell. */
  readonly constant: boolean | undefined;
  /** What the last two weighings say, in words. */
  readonly state: "constant mass" | "still drying" | "gaining" | "not known";
  /** Mass lost between the last two weighings; below zero when it gained. */
  readonly lastLoss: Quantity<"mass"> | undefined;
  /** Two weighings that differ by less than this are constant mass: two steps of the balance or 0.2 %. */
  readonly criterion: Quantity<"mass"> | undefined;
  /** Mass of the next weighing, if drying goes on as it did; from three weighings. */
  readonly nextExpected: Quantity<"mass"> | undefined;
  /** Mass it comes to in the end, if drying goes on as it did. */
  readonly endsAt: Quantity<"mass"> | undefined;
  /** Water still in it, by the same calculation. */
  readonly waterLeft: Quantity<"mass"> | undefined;
  /** Share of the wet cake that was liquor. */
  readonly moistureOfCake: Quantity<"number"> | undefined;
}

/** Losses that shrink by a constant factor: each is q times the one before, all that follow sum to q / (1 - q). */
function extrapolated(masses: readonly Quantity[]): { next: Quantity; end: Quantity } | undefined {
  const [a, b, c] = masses.slice(-3);
  if (a === undefined || b === undefined || c === undefined) return undefined;
  const [first, second] = [a.minus(b), b.minus(c)];
  if (!first.isPositive() || !second.isPositive()) return undefined;
  const q = second.dividedBy(first);
  if (q.compare(exact("1")) >= 0) return undefined;
  const next = c
    .minus(second.times(q))
    .to("g")
    .named({ symbol: "m(next)", label: "mass expected next", rule: "each loss is the same share of the one before" });
  const end = c
    .minus(second.times(q).dividedBy(lessThanAll(q)))
    .to("g")
    .named({
      symbol: "m(end)",
      label: "mass it comes to",
      rule: "last mass - last loss × q / (1 - q), q = last loss / loss before",
    });
  return end.isPositive() ? { next, end } : undefined;
}

export function drynessOf(masses: readonly Quantity[], wetCake: Quantity | undefined, step: Quantity): Dryness {
  const last = masses.at(-1);
  const before = masses.at(-2);
  const moistureOfCake =
    wetCake === undefined || last === undefined || wetCake.compare(last) < 0
      ? undefined
      : wetCake
          .minus(last)
          .dividedBy(wetCake)
          .to("%")
          .named({ symbol: "w(liquor)", label: "liquor in the wet cake", rule: "(wet - dry) / wet" });
  const nothing = { nextExpected: undefined, endsAt: undefined, waterLeft: undefined, moistureOfCake };
  if (last === undefined || before === undefined)
    return { constant: undefined, state: "not known", lastLoss: undefined, criterion: undefined, ...nothing };
  const share = last.times(planned("constantMass"));
  const steps = step.times(2);
  const criterion = (steps.compare(share) > 0 ? steps : share).to("g");
  const lastLoss = before.minus(last).to("g");
  const size = !lastLoss.isPositive() ? lastLoss.negated() : lastLoss;
  if (size.compare(criterion) <= 0) return { constant: true, state: "constant mass", lastLoss, criterion, ...nothing };
  if (!lastLoss.isPositive()) return { constant: false, state: "gaining", lastLoss, criterion, ...nothing };
  const path = extrapolated(masses);
  return {
    constant: false,
    state: "still drying",
    lastLoss,
    criterion,
    nextExpected: path?.next,
    endsAt: path?.end,
    waterLeft:
      path === undefined
        ? undefined
        : last.minus(path.end).to("g").named({ symbol: "m(water)", rule: "last mass - mass it comes to" }),
    moistureOfCake,
  };
}
