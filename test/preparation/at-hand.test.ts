// Small things that a step takes and no pack brings, and ammines, which lose their ammonia. The practice of the trade, no source
// where none is named.
import { type Plan, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const words = ({ steps }: Plan): string => steps.map(({ text }) => text).join("\n");
const atHand = ({ steps }: Plan): string[] => [...new Set(steps.flatMap((step) => step.atHand))];

/** What a sheet asks to have ready. */
const ready = (plan: Plan): string => benchSheet(plan).replace(/\s+/g, " ");

const silica = planPreparation({
  equation: "Na2SiO3 + 2 HCl -> SiO2 + 2 NaCl + H2O",
  product: "SiO2",
  materials: [
    { name: "metasilicate", form: "Na2SiO3" },
    { name: "descaler", form: "HCl", strength: "10 %" },
  ],
  scale: { material: "metasilicate", portion: "20 g" },
});

const ammine = (equation: string, product: string, salt: string): Plan =>
  planPreparation({
    equation,
    product,
    materials: [
      { name: "the salt", form: salt },
      { name: "ammonia", form: "NH3", strength: "25 %", excess: "20 %" },
    ],
    scale: { product: "20 g" },
  });
const copper = ammine("CuSO4 + 4 NH3 + H2O -> [Cu(NH3)4]SO4·H2O", "[Cu(NH3)4]SO4·H2O", "CuSO4·5H2O");
const nickel = ammine("NiCl2 + 6 NH3 -> [Ni(NH3)6]Cl2", "[Ni(NH3)6]Cl2", "NiCl2·6H2O");

describe("what a step takes besides its packs", () => {
  it("is on the list of what is ready", () => {
    expect(atHand(silica)).toEqual(["indicator paper", "baking soda"]);
    expect(ready(silica)).toMatch(/indicator paper .*baking soda, a spoonful/);
    expect(ready(copper)).toMatch(/a little strong ammonia/);
  });

  it("is washing-up liquid for sulfur, which water does not wet", () => {
    const plan = planPreparation({
      equation: "S + Na2SO3 -> Na2S2O3",
      product: "Na2S2O3",
      materials: [
        { name: "flowers of sulfur", form: "S" },
        { name: "sulfite", form: "Na2SO3" },
      ],
      scale: { material: "flowers of sulfur", portion: "10 g" },
    });
    expect(words(plan)).toMatch(
      /flowers of sulfur, rubbed to a paste with a little water and a drop of washing-up liquid first \(dry it floats\)/,
    );
    expect(atHand(plan)).toEqual(["washing-up liquid", "seed crystals"]);
  });

  it("is nothing where tap and packs bring all", () => {
    const chalk = planPreparation({
      equation: "CaCl2 + Na2CO3 -> CaCO3 + 2 NaCl",
      product: "CaCO3",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O" },
        { name: "soda", form: "Na2CO3" },
      ],
      scale: { material: "de-icer", portion: "14.7 g" },
    });
    expect(atHand(chalk)).toEqual([]);
  });
});

// Tetraamminecopper sulfate is washed with alcohol and strong ammonia, half and half, in teaching preparations (from memory).
describe("crystals of an ammine that comes apart", () => {
  it("are rinsed with ammonia in the alcohol, and not dried in open air to a constant mass", () => {
    for (const plan of [copper, nickel]) {
      expect(words(plan)).toMatch(
        /Rinse the crystals with .* of a mixture of alcohol and strong ammonia, half and half/,
      );
      expect(words(plan)).toMatch(/in open air it loses ammonia, and never comes to a constant mass/);
      expect(words(plan)).not.toMatch(/two weighings/);
    }
  });

  it("keep some of the ammonia of the rinse until they are dry", () => {
    const rinse = copper.steps.find(({ operation }) => operation === "rinse")!;
    expect(rinse.put[0]!.dissolved.map(({ formula }) => formula).sort()).toEqual(["C₂H₅OH", "NH₃"]);
  });

  it("are unlike those of cobalt(III), which keeps its ammonia", () => {
    const cobalt = planPreparation({
      equation: "4 CoCl2 + 4 NH4Cl + 20 NH3 + O2 -> 4 [Co(NH3)6]Cl3 + 2 H2O",
      product: "[Co(NH3)6]Cl3",
      materials: [
        { name: "cobalt chloride", form: "CoCl2·6H2O" },
        { name: "salmiac", form: "NH4Cl" },
        { name: "ammonia", form: "NH3", strength: "25 %" },
      ],
      scale: { material: "cobalt chloride", portion: "24 g" },
    });
    expect(words(cobalt)).not.toMatch(/loses ammonia, and never/);
    expect(words(cobalt)).toMatch(/two weighings/);
  });
});
