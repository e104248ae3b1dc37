// A salt beside the product is saturated when the product of its ions, all that is dissolved counted, reaches that of its own saturated
// solution. Solubilities are those of the tables of the repository: KCl 34.03 g, K2SO4 11.00 g in 100 g of water at 20 °C (CRC
// Handbook, 98th ed.), K3[Fe(C2O4)3] 8.9 g. Molar masses: KCl 74.55, K2SO4 174.26, K3[Fe(C2O4)3] 437.2, K2C2O4 166.2 g/mol.
import { type Plan, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const cooledIn = ({ steps }: Plan) => steps.find(({ operation, vessel }) => operation === "cool" && vessel === "pot")!;
const said = ({ steps }: Plan): string => steps.map(({ text }) => text).join("\n");

/** Mol of a salt in a kilogram of the water of a liquor. */
const molal = ({ after }: ReturnType<typeof cooledIn>, formula: string): number => {
  const salt = after.dissolved.find((one) => one.formula === formula);
  return salt === undefined ? 0 : salt.amount.toNumber("mol") / after.water.toNumber("kg");
};

const IRON: PlanRequest = {
  equation: "FeCl3 + 3 K2C2O4 -> K3[Fe(C2O4)3]·3H2O + 3 KCl",
  product: "K3[Fe(C2O4)3]·3H2O",
  materials: [
    { name: "ferric chloride", form: "FeCl3·6H2O" },
    { name: "potassium oxalate", form: "K2C2O4·H2O", excess: "5 %" },
  ],
  scale: { material: "ferric chloride", portion: "10 g" },
};

describe("potassium chloride beside a complex of potassium", () => {
  const plan = planPreparation(IRON);
  const cooled = cooledIn(plan);
  const complex = molal(cooled, "K₃[Fe(C₂O₄)₃]");
  const potassium = molal(cooled, "KCl") + 2 * molal(cooled, "K₂C₂O₄") + 3 * complex;

  // 0.0370 mol of iron: 0.111 mol of KCl, 0.0056 mol of oxalate over. In 29.3 g of water, 27.5 g when the crystals have theirs, K+ 5.0 and
  // Cl- 4.0 mol/kg were 20.2 mol2/kg2, of 20.84 at 20 °C (4.565 squared)
  it("keeps a distance from its saturation, the potassium of all three salts counted", () => {
    const product = potassium * molal(cooled, "KCl");
    expect(complex).toBeCloseTo(89 / 437.2, 2);
    expect(product).toBeLessThan(0.9 * 4.565 ** 2);
    // nine tenths of what the water keeps is planned for: 0.81 of the product, and 5 % of KCl in the crystals may be beyond
    expect(product).toBeGreaterThan(0.81 * 4.565 ** 2);
    expect(said(plan)).not.toMatch(/crystallises[^.]* and with it/);
  });

  it("costs little of the crop", () => {
    const crop = cooled.after.solids[0]!.mass.dividedBy(plan.product.theoreticalYield).toNumber("");
    expect(crop).toBeGreaterThan(0.83);
  });
});

describe("potassium sulfate beside a complex of which no solubility is known", () => {
  const copper = (more: { readonly water?: `${number} mL` }): string =>
    said(
      planPreparation({
        equation: "CuSO4 + 2 K2C2O4 + 2 H2O -> K2[Cu(C2O4)2]·2H2O + K2SO4",
        product: "K2[Cu(C2O4)2]·2H2O",
        materials: [
          { name: "blue vitriol", form: "CuSO4·5H2O" },
          {
            name: "potassium oxalate",
            form: "K2C2O4·H2O",
            ...(more.water === undefined ? {} : { dissolve: { water: more.water } }),
          },
        ],
        scale: { material: "blue vitriol", portion: "12.5 g" },
      }),
    );

  // 0.0501 mol of each: 8.72 g of K2SO4 alone are kept by 79.3 g of water. With four K+ for two the product of its ions is four times
  // that of the salt alone, and it takes 4^(1/3) = 1.587 times the water: 125.9 g
  it("is not promised to stay in water that keeps it alone", () => {
    expect(copper({})).toMatch(
      /K₂SO₄ may crystallise with it: .* it takes 126 mL of water to stay dissolved for certain, and there is 1\d\d mL/,
    );
    expect(copper({})).not.toMatch(/boiled off/);
  });

  // common practice, no source: where boiling brings out the wrong salt, ice and time bring out the right one
  it("is not boiled down for crystals where that brings the sulfate first", () => {
    expect(copper({})).toMatch(/if nothing crystallises, cool it in ice to 0 to 5 °C/);
    expect(copper({})).not.toMatch(/boil it down/);
    expect(copper({ water: "150 mL" })).toMatch(/if nothing crystallises, boil it down a little at a time/);
  });

  it("bounds the boiling by all the potassium where there is water enough", () => {
    const text = copper({ water: "150 mL" });
    const [, off] = /no more than (\d+) mL of water boiled off in all, or K₂SO₄/.exec(text)!;
    // 150 mL, 46 mL for the sulfate, and 4.5 + 1.8 g of crystal water, less 126 mL
    expect(Number(off)).toBeGreaterThan(150 + 46 - 126);
    expect(Number(off)).toBeLessThan(150 + 46 + 7 - 126);
  });
});

describe("potassium iodate beside iodide", () => {
  const plan = planPreparation({
    equation: "I2 + KOH -> KI + KIO3 + H2O",
    product: "KI",
    materials: [
      { name: "iodine", form: "I2" },
      { name: "caustic potash", form: "KOH", assay: "85 %" },
    ],
    scale: { material: "iodine", portion: "25.4 g" },
  });

  // 0.0333 mol of KIO3, 7.1 g; iodide saturated at 80 °C brings more than 11 mol/kg of K+, beside which iodate of 1.2 mol/kg alone is
  // 1.2 × 1.2 / 11 = 0.12 mol/kg and less: 0.4 g in the 14 g of water
  it("is filtered off hot, nearly all of it, before the iodide crystallises", () => {
    const [, hot] = /([\d.]+) g of KIO₃ crystallises hot/.exec(said(plan))!;
    expect(Number(hot)).toBeGreaterThan(7.1 - 0.45);
    expect(Number(hot)).toBeLessThan(7.1);
    const { solids } = cooledIn(plan).after;
    const iodate = solids.find(({ formula }) => formula === "KIO₃")!.mass.toNumber("g");
    const iodide = solids.find(({ formula }) => formula === "KI")!.mass.toNumber("g");
    expect(iodide / (iodide + iodate)).toBeGreaterThan(0.98);
  });
});

describe("a pair of salts that swap their ions", () => {
  // each keeps its own solubility: that both ions of a salt come from two others is judged for all four salts together
  it("is parted as before, an excess of one of them as well", () => {
    const saltpetre = planPreparation({
      equation: "NaNO3 + KCl -> KNO3 + NaCl",
      product: "KNO3",
      materials: [
        { name: "soda saltpetre", form: "NaNO3" },
        { name: "muriate", form: "KCl", excess: "5 %" },
      ],
      scale: { material: "soda saltpetre", portion: "85 g" },
    });
    expect(said(saltpetre)).toMatch(/NaCl crystallises hot/);
    expect(said(saltpetre)).not.toMatch(/of KCl crystallises/);
  });
});
