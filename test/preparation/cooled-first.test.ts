// What stood hot in its liquor is cold before a drop of it is tested and the rest filtered off.

import { describe, expect, it } from "vitest";
import { type Plan, planPreparation } from "../../src/preparation";

const planOf = (equation: string, product: string, ...forms: string[]): Plan =>
  planPreparation({
    equation,
    product,
    materials: forms.map((form) => ({ name: form, form })),
    scale: { product: "10 g" },
  });

const standing = ({ steps }: Plan): string =>
  steps.find(({ text }) => /in its liquor|keep it there|filter it hot/.test(text))?.text ?? "";

describe("a precipitate that stands hot (common practice, no source)", () => {
  it.each([
    ["BaCl2 + Na2SO4 -> BaSO4 + 2 NaCl", "BaSO4", ["BaCl2·2H2O", "Na2SO4"], "filtered"],
    // basic copper carbonate has a warmth of its own, and is filtered; a slime is poured off
    ["2 CuSO4 + 2 Na2CO3 + H2O -> Cu2CO3(OH)2 + 2 Na2SO4 + CO2", "Cu2CO3(OH)2", ["CuSO4·5H2O", "Na2CO3"], "filtered"],
    ["FeCl3 + 3 NaOH -> Fe(OH)3 + 3 NaCl", "Fe(OH)3", ["FeCl3·6H2O", "NaOH"], "decanted"],
  ])("cools before its liquor is looked at: %s", (equation, product, forms, how) => {
    expect(standing(planOf(equation, product, ...forms))).toContain(`; let it cool before it is tested and ${how}.`);
  });

  it("and an oxide that heat makes of the hydroxide is in the room again when it is filtered", () => {
    const plan = planOf("CuSO4 + 2 NaOH -> CuO + Na2SO4 + H2O", "CuO", "CuSO4·5H2O", "NaOH");
    expect(standing(plan)).toMatch(/^Warm it to 85 °C .*; let it cool before it is tested and filtered\.$/);
    const warmed = plan.steps.find(({ operation }) => operation === "heat")!;
    expect(warmed.target?.toNumber("°C")).toBe(85);
    expect(warmed.after.temperature.compare(plan.temperature)).toBe(0);
  });

  it.each([
    // filtered hot on purpose: it forms only there
    [
      "5 MgSO4 + 5 Na2CO3 + 5 H2O -> Mg5(CO3)4(OH)2·4H2O + 5 Na2SO4 + CO2",
      "Mg5(CO3)4(OH)2·4H2O",
      ["MgSO4·7H2O", "Na2CO3"],
    ],
    // the table: 0.0059 g in 100 g of water at 20 °C, 0.0030 g at 60 °C
    ["CaCl2 + Na2SO3 -> CaSO3 + 2 NaCl", "CaSO3", ["CaCl2·2H2O", "Na2SO3"]],
    // never warm
    ["CuSO4 + 2 NaOH -> Cu(OH)2 + Na2SO4", "Cu(OH)2", ["CuSO4·5H2O", "NaOH"]],
    // no warmer than the room: 0.067 g of it stays in 100 g of water at 20 °C
    ["Pb(NO3)2 + 2 KI -> PbI2 + 2 KNO3", "PbI2", ["Pb(NO3)2", "KI"]],
  ])("has no such word where it is not to cool: %s", (equation, product, forms) => {
    const text = planOf(equation, product, ...forms)
      .steps.map((step) => step.text)
      .join("\n");
    expect(text).not.toContain("let it cool before");
  });
});

describe("a precipitate that hot liquor or air changes (common practice, no source)", () => {
  it.each([
    ["3 CuSO4 + 2 Na3PO4 -> Cu3(PO4)2 + 3 Na2SO4", "Cu3(PO4)2", "CuSO4·5H2O"],
    ["3 CuSO4 + 2 Na3PO4 + 3 H2O -> Cu3(PO4)2·3H2O + 3 Na2SO4", "Cu3(PO4)2·3H2O", "CuSO4·5H2O"],
    ["3 CoSO4 + 2 Na3PO4 + 8 H2O -> Co3(PO4)2·8H2O + 3 Na2SO4", "Co3(PO4)2·8H2O", "CoSO4·7H2O"],
  ])("as a phosphate is not warmed, or it turns basic: %s", (equation, product, salt) => {
    const text = standing(planOf(equation, product, salt, "Na3PO4·12H2O"));
    expect(text).toMatch(/^Let it stand overnight in its liquor.*; do not warm it in its liquor: warm it turns basic/);
  });

  it("zinc phosphate stands warm as others do", () => {
    const zinc = planOf("3 ZnSO4 + 2 Na3PO4 -> Zn3(PO4)2 + 3 Na2SO4", "Zn3(PO4)2", "ZnSO4·7H2O", "Na3PO4·12H2O");
    expect(standing(zinc)).not.toMatch(/basic/);
  });

  it("is covered while it stands warm in air, and only then", () => {
    const manganese = planOf("MnSO4 + Na2CO3 -> MnCO3 + Na2SO4", "MnCO3", "MnSO4·H2O", "Na2CO3");
    expect(standing(manganese)).toMatch(
      /at 50 to 60 °C or overnight in the cold.*; keep it covered; let it cool before it is tested/,
    );
    const barium = planOf("BaCl2 + Na2CO3 -> BaCO3 + 2 NaCl", "BaCO3", "BaCl2·2H2O", "Na2CO3");
    expect(standing(barium)).not.toMatch(/covered/);
  });
});
