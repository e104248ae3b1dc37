// Copper turns copper(II) chloride into copper(I) chloride, which precipitates; what is left of the metal is lifted out of it.
import { planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

describe("the metal of a redox reaction that gives a precipitate", () => {
  const lifted = (excess: "20 %") =>
    planPreparation({
      equation: "Cu + CuCl2 -> CuCl",
      product: "CuCl",
      materials: [
        { name: "copper", form: "Cu", excess },
        { name: "chloride", form: "CuCl2·2H2O" },
      ],
      scale: { material: "chloride", portion: "17.048 g" },
      readability: { mass: "0.001 g" },
    })
      .steps.map(({ text }) => text)
      .filter((text) => text.startsWith("Lift out"));

  it("is lifted out where some is left: 0.1000 mol asks for 6.355 g (CuCl2·2H2O 170.48, Cu 63.55), and a fifth of it is over", () => {
    expect(lifted("20 %")).toEqual([
      "Lift out what is left of the copper, about 1.27 g, and rinse it over the vessel.",
    ]);
  });
});
