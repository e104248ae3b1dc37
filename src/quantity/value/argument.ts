// Arguments that callers without types may get wrong: refused by name, before anything reads them.
import { ArgumentGuard, type Fields, kindOf } from "../../foundation/argument";
import { QuantityError } from "../error";
import type { Naming } from "./graph";
import type { InputNaming } from "./types";

/** The guard of this layer. */
export const guard = /* @__PURE__ */ new ArgumentGuard(QuantityError, {
  unknown: "quantity.unknown-option",
  bad: "quantity.bad-option",
});

const NAMING = {
  symbol: true,
  label: true,
  rule: true,
  source: true,
  assumption: true,
} as const satisfies Fields<Naming>;

const INPUT_NAMING = {
  ...NAMING,
  distribution: true,
  degreesOfFreedom: true,
  decimalSign: true,
  facts: true,
} as const satisfies Fields<InputNaming>;

/** @internal The ways a half-width can spread. */
export const DISTRIBUTIONS = ["normal", "rectangular", "triangular"] as const;

function needWords(naming: Naming): void {
  for (const word in naming) {
    const text: unknown = naming[word as keyof Naming];
    if (typeof text !== "string" && text !== undefined && word in NAMING) guard.text(text, word);
  }
}

/** What a value is called: fields of text. */
export function needNaming(naming: unknown): void {
  guard.fields(naming, NAMING);
  needWords(naming as Naming);
}

/** What an input is called, and how it spreads. */
export function needInputNaming(naming: unknown): void {
  guard.fields(naming, INPUT_NAMING);
  needWords(naming as Naming);
  const { distribution, decimalSign } = naming as InputNaming;
  if (decimalSign !== undefined) guard.choice(decimalSign, "decimalSign", [".", ","]);
  if (distribution !== undefined) guard.choice(distribution, "distribution", DISTRIBUTIONS);
}

/** A list of something, without holes. */
export function needList(value: unknown, what: string): void {
  if (!Array.isArray(value)) {
    throw new QuantityError("quantity.readings", `${what} needs a list, not ${kindOf(value)}`, {
      hint: 'such as ["1.2 g", "3.4 g"]',
    });
  }
  guard.list(value, what);
}

/** An object with fields of any name: named inputs. */
export function needRecord(value: unknown, what: string): void {
  guard.record(value, what);
}

/** Text of a number. */
export function needText(value: unknown): void {
  if (typeof value === "string") return;
  throw new QuantityError("quantity.not-a-number", `a number must be text, not ${kindOf(value)}`);
}
