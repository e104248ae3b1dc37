// Second virial coefficients of the gases a bench makes: B(T) = sum of a(i) (T0/T - 1)^(i-1) with T0 = 298.15 K, in
// cm3/mol. Recalled from the handbook table, so every row carries a stated uncertainty wide enough for that.
import type { SourceKey } from "./sources";

export interface VirialRow {
  readonly gas: string;
  /** a(1), a(2), ... in cm3/mol. */
  readonly coefficients: readonly string[];
  /** Range the row may be used in, °C. */
  readonly celsius: readonly [low: string, high: string];
  /** Standard uncertainty of B in cm3/mol over that range. */
  readonly standardUncertainty: string;
  readonly source: SourceKey;
  readonly knownAs: "memory";
}

export const VIRIAL_COEFFICIENTS: readonly VirialRow[] = [
  { gas: "CO2", coefficients: ["-127", "-288", "-118"], celsius: ["0", "100"], standardUncertainty: "4", source: "crcVirial", knownAs: "memory" },
  { gas: "NH3", coefficients: ["-271", "-1022", "-2716"], celsius: ["15", "100"], standardUncertainty: "15", source: "crcVirial", knownAs: "memory" },
  { gas: "H2", coefficients: ["15.4", "-9.0", "-0.2"], celsius: ["0", "100"], standardUncertainty: "1.5", source: "crcVirial", knownAs: "memory" },
  { gas: "O2", coefficients: ["-16", "-62", "-8"], celsius: ["0", "100"], standardUncertainty: "2", source: "crcVirial", knownAs: "memory" },
  { gas: "SO2", coefficients: ["-430", "-1193", "-1029"], celsius: ["15", "100"], standardUncertainty: "25", source: "crcVirial", knownAs: "memory" },
  { gas: "Cl2", coefficients: ["-303", "-555"], celsius: ["0", "50"], standardUncertainty: "15", source: "crcVirial", knownAs: "memory" },
];
