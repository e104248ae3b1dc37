// Every rule with a pair of real materials that must set it off, and pairs that must stay silent. The rules stand in
// src/substance/data/incompatibilities.ts with their sources (printed lists where read, else memory); the pairs are our own.
import { describe, expect, it } from "vitest";
import { type Circumstance, cautions } from "../../src/substance";
import { INCOMPATIBILITIES } from "../../src/substance/data/incompatibilities";

const SETS: Record<string, readonly string[]> = {
  "hypochlorite-acid": ["bleach", "vinegar"],
  "hypochlorite-ammonia": ["bleach", "household ammonia"],
  "hypochlorite-amine": ["NaClO", "urea"],
  "hypochlorite-solvent": ["NaClO", "acetone"],
  "hypochlorite-peroxide": ["NaClO", "H2O2"],
  "hypochlorite-catalyst": ["NaClO", "NiSO4·6H2O"],
  "hypochlorite-reducer": ["NaClO", "Na2S2O3·5H2O"],
  "calcium-hypochlorite-acid": ["pool shock", "HCl"],
  "calcium-hypochlorite-organic": ["Ca(ClO)2", "C12H22O11"],
  "calcium-hypochlorite-isocyanurate": ["Ca(ClO)2", "C3N3O3Cl3"],
  "calcium-hypochlorite-carbon": ["Ca(ClO)2", "activated carbon"],
  "isocyanurate-ammonia": ["C3N3O3Cl3", "NH3"],
  "isocyanurate-acid": ["C3N3O3Cl2Na·2H2O", "NaHSO4"],
  "pool-products": ["Ca(ClO)2", "C3N3O3Cl2Na·2H2O"],
  "chlorite-acid": ["NaClO2", "citric acid"],
  "chlorate-fuel": ["KClO3", "S"],
  "chlorate-acid": ["KClO3", "H2SO4"],
  "chlorate-ammonium": ["NaClO3", "(NH4)2SO4"],
  "perchlorate-fuel": ["KClO4", "Al"],
  "persulfate-fuel": ["Na2S2O8", "Na2SO3"],
  "nitrate-fuel": ["saltpetre", "sulfur"],
  "ammonium-nitrate-fuel": ["NH4NO3", "Zn"],
  "nitrite-acid": ["NaNO2", "HCl"],
  "nitrite-ammonium": ["NaNO2", "NH4Cl"],
  "nitrite-amine": ["KNO2", "CO(NH2)2"],
  "permanganate-hydrochloric": ["KMnO4", "HCl"],
  "permanganate-sulfuric": ["KMnO4", "H2SO4"],
  "permanganate-organic": ["KMnO4", "C3H8O3"],
  "permanganate-peroxide": ["KMnO4", "H2O2"],
  "permanganate-fuel": ["KMnO4", "S"],
  "peroxide-ketone": ["H2O2", "acetone"],
  "peroxide-catalyst": ["H2O2", "MnO2"],
  "peroxide-organic": ["H2O2", "ethanol"],
  "peroxide-base": ["H2O2", "NaOH"],
  "percarbonate-fuel": ["oxygen bleach", "citric acid"],
  "acid-cyanide": ["vinegar", "KCN"],
  "acid-cyanido-complex": ["H2SO4", "K4[Fe(CN)6]·3H2O"],
  "acid-sulfide": ["HCl", "FeS"],
  "acid-polysulfide": ["HCl", "lime sulfur"],
  "acid-sulfite": ["citric acid", "metabisulfite"],
  "acid-thiosulfate": ["vinegar", "Na2S2O3·5H2O"],
  "acid-azide": ["HCl", "NaN3"],
  "acid-thiocyanate": ["H2SO4", "KSCN"],
  "acid-carbonate": ["vinegar", "baking soda"],
  "acid-fluoride": ["HCl", "NaF"],
  "acid-arsenic-metal": ["HCl", "As2O3", "Zn"],
  "acid-phosphide": ["HCl", "CaC2"],
  "acid-metal": ["vinegar", "magnesium ribbon"],
  "acid-base": ["H2SO4", "NaOH"],
  "water-sulfuric": ["battery acid", "water"],
  "water-lye": ["lye", "H2O"],
  "water-quicklime": ["quicklime", "H2O"],
  "water-carbide": ["calcium carbide", "H2O"],
  "water-alkali-metal": ["Na", "H2O"],
  "water-hydrolysing": ["SnCl4", "H2O"],
  "fire-magnesium": ["Mg", "CO2"],
  "base-aluminium": ["NaOH", "aluminium foil"],
  "base-zinc-tin": ["KOH", "Zn"],
  "base-ammonium": ["NaOH", "NH4Cl"],
  "lime-ammonium": ["hydrated lime", "ammonium sulfate"],
  "lye-chloroform-acetone": ["NaOH", "CHCl3", "CH3COCH3"],
  "silver-ammonia": ["AgNO3", "NH3"],
  "silver-oxide-ammonia": ["Ag2O", "NH3"],
  "silver-ethanol-nitric": ["AgNO3", "ethanol", "nitric acid"],
  "silver-oxalate": ["AgNO3", "Na2C2O4"],
  "silver-acetylene": ["Ag", "C2H2"],
  "copper-acetylene": ["copper pipe", "C2H2"],
  "mercury-acetylene-ammonia": ["Hg", "NH3"],
  "iodine-ammonia": ["iodine", "ammonia"],
  "iodine-metal": ["I2", "Zn"],
  "halogen-ammonia": ["Br2", "NH3"],
  "chlorine-fuel": ["Cl2", "H2"],
  "nitric-organic": ["HNO3", "ethanol"],
  "nitric-metal": ["HNO3", "copper wire"],
  "nitric-sulfide": ["HNO3", "Na2S"],
  "nitric-hydrochloric": ["HNO3", "HCl"],
  "nitric-hydrochloric-organic": ["HNO3", "HCl", "acetone"],
  "sulfuric-oxidiser": ["H2SO4", "KMnO4"],
  "sulfuric-halide": ["H2SO4", "NaCl"],
  "sulfuric-nitrate": ["H2SO4", "KNO3"],
  "sulfuric-oxalate": ["H2SO4", "formic acid"],
  "sulfuric-sugar": ["H2SO4", "sucrose"],
  "chromate-organic": ["K2Cr2O7", "ethanol"],
  "chromate-acetic": ["CrO3", "acetic acid"],
  "chromate-chloride-sulfuric": ["K2Cr2O7", "NaCl", "H2SO4"],
  "chromium-oxidiser": ["chrome alum", "H2O2"],
  "chromium-fired": ["Cr2O3", "KNO3"],
  "lead-acid": ["Pb", "vinegar"],
  "mercury-cadmium": ["CdSO4"],
  "cadmium-acid": ["Cd", "HCl"],
  "azide-metal": ["NaN3", "CuSO4·5H2O"],
  thermite: ["Fe2O3", "Al"],
  "magnesium-oxidiser": ["Mg", "KNO3"],
  "metal-sulfur": ["Zn", "S"],
  "zinc-ammonium-nitrate": ["Zn", "NH4NO3"],
  "calcium-hypochlorite-ammonium": ["Ca(ClO)2", "NH4Cl"],
  "calcium-hypochlorite-nitromethane": ["Ca(ClO)2", "C2H6O2"],
  "hydrogen-oxygen": ["H2", "O2"],
  "sulfur-dioxide-oxidiser": ["SO2", "H2O2"],
  "sulfite-chlorate": ["Na2SO3", "KClO3"],
  "oxalic-silver-mercury": ["oxalic acid", "AgNO3"],
  "oxalic-permanganate": ["H2C2O4·2H2O", "KMnO4"],
  "ammonium-oxalate-hypochlorite": ["(NH4)2C2O4·H2O", "NaClO"],
  "closed-vessel": ["vinegar", "baking soda"],
  kitchen: ["CuSO4·5H2O"],
};

/** Pairs a bench meets every day; the second column of each may be dissolved in water beside the first. */
const HARMLESS: readonly (readonly string[])[] = [
  ["zinc sulfate", "washing soda"],
  ["Epsom salt", "washing soda"],
  ["CuSO4·5H2O", "Na2CO3"],
  ["CaCl2·2H2O", "NaHCO3"],
  ["FeSO4·7H2O", "(NH4)2SO4"],
  ["KAl(SO4)2·12H2O", "H2O"],
  ["NaCl", "KCl"],
  ["Na2SO4", "BaCO3"],
  ["CaSO4·2H2O", "H2O"],
  ["sugar", "salt"],
  ["citric acid", "sodium citrate"],
  ["MgO", "H2O"],
  ["Zn(CH3COO)2·2H2O", "NaCH3COO"],
  ["ZnO", "Fe2O3"],
];

const CIRCUMSTANCES: readonly Circumstance[] = ["closed vessel", "kitchen"];

describe("incompatibilities", () => {
  it("has a set of materials for each rule", () => {
    expect(Object.keys(SETS).sort()).toEqual(INCOMPATIBILITIES.map((row) => row.code).sort());
    expect(INCOMPATIBILITIES.length).toBe(105);
  });

  it.each(Object.entries(SETS))("fires %s", (code, materials) => {
    const fired = cautions(materials, { circumstances: CIRCUMSTANCES }).incompatibilities;
    expect(fired.map((one) => one.code)).toContain(code);
  });

  it.each(HARMLESS)("stays silent about %s with %s", (...materials) => {
    expect(cautions(materials).incompatibilities).toEqual([]);
  });

  it("does not call crystal water water", () => {
    expect(cautions(["CaO", "CuSO4·5H2O"]).incompatibilities).toEqual([]);
  });

  it("leaves strong-acid rules out for a dilute acid, and keeps those that hold at any strength", () => {
    const dilute = cautions([{ material: "H2SO4", strength: "5 %" }, "NaCl", "NaHCO3"]).incompatibilities;
    expect(dilute.map((one) => one.code)).toEqual(["acid-carbonate"]);
    const strong = cautions([{ material: "H2SO4", strength: "96 %" }, "NaCl"]).incompatibilities;
    expect(strong.map((one) => one.code)).toEqual(["sulfuric-halide"]);
  });

  it("blocks only what is forbidden as it stands", () => {
    const bleach = cautions(["bleach", "vinegar"]).incompatibilities.find((one) => one.code === "hypochlorite-acid");
    expect(bleach?.blocking).toBe(true);
    expect(bleach?.products).toEqual(["Cl2"]);
    const acid = cautions(["vinegar", "baking soda"]).incompatibilities.find((one) => one.code === "acid-carbonate");
    expect(acid?.blocking).toBe(false);
    const nitrate = cautions(["KNO3", "S"]).incompatibilities.find((one) => one.code === "nitrate-fuel");
    expect(nitrate?.severity).toBe("forbid");
    expect(nitrate?.blocking).toBe(false);
  });

  it("says bursts only where the vessel is closed", () => {
    expect(cautions(["vinegar", "baking soda"]).incompatibilities.map((one) => one.code)).not.toContain(
      "closed-vessel",
    );
  });
});
