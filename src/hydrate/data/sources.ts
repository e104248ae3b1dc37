// Sources of the tables of hydrates; what they share with lower layers stands there.
import { generalSources } from "../../foundation/data/sources";
import { citation, type Sources } from "../../foundation/source";

export const hydrateSources = {
  niteGhs: { title: "GHS classification results by the Japanese government, National Institute of Technology and Evaluation", access: "categories mapped to statement codes by program; often stricter than suppliers' sheets" },
  aiic: { title: "Australian Inventory of Industrial Chemicals", year: 2022, where: "list of 10 February 2022", access: "registry numbers found with formula or listed name; the ratio test ignores H and O" },
  nzioc: { title: "New Zealand Inventory of Chemicals", year: 2021, where: "list of December 2021", access: "matched by listed name" },
  canadaDsl: { title: "Domestic Substances List, Canada", access: "matched by listed name" },
  sds73: { title: "IUPAC-NIST Solubility Data Series 73, Metal and Ammonium Formate Systems, J. Phys. Chem. Ref. Data 30, 1", year: 2001 },
} as const satisfies Sources;

/** What a row of this layer may name. */
export type SourceKey = keyof typeof hydrateSources | keyof typeof generalSources;

/** A source on one line, as it is printed under a working. */
export const cite = (key: SourceKey): string => citation(key, [hydrateSources, generalSources]);
