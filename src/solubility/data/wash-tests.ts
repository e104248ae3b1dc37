// Drop tests on the last wash, by the ion that is washed out: the tests of any school of qualitative analysis. Common practice,
// no source; those for sulfate, the halides, phosphate, nitrite and nitrate stand so in printed lists of tests for anions.
import type { SourceKey } from "./sources";

/** One test and the ions that it shows; what tap water has itself (chloride, sulfate, calcium) is held against the washing water. */
interface WashTestRow {
  readonly ions: readonly string[];
  readonly test: string;
  /** What it is done with; nothing where an eye tells. */
  readonly takes: readonly string[];
  /** What of that does harm, in words: from memory of its classification. */
  readonly harm?: string;
  /** What is ticked: what the end looks like, and what it looks like before. */
  readonly boxes: readonly [done: string, shows: string];
  /** The ion in the last wash from which on a test tube shows it: from memory, good to a factor of three. */
  readonly showsFrom: string;
  /** Ions of a product that take the reagent themselves, as far as the wash dissolves it. */
  readonly hiddenBy?: readonly string[];
  readonly source: SourceKey;
}

/** Ions that paper shows; a product that gives them makes water alkaline long before a cloud would show it. */
export const BASIC: readonly string[] = ["CO3^2-", "HCO3-", "OH-"];

export const WASH_TESTS: readonly WashTestRow[] = [
  { ions: ["SO4^2-", "HSO4-"], test: "barium chloride with dilute hydrochloric acid: within two minutes no more cloud than the wash water gives", takes: ["barium chloride", "dilute hydrochloric acid"], harm: "barium chloride is poisonous", boxes: ["no cloud", "cloud"], showsFrom: "0.1 mmol/L", source: "commonPractice" },
  { ions: ["Cl-", "Br-", "I-", "SCN-"], test: "silver nitrate with dilute nitric acid: no more cloud than the wash water gives", takes: ["silver nitrate", "dilute nitric acid"], harm: "silver nitrate burns eyes and blackens skin", boxes: ["no cloud", "cloud"], showsFrom: "0.05 mmol/L", source: "commonPractice" },
  { ions: ["CO3^2-", "HCO3-", "OH-"], test: "indicator paper neutral", takes: ["indicator paper"], boxes: ["neutral", "alkaline"], showsFrom: "0.1 mmol/L", source: "commonPractice" },
  { ions: ["S^2-", "HS-"], test: "lead acetate paper: it stays white", takes: ["lead acetate paper"], harm: "lead acetate is poisonous", boxes: ["white", "dark"], showsFrom: "0.1 mmol/L", source: "commonPractice" },
  { ions: ["S2O3^2-", "SO3^2-", "HSO3-"], test: "a drop of iodine solution: its colour stays", takes: ["iodine solution"], boxes: ["colour stays", "colour goes"], showsFrom: "0.5 mmol/L", hiddenBy: ["Cu+", "Sn^2+", "S^2-"], source: "commonPractice" },
  { ions: ["ClO-"], test: "potassium iodide with starch: no blue", takes: ["potassium iodide", "starch"], boxes: ["no blue", "blue"], showsFrom: "0.01 mmol/L", source: "commonPractice" },
  { ions: ["NO2-", "IO3-"], test: "potassium iodide with starch and a drop of vinegar: no blue", takes: ["potassium iodide", "starch", "vinegar"], boxes: ["no blue", "blue"], showsFrom: "0.02 mmol/L", source: "commonPractice" },
  { ions: ["MnO4-"], test: "no pink against white paper", takes: [], boxes: ["no pink", "pink"], showsFrom: "0.005 mmol/L", source: "commonPractice" },
  { ions: ["CrO4^2-", "Cr2O7^2-"], test: "no yellow against white paper", takes: [], boxes: ["no yellow", "yellow"], showsFrom: "0.05 mmol/L", source: "commonPractice" },
  { ions: ["C2O4^2-"], test: "calcium chloride with a little acetic acid: no cloud", takes: ["calcium chloride", "dilute acetic acid"], boxes: ["no cloud", "cloud"], showsFrom: "0.1 mmol/L", source: "commonPractice" },
  { ions: ["PO4^3-", "HPO4^2-", "H2PO4-"], test: "ammonium molybdate with nitric acid, warmed: no yellow", takes: ["ammonium molybdate", "nitric acid"], harm: "nitric acid burns skin and eyes", boxes: ["no yellow", "yellow"], showsFrom: "0.05 mmol/L", source: "commonPractice" },
  { ions: ["[Fe(CN)6]^4-"], test: "iron(III) chloride with a drop of hydrochloric acid: no blue", takes: ["iron(III) chloride", "dilute hydrochloric acid"], boxes: ["no blue", "blue"], showsFrom: "0.01 mmol/L", source: "commonPractice" },
  { ions: ["[Fe(CN)6]^3-"], test: "fresh iron(II) sulfate with a drop of dilute sulfuric acid: no blue", takes: ["iron(II) sulfate", "dilute sulfuric acid"], boxes: ["no blue", "blue"], showsFrom: "0.01 mmol/L", source: "commonPractice" },
  { ions: ["H+"], test: "blue litmus stays blue, or indicator paper shows no more acid than the wash water", takes: ["blue litmus or indicator paper"], boxes: ["not acid", "acid"], showsFrom: "0.1 mmol/L", source: "commonPractice" },
  { ions: ["Fe^3+"], test: "thiocyanate: no red", takes: ["potassium thiocyanate"], harm: "potassium thiocyanate is harmful", boxes: ["no red", "red"], showsFrom: "0.02 mmol/L", source: "commonPractice" },
  { ions: ["Fe^2+"], test: "potassium ferricyanide: no blue", takes: ["potassium ferricyanide"], boxes: ["no blue", "blue"], showsFrom: "0.02 mmol/L", source: "commonPractice" },
  { ions: ["Cu^2+"], test: "ammonia: no blue", takes: ["ammonia"], boxes: ["no blue", "blue"], showsFrom: "0.5 mmol/L", source: "commonPractice" },
  { ions: ["Ni^2+"], test: "dimethylglyoxime with ammonia: no red", takes: ["dimethylglyoxime", "ammonia"], harm: "dimethylglyoxime in alcohol burns, and is poisonous", boxes: ["no red", "red"], showsFrom: "0.01 mmol/L", source: "commonPractice" },
  { ions: ["Mn^2+"], test: "lye with a drop of peroxide: no brown", takes: ["lye", "hydrogen peroxide"], harm: "lye burns eyes and skin", boxes: ["no brown", "brown"], showsFrom: "0.1 mmol/L", source: "commonPractice" },
  { ions: ["Ca^2+"], test: "ammonium oxalate: no more cloud than the wash water gives", takes: ["ammonium oxalate"], harm: "ammonium oxalate is harmful", boxes: ["no cloud", "cloud"], showsFrom: "0.1 mmol/L", source: "commonPractice" },
  { ions: ["Ag+"], test: "dilute hydrochloric acid: no cloud", takes: ["dilute hydrochloric acid"], boxes: ["no cloud", "cloud"], showsFrom: "0.05 mmol/L", source: "commonPractice" },
  { ions: ["Pb^2+", "Ba^2+"], test: "a drop of dilute sulfuric acid: no cloud", takes: ["dilute sulfuric acid"], boxes: ["no cloud", "cloud"], showsFrom: "0.1 mmol/L", source: "commonPractice" },
];

/** Tells anything, where the product itself leaves less. */
export const RESIDUE = "10 mL boiled down on a watch glass leave no more than a faint film, less than 1 mg";

/** The brown ring, where nothing that is washed out disturbs it. */
export const NITRATE = {
  test: "brown ring with iron(II) sulfate over strong sulfuric acid: none",
  takes: ["iron(II) sulfate", "strong sulfuric acid"],
  harm: "strong sulfuric acid burns deep",
} as const;

/** Ions that colour strong sulfuric acid or iron(II) themselves, or that acid makes poison of: no brown ring beside them. */
export const NO_BROWN_RING: readonly string[] = ["I-", "Br-", "IO3-", "NO2-", "CrO4^2-", "Cr2O7^2-", "MnO4-", "ClO-", "ClO3-", "SCN-", "CN-", "[Fe(CN)6]^4-", "[Fe(CN)6]^3-", "S^2-", "HS-", "S2O3^2-"];

/** What the ions of the product itself show in a drop test. */
export const OWN_HAZE = "a faint haze is the product's own";

export const OWN_BASE =
  "the product gives this ion too: indicator paper as in pure water that some of the product was stirred with";
