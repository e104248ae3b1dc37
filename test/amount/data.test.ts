// Laws over the table of densities of solutions.
import { describe, expect, it } from "vitest";
import { SOLUTION_DENSITIES } from "../../src/amount/data/solution-densities";
import { sourceKeys } from "../../src/sources";

describe("densities of solutions", () => {
  it("has 973 points from known sources, rising in mass percent without repeats", () => {
    const known = new Set<string>(sourceKeys());
    let count = 0;
    for (const { solute, source, points } of SOLUTION_DENSITIES()) {
      count += points.length;
      points.forEach(([percent, value, own = source], index) => {
        expect(known).toContain(own);
        expect(percent, solute).toMatch(/^\d+(\.\d+)?$/);
        expect(value, solute).toMatch(/^\d\.\d+$/);
        if (index > 0) expect(Number(percent), solute).toBeGreaterThan(Number(points[index - 1]![0]));
      });
    }
    expect(count).toBe(973);
  });

  it("grows heavier with salt and lighter with ammonia or alcohol", () => {
    let tested = 0;
    for (const { solute, points } of SOLUTION_DENSITIES()) {
      // sulfuric and acetic acid pass through a maximum near the pure acid
      const last = solute === "H2SO4" ? "97" : solute === "CH3COOH" ? "75" : "100";
      const falls = solute === "NH3" || solute === "C2H5OH";
      points.forEach(([percent, value], index) => {
        const before = points[index - 1];
        if (before === undefined || Number(percent) > Number(last)) return;
        if (falls) expect(Number(value), `${solute} ${percent}`).toBeLessThan(Number(before[1]));
        else expect(Number(value), `${solute} ${percent}`).toBeGreaterThan(Number(before[1]));
      });
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(51);
  });

  it("states a doubt for every table that was recalled or estimated", () => {
    let tested = 0;
    for (const { solute, knownAs, doubt } of SOLUTION_DENSITIES()) {
      if (knownAs === "memory" || knownAs === "estimated") expect(Number(doubt), solute).toBeGreaterThan(0);
      if (doubt !== undefined) expect(Number(doubt), solute).toBeLessThanOrEqual(0.01);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(51);
  });
});
