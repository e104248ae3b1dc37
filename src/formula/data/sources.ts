// Sources of the tables of the mass of the electron; what they share with lower layers stands there.
import { generalSources } from "../../foundation/data/sources";
import { type Access, citation, type Sources } from "../../foundation/source";

export const formulaSources = {
  codata2022: { title: "CODATA recommended values of the fundamental physical constants: 2022", year: 2022, where: "electron relative atomic mass; molar mass constant", fromMemory: "all" },
} as const satisfies Sources;

/** How the figures reached us, where they were not read in the source itself. */
export const formulaAccess = {
  codata2022: "figures from memory",
} as const satisfies Access<typeof formulaSources>;

/** What a row of this layer may name. */
type SourceKey = keyof typeof formulaSources | keyof typeof generalSources;

/** A source on one line, as it is printed under a working. */
export const cite = (key: SourceKey): string => citation(key, [formulaSources, generalSources]);
