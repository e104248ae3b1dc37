// A liquor cooled in ice: where that brings a tenth of the product and more, so that less of it is boiled down. Solubilities are those of
// the CRC Handbook, 98th ed.: KH2PO4 13.30 g at 0 °C, 17.52 g at 10 °C, 22.32 g at 20 °C and 69.38 g at 80 °C in 100 g of water; NaCl
// 35.65, 35.72, 35.89 and 37.90 g; KNO3 13.6, 21.4, 31.9 and 170 g; that ice and water is 5 °C where a liquor stands in it is common practice, no source.
import { evaluateRun, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const PHOSPHATE: PlanRequest = {
  equation: "K2CO3 + H3PO4 -> KH2PO4 + H2O + CO2",
  product: "KH2PO4",
  materials: [
    { name: "potash", form: "K2CO3" },
    { name: "phosphoric acid", form: "H3PO4", strength: "85 %" },
  ],
  scale: { material: "potash", portion: "20 g" },
};
const cooledIn = (request: PlanRequest) =>
  planPreparation(request).steps.find(({ operation, vessel }) => operation === "cool" && vessel === "pot")!;
const ofItself = (formula: `${string}`, more: Partial<PlanRequest> = {}): PlanRequest => ({
  equation: `${formula} -> ${formula}`,
  product: formula,
  materials: [{ name: "the salt", form: formula }],
  scale: { material: "the salt", portion: "100 g" },
  ...more,
});

describe("potassium dihydrogen phosphate", () => {
  const plan = planPreparation(PHOSPHATE);
  const cooled = cooledIn(PHOSPHATE);

  // 0.2894 mol of 136.1 g/mol, 39.4 g, clear in 39.4 / 0.694 = 56.8 g of water: in the room 22.3 g stays in 100 g of it, and 68 % comes; in
  // ice 15.4 g, half way between 0 and 10 °C
  it("is cooled clear in ice, where in the room it would be boiled into its crystals", () => {
    expect(plan.crystallising).toMatchObject({ inIce: true, intoCrystals: false });
    const water = cooled.before.water.toNumber("g");
    expect(water).toBeGreaterThan(39.4 / 0.7);
    expect(water).toBeLessThan(39.4 / 0.69);
    expect(cooled.after.solids[0]!.mass.toNumber("g")).toBeCloseTo(39.4 - 0.154 * water, 0);
    expect(cooled.text).toMatch(/to 20 °C, then in ice and water to 5 °C/);
    expect(cooled.atHand).toEqual(["ice"]);
  });

  it("is filtered before it warms, and what is missing is judged by the cold of the filter", () => {
    const filter = plan.steps.find(({ text }) => text.startsWith("Filter the crystals off"))!;
    expect(filter.text).toMatch(/at 5 °C, before the liquor warms/);
    const said = (more: object): string =>
      evaluateRun(plan, { dried: "25 g", ...more })
        .verdict.map(({ text }) => text)
        .join("\n");
    expect(said({})).toMatch(/at 5 °C/);
    // it was not put into ice after all
    expect(said({ temperature: "20 °C" })).toMatch(/mother liquor keeps at 20 °C/);
    expect(said({ temperature: "20 °C" })).not.toMatch(/at 5 °C/);
  });

  it("keeps what the plan says of ice when only the masses differ", () => {
    const run = evaluateRun(plan, { weighed: { potash: "21.3 g" }, dried: "25 g" });
    expect(run.crystallising).toMatchObject({ inIce: true });
    expect(run.crystallising!.cold.toNumber("°C")).toBe(5);
  });
});

describe("a liquor that is not put into ice", () => {
  it("where that brings next to nothing", () => {
    expect(planPreparation(ofItself("NaCl")).crystallising!.inIce).toBe(false);
    expect(cooledIn(ofItself("KNO3")).text).not.toMatch(/ice/);
  });

  it("in a room that is nearly as cold", () => {
    expect(planPreparation(ofItself("KH2PO4")).crystallising!.inIce).toBe(true);
    expect(planPreparation(ofItself("KH2PO4", { temperature: "12 °C" })).crystallising!.inIce).toBe(false);
  });

  it("where another solid than the one that is asked for would come in it", () => {
    const { crystallising } = planPreparation(ofItself("MgSO4·H2O"));
    expect(crystallising?.inIce).toBe(false);
  });

  // sodium citrate has one figure, at 25 °C: what of it comes in ice nobody knows
  it("where nobody knows what ice brings of what is beside it", () => {
    const beside: PlanRequest = {
      equation: "Na2SO4 + K3C6H5O7 -> K2SO4 + Na3C6H5O7",
      product: "K2SO4",
      materials: [
        { name: "sodium sulfate", form: "Na2SO4" },
        { name: "potassium citrate", form: "K3C6H5O7" },
      ],
      scale: { product: "20 g" },
    };
    expect(planPreparation(ofItself("K2SO4")).crystallising!.inIce).toBe(true);
    expect(planPreparation(beside).crystallising!.inIce).toBe(false);
  });
});
