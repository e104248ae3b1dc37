// Heat of a displacement whose liquor is sour, and what the books have of acid that a list of materials names.
import { describe, expect, it } from "vitest";
import { type Contents, type PlanRequest, planPreparation } from "../../src/preparation";
import { benchSheet } from "../../src/sheet";

// Enthalpies of formation in kJ/mol: Cu2+ 64.77, Zn2+ -153.89, Fe2+ -89.1 (NBS Tables of Chemical Thermodynamic Properties,
// 1982); of a metal, of hydrogen and of H+ they are 0 by definition.
describe("the heat of acid over on metal over", () => {
  const displaced = (metal: string, acid: object): PlanRequest => ({
    equation: `CuSO4 + ${metal} -> ${metal}SO4 + Cu`,
    product: "Cu",
    materials: [
      { name: "copper sulfate", form: "CuSO4·5H2O" },
      { name: "metal powder", form: metal, excess: "20 %" },
      { name: "sulfuric acid", form: "H2SO4", strength: "10 %", aside: true, ...acid },
    ],
    scale: { product: "10 g" },
  });
  const heatOf = (request: PlanRequest) => {
    const { heat } = planPreparation(request);
    if (!("rise" in heat)) throw new Error(heat.missing);
    return heat.rise;
  };

  // 10 g / 63.546 g/mol = 0.15737 mol of copper; 12.4 g of zinc / 65.38 g/mol = 0.18966 mol, 0.03230 mol over
  it("counts all the metal where the acid is enough for it", () => {
    // 100 g × 10 % / 98.07 g/mol = 0.1020 mol of acid: 0.15737 × 218.66 kJ + 0.03230 × 153.89 kJ = 34.41 kJ + 4.97 kJ
    expect(heatOf(displaced("Zn", { portion: "100 g" })).heatReleased.toNumber("kJ")).toBeCloseTo(39.38, 1);
  });

  it("counts all the acid where the metal is enough for it", () => {
    // 20 g × 10 % / 98.07 g/mol = 0.02039 mol: 34.41 kJ + 0.02039 × 153.89 kJ = 34.41 kJ + 3.14 kJ
    expect(heatOf(displaced("Zn", { portion: "20 g" })).heatReleased.toNumber("kJ")).toBeCloseTo(37.55, 1);
    // iron: 0.15737 × (89.1 + 64.77) kJ + 0.02039 × 89.1 kJ = 24.21 kJ + 1.82 kJ
    expect(heatOf(displaced("Fe", { portion: "20 g" })).heatReleased.toNumber("kJ")).toBeCloseTo(26.03, 1);
  });

  it("is that of the displacement alone where no acid is", () => {
    const { materials, ...rest } = displaced("Zn", {});
    expect(
      heatOf({ ...rest, materials: materials.filter(({ form }) => form !== "H2SO4") }).heatReleased.toNumber("kJ"),
    ).toBeCloseTo(34.41, 1);
  });

  it("stands in the step that adds the metal", () => {
    const adding = planPreparation(displaced("Zn", { portion: "100 g" })).steps.find(({ text }) =>
      text.startsWith("Add the 12.4 g of metal powder"),
    )!;
    // all in the vessel: 39.35 g of salt, 12.4 g of zinc, 143 g of water, 100 g of acid = 295 g; as water, 4.0 J/(g·K)
    // and a little under it: 39.4 kJ / 295 g / 4.0 J/(g·K) = 33 K (29 K without the acid)
    expect(adding.text).toMatch(/it warms by up to 33 K if added at once/);
  });
});

const acidIn = ({ dissolved }: Contents): number =>
  dissolved.find(({ formula }) => formula === "HCl")?.amount.toNumber("mol") ?? 0;

describe("acid that keeps a filtered liquor from turning basic", () => {
  const tin = planPreparation({
    equation: "Sn + 2 HCl + 2 H2O -> SnCl2·2H2O + H2",
    product: "SnCl2·2H2O",
    materials: [
      { name: "lead-free tin", form: "Sn", assay: "99.9 %", excess: "15 %" },
      { name: "muriatic acid", form: "HCl", strength: "31 %" },
    ],
    scale: { product: "50 g" },
  });
  const filtered = tin.steps.find(({ text }) => /2\.6 g more of the muriatic acid first/.test(text))!;

  // a twentieth of 52.1 g at 31 %: 2.605 g × 0.31 / 36.46 g/mol = 0.02215 mol
  it("is in the liquor from there on", () => {
    expect(acidIn(filtered.before)).toBe(0);
    expect(acidIn(filtered.after)).toBeCloseTo(0.02215, 4);
  });

  // 11.7 g of tin is 15 % over 0.2215 mol of 118.71 g/mol × 99.9 %: nothing but what is named goes in or out of the filter
  it("is in the mass of what is boiled down after", () => {
    const inIt = filtered.before.mass.toNumber("g");
    const residue = filtered.before.solids.reduce((all, { mass }) => all + mass.toNumber("g"), 0);
    expect(filtered.after.mass.toNumber("g")).toBeCloseTo(inIt - residue + 2.605, 2);
  });

  it("is in the waste of the mother liquor, and in the soda for it", () => {
    const liquor = tin.waste.vessels.find(({ vessel }) => vessel === "mother liquor")!;
    const mol = acidIn(liquor.contents);
    expect(mol).toBeGreaterThan(0.01);
    expect(mol).toBeLessThan(0.02215);
    // half as much of Na2CO3 (105.99 g/mol) and a tenth over: 0.0149 mol asks for 0.87 g
    expect(tin.waste.notes.join() + benchSheet(tin).toString()).toContain(
      `acid: from ${((mol / 2) * 105.99 * 1.1).toFixed(1)} g up to`,
    );
  });
});

describe("acid that keeps a liquor which is the product", () => {
  // 133.8 g of 20 % acid for 0.367 mol of zinc: a twentieth is 6.69 g, 0.0367 mol or 1.34 g of HCl in 163.7 g, 0.82 %
  it("is on its label", () => {
    const zinc = planPreparation({
      equation: "Zn + 2 HCl -> ZnCl2 + H2",
      product: "ZnCl2",
      materials: [
        { name: "zinc", form: "Zn", excess: "10 %" },
        { name: "hydrochloric acid", form: "HCl", strength: "20 %" },
      ],
      scale: { product: "50 g" },
    });
    expect(acidIn(zinc.steps.at(-1)!.after)).toBeCloseTo(0.0367, 3);
    expect(benchSheet(zinc).toString()).toContain("ZnCl₂, 31 % with 0.82 % HCl");
  });
});
