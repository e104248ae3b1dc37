// What is in a liquor beside its product stays dissolved, goes on the hot filter, or is told. Solubilities in g of anhydrous salt for
// 100 g of water, as our table has them (CRC Handbook of Chemistry and Physics, 98th ed.); the sums are worked beside each figure.
import { type Plan, type PlanRequest, type ProcedureStep, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";
import { COPPER_NITRATE } from "../data/common-requests";

const grams = (q: { in(unit: string): { toNumber(): number } } | undefined): number => q!.in("g").toNumber();
const cooled = ({ steps }: Plan, vessel = "pot"): ProcedureStep | undefined =>
  steps.filter((step) => step.operation === "cool" && step.vessel === vessel).at(-1);
const crystals = (step: ProcedureStep | undefined): Record<string, number> =>
  Object.fromEntries((step?.after.solids ?? []).map(({ formula, mass }) => [formula, grams(mass)]));
const wordsOf = ({ steps }: Plan): string => steps.map(({ text }) => text).join("\n");

const DICHROMATE: PlanRequest = {
  equation: "K2CrO4 + H2SO4 -> K2Cr2O7 + K2SO4 + H2O",
  product: "K2Cr2O7",
  materials: [
    { name: "potassium chromate", form: "K2CrO4" },
    { name: "sulfuric acid", form: "H2SO4", strength: "50 %" },
  ],
  scale: { material: "potassium chromate", portion: "38.8 g" },
};

const SAL_AMMONIAC: PlanRequest = {
  equation: "(NH4)2SO4 + NaCl -> NH4Cl + Na2SO4",
  product: "NH4Cl",
  materials: [
    { name: "ammonium sulfate", form: "(NH4)2SO4" },
    { name: "common salt", form: "NaCl" },
  ],
  scale: { material: "ammonium sulfate", portion: "66.1 g" },
};

const NORWEGIAN: PlanRequest = {
  equation: "CaCl2 + NaNO3 -> Ca(NO3)2 + NaCl",
  product: "Ca(NO3)2·4H2O",
  materials: [
    { name: "calcium chloride", form: "CaCl2·2H2O" },
    { name: "Chile saltpetre", form: "NaNO3" },
  ],
  scale: { material: "calcium chloride", portion: "50 g" },
};

describe("a salt that shares an ion with the product", () => {
  const plan = planPreparation(DICHROMATE);

  // K2SO4 alone: 21.5 g in 100 g at 80 °C, 1.23 mol/kg, the product of its ions 4 × 1.23^3 = 7.5; 29.4 g of dichromate in 1.06 times the
  // 41.5 g of water that just dissolves it hot are 2.27 mol/kg: (4.54 + 2x)^2 x = 7.5 gives x = 0.287 mol/kg, 2.2 g, and 15.2 g on the
  // filter. It is rinsed with a quarter of that, 3.8 g of water, which is boiled off before: 40.2 g keep 28.4 g of dichromate, 2.41
  // mol/kg, and x = 0.264 mol/kg, 1.8 g
  it("leaves hot, beside so much of that ion: 17.4 - 1.8 = 15.6 g of K2SO4", () => {
    const hot = plan.steps.find(({ operation }) => operation === "concentrate")!;
    expect(grams(hot.after.water)).toBeCloseTo(1.06 * 41.5 - 3.8, 0);
    expect(crystals(hot)).toEqual({ "K₂SO₄": expect.closeTo(15.6, 1) });
    expect(wordsOf(plan)).toMatch(/Filter at once, at 90 to 95 °C, through a warmed funnel, from the K₂SO₄/);
  });

  it("stays dissolved cold, the potassium of both counted", () => {
    const step = cooled(plan)!;
    // 15.6 g of salt keeps 3.9 of the 40.2 + 29.4 + 1.8 g of liquor, 5.5 %; 3.8 g of water with 0.8 g of the salt rinses it, and 3.9 g of
    // that 8.5 g stays: 2.5 % is lost, 28.7 g passes in 41.2 g of water, which keeps 12.2 g in 100 g
    expect(crystals(step)).toEqual({ "K₂Cr₂O₇": expect.closeTo(28.66 - 5.03, 1) });
    // 11.0 g of K2SO4 alone, 0.631 mol/kg: 4 × 0.631^3 = 1.005; nine tenths of that water: 0.73 of the product
    const molal = (formula: string): number =>
      step.after.dissolved
        .find((one) => one.formula === formula)!
        .amount.in("mol")
        .toNumber() /
      (grams(step.after.water) / 1000);
    expect((2 * molal("K₂Cr₂O₇") + 2 * molal("K₂SO₄")) ** 2 * molal("K₂SO₄")).toBeLessThan(0.73 * 1.005);
  });

  it("is no double salt for the metal in its anion", () => {
    expect(plan.checks.map(({ text }) => text).join()).not.toMatch(/double salt/);
  });
});

describe("a pair whose other salt dissolves best at 32 °C", () => {
  const plan = planPreparation(SAL_AMMONIAC);

  it("is filtered above that: at 35 °C 48.8 g in 100 g keeps what was dissolved at 80 °C", () => {
    const step = cooled(plan)!;
    expect(step.target!.in("°C").toNumber()).toBe(35);
    // NH4Cl 65.0 g hot and 43.7 g at 35 °C, in 1.06 × 53.49 / 0.650 = 87.2 g of water; Na2SO4 42.9 g hot, 71.0 - 37.4 = 33.6 g would be
    // left, which 8.4 g of water rinses: boiled down to 78.8 g before, which leaves 71.0 - 33.8 = 37.2 g
    const hot = plan.steps.find(({ text }) => text.startsWith("Filter at once"))!;
    expect(grams(hot.before.solids[0]!.mass)).toBeCloseTo(37.2, 1);
    expect(grams(hot.put[0]!.water)).toBeCloseTo(8.4, 1);
    // it keeps 9.3 of the 166.2 g of liquor, 5.6 %; with the 8.4 g of water and the 3.6 g that this dissolves 21.3 g, of which 9.3 g
    // stays: 2.45 % is lost; 52.2 g passes, in 0.944 × 78.8 + 0.563 × (4.4 + 8.4) = 81.7 g of water
    expect(crystals(step)).toEqual({ "NH₄Cl": expect.closeTo(52.2 - 0.437 * 81.7, 1) });
    // overnight it would be as cold as the room
    expect(step.text).not.toContain("overnight");
    expect(step.text).toMatch(
      /to 35 °C, the thermometer in it, and filter it there \(colder Na₂SO₄ would crystallise with it, as clear prisms/,
    );
  });

  it("has one figure for one batch: check, steps and reasons", () => {
    const { feasibility, checks } = plan;
    // a third of it in the first crop
    expect(feasibility.verdict).toBe("goes in part");
    expect(feasibility.reasons[0]!.text).toMatch(/16\.5 g of NH₄Cl crystallises/);
    expect(feasibility.reasons.map(({ text }) => text).join()).not.toMatch(/18 g of NH4Cl/);
    expect(checks.map(({ text }) => text).join()).toMatch(/16\.5 g of NH₄Cl crystallises, 31\.6 % of it/);
    expect(cooled(plan)!.text).toMatch(/16\.5 g of NH₄Cl/);
  });

  it("gives a second crop the same way", () => {
    const second = cooled(plan, "mother liquor")!;
    expect(Object.keys(crystals(second))).toEqual(["NH₄Cl"]);
    expect(second.target!.in("°C").toNumber()).toBe(35);
  });
});

describe("a mixture that no temperature parts", () => {
  const plan = planPreparation(NORWEGIAN);

  it("is told before anything is weighed, with its share, and is in the expectation", () => {
    const { verdict, reasons } = plan.feasibility;
    expect(verdict).toBe("goes in part");
    expect(reasons[0]!.text).toMatch(/^what crystallises is a mixture.*of NaCl crystallises with it: 8\d\.\d % pure/);
    const solids = crystals(cooled(plan));
    const share = solids["Ca(NO₃)₂·4H₂O"]! / (solids["Ca(NO₃)₂·4H₂O"]! + solids["NaCl"]!);
    expect(reasons[0]!.text).toContain(`${(100 * share).toFixed(1)} % pure`);
    expect(plan.steps.at(-1)!.text).toMatch(/and with it .* of NaCl/);
  });
});

describe("a second crop", () => {
  it("is not boiled for where more of another salt would come: 4.5 g of KCl asks for 13 g of water at 20 °C (34.2 g in 100 g)", () => {
    const plan = planPreparation({
      equation: "FeCl3 + K2C2O4 + H2O -> K3[Fe(C2O4)3]·3H2O + KCl",
      product: "K3[Fe(C2O4)3]·3H2O",
      materials: [
        { name: "ferric chloride", form: "FeCl3·6H2O" },
        { name: "potassium oxalate", form: "K2C2O4·H2O", excess: "5 %" },
      ],
      scale: { material: "ferric chloride", portion: "5.41 g" },
    });
    expect(wordsOf(plan)).not.toMatch(/second crop/);
  });

  // 13.6 g of H3BO3 (4.72 g in 100 g) stay in 283 g of water, and the Na2SO4, 37 g, asks for 193 g (19.23 g in 100 g): what is left
  // to boil off brings a little more than 4 g at the most, with Glauber's salt in it, and a part of that, as pure as crystals are
  // to be, less than 5 % of the 64.9 g of the theory
  it("is not boiled for where Glauber's salt would come before it is worth it", () => {
    const plan = planPreparation({
      equation: "Na2B4O7 + H2SO4 + H2O -> H3BO3 + Na2SO4",
      product: "H3BO3",
      materials: [
        { name: "borax", form: "Na2B4O7·10H2O" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { material: "borax", portion: "100 g" },
    });
    expect(wordsOf(plan)).not.toMatch(/second crop/);
  });
});

describe("a crop that hot water limits", () => {
  const neutral = (equation: string, product: string, form: string, acid: string, strength: "37 %" | "10 %"): Plan =>
    planPreparation({
      equation,
      product,
      materials: [
        { name: "base", form },
        { name: "acid", form: acid, strength },
      ],
      scale: { product: "50 g" },
    });

  it("is boiled down into its crystals where those are the same hot and cold, half of them at most in the boil", () => {
    const plan = neutral("K2CO3 + H2SO4 -> K2SO4 + CO2 + H2O", "K2SO4", "K2CO3", "H2SO4", "37 %");
    // in ice, at 5 °C, 8.42 g stays in 100 g (7.65 g at 0 °C, 9.24 g at 10 °C): by cooling from 21.5 g it would be 61 %. For 85 % there would
    // be 7.5 / 0.0842 = 89 g of water, in which 28.8 g of 42.5 g stands at the boil (23.9 g in 100 g): at most half of the crop does in
    // 25 / (0.239 - 0.0421) = 127 g, in steps of 3 %
    const step = cooled(plan)!;
    const water = grams(step.before.water);
    expect(water).toBeGreaterThanOrEqual(25 / (0.239 - 0.0421));
    expect(water).toBeLessThan((1.031 * 25.025) / (0.239 - 0.0421));
    expect(crystals(step)["K₂SO₄"]!).toBeCloseTo(50.05 - 0.0842 * water, 0);
    expect(wordsOf(plan)).toMatch(/cooling brings only 61 %, so some crystallises as the water goes/);
    // what ice leaves of it is 11 g of 50 g, and of that no 15 % of the theory comes again
    expect(wordsOf(plan)).not.toMatch(/second crop/);
  });

  it("counts the water of its crystals: BaCl2·2H2O, 35.74 g in 100 g at 20 °C", () => {
    const plan = neutral("BaCO3 + HCl + H2O -> BaCl2·2H2O + CO2", "BaCl2·2H2O", "BaCO3", "HCl", "10 %");
    // 50 g are 42.6 g dry. So much water that half of the crop stands at the boil; of the rest 0.3574 g stays in each gram that is
    // liquid when cold: 0.8525 x = 42.6 - 0.3574 (w - 0.1475 x)
    const w = grams(cooled(plan)!.before.water);
    expect(w).toBeGreaterThan(17.9 + 6.3);
    expect(crystals(cooled(plan))["BaCl₂·2H₂O"]!).toBeCloseTo((42.6 - 0.3574 * w) / (0.8525 - 0.3574 * 0.1475), 0);
  });

  it("is made where it dissolves best, if another hydrate stands hot: ZnSO4 75.4 g at 50 °C, 66.4 g at 80 °C", () => {
    const plan = planPreparation({
      equation: "Zn + H2SO4 -> ZnSO4 + H2",
      product: "ZnSO4·7H2O",
      materials: [
        { name: "zinc granules", form: "Zn", excess: "10 %" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { product: "28.75 g" },
    });
    // 16.14 g dry in 21.4 g; in ice, at 5 °C, 44.0 g stays in 100 g (41.0 g at 0 °C, 47.1 g at 10 °C); x of 287.5:
    // 16.14 - 0.5614 x = 0.440 (21.4 - 0.4386 x), x = 18.25 g
    expect(grams(cooled(plan)!.before.water)).toBeCloseTo(16.14 / 0.754, 1);
    expect(crystals(cooled(plan))["ZnSO₄·7H₂O"]!).toBeCloseTo(18.25, 1);
    // the boil holds 60.3 g in 100 g: 26.8 g of water for 16.14 g
    expect(wordsOf(plan)).toMatch(/Evaporate the liquor in a wide dish on a water bath at 50 °C, not boiling/);
    expect(wordsOf(plan)).not.toMatch(/dissolves again/);
    expect(wordsOf(plan)).toMatch(/second crop evaporate the mother liquor on a water bath at 50 °C, not boiling/);
  });
});

describe("verdigris, of which boiling water dissolves five times what cold does", () => {
  // 1 part in 14 of cold and in 5 of boiling water (Cooley's Cyclopaedia, 1880): 6.5 and 17.9 g anhydrous in 100 g
  const plan = planPreparation({
    equation: "Cu2(OH)2CO3 + CH3COOH -> Cu(CH3COO)2·H2O + CO2 + H2O",
    product: "Cu(CH3COO)2·H2O",
    materials: [
      { name: "basic copper carbonate", form: "Cu2(OH)2CO3" },
      { name: "vinegar essence", form: "CH3COOH", strength: "25 %", excess: "10 %" },
    ],
    scale: { material: "basic copper carbonate", portion: "22.1 g" },
  });

  it("is made in the water that dissolves it hot, and looked through there", () => {
    // 0.1999 mol of 181.6 g/mol: 36.3 g, at 80 °C 15.0 g in 100 g on the line between the two
    const look = plan.steps.find(({ text }) => /look through/i.test(text))!;
    expect(grams(look.before.water)).toBeGreaterThan(0.99 * (36.3 / 0.1505));
    expect(grams(look.before.water)).toBeLessThan(36.3 / 0.065 / 2);
  });

  it("is evaporated, not boiled: without free acid a basic acetate separates", () => {
    expect(wordsOf(plan)).toMatch(/keep it smelling of acetic acid/);
    expect(wordsOf(plan)).toMatch(/Evaporate the liquor slowly in a wide dish on a water bath, not boiling/);
    expect(wordsOf(plan)).not.toMatch(/\bboil(ed)? (the|down|off)/i);
  });
});

describe("a salt of which only cold figures are known", () => {
  it("is boiled down by that and cooled, never dry: Rochelle salt, 67.8 g in 100 g at 20 °C", () => {
    const plan = planPreparation({
      equation: "KHC4H4O6 + Na2CO3 + H2O -> KNaC4H4O6·4H2O + CO2",
      product: "KNaC4H4O6·4H2O",
      materials: [
        { name: "cream of tartar", form: "KHC4H4O6" },
        { name: "soda", form: "Na2CO3" },
      ],
      scale: { material: "cream of tartar", portion: "37.6 g" },
    });
    // 56.4 g are 42.0 g dry. It was boiled down to 21.5 g of water, from which crystals come as a block; x g of crystals, 25.5 % water,
    // are now 0.6 (42.0 + w), and 42.0 - 0.745 x = 0.678 (w - 0.255 x): w = 27.0 g
    expect(grams(cooled(plan)!.before.water)).toBeCloseTo(27, 0);
    expect(wordsOf(plan)).not.toMatch(/sets to crystals/);
    expect(wordsOf(plan)).not.toMatch(/too far from it/);
  });

  it("is dissolved when it is looked through: zinc acetate, 30 g in 100 g at 20 °C", () => {
    const plan = planPreparation({
      equation: "ZnCO3 + CH3COOH + H2O -> Zn(CH3COO)2·2H2O + CO2",
      product: "Zn(CH3COO)2·2H2O",
      materials: [
        { name: "zinc carbonate", form: "ZnCO3" },
        { name: "vinegar essence", form: "CH3COOH", strength: "25 %", excess: "10 %" },
      ],
      scale: { material: "zinc carbonate", portion: "25.0 g" },
    });
    const look = plan.steps.find(({ text }) => /look through/i.test(text))!;
    // 0.1994 mol of 183.5 g/mol: 36.6 g in 122 g, where the acid brings 79 g
    expect(grams(look.before.water)).toBeGreaterThan(0.9 * (36.6 / 0.3));
  });
});

describe("the hydrate that is asked for", () => {
  it("is filtered above the change below which another comes: Cu(NO3)2·6H2O below 26 °C", () => {
    const plan = planPreparation(COPPER_NITRATE);
    expect(cooled(plan)!.target!.in("°C").toNumber()).toBe(30);
    expect(cooled(plan)!.text).toMatch(/below 26 °C another hydrate would crystallise/);
    expect(wordsOf(plan)).not.toMatch(/sets as a whole/);
  });

  it("is evaporated above that where no figure is known there: the citrate with 5½ H2O below 45 °C", () => {
    const plan = planPreparation({
      equation: "C6H8O7 + NaHCO3 -> Na3C6H5O7·2H2O + CO2 + H2O",
      product: "Na3C6H5O7·2H2O",
      materials: [
        { name: "citric acid", form: "C6H8O7·H2O" },
        { name: "baking soda", form: "NaHCO3" },
      ],
      scale: { material: "citric acid", portion: "21.0 g" },
    });
    expect(wordsOf(plan)).toMatch(/above 45 °C all the time.*colder another hydrate/);
    // soda went into it cold since it was hot
    expect(wordsOf(plan)).toMatch(/Warm the liquor to 80 °C again/);
  });
});

describe("water that is driven off again", () => {
  it("is not taken for a dichromate that nothing reduces: 29.4 g, 70.9 g in 100 g at 80 °C", () => {
    const plan = planPreparation({
      equation: "K2Cr2O7 + K2CO3 -> K2CrO4 + CO2",
      product: "K2CrO4",
      materials: [
        { name: "potassium dichromate", form: "K2Cr2O7" },
        { name: "potash", form: "K2CO3", assay: "98 %", excess: "2 %" },
      ],
      scale: { material: "potassium dichromate", portion: "29.4 g" },
    });
    expect(grams(plan.steps.find(({ operation }) => operation === "dissolve")!.after.water)).toBeLessThan(70);
  });

  it("goes off a water bath where the liquor must not boil: 9.81 g of dichromate at 40 °C, 26.3 g in 100 g", () => {
    const plan = planPreparation({
      equation: "K2Cr2O7 + H2SO4 + C2H5OH + H2O -> KCr(SO4)2·12H2O + CH3CHO",
      product: "KCr(SO4)2·12H2O",
      materials: [
        { name: "potassium dichromate", form: "K2Cr2O7" },
        { name: "sulfuric acid", form: "H2SO4", strength: "96 %" },
        { name: "spirit", form: "C2H5OH", strength: "95 %", excess: "10 %" },
      ],
      scale: { material: "potassium dichromate", portion: "9.81 g" },
      acknowledge: ["chromate-organic"],
    });
    const dissolved = plan.steps.find(({ text }) => text.startsWith("Dissolve the potassium dichromate"))!;
    expect(grams(dissolved.after.water)).toBeCloseTo((1.2 * 9.81) / 0.263, 0);
    expect(wordsOf(plan)).toMatch(/Evaporate the liquor in a wide dish on a water bath, at no more than 40 °C/);
    expect(wordsOf(plan)).not.toMatch(/^Boil/m);
    expect(wordsOf(plan)).not.toMatch(/is known from/);
  });
});
