// Small faults of printed sheets that a bench chemist found on reading them; each held by what the trade does, with its source.
import { benchSheet, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";
import { PRUSSIAN_BLUE, SILVER_CHLORIDE } from "../data/common-requests";

const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

const IODINE: PlanRequest = {
  equation: "KI + NaClO + HCl -> I2 + NaCl + KCl + H2O",
  product: "I2",
  materials: [
    { name: "potassium iodide", form: "KI" },
    { name: "bleach", form: "NaClO", strength: "4 %" },
    { name: "hydrochloric acid", form: "HCl", strength: "10 %", excess: "10 %" },
  ],
  scale: { material: "potassium iodide", portion: "16.6 g" },
  acknowledge: ["hypochlorite-acid"],
};

describe("protection on the sheet", () => {
  // University of Melbourne, Reactions producing toxic gases: hypochlorite and acid give chlorine
  it("is a hood where what meets gives a poisonous gas, though the equation has none", () => {
    const text = sheet(IODINE);
    expect(text).toContain("[ ] fume hood");
    expect(text).not.toContain("window open or fan on");
    expect(text).toContain("Cl₂ may be given off, which is poisonous: under a hood that works, or not at all.");
  });

  // CLP, Annex VI: copper sulfate H318, H302, H410; soda H319. Gloves for H318 are common practice, no source: the hands carry it.
  it("has gloves where the skin or the sight is in danger, and says for each material what P280 means", () => {
    const vitriol = sheet({
      equation: "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
      product: "Cu2(OH)2CO3",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "soda", form: "Na2CO3" },
      ],
      scale: { material: "blue vitriol", portion: "50 g" },
    });
    expect(vitriol).toContain("[ ] gloves");
    expect(vitriol).toContain("Wear eye protection/face protection (P280): blue vitriol");
    expect(vitriol).not.toContain("Wear protective gloves");
  });
});

describe("the test of the last wash", () => {
  it("is a drop that the trade knows, each once, and no conductivity", () => {
    // common practice, no source: iodine for thiosulfate, starch and iodide for bleach
    const text = sheet(IODINE);
    expect(text).toContain("ClO⁻ (potassium iodide with starch: no blue)");
    expect(text).not.toContain("conductivity");
  });

  it("is left out where nothing tells beside the product: the washes count", () => {
    // lead chloride: 1 g in 100 g of water (CRC Handbook), which clouds silver nitrate and leaves 100 mg from 10 mL
    const text = sheet({
      equation: "Pb(NO3)2 + NaCl -> PbCl2 + NaNO3",
      product: "PbCl2",
      materials: [
        { name: "lead nitrate", form: "Pb(NO3)2" },
        { name: "table salt", form: "NaCl", excess: "10 %" },
      ],
      scale: { material: "lead nitrate", portion: "33.1 g" },
    });
    expect(text).toMatch(
      /Use all the water of the (\d+ washes|wash): no test tells Cl⁻ and NO₃⁻ beside what the product itself gives off\./,
    );
    expect(text).not.toContain("test of the last wash");
    expect(text).not.toContain("reagents for the test");
  });
});

describe("the head of the sheet", () => {
  it("says where nothing known tells whether the reaction goes, and what is missing, before anything is weighed", () => {
    // no solubility product of KFe[Fe(CN)6] stands in the tables
    const text = sheet({
      equation: "K3[Fe(CN)6] + FeSO4 -> KFe[Fe(CN)6] + K2SO4",
      product: "KFe[Fe(CN)6]",
      materials: [
        { name: "red prussiate", form: "K3[Fe(CN)6]" },
        { name: "green vitriol", form: "FeSO4·7H2O" },
      ],
      scale: { material: "red prussiate", portion: "3.29 g" },
    });
    const said = text.indexOf(
      "CHECK: Whether it goes is not known here, and the sheet takes the equation as it stands; missing: the solubility product of KFe[Fe(CN)₆]",
    );
    expect(said).toBeGreaterThan(0);
    expect(said).toBeLessThan(text.indexOf("Hazards and protection"));
  });
});

describe("one product on one sheet", () => {
  it("is spelled in one way, that of the person, whatever the tables write", () => {
    const acetate = sheet({
      equation: "Na2CO3 + CH3COOH -> CH3COONa + CO2 + H2O",
      product: "CH3COONa·3H2O",
      materials: [
        { name: "washing soda", form: "Na2CO3·10H2O" },
        { name: "vinegar essence", form: "CH3COOH", strength: "25 %", excess: "3 %" },
      ],
      scale: { material: "washing soda", portion: "28.6 g" },
    });
    // the source of the solubility names the row of its table
    expect(acetate.replaceAll("solubility of NaCH₃COO:", "")).not.toContain("NaCH₃COO");
    const struvite = sheet({
      equation: "MgSO4 + (NH4)2HPO4 + NH3 + H2O -> MgNH4PO4·6H2O + (NH4)2SO4",
      product: "MgNH4PO4·6H2O",
      materials: [
        { name: "Epsom salt", form: "MgSO4·7H2O" },
        { name: "ammonium phosphate", form: "(NH4)2HPO4" },
        { name: "ammonia", form: "NH3", strength: "10 %", excess: "20 %" },
      ],
      scale: { material: "Epsom salt", portion: "24.65 g" },
    });
    expect(struvite).not.toContain("NH₄MgPO₄");
    // was 88.4 %, MgNH₄PO₄, which does not exist: ammonia goes with the water, 222.55 / (2 × 155.33) = 71.6 %
    expect(struvite).toMatch(/MgNH₄PO₄·H₂O; a sample .* leaves 71.6 %, Mg₂P₂O₇/);
  });

  it("is not said to hold ammonia where it has none", () => {
    expect(
      sheet({
        equation: "MgSO4 + Na2CO3 + H2O -> MgCO3·3H2O + Na2SO4",
        product: "MgCO3·3H2O",
        materials: [
          { name: "Epsom salt", form: "MgSO4·7H2O" },
          { name: "soda", form: "Na2CO3" },
        ],
        scale: { material: "Epsom salt", portion: "24.6 g" },
      }),
    ).toContain("(it contains water that warm air may remove: dry in air)");
  });
});

describe("washing", () => {
  // Talbot, Quantitative Chemical Analysis: slimes form colloidal solutions with pure water, and are washed with volatile salts
  it("of a slime says what to do when it goes colloidal; a jelly of silica is washed in water", () => {
    expect(sheet(PRUSSIAN_BLUE)).toContain("put 1 g of ammonium acetate into each 100 mL of the water");
    const silica = sheet({
      equation: "Na2SiO3 + HCl -> SiO2 + NaCl + H2O",
      product: "SiO2",
      materials: [
        { name: "water glass", form: "Na2SiO3", strength: "36 %" },
        { name: "hydrochloric acid", form: "HCl", strength: "10 %", excess: "10 %" },
      ],
      scale: { product: "6 g" },
    });
    expect(silica).not.toContain("colloidal");
    // most of the salt is in the washings, in litres of water
    expect(silica).not.toContain("may be worth keeping");
  });

  // Talbot, Quantitative Chemical Analysis: magnesium ammonium phosphate stands some hours, and is washed with dilute ammonia
  it("of struvite waits an hour in the cold, and takes dilute ammonia", () => {
    const text = sheet({
      equation: "MgSO4 + (NH4)2HPO4 + NH3 + H2O -> MgNH4PO4·6H2O + (NH4)2SO4",
      product: "MgNH4PO4·6H2O",
      materials: [
        { name: "Epsom salt", form: "MgSO4·7H2O" },
        { name: "ammonium phosphate", form: "(NH4)2HPO4" },
        { name: "ammonia", form: "NH3", strength: "10 %", excess: "20 %" },
      ],
      scale: { material: "Epsom salt", portion: "24.65 g" },
    });
    expect(text).toContain("Let it stand cold an hour or more, or overnight");
    expect(text).toContain("(better: 2.5 % ammonia, cold");
  });

  it("of copper(I) iodide needs no shelter from air, that of copper(I) chloride does", () => {
    // common practice, no source: CuCl turns green in damp air, CuI keeps
    const cuprous = (anion: string) =>
      sheet({
        equation: `CuSO4 + K${anion} + Na2SO3 + H2O -> Cu${anion} + K2SO4 + Na2SO4 + H2SO4`,
        product: `Cu${anion}`,
        materials: [
          { name: "blue vitriol", form: "CuSO4·5H2O" },
          { name: "potassium salt", form: `K${anion}` },
          { name: "sodium sulfite", form: "Na2SO3" },
        ],
        scale: { material: "blue vitriol", portion: "25 g" },
      });
    expect(cuprous("I")).not.toContain("no air is sucked through it");
    expect(cuprous("Cl")).toContain("no air is sucked through it");
  });

  it("compares what a balance would print in the same words in milligrams", () => {
    const silver = sheet(SILVER_CHLORIDE);
    // 0.5 % of 3.58 g of silver chloride is 18 mg
    expect(silver).toMatch(/\d+ mg of NaCl and NaNO₃ stay in it, and 18 mg may\./);
  });

  it("of lead iodide says nothing of boiling its liquor down for saltpetre", () => {
    const iodide = sheet({
      equation: "Pb(NO3)2 + KI -> PbI2 + KNO3",
      product: "PbI2",
      materials: [
        { name: "lead nitrate", form: "Pb(NO3)2" },
        { name: "potassium iodide", form: "KI" },
      ],
      scale: { material: "lead nitrate", portion: "33.1 g" },
    });
    expect(iodide).not.toContain("may be worth keeping");
  });
});

describe("a gas led into water", () => {
  // 2 NO2 + H2O -> HNO3 + HNO2: 0.1 mol of HNO3 is 6.30 g; common practice, no source: nothing is dried where the liquor is used
  it("gives a liquor, and no dry product is expected", () => {
    const text = sheet({
      equation: "2 NO2 + H2O -> HNO3 + HNO2",
      product: "HNO3",
      materials: [{ name: "brown gas", form: "NO2" }],
      scale: { product: "0.1 mol" },
    });
    expect(text).toContain("Liquor that is kept 6.3 g HNO₃ (by theory; its strength is not known)");
    expect(text).not.toContain("Expected dry product");
  });
});

describe("what is left in a vessel", () => {
  it("names a substance once, dissolved and solid together", () => {
    const sheet = benchSheet(
      planPreparation({
        equation: "(NH4)2SO4 + 2 NaCl -> 2 NH4Cl + Na2SO4",
        product: "NH4Cl",
        materials: [
          { name: "sulfate of ammonia", form: "(NH4)2SO4", assay: "99 %" },
          { name: "pickling salt", form: "NaCl", assay: "99.5 %" },
        ],
        scale: { product: "53.5 g" },
      }),
    );
    const residue = /Residue on the filter: [^-]*/.exec(sheet)![0];
    expect(residue.match(/Na₂SO₄/g)).toHaveLength(1);
    // 37.2 g less 3.6 g that its rinse dissolves, and 11.2 g, on the filter; 2.4 g and 0.6 g in the liquor that they hold
    expect(residue).toMatch(/47\.[678] g of Na₂SO₄/);
  });
});
