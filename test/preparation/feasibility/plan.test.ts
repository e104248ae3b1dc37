// What a plan does with it: refuses what does not go, unless it is known and meant; leads its sheet with another solid.
import { benchSheet, doesItGo, type PlanRequest, planFromJSON, planPreparation, tryPlanPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const request = (equation: string, product: string, forms: readonly string[]): PlanRequest => ({
  equation,
  product,
  materials: forms.map((form) => ({ name: form, form })),
  scale: { product: "0.1 mol" },
});
const copper = request("Cu + HCl -> CuCl2 + H2", "CuCl2", ["Cu", "HCl"]);
const oneLine = (text: string): string => text.replace(/\s+/g, " ");

describe("a plan that does not go", () => {
  it("is refused with the reason, the solids and the code to acknowledge", () => {
    const outcome = tryPlanPreparation(copper);
    expect(outcome.ok).toBe(false);
    if (outcome.ok) return;
    expect(outcome.error.code).toBe("plan.does-not-go");
    expect(outcome.error.message).toContain("+0.34 V");
    expect(outcome.error.hint).toContain('acknowledge: ["does-not-go"]');
    expect(outcome.error.details).toMatchObject({ verdict: "does not go", reasons: [{ code: "potentials" }] });
  });

  it("is planned by whoever acknowledges it, and says so to the end", () => {
    for (const code of ["does-not-go", "plan.does-not-go"]) {
      const plan = planPreparation({ ...copper, acknowledge: [code] });
      expect(plan.feasibility.verdict).toBe("does not go");
      expect(oneLine(benchSheet(plan))).toContain("It does not go");
    }
  });

  it("comes back from its record", () => {
    const plan = planPreparation({ ...copper, acknowledge: ["does-not-go"] });
    const again = planFromJSON(JSON.parse(JSON.stringify(plan)));
    expect(again.feasibility.verdict).toBe(plan.feasibility.verdict);
  });
});

describe("a plan of another solid", () => {
  const plan = planPreparation(
    request("CuSO4 + NaHCO3 -> CuCO3 + Na2SO4 + CO2 + H2O", "CuCO3", ["CuSO4·5H2O", "NaHCO3"]),
  );

  it("is made, and its sheet leads with the solid and its mass", () => {
    expect(plan.feasibility.verdict).toBe("another solid forms");
    const { mass } = plan.feasibility.solids[0]!;
    // 0.05 mol of 221.1 g/mol from 0.1 mol of copper
    expect(mass.in("g").toNumber()).toBeCloseTo(11.0, 0);
    expect(oneLine(benchSheet(plan))).toContain("CHECK: Another solid forms: ");
  });

  it("knows its figures: each can be explained, and the solids hold no more copper than went in", () => {
    expect(plan.feasibility.reasons.every(({ source }) => source.length > 3)).toBe(true);
    const of = plan.feasibility.solids.reduce((sum, { share }) => sum + share.value.toNumber(), 0);
    expect(of).toBeLessThanOrEqual(1.0001);
  });
});

describe("a plan that goes", () => {
  it("is as it was, with no line about it on the sheet", () => {
    const plan = planPreparation(request("BaCl2 + Na2SO4 -> BaSO4 + NaCl", "BaSO4", ["BaCl2·2H2O", "Na2SO4"]));
    expect(plan.feasibility.verdict).toBe("goes");
    expect(oneLine(benchSheet(plan))).not.toMatch(/CHECK: (?:Another|It )/);
  });
});

describe("the question by itself", () => {
  it("needs no materials and no scale, and takes a plan's request as it is", () => {
    const { equation, product } = copper;
    expect(doesItGo({ equation, product }).verdict).toBe("does not go");
    expect(doesItGo(copper).verdict).toBe("does not go");
  });

  it("stops at the gate as a plan does", () => {
    expect(() => doesItGo({ equation: "NaClO + HCl -> NaCl + Cl2 + H2O", product: "NaCl" })).toThrowError(
      expect.objectContaining({ code: expect.stringMatching(/^plan\.(?:forbidden-combination|dangerous-product)$/) }),
    );
  });
});
