// Sources of the tables of densities, strengths, glassware and gases; what they share with lower layers stands there.
import { periodicTableSources } from "../../element/internal";
import { generalSources } from "../../foundation/data/sources";
import { type Access, citation, type Sources } from "../../foundation/source";
import { quantitySources } from "../../quantity/internal";

export const amountSources = {
  crcConcentrative: { title: "CRC Handbook of Chemistry and Physics, Concentrative Properties of Aqueous Solutions" },
  polishDensities: { title: "Polish handbook table of solution densities" },
  poradnik1974: { title: "Poradnik fizykochemiczny, WNT", year: 1974 },
  bleachPage: { title: "page on bleach production (unsigned)" },
  persulfateMaker: { title: "technical information of a maker of persulfates, density of aqueous solutions" },
  echaDensities: { title: "European Chemicals Agency, registration dossiers, section 4.4 (density)" },
  oimlR22: { title: "OIML R 22, International alcoholometric tables", year: 1973 },
  goldBookEquivalent: { title: "IUPAC Compendium of Chemical Terminology (Gold Book), equivalent entity; the older textbook equivalent", fromMemory: "all" },
  baumeScale: { title: "degrees Baumé with modulus 145 above and 140/130 below water, at 60 °F against water of 60 °F", fromMemory: "all" },
  iso1042: { title: "ISO 1042, Laboratory glassware - One-mark volumetric flasks", fromMemory: "all" },
  iso648: { title: "ISO 648, Laboratory glassware - Single-volume pipettes", fromMemory: "all" },
  iso385: { title: "ISO 385, Laboratory glassware - Burettes", fromMemory: "all" },
  iso4788: { title: "ISO 4788, Laboratory glassware - Graduated measuring cylinders", fromMemory: "all" },
  crcVirial: { title: "CRC Handbook of Chemistry and Physics, virial coefficients of selected gases", fromMemory: "all" },
  kell1975: { title: "Kell, Density, thermal expansivity, and compressibility of liquid water, J. Chem. Eng. Data 20, 97", year: 1975, fromMemory: "all" },
  wagnerPruss2002: { title: "Wagner and Pruss, The IAPWS Formulation 1995, J. Phys. Chem. Ref. Data 31, 387", year: 2002, where: "saturation-pressure equation" },
  langeSolvents: { title: "Lange's Handbook of Chemistry, Organic Solvents Arranged by Boiling Points", where: "Table 11.8" },
  crcBoilingPressure: { title: "CRC Handbook of Chemistry and Physics, Dependence of Boiling Point on Pressure" },
} as const satisfies Sources;

/** How the figures reached us, where they were not read in the source itself. */
export const amountAccess = {
  crcConcentrative: "stored web table of 20 °C densities that reproduces it",
  polishDensities: "stored page",
  poradnik1974: "stored university laboratory table",
  bleachPage: "120 g/L available chlorine, 0.2 % excess NaOH",
  persulfateMaker: "formula read, evaluated at 25 °C",
  echaDensities: "stored page of the dossier of sodium hydrogensulfite: two solutions by pycnometer",
  oimlR22: "formula evaluated at 20 °C; first coefficients checked in Directive 76/766/EEC",
  goldBookEquivalent: "definition recalled from memory, not confirmed in a source",
  baumeScale: "recalled from memory, the scale of trade tables of acids and ammonia",
  iso1042: "tolerances recalled from memory, not confirmed in a source",
  iso648: "tolerances recalled from memory, not confirmed in a source",
  iso385: "tolerances recalled from memory, not confirmed in a source",
  iso4788: "tolerances recalled from memory, not confirmed in a source",
  crcVirial: "coefficients recalled from memory, not confirmed in a source",
  kell1975: "equation with coefficients from memory; within 0.05 kg/m3 of the IAPWS equation",
  wagnerPruss2002: "coefficients from a documented public implementation",
  langeSolvents: "stored page of the table",
  crcBoilingPressure: "stored page of the table",
} as const satisfies Access<typeof amountSources>;

/** What a row of this layer may name. */
export type SourceKey = keyof typeof amountSources | keyof typeof periodicTableSources | keyof typeof quantitySources | keyof typeof generalSources;

/** A source on one line, as it is printed under a working. */
export const cite = (key: SourceKey): string => citation(key, [amountSources, periodicTableSources, quantitySources, generalSources]);
