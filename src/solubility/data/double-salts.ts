// Double salts that crystallise from mixed liquors at the bench, with the ions that make them. Where the table of
// solubilities or of solubility products has one, it is judged by figure; the others are only named.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

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
  { solid: "K2Mg(SO4)2·6H2O", name: "picromerite", ions: [["K+", 2], ["Mg^2+", 1], ["SO4^2-", 2]], source: "brgmEquilibria" },
  { solid: "K2Cu(SO4)2·6H2O", name: "potassium copper sulfate", ions: [["K+", 2], ["Cu^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "K2Zn(SO4)2·6H2O", name: "potassium zinc sulfate", ions: [["K+", 2], ["Zn^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "K2Ni(SO4)2·6H2O", name: "potassium nickel sulfate", ions: [["K+", 2], ["Ni^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "K2Co(SO4)2·6H2O", name: "potassium cobalt sulfate", ions: [["K+", 2], ["Co^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "K2Fe(SO4)2·6H2O", name: "potassium iron(II) sulfate", ions: [["K+", 2], ["Fe^2+", 1], ["SO4^2-", 2]], source: "tutton1890" },
  { solid: "K2Ca(SO4)2·H2O", name: "syngenite", ions: [["K+", 2], ["Ca^2+", 1], ["SO4^2-", 2]], source: "livermoreEquilibria" },
  { solid: "K3Na(SO4)2", name: "glaserite", ions: [["K+", 3], ["Na+", 1], ["SO4^2-", 2]], source: "memory" },
  { solid: "Na2Mg(SO4)2·4H2O", name: "bloedite", ions: [["Na+", 2], ["Mg^2+", 1], ["SO4^2-", 2]], from: 21, source: "memory" },
  { solid: "Na2Ca(SO4)2", name: "glauberite", ions: [["Na+", 2], ["Ca^2+", 1], ["SO4^2-", 2]], from: 35, source: "memory" },
  { solid: "KMgCl3·6H2O", name: "carnallite", ions: [["K+", 1], ["Mg^2+", 1], ["Cl-", 3]], source: "brgmEquilibria" },
  { solid: "NH4MgCl3·6H2O", name: "ammonium carnallite", ions: [["NH4+", 1], ["Mg^2+", 1], ["Cl-", 3]], source: "memory" },
  { solid: "K2CuCl4·2H2O", name: "potassium copper chloride", ions: [["K+", 2], ["Cu^2+", 1], ["Cl-", 4]], source: "memory" },
  { solid: "(NH4)2CuCl4·2H2O", name: "ammonium copper chloride", ions: [["NH4+", 2], ["Cu^2+", 1], ["Cl-", 4]], source: "memory" },
  { solid: "(NH4)2ZnCl4", name: "ammonium zinc chloride", ions: [["NH4+", 2], ["Zn^2+", 1], ["Cl-", 4]], source: "memory" },
  { solid: "K2FeCl5·H2O", name: "potassium iron(III) chloride", ions: [["K+", 2], ["Fe^3+", 1], ["Cl-", 5]], source: "memory" },
  { solid: "Na2Ca(CO3)2·5H2O", name: "gaylussite", ions: [["Na+", 2], ["Ca^2+", 1], ["CO3^2-", 2]], upTo: 40, source: "brgmEquilibria" },
  { solid: "KNaC4H4O6·4H2O", name: "Rochelle salt", ions: [["Na+", 1], ["K+", 1], ["C4H4O6^2-", 1]], upTo: 55, source: "memory" },
  { solid: "(NH4)2Ce(NO3)6", name: "ammonium cerium(IV) nitrate", ions: [["NH4+", 2], ["Ce^4+", 1], ["NO3-", 6]], source: "memory" },
]);
