// What a second independent reading of twenty-four sheets asked for; the practice of the trade throughout, without a source where none
// is named.
import { type Plan, planPreparation, washAdvice } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";
import { CALCIUM_NITRATE } from "../data/common-requests";

const words = ({ steps }: Plan): string => steps.map(({ text }) => text).join("\n");
const sheetOf = (plan: Plan): string => String(benchSheet(plan, { parts: ["bench"] })).replace(/\s+/g, " ");
const cautionsOf = ({ steps }: Plan): string =>
  steps.flatMap(({ cautions }) => cautions.map(({ text }) => text)).join("\n");

describe("alumina with ammonia", () => {
  const plan = (excess?: "10 %"): Plan =>
    planPreparation({
      equation: "KAl(SO4)2 + NH3 + H2O -> Al(OH)3 + K2SO4 + (NH4)2SO4",
      product: "Al(OH)3",
      materials: [
        { name: "potash alum", form: "KAl(SO4)2·12H2O" },
        { name: "household ammonia", form: "NH3", strength: "9.5 %", ...(excess && { excess }) },
      ],
      scale: { material: "potash alum", portion: "50.0 g" },
    });

  it.each([undefined, "10 %"] as const)(
    "with an excess of %s a drop of ammonia tells: what is dissolved is aluminate",
    (excess) => {
      expect(words(plan(excess))).toMatch(/stand with a drop of household ammonia: a cloud means that more is needed/);
      expect(words(plan(excess))).not.toMatch(/No drop shows the end/);
    },
  );

  it("but lye over slaked lime does not: 1.7 g of that dissolve in a litre, and any hydroxide clouds it", () => {
    const lime = planPreparation({
      equation: "CaCl2 + 2 NaOH -> Ca(OH)2 + 2 NaCl",
      product: "Ca(OH)2",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O" },
        { name: "lye", form: "NaOH", excess: "10 %" },
      ],
      scale: { material: "de-icer", portion: "50.0 g" },
    });
    expect(words(lime)).toMatch(/No drop shows the end/);
  });
});

describe("cream of tartar from tartaric acid and potash", () => {
  const plan = planPreparation({
    equation: "2 H2C4H4O6 + K2CO3 -> 2 KHC4H4O6 + CO2 + H2O",
    product: "KHC4H4O6",
    materials: [
      { name: "tartaric acid", form: "H2C4H4O6" },
      { name: "potash", form: "K2CO3", assay: "98 %" },
    ],
    scale: { material: "tartaric acid", portion: "50.0 g" },
  });

  it("is not waited for to dissolve, and stands cold before the filter", () => {
    expect(words(plan)).toMatch(/Stir until no more gas rises \(the solid in it is the KHC₄H₄O₆\)/);
    expect(words(plan)).not.toMatch(/no more solid dissolves/);
    expect(words(plan)).toMatch(/no warmer than the room: warm liquor would keep more of it/);
  });
});

describe("a jelly of silica", () => {
  const plan = planPreparation({
    equation: "Na2SiO3 + HCl -> SiO2 + NaCl + H2O",
    product: "SiO2",
    materials: [
      { name: "sodium metasilicate", form: "Na2SiO3·5H2O" },
      { name: "hydrochloric acid", form: "HCl", strength: "10 %", excess: "5 %" },
    ],
    scale: { product: "20 g" },
  });

  it("is made in the acid, into which the silicate goes: the other way round it sets around what is poured", () => {
    const texts = plan.steps.map(({ text }) => text);
    const [acid, silicate] = [
      /^Pour the hydrochloric acid into the vessel/,
      /^Pour the sodium metasilicate solution into the vessel/,
    ].map((saying) => texts.findIndex((text) => saying.test(text)));
    expect(acid).toBeGreaterThan(0);
    expect(silicate).toBeGreaterThan(acid!);
  });

  it("is brought to pH 5 to 7 where it stays liquid", () => {
    expect(words(plan)).toMatch(/at pH 5 to 7 soonest: .* stir in baking soda by pinches/);
  });
});

describe("zinc soap", () => {
  const plan = planPreparation({
    equation: "NaC18H35O2 + ZnSO4 -> Zn(C18H35O2)2 + Na2SO4",
    product: "Zn(C18H35O2)2",
    materials: [
      { name: "sodium stearate", form: "NaC18H35O2" },
      { name: "zinc sulfate", form: "ZnSO4·7H2O", excess: "10 %" },
    ],
    scale: { material: "sodium stearate", portion: "20.0 g" },
  });

  it("is made from soap of 3 % in hot water, which the zinc is poured into", () => {
    // 20.0 g in 20.0 / 0.03 - 20.0 = 647 g of water
    expect(words(plan)).toMatch(
      /Dissolve the sodium stearate in 647 mL of water .* in hot soft or distilled water \(75 to 85 °C\), and keep it hot/,
    );
    expect(words(plan)).toMatch(/Pour the zinc sulfate solution into the vessel/);
  });

  it("is washed with what wets it", () => {
    expect(washAdvice({ product: "Zn(C18H35O2)2", washedOut: ["Na2SO4"] }).liquid).toMatch(
      /hot water with a little alcohol/,
    );
  });
});

describe("manganese dioxide from permanganate", () => {
  const plan = planPreparation({
    equation: "KMnO4 + MnSO4 + H2O -> MnO2 + K2SO4 + H2SO4",
    product: "MnO2",
    materials: [
      { name: "potassium permanganate", form: "KMnO4" },
      { name: "manganese sulfate", form: "MnSO4·H2O", excess: "5 %" },
    ],
    scale: { product: "20 g" },
  });

  it("has its end, hot, and salt for the wash in which it goes colloidal", () => {
    expect(words(plan)).toMatch(
      /Warm it to 80 °C and keep it there.* until neither purple nor pink is left in the clear liquor/,
    );
    expect(words(plan)).toMatch(/ammonium acetate into each 100 mL/);
  });
});

describe("nitrates that take water from the air (deliquescence below 55 % of humidity: handbook figures, from memory)", () => {
  const plan = planPreparation(CALCIUM_NITRATE);

  it("are dried in dry air and bottled at once, and seeded", () => {
    expect(words(plan)).toMatch(/it is deliquescent: press it between filter paper first, and dry it in dry air/);
    expect(words(plan)).toMatch(/Bottle it at once, tightly closed/);
    // a drop scratched on glass seeds as well, where there are no crystals (common practice)
    expect(words(plan)).toMatch(
      /put in a few crystals of Ca\(NO₃\)₂·4H₂O, or a drop .*: it stays supersaturated easily/,
    );
  });

  it("make paper burn", () => {
    expect(cautionsOf(plan)).toMatch(/paper or cloth that dries with it burns like tinder/i);
  });

  it.each([
    ["Zn(NO3)2·6H2O", "ZnO + 2 HNO3 + 5 H2O -> Zn(NO3)2·6H2O", "ZnO", true],
    ["Mg(NO3)2·6H2O", "MgO + 2 HNO3 + 5 H2O -> Mg(NO3)2·6H2O", "MgO", true],
    ["KNO3", "KOH + HNO3 -> KNO3 + H2O", "KOH", false],
    ["Ba(NO3)2", "BaCO3 + 2 HNO3 -> Ba(NO3)2 + CO2 + H2O", "BaCO3", false],
  ] as const)("%s by %s from %s: deliquescent is %s", (product, equation, form, runs) => {
    const { drying } = planPreparation({
      equation,
      product,
      materials: [
        { name: "base", form },
        { name: "nitric acid", form: "HNO3", strength: "30 %" },
      ],
      scale: { product: "50 g" },
    });
    expect(drying.deliquescent).toBe(runs);
  });
});

describe("potassium bicarbonate", () => {
  it("is dried cooler than dry crystals would stand: damp it gives off carbon dioxide", () => {
    const plan = planPreparation({
      equation: "K2CO3 + CO2 + H2O -> 2 KHCO3",
      product: "KHCO3",
      materials: [
        { name: "potash", form: "K2CO3" },
        { name: "carbon dioxide", form: "CO2" },
      ],
      scale: { material: "potash", portion: "50.0 g" },
    });
    expect(plan.drying.upTo!.toNumber("°C")).toBeLessThanOrEqual(50);
    expect(words(plan)).toMatch(/Dry at no more than 50 °C \(damp it gives off carbon dioxide\)/);
  });
});

describe("calcium lactate", () => {
  const plan = planPreparation({
    equation: "CaCO3 + C3H6O3 + H2O -> Ca(C3H5O3)2·5H2O + CO2",
    product: "Ca(C3H5O3)2·5H2O",
    materials: [
      { name: "precipitated chalk", form: "CaCO3", excess: "5 %" },
      { name: "lactic acid", form: "C3H6O3", strength: "80 %" },
    ],
    scale: { product: "50 g" },
  });

  it("has the wide dish of its evaporation on the list", () => {
    expect(words(plan)).toMatch(/in a wide dish/);
    expect(/Have ready (.*) Weigh and measure/.exec(sheetOf(plan))![1]).toMatch(/wide dish/);
  });

  it("from an acid of 5 % has no warning of an unknown heat", () => {
    expect(cautionsOf(plan)).not.toMatch(/try a spoonful/);
  });
});

describe("salts that share one hot water", () => {
  it("get a little more where it does not clear", () => {
    // of the zinc salt no table has a solubility; that of the copper salt was none either until a printed preparation gave one
    const plan = planPreparation({
      equation: "ZnSO4 + K2SO4 + 6 H2O -> K2Zn(SO4)2·6H2O",
      product: "K2Zn(SO4)2·6H2O",
      materials: [
        { name: "white vitriol", form: "ZnSO4·7H2O" },
        { name: "sulfate of potash", form: "K2SO4" },
      ],
      scale: { material: "white vitriol", portion: "25.0 g" },
    });
    // the figure is that of a salt built alike, so it is not said to be a little
    expect(words(plan)).toMatch(/until it is clear, with more hot water if it needs that/);
  });
});
