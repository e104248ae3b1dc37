// Gases stand in three tables for three questions: what leaves a pot, how much of it water takes, which liquids boil when. They are
// of the same gases.
import { describe, expect, it } from "vitest";
import { VOLATILITY } from "../../src/amount/data/volatility";
import { GASES as SOLUBLE } from "../../src/aqueous/data/gases";
import { constitutionOf } from "../../src/ion";
import { GASES } from "../../src/preparation/data/gases";

const identityOf = (formula: string): string => constitutionOf(formula).identity;
const leaving = new Map(GASES.map((row) => [identityOf(row.formula), row]));

describe("gases", () => {
  it("of which water's share is known leave a pot too", () => {
    expect(SOLUBLE().length, "rows to test").toBeGreaterThan(0);
    for (const { gas } of SOLUBLE()) expect(leaving.has(identityOf(gas)), gas).toBe(true);
  });

  it("are kept by water where it takes more than a fifth of its mass", () => {
    expect(SOLUBLE().length, "rows to test").toBeGreaterThan(0);
    for (const { gas, points } of SOLUBLE()) {
      const [, grams] = points.reduce((a, b) => (Math.abs(b[0] - 20) < Math.abs(a[0] - 20) ? b : a));
      expect(leaving.get(identityOf(gas))?.keptByWater === true, gas).toBe(Number(grams) > 20);
    }
  });

  it("are no liquids that boil above a warm room, but for the trioxide of sulfur", () => {
    const liquid = VOLATILITY().filter(({ formula, boils }) => Number(boils) > 30 && leaving.has(identityOf(formula)));
    expect(liquid.map(({ formula }) => formula).filter((formula) => formula !== "SO3")).toEqual([]);
  });
});
