// What a third independent reading found; the practice of the trade, no source where none is named.
import { type Plan, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";
import { CALCIUM_NITRATE } from "../data/common-requests";

const words = ({ steps }: Plan): string => steps.map(({ text }) => text).join("\n");
const cautionsOf = ({ steps }: Plan): string =>
  steps.flatMap(({ cautions }) => cautions.map(({ text }) => text)).join("\n");

describe("a pack that is called a solution", () => {
  const rust = (name: string): Plan =>
    planPreparation({
      equation: "FeCl3 + 3 NH3 + 3 H2O -> Fe(OH)3 + 3 NH4Cl",
      product: "Fe(OH)3",
      materials: [
        { name: "etching salt", form: "FeCl3·6H2O" },
        { name, form: "NH3", strength: "25 %", excess: "10 %" },
      ],
      scale: { material: "etching salt", portion: "54.0 g" },
    });

  it("is diluted in a jug that is not the pack, and all of it is in the vessel", () => {
    const [named, other] = [rust("ammonia solution"), rust("spirit of hartshorn")];
    expect(words(named)).not.toMatch(/pour it into the ammonia solution/);
    expect(words(named)).toMatch(/Pour the diluted ammonia solution into the vessel/);
    const litres = ({ vessel }: Plan): number => vessel!.liquid.toNumber("L");
    expect(litres(named)).toBeCloseTo(litres(other), 9);
    expect(named.waste.volume!.toNumber("L")).toBeCloseTo(other.waste.volume!.toNumber("L"), 9);
  });
});

describe("a pack that is called as a vessel of the work is", () => {
  const chalk = (salt: string, soda: string): Plan =>
    planPreparation({
      equation: "CaCl2 + Na2CO3 -> CaCO3 + 2 NaCl",
      product: "CaCO3",
      materials: [
        { name: salt, form: "CaCl2·2H2O" },
        { name: soda, form: "Na2CO3", strength: "10 %" },
      ],
      scale: { material: salt, portion: "14.7 g" },
    });

  it.each([
    ["pot", "soda water"],
    ["mother liquor", "soda water"],
    ["gas trap", "soda water"],
    ["soda", "soda solution"],
    ["salt", "pot"],
    ["salt", "salt solution"],
  ])("%s and %s fill the same vessel as any other names", (salt, soda) => {
    const [plain, named] = [chalk("de-icer", "sal soda"), chalk(salt, soda)];
    for (const of of [({ vessel }: Plan) => vessel!.liquid, ({ waste }: Plan) => waste.volume!])
      expect(of(named).toNumber("mL")).toBeCloseTo(of(plain).toNumber("mL"), 9);
    expect(named.steps.at(-1)!.after.solids.map(({ formula }) => formula)).toContain("CaCO₃");
  });
});

describe("slaked lime, 0.16 g in 100 g of water at 20 °C and 0.10 g at 80 °C", () => {
  it("stands warm and is filtered hot", () => {
    const plan = planPreparation({
      equation: "CaCl2 + 2 NaOH -> Ca(OH)2 + 2 NaCl",
      product: "Ca(OH)2",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O" },
        { name: "lye", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "de-icer", portion: "50.0 g" },
    });
    expect(words(plan)).toMatch(/filter it hot: cold its liquor keeps more of it/);
    expect(words(plan)).not.toMatch(/warm liquor would keep more|let it cool before/);
  });
});

describe("bismuth nitrate", () => {
  it("is dissolved in acid, of which drops are too little", () => {
    const plan = planPreparation({
      equation: "Bi(NO3)3 + KCl + H2O -> BiOCl + KNO3 + 2 HNO3",
      product: "BiOCl",
      materials: [
        { name: "bismuth nitrate", form: "Bi(NO3)3·5H2O" },
        { name: "potassium chloride", form: "KCl", excess: "10 %" },
      ],
      scale: { product: "10 g" },
    });
    expect(words(plan)).toMatch(/Put [\d.]+ g of dilute nitric acid \(20 %\) into the vessel/);
    expect(words(plan)).not.toMatch(/a few drops of dilute nitric acid/);
  });
});

describe("reactions that start late", () => {
  it("are those of strong oxidisers, not of sulfur in sulfite", () => {
    const plan = planPreparation({
      equation: "Na2SO3 + S + 5 H2O -> Na2S2O3·5H2O",
      product: "Na2S2O3·5H2O",
      materials: [
        { name: "sulfite", form: "Na2SO3" },
        { name: "flowers of sulfur", form: "S", excess: "10 %" },
      ],
      scale: { material: "sulfite", portion: "50.0 g" },
    });
    expect(cautionsOf(plan)).not.toMatch(/may start late/);
  });
});

describe("a liquor that is nearly all crystals when it is cold", () => {
  const plan = planPreparation(CALCIUM_NITRATE);

  it("is stirred as it cools, or it sets to a block", () => {
    const { before, text } = plan.steps.find(({ text: one }) => one.startsWith("Let it cool"))!;
    expect(plan.steps.at(-1)!.after.solids[0]!.mass.toNumber("g") / before.mass.toNumber("g")).toBeGreaterThan(0.65);
    expect(text).toMatch(/stirring now and then, for undisturbed it would set to a block/);
  });

  it("is kept tightly closed, by its label", () => {
    expect(String(benchSheet(plan, { parts: ["bench"] })).replace(/\s+/g, " ")).toMatch(/keep tightly closed/);
  });

  it("is seeded below the 43 °C at which its crystals melt", () => {
    const at = Number(/When it has cooled to about (\d+) °C put in/.exec(words(plan))![1]);
    expect(at).toBeLessThanOrEqual(38);
    expect(at).toBeGreaterThanOrEqual(20);
  });
});

describe("calcium citrate", () => {
  it("is digested and filtered hot, where less of it dissolves than in the cold", () => {
    const plan = planPreparation({
      equation: "3 CaCO3 + 2 C6H8O7 + H2O -> Ca3(C6H5O7)2·4H2O + 3 CO2",
      product: "Ca3(C6H5O7)2·4H2O",
      materials: [
        { name: "chalk", form: "CaCO3" },
        { name: "citric acid", form: "C6H8O7·H2O", excess: "5 %" },
      ],
      scale: { material: "chalk", portion: "30.0 g" },
    });
    expect(words(plan)).toMatch(/at 60 to 90 °C if it can be warmed.*filter it hot, and wash it with hot water/);
    expect(words(plan)).not.toMatch(/no warmer than the room|let it cool before/);
  });
});
