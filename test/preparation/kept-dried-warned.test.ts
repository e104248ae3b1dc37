// What may be kept of a by-product, what is dried before it is fired, what diluting warms: read at the bench by a chemist. Common
// practice, no source; heats of dilution of our table.
import { type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const COPPER: PlanRequest = {
  equation: "Cu + HNO3 -> Cu(NO3)2 + NO + H2O",
  product: "Cu(NO3)2",
  materials: [
    { name: "copper wire", form: "Cu" },
    { name: "nitric acid", form: "HNO3", strength: "30 %", excess: "5 %" },
  ],
  scale: { material: "copper wire", portion: "10.5 g" },
};

const cautionsOf = (request: PlanRequest): string =>
  planPreparation(request)
    .stepCautions.flatMap(({ cautions }) => cautions.map(({ text }) => text))
    .join("\n");

describe("a by-product", () => {
  it("is not kept out of a pot with cobalt, though all the cobalt is in the precipitate", () => {
    const { byProducts } = planPreparation({
      equation: "CoCl2 + Na3PO4 + H2O -> Co3(PO4)2·8H2O + NaCl",
      product: "Co3(PO4)2·8H2O",
      materials: [
        { name: "cobalt chloride", form: "CoCl2·6H2O" },
        { name: "trisodium phosphate", form: "Na3PO4·12H2O" },
      ],
      scale: { product: "20 g" },
    });
    const [salt] = byProducts.filter(({ formula }) => formula === "NaCl");
    expect(salt!.worthKeeping).toBe(false);
    expect(salt!.why).toContain("out of a pot with Co");
  });

  it("is kept as the hydrate that its liquor gives", () => {
    const { byProducts } = planPreparation({
      equation: "AgNO3 + Cu -> Ag + Cu(NO3)2",
      product: "Ag",
      materials: [
        { name: "silver nitrate", form: "AgNO3" },
        { name: "copper sheet", form: "Cu", excess: "50 %" },
      ],
      scale: { product: "10 g" },
    });
    expect(byProducts[0]!.worthKeeping).toBe(true);
    expect(byProducts[0]!.why).toMatch(/gives Cu\(NO₃\)₂·6H₂O/);
  });
});

describe("diluted acid", () => {
  it("is called hot only where its figure says so: nitric acid from 30 to 25 % warms by 0.9 K", () => {
    const [diluting] = planPreparation(COPPER).dissolvingHeat;
    // 0.72 K with 4.0 J/(g K), 3.22 J/(g K) in acid of 25 % (0.77 cal, Perry)
    expect("rise" in diluting! && diluting.rise.rise.in("ΔK").toNumber()).toBeCloseTo(0.89, 1);
    expect(cautionsOf(COPPER)).not.toContain("diluted acid is hot");
    const strong = { ...COPPER, materials: [COPPER.materials[0]!, { ...COPPER.materials[1]!, strength: "65 %" }] };
    expect(cautionsOf(strong as PlanRequest)).toContain("diluted acid is hot");
  });
});

describe("a salt that is fired", () => {
  const fired = (form: string, equation: string, product: string): string =>
    planPreparation({ equation, product, materials: [{ name: "feed", form }], scale: { product: "20 g" } })
      .steps.map(({ text }) => text)
      .join("\n");

  it("is dried first where it would melt in its crystal water, and not where it does not dissolve", () => {
    expect(fired("FeSO4·7H2O", "FeSO4·7H2O -> Fe2O3 + SO2 + SO3 + H2O", "Fe2O3")).toMatch(
      /Dry it first at 100 to 150 °C/,
    );
    expect(fired("Mg5(CO3)4(OH)2·4H2O", "Mg5(CO3)4(OH)2·4H2O -> MgO + CO2 + H2O", "MgO")).not.toContain("Dry it first");
  });
});
