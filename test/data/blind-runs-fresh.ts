// A fifth set of runs written blind: 45 with one planted fault each, 15 good ones. At first sight, before anything was mended for it, 38 of the
// 45 faults were named first (84 %), and no good run raised an alarm. Written without sight of how verdicts are reached. Every mass is
// calculated by hand, the working stands above each run: standard atomic weights (IUPAC, abridged; from memory), solubilities
// from memory. INVENTED: all weighings, packs and persons. `accept` was written before any verdict was seen.
//
// Molar masses used (g/mol): H2O 18.015, CO2 44.01, CuSO4·5H2O 249.68, CuSO4·H2O 177.61, CuSO4 159.60, Cu2(OH)2CO3 221.11,
// Cu(OH)2 97.56, CuO 79.545, Na2CO3 105.99, Na2CO3·H2O 124.00, NaHCO3 84.01, Na2SO4 142.04, Na2SO4·10H2O 322.19, BaCl2·2H2O 244.26,
// BaCl2 208.23, BaSO4 233.38, BaCrO4 253.32, K2CrO4 194.19, Mg(OH)2 58.32, MgO 40.30, MgSO4·7H2O 246.47, FeSO4·7H2O 278.01,
// FeC2O4·2H2O 179.89, FeC2O4 143.86, Fe2O3 159.69, CaCl2·2H2O 147.01, CaCl2·6H2O 219.07, CaCO3 100.09, CaO 56.08, CaC2O4·H2O 146.11,
// (NH4)2C2O4·H2O 142.11, Pb(NO3)2 331.2, PbCrO4 323.2, PbI2 461.0, KI 166.00, ZnSO4·7H2O 287.54, ZnSO4·H2O 179.45.
import type { FindingCode, Observations, PlanRequest } from "preparative";

export interface BlindRun {
  readonly id: string;
  readonly request: PlanRequest;
  readonly observations: Observations;
  /** What really happened. */
  readonly fault: string;
  /** What a fair teacher would accept as the first finding. */
  readonly accept: readonly FindingCode[];
}

const malachite: PlanRequest = {
  equation: "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
  product: "Cu2(OH)2CO3",
  materials: [
    { name: "blue vitriol", form: "CuSO4·5H2O" },
    { name: "soda ash", form: "Na2CO3", excess: "10 %" },
  ],
  scale: { material: "blue vitriol", portion: "50.0 g" },
};
const gypsum: PlanRequest = {
  equation: "CaCl2 + Na2SO4 -> CaSO4 + NaCl",
  product: "CaSO4·2H2O",
  materials: [
    { name: "calcium chloride", form: "CaCl2·2H2O" },
    { name: "sodium sulfate", form: "Na2SO4", excess: "5 %" },
  ],
  scale: { material: "calcium chloride", portion: "50.0 g" },
};
const blueVitriol: PlanRequest = {
  equation: "CuO + H2SO4 + 4 H2O -> CuSO4·5H2O",
  product: "CuSO4·5H2O",
  materials: [
    { name: "copper oxide", form: "CuO", excess: "5 %" },
    { name: "battery acid", form: "H2SO4", strength: "37 %" },
  ],
  scale: { product: "50 g" },
};
const greenVitriol: PlanRequest = {
  equation: "Fe + H2SO4 + 7 H2O -> FeSO4·7H2O + H2",
  product: "FeSO4·7H2O",
  materials: [
    { name: "iron nails", form: "Fe", excess: "10 %" },
    { name: "dilute sulfuric acid", form: "H2SO4", strength: "20 %" },
  ],
  scale: { product: "80 g" },
};
const mohr: PlanRequest = {
  equation: "FeSO4·7H2O + (NH4)2SO4 -> (NH4)2Fe(SO4)2·6H2O + H2O",
  product: "(NH4)2Fe(SO4)2·6H2O",
  materials: [
    { name: "green vitriol", form: "FeSO4·7H2O" },
    { name: "ammonium sulfate", form: "(NH4)2SO4" },
  ],
  scale: { material: "green vitriol", portion: "27.8 g" },
};
const saltpetre: PlanRequest = {
  equation: "NaNO3 + KCl -> KNO3 + NaCl",
  product: "KNO3",
  materials: [
    { name: "Chile saltpetre", form: "NaNO3" },
    { name: "muriate of potash", form: "KCl" },
  ],
  scale: { material: "Chile saltpetre", portion: "85.0 g" },
};
const boricAcid: PlanRequest = {
  equation: "Na2B4O7 + HCl + H2O -> H3BO3 + NaCl",
  product: "H3BO3",
  materials: [
    { name: "borax", form: "Na2B4O7·10H2O" },
    { name: "muriatic acid", form: "HCl", strength: "20 %", excess: "5 %" },
  ],
  scale: { material: "borax", portion: "95.3 g" },
};
const cementCopper: PlanRequest = {
  equation: "CuSO4 + Fe -> Cu + FeSO4",
  product: "Cu",
  materials: [
    { name: "blue vitriol", form: "CuSO4·5H2O" },
    { name: "iron filings", form: "Fe", excess: "5 %" },
  ],
  scale: { material: "blue vitriol", portion: "50.0 g" },
};
const lime: PlanRequest = {
  equation: "CaCO3 -> CaO + CO2",
  product: "CaO",
  materials: [{ name: "chalk", form: "CaCO3" }],
  scale: { material: "chalk", portion: "100.0 g" },
};

export const FRESH_RUNS: readonly BlindRun[] = [
  {
    // Cu 50.0/249.68 = 0.2003 mol, theory 22.14 g. NaHCO3 23.4/84.01 = 0.2785 mol where 2 a Cu are needed (0.4005): 69.5 % of the
    // copper, 15.40 g; 0.3 g on the filter.
    id: "e01-malachite-baking-soda-for-soda",
    request: malachite,
    observations: {
      weighed: { "blue vitriol": "50.0 g", "soda ash": "23.4 g" },
      dried: ["15.4 g", "15.1 g", "15.1 g"],
      washes: 3,
      tests: { filtrate: "cloudy", lastWash: "negative" },
      note: "the liquor was still blue",
    },
    fault: "The jar of soda ash contained baking soda.",
    accept: ["reagent-short"],
  },
  {
    // Ba 24.4/244.26 = 0.0999 mol, theory 23.31 g. Na2SO4·10H2O 14.9/322.19 = 0.04625 mol: 10.79 g.
    id: "e02-barium-sulfate-glauber-salt",
    request: {
      equation: "BaCl2 + Na2SO4 -> BaSO4 + NaCl",
      product: "BaSO4",
      materials: [
        { name: "barium chloride", form: "BaCl2·2H2O" },
        { name: "sodium sulfate", form: "Na2SO4", excess: "5 %" },
      ],
      scale: { material: "barium chloride", portion: "24.4 g" },
    },
    observations: {
      weighed: { "barium chloride": "24.4 g", "sodium sulfate": "14.9 g" },
      dried: ["10.7 g", "10.6 g"],
      washes: 2,
      tests: { filtrate: "cloudy", lastWash: "negative" },
    },
    fault: "The sodium sulfate was the decahydrate.",
    accept: ["hydrate-mix-up"],
  },
  {
    // Cu 25.0/249.68 = 0.10013 mol: Cu(OH)2 9.77 g, CuO 7.96 g; 0.2 g lost. CuO loses nothing at red heat (Cu(OH)2 18.5 %).
    id: "e03-copper-hydroxide-boiled-black",
    request: {
      equation: "CuSO4 + NaOH -> Cu(OH)2 + Na2SO4",
      product: "Cu(OH)2",
      materials: [
        { name: "copper sulfate", form: "CuSO4·5H2O" },
        { name: "caustic soda", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "copper sulfate", portion: "25.0 g" },
    },
    observations: {
      weighed: { "copper sulfate": "25.0 g", "caustic soda": "8.5 g" },
      dried: ["7.8 g", "7.8 g"],
      washes: 3,
      tests: { filtrate: "clear", lastWash: "negative" },
      ignition: { before: "1.000 g", after: "0.996 g" },
      note: "went black while it stood on the hot plate",
    },
    fault: "The liquor was boiled, the hydroxide became copper oxide.",
    accept: ["other-formula-fits"],
  },
  {
    // Mg 60.0/246.47 = 0.24344 mol: Mg(OH)2 14.20 g, beside 34.6 g of Na2SO4 in about 0.75 L: 46 g/L. The slimy cake keeps about
    // 70 mL: 3.2 g of sulfate and a little NaOH. 14.0 + 3.3 = 17.3 g.
    id: "e04-magnesium-hydroxide-unwashed",
    request: {
      equation: "MgSO4 + NaOH -> Mg(OH)2 + Na2SO4",
      product: "Mg(OH)2",
      materials: [
        { name: "Epsom salt", form: "MgSO4·7H2O" },
        { name: "caustic soda", form: "NaOH", excess: "3 %" },
      ],
      scale: { material: "Epsom salt", portion: "60.0 g" },
    },
    observations: {
      weighed: { "Epsom salt": "60.0 g", "caustic soda": "20.1 g" },
      wetCake: "88 g",
      washes: 0,
      dried: ["18.1 g", "17.4 g", "17.3 g"],
      tests: { filtrate: "clear" },
    },
    fault: "The cake was pressed and dried without washing.",
    accept: ["unwashed"],
  },
  {
    // Fe 30.0/278.01 = 0.10791 mol: dihydrate 19.41 g, FeC2O4 15.52 g. 15.52 less 0.2 g. Fe2O3 from FeC2O4: 79.85/143.86 = 55.5 %
    // (dihydrate 44.4 %): 0.500 g leaves 0.278 g.
    id: "e05-iron-oxalate-dried-at-160",
    request: {
      equation: "FeSO4 + H2C2O4 + 2 H2O -> FeC2O4·2H2O + H2SO4",
      product: "FeC2O4·2H2O",
      materials: [
        { name: "green vitriol", form: "FeSO4·7H2O" },
        { name: "oxalic acid", form: "H2C2O4·2H2O", excess: "10 %" },
      ],
      scale: { material: "green vitriol", portion: "30.0 g" },
    },
    observations: {
      weighed: { "green vitriol": "30.0 g", "oxalic acid": "15.0 g" },
      dried: ["15.4 g", "15.3 g", "15.3 g"],
      washes: 3,
      tests: { lastWash: "negative" },
      ignition: { before: "0.500 g", after: "0.278 g" },
    },
    fault: "Dried overnight at 160 °C: the crystal water is gone.",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  },
  {
    // Ca 10.0/147.01 = 0.06802 mol, theory 9.94 g. Oxalate 7.2/142.11 = 0.05067 mol: 7.40 g; 0.1 g lost.
    id: "e06-calcium-oxalate-oxalate-misweighed",
    request: {
      equation: "CaCl2 + (NH4)2C2O4 + H2O -> CaC2O4·H2O + NH4Cl",
      product: "CaC2O4·H2O",
      materials: [
        { name: "calcium chloride", form: "CaCl2·2H2O" },
        { name: "ammonium oxalate", form: "(NH4)2C2O4·H2O", excess: "5 %" },
      ],
      scale: { material: "calcium chloride", portion: "10.0 g" },
    },
    observations: {
      weighed: { "calcium chloride": "10.0 g", "ammonium oxalate": "7.2 g" },
      dried: ["7.4 g", "7.3 g"],
      washes: 2,
      tests: { filtrate: "cloudy", lastWash: "negative" },
    },
    fault: "Of the ammonium oxalate 7.2 g were weighed in place of 10.2 g.",
    accept: ["reagent-short"],
  },
  {
    // Planned Ba 12.2/244.26 = 0.04995 mol, theory 12.65 g. As BaCl2 12.2/208.23 = 0.05859 mol; chromate 10.2/194.19 = 0.05253 mol runs
    // out: 13.31 g, less 0.1 g. Barium left in the liquor clouds with chromate.
    id: "e07-barium-chromate-anhydrous-chloride",
    request: {
      equation: "BaCl2 + K2CrO4 -> BaCrO4 + KCl",
      product: "BaCrO4",
      materials: [
        { name: "barium chloride", form: "BaCl2·2H2O" },
        { name: "potassium chromate", form: "K2CrO4", excess: "5 %" },
      ],
      scale: { material: "barium chloride", portion: "12.2 g" },
    },
    observations: {
      weighed: { "barium chloride": "12.2 g", "potassium chromate": "10.2 g" },
      dried: [
        { gross: "61.4 g", tare: "48.1 g" },
        { gross: "61.3 g", tare: "48.1 g" },
      ],
      washes: 3,
      tests: { filtrate: "cloudy", lastWash: "negative" },
    },
    fault: "The barium chloride had been dried in the oven: anhydrous.",
    accept: ["hydrate-mix-up"],
  },
  {
    // Pb 10.0/331.2 = 0.03019 mol, theory 9.76 g; 9.6 g collected, on a paper of 1.1 g: 10.7 g.
    id: "e08-lead-chromate-weighed-with-paper",
    request: {
      equation: "Pb(NO3)2 + K2CrO4 -> PbCrO4 + KNO3",
      product: "PbCrO4",
      materials: [
        { name: "lead nitrate", form: "Pb(NO3)2" },
        { name: "potassium chromate", form: "K2CrO4", excess: "3 %" },
      ],
      scale: { material: "lead nitrate", portion: "10.0 g" },
    },
    observations: {
      weighed: { "lead nitrate": "10.0 g", "potassium chromate": "6.1 g" },
      dried: ["10.8 g", "10.7 g", "10.7 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "negative" },
    },
    fault: "The filter paper of 1.1 g was weighed with the product.",
    accept: ["too-heavy"],
  },
  {
    // Pb 5.00/331.2 = 0.01510 mol, theory 6.96 g. Cold water dissolves 0.07 g in 100 mL, boiling water 0.42 g: five washes of 80 mL
    // near the boil, nearly saturated: 1.5 g. 6.96 - 0.1 (liquor) - 1.5 - 0.1 = 5.3 g.
    id: "e09-lead-iodide-washed-hot",
    request: {
      equation: "Pb(NO3)2 + KI -> PbI2 + KNO3",
      product: "PbI2",
      materials: [
        { name: "lead nitrate", form: "Pb(NO3)2" },
        { name: "potassium iodide", form: "KI", excess: "2 %" },
      ],
      scale: { material: "lead nitrate", portion: "5.00 g" },
    },
    observations: {
      weighed: { "lead nitrate": "5.0 g", "potassium iodide": "5.2 g" },
      dried: ["5.3 g", "5.3 g"],
      washes: 5,
      tests: { lastWash: "negative" },
    },
    fault: "Washed five times with boiling water, which dissolves lead iodide.",
    accept: ["lighter-than-losses-explain", "loss-explained"],
  },
  {
    // Planned 100.0/147.01 = 0.6802 mol, theory 68.08 g. As hexahydrate 100.0/219.07 = 0.4565 mol: 45.69 g; 0.7 g lost.
    id: "e10-chalk-hexahydrate-deicer",
    request: {
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O" },
        { name: "washing soda", form: "Na2CO3·10H2O", excess: "5 %" },
      ],
      scale: { material: "de-icer", portion: "100.0 g" },
    },
    observations: {
      weighed: { "de-icer": "100.0 g", "washing soda": "204.4 g" },
      dried: ["45.3 g", "45.0 g", "45.0 g"],
      washes: 3,
      tests: { filtrate: "clear", lastWash: "negative" },
    },
    fault: "The de-icer was calcium chloride hexahydrate.",
    accept: ["hydrate-mix-up", "reagent-short"],
  },
  {
    // Sr 42.3/211.63 = 0.19988 mol, theory 29.51 g; 29.0 g of it on the tray with water still going: 36.9, 33.2, 31.0 g.
    id: "e11-strontium-carbonate-taken-out-early",
    request: {
      equation: "Sr(NO3)2 + Na2CO3 -> SrCO3 + NaNO3",
      product: "SrCO3",
      materials: [
        { name: "strontium nitrate", form: "Sr(NO3)2" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "strontium nitrate", portion: "42.3 g" },
    },
    observations: {
      weighed: { "strontium nitrate": "42.3 g", "soda ash": "22.3 g" },
      wetCake: "46 g",
      dried: ["36.9 g", "33.2 g", "31.0 g"],
      washes: 2,
      tests: { filtrate: "clear", lastWash: "negative" },
    },
    fault: "Weighed three times and bottled before it was dry.",
    accept: ["still-drying"],
  },
  {
    // Mn 33.8/169.01 = 0.19999 mol, theory 22.99 g; 22.4 g dry, 5 g of it on the floor: 17.4 g.
    id: "e12-manganese-carbonate-dropped",
    request: {
      equation: "MnSO4 + NaHCO3 -> MnCO3 + Na2SO4 + CO2 + H2O",
      product: "MnCO3",
      materials: [
        { name: "manganese sulfate", form: "MnSO4·H2O" },
        { name: "baking soda", form: "NaHCO3", excess: "10 %" },
      ],
      scale: { material: "manganese sulfate", portion: "33.8 g" },
    },
    observations: {
      weighed: { "manganese sulfate": "33.8 g", "baking soda": "37.0 g" },
      lost: [{ of: "product", mass: "5 g" }],
      dried: ["17.5 g", "17.4 g"],
      washes: 3,
      tests: { filtrate: "clear", lastWash: "negative" },
    },
    fault: "About 5 g fell from the tray when it was taken out.",
    accept: ["spilled"],
  },
  {
    // Planned Zn 43.1/287.54 = 0.14989 mol, theory 22.89 g (Zn3(PO4)2·4H2O 458.1). As monohydrate 43.1/179.45 = 0.24018 mol; phosphate
    // 38.8/380.12 = 0.10207 mol runs out: 0.05104 x 458.1 = 23.38 g, 0.2 g lost. Zinc left over clouds with phosphate.
    id: "e13-zinc-phosphate-monohydrate-jar",
    request: {
      equation: "ZnSO4 + Na3PO4 + H2O -> Zn3(PO4)2·4H2O + Na2SO4",
      product: "Zn3(PO4)2·4H2O",
      materials: [
        { name: "zinc sulfate", form: "ZnSO4·7H2O" },
        { name: "trisodium phosphate", form: "Na3PO4·12H2O", excess: "2 %" },
      ],
      scale: { material: "zinc sulfate", portion: "43.1 g" },
    },
    observations: {
      weighed: { "zinc sulfate": "43.1 g", "trisodium phosphate": "38.8 g" },
      dried: ["23.3 g", "23.2 g"],
      washes: 3,
      tests: { filtrate: "cloudy", lastWash: "negative" },
    },
    fault: "The zinc sulfate was the monohydrate, so the phosphate ran out.",
    accept: ["hydrate-mix-up", "reagent-short"],
  },
  {
    // Ca 29.4/147.01 = 0.19998 mol: CaHPO4·2H2O (172.09) 34.42 g, CaHPO4 (136.06) 27.21 g. Red heat leaves Ca2P2O7: 254.1/(2 x 136.06)
    // = 93.4 % of CaHPO4 (dihydrate 73.8 %): 2.000 g leaves 1.868 g.
    id: "e14-dicalcium-phosphate-boiled",
    request: {
      equation: "CaCl2 + Na2HPO4 + 2 H2O -> CaHPO4·2H2O + 2 NaCl",
      product: "CaHPO4·2H2O",
      materials: [
        { name: "calcium chloride", form: "CaCl2·2H2O" },
        { name: "disodium phosphate", form: "Na2HPO4·12H2O", excess: "2 %" },
      ],
      scale: { material: "calcium chloride", portion: "29.4 g" },
    },
    observations: {
      weighed: { "calcium chloride": "29.4 g", "disodium phosphate": "73.1 g" },
      dried: ["27.0 g", "26.9 g"],
      washes: 2,
      tests: { filtrate: "clear", lastWash: "negative" },
      ignition: { before: "2.000 g", after: "1.868 g" },
    },
    fault: "The liquor was boiled for an hour: the salt without crystal water formed.",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  },
  {
    // As written 3.400/169.87 = 0.020015 mol, theory 2.869 g. Really 4.300 g, 0.02531 mol; salt 1.229/58.44 = 0.02103 mol runs out:
    // 3.014 g, 0.03 g lost. Silver left over clouds with salt.
    id: "e15-silver-chloride-digits-swapped",
    request: {
      equation: "AgNO3 + NaCl -> AgCl + NaNO3",
      product: "AgCl",
      materials: [
        { name: "silver nitrate", form: "AgNO3" },
        { name: "salt", form: "NaCl", excess: "5 %" },
      ],
      scale: { material: "silver nitrate", portion: "3.400 g" },
      readability: { mass: "0.001 g" },
    },
    observations: {
      weighed: { "silver nitrate": "3.400 g", salt: "1.229 g" },
      dried: ["2.987 g", "2.985 g"],
      washes: 3,
      tests: { filtrate: "cloudy", lastWash: "negative" },
    },
    fault: "4.300 g of silver nitrate were weighed and 3.400 g written down.",
    accept: ["too-heavy", "reagent-short"],
  },
  {
    // Theory 50.0 g, a crop of 35.5 g; as CuSO4·H2O 35.5 x 177.61/249.68 = 25.25 g. Heated to CuSO4 the monohydrate keeps
    // 159.60/177.61 = 89.9 % (pentahydrate 63.9 %).
    id: "e16-blue-vitriol-dried-at-110",
    request: blueVitriol,
    observations: {
      weighed: { "copper oxide": "16.8 g", "battery acid": "53.1 g" },
      temperature: "20 °C",
      dried: ["27.4 g", "25.3 g", "25.3 g"],
      ignition: { before: "1.000 g", after: "0.898 g", residue: "CuSO4" },
      note: "pale powder on top",
    },
    fault: "Dried in the oven at 110 °C down to the monohydrate.",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  },
  {
    // Theory 123 g (60.1 g MgSO4) in 107 g of water. At 35 °C 100 g of water keep 42.7 g MgSO4: 60.1 - 0.488 x = 0.427 (107 - 0.512 x),
    // x = 53.3 g (76 g at 20 °C); rinse 6.5 g, handling 1.8 g: 45.0 g.
    id: "e17-epsom-salt-filtered-warm",
    request: {
      equation: "MgO + H2SO4 + 6 H2O -> MgSO4·7H2O",
      product: "MgSO4·7H2O",
      materials: [
        { name: "magnesia", form: "MgO", excess: "5 %" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { product: "123 g" },
    },
    observations: {
      weighed: { magnesia: "21.2 g", "battery acid": "132.3 g" },
      temperature: "35 °C",
      dried: ["45.6 g", "45.0 g", "45.0 g"],
    },
    fault: "Filtered when the liquor had cooled to 35 °C only, and the mother liquor thrown away.",
    accept: ["loss-explained", "consistent"],
  },
  {
    // Planned acid 55.3 x 0.37/98.08 = 0.2086 mol, theory 60.0 g. Titrated 28 %: 0.1579 mol, 45.4 g (25.5 g ZnSO4). Boiled to a skin, 38 g of
    // water left: 25.5 - 0.5615 x = 0.538 (38 - 0.4385 x), x = 15.5 g, rinse 2 g: 13.5 g. The mother liquor, boiled down again, gave 20.3 g:
    // 33.8 g, 74 % of what the acid gives, 56 % of the planned theory.
    id: "e18-zinc-sulfate-weak-battery-acid",
    request: {
      equation: "Zn + H2SO4 + 7 H2O -> ZnSO4·7H2O + H2",
      product: "ZnSO4·7H2O",
      materials: [
        { name: "zinc", form: "Zn", excess: "5 %" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { product: "60 g" },
    },
    observations: {
      weighed: { zinc: "14.4 g", "battery acid": "55.3 g" },
      strengths: { "battery acid": "28 %" },
      crops: ["13.5 g", "20.3 g"],
    },
    fault: "The battery acid was from a used battery: 28 %, titrated afterwards.",
    accept: ["reagent-short", "loss-explained"],
  },
  {
    // Theory 80.0 g, crops about 38 and 23 g. Boiled over: 20 mL of about 115 mL, 17 %. Crops 0.826 x 40.7 - 2.3 = 31 g and
    // 0.826 x 23.1 = 19 g, less handling: 30.8 and 18.3 g.
    id: "e19-green-vitriol-boiled-over",
    request: greenVitriol,
    observations: {
      weighed: { "iron nails": "17.7 g", "dilute sulfuric acid": "141.1 g" },
      lost: [{ at: "concentrate", volume: "20 mL" }],
      temperature: "20 °C",
      crops: ["30.8 g", "18.3 g"],
    },
    fault: "About 20 mL boiled over while the liquor was brought to its mass.",
    accept: ["spilled"],
  },
  {
    // Planned 27.8/278.01 = 0.1000 mol, theory 39.2 g (392.1). (NH4)2SO4 10.3/132.14 = 0.0779 mol: 30.6 g. The liquor keeps about 11 g:
    // 19.5 g, rinse and handling 0.8 g: 18.7 g.
    id: "e20-mohr-salt-ammonium-sulfate-short",
    request: mohr,
    observations: {
      weighed: { "green vitriol": "27.8 g", "ammonium sulfate": "10.3 g" },
      temperature: "20 °C",
      dried: ["19.0 g", "18.7 g", "18.7 g"],
    },
    fault: "Of the ammonium sulfate 10.3 g were taken in place of 13.3 g.",
    accept: ["reagent-short", "loss-explained"],
  },
  {
    // Ni 26.3/262.84 = 0.10006 mol, theory 11.88 g (NiCO3 118.70). Green slime, weighed once: 11.5 g and 4.4 g of water: 15.9 g.
    id: "e21-nickel-carbonate-weighed-damp",
    request: {
      equation: "NiSO4 + NaHCO3 -> NiCO3 + Na2SO4 + CO2 + H2O",
      product: "NiCO3",
      materials: [
        { name: "nickel sulfate", form: "NiSO4·6H2O" },
        { name: "baking soda", form: "NaHCO3", excess: "5 %" },
      ],
      scale: { material: "nickel sulfate", portion: "26.3 g" },
    },
    observations: {
      weighed: { "nickel sulfate": "26.3 g", "baking soda": "17.7 g" },
      dried: "15.9 g",
      washes: 4,
      tests: { filtrate: "clear", lastWash: "negative" },
    },
    fault: "Dried for an hour only and weighed once: 4.4 g of water in it.",
    accept: ["wet", "other-formula-fits"],
  },
  {
    // 85.0/84.99 = 1.000 mol, theory 101.1 g KNO3 beside 58.4 g NaCl. In 59.5 g of water at 20 °C stay about 19 g KNO3 and 21 g NaCl. Never
    // filtered hot: 80 g KNO3 (after the rinse) and 37 g NaCl in one crop: 117 g, 68 % KNO3.
    id: "e22-saltpetre-not-filtered-hot",
    request: saltpetre,
    observations: {
      weighed: { "Chile saltpetre": "85.0 g", "muriate of potash": "74.6 g" },
      temperature: "20 °C",
      dried: ["117.9 g", "116.9 g", "116.8 g"],
      assay: "68 %",
    },
    fault: "The hot filtration was left out: the sodium chloride is in the crystals.",
    accept: ["impure", "unwashed"],
  },
  {
    // Zn 144.0/287.54 = 0.5008 mol: Zn5(CO3)2(OH)6 (548.96) 54.98 g, ZnCO3 (125.39) 62.80 g; 0.8 g lost. ZnCO3 leaves 81.38/125.39 = 64.9 %
    // (the basic carbonate 74.1 %).
    id: "e23-zinc-carbonate-normal-for-basic",
    request: {
      equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
      product: "Zn5(CO3)2(OH)6",
      materials: [
        { name: "moss killer", form: "ZnSO4·7H2O" },
        { name: "washing soda", form: "Na2CO3·10H2O", excess: "5 %" },
      ],
      scale: { material: "moss killer", portion: "144.0 g" },
    },
    observations: {
      weighed: { "moss killer": "144.0 g", "washing soda": "150.5 g" },
      dried: ["62.3 g", "62.0 g", "62.0 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "negative" },
      ignition: { before: "1.000 g", after: "0.650 g" },
    },
    fault: "Cold, under carbon dioxide, the normal carbonate precipitated.",
    accept: ["other-formula-fits"],
  },
  {
    // ZnO 20.0/81.38 = 0.2458 mol, theory 53.94 g (219.5). Acid 124.0 g of 15 %: 0.3097 mol (25 %: 0.516), dissolves 0.1549 mol: 34.0 g of
    // acetate, 7.4 g ZnO stay: 41.4 g, all evaporated together.
    id: "e24-zinc-acetate-weak-essence",
    request: {
      equation: "ZnO + 2 CH3COOH + H2O -> Zn(CH3COO)2·2H2O",
      product: "Zn(CH3COO)2·2H2O",
      materials: [
        { name: "zinc white", form: "ZnO" },
        { name: "vinegar essence", form: "CH3COOH", strength: "25 %", excess: "5 %" },
      ],
      scale: { material: "zinc white", portion: "20.0 g" },
    },
    observations: {
      weighed: { "zinc white": "20.0 g", "vinegar essence": "124.0 g" },
      pH: 6.5,
      dried: ["41.5 g", "41.3 g", "41.3 g"],
      note: "white powder did not dissolve",
    },
    fault: "The essence was 15 %, not 25 %; the zinc oxide that did not dissolve was evaporated with the rest.",
    accept: ["reagent-short", "unreacted"],
  },
  {
    // CaCO3 30.0/100.09 = 0.2997 mol, theory 57.0 g (570.5). Of the chalk 15 % (4.5 g) stayed under a crust: 48.45 + 4.5 = 52.95 g, 0.4 g
    // lost: 52.6 g. CaO left: 0.2949 of the citrate, 0.5603 of chalk: (48.45 x 0.2949 + 4.5 x 0.5603)/52.95 = 31.7 %.
    id: "e25-calcium-citrate-chalk-left",
    request: {
      equation: "CaCO3 + C6H8O7 + H2O -> Ca3(C6H5O7)2·4H2O + CO2",
      product: "Ca3(C6H5O7)2·4H2O",
      materials: [
        { name: "chalk", form: "CaCO3" },
        { name: "citric acid", form: "C6H8O7·H2O", excess: "2 %" },
      ],
      scale: { material: "chalk", portion: "30.0 g" },
    },
    observations: {
      weighed: { chalk: "30.0 g", "citric acid": "42.8 g" },
      pH: 3.2,
      dried: ["52.7 g", "52.6 g"],
      ignition: { before: "1.000 g", after: "0.317 g", residue: "CaO" },
      note: "a pinch foams in vinegar",
    },
    fault: "The chalk was coarse; a crust of citrate kept 15 % of it from the acid.",
    accept: ["unreacted", "mixture-fits"],
  },
  {
    // Cu 50.0/249.68 = 0.2003 mol, theory 12.73 g. 12.5 g dried on the hot plate took 1.7 g of oxygen (all as CuO: 3.15 g): 14.2 g. Iron
    // left over cannot do it: 11.8 g and 1.55 g for full exchange are 13.3 g at most.
    id: "e26-cement-copper-scorched",
    request: cementCopper,
    observations: {
      weighed: { "blue vitriol": "50.0 g", "iron filings": "11.8 g" },
      dried: ["14.1 g", "14.2 g", "14.2 g"],
      washes: 4,
      tests: { lastWash: "negative" },
      note: "dark brown to black",
    },
    fault: "Dried on the hot plate in air: half of the copper became oxide.",
    accept: ["mixture-fits", "too-heavy"],
  },
  {
    // Ag 8.50/169.87 = 0.05004 mol, theory 5.40 g. Copper 2.4 g less 1.59 g used leaves 0.81 g, scraped off with it: 5.3 + 0.8 = 6.1 g.
    id: "e27-silver-with-copper-bits",
    request: {
      equation: "AgNO3 + Cu -> Ag + Cu(NO3)2",
      product: "Ag",
      materials: [
        { name: "silver nitrate", form: "AgNO3" },
        { name: "copper wire", form: "Cu", excess: "50 %" },
      ],
      scale: { material: "silver nitrate", portion: "8.50 g" },
      readability: { mass: "0.01 g" },
    },
    observations: {
      weighed: { "silver nitrate": "8.50 g", "copper wire": "2.40 g" },
      dried: ["6.12 g", "6.11 g"],
      washes: 4,
      tests: { lastWash: "negative" },
    },
    fault: "What was left of the wire broke up and was collected with the silver.",
    accept: ["unreacted", "too-heavy"],
  },
  {
    // Theory 56.03 g. Four fifths decomposed: 100.0 - 0.8 x 43.97 = 64.8 g.
    id: "e28-lime-half-fired",
    request: lime,
    observations: { weighed: { chalk: "100.0 g" }, dried: "64.8 g" },
    fault: "The kiln was switched off too early: a fifth of the chalk is still chalk.",
    accept: ["unreacted", "mixture-fits"],
  },
  {
    // Theory 40.0 x 2 x 79.545/221.11 = 28.78 g. The carbonate contained 15 % of water: 24.46 g.
    id: "e29-copper-oxide-from-damp-carbonate",
    request: {
      equation: "Cu2(OH)2CO3 -> CuO + CO2 + H2O",
      product: "CuO",
      materials: [{ name: "copper carbonate", form: "Cu2(OH)2CO3" }],
      scale: { material: "copper carbonate", portion: "40.0 g" },
    },
    observations: {
      weighed: { "copper carbonate": "40.0 g" },
      dried: [
        { gross: "112.9 g", tare: "88.5 g" },
        { gross: "112.9 g", tare: "88.5 g" },
      ],
    },
    fault: "The copper carbonate was weighed damp, with 15 % of water.",
    accept: ["reagent-short", "lighter-than-losses-explain"],
  },
  {
    // 200.0/172.17 = 1.1616 mol: half hydrate (145.15) 168.6 g, CaSO4 (136.14) 158.1 g; 0.4 g dust.
    id: "e30-plaster-dead-burnt",
    request: {
      equation: "CaSO4·2H2O -> CaSO4·0.5H2O + H2O",
      product: "CaSO4·0.5H2O",
      materials: [{ name: "gypsum", form: "CaSO4·2H2O" }],
      scale: { material: "gypsum", portion: "200.0 g" },
    },
    observations: { weighed: { gypsum: "200.0 g" }, dried: ["157.8 g", "157.7 g"], note: "does not set" },
    fault: "Fired at 400 °C in place of 150 °C: all water is gone.",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  },
  {
    // 50.0/58.32 = 0.8573 mol, theory 34.55 g. 57 % of the water gone: 50.0 - 0.57 x 15.44 = 41.2 g. A sample at white heat: (34.55/41.2) = 83.9 %.
    id: "e31-magnesia-not-hot-enough",
    request: {
      equation: "Mg(OH)2 -> MgO + H2O",
      product: "MgO",
      materials: [{ name: "magnesium hydroxide", form: "Mg(OH)2" }],
      scale: { material: "magnesium hydroxide", portion: "50.0 g" },
    },
    observations: {
      weighed: { "magnesium hydroxide": "50.0 g" },
      dried: "41.2 g",
      ignition: { before: "2.000 g", after: "1.677 g" },
    },
    fault: "The kiln had not reached its temperature in the middle: two fifths are still hydroxide.",
    accept: ["unreacted", "mixture-fits"],
  },
  {
    // Soap 30.6/306.46 = 0.09985 mol, theory 31.57 g (632.3). Soap flakes with a fifth of water and salt: 25.26 g; 0.4 g lost.
    id: "e32-zinc-stearate-damp-soap",
    request: {
      equation: "ZnSO4 + NaC18H35O2 -> Zn(C18H35O2)2 + Na2SO4",
      product: "Zn(C18H35O2)2",
      materials: [
        { name: "zinc sulfate", form: "ZnSO4·7H2O", excess: "10 %" },
        { name: "sodium stearate", form: "NaC18H35O2" },
      ],
      scale: { material: "sodium stearate", portion: "30.6 g" },
    },
    observations: {
      weighed: { "zinc sulfate": "15.8 g", "sodium stearate": "30.6 g" },
      dried: ["24.9 g", "24.9 g"],
      washes: 3,
      tests: { lastWash: "negative" },
    },
    fault: "The sodium stearate was household soap flakes with a fifth of water and filler.",
    accept: ["reagent-short", "lighter-than-losses-explain"],
  },
  {
    // Soap 20.0/306.46 = 0.06526 mol, theory 20.57 g (630.5). Na2SO4 made 0.03263 x 142.04 = 4.63 g, copper sulfate over 0.8 g; the fluffy
    // soap kept two fifths of the salts after one splash: 2.2 g. 20.4 + 2.2 = 22.6 g.
    id: "e33-copper-stearate-salts-in-it",
    request: {
      equation: "CuSO4 + NaC18H35O2 -> Cu(C18H35O2)2 + Na2SO4",
      product: "Cu(C18H35O2)2",
      materials: [
        { name: "copper sulfate", form: "CuSO4·5H2O", excess: "10 %" },
        { name: "sodium stearate", form: "NaC18H35O2" },
      ],
      scale: { material: "sodium stearate", portion: "20.0 g" },
    },
    observations: {
      weighed: { "copper sulfate": "9.0 g", "sodium stearate": "20.0 g" },
      dried: ["22.8 g", "22.6 g", "22.6 g"],
      washes: 1,
      tests: { lastWash: "positive" },
    },
    fault: "Rinsed once with a splash: sulfates of the liquor dried in.",
    accept: ["unwashed"],
  },
  {
    // 80.0 g (51.1 g CuSO4) in 90 g of water in all. At 45 °C 100 g keep 31.3 g CuSO4: 51.1 - 0.639 x = 0.313 (89.7 - 0.361 x), x = 43.8 g
    // (58 g at 20 °C); rinse 2.6 g, handling 1.3 g: 39.9 g. The temperature was not written down.
    id: "e34-blue-vitriol-recrystallised-warm",
    request: {
      equation: "CuSO4·5H2O -> CuSO4·5H2O",
      product: "CuSO4·5H2O",
      materials: [{ name: "crude blue vitriol", form: "CuSO4·5H2O" }],
      scale: { material: "crude blue vitriol", portion: "80.0 g" },
    },
    observations: { weighed: { "crude blue vitriol": "80.0 g" }, dried: ["40.2 g", "39.9 g", "39.9 g"] },
    fault: "Filtered at about 45 °C because time was short.",
    accept: ["loss-explained", "lighter-than-losses-explain"],
  },
  {
    // 60.0 g in 35 g of water; the liquor keeps 11 g at 20 °C, rinse and handling 3.3 g: 45.7 g. The dish of 38.4 g was not taken off: 84.1 g.
    id: "e35-saltpetre-tare-forgotten",
    request: {
      equation: "KNO3 -> KNO3",
      product: "KNO3",
      materials: [{ name: "crude saltpetre", form: "KNO3" }],
      scale: { material: "crude saltpetre", portion: "60.0 g" },
    },
    observations: {
      weighed: { "crude saltpetre": "60.0 g" },
      temperature: "20 °C",
      dried: ["84.3 g", "84.1 g", "84.1 g"],
    },
    fault: "The dish of 38.4 g was weighed with the crystals.",
    accept: ["too-heavy"],
  },
  {
    // Mg 123.2/246.47 = 0.49986 mol: Mg5(CO3)4(OH)2·4H2O (467.64) 46.75 g; MgCO3·3H2O (138.36) 69.16 g, 3.4 g of it in liquor and wash: 65.8 g.
    // It leaves 40.30/138.36 = 29.1 % MgO (the basic carbonate 43.1 %).
    id: "e36-magnesia-alba-cold",
    request: {
      equation: "MgSO4 + Na2CO3 + H2O -> Mg5(CO3)4(OH)2·4H2O + Na2SO4 + CO2",
      product: "Mg5(CO3)4(OH)2·4H2O",
      materials: [
        { name: "Epsom salt", form: "MgSO4·7H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "Epsom salt", portion: "123.2 g" },
    },
    observations: {
      weighed: { "Epsom salt": "123.2 g", "soda ash": "55.7 g" },
      dried: ["66.4 g", "65.8 g", "65.8 g"],
      washes: 4,
      tests: { lastWash: "negative" },
      ignition: { before: "1.000 g", after: "0.292 g" },
    },
    fault: "Precipitated cold and dried in air: needles of MgCO3·3H2O.",
    accept: ["other-formula-fits", "other-hydrate-fits"],
  },
  {
    // Acid 132.4 x 0.37/98.08 = 0.4995 mol wants 0.999 mol NH3; 178.7 g of 7 % is 0.7345 mol (10 %: 1.049). 0.235 mol (NH4)2SO4 31.1 g and
    // 0.2645 mol NH4HSO4 30.4 g: 61.5 g if all is evaporated, less 1.2 g on the glass.
    id: "e37-ammonium-sulfate-old-ammonia",
    request: {
      equation: "NH3 + H2SO4 -> (NH4)2SO4",
      product: "(NH4)2SO4",
      materials: [
        { name: "ammonia water", form: "NH3", strength: "10 %", excess: "5 %" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { product: "66 g" },
    },
    observations: {
      weighed: { "ammonia water": "178.7 g", "battery acid": "132.4 g" },
      pH: 1,
      dried: ["60.9 g", "60.3 g", "60.3 g"],
      note: "sticky",
    },
    fault: "The ammonia had gone from the old bottle: 7 % were left of 10 %.",
    accept: ["liquor-ph", "reagent-short"],
  },
  {
    // KHC4H4O6 47.0/188.18 = 0.24976 mol, theory 70.49 g (282.2). Na2CO3·H2O 13.3/124.00 = 0.10726 mol for 0.12488: 85.9 %. 60.5 g of salt and
    // 6.6 g of cream of tartar: 67.1 g; 0.6 g lost.
    id: "e38-rochelle-salt-soda-monohydrate",
    request: {
      equation: "KHC4H4O6 + Na2CO3 + H2O -> KNaC4H4O6·4H2O + CO2",
      product: "KNaC4H4O6·4H2O",
      materials: [
        { name: "cream of tartar", form: "KHC4H4O6" },
        { name: "soda ash", form: "Na2CO3" },
      ],
      scale: { material: "cream of tartar", portion: "47.0 g" },
    },
    observations: {
      weighed: { "cream of tartar": "47.0 g", "soda ash": "13.3 g" },
      pH: 4,
      dried: ["66.9 g", "66.5 g", "66.5 g"],
      note: "sand at the bottom that would not dissolve",
    },
    fault:
      "The soda ash was the monohydrate; a seventh of the cream of tartar stayed and was evaporated with the rest.",
    accept: ["hydrate-mix-up", "unreacted"],
  },
  {
    // Borax 95.3/381.4 = 0.2499 mol, theory 61.8 g. HCl 95.7 g of 15 %: 0.394 mol for 0.4998 (20 %: 0.525): 48.7 g of boric acid, 20 g of borax
    // stay dissolved. The liquor, better a solvent for it, keeps 18 g: 30.7 g, 0.7 g lost.
    id: "e39-boric-acid-weak-muriatic-acid",
    request: boricAcid,
    observations: {
      weighed: { borax: "95.3 g", "muriatic acid": "95.7 g" },
      pH: 7,
      temperature: "20 °C",
      dried: ["30.4 g", "30.0 g"],
    },
    fault: "The muriatic acid was 15 %: not all of the borax was taken apart.",
    accept: ["reagent-short", "liquor-ph"],
  },
  {
    // Cu 25.0/249.68 = 0.10013 mol, theory 40.03 g (399.9). About 33 g crystallised; a third went through a torn filter into the sink: 21.9 g.
    id: "e40-tutton-salt-torn-filter",
    request: {
      equation: "CuSO4 + (NH4)2SO4 + 6 H2O -> (NH4)2Cu(SO4)2·6H2O",
      product: "(NH4)2Cu(SO4)2·6H2O",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "ammonium sulfate", form: "(NH4)2SO4" },
      ],
      scale: { material: "blue vitriol", portion: "25.0 g" },
    },
    observations: {
      weighed: { "blue vitriol": "25.0 g", "ammonium sulfate": "13.3 g" },
      temperature: "20 °C",
      dried: ["22.1 g", "21.9 g", "21.9 g"],
    },
    fault: "The filter tore, a third of the crystals were lost, and nobody wrote it down.",
    accept: ["lighter-than-losses-explain", "loss-explained"],
  },
  {
    // Ni 26.3/262.84 = 0.10006 mol, theory 39.52 g (395.0). First crop 31.8 g; the mother liquor, evaporated to dryness and counted as a crop, gave
    // the 7.2 g it kept, wet with 2.4 g of water: 9.6 g. Together 41.4 g.
    id: "e41-nickel-double-salt-liquor-dried-in",
    request: {
      equation: "NiSO4 + (NH4)2SO4 + 6 H2O -> (NH4)2Ni(SO4)2·6H2O",
      product: "(NH4)2Ni(SO4)2·6H2O",
      materials: [
        { name: "nickel sulfate", form: "NiSO4·6H2O" },
        { name: "ammonium sulfate", form: "(NH4)2SO4" },
      ],
      scale: { material: "nickel sulfate", portion: "26.3 g" },
    },
    observations: {
      weighed: { "nickel sulfate": "26.3 g", "ammonium sulfate": "13.3 g" },
      temperature: "20 °C",
      crops: ["31.8 g", "9.6 g"],
    },
    fault: "The last of the mother liquor was evaporated and counted, still damp, as a second crop.",
    accept: ["wet", "too-heavy"],
  },
  {
    // Cu 25.0/249.68 = 0.10013 mol, theory 24.61 g (245.7). At 130 °C water and two NH3 go: Cu(NH3)2SO4 (193.7) 19.39 g; 0.5 g lost.
    // Acid: 2/193.7 = 10.33 mmol/g (4/245.7 = 16.28 before).
    id: "e42-tetraammine-overheated",
    request: {
      equation: "CuSO4·5H2O + 4 NH3 -> [Cu(NH3)4]SO4·H2O + 4 H2O",
      product: "[Cu(NH3)4]SO4·H2O",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "ammonia", form: "NH3", strength: "25 %", excess: "50 %" },
        { name: "spirit", form: "C2H5OH", aside: true, portion: "60 mL" },
      ],
      scale: { material: "blue vitriol", portion: "25.0 g" },
    },
    observations: {
      weighed: { "blue vitriol": "25.0 g", ammonia: "41.0 g" },
      dried: ["19.4 g", "18.9 g", "18.9 g"],
      acidPerGram: "10.3 ± 0.1 mmol/g",
      note: "pale green-blue powder, smelled of ammonia in the oven",
    },
    fault: "Dried at 130 °C: water and half of the ammonia went.",
    accept: ["other-formula-fits", "mixture-fits"],
  },
  {
    // Na2CO3·10H2O 100.0/286.1 = 0.3495 mol, theory 112.6 g. A crop of 80 g of decahydrate over a radiator: 80 x 142.04/322.19 = 35.3 g.
    // Fired again it loses nothing.
    id: "e43-glauber-salt-weathered",
    request: {
      equation: "Na2CO3 + H2SO4 + 9 H2O -> Na2SO4·10H2O + CO2",
      product: "Na2SO4·10H2O",
      materials: [
        { name: "washing soda", form: "Na2CO3·10H2O" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { material: "washing soda", portion: "100.0 g" },
    },
    observations: {
      weighed: { "washing soda": "100.0 g", "battery acid": "92.7 g" },
      temperature: "20 °C",
      dried: ["47.2 g", "36.0 g", "35.3 g", "35.3 g"],
      ignition: { before: "2.000 g", after: "1.998 g", residue: "Na2SO4" },
      note: "white powder",
    },
    fault: "Dried at 50 °C until constant: the crystals fell to anhydrous powder.",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  },
  {
    // Ca 50.0/147.01 = 0.3401 mol, theory 58.56 g. Water keeps 0.21 g CaSO4 (0.26 g gypsum) in 100 mL: twelve washes of 200 mL, nearly saturated,
    // 5.5 g; liquor 1.2 g; handling 1.2 g: 50.6 g.
    id: "e44-gypsum-washed-twelve-times",
    request: gypsum,
    observations: {
      weighed: { "calcium chloride": "50.0 g", "sodium sulfate": "50.8 g" },
      dried: ["50.7 g", "50.6 g"],
      washes: 12,
      tests: { filtrate: "clear", lastWash: "negative" },
    },
    fault: "Washed twelve times in place of twice; gypsum dissolves a little.",
    accept: ["loss-explained", "lighter-than-losses-explain"],
  },
  {
    // Al 47.4/474.4 = 0.09992 mol, theory 7.79 g of Al(OH)3, 5.09 g of Al2O3. 10.3 g weighed once, a sample leaves 49.5 %: 5.10 g of Al2O3, so all
    // the aluminium is there and 2.5 g are water (Al(OH)3 leaves 65.4 %).
    id: "e45-aluminium-hydroxide-damp-gel",
    request: {
      equation: "KAl(SO4)2 + NH3 + H2O -> Al(OH)3 + K2SO4 + (NH4)2SO4",
      product: "Al(OH)3",
      materials: [
        { name: "alum", form: "KAl(SO4)2·12H2O" },
        { name: "ammonia", form: "NH3", strength: "10 %", excess: "10 %" },
      ],
      scale: { material: "alum", portion: "47.4 g" },
    },
    observations: {
      weighed: { alum: "47.4 g", ammonia: "56.2 g" },
      dried: "10.3 g",
      washes: 4,
      tests: { filtrate: "clear", lastWash: "negative" },
      ignition: { before: "1.000 g", after: "0.495 g" },
    },
    fault: "The gel was bottled when it looked dry: a quarter of it is water.",
    accept: ["wet"],
  },

  // Good runs.
  {
    // Mn 16.9/169.01 = 0.09999 mol, theory 17.90 g (178.98); 0.5 g on paper and glass.
    id: "eg01-manganese-oxalate",
    request: {
      equation: "MnSO4 + (NH4)2C2O4 + 2 H2O -> MnC2O4·2H2O + (NH4)2SO4",
      product: "MnC2O4·2H2O",
      materials: [
        { name: "manganese sulfate", form: "MnSO4·H2O" },
        { name: "ammonium oxalate", form: "(NH4)2C2O4·H2O", excess: "5 %" },
      ],
      scale: { material: "manganese sulfate", portion: "16.9 g" },
    },
    observations: {
      weighed: { "manganese sulfate": "16.9 g", "ammonium oxalate": "15.0 g" },
      dried: ["17.5 g", "17.3 g", "17.3 g"],
      washes: 3,
      tests: { lastWash: "negative" },
    },
    fault: "none",
    accept: ["consistent", "loss-explained"],
  },
  {
    // Ag 5.02/169.87 = 0.02955 mol, theory 4.90 g (331.7); 4.76 g on a heavy dish.
    id: "eg02-silver-chromate-heavy-dish",
    request: {
      equation: "AgNO3 + K2CrO4 -> Ag2CrO4 + KNO3",
      product: "Ag2CrO4",
      materials: [
        { name: "silver nitrate", form: "AgNO3" },
        { name: "potassium chromate", form: "K2CrO4", excess: "3 %" },
      ],
      scale: { material: "silver nitrate", portion: "5.00 g" },
      readability: { mass: "0.01 g" },
    },
    observations: {
      weighed: { "silver nitrate": "5.02 g", "potassium chromate": "2.95 g" },
      dried: [
        { gross: "146.24 g", tare: "141.46 g" },
        { gross: "146.22 g", tare: "141.46 g" },
      ],
      washes: 3,
      tests: { filtrate: "clear", lastWash: "negative" },
    },
    fault: "none",
    accept: ["consistent", "loss-explained"],
  },
  {
    // NaHCO3 84.0/84.01 = 1.000 mol, theory 136.1 g; 133.0 g from the dish.
    id: "eg03-sodium-acetate-set-as-a-whole",
    request: {
      equation: "NaHCO3 + CH3COOH + 2 H2O -> CH3COONa·3H2O + CO2",
      product: "CH3COONa·3H2O",
      materials: [
        { name: "baking soda", form: "NaHCO3" },
        { name: "vinegar essence", form: "CH3COOH", strength: "25 %", excess: "2 %" },
      ],
      scale: { material: "baking soda", portion: "84.0 g" },
    },
    observations: {
      weighed: { "baking soda": "84.0 g", "vinegar essence": "246 g" },
      dried: ["134.8 g", "133.1 g", "133.0 g"],
    },
    fault: "none",
    // it set in the dish without a liquor, which is boiling further than the steps say: no fault, and what the verdict may name
    accept: ["consistent", "loss-explained", "boiled-further"],
  },
  {
    // Ca 100.0 x 0.94/147.01 = 0.6394 mol, theory 64.00 g; 1.6 g lost.
    id: "eg04-chalk-pack-with-assay",
    request: {
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O", assay: "94 %", pack: { size: "5 kg", price: "12.90 EUR" } },
        { name: "washing soda", form: "Na2CO3·10H2O", excess: "10 %" },
      ],
      scale: { material: "de-icer", portion: "100.0 g" },
    },
    observations: {
      weighed: { "de-icer": "100.0 g", "washing soda": "201.5 g" },
      dried: ["62.6 g", "62.4 g", "62.4 g"],
      washes: 3,
      tests: { filtrate: "clear", lastWash: "negative" },
    },
    fault: "none",
    accept: ["consistent", "loss-explained"],
  },
  {
    // Theory 50.0 g; the liquor keeps 14 g of the first crop at 20 °C, and half of that came as the second.
    id: "eg05-blue-vitriol-two-crops",
    request: blueVitriol,
    observations: {
      weighed: { "copper oxide": "16.9 g", "battery acid": "53.1 g" },
      temperature: "20 °C",
      crops: ["34.2 g", "6.1 g"],
    },
    fault: "none",
    accept: ["consistent", "loss-explained"],
  },
  {
    // Theory 80.0 g. 144 g of liquor with 100 g of water keep 39 g at 20 °C (26.5 g FeSO4 in 100 g): crop 40.7 g, rinse 2.3 g, handling 1.4 g.
    id: "eg06-green-vitriol-one-crop",
    request: greenVitriol,
    observations: {
      weighed: { "iron nails": "18.0 g", "dilute sulfuric acid": "141.0 g" },
      temperature: "20 °C",
      dried: ["37.6 g", "37.0 g", "37.0 g"],
    },
    fault: "none",
    accept: ["consistent", "loss-explained"],
  },
  {
    // Theory 56.03 g; 55.7 g in a crucible of more than a kilogram.
    id: "eg07-lime-in-a-large-crucible",
    request: lime,
    observations: {
      weighed: { chalk: "100.0 g" },
      dried: [
        { gross: "1186.2 g", tare: "1130.4 g" },
        { gross: "1186.1 g", tare: "1130.4 g" },
      ],
    },
    fault: "none",
    accept: ["consistent", "loss-explained"],
  },
  {
    // Theory 101.1 g; 82 g crystallise, rinse 2.2 g, handling 1.5 g, and 1.2 g of NaCl comes along: 79.3 g with 98.5 % of KNO3.
    id: "eg08-saltpetre-titrated",
    request: saltpetre,
    observations: {
      weighed: { "Chile saltpetre": "85.0 g", "muriate of potash": "74.6 g" },
      temperature: "20 °C",
      dried: ["79.9 g", "79.3 g", "79.3 g"],
      assay: "98.5 %",
    },
    fault: "none",
    accept: ["consistent", "loss-explained"],
  },
  {
    // Mg 24.6/246.47 = 0.09981 mol, theory 24.49 g (245.4); 0.8 g lost, dried in air.
    id: "eg09-struvite",
    request: {
      equation: "MgSO4 + (NH4)2HPO4 + NH3 + 6 H2O -> MgNH4PO4·6H2O + (NH4)2SO4",
      product: "MgNH4PO4·6H2O",
      materials: [
        { name: "Epsom salt", form: "MgSO4·7H2O" },
        { name: "diammonium phosphate", form: "(NH4)2HPO4", excess: "5 %" },
        { name: "ammonia", form: "NH3", strength: "10 %", excess: "20 %" },
      ],
      scale: { material: "Epsom salt", portion: "24.6 g" },
    },
    observations: {
      weighed: { "Epsom salt": "24.6 g", "diammonium phosphate": "13.9 g", ammonia: "20.5 g" },
      dried: ["24.1 g", "23.7 g", "23.7 g"],
      washes: 3,
      tests: { filtrate: "clear", lastWash: "negative" },
    },
    fault: "none",
    accept: ["consistent", "loss-explained"],
  },
  {
    // Cu 50.0/249.68 = 0.2003 mol, theory 12.73 g; 0.5 g of fine copper lost in decanting.
    id: "eg10-cement-copper",
    request: cementCopper,
    observations: {
      weighed: { "blue vitriol": "50.0 g", "iron filings": "11.8 g" },
      dried: ["12.3 g", "12.2 g", "12.2 g"],
      washes: 5,
      tests: { lastWash: "negative" },
    },
    fault: "none",
    accept: ["consistent", "loss-explained"],
  },
  {
    // Theory 58.56 g; liquor 1.2 g, two washes 0.9 g, paper and glass 0.9 g: 55.5 g.
    id: "eg11-gypsum",
    request: gypsum,
    observations: {
      weighed: { "calcium chloride": "50.0 g", "sodium sulfate": "50.8 g" },
      dried: ["55.8 g", "55.5 g", "55.5 g"],
      washes: 2,
      tests: { lastWash: "negative" },
    },
    fault: "none",
    accept: ["consistent", "loss-explained"],
  },
  {
    // Cu 49.7/249.68 = 0.19905 mol, theory 22.01 g; 0.6 g lost. It leaves 2 x 79.545/221.11 = 71.95 %.
    id: "eg12-malachite-checked-by-fire",
    request: malachite,
    observations: {
      weighed: { "blue vitriol": "49.7 g", "soda ash": "23.6 g" },
      dried: ["21.9 g", "21.4 g", "21.4 g"],
      washes: 3,
      tests: { filtrate: "clear", lastWash: "negative" },
      ignition: { before: "1.000 g", after: "0.720 g" },
    },
    fault: "none",
    accept: ["consistent", "loss-explained"],
  },
  {
    // Theory 39.2 g; 44 g of water keep 11.6 g at 20 °C; rinse 1.4 g, handling 0.8 g: 25.4 g, 65 %, low and ordinary.
    id: "eg13-mohr-salt-low-and-ordinary",
    request: mohr,
    observations: {
      weighed: { "green vitriol": "27.8 g", "ammonium sulfate": "13.2 g" },
      temperature: "20 °C",
      dried: ["25.7 g", "25.4 g", "25.4 g"],
    },
    fault: "none",
    accept: ["consistent", "loss-explained"],
  },
  {
    // Theory 55.0 x 5 x 81.38/548.96 = 40.77 g; 0.3 g of dust.
    id: "eg14-zinc-oxide-fired",
    request: {
      equation: "Zn5(CO3)2(OH)6 -> ZnO + CO2 + H2O",
      product: "ZnO",
      materials: [{ name: "basic zinc carbonate", form: "Zn5(CO3)2(OH)6" }],
      scale: { material: "basic zinc carbonate", portion: "55.0 g" },
    },
    observations: {
      weighed: { "basic zinc carbonate": "55.0 g" },
      dried: ["40.6 g", "40.5 g"],
    },
    fault: "none",
    accept: ["consistent", "loss-explained"],
  },
  {
    // Theory 61.8 g; the liquor keeps 13 g of the first crop, half of that came as the second.
    id: "eg15-boric-acid-two-crops",
    request: boricAcid,
    observations: {
      weighed: { borax: "95.3 g", "muriatic acid": "96.0 g" },
      temperature: "20 °C",
      crops: ["47.6 g", "5.8 g"],
    },
    fault: "none",
    accept: ["consistent", "loss-explained"],
  },
];
