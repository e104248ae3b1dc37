// The tables held against each other and against figures read elsewhere: nuclide masses times natural compositions must
// give the standard atomic weights (two evaluations, made apart), and a few well-known figures are spelt out.
import { describe, expect, it } from "vitest";
import { atomicWeight, element, elements, nuclidesOf } from "../../src/element";
import { ATOMIC_WEIGHTS } from "../../src/element/data/atomic-weights";
import { ISOTOPIC_COMPOSITIONS } from "../../src/element/data/isotopic-compositions";
import { NUCLIDE_MASS_SOURCE, NUCLIDE_MASSES } from "../../src/element/data/nuclide-masses";
import { sourceKeys } from "../../src/sources";

describe("the table of atomic weights", () => {
  it("has 118 elements: 70 values, 14 intervals, 34 without (CIAAW 2024)", () => {
    const kinds = ATOMIC_WEIGHTS().map(({ kind }) => kind);
    expect(kinds).toHaveLength(118);
    expect(["value", "interval", "none"].map((kind) => kinds.filter((k) => k === kind).length)).toEqual([70, 14, 34]);
    expect(new Set(ATOMIC_WEIGHTS().map(({ symbol }) => symbol)).size).toBe(118);
    expect(new Set(ATOMIC_WEIGHTS().map(({ name }) => name)).size).toBe(118);
  });

  it("names sources that exist, orders its intervals, and keeps conventional values by them", () => {
    const keys = new Set<string>(sourceKeys());
    let tested = 0;
    for (const row of ATOMIC_WEIGHTS()) {
      expect(keys.has(row.source), row.symbol).toBe(true);
      if (row.kind === "none") continue;
      expect(keys.has(row.yearSource), row.symbol).toBe(true);
      const low = row.kind === "interval" ? Number(row.lower) : Number(row.value) - Number(row.uncertainty);
      const high = row.kind === "interval" ? Number(row.upper) : Number(row.value) + Number(row.uncertainty);
      expect(low, row.symbol).toBeLessThan(high);
      // abridged ± its own uncertainty covers what is published
      const [abridged, spread] = [Number(row.abridged), Number(row.abridgedUncertainty)];
      expect(abridged - spread, row.symbol).toBeLessThanOrEqual(low + 1e-9);
      expect(abridged + spread, row.symbol).toBeGreaterThanOrEqual(high - 1e-9);
      if (row.kind !== "interval") continue;
      const conventional = Number(row.conventional);
      const inside = conventional >= low && conventional <= high;
      // Rounding puts these two just below their own interval, rightly.
      expect(inside, row.symbol).toBe(row.symbol !== "O" && row.symbol !== "Tl");
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(14);
  });

  it.each([
    // Standard atomic weights of the elements 2021 (IUPAC Technical Report), table of weights abridged to five figures
    ["H", "1.008"],
    ["C", "12.011"],
    ["N", "14.007"],
    ["O", "15.999"],
    ["Na", "22.990"],
    ["Mg", "24.305"],
    ["S", "32.06"],
    ["Cl", "35.45"],
    ["Fe", "55.845"],
    ["Cu", "63.546"],
    ["Zn", "65.38"],
    ["Ag", "107.87"],
    ["Pb", "207.2"],
    ["U", "238.03"],
  ])("%s weighs %s", (symbol, printed) => {
    const decimals = printed.split(".")[1]!.length;
    expect(atomicWeight(symbol).value.toFixed(decimals)).toBe(printed);
  });
});

describe("the table of nuclides", () => {
  it("has 326 nuclides with sources that exist, each once, near its mass number", () => {
    const keys = new Set<string>(sourceKeys());
    expect(NUCLIDE_MASSES()).toHaveLength(326);
    expect(ISOTOPIC_COMPOSITIONS()).toHaveLength(289);
    expect(keys.has(NUCLIDE_MASS_SOURCE)).toBe(true);
    const names = new Set(NUCLIDE_MASSES().map(([symbol, massNumber]) => `${massNumber}${symbol}`));
    expect(names.size).toBe(326);
    for (const [symbol, massNumber, mass] of NUCLIDE_MASSES()) {
      expect(Math.abs(Number.parseFloat(mass) - massNumber), symbol).toBeLessThan(0.3);
    }
    for (const row of ISOTOPIC_COMPOSITIONS()) {
      expect(keys.has(row.source)).toBe(true);
      expect(names.has(`${row.massNumber}${row.symbol}`)).toBe(true);
      if (row.lower === undefined) continue;
      expect(Number(row.lower)).toBeLessThanOrEqual(Number(row.composition));
      expect(Number(row.upper)).toBeGreaterThanOrEqual(Number(row.composition));
    }
  });

  it("has the longest-lived nuclide of every element without a weight", () => {
    let tested = 0;
    for (const { symbol, standardAtomicWeight: weight } of elements()) {
      if (weight.kind !== "none") continue;
      expect(
        nuclidesOf(symbol).map(({ massNumber }) => massNumber),
        symbol,
      ).toContain(weight.longestLived);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(30);
  });

  it("sums its compositions to one", () => {
    let tested = 0;
    for (const { symbol, standardAtomicWeight: weight } of elements()) {
      if (weight.kind === "none") continue;
      const total = nuclidesOf(symbol).reduce((sum, { composition = "0" }) => sum + Number(composition), 0);
      expect(Math.abs(total - 1), symbol).toBeLessThan(0.0004);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(75);
  });

  it("reproduces the standard atomic weights: composition times mass lies inside what is published", () => {
    // Gd and Lu: the 2024 weights are newer than the compositions (2013).
    const newer = new Set(["Gd", "Lu"]);
    let compared = 0;
    for (const { symbol } of elements()) {
      const weight = element(symbol).standardAtomicWeight;
      if (weight.kind === "none" || newer.has(symbol)) continue;
      const nuclides = nuclidesOf(symbol).filter(({ composition }) => composition !== undefined);
      const total = nuclides.reduce((sum, { composition }) => sum + Number(composition), 0);
      const mean =
        nuclides.reduce((sum, { composition, mass }) => sum + Number(composition) * mass.in("g/mol").toNumber(), 0) /
        total;
      const low = weight.kind === "interval" ? Number(weight.lower) : Number(weight.value) - Number(weight.uncertainty);
      const high =
        weight.kind === "interval" ? Number(weight.upper) : Number(weight.value) + Number(weight.uncertainty);
      expect(mean, symbol).toBeGreaterThanOrEqual(low - 1e-9);
      expect(mean, symbol).toBeLessThanOrEqual(high + 1e-9);
      compared += 1;
    }
    expect(compared).toBe(82);
  });
});
