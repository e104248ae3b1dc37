// What a third independent reader objected to, of eleven sheets, as rules; the preparations are theirs, chosen before any sheet was
// printed. Facts of the bench are common practice, no source.
import { doesItGo, type PlanRequest, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const words = (request: PlanRequest): string =>
  planPreparation(request)
    .steps.map(({ text }) => text)
    .join("\n");
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

const SILVER = (copper: string): PlanRequest => ({
  equation: "2 AgNO3 + Cu -> 2 Ag + Cu(NO3)2",
  product: "Ag",
  materials: [
    { name: "silver nitrate", form: "AgNO3", assay: "99.5 %" },
    { name: copper, form: "Cu", excess: "100 %" },
  ],
  scale: { material: "silver nitrate", portion: "5.0 g" },
});

describe("a metal that displaces another", () => {
  it("hangs in the liquor in one piece where the pack has long ones", () => {
    expect(words(SILVER("copper strip"))).toMatch(
      /Hang the .* of copper strip in the liquor, which is to cover it \(a narrow vessel helps\), in one piece/,
    );
    expect(words(SILVER("copper turnings"))).toMatch(/Add the .* of copper turnings in small portions/);
  });

  it("is taken by dilute acid only where that leaves the product and dissolves the rest", () => {
    const check = (request: PlanRequest): string => planPreparation(request).checks[0]!.text;
    expect(check(SILVER("copper strip"))).toMatch(/is left over: pieces are lifted out$/);
    expect(check(SILVER("copper powder"))).toMatch(/is left over: it stays in the product$/);
    const zinc: PlanRequest = {
      equation: "CuSO4·5H2O + Zn -> Cu + ZnSO4 + 5 H2O",
      product: "Cu",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "zinc powder", form: "Zn", excess: "20 %" },
      ],
      scale: { material: "blue vitriol", portion: "25 g" },
    };
    expect(check(zinc)).toMatch(/is left over: dilute acid takes it$/);
    // what takes it is on the list of hazards, as strong as it is taken: from 5 to 15 % sulfuric acid irritates (CLP, Annex VI)
    const acid = planPreparation(zinc).cautions.substances.find(({ material }) => material === "H2SO4")!;
    expect(acid.statements.map(({ code }) => code)).toEqual(["H315", "H319"]);
    expect(sheet(zinc)).toContain("H₂SO₄, 10 %");
  });

  it("is no residue of a filter", () => {
    expect(sheet(SILVER("copper strip"))).toContain("Metal left over: 1.0 g of Cu");
  });
});

describe("acid that keeps a liquor from the air", () => {
  const vitriol: PlanRequest = {
    equation: "Fe + H2SO4 + 7 H2O -> FeSO4·7H2O + H2",
    product: "FeSO4·7H2O",
    materials: [
      { name: "iron filings", form: "Fe", assay: "98 %", excess: "10 %" },
      { name: "dilute sulfuric acid", form: "H2SO4", strength: "20 %" },
    ],
    scale: { product: "50 g" },
  };

  it("comes once the metal that would take it is off", () => {
    const steps = words(vitriol).split("\n");
    const filtered = steps.findIndex((text) => /^Filter hot/.test(text));
    expect(steps[filtered]).toMatch(/just acid with a few drops/);
    expect(steps.slice(0, filtered).join("\n")).not.toMatch(/just acid/);
  });
});

describe("a precipitate of hexacyanidoferrate", () => {
  const blue: PlanRequest = {
    equation: "4 FeCl3·6H2O + 3 K4[Fe(CN)6]·3H2O -> Fe4[Fe(CN)6]3 + 12 KCl + 33 H2O",
    product: "Fe4[Fe(CN)6]3",
    materials: [
      { name: "iron(III) chloride", form: "FeCl3·6H2O", assay: "97 %", excess: "5 %" },
      { name: "yellow prussiate of potash", form: "K4[Fe(CN)6]·3H2O", assay: "99 %" },
    ],
    scale: { material: "yellow prussiate of potash", portion: "20.0 g" },
  };

  it("is not warmed in its sour liquor", () => {
    expect(words(blue)).toMatch(/Do not warm it in its liquor/);
    expect(sheet(blue)).not.toMatch(/hot plate/);
  });

  // 19.8 g / 422.39 g/mol / 3 × 859.24 g/mol = 13.43 g without water; with 16 and 10 H2O 1039.5 and 1148 g/mol: 16.2 to 17.9 g
  it("has its yield by the water that it keeps", () => {
    expect(sheet(blue)).toMatch(/yield, by the water in it = dry mass \/ 17\.9 g to dry mass \/ 16\.2 g/);
  });
});

describe("a salt that tap water clouds", () => {
  const iodide: PlanRequest = {
    equation: "Pb(NO3)2 + 2 KI -> PbI2 + 2 KNO3",
    product: "PbI2",
    materials: [
      { name: "lead nitrate", form: "Pb(NO3)2", assay: "99 %" },
      { name: "potassium iodide", form: "KI", assay: "99 %" },
    ],
    scale: { product: "5.0 g" },
  };

  it("is dissolved in distilled water, and filtered where its pack has something besides", () => {
    const step = words(iodide)
      .split("\n")
      .find((text) => text.startsWith("Dissolve the lead nitrate"))!;
    expect(step).toMatch(/distilled water/);
    expect(step).toMatch(/if it stays cloudy, let it settle and filter it/);
    expect(sheet(iodide)).toContain("distilled water");
  });

  it("names the traces of a poison in what is poured away, which no balance shows", () => {
    expect(sheet(iodide)).toMatch(/Filtrate, about 31 mL: 2\.0 g of KNO₃; a little Pb is dissolved in it/);
  });

  it("compares small masses in milligrams, and asks for no more iodide instead of no excess", () => {
    expect(words(iodide)).toMatch(/in it go from \d+ mg to \d+(\.\d)? mg/);
    expect(planPreparation(iodide).checks.map(({ text }) => text)).toContain(
      "no more potassium iodide than the table says: an excess takes the product back into solution",
    );
  });
});

describe("sulfur", () => {
  it("is wetted without alcohol, which a hot liquor would drive into a flame", () => {
    const hypo: PlanRequest = {
      equation: "Na2SO3 + S + 5 H2O -> Na2S2O3·5H2O",
      product: "Na2S2O3·5H2O",
      materials: [
        { name: "sodium sulfite", form: "Na2SO3", assay: "97 %" },
        { name: "flowers of sulfur", form: "S", assay: "99 %", excess: "30 %" },
      ],
      scale: { material: "sodium sulfite", portion: "25 g" },
    };
    expect(words(hypo)).toMatch(/washing-up liquid/);
    // the crystals are rinsed with it, cold, long after the sulfur
    const hot = planPreparation(hypo).steps.filter(({ operation }) => operation !== "rinse" && operation !== "dry");
    expect(hot.map(({ text }) => text).join("\n")).not.toMatch(/alcohol/);
    // and the seed is on the list
    expect(sheet(hypo)).toContain("a few crystals of an earlier batch, to seed with");
  });

  it("does not act on dichromate in water, nor nitrate without acid on lead", () => {
    const verdictOf = (equation: string, product: string) =>
      doesItGo({ equation, product, acknowledge: ["chromate-fuel"] }).verdict;
    expect(verdictOf("K2Cr2O7 + S -> Cr2O3 + K2SO4", "Cr2O3")).toBe("does not go");
    expect(verdictOf("Pb + KNO3 -> PbO + KNO2", "KNO2")).toBe("does not go");
    expect(verdictOf("BaSO4 + 4 C -> BaS + 4 CO", "BaS")).toBe("does not go");
    expect(verdictOf("Na2SO3 + S -> Na2S2O3", "Na2S2O3")).not.toBe("does not go");
    expect(verdictOf("2 AgNO3 + Cu -> 2 Ag + Cu(NO3)2", "Ag")).toBe("goes");
  });
});

describe("what stands in place of the product", () => {
  const carbonate: PlanRequest = {
    equation: "CuSO4·5H2O + Na2CO3 -> CuCO3 + Na2SO4 + 5 H2O",
    product: "CuCO3",
    materials: [
      { name: "blue vitriol", form: "CuSO4·5H2O" },
      { name: "soda ash", form: "Na2CO3" },
    ],
    scale: { material: "blue vitriol", portion: "20 g" },
  };

  it("has its hazards on the sheet, and its name in the plan's line", () => {
    const plan = planPreparation(carbonate);
    const named = plan.cautions.substances.map(({ material }) => material);
    expect(named).not.toContain("CuCO3");
    // basic copper carbonate, CLP Annex VI 029-020-00-8: H302, H332, H319, H410
    const row = plan.cautions.substances.find(({ material }) => material.startsWith("Cu2"))!;
    expect(row.statements.map(({ code }) => code).sort()).toEqual(["H302", "H319", "H332", "H410"]);
    // 20 g / 249.68 g/mol / 2 × 221.11 g/mol
    expect(String(plan)).toMatch(/Cu₂\(OH\)₂CO₃ stands in its place: 8\.856 ± .* g at 100 % yield/);
  });
});
