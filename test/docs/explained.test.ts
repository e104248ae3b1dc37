// What `explain` says of a beaker and of a run. By hand: 0.1 mol/kg acetic acid with pKa 4.76 (from the table) and without
// activities has [H+] = √(10^-4.76 × 0.1) = 0.00132 mol/kg; theory of CaCO3 stands in the plan; yield = dry mass / theory.
import { aqueousComposition, evaluateRun, explain, planPreparation } from "preparative";
import { expect, it } from "vitest";

it("explains a composition by what was put in, the constants that decide and the balances", () => {
  const vinegar = aqueousComposition({ water: "1 kg", dissolved: [{ formula: "CH3COOH", amount: "0.1 mol" }] });
  const working = explain(vinegar);
  const constants = working.given.filter(({ source }) => source !== undefined).map(({ symbol }) => symbol);
  expect(constants).toEqual(["pKa(CH3COOH)"]);
  expect(working.balances.map((line) => line.split(":")[0])).toEqual([
    "mass",
    "charge",
    "ionic strength",
    "saturation",
  ]);
  expect(working.sources).toHaveLength(1);
  const hydrogen = working.species.find((line) => line.startsWith("H+: "))!;
  expect(Math.abs(Number(/[\d.]+/.exec(hydrogen)![0]) / 0.00132 - 1)).toBeLessThan(0.05);
  expect(working.result).toMatch(/^pH 2\.88/);
});

it("explains a verdict by the figures it rests on, the likeliest finding first", () => {
  const plan = planPreparation({
    equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
    product: "CaCO3",
    materials: [
      { name: "de-icer", form: "CaCl2·2H2O" },
      { name: "soda", form: "Na2CO3" },
    ],
    scale: { product: "20 g" },
  });
  const run = evaluateRun(plan, { dried: "24.0 g" });
  const working = explain(run);
  // by hand: 24.0 / 20.02 = 119.9 %
  expect(working.facts.join("\n")).toMatch(/theory: 20\.02 g of CaCO₃[\s\S]*yield = dry mass \/ theory = 119\.9/);
  expect(working.findings).toHaveLength(run.verdict.length);
  run.verdict.forEach(({ text }, i) => {
    expect(working.findings[i]).toContain(text);
  });
  expect(String(working)).toContain("next: dry again to constant mass");
});
