// Preparations that somebody published, by what they start from and what they make: the best evidence for a step.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** One published preparation; formulas without regard to crystal water. */
export interface PublishedRow {
  readonly product: string;
  /** What reacts; water is left out. */
  readonly feeds: readonly string[];
  readonly source: SourceKey;
}

const row = (product: string, feeds: string, source: SourceKey): PublishedRow => ({ product, feeds: feeds.split(" + "), source });

export const PUBLISHED = /* @__PURE__ */ once((): readonly PublishedRow[] => [
  row("Cu2(OH)2CO3", "CuSO4 + Na2CO3", "practicalSheets"),
  row("Cu2(OH)2CO3", "CuSO4 + NaHCO3", "practicalSheets"),
  row("CuO", "Cu2(OH)2CO3", "practicalSheets"),
  row("(NH4)2Cu(SO4)2", "CuSO4 + (NH4)2SO4", "biltzBiltz"),
  row("K2Cu(SO4)2", "CuSO4 + K2SO4", "blanchardPhelanDavis"),
  row("[Cu(NH3)4]SO4", "CuSO4 + NH3", "biltzBiltz"),
  row("CuCl", "CuCl2 + Cu", "blanchardPhelanDavis"),
  row("CuCl", "CuSO4 + NaCl + NaHSO3 + NaOH", "practicalSheets"),
  row("Cu(CH3COO)2", "CuO + CH3COOH", "practicalSheets"),
  row("CuCl2", "CuO + HCl", "cooleyCyclopaedia"),
  row("CuSO4", "CuO + H2SO4", "practicalSheets"),
  row("Cu", "CuSO4 + Zn", "practicalSheets"),
  row("(NH4)2Fe(SO4)2", "FeSO4 + (NH4)2SO4", "practicalSheets"),
  row("FeSO4", "Fe + H2SO4", "blanchardPhelanDavis"),
  row("FeC2O4", "(NH4)2Fe(SO4)2 + H2C2O4", "practicalSheets"),
  row("K3[Fe(C2O4)3]", "FeCl3 + K2C2O4", "johnsonTrioxalatoferrate"),
  row("Fe4[Fe(CN)6]3", "FeCl3 + K4[Fe(CN)6]", "practicalSheets"),
  row("KAl(SO4)2", "Al + KOH + H2SO4", "practicalSheets"),
  row("KAl(SO4)2", "Al2(SO4)3 + K2SO4", "practicalSheets"),
  row("KAl(SO4)2", "KAl(SO4)2", "britishPharmacopoeia"),
  row("NH4Al(SO4)2", "Al2(SO4)3 + (NH4)2SO4", "practicalSheets"),
  row("Al(OH)3", "KAl(SO4)2 + Na2CO3", "britishPharmacopoeia"),
  row("ZnSO4", "ZnCO3 + H2SO4", "practicalSheets"),
  row("ZnCl2", "Zn + HCl", "cooleyCyclopaedia"),
  row("Mg4(CO3)3(OH)2", "MgSO4 + Na2CO3", "britishPharmacopoeia"),
  row("MgSO4", "MgO + H2SO4", "practicalSheets"),
  row("(NH4)2Ni(SO4)2", "NiSO4 + (NH4)2SO4", "practicalSheets"),
  row("CoCO3", "CoCl2 + NH4HCO3", "practicalSheets"),
  row("CoCl2", "CoCO3 + HCl", "practicalSheets"),
  row("MnCl2", "MnCO3 + HCl", "blanchardPhelanDavis"),
  row("BaCl2", "BaCO3 + HCl", "blanchardPhelanDavis"),
  row("BaSO4", "BaCl2 + H2SO4", "practicalSheets"),
  row("SrCO3", "SrSO4 + Na2CO3", "blanchardPhelanDavis"),
  row("Ca(CH3COO)2", "CaCO3 + CH3COOH", "practicalSheets"),
  row("CaCO3", "CaCl2 + Na2CO3", "practicalSheets"),
  row("CaC2O4", "CaCl2 + (NH4)2C2O4", "britishPharmacopoeia"),
  row("NaHCO3", "NaCl + NH4HCO3", "schlessingerPreparations"),
  row("NH4HCO3", "NH3 + CO2", "schlessingerPreparations"),
  row("KNO3", "NaNO3 + KCl", "biltzBiltz"),
  row("H3BO3", "Na2B4O7 + HNO3", "minerManual"),
]);
