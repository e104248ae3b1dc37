// What readers of printed sheets found, mended by rule: heat of an ammine and of crystals that come as they form, tests that the
// product itself hides, flux and silica in the kiln. Sums beside each check are worked out by hand.
import { describe, expect, it } from "vitest";
import { type PlanRequest, planPreparation } from "../../src/preparation";
import { benchSheet } from "../../src/sheet";

const said = (request: PlanRequest): string =>
  benchSheet(planPreparation(request), { format: "text" }).replace(/\s+/g, " ");

const ammine: PlanRequest = {
  equation: "CuSO4·5H2O + 4 NH3 -> [Cu(NH3)4]SO4·H2O + 4 H2O",
  product: "[Cu(NH3)4]SO4·H2O",
  materials: [
    { name: "blue stone", form: "CuSO4·5H2O", assay: "99.0 %" },
    { name: "ammonia water", form: "NH3", strength: "25 %", excess: "50 %" },
    { name: "spirit", form: "C2H5OH", strength: "94 %", aside: true, portion: "75 mL" },
  ],
  scale: { material: "blue stone", portion: "25.0 g" },
};

describe("an ammine", () => {
  // NBS tables of 1982: -348.5 - (64.77 + 4 (-80.29)) = -92.1 kJ/mol; 0.09913 mol in 104 g at 4.0 J/(g K): 22 K
  it("has the heat of its ion in the liquor where no figure of its crystals is known", () => {
    const { heat } = planPreparation(ammine);
    if (!("rise" in heat)) throw new Error(heat.missing);
    expect(heat.enthalpy.toNumber("kJ/mol")).toBeCloseTo(-92.1, 1);
    expect(heat.rise.rise.toNumber("ΔK")).toBeCloseTo((92.1 * 0.09913) / (0.104 * 4.0), 0);
  });

  // ammonia of 25 % boils at 38 °C (common practice, no source): the salt is cold before it comes, and a bath keeps it so
  it("is kept cool while the ammonia comes", () => {
    const text = said(ammine);
    expect(text).toContain("let it cool to 25 °C");
    expect(text).toContain(
      "it warms by up to 22 K if added at once: a little at a time, in a bath of cold water, never above 40 °C",
    );
  });

  it("says what is missing of the usual alcohol", () => {
    // 104 g less 24.4 g of crystals are 79 mL of liquor over them (was 100 mL, the crystals counted as liquor): 75 mL is nearly as much
    expect(said(ammine)).toMatch(/As much alcohol as liquor, 79 mL, precipitates most of it \(common practice\)\. /);
    const [blue, ammonia, spirit] = ammine.materials;
    const little = { ...ammine, materials: [blue!, ammonia!, { ...spirit!, portion: "50 mL" as const }] };
    expect(said(little)).toMatch(
      /As much alcohol as liquor, 79 mL, .* of the 50 mL that is planned it keeps more: another (29|30) mL/,
    );
  });
});

describe("a salt pair whose crystals come while the salt dissolves", () => {
  // 25.4 kJ for 1.0216 mol of NH4HCO3, less 18.7 kJ/mol for the 0.794 mol of NaHCO3 that come: 10.6 kJ in 342 g at 4.0 J/(g K)
  it("cools by what dissolves less what comes", () => {
    const { heat } = planPreparation({
      equation: "NaCl + NH4HCO3 -> NaHCO3 + NH4Cl",
      product: "NaHCO3",
      materials: [
        { name: "pickling salt", form: "NaCl", assay: "99.5 %" },
        { name: "baker's ammonia", form: "NH4HCO3", assay: "98.5 %" },
      ],
      scale: { material: "pickling salt", portion: "60.0 g" },
    });
    if (!("rise" in heat)) throw new Error(heat.missing);
    const kelvin = heat.rise.rise.toNumber("ΔK");
    expect(Math.abs(kelvin + 10.6 / (0.342 * 4.0))).toBeLessThan(0.7);
  });
});

describe("copper(I) chloride that acid washes", () => {
  // copper(I) in chloride takes iodine's colour: 0.41 V of Cu2+/CuCl2- against 0.54 V of iodine (handbook potentials, from memory)
  it("is not tested for sulfite by iodine", () => {
    const text = said({
      equation: "2 CuSO4·5H2O + 2 NaCl + Na2SO3 -> 2 CuCl + 2 Na2SO4 + H2SO4 + 9 H2O",
      product: "CuCl",
      materials: [
        { name: "blue stone", form: "CuSO4·5H2O", assay: "99.0 %" },
        { name: "pickling salt", form: "NaCl", assay: "99.5 %", excess: "10 %" },
        { name: "sodium sulfite", form: "Na2SO3", assay: "97.0 %", excess: "15 %" },
      ],
      scale: { material: "blue stone", portion: "50.0 g" },
    });
    expect(text).not.toContain("iodine");
    expect(text).toMatch(/no test tells .*SO₃²⁻/);
  });
});

describe("a charge with flux and silica", () => {
  const blue: PlanRequest = {
    equation: "Cu2CO3(OH)2 + 2 CaCO3 + 8 SiO2 -> 2 CaCuSi4O10 + 3 CO2 + H2O",
    product: "CaCuSi4O10",
    materials: [
      { name: "copper carbonate", form: "Cu2CO3(OH)2", assay: "96.0 %" },
      { name: "whiting", form: "CaCO3", assay: "98.0 %" },
      { name: "flint", form: "SiO2", assay: "99.0 %", excess: "5 %" },
      { name: "soda ash", form: "Na2CO3", assay: "99.0 %", aside: true, portion: "5.13 g", note: "flux" },
    ],
    scale: { material: "copper carbonate", portion: "25.0 g" },
  };

  // 24.0 g of malachite are 0.10855 mol: 0.3256 mol of CO2; the silica over takes the soda: 2.66 g or 0.0442 mol more, 8.9 L in all
  it("gives off the carbon dioxide of the soda as far as silica is over", () => {
    const gas = planPreparation(blue).gas.find(({ formula }) => formula.toString().includes("CO"));
    expect(gas?.volume.toNumber("L")).toBeCloseTo((0.3256 + 0.0442) * 24.055, 1);
    expect(said(blue)).toContain("of Na₂SiO₃, 87.0 g in all");
  });

  it("is not tested for lime by its alkali, for the flux is alkaline", () => {
    expect(said(blue)).not.toContain("pH 11");
    expect(said({ ...blue, materials: blue.materials.filter(({ aside }) => aside !== true) })).toContain(
      "pH 11 and more",
    );
  });

  // 900 °C, then 10 to 100 hours at 800 °C: Pigments through the Ages (webexhibits.org)
  it("is kept as long as the blue takes, and ground in what closes", () => {
    expect(said(blue)).toContain("for an hour, and then at 800 °C for 10 hours or more");
    expect(said(blue)).toContain("[ ] jar or mill that closes, for grinding");
  });
});
