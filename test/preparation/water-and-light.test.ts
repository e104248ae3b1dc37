// What water, light and an ammonium salt do to a substance, and what a worker always wears: common practice, no source; read from
// printed sheets by an independent chemist.
import { bottleLabel } from "preparative";
import { describe, expect, it } from "vitest";
import { type PlanRequest, planPreparation } from "../../src/preparation";
import { benchSheet } from "../../src/sheet";

const sheetOf = (request: PlanRequest): string =>
  benchSheet(planPreparation(request), { format: "text" }).replace(/\s+/g, " ");

const simple = (equation: string, product: string, forms: readonly string[]): PlanRequest => ({
  equation,
  product,
  materials: forms.map((form) => ({ name: `pack of ${form}`, form })),
  scale: { product: "0.1 mol" },
});

const TIN = simple("SnCl2·2H2O + Zn -> Sn + ZnCl2 + 2 H2O", "Sn", ["SnCl2·2H2O", "Zn"]);
const FERRIOXALATE = simple("FeCl3 + 3 K2C2O4 + 3 H2O -> K3[Fe(C2O4)3]·3H2O + 3 KCl", "K3[Fe(C2O4)3]·3H2O", [
  "FeCl3·6H2O",
  "K2C2O4·H2O",
]);
const SILVER_CHLORIDE = simple("AgNO3 + NaCl -> AgCl + NaNO3", "AgCl", ["AgNO3", "NaCl"]);
const MAGNESIA = simple("MgSO4 + 2 NaOH -> Mg(OH)2 + Na2SO4", "Mg(OH)2", ["MgSO4·7H2O", "NaOH"]);
const ALUMINA = simple("AlCl3 + 3 NH3 + 3 H2O -> Al(OH)3 + 3 NH4Cl", "Al(OH)3", ["AlCl3·6H2O", "NH3"]);

describe("a salt that water turns basic", () => {
  it("tin(II) chloride is dissolved in its acid, and more water clears nothing", () => {
    const text = sheetOf(TIN);
    expect(text).toContain("of dilute hydrochloric acid (20 %) into the");
    expect(text).toContain("a little more of the acid clears it, water does not");
    expect(text).not.toContain("add more water, and write down how much");
    expect(text).toContain("[ ] a little dilute hydrochloric acid");
  });

  it("the acid is of the salt's own anion: sulfuric for copperas", () => {
    const green = simple("FeSO4 + Na2CO3 -> FeCO3 + Na2SO4", "FeCO3", ["FeSO4·7H2O", "Na2CO3"]);
    expect(sheetOf(green)).toContain("use boiled-out water with a few drops of dilute sulfuric acid");
  });
});

describe("what light changes", () => {
  it("silver chloride is dark from its liquor on, and its salt is dissolved in distilled water", () => {
    const text = sheetOf(SILVER_CHLORIDE);
    expect(text).toContain("use distilled water: the chloride of tap water would cloud it");
    expect(text).toContain("[ ] distilled water");
    expect(text).toContain("in the dark, and keep light from it until it is bottled");
    expect(text).toMatch(/AgCl, mass, date, batch, keep in the dark/);
    expect(bottleLabel(planPreparation(SILVER_CHLORIDE))).toContain("keep in the dark");
  });

  it("trioxalatoferrate is, from the liquor that is cooled; potassium chloride is not", () => {
    const { steps } = planPreparation(FERRIOXALATE);
    const dark = steps.flatMap(({ text }, i) => (/light decomposes it|in the dark/.test(text) ? [i] : []));
    const cools = steps.findIndex(({ text }) => /^Let it cool/.test(text));
    expect(Math.min(...dark)).toBeLessThanOrEqual(cools);
    expect(sheetOf({ ...MAGNESIA })).not.toContain("dark");
  });
});

describe("a slime that is washed", () => {
  // 0.13 mol/kg of ammonium dissolves magnesium hydroxide (pKsp 11.2), and leaves aluminium hydroxide (32 and more)
  it("has an ammonium salt in its water only where that leaves it alone", () => {
    expect(sheetOf(MAGNESIA)).not.toContain("ammonium acetate");
    expect(sheetOf(ALUMINA)).toContain("put 1 g of ammonium acetate into each 100 mL of the water");
  });
});

describe("a product that runs in moist air", () => {
  const texts = (request: PlanRequest): string =>
    planPreparation(request)
      .steps.map(({ text }) => text)
      .join(" ");

  it("keeps its crystal water: pressed, in dry air, and over no strong drying agent", () => {
    const hydrate = texts(simple("CuO + 2 HCl + H2O -> CuCl2·2H2O", "CuCl2·2H2O", ["CuO", "HCl"]));
    expect(hydrate).toContain("press it between filter paper first, and dry it in dry air");
    expect(hydrate).toContain("Bottle it at once, tightly closed");
  });

  it("is bottled at once from the fire: dried calcium chloride", () => {
    const fired = simple("CaCl2·6H2O -> CaCl2 + 6 H2O", "CaCl2", ["CaCl2·6H2O"]);
    expect(texts(fired)).toContain("Bottle it at once, tightly closed");
  });
});

it("goggles are worn for every preparation", () => {
  for (const request of [TIN, FERRIOXALATE, MAGNESIA, ALUMINA, SILVER_CHLORIDE])
    expect(sheetOf(request), request.product).toContain("[ ] goggles");
});
