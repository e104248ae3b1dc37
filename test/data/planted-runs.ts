// Good runs and planted faults of sixteen preparations. What comes out and what is wrong with it is plain arithmetic on the molar masses
// written here (IUPAC weights, two decimals), done before anything was asked of the library: a batch of known theory, and
// what a bench does to it: dries it too little, does not wash it, drops a fifth, runs out of precipitant, leaves the fire too early.
import type { FindingCode, Observations, PlanRequest } from "preparative";

/** A preparation, with its theory in grams worked out by hand. */
export interface Prepared {
  readonly id: string;
  readonly request: PlanRequest;
  readonly theory: number;
  /** Solids of the same metal that are heavier by so much that a damp cake may be one of them: the mass alone cannot say. */
  readonly heavierKin?: boolean;
}

const precipitate = (
  id: string,
  equation: string,
  product: string,
  [metal, grams, molar]: readonly [string, number, number],
  precipitant: string,
  // atoms of the metal in the product, its molar mass
  [atoms, mass]: readonly [number, number],
  heavierKin = false,
): Prepared => ({
  id,
  request: {
    equation,
    product,
    materials: [
      { name: "metal salt", form: metal },
      { name: "precipitant", form: precipitant, excess: "10 %" },
    ],
    scale: { material: "metal salt", portion: `${grams} g` as "1 g" },
  },
  theory: (grams / molar / atoms) * mass,
  heavierKin,
});

export const PRECIPITATES: readonly Prepared[] = [
  precipitate(
    "malachite",
    "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
    "Cu2(OH)2CO3",
    ["CuSO4·5H2O", 100, 249.68],
    "Na2CO3",
    [2, 221.11],
    true,
  ),
  precipitate("chalk", "CaCl2 + Na2CO3 -> CaCO3 + NaCl", "CaCO3", ["CaCl2·2H2O", 100, 147.01], "Na2CO3", [1, 100.09]),
  precipitate(
    "basic zinc carbonate",
    "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
    "Zn5(CO3)2(OH)6",
    ["ZnSO4·7H2O", 200, 287.56],
    "Na2CO3",
    [5, 548.96],
    true,
  ),
  precipitate(
    "barium sulfate",
    "BaCl2 + Na2SO4 -> BaSO4 + NaCl",
    "BaSO4",
    ["BaCl2·2H2O", 100, 244.26],
    "Na2SO4",
    [1, 233.38],
  ),
  precipitate(
    "barium carbonate",
    "BaCl2 + Na2CO3 -> BaCO3 + NaCl",
    "BaCO3",
    ["BaCl2·2H2O", 100, 244.26],
    "Na2CO3",
    [1, 197.33],
  ),
  precipitate(
    "strontium carbonate",
    "SrCl2 + Na2CO3 -> SrCO3 + NaCl",
    "SrCO3",
    ["SrCl2·6H2O", 100, 266.62],
    "Na2CO3",
    [1, 147.63],
  ),
  precipitate(
    "manganese carbonate",
    "MnSO4 + Na2CO3 -> MnCO3 + Na2SO4",
    "MnCO3",
    ["MnSO4·H2O", 100, 169.02],
    "Na2CO3",
    [1, 114.95],
  ),
  precipitate("silver chloride", "AgNO3 + NaCl -> AgCl + NaNO3", "AgCl", ["AgNO3", 50, 169.87], "NaCl", [1, 143.32]),
  precipitate(
    "calcium oxalate",
    "CaCl2 + Na2C2O4 + H2O -> CaC2O4·H2O + NaCl",
    "CaC2O4·H2O",
    ["CaCl2·2H2O", 50, 147.01],
    "Na2C2O4",
    [1, 146.11],
    true,
  ),
  precipitate(
    "strontium sulfate",
    "SrCl2 + Na2SO4 -> SrSO4 + NaCl",
    "SrSO4",
    ["SrCl2·6H2O", 100, 266.62],
    "Na2SO4",
    [1, 183.68],
  ),
];

/** Fired feeds: 100 g of feed, molar masses of feed and product, products for one feed. */
const fired = (
  id: string,
  equation: string,
  product: string,
  feed: string,
  molar: number,
  each: number,
  mass: number,
): Prepared => ({
  id,
  request: {
    equation,
    product,
    materials: [{ name: "feed", form: feed }],
    scale: { material: "feed", portion: "100.0 g" },
  },
  theory: (100 / molar) * each * mass,
});

export const FIRED: readonly Prepared[] = [
  fired("lime", "CaCO3 -> CaO + CO2", "CaO", "CaCO3", 100.09, 1, 56.08),
  fired("soda from bicarbonate", "2 NaHCO3 -> Na2CO3 + CO2 + H2O", "Na2CO3", "NaHCO3", 84.01, 0.5, 105.99),
  fired("copper oxide", "Cu2(OH)2CO3 -> 2 CuO + CO2 + H2O", "CuO", "Cu2(OH)2CO3", 221.11, 2, 79.55),
  fired("zinc oxide", "ZnCO3 -> ZnO + CO2", "ZnO", "ZnCO3", 125.39, 1, 81.38),
  fired("magnesia", "MgCO3 -> MgO + CO2", "MgO", "MgCO3", 84.31, 1, 40.3),
  fired("iron oxide", "2 Fe(OH)3 -> Fe2O3 + 3 H2O", "Fe2O3", "Fe(OH)3", 106.87, 0.5, 159.69),
];

export interface PlantedRun {
  readonly id: string;
  readonly prepared: Prepared;
  readonly observations: Observations;
  /** What must be said first: one code, or any of several where the numbers cannot decide between them. */
  readonly first: readonly FindingCode[];
  readonly good: boolean;
}

type Grams = "1 g";
const g = (mass: number): Grams => `${mass.toFixed(1)} g` as Grams;

const GOOD = ["consistent", "loss-explained"] as const;

function ofPrecipitate(prepared: Prepared): PlantedRun[] {
  const { theory: T, id } = prepared;
  const run = (what: string, first: readonly FindingCode[], observations: Observations, good = false): PlantedRun => ({
    id: `${id}: ${what}`,
    prepared,
    observations,
    first,
    good,
  });
  const clean = { filtrate: "clear", lastWash: "negative" } as const;
  return [
    run(
      "97 % at constant mass, washed, tests passed",
      GOOD,
      { dried: [g(0.971 * T), g(0.97 * T)], washes: 4, tests: clean },
      true,
    ),
    run("94 %, weighed with its dish", GOOD, { dried: { gross: g(0.94 * T + 50), tare: "50.0 g" } }, true),
    run("96 %, titrated at 99.5 %", GOOD, { dried: g(0.96 * T), assay: "99.5 %" }, true),
    run("still loses a tenth between weighings", ["still-drying"], { dried: [g(1.5 * T), g(1.3 * T), g(1.15 * T)] }),
    run("92 %, and silver or barium clouds the last wash", ["unwashed"], {
      dried: g(0.92 * T),
      tests: { lastWash: "positive" },
    }),
    run("95 %, never washed", ["unwashed"], { dried: g(0.95 * T), washes: 0 }),
    run("70 %, and a drop of precipitant clouds the filtrate", ["reagent-short"], {
      dried: g(0.7 * T),
      tests: { filtrate: "cloudy" },
    }),
    run("97 %, and a drop of precipitant clouds the filtrate", ["reagent-short"], {
      dried: g(0.97 * T),
      tests: { filtrate: "positive" },
    }),
    run("a fifth on the floor, the rest at 97 %", ["spilled"], {
      dried: g(0.8 * 0.97 * T),
      lost: [{ of: "product", mass: g(0.2 * T) }],
    }),
    run("55 %, filtrate clear, nothing spilled", ["lighter-than-losses-explain"], {
      dried: g(0.55 * T),
      tests: clean,
      washes: 4,
    }),
    run("97 %, titrated at 88 %", ["impure"], { dried: g(0.97 * T), assay: "88 %" }),
    run(
      "weighed once at 106 %, washed clean",
      prepared.heavierKin === true ? ["wet", "other-formula-fits", "other-hydrate-fits"] : ["wet"],
      {
        dried: g(1.06 * T),
        washes: 4,
        tests: clean,
      },
    ),
    run("two and a half times the theory at constant mass", ["too-heavy"], {
      dried: [g(2.501 * T), g(2.5 * T)],
      washes: 4,
      tests: clean,
    }),
  ];
}

function ofFired(prepared: Prepared): PlantedRun[] {
  const { theory: T, id } = prepared;
  const run = (what: string, first: readonly FindingCode[], observations: Observations, good = false): PlantedRun => ({
    id: `${id}: ${what}`,
    prepared,
    observations,
    first,
    good,
  });
  // A tenth of the feed not reached by the fire weighs what it weighed.
  const core = 0.1 * 100 + 0.9 * T;
  return [
    run("99.5 %, a little in the crucible", GOOD, { dried: g(0.995 * T) }, true),
    run("99 %, at constant mass", GOOD, { dried: [g(0.9905 * T), g(0.99 * T)] }, true),
    run("a tenth of the feed left", ["unreacted"], { dried: g(core) }),
    run("an eighth gone from the crucible", ["lighter-than-losses-explain"], { dried: g(0.875 * T) }),
  ];
}

export const PLANTED_RUNS: readonly PlantedRun[] = [...PRECIPITATES.flatMap(ofPrecipitate), ...FIRED.flatMap(ofFired)];
