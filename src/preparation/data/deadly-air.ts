// How little of a poisonous gas in the air is immediately dangerous to life or health: shares from which somebody still gets out
// unharmed within half an hour, not ones to work in.
import type { SourceKey } from "./sources";

interface DeadlyAirRow {
  /** As the registry spells it. */
  readonly formula: string;
  /** Parts of the gas in a million of air, by volume. */
  readonly ppm: string;
  readonly source: SourceKey;
}

export const DEADLY_AIR: readonly DeadlyAirRow[] = [
  { formula: "H2S", ppm: "100", source: "nioshIdlh" },
  { formula: "HCN", ppm: "50", source: "nioshIdlh" },
  { formula: "NO2", ppm: "13", source: "nioshIdlh" },
  { formula: "Cl2", ppm: "10", source: "nioshIdlh" },
  { formula: "Br2", ppm: "3", source: "nioshIdlh" },
  { formula: "ClO2", ppm: "5", source: "nioshIdlh" },
  { formula: "PH3", ppm: "50", source: "nioshIdlh" },
  { formula: "AsH3", ppm: "3", source: "nioshIdlh" },
  { formula: "SbH3", ppm: "5", source: "nioshIdlh" },
  { formula: "H2Se", ppm: "1", source: "nioshIdlh" },
  { formula: "CO", ppm: "1200", source: "nioshIdlh" },
  { formula: "SO2", ppm: "100", source: "nioshIdlh" },
  { formula: "NH3", ppm: "300", source: "nioshIdlh" },
  { formula: "NO", ppm: "100", source: "nioshIdlh" },
  { formula: "COCl2", ppm: "2", source: "nioshIdlh" },
  { formula: "HF", ppm: "30", source: "nioshIdlh" },
  { formula: "HCl", ppm: "45", source: "nioshIdlh" },
  { formula: "O3", ppm: "5", source: "nioshIdlh" },
];
