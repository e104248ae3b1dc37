/**
 * Runs of a school and of a studio, written before anybody looked at what the verdict says of them: 38 with one planted
 * fault each and 12 that went well. Every mass is calculated by hand from standard atomic weights (IUPAC 2021, rounded to
 * 0.001) in the comment over the run; solubilities and what escapes or adheres are from memory. All weighings are invented.
 */
import type { FindingCode, Observations, PlanRequest } from "preparative";

export interface BlindRun {
  readonly id: string;
  readonly request: PlanRequest;
  readonly observations: Observations;
  /** What really happened. */
  readonly fault: string;
  /** First findings that a fair teacher would accept. */
  readonly accept: readonly FindingCode[];
}

/** A school balance of 0.01 g and a measuring cylinder of 1 mL. */
const readability = { mass: "0.01 g", volume: "1 mL" } as const;

const PLANS = {
  mnco3: {
    equation: "MnSO4 + Na2CO3 -> MnCO3 + Na2SO4",
    product: "MnCO3",
    materials: [
      { name: "manganese sulfate", form: "MnSO4·H2O" },
      { name: "soda ash", form: "Na2CO3", excess: "10 %" },
    ],
    scale: { material: "manganese sulfate", portion: "16.90 g" },
    readability,
  },
  mgoh2: {
    equation: "MgCl2 + 2 NaOH -> Mg(OH)2 + 2 NaCl",
    product: "Mg(OH)2",
    materials: [
      { name: "magnesium chloride", form: "MgCl2·6H2O" },
      { name: "caustic soda", form: "NaOH" },
    ],
    scale: { material: "magnesium chloride", portion: "20.33 g" },
    readability,
  },
  pb: {
    equation: "Zn + Pb(NO3)2 -> Pb + Zn(NO3)2",
    product: "Pb",
    materials: [
      { name: "zinc strip", form: "Zn", inExcess: true },
      { name: "lead nitrate", form: "Pb(NO3)2" },
    ],
    scale: { material: "lead nitrate", portion: "16.56 g" },
    readability,
  },
  mohr: {
    equation: "FeSO4 + (NH4)2SO4 + 6 H2O -> (NH4)2Fe(SO4)2·6H2O",
    product: "(NH4)2Fe(SO4)2·6H2O",
    materials: [
      { name: "green vitriol", form: "FeSO4·7H2O" },
      { name: "ammonium sulfate", form: "(NH4)2SO4" },
    ],
    scale: { material: "green vitriol", portion: "27.80 g" },
    readability,
  },
  srox: {
    equation: "Sr(NO3)2 + K2C2O4 + H2O -> SrC2O4·H2O + 2 KNO3",
    product: "SrC2O4·H2O",
    materials: [
      { name: "strontium nitrate", form: "Sr(NO3)2" },
      { name: "potassium oxalate", form: "K2C2O4·H2O" },
    ],
    scale: { material: "strontium nitrate", portion: "10.58 g" },
    readability,
  },
  struv: {
    equation: "MgSO4 + (NH4)2HPO4 + NH3 + 6 H2O -> NH4MgPO4·6H2O + (NH4)2SO4",
    product: "NH4MgPO4·6H2O",
    materials: [
      { name: "Epsom salt", form: "MgSO4·7H2O" },
      { name: "diammonium phosphate", form: "(NH4)2HPO4" },
      { name: "ammonia water", form: "NH3", strength: "10 %", density: "0.957 g/mL", inExcess: true },
    ],
    scale: { material: "Epsom salt", portion: "12.32 g" },
    readability,
  },
  baso4: {
    equation: "BaCl2 + Na2SO4 -> BaSO4 + 2 NaCl",
    product: "BaSO4",
    materials: [
      { name: "barium chloride", form: "BaCl2·2H2O" },
      { name: "sodium sulfate", form: "Na2SO4", excess: "5 %" },
    ],
    scale: { material: "barium chloride", portion: "12.21 g" },
    readability,
  },
  cop: {
    equation: "3 CoCl2 + 2 Na3PO4 + 8 H2O -> Co3(PO4)2·8H2O + 6 NaCl",
    product: "Co3(PO4)2·8H2O",
    materials: [
      { name: "cobalt chloride", form: "CoCl2·6H2O" },
      { name: "trisodium phosphate", form: "Na3PO4·12H2O" },
    ],
    scale: { material: "cobalt chloride", portion: "14.28 g" },
    readability,
  },
  cooh2: {
    equation: "CoCl2 + 2 NaOH -> Co(OH)2 + 2 NaCl",
    product: "Co(OH)2",
    materials: [
      { name: "cobalt chloride", form: "CoCl2·6H2O" },
      { name: "caustic soda", form: "NaOH", excess: "5 %" },
    ],
    scale: { material: "cobalt chloride", portion: "11.90 g" },
    readability,
  },
  feox: {
    equation: "FeSO4 + H2C2O4 + 2 H2O -> FeC2O4·2H2O + H2SO4",
    product: "FeC2O4·2H2O",
    materials: [
      { name: "green vitriol", form: "FeSO4·7H2O" },
      { name: "oxalic acid", form: "H2C2O4·2H2O", excess: "10 %" },
    ],
    scale: { material: "green vitriol", portion: "27.80 g" },
    readability,
  },
  srco3: {
    equation: "Sr(NO3)2 + Na2CO3 -> SrCO3 + 2 NaNO3",
    product: "SrCO3",
    materials: [
      { name: "strontium nitrate", form: "Sr(NO3)2" },
      { name: "washing soda", form: "Na2CO3·10H2O", excess: "5 %" },
    ],
    scale: { material: "strontium nitrate", portion: "21.16 g" },
    readability,
  },
  agcl: {
    equation: "AgNO3 + NaCl -> AgCl + NaNO3",
    product: "AgCl",
    materials: [
      { name: "silver nitrate", form: "AgNO3" },
      { name: "table salt", form: "NaCl", excess: "10 %" },
    ],
    scale: { material: "silver nitrate", portion: "1.699 g" },
    readability,
  },
  mgac: {
    equation: "MgCO3 + 2 CH3COOH + 3 H2O -> Mg(CH3COO)2·4H2O + CO2",
    product: "Mg(CH3COO)2·4H2O",
    materials: [
      { name: "magnesium carbonate", form: "MgCO3" },
      { name: "vinegar", form: "CH3COOH", strength: "5 %", density: "1.005 g/mL", excess: "5 %" },
    ],
    scale: { material: "magnesium carbonate", portion: "8.43 g" },
    readability,
  },
  bacro4: {
    equation: "BaCl2 + K2CrO4 -> BaCrO4 + 2 KCl",
    product: "BaCrO4",
    materials: [
      { name: "barium chloride", form: "BaCl2·2H2O" },
      { name: "potassium chromate", form: "K2CrO4", excess: "3 %" },
    ],
    scale: { material: "barium chloride", portion: "6.11 g" },
    readability,
  },
  pbi2: {
    equation: "Pb(NO3)2 + 2 KI -> PbI2 + 2 KNO3",
    product: "PbI2",
    materials: [
      { name: "lead nitrate", form: "Pb(NO3)2" },
      { name: "potassium iodide", form: "KI" },
    ],
    scale: { material: "lead nitrate", portion: "6.62 g" },
    readability,
  },
  baco3: {
    equation: "BaCl2 + Na2CO3 -> BaCO3 + 2 NaCl",
    product: "BaCO3",
    materials: [
      { name: "barium chloride", form: "BaCl2·2H2O" },
      { name: "soda ash", form: "Na2CO3", excess: "5 %" },
    ],
    scale: { material: "barium chloride", portion: "24.43 g" },
    readability,
  },
  reckno3: {
    equation: "KNO3 -> KNO3",
    product: "KNO3",
    materials: [{ name: "saltpetre", form: "KNO3" }],
    scale: { material: "saltpetre", portion: "60.0 g" },
    readability,
  },
  plaster: {
    equation: "CaSO4·2H2O -> CaSO4·0.5H2O + 1.5 H2O",
    product: "CaSO4·0.5H2O",
    materials: [{ name: "gypsum", form: "CaSO4·2H2O" }],
    scale: { material: "gypsum", portion: "172.2 g" },
    readability,
  },
  alpo4: {
    equation: "KAl(SO4)2 + Na3PO4 -> AlPO4 + 3/2 Na2SO4 + 1/2 K2SO4",
    product: "AlPO4",
    materials: [
      { name: "potash alum", form: "KAl(SO4)2·12H2O" },
      { name: "trisodium phosphate", form: "Na3PO4·12H2O" },
    ],
    scale: { material: "potash alum", portion: "23.72 g" },
    readability,
  },
  epsom: {
    equation: "MgO + H2SO4 + 6 H2O -> MgSO4·7H2O",
    product: "MgSO4·7H2O",
    materials: [
      { name: "magnesia", form: "MgO" },
      { name: "dilute sulfuric acid", form: "H2SO4", strength: "2 mol/L", density: "1.12 g/mL" },
    ],
    scale: { material: "magnesia", portion: "8.06 g" },
    readability,
  },
  nioh2: {
    equation: "NiSO4 + 2 NaOH -> Ni(OH)2 + Na2SO4",
    product: "Ni(OH)2",
    materials: [
      { name: "nickel sulfate", form: "NiSO4·6H2O" },
      { name: "caustic soda", form: "NaOH", excess: "5 %" },
    ],
    scale: { material: "nickel sulfate", portion: "26.28 g" },
    readability,
  },
  coox: {
    equation: "CoCl2 + Na2C2O4 + 2 H2O -> CoC2O4·2H2O + 2 NaCl",
    product: "CoC2O4·2H2O",
    materials: [
      { name: "cobalt chloride", form: "CoCl2·6H2O" },
      { name: "sodium oxalate", form: "Na2C2O4" },
    ],
    scale: { material: "cobalt chloride", portion: "11.90 g" },
    readability,
  },
  mgmet: {
    equation: "Mg + H2SO4 + 7 H2O -> MgSO4·7H2O + H2",
    product: "MgSO4·7H2O",
    materials: [
      { name: "magnesium turnings", form: "Mg" },
      { name: "dilute sulfuric acid", form: "H2SO4", strength: "2 mol/L", density: "1.12 g/mL" },
    ],
    scale: { material: "magnesium turnings", portion: "2.43 g" },
    readability,
  },
  sro: {
    equation: "SrCO3 -> SrO + CO2",
    product: "SrO",
    materials: [{ name: "strontium carbonate", form: "SrCO3" }],
    scale: { material: "strontium carbonate", portion: "50.00 g" },
    readability,
  },
  nio: {
    equation: "NiCO3 -> NiO + CO2",
    product: "NiO",
    materials: [{ name: "nickel carbonate", form: "NiCO3" }],
    scale: { material: "nickel carbonate", portion: "23.74 g" },
    readability,
  },
  feso4: {
    equation: "Fe + H2SO4 + 7 H2O -> FeSO4·7H2O + H2",
    product: "FeSO4·7H2O",
    materials: [
      { name: "iron filings", form: "Fe", excess: "10 %" },
      { name: "dilute sulfuric acid", form: "H2SO4", strength: "2 mol/L", density: "1.12 g/mL" },
    ],
    scale: { material: "dilute sulfuric acid", portion: "100 mL" },
    readability,
  },
  kno3: {
    equation: "KCl + NaNO3 -> KNO3 + NaCl",
    product: "KNO3",
    materials: [
      { name: "potassium chloride", form: "KCl" },
      { name: "Chile saltpetre", form: "NaNO3" },
    ],
    scale: { material: "potassium chloride", portion: "37.3 g" },
    readability,
  },
  mgco3: {
    equation: "MgSO4 + Na2CO3 + 3 H2O -> MgCO3·3H2O + Na2SO4",
    product: "MgCO3·3H2O",
    materials: [
      { name: "Epsom salt", form: "MgSO4·7H2O" },
      { name: "soda ash", form: "Na2CO3", excess: "5 %" },
    ],
    scale: { material: "Epsom salt", portion: "24.65 g" },
    readability,
  },
  nico3: {
    equation: "NiSO4 + Na2CO3 -> NiCO3 + Na2SO4",
    product: "NiCO3",
    materials: [
      { name: "nickel sulfate", form: "NiSO4·6H2O" },
      { name: "soda ash", form: "Na2CO3" },
    ],
    scale: { material: "nickel sulfate", portion: "26.28 g" },
    readability,
  },
  ag2cro4: {
    equation: "2 AgNO3 + K2CrO4 -> Ag2CrO4 + 2 KNO3",
    product: "Ag2CrO4",
    materials: [
      { name: "silver nitrate", form: "AgNO3" },
      { name: "potassium chromate", form: "K2CrO4" },
    ],
    scale: { material: "silver nitrate", portion: "1.699 g" },
    readability,
  },
  pbcro4: {
    equation: "Pb(NO3)2 + K2CrO4 -> PbCrO4 + 2 KNO3",
    product: "PbCrO4",
    materials: [
      { name: "lead nitrate", form: "Pb(NO3)2" },
      { name: "potassium chromate", form: "K2CrO4", excess: "3 %" },
    ],
    scale: { material: "lead nitrate", portion: "6.62 g" },
    readability,
  },
  agi: {
    equation: "AgNO3 + KI -> AgI + KNO3",
    product: "AgI",
    materials: [
      { name: "silver nitrate", form: "AgNO3" },
      { name: "potassium iodide", form: "KI" },
    ],
    scale: { material: "silver nitrate", portion: "1.699 g" },
    readability,
  },
  mgo: {
    equation: "MgCO3 -> MgO + CO2",
    product: "MgO",
    materials: [{ name: "magnesite", form: "MgCO3" }],
    scale: { material: "magnesite", portion: "84.3 g" },
    readability,
  },
  bano3: {
    equation: "BaCO3 + 2 HNO3 -> Ba(NO3)2 + H2O + CO2",
    product: "Ba(NO3)2",
    materials: [
      { name: "barium carbonate", form: "BaCO3" },
      { name: "dilute nitric acid", form: "HNO3", strength: "2 mol/L", density: "1.066 g/mL" },
    ],
    scale: { material: "barium carbonate", portion: "19.73 g" },
    readability,
  },
  pbac: {
    equation: "PbO + 2 CH3COOH + 2 H2O -> Pb(CH3COO)2·3H2O",
    product: "Pb(CH3COO)2·3H2O",
    materials: [
      { name: "litharge", form: "PbO" },
      { name: "vinegar", form: "CH3COOH", strength: "5 %", density: "1.005 g/mL", excess: "5 %" },
    ],
    scale: { material: "litharge", portion: "11.16 g" },
    acknowledge: ["lead-acid"],
    readability,
  },
  niso4: {
    equation: "NiO + H2SO4 + 5 H2O -> NiSO4·6H2O",
    product: "NiSO4·6H2O",
    materials: [
      { name: "nickel oxide", form: "NiO" },
      { name: "dilute sulfuric acid", form: "H2SO4", strength: "2 mol/L", density: "1.12 g/mL" },
    ],
    scale: { material: "nickel oxide", portion: "7.47 g" },
    readability,
  },
  alum: {
    equation: "Al2(SO4)3 + K2SO4 + 24 H2O -> 2 KAl(SO4)2·12H2O",
    product: "KAl(SO4)2·12H2O",
    materials: [
      { name: "aluminium sulfate", form: "Al2(SO4)3·18H2O" },
      { name: "potassium sulfate", form: "K2SO4" },
    ],
    scale: { material: "potassium sulfate", portion: "8.71 g" },
    readability,
  },
  nitutton: {
    equation: "NiSO4 + (NH4)2SO4 + 6 H2O -> (NH4)2Ni(SO4)2·6H2O",
    product: "(NH4)2Ni(SO4)2·6H2O",
    materials: [
      { name: "nickel sulfate", form: "NiSO4·6H2O" },
      { name: "ammonium sulfate", form: "(NH4)2SO4" },
    ],
    scale: { material: "nickel sulfate", portion: "26.28 g" },
    readability,
  },
  recbor: {
    equation: "H3BO3 -> H3BO3",
    product: "H3BO3",
    materials: [{ name: "boric acid", form: "H3BO3" }],
    scale: { material: "boric acid", portion: "30.0 g" },
    readability,
  },
  co3o4: {
    equation: "6 CoCO3 + O2 -> 2 Co3O4 + 6 CO2",
    product: "Co3O4",
    materials: [{ name: "cobalt carbonate", form: "CoCO3" }],
    scale: { material: "cobalt carbonate", portion: "23.79 g" },
    readability,
  },
  ag: {
    equation: "Cu + 2 AgNO3 -> 2 Ag + Cu(NO3)2",
    product: "Ag",
    materials: [
      { name: "copper sheet", form: "Cu", inExcess: true },
      { name: "silver nitrate", form: "AgNO3" },
    ],
    scale: { material: "silver nitrate", portion: "3.398 g" },
    readability,
  },
  pbso4: {
    equation: "Pb(NO3)2 + Na2SO4 -> PbSO4 + 2 NaNO3",
    product: "PbSO4",
    materials: [
      { name: "lead nitrate", form: "Pb(NO3)2" },
      { name: "sodium sulfate", form: "Na2SO4", excess: "5 %" },
    ],
    scale: { material: "lead nitrate", portion: "16.56 g" },
    readability,
  },
  mnso4: {
    equation: "MnCO3 + H2SO4 -> MnSO4·H2O + CO2",
    product: "MnSO4·H2O",
    materials: [
      { name: "manganese carbonate", form: "MnCO3" },
      { name: "dilute sulfuric acid", form: "H2SO4", strength: "2 mol/L", density: "1.12 g/mL" },
    ],
    scale: { material: "manganese carbonate", portion: "11.49 g" },
    readability,
  },
  al2o3: {
    equation: "2 Al(OH)3 -> Al2O3 + 3 H2O",
    product: "Al2O3",
    materials: [{ name: "alumina hydrate", form: "Al(OH)3" }],
    scale: { material: "alumina hydrate", portion: "78.0 g" },
    readability,
  },
  niox: {
    equation: "NiSO4 + K2C2O4 + 2 H2O -> NiC2O4·2H2O + K2SO4",
    product: "NiC2O4·2H2O",
    materials: [
      { name: "nickel sulfate", form: "NiSO4·6H2O" },
      { name: "potassium oxalate", form: "K2C2O4·H2O" },
    ],
    scale: { material: "nickel sulfate", portion: "13.14 g" },
    readability,
  },
} as const satisfies Readonly<Record<string, PlanRequest>>;

export const SEVENTH_RUNS: readonly BlindRun[] = [
  // 16.90 / 169.009 = 0.09999 mol; x 114.946 = 11.49 g; truly dry about 11.05 g, so 0.8 g of water is still in it
  {
    id: "k01-manganese-carbonate-still-drying",
    request: PLANS.mnco3,
    observations: {
      weighed: { "manganese sulfate": "16.90 g", "soda ash": "11.66 g" },
      washes: 2,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: ["13.62 g", "12.48 g", "11.87 g"],
    },
    fault: "Weighed three times while it was still losing water, and bottled damp.",
    accept: ["still-drying"],
  },
  // 20.33 / 203.295 = 0.1000 mol; x 58.319 = 5.83 g; 5.55 g obtained + 2.55 g of water
  {
    id: "k02-magnesium-hydroxide-weighed-too-early",
    request: PLANS.mgoh2,
    observations: {
      weighed: { "magnesium chloride": "20.33 g", "caustic soda": "8.00 g" },
      washes: 2,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: "8.10 g",
    },
    fault: "The slimy cake was weighed after an hour in the air: it was still wet.",
    accept: ["wet"],
  },
  // 16.56 / 331.208 = 0.05000 mol; x 207.2 = 10.36 g; 10.05 g obtained + 2.85 g of water
  {
    id: "k03-lead-sponge-weighed-wet",
    request: PLANS.pb,
    observations: { weighed: { "lead nitrate": "16.56 g" }, washes: 2, tests: { lastWash: "clear" }, dried: "12.90 g" },
    fault: "The sponge of lead was dabbed with paper and weighed at once, full of water.",
    accept: ["wet"],
  },
  // 0.1000 mol x 392.125 = 39.2 g in all, most of 28 g as first crop at 20 °C; last step 0.9 g of 29.5 g = 3 %
  {
    id: "k04-mohrs-salt-still-drying",
    request: PLANS.mohr,
    observations: {
      weighed: { "green vitriol": "27.80 g", "ammonium sulfate": "13.30 g" },
      temperature: "20 °C",
      wetCake: "35.20 g",
      dried: ["31.90 g", "30.40 g", "29.50 g"],
    },
    fault: "The crystals were weighed three times between papers and were still losing water.",
    accept: ["still-drying"],
  },
  // 10.58 / 211.628 = 0.04999 mol; x 193.653 = 9.68 g; 9.40 g obtained + 1.95 g of water
  {
    id: "k05-strontium-oxalate-damp",
    request: PLANS.srox,
    observations: {
      weighed: { "strontium nitrate": "10.58 g", "potassium oxalate": "9.21 g" },
      washes: 3,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: "11.35 g",
    },
    fault: "Weighed once, straight from the suction filter after an hour on the window sill.",
    accept: ["wet"],
  },
  // 12.32 / 246.466 = 0.04999 mol; x 245.404 = 12.27 g; 11.8 g obtained + 3.1 g of water
  {
    id: "k06-struvite-damp",
    request: PLANS.struv,
    observations: {
      weighed: { "Epsom salt": "12.32 g", "diammonium phosphate": "6.60 g" },
      washes: 2,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: "14.90 g",
    },
    fault: "Because it must not be warmed it was only left for an hour in the air, and weighed once.",
    accept: ["wet"],
  },
  // 12.21 / 244.257 = 0.04999 mol; x 233.383 = 11.67 g; 11.5 g + 0.74 g of 5.84 g of NaCl (0.1 mol x 58.44)
  {
    id: "k07-barium-sulfate-washed-once",
    request: PLANS.baso4,
    observations: {
      weighed: { "barium chloride": "12.21 g", "sodium sulfate": "7.46 g" },
      washes: 1,
      tests: { filtrate: "clear", lastWash: "cloudy" },
      dried: ["12.25 g", "12.24 g"],
    },
    fault: "Washed once with a little water: sodium chloride stayed in the cake.",
    accept: ["unwashed"],
  },
  // 14.28 / 237.923 = 0.06002 mol / 3 x 510.859 = 10.22 g; 10.05 g + 1.0 g of the 7.0 g of NaCl (0.120 mol)
  {
    id: "k08-cobalt-phosphate-not-washed",
    request: PLANS.cop,
    observations: {
      weighed: { "cobalt chloride": "14.28 g", "trisodium phosphate": "15.21 g" },
      washes: 0,
      tests: { filtrate: "clear", lastWash: "cloudy" },
      dried: ["11.07 g", "11.05 g"],
    },
    fault: "The filter was so slow that it was not washed at all.",
    accept: ["unwashed"],
  },
  // 11.90 / 237.923 = 0.05002 mol; x 92.947 = 4.65 g; 4.50 g + 0.75 g of 5.85 g of NaCl
  {
    id: "k09-cobalt-hydroxide-washed-once",
    request: PLANS.cooh2,
    observations: {
      weighed: { "cobalt chloride": "11.90 g", "caustic soda": "4.20 g" },
      washes: 1,
      tests: { filtrate: "clear", lastWash: "cloudy" },
      dried: ["5.26 g", "5.25 g"],
    },
    fault: "Washed once; silver nitrate still gave a cloud and it was dried all the same.",
    accept: ["unwashed"],
  },
  // 27.80 / 278.006 = 0.1000 mol; x 179.893 = 17.99 g; 17.5 g + 1.4 g of the 9.8 g H2SO4 and 1.3 g oxalic acid in the liquor
  {
    id: "k10-iron-oxalate-poorly-washed",
    request: PLANS.feox,
    observations: {
      weighed: { "green vitriol": "27.80 g", "oxalic acid": "13.87 g" },
      washes: 1,
      tests: { filtrate: "clear", lastWash: "cloudy" },
      dried: ["18.92 g", "18.90 g"],
    },
    fault: "Washed once: sulfuric and oxalic acid dried into the yellow powder.",
    accept: ["unwashed"],
  },
  // 21.16 / 211.628 = 0.09999 mol; x 147.628 = 14.76 g; 14.3 g obtained - 3.1 g = 11.2 g
  // Two codes: the loss is noted, and both say that the noted loss explains the mass.
  {
    id: "k11-strontium-carbonate-spilled",
    request: PLANS.srco3,
    observations: {
      weighed: { "strontium nitrate": "21.16 g", "washing soda": "30.05 g" },
      washes: 2,
      tests: { filtrate: "clear", lastWash: "clear" },
      lost: [{ of: "product", mass: "3.1 g" }],
      dried: ["11.17 g", "11.16 g"],
    },
    fault: "About 3 g of the dry powder was knocked off the tray and swept up.",
    accept: ["spilled", "loss-explained"],
  },
  // 1.699 / 169.872 = 0.01000 mol; x 143.318 = 1.433 g; 1.40 g - 0.31 g left on glass and paper = 1.09 g = 76 %
  {
    id: "k12-silver-chloride-left-in-beaker",
    request: PLANS.agcl,
    observations: {
      weighed: { "silver nitrate": "1.70 g", "table salt": "0.64 g" },
      washes: 2,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: ["1.09 g", "1.09 g"],
    },
    fault: "The curds stuck to the beaker and the filter paper, and nobody scraped them off.",
    accept: ["lighter-than-losses-explain"],
  },
  // 8.43 / 84.313 = 0.09998 mol; x 214.453 = 21.44 g; vinegar 0.21 mol x 60.052 / 0.05 = 252 g = 251 mL;
  // 80 of about 255 mL = 31 % lost: 14.7 g left; 95 % of it 13.9 g
  // Two codes: see k11.
  {
    id: "k13-magnesium-acetate-foamed-over",
    request: PLANS.mgac,
    observations: {
      weighed: { "magnesium carbonate": "8.43 g" },
      pH: 6,
      lost: [{ at: "add", of: "liquor", volume: "80 mL" }],
      dried: ["13.92 g", "13.90 g"],
    },
    fault: "It foamed over when the carbonate was added: about 80 mL of liquor went over the table.",
    accept: ["spilled", "loss-explained"],
  },
  // 6.11 / 244.257 = 0.02501 mol; x 253.319 = 6.34 g; 1.5 g ran through, 0.13 g left on glass: 4.71 g = 74 %
  {
    id: "k14-barium-chromate-through-filter",
    request: PLANS.bacro4,
    observations: {
      weighed: { "barium chloride": "6.11 g", "potassium chromate": "5.00 g" },
      washes: 2,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: ["4.72 g", "4.71 g"],
      note: "filtrate turbid yellow",
    },
    fault: "Filtered at once and cold: the finest part ran through the paper.",
    accept: ["lighter-than-losses-explain"],
  },
  // 6.62 / 331.208 = 0.01999 mol; x 461.008 = 9.21 g; 9.0 g obtained; 3.5 of 12.6 g of cake = 27.8 % lost: 6.50 g left
  // Two codes: see k11.
  {
    id: "k15-lead-iodide-cake-dropped",
    request: PLANS.pbi2,
    observations: {
      weighed: { "lead nitrate": "6.62 g", "potassium iodide": "6.64 g" },
      wetCake: "12.60 g",
      washes: 2,
      tests: { filtrate: "clear", lastWash: "clear" },
      lost: [{ of: "cake", mass: "3.5 g" }],
      dried: ["6.49 g", "6.48 g"],
    },
    fault: "Part of the moist cake fell into the sink on the way to the oven.",
    accept: ["spilled", "loss-explained"],
  },
  // 24.43 / 244.257 = 0.1000 mol; 11.13 / 286.138 = 0.03890 mol of carbonate; x 197.335 = 7.68 g; 97 % of it 7.45 g
  // Two codes: a cloudy liquor shows a lack of soda; only the size of it speaks for the crystals.
  {
    id: "k16-barium-carbonate-soda-crystals",
    request: PLANS.baco3,
    observations: {
      weighed: { "barium chloride": "24.43 g", "soda ash": "11.13 g" },
      washes: 2,
      tests: { filtrate: "cloudy", lastWash: "clear" },
      dried: ["7.46 g", "7.45 g"],
    },
    fault: "The jar of soda ash was filled with washing soda crystals, Na2CO3·10H2O.",
    accept: ["hydrate-mix-up", "reagent-short"],
  },
  // 16.90 / 223.054 = 0.07577 mol; x 114.946 = 8.71 g; 97 % of it 8.47 g; by the label 11.49 g: 74 %
  // Two codes: the mass alone does not tell the tetrahydrate from a loss that nobody noted.
  {
    id: "k17-manganese-carbonate-tetrahydrate",
    request: PLANS.mnco3,
    observations: {
      weighed: { "manganese sulfate": "16.90 g", "soda ash": "11.66 g" },
      washes: 2,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: ["8.48 g", "8.47 g"],
    },
    fault: "The jar held MnSO4·4H2O, not the monohydrate.",
    accept: ["hydrate-mix-up", "lighter-than-losses-explain"],
  },
  // 35 g of water; about 64 g in 100 g stays dissolved at 40 °C (from memory): 22.4 g; 37.6 g crystallises, 1 g stays on the filter;
  // at 20 °C 31.6 g in 100 g would stay: 11.1 g, 48.9 g crystallises
  {
    id: "k18-saltpetre-recrystallised-too-warm",
    request: PLANS.reckno3,
    observations: { weighed: { saltpetre: "60.00 g" }, temperature: "40 °C", dried: ["36.62 g", "36.60 g"] },
    fault: "Filtered after an hour, at 40 °C, because the lesson ended.",
    accept: ["loss-explained"],
  },
  // 172.2 g of CaSO4·2H2O would leave 172.2 x 145.142 / 172.164 = 145.2 g; plaster loses only 0.8 g of damp
  // Two codes: mass that does not fall is what an unfired batch shows too.
  {
    id: "k19-plaster-in-the-gypsum-tin",
    request: PLANS.plaster,
    observations: { weighed: { gypsum: "172.2 g" }, dried: ["171.6 g", "171.4 g"] },
    fault: "The tin labelled gypsum held burnt plaster already: almost nothing left it.",
    accept: ["hydrate-mix-up", "unreacted"],
  },
  // 4.66 / 166.002 / 2 = 0.01404 mol; x 461.008 = 6.47 g; 97 % of it 6.30 g
  {
    id: "k20-lead-iodide-iodide-short",
    request: PLANS.pbi2,
    observations: {
      weighed: { "lead nitrate": "6.62 g", "potassium iodide": "4.66 g" },
      washes: 2,
      tests: { filtrate: "cloudy", lastWash: "clear" },
      dried: ["6.31 g", "6.30 g"],
    },
    fault: "The jar of potassium iodide was empty at 4.66 g, and the batch was made with that.",
    accept: ["reagent-short"],
  },
  // 23.72 / 474.372 = 0.05000 mol; 12.6 / 380.12 = 0.03315 mol; x 121.952 = 4.04 g; 97 % of it 3.93 g
  {
    id: "k21-aluminium-phosphate-misread-balance",
    request: PLANS.alpo4,
    observations: {
      weighed: { "potash alum": "23.72 g", "trisodium phosphate": "19.01 g" },
      washes: 2,
      tests: { filtrate: "cloudy", lastWash: "clear" },
      dried: ["3.94 g", "3.93 g"],
    },
    fault: "Only 12.6 g of trisodium phosphate was taken, and the planned 19.01 g was written down.",
    accept: ["reagent-short"],
  },
  // 11.13 / 84.006 = 0.1325 mol of NaHCO3; / 2 x 197.335 = 13.07 g; 98 % of it 12.80 g; by the label 19.74 g
  {
    id: "k22-barium-carbonate-baking-soda",
    request: PLANS.baco3,
    observations: {
      weighed: { "barium chloride": "24.43 g", "soda ash": "11.13 g" },
      washes: 2,
      tests: { filtrate: "cloudy", lastWash: "clear" },
      dried: ["12.82 g", "12.80 g"],
      note: "it fizzed when the soda went in",
    },
    fault: "Baking soda was taken for soda ash: two hydrogencarbonates to one carbonate, carbon dioxide escaped.",
    accept: ["reagent-short"],
  },
  // 11.66 / 84.006 = 0.1388 mol of NaHCO3; / 2 x 114.946 = 7.98 g; 98 % of it 7.80 g; by the label 11.49 g
  {
    id: "k23-manganese-carbonate-baking-soda",
    request: PLANS.mnco3,
    observations: {
      weighed: { "manganese sulfate": "16.90 g", "soda ash": "11.66 g" },
      washes: 3,
      tests: { filtrate: "cloudy", lastWash: "clear" },
      dried: ["7.81 g", "7.80 g"],
      note: "bubbles on stirring",
    },
    fault: "Baking soda was taken for soda ash.",
    accept: ["reagent-short"],
  },
  // MgO 8.06 / 40.304 = 0.2000 mol; acid 0.101 L x 1.5 = 0.152 mol: 0.048 mol of MgO stays; 37.3 g of salt possible in all,
  // 18.3 g of it crystallised; pH 8.5 in place of 3
  // Two codes: the pH is what is seen, the lack of acid what it means.
  {
    id: "k24-epsom-salt-weak-acid",
    request: PLANS.epsom,
    observations: {
      weighed: { magnesia: "8.06 g" },
      measured: { "dilute sulfuric acid": "101 mL" },
      pH: 8.5,
      temperature: "20 °C",
      dried: ["18.40 g", "18.30 g"],
      note: "white solid left undissolved",
    },
    fault: "The bottle of 2 mol/L acid had been diluted to about 1.5 mol/L.",
    accept: ["reagent-short", "liquor-ph"],
  },
  // 26.28 / 262.839 = 0.09999 mol; NaOH 8.40 x 0.70 / 39.997 = 0.1470 mol / 2 = 0.0735 mol; x 92.707 = 6.81 g; 97 % of it 6.60 g
  {
    id: "k25-nickel-hydroxide-old-caustic-soda",
    request: PLANS.nioh2,
    observations: {
      weighed: { "nickel sulfate": "26.28 g", "caustic soda": "8.40 g" },
      washes: 3,
      tests: { filtrate: "cloudy", lastWash: "clear" },
      dried: ["6.62 g", "6.60 g"],
      note: "filtrate green",
    },
    fault: "The pellets had stood open and were wet: about 70 % NaOH.",
    accept: ["reagent-short"],
  },
  // 9 mL x 0.957 x 0.03 / 17.031 = 0.0152 mol of NH3 for 0.0500 mol; about half of 12.27 g precipitates: 6.2 g
  {
    id: "k26-struvite-stale-ammonia",
    request: PLANS.struv,
    observations: {
      weighed: { "Epsom salt": "12.32 g", "diammonium phosphate": "6.60 g" },
      washes: 2,
      tests: { filtrate: "cloudy", lastWash: "clear" },
      dried: ["6.21 g", "6.20 g"],
    },
    fault: "The ammonia water had lost its ammonia: about 3 % was left.",
    accept: ["reagent-short"],
  },
  // 11.90 / 237.923 = 0.05002 mol; CoC2O4 146.951: 7.35 g, 98 % of it 7.20 g; the dihydrate would be 9.15 g
  {
    id: "k27-cobalt-oxalate-oven-too-hot",
    request: PLANS.coox,
    observations: {
      weighed: { "cobalt chloride": "11.90 g", "sodium oxalate": "6.70 g" },
      washes: 2,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: ["7.21 g", "7.20 g"],
      note: "more violet than pink",
    },
    fault: "The oven stood at 190 °C: the dihydrate lost its water.",
    accept: ["other-hydrate-fits"],
  },
  // a crop of 14.6 g MgSO4·7H2O x 138.376 / 246.466 = 8.20 g; ignition of the monohydrate 120.361 / 138.376 = 0.870,
  // of the heptahydrate 120.361 / 246.466 = 0.488 (the ignition test is under Checks of the sheet)
  {
    id: "k28-epsom-salt-from-metal-oven",
    request: PLANS.mgmet,
    observations: {
      weighed: { "magnesium turnings": "2.43 g" },
      temperature: "20 °C",
      dried: ["8.21 g", "8.20 g"],
      ignition: { before: "2.00 g", after: "1.74 g" },
    },
    fault: "The crystals were dried at 110 °C and are the monohydrate now.",
    accept: ["other-hydrate-fits"],
  },
  // 50.00 / 147.628 = 0.3387 mol; full loss 0.3387 x 44.009 = 14.91 g; 60 % of it 8.94 g: 41.06 g left; full firing 35.09 g
  // Two codes: carbonate left in the oxide is a mixture of the two.
  {
    id: "k29-strontia-half-fired",
    request: PLANS.sro,
    observations: { weighed: { "strontium carbonate": "50.00 g" }, dried: "41.00 g" },
    fault: "The kiln only reached 1100 °C for an hour: three fifths of the carbonate had decomposed.",
    accept: ["unreacted", "mixture-fits"],
  },
  // 23.74 / 118.701 = 0.2000 mol; full loss 8.80 g; 75 % of it 6.60 g: 17.14 g left; full firing 14.94 g
  // Two codes: see k29.
  {
    id: "k30-nickel-oxide-half-fired",
    request: PLANS.nio,
    observations: {
      weighed: { "nickel carbonate": "23.74 g" },
      ignition: { before: "23.74 g", after: "17.15 g" },
      dried: "17.15 g",
    },
    fault: "Taken out of the kiln too early: a quarter of the carbonate was left.",
    accept: ["unreacted", "mixture-fits"],
  },
  // 0.2 mol FeSO4 = 30.4 g in 69.5 g of water; about 35 g in 100 g stays at 34 °C (from memory):
  // (30.4 - 151.901 x) / (69.5 - 126.105 x) = 0.355, x = 0.053 mol = 14.8 g; 95 % of it 14.0 g; 28 g expected at 20 °C
  {
    id: "k31-green-vitriol-filtered-warm",
    request: PLANS.feso4,
    observations: {
      weighed: { "iron filings": "12.30 g" },
      measured: { "dilute sulfuric acid": "100 mL" },
      temperature: "34 °C",
      dried: ["14.05 g", "14.00 g"],
    },
    fault: "Filtered while the liquor was still at 34 °C: half the crop stayed dissolved.",
    accept: ["loss-explained"],
  },
  // about 40 g of KNO3 crystallises; 8 mL of liquor adhering leaves about 2.3 g of NaCl and 2.1 g of KNO3: 44.4 g
  // Two codes: the test shows chloride in the product, from the liquor not rinsed off. The sheet has no line for this test;
  // the teacher asked for it.
  {
    id: "k32-saltpetre-not-rinsed",
    request: PLANS.kno3,
    observations: {
      weighed: { "potassium chloride": "37.30 g", "Chile saltpetre": "42.60 g" },
      temperature: "20 °C",
      washes: 0,
      tests: { lastWash: "positive" },
      dried: ["44.42 g", "44.40 g"],
    },
    fault: "The crystals were dried with the mother liquor on them: table salt is in them.",
    accept: ["unwashed", "impure"],
  },
  // 0.1000 mol; 467.63 / 5 = 93.53 g for one Mg: 9.35 g, 95 % of it 8.90 g; MgCO3·3H2O would be 13.84 g;
  // residue MgO 40.304 / 93.53 = 0.431 of it: 0.86 g; from MgCO3·3H2O 0.291: 0.58 g
  {
    id: "k33-magnesium-carbonate-boiled",
    request: PLANS.mgco3,
    observations: {
      weighed: { "Epsom salt": "24.65 g", "soda ash": "11.13 g" },
      washes: 3,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: ["8.92 g", "8.90 g"],
      ignition: { before: "2.00 g", after: "0.86 g" },
    },
    fault: "The slurry was boiled: Mg5(CO3)4(OH)2·4H2O formed in place of MgCO3·3H2O.",
    accept: ["other-formula-fits"],
  },
  // (118.701 + 2 x 92.707 + 72.06) / 3 = 125.39 g for one Ni; 0.09999 mol: 12.54 g, 96.5 % of it 12.10 g (NiCO3 11.87 g);
  // residue NiO 74.692 / 125.39 = 0.596 of it: 1.19 g; from NiCO3 0.629: 1.26 g
  {
    id: "k34-nickel-carbonate-basic",
    request: PLANS.nico3,
    observations: {
      weighed: { "nickel sulfate": "26.28 g", "soda ash": "10.60 g" },
      washes: 3,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: ["12.11 g", "12.10 g"],
      ignition: { before: "2.00 g", after: "1.19 g" },
    },
    fault: "Soda precipitated the basic carbonate NiCO3·2Ni(OH)2·4H2O, not NiCO3.",
    accept: ["other-formula-fits"],
  },
  // really 1.70 / 169.872 / 2 x 331.728 = 1.66 g possible, 97 % of it 1.61 g; as written 0.97 / 169.872 / 2 x 331.728 = 0.95 g: 170 %
  {
    id: "k35-silver-chromate-lines-swapped",
    request: PLANS.ag2cro4,
    observations: {
      weighed: { "silver nitrate": "0.97 g", "potassium chromate": "1.70 g" },
      washes: 2,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: ["1.62 g", "1.61 g"],
    },
    fault: "All was taken as planned, but the two masses were written in each other's line.",
    accept: ["too-heavy"],
  },
  // 6.62 / 331.208 = 0.01999 mol; x 323.192 = 6.46 g; really 54.90 - 48.61 = 6.29 g; as written 8.09 g = 125 %
  {
    id: "k36-chrome-yellow-digits-of-tare",
    request: PLANS.pbcro4,
    observations: {
      weighed: { "lead nitrate": "6.62 g", "potassium chromate": "4.00 g" },
      washes: 2,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: [
        { gross: "54.91 g", tare: "46.81 g" },
        { gross: "54.90 g", tare: "46.81 g" },
      ],
    },
    fault: "The dish weighs 48.61 g; 46.81 g was written.",
    accept: ["too-heavy"],
  },
  // 1.70 / 169.872 = 0.01001 mol; x 234.772 = 2.35 g; 2.30 g obtained + 1.02 g of paper = 3.32 g; dry, washed: 141 %
  {
    id: "k37-silver-iodide-with-paper",
    request: PLANS.agi,
    observations: {
      weighed: { "silver nitrate": "1.70 g", "potassium iodide": "1.66 g" },
      washes: 2,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: ["3.33 g", "3.32 g"],
    },
    fault: "It was weighed on its filter paper, and the 1.02 g of paper was not subtracted.",
    accept: ["too-heavy"],
  },
  // 75.87 g MgCO3 / 84.313 x 40.304 = 36.27 g + 8.43 g of sand = 44.70 g; pure 40.30 g
  // Two codes: the mass is too high after firing, from sand or from carbonate left.
  {
    id: "k38-magnesia-from-sandy-magnesite",
    request: PLANS.mgo,
    observations: {
      weighed: { magnesite: "84.30 g" },
      dried: ["44.71 g", "44.70 g"],
      note: "fired a second time without change",
    },
    fault: "The magnesite of the shop was one tenth sand.",
    accept: ["impure", "unreacted"],
  },
  // 0.09998 mol x 261.335 = 26.13 g in all; about 9 g in 100 g of water stays dissolved at 20 °C; 20.4 g as crop
  {
    id: "kg01-barium-nitrate",
    request: PLANS.bano3,
    observations: {
      weighed: { "barium carbonate": "19.73 g" },
      temperature: "20 °C",
      wetCake: "25.10 g",
      dried: ["20.42 g", "20.40 g"],
    },
    fault: "None: made as it should be.",
    accept: ["consistent", "loss-explained"],
  },
  // 11.16 / 223.199 = 0.0500 mol x 379.333 = 18.97 g in all; part stays in the liquor
  {
    id: "kg02-lead-acetate",
    request: PLANS.pbac,
    observations: { weighed: { litharge: "11.16 g" }, temperature: "20 °C", dried: ["13.02 g", "13.00 g"] },
    fault: "None: made as it should be.",
    accept: ["consistent", "loss-explained"],
  },
  // 0.1000 mol x 262.839 = 26.29 g in all; the rest stays in the liquor at 20 °C
  {
    id: "kg03-nickel-sulfate",
    request: PLANS.niso4,
    observations: { weighed: { "nickel oxide": "7.47 g" }, pH: 2, temperature: "20 °C", dried: ["19.62 g", "19.60 g"] },
    fault: "None: made as it should be.",
    accept: ["consistent", "loss-explained"],
  },
  // 8.71 / 174.252 = 0.04999 mol x 2 x 474.372 = 47.42 g in all; 92 % as crop at 20 °C
  {
    id: "kg04-potash-alum",
    request: PLANS.alum,
    observations: {
      weighed: { "potassium sulfate": "8.71 g", "aluminium sulfate": "33.31 g" },
      temperature: "20 °C",
      wetCake: "48.20 g",
      dried: ["43.65 g", "43.60 g"],
    },
    fault: "None: made as it should be.",
    accept: ["consistent", "loss-explained"],
  },
  // 0.09999 mol x 394.973 = 39.49 g in all; 85 % as crop at 20 °C
  {
    id: "kg05-nickel-ammonium-sulfate",
    request: PLANS.nitutton,
    observations: {
      weighed: { "nickel sulfate": "26.28 g", "ammonium sulfate": "13.21 g" },
      temperature: "20 °C",
      dried: ["33.45 g", "33.40 g"],
    },
    fault: "None: made as it should be.",
    accept: ["consistent", "loss-explained"],
  },
  // about 24 g in 100 g of water dissolves at 80 °C, 5 g at 20 °C (from memory): 150 g of water keeps 7.3 g; 22.7 g crystallises
  {
    id: "kg06-boric-acid-recrystallised",
    request: PLANS.recbor,
    observations: { weighed: { "boric acid": "30.00 g" }, temperature: "20 °C", dried: ["22.12 g", "22.10 g"] },
    fault: "None: made as it should be.",
    accept: ["consistent", "loss-explained"],
  },
  // 23.79 / 118.941 = 0.2000 mol / 3 x 240.795 = 16.05 g; 0.07 g stays in the crucible
  {
    id: "kg07-cobalt-oxide-fired",
    request: PLANS.co3o4,
    observations: { weighed: { "cobalt carbonate": "23.79 g" }, dried: "15.98 g" },
    fault: "None: made as it should be.",
    accept: ["consistent"],
  },
  // 3.398 / 169.872 = 0.02000 mol x 107.868 = 2.158 g; 98 % of it 2.11 g
  {
    id: "kg08-silver-by-copper",
    request: PLANS.ag,
    observations: {
      weighed: { "silver nitrate": "3.40 g" },
      washes: 3,
      tests: { lastWash: "clear" },
      dried: ["2.12 g", "2.11 g"],
    },
    fault: "None: made as it should be.",
    accept: ["consistent"],
  },
  // 0.0500 mol x 303.256 = 15.16 g; 97 % of it 14.7 g
  {
    id: "kg09-lead-sulfate",
    request: PLANS.pbso4,
    observations: {
      weighed: { "lead nitrate": "16.56 g", "sodium sulfate": "7.46 g" },
      washes: 2,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: ["14.73 g", "14.71 g"],
    },
    fault: "None: made as it should be.",
    accept: ["consistent"],
  },
  // 11.49 / 114.946 = 0.09996 mol x 169.009 = 16.89 g; 96.5 % of it 16.3 g
  {
    id: "kg10-manganese-sulfate",
    request: PLANS.mnso4,
    observations: { weighed: { "manganese carbonate": "11.49 g" }, dried: ["16.32 g", "16.30 g"] },
    fault: "None: made as it should be.",
    accept: ["consistent", "loss-explained"],
  },
  // 78.00 / 78.003 / 2 x 101.961 = 50.98 g; 0.3 g stays in the tray
  {
    id: "kg11-alumina-fired",
    request: PLANS.al2o3,
    observations: {
      weighed: { "alumina hydrate": "78.00 g" },
      ignition: { before: "78.00 g", after: "50.70 g" },
      dried: "50.70 g",
    },
    fault: "None: made as it should be.",
    accept: ["consistent"],
  },
  // 13.14 / 262.839 = 0.04999 mol x 182.741 = 9.14 g; 97 % of it 8.84 g
  {
    id: "kg12-nickel-oxalate",
    request: PLANS.niox,
    observations: {
      weighed: { "nickel sulfate": "13.14 g", "potassium oxalate": "9.21 g" },
      washes: 3,
      tests: { filtrate: "clear", lastWash: "clear" },
      dried: ["8.85 g", "8.84 g"],
    },
    fault: "None: made as it should be.",
    accept: ["consistent"],
  },
];
