// An argument of a known dimension, and the refusal of any other by the name of the argument.
import { QuantityError } from "../error";
import { hintFor, withArticle, withUnits } from "../text/meant";
import { isNumber } from "./dimension";
import { quantity } from "./quantity";
import { BRAND, type InputNaming, type Quantity, type QuantityLike } from "./types";

/** `assay must be a mass fraction`; `expected a mass` where the argument is called so. */
const asked = (argument: string, dimension: string): string =>
  `${argument === dimension ? "expected" : `${argument} must be`} ${withArticle(dimension)}`;

/**
 * Read an argument of a known dimension, refusing any other with the argument's name.
 *
 * @internal
 */
export function expectDimension<D extends string>(
  like: QuantityLike,
  dimension: D,
  argument: string,
  naming?: InputNaming,
): Quantity<D> {
  if (typeof like === "number") {
    throw new QuantityError("quantity.not-a-quantity", `${asked(argument, dimension)}, not a bare number`, {
      details: { argument, expected: dimension, received: "number" },
      hint: withUnits(String(like), dimension),
    });
  }
  const q = quantity(like, naming);
  const fits =
    q.dimension === dimension ||
    (q[BRAND].dimension.kind === "" && isNumber(q[BRAND].dimension) && dimension.endsWith("fraction"));
  if (fits) return q as Quantity<D>;
  throw new QuantityError(
    "quantity.wrong-dimension",
    `${asked(argument, dimension)}, not ${withArticle(q.dimension)} (${String(q)})`,
    {
      details: { argument, expected: dimension, received: q.dimension },
      hint: hintFor(dimension, q.unit, String(q)),
    },
  );
}
