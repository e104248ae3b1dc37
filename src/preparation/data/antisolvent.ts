// What alcohol does to a salt in water: it brings it out, or dissolves it as well. A salt that no row has is not known.
import type { SourceKey } from "./sources";

/** What as much alcohol as liquor does to what is dissolved. */
export type WithAlcohol = "brings it out" | "dissolves it";

/** One kind of salt; the first row that fits holds. */
export interface AntisolventRow {
  /** Cations with their charge; without them any. */
  readonly cations?: readonly string[];
  /** Names of anions, one of which it has, or what the name of a complex or ligand contains; without them any. */
  readonly groups?: readonly string[];
  /** A metal with its ligands that stays together in water. */
  readonly complex?: true;
  readonly alcohol: WithAlcohol;
  /** Share of the theory that it usually brings out in the cold, at least, where no solubility is known. */
  readonly usually?: string;
  readonly source: SourceKey;
}

/** How long a liquor stands cold once alcohol is in it. */
export const STANDS_WITH_ALCOHOL = { time: "half an hour", source: "commonPractice" } as const satisfies {
  time: string;
  source: SourceKey;
};

export const ANTISOLVENT: readonly AntisolventRow[] = [
  // complexes first: their chlorides are no chlorides of the bare metal
  { complex: true, groups: ["ammine"], alcohol: "brings it out", usually: "80 %", source: "commonPractice" },
  { complex: true, groups: ["oxalate"], alcohol: "brings it out", source: "commonPractice" },
  { complex: true, groups: ["cyanid"], alcohol: "brings it out", source: "memory" },
  { cations: ["Cu^2+", "Ni^2+"], groups: ["glycinate"], alcohol: "brings it out", source: "memory" },
  // 100 g of ethanol at 25 °C: LiCl 25.8 g, LiI 251 g, NaI 46 g, KI 2.2 g, KBr 0.14 g, RbCl 0.08 g, NaCl 0.065 g, KCl 0.022 g
  { cations: ["Li+"], groups: ["chloride", "bromide", "iodide"], alcohol: "dissolves it", source: "simmondsAlcohol" },
  { cations: ["Na+"], groups: ["iodide"], alcohol: "dissolves it", source: "simmondsAlcohol" },
  { cations: ["Na+", "K+", "Rb+"], groups: ["chloride"], alcohol: "brings it out", source: "simmondsAlcohol" },
  { cations: ["K+"], groups: ["bromide"], alcohol: "brings it out", source: "simmondsAlcohol" },
  { cations: ["Li+", "Na+", "K+", "Rb+", "Cs+"], groups: ["hydroxide"], alcohol: "dissolves it", source: "simmondsAlcohol" },
  { cations: ["Na+", "K+", "Rb+", "Cs+"], groups: ["carbonate", "hydrogencarbonate"], alcohol: "brings it out", source: "simmondsAlcohol" },
  { groups: ["sulfate"], alcohol: "brings it out", source: "simmondsAlcohol" },
  // chlorides
  { cations: ["Sn^2+"], groups: ["chloride"], alcohol: "dissolves it", source: "pharmacopoeiaTin" },
  { cations: ["Zn^2+"], groups: ["chloride", "iodide"], alcohol: "dissolves it", source: "bruntonZinc" },
  { cations: ["Fe^3+"], groups: ["chloride"], alcohol: "dissolves it", source: "bruntonZinc" },
  { cations: ["Mg^2+", "Ca^2+", "Sr^2+", "Al^3+", "Fe^2+", "Fe^3+", "Cu^2+", "Co^2+", "Ni^2+", "Mn^2+", "Cr^3+", "Hg^2+", "Sn^4+"], groups: ["chloride", "bromide", "iodide"], alcohol: "dissolves it", source: "memory" },
  { cations: ["Zn^2+", "Cd^2+", "Sn^2+"], groups: ["chloride", "bromide", "iodide"], alcohol: "dissolves it", source: "memory" },
  { cations: ["Ba^2+"], groups: ["chloride"], alcohol: "brings it out", source: "memory" },
  { cations: ["NH4+"], groups: ["chloride"], alcohol: "dissolves it", source: "simmondsAlcohol" },
  { cations: ["NH4+"], groups: ["bromide", "iodide"], alcohol: "dissolves it", source: "memory" },
  // nitrates; those of barium and lead stay out of alcohol, and no oxidiser is put to it anyway
  { cations: ["Cu^2+"], groups: ["nitrate"], alcohol: "dissolves it", source: "cyclopaediaCopper" },
  { cations: ["Ca^2+", "Mg^2+", "Zn^2+", "Ni^2+", "Co^2+", "Mn^2+", "Fe^3+", "Al^3+", "Cd^2+", "Li+", "NH4+"], groups: ["nitrate"], alcohol: "dissolves it", source: "memory" },
  // salts of organic acids, and the rest
  { cations: ["Na+", "K+", "NH4+", "Mg^2+", "Zn^2+", "Pb^2+", "Cu^2+", "Mn^2+", "Co^2+", "Ni^2+"], groups: ["acetate"], alcohol: "dissolves it", source: "memory" },
  { groups: ["thiocyanate", "perchlorate", "lactate"], alcohol: "dissolves it", source: "memory" },
  { groups: ["oxalate", "tartrate", "citrate", "phosphate", "hydrogenphosphate", "dihydrogenphosphate", "thiosulfate", "sulfite", "borate"], alcohol: "brings it out", source: "memory" },
];
