// In which form a salt leaves water at the bench, where its solubility curve does not decide it: another hydrate than the one that is
// listed with most water, or none at all, because its solution thickens to a syrup or its crystals are deliquescent.
import type { SourceKey } from "./sources";

/** The form in which a salt is got at the bench. */
export interface SettlesRow {
  /** Without regard to crystal water. */
  readonly formula: string;
  readonly settles: string;
  readonly why: string;
  readonly source: SourceKey;
}

export const SETTLES: readonly SettlesRow[] = [
  { formula: "Ca(CH3COO)2", settles: "Ca(CH3COO)2·H2O", why: "the dihydrate loses water while it is dried", source: "commonPractice" },
  { formula: "NaHCOO", settles: "NaHCOO", why: "the dihydrate stands only between 17 and 25 °C and is dry without its water", source: "commonPractice" },
  { formula: "Cr2O3", settles: "Cr2O3", why: "heat leaves it without water", source: "commonPractice" },
  { formula: "Co3(PO4)2", settles: "Co3(PO4)2·8H2O", why: "from water it settles with eight waters", source: "commonPractice" },
  { formula: "Ni3(PO4)2", settles: "Ni3(PO4)2·8H2O", why: "from water it settles with eight waters", source: "commonPractice" },
];

/** A salt that is kept in solution. */
interface SyrupRow {
  /** Without regard to crystal water. */
  readonly formula: string;
  readonly why: string;
  /** Water takes part of it apart: no boiling down leaves it, whatever is asked, and its liquor has no more of it than is counted. */
  readonly comesApart?: true;
  readonly source: SourceKey;
}

export const SYRUPS: readonly SyrupRow[] = [
  { formula: "Fe2(SO4)3", why: "its solution dries to a brown gum", source: "commonPractice" },
  { formula: "Cr2(SO4)3", why: "its solution dries to a green gum", source: "commonPractice" },
  { formula: "CrCl3", why: "its solution dries to a green syrup", source: "commonPractice" },
  { formula: "AlCl3", why: "boiled down it loses hydrogen chloride and turns basic", comesApart: true, source: "commonPractice" },
  { formula: "SnCl4", why: "boiled down it loses hydrogen chloride and turns basic", comesApart: true, source: "commonPractice" },
  { formula: "ZnCl2", why: "its solution thickens to a syrup that absorbs water from the air", source: "commonPractice" },
  { formula: "ZnBr2", why: "its solution thickens to a syrup that absorbs water from the air", source: "commonPractice" },
  { formula: "ZnI2", why: "its solution thickens to a syrup that absorbs water from the air", source: "commonPractice" },
  { formula: "CaBr2", why: "its solution thickens to a syrup that absorbs water from the air", source: "commonPractice" },
  { formula: "CaI2", why: "its solution thickens to a syrup that absorbs water from the air", source: "commonPractice" },
  { formula: "MgI2", why: "its solution thickens to a syrup that absorbs water from the air", source: "commonPractice" },
  { formula: "LiBr", why: "its solution thickens to a syrup that absorbs water from the air", source: "commonPractice" },
  { formula: "LiI", why: "its solution thickens to a syrup that absorbs water from the air", source: "commonPractice" },
  { formula: "KF", why: "its crystals are deliquescent", source: "commonPractice" },
  { formula: "KCH3COO", why: "its solution thickens to a syrup that absorbs water from the air", source: "commonPractice" },
  { formula: "NH4CH3COO", why: "boiled down it loses ammonia, and its crystals are deliquescent", source: "commonPractice" },
  { formula: "Mn(NO3)2", why: "its crystals melt at 26 °C and are deliquescent", source: "commonPractice" },
  { formula: "Al(CH3COO)3", why: "boiled down it loses acetic acid and turns basic", comesApart: true, source: "commonPractice" },
  { formula: "K2HPO3", why: "its crystals are deliquescent", source: "commonPractice" },
  { formula: "NaC6H7O6", why: "air browns ascorbate while it is boiled down", source: "commonPractice" },
  { formula: "KC6H7O6", why: "air browns ascorbate while it is boiled down", source: "commonPractice" },
  { formula: "Ca(C6H7O6)2", why: "air browns ascorbate while it is boiled down", source: "commonPractice" },
  { formula: "Na[Al(OH)4]", why: "an aluminate is used in its lye, and gives hydroxide where it is diluted", source: "commonPractice" },
  { formula: "K[Al(OH)4]", why: "an aluminate is used in its lye, and gives hydroxide where it is diluted", source: "commonPractice" },
  { formula: "Na2[Zn(OH)4]", why: "a zincate is used in its lye, and gives hydroxide where it is diluted", source: "commonPractice" },
  { formula: "K2[Zn(OH)4]", why: "a zincate is used in its lye, and gives hydroxide where it is diluted", source: "commonPractice" },
  { formula: "NaOH", why: "a lye is not boiled down at a bench", source: "commonPractice" },
  { formula: "KOH", why: "a lye is not boiled down at a bench", source: "commonPractice" },
];
