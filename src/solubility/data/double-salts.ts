// Double salts that crystallise from mixed liquors at the bench, with the ions that make them. Where the table of
// solubilities or of solubility products has one, it is judged by figure; the others are only named.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** Where a double salt gives way to one with less water. */
interface DoubleSaltTurn {
  readonly at: number;
  readonly into: string;
  readonly source: SourceKey;
  /** A liquor that holds both, measured near the change: mol of ions in a kilogram of water. */
  readonly both?: { readonly molal: readonly (readonly [ion: string, molality: number])[]; readonly source: SourceKey };
}

/** One double salt. */
export interface DoubleSaltRow {
  /** The solid that precipitates. */
  readonly solid: string;
  readonly name: string;
  /** Its ions with their numbers, water left out. */
  readonly ions: readonly (readonly [ion: string, count: number])[];
  /** Precipitates from this temperature on, °C, or up to it; absent where it does so cold and hot. */
  readonly from?: number;
  readonly upTo?: number;
  /** What comes in its place above so many °C. */
  readonly turns?: DoubleSaltTurn;
  /** What rinsing with water leaves of it, where that takes it apart. */
  readonly leaves?: { readonly solid: string; readonly source: SourceKey };
  /** That it exists and precipitates from water. */
  readonly source: SourceKey;
}

export const DOUBLE_SALTS = /* @__PURE__ */ once((): readonly DoubleSaltRow[] => [
  { solid: "KAl(SO4)2·12H2O", name: "potash alum", ions: [["K+", 1], ["Al^3+", 1], ["SO4^2-", 2]], source: "crcSolubility98" },
  { solid: "NH4Al(SO4)2·12H2O", name: "ammonium alum", ions: [["NH4+", 1], ["Al^3+", 1], ["SO4^2-", 2]], source: "supplierSolubility" },
  { solid: "NaAl(SO4)2·12H2O", name: "soda alum", ions: [["Na+", 1], ["Al^3+", 1], ["SO4^2-", 2]], source: "encyclopediaSolubility" },
  { solid: "KCr(SO4)2·12H2O", name: "chrome alum", ions: [["K+", 1], ["Cr^3+", 1], ["SO4^2-", 2]], source: "memory" },
  { solid: "NH4Cr(SO4)2·12H2O", name: "ammonium chrome alum", ions: [["NH4+", 1], ["Cr^3+", 1], ["SO4^2-", 2]], source: "friendChromium" },
  { solid: "NH4Fe(SO4)2·12H2O", name: "iron alum", ions: [["NH4+", 1], ["Fe^3+", 1], ["SO4^2-", 2]], source: "encyclopediaIronAlum" },
  { solid: "KFe(SO4)2·12H2O", name: "potassium iron alum", ions: [["K+", 1], ["Fe^3+", 1], ["SO4^2-", 2]], upTo: 30, source: "memory" },
  { solid: "(NH4)2Fe(SO4)2·6H2O", name: "Mohr's salt", ions: [["NH4+", 2], ["Fe^2+", 1], ["SO4^2-", 2]], source: "supplierSolubility" },
  { solid: "(NH4)2Ni(SO4)2·6H2O", name: "ammonium nickel sulfate", ions: [["NH4+", 2], ["Ni^2+", 1], ["SO4^2-", 2]], source: "moissanNickel" },
  { solid: "(NH4)2Cu(SO4)2·6H2O", name: "ammonium copper sulfate", ions: [["NH4+", 2], ["Cu^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "(NH4)2Zn(SO4)2·6H2O", name: "ammonium zinc sulfate", ions: [["NH4+", 2], ["Zn^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "(NH4)2Mg(SO4)2·6H2O", name: "ammonium magnesium sulfate", ions: [["NH4+", 2], ["Mg^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "(NH4)2Co(SO4)2·6H2O", name: "ammonium cobalt sulfate", ions: [["NH4+", 2], ["Co^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "(NH4)2Mn(SO4)2·6H2O", name: "ammonium manganese sulfate", ions: [["NH4+", 2], ["Mn^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "K2Mg(SO4)2·6H2O", name: "picromerite", ions: [["K+", 2], ["Mg^2+", 1], ["SO4^2-", 2]], source: "brgmEquilibria",
    // at 45 °C 0.618 mol of K2SO4 and 3.030 mol of MgSO4
    turns: { at: 41, into: "K2Mg(SO4)2·4H2O", source: "picromerite2010", both: { molal: [["K+", 1.236], ["Mg^2+", 3.03], ["SO4^2-", 3.648]], source: "picromerite2010" } },
    leaves: { solid: "K2SO4", source: "memory" } },
  { solid: "K2Cu(SO4)2·6H2O", name: "potassium copper sulfate", ions: [["K+", 2], ["Cu^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "K2Zn(SO4)2·6H2O", name: "potassium zinc sulfate", ions: [["K+", 2], ["Zn^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "K2Ni(SO4)2·6H2O", name: "potassium nickel sulfate", ions: [["K+", 2], ["Ni^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "K2Co(SO4)2·6H2O", name: "potassium cobalt sulfate", ions: [["K+", 2], ["Co^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "K2Fe(SO4)2·6H2O", name: "potassium iron(II) sulfate", ions: [["K+", 2], ["Fe^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "K2Ca(SO4)2·H2O", name: "syngenite", ions: [["K+", 2], ["Ca^2+", 1], ["SO4^2-", 2]], source: "livermoreEquilibria", leaves: { solid: "CaSO4·2H2O", source: "memory" } },
  { solid: "K3Na(SO4)2", name: "glaserite", ions: [["K+", 3], ["Na+", 1], ["SO4^2-", 2]], source: "memory" },
  { solid: "Na2Mg(SO4)2·4H2O", name: "bloedite", ions: [["Na+", 2], ["Mg^2+", 1], ["SO4^2-", 2]], from: 21, source: "memory", turns: { at: 59, into: "Na4Mg2(SO4)4·5H2O", source: "magnesiumSulfates" }, leaves: { solid: "Na2SO4·10H2O", source: "memory" } },
  { solid: "Na2Ca(SO4)2", name: "glauberite", ions: [["Na+", 2], ["Ca^2+", 1], ["SO4^2-", 2]], from: 35, source: "memory", leaves: { solid: "CaSO4·2H2O", source: "memory" } },
  { solid: "KMgCl3·6H2O", name: "carnallite", ions: [["K+", 1], ["Mg^2+", 1], ["Cl-", 3]], source: "brgmEquilibria", leaves: { solid: "KCl", source: "memory" } },
  { solid: "NH4MgCl3·6H2O", name: "ammonium carnallite", ions: [["NH4+", 1], ["Mg^2+", 1], ["Cl-", 3]], source: "memory", leaves: { solid: "NH4Cl", source: "memory" } },
  { solid: "K2CuCl4·2H2O", name: "potassium copper chloride", ions: [["K+", 2], ["Cu^2+", 1], ["Cl-", 4]], source: "memory" },
  { solid: "(NH4)2CuCl4·2H2O", name: "ammonium copper chloride", ions: [["NH4+", 2], ["Cu^2+", 1], ["Cl-", 4]], source: "memory" },
  { solid: "(NH4)2ZnCl4", name: "ammonium zinc chloride", ions: [["NH4+", 2], ["Zn^2+", 1], ["Cl-", 4]], source: "memory" },
  { solid: "K2FeCl5·H2O", name: "potassium iron(III) chloride", ions: [["K+", 2], ["Fe^3+", 1], ["Cl-", 5]], source: "memory" },
  { solid: "Na2Ca(CO3)2·5H2O", name: "gaylussite", ions: [["Na+", 2], ["Ca^2+", 1], ["CO3^2-", 2]], upTo: 40, source: "brgmEquilibria", leaves: { solid: "CaCO3", source: "memory" } },
  { solid: "KNaC4H4O6·4H2O", name: "Rochelle salt", ions: [["Na+", 1], ["K+", 1], ["C4H4O6^2-", 1]], upTo: 55, source: "memory" },
  { solid: "(NH4)2Ce(NO3)6", name: "ammonium cerium(IV) nitrate", ions: [["NH4+", 2], ["Ce^4+", 1], ["NO3-", 6]], source: "memory" },
]);
