// Substances without an entry in the classifications that are sold as food or as food additives, with their number in the
// European Union. It tells why nothing is printed about them; it is no judgement of a technical grade. Left out, though they have
// numbers: what irritates (acid and strongly basic phosphates, ammonium carbonate), dusts, alums, and what must not meet acid.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

interface FoodAdditiveRow {
  /** As the registry spells one of its forms; the forms with more or less water are meant too. */
  readonly formula: string;
  /** Number of the additive; absent for a food itself. */
  readonly number?: string;
  readonly source: SourceKey;
}

export const FOOD_ADDITIVES = /* @__PURE__ */ once((): readonly FoodAdditiveRow[] => [
  { formula: "H2O", source: "commonPractice" },
  { formula: "NaCl", source: "commonPractice" },
  { formula: "C12H22O11", source: "commonPractice" },
  { formula: "CaCO3", number: "E 170", source: "euFoodAdditives" },
  { formula: "Fe3O4", number: "E 172", source: "euFoodAdditives" },
  { formula: "FeO(OH)", number: "E 172", source: "euFoodAdditives" },
  { formula: "KCH3COO", number: "E 261", source: "euFoodAdditives" },
  { formula: "NaCH3COO", number: "E 262", source: "euFoodAdditives" },
  { formula: "Ca(CH3COO)2·H2O", number: "E 263", source: "euFoodAdditives" },
  { formula: "C6H8O6", number: "E 300", source: "euFoodAdditives" },
  { formula: "NaC6H7O6", number: "E 301", source: "euFoodAdditives" },
  { formula: "Na3C6H5O7·2H2O", number: "E 331", source: "euFoodAdditives" },
  { formula: "K3C6H5O7·H2O", number: "E 332", source: "euFoodAdditives" },
  { formula: "Ca3(C6H5O7)2·4H2O", number: "E 333", source: "euFoodAdditives" },
  { formula: "KHC4H4O6", number: "E 336", source: "euFoodAdditives" },
  { formula: "KNaC4H4O6·4H2O", number: "E 337", source: "euFoodAdditives" },
  { formula: "NaH2PO4", number: "E 339", source: "euFoodAdditives" },
  { formula: "Na2HPO4", number: "E 339", source: "euFoodAdditives" },
  { formula: "KH2PO4", number: "E 340", source: "euFoodAdditives" },
  { formula: "K2HPO4", number: "E 340", source: "euFoodAdditives" },
  { formula: "CaHPO4", number: "E 341", source: "euFoodAdditives" },
  { formula: "Ca3(PO4)2", number: "E 341", source: "euFoodAdditives" },
  { formula: "Ca5(PO4)3OH", number: "E 341", source: "euFoodAdditives" },
  { formula: "MgHPO4·3H2O", number: "E 343", source: "euFoodAdditives" },
  { formula: "KHCO3", number: "E 501", source: "euFoodAdditives" },
  { formula: "MgCO3", number: "E 504", source: "euFoodAdditives" },
  { formula: "Mg5(CO3)4(OH)2·4H2O", number: "E 504", source: "euFoodAdditives" },
  { formula: "KCl", number: "E 508", source: "euFoodAdditives" },
  { formula: "Na2SO4", number: "E 514", source: "euFoodAdditives" },
  { formula: "K2SO4", number: "E 515", source: "euFoodAdditives" },
  { formula: "Mg(OH)2", number: "E 528", source: "euFoodAdditives" },
]);
