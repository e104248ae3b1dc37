// What chemistry allows and a bench does not: solids that air takes before they are dry, feeds that water takes apart, and what heat
// does only in part or only in a furnace nobody has. Graded by somebody who had not seen the code, from general knowledge.
import type { SourceKey } from "./sources";

/** A substance that is no product or no feed of a step. */
interface UnfitRow {
  readonly formula: string;
  readonly as: "product" | "feed" | "either";
  /** As a feed only where it stands on the shelf without water. */
  readonly dry?: true;
  readonly why: string;
  readonly source: SourceKey;
}

export const UNFIT: readonly UnfitRow[] = [
  { formula: "Fe(OH)2", as: "either", why: "air oxidises it while it is filtered", source: "commonPractice" },
  { formula: "Mn(OH)2", as: "either", why: "air oxidises it while it is filtered", source: "commonPractice" },
  { formula: "FeCO3", as: "either", why: "air oxidises it while it is filtered and dried", source: "commonPractice" },
  { formula: "CaS", as: "feed", why: "it hydrolyses slowly and gives off hydrogen sulfide", source: "commonPractice" },
  { formula: "SrS", as: "feed", why: "it hydrolyses and gives off hydrogen sulfide", source: "commonPractice" },
  { formula: "BaS", as: "feed", why: "it hydrolyses and gives off hydrogen sulfide", source: "commonPractice" },
  { formula: "MgS", as: "feed", why: "it hydrolyses and gives off hydrogen sulfide", source: "commonPractice" },
  { formula: "Al2S3", as: "feed", why: "it hydrolyses and gives off hydrogen sulfide", source: "commonPractice" },
  { formula: "FePO4", as: "product", why: "in the cold it precipitates as a gel of no fixed composition, from acid not at all", source: "commonPractice" },
  { formula: "AlPO4", as: "product", why: "it precipitates as a gel, partly hydroxide", source: "commonPractice" },
  { formula: "CrPO4", as: "product", why: "it precipitates as a gel, partly hydroxide", source: "commonPractice" },
  { formula: "FeO(OH)", as: "feed", why: "grown crystals dissolve in acid only hot and over hours", source: "commonPractice" },
  { formula: "Al(CH3COO)3", as: "feed", why: "what is sold is basic", source: "commonPractice" },
  { formula: "AlO(OH)", as: "feed", why: "grown crystals dissolve in acid only hot and over hours", source: "commonPractice" },
  { formula: "2Na2CO3·3H2O2", as: "feed", why: "it is a peroxide, and foams", source: "commonPractice" },
  { formula: "Fe3(PO4)2", as: "product", why: "air turns it blue while it is filtered and dried", source: "commonPractice" },
  { formula: "Ca3(PO4)2", as: "either", why: "what settles from water, and what is sold under this formula, is a basic phosphate of the kind of apatite", source: "commonPractice" },
  { formula: "Cu3(PO4)2", as: "product", why: "what settles is basic, and of no fixed composition", source: "commonPractice" },
  { formula: "FeS", as: "product", why: "wet, air oxidises it on the filter", source: "commonPractice" },
  { formula: "MnS", as: "product", why: "wet, air oxidises it on the filter", source: "commonPractice" },
  { formula: "CoS", as: "product", why: "wet, air oxidises it on the filter", source: "commonPractice" },
  { formula: "NiS", as: "product", why: "wet, air oxidises it on the filter", source: "commonPractice" },
  { formula: "Na2S", as: "product", why: "air and carbon dioxide decompose it while it crystallises", source: "commonPractice" },
  { formula: "K2S", as: "product", why: "air and carbon dioxide decompose it while it crystallises", source: "commonPractice" },
  { formula: "Na2O", as: "feed", why: "with water and acids it reacts violently; nobody has it for this", source: "commonPractice" },
  { formula: "K2O", as: "feed", why: "with water and acids it reacts violently; nobody has it for this", source: "commonPractice" },
  { formula: "Li2O", as: "feed", why: "with water and acids it reacts violently; nobody has it for this", source: "commonPractice" },
  { formula: "Na2S2O5", as: "feed", why: "in water it is hydrogensulfite, and its liquor smells of sulfur dioxide", source: "commonPractice" },
  { formula: "K2S2O5", as: "feed", why: "in water it is hydrogensulfite, and its liquor smells of sulfur dioxide", source: "commonPractice" },
  { formula: "Cr2(SO4)3", as: "feed", dry: true, why: "without water it hardly dissolves; write it with its water if it has some", source: "commonPractice" },
  { formula: "CrCl3", as: "feed", dry: true, why: "without water it hardly dissolves; write it with its water if it has some", source: "commonPractice" },
];

/** A step by heat that nobody takes for a preparation. */
interface UnfitHeatRow {
  readonly from: string;
  readonly to: string;
  readonly why: string;
  readonly source: SourceKey;
}

export const UNFIT_BY_HEAT: readonly UnfitHeatRow[] = [
  { from: "CuO", to: "Cu2O", why: "only above some 1030 °C, and it absorbs the oxygen again as it cools", source: "commonPractice" },
  { from: "NaNO3", to: "NaNO2", why: "only in part: nitrate, nitrite and oxide stay together", source: "commonPractice" },
  { from: "KNO3", to: "KNO2", why: "only in part: nitrate, nitrite and oxide stay together", source: "commonPractice" },
  { from: "Li2CO3", to: "Li2O", why: "it melts first, is not complete without a vacuum and attacks the crucible", source: "commonPractice" },
  { from: "CoCO3", to: "CoO", why: "in air it goes on to Co3O4", source: "commonPractice" },
  { from: "Co(OH)2", to: "CoO", why: "in air it goes on to Co3O4", source: "commonPractice" },
  { from: "MnCO3", to: "MnO", why: "in air it goes on to a higher oxide", source: "commonPractice" },
  { from: "Co3O4", to: "CoO", why: "only above 900 °C, and it absorbs the oxygen again as it cools", source: "commonPractice" },
  { from: "FeS2", to: "FeS", why: "in air it burns to oxide and sulfur dioxide", source: "commonPractice" },
  { from: "Al(OH)3", to: "AlO(OH)", why: "open, it loses all its water in one, and only in part by this step", source: "commonPractice" },
  { from: "Ca(CH3COO)2", to: "CaCO3", why: "it chars and gives off acetone that burns; chalk is dug", source: "commonPractice" },
  { from: "Cr(OH)3", to: "Cr2O3·2H2O", why: "nothing tells where to stop: it loses its water without a step; viridian comes from a melt with boric acid", source: "commonPractice" },
  { from: "CuS", to: "Cu2S", why: "in air it burns to oxide and sulfate; it needs a closed crucible with sulfur vapour", source: "commonPractice" },
  { from: "(NH4)2SO4", to: "NH4HSO4", why: "nothing tells where to stop: letovicite before it, disulfate after it", source: "commonPractice" },
];
