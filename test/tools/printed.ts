// A published problem with the answer as printed, and the one way to hold the library to it.
import { expect, test } from "vitest";
import type { Quantity } from "../../src/quantity";

export interface Printed {
  /** Where it stands in the source. */
  readonly item: string;
  readonly question: string;
  readonly result: () => Quantity;
  readonly unit: string;
  readonly printed: string;
  /** Half a unit of the last printed place, unless the file says why not. */
  readonly within: number;
}

/** One test for each problem. */
export function checkPrinted(cases: readonly Printed[]): void {
  test.each(cases)("$item: $question is $printed $unit", ({ result, unit, printed, within }) => {
    expect(Math.abs(result().in(unit).minus(printed).toNumber())).toBeLessThanOrEqual(within);
  });
}
