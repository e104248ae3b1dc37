// What a ninth independent reading found of hot liquors, as rules; the preparations are the readers', chosen before any sheet was
// printed. Facts of the bench are common practice, no source; solubilities are those of the tables, by hand where they are used.
import { type PlanRequest, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const stepWith = (request: PlanRequest, part: string | RegExp): string =>
  texts(request).find((text) => (typeof part === "string" ? text.includes(part) : part.test(text))) ?? "";

const strontiumFormate: PlanRequest = {
  equation: "SrCO3 + 2 HCOOH + H2O -> Sr(HCOO)2·2H2O + CO2",
  product: "Sr(HCOO)2·2H2O",
  materials: [
    { name: "strontium carbonate", form: "SrCO3", assay: "98 %", excess: "3 %" },
    { name: "formic acid", form: "HCOOH", strength: "85 %" },
  ],
  scale: { product: "60 g" },
};

describe("a carbonate whose salt the cold liquor cannot hold", () => {
  // 49.9 g of Sr(HCOO)2 in 164 g of water is 30.5 g in 100 g; 100 g holds 12.7 g at 20 °C and 25 g at 60 °C
  it("goes into warm acid, and nothing has to cool before it does", () => {
    const all = texts(strontiumFormate);
    const warm = all.findIndex((text) =>
      /^Warm the contents to 60 °C.*would crystallise on what has not reacted/.test(text),
    );
    const added = all.findIndex((text) => text.startsWith("Add the 43.6 g"));
    expect(warm).toBeGreaterThan(0);
    expect(added).toBe(warm + 1);
    expect(all[warm]).toContain("under a hood");
    expect(all.join(" ")).not.toContain("let it cool (vessel");
    expect(stepWith(strontiumFormate, "indicator paper")).toContain("a drop of it that has cooled");
  });

  it("of iron in sulfuric acid the heat of the reaction does it", () => {
    const iron: PlanRequest = {
      equation: "Fe + H2SO4 + 7 H2O -> FeSO4·7H2O + H2",
      product: "FeSO4·7H2O",
      materials: [
        { name: "iron", form: "Fe", excess: "5 %" },
        { name: "acid", form: "H2SO4", strength: "96 %" },
      ],
      scale: { product: "50 g" },
    };
    expect(stepWith(iron, /^Add the .* of iron/)).toMatch(/keep it no colder than \d[05] °C: colder, FeSO₄·7H₂O/);
    expect(stepWith(iron, "Warm the contents")).toBe("");
  });

  it("stays in the cold where nitric acid takes a metal, which warm runs away, and where no figure is known", () => {
    const copper: PlanRequest = {
      equation: "3 Cu + 8 HNO3 + 5 H2O -> 3 Cu(NO3)2·3H2O + 2 NO",
      product: "Cu(NO3)2·3H2O",
      materials: [
        { name: "copper", form: "Cu" },
        { name: "acid", form: "HNO3", strength: "30 %", excess: "10 %" },
      ],
      scale: { material: "copper", portion: "10 g" },
    };
    expect(texts(copper).join(" ")).not.toContain("on what has not reacted");
  });
});

const bariumNitrate: PlanRequest = {
  equation: "BaCl2·2H2O + 2 NaNO3 -> Ba(NO3)2 + 2 NaCl + 2 H2O",
  product: "Ba(NO3)2",
  materials: [
    { name: "barium chloride", form: "BaCl2·2H2O", assay: "99 %" },
    { name: "sodium nitrate", form: "NaNO3", assay: "98 %", excess: "10 %" },
  ],
  scale: { product: "50 g" },
};

describe("a liquor that is nearly saturated at its hot filter", () => {
  // 30.5 g of strontium formate in 100 g of water is 96 % of the 31.9 g that 80 °C keeps; 95 °C keeps 33.6 g, 1.05 times as much
  it("is made up to what it weighed, and filtered near the boil through a warmed funnel", () => {
    const step = stepWith(strontiumFormate, "that is not dissolved");
    expect(step).toMatch(
      /^Make up what has steamed off with hot water, until the contents weigh 21\d g, and filter it hot/,
    );
    expect(step).toContain("(90 to 95 °C), through a warmed funnel, from the SrCO₃");
  });

  // 50.0 g in 182.9 g of water is 27.3 g in 100 g, and 80 °C keeps 27.4 g
  it("is so as well where it is only looked through", () => {
    expect(stepWith(bariumNitrate, "look through")).toContain("filter it at 90 to 95 °C through a warmed funnel");
  });

  it("has its vessel weighed empty before", () => {
    const sheet = benchSheet(planPreparation(bariumNitrate)).replace(/\s+/g, " ");
    expect(sheet).toContain("open vessel of 400 mL, weighed empty");
  });

  // the crop is that of the water that is planned: 50.0 g less 10.5 g that 182.9 g keep at 5 °C (5.77 g in 100 g)
  it("gives the crop that it gave", () => {
    expect(stepWith(bariumNitrate, "crystallises")).toContain("39.5 g of Ba(NO₃)₂ crystallises");
  });
});

const thiosulfate: PlanRequest = {
  equation: "Na2SO3 + S + 5 H2O -> Na2S2O3·5H2O",
  product: "Na2S2O3·5H2O",
  materials: [
    { name: "sodium sulfite", form: "Na2SO3", assay: "96 %" },
    { name: "flowers of sulfur", form: "S", assay: "99.5 %", excess: "25 %" },
  ],
  scale: { material: "sodium sulfite", portion: "50.0 g" },
};

describe("a feed that dissolves less hot than warm", () => {
  // 48.0 g of Na2SO3 at 95 °C, where 100 g keeps 27.9 g (between 28.4 at 90 and 27.4 at 100): 172 g, times 1.05 is 181 g; at 40 °C 100 g
  // keeps 37.6 g
  it("is dissolved where it dissolves best, in water that keeps it dissolved as it reacts near the boil", () => {
    const step = stepWith(thiosulfate, /^Dissolve the sodium sulfite/);
    expect(step).toContain("in 181 mL of water");
    expect(step).toContain("warm it to 40 °C");
    expect(stepWith(thiosulfate, "Keep it at 95 °C")).not.toBe("");
  });
});

const sheetOf = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

describe("sulfur kept near the boil with sulfite", () => {
  // 15.4 g of 99.5 % less 0.3808 mol × 32.06 g/mol = 3.1 g
  it("is warmed without a flame, in moving air, and what should be left of it tells the end", () => {
    expect(sheetOf(thiosulfate)).toContain("hot plate or water bath, no flame");
    expect(sheetOf(thiosulfate)).toContain("[ ] window open or fan on");
    expect(stepWith(thiosulfate, "Keep it at 95 °C")).toContain("about 3.1 g of it should be left");
  });
});

describe("hydrogen from a metal in acid", () => {
  const manganese: PlanRequest = {
    equation: "Mn + 2 CH3COOH + 4 H2O -> Mn(CH3COO)2·4H2O + H2",
    product: "Mn(CH3COO)2·4H2O",
    materials: [
      { name: "manganese flakes", form: "Mn", assay: "99.7 %" },
      { name: "acetic acid", form: "CH3COOH", strength: "60 %", excess: "10 %" },
    ],
    scale: { material: "manganese flakes", portion: "20.0 g" },
  };

  it("has its baths at hand, and no fan beside it", () => {
    expect(sheetOf(manganese)).toContain("[ ] bath of cold water [ ] bath of hot water, heated elsewhere");
    expect(sheetOf(manganese)).toContain("moving air, no switch or motor in it");
    expect(sheetOf(manganese)).not.toContain("fan on");
    expect(stepWith(manganese, /^Add the 20.0 g/)).toContain("until this portion has stopped giving gas");
  });

  it("leaves flocks, which are filtered off and take no acid", () => {
    const all = texts(manganese);
    const at = all.findIndex((text) => text.startsWith("Filter it if it is not clear"));
    expect(all[at - 1]).toContain("what gives no gas with that is not metal");
    expect(all[at + 1]).toMatch(/^Let it cool/);
  });
});

describe("carbon dioxide led into potash", () => {
  const hydrogencarbonate: PlanRequest = {
    equation: "K2CO3 + CO2 + H2O -> 2 KHCO3",
    product: "KHCO3",
    materials: [
      { name: "potash", form: "K2CO3", assay: "99 %" },
      { name: "carbon dioxide", form: "CO2", assay: "99.5 %", excess: "100 %" },
    ],
    scale: { material: "potash", portion: "100 g" },
  };

  // 99.0 g / 138.21 g/mol × 44.01 g/mol = 31.5 g: the air in the gas is not absorbed
  it("gains what is absorbed, and comes through a pressure reducer", () => {
    expect(stepWith(hydrogencarbonate, /^It is done when no more is absorbed/)).toContain("has gained 31.5 g");
    expect(sheetOf(hydrogencarbonate)).toContain("cylinder with pressure reducer and needle valve, or generator");
  });
});
