// What a drop of reagent shows in a little of a clear liquid.

/** Nothing, in either word; or something. */
export type TestOutcome = "clear" | "cloudy" | "negative" | "positive";

export const OUTCOMES: readonly TestOutcome[] = ["clear", "cloudy", "negative", "positive"];

/** Did the test show something? Undefined where it was not done. */
export const shows = (outcome: TestOutcome | undefined): boolean | undefined =>
  outcome === undefined ? undefined : outcome === "cloudy" || outcome === "positive";
