// What a plan says beside the weighings, against sums done by hand; practice figures (limits, drying, pH) are memory or
// common practice, and the tests only check that they are used rightly.
import {
  type PlanRequest,
  planChain,
  planPreparation,
  type Quantity,
  tryPlanChain,
  tryPlanPreparation,
} from "preparative";
import { describe, expect, it } from "vitest";

const number = (q: Quantity, unit: string): number => q.in(unit).toNumber();

const zinc: PlanRequest = {
  equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
  product: "Zn5(CO3)2(OH)6",
  materials: [
    { name: "zinc", form: "ZnSO4·7H2O" },
    { name: "soda", form: "Na2CO3·10H2O", excess: "5 %" },
  ],
  scale: { material: "zinc", portion: "250.0 g" },
};

describe("the pace of adding", () => {
  it("is set by headspace and by the air of the room", () => {
    const { pace, vessel } = planPreparation(zinc);
    // 250 g / 287.54 g/mol × 3/5 × 24.055 L/mol (20 °C) = 12.55 L; in 30 m3: 418 ppm
    expect(number(pace!.atOnce[0]!.share, "ppm")).toBeCloseTo(418.3, 0);
    // 12.55 L / (0.5 % × 2 /h × 30 m3) = 2.51 min
    expect(number(pace!.leastTime!, "min")).toBeCloseTo(2.51, 2);
    const headspace = number(vessel!.smallest!, "L") - number(vessel!.liquid, "L");
    expect(number(pace!.headspace, "L")).toBeCloseTo(headspace, 6);
    expect(number(pace!.gasPerPortion, "L")).toBeLessThanOrEqual(headspace);
  });

  it("follows the room that is told", () => {
    const small = planPreparation({ ...zinc, room: { volume: "15 m3", airChanges: "1 /h" } });
    expect(number(small.pace!.leastTime!, "min")).toBeCloseTo(4 * 2.51, 1);
  });

  it("gives no time for a gas that needs a hood", () => {
    const silver = planPreparation({
      equation: "Ag + HNO3 -> AgNO3 + NO2 + H2O",
      product: "AgNO3",
      materials: [
        { name: "silver", form: "Ag" },
        { name: "acid", form: "HNO3", strength: "65 %", density: "1.39 g/mL", excess: "5 %" },
      ],
      scale: { material: "silver", portion: "10 g" },
    });
    expect(silver.pace!.leastTime).toBeUndefined();
    expect(silver.pace!.warnings).toEqual(["NO₂: under a hood only, whatever the quantity"]);
  });
});

describe("the heat of mixing", () => {
  it("is that of zinc in acid, 153.9 kJ/mol, over the mass of the batch", () => {
    const plan = planPreparation({
      equation: "Zn + HCl -> ZnCl2 + H2",
      product: "ZnCl2",
      materials: [
        { name: "zinc", form: "Zn", excess: "10 %" },
        { name: "acid", form: "HCl", strength: "10 %" },
      ],
      scale: { material: "acid", portion: "365.0 g" },
    });
    // 365 g × 0.1 / 36.458 g/mol / 2 = 0.50058 mol; 153.89 kJ/mol (NBS tables) / (401 g × 4.0 J/(g K)) = 48 K
    if (!("rise" in plan.heat)) throw new Error("no heat");
    expect(number(plan.heat.enthalpy, "kJ/mol")).toBeCloseTo(-153.9, 0);
    expect(number(plan.heat.rise.rise, "ΔK")).toBeCloseTo((0.50058 * 153890) / (401 * 4.0), 0);
  });

  it("is unknown where an enthalpy is missing, and says which", () => {
    const { heat, unknown } = planPreparation(zinc);
    expect("missing" in heat && heat.missing).toMatch(/Zn5\(CO3\)2\(OH\)6/);
    expect(unknown.some((text) => text.startsWith("heat of the reaction"))).toBe(true);
  });
});

describe("what is left", () => {
  it("holds the metals of by-products and excess", () => {
    const { waste, vessel, washing } = planPreparation(zinc);
    // 0.86944 mol of sulfate and 5 % of 0.86944 mol of carbonate, twice sodium each: 1.826 mol, 41.97 g
    const sodium = waste.metals.find((m) => m.symbol === "Na")!;
    expect(number(sodium.amount, "mol")).toBeCloseTo(1.826, 3);
    expect(number(sodium.mass, "g")).toBeCloseTo(41.97, 1);
    expect(sodium.precipitate).toBe(false);
    if (washing === undefined || !("plan" in washing)) throw new Error("no washing");
    expect(number(waste.volume!, "L")).toBeCloseTo(
      number(vessel!.liquid, "L") + number(washing.plan.totalWater, "L"),
      6,
    );
    expect(waste.closing).toMatch(/local rules/);
  });

  it("asks for soda against acid and dissolved metal, a tenth over", () => {
    const { waste } = planPreparation({
      equation: "CuSO4 + Fe -> FeSO4 + Cu",
      product: "Cu",
      materials: [
        { name: "vitriol", form: "CuSO4·5H2O" },
        { name: "iron", form: "Fe" },
      ],
      scale: { material: "vitriol", portion: "249.7 g" },
    });
    // 1.0001 mol of iron(II) in the liquor: 1.0001 × 1.1 × 105.99 g/mol
    const iron = waste.metals.find((m) => m.symbol === "Fe")!;
    expect(iron.precipitate).toBe(true);
    expect(number(waste.soda!, "g")).toBeCloseTo(1.0001 * 1.1 * 105.988, 0);
  });

  it("tells which by-product may be kept, and which is mixed", () => {
    const clean = planPreparation(zinc).byProducts.find((b) => b.formula === "Na₂SO₄")!;
    expect([clean.where, clean.worthKeeping]).toEqual(["in the liquor", true]);
    const [calcium, soda] = zinc.materials;
    const mixed = planPreparation({ ...zinc, materials: [calcium!, { ...soda!, excess: "50 %" }] });
    expect(mixed.byProducts.find((b) => b.formula === "Na₂SO₄")!.worthKeeping).toBe(false);
  });
});

describe("drying and precipitation", () => {
  it("stays below where heat takes the product apart", () => {
    expect(number(planPreparation(zinc).drying.upTo!, "°C")).toBe(100);
    const plan = planPreparation({
      equation: "MgO + H2SO4 + H2O -> MgSO4·7H2O",
      product: "MgSO4·7H2O",
      materials: [{ name: "magnesia", form: "MgO" }],
      scale: { product: "100 g" },
    });
    // bench practice (memory): Epsom salt at 30 to 40 °C, it changes at 48 °C
    expect(number(plan.drying.upTo!, "°C")).toBeLessThanOrEqual(40);
  });

  it("is nearly complete for chalk: solubility product 10^-8.48 leaves 5.7 mg of CaCO3 in a litre of pure water", () => {
    const plan = planPreparation({
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "calcium", form: "CaCl2·2H2O" },
        { name: "soda", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { product: "20 g" },
    });
    const { completeness } = plan;
    if (completeness === undefined || !("dissolved" in completeness)) throw new Error("unknown");
    expect(number(completeness.dissolved.dividedBy(plan.liquor.water!), "g/kg")).toBeCloseTo(0.0057, 3);
    expect(number(completeness.fallsOut, "%")).toBeGreaterThan(99.9);
  });
});

describe("a scale by vessel", () => {
  it("fills the vessel, foam included", () => {
    const plan = planPreparation({ ...zinc, scale: { vessel: "2 L" } });
    expect(number(plan.vessel!.needed, "L")).toBeCloseTo(2, 2);
    expect(number(plan.vessel!.smallest!, "L")).toBe(2);
  });
});

describe("a forbidden combination", () => {
  const bleach: PlanRequest = {
    equation: "NaClO + HCl -> NaCl + Cl2 + H2O",
    product: "NaCl",
    materials: [
      { name: "bleach", form: "NaClO", strength: "5 %" },
      { name: "acid", form: "HCl", strength: "10 %" },
    ],
    scale: { material: "acid", portion: "100 g" },
  };

  it("stops the plan by code and names itself", () => {
    const outcome = tryPlanPreparation(bleach);
    if (outcome.ok) throw new Error("planned");
    expect(outcome.error.code).toBe("plan.forbidden-combination");
    expect(outcome.error.hint).toContain("hypochlorite-acid");
    expect(outcome.error.details["combinations"]).toMatchObject([{ code: "hypochlorite-acid", products: ["Cl2"] }]);
  });

  it("is planned when it is acknowledged by its code, and not by another", () => {
    expect(tryPlanPreparation({ ...bleach, acknowledge: ["hypochlorite-acid"] }).ok).toBe(true);
    expect(tryPlanPreparation({ ...bleach, acknowledge: ["hypochlorite-ammonia"] }).ok).toBe(false);
  });
});

describe("a chain", () => {
  const steps = [
    { ...zinc, productName: "basic carbonate", expectedYield: "90 %" as const },
    {
      equation: "Zn5(CO3)2(OH)6 + CH3COOH + H2O -> Zn(CH3COO)2·2H2O + CO2",
      product: "Zn(CH3COO)2·2H2O",
      expectedYield: "70 %" as const,
      materials: [
        { name: "basic carbonate", form: "Zn5(CO3)2(OH)6" },
        { name: "vinegar", form: "CH3COOH", strength: "5 %" as const },
      ],
    },
  ].map(({ scale: _, ...step }: Partial<PlanRequest> & Omit<PlanRequest, "scale">) => step);

  it("is scaled back from the last product through the yields", () => {
    const chain = planChain({ steps, wanted: "100 g" });
    // 100 g / 0.7 / 219.50 g/mol = 0.65083 mol; / 5 × 548.96 = 71.46 g; / 0.9 = 79.40 g; × 5 × 287.54 / 548.96 = 207.9 g
    const [first] = chain.plans;
    expect(number(first!.weighings[0]!.portion, "g")).toBeCloseTo(207.9, 0);
    expect(number(chain.expected.at(-1)!, "g")).toBeCloseTo(100, 0);
    expect(chain.inventory.map((line) => [line.material, line.steps])).toEqual([
      ["zinc", [1]],
      ["soda", [1]],
      ["vinegar", [2]],
    ]);
    expect(String(chain.overall)).toBe("ZnSO4 + Na2CO3 + H2O + 2 CH3COOH -> Na2SO4 + CO2 + Zn(CH3COO)2.2H2O");
    expect(chain.cost.total).toBeUndefined();
    expect(chain.cost.missing).toEqual(["price of zinc", "price of soda", "price of vinegar"]);
  });

  it("refuses a step that uses nothing the one before makes", () => {
    const outcome = tryPlanChain({ steps: [{ ...steps[0]!, productName: "something" }, steps[1]!], wanted: "1 g" });
    expect(outcome.ok ? "no refusal" : outcome.error.code).toBe("plan.request");
  });
});
