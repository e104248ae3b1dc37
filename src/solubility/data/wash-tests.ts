// Drop tests on the last wash, by the ion that is washed out: the tests of any school of qualitative analysis. Common practice,
// no source; those for sulfate, the halides, phosphate, nitrite and nitrate stand so in printed lists of tests for anions.

/** One test and the ions that it shows. */
interface WashTestRow {
  readonly ions: readonly string[];
  readonly test: string;
}

/** Ions that paper shows; a product that gives them makes water alkaline long before a cloud would show it. */
export const BASIC: readonly string[] = ["CO3^2-", "HCO3-", "OH-"];

export const WASH_TESTS: readonly WashTestRow[] = [
  { ions: ["SO4^2-", "HSO4-"], test: "barium chloride with dilute hydrochloric acid: no cloud within two minutes" },
  { ions: ["Cl-", "Br-", "I-", "SCN-"], test: "silver nitrate with dilute nitric acid: no cloud" },
  { ions: ["CO3^2-", "HCO3-", "OH-"], test: "indicator paper neutral; acidify before testing for chloride or sulfate" },
  { ions: ["S^2-", "HS-"], test: "lead acetate paper: it stays white" },
  { ions: ["S2O3^2-", "SO3^2-", "HSO3-"], test: "a drop of iodine solution: its colour stays" },
  { ions: ["ClO-"], test: "potassium iodide with starch: no blue" },
  { ions: ["NO2-", "IO3-"], test: "potassium iodide with starch and a drop of vinegar: no blue" },
  { ions: ["MnO4-"], test: "no pink against white paper" },
  { ions: ["CrO4^2-", "Cr2O7^2-"], test: "no yellow against white paper" },
  { ions: ["C2O4^2-"], test: "calcium chloride with a little acetic acid: no cloud" },
  { ions: ["PO4^3-", "HPO4^2-", "H2PO4-"], test: "ammonium molybdate with nitric acid, warmed: no yellow" },
  { ions: ["[Fe(CN)6]^4-"], test: "iron(III) chloride with a drop of hydrochloric acid: no blue" },
  { ions: ["[Fe(CN)6]^3-"], test: "fresh iron(II) sulfate with a drop of dilute sulfuric acid: no blue" },
  { ions: ["H+"], test: "blue litmus stays blue, or indicator paper shows no more acid than the wash water" },
  { ions: ["Fe^3+"], test: "thiocyanate: no red" },
  { ions: ["Fe^2+"], test: "potassium ferricyanide: no blue" },
  { ions: ["Cu^2+"], test: "ammonia: no blue" },
  { ions: ["Ni^2+"], test: "dimethylglyoxime with ammonia: no red" },
  { ions: ["Mn^2+"], test: "lye with a drop of peroxide: no brown" },
  { ions: ["Ca^2+"], test: "ammonium oxalate: no cloud" },
  { ions: ["Ag+"], test: "dilute hydrochloric acid: no cloud" },
  { ions: ["Pb^2+", "Ba^2+"], test: "a drop of dilute sulfuric acid: no cloud" },
];

/** Tells anything, where the product itself leaves less. */
export const RESIDUE = "10 mL boiled down leave less than 1 mg";

/** The brown ring, where nothing that is washed out disturbs it. */
export const NITRATE = "brown ring with iron(II) sulfate over strong sulfuric acid: none";

/** Ions that colour strong sulfuric acid or iron(II) themselves, or that acid makes poison of: no brown ring beside them. */
export const NO_BROWN_RING: readonly string[] = ["I-", "Br-", "IO3-", "NO2-", "CrO4^2-", "Cr2O7^2-", "MnO4-", "ClO-", "ClO3-", "SCN-", "CN-", "[Fe(CN)6]^4-", "[Fe(CN)6]^3-", "S^2-", "HS-", "S2O3^2-"];

export const OWN_BASE =
  "the product gives this ion too: indicator paper as in pure water that some of the product was stirred with; acidify before testing for chloride or sulfate";
