// The guard of this layer's arguments, and quantities of a known dimension.
import { ArgumentGuard } from "../foundation/argument";
import type { InputNaming, Quantity, QuantityLike } from "../quantity";
import { expectDimension } from "../quantity/internal";
import { AqueousError } from "./error";

/** What is no request, no option or no list is refused by name. */
export const guard = /* @__PURE__ */ new ArgumentGuard(AqueousError, {
  unknown: "aqueous.unknown-option",
  bad: "aqueous.bad-option",
  missing: "aqueous.missing-option",
});

/** A quantity that must be greater than zero. */
export function positive<D extends string>(
  like: QuantityLike,
  dimension: D,
  argument: string,
  naming?: InputNaming,
): Quantity<D> {
  const q = expectDimension(like, dimension, argument, naming);
  if (q.isPositive()) return q;
  throw new AqueousError("aqueous.not-positive", `${argument} must be above zero, not ${q}`, {
    details: { argument },
  });
}
