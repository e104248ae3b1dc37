// A quantity as plain data and back. The graph is not carried along: what comes back is an input with the same value,
// unit, uncertainty, label and source.

import { shownValue } from "../../foundation/error";
import { headProblem, type RecordHead, recordHead } from "../../foundation/record";
import { QuantityError } from "../error";
import type { Distribution } from "../text/read";
import { uncertaintyOf } from "../uncertainty/budget";
import type { Node } from "./graph";
import { divide, exactText, reduce, square, subtract } from "./rational";
import { toRational } from "./read-number";
import { DIGITS, squareRootOf } from "./real";
import { readUnit } from "./unit";

const QUANTITY_SCHEMA = 1;

/** A quantity as `toJSON` writes it. */
export interface QuantityRecord extends RecordHead<"quantity"> {
  /** Decimal text, or two whole numbers with a solidus where the decimals do not end. */
  readonly value: string;
  /** Symbol of the unit that `value` is in. */
  readonly unit: string;
  /** In the same unit, as decimal text. */
  readonly standardUncertainty?: string;
  /** Of the standard uncertainty of a given value; absent where infinite. */
  readonly degreesOfFreedom?: number;
  /** How a given value is spread; absent where nobody said. */
  readonly distribution?: Distribution;
  /** Decimals as written, where the value was read from text. */
  readonly decimals?: number;
  /** What formulas call the value. */
  readonly symbol?: string;
  /** What the value is, in words. */
  readonly label?: string;
  /** Citation of where the value comes from. */
  readonly source?: string;
}

export function toRecord(node: Node): QuantityRecord {
  const { unit, naming, leaf, decimals } = node;
  const value = reduce(divide(subtract(node.value, unit.offset), unit.factor));
  const variance = uncertaintyOf(node);
  const words: { symbol?: string; label?: string; source?: string } = {};
  if (naming?.symbol !== undefined) words.symbol = naming.symbol;
  if (naming?.label !== undefined) words.label = naming.label;
  if (naming?.source !== undefined) words.source = naming.source;
  return {
    ...recordHead("quantity", QUANTITY_SCHEMA),
    value: exactText(value, 60) ?? `${value.n}/${value.d}`,
    unit: unit.symbol,
    ...(variance === undefined
      ? {}
      : {
          standardUncertainty: squareRootOf(divide(variance, square(unit.factor)))
            .toSignificantDigits(DIGITS)
            .toString(),
        }),
    ...(leaf === undefined || leaf.degreesOfFreedom === Infinity ? {} : { degreesOfFreedom: leaf.degreesOfFreedom }),
    ...(leaf?.distribution === undefined ? {} : { distribution: leaf.distribution }),
    ...(decimals === undefined ? {} : { decimals }),
    ...words,
  };
}

/** Decimals a text can be written with: its digits and its exponent, each up to 300. */
const MOST_DECIMALS = 600;

/** The record, checked field by field. */
export function checkRecord(data: unknown): QuantityRecord {
  const bad = (what: string): QuantityError =>
    new QuantityError("quantity.json", `not a quantity record: ${what}`, { hint: "pass what toJSON gave, parsed" });
  const problem = headProblem(data, "quantity", QUANTITY_SCHEMA);
  if (problem !== undefined) throw bad(problem);
  const record = data as Partial<Record<keyof QuantityRecord, unknown>>;
  for (const field of ["value", "unit"] as const) {
    if (typeof record[field] !== "string") throw bad(`${field} is not text`);
  }
  for (const field of ["standardUncertainty", "symbol", "label", "source"] as const) {
    if (record[field] !== undefined && typeof record[field] !== "string") throw bad(`${field} is not text`);
  }
  if (/^\s*-/.test((record.standardUncertainty as string | undefined) ?? "")) throw bad("an uncertainty below zero");
  if (
    record.distribution !== undefined &&
    !["normal", "rectangular", "triangular"].includes(record.distribution as string)
  ) {
    throw bad(`distribution '${shownValue(record.distribution)}'`);
  }
  const { degreesOfFreedom, decimals, standardUncertainty, dimension } = record as typeof record & {
    readonly dimension?: unknown;
  };
  if (degreesOfFreedom !== undefined && !(typeof degreesOfFreedom === "number" && degreesOfFreedom > 0))
    throw bad("degreesOfFreedom is not a number above zero");
  if (decimals !== undefined && !(Number.isInteger(decimals) && Math.abs(decimals as number) <= MOST_DECIMALS))
    throw bad(`decimals is not a whole number within ±${MOST_DECIMALS}`);
  if (standardUncertainty !== undefined && toRational(standardUncertainty as string).n < 0n)
    throw bad("standardUncertainty is below zero");
  if (dimension !== undefined && dimension !== readUnit(record.unit as string).dimension.name)
    throw bad(`${shownValue(record.unit)} is not a unit of ${shownValue(dimension)}`);
  return record as unknown as QuantityRecord;
}
