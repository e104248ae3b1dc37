// What a plan says beside the weighings, against sums done by hand; practice figures (limits, drying, pH) are memory or
// common practice, and the tests only check that they are used rightly.
import {
  benchSheet,
  checkRecipe,
  explain,
  type PlanRequest,
  planPreparation,
  planSequence,
  type Quantity,
  tryPlanPreparation,
  tryPlanSequence,
} from "preparative";
import { describe, expect, it } from "vitest";

const number = (q: Quantity, unit: string): number => q.in(unit).toNumber();

const plannedGas = ({ gasPerPortion, portions }: { gasPerPortion: Quantity; portions: number }): Quantity =>
  gasPerPortion.times(BigInt(portions));

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
  it("is set by headspace, by hand and vessel, and by the air of the room", () => {
    const { additionRate, vessel } = planPreparation(zinc);
    // 250 g / 287.54 g/mol × 3/5 × 24.055 L/mol (20 °C) = 12.55 L; in 30 m3: 418 ppm
    expect(number(additionRate!.atOnce[0]!.share, "ppm")).toBeCloseTo(418.3, 0);
    // 12.55 L / (0.5 % × 2 /h × 30 m3) = 2.51 min
    expect(number(additionRate!.leastTimeInRoom!, "min")).toBeCloseTo(2.51, 2);
    // half a minute for each portion, and no more gas in a minute than the vessel holds (common practice, no source)
    const byVessel = number(plannedGas(additionRate!), "L") / number(vessel!.smallest!, "L");
    expect(number(additionRate!.leastTime, "min")).toBeCloseTo(
      Math.max(0.5 * additionRate!.portions, byVessel, 2.51),
      1,
    );
    const headspace = number(vessel!.smallest!, "L") - number(vessel!.liquid, "L");
    expect(number(additionRate!.headspace, "L")).toBeCloseTo(headspace, 6);
    expect(number(additionRate!.gasPerPortion, "L")).toBeLessThanOrEqual(headspace);
  });

  it("follows the room that is given, and refuses a number of changes that is not per time", () => {
    const still = tryPlanPreparation({ ...zinc, room: { airChanges: "3" as "3 /h" } });
    expect(still.ok ? "" : still.error.code).toBe("quantity.wrong-dimension");
    expect(still.ok ? "" : still.error.message).toContain("room.airChanges");
    const small = planPreparation({ ...zinc, room: { volume: "15 m3", airChanges: "1 /h" } });
    expect(number(small.additionRate!.leastTimeInRoom!, "min")).toBeCloseTo(4 * 2.51, 1);
  });

  it("gives no time by the room for a gas that needs a hood", () => {
    const silver = planPreparation({
      equation: "Ag + HNO3 -> AgNO3 + NO2 + H2O",
      product: "AgNO3",
      materials: [
        { name: "silver", form: "Ag" },
        { name: "acid", form: "HNO3", strength: "65 %", density: "1.39 g/mL", excess: "5 %" },
      ],
      scale: { material: "silver", portion: "10 g" },
    });
    expect(silver.additionRate!.leastTimeInRoom).toBeUndefined();
    expect(number(silver.additionRate!.leastTime, "min")).toBeGreaterThanOrEqual(0.5 * silver.additionRate!.portions);
    expect(silver.additionRate!.warnings).toEqual(["NO₂: under a hood only, whatever the quantity"]);
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
    const { waste, vessel, washing, steps } = planPreparation(zinc);
    // 0.86944 mol of sulfate and 5 % of 0.86944 mol of carbonate, twice sodium each: 1.826 mol, 41.97 g
    if (washing === undefined || !("plan" in washing)) throw new Error("no washing");
    // what the washed cake keeps of the salts is no waste
    const stays = number(washing.plan.residueAfter.at(-1)!, "g") / number(washing.saltMass, "g");
    expect(stays).toBeLessThan(0.01);
    const sodium = waste.metals.find((m) => m.symbol === "Na")!;
    expect(number(sodium.amount, "mol")).toBeCloseTo(1.826 * (1 - stays), 3);
    expect(number(sodium.mass, "g")).toBeCloseTo(41.97 * (1 - stays), 1);
    expect(sodium.precipitate).toBe(false);
    // all that is poured off, less than was put in by what the cake keeps and gives to the air
    const put = number(vessel!.liquid, "L") + number(washing.plan.totalWater, "L");
    // by weight, for the volume is by the density of the liquor, and less
    expect(number(waste.mass!, "kg")).toBeLessThan(put);
    // the filtered cake weighs its solids more than the liquor that it keeps
    const cake = steps.find(({ operation }) => operation === "filter")!.after;
    const kept = cake.solids.reduce((rest, { mass }) => rest - number(mass, "kg"), number(cake.mass, "kg"));
    expect(number(waste.mass!, "kg")).toBeGreaterThan(put - kept - 0.1);
    expect(number(waste.volume!, "L")).toBeLessThan(number(waste.mass!, "kg"));
    expect(waste.closing).toMatch(/local rules/);
  });

  it("asks for soda against acid and dissolved metal, 10 % excess", () => {
    const { waste, steps } = planPreparation({
      equation: "CuSO4 + Fe -> FeSO4 + Cu",
      product: "Cu",
      materials: [
        { name: "vitriol", form: "CuSO4·5H2O" },
        { name: "iron", form: "Fe", excess: "2 %" },
      ],
      scale: { material: "vitriol", portion: "249.7 g" },
    });
    // 1.0201 mol of iron(II) in the liquor, and what is left of the acid that takes the last iron out of the copper: 10 % of what the
    // step says, less 0.0201 mol; each mole of either takes 105.99 g of soda, and 1.1 times that is given
    const iron = waste.metals.find((m) => m.symbol === "Fe")!;
    expect(iron.precipitate).toBe(true);
    const acid = steps.find(({ text }) => text.includes("dilute sulfuric acid"))!.amounts[0]!.toNumber("g") * 0.1;
    expect(number(waste.soda!, "g")).toBeCloseTo(1.1 * 105.988 * (1.0001 + acid / 98.08), 0);
  });

  it("tells which by-product may be kept, and which is mixed", () => {
    const clean = planPreparation(zinc).byProducts.find((b) => b.formula === "Na₂SO₄")!;
    expect([clean.where, clean.worthKeeping]).toEqual(["in the liquor", true]);
    const [calcium, soda] = zinc.materials;
    const mixed = planPreparation({ ...zinc, materials: [calcium!, { ...soda!, excess: "50 %" }] });
    expect(mixed.byProducts.find((b) => b.formula === "Na₂SO₄")!.worthKeeping).toBe(false);
  });
});

describe("the figures of a plan as data", () => {
  // 250.0 g / 287.54 g/mol = 0.8694 mol of zinc: / 5 = 0.17389 mol, × 548.96 = 95.46 g; as ZnCO3 × 125.39 = 109.02 g, as Zn(OH)2 ×
  // 99.39 = 86.41 g; 3/5 of it as carbon dioxide × 24.055 L/mol = 12.55 L; 0.2500 kg and 0.2613 kg for 10 EUR/kg are 5.113 EUR
  it("are what a person takes off it, in order", () => {
    const pack = { size: "1 kg", price: "10 EUR" } as const;
    const plan = planPreparation({ ...zinc, materials: zinc.materials.map((one) => ({ ...one, pack })) });
    const figures = plan.figures();
    const about = (what: string): number => Number(figures.find((one) => one.what === what)!.value);
    expect(figures.map(({ what, unit }) => [what, unit])).toEqual([
      ["zinc: portion", "g"],
      ["soda: portion", "g"],
      ["Zn₅(CO₃)₂(OH)₆: amount", "mol"],
      ["Zn₅(CO₃)₂(OH)₆: theoretical yield", "g"],
      ["theoretical yield as ZnCO₃", "g"],
      ["theoretical yield as Zn(OH)₂", "g"],
      ["zinc: water to dissolve", "g"],
      ["CO₂: volume evolved", "L"],
      ["vessel", "L"],
      ["number of washes", ""],
      ["volume of one wash", "mL"],
      ["cost", "EUR"],
    ]);
    expect(about("Zn₅(CO₃)₂(OH)₆: amount")).toBeCloseTo(0.17389, 4);
    expect(about("Zn₅(CO₃)₂(OH)₆: theoretical yield")).toBeCloseTo(95.46, 1);
    expect(about("theoretical yield as ZnCO₃")).toBeCloseTo(109.02, 1);
    expect(about("theoretical yield as Zn(OH)₂")).toBeCloseTo(86.41, 1);
    expect(about("CO₂: volume evolved")).toBeCloseTo(12.55, 1);
    expect(about("cost")).toBeCloseTo(5.113, 3);
    if (plan.washing === undefined || !("plan" in plan.washing)) throw new Error("no washing");
    const { washes, washVolume } = plan.washing.plan;
    expect([about("number of washes"), about("volume of one wash")]).toEqual([washes, number(washVolume, "mL")]);
    expect(about("vessel")).toBeCloseTo(number(plan.vessel!.needed, "L"), 9);
  });

  it("have no washes where nothing is washed, and no heat where it is not known", () => {
    const plan = planPreparation({
      equation: "Zn + HCl -> ZnCl2 + H2",
      product: "ZnCl2",
      materials: [
        { name: "zinc", form: "Zn", excess: "10 %" },
        { name: "acid", form: "HCl", strength: "10 %" },
      ],
      scale: { material: "acid", portion: "365.0 g" },
    });
    const what = plan.figures().map((one) => one.what);
    expect(what).toContain("temperature rise");
    expect(what).toContain("H₂: volume evolved");
    expect(what.filter((one) => /wash|cost/.test(one))).toEqual([]);
    expect(
      planPreparation(zinc)
        .figures()
        .map((one) => one.what),
    ).not.toContain("temperature rise");
  });
});

describe("what stays dissolved", () => {
  // soda over: as crystals it could come out of its water again, as a solution that is partly used up it cannot
  it.each([
    [undefined, ["NaCl", "Na2CO3"]],
    ["10 %", ["NaCl"]],
  ] as const)("is asked of by-products and of solids in excess: soda of %s", (strength, asked) => {
    const { liquor } = planPreparation({
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "calcium", form: "CaCl2" },
        { name: "soda", form: "Na2CO3", excess: "50 %", ...(strength === undefined ? {} : { strength }) },
      ],
      scale: { material: "calcium", portion: "111 g" },
    });
    expect(liquor.check!.substances.map(({ formula }) => formula).sort()).toEqual([...asked].sort());
    expect(liquor.check!.remainsInSolution).toBe("yes");
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

  it("is nearly complete for chalk, and more so with soda over: less than the 5.7 mg that a litre of pure water keeps", () => {
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
    // the ion pair CaCO3 by itself is 10^3.2 × 10^-8.48 = 5.2e-6 mol/kg, 0.52 mg; Ca2+ beside 0.025 mol/kg of carbonate, at an
    // activity coefficient of 0.42 (Davies, I = 1), adds 3.3e-9 / 0.42^2 / 0.025 to / 0.01 = 0.08 to 0.2 mg
    const kept = number(completeness.dissolved.dividedBy(plan.liquor.water!), "mg/kg");
    expect(kept).toBeGreaterThan(0.55);
    expect(kept).toBeLessThan(0.95);
    expect(number(completeness.precipitated, "%")).toBeGreaterThan(99.9);
  });

  it("tells that ammonium holds magnesium hydroxide back: a tenth to a fifth precipitates fresh (memory: textbooks)", () => {
    const plan = planPreparation({
      equation: "MgSO4 + 2 NH3 + 2 H2O -> Mg(OH)2 + (NH4)2SO4",
      product: "Mg(OH)2",
      materials: [
        { name: "Epsom salt", form: "MgSO4·7H2O" },
        { name: "ammonia", form: "NH3", strength: "2 mol/L" },
      ],
      scale: { material: "Epsom salt", portion: "20 g" },
    });
    const { completeness } = plan;
    if (completeness === undefined || !("dissolved" in completeness)) throw new Error("unknown");
    expect(completeness.limits).toContain("equilibrium of the whole liquor");
    expect(number(completeness.precipitated, "%")).toBeGreaterThan(8);
    expect(number(completeness.precipitated, "%")).toBeLessThan(22);
    expect(explain(completeness.precipitated).toString()).toContain("equilibrium");
    expect(benchSheet(plan).replace(/\s+/g, " ")).toContain("At equilibrium this liquor keeps 4.0 g of the product");
  });
});

describe("a product in the form that is wanted", () => {
  // One mole: 287.54 g of heptahydrate, 161.44 g of anhydrous salt, 145.15 g of the half-hydrate of gypsum
  it.each([
    ["Zn + H2SO4 -> ZnSO4 + H2", "ZnSO4·7H2O", "Zn", "65.38 g", 287.54, "Zn + H2SO4 + 7 H2O -> ZnSO4.7H2O + H2"],
    ["ZnO + H2SO4 -> ZnSO4 + H2O", "ZnSO4·7H2O", "ZnO", "81.38 g", 287.54, "ZnO + H2SO4 + 6 H2O -> ZnSO4.7H2O"],
    ["ZnO + H2SO4 + 6 H2O -> ZnSO4·7H2O", "ZnSO4", "ZnO", "81.38 g", 161.44, "ZnO + H2SO4 -> ZnSO4 + H2O"],
    [
      "CaSO4·2H2O -> CaSO4 + H2O",
      "CaSO4·0.5H2O",
      "CaSO4·2H2O",
      "172.17 g",
      145.15,
      "2 CaSO4.2H2O -> 2 CaSO4.0.5H2O + 3 H2O",
    ],
  ] as const)(
    "is calculated so though the equation writes another: %s for %s",
    (equation, product, form, portion, grams, rewritten) => {
      const materials = [{ name: form, form }, ...(form === "CaSO4·2H2O" ? [] : [{ name: "acid", form: "H2SO4" }])];
      const plan = planPreparation({
        equation,
        product,
        materials,
        scale: { material: form, portion },
        readability: { mass: "0.01 g" },
      });
      expect(number(plan.product.theoreticalYield, "g")).toBeCloseTo(grams, 1);
      expect(String(plan.equation)).toBe(rewritten);
      const check = checkRecipe({ equation, product, materials: [{ form, amount: portion }] });
      expect(number(check.theoreticalYield!, "g")).toBeCloseTo(grams, 1);
    },
  );
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
    const chain = planSequence({ steps, wanted: "100 g" });
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

  // 100 g / 0.85 / 245.74 g/mol = 0.47874 mol; × 249.68 = 119.5 g of vitriol; / 0.8 × 1.05 × 79.545 = 49.98 g of oxide;
  // 0.62835 mol / 0.9 × 63.546 = 44.4 g of copper: abridged weights, by hand
  const copper = (form: string, strength?: "10 %" | "0.5 mol/L") => ({
    steps: [
      {
        equation: "Cu + O2 -> CuO",
        product: "CuO",
        productName: "oxide",
        materials: [{ name: "turnings", form: "Cu" }],
        expectedYield: "90 %" as const,
      },
      {
        equation: "CuO + H2SO4 -> CuSO4 + H2O",
        product: "CuSO4·5H2O",
        productName: "vitriol",
        materials: [
          { name: "oxide", form: "CuO", excess: "5 %" as const },
          { name: "acid", form: "H2SO4", strength: "20 %" as const },
        ],
        expectedYield: "80 %" as const,
      },
      {
        equation: "CuSO4 + 4 NH3 + H2O -> [Cu(NH3)4]SO4·H2O",
        product: "[Cu(NH3)4]SO4·H2O",
        materials: [
          { name: "vitriol", form, strength },
          { name: "ammonia", form: "NH3", strength: "25 %" as const, excess: "30 %" as const },
        ],
        expectedYield: "85 %" as const,
      },
    ],
    wanted: "100 g" as const,
  });

  it.each([
    ["CuSO4·5H2O", undefined],
    // made into a solution, the same moles must be made
    ["CuSO4", "10 %"],
    ["CuSO4", "0.5 mol/L"],
  ] as const)("is scaled back through three steps with %s of %s", (form, strength) => {
    const chain = planSequence(copper(form, strength));
    const [turnings, oxide] = chain.plans.map((plan) => plan.weighings[0]!.portion);
    expect(number(turnings!, "g")).toBeCloseTo(44.4, 1);
    expect(number(oxide!, "g")).toBeCloseTo(50.0, 1);
    expect(number(chain.expected[1]!, "g")).toBeCloseTo(119.5, 0);
    expect(String(chain.overall)).toBe("2 Cu + O2 + 2 H2SO4 + 8 NH3 -> 2 [Cu(NH3)4]SO4.H2O");
  });

  it("takes what is made in the spelling of the request where that is what is made, else in the form that water gives", () => {
    const forms = (vitriol: string) =>
      planSequence({
        steps: [
          {
            equation: "CuO + H2SO4 -> CuSO4 + H2O",
            product: vitriol,
            productName: "vitriol",
            materials: [
              { name: "oxide", form: "CuO" },
              { name: "acid", form: "H2SO4", strength: "20 %" },
            ],
          },
          {
            equation: "CuSO4 + NaOH -> Cu(OH)2 + Na2SO4",
            product: "Cu(OH)2",
            materials: [
              { name: "vitriol", form: vitriol },
              { name: "lye", form: "NaOH" },
            ],
          },
        ],
        wanted: "10 g",
      }).plans[1]!.request.materials.map(({ form }) => form);
    expect(forms("CuSO4·5H2O")).toEqual(["CuSO4·5H2O", "NaOH"]);
    // copper sulfate crystallises with five waters (textbooks)
    expect(forms("CuSO4").map(String)).toEqual(["CuSO4.5H2O", "NaOH"]);
  });

  it("refuses a step that takes another hydrate than the one before makes", () => {
    const outcome = tryPlanSequence(copper("CuSO4"));
    expect(outcome.ok ? "no refusal" : outcome.error.message).toMatch(
      /takes vitriol as CuSO4, step 2 makes CuSO4.5H2O/,
    );
  });

  it("refuses a step that uses nothing the one before makes", () => {
    const outcome = tryPlanSequence({ steps: [{ ...steps[0]!, productName: "something" }, steps[1]!], wanted: "1 g" });
    expect(outcome.ok ? "no refusal" : outcome.error.code).toBe("plan.request");
  });
});
