// Heat that one mole of an acid in water gives as it is diluted without end, kJ at 25 °C, by how many moles of water there are
// to one of acid before. Read as published; between rows a straight line over the molality.
import type { SourceKey } from "./sources";

/** One acid: moles of water to one of acid, and the heat that is still to come. */
export interface DilutionRow {
  readonly acid: string;
  readonly heats: readonly (readonly [water: string, kilojoules: string])[];
  readonly source: SourceKey;
}

export const DILUTION: readonly DilutionRow[] = [
  { acid: "HCl", heats: [["1", "45.61"], ["2.775", "19.87"], ["3.7", "15.40"], ["5.551", "10.24"], ["6.938", "8.201"], ["9.251", "6.268"], ["11.1", "5.318"], ["13.88", "4.402"], ["18.5", "3.506"], ["27.75", "2.623"], ["55.51", "1.695"], ["111", "1.172"], ["555.1", "0.556"]], source: "parker1965" },
  { acid: "HNO3", heats: [["1", "19.73"], ["2.775", "9.498"], ["3.7", "6.883"], ["5.551", "3.933"], ["6.938", "2.791"], ["9.251", "1.749"], ["11.1", "1.310"], ["13.88", "0.958"], ["18.5", "0.665"], ["27.75", "0.527"], ["55.51", "0.506"]], source: "parker1965" },
  { acid: "CH3COOH", heats: [["1", "2.167"], ["2.775", "2.075"], ["3.7", "1.962"], ["5.551", "1.824"], ["6.938", "1.724"], ["9.251", "1.540"], ["11.1", "1.393"], ["13.88", "1.218"], ["18.5", "1.025"], ["27.75", "0.803"]], source: "parker1965" },
];
