// Thirty-five preparations as a teacher writes them down, from printed school and undergraduate preparations (from memory), with the
// theory worked out by hand from atomic weights to four figures. Equations stand as they are usually written: without the water of the
// crystals. Names of materials are invented.
import type { PlanRequest } from "../../src/preparation";

export interface FreshPreparation {
  readonly id: string;
  /** Theory, in grams. */
  readonly grams: number;
  readonly request: PlanRequest;
}

export const FRESH_PREPARATIONS: readonly FreshPreparation[] = [
  // 0.1000 mol × 147.63 g/mol
  {
    id: "1 SrCO3",
    grams: 14.76,
    request: {
      equation: "Sr(NO3)2 + Na2CO3 -> SrCO3 + NaNO3",
      product: "SrCO3",
      materials: [
        { name: "strontium nitrate", form: "Sr(NO3)2" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "strontium nitrate", portion: "21.16 g" },
    },
  },
  // 0.1000 mol × 92.71 g/mol
  {
    id: "2 Ni(OH)2",
    grams: 9.27,
    request: {
      equation: "NiSO4 + NaOH -> Ni(OH)2 + Na2SO4",
      product: "Ni(OH)2",
      materials: [
        { name: "nickel sulfate", form: "NiSO4·6H2O" },
        { name: "lye", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "nickel sulfate", portion: "26.28 g" },
    },
  },
  // 0.00999 mol × 461.0 g/mol
  {
    id: "3 PbI2",
    grams: 4.607,
    request: {
      equation: "Pb(NO3)2 + KI -> PbI2 + KNO3",
      product: "PbI2",
      materials: [
        { name: "lead nitrate", form: "Pb(NO3)2" },
        { name: "potassium iodide", form: "KI" },
      ],
      scale: { material: "lead nitrate", portion: "3.31 g" },
    },
  },
  // 0.1000 mol × 322.2 g/mol
  {
    id: "4 Na2SO4·10H2O",
    grams: 32.22,
    request: {
      equation: "NaOH + H2SO4 -> Na2SO4·10H2O",
      product: "Na2SO4·10H2O",
      materials: [
        { name: "sodium hydroxide", form: "NaOH" },
        { name: "dilute sulfuric acid", form: "H2SO4", strength: "1 mol/L" },
      ],
      scale: { material: "sodium hydroxide", portion: "8.0 g" },
    },
  },
  // 0.1 mol × 132.1 g/mol
  {
    id: "5 (NH4)2SO4",
    grams: 13.21,
    request: {
      equation: "NH3 + H2SO4 -> (NH4)2SO4",
      product: "(NH4)2SO4",
      materials: [
        { name: "dilute ammonia", form: "NH3", strength: "2 mol/L", excess: "5 %" },
        { name: "dilute sulfuric acid", form: "H2SO4", strength: "1 mol/L" },
      ],
      scale: { material: "dilute sulfuric acid", portion: "100 mL" },
    },
  },
  // 0.1 mol of acid × 278.0 g/mol
  {
    id: "6 FeSO4·7H2O",
    grams: 27.8,
    request: {
      equation: "Fe + H2SO4 -> FeSO4·7H2O + H2",
      product: "FeSO4·7H2O",
      materials: [
        { name: "iron filings", form: "Fe", excess: "10 %" },
        { name: "dilute sulfuric acid", form: "H2SO4", strength: "2 mol/L" },
      ],
      scale: { material: "dilute sulfuric acid", portion: "50 mL" },
    },
  },
  // 0.0999 mol × 246.5 g/mol
  {
    id: "7 MgSO4·7H2O",
    grams: 24.64,
    request: {
      equation: "Mg + H2SO4 -> MgSO4·7H2O + H2",
      product: "MgSO4·7H2O",
      materials: [
        { name: "magnesium ribbon", form: "Mg" },
        { name: "dilute sulfuric acid", form: "H2SO4", strength: "1 mol/L" },
      ],
      scale: { material: "magnesium ribbon", portion: "2.43 g" },
    },
  },
  // 0.1 mol × 297.5 g/mol
  {
    id: "8 Zn(NO3)2·6H2O",
    grams: 29.75,
    request: {
      equation: "ZnO + HNO3 -> Zn(NO3)2·6H2O",
      product: "Zn(NO3)2·6H2O",
      materials: [
        { name: "zinc oxide", form: "ZnO", excess: "5 %" },
        { name: "dilute nitric acid", form: "HNO3", strength: "2 mol/L" },
      ],
      scale: { material: "dilute nitric acid", portion: "100 mL" },
    },
  },
  // 0.1 mol × 280.9 g/mol
  {
    id: "9 NiSO4·7H2O",
    grams: 28.09,
    request: {
      equation: "NiCO3 + H2SO4 -> NiSO4·7H2O + CO2",
      product: "NiSO4·7H2O",
      materials: [
        { name: "nickel carbonate", form: "NiCO3" },
        { name: "dilute sulfuric acid", form: "H2SO4", strength: "1 mol/L" },
      ],
      scale: { material: "dilute sulfuric acid", portion: "100 mL" },
    },
  },
  // 0.1 mol × 237.9 g/mol
  {
    id: "10 CoCl2·6H2O",
    grams: 23.79,
    request: {
      equation: "CoCO3 + HCl -> CoCl2·6H2O + CO2",
      product: "CoCl2·6H2O",
      materials: [
        { name: "cobalt carbonate", form: "CoCO3", excess: "3 %" },
        { name: "hydrochloric acid", form: "HCl", strength: "2 mol/L" },
      ],
      scale: { material: "hydrochloric acid", portion: "100 mL" },
    },
  },
  // 5.00 g of Fe is 0.0895 mol × 63.55 g/mol
  {
    id: "11 Cu",
    grams: 5.689,
    request: {
      equation: "CuSO4 + Fe -> Cu + FeSO4",
      product: "Cu",
      materials: [
        { name: "bluestone", form: "CuSO4·5H2O", excess: "10 %" },
        { name: "iron powder", form: "Fe" },
      ],
      scale: { material: "iron powder", portion: "5.00 g" },
    },
  },
  // 0.1 mol × 395.0 g/mol
  {
    id: "12 (NH4)2Ni(SO4)2·6H2O",
    grams: 39.5,
    request: {
      equation: "NiSO4 + (NH4)2SO4 -> (NH4)2Ni(SO4)2·6H2O",
      product: "(NH4)2Ni(SO4)2·6H2O",
      materials: [
        { name: "nickel sulfate", form: "NiSO4·7H2O" },
        { name: "ammonium sulfate", form: "(NH4)2SO4" },
      ],
      scale: { material: "nickel sulfate", portion: "28.09 g" },
    },
  },
  // 0.1 mol × 441.9 g/mol
  {
    id: "13 K2Cu(SO4)2·6H2O",
    grams: 44.2,
    request: {
      equation: "CuSO4 + K2SO4 -> K2Cu(SO4)2·6H2O",
      product: "K2Cu(SO4)2·6H2O",
      materials: [
        { name: "copper sulfate", form: "CuSO4·5H2O" },
        { name: "potassium sulfate", form: "K2SO4" },
      ],
      scale: { material: "copper sulfate", portion: "24.97 g" },
    },
  },
  // 0.1001 mol × 474.4 g/mol
  {
    id: "14 KAl(SO4)2·12H2O",
    grams: 47.47,
    request: {
      equation: "2 Al + 2 KOH + 4 H2SO4 + 22 H2O -> 2 KAl(SO4)2·12H2O + 3 H2",
      product: "KAl(SO4)2·12H2O",
      materials: [
        { name: "foil", form: "Al" },
        { name: "potash lye", form: "KOH", strength: "1.4 mol/L", excess: "30 %" },
        { name: "sulfuric acid", form: "H2SO4", strength: "6 mol/L", excess: "15 %" },
      ],
      scale: { material: "foil", portion: "2.70 g" },
    },
  },
  // 4 × 0.1 mol × 61.83 g/mol
  {
    id: "16 H3BO3",
    grams: 24.73,
    request: {
      equation: "Na2B4O7 + HCl + H2O -> H3BO3 + NaCl",
      product: "H3BO3",
      materials: [
        { name: "borax", form: "Na2B4O7·10H2O" },
        { name: "hydrochloric acid", form: "HCl", strength: "6 mol/L", excess: "5 %" },
      ],
      scale: { material: "borax", portion: "38.14 g" },
    },
  },
  // 0.4 mol × 101.1 g/mol
  {
    id: "17 KNO3",
    grams: 40.45,
    request: {
      equation: "NaNO3 + KCl -> KNO3 + NaCl",
      product: "KNO3",
      materials: [
        { name: "sodium nitrate", form: "NaNO3" },
        { name: "potassium chloride", form: "KCl" },
      ],
      scale: { material: "sodium nitrate", portion: "34 g" },
    },
  },
  // 0.02 mol × 491.2 g/mol
  {
    id: "18 K3[Fe(C2O4)3]·3H2O",
    grams: 9.83,
    request: {
      equation: "FeCl3 + K2C2O4 -> K3[Fe(C2O4)3]·3H2O + KCl",
      product: "K3[Fe(C2O4)3]·3H2O",
      materials: [
        { name: "ferric chloride", form: "FeCl3·6H2O" },
        { name: "potassium oxalate", form: "K2C2O4·H2O" },
      ],
      scale: { material: "ferric chloride", portion: "5.41 g" },
    },
  },
  // 0.04203 mol × 250.4 g/mol
  {
    id: "19 [CoCl(NH3)5]Cl2",
    grams: 10.52,
    request: {
      equation: "2 CoCl2 + 2 NH4Cl + 8 NH3 + H2O2 -> 2 [CoCl(NH3)5]Cl2 + 2 H2O",
      product: "[CoCl(NH3)5]Cl2",
      materials: [
        { name: "cobalt chloride", form: "CoCl2·6H2O" },
        { name: "sal ammoniac", form: "NH4Cl", excess: "20 %" },
        { name: "ammonia", form: "NH3", strength: "25 %", excess: "50 %" },
        { name: "peroxide", form: "H2O2", strength: "30 %", excess: "50 %" },
      ],
      scale: { material: "cobalt chloride", portion: "10.0 g" },
    },
  },
  // 0.1 mol × 248.2 g/mol
  {
    id: "20 Na2S2O3·5H2O",
    grams: 24.81,
    request: {
      equation: "Na2SO3 + S + 5 H2O -> Na2S2O3·5H2O",
      product: "Na2S2O3·5H2O",
      materials: [
        { name: "sodium sulfite", form: "Na2SO3" },
        { name: "flowers of sulfur", form: "S", excess: "50 %" },
      ],
      scale: { material: "sodium sulfite", portion: "12.6 g" },
    },
  },
  // 0.05007 mol × 190.5 g/mol
  {
    id: "21 CuI",
    grams: 9.535,
    request: {
      equation: "2 CuSO4 + 2 KI + Na2SO3 + H2O -> 2 CuI + K2SO4 + Na2SO4 + H2SO4",
      product: "CuI",
      materials: [
        { name: "copper sulfate", form: "CuSO4·5H2O" },
        { name: "potassium iodide", form: "KI" },
        { name: "sodium sulfite", form: "Na2SO3", excess: "10 %" },
      ],
      scale: { material: "copper sulfate", portion: "12.5 g" },
    },
  },
  // 0.1 mol × 106.0 g/mol
  {
    id: "22 Na2CO3",
    grams: 10.6,
    request: {
      equation: "2 NaHCO3 -> Na2CO3 + CO2 + H2O",
      product: "Na2CO3",
      materials: [{ name: "baking soda", form: "NaHCO3" }],
      scale: { material: "baking soda", portion: "16.8 g" },
    },
  },
  // 0.2 mol × 100.1 g/mol
  {
    id: "23 KHCO3",
    grams: 20.02,
    request: {
      equation: "K2CO3 + CO2 + H2O -> 2 KHCO3",
      product: "KHCO3",
      materials: [
        { name: "potash", form: "K2CO3" },
        { name: "carbon dioxide", form: "CO2", excess: "50 %" },
      ],
      scale: { material: "potash", portion: "13.82 g" },
    },
  },
  // 0.1 mol × 197.3 g/mol
  {
    id: "24 BaCO3",
    grams: 19.73,
    request: {
      equation: "Ba(OH)2 + CO2 -> BaCO3 + H2O",
      product: "BaCO3",
      materials: [
        { name: "barium hydroxide", form: "Ba(OH)2·8H2O" },
        { name: "carbon dioxide", form: "CO2" },
      ],
      scale: { material: "barium hydroxide", portion: "31.55 g" },
    },
  },
  // 0.1 mol × 282.2 g/mol
  {
    id: "25 KNaC4H4O6·4H2O",
    grams: 28.22,
    request: {
      equation: "2 KHC4H4O6 + Na2CO3 -> 2 KNaC4H4O6·4H2O + CO2",
      product: "KNaC4H4O6·4H2O",
      materials: [
        { name: "cream of tartar", form: "KHC4H4O6" },
        { name: "soda", form: "Na2CO3" },
      ],
      scale: { material: "cream of tartar", portion: "18.82 g" },
    },
  },
  // 0.4187 mol of acid / 2 × 176.2 g/mol
  {
    id: "26 Ca(CH3COO)2·H2O",
    grams: 36.9,
    request: {
      equation: "CaCO3 + 2 CH3COOH -> Ca(CH3COO)2·H2O + CO2",
      product: "Ca(CH3COO)2·H2O",
      materials: [
        { name: "chalk", form: "CaCO3", excess: "10 %" },
        { name: "white vinegar", form: "CH3COOH", strength: "5 %" },
      ],
      scale: { material: "white vinegar", portion: "500 mL" },
    },
  },
  // 0.1 mol × 294.1 g/mol
  {
    id: "27 Na3C6H5O7·2H2O",
    grams: 29.41,
    request: {
      equation: "C6H8O7 + 3 NaHCO3 -> Na3C6H5O7·2H2O + 3 CO2",
      product: "Na3C6H5O7·2H2O",
      materials: [
        { name: "citric acid", form: "C6H8O7·H2O" },
        { name: "baking soda", form: "NaHCO3" },
      ],
      scale: { material: "citric acid", portion: "21.01 g" },
    },
  },
  // 0.2 mol × 199.7 g/mol
  {
    id: "28 Cu(CH3COO)2·H2O",
    grams: 39.91,
    request: {
      equation: "Cu2(OH)2CO3 + CH3COOH -> Cu(CH3COO)2·H2O + CO2",
      product: "Cu(CH3COO)2·H2O",
      materials: [
        { name: "green copper carbonate", form: "Cu2(OH)2CO3" },
        { name: "acetic acid", form: "CH3COOH", strength: "25 %", excess: "10 %" },
      ],
      scale: { material: "green copper carbonate", portion: "22.1 g" },
    },
  },
  // 0.1 mol × 308.3 g/mol
  {
    id: "29 Ca(C3H5O3)2·5H2O",
    grams: 30.8,
    request: {
      equation: "CaCO3 + 2 C3H6O3 -> Ca(C3H5O3)2·5H2O + CO2",
      product: "Ca(C3H5O3)2·5H2O",
      materials: [
        { name: "chalk", form: "CaCO3" },
        { name: "lactic acid", form: "C3H6O3", strength: "80 %" },
      ],
      scale: { material: "chalk", portion: "10.0 g" },
    },
  },
  // 0.1 mol × 58.32 g/mol
  {
    id: "30 Mg(OH)2",
    grams: 5.832,
    request: {
      equation: "MgSO4 + NaOH -> Mg(OH)2 + Na2SO4",
      product: "Mg(OH)2",
      materials: [
        { name: "Epsom salt", form: "MgSO4·7H2O" },
        { name: "lye", form: "NaOH" },
      ],
      scale: { material: "Epsom salt", portion: "24.65 g" },
    },
  },
  // 1 mol × 53.49 g/mol
  {
    id: "31 NH4Cl",
    grams: 53.43,
    request: {
      equation: "(NH4)2SO4 + NaCl -> NH4Cl + Na2SO4",
      product: "NH4Cl",
      materials: [
        { name: "lawn sand", form: "(NH4)2SO4" },
        { name: "table salt", form: "NaCl" },
      ],
      scale: { material: "lawn sand", portion: "66 g" },
    },
  },
  // 0.1 mol × 219.5 g/mol
  {
    id: "32 Zn(CH3COO)2·2H2O",
    grams: 21.96,
    request: {
      equation: "ZnO + CH3COOH -> Zn(CH3COO)2·2H2O",
      product: "Zn(CH3COO)2·2H2O",
      materials: [
        { name: "zinc white", form: "ZnO" },
        { name: "acetic acid", form: "CH3COOH", strength: "30 %", excess: "10 %" },
      ],
      scale: { material: "zinc white", portion: "8.14 g" },
    },
  },
  // 0.1 mol × 179.9 g/mol
  {
    id: "33 FeC2O4·2H2O",
    grams: 17.98,
    request: {
      equation: "(NH4)2Fe(SO4)2 + H2C2O4 -> FeC2O4·2H2O + (NH4)2SO4 + H2SO4",
      product: "FeC2O4·2H2O",
      materials: [
        { name: "Mohr's salt", form: "(NH4)2Fe(SO4)2·6H2O" },
        { name: "oxalic acid", form: "H2C2O4·2H2O", excess: "20 %" },
      ],
      scale: { material: "Mohr's salt", portion: "39.2 g" },
    },
  },
  // 0.1 mol × 448.4 g/mol
  {
    id: "34 Ca(C6H11O7)2·H2O",
    grams: 44.8,
    request: {
      equation: "CaCO3 + C6H12O7 -> Ca(C6H11O7)2·H2O + CO2",
      product: "Ca(C6H11O7)2·H2O",
      materials: [
        { name: "chalk", form: "CaCO3" },
        { name: "gluconic acid", form: "C6H12O7", strength: "50 %" },
      ],
      scale: { material: "chalk", portion: "10.0 g" },
    },
  },
  // 0.5 mol × 136.1 g/mol
  {
    id: "35 CH3COONa·3H2O",
    grams: 68.03,
    request: {
      equation: "NaHCO3 + CH3COOH -> CH3COONa·3H2O + CO2",
      product: "CH3COONa·3H2O",
      materials: [
        { name: "baking soda", form: "NaHCO3" },
        { name: "white vinegar", form: "CH3COOH", strength: "5 %", excess: "5 %" },
      ],
      scale: { material: "baking soda", portion: "42 g" },
    },
  },
  // 0.2 mol × 79.55 g/mol
  {
    id: "22b CuO",
    grams: 15.9,
    request: {
      equation: "Cu2(OH)2CO3 -> CuO + CO2 + H2O",
      product: "CuO",
      materials: [{ name: "green copper carbonate", form: "Cu2(OH)2CO3" }],
      scale: { material: "green copper carbonate", portion: "22.1 g" },
    },
  },
];
