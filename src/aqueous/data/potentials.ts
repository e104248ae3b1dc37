// What takes and what gives electrons readily in water: standard potentials in volts, all from memory. Only good to say that
// two of them will not stand together; the equilibrium computed here leaves every oxidation state as it was put in.

/** [ion or molecule as it is put in, potential of its half-reaction in V]. */
type PotentialRow = readonly [species: string, volts: number];

export const OXIDANTS: readonly PotentialRow[] = [
  ["MnO4-", 1.51],
  ["HO2-", 1.78],
  ["S2O8^2-", 2.01],
  ["ClO-", 1.63],
  ["BrO3-", 1.42],
  ["ClO3-", 1.45],
  ["IO3-", 1.2],
  ["CrO4^2-", 1.36],
  ["Ce^4+", 1.61],
  ["Co^3+", 1.82],
  ["Tl^3+", 1.25],
  ["I2", 0.54],
  ["Fe^3+", 0.77],
  ["Ag+", 0.8],
  ["Hg^2+", 0.92],
  ["Cu^2+", 0.86], // to copper(I) iodide; only iodide and cyanide are met at it
];

export const REDUCTANTS: readonly PotentialRow[] = [
  ["S^2-", 0.14],
  ["SO3^2-", 0.17],
  ["S2O4^2-", -0.1],
  ["S2O3^2-", 0.08],
  ["Sn^2+", 0.15],
  ["H2PO2-", -0.5],
  ["I-", 0.54],
  ["Fe^2+", 0.77],
  ["C6H6O6^2-", 0.06],
  ["Fe(CN)6^4-", 0.36],
  ["NO2-", 0.94],
  ["HO2-", 0.7],
  ["H2AsO3-", 0.56],
  ["N2H4", -0.23],
  ["Cu+", 0.16],
  ["C2O4^2-", -0.49],
  ["CN-", 0.37],
];

/** Pairs that the potentials would set against each other but that stand together at the bench, slowly or not at all. */
export const SLOW: ReadonlySet<string> = /* @__PURE__ */ new Set([
  "Fe^3+ C2O4^2-",
  "Ag+ C2O4^2-",
  "Hg^2+ C2O4^2-",
  "Co^3+ C2O4^2-",
  "Ag+ NO2-",
  "Ag+ S2O3^2-",
  "Ag+ CN-",
  "Fe^3+ CN-",
  "Hg^2+ CN-",
  "Hg^2+ I-",
  "Ag+ I-",
  "Ag+ SO3^2-",
  "Ag+ S^2-",
  "Hg^2+ S^2-",
  "Hg^2+ S2O3^2-",
  "Hg^2+ NO2-",
  "Ag+ Fe(CN)6^4-",
  "Fe^3+ Fe(CN)6^4-",
  "CrO4^2- C2O4^2-",
  "IO3- NO2-",
  "Fe^3+ NO2-",
]);
