// Arguments that callers without types may get wrong: refused by name, before anything reads them.
import { ArgumentGuard, type Fields } from "../foundation/argument";
import type { AtomicWeightOptions, WeightConvention } from "./convention";
import { ElementError } from "./error";

/** @internal */
export const CONVENTIONS: readonly WeightConvention[] = ["conventional", "abridged", "midpoint"];

export const guard = /* @__PURE__ */ new ArgumentGuard(ElementError, {
  unknown: "element.unknown-option",
  bad: "element.bad-option",
});

const WEIGHT = {
  convention: true,
  value: true,
  massNumberIfNone: true,
  facts: true,
} as const satisfies Fields<AtomicWeightOptions>;

/** Options of an atomic weight. */
export function needWeightOptions(options: AtomicWeightOptions): void {
  guard.fields(options, WEIGHT);
  const { convention, massNumberIfNone } = options;
  if (convention !== undefined) guard.choice(convention, "convention", CONVENTIONS);
  if (massNumberIfNone !== undefined) guard.boolean(massNumberIfNone, "massNumberIfNone");
}
