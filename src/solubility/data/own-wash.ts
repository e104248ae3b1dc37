// Precipitates with a wash of their own: plain water turns them or takes too much of them. Water with a little acid in it is what the
// wash is; other liquids are named beside the water that is counted.
import type { SourceKey } from "./sources";

/** A wash of its own. */
interface OwnWashRow {
  /** Ions of the precipitate. */
  readonly ions: string;
  /** What to wash with, in words. */
  readonly liquid: string;
  readonly because: string;
  /** The acid that is in the water of each wash, of what strength, and the strength in which it is sold, by mass. */
  readonly acid?: { readonly formula: string; readonly name: string; readonly strength: string; readonly sold: string };
  /** What it is made from and that must be at hand. */
  readonly needs?: "strong ammonia";
  /** The same by its formula and strength, by mass, where a pack of another strength is there. */
  readonly dilute?: { readonly formula: string; readonly called: string; readonly strength: string };
  readonly source: SourceKey;
}

export const OWN_WASH: readonly OwnWashRow[] = [
  { ions: "Cu+ Cl-", liquid: "very dilute hydrochloric acid", because: "copper(I) chloride turns green in water and air", acid: { formula: "HCl", name: "hydrochloric acid", strength: "1 %", sold: "36 %" }, source: "commonPractice" },
  { ions: "Cu+ Br-", liquid: "very dilute acetic acid", because: "copper(I) bromide turns green in water and air", acid: { formula: "CH3COOH", name: "acetic acid", strength: "1 %", sold: "80 %" }, source: "commonPractice" },
  { ions: "Ag+ Cl-", liquid: "very dilute nitric acid", because: "in pure water the curd goes colloidal and runs through the filter", acid: { formula: "HNO3", name: "nitric acid", strength: "0.5 %", sold: "53 %" }, source: "commonPractice" },
  { ions: "Ag+ Br-", liquid: "very dilute nitric acid", because: "in pure water the curd goes colloidal and runs through the filter", acid: { formula: "HNO3", name: "nitric acid", strength: "0.5 %", sold: "53 %" }, source: "commonPractice" },
  { ions: "Ag+ I-", liquid: "very dilute nitric acid", because: "in pure water the curd goes colloidal and runs through the filter", acid: { formula: "HNO3", name: "nitric acid", strength: "0.5 %", sold: "53 %" }, source: "commonPractice" },
  { ions: "Zn^2+ C17H35COO-", liquid: "hot water with a little alcohol in it, stirred up each time", because: "it floats and water alone does not wet it", source: "commonPractice" },
  { ions: "Ca^2+ C17H35COO-", liquid: "hot water with a little alcohol in it, stirred up each time", because: "it floats and water alone does not wet it", source: "commonPractice" },
  { ions: "Mg^2+ C17H35COO-", liquid: "hot water with a little alcohol in it, stirred up each time", because: "it floats and water alone does not wet it", source: "commonPractice" },
  { ions: "Pb^2+ Cl-", liquid: "a little ice water", because: "hot water dissolves lead chloride", source: "commonPractice" },
  { ions: "NH4+ Mg^2+ PO4^3-", liquid: "2.5 % ammonia, cold: a tenth of strong ammonia in water, under a hood", because: "pure water takes ammonium and phosphate out of it", needs: "strong ammonia", dilute: { formula: "NH3", called: "2.5 % ammonia, cold", strength: "2.5 %" }, source: "talbot" },
  { ions: "Ca^2+ C6H5O7^3-", liquid: "hot water", because: "calcium citrate dissolves less hot than cold", source: "commonPractice" },
  { ions: "Fe^2+ C2O4^2-", liquid: "hot water", because: "iron(II) oxalate hardly dissolves even hot, and hot water removes the salts", source: "commonPractice" },
];
