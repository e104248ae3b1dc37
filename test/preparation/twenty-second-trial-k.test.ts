// What a reader of the sheet of black copper oxide could not do as it was written.
import { benchSheet, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const sheetOf = (also: readonly { form: string; share: `${number} %` }[]) =>
  benchSheet(
    planPreparation({
      equation: "Cu2(OH)2CO3 -> 2 CuO + CO2 + H2O",
      product: "CuO",
      materials: [{ name: "copper carbonate", form: "Cu2(OH)2CO3", assay: "96 %", also }],
      scale: { material: "copper carbonate", portion: "100 g" },
    }),
  ).replace(/\s+/g, " ");
const text = sheetOf([
  { form: "Na2SO4", share: "2 %" },
  { form: "H2O", share: "2 %" },
]);

describe("a pack of copper carbonate with sodium sulfate in it", () => {
  // 96 g / (2·63.546 + 2·17.007 + 60.008) = 0.4342 mol; 2 · 0.4342 · 79.545 = 69.1 g; with 2.0 g of Na2SO4 71.1 g of 100 g
  it("is done at the mass that can be reached, in the step and in the checks", () => {
    expect(text).toContain("until the mass stands still at 71.1 g, from 100.0 g");
    expect(text).toContain(
      "100 g has fallen to 71.1 g, 69.1 g of CuO and 2.0 g of what the pack has besides (loses 28.9 %) and stays there",
    );
  });

  it("has reacted where its gas has left: the salt beside takes no part", () => {
    expect(text).not.toContain("does not tell that CuO has formed");
    expect(text).toContain("69.6 to 71.1 g as expected");
  });

  it("is done at its theory where nothing stays", () => {
    expect(sheetOf([{ form: "H2O", share: "4 %" }])).toContain("100 g has fallen to 69.1 g of CuO (loses 30.9 %)");
  });
});

describe("what comes hot from the fire", () => {
  // common practice, no source: a hot crucible cracks a jar, or its lid is sucked fast
  it("cools open first, and below 100 °C in what closes", () => {
    expect(text).toContain(
      "Let it cool where it was heated, without a tight lid, to less than 100 °C, and from there to 20 °C in a closed vessel or a desiccator.",
    );
    expect(text).not.toContain("in the closed vessel or");
  });
});
