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
  notPositive: "aqueous.not-positive",
});

/** A quantity that must be greater than zero. */
export function positive<D extends string>(
  like: QuantityLike,
  dimension: D,
  argument: string,
  naming?: InputNaming,
): Quantity<D> {
  return guard.positive(expectDimension(like, dimension, argument, naming), argument);
}
