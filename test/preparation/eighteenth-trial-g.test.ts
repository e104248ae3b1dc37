// What an eighteenth round of independent readings found of double salts, pairs of salts and thiosulfate, as rules; the preparations are
// the readers', chosen before any sheet was printed. Facts of the bench are common practice, no source.
import { type PlanRequest, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const stepWith = (request: PlanRequest, part: string | RegExp): string =>
  texts(request).find((text) => (typeof part === "string" ? text.includes(part) : part.test(text))) ?? "";
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

describe("a double salt that warmth and water take apart", () => {
  const schoenite: PlanRequest = {
    equation: "K2SO4 + MgSO4.7H2O -> K2Mg(SO4)2.6H2O + H2O",
    product: "K2Mg(SO4)2.6H2O",
    materials: [
      { name: "sulfate of potash", form: "K2SO4", assay: "96.2 %" },
      { name: "Epsom salt", form: "MgSO4.7H2O", assay: "99.5 %", excess: "50 %" },
    ],
    scale: { product: "60 g" },
  };

  // leonite comes from 41 °C on; at 45 °C both stand beside 0.618 mol of K2SO4 and 3.030 mol of MgSO4 in a kilogram of water (Fluid
  // Phase Equilibria 291, 151): 1.236² × 3.030 × 3.648² = 61.6. Of 0.2981 mol of K+, 0.2237 mol of Mg2+ and 0.3727 mol of SO4 2-:
  // 0.2981² × 0.2237 × 0.3727² = 2.761 × 10⁻³, and (2.761 × 10⁻³ / 61.6)^(1/5) = 0.1350 kg, of which the Epsom salt brings 28.2 g
  it("has so much water that its crystals begin below the change, and is seeded there", () => {
    expect(stepWith(schoenite, /^Stir the sulfate of potash/)).toContain("into 107 mL of water");
    const cooled = stepWith(schoenite, /^Let it cool, stirring/);
    expect(cooled).toContain("at 38 °C, or a drop dried on glass");
    expect(cooled).toContain("if crystals come above 41 °C, they are K₂Mg(SO₄)₂·4H₂O: add a little water");
  });

  // 107 mL × 21.5 g/100 g at 80 °C = 23.0 g of 26.0 g
  it("says that a salt which shares its water dissolves only with the next", () => {
    expect(stepWith(schoenite, /^Stir the sulfate of potash/)).toContain(
      "the last of it dissolves only when the next is in",
    );
  });

  it("is never boiled down, but evaporated below the change", () => {
    for (const text of texts(schoenite)) expect(text).not.toContain("boil it down");
    expect(stepWith(schoenite, /^Keep the mother liquor/)).toContain(
      "evaporate it in a wide dish below 41 °C to about half",
    );
  });

  it("is rinsed with alcohol in water, and pressed", () => {
    const rinse = stepWith(schoenite, /^Rinse/);
    expect(rinse).toContain("12 mL of ice-cold 50 % alcohol");
    expect(rinse).toContain("plain water would decompose them and leave K₂SO₄");
  });

  // 6 × 18.015 / 402.703 = 26.84 %, 4 × 18.015 / 366.673 = 19.65 %, 7 × 18.015 / 246.466 = 51.17 %
  it("is told from its lower hydrate and its salts by what heat takes, and a first crop of half is usual", () => {
    const text = sheet(schoenite);
    expect(text).toContain("a sample loses 26.8 %");
    // at 200 °C Epsom salt still has one of its seven waters: 43.9 % and not 51.2 %
    expect(text).toContain("less: K₂Mg(SO₄)₂·4H₂O (19.7 %) or K₂SO₄ in it; more: MgSO₄·7H₂O (43.9 %) in it");
    expect(text).toContain("the first crop of a double salt is usually about half, 30.0 g");
  });

  it("assumes nothing of a precipitation, nor of the least hot water", () => {
    const assumed = planPreparation(schoenite).assumptions.map(({ what }) => what);
    expect(assumed.filter((what) => what.includes("precipitation") || what.startsWith("times the water"))).toEqual([]);
  });

  // alcohol dissolves magnesium chloride and leaves potassium chloride
  it("is only pressed where alcohol takes it apart as well", () => {
    const carnallite: PlanRequest = {
      equation: "KCl + MgCl2.6H2O -> KMgCl3.6H2O",
      product: "KMgCl3.6H2O",
      materials: [
        { name: "potassium chloride", form: "KCl" },
        { name: "magnesium chloride flakes", form: "MgCl2.6H2O", excess: "100 %" },
      ],
      scale: { product: "50 g" },
    };
    expect(stepWith(carnallite, /^Do not rinse/)).toContain("water and alcohol would decompose them and leave KCl");
  });

  // the table of double salts: bloedite from 21 °C on, löweite from 59 °C on
  it("is cooled no further than where it still forms", () => {
    const bloedite: PlanRequest = {
      equation: "Na2SO4 + MgSO4.7H2O -> Na2Mg(SO4)2.4H2O + 3 H2O",
      product: "Na2Mg(SO4)2.4H2O",
      materials: [
        { name: "sodium sulfate", form: "Na2SO4" },
        { name: "Epsom salt", form: "MgSO4.7H2O" },
      ],
      scale: { product: "50 g" },
    };
    expect(stepWith(bloedite, /^Let it cool/)).toContain("let it cool to 24 °C and stand");
  });
});

describe("ammonium chloride from a pair of salts", () => {
  const salAmmoniac: PlanRequest = {
    equation: "(NH4)2SO4 + 2 NaCl -> 2 NH4Cl + Na2SO4",
    product: "NH4Cl",
    materials: [
      { name: "sulfate of ammonia", form: "(NH4)2SO4", assay: "99 %" },
      { name: "pickling salt", form: "NaCl", assay: "99.5 %" },
    ],
    scale: { product: "53.5 g" },
  };

  it("is worked in glass or enamel, and filtered before it cools", () => {
    expect(stepWith(salAmmoniac, /^Stir the sulfate/)).toContain(
      "of glass or sound enamel, for it eats copper, brass, aluminium",
    );
    expect(stepWith(salAmmoniac, /^Filter at once/)).toContain("at 90 to 95 °C, through a warmed funnel");
  });

  // the figures are those of each salt beside ions that it shares; sodium sulfate salts more of it out (common practice)
  it("may weigh more than its figures say, where the test of the crystals shows nothing", () => {
    const text = sheet(salAmmoniac);
    expect(text).toContain("with the test of the crystals passed, it is none the worse");
    expect(text.match(/none the worse/g)).toHaveLength(1);
  });
});

describe("thiosulfate from sulfite and sulfur", () => {
  const thiosulfate: PlanRequest = {
    equation: "Na2SO3 + S + 5 H2O -> Na2S2O3.5H2O",
    product: "Na2S2O3.5H2O",
    materials: [
      { name: "sodium sulfite", form: "Na2SO3", assay: "97 %" },
      { name: "dusting sulfur", form: "S", assay: "99 %", excess: "25 %" },
    ],
    scale: { material: "sodium sulfite", portion: "50 g" },
  };

  it("is seeded without an earlier batch as well", () => {
    expect(stepWith(thiosulfate, "put in a few crystals")).toContain("or a drop of the liquor scratched on cold glass");
  });

  it("judges the sulfur that is left once it is dry, and not the boiling alone", () => {
    const kept = stepWith(thiosulfate, /^Keep it at 95 °C/);
    expect(kept).toContain("weighed once it is filtered off, rinsed and dried");
    expect(kept).toContain("or that the sodium sulfite is weaker than its pack says");
  });

  it("has no salt of another batch in the range at its head, and a vessel for up to so much liquid", () => {
    // asked for: it is rinsed with alcohol otherwise, which takes none of it
    const request: PlanRequest = { ...thiosulfate, washing: { rinse: "own solution" } };
    const plan = planPreparation(request);
    const foreign = plan.steps.flatMap(({ ofAnotherBatch }) => ofAnotherBatch ?? [])[0]!.toNumber("g");
    const dry = plan.steps.at(-1)!.after.solids[0]!.mass.toNumber("g");
    const again = plan.steps.filter(({ vessel }) => vessel === "mother liquor").flatMap(({ after }) => after.solids);
    const own = dry - foreign + again.reduce((all, { mass }) => all + mass.toNumber("g"), 0);
    const text = sheet(request);
    const high = Number(/Expected dry product[^0-9]*[\d.]+ to ([\d.]+) g/.exec(text)![1]);
    expect(Math.abs(high - own)).toBeLessThan(0.11);
    expect(text).toContain("or larger; up to 249 mL of liquid");
  });
});
