// Double salts that are built alike: where the solubility of one is in no table, those of the others tell how much water it takes.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** Salts of one crystal form, that differ in the metal alone. */
interface IsomorphousRow {
  readonly name: string;
  readonly solids: readonly string[];
  readonly source: SourceKey;
}

export const ISOMORPHOUS = /* @__PURE__ */ once((): readonly IsomorphousRow[] => [
  { name: "Tutton salts of ammonium", solids: ["(NH4)2Mg(SO4)2·6H2O", "(NH4)2Mn(SO4)2·6H2O", "(NH4)2Fe(SO4)2·6H2O", "(NH4)2Co(SO4)2·6H2O", "(NH4)2Ni(SO4)2·6H2O", "(NH4)2Cu(SO4)2·6H2O", "(NH4)2Zn(SO4)2·6H2O"], source: "tutton1890" },
  { name: "Tutton salts of potassium", solids: ["K2Mg(SO4)2·6H2O", "K2Fe(SO4)2·6H2O", "K2Co(SO4)2·6H2O", "K2Ni(SO4)2·6H2O", "K2Cu(SO4)2·6H2O", "K2Zn(SO4)2·6H2O"], source: "tutton1890" },
  { name: "alums of potassium", solids: ["KAl(SO4)2·12H2O", "KCr(SO4)2·12H2O", "KFe(SO4)2·12H2O"], source: "memory" },
  { name: "alums of ammonium", solids: ["NH4Al(SO4)2·12H2O", "NH4Cr(SO4)2·12H2O", "NH4Fe(SO4)2·12H2O"], source: "memory" },
]);
