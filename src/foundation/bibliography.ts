// Every source the tables and rules rest on, under one key each. A row of data names its key; no key, no row.
// `memory` and `commonPractice` are keys too: the user is told when a figure has no better ground.

import { shown } from "./argument";
import { SourceError } from "./error";
import { frozen } from "./frozen";
import { nearestWord } from "./slips";

/** One source: what it is, and how far it was checked for our rows. */
export interface Source {
  readonly title: string;
  readonly edition?: string;
  readonly year?: number;
  readonly where?: string;
  readonly doi?: string;
  /** How the figures reached us, when not read in the source itself. */
  readonly access?: string;
  /** Recalled, not read there: said wherever the source is cited. */
  readonly fromMemory?: "all" | "partly";
}

const sources = {
  // -- general ------------------------------------------------------------------------------------------------------
  memory: { title: "recalled from memory, not confirmed in a source" },
  commonPractice: { title: "common practice, no source" },
  // -- quantity -----------------------------------------------------------------------------------------------------
  jcgm100: {
    title: "JCGM 100:2008, Evaluation of measurement data - Guide to the expression of uncertainty in measurement",
    year: 2008,
  },
  siBrochure9: { title: "The International System of Units (SI), BIPM", edition: "9th", year: 2019 },
  // -- element ------------------------------------------------------------------------------------------------------
  pac2022v94: {
    title: "Standard atomic weights of the elements 2021 (IUPAC Technical Report), Pure Appl. Chem. 94, 573-600",
    year: 2022,
    where: "Table 1",
    doi: "10.1515/pac-2019-0603",
    access: "two open copies of Table 1, compared digit by digit",
  },
  ciaaw2024: {
    title: "Standard atomic weights of 2024, Commission on Isotopic Abundances and Atomic Weights",
    year: 2024,
    access: "copy of the commission's table; revision of Zr, Gd and Lu",
  },
  nubase2020: {
    title: "The NUBASE2020 evaluation of nuclear physics properties, Chin. Phys. C 45, 030001",
    year: 2021,
    where: "half-lives",
  },
  ame2020: {
    title: "The AME 2020 atomic mass evaluation (II), Chin. Phys. C 45, 030003",
    year: 2021,
    where: "unrounded mass table",
  },
  tice2013: {
    title: "Isotopic compositions of the elements 2013 (IUPAC Technical Report), Pure Appl. Chem. 88, 293-306",
    year: 2016,
    doi: "10.1515/pac-2015-0503",
    access: "representative values through NUBASE2020; best measurements from Table 1",
  },
  codata2022: {
    title: "CODATA recommended values of the fundamental physical constants: 2022",
    year: 2022,
    where: "electron relative atomic mass; molar mass constant",
    access: "figures from memory",
    fromMemory: "all",
  },
  pac2018v90: {
    title:
      "Interpreting and propagating the uncertainty of the standard atomic weights (IUPAC Technical Report), Pure Appl. Chem. 90, 395-424",
    year: 2018,
    doi: "10.1515/pac-2016-0402",
    access: "title and page from memory; treats a standard atomic weight as a rectangle",
    fromMemory: "partly",
  },
  pac2003v75: {
    title: "Atomic weights of the elements 2001, Pure Appl. Chem. 75, 1107",
    year: 2003,
    where: "abstract",
  },
  pac2006v78: {
    title: "Atomic weights of the elements 2005, Pure Appl. Chem. 78, 2051",
    year: 2006,
    where: "abstract",
  },
  pac2009v81: {
    title: "Atomic weights of the elements 2007, Pure Appl. Chem. 81, 2131",
    year: 2009,
    where: "abstract",
  },
  pac2011v83: { title: "Atomic weights of the elements 2009, Pure Appl. Chem. 83, 359", year: 2011, where: "abstract" },
  pac2013v85: {
    title: "Atomic weights of the elements 2011, Pure Appl. Chem. 85, 1047",
    year: 2013,
    where: "abstract",
  },
  pac2016v88: { title: "Atomic weights of the elements 2013, Pure Appl. Chem. 88, 265", year: 2016, where: "abstract" },
  jpcrd1995v24: {
    title: "Atomic weights of the elements 1993, J. Phys. Chem. Ref. Data 24, 1561",
    year: 1995,
    where: "abstract",
  },
  jpcrd1997v26: {
    title: "Atomic weights of the elements 1995, J. Phys. Chem. Ref. Data 26, 1239",
    year: 1997,
    where: "abstract",
  },
  jpcrd2001v30: {
    title: "Atomic weights of the elements 1999, J. Phys. Chem. Ref. Data 30, 701",
    year: 2001,
    where: "abstract",
  },
  ciaawNotice2018: {
    title: "Notice of the Commission on Isotopic Abundances and Atomic Weights, 5 June 2018",
    year: 2018,
  },
  // -- formula ------------------------------------------------------------------------------------------------------
  // -- equation -----------------------------------------------------------------------------------------------------
  // -- amount and hydrate -------------------------------------------------------------------------------------------
  crcConcentrative: {
    title: "CRC Handbook of Chemistry and Physics, Concentrative Properties of Aqueous Solutions",
    access: "stored web table of 20 °C densities that reproduces it",
  },
  polishDensities: { title: "Polish handbook table of solution densities", access: "stored page" },
  poradnik1974: { title: "Poradnik fizykochemiczny, WNT", year: 1974, access: "stored university laboratory table" },
  bleachPage: {
    title: "page on bleach production (unsigned)",
    access: "120 g/L available chlorine, 0.2 % excess NaOH",
  },
  oimlR22: {
    title: "OIML R 22, International alcoholometric tables",
    year: 1973,
    access: "formula evaluated at 20 °C; first coefficients checked in Directive 76/766/EEC",
  },
  goldBookEquivalent: {
    title: "IUPAC Compendium of Chemical Terminology (Gold Book), equivalent entity; the older textbook equivalent",
    access: "definition recalled from memory, not confirmed in a source",
    fromMemory: "all",
  },
  baumeScale: {
    title: "degrees Baumé with modulus 145 above and 140/130 below water, at 60 °F against water of 60 °F",
    access: "recalled from memory, the scale of trade tables of acids and ammonia",
    fromMemory: "all",
  },
  iso1042: {
    title: "ISO 1042, Laboratory glassware - One-mark volumetric flasks",
    access: "tolerances recalled from memory, not confirmed in a source",
    fromMemory: "all",
  },
  iso648: {
    title: "ISO 648, Laboratory glassware - Single-volume pipettes",
    access: "tolerances recalled from memory, not confirmed in a source",
    fromMemory: "all",
  },
  iso385: {
    title: "ISO 385, Laboratory glassware - Burettes",
    access: "tolerances recalled from memory, not confirmed in a source",
    fromMemory: "all",
  },
  iso4788: {
    title: "ISO 4788, Laboratory glassware - Graduated measuring cylinders",
    access: "tolerances recalled from memory, not confirmed in a source",
    fromMemory: "all",
  },
  crcVirial: {
    title: "CRC Handbook of Chemistry and Physics, virial coefficients of selected gases",
    access: "coefficients recalled from memory, not confirmed in a source",
    fromMemory: "all",
  },
  // -- substance ----------------------------------------------------------------------------------------------------
  redBook2005: {
    title: "Nomenclature of Inorganic Chemistry, IUPAC Recommendations 2005 (Red Book)",
    year: 2005,
    access: "examples of IR-5.5 read; rules, retained names and tables recalled from memory",
    fromMemory: "partly",
  },
  clpAnnexVI: {
    title: "Regulation (EC) No 1272/2008 on classification, labelling and packaging (CLP), harmonised classifications",
    year: 2021,
    where: "Annex VI, Table 3, consolidated with the 17th adaptation",
    access: "read row by row from the agency's own spreadsheet; later adaptations may differ",
  },
  clpRecalled: {
    title:
      "Regulation (EC) No 1272/2008 on classification, labelling and packaging (CLP), entries and concentration limits",
    where: "Annex I, general limits of mixtures; Annex VI, Table 3",
    fromMemory: "all",
  },
  euCourtTitaniumDioxide: {
    title:
      "General Court of the European Union, cases T-279/20, T-283/20 and T-288/20: classification of titanium dioxide annulled",
    year: 2022,
    access: "upheld on appeal in 2025; several reports read, the judgments themselves from memory",
    fromMemory: "partly",
  },
  echaDossiers: {
    title: "European Chemicals Agency, registration dossiers, section 2.1 (what the joint registrants notify)",
    access: "pages of single dossiers read",
    fromMemory: "partly",
  },
  clpRegulation: {
    title: "Regulation (EC) No 1272/2008 on classification, labelling and packaging (CLP)",
    where: "Annexes II to V",
    access: "codes and pictograms; the wording here is our own",
  },
  unGhs: {
    title: "Globally Harmonized System of Classification and Labelling of Chemicals (GHS), United Nations",
    edition: "9th and 10th revised",
    where: "Annexes 1 and 3",
    access: "codes; the wording here is our own, revision notes from memory",
    fromMemory: "partly",
  },
  safeWorkAustralia: {
    title: "Hazardous Chemical Information System, Safe Work Australia",
    year: 2022,
    access: "export; it leaves out physical and most environmental classes",
  },
  niteGhs: {
    title: "GHS classification results by the Japanese government, National Institute of Technology and Evaluation",
    access: "categories mapped to statement codes by program; often stricter than suppliers' sheets",
  },
  incompatibilityLists: {
    title:
      "incompatibility lists of the CRC Handbook of Chemistry and Physics and of Safety in Academic Chemistry Laboratories",
    access: "excerpts read; what forms is from memory",
    fromMemory: "partly",
  },
  prudentPractices: {
    title: "Prudent Practices in the Laboratory, National Research Council",
    access: "recalled from memory, not confirmed in a source",
    fromMemory: "all",
  },
  reactiveHazards: {
    title: "Bretherick's Handbook of Reactive Chemical Hazards",
    access: "recalled from memory, not confirmed in a source",
    fromMemory: "all",
  },
  aiic: {
    title: "Australian Inventory of Industrial Chemicals",
    year: 2022,
    where: "list of 10 February 2022",
    access: "registry numbers found with formula or listed name; the ratio test ignores H and O",
  },
  nzioc: {
    title: "New Zealand Inventory of Chemicals",
    year: 2021,
    where: "list of December 2021",
    access: "matched by listed name",
  },
  kncis: {
    title: "National Chemicals Information System, Republic of Korea",
    year: 2022,
    where: "list of May 2022",
    access: "matched by listed name",
  },
  canadaDsl: { title: "Domestic Substances List, Canada", access: "matched by listed name" },
  usgsMolarVolumes: {
    title: "Molar volumes of solids, United States Geological Survey",
    access: "from four of the survey's public data files, compared by program",
  },
  copperSulfateHeating: {
    title: "text on copper(II) sulfate (unsigned), steps of heating at 63, 109, 200 and 650 °C",
    access: "stored page; a thermal analysis shows that the last step is really two",
  },
  tradeSheets: {
    title: "published safety data sheets and trade labels, typical ranges",
    access: "recalled from memory, not confirmed in a source",
    fromMemory: "all",
  },
  foodAdditivePurity: {
    title: "Commission Regulation (EU) No 231/2012, food additive purity rules; Food Chemicals Codex",
    access: "recalled from memory, not confirmed in a source",
    fromMemory: "all",
  },
  pharmacopoeiaLimits: {
    title: "monograph limits of the United States and European pharmacopoeias",
    access: "recalled from memory, not confirmed in a source",
    fromMemory: "all",
  },
  hydrochloricSheet: {
    title: "safety data sheet for 31.45 % hydrochloric acid, relative density 1.16 at 15.6 °C",
    access: "the point read, the range from memory",
    fromMemory: "partly",
  },
  jecfaCitric: {
    title: "JECFA-based test sheet for citric acid: monohydrate assay 99.5 to 100.5 %, water 7.5 to 8.8 %",
    access: "anhydrous limits from memory",
    fromMemory: "partly",
  },
  astmC206: {
    title: "ASTM C206, finishing hydrated lime",
    access: "extract: oxides 95 % at least, carbon dioxide 5 or 7 % at most; assay range from memory",
    fromMemory: "partly",
  },
  bleachStrength: {
    title: "bleach production notes: 120 g/L available chlorine is relative density 1.160",
    access: "point and formulas read, ranges from memory",
    fromMemory: "partly",
  },
  // -- solubility ---------------------------------------------------------------------------------------------------
  crcSolubility98: {
    title: "CRC Handbook of Chemistry and Physics, Aqueous Solubility of Inorganic Compounds at Various Temperatures",
    edition: "98th",
    year: 2017,
    access: "public copy, compared with a second copy of the 91st ed.; mass % converted to g per 100 g water",
  },
  crcSolubilityProducts87: {
    title: "CRC Handbook of Chemistry and Physics, Solubility Product Constants",
    edition: "87th",
    year: 2006,
    where: "pp. 8-118 to 8-119",
    access: "open copy; computed from free energies of formation for many solids",
  },
  encyclopediaSolubility: {
    title: "Wikipedia, Solubility table",
    year: 2019,
    access: "public copy; an unreviewed collection, largely from older handbooks",
  },
  sds73: {
    title: "IUPAC-NIST Solubility Data Series 73, Metal and Ammonium Formate Systems, J. Phys. Chem. Ref. Data 30, 1",
    year: 2001,
  },
  supplierSolubility: { title: "solubility table of a chemical supplier, 0 to 100 °C (unsigned)" },
  blanchard: {
    title: "Blanchard et al., Synthetic Inorganic Chemistry, Table of Solubilities",
    access: "stored page, whole numbers at 0, 25 and 100 °C",
  },
  friendChromium: {
    title: "Friend, A Text-book of Inorganic Chemistry, volume on chromium",
    access: "transcribed page: 21.21 g dodecahydrate per 100 mL water at 25 °C, converted",
  },
  moissanNickel: { title: "Moissan and Ouvrard, Le nickel", access: "transcribed; measurements of Tobler" },
  polishSolubility: {
    title: "Polish handbook table of inorganic solubilities",
    access: "stored page for 0, 20, 40 and 60 °C, joined with an encyclopedia table",
  },
  encyclopediaIronAlum: {
    title: "Wikipedia, Ammonium iron(III) sulfate",
    access: "1240 g dodecahydrate per litre of water at 25 °C, taken as per kg of water and converted",
  },
  encyclopediaBenzoicAcid: { title: "Wikipedia, Benzoic acid", access: "g/L, converted with the density of water" },
  encyclopediaCitricAcid: { title: "Wikipedia, Citric acid", access: "g per 100 mL water" },
  encyclopediaChromeAlum: {
    title: "Great Soviet Encyclopedia, Chrome Alums (20 °C); encyclopedia infobox (25 °C)",
    access: "18.3 % dodecahydrate at 20 °C, converted",
  },
  encyclopediaTrisodiumCitrate: { title: "Wikipedia, Trisodium citrate" },
  oxalateRecovery: { title: "research abstract on oxalate recovery of metals (unsigned)" },
  teachingRochelle: {
    title: "teaching page on Rochelle salt (unsigned)",
    access: "66 g tetrahydrate per 100 mL at 26 °C, converted as per 100 g water",
  },
  kell1975: {
    title: "Kell, Density, thermal expansivity, and compressibility of liquid water, J. Chem. Eng. Data 20, 97",
    year: 1975,
    access: "equation with coefficients from memory; within 0.05 kg/m3 of the IAPWS equation",
    fromMemory: "all",
  },
  wagnerPruss2002: {
    title: "Wagner and Pruss, The IAPWS Formulation 1995, J. Phys. Chem. Ref. Data 31, 387",
    year: 2002,
    where: "saturation-pressure equation",
    access: "coefficients from a documented public implementation",
  },
  epaEquilibria: {
    title: "Equilibrium constants in water, United States Environmental Protection Agency",
    edition: "4th",
    access:
      "constants rebuilt from the species of the agency's data file; it cites the NIST critical stability database 46",
  },
  andraEquilibria: {
    title: "Equilibrium constants in water for waste disposal, Andra and partners",
    edition: "10a",
    access: "as distributed by the United States Geological Survey",
  },
  brgmEquilibria: { title: "Equilibrium constants of minerals in water, BRGM (French geological survey)", year: 2020 },
  livermoreEquilibria: {
    title: "Equilibrium constants in water, Lawrence Livermore National Laboratory",
    edition: "V8 R6",
    access: "as distributed by the United States Geological Survey",
  },
  usgsEquilibria: { title: "Equilibrium constants of natural waters, United States Geological Survey" },
  openStax2e: { title: "Chemistry 2e, OpenStax", year: 2019, where: "appendices E to K" },
  ohlinger1998: {
    title: "Ohlinger, Young and Schroeder, Water Research 32, 3607",
    year: 1998,
    access: "as quoted in public geochemical input files",
  },
  kayeLaby1941: {
    title: "Kaye and Laby, Tables of Physical and Chemical Constants, Solubilities of gases in water",
    year: 1941,
    access: "stored page",
  },
  // -- thermochemistry ----------------------------------------------------------------------------------------------
  nbs1982: {
    title: "Wagman et al., The NBS Tables of Chemical Thermodynamic Properties, J. Phys. Chem. Ref. Data 11, Suppl. 2",
    year: 1982,
    access: "NIST digital edition with errata",
  },
  codata1989: {
    title: "CODATA Key Values for Thermodynamics",
    year: 1989,
    access: "spot-checked, else from memory",
    fromMemory: "partly",
  },
  // -- preparation --------------------------------------------------------------------------------------------------
} as const satisfies Record<string, Source>;

/** Key of a source in the bibliography. */
export type SourceKey = keyof typeof sources;

/**
 * The full entry behind a source key.
 *
 * @category Sources
 * @example
 * source("siBrochure9").year // => 2019
 */
export function source(key: SourceKey): Source {
  return sourceOf(key);
}

function sourceOf(key: SourceKey): Source {
  if (typeof key === "string" && Object.hasOwn(sources, key)) return frozen(sources[key]);
  const nearest = typeof key === "string" ? nearestWord(key, Object.keys(sources)) : undefined;
  throw new SourceError("source.unknown", `no source has the key ${shown(key)}`, {
    hint: nearest === undefined ? "sourceKeys() lists them" : `did you mean ${nearest}?`,
  });
}

/**
 * A source on one line, as it is printed under a working; says so where the figures were recalled and not read in it.
 *
 * @category Sources
 * @example
 * cite("siBrochure9") // => "The International System of Units (SI), BIPM, 9th ed., 2019"
 * cite("prudentPractices") // => "Prudent Practices in the Laboratory, National Research Council (from memory)"
 */
export function cite(key: SourceKey): string {
  const { title, edition, where, year, doi, fromMemory }: Source = sourceOf(key);
  const memory = fromMemory === undefined ? "" : fromMemory === "all" ? " (from memory)" : " (partly from memory)";
  const entry = [
    title,
    edition === undefined ? undefined : `${edition} ed.`,
    where,
    year,
    doi === undefined ? undefined : `doi ${doi}`,
  ]
    .filter((part) => part !== undefined)
    .join(", ");
  return entry + memory;
}

/**
 * Every source key, for printing the whole list.
 *
 * @category Sources
 * @example
 * sourceKeys().includes("jcgm100") // => true
 */
export function sourceKeys(): readonly SourceKey[] {
  return Object.keys(sources) as SourceKey[];
}
