// Texts typed where decimals stand after a comma.
import { isPreparativeError, relocated } from "../../foundation/error";
import { QuantityError } from "../error";

/**
 * Read a text whose decimals stand after a comma; what is refused points into the text as it was typed.
 *
 * @internal
 */
export function withDecimalComma<T>(text: string, read: (text: string) => T): T {
  const point = /\d\.(?=\d)/.exec(text);
  if (point !== null) {
    throw new QuantityError(
      "quantity.decimal-comma",
      "a point inside a number whose decimals are written after a comma",
      {
        input: text,
        position: point.index + 1,
        hint: "write a comma before the decimals, and no mark between thousands",
      },
    );
  }
  try {
    return read(text.replace(/(\d),(?=\d)/g, "$1."));
  } catch (error) {
    throw isPreparativeError(error) && error.input !== undefined ? relocated(error, text, 0) : error;
  }
}
