import type { FindingCode, Observations, PlanRequest } from "preparative";

/**
 * Fifty runs as they happen in a school or a studio, written without sight of any verdict: 38 with one planted fault each, 12 good ones.
 * Every mass is calculated by hand from the standard atomic weights (IUPAC 2021, abridged) and from what the fault does; what sticks
 * to filters and vessels (2 to 4 %), what a cake keeps, and how far something dried or fired are the writer's estimates, from memory.
 * `accept` was decided with the observations alone: what a fair teacher would say first.
 */
export interface BlindRun {
  readonly id: string;
  readonly request: PlanRequest;
  readonly observations: Observations;
  /** What really happened. */
  readonly fault: string;
  readonly accept: readonly FindingCode[];
}

type Material = PlanRequest["materials"][number];
type Digits = `${number}`;

const shelf = (name: string, form: string, more: Omit<Material, "name" | "form"> = {}): Material => ({
  name,
  form,
  ...more,
});

const school = (
  equation: string,
  product: string,
  materials: readonly Material[],
  scale: PlanRequest["scale"],
): PlanRequest => ({
  equation,
  product,
  materials,
  scale,
  readability: { mass: "0.01 g" },
});

/** On a kitchen balance, 0.1 g. */
const studio = (
  equation: string,
  product: string,
  materials: readonly Material[],
  scale: PlanRequest["scale"],
): PlanRequest => ({
  equation,
  product,
  materials,
  scale,
});

const of = (material: string, portion: `${number} g`): PlanRequest["scale"] => ({ material, portion });

/** The drying record: the empty vessel, and the vessel with the product each time. */
const dried = (tare: Digits, ...gross: readonly Digits[]) =>
  gross.map((one) => ({ gross: `${one} g` as const, tare: `${tare} g` as const }));

const clear = { filtrate: "clear", lastWash: "clear" } as const;
const short = { filtrate: "cloudy", lastWash: "clear" } as const;
const salty = { filtrate: "clear", lastWash: "cloudy" } as const;
const noAlarm = ["consistent", "loss-explained"] as const;

const soda = (excess: `${number} %`) => shelf("soda", "Na2CO3", { excess });

const chalk = school(
  "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  "CaCO3",
  [shelf("calcium chloride", "CaCl2·2H2O"), soda("5 %")],
  of("calcium chloride", "14.70 g"),
);
const verditer = studio(
  "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
  "Cu2(OH)2CO3",
  [shelf("copper sulfate", "CuSO4·5H2O"), soda("10 %")],
  of("copper sulfate", "50.0 g"),
);
const strontium = school(
  "SrCl2 + Na2CO3 -> SrCO3 + NaCl",
  "SrCO3",
  [shelf("strontium chloride", "SrCl2·6H2O"), soda("5 %")],
  of("strontium chloride", "26.66 g"),
);
const witherite = school(
  "BaCl2 + Na2CO3 -> BaCO3 + NaCl",
  "BaCO3",
  [shelf("barium chloride", "BaCl2·2H2O"), soda("5 %")],
  of("barium chloride", "24.43 g"),
);
const manganese = school(
  "MnSO4 + NaHCO3 -> MnCO3 + Na2SO4 + CO2 + H2O",
  "MnCO3",
  [shelf("manganese sulfate", "MnSO4·H2O"), shelf("baking soda", "NaHCO3", { excess: "10 %" })],
  of("manganese sulfate", "16.90 g"),
);
const zincCarbonate = studio(
  "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
  "Zn5(CO3)2(OH)6",
  [shelf("zinc sulfate", "ZnSO4·7H2O"), shelf("washing soda", "Na2CO3·10H2O", { excess: "5 %" })],
  of("zinc sulfate", "100.0 g"),
);
const magnesiumCarbonate = school(
  "MgSO4 + Na2CO3 + H2O -> MgCO3·3H2O + Na2SO4",
  "MgCO3·3H2O",
  [shelf("Epsom salt", "MgSO4·7H2O"), soda("5 %")],
  of("Epsom salt", "49.30 g"),
);
const magnesia = school(
  "MgSO4 + NaOH -> Mg(OH)2 + Na2SO4",
  "Mg(OH)2",
  [shelf("Epsom salt", "MgSO4·7H2O"), shelf("caustic soda", "NaOH", { excess: "3 %" })],
  of("Epsom salt", "49.30 g"),
);
const copperHydroxide = school(
  "CuSO4 + NaOH -> Cu(OH)2 + Na2SO4",
  "Cu(OH)2",
  [shelf("copper sulfate", "CuSO4·5H2O"), shelf("caustic soda", "NaOH", { excess: "2 %" })],
  of("copper sulfate", "24.97 g"),
);
const alumina = school(
  "KAl(SO4)2 + NH3 + H2O -> Al(OH)3 + K2SO4 + (NH4)2SO4",
  "Al(OH)3",
  [shelf("alum", "KAl(SO4)2·12H2O"), shelf("ammonia", "NH3", { strength: "10 %", excess: "10 %" })],
  of("alum", "47.44 g"),
);
const baryte = school(
  "BaCl2 + Na2SO4 -> BaSO4 + NaCl",
  "BaSO4",
  [shelf("barium chloride", "BaCl2·2H2O"), shelf("sodium sulfate", "Na2SO4", { excess: "5 %" })],
  of("barium chloride", "12.21 g"),
);
const gypsum = school(
  "CaCl2 + Na2SO4 + H2O -> CaSO4·2H2O + NaCl",
  "CaSO4·2H2O",
  [shelf("calcium chloride", "CaCl2·2H2O"), shelf("sodium sulfate", "Na2SO4", { excess: "5 %" })],
  of("calcium chloride", "29.40 g"),
);
const leadSulfate = school(
  "Pb(NO3)2 + Na2SO4 -> PbSO4 + NaNO3",
  "PbSO4",
  [shelf("lead nitrate", "Pb(NO3)2"), shelf("sodium sulfate", "Na2SO4", { excess: "5 %" })],
  of("lead nitrate", "16.56 g"),
);
const cobaltPhosphate = school(
  "CoCl2 + Na3PO4 + H2O -> Co3(PO4)2·8H2O + NaCl",
  "Co3(PO4)2·8H2O",
  [shelf("cobalt chloride", "CoCl2·6H2O"), shelf("trisodium phosphate", "Na3PO4·12H2O")],
  of("cobalt chloride", "23.79 g"),
);
const zincPhosphate = school(
  "ZnSO4 + Na3PO4 + H2O -> Zn3(PO4)2·4H2O + Na2SO4",
  "Zn3(PO4)2·4H2O",
  [shelf("zinc sulfate", "ZnSO4·7H2O"), shelf("trisodium phosphate", "Na3PO4·12H2O")],
  of("zinc sulfate", "28.76 g"),
);
const brushite = school(
  "CaCl2 + Na2HPO4 + H2O -> CaHPO4·2H2O + NaCl",
  "CaHPO4·2H2O",
  [shelf("calcium chloride", "CaCl2·2H2O"), shelf("disodium phosphate", "Na2HPO4·12H2O")],
  of("calcium chloride", "14.70 g"),
);
const ironOxalate = school(
  "FeSO4 + H2C2O4 + H2O -> FeC2O4·2H2O + H2SO4",
  "FeC2O4·2H2O",
  [shelf("green vitriol", "FeSO4·7H2O"), shelf("oxalic acid", "H2C2O4·2H2O", { excess: "10 %" })],
  of("green vitriol", "27.80 g"),
);
const calciumOxalate = school(
  "CaCl2 + (NH4)2C2O4 + H2O -> CaC2O4·H2O + NH4Cl",
  "CaC2O4·H2O",
  [shelf("calcium chloride", "CaCl2·2H2O"), shelf("ammonium oxalate", "(NH4)2C2O4·H2O", { excess: "5 %" })],
  of("calcium chloride", "14.70 g"),
);
const leadIodide = school(
  "Pb(NO3)2 + KI -> PbI2 + KNO3",
  "PbI2",
  [shelf("lead nitrate", "Pb(NO3)2"), shelf("potassium iodide", "KI")],
  of("lead nitrate", "3.31 g"),
);
const silverChloride = school(
  "AgNO3 + NaCl -> AgCl + NaNO3",
  "AgCl",
  [shelf("silver nitrate", "AgNO3"), shelf("salt", "NaCl", { excess: "10 %" })],
  of("silver nitrate", "3.40 g"),
);
const chromeYellow = school(
  "Pb(NO3)2 + K2CrO4 -> PbCrO4 + KNO3",
  "PbCrO4",
  [shelf("lead nitrate", "Pb(NO3)2"), shelf("potassium chromate", "K2CrO4", { excess: "5 %" })],
  of("lead nitrate", "16.56 g"),
);
const blueVitriol = school(
  "CuO + H2SO4 + H2O -> CuSO4·5H2O",
  "CuSO4·5H2O",
  [shelf("copper oxide", "CuO", { excess: "5 %" }), shelf("sulfuric acid", "H2SO4", { strength: "20 %" })],
  { product: "49.9 g" },
);
const epsom = school(
  "MgCO3 + H2SO4 + H2O -> MgSO4·7H2O + CO2",
  "MgSO4·7H2O",
  [shelf("magnesium carbonate", "MgCO3", { excess: "5 %" }), shelf("sulfuric acid", "H2SO4", { strength: "20 %" })],
  { product: "49.3 g" },
);
const greenVitriol = school(
  "Fe + H2SO4 + H2O -> FeSO4·7H2O + H2",
  "FeSO4·7H2O",
  [shelf("iron filings", "Fe", { excess: "10 %" }), shelf("sulfuric acid", "H2SO4", { strength: "20 %" })],
  { product: "55.6 g" },
);
const alum = school(
  "Al2(SO4)3 + K2SO4 + H2O -> KAl(SO4)2·12H2O",
  "KAl(SO4)2·12H2O",
  [shelf("aluminium sulfate", "Al2(SO4)3·18H2O"), shelf("potassium sulfate", "K2SO4")],
  of("potassium sulfate", "17.43 g"),
);
const tetrammine = school(
  "CuSO4 + NH3 + H2O -> [Cu(NH3)4]SO4·H2O",
  "[Cu(NH3)4]SO4·H2O",
  [
    shelf("copper sulfate", "CuSO4·5H2O"),
    shelf("ammonia", "NH3", { strength: "25 %", excess: "20 %" }),
    shelf("alcohol", "C2H5OH", { aside: true, portion: "80 mL" }),
  ],
  of("copper sulfate", "24.97 g"),
);
const rawVitriol = studio(
  "CuSO4 + H2O -> CuSO4·5H2O",
  "CuSO4·5H2O",
  [shelf("raw copper sulfate", "CuSO4·5H2O")],
  of("raw copper sulfate", "100.0 g"),
);
const rawSaltpetre = studio(
  "KNO3 -> KNO3",
  "KNO3",
  [shelf("saltpetre", "KNO3", { assay: "96 %" })],
  of("saltpetre", "50.0 g"),
);
const saltpetre = studio(
  "NaNO3 + KCl -> KNO3 + NaCl",
  "KNO3",
  [shelf("Chile saltpetre", "NaNO3"), shelf("potassium chloride", "KCl")],
  of("Chile saltpetre", "85.0 g"),
);
const lime = studio("CaCO3 -> CaO + CO2", "CaO", [shelf("chalk", "CaCO3")], of("chalk", "50.0 g"));
const plaster = studio(
  "CaSO4·2H2O -> CaSO4·0.5H2O + H2O",
  "CaSO4·0.5H2O",
  [shelf("gypsum", "CaSO4·2H2O")],
  of("gypsum", "172.2 g"),
);
const blackOxide = school(
  "Cu2(OH)2CO3 -> CuO + CO2 + H2O",
  "CuO",
  [shelf("malachite", "Cu2(OH)2CO3")],
  of("malachite", "22.11 g"),
);
const bakedSoda = studio(
  "NaHCO3 -> Na2CO3 + CO2 + H2O",
  "Na2CO3",
  [shelf("baking soda", "NaHCO3")],
  of("baking soda", "84.0 g"),
);
const cement = school(
  "Fe + CuSO4 -> Cu + FeSO4",
  "Cu",
  [shelf("copper sulfate", "CuSO4·5H2O"), shelf("iron powder", "Fe", { excess: "10 %" })],
  of("copper sulfate", "24.97 g"),
);
const cementByZinc = school(
  "Zn + CuSO4 -> Cu + ZnSO4",
  "Cu",
  [shelf("copper sulfate", "CuSO4·5H2O"), shelf("zinc granules", "Zn", { excess: "10 %" })],
  of("copper sulfate", "24.97 g"),
);

export const SIXTH_RUNS: readonly BlindRun[] = [
  // Still wet, or weighed too early.
  {
    // 14.70/147.01 = 0.0999 mol; × 100.09 = 10.01 g; 97.4 % on the filter = 9.75 g; water still in it 2.27 g, half an hour later 1.56 g.
    id: "h01-chalk-taken-from-the-oven-too-early",
    request: chalk,
    observations: {
      weighed: { "calcium chloride": "14.70 g", soda: "11.12 g" },
      tests: clear,
      filtrateVolume: "185 mL",
      washes: 3,
      dried: dried("45.30", "57.32", "56.61"),
    },
    fault: "The chalk was taken from the oven before it was dry: it lost 0.71 g in the last half hour.",
    accept: ["still-drying"],
  },
  {
    // 49.30/246.47 = 0.2000 mol; × 58.32 = 11.67 g; 97 % = 11.32 g; + 4.6 g of water = 15.92 g.
    id: "h02-magnesium-hydroxide-air-dry",
    request: magnesia,
    observations: {
      weighed: { "Epsom salt": "49.28 g", "caustic soda": "16.51 g" },
      tests: clear,
      filtrateVolume: "520 mL",
      washes: 4,
      wetCake: "58.4 g",
      dried: dried("62.15", "78.07"),
    },
    fault: "The cake was weighed once after a night on the window sill, still damp inside.",
    accept: ["wet"],
  },
  {
    // 17.43/174.25 = 0.1000 mol K2SO4 gives 0.2001 mol; × 474.37 = 94.9 g at the most; crop 90.0 g + 8.2 g of liquor = 98.2 g.
    id: "h03-alum-only-pressed",
    request: alum,
    observations: {
      weighed: { "aluminium sulfate": "66.70 g", "potassium sulfate": "17.45 g" },
      temperature: "20 °C",
      wetCake: "100.3 g",
      dried: dried("51.20", "149.40"),
    },
    fault: "The crystals were pressed between paper and weighed at once, not dried.",
    accept: ["wet"],
  },
  {
    // Crop about 26.7 g (sheet: cooling to 20 °C); + 5.2 g of water, an hour later + 3.1 g: 31.9 g, 29.8 g.
    id: "h04-green-vitriol-still-losing",
    request: greenVitriol,
    observations: {
      weighed: { "iron filings": "12.30 g", "sulfuric acid": "98.1 g" },
      temperature: "20 °C",
      wetCake: "33.6 g",
      dried: dried("38.42", "70.32", "68.22"),
    },
    fault: "The crystals were still losing water when the lesson ended.",
    accept: ["still-drying"],
  },
  {
    // 24.97/249.68 = 0.1000 mol; × 245.74 = 24.58 g; 96 % = 23.6 g; + 3.5 g of alcohol and water = 27.1 g (110 %).
    id: "h05-tetrammine-damp-with-alcohol",
    request: tetrammine,
    observations: {
      weighed: { "copper sulfate": "24.98 g", ammonia: "32.8 g" },
      wetCake: "33.0 g",
      dried: dried("40.11", "67.21"),
    },
    fault: "The crystals were weighed damp with alcohol, five minutes after the filter.",
    accept: ["wet"],
  },
  // Not washed enough.
  {
    // 12.21/244.26 = 0.04999 mol; × 233.38 = 11.67 g, 98 % = 11.43 g; liquor 105 mL with 5.84 g NaCl + 0.36 g Na2SO4; 17 mL in the cake = 1.00 g: 12.43 g.
    id: "h06-baryte-not-washed",
    request: baryte,
    observations: {
      weighed: { "barium chloride": "12.21 g", "sodium sulfate": "7.46 g" },
      tests: salty,
      filtrateVolume: "84 mL",
      washes: 0,
      dried: dried("47.85", "60.29", "60.28"),
    },
    fault: "The cake was dried with its liquor in it; nobody washed it.",
    accept: ["unwashed"],
  },
  {
    // 50.0/249.68 = 0.2003 mol; /2 × 221.11 = 22.14 g, 97.5 % = 21.6 g; Na2SO4 0.2003 × 142.04 = 28.4 g + soda 2.1 g in 190 mL; cake 60 mL = 9.6 g, one poor wash leaves 3.0 g: 24.6 g.
    id: "h07-basic-copper-carbonate-one-wash",
    request: verditer,
    observations: {
      weighed: { "copper sulfate": "50.0 g", soda: "23.4 g" },
      tests: salty,
      filtrateVolume: "130 mL",
      washes: 1,
      dried: dried("210.4", "235.1", "235.0"),
    },
    fault: "One quick wash: the last wash still clouded with barium chloride.",
    accept: ["unwashed"],
  },
  {
    // 28.76/287.54 = 0.1000 mol; /3 × 458.14 = 15.27 g, 98 % = 14.97 g; Na2SO4 14.2 g in 195 mL; cake 30 mL = 2.18 g: 17.15 g.
    id: "h08-zinc-phosphate-not-washed",
    request: zincPhosphate,
    observations: {
      weighed: { "zinc sulfate": "28.75 g", "trisodium phosphate": "25.36 g" },
      tests: { lastWash: "cloudy" },
      washes: 0,
      filtrateVolume: "165 mL",
      dried: dried("52.30", "69.47", "69.45"),
    },
    fault: "The washing was left out because the lesson was over.",
    accept: ["unwashed"],
  },
  {
    // 27.80/278.01 = 0.1000 mol; × 179.89 = 17.99 g, 97 % = 17.45 g; liquor 220 mL with 9.8 g H2SO4 + 1.3 g oxalic acid; 23 mL left = 1.15 g: 18.60 g.
    id: "h09-iron-oxalate-badly-washed",
    request: ironOxalate,
    observations: {
      weighed: { "green vitriol": "27.80 g", "oxalic acid": "13.88 g" },
      tests: salty,
      filtrateVolume: "190 mL",
      washes: 1,
      dried: dried("44.44", "63.06", "63.04"),
    },
    fault: "Washed once with a splash of water: the last wash still held sulfate.",
    accept: ["unwashed"],
  },
  // Lost by spilling, filter or beaker.
  {
    // 26.66/266.62 = 0.1000 mol; × 147.63 = 14.76 g; 40 of 196 mL of the stirred slurry gone: × 0.796 = 11.75 g, 98 % = 11.51 g.
    id: "h10-strontium-carbonate-slurry-spilled",
    request: strontium,
    observations: {
      weighed: { "strontium chloride": "26.66 g", soda: "11.14 g" },
      lost: [{ at: "hold", of: "liquor", volume: "40 mL" }],
      tests: clear,
      filtrateVolume: "135 mL",
      washes: 3,
      dried: dried("48.77", "60.29", "60.28"),
      note: "about 40 mL with solid went over the table",
    },
    fault: "About 40 mL of the stirred slurry went over the table, and the pupil wrote it down.",
    accept: ["spilled", "loss-explained"],
  },
  {
    // 24.43/244.26 = 0.1000 mol; × 197.34 = 19.74 g; about 3.8 g through a torn filter: 15.90 g (80.5 %).
    id: "h11-barium-carbonate-through-the-filter",
    request: witherite,
    observations: {
      weighed: { "barium chloride": "24.42 g", soda: "11.14 g" },
      tests: clear,
      filtrateVolume: "180 mL",
      washes: 3,
      dried: dried("45.02", "60.93", "60.92"),
    },
    fault: "The filter paper had a tear and a fifth of the solid went into the flask, which was poured away.",
    accept: ["lighter-than-losses-explain"],
  },
  {
    // 3.40/169.87 = 0.02002 mol; × 143.32 = 2.87 g; 0.55 g stayed on the paper: 2.32 g (81 %).
    id: "h12-silver-chloride-on-the-paper",
    request: silverChloride,
    observations: {
      weighed: { "silver nitrate": "3.40 g", salt: "1.29 g" },
      tests: clear,
      filtrateVolume: "40 mL",
      washes: 3,
      dried: dried("31.05", "33.38", "33.37"),
    },
    fault: "A thick skin of silver chloride was left stuck to the filter paper.",
    accept: ["lighter-than-losses-explain"],
  },
  {
    // 24.97/249.68 = 0.1000 mol; × 63.546 = 6.36 g, 98 % = 6.23 g; 1.3 g brushed off the table: 4.93 g.
    id: "h13-cement-copper-tray-tipped",
    request: cementByZinc,
    observations: {
      weighed: { "copper sulfate": "24.97 g", "zinc granules": "7.21 g" },
      tests: { lastWash: "clear" },
      washes: 3,
      filtrateVolume: "85 mL",
      lost: [{ at: "dry", of: "product", mass: "1.3 g" }],
      dried: dried("29.66", "34.60", "34.59"),
      note: "tray tipped, swept up 1.3 g, thrown away",
    },
    fault: "The drying tray tipped and 1.3 g of the copper was thrown away, as written in the remarks.",
    accept: ["spilled", "loss-explained"],
  },
  // The jar was another hydrate.
  {
    // Jar was CaCl2·6H2O: 14.70/219.07 = 0.0671 mol; × 100.09 = 6.72 g, 98 % = 6.58 g (65.8 % of 10.01 g). Soda is in excess: clear.
    id: "h14-chalk-hexahydrate-in-the-jar",
    request: chalk,
    observations: {
      weighed: { "calcium chloride": "14.70 g", soda: "11.13 g" },
      tests: clear,
      filtrateVolume: "188 mL",
      washes: 3,
      dried: dried("45.30", "51.89", "51.88"),
    },
    fault: "The jar of calcium chloride was the hexahydrate, not the dihydrate of the plan.",
    accept: ["hydrate-mix-up", "lighter-than-losses-explain"],
  },
  {
    // Jar was Na2CO3·10H2O: 11.13/286.14 = 0.0389 mol; × 147.63 = 5.74 g, 98 % = 5.63 g. Strontium is left over: cloudy with soda.
    id: "h15-strontium-carbonate-washing-soda",
    request: strontium,
    observations: {
      weighed: { "strontium chloride": "26.65 g", soda: "11.13 g" },
      tests: short,
      filtrateVolume: "186 mL",
      washes: 3,
      dried: dried("48.77", "54.41", "54.40"),
    },
    fault: "Washing soda, the decahydrate, was taken for the anhydrous soda of the plan.",
    accept: ["hydrate-mix-up", "reagent-short"],
  },
  {
    // Jar was MnSO4·4H2O: 16.90/223.06 = 0.0758 mol; × 114.95 = 8.71 g, 98 % = 8.54 g (74.3 % of 11.49 g). Bicarbonate in excess: clear.
    id: "h16-manganese-tetrahydrate-in-the-jar",
    request: manganese,
    observations: {
      weighed: { "manganese sulfate": "16.90 g", "baking soda": "18.50 g" },
      tests: clear,
      filtrateVolume: "82 mL",
      washes: 3,
      dried: dried("43.90", "52.45", "52.44"),
    },
    fault: "The manganese sulfate was the pink tetrahydrate, not the monohydrate.",
    accept: ["hydrate-mix-up", "lighter-than-losses-explain"],
  },
  {
    // Jar was Na2SO4·10H2O: 7.46/322.19 = 0.02315 mol; × 233.38 = 5.40 g, 98.5 % = 5.32 g. Barium is left over: cloudy with sulfate.
    id: "h17-baryte-glaubers-salt",
    request: baryte,
    observations: {
      weighed: { "barium chloride": "12.22 g", "sodium sulfate": "7.46 g" },
      tests: short,
      filtrateVolume: "92 mL",
      washes: 3,
      dried: dried("47.85", "53.18", "53.17"),
    },
    fault: "Glauber's salt was weighed in place of the anhydrous sodium sulfate.",
    accept: ["hydrate-mix-up", "reagent-short"],
  },
  // A reagent short, weighed wrong, weak or old.
  {
    // 9.93/142.11 = 0.0699 mol; × 146.11 = 10.21 g, 98 % = 10.00 g; calcium 0.1000 mol: 0.0301 mol is left over, cloudy.
    id: "h18-calcium-oxalate-five-grams-short",
    request: calciumOxalate,
    observations: {
      weighed: { "calcium chloride": "14.71 g", "ammonium oxalate": "9.93 g" },
      tests: short,
      filtrateVolume: "415 mL",
      washes: 3,
      dried: dried("45.61", "55.62", "55.61"),
    },
    fault: "The ammonium oxalate was weighed 5 g short, and written down as it was.",
    accept: ["reagent-short"],
  },
  {
    // Really 8.20 g of chromate: 8.20/194.19 = 0.0423 mol; × 323.19 = 13.65 g, 98 % = 13.37 g; lead 0.0500 mol: left over, cloudy.
    id: "h19-chrome-yellow-chromate-misread",
    request: chromeYellow,
    observations: {
      weighed: { "lead nitrate": "16.56 g", "potassium chromate": "10.20 g" },
      tests: short,
      filtrateVolume: "90 mL",
      washes: 3,
      dried: dried("50.20", "63.58", "63.57"),
    },
    fault: "Two grams of chromate too little were taken; the sheet has the planned figure.",
    accept: ["reagent-short"],
  },
  {
    // Old caustic soda, 80 % NaOH: 8.17 × 0.80/40.00 = 0.1634 mol; /2 × 97.56 = 7.97 g, 98 % = 7.81 g (80 % of 9.76 g).
    id: "h20-copper-hydroxide-old-caustic-soda",
    request: copperHydroxide,
    observations: {
      weighed: { "copper sulfate": "24.97 g", "caustic soda": "8.17 g" },
      tests: short,
      filtrateVolume: "245 mL",
      washes: 3,
      wetCake: "38 g",
      dried: dried("39.25", "47.07", "47.06"),
    },
    fault: "The caustic soda was an old, caked jar with a fifth of it water and carbonate.",
    accept: ["reagent-short"],
  },
  {
    // Ammonia gone from 10 to 6 %: 56.2 × 0.06/17.031 = 0.198 mol; /3 × 78.00 = 5.15 g, 97.5 % = 5.02 g (64 % of 7.80 g).
    id: "h21-aluminium-hydroxide-stale-ammonia",
    request: alumina,
    observations: {
      weighed: { alum: "47.45 g", ammonia: "56.2 g" },
      tests: short,
      filtrateVolume: "500 mL",
      washes: 4,
      wetCake: "61 g",
      dried: dried("55.08", "60.11", "60.10"),
    },
    fault: "The ammonia had stood open and lost two fifths of its strength.",
    accept: ["reagent-short"],
  },
  // The wrong carbonate.
  {
    // 100.0/287.54 = 0.3478 mol; baking soda gives ZnCO3: × 125.39 = 43.6 g, 98.5 % = 43.0 g (basic: 38.2 g). ZnO of ZnCO3: 81.38/125.39 = 64.9 %.
    id: "h22-zinc-carbonate-with-baking-soda",
    request: zincCarbonate,
    observations: {
      weighed: { "zinc sulfate": "100.0 g", "washing soda": "104.5 g" },
      tests: clear,
      filtrateVolume: "310 mL",
      washes: 3,
      dried: dried("180.2", "223.3", "223.2"),
      ignition: { before: "10.0 g", after: "6.5 g" },
    },
    fault: "Baking soda was taken for washing soda: the normal carbonate formed in place of the basic one.",
    accept: ["other-formula-fits"],
  },
  {
    // Potash in the jar: 11.14/138.20 = 0.0806 mol; × 197.34 = 15.91 g, 98 % = 15.59 g (79 % of 19.74 g). Barium is left over: cloudy.
    id: "h23-barium-carbonate-with-potash",
    request: witherite,
    observations: {
      weighed: { "barium chloride": "24.43 g", soda: "11.14 g" },
      tests: short,
      filtrateVolume: "181 mL",
      washes: 3,
      dried: dried("45.02", "60.62", "60.61"),
    },
    fault: "Potash was weighed in place of soda: the same grams are a quarter fewer moles.",
    accept: ["reagent-short"],
  },
  // Overheated in drying.
  {
    // 29.40/147.01 = 0.2000 mol; dissolved in liquor and washings about 1.7 g as dihydrate: 0.190 mol × 145.14 = 27.6 g. Water left in 5.00 g: 6.2 % = 0.31 g.
    id: "h24-gypsum-dried-at-140",
    request: gypsum,
    observations: {
      weighed: { "calcium chloride": "29.40 g", "sodium sulfate": "29.83 g" },
      tests: clear,
      filtrateVolume: "370 mL",
      washes: 3,
      dried: dried("60.50", "88.11", "88.10"),
      ignition: { before: "5.00 g", after: "4.69 g" },
    },
    fault: "The gypsum was dried at 140 °C and became plaster.",
    accept: ["other-hydrate-fits"],
  },
  {
    // Crop 69.9 g of pentahydrate; × 177.62/249.68 = 49.7 g, 98.5 % = 49.0 g. Water left in 10.0 g: 18.015/177.62 = 10.1 % = 1.0 g.
    id: "h25-copper-sulfate-dried-at-110",
    request: rawVitriol,
    observations: {
      weighed: { "raw copper sulfate": "100.0 g" },
      temperature: "20 °C",
      wetCake: "77 g",
      dried: dried("150.3", "199.4", "199.3"),
      ignition: { before: "10.0 g", after: "9.0 g" },
    },
    fault: "The crystals were dried at 110 °C and are the pale monohydrate.",
    accept: ["other-hydrate-fits"],
  },
  {
    // 0.1000 mol as CuO: × 79.545 = 7.95 g, 98 % = 7.79 g; nothing leaves CuO on heating.
    id: "h26-copper-hydroxide-black",
    request: copperHydroxide,
    observations: {
      weighed: { "copper sulfate": "24.96 g", "caustic soda": "8.17 g" },
      tests: clear,
      filtrateVolume: "250 mL",
      washes: 3,
      wetCake: "40 g",
      dried: dried("39.25", "47.05", "47.04"),
      ignition: { before: "2.00 g", after: "2.00 g" },
    },
    fault: "The hydroxide was dried at 150 °C and turned to black copper oxide.",
    accept: ["other-formula-fits"],
  },
  // Half fired.
  {
    // 60 % of the chalk burnt: 50.0 − 0.60 × 50.0 × 44.009/100.086 = 50.0 − 13.2 = 36.8 g (burnt through: 28.0 g).
    id: "h27-lime-half-burnt",
    request: lime,
    observations: { weighed: { chalk: "50.0 g" }, ignition: { before: "50.0 g", after: "36.8 g" }, dried: "36.8 g" },
    fault: "The kiln was stopped early: two fifths are still chalk.",
    accept: ["unreacted", "mixture-fits"],
  },
  {
    // Full loss 22.11 − 15.91 = 6.20 g; 68 % of it = 4.22 g: 17.89 g.
    id: "h28-copper-oxide-half-fired",
    request: blackOxide,
    observations: {
      weighed: { malachite: "22.11 g" },
      ignition: { before: "22.11 g", after: "17.89 g" },
      dried: dried("35.10", "52.99"),
    },
    fault: "A third of the malachite was still green in the middle of the crucible.",
    accept: ["unreacted", "mixture-fits"],
  },
  // Crystals: too warm, with their liquor, or from free acid.
  {
    // 59.5 g of water at 35 °C keeps about 54 g of KNO3 in 100 g: 32 g; 101.1 − 32 = 69 g, rinsing 3 g: 66.2 g.
    id: "h29-saltpetre-filtered-at-35",
    request: saltpetre,
    observations: {
      weighed: { "Chile saltpetre": "85.0 g", "potassium chloride": "74.6 g" },
      temperature: "35 °C",
      wetCake: "72 g",
      dried: dried("120.5", "186.8", "186.7"),
    },
    fault: "It was filtered at 35 °C because the lesson ended: a third stayed in the liquor.",
    accept: ["loss-explained", "consistent"],
  },
  {
    // 49.3/246.47 = 0.2000 mol: 49.3 g at the most; boiled down until all of it set: 49.0 g + 3.6 g of liquor = 52.6 g.
    id: "h30-epsom-salt-set-with-its-liquor",
    request: epsom,
    observations: {
      weighed: { "magnesium carbonate": "17.71 g", "sulfuric acid": "98.1 g" },
      pH: 7,
      temperature: "20 °C",
      wetCake: "53.4 g",
      dried: dried("42.00", "94.60"),
    },
    fault: "It was boiled down too far, set as a whole, and was weighed with the liquor between the crystals.",
    accept: ["wet"],
  },
  {
    // 98.1 g × 0.20/98.07 = 0.200 mol of acid; 70 % of the 0.210 mol CuO dissolved = 0.147 mol × 159.60 = 23.5 g CuSO4. In 87.9 g there are 5.2 g of acid and
    // 59.2 g of water, which keeps about 17 g CuSO4 in 100 g: 23.5 − 0.639 x = 0.17 (59.2 − 0.361 x), x = 23.2 g; rinsing 1.5 g: 21.7 g (sheet: 34.9 g).
    id: "h31-blue-vitriol-acid-not-used-up",
    request: blueVitriol,
    observations: {
      weighed: { "copper oxide": "16.70 g", "sulfuric acid": "98.1 g" },
      pH: 1,
      temperature: "20 °C",
      wetCake: "24.5 g",
      dried: dried("41.77", "63.48", "63.46"),
    },
    fault:
      "The oxide was stirred for ten minutes only: a third of it stayed on the hot filter and free acid in the liquor.",
    accept: ["liquor-ph", "unreacted"],
  },
  // Basic or other compound.
  {
    // Boiled: Mg5(CO3)4(OH)2·4H2O, 467.63/5 = 93.53 for each Mg; 0.2000 mol = 18.7 g, 97 % = 18.15 g (plan 27.7 g). MgO: 5 × 40.304/467.63 = 43.1 %.
    id: "h32-magnesium-carbonate-boiled",
    request: magnesiumCarbonate,
    observations: {
      weighed: { "Epsom salt": "49.30 g", soda: "22.27 g" },
      tests: clear,
      filtrateVolume: "345 mL",
      washes: 3,
      dried: dried("46.70", "64.86", "64.85"),
      ignition: { before: "2.00 g", after: "0.86 g" },
    },
    fault: "The liquor was boiled: light basic carbonate formed in place of the trihydrate.",
    accept: ["other-formula-fits"],
  },
  // Labels, digits, paper, tare.
  {
    // Barium chloride in the strontium jar: 26.66/244.26 = 0.1091 mol; soda 0.1050 mol × 197.34 = 20.7 g, 98.5 % = 20.4 g (138 % of 14.76 g).
    id: "h33-strontium-label-on-barium-chloride",
    request: strontium,
    observations: {
      weighed: { "strontium chloride": "26.66 g", soda: "11.13 g" },
      tests: short,
      filtrateVolume: "185 mL",
      washes: 3,
      dried: dried("48.77", "69.19", "69.18"),
    },
    fault: "The jar labelled strontium chloride had barium chloride in it.",
    accept: ["too-heavy", "other-formula-fits"],
  },
  {
    // Really 16.56 g: 16.56/331.21 = 0.0500 mol; × 303.26 = 15.16 g, 98.6 % = 14.95 g; written 15.65 g promises 14.33 g: 104 %.
    id: "h34-lead-nitrate-digits-swapped",
    request: leadSulfate,
    observations: {
      weighed: { "lead nitrate": "15.65 g", "sodium sulfate": "7.46 g" },
      tests: clear,
      filtrateVolume: "90 mL",
      washes: 3,
      dried: dried("48.22", "63.18", "63.17"),
    },
    fault: "16.56 g of lead nitrate were weighed and 15.65 g written down.",
    accept: ["too-heavy"],
  },
  {
    // 14.70/147.01 = 0.1000 mol; × 172.09 = 17.21 g, 98 % = 16.86 g; + the filter paper 0.94 g = 17.80 g (103 %).
    id: "h35-brushite-weighed-on-its-paper",
    request: brushite,
    observations: {
      weighed: { "calcium chloride": "14.70 g", "disodium phosphate": "35.82 g" },
      tests: clear,
      filtrateVolume: "270 mL",
      washes: 3,
      dried: dried("44.90", "62.71", "62.70"),
    },
    fault: "It was weighed on the filter paper (0.94 g), and the paper was not subtracted.",
    accept: ["too-heavy"],
  },
  {
    // 3.31/331.21 = 0.00999 mol; × 461.01 = 4.61 g, 96 % = 4.43 g; + the watch glass 27.41 g = 31.84 g.
    id: "h36-lead-iodide-with-its-glass",
    request: leadIodide,
    observations: {
      weighed: { "lead nitrate": "3.31 g", "potassium iodide": "3.32 g" },
      tests: clear,
      filtrateVolume: "27 mL",
      washes: 2,
      dried: ["31.85 g", "31.84 g"],
    },
    fault: "The mass with the watch glass was written where the product belongs.",
    accept: ["too-heavy"],
  },
  // Left over, impure, not brought to the end.
  {
    // Copper 0.1000 mol × 63.546 = 6.35 g, 98 % = 6.23 g; iron weighed 6.15 g − 0.1000 × 55.845 = 0.57 g left over, not taken out with acid: 6.80 g (107 %).
    id: "h37-cement-copper-with-iron-in-it",
    request: cement,
    observations: {
      weighed: { "copper sulfate": "24.97 g", "iron powder": "6.15 g" },
      tests: { lastWash: "clear" },
      filtrateVolume: "85 mL",
      washes: 3,
      dried: dried("29.66", "36.47", "36.46"),
    },
    fault: "The iron left over was not dissolved with acid and is weighed with the copper.",
    accept: ["unreacted"],
  },
  {
    // Garden copper sulfate, 88 %: 50.0 × 0.88/249.68 = 0.1762 mol; /2 × 221.11 = 19.5 g, 97 % = 18.9 g (85 % of 22.14 g). Soda in excess: clear.
    id: "h38-basic-copper-carbonate-from-garden-vitriol",
    request: verditer,
    observations: {
      weighed: { "copper sulfate": "50.0 g", soda: "23.4 g" },
      tests: clear,
      filtrateVolume: "135 mL",
      washes: 3,
      dried: dried("210.4", "229.4", "229.3"),
    },
    fault: "The copper sulfate was garden goods with an eighth of other salts in it.",
    accept: ["lighter-than-losses-explain", "impure"],
  },
  // Good runs.
  {
    // 14.71/147.01 × 100.09 = 10.02 g; 98.1 % = 9.83 g.
    id: "hg01-chalk",
    request: chalk,
    observations: {
      weighed: { "calcium chloride": "14.71 g", soda: "11.14 g" },
      tests: clear,
      filtrateVolume: "190 mL",
      washes: 3,
      dried: dried("45.31", "55.15", "55.14"),
    },
    fault: "None.",
    accept: noAlarm,
  },
  {
    // 16.91/169.01 × 114.95 = 11.50 g; 97 % = 11.16 g.
    id: "hg02-manganese-carbonate",
    request: manganese,
    observations: {
      weighed: { "manganese sulfate": "16.91 g", "baking soda": "18.50 g" },
      tests: clear,
      filtrateVolume: "80 mL",
      washes: 3,
      dried: dried("43.90", "55.07", "55.06"),
    },
    fault: "None.",
    accept: noAlarm,
  },
  {
    // 29.40/147.01 × 172.17 = 34.43 g; liquor 0.43 L × about 2 g/L = 0.9 g, washings 0.8 g, filter 0.5 g: 32.2 g.
    id: "hg03-gypsum",
    request: gypsum,
    observations: {
      weighed: { "calcium chloride": "29.40 g", "sodium sulfate": "29.84 g" },
      tests: clear,
      filtrateVolume: "365 mL",
      washes: 3,
      dried: dried("60.50", "92.74", "92.71"),
    },
    fault: "None.",
    accept: noAlarm,
  },
  {
    // 27.81/278.01 × 179.89 = 17.99 g; 97.3 % = 17.51 g.
    id: "hg04-iron-oxalate",
    request: ironOxalate,
    observations: {
      weighed: { "green vitriol": "27.81 g", "oxalic acid": "13.87 g" },
      tests: clear,
      filtrateVolume: "185 mL",
      washes: 3,
      dried: dried("44.44", "61.96", "61.95"),
    },
    fault: "None.",
    accept: noAlarm,
  },
  {
    // 3.31/331.21 × 461.01 = 4.61 g; liquor 30 mL × 0.7 g/L = 0.02 g, filter and wash 0.17 g: 4.42 g.
    id: "hg05-lead-iodide",
    request: leadIodide,
    observations: {
      weighed: { "lead nitrate": "3.31 g", "potassium iodide": "3.32 g" },
      tests: clear,
      filtrateVolume: "27 mL",
      washes: 2,
      dried: dried("27.41", "31.84", "31.83"),
    },
    fault: "None.",
    accept: noAlarm,
  },
  {
    // 23.79/237.93 = 0.1000 mol; /3 × 510.86 = 17.03 g; 97 % = 16.52 g.
    id: "hg06-cobalt-violet",
    request: cobaltPhosphate,
    observations: {
      weighed: { "cobalt chloride": "23.78 g", "trisodium phosphate": "25.35 g" },
      tests: clear,
      filtrateVolume: "160 mL",
      washes: 4,
      dried: dried("51.02", "67.56", "67.54"),
    },
    fault: "None.",
    accept: noAlarm,
  },
  {
    // 94.9 g at the most; 73 g of water keeps about 3.4 g at 20 °C beside its crystal water, rinsing 1 g, handling 1.5 g: 88.9 g.
    id: "hg07-alum",
    request: alum,
    observations: {
      weighed: { "aluminium sulfate": "66.68 g", "potassium sulfate": "17.43 g" },
      temperature: "20 °C",
      wetCake: "99.0 g",
      dried: dried("51.20", "140.15", "140.10"),
    },
    fault: "None.",
    accept: noAlarm,
  },
  {
    // 55.6/278.01 = 0.2000 mol FeSO4 = 30.4 g; in 69.5 g of water at 20 °C 28.3 g crystallises (sheet), rinsing 1.6 g, handling 0.9 g: 25.8 g.
    id: "hg08-green-vitriol",
    request: greenVitriol,
    observations: {
      weighed: { "iron filings": "12.29 g", "sulfuric acid": "98.1 g" },
      temperature: "20 °C",
      wetCake: "32.1 g",
      dried: dried("38.42", "64.27", "64.23"),
    },
    fault: "None.",
    accept: noAlarm,
  },
  {
    // 48.0 g KNO3; 28.2 g of water at 20 °C keeps 31.6 g in 100 g = 8.9 g; rinsing 1.1 g, handling 1.0 g: 37.0 g.
    id: "hg09-saltpetre-recrystallised",
    request: rawSaltpetre,
    observations: {
      weighed: { saltpetre: "50.0 g" },
      temperature: "20 °C",
      wetCake: "40.2 g",
      dried: dried("120.5", "157.6", "157.5"),
    },
    fault: "None.",
    accept: noAlarm,
  },
  {
    // 172.2/172.17 × 145.14 = 145.2 g; 0.4 g left on the tray; full loss 27.0 g: 145.2 g in the pan, read as 145.3 g; 144.8 g in the jar.
    id: "hg10-plaster",
    request: plaster,
    observations: {
      weighed: { gypsum: "172.2 g" },
      ignition: { before: "172.2 g", after: "145.3 g" },
      dried: "144.8 g",
    },
    fault: "None.",
    accept: noAlarm,
  },
  {
    // 84.0/84.006/2 × 105.99 = 53.0 g; 0.3 g left in the dish.
    id: "hg11-soda-baked",
    request: bakedSoda,
    observations: {
      weighed: { "baking soda": "84.0 g" },
      ignition: { before: "84.0 g", after: "53.0 g" },
      dried: "52.7 g",
    },
    fault: "None.",
    accept: noAlarm,
  },
  {
    // 24.97/249.68 × 63.546 = 6.36 g; iron dissolved out with acid; 96.5 % = 6.13 g.
    id: "hg12-cement-copper",
    request: cement,
    observations: {
      weighed: { "copper sulfate": "24.97 g", "iron powder": "6.15 g" },
      tests: { lastWash: "clear" },
      filtrateVolume: "86 mL",
      washes: 3,
      dried: dried("29.66", "35.80", "35.79"),
    },
    fault: "None.",
    accept: noAlarm,
  },
];
