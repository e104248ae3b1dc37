// Laws over the densities of solutions, and checks against the bottle strengths the trade prints.
import { describe, expect, it } from "vitest";
import { SOLUTION_DENSITIES } from "../../src/amount/data/solution-densities";
import { sourceKeys } from "../../src/foundation/bibliography";

/** Straight line between the two nearest points of the first set of a solute. */
function density(solute: string, massPercent: number): number {
  const points = SOLUTION_DENSITIES.find((row) => row.solute === solute)!.points.map(
    ([percent, value]) => [Number(percent), Number(value)] as const,
  );
  const upper = points.findIndex(([percent]) => percent >= massPercent);
  const [p1, d1] = points[upper]!;
  const [p0, d0] = points[upper - 1] ?? [p1 - 1, d1];
  return d0 + ((d1 - d0) * (massPercent - p0)) / (p1 - p0);
}

describe("densities of solutions", () => {
  it("has 806 points from known sources, rising in mass percent without repeats", () => {
    const known = new Set<string>(sourceKeys());
    let count = 0;
    for (const { solute, source, points } of SOLUTION_DENSITIES) {
      expect(known).toContain(source);
      count += points.length;
      points.forEach(([percent, value], index) => {
        expect(percent, solute).toMatch(/^\d+(\.\d+)?$/);
        expect(value, solute).toMatch(/^\d\.\d+$/);
        if (index > 0) expect(Number(percent), solute).toBeGreaterThan(Number(points[index - 1]![0]));
      });
    }
    expect(count).toBe(806);
  });

  it("grows heavier with salt and lighter with ammonia or alcohol", () => {
    for (const { solute, points } of SOLUTION_DENSITIES) {
      // sulfuric and acetic acid pass through a maximum near the pure acid
      const last = solute === "H2SO4" ? "97" : solute === "CH3COOH" ? "75" : "100";
      const falls = solute === "NH3" || solute === "C2H5OH";
      points.forEach(([percent, value], index) => {
        const before = points[index - 1];
        if (before === undefined || Number(percent) > Number(last)) return;
        if (falls) expect(Number(value), `${solute} ${percent}`).toBeLessThan(Number(before[1]));
        else expect(Number(value), `${solute} ${percent}`).toBeGreaterThan(Number(before[1]));
      });
    }
  });

  it("has two sets of a solute within 0.01 where both speak", () => {
    for (const row of SOLUTION_DENSITIES) {
      const first = SOLUTION_DENSITIES.find(({ solute }) => solute === row.solute)!;
      if (first === row) continue;
      for (const [percent, value] of row.points) {
        const match = first.points.find(([other]) => Number(other) === Number(percent));
        if (match !== undefined) expect(Math.abs(Number(match[1]) - Number(value)), row.solute).toBeLessThan(0.01);
      }
    }
  });

  it("gives the amount concentrations printed on reagent bottles", () => {
    // Common bottle figures (common practice, no source): 37 % HCl 12.1 mol/L, 96 % H2SO4 18.0, 70 % HNO3 15.8,
    // 28 % NH3 14.8, 85 % H3PO4 14.7, each within 0.15 mol/L.
    const bottles: [string, number, number, number][] = [
      ["HCl", 37, 36.46, 12.1],
      ["H2SO4", 96, 98.08, 18.0],
      ["HNO3", 70, 63.01, 15.8],
      ["NH3", 28, 17.03, 14.8],
      ["H3PO4", 85, 97.99, 14.7],
    ];
    for (const [solute, percent, molarMass, strength] of bottles) {
      expect(Math.abs((density(solute, percent) * 10 * percent) / molarMass - strength), solute).toBeLessThan(0.15);
    }
  });
});
