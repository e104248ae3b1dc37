// Answers that hold exact numbers: bigints and fractions are no JSON. `JSON.stringify` of such an answer writes them as
// text, "5" and "8/3", as the records of the library do.
import { Fraction } from "./fraction";
import { PRINTING } from "./readable";

/** The value as JSON has it: exact numbers as text, values with a record as their record. */
function plain(value: unknown): unknown {
  if (typeof value === "bigint") return value.toString();
  if (typeof value !== "object" || value === null) return value;
  if (value instanceof Fraction) return value.toFraction();
  if (Array.isArray(value)) return value.map(plain);
  const { toJSON } = value as { readonly toJSON?: unknown };
  return typeof toJSON === "function" ? toJSON.call(value) : fieldsOf(value);
}

/** The fields as JSON has them, without methods. */
function fieldsOf(value: object): object {
  const fields = Object.entries(value).filter(([, inner]) => typeof inner !== "function");
  return Object.fromEntries(fields.map(([field, inner]) => [field, plain(inner)]));
}

const TO_JSON: PropertyDescriptor = {
  value(this: object): object {
    return fieldsOf(this);
  },
};

/** The same as methods of a lazy answer. */
export const PLAIN_JSON = /* @__PURE__ */ Object.create(PRINTING, { toJSON: TO_JSON }) as object;

/**
 * The answer itself, with a `toJSON` that is not among its fields.
 *
 * @internal
 */
export const withPlainJSON = <T extends object>(answer: T): T => Object.defineProperty(answer, "toJSON", TO_JSON);
