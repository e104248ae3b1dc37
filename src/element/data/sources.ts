// Sources of the tables of atomic weights and nuclides; what they share with lower layers stands there.
import { generalSources } from "../../foundation/data/sources";
import { type Access, citation, type Sources } from "../../foundation/source";

export const elementSources = {
  pac2022v94: { title: "Standard atomic weights of the elements 2021 (IUPAC Technical Report), Pure Appl. Chem. 94, 573-600", year: 2022, where: "Table 1", doi: "10.1515/pac-2019-0603" },
  ciaaw2024: { title: "Standard atomic weights of 2024, Commission on Isotopic Abundances and Atomic Weights", year: 2024 },
  nubase2020: { title: "The NUBASE2020 evaluation of nuclear physics properties, Chin. Phys. C 45, 030001", year: 2021, where: "half-lives" },
  ame2020: { title: "The AME 2020 atomic mass evaluation (II), Chin. Phys. C 45, 030003", year: 2021, where: "unrounded mass table" },
  tice2013: { title: "Isotopic compositions of the elements 2013 (IUPAC Technical Report), Pure Appl. Chem. 88, 293-306", year: 2016, doi: "10.1515/pac-2015-0503" },
  pac2018v90: { title: "Interpreting and propagating the uncertainty of the standard atomic weights (IUPAC Technical Report), Pure Appl. Chem. 90, 395-424", year: 2018, doi: "10.1515/pac-2016-0402", fromMemory: "partly" },
} as const satisfies Sources;

/** The periodic table that tables of other layers read. */
export const periodicTableSources = {
  pubchemElements: { title: "PubChem, Periodic Table of Elements (melting and boiling points, densities, oxidation states), National Library of Medicine, National Institutes of Health (United States)" },
} as const satisfies Sources;

/** How the figures reached us, where they were not read in the source itself. */
export const elementAccess = {
  pac2022v94: "two open copies of Table 1, compared digit by digit",
  ciaaw2024: "copy of the commission's table; revision of Zr, Gd and Lu",
  tice2013: "representative values through NUBASE2020; best measurements from Table 1",
  pac2018v90: "title and page from memory; treats a standard atomic weight as a rectangle",
  pubchemElements: "public copy of the table as it is handed out; kelvins converted",
} as const satisfies Access<typeof elementSources & typeof periodicTableSources>;

/** Reports in which a weight was last changed. */
export const yearSources = {
  pac2003v75: { title: "Atomic weights of the elements 2001, Pure Appl. Chem. 75, 1107", year: 2003, where: "abstract" },
  pac2006v78: { title: "Atomic weights of the elements 2005, Pure Appl. Chem. 78, 2051", year: 2006, where: "abstract" },
  pac2009v81: { title: "Atomic weights of the elements 2007, Pure Appl. Chem. 81, 2131", year: 2009, where: "abstract" },
  pac2011v83: { title: "Atomic weights of the elements 2009, Pure Appl. Chem. 83, 359", year: 2011, where: "abstract" },
  pac2013v85: { title: "Atomic weights of the elements 2011, Pure Appl. Chem. 85, 1047", year: 2013, where: "abstract" },
  pac2016v88: { title: "Atomic weights of the elements 2013, Pure Appl. Chem. 88, 265", year: 2016, where: "abstract" },
  jpcrd1995v24: { title: "Atomic weights of the elements 1993, J. Phys. Chem. Ref. Data 24, 1561", year: 1995, where: "abstract" },
  jpcrd1997v26: { title: "Atomic weights of the elements 1995, J. Phys. Chem. Ref. Data 26, 1239", year: 1997, where: "abstract" },
  jpcrd2001v30: { title: "Atomic weights of the elements 1999, J. Phys. Chem. Ref. Data 30, 701", year: 2001, where: "abstract" },
  ciaawNotice2018: { title: "Notice of the Commission on Isotopic Abundances and Atomic Weights, 5 June 2018", year: 2018 },
} as const satisfies Sources;

/** What a row of this layer may name. */
export type SourceKey = keyof typeof elementSources | keyof typeof generalSources;

/** What may be named as the source of a change. */
export type YearSourceKey = SourceKey | keyof typeof yearSources;

/** A source on one line, as it is printed under a working. */
export const cite = (key: SourceKey): string => citation(key, [elementSources, generalSources]);
