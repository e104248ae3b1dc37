// Every function of the layer looks into the caller's own facts where it is given them: a measure of the studio's, a scoop of
// 4.2 g, and lead of a named ore, 207.19 g/mol. All numbers and the notebook are invented; the arithmetic stands beside.
import { facts } from "preparative";
import { describe, expect, test } from "vitest";
import {
  crystalWaterIn,
  equivalentMass,
  hydrateMixUps,
  hydrationNumber,
  meanHydration,
  stagedDehydration,
  waterContent,
} from "../../src/hydrate";

const own = facts({
  source: "studio notebook, page 12 (invented)",
  units: [{ symbol: "scoop", is: "4.2 g" }],
  weights: [{ element: "Pb", weight: "207.19(1) g/mol" }],
});
const scoops = (text: string) => text as "1 g";

describe("with facts of the caller's own", () => {
  test.each<[string, (mass: "1 g", options: { facts?: typeof own }) => unknown, string]>([
    ["crystalWaterIn", (mass, options) => crystalWaterIn(mass, "CuSO4·5H2O", options).to("g"), "4.2 g"],
    [
      "equivalentMass",
      (mass, options) => equivalentMass(mass, { from: "CuSO4·5H2O", to: "CuSO4", ...options }),
      "4.2 g",
    ],
    [
      "hydrationNumber",
      (mass, options) => hydrationNumber({ before: mass, after: "2.685 g", anhydrous: "CuSO4", ...options }).waters,
      "4.2 g",
    ],
    [
      "meanHydration",
      (mass, options) => meanHydration({ salt: "CuSO4", before: mass, after: "3 g", ...options }).waters,
      "4.2 g",
    ],
    ["stagedDehydration", (mass, options) => stagedDehydration("CuSO4·5H2O", mass, options).steps[2]!.mass, "4.2 g"],
    [
      "hydrateMixUps",
      (mass, options) => hydrateMixUps({ observed: mass, expected: "2.685 g", of: "CuSO4", ...options })[0]?.deviation,
      "4.2 g",
    ],
  ])("%s reads a measure of theirs", (_, ask, grams) => {
    const said = String(ask(scoops("1 scoop"), { facts: own }));
    expect(said).toBe(String(ask(scoops(grams), {})));
    expect(said).not.toBe(String(ask(scoops("2 scoop"), { facts: own })));
    expect(() => ask(scoops("1 scoop"), {})).toThrow(expect.objectContaining({ code: "quantity.unknown-unit" }));
  });

  // 3 × 18.015 / (207.19 + 2 × 59.044 + 54.045) = 14.246 %, and 14.238 % with the 207.2 of the tables
  test("waterContent weighs with an atomic weight of theirs", () => {
    const sugarOfLead = "Pb(CH3COO)2·3H2O";
    const percent = (options?: { facts: typeof own }) =>
      waterContent(sugarOfLead, options).format({ decimals: 4, uncertainty: "none" });
    expect(percent({ facts: own })).not.toBe(percent());
    expect(waterContent(sugarOfLead, { facts: own }).toNumber("")).toBeCloseTo(54.045 / (207.19 + 118.088 + 54.045), 5);
  });
});
