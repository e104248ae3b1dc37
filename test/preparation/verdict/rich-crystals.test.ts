// Crystals that weigh more than their liquor can give: wet, or boiled down further. Solubilities in g of anhydrous salt for 100 g of
// water (CRC Handbook of Chemistry and Physics, 98th ed.).
import { evaluateRun, type Observations, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const BLUE: PlanRequest = {
  equation: "CuSO4·5H2O -> CuSO4·5H2O",
  product: "CuSO4·5H2O",
  materials: [{ name: "root killer", form: "CuSO4·5H2O" }],
  scale: { material: "root killer", portion: "100 g" },
};
const plan = planPreparation(BLUE);
const codes = (observations: Observations): string[] => evaluateRun(plan, observations).verdict.map(({ code }) => code);

describe("crystals of blue vitriol from a liquor saturated at 80 °C", () => {
  // 63.9 g dry, 57.0 g in 100 g hot: 112 g of water. 63.9 - 0.639 x = 0.200 (112 - 0.361 x): x = 73.2 g. The liquor keeps 26.8 g, and
  // boiled down to as strong as it was hot it gives some 20 g more.
  it("are expected as the steps bring them, and not as the theory", () => {
    const { expected, plan: own } = evaluateRun(plan, {});
    expect(own.product.theoreticalYield.toNumber("g")).toBeCloseTo(100, 6);
    const [first, second] = ["pot", "mother liquor"].map((vessel) => {
      const step = plan.steps.filter((one) => one.operation === "cool" && one.vessel === vessel).at(-1)!;
      return step.after.solids[0]!.mass.toNumber("g");
    });
    expect(first!).toBeCloseTo(73.2, 0);
    // what clings to the first dries into them, less what the rinse dissolves of them
    const dried = plan.steps.find(({ operation }) => operation === "dry")!.after.solids[0]!.mass.toNumber("g");
    expect(expected.toNumber("g")).toBeCloseTo(dried + second!, 6);
    expect(expected.toNumber("g")).toBeGreaterThan(0.95 * (first! + second!));
  });

  it("are as planned up to both crops, and wet above them before anything else", () => {
    expect(codes({ dried: "70.0 g" })[0]).toMatch(/consistent|loss-explained/);
    expect(codes({ dried: "99.0 g" }).slice(0, 2)).toEqual(["wet", "boiled-further"]);
    expect(codes({ dried: "99.0 g" })).not.toContain("consistent");
  });

  it("were boiled further where they are at constant mass, or pure by titration", () => {
    expect(codes({ dried: ["99.0 g", "99.0 g"] })[0]).toBe("boiled-further");
    expect(codes({ dried: "99.0 g", assay: "100 %" })[0]).toBe("boiled-further");
  });

  it("are no fault where the liquor was measured, or its crops were recorded", () => {
    // 1 g of penta stays in 5 g of liquor: 31.3 g of penta in 100 g of water at 20 °C
    expect(codes({ dried: "97.0 g", filtrateVolume: "8 mL" })).toContain("consistent");
    expect(codes({ crops: ["71.0 g", "18.0 g", "6.0 g"] })).not.toContain("wet");
    expect(codes({ dried: "97.0 g", filtrateVolume: "8 mL" })).not.toContain("wet");
  });

  it("are told from what was lost", () => {
    const run = evaluateRun(plan, { dried: "60.0 g", lost: [{ of: "product", mass: "10 g" }] });
    const whole = evaluateRun(plan, {}).expected.toNumber("g");
    expect(run.expected.toNumber("g")).toBeCloseTo(whole * 0.9, 0);
  });
});
