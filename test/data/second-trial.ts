// Twenty-five preparations from textbook knowledge, from memory: kinds, roles, shop materials and ways of stating them that the
// first trial does not have. Theory and gas were calculated by hand from rounded molar masses before any plan was made.
// Pack names are invented.
import type { PlanRequest, ProcedureKind } from "../../src/preparation";

export interface SecondTrial extends PlanRequest {
  readonly id: string;
  readonly kind: ProcedureKind;
  /** g of product at 100 %. */
  readonly theory: string;
  /** mol of gas. */
  readonly gas: string;
}

export const SECOND_TRIAL: readonly SecondTrial[] = [
  {
    id: "strontium carbonate",
    equation: "SrCl2 + Na2CO3 -> SrCO3 + NaCl",
    product: "SrCO3",
    materials: [
      { name: "soda ash", form: "Na2CO3", assay: "99 %", excess: "5 %" },
      { name: "strontium jar", form: "SrCl2·6H2O" },
    ],
    scale: { product: "20 g" },
    kind: "precipitation",
    // 20 g
    theory: "20.00",
    gas: "0",
  },
  {
    id: "calcium oxalate by solution",
    equation: "CaCl2 + (NH4)2C2O4 + H2O -> CaC2O4·H2O + NH4Cl",
    product: "CaC2O4·H2O",
    materials: [
      { name: "brine", form: "CaCl2", strength: "30 %" },
      { name: "oxalate jar", form: "(NH4)2C2O4·H2O" },
    ],
    scale: { material: "oxalate jar", portion: "14.21 g" },
    kind: "precipitation",
    // 0.1 mol × 146.11
    theory: "14.61",
    gas: "0",
  },
  {
    id: "zinc phosphate",
    equation: "ZnSO4 + Na3PO4 + H2O -> Zn3(PO4)2·4H2O + Na2SO4",
    product: "Zn3(PO4)2·4H2O",
    materials: [
      { name: "phosphate crystals", form: "Na3PO4·12H2O" },
      { name: "moss killer", form: "ZnSO4·7H2O", assay: "98 %", excess: "2 %" },
    ],
    scale: { material: "phosphate crystals", portion: "38.01 g" },
    kind: "precipitation",
    // 0.05 mol × 458.1
    theory: "22.91",
    gas: "0",
  },
  {
    id: "cobalt hydroxide, own water",
    equation: "CoCl2 + KOH -> Co(OH)2 + KCl",
    product: "Co(OH)2",
    materials: [
      { name: "cobalt jar", form: "CoCl2·6H2O", dissolve: { water: "150 mL" } },
      { name: "potash lye", form: "KOH", assay: "85 %", excess: "5 %", dissolve: { concentration: "2 mol/L" } },
    ],
    scale: { material: "cobalt jar", portion: "23.79 g" },
    kind: "precipitation",
    // 0.1 mol × 92.95
    theory: "9.29",
    gas: "0",
  },
  {
    id: "lead iodide",
    equation: "Pb(NO3)2 + KI -> PbI2 + KNO3",
    product: "PbI2",
    materials: [
      { name: "iodide", form: "KI" },
      { name: "lead nitrate", form: "Pb(NO3)2" },
    ],
    scale: { material: "lead nitrate", portion: "16.56 g" },
    kind: "precipitation",
    // 0.05 mol × 461.0
    theory: "23.05",
    gas: "0",
  },
  {
    id: "copper hydroxide with lime",
    equation: "CuSO4 + Ca(OH)2 + H2O -> Cu(OH)2 + CaSO4·2H2O",
    product: "Cu(OH)2",
    materials: [
      { name: "bluestone", form: "CuSO4·5H2O" },
      { name: "slaked lime", form: "Ca(OH)2", assay: "95 %" },
    ],
    scale: { material: "bluestone", portion: "49.94 g" },
    kind: "precipitation",
    // 0.2 mol × 97.56
    theory: "19.51",
    gas: "0",
  },
  {
    id: "copper carbonate by bicarbonate",
    equation: "CuSO4 + NaHCO3 -> CuCO3 + Na2SO4 + CO2 + H2O",
    product: "CuCO3",
    materials: [
      { name: "baking soda", form: "NaHCO3", excess: "5 %" },
      { name: "bluestone", form: "CuSO4·5H2O" },
    ],
    scale: { material: "bluestone", portion: "49.94 g" },
    kind: "precipitation",
    // 0.2 mol × 123.55
    theory: "24.71",
    // malachite forms: 2 CuSO4 + 4 NaHCO3 -> Cu2(OH)2CO3 + 2 Na2SO4 + 3 CO2 + H2O, so 0.3 mol for 0.2 mol of copper
    gas: "0.3000",
  },
  {
    id: "ammonium sulfate",
    equation: "NH3 + H2SO4 -> (NH4)2SO4",
    product: "(NH4)2SO4",
    materials: [
      { name: "battery acid", form: "H2SO4", strength: "37 %" },
      { name: "ammonia", form: "NH3", strength: "25 %", excess: "5 %" },
    ],
    scale: { product: "66 g" },
    kind: "neutralisation",
    theory: "66.00",
    gas: "0",
  },
  {
    id: "calcium acetate from eggshell",
    equation: "CaCO3 + CH3COOH -> Ca(CH3COO)2·H2O + CO2",
    product: "Ca(CH3COO)2·H2O",
    materials: [
      { name: "eggshell", form: "CaCO3", assay: "94 %", excess: "5 %" },
      { name: "vinegar essence", form: "CH3COOH", strength: "24 %" },
    ],
    scale: { material: "vinegar essence", portion: "250 g" },
    kind: "neutralisation",
    // 60.0 g / 60.05 = 0.9992 mol; half × 176.18
    theory: "88.01",
    gas: "0.4996",
  },
  {
    id: "potassium dihydrogen phosphate",
    equation: "K2CO3 + H3PO4 -> KH2PO4 + CO2 + H2O",
    product: "KH2PO4",
    materials: [
      { name: "potash", form: "K2CO3" },
      { name: "phosphoric acid", form: "H3PO4", strength: "85 %" },
    ],
    scale: { product: "0.5 mol" },
    kind: "neutralisation",
    // 0.5 × 136.09
    theory: "68.04",
    gas: "0.2500",
  },
  {
    id: "copper sulfate from oxide",
    equation: "CuO + H2SO4 + H2O -> CuSO4·5H2O",
    product: "CuSO4·5H2O",
    materials: [
      { name: "black oxide", form: "CuO", excess: "5 %" },
      { name: "oil of vitriol", form: "H2SO4", strength: "96 %" },
    ],
    scale: { product: "50 g" },
    kind: "neutralisation",
    theory: "50.00",
    gas: "0",
  },
  {
    id: "nickel sulfate from carbonate",
    equation: "NiCO3 + H2SO4 + H2O -> NiSO4·6H2O + CO2",
    product: "NiSO4·6H2O",
    materials: [
      { name: "green carbonate", form: "NiCO3", excess: "3 %" },
      { name: "battery acid", form: "H2SO4", strength: "37 %" },
    ],
    scale: { product: "0.2 mol" },
    kind: "neutralisation",
    // 0.2 × 262.85
    theory: "52.57",
    gas: "0.2000",
  },
  {
    id: "copper nitrate",
    equation: "CuO + HNO3 + H2O -> Cu(NO3)2·3H2O",
    product: "Cu(NO3)2·3H2O",
    materials: [
      { name: "black oxide", form: "CuO", excess: "5 %" },
      { name: "nitric acid", form: "HNO3", strength: "65 %" },
    ],
    scale: { product: "0.2 mol" },
    kind: "neutralisation",
    // 0.2 × 241.60
    theory: "48.32",
    gas: "0",
  },
  {
    id: "green vitriol from nails",
    equation: "Fe + H2SO4 + H2O -> FeSO4·7H2O + H2",
    product: "FeSO4·7H2O",
    materials: [
      { name: "nails", form: "Fe", excess: "20 %" },
      { name: "battery acid", form: "H2SO4", strength: "37 %" },
    ],
    scale: { product: "0.5 mol" },
    kind: "metal and acid",
    // 0.5 × 278.01
    theory: "139.01",
    gas: "0.5000",
  },
  {
    id: "copper from chloride by zinc powder",
    equation: "CuSO4 + Zn -> Cu + ZnSO4",
    product: "Cu",
    materials: [
      { name: "zinc dust", form: "Zn", assay: "95 %", excess: "10 %" },
      { name: "bluestone", form: "CuSO4·5H2O" },
    ],
    scale: { material: "bluestone", portion: "24.97 g" },
    kind: "displacement",
    // 0.1 × 63.55
    theory: "6.35",
    gas: "0",
  },
  {
    id: "ammonium alum",
    equation: "(NH4)2SO4 + Al2(SO4)3 + H2O -> NH4Al(SO4)2·12H2O",
    product: "NH4Al(SO4)2·12H2O",
    materials: [
      { name: "lawn feed", form: "(NH4)2SO4" },
      { name: "papermaker's alum", form: "Al2(SO4)3·18H2O" },
    ],
    scale: { product: "0.2 mol" },
    kind: "double salt",
    // 0.2 × 453.32
    theory: "90.66",
    gas: "0",
  },
  {
    id: "boric acid, recrystallised",
    equation: "H3BO3 -> H3BO3",
    product: "H3BO3",
    materials: [{ name: "raw boric acid", form: "H3BO3", assay: "92 %" }],
    scale: { material: "raw boric acid", portion: "100 g" },
    kind: "crystallisation",
    theory: "92.00",
    gas: "0",
  },
  {
    id: "potassium chlorate by salt pair",
    equation: "NaClO3 + KCl -> KClO3 + NaCl",
    product: "KClO3",
    materials: [
      { name: "weed salt", form: "NaClO3" },
      { name: "potash salt", form: "KCl" },
    ],
    scale: { material: "weed salt", portion: "53.22 g" },
    kind: "crystallisation",
    // 0.5 × 122.55
    theory: "61.27",
    gas: "0",
  },
  {
    id: "cuprammonium sulfate with spirit",
    equation: "NH3 + CuSO4 + H2O -> [Cu(NH3)4]SO4·H2O",
    product: "[Cu(NH3)4]SO4·H2O",
    materials: [
      { name: "bluestone", form: "CuSO4·5H2O", dissolve: { water: "40 mL" } },
      { name: "ammonia", form: "NH3", strength: "25 %", excess: "30 %" },
      { name: "spirit", form: "C2H5OH", strength: "94 %", aside: true, portion: "100 mL" },
    ],
    scale: { material: "bluestone", portion: "24.97 g" },
    kind: "complex formation",
    // 0.1 × 245.75
    theory: "24.57",
    gas: "0",
  },
  {
    id: "hexaamminecobalt(III) chloride, five materials",
    equation: "CoCl2 + NH4Cl + NH3 + H2O2 -> [Co(NH3)6]Cl3 + H2O",
    product: "[Co(NH3)6]Cl3",
    materials: [
      { name: "peroxide", form: "H2O2", strength: "30 %", excess: "20 %" },
      { name: "sal ammoniac", form: "NH4Cl", excess: "30 %" },
      { name: "cobalt jar", form: "CoCl2·6H2O" },
      { name: "ammonia", form: "NH3", strength: "25 %", excess: "50 %" },
      { name: "charcoal", form: "C", aside: true, portion: "1 g" },
    ],
    scale: { material: "cobalt jar", portion: "23.79 g" },
    kind: "complex formation",
    // 0.1 × 267.47
    theory: "26.75",
    // 10 % of 0.1 mol of H2O2 = 0.01 mol over; half of it as O2
    gas: "0.0050",
  },
  {
    id: "blue vitriol from scrap and peroxide",
    equation: "Cu + H2O2 + H2SO4 + H2O -> CuSO4·5H2O",
    product: "CuSO4·5H2O",
    materials: [
      { name: "copper scrap", form: "Cu" },
      { name: "peroxide", form: "H2O2", strength: "12 %", excess: "50 %" },
      { name: "battery acid", form: "H2SO4", strength: "37 %", excess: "5 %" },
    ],
    scale: { material: "copper scrap", portion: "12.71 g" },
    acknowledge: ["peroxide-sulfuric"],
    kind: "metal and acid",
    // 0.2 × 249.68
    theory: "49.94",
    // 0.1 mol of H2O2 over: half of it as O2
    gas: "0.0500",
  },
  {
    id: "copper(I) iodide",
    equation: "CuSO4 + KI + Na2S2O3 -> CuI + K2SO4 + Na2S4O6 + Na2SO4",
    product: "CuI",
    materials: [
      { name: "hypo", form: "Na2S2O3·5H2O" },
      { name: "bluestone", form: "CuSO4·5H2O" },
      { name: "iodide", form: "KI" },
    ],
    scale: { material: "bluestone", portion: "24.97 g" },
    kind: "redox",
    // 0.1 × 190.45
    theory: "19.05",
    gas: "0",
  },
  {
    id: "lime from marble",
    equation: "CaCO3 -> CaO + CO2",
    product: "CaO",
    materials: [{ name: "marble meal", form: "CaCO3", assay: "97 %" }],
    scale: { material: "marble meal", portion: "100 g" },
    kind: "thermal decomposition",
    // 97 / 100.09 × 56.08
    theory: "54.35",
    gas: "0.9691",
  },
  {
    id: "barium titanate",
    equation: "BaCO3 + TiO2 -> BaTiO3 + CO2",
    product: "BaTiO3",
    materials: [
      { name: "barium carbonate", form: "BaCO3" },
      { name: "titanium white", form: "TiO2" },
    ],
    scale: { product: "0.1 mol" },
    kind: "thermal decomposition",
    // 0.1 × 233.19
    theory: "23.32",
    gas: "0.1000",
  },
  {
    id: "copper carbonate from etchant and two packs of soda",
    equation: "CuCl2 + Na2CO3 + H2O -> Cu2(OH)2CO3 + NaCl + CO2",
    product: "Cu2(OH)2CO3",
    materials: [
      { name: "spent etchant", form: "CuCl2", strength: "20 %", also: [{ form: "HCl", share: "3 %" }] },
      { name: "soda crystals", form: "Na2CO3·10H2O", excess: "5 %", available: "60 g" },
      { name: "soda ash", form: "Na2CO3", excess: "5 %", available: "100 g" },
    ],
    scale: { material: "spent etchant", portion: "134.45 g" },
    kind: "precipitation",
    // 26.89 g / 134.45 = 0.2 mol; half × 221.11
    theory: "22.11",
    // 0.1 mol by the equation, and half of 4.0335 g / 36.46 = 0.1106 mol of acid
    gas: "0.1553",
  },
];
