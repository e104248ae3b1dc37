// Laws over the solubility table, and independent checks of figures against a second printed table.
import { describe, expect, it } from "vitest";
import { molarMass } from "../../src/formula";
import { crystalWater } from "../../src/hydrate";
import { SOLUBILITY } from "../../src/solubility/data/curves";
import { sourceKeys } from "../../src/sources";
import { curvesWithSolids } from "../tools/solids";

const row = (formula: string) => SOLUBILITY().find((candidate) => candidate.formula === formula)!;
const at = (formula: string, celsius: number) =>
  Number(row(formula).points.find(([temperature]) => temperature === celsius)?.[1]);
const mass = (formula: string) => molarMass(formula).value.toNumber();
const DECIMAL = /^\d+(\.\d+)?(e[+-]\d+)?$/;

describe("the solubility table", () => {
  it("has one row for each solute", () => {
    expect(SOLUBILITY().length).toBe(440);
    expect(new Set(SOLUBILITY().map(({ formula }) => formula)).size).toBe(SOLUBILITY().length);
  });

  it("names a known source for every figure", () => {
    const known = new Set<string>(sourceKeys());
    let tested = 0;
    for (const { source, alsoFrom, competing = [] } of SOLUBILITY()) {
      for (const key of [source, alsoFrom?.source ?? source, ...competing.map((figure) => figure.source)]) {
        expect(known).toContain(key);
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(360);
  });

  it("writes positive decimal text at rising temperatures between 0 and 100 °C", () => {
    let tested = 0;
    for (const { formula, points, competing = [] } of SOLUBILITY()) {
      expect(points.length, formula).toBeGreaterThan(0);
      points.forEach(([celsius, grams], index) => {
        expect(grams, formula).toMatch(DECIMAL);
        expect(Number(grams), formula).toBeGreaterThan(0);
        expect(celsius >= 0 && celsius <= 100, formula).toBe(true);
        if (index > 0) expect(celsius, formula).toBeGreaterThan(points[index - 1]![0]);
      });
      for (const figure of competing) expect(figure.value, formula).toMatch(DECIMAL);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(360);
  });

  it("orders the solids from cold to hot, each but the last with an upper end", () => {
    let tested = 0;
    for (const { formula, solids } of SOLUBILITY()) {
      let last = Number.NEGATIVE_INFINITY;
      solids.forEach(({ upTo }, index) => {
        if (index === solids.length - 1) {
          expect(upTo, formula).toBeUndefined();
        } else {
          expect(Number(upTo), formula).toBeGreaterThan(last);
          last = Number(upTo);
        }
      });
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(360);
  });

  it("never holds more salt than the hydrate in contact itself", () => {
    // Physics: a stable solution over A·nH2O ends where it has the composition of the solid, which melts there.
    let tested = 0;
    for (const { formula, points, solids } of curvesWithSolids()) {
      let from = Number.NEGATIVE_INFINITY;
      for (const { solid, upTo } of solids) {
        const to = upTo === undefined ? Number.POSITIVE_INFINITY : Number(upTo);
        const { waters } = solid === undefined ? { waters: 0 } : crystalWater(solid);
        const own = (100 * mass(formula)) / (Number(waters) * mass("H2O"));
        for (const [celsius, grams] of points) {
          if (celsius > from && celsius <= to) expect(Number(grams), `${solid} at ${celsius} °C`).toBeLessThan(own);
        }
        from = to;
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(360);
  });

  it("takes second-source temperatures from its own points", () => {
    let tested = 0;
    for (const { formula, points, alsoFrom } of SOLUBILITY()) {
      const own = points.map(([celsius]) => celsius);
      for (const celsius of alsoFrom?.at ?? []) expect(own, formula).toContain(celsius);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(360);
  });

  it("calls every row from memory or from a solubility product weak", () => {
    let tested = 0;
    for (const { formula, knownAs, weak } of SOLUBILITY()) {
      if (knownAs === "memory" || knownAs === "converted") expect(weak, formula).toBe(true);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(360);
  });

  it("falls with temperature where the trade knows it does (common practice)", () => {
    for (const formula of ["Ca(OH)2", "Li2CO3", "Li2SO4", "CaSO3"]) {
      const figures = row(formula).points.map(([, grams]) => Number(grams));
      expect(figures, formula).toEqual([...figures].sort((a, b) => b - a));
    }
  });

  it("brackets the 25 °C figure an independent table prints for oxalic acid", () => {
    // Blanchard et al., Synthetic Inorganic Chemistry, Table of Solubilities (key `blanchard`): 0/25/100 °C, whole numbers.
    expect(at("H2C2O4", 20)).toBeLessThan(11.4); // oxalic acid 11.4 at 25 °C there
    expect(at("H2C2O4", 30)).toBeGreaterThan(11.4);
  });

  it("keeps the anchors every bench table prints at 20 °C (memory: older handbooks, three digits)", () => {
    const anchors: [string, number][] = [
      ["CuSO4", 20.0],
      ["NaCl", 35.9],
      ["KNO3", 31.9],
      ["Na2CO3", 21.8],
      ["NaHCO3", 9.57],
      ["KAl(SO4)2", 5.9],
      ["MgSO4", 33.5],
      ["ZnSO4", 53.8],
      ["FeSO4", 26.3],
    ];
    for (const [formula, grams] of anchors) expect(Math.abs(at(formula, 20) - grams), formula).toBeLessThan(0.05);
  });
});
