// Arguments that callers without types may get wrong: refused by name, before anything reads them. Only slow paths come
// here; text that reads well never does.
import { ArgumentGuard, type Fields, kindOf } from "../foundation/argument";
import { FormulaError } from "./error";
import type { ReadOptions } from "./read/cursor";

/** The guard of this layer. */
export const guard = /* @__PURE__ */ new ArgumentGuard(FormulaError, {
  unknown: "formula.unknown-option",
  bad: "formula.bad-option",
});

const READ = { n: true, x: true, digitsBeforeSign: true } as const satisfies Fields<ReadOptions>;

/** Options of reading. */
export function needReadOptions(options: ReadOptions): void {
  guard.fields(options, READ);
  const { digitsBeforeSign } = options;
  if (digitsBeforeSign !== undefined) guard.choice(digitsBeforeSign, "digitsBeforeSign", ["subscript", "charge"]);
}

/** Neither text nor a formula. */
export function notText(value: unknown, argument: string): FormulaError {
  return new FormulaError("formula.not-text", `${argument} must be text or a Formula, not ${kindOf(value)}`, {
    hint: 'such as "CuSO4·5H2O"',
  });
}
