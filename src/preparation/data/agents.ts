// Substances that are put in to oxidise or to reduce, by the name of their anion or by formula.
import type { SourceKey } from "./sources";

/** Oxidisers and reducers of the bench. */
interface AgentRow {
  readonly as: "oxidiser" | "reducer";
  /** Names of anions. */
  readonly groups: readonly string[];
  readonly molecules: readonly string[];
  /** Alcohol may be put to its salts, in water and without free acid of theirs. */
  readonly mild?: true;
  readonly source: SourceKey;
}

export const AGENTS: readonly AgentRow[] = [
  { as: "oxidiser", groups: ["permanganate", "chromate", "dichromate", "chlorate", "perchlorate", "hypochlorite", "chlorite", "bromate", "peroxodisulfate"], molecules: ["H2O2", "Br2", "Cl2", "I2"], source: "commonPractice" },
  { as: "oxidiser", groups: ["iodate", "nitrate", "nitrite"], molecules: [], mild: true, source: "commonPractice" },
  { as: "reducer", groups: ["sulfite", "hydrogensulfite", "disulfite", "dithionite", "thiosulfate", "hypophosphite", "ascorbate"], molecules: ["C6H8O6", "C6H12O6", "N2H4", "HCHO", "C2H5OH", "CH3CHO", "HCOOH"], source: "commonPractice" },
];

/** Anions that a base splits into the plain one. */
export const SPLIT_BY_BASE: readonly { readonly from: string; readonly to: string; readonly source: SourceKey }[] = [
  { from: "dichromate", to: "chromate", source: "commonPractice" },
  { from: "disulfite", to: "sulfite", source: "commonPractice" },
];

/** Anions that go through a halogen on the way to their oxidised one: they are poured into the oxidiser, of which there is enough then. */
export const THROUGH_HALOGEN: readonly { readonly from: string; readonly to: string; readonly source: SourceKey }[] = [
  { from: "iodide", to: "iodate", source: "commonPractice" },
  { from: "bromide", to: "bromate", source: "commonPractice" },
];
