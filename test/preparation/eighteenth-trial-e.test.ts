// What an eleventh independent reader objected to, as rules: a metal that goes through lye, a salt that dissolves less hot than cold,
// a gas that lags in a cold pot; the preparations are theirs. Facts of the bench are common practice, no source.
import { cautionsForFormulas, type PlanRequest, planPreparation, reactionEnthalpy } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";
import { heatKeptBySulfuricAcid } from "../../src/thermochemistry/internal";

const sheetOf = (request: PlanRequest): string => String(benchSheet(planPreparation(request))).replace(/\s+/g, " ");

const OXALATE: PlanRequest = {
  equation: "2 Al + 6 KOH + 6 H2C2O4·2H2O -> 2 K3[Al(C2O4)3]·3H2O + 12 H2O + 3 H2",
  product: "K3[Al(C2O4)3]·3H2O",
  materials: [
    { name: "aluminium foil", form: "Al", assay: "99 %" },
    { name: "potash flakes", form: "KOH", assay: "90 %" },
    { name: "wood bleach", form: "H2C2O4·2H2O", assay: "99.6 %" },
  ],
  scale: { material: "aluminium foil", portion: "2.73 g" },
};

describe("a metal that is dissolved in lye before its acid comes", () => {
  const plan = planPreparation(OXALATE);
  const sheet = sheetOf(OXALATE);
  const at = (text: RegExp) => plan.steps.findIndex((step) => text.test(step.text));
  const foil = at(/^Add the 2\.7 g of aluminium foil/);
  const acid = at(/^Pour the wood bleach solution/);
  const said = (i: number) => plan.steps[i]!.cautions.map(({ text }) => text).join(" ");

  it("has the heat of its first stage: no figure of the complex is needed", () => {
    // 2 × -1502.5 - (2 × -229.99 + 6 × -285.83), kJ/mol of formation: -830.0 for two aluminium (NBS 1982)
    const stage = "2 Al(s) + 2 KOH(aq) + 6 H2O(l) -> 2 K[Al(OH)4](aq) + 3 H2(g)";
    expect(reactionEnthalpy(stage).enthalpy.toNumber("kJ/mol")).toBeCloseTo(-830.0, 0);
    // 2.7 g × 0.99 / 26.982 g/mol = 0.0991 mol × 415.0 kJ/mol = 41.1 kJ, in 2.7 + 18.6 + 75 = 96.3 g × 4.0 J/(g K): 107 K
    if (!("rise" in plan.heat)) throw new Error(plan.heat.missing);
    expect(plan.heat.rise.heatReleased.toNumber("kJ")).toBeCloseTo(41.1, 1);
    expect(plan.heat.rise.rise.toNumber("ΔK")).toBeCloseTo(107, 0);
    expect(plan.unknown.join(" ")).not.toMatch(/heat of the reaction/);
    expect(sheet).toContain("Heat 107 K");
  });

  it("goes in by heat as well as by gas: 10 K a portion, each below 40 °C again, in a bath of cold water", () => {
    // 107 K / 10 K
    expect(plan.additionRate!.portions).toBe(11);
    expect(plan.steps[foil]!.text).toMatch(/in at least 11 portions/);
    expect(plan.steps[foil]!.text).toMatch(/it is below 40 °C again, in a bath of cold water/);
    expect(said(foil)).toMatch(/would boil over.*mist of lye/);
    // what boils is the metal, not the acid after it
    expect(said(acid)).not.toMatch(/boil over|mist/);
  });

  it("says how much the acid warms, by the lye at least", () => {
    // 0.2973 mol of hydroxide × 59.2 kJ/mol = 17.6 kJ in 2.7 + 18.6 + 75 + 37.7 + 64 - 0.3 = 198 g × 4.0 J/(g K): 22 K
    expect(plan.steps[acid]!.text).toMatch(/it warms by about 22 K or more/);
  });

  it("keeps lye out of aluminium pots and off paper", () => {
    // the hot acid comes into the same vessel, and takes iron out of steel (was "in glass or stainless steel")
    expect(sheet).toMatch(/in glass, for lye dissolves aluminium, and the hot acid after it steel/);
    expect(sheet).toMatch(/filter it through glass wool or synthetic cloth, for lye eats paper, and rinse that/);
  });

  it("heats until the hydroxide that came first has gone, with its end", () => {
    expect(plan.steps[acid + 1]!.text).toMatch(
      /^Heat it to 80 to 100 °C and stir, loosely covered, 20 to 40 minutes, .* dissolved and the liquor is clear \(a cooled drop shows about pH 4 to 6\)/,
    );
    expect(plan.steps[acid + 1]!.target!.toNumber("°C")).toBe(80);
  });

  it("puts the acid in hot, in no more water than it needs there, and boils none of it off again", () => {
    const feed = plan.feeds[2]!;
    if (feed.how !== "dissolve") throw new Error(feed.how);
    // 4 mol/kg: 37.7 g × 0.996 / 126.06 g/mol = 0.298 mol in 74.5 g, of which 2 × 18.015 × 0.298 = 10.7 g are crystal water
    expect(feed.at.toNumber("°C")).toBe(80);
    expect(feed.dissolving.water.toNumber("g")).toBeCloseTo(64, 0);
    expect(plan.steps.some(({ operation }) => operation === "concentrate")).toBe(false);
  });

  it("takes as much alcohol as there is liquor over the crystals, and counts it with the mother liquor", () => {
    // 198 g less 0.1 g of hydrogen and 45.8 g of crystals
    const cooling = plan.steps.find(({ operation }) => operation === "cool")!;
    expect(cooling.alcohol!.toNumber("mL")).toBeCloseTo(151, 0);
    expect(sheet).toMatch(/Mother liquor, [^.]* up to 151 mL of alcohol more, where it was put to it\./);
  });

  it("says one way for the waste: the oxalate with calcium, then soda; and nothing of lye that is used up", () => {
    // 0.0991 mol × 3 × 110.98 g/mol × 1.1 = 36 g of calcium chloride
    expect(sheet).toMatch(
      /stir in calcium chloride \(up to 36 g\) until no more calcium oxalate settles, and filter; before that soda does not precipitate it/,
    );
    const waste = sheet.slice(sheet.indexOf("Waste and by-products"), sheet.indexOf("Precautionary statements"));
    expect(waste).not.toMatch(/- KOH:|- H₂C₂O₄·2H₂O:|soda foams/);
    expect(sheet).toMatch(/times the wood bleach that the formula contains; no more is needed/);
  });
});

describe("a salt that dissolves less hot than cold", () => {
  const plan = planPreparation({
    equation: "Li2CO3 + H2SO4 -> Li2SO4·H2O + CO2",
    product: "Li2SO4·H2O",
    materials: [
      { name: "lithium carbonate", form: "Li2CO3", assay: "99 %", excess: "3 %" },
      { name: "battery acid", form: "H2SO4", strength: "37 %" },
    ],
    scale: { product: "80 g" },
  });

  it("has the water that its hot filter asks for, and not the room", () => {
    // 80 g / 127.95 g/mol × 109.94 g/mol = 68.7 g, of which 100 g of water keeps 31.6 g at 80 °C (CRC): 217.5 g, 1.15 times 250 g
    const filter = plan.steps.find(({ text }) => /filter it hot|^Filter hot/.test(text))!;
    expect(filter.before.water.toNumber("g")).toBeGreaterThan(245);
    expect(filter.before.water.toNumber("g")).toBeLessThan(255);
  });

  it("has the heat of sulfuric acid as strong as it is", () => {
    // in 16 H2O a mole stands at -814.0 - 67.2 kJ (Thomsen: 17860 n/(n + 1.7983) cal), 28.1 kJ above SO4^2- in much water (-909.3)
    expect(heatKeptBySulfuricAcid(16).toNumber("kJ/mol")).toBeCloseTo(-28.1, 1);
    // Li2CO3 and 2 H+ to 2 Li+, CO2 and water are -20.4 kJ (NBS 1982): 0.625 × 48.5 kJ = 30.3 kJ in 350 g of 4.18 J/(g K), 20.7 K
    expect("rise" in plan.heat && plan.heat.rise.rise.toNumber("ΔK")).toBeCloseTo(20.7, 0);
  });

  it("of lithium says who is not to handle it", () => {
    for (const name of ["Li2CO3", "Li2SO4·H2O", "LiCl", "LiOH", "LiBr"])
      expect(cautionsForFormulas([name]).substances[0]!.cautions.join(" ")).toMatch(
        /narrow margin.*pregnant or nursing/,
      );
  });
});

describe("carbon dioxide of a precipitation", () => {
  const request: PlanRequest = {
    equation: "MnSO4·H2O + 2 NaHCO3 -> MnCO3 + Na2SO4 + CO2 + 2 H2O",
    product: "MnCO3",
    materials: [
      { name: "manganese sulfate", form: "MnSO4·H2O", assay: "98 %" },
      { name: "baking soda", form: "NaHCO3", assay: "99.5 %", excess: "10 %" },
    ],
    scale: { product: "40 g" },
  };
  const { steps } = planPreparation(request);

  it("lags in a pot that the reaction cools, which the step says, and is is to be stirred out before it is warmed", () => {
    // NBS 1982, kJ/mol: MnCO3 -894.1, CO2 -393.5, H2O -285.8, HCO3- -692.0, Mn2+ -220.8, NaHCO3(s) -950.8, Na+ -240.1: +67 for one
    // of manganese, 23 kJ of 0.348 mol, in 467 g × 4.0 J/(g K): 12 to 13 K
    expect(steps.find(({ text }) => /^Add the 64\.7 g/.test(text))!.text).toMatch(
      /it cools by about 1[23] K, and the gas lags: stir on until no more rises, and warm it slowly after, for it foams again/,
    );
  });

  it("asks for gloves and a mask where a solid harms by long exposure (H373), as for H372", () => {
    const sheet = sheetOf(request);
    expect(sheet).toContain("[ ] gloves");
    expect(sheet).toMatch(/\[ \] no dust: mask for weighing/);
  });
});
