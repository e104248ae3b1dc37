// Further species in water, at 25 °C and zero ionic strength: ion pairs of the alkalis, hydroxide complexes with several
// metal ions, condensed chromates and borates, and complexes of ligands that the table of simple complexes does not have.
// Pairs of sodium with carbonate and hydrogenphosphate are left out on purpose: with the activity model used here they
// would count the same effect twice (the carbonate buffer of 10.012 would read 9.92). Al13O4(OH)24(7+) is left out too: the
// square of its charge carries the activity model away, and it would dissolve every aluminium gel.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** One species and the reaction that makes it. */
interface FormationRow {
  readonly species: string;
  /** Written so that the species stands alone but for H+ and water on its side. */
  readonly reaction: string;
  readonly logK: string;
  readonly source: SourceKey;
  readonly doubtful?: true;
}

export const FORMATIONS = /* @__PURE__ */ once((): readonly FormationRow[] => [
  { species: "NaSO4-", reaction: "Na+ + SO4^2- -> NaSO4-", logK: "0.73", source: "nbs1982" },
  { species: "KSO4-", reaction: "K+ + SO4^2- -> KSO4-", logK: "0.85", source: "epaEquilibria" },
  { species: "LiSO4-", reaction: "Li+ + SO4^2- -> LiSO4-", logK: "0.64", source: "epaEquilibria" },
  { species: "NH4SO4-", reaction: "NH4+ + SO4^2- -> NH4SO4-", logK: "1.03", source: "epaEquilibria" },

  { species: "Fe2(OH)2^4+", reaction: "2 Fe^3+ + 2 H2O -> Fe2(OH)2^4+ + 2 H+", logK: "-2.95", source: "usgsEquilibria" },
  { species: "Fe3(OH)4^5+", reaction: "3 Fe^3+ + 4 H2O -> Fe3(OH)4^5+ + 4 H+", logK: "-6.3", source: "usgsEquilibria" },
  { species: "Al2(OH)2^4+", reaction: "2 Al^3+ + 2 H2O -> Al2(OH)2^4+ + 2 H+", logK: "-7.7", source: "baesMesmer1976" },
  { species: "Al3(OH)4^5+", reaction: "3 Al^3+ + 4 H2O -> Al3(OH)4^5+ + 4 H+", logK: "-13.94", source: "baesMesmer1976" },
  { species: "Cr2(OH)2^4+", reaction: "2 Cr^3+ + 2 H2O -> Cr2(OH)2^4+ + 2 H+", logK: "-5.06", source: "memory" },
  { species: "Cr3(OH)4^5+", reaction: "3 Cr^3+ + 4 H2O -> Cr3(OH)4^5+ + 4 H+", logK: "-8.15", source: "livermoreEquilibria" },
  { species: "Cu2(OH)2^2+", reaction: "2 Cu^2+ + 2 H2O -> Cu2(OH)2^2+ + 2 H+", logK: "-10.36", source: "usgsEquilibria" },
  { species: "Pb2OH^3+", reaction: "2 Pb^2+ + H2O -> Pb2OH^3+ + H+", logK: "-6.36", source: "usgsEquilibria" },
  { species: "Pb3(OH)4^2+", reaction: "3 Pb^2+ + 4 H2O -> Pb3(OH)4^2+ + 4 H+", logK: "-23.88", source: "usgsEquilibria" },
  { species: "Pb4(OH)4^4+", reaction: "4 Pb^2+ + 4 H2O -> Pb4(OH)4^4+ + 4 H+", logK: "-20.88", source: "livermoreEquilibria" },
  { species: "Pb6(OH)8^4+", reaction: "6 Pb^2+ + 8 H2O -> Pb6(OH)8^4+ + 8 H+", logK: "-43.56", source: "livermoreEquilibria" },
  { species: "Sn2(OH)2^2+", reaction: "2 Sn^2+ + 2 H2O -> Sn2(OH)2^2+ + 2 H+", logK: "-4.79", source: "epaEquilibria" },
  { species: "Sn3(OH)4^2+", reaction: "3 Sn^2+ + 4 H2O -> Sn3(OH)4^2+ + 4 H+", logK: "-6.89", source: "epaEquilibria" },
  { species: "Bi6(OH)12^6+", reaction: "6 Bi^3+ + 12 H2O -> Bi6(OH)12^6+ + 12 H+", logK: "0.33", source: "memory" },
  { species: "Ni4(OH)4^4+", reaction: "4 Ni^2+ + 4 H2O -> Ni4(OH)4^4+ + 4 H+", logK: "-27.52", source: "andraEquilibria" },
  { species: "Co4(OH)4^4+", reaction: "4 Co^2+ + 4 H2O -> Co4(OH)4^4+ + 4 H+", logK: "-30.49", source: "epaEquilibria" },
  { species: "Be3(OH)3^3+", reaction: "3 Be^2+ + 3 H2O -> Be3(OH)3^3+ + 3 H+", logK: "-8.86", source: "andraEquilibria" },

  { species: "Cr2O7^2-", reaction: "2 CrO4^2- + 2 H+ -> Cr2O7^2- + H2O", logK: "14.49", source: "nbs1982" },
  { species: "B2O(OH)5-", reaction: "2 H3BO3 -> B2O(OH)5- + H+", logK: "-9.31", source: "memory" },
  { species: "B3O3(OH)4-", reaction: "3 H3BO3 -> B3O3(OH)4- + H+ + 2 H2O", logK: "-7.53", source: "felmyWeare1986" },
  { species: "B4O5(OH)4^2-", reaction: "4 H3BO3 -> B4O5(OH)4^2- + 2 H+ + 3 H2O", logK: "-16.13", source: "felmyWeare1986" },
  { species: "CaB(OH)4+", reaction: "Ca^2+ + B(OH)4- -> CaB(OH)4+", logK: "1.80", source: "andraEquilibria" },
  { species: "MgB(OH)4+", reaction: "Mg^2+ + B(OH)4- -> MgB(OH)4+", logK: "1.62", source: "memory" },

  { species: "MgHPO4", reaction: "Mg^2+ + HPO4^2- -> MgHPO4", logK: "2.87", source: "usgsEquilibria" },
  { species: "MgH2PO4+", reaction: "Mg^2+ + H2PO4- -> MgH2PO4+", logK: "1.51", source: "usgsEquilibria" },
  { species: "MgPO4-", reaction: "Mg^2+ + PO4^3- -> MgPO4-", logK: "6.59", source: "usgsEquilibria", doubtful: true },
  { species: "CaHPO4", reaction: "Ca^2+ + HPO4^2- -> CaHPO4", logK: "2.74", source: "usgsEquilibria" },
  { species: "CaH2PO4+", reaction: "Ca^2+ + H2PO4- -> CaH2PO4+", logK: "1.41", source: "usgsEquilibria" },
  { species: "CaPO4-", reaction: "Ca^2+ + PO4^3- -> CaPO4-", logK: "6.46", source: "usgsEquilibria" },
  { species: "MnHPO4", reaction: "Mn^2+ + HPO4^2- -> MnHPO4", logK: "3.60", source: "memory", doubtful: true },
  { species: "FeHPO4", reaction: "Fe^2+ + HPO4^2- -> FeHPO4", logK: "3.60", source: "usgsEquilibria" },
  { species: "FeH2PO4+", reaction: "Fe^2+ + H2PO4- -> FeH2PO4+", logK: "2.70", source: "usgsEquilibria" },
  { species: "FeHPO4+", reaction: "Fe^3+ + HPO4^2- -> FeHPO4+", logK: "9.92", source: "epaEquilibria", doubtful: true },
  { species: "FeH2PO4^2+", reaction: "Fe^3+ + H2PO4- -> FeH2PO4^2+", logK: "4.28", source: "epaEquilibria", doubtful: true },
  { species: "ZnHPO4", reaction: "Zn^2+ + HPO4^2- -> ZnHPO4", logK: "3.30", source: "memory", doubtful: true },
  { species: "CuHPO4", reaction: "Cu^2+ + HPO4^2- -> CuHPO4", logK: "4.06", source: "livermoreEquilibria", doubtful: true },
  { species: "CaSO3", reaction: "Ca^2+ + SO3^2- -> CaSO3", logK: "2.60", source: "memory", doubtful: true },
  { species: "MgSO3", reaction: "Mg^2+ + SO3^2- -> MgSO3", logK: "2.90", source: "memory", doubtful: true },
  { species: "AgSO3-", reaction: "Ag+ + SO3^2- -> AgSO3-", logK: "5.60", source: "memory" },
  { species: "Ag(SO3)2^3-", reaction: "Ag+ + 2 SO3^2- -> Ag(SO3)2^3-", logK: "8.68", source: "memory" },
  { species: "CaC3H5O3+", reaction: "Ca^2+ + C3H5O3- -> CaC3H5O3+", logK: "1.45", source: "memory" },
  { species: "MgC3H5O3+", reaction: "Mg^2+ + C3H5O3- -> MgC3H5O3+", logK: "1.37", source: "memory" },
  { species: "ZnC3H5O3+", reaction: "Zn^2+ + C3H5O3- -> ZnC3H5O3+", logK: "2.20", source: "memory" },
  { species: "CuC3H5O3+", reaction: "Cu^2+ + C3H5O3- -> CuC3H5O3+", logK: "3.00", source: "memory" },
  { species: "CaC4H4O5", reaction: "Ca^2+ + C4H4O5^2- -> CaC4H4O5", logK: "2.70", source: "memory", doubtful: true },
  { species: "MgC4H4O5", reaction: "Mg^2+ + C4H4O5^2- -> MgC4H4O5", logK: "2.60", source: "memory", doubtful: true },
]);

/** What an ion or molecule becomes as soon as it is in water, completely. */
interface InWaterRow {
  readonly given: string;
  readonly reaction: string;
}

export const IN_WATER: readonly InWaterRow[] = [
  { given: "O^2-", reaction: "O^2- + H2O -> 2 OH-" },
  { given: "CO2", reaction: "CO2 + H2O -> H2CO3" },
  { given: "SO2", reaction: "SO2 + H2O -> H2SO3" },
  { given: "SO3", reaction: "SO3 + H2O -> SO4^2- + 2 H+" },
  { given: "B2O3", reaction: "B2O3 + 3 H2O -> 2 H3BO3" },
  { given: "P4O10", reaction: "P4O10 + 6 H2O -> 4 H3PO4" },
  { given: "P2O5", reaction: "P2O5 + 3 H2O -> 2 H3PO4" },
  { given: "CrO3", reaction: "CrO3 + H2O -> CrO4^2- + 2 H+" },
  { given: "SiO2", reaction: "SiO2 + 2 H2O -> H4SiO4" },
  { given: "B4O7^2-", reaction: "B4O7^2- + 7 H2O -> 2 H3BO3 + 2 B(OH)4-" },
  { given: "BO2-", reaction: "BO2- + 2 H2O -> B(OH)4-" },
  { given: "H2BO3-", reaction: "H2BO3- + H2O -> B(OH)4-" },
  { given: "BO3^3-", reaction: "BO3^3- + 3 H2O -> B(OH)4- + 2 OH-" },
  { given: "SiO3^2-", reaction: "SiO3^2- + H2O -> H2SiO4^2-" },
  { given: "SiO4^4-", reaction: "SiO4^4- + 2 H2O -> H2SiO4^2- + 2 OH-" },
  { given: "Si2O5^2-", reaction: "Si2O5^2- + 3 H2O -> 2 H3SiO4-" },
  { given: "S2O5^2-", reaction: "S2O5^2- + H2O -> 2 HSO3-" },
  { given: "AlO2-", reaction: "AlO2- + 2 H2O -> Al(OH)4-" },
  { given: "ZnO2^2-", reaction: "ZnO2^2- + 2 H2O -> Zn(OH)4^2-" },
  { given: "VO3-", reaction: "VO3- + H2O -> H2VO4-" },
  { given: "NH2-", reaction: "NH2- + H2O -> NH3 + OH-" },
  { given: "O2^2-", reaction: "O2^2- + H2O -> HO2- + OH-" },
];

/**
 * A gas and its molecule in water: log K = log10(molality / pressure in atm). Within what the reviews of the compilation
 * say, to its two figures; heats of ammonia and hydrogen sulfide are those of NBS (1982).
 */
interface HenryRow {
  readonly gas: string;
  readonly dissolved: string;
  readonly logK: string;
  /** kJ/mol of dissolving. */
  readonly enthalpy: string;
  readonly source: SourceKey;
}

export const HENRY: readonly HenryRow[] = [
  { gas: "CO2", dissolved: "H2CO3", logK: "-1.47", enthalpy: "-19.4", source: "sander2023" },
  { gas: "NH3", dissolved: "NH3", logK: "1.77", enthalpy: "-34.2", source: "sander2023" },
  { gas: "SO2", dissolved: "H2SO3", logK: "0.09", enthalpy: "-26.0", source: "sander2023" },
  { gas: "H2S", dissolved: "H2S", logK: "-0.99", enthalpy: "-19.1", source: "sander2023" },
];
