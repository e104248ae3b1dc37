// Facts of the caller's own, each kind in a plan and on its sheet. Figures are invented.
import { benchSheet, facts, fromJSON, type Plan, type PlanRequest, planPreparation, solubilityOf } from "preparative";
import { describe, expect, it } from "vitest";

const REQUEST: PlanRequest = {
  equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
  product: "Zn5(CO3)2(OH)6",
  materials: [
    { name: "moss killer", form: "ZnSO4·7H2O", assay: "98 %" },
    { name: "washing soda", form: "Na2CO3·10H2O", excess: "5 %" },
  ],
  scale: { material: "moss killer", portion: "250.0 g" },
};
const SOURCE = "weighed in the studio, March 2026";

describe("a plan with own facts", () => {
  it("reads an own solubility and prints its source", () => {
    const own = facts({
      solubilities: [
        {
          formula: "Na2CO3",
          solid: "Na2CO3·10H2O",
          points: [
            ["20 °C", "19.0 g"],
            ["30 °C", "33 g"],
          ],
          source: SOURCE,
        },
      ],
    });
    expect(solubilityOf("Na2CO3", "25 °C", { facts: own }).source).toBe(`own figure: ${SOURCE}`);
    const plan = planPreparation({ ...REQUEST, facts: own });
    expect(benchSheet(plan)).toContain(`own figure: ${SOURCE}`);
    const read = fromJSON(JSON.parse(JSON.stringify(plan))) as Plan;
    expect(benchSheet(read)).toBe(benchSheet(plan));
    expect(benchSheet(planPreparation(REQUEST))).not.toContain("own figure");
  });
  it("reads a scale in an own unit", () => {
    const own = facts({ units: [{ symbol: "scoop", is: "4.2 g", source: SOURCE }] });
    const plan = planPreparation({
      ...REQUEST,
      scale: { material: "moss killer", portion: "10 scoop" as "10 g" },
      facts: own,
    });
    expect(plan.weighings[0]!.portion.format({ unit: "g", decimals: 1, uncertainty: "none" })).toBe("42.0 g");
    const read = fromJSON(JSON.parse(JSON.stringify(plan))) as Plan;
    expect(String(read)).toBe(String(plan));
  });
});
