// Compounds that water does not let be: what their ions make of each other in its place. Normal carbonates of cations as acid
// as iron(III) give the hydroxide and carbon dioxide, sulfides and sulfites of aluminium and chromium the hydroxide and the
// gas; iodide and cyanide reduce copper(II), iodide and sulfide iron(III).
import { columns } from "../../foundation/columns";
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** One kind of compound. */
interface NeverInWaterRow {
  readonly cations: readonly string[];
  readonly anions: readonly string[];
  /** Crystal water that the row is limited to. */
  readonly waters?: number;
  /** What stands in its place, for one cation: formula and how many; empty where nothing precipitates. */
  readonly instead: readonly { readonly formula: string; readonly cations: number }[];
  /** What the anion becomes beside it. */
  readonly beside?: string;
  readonly why: string;
  readonly source: SourceKey;
}

const hydroxide = (formula: string): NeverInWaterRow["instead"] => [{ formula, cations: 1 }];
const CARBONATES = ["CO3^2-", "HCO3-"];
const GASES_GO = "the cation is too acid: the hydroxide forms and the gas leaves";

export const NEVER_IN_WATER = /* @__PURE__ */ once((): readonly NeverInWaterRow[] => [
  { cations: ["Al^3+"], anions: CARBONATES, instead: hydroxide("Al(OH)3"), beside: "CO2", why: "carbonate makes the hydroxide of a cation as acid as this, and carbon dioxide leaves", source: "commonPractice" },
  { cations: ["Fe^3+"], anions: CARBONATES, instead: hydroxide("Fe(OH)3"), beside: "CO2", why: "carbonate makes the hydroxide of a cation as acid as this, and carbon dioxide leaves", source: "commonPractice" },
  { cations: ["Cr^3+"], anions: CARBONATES, instead: hydroxide("Cr(OH)3"), beside: "CO2", why: "carbonate makes the hydroxide of a cation as acid as this, and carbon dioxide leaves", source: "commonPractice" },
  { cations: ["Ga^3+"], anions: CARBONATES, instead: hydroxide("Ga(OH)3"), beside: "CO2", why: "carbonate makes the hydroxide of a cation as acid as this, and carbon dioxide leaves", source: "commonPractice" },
  { cations: ["Sn^2+"], anions: CARBONATES, instead: hydroxide("SnO"), beside: "CO2", why: "carbonate makes the hydrous oxide of a cation as acid as this, and carbon dioxide leaves", source: "commonPractice" },
  { cations: ["Sn^4+"], anions: CARBONATES, instead: hydroxide("SnO2"), beside: "CO2", why: "carbonate makes the hydrous oxide of a cation as acid as this, and carbon dioxide leaves", source: "commonPractice" },
  { cations: ["Ti^4+", "Ti^3+"], anions: CARBONATES, instead: hydroxide("TiO2"), beside: "CO2", why: "carbonate makes the hydrous oxide of a cation as acid as this, and carbon dioxide leaves", source: "commonPractice" },
  { cations: ["Zr^4+"], anions: CARBONATES, instead: hydroxide("ZrO2"), beside: "CO2", why: "carbonate makes the hydrous oxide of a cation as acid as this, and carbon dioxide leaves", source: "commonPractice" },
  { cations: ["Bi^3+"], anions: CARBONATES, instead: [{ formula: "Bi2O2CO3", cations: 2 }], beside: "CO2", why: "bismuth keeps its oxygen: the basic carbonate forms", source: "commonPractice" },
  { cations: ["Al^3+"], anions: ["S^2-", "HS-"], instead: hydroxide("Al(OH)3"), beside: "H2S", why: GASES_GO, source: "commonPractice" },
  { cations: ["Al^3+"], anions: ["SO3^2-", "HSO3-"], instead: hydroxide("Al(OH)3"), beside: "SO2", why: GASES_GO, source: "commonPractice" },
  { cations: ["Cr^3+"], anions: ["S^2-", "HS-"], instead: hydroxide("Cr(OH)3"), beside: "H2S", why: GASES_GO, source: "commonPractice" },
  { cations: ["Cr^3+"], anions: ["SO3^2-", "HSO3-"], instead: hydroxide("Cr(OH)3"), beside: "SO2", why: GASES_GO, source: "commonPractice" },
  { cations: ["Ti^4+"], anions: ["S^2-"], instead: hydroxide("TiO2"), beside: "H2S", why: GASES_GO, source: "commonPractice" },
  { cations: ["Ti^4+"], anions: ["SO3^2-"], instead: hydroxide("TiO2"), beside: "SO2", why: GASES_GO, source: "commonPractice" },
  { cations: ["Fe^3+"], anions: ["S^2-", "HS-"], instead: hydroxide("FeS"), beside: "S", why: "iron(III) oxidises sulfide: iron(II) sulfide and sulfur precipitate", source: "commonPractice" },
  { cations: ["Fe^3+"], anions: ["SO3^2-", "HSO3-"], instead: [], why: "iron(III) oxidises sulfite to sulfate, and iron(II) is left", source: "commonPractice" },
  { cations: ["Fe^3+"], anions: ["I-"], instead: [], why: "iron(III) oxidises iodide: iodine and iron(II) iodide", source: "commonPractice" },
  { cations: ["Cu^2+"], anions: ["I-"], instead: hydroxide("CuI"), beside: "I2", why: "copper(II) oxidises iodide: copper(I) iodide precipitates, and iodine is set free", source: "commonPractice" },
  { cations: ["Cu^2+"], anions: ["CN-"], instead: hydroxide("CuCN"), beside: "C2N2", why: "copper(II) oxidises cyanide: copper(I) cyanide precipitates, and cyanogen leaves", source: "commonPractice" },
  { cations: ["Mg^2+"], anions: ["S^2-"], instead: hydroxide("Mg(OH)2"), beside: "H2S", why: "the sulfide hydrolyses: the hydroxide forms, hydrogen sulfide stays in solution", source: "commonPractice" },
]);

/** Which they are, without what stands in their place. */
export const NOT_IN_WATER = /* @__PURE__ */ columns(NEVER_IN_WATER, ["cations", "anions"]);

/** Hydroxides that lose their water as they precipitate, and oxides that water turns into the hydroxide. */
export const OXIDE_OR_HYDROXIDE: readonly NeverInWaterRow[] = [
  { cations: ["Ag+"], anions: ["OH-"], instead: [{ formula: "Ag2O", cations: 2 }], why: "silver hydroxide loses its water as it precipitates", source: "commonPractice" },
  { cations: ["Hg^2+"], anions: ["OH-"], instead: [{ formula: "HgO", cations: 1 }], why: "mercury(II) hydroxide loses its water as it precipitates", source: "commonPractice" },
  { cations: ["Cu+"], anions: ["OH-"], instead: [{ formula: "Cu2O", cations: 2 }], why: "copper(I) hydroxide loses its water as it precipitates", source: "commonPractice" },
  { cations: ["Ca^2+"], anions: ["O^2-"], instead: [{ formula: "Ca(OH)2", cations: 1 }], why: "water slakes the oxide to the hydroxide", source: "commonPractice" },
  { cations: ["Sr^2+"], anions: ["O^2-"], instead: [{ formula: "Sr(OH)2", cations: 1 }], why: "water slakes the oxide to the hydroxide", source: "commonPractice" },
  { cations: ["Ba^2+"], anions: ["O^2-"], instead: [{ formula: "Ba(OH)2", cations: 1 }], why: "water slakes the oxide to the hydroxide", source: "commonPractice" },
  { cations: ["Li+", "Na+", "K+", "Rb+", "Cs+"], anions: ["O^2-"], instead: [], why: "water turns the oxide into lye", source: "commonPractice" },
];

/** Double sulfates of the type of Mohr's salt: with these cations in place of potassium or ammonium none crystallises. */
export const NO_TUTTON_SALT = {
  cations: ["Na+", "Li+", "Ca^2+"],
  waters: 6,
  why: "double sulfates with six waters form with potassium and ammonium, not with so small or so highly charged a cation",
  source: "commonPractice",
} as const satisfies { cations: readonly string[]; waters: number; why: string; source: SourceKey };

/** Salts that water takes apart again: of a small, highly charged cation with an acid too weak to hold it. */
export const TAKEN_APART = {
  cations: ["Al^3+", "Fe^3+", "Cr^3+", "Bi^3+", "Ti^4+", "Sn^4+"],
  anions: ["CH3COO-", "HCOO-", "CHO2-", "C2H3O2-", "C3H5O2-", "C7H5O2-", "C6H5COO-"],
  why: "a salt of so acid a cation and so weak an acid hydrolyses: boiled down it loses acid, and a basic salt is left",
  source: "commonPractice",
} as const satisfies { cations: readonly string[]; anions: readonly string[]; why: string; source: SourceKey };

/** Halogens do not stand beside lye. */
export const APART_IN_LYE = {
  formulas: ["Cl2", "Br2", "I2"],
  why: "lye takes a halogen apart into halide and hypohalite, and that into halate",
  instead: "with acid in place of lye, enough for all of it, it stands",
  source: "commonPractice",
} as const satisfies { formulas: readonly string[]; why: string; instead: string; source: SourceKey };

/** Salts known as solutions only: what a liquor of them gives, boiled down or left open, is another solid. */
export const ONLY_IN_SOLUTION: readonly (Pick<NeverInWaterRow, "cations" | "anions" | "why" | "source"> & {
  /** Jars are sold by the name, whatever is in them. */
  readonly sold?: true;
})[] = [
  { cations: ["Li+", "Mg^2+", "Ca^2+", "Sr^2+", "Ba^2+", "Mn^2+", "Fe^2+", "Co^2+", "Ni^2+", "Zn^2+"], anions: ["HCO3-"], why: "it stays dissolved under carbon dioxide only: left open or warmed the gas leaves and the carbonate precipitates", source: "commonPractice" },
  { cations: ["Mg^2+", "Ca^2+", "Sr^2+", "Ba^2+", "Mn^2+", "Fe^2+", "Co^2+", "Ni^2+", "Zn^2+"], anions: ["HSO3-"], why: "it stays dissolved with sulfur dioxide only: left open or warmed the gas leaves and the sulfite precipitates", source: "commonPractice" },
  { cations: ["Na+", "K+"], anions: ["ClO-"], why: "boiled down it turns into chlorate and chloride, and gives oxygen off", source: "commonPractice" },
  { cations: ["Na+", "K+", "NH4+"], anions: ["HSO3-"], why: "what crystallises from its solution is the disulfite", sold: true, source: "commonPractice" },
];
