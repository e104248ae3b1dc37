// Solids and jars that a verdict must consider. Masses by hand from molar masses (IUPAC weights, two decimals); what forms is common
// practice and from memory: brochantite and atacamite from copper liquors, Prussian blue with 14 waters, lime that slakes.
import { evaluateRun, type Finding, type Observations, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const clean = { washes: 6, tests: { filtrate: "clear", lastWash: "clear" } } as const;
type Mass = "1 g";
const constant = (grams: number): Mass[] => [grams + 0.01, grams, grams].map((one) => `${one.toFixed(2)} g` as Mass);

function firstOf(
  equation: string,
  product: string,
  materials: PlanRequest["materials"],
  observations: Observations,
  portion = "50.00 g",
): Finding {
  const scale = { material: materials[0]!.name, portion: portion as Mass };
  return evaluateRun(planPreparation({ equation, product, materials, scale }), observations).verdict[0]!;
}
const said = ({ code, text }: Finding): string => `${code}: ${text}`;

const vitriol = { name: "blue vitriol", form: "CuSO4·5H2O" };
const lye = { name: "lye", form: "NaOH" };

describe("a hydroxide", () => {
  it("may be a basic sulfate: 50.00 g of vitriol, 0.20026 mol, is 22.64 g of brochantite and 19.54 g of hydroxide", () => {
    const first = firstOf("CuSO4 + NaOH -> Cu(OH)2 + Na2SO4", "Cu(OH)2", [vitriol, lye], {
      dried: constant(0.97 * 22.64),
      ...clean,
    });
    expect(said(first)).toMatch(/^other-formula-fits: .* Cu₄\(OH\)₆SO₄/);
  });

  it("may be a basic chloride: 50.00 g of CuCl2·2H2O, 0.2933 mol, is 31.32 g of atacamite and 28.61 g of hydroxide", () => {
    const salt = { name: "copper chloride", form: "CuCl2·2H2O" };
    const first = firstOf("CuCl2 + NaOH -> Cu(OH)2 + NaCl", "Cu(OH)2", [salt, lye], {
      dried: constant(0.97 * 31.32),
      ...clean,
    });
    expect(said(first)).toMatch(/^other-formula-fits: .* Cu₂\(OH\)₃Cl/);
  });

  it("that brings no chloride is no basic chloride", () => {
    const plan = planPreparation({
      equation: "CuSO4 + NaOH -> Cu(OH)2 + Na2SO4",
      product: "Cu(OH)2",
      materials: [vitriol, lye],
      scale: { material: "blue vitriol", portion: "50.00 g" },
    });
    expect(plan.candidates.map(({ formula }) => formula)).toEqual(["Cu(OH)₂", "Cu₄(OH)₆SO₄"]);
  });

  it("that is a gel is at constant mass with water in it: 54.00 g of FeCl3·6H2O is 21.35 g, and 8 % over", () => {
    const salt = { name: "ferric chloride", form: "FeCl3·6H2O" };
    const first = firstOf(
      "FeCl3 + NaOH -> Fe(OH)3 + NaCl",
      "Fe(OH)3",
      [salt, { ...lye, excess: "5 %" }],
      { dried: constant(1.08 * 21.35), ...clean },
      "54.00 g",
    );
    expect(said(first)).toMatch(/^wet: 1\.7 g of water .*a gel keeps so much at constant mass/);
  });
});

describe("what no formula fixes", () => {
  // 54.00 g of FeCl3·6H2O is 42.92 g of Fe4[Fe(CN)6]3, 859.23 g/mol; with 14 H2O it is 29.4 % more
  it("is the water of Prussian blue as it dries in air", () => {
    const first = firstOf(
      "FeCl3 + K4[Fe(CN)6] -> Fe4[Fe(CN)6]3 + KCl",
      "Fe4[Fe(CN)6]3",
      [
        { name: "ferric chloride", form: "FeCl3·6H2O" },
        { name: "prussiate", form: "K4[Fe(CN)6]·3H2O", excess: "5 %" },
      ],
      { dried: constant(0.97 * 55.51), ...clean },
      "54.00 g",
    );
    expect(said(first)).toMatch(/^other-hydrate-fits: .* with 10 to 16 H₂O that no formula fixes/);
  });
});

describe("what comes along", () => {
  it("with saltpetre is the salt of its liquor: 85.00 g of NaNO3 is 101.1 g of KNO3, and 58.4 g of NaCl beside it", () => {
    const first = firstOf(
      "NaNO3 + KCl -> KNO3 + NaCl",
      "KNO3",
      [
        { name: "saltpetre", form: "NaNO3" },
        { name: "potash", form: "KCl" },
      ],
      { dried: constant(107.2) },
      "85.00 g",
    );
    expect(said(first)).toMatch(/^unwashed: 6\.1 g of NaCl with the crystals .* 10 % of what the liquor contains/);
  });

  it("with copper hydroxide from lime is gypsum: 19.54 g with 34.48 g", () => {
    const first = firstOf(
      "CuSO4 + Ca(OH)2 + 2 H2O -> Cu(OH)2 + CaSO4·2H2O",
      "Cu(OH)2",
      [vitriol, { name: "lime", form: "Ca(OH)2" }],
      { dried: constant(0.97 * 54.02), ...clean },
    );
    expect(said(first)).toMatch(/^second-solid: .* CaSO₄·2H₂O precipitates with the product/);
  });
});

describe("lime that stood open", () => {
  // 50.00 g of chalk is 28.01 g of lime, 37.02 g slaked; fired through, a sample loses only its water, 1 - 28.01/32.5 = 13.8 %
  it("is slaked in part or in all where titration and fire say so, and not fired through otherwise", () => {
    const chalk = [{ name: "chalk", form: "CaCO3" }];
    const equation = "CaCO3 -> CaO + CO2";
    const { code } = firstOf(equation, "CaO", chalk, { dried: constant(32.5) });
    expect(code).toBe("unreacted");
    const verdict = evaluateRun(
      planPreparation({ equation, product: "CaO", materials: chalk, scale: { material: "chalk", portion: "50.00 g" } }),
      { dried: constant(36.7) },
    ).verdict;
    expect(verdict.map(said)).toContainEqual(expect.stringMatching(/^other-formula-fits: 36\.7 g is .* Ca\(OH\)₂/));
  });
});

describe("a jar of another hydrate in a crystallisation", () => {
  const mohr = (form: string, excess: "5 %" | "80 %", dried: number): readonly Finding[] =>
    evaluateRun(
      planPreparation({
        equation: "FeSO4 + (NH4)2SO4 + H2O -> (NH4)2Fe(SO4)2·6H2O",
        product: "(NH4)2Fe(SO4)2·6H2O",
        materials: [
          { name: "copperas", form },
          { name: "ammonium sulfate", form: "(NH4)2SO4", excess },
        ],
        scale: { material: "copperas", portion: "27.80 g" },
      }),
      { dried: constant(dried) },
    ).verdict;

  // 27.80 g as heptahydrate is 0.1 mol, 39.2 g of Mohr's salt; as monohydrate 0.1636 mol, 64.2 g, of which the liquor keeps 7.3 g
  it("is found with what the liquor keeps counted", () => {
    expect(mohr("FeSO4·7H2O", "80 %", 56.9)[0]!.code).toBe("hydrate-mix-up");
  });

  it("is listed, but not named first by accident, where the liquor may keep so much", () => {
    // 45.1 g crystallise and the rinse takes 2.4 g of them with their water: 42.8 g, less a tenth of 64.2 g, is 36.3 g at least
    const found = mohr("FeSO4·H2O", "5 %", 27.8);
    expect(found[0]!.code).not.toBe("hydrate-mix-up");
    expect(found.some(({ code, text }) => code === "hydrate-mix-up" && text.includes("FeSO₄·7H₂O"))).toBe(true);
  });
});
