import { describe, expect, test } from "vitest";
import { densityOfSolution, massFractionFromDensity, tabulatedSolutes } from "../../src/amount";
import { SOLUTION_DENSITIES } from "../../src/amount/data/solution-densities";
import { attempt } from "../../src/foundation/error";
import { explain, uncertaintyBudget } from "../../src/quantity";

describe("density of a solution", () => {
  test("gives the printed figure at every tabulated point of the first table of a solute", () => {
    SOLUTION_DENSITIES().forEach((row, at) => {
      if (SOLUTION_DENSITIES().findIndex(({ solute }) => solute === row.solute) !== at) return;
      expect(row.points.length, "rows to test").toBeGreaterThan(0);
      for (const [percent, density] of row.points) {
        const rho = densityOfSolution(row.solute, { value: percent, unit: "%" });
        expect(rho.in("g/mL").minus(density).abs().toNumber(), `${row.solute} ${percent} %`).toBeLessThan(1e-12);
      }
    });
  });

  test("is that of water at nothing", () => {
    expect(densityOfSolution("NaCl", "0 %").in("g/mL").toFixed(5)).toBe("0.99820");
  });

  test("finds a solute however its formula is written", () => {
    const one = densityOfSolution("C2H3NaO2", "10 %");
    expect(one.in("g/mL").equals(densityOfSolution("NaCH3COO", "10 %").in("g/mL"))).toBe(true);
  });

  // methyl formate and dimethyl ether had the figures of acetic acid and ethanol
  test("is never that of an isomer", () => {
    for (const isomer of ["HCOOCH3", "CH3OCH3"])
      expect(() => densityOfSolution(isomer, "10 %")).toThrow("no densities of");
    expect(() => densityOfSolution("C2H4O2", "10 %")).toThrow("it may be CH3COOH or HCOOCH3");
  });

  // figures of another kind each: lithium chloride by molality from a page of estimated densities (10 %: 1.0546 at 25 °C,
  // 1.0577 at 10 °C); zinc chloride recalled from a handbook; ferrous and nickel sulfate by the volume of their ions against
  // magnesium sulfate, from memory
  test.each([
    ["LiCl", "10 %", 1.0557, 0.001],
    ["ZnCl2", "30 %", 1.2928, 0.008],
    ["FeSO4", "10 %", 1.1, 0.005],
    ["NiSO4", "10 %", 1.109, 0.005],
  ] as const)("of %s %s agrees with a second table", (solute, strength, density, within) => {
    expect(Math.abs(densityOfSolution(solute, strength).in("g/mL").toNumber() - density)).toBeLessThan(within);
  });

  // volumes of ions in water, mL/mol, from memory (Millero): Na+ -1.2, K+ 9.0, NH4+ 17.9; the anion is the same in all three
  test("gives the persulfates one volume of their anion", () => {
    const volume = (solute: string, molar: number, w: number, cations: number) => {
      const rho = densityOfSolution(solute, { value: `${100 * w}`, unit: "%" })
        .in("g/mL")
        .toNumber();
      return ((1 / rho - (1 - w) / 0.99707) / w) * molar - cations;
    };
    const sodium = volume("Na2S2O8", 238.1, 0.05, -2.4);
    expect(Math.abs(volume("K2S2O8", 270.3, 0.05, 18) - sodium)).toBeLessThan(6);
    expect(Math.abs(volume("(NH4)2S2O8", 228.2, 0.05, 35.8) - sodium)).toBeLessThan(6);
  });

  test("says memory only where no printed figure was read", () => {
    const sources = (strength: "10 %" | "12 %") => explain(densityOfSolution("HCl", strength)).sources.join();
    expect(sources("10 %")).toMatch(/Concentrative/);
    expect(sources("12 %")).toMatch(/memory/);
  });

  test("names rule and source in its working", () => {
    const working = explain(densityOfSolution("CuSO4", "7 %"));
    expect(working.steps.at(-1)!.rule).toContain("1/density is linear in the mass fraction");
    expect(working.sources.length).toBeGreaterThan(0);
  });

  test("is the more doubtful the farther it is from the tabulated temperature", () => {
    const u = (temperature: "20 °C" | "22 °C" | "29 °C"): number =>
      densityOfSolution("HCl", "37 %", { temperature }).standardUncertainty!.toNumber();
    expect(u("22 °C")).toBeGreaterThan(u("20 °C"));
    expect(u("29 °C")).toBeGreaterThan(u("22 °C"));
    const largest = uncertaintyBudget(densityOfSolution("HCl", "37 %", { temperature: "29 °C" }))[0]!;
    expect(largest.input).toBe("cubic expansion of aqueous solutions near 20 °C");
  });

  // CRC Handbook, concentrative properties: sodium chloride, 10 % at 20 °C 1.0707 g/mL; at 25 °C 1.0688 (memory, ICT III).
  test("follows the temperature within its stated doubt", () => {
    const warm = densityOfSolution("NaCl", "10 %", { temperature: "25 °C" });
    expect(Math.abs(warm.in("g/mL").toNumber() - 1.0688)).toBeLessThan(2 * warm.standardUncertainty!.toNumber());
  });

  test.each([
    ["HCl", "41 %", {}, "amount.outside-range"],
    ["HCl", "10 %", { temperature: "31 °C" }, "amount.outside-range"],
    ["HCl", "10 %", { temperature: "9 °C" }, "amount.outside-range"],
    ["CsI", "10 %", {}, "amount.no-density-table"],
    ["HCl", "-1 %", {}, "amount.negative"],
  ] as const)("of %s %s with %o is refused with %s", (solute, w, options, code) => {
    const outcome = attempt(() => densityOfSolution(solute, w, options));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
  });
});

describe("strength from density", () => {
  test("undoes the density at every strength of a table that rises all along", () => {
    for (const solute of ["HCl", "NaOH", "NaCl", "NH3", "CuSO4"]) {
      for (const percent of ["1.7", "5.3", "9.9", "13.1"]) {
        const rho = densityOfSolution(solute, { value: percent, unit: "%" });
        const w = massFractionFromDensity(solute, rho);
        expect(w.in("%").minus(percent).abs().toNumber(), `${solute} ${percent} %`).toBeLessThan(1e-9);
      }
    }
  });

  test("refuses to choose where two strengths weigh the same, and takes a hint", () => {
    const outcome = attempt(() => massFractionFromDensity("H2SO4", "1.835 g/mL"));
    expect(outcome.ok ? "" : outcome.error.code).toBe("amount.several-readings");
    expect(outcome.ok ? [] : outcome.error.details["readings"]).toHaveLength(2);
    const low = massFractionFromDensity("H2SO4", "1.835 g/mL", { between: ["0 %", "97 %"] });
    expect(low.in("%").toNumber()).toBeCloseTo(95.7, 1);
  });

  test.each(["0.9 g/mL", "1.5 g/mL"] as const)("refuses %s, which no hydrochloric acid has", (density) => {
    const outcome = attempt(() => massFractionFromDensity("HCl", density));
    expect(outcome.ok ? "" : outcome.error.code).toBe("amount.outside-range");
  });

  test.each([
    [["97 %", "0 %"], "amount.missing-input"],
    [["97 %"], "amount.missing-input"],
    ["97 %", "amount.bad-option"],
    [[], "amount.missing-input"],
  ])("refuses to look between %o", (between, code) => {
    const outcome = attempt(() =>
      massFractionFromDensity("H2SO4", "1.835 g/mL", {
        between: between as unknown as ["0 %", "97 %"],
      }),
    );
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
  });

  test("carries the uncertainty of the reading through the slope of the table", () => {
    const w = massFractionFromDensity("NaCl", { value: "1.0707", unit: "g/mL", standardUncertainty: "0.001" });
    // near 10 % a percent of salt is 0.0074 g/mL; the table itself is doubtful by 0.0003/√3
    expect(w.standardUncertainty!.toNumber()).toBeCloseTo(Math.hypot(0.001, 0.0003 / Math.sqrt(3)) / 0.0074, 2);
  });
});

test("the list of tabulated solutes says how far each table runs", () => {
  const acid = tabulatedSolutes().find((t) => t.solute === "H2SO4")!;
  expect(acid.upTo.in("%").toString()).toBe("100");
  expect(acid.temperature.toString()).toBe("20 °C");
});
