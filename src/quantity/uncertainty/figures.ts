// Significant figures as they are taught: a shorthand for uncertainty where none is stated. Sums keep the fewest
// decimals, products the fewest figures; the library itself carries uncertainties instead and rounds once.

import { QuantityError } from "../error";
import { ROUNDINGS } from "../text/format";
import { guard, needList, needText } from "../value/argument";
import {
  add,
  decimalText,
  divide,
  multiply,
  type Rounding,
  rational,
  scaled,
  significantText,
  subtract,
} from "../value/rational";
import { readNumber, writtenDecimals } from "../value/read-number";

const OPERATIONS = { add, subtract, multiply, divide } as const;

/**
 * How many figures of a number as written are significant. Zeros in front never count; zeros at the end count when a
 * decimal point is written ("0.88400", "100."), and not in a bare whole number ("1300"), where nothing tells them from
 * place-holders.
 *
 * @param text - a decimal number
 * @returns a whole number; 0 for a written zero
 * @throws {QuantityError} `quantity.not-a-number`
 * @source OpenStax Chemistry 2e (2019), section 1.5
 * @category Quantities
 * @example
 * significantFigures("0.88400") // => 5
 */
export function significantFigures(text: string): number {
  needText(text);
  readNumber(text);
  const mantissa = text.replace(/[eE].*/, "").replace(/[+-]/, "");
  const digits = mantissa.replace(".", "").replace(/^0+/, "");
  return mantissa.includes(".") ? digits.length : digits.replace(/0+$/, "").length;
}

/**
 * A result with as many figures as the classroom rule allows: sums and differences to the fewest decimals, products and
 * quotients to the fewest significant figures.
 *
 * @param operation - "add", "subtract", "multiply" or "divide", applied from left to right
 * @param values - two or more decimal numbers as text, with the figures they were measured to
 * @param rounding - what happens to a tie; "half-even" unless given
 * @returns decimal text
 * @throws {QuantityError} `quantity.not-a-number`, `quantity.division-by-zero`, `quantity.readings` for fewer than two
 * @source OpenStax Chemistry 2e (2019), section 1.5
 * @category Quantities
 * @example
 * withSignificantFigures("multiply", ["0.6238", "6.6"]) // => "4.1"
 */
export function withSignificantFigures(
  operation: "add" | "subtract" | "multiply" | "divide",
  values: readonly string[],
  rounding: Rounding = "half-even",
): string {
  needList(values, "significant figures");
  for (const value of values) needText(value);
  guard.choice(operation, "operation", Object.keys(OPERATIONS));
  guard.choice(rounding, "rounding", ROUNDINGS);
  const apply = OPERATIONS[operation];
  const numbers = values.map(readNumber);
  const [first, ...rest] = numbers;
  if (first === undefined || rest.length === 0) {
    throw new QuantityError("quantity.readings", `${operation} needs two or more values, not ${values.length}`);
  }
  if (operation === "divide" && rest.some(({ n }) => n === 0n)) {
    throw new QuantityError("quantity.division-by-zero", "division by zero");
  }
  const result = rest.reduce(apply, first);
  if (operation === "add" || operation === "subtract") {
    const decimals = Math.min(...values.map(writtenDecimals));
    return decimalText(scaled(result, decimals, rounding), decimals);
  }
  if (result.n === 0n) return "0";
  return significantText(
    rational(result.n, result.d),
    Math.max(1, Math.min(...values.map(significantFigures))),
    rounding,
  );
}
