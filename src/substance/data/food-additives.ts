// Substances without an entry in the classifications that are sold as food or as food additives, with their number in the
// European Union. It tells why nothing is printed about them; it is no judgement of a technical grade. Left out, though they have
// numbers: what irritates (acid and strongly basic phosphates, ammonium carbonate), dusts, alums, and what must not meet acid.
import { once } from "../../foundation/memo";
import type { HazardSourceKey } from "./sources";

interface FoodAdditiveRow {
  /** As the registry, the table of molecules or the name rules spell one of its forms; the forms with more or less water are meant too. */
  readonly formula: string;
  /** Number of the additive; absent for a food itself. */
  readonly number?: string;
  readonly source: HazardSourceKey;
}

export const FOOD_ADDITIVES = /* @__PURE__ */ once((): readonly FoodAdditiveRow[] => [
  { formula: "H2O", source: "commonPractice" },
  { formula: "NaCl", source: "commonPractice" },
  { formula: "C12H22O11", source: "commonPractice" },
  { formula: "CaCO3", number: "E 170", source: "zverkv1998" },
  { formula: "Fe3O4", number: "E 172", source: "zverkv1998" },
  { formula: "FeO(OH)", number: "E 172", source: "zverkv1998" },
  { formula: "KCH3COO", number: "E 261", source: "zverkv1998" },
  { formula: "NaCH3COO", number: "E 262", source: "zverkv1998" },
  { formula: "Ca(CH3COO)2·H2O", number: "E 263", source: "zverkv1998" },
  { formula: "C6H8O6", number: "E 300", source: "zverkv1998" },
  { formula: "NaC6H7O6", number: "E 301", source: "zverkv1998" },
  { formula: "Na3C6H5O7·2H2O", number: "E 331", source: "zverkv1998" },
  { formula: "K3C6H5O7·H2O", number: "E 332", source: "zverkv1998" },
  { formula: "Ca3(C6H5O7)2·4H2O", number: "E 333", source: "zverkv1998" },
  { formula: "KHC4H4O6", number: "E 336", source: "zverkv1998" },
  { formula: "KNaC4H4O6·4H2O", number: "E 337", source: "zverkv1998" },
  { formula: "NaH2PO4", number: "E 339", source: "zverkv1998" },
  { formula: "Na2HPO4", number: "E 339", source: "zverkv1998" },
  { formula: "KH2PO4", number: "E 340", source: "zverkv1998" },
  { formula: "K2HPO4", number: "E 340", source: "zverkv1998" },
  { formula: "CaHPO4", number: "E 341", source: "zverkv1998" },
  { formula: "Ca3(PO4)2", number: "E 341", source: "zverkv1998" },
  { formula: "Ca5(PO4)3OH", number: "E 341", source: "zverkv1998" },
  { formula: "MgHPO4·3H2O", number: "E 343", source: "zverkv1998" },
  { formula: "KHCO3", number: "E 501", source: "zverkv1998" },
  { formula: "MgCO3", number: "E 504", source: "zverkv1998" },
  { formula: "Mg5(CO3)4(OH)2·4H2O", number: "E 504", source: "zverkv1998" },
  { formula: "KCl", number: "E 508", source: "zverkv1998" },
  { formula: "Na2SO4", number: "E 514", source: "zverkv1998" },
  { formula: "K2SO4", number: "E 515", source: "zverkv1998" },
  { formula: "Mg(OH)2", number: "E 528", source: "zverkv1998" },
  { formula: "C6H12O6", source: "commonPractice" },
  { formula: "C6H10O5", source: "commonPractice" },
  { formula: "C3H8O3", number: "E 422", source: "zverkv1998" },
  { formula: "NaC6H11O7", number: "E 576", source: "zverkv1998" },
  { formula: "KC6H11O7", number: "E 577", source: "zverkv1998" },
  { formula: "Ca(C6H11O7)2", number: "E 578", source: "zverkv1998" },
  { formula: "Fe(C6H11O7)2", number: "E 579", source: "zverkv1998" },
  { formula: "NaC7H5O2", number: "E 211", source: "zverkv1998" },
  { formula: "C6H10O6", number: "E 575", source: "zverkv1998" },
  { formula: "NaC5H8NO4·H2O", number: "E 621", source: "zverkv1998" },
  { formula: "NH2CH2COOH", number: "E 640", source: "zverkv1998" },
]);
