// What `explain` says of a beaker and of a run: the figures are those of the answers themselves.
import { aqueousComposition, densityOfSolution, evaluateRun, explain, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

describe("the working of a composition", () => {
  const liquor = aqueousComposition({
    water: "0.60 kg",
    dissolved: [
      { formula: "ZnSO4·7H2O", mass: "28.7 g" },
      { formula: "Na2CO3", amount: "0.105 mol" },
    ],
  });
  const working = explain(liquor);

  it("gives every constant with its source", () => {
    expect(working.given.length).toBeGreaterThanOrEqual(4);
    expect(working.given.some(({ symbol }) => symbol.startsWith("pKa"))).toBe(true);
    for (const source of working.sources) expect(`${working}`).toContain(source);
  });

  it("says which solids stand and that the balances are met", () => {
    for (const { formula } of liquor.solids) expect(working.solids.join("; ")).toContain(`${formula} stands`);
    expect(working.balances).toHaveLength(4);
    expect(working.balances[0]).toMatch(/to (0|\de-1\d|\de-9)$/);
    expect(`${working}`).toContain(`pH ${liquor.pH.format({ decimals: 2, uncertainty: "none" })}`);
  });
});

describe("the working of a verdict", () => {
  const plan = planPreparation({
    equation: "CaCO3 -> CaO + CO2",
    product: "CaO",
    materials: [{ name: "whiting", form: "CaCO3" }],
    scale: { material: "whiting", portion: "100 g" },
  });

  it("has each finding with what speaks for it and what to do next", () => {
    const run = evaluateRun(plan, { dried: "70 g" });
    const working = explain(run);
    expect(working.findings).toHaveLength(run.verdict.length);
    for (const [i, { text, next }] of run.verdict.entries()) {
      expect(working.findings[i]).toContain(text);
      expect(working.findings[i]).toContain(next);
    }
    // by hand: 100 g × 56.077 / 100.086 = 56.03 g
    expect(working.facts[0]).toBe("theory: 56.03 g of CaO");
    expect(working.result).toBe(run.verdict[0]!.text);
    expect(`${working}`).toContain("1. ");
  });
});

describe("a figure that stands in a table", () => {
  it("is cited, and read between its neighbours only where it does not", () => {
    expect(explain(densityOfSolution("H2SO4", "96 %")).steps).toHaveLength(1);
    expect(explain(densityOfSolution("H2SO4", "96 %")).given.map(({ symbol }) => symbol)).not.toContain("ρ(95 %)");
    expect(explain(densityOfSolution("H2SO4", "95.5 %")).steps).toHaveLength(4);
    // an uncertain strength moves the density, so the slope is needed
    expect(explain(densityOfSolution("H2SO4", "96.0(5) %")).steps.length).toBeGreaterThan(1);
  });
});
