// What a new independent reader objected to, of a pigment with a colour put to its charge, of the same without it, and of tin in
// acid, as rules. Facts of the bench are common practice, no source.
import { doesItGo, evaluateRun, type PlanRequest, planPreparation } from "preparative";
import { benchSheet, bottleLabel } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");
const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);

const WHITE: PlanRequest = {
  equation: "CaCO3 + SnO2 + SiO2 -> CaSnSiO5 + CO2",
  product: "CaSnSiO5",
  materials: [
    { name: "whiting", form: "CaCO3", assay: "98 %" },
    { name: "tin oxide", form: "SnO2", assay: "99 %" },
    { name: "flint", form: "SiO2", assay: "99 %" },
  ],
  scale: { product: "100 g" },
};
const CHROME = { name: "chrome oxide", form: "Cr2O3", assay: "99 %", aside: true, portion: "0.80 g" } as const;
const PINK: PlanRequest = { ...WHITE, materials: [...WHITE.materials, CHROME] };

describe("what is put to a charge beside the equation", () => {
  it("is ground in before the last of the solids, and not stirred into the dried cake", () => {
    const steps = texts(PINK);
    const at = (what: RegExp): number => steps.findIndex((text) => what.test(text));
    expect(at(/^Put the chrome oxide to it\./)).toBeGreaterThan(0);
    expect(at(/^Put the chrome oxide to it\./)).toBeLessThan(at(/^Grind the flint in with it/));
    expect(steps.join(" ")).not.toContain("into the vessel and stir");
  });

  it("is ground with a single feed too, unless that is a harsh oxidiser", () => {
    const fired = (form: string, equation: string, product: string): string =>
      texts({
        equation,
        product,
        materials: [
          { name: "feed", form },
          { name: "flux", form: "Cr2O3", aside: true, portion: "1 g" },
        ],
        scale: { product: "10 g" },
      }).join(" ");
    expect(fired("CaCO3", "CaCO3 -> CaO + CO2", "CaO")).toMatch(
      /Put the flux into a mortar\..*Grind the feed in with it/,
    );
    expect(fired("KClO3", "2 KClO3 -> 2 KCl + 3 O2", "KCl")).not.toMatch(/Grind|mortar/);
  });
});

describe("chromium fired in air with lime or alkali", () => {
  // 0.80 × 0.99 / 151.99 × 2 = 0.01042 mol of chromium × 0.75 × 190.10 = 1.5 g of disulfite
  it("leaves chromate, which is washed out, reduced and told by waste and label", () => {
    const printed = sheet(PINK);
    expect(printed).toMatch(
      /Wash it with hot water \(500 mL or more, in portions\), on a filter, or settling and pouring off, until it runs off colourless\./,
    );
    expect(printed).toContain("Waste 501 mL (collect)");
    expect(printed).toContain("Wash water, about 501 mL: chromate (not known).");
    expect(printed).toMatch(
      /dilute sulfuric acid \(pH 2 to 3\).* disulfite .*until all of it is green \(1\.5 g at most\)/,
    );
    expect(printed).toMatch(/CaSnSiO₅, mass, date, batch, with Cr₂O₃ in it, chromate was washed out/);
    expect(bottleLabel(planPreparation(PINK))).toContain("chromate was washed out");
  });

  it("is not looked for without chromium, without lime or alkali, and where chromate is the product", () => {
    expect(sheet(WHITE)).not.toMatch(/chromate|colourless/i);
    const spinel: PlanRequest = {
      equation: "ZnO + Cr2O3 -> ZnCr2O4",
      product: "ZnCr2O4",
      materials: [
        { name: "zinc oxide", form: "ZnO" },
        { name: "chrome oxide", form: "Cr2O3" },
      ],
      scale: { product: "20 g" },
    };
    expect(sheet(spinel)).not.toMatch(/runs off colourless/);
    expect(sheet(spinel)).toContain("turns tin-white ware pink");
    expect(sheet(spinel)).not.toContain("pink brown");
  });

  it("leaves the crucible as vapour, and zinc spoils its pink with tin", () => {
    expect(sheet(PINK)).toMatch(/tin-white ware pink: .* No zinc near it/);
  });
});

describe("the mass that a fire leaves", () => {
  // 38.3 + 57.1 + 22.8 = 118.2 g, less 38.3 × 0.98 / 100.086 × 44.009 = 16.50 g: 101.7 g, and with 0.8 g of colour 102.5 g
  it("is told to the step of the balance, for it decides whether it is fired again", () => {
    expect(sheet(WHITE)).toContain("stands still at 101.7 g, from 118.2 g");
    expect(sheet(WHITE)).toContain("more than 101.7 g not heated through");
    expect(sheet(PINK)).toContain("stands still at 102.5 g, from 119.0 g");
    expect(sheet(PINK)).toContain("more than 102.5 g not heated through");
    expect(sheet(PINK)).toContain("102.5 g with the 1.6 g of what the pack has besides");
  });

  it("of a perfect batch is not told to be heated again", () => {
    const { verdict } = evaluateRun(planPreparation(PINK), { dried: "102.5 g" });
    expect(verdict.map(({ code }) => code)).not.toContain("unreacted");
  });
});

describe("a charge of several solids", () => {
  const strange: PlanRequest = {
    equation: "La2(CO3)3 + Al2O3 -> 2 LaAlO3 + 3 CO2",
    product: "LaAlO3",
    materials: [
      { name: "lanthanum carbonate", form: "La2(CO3)3" },
      { name: "alumina", form: "Al2O3" },
    ],
    scale: { product: "20 g" },
  };

  it("of which nobody knows how hot it is fired says so at the head, and cools in the shut kiln", () => {
    const printed = sheet(strange);
    const said = printed.indexOf(
      "CHECK: How hot LaAlO₃ is fired is not known here: look it up before anything is weighed",
    );
    expect(said).toBeGreaterThan(0);
    expect(said).toBeLessThan(printed.indexOf("Hazards and protection"));
    expect(printed.match(/look it up/g)).toHaveLength(1);
    expect(printed).toContain("a weighed crucible of alumina or fireclay");
    expect(printed).toContain("Let it cool in the closed kiln");
  });

  // 1250 to 1300 °C from memory of the trade; an article found wollastonite and cassiterite left at 1400 °C
  it("of calcium tin silicate is fired at 1250 °C, and slowly", () => {
    const printed = sheet(WHITE);
    expect(printed).toContain("Heat slowly to 1250 °C");
    expect(printed).toContain("without a mineraliser tin oxide may be left even at 1400 °C");
    expect(printed).toContain("Let it cool in the closed kiln");
    expect(printed).not.toMatch(/look it up|firing temperature of/);
  });

  it("shows lime that is free by its alkali: chalk is gone by 900 °C, and lime burnt above 1100 °C slakes slowly", () => {
    expect(sheet(WHITE)).toMatch(
      /look for what has not reacted \(.*a pinch of it, ground fine and ten minutes in a little warm boiled water, turns indicator paper deep blue \(pH 11 and more\) where CaO is free\)/,
    );
    const strontia: PlanRequest = {
      equation: "SrCO3 + TiO2 -> SrTiO3 + CO2",
      product: "SrTiO3",
      materials: [
        { name: "strontium carbonate", form: "SrCO3" },
        { name: "titanium dioxide", form: "TiO2" },
      ],
      scale: { product: "20 g" },
    };
    expect(sheet(strontia)).toContain("where SrO is free, and fizzes in dilute acid where strontium carbonate is left");
    expect(sheet(strange)).not.toContain("a pinch of it");
  });

  it("that is ground wet is stirred as it dries, and sieved loosely into its crucible", () => {
    expect(sheet(WHITE)).toMatch(
      /dry it on a plate, stirring until it is stiff .* crumble it damp through a sieve loosely/,
    );
  });
});

describe("tin in hydrochloric acid", () => {
  const tin: PlanRequest = {
    equation: "Sn + 2 HCl + 2 H2O -> SnCl2·2H2O + H2",
    product: "SnCl2·2H2O",
    materials: [
      { name: "casting tin", form: "Sn", assay: "99.9 %", excess: "15 %" },
      { name: "muriatic acid", form: "HCl", strength: "31 %" },
    ],
    scale: { product: "50 g" },
  };

  it("stands in the cold acid, in a form that it takes, and is warmed with it no higher than 60 °C", () => {
    const steps = texts(tin);
    const put = steps.findIndex((text) =>
      /^Put all of the .* of casting tin into the cold acid, granulated/.test(text),
    );
    const warm = steps.findIndex((text) => /^Warm it slowly to 50 to 60 °C, no hotter/.test(text));
    expect(put).toBeGreaterThan(0);
    expect(warm).toBeGreaterThan(put);
    expect(steps.join(" ")).not.toMatch(/80 °C|portions \(|over at least/);
    expect(steps[put]).toMatch(/no solder and no pewter: .* stibine and arsine/);
    expect(sheet(tin)).not.toMatch(/try a spoonful|in portions, in moving air/);
  });

  // 52.1 × 0.69 = 35.9 g of water, of which the crystals bind 50 / 225.64 × 36.03 = 8.0 g, and 1.8 g comes with the 2.6 g of acid
  // that the filtered liquor takes: 30 g (28 g where that was not counted). 42.0 g of SnCl2 in 37.7 g of water, 80.6 g in all; ice
  // water keeps 123 g in 100 g (5 °C, the geometric mean of 85.2 and 178 g at 0 and 10 °C): 60 % of what is there is crystals once
  // (0.386 × 80.6 - 42.0 + 1.23 × 37.7) / 1.616 = 22.0 g of water are off: 58.6 g (58.0 g without the acid)
  it("has its free water told, and where the boiling ends", () => {
    expect(sheet(tin)).toMatch(
      /30 mL of water in it is no crystal water: gently, until the contents weigh no less than 58\.6 g/,
    );
    expect(sheet(tin)).not.toContain("drops at a time");
  });

  it("dries no warmer than its table says, for it melts at 38 °C", () => {
    expect(sheet(tin)).toMatch(/Dry in a desiccator.*at no more than 25 °C \(it melts in its water at 38 °C\)/);
  });
});

describe("a charge whose product is in the table of firings", () => {
  it("goes, at the temperature of the table", () => {
    // from memory: 1250 to 1300 °C
    const { verdict, reasons } = doesItGo({ equation: "CaCO3 + SnO2 + SiO2 -> CaSnSiO5 + CO2", product: "CaSnSiO5" });
    expect(verdict).toBe("goes");
    expect(reasons[0]!.text).toBe("CaCO₃, SnO₂ and SiO₂ are usually fired at 1250 °C to CaSnSiO₅");
  });

  it("is unknown as before where no row has the product, or a salt stays beside it", () => {
    expect(doesItGo({ equation: "CaCO3 + MgO + 2 SiO2 -> CaMgSi2O6 + CO2", product: "CaMgSi2O6" }).verdict).toBe(
      "unknown",
    );
    const beside = "2 NaCl + CaSiO3 -> Na2SiO3 + CaCl2";
    expect(doesItGo({ equation: beside, product: "Na2SiO3", procedure: "thermal decomposition" }).verdict).not.toBe(
      "goes",
    );
  });
});
