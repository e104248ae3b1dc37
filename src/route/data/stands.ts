// In which form a salt leaves water at the bench, where its solubility curve does not decide it: another hydrate than the one that is
// listed with most water, or none at all, because its solution thickens to a syrup or its crystals are deliquescent.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** The form in which a salt is got at the bench. */
export interface SettlesRow {
  /** Without regard to crystal water. */
  readonly formula: string;
  readonly settles: string;
  readonly why: string;
  readonly source: SourceKey;
}

export const SETTLES = /* @__PURE__ */ once((): readonly SettlesRow[] => [
  { formula: "Ca(CH3COO)2", settles: "Ca(CH3COO)2·H2O", why: "the dihydrate loses water while it is dried", source: "commonPractice" },
  { formula: "NaHCOO", settles: "NaHCOO", why: "the dihydrate stands only between 17 and 25 °C and is dry without its water", source: "commonPractice" },
  { formula: "Cr2O3", settles: "Cr2O3", why: "heat leaves it without water", source: "commonPractice" },
  { formula: "Co3(PO4)2", settles: "Co3(PO4)2·8H2O", why: "from water it settles with eight waters", source: "commonPractice" },
  { formula: "Ni3(PO4)2", settles: "Ni3(PO4)2·8H2O", why: "from water it settles with eight waters", source: "commonPractice" },
]);

/** A salt that is kept in solution. */
interface SyrupRow {
  /** Without regard to crystal water. */
  readonly formula: string;
  readonly why: string;
  readonly source: SourceKey;
}

const syrup = (formula: string, why: string): SyrupRow => ({ formula, why, source: "commonPractice" });

export const SYRUPS = /* @__PURE__ */ once((): readonly SyrupRow[] => [
  syrup("Fe2(SO4)3", "its solution dries to a brown gum"),
  syrup("Cr2(SO4)3", "its solution dries to a green gum"),
  syrup("CrCl3", "its solution dries to a green syrup"),
  syrup("AlCl3", "boiled down it loses hydrogen chloride and turns basic"),
  syrup("SnCl4", "boiled down it loses hydrogen chloride and turns basic"),
  syrup("ZnCl2", "its solution thickens to a syrup that absorbs water from the air"),
  syrup("ZnBr2", "its solution thickens to a syrup that absorbs water from the air"),
  syrup("ZnI2", "its solution thickens to a syrup that absorbs water from the air"),
  syrup("CaBr2", "its solution thickens to a syrup that absorbs water from the air"),
  syrup("CaI2", "its solution thickens to a syrup that absorbs water from the air"),
  syrup("MgI2", "its solution thickens to a syrup that absorbs water from the air"),
  syrup("LiBr", "its solution thickens to a syrup that absorbs water from the air"),
  syrup("LiI", "its solution thickens to a syrup that absorbs water from the air"),
  syrup("KF", "its crystals are deliquescent"),
  syrup("KCH3COO", "its solution thickens to a syrup that absorbs water from the air"),
  syrup("NH4CH3COO", "boiled down it loses ammonia, and its crystals are deliquescent"),
  syrup("Mn(NO3)2", "its crystals melt at 26 °C and are deliquescent"),
  syrup("Al(CH3COO)3", "boiled down it loses acetic acid and turns basic"),
  syrup("K2HPO3", "its crystals are deliquescent"),
  syrup("NaC6H7O6", "air browns ascorbate while it is boiled down"),
  syrup("KC6H7O6", "air browns ascorbate while it is boiled down"),
  syrup("Ca(C6H7O6)2", "air browns ascorbate while it is boiled down"),
  syrup("NaOH", "a lye is not boiled down at a bench"),
  syrup("KOH", "a lye is not boiled down at a bench"),
]);
