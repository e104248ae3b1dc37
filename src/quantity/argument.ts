// Arguments that callers without types may get wrong: refused by name, before anything reads them.
import { QuantityError } from "./error";

/** A list of something. */
export function needList(value: unknown, what: string): void {
  if (Array.isArray(value)) return;
  throw new QuantityError("quantity.readings", `${what} needs a list, not ${value === null ? "null" : typeof value}`, {
    hint: 'such as ["1.2 g", "3.4 g"]',
  });
}

/** An object with fields: options, or named inputs. */
export function needRecord(value: unknown, what: string): void {
  if (typeof value === "object" && value !== null && !Array.isArray(value)) return;
  throw new QuantityError(
    "quantity.not-a-quantity",
    `${what} must be an object, not ${value === null ? "null" : typeof value}`,
  );
}

/** Text of a number. */
export function needText(value: unknown, what: string): void {
  if (typeof value === "string") return;
  throw new QuantityError(
    "quantity.not-a-number",
    `${what} must be text, not ${value === null ? "null" : typeof value}`,
  );
}
