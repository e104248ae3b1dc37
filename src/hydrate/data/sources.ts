// Sources of the tables of hydrates; what they share with lower layers stands there.
import { generalSources } from "../../foundation/data/sources";
import { type Access, citation, type Sources } from "../../foundation/source";

export const hydrateSources = {
  niteGhs: { title: "GHS classification results by the Japanese government, National Institute of Technology and Evaluation" },
  aiic: { title: "Australian Inventory of Industrial Chemicals", year: 2022, where: "list of 10 February 2022" },
  nzioc: { title: "New Zealand Inventory of Chemicals", year: 2021, where: "list of December 2021" },
  canadaDsl: { title: "Domestic Substances List, Canada" },
  sds73: { title: "IUPAC-NIST Solubility Data Series 73, Metal and Ammonium Formate Systems, J. Phys. Chem. Ref. Data 30, 1", year: 2001 },
  densityTable: { title: "recalled; agrees with an unsigned table of densities", fromMemory: "partly" },
  blanchard: { title: "Blanchard et al., Synthetic Inorganic Chemistry, Table of Solubilities" },
} as const satisfies Sources;

/** How the figures reached us, where they were not read in the source itself. */
export const hydrateAccess = {
  niteGhs: "categories mapped to statement codes by program; often stricter than suppliers' sheets",
  aiic: "registry numbers found with formula or listed name; the ratio test ignores H and O",
  nzioc: "matched by listed name",
  canadaDsl: "matched by listed name",
  densityTable: "public copy without author or licence, some 2,000 compounds and minerals with their hydrates; no figure was taken from it: ours were recalled first, and each agrees with it within 1 %",
  blanchard: "stored page, whole numbers at 0, 25 and 100 °C",
} as const satisfies Access<typeof hydrateSources>;

/** What a row of this layer may name. */
export type SourceKey = keyof typeof hydrateSources | keyof typeof generalSources;

/** A source on one line, as it is printed under a working. */
export const cite = (key: SourceKey): string => citation(key, [hydrateSources, generalSources]);
