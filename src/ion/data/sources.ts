// Sources of the tables of ions, acids and rules; what they share with lower layers stands there.
import type { generalSources } from "../../foundation/data/sources";
import type { Access, Sources } from "../../foundation/source";

export const ionSources = {
  redBook2005: { title: "Nomenclature of Inorganic Chemistry, IUPAC Recommendations 2005 (Red Book)", year: 2005, fromMemory: "partly" },
  epaEquilibria: { title: "Equilibrium constants in water, United States Environmental Protection Agency", edition: "4th" },
  andraEquilibria: { title: "Equilibrium constants in water for waste disposal, Andra and partners", edition: "10a" },
  brgmEquilibria: { title: "Equilibrium constants of minerals in water, BRGM (French geological survey)", year: 2020 },
  livermoreEquilibria: { title: "Equilibrium constants in water, Lawrence Livermore National Laboratory", edition: "V8 R6" },
  kettlerSuccinic1995: { title: "Kettler, Wesolowski and Palmer, Dissociation of succinic acid in aqueous sodium chloride, J. Solution Chem. 24 (1)", year: 1995, doi: "10.1007/BF00973050" },
  batesAllen1960: { title: "Bates and Allen, Acid dissociation constant of triethanolammonium ion from 0 to 50 °C, J. Res. Natl. Bur. Stand. 64A, 343", year: 1960, doi: "10.6028/jres.064A.033" },
  palmerWesolowski1987: { title: "Palmer and Wesolowski, J. Solution Chem. 16 (7)", year: 1987, doi: "10.1007/BF00646335" },
  kayeLabyAcidity: { title: "Kaye and Laby, Tables of Physical and Chemical Constants", where: "3.9.7" },
  generalChemistryAcids: { title: "Principles of General Chemistry", where: "Appendix C" },
  texasAcids: { title: "University of Texas at Austin, Department of Chemistry" },
  openStax2e: { title: "Chemistry 2e, OpenStax", year: 2019, where: "appendices E to L" },
  nbs1982: { title: "Wagman et al., The NBS Tables of Chemical Thermodynamic Properties, J. Phys. Chem. Ref. Data 11, Suppl. 2", year: 1982 },
} as const satisfies Sources;

/** How the figures reached us, where they were not read in the source itself. */
export const ionAccess = {
  redBook2005: "examples of IR-5.5 read; rules, retained names and tables recalled from memory",
  epaEquilibria: "constants rebuilt from the species of the agency's data file; it cites the NIST critical stability database 46",
  andraEquilibria: "as distributed by the United States Geological Survey",
  livermoreEquilibria: "as distributed by the United States Geological Survey",
  kettlerSuccinic1995: "abstract: log K and heat at 25 °C and zero ionic strength; title shortened",
  batesAllen1960: "abstract: heat and entropy at 25 °C, of which the constant follows; title shortened",
  palmerWesolowski1987: "abstract: heat and entropy at 25 °C, of which log K 8.07 follows (printed there as 8.701, two digits exchanged); title shortened",
  kayeLabyAcidity: "stored page of the National Physical Laboratory, after Robinson and Stokes, Electrolyte Solutions (1970): limiting values at 25 °C",
  generalChemistryAcids: "stored pages of the appendix",
  texasAcids: "stored page of acid and base ionization constants",
  nbs1982: "NIST digital edition with errata",
} as const satisfies Access<typeof ionSources>;

/** What a row of this layer may name. */
export type SourceKey = keyof typeof ionSources | keyof typeof generalSources;

