// A liquor that is boiled down only if nothing crystallises, and what the label says first.
import { describe, expect, it } from "vitest";
import { type PlanRequest, planPreparation } from "../../src/preparation";
import { benchSheet } from "../../src/sheet";

const plan = planPreparation({
  equation: "Sn + 2 HCl + 2 H2O -> SnCl2.2H2O + H2",
  product: "SnCl2.2H2O",
  materials: [
    { name: "lead-free tin", form: "Sn", assay: "99.9 %", excess: "15 %" },
    { name: "muriatic acid", form: "HCl", strength: "31 %" },
  ],
  scale: { product: "50 g" },
});
const printed = benchSheet(plan).toString().replace(/\s+/g, " ");

describe("a liquor that may be boiled down to a mass", () => {
  it("has its vessel weighed empty before", () => {
    const step = plan.steps.find(({ text }) => /until the contents weigh no less than/.test(text))!;
    // what ice water keeps of the salt is no crystals: worked out beside the check of the same liquor in the trial before
    expect(step.limit!.toNumber("g")).toBeCloseTo(58.6, 1);
    expect(printed).toMatch(/open vessel of 250 mL, weighed empty/);
    expect(printed).toMatch(/no less than 58\.6 g, .* empty vessel ________ g 7\. \[ \]/);
  });
});

describe("the label of a bottle", () => {
  it("says the statements of danger before those of warning", () => {
    // safety data sheets of suppliers: H302, H332, H314, H317, H335, H373, H412
    expect(printed).toMatch(/Label ----- SnCl₂·2H₂O, .*DANGER: burns skin and eyes badly; harmful if swallowed/);
  });
});

describe("a precipitate that air oxidises", () => {
  it("stands warm for half an hour only, or in the cold", () => {
    const carbonate = planPreparation({
      equation: "MnSO4.H2O + 2 NaHCO3 -> MnCO3 + Na2SO4 + CO2 + 2 H2O",
      product: "MnCO3",
      materials: [
        { name: "manganese sulfate", form: "MnSO4.H2O", assay: "98 %" },
        { name: "baking soda", form: "NaHCO3", excess: "10 %" },
      ],
      scale: { product: "40 g" },
    });
    const words = carbonate.steps.map(({ text }) => text).join("\n");
    expect(words).toMatch(/30 minutes at 50 to 60 °C or overnight in the cold: .* warm for longer air oxidises it/);
    expect(words).not.toMatch(/60 to 90 °C/);
  });
});

describe("a pair of salts", () => {
  it("has both its liquors filtered near the boil, where they keep the product dissolved", () => {
    const ammonium = planPreparation({
      equation: "(NH4)2SO4 + 2 NaCl -> 2 NH4Cl + Na2SO4",
      product: "NH4Cl",
      materials: [
        { name: "sulfate of ammonia", form: "(NH4)2SO4", assay: "99 %" },
        { name: "pickling salt", form: "NaCl", assay: "99.5 %" },
      ],
      scale: { product: "53.5 g" },
    });
    const filters = ammonium.steps.map(({ text }) => text).filter((text) => /from the Na₂SO₄/.test(text));
    expect(filters).toHaveLength(2);
    for (const text of filters) expect(text).toMatch(/at once, .*90 to 95 °C/);
  });
});

describe("a carbonate with an acid that hardly dissolves cold", () => {
  const tartar = planPreparation({
    equation: "2 KHC4H4O6 + Na2CO3 + 7 H2O -> 2 KNaC4H4O6.4H2O + CO2",
    product: "KNaC4H4O6.4H2O",
    materials: [
      { name: "cream of tartar", form: "KHC4H4O6", assay: "99 %" },
      { name: "soda ash", form: "Na2CO3", assay: "99 %", excess: "2 %" },
    ],
    scale: { product: "56.44 g" },
  });
  const words = tartar.steps.map(({ text }) => text);

  it("meets it warm, so that the gas leaves as it forms", () => {
    const warm = words.findIndex((text) =>
      /^Warm the contents to 60 °C and keep them there: cold, the cream of tartar/.test(text),
    );
    expect(warm).toBeGreaterThan(0);
    expect(words.findIndex((text) => /^Add the .* soda ash/.test(text))).toBe(warm + 1);
  });

  it("is brought to its pH from both sides", () => {
    expect(words.join("\n")).toMatch(
      /where it is acid a little more of the soda ash is needed, where it is more than 1 higher a little more of the cream of tartar/,
    );
  });

  it("of which some is to stay over, says what to add where paper shows less", () => {
    const lithium = planPreparation({
      equation: "Li2CO3 + H2SO4 -> Li2SO4.H2O + CO2",
      product: "Li2SO4.H2O",
      materials: [
        { name: "lithium carbonate", form: "Li2CO3", assay: "99 %", excess: "3 %" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { product: "80 g" },
    });
    expect(lithium.steps.map(({ text }) => text).join("\n")).toMatch(
      /where it is lower, warm it until no more bubbles rise.*test again; more of the lithium carbonate only where none of it is left undissolved/,
    );
  });
});

describe("a second crop", () => {
  const request: PlanRequest = {
    equation: "NaHCO3 + CH3COOH + 2 H2O -> CH3COONa.3H2O + CO2",
    product: "CH3COONa.3H2O",
    materials: [
      { name: "baking soda", form: "NaHCO3", assay: "99.5 %" },
      { name: "white vinegar", form: "CH3COOH", strength: "5.0 %", excess: "3 %" },
    ],
    scale: { product: "50.0 g" },
    // it would cost a sixth of the crop: by itself it is left out
    washing: { rinse: "water" },
  };
  const acetate = planPreparation(request);
  const words = acetate.steps.map(({ text }) => text).join("\n");

  it("has its liquor poured off before the rinse runs into it: its mass is counted without that", () => {
    expect(words).toMatch(/Filter the crystals off .*; pour the liquor off for the second crop before anything else/);
  });

  it("is seeded where the first was", () => {
    expect(words).toMatch(/Cool the mother liquor to 20 °C again, seeded as before/);
  });
});

describe("green vitriol from steel wool", () => {
  const vitriol = planPreparation({
    equation: "Fe + H2SO4 + 7 H2O -> FeSO4.7H2O + H2",
    product: "FeSO4.7H2O",
    materials: [
      { name: "steel wool", form: "Fe", assay: "98 %", excess: "10 %" },
      { name: "battery acid", form: "H2SO4", strength: "37 %" },
    ],
    scale: { product: "50.0 g" },
  });
  const words = vitriol.steps.map(({ text }) => text).join("\n");

  it("cools between two portions to more than it is kept at", () => {
    // the window ends at 60 °C, above which another hydrate would come, and begins 5 K below
    expect(words).toMatch(/below 60 °C again, .*keep it no colder than 55 °C/);
  });

  it("is warmed at the end to no more than keeps it dissolved, and filtered through a warmed funnel", () => {
    // above 64 °C the monohydrate comes, which dissolves less hot
    expect(words).toMatch(/warming it at the end, to no more than 60 °C,/);
    expect(words).toMatch(/Filter hot \(60 °C\), through a warmed funnel/);
  });

  it("is not dried warm: its water would go", () => {
    expect(words).toMatch(/dry it at no more than 25 °C \(warm or dry air takes its water\)/);
  });
});

describe("copper from iron powder", () => {
  it("is looked through with a magnet: iron that is left weighs hardly less than copper", () => {
    const copper = planPreparation({
      equation: "Fe + CuSO4.5H2O -> Cu + FeSO4 + 5 H2O",
      product: "Cu",
      materials: [
        { name: "iron powder", form: "Fe", assay: "98 %", excess: "10 %" },
        { name: "copper sulfate", form: "CuSO4.5H2O", assay: "99 %" },
      ],
      scale: { product: "10.00 g" },
    });
    expect(copper.steps.map(({ text }) => text).join("\n")).toContain("and a magnet held to the glass draws no grains");
    expect(benchSheet(copper).toString()).toContain("[ ] magnet");
  });
});
