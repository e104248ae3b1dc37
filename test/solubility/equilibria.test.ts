// Laws over the solubility products, acid and complex constants and gases, with a few outside checks.

import { describe, expect, it } from "vitest";
import { gasDensity } from "../../src/amount";
import { COMPLEXES } from "../../src/aqueous/data/complexes";
import { GASES } from "../../src/aqueous/data/gases";
import { SOLUBILITY_PRODUCTS } from "../../src/aqueous/data/products";
import { attempt } from "../../src/foundation/error";
import { ACID_STEPS, WATER_IONIZATION } from "../../src/ion/data/acid-steps";
import { gasSolubility } from "../../src/solubility/gas";
import { freshForm } from "../../src/solubility/precipitating/product";
import { sourceKeys } from "../../src/sources";

const known = new Set<string>(sourceKeys());
const DECIMAL = /^-?\d+(\.\d+)?$/;

/** Is the adopted value inside the range of its sources? */
function within(value: string, range: readonly [string, string] | undefined): boolean {
  return range === undefined || (Number(range[0]) <= Number(value) && Number(value) <= Number(range[1]));
}

describe("solubility products", () => {
  it("has 367 rows, no solid twice in the same form and convention", () => {
    expect(SOLUBILITY_PRODUCTS().length).toBe(367);
    const keys = SOLUBILITY_PRODUCTS().map(({ solid, form, convention }) => `${solid}|${form}|${convention}`);
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
  });

  it("names a source, writes decimals and keeps each value inside its range", () => {
    let tested = 0;
    for (const { solid, pKsp, source, range, dissolution } of SOLUBILITY_PRODUCTS()) {
      expect(known, solid).toContain(source);
      expect(pKsp, solid).toMatch(DECIMAL);
      expect(within(pKsp, range), `${solid} ${pKsp} ${range}`).toBe(true);
      expect(dissolution, solid).toMatch(/^(?:\+ \d* ?H2O )?-> /);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(280);
  });

  it("knows the form that precipitates first, which dissolves best of all of its solid (rule of stages; Ostwald 1897)", () => {
    expect(freshForm("Mg(OH)2")?.form).toBe("freshly precipitated, active");
    expect(freshForm("Al(OH)3")?.form).toBe("amorphous, fresh");
    expect(freshForm("BaSO4")).toBeUndefined();
    let compared = 0;
    for (const { solid, form, pKsp, convention } of SOLUBILITY_PRODUCTS()) {
      const fresh = freshForm(solid);
      if (fresh === undefined) continue;
      expect(fresh.convention, solid).not.toBe("free-sulfide");
      if (fresh.form === form || fresh.convention !== convention) continue;
      expect(Number(fresh.pKsp), `${solid} ${form}`).toBeLessThanOrEqual(Number(pKsp));
      compared += 1;
    }
    expect(compared).toBeGreaterThanOrEqual(9);
  });

  it("keeps fresh hydroxides more soluble than aged ones", () => {
    const pKsp = (solid: string, form: string) =>
      Number(SOLUBILITY_PRODUCTS().find((row) => row.solid === solid && row.form?.includes(form))!.pKsp);
    expect(pKsp("Al(OH)3", "fresh")).toBeLessThan(pKsp("Al(OH)3", "gibbsite"));
    expect(pKsp("Mg(OH)2", "fresh")).toBeLessThan(pKsp("Mg(OH)2", "brucite"));
    expect(pKsp("Zn(OH)2", "amorphous")).toBeLessThan(pKsp("Zn(OH)2", "epsilon"));
  });

  it("agrees with textbook products as far as the sources compared spread (memory: Harris, Quantitative Chemical Analysis, appendix)", () => {
    const textbook: [string, string | undefined, number][] = [
      ["AgCl", undefined, 9.74],
      ["AgI", undefined, 16.08],
      ["CaCO3", "calcite", 8.35],
      ["BaSO4", "barite", 9.96],
      ["SrSO4", "celestite", 6.5],
      ["PbSO4", "anglesite", 7.79],
      ["CaF2", "fluorite", 10.5],
    ];
    for (const [solid, form, value] of textbook) {
      const row = SOLUBILITY_PRODUCTS().find((candidate) => candidate.solid === solid && candidate.form === form)!;
      // a textbook prints two decimals, so 0.01 beside the spread of the sources
      const [low, high] = row.range!.map(Number) as [number, number];
      expect(value, solid).toBeGreaterThanOrEqual(low - 0.01);
      expect(value, solid).toBeLessThanOrEqual(high + 0.01);
    }
  });
});

describe("acid constants", () => {
  it("names a source, writes decimals, keeps each value inside its range and lists no acid twice", () => {
    let tested = 0;
    for (const { acid, pKa, source, range } of ACID_STEPS()) {
      expect(known, acid).toContain(source);
      expect(pKa, acid).toMatch(DECIMAL);
      expect(within(pKa, range), `${acid} ${pKa} ${range}`).toBe(true);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(100);
    expect(new Set(ACID_STEPS().map(({ acid }) => acid)).size).toBe(ACID_STEPS().length);
  });

  it("rises from step to step of one acid", () => {
    const bases = new Map(ACID_STEPS().map((row) => [row.base, row]));
    let tested = 0;
    for (const { acid, pKa } of ACID_STEPS()) {
      const before = bases.get(acid);
      if (before !== undefined) expect(Number(pKa), acid).toBeGreaterThan(Number(before.pKa));
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(100);
  });

  it("lets the ionic product of water rise on heating", () => {
    WATER_IONIZATION.forEach(({ pKw, celsius }, index) => {
      const before = WATER_IONIZATION[index - 1];
      if (before === undefined) return;
      expect(celsius).toBeGreaterThan(before.celsius);
      expect(Number(pKw)).toBeLessThan(Number(before.pKw));
    });
  });

  it("agrees with the Marshall and Franck equation for water within 0.02 (1981; coefficients from memory)", () => {
    let tested = 0;
    for (const { celsius, pKw } of WATER_IONIZATION) {
      const kelvin = celsius + 273.15;
      // log10 Kw = A + B/T + C/T^2 + D/T^3 + (E + F/T + G/T^2) log10(density), density taken 1 to 0.958 g/mL
      const density = 1 - 4.2e-2 * (celsius / 100) ** 1.7;
      const logKw =
        -4.098 -
        3245.2 / kelvin +
        2.2362e5 / kelvin ** 2 -
        3.984e7 / kelvin ** 3 +
        (13.957 - 1262.3 / kelvin + 8.5641e5 / kelvin ** 2) * Math.log10(density);
      // the equation is given as good to 0.01, and the density here is a fit good to 0.001 g/mL, worth 0.006
      expect(Math.abs(-logKw - Number(pKw)), String(celsius)).toBeLessThan(0.018);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(16);
  });
});

describe("complex constants", () => {
  it("has 610 complexes, none twice, each with a source and a decimal", () => {
    const seen = COMPLEXES().flatMap((row) => row.steps.map((step) => `${row.metal} ${row.ligand} ${step.complex}`));
    expect(seen.length).toBe(610);
    expect(new Set(seen).size).toBe(610);
    for (const { metal, ligand, steps } of COMPLEXES()) {
      for (const step of steps) {
        expect(known, metal + ligand).toContain(step.source);
        expect(step.logBeta, metal + ligand).toMatch(DECIMAL);
        expect(within(step.logBeta, step.range), `${step.complex} ${step.logBeta} ${step.range}`).toBe(true);
      }
    }
  });

  it("agrees with the classical ammines within one unit, the spread at which a step is called doubtful (memory: textbooks)", () => {
    const logBeta = (metal: string, n: number) =>
      Number(
        COMPLEXES()
          .find((row) => row.metal === metal && row.ligand === "NH3")!
          .steps.find((s) => s.n === n)!.logBeta,
      );
    expect(Math.abs(logBeta("Ag+", 2) - 7.2)).toBeLessThan(1);
    expect(Math.abs(logBeta("Cu^2+", 4) - 12.7)).toBeLessThan(1);
    expect(Math.abs(logBeta("Zn^2+", 4) - 9.1)).toBeLessThan(1);
    expect(Math.abs(logBeta("Ni^2+", 6) - 8.6)).toBeLessThan(1);
  });
});

describe("gases in water", () => {
  it("dissolve less on warming, and the two pressure bases differ by the water vapour only", () => {
    let tested = 0;
    for (const { gas, points, source } of GASES()) {
      expect(known).toContain(source);
      points.forEach(([, grams], index) => {
        if (index > 0) expect(Number(grams), gas).toBeLessThan(Number(points[index - 1]![1]));
      });
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(13);
    for (const gas of ["CO2", "O2", "H2S"]) {
      const [total, partial] = (["total", "partial"] as const).map(
        (basis) => GASES().find((row) => row.gas === gas && row.pressure === basis)!,
      );
      // 40 °C: water vapour is 7.385 kPa (Wagner and Pruss 2002), so the gas alone at one atmosphere dissolves 1/(1 - 0.0729) more
      const ratio = Number(partial!.points.at(-1)![1]) / Number(total!.points.at(-1)![1]);
      // half a unit of the third digit of 0.105 to 0.00332, and 1 % of scatter between the two sets of coefficients
      expect(Math.abs(ratio - 1 / (1 - 7.3851 / 101.325)), gas).toBeLessThan(0.015);
    }
  });

  // Kaye and Laby (1941): volumes of gas at 0 °C in one of water, of carbon dioxide alone and of chlorine with its vapour
  it.each([
    ["CO2", "partial", { 0: 1.713, 10: 1.194, 15: 1.019, 20: 0.878, 30: 0.66, 40: 0.53 }],
    ["Cl2", "total", { 10: 3.09, 15: 2.63, 20: 2.26, 30: 1.77, 40: 1.41 }],
  ] as const)("of %s, %s, are the volumes of the table times the density of the gas", (gas, basis, volumes) => {
    const row = GASES().find((one) => one.gas === gas && one.pressure === basis)!;
    const normal = gasDensity(gas, { temperature: "0 °C", pressure: "101.325 kPa", model: "second virial" });
    const water: Record<number, number> = { 0: 0.9998, 10: 0.9997, 15: 0.9991, 20: 0.9982, 30: 0.9956, 40: 0.9922 };
    expect(row.points.map(([celsius]) => celsius)).toEqual(Object.keys(volumes).map(Number));
    for (const [celsius, grams] of row.points) {
      const volume = (volumes as Record<number, number>)[celsius]!;
      const expected = (volume * normal.in("g/L").toNumber()) / water[celsius]! / 10;
      expect(Math.abs(Number(grams) / expected - 1), `${gas} ${celsius}`).toBeLessThan(0.005);
    }
  });

  // Sander, Atmos. Chem. Phys. 23, 10901 (2023), reviews: 1.2 to 1.3e-5 and 1.0e-3 mol/(m3 Pa) at 25 °C
  it.each([
    ["O2", 1.15e-5, 1.35e-5, 31.998],
    ["H2S", 0.95e-3, 1.05e-3, 34.08],
  ] as const)("of %s alone at 25 °C lie within Henry's constants of the reviews", (gas, low, high, molar) => {
    const grams = gasSolubility(gas, "25 °C", "partial").perHundredGramsWater.in("g").toNumber();
    const constant = (grams * 10 * 997.05) / 1000 / molar / 0.101325 / 1e3 / 1e3;
    expect(constant * 1e3).toBeGreaterThan(low);
    expect(constant * 1e3).toBeLessThan(high);
  });

  it("are read between the figures and refused beyond them", () => {
    // 15 °C: 0.197 g CO2 per 100 g water (memory: Lange's table, column q)
    expect(Math.abs(gasSolubility("CO2", "15 °C").perHundredGramsWater.in("g").toNumber() / 0.197 - 1)).toBeLessThan(
      0.01,
    );
    const code = (gas: string, temperature: "20 °C" | "60 °C") => {
      const outcome = attempt(() => gasSolubility(gas, temperature));
      return outcome.ok ? undefined : outcome.error.code;
    };
    expect(code("CO2", "60 °C")).toBe("solubility.outside-range");
    expect(code("N2", "20 °C")).toBe("solubility.no-data");
    expect(gasSolubility("NH3", "20 °C").warnings.join()).toContain("memory");
  });
});
