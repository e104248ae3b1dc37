// Heat capacity of an acid in water by its strength, cal/(g K), near room temperature. Read as published, mole fractions turned into mass
// fractions; between rows a straight line.
import type { SourceKey } from "./sources";

/** One acid: percent by mass, and calories for a gram and a kelvin. */
interface HeatCapacityRow {
  readonly acid: string;
  readonly celsius: string;
  readonly capacities: readonly (readonly [percent: string, calories: string])[];
  readonly source: SourceKey;
}

export const HEAT_CAPACITIES: readonly HeatCapacityRow[] = [
  { acid: "H2SO4", celsius: "20", capacities: [["0", "0.9988"], ["5.16", "0.9549"], ["9.82", "0.9177"], ["15.36", "0.8767"], ["21.40", "0.8339"], ["25.39", "0.8041"], ["30.34", "0.7647"], ["35.25", "0.7238"], ["40.49", "0.6770"], ["47.57", "0.6153"], ["57.65", "0.5420"], ["64.47", "0.5012"], ["73.13", "0.4628"], ["81.33", "0.4481"], ["89.36", "0.4016"], ["94.82", "0.3554"], ["100", "0.3352"]], source: "memory" },
  // 9.09, 16.7 and 20.0 % by amount
  { acid: "HCl", celsius: "20", capacities: [["0", "0.9988"], ["16.83", "0.74"], ["28.87", "0.631"], ["33.60", "0.591"]], source: "perry1997" },
  { acid: "HNO3", celsius: "20", capacities: [["0", "1.000"], ["10", "0.900"], ["20", "0.810"], ["30", "0.730"], ["40", "0.675"], ["50", "0.650"], ["60", "0.640"], ["70", "0.615"], ["80", "0.575"], ["90", "0.515"]], source: "perry1997" },
  // 6.98, 30.9 and 54.5 % by amount
  { acid: "CH3COOH", celsius: "38", capacities: [["0", "1.0"], ["20.0", "0.911"], ["59.8", "0.73"], ["80.0", "0.631"], ["100", "0.535"]], source: "perry1997" },
];

/** Joules in a thermochemical calorie, by definition. */
export const CALORIE = "4.184";
