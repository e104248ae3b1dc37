// Sources of the tables of equilibria in water; what they share with lower layers stands there.
import { generalSources } from "../../foundation/data/sources";
import { type Access, citation, type Sources } from "../../foundation/source";
import { ionSources } from "../../ion/internal";

export const aqueousSources = {
  crcSolubilityProducts87: { title: "CRC Handbook of Chemistry and Physics, Solubility Product Constants", edition: "87th", year: 2006, where: "pp. 8-118 to 8-119" },
  wisconsinSolubilityProducts: { title: "University of Wisconsin-Madison, Department of Chemistry, Solubility Product Constants for Some Inorganic Compounds at 25 °C" },
  usgsEquilibria: { title: "Equilibrium constants of natural waters, United States Geological Survey" },
  harrisSolubilityProducts: { title: "Harris, Quantitative Chemical Analysis, Solubility Products", where: "Appendix F" },
  liuByrne1997: { title: "Liu and Byrne, Rare earth and yttrium phosphate solubilities in aqueous solution, Geochim. Cosmochim. Acta 61, 1625", year: 1997 },
  firsching1992: { title: "Firsching, Solubility products of the trivalent rare-earth arsenates, J. Chem. Eng. Data 37, 497", year: 1992 },
  wagemann1978: { title: "Wagemann, Water Research 12, 139", year: 1978 },
  ohlinger1998: { title: "Ohlinger, Young and Schroeder, Water Research 32, 3607", year: 1998 },
  sander2023: { title: "Sander, Compilation of Henry's law constants (version 5.0.0) for water as solvent, Atmos. Chem. Phys. 23, 10901", year: 2023, doi: "10.5194/acp-23-10901-2023" },
  langeGases: { title: "Lange's Handbook of Chemistry, Solubility of Gases in Water", edition: "15th", where: "Table 5.1", fromMemory: "partly" },
  felmyWeare1986: { title: "Felmy and Weare, Geochim. Cosmochim. Acta 50, 2771", year: 1986 },
  baesMesmer1976: { title: "Baes and Mesmer, The Hydrolysis of Cations", year: 1976 },
  kayeLaby1941: { title: "Kaye and Laby, Tables of Physical and Chemical Constants, Solubilities of gases in water", year: 1941 },
} as const satisfies Sources;

/** How the figures reached us, where they were not read in the source itself. */
export const aqueousAccess = {
  crcSolubilityProducts87: "open copy; computed from free energies of formation for many solids",
  wisconsinSolubilityProducts: "stored pages (the department's table and the appendix of its course)",
  harrisSolubilityProducts: "stored copy of the appendix, 25 °C and zero ionic strength where it says nothing else",
  liuByrne1997: "abstract: log K at 25 °C and zero ionic strength, ± 0.2; that of lanthanum 0.5 above that of cerium",
  firsching1992: "abstract for lanthanum and scandium, neodymium and europium as quoted by an encyclopedia; 25 °C, activities",
  wagemann1978: "as quoted in a table of the Bundesamt für Seeschifffahrt und Hydrographie",
  ohlinger1998: "as quoted in public geochemical input files",
  sander2023: "pages of the compilation for carbon dioxide, ammonia, sulfur dioxide, hydrogen sulfide and oxygen",
  langeGases: "first page of the table and single figures of the next ones read, others recalled; each row says which",
  felmyWeare1986: "as distributed by the United States Geological Survey",
  baesMesmer1976: "as quoted for aluminium by an encyclopedia, beside two later compilations that differ by 0.1 at most",
  kayeLaby1941: "stored page; volumes at 0 °C converted with the density of the real gas",
} as const satisfies Access<typeof aqueousSources>;

/** What a row of this layer may name. */
export type SourceKey = keyof typeof aqueousSources | keyof typeof ionSources | keyof typeof generalSources;

/** A source on one line, as it is printed under a working. */
export const cite = (key: SourceKey): string => citation(key, [aqueousSources, ionSources, generalSources]);
