// Hydroxides, basic carbonates and clays among the solids of a fire: only heat brings them together to an oxide of several elements,
// and water that is bound in them leaves as steam. What water does as well stays in water.
import { describe, expect, it } from "vitest";
import { evaluateRun, type PlanRequest, planPreparation } from "../../src/preparation";
import { benchSheet } from "../../src/sheet";

const charge = (equation: string, product: string, more: Partial<PlanRequest> = {}) =>
  planPreparation({
    equation,
    product,
    materials: equation
      .split(" -> ")[0]!
      .split(" + ")
      .filter((form) => form !== "O2")
      .map((form) => ({ name: form, form })),
    scale: { product: "50.0 g" },
    ...more,
  });

describe("Thenard's blue from cobalt carbonate and alumina hydrate", () => {
  const plan = charge("CoCO3 + Al(OH)3 -> CoAl2O4 + CO2 + H2O", "CoAl2O4");
  const fire = plan.steps.find(({ operation }) => operation === "fire")!;

  // 50.0 / 176.89 = 0.28266 mol: × 118.94 = 33.6 g, × 2 × 78.00 = 44.1 g, and × 24.06 L/mol (20 °C) = 6.80 L of CO2
  // and 3 × 0.28266 × 18.015 = 15.3 g of water as steam, which leaves the charge as the gas does
  it("is ground and fired, and loses carbon dioxide and steam", () => {
    expect([plan.procedure.kind, plan.isolation.how]).toEqual(["thermal decomposition", "residue"]);
    expect(plan.weighings.map(({ exact }) => exact.format({ decimals: 1, uncertainty: "none" }))).toEqual([
      "33.6 g",
      "44.1 g",
    ]);
    expect(fire.text).toMatch(
      /^Heat slowly to 1200 °C.* at 50\.0 g, from 77\.7 g; 6\.80 L of CO₂ and 15\.3 g of steam leave it/,
    );
    expect(fire.after.water.toNumber("g")).toBe(0);
  });

  // both leave their solids without a reaction between them
  it("has a mass that does not tell of a reaction, by step, sheet and verdict", () => {
    expect(fire.text).toContain("The mass tells only that CO₂ and H₂O have left, not that CoAl₂O₄ has formed.");
    expect(benchSheet(plan).replace(/\s+/g, " ")).toContain("CO₂ and H₂O left the charge, which does not tell");
    expect(evaluateRun(plan, { dried: "50.0 g" }).verdict[0]!.text).toContain(
      "the mass tells only that CO₂ and H₂O left",
    );
  });
});

it("steam alone tells nothing either: zinc oxide and alumina hydrate", () => {
  const plan = charge("ZnO + Al(OH)3 -> ZnAl2O4 + H2O", "ZnAl2O4");
  expect(plan.steps.find(({ operation }) => operation === "fire")!.text).toMatch(
    /^Heat slowly to 1100 °C.* The mass tells only that H₂O has left, not that ZnAl₂O₄ has formed\.$/,
  );
});

// common practice, no source
describe.each([
  ["CaCO3 + Al2Si2O5(OH)4 -> CaAl2Si2O8 + CO2 + H2O", "CaAl2Si2O8"],
  ["ZnO + FeOOH -> ZnFe2O4 + H2O", "ZnFe2O4"],
  ["Cu2CO3(OH)2 + Cr2O3 -> CuCr2O4 + CO2 + H2O", "CuCr2O4"],
  ["Cu2CO3(OH)2 + CaCO3 + SiO2 -> CaCuSi4O10 + CO2 + H2O", "CaCuSi4O10"],
  ["Ca(OH)2 + TiO2 -> CaTiO3 + H2O", "CaTiO3"],
  ["Ca(OH)2 + Al(OH)3 -> CaAl2O4 + H2O", "CaAl2O4"],
  ["BaCO3 + Fe(OH)3 -> BaFe12O19 + CO2 + H2O", "BaFe12O19"],
  ["Li2CO3 + Co(OH)2 + O2 -> LiCoO2 + CO2 + H2O", "LiCoO2"],
])("%s", (equation, product) => {
  it("is fired", () => {
    expect(charge(equation, product).isolation.how).toBe("residue");
  });
});

// common practice, no source: lime takes anhydrides of acids in water, magnetite is made in hot lye, hydrates and hydroxides need water
describe.each([
  ["Ca(OH)2 + WO3 -> CaWO4 + H2O", "CaWO4"],
  ["Ca(OH)2 + V2O5 -> Ca(VO3)2 + H2O", "Ca(VO3)2"],
  ["CaCO3 + H2WO4 -> CaWO4 + CO2 + H2O", "CaWO4"],
  ["Ca(OH)2 + B2O3 -> CaB2O4 + H2O", "CaB2O4"],
  ["Fe(OH)2 + Fe(OH)3 -> Fe3O4 + H2O", "Fe3O4"],
  ["Ca(OH)2 + Al(OH)3 -> Ca3Al2O6·6H2O", "Ca3Al2O6·6H2O"],
  ["Ca(OH)2 + MgCO3 -> CaCO3 + Mg(OH)2", "CaCO3"],
  ["NaOH + Al(OH)3 -> NaAlO2 + H2O", "NaAlO2"],
])("%s", (equation, product) => {
  it("stays in water", () => {
    expect(charge(equation, product).isolation.how).not.toBe("residue");
  });
});
