// The words elements lend to names: -ide and -ate stems, usual charges of cations, older -ous and -ic adjectives. A row's
// `source` holds for name and stems (Red Book 2005: Table IX, number from memory).
import { columns } from "../../foundation/columns";
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** How an element appears in names. */
export interface ElementWord {
  readonly symbol: string;
  readonly name: string;
  /** Name of the monatomic anion. */
  readonly ide?: string;
  /** Older names of that anion. */
  readonly ideAlso?: readonly string[];
  /** Size of its charge. */
  readonly ideCharge?: number;
  /** Name of the element as the central atom of an anion. */
  readonly ate?: string;
  /** Usual charges as a cation, commonest first; present for metals only. */
  readonly charges?: readonly number[];
  /** One charge only, so that names leave it out. */
  readonly fixed?: true;
  /** Older adjectives by charge. */
  readonly older?: Readonly<Record<number, string>>;
  /** Other spellings and Latin names. */
  readonly also?: readonly string[];
  readonly source: SourceKey;
}

// Charges, `fixed`, `ideAlso`, older adjectives and other spellings rest on memory, whatever the source of the row.
export const ELEMENT_WORDS = /* @__PURE__ */ once((): readonly ElementWord[] => [
  { symbol: "H", name: "hydrogen", ide: "hydride", ideCharge: 1, source: "redBook2005" },
  { symbol: "He", name: "helium", source: "redBook2005" },
  { symbol: "Li", name: "lithium", ate: "lithate", charges: [1], fixed: true, source: "redBook2005" },
  { symbol: "Be", name: "beryllium", ate: "beryllate", charges: [2], fixed: true, source: "redBook2005" },
  { symbol: "B", name: "boron", ide: "boride", ideCharge: 3, ate: "borate", source: "redBook2005" },
  { symbol: "C", name: "carbon", ide: "carbide", ideCharge: 4, ate: "carbonate", source: "redBook2005" },
  { symbol: "N", name: "nitrogen", ide: "nitride", ideCharge: 3, ate: "nitrate", source: "redBook2005" },
  { symbol: "O", name: "oxygen", ide: "oxide", ideCharge: 2, source: "redBook2005" },
  { symbol: "F", name: "fluorine", ide: "fluoride", ideCharge: 1, source: "redBook2005" },
  { symbol: "Ne", name: "neon", source: "redBook2005" },
  { symbol: "Na", name: "sodium", charges: [1], fixed: true, also: ["natrium"], source: "redBook2005" },
  { symbol: "Mg", name: "magnesium", ate: "magnesate", charges: [2], fixed: true, source: "redBook2005" },
  { symbol: "Al", name: "aluminium", ate: "aluminate", charges: [3], fixed: true, also: ["aluminum"], source: "redBook2005" },
  { symbol: "Si", name: "silicon", ide: "silicide", ideCharge: 4, ate: "silicate", source: "redBook2005" },
  { symbol: "P", name: "phosphorus", ide: "phosphide", ideCharge: 3, ate: "phosphate", source: "redBook2005" },
  { symbol: "S", name: "sulfur", ide: "sulfide", ideAlso: ["sulfuret"], ideCharge: 2, ate: "sulfate", also: ["sulphur"], source: "redBook2005" },
  { symbol: "Cl", name: "chlorine", ide: "chloride", ideAlso: ["muriate"], ideCharge: 1, ate: "chlorate", source: "redBook2005" },
  { symbol: "Ar", name: "argon", source: "redBook2005" },
  { symbol: "K", name: "potassium", charges: [1], fixed: true, also: ["kalium"], source: "redBook2005" },
  { symbol: "Ca", name: "calcium", ate: "calcate", charges: [2], fixed: true, source: "redBook2005" },
  { symbol: "Sc", name: "scandium", ate: "scandate", charges: [3], fixed: true, source: "redBook2005" },
  { symbol: "Ti", name: "titanium", ate: "titanate", charges: [4, 3, 2], older: { 3: "titanous", 4: "titanic" }, source: "redBook2005" },
  { symbol: "V", name: "vanadium", ate: "vanadate", charges: [5, 4, 3, 2], older: { 3: "vanadous" }, source: "redBook2005" },
  { symbol: "Cr", name: "chromium", ate: "chromate", charges: [3, 6, 2, 4], older: { 2: "chromous", 3: "chromic" }, source: "redBook2005" },
  { symbol: "Mn", name: "manganese", ate: "manganate", charges: [2, 4, 3, 7, 6], older: { 2: "manganous", 3: "manganic" }, source: "redBook2005" },
  { symbol: "Fe", name: "iron", ate: "ferrate", charges: [3, 2], older: { 2: "ferrous", 3: "ferric" }, also: ["ferrum"], source: "redBook2005" },
  { symbol: "Co", name: "cobalt", ate: "cobaltate", charges: [2, 3], older: { 2: "cobaltous", 3: "cobaltic" }, source: "redBook2005" },
  { symbol: "Ni", name: "nickel", ate: "nickelate", charges: [2, 3], older: { 2: "nickelous", 3: "nickelic" }, source: "redBook2005" },
  { symbol: "Cu", name: "copper", ate: "cuprate", charges: [2, 1], older: { 1: "cuprous", 2: "cupric" }, also: ["cuprum"], source: "redBook2005" },
  { symbol: "Zn", name: "zinc", ate: "zincate", charges: [2], fixed: true, source: "redBook2005" },
  { symbol: "Ga", name: "gallium", ate: "gallate", charges: [3, 1], source: "redBook2005" },
  { symbol: "Ge", name: "germanium", ide: "germide", ideCharge: 4, ate: "germanate", charges: [4, 2], source: "redBook2005" },
  { symbol: "As", name: "arsenic", ide: "arsenide", ideCharge: 3, ate: "arsenate", source: "redBook2005" },
  { symbol: "Se", name: "selenium", ide: "selenide", ideCharge: 2, ate: "selenate", source: "redBook2005" },
  { symbol: "Br", name: "bromine", ide: "bromide", ideCharge: 1, ate: "bromate", source: "redBook2005" },
  { symbol: "Kr", name: "krypton", source: "redBook2005" },
  { symbol: "Rb", name: "rubidium", charges: [1], fixed: true, source: "redBook2005" },
  { symbol: "Sr", name: "strontium", charges: [2], fixed: true, source: "redBook2005" },
  { symbol: "Y", name: "yttrium", ate: "yttrate", charges: [3], fixed: true, source: "redBook2005" },
  { symbol: "Zr", name: "zirconium", ate: "zirconate", charges: [4], source: "redBook2005" },
  { symbol: "Nb", name: "niobium", ate: "niobate", charges: [5, 3], source: "redBook2005" },
  { symbol: "Mo", name: "molybdenum", ate: "molybdate", charges: [6, 4, 3, 5, 2], source: "redBook2005" },
  { symbol: "Tc", name: "technetium", ate: "technetate", charges: [7, 4], source: "redBook2005" },
  { symbol: "Ru", name: "ruthenium", ate: "ruthenate", charges: [3, 4, 8], source: "redBook2005" },
  { symbol: "Rh", name: "rhodium", ate: "rhodate", charges: [3], source: "redBook2005" },
  { symbol: "Pd", name: "palladium", ate: "palladate", charges: [2, 4], older: { 2: "palladous" }, source: "redBook2005" },
  { symbol: "Ag", name: "silver", ate: "argentate", charges: [1, 2], older: { 1: "argentous", 2: "argentic" }, also: ["argentum"], source: "redBook2005" },
  { symbol: "Cd", name: "cadmium", ate: "cadmate", charges: [2], fixed: true, source: "redBook2005" },
  { symbol: "In", name: "indium", ate: "indate", charges: [3, 1], source: "redBook2005" },
  { symbol: "Sn", name: "tin", ate: "stannate", charges: [4, 2], older: { 2: "stannous", 4: "stannic" }, also: ["stannum"], source: "redBook2005" },
  { symbol: "Sb", name: "antimony", ide: "antimonide", ideCharge: 3, ate: "antimonate", charges: [3, 5], older: { 3: "antimonous", 5: "antimonic" }, also: ["stibium"], source: "redBook2005" },
  { symbol: "Te", name: "tellurium", ide: "telluride", ideCharge: 2, ate: "tellurate", source: "redBook2005" },
  { symbol: "I", name: "iodine", ide: "iodide", ideCharge: 1, ate: "iodate", source: "redBook2005" },
  { symbol: "Xe", name: "xenon", ate: "xenonate", source: "redBook2005" },
  { symbol: "Cs", name: "caesium", charges: [1], fixed: true, also: ["cesium"], source: "redBook2005" },
  { symbol: "Ba", name: "barium", charges: [2], fixed: true, source: "redBook2005" },
  { symbol: "La", name: "lanthanum", ate: "lanthanate", charges: [3], fixed: true, source: "redBook2005" },
  { symbol: "Ce", name: "cerium", ate: "cerate", charges: [3, 4], older: { 3: "cerous", 4: "ceric" }, source: "redBook2005" },
  { symbol: "Pr", name: "praseodymium", charges: [3, 4], source: "redBook2005" },
  { symbol: "Nd", name: "neodymium", charges: [3], fixed: true, source: "redBook2005" },
  { symbol: "Pm", name: "promethium", charges: [3], fixed: true, source: "redBook2005" },
  { symbol: "Sm", name: "samarium", charges: [3, 2], source: "redBook2005" },
  { symbol: "Eu", name: "europium", charges: [3, 2], source: "redBook2005" },
  { symbol: "Gd", name: "gadolinium", charges: [3], fixed: true, source: "redBook2005" },
  { symbol: "Tb", name: "terbium", charges: [3, 4], source: "redBook2005" },
  { symbol: "Dy", name: "dysprosium", charges: [3], fixed: true, source: "redBook2005" },
  { symbol: "Ho", name: "holmium", charges: [3], fixed: true, source: "redBook2005" },
  { symbol: "Er", name: "erbium", charges: [3], fixed: true, source: "redBook2005" },
  { symbol: "Tm", name: "thulium", charges: [3, 2], source: "redBook2005" },
  { symbol: "Yb", name: "ytterbium", charges: [3, 2], source: "redBook2005" },
  { symbol: "Lu", name: "lutetium", charges: [3], fixed: true, source: "redBook2005" },
  { symbol: "Hf", name: "hafnium", ate: "hafnate", charges: [4], source: "redBook2005" },
  { symbol: "Ta", name: "tantalum", ate: "tantalate", charges: [5], source: "redBook2005" },
  { symbol: "W", name: "tungsten", ate: "tungstate", charges: [6, 4, 5], also: ["wolfram"], source: "redBook2005" },
  { symbol: "Re", name: "rhenium", ate: "rhenate", charges: [7, 4, 6], source: "redBook2005" },
  { symbol: "Os", name: "osmium", ate: "osmate", charges: [4, 8, 3], source: "redBook2005" },
  { symbol: "Ir", name: "iridium", ate: "iridate", charges: [3, 4], source: "redBook2005" },
  { symbol: "Pt", name: "platinum", ate: "platinate", charges: [2, 4, 6], older: { 2: "platinous", 4: "platinic" }, source: "redBook2005" },
  { symbol: "Au", name: "gold", ate: "aurate", charges: [3, 1], older: { 1: "aurous", 3: "auric" }, also: ["aurum"], source: "redBook2005" },
  { symbol: "Hg", name: "mercury", ate: "mercurate", charges: [2], older: { 1: "mercurous", 2: "mercuric" }, also: ["quicksilver", "hydrargyrum"], source: "redBook2005" },
  { symbol: "Tl", name: "thallium", ate: "thallate", charges: [1, 3], older: { 1: "thallous", 3: "thallic" }, source: "redBook2005" },
  { symbol: "Pb", name: "lead", ate: "plumbate", charges: [2, 4], older: { 2: "plumbous", 4: "plumbic" }, also: ["plumbum"], source: "redBook2005" },
  { symbol: "Bi", name: "bismuth", ide: "bismuthide", ideCharge: 3, ate: "bismuthate", charges: [3, 5], older: { 3: "bismuthous" }, source: "redBook2005" },
  { symbol: "Po", name: "polonium", ide: "polonide", ideCharge: 2, charges: [4, 2], source: "redBook2005" },
  { symbol: "At", name: "astatine", ide: "astatide", ideCharge: 1, source: "redBook2005" },
  { symbol: "Rn", name: "radon", source: "redBook2005" },
  { symbol: "Fr", name: "francium", charges: [1], fixed: true, source: "redBook2005" },
  { symbol: "Ra", name: "radium", charges: [2], fixed: true, source: "redBook2005" },
  { symbol: "Ac", name: "actinium", charges: [3], fixed: true, source: "redBook2005" },
  { symbol: "Th", name: "thorium", ate: "thorate", charges: [4], source: "redBook2005" },
  { symbol: "Pa", name: "protactinium", charges: [5, 4], source: "redBook2005" },
  { symbol: "U", name: "uranium", ate: "uranate", charges: [6, 4, 3, 5], older: { 4: "uranous" }, source: "redBook2005" },
  { symbol: "Np", name: "neptunium", charges: [5, 4], source: "redBook2005" },
  { symbol: "Pu", name: "plutonium", charges: [4, 3], source: "redBook2005" },
  { symbol: "Am", name: "americium", charges: [3], source: "redBook2005" },
  { symbol: "Cm", name: "curium", charges: [3], source: "redBook2005" },
  { symbol: "Bk", name: "berkelium", charges: [3], source: "redBook2005" },
  { symbol: "Cf", name: "californium", charges: [3], source: "redBook2005" },
  { symbol: "Es", name: "einsteinium", charges: [3], source: "redBook2005" },
  { symbol: "Fm", name: "fermium", charges: [3], source: "redBook2005" },
  { symbol: "Md", name: "mendelevium", charges: [3], source: "redBook2005" },
  { symbol: "No", name: "nobelium", charges: [2], source: "redBook2005" },
  { symbol: "Lr", name: "lawrencium", charges: [3], source: "redBook2005" },
]);

/** Without what only names are made of: to read a formula as ions takes the charges. */
export const ELEMENT_CHARGES = /* @__PURE__ */ columns(ELEMENT_WORDS, ["symbol", "name", "ide", "ideCharge", "charges", "fixed", "source"]);

/** An element as the reader of ions knows it. */
export type ElementCharges = ReturnType<typeof ELEMENT_CHARGES>[number];
