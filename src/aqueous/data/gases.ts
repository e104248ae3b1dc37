// Solubility of gases in water, g of gas (dissolved and reacted) per 100 g water, under one atmosphere: either of gas
// plus water vapour ("total") or of the gas alone ("partial"). What is from memory is held against printed figures by test.
import { columns } from "../../foundation/columns";
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** One gas on one pressure basis. */
export interface GasRow {
  readonly gas: string;
  readonly name: string;
  /** What is 101.325 kPa: the gas with the water vapour, or the gas alone. */
  readonly pressure: "total" | "partial";
  /** [°C, g per 100 g water as text]. */
  readonly points: readonly (readonly [celsius: number, grams: string])[];
  readonly source: SourceKey;
  /** Temperatures of the figures that were read, where the others of the row are from memory. */
  readonly read?: string;
  /** Where a figure from memory is believed to stand. */
  readonly believed?: string;
  readonly note?: string;
}

export const GASES = /* @__PURE__ */ once((): readonly GasRow[] => [
  { gas: "CO2", name: "carbon dioxide", pressure: "total", points: [[0, "0.3346"], [10, "0.2318"], [20, "0.1688"], [25, "0.1449"], [30, "0.1257"], [40, "0.0973"]], source: "langeGases", read: "40 °C" },
  { gas: "CO2", name: "carbon dioxide", pressure: "partial", points: [[0, "0.339"], [10, "0.236"], [15, "0.2016"], [20, "0.1739"], [30, "0.131"], [40, "0.106"]], source: "kayeLaby1941" },
  { gas: "O2", name: "oxygen", pressure: "total", points: [[0, "0.006945"], [10, "0.005368"], [20, "0.004339"], [25, "0.003931"], [30, "0.003588"], [40, "0.003082"]], source: "langeGases", read: "0 °C", note: "pure oxygen, not air" },
  { gas: "O2", name: "oxygen", pressure: "partial", points: [[0, "0.00701"], [10, "0.00545"], [20, "0.00444"], [25, "0.00407"], [30, "0.00377"], [40, "0.00332"]], source: "memory", believed: "IUPAC Solubility Data Series equations as printed in the CRC Handbook" },
  { gas: "NH3", name: "ammonia", pressure: "total", points: [[0, "87.5"], [10, "67.9"], [20, "52.6"], [25, "46.1"], [30, "40.3"], [40, "30.7"]], source: "memory", believed: "Roscoe and Dittmar 1859, in Seidell (1919)" },
  { gas: "NH3", name: "ammonia", pressure: "partial", points: [[0, "100"], [10, "70.2"], [20, "54.9"]], source: "kayeLaby1941", note: "12 % above the total-pressure row at 0 °C" },
  { gas: "SO2", name: "sulfur dioxide", pressure: "total", points: [[0, "22.83"], [10, "16.21"], [20, "11.28"], [25, "9.41"], [30, "7.8"], [40, "5.41"]], source: "langeGases", read: "0 °C" },
  { gas: "SO2", name: "sulfur dioxide", pressure: "partial", points: [[0, "23.1"], [10, "15.3"], [20, "10.6"], [25, "8.96"], [30, "7.62"], [40, "5.63"]], source: "memory", believed: "IUPAC Solubility Data Series equations as printed in the CRC Handbook", note: "up to 8 % below the total-pressure row on the same basis" },
  { gas: "H2S", name: "hydrogen sulfide", pressure: "total", points: [[0, "0.7066"], [10, "0.5112"], [20, "0.3846"], [25, "0.3375"], [30, "0.2983"], [40, "0.2361"]], source: "langeGases", read: "0 and 10 °C" },
  { gas: "H2S", name: "hydrogen sulfide", pressure: "partial", points: [[0, "0.723"], [10, "0.523"], [20, "0.396"], [25, "0.351"], [30, "0.313"], [40, "0.257"]], source: "memory", believed: "IUPAC Solubility Data Series equations as printed in the CRC Handbook" },
  { gas: "Cl2", name: "chlorine", pressure: "total", points: [[10, "0.993"], [15, "0.846"], [20, "0.728"], [30, "0.571"], [40, "0.457"]], source: "kayeLaby1941", note: "below 9.6 °C a solid hydrate forms; includes HOCl and HCl formed" },
  { gas: "Cl2", name: "chlorine", pressure: "partial", points: [[10, "0.979"], [20, "0.741"], [30, "0.591"], [40, "0.485"]], source: "memory", believed: "IUPAC Solubility Data Series equations as printed in the CRC Handbook" },
  { gas: "HCl", name: "hydrogen chloride", pressure: "total", points: [[0, "83.0"], [10, "77.7"], [20, "72.6"], [25, "70.1"], [30, "67.7"], [40, "63.8"]], source: "kayeLaby1941" },
]);

/** The gases of the table, without their figures. */
export const GASES_KNOWN = /* @__PURE__ */ columns(GASES, ["gas"]);
