// Laws of the element tables: the short table that formulas are weighed by says the same as the sourced one.
import { describe, expect, it } from "vitest";
import { ATOMIC_WEIGHTS } from "../../src/element/data/atomic-weights";
import { STANDARD_WEIGHTS } from "../../src/element/data/standard-weights";
import { nanoWeightTable, symbolAt } from "../../src/element/symbols";

describe("the short table of standard weights", () => {
  it("agrees with the sourced table, element by element and digit by digit", () => {
    const sourced = ATOMIC_WEIGHTS().map((row) => {
      if (row.kind === "none") return row.symbol;
      return row.symbol + (row.kind === "value" ? row.value : row.conventional);
    });
    expect(sourced).toHaveLength(118);
    expect(STANDARD_WEIGHTS.trim().split(/\s+/)).toEqual(sourced);
  });

  it("is read to nano-dalton without rounding", () => {
    ATOMIC_WEIGHTS().forEach((row, index) => {
      expect(symbolAt(index)).toBe(row.symbol);
      const nano = nanoWeightTable()[index]!;
      if (row.kind === "none") expect(nano).toBeNaN();
      else expect(BigInt(nano)).toBe(nanoOf(row.kind === "value" ? row.value : row.conventional));
    });
  });
});

/** The decimal text times 1e9, by bigints. */
function nanoOf(text: string): bigint {
  const [whole, decimals = ""] = text.split(".");
  expect(decimals.length).toBeLessThanOrEqual(9);
  return BigInt(whole!) * 1_000_000_000n + BigInt(decimals.padEnd(9, "0"));
}
