// Standard atomic weights as the commission of IUPAC publishes them (2021 report with the 2024 revision), digit for digit:
// a value with its uncertainty, an interval, or none. Trailing zeros are significant. Row order is the atomic number.
import { columns } from "../../foundation/columns";
import { once } from "../../foundation/memo";
import type { SourceKey, YearSourceKey } from "./sources";

interface Common {
  readonly symbol: string;
  /** IUPAC name. */
  readonly name: string;
  readonly source: SourceKey;
}

interface Weighed extends Common {
  /** Five-figure working value, and its plus-minus. */
  readonly abridged: string;
  readonly abridgedUncertainty: string;
  /** Year of the last change, and the source of that year. */
  readonly year: number;
  readonly yearSource: YearSourceKey;
}

/** A single published value with the commission's plus-minus. */
interface ValueRow extends Weighed {
  readonly kind: "value";
  readonly value: string;
  readonly uncertainty: string;
}

/** A published interval: normal materials lie anywhere inside. The conventional value is for trade and teaching. */
interface IntervalRow extends Weighed {
  readonly kind: "interval";
  readonly lower: string;
  readonly upper: string;
  readonly conventional: string;
}

/** No characteristic terrestrial composition, so no weight; only the longest-lived nuclide can be named. */
interface NoneRow extends Common {
  readonly kind: "none";
  readonly longestLived: number;
}

export type AtomicWeightRow = ValueRow | IntervalRow | NoneRow;

export const ATOMIC_WEIGHTS = /* @__PURE__ */ once((): readonly AtomicWeightRow[] => [
  { symbol: "H", name: "hydrogen", kind: "interval", lower: "1.00784", upper: "1.00811", conventional: "1.008", abridged: "1.0080", abridgedUncertainty: "0.0002", year: 2009, source: "pac2022v94", yearSource: "pac2011v83" },
  { symbol: "He", name: "helium", kind: "value", value: "4.002602", uncertainty: "0.000002", abridged: "4.0026", abridgedUncertainty: "0.0001", year: 1983, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Li", name: "lithium", kind: "interval", lower: "6.938", upper: "6.997", conventional: "6.94", abridged: "6.94", abridgedUncertainty: "0.06", year: 2009, source: "pac2022v94", yearSource: "pac2011v83" },
  { symbol: "Be", name: "beryllium", kind: "value", value: "9.0121831", uncertainty: "0.0000005", abridged: "9.0122", abridgedUncertainty: "0.0001", year: 2013, source: "pac2022v94", yearSource: "pac2016v88" },
  { symbol: "B", name: "boron", kind: "interval", lower: "10.806", upper: "10.821", conventional: "10.81", abridged: "10.81", abridgedUncertainty: "0.02", year: 2009, source: "pac2022v94", yearSource: "pac2011v83" },
  { symbol: "C", name: "carbon", kind: "interval", lower: "12.0096", upper: "12.0116", conventional: "12.011", abridged: "12.011", abridgedUncertainty: "0.002", year: 2009, source: "pac2022v94", yearSource: "pac2011v83" },
  { symbol: "N", name: "nitrogen", kind: "interval", lower: "14.00643", upper: "14.00728", conventional: "14.007", abridged: "14.007", abridgedUncertainty: "0.001", year: 2009, source: "pac2022v94", yearSource: "pac2011v83" },
  { symbol: "O", name: "oxygen", kind: "interval", lower: "15.99903", upper: "15.99977", conventional: "15.999", abridged: "15.999", abridgedUncertainty: "0.001", year: 2009, source: "pac2022v94", yearSource: "pac2011v83" },
  { symbol: "F", name: "fluorine", kind: "value", value: "18.998403162", uncertainty: "0.000000005", abridged: "18.998", abridgedUncertainty: "0.001", year: 2021, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Ne", name: "neon", kind: "value", value: "20.1797", uncertainty: "0.0006", abridged: "20.180", abridgedUncertainty: "0.001", year: 1985, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Na", name: "sodium", kind: "value", value: "22.98976928", uncertainty: "0.00000002", abridged: "22.990", abridgedUncertainty: "0.001", year: 2005, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Mg", name: "magnesium", kind: "interval", lower: "24.304", upper: "24.307", conventional: "24.305", abridged: "24.305", abridgedUncertainty: "0.002", year: 2011, source: "pac2022v94", yearSource: "pac2013v85" },
  { symbol: "Al", name: "aluminium", kind: "value", value: "26.9815384", uncertainty: "0.0000003", abridged: "26.982", abridgedUncertainty: "0.001", year: 2017, source: "pac2022v94", yearSource: "ciaawNotice2018" },
  { symbol: "Si", name: "silicon", kind: "interval", lower: "28.084", upper: "28.086", conventional: "28.085", abridged: "28.085", abridgedUncertainty: "0.001", year: 2009, source: "pac2022v94", yearSource: "pac2011v83" },
  { symbol: "P", name: "phosphorus", kind: "value", value: "30.973761998", uncertainty: "0.000000005", abridged: "30.974", abridgedUncertainty: "0.001", year: 2013, source: "pac2022v94", yearSource: "pac2016v88" },
  { symbol: "S", name: "sulfur", kind: "interval", lower: "32.059", upper: "32.076", conventional: "32.06", abridged: "32.06", abridgedUncertainty: "0.02", year: 2009, source: "pac2022v94", yearSource: "pac2011v83" },
  { symbol: "Cl", name: "chlorine", kind: "interval", lower: "35.446", upper: "35.457", conventional: "35.45", abridged: "35.45", abridgedUncertainty: "0.01", year: 2009, source: "pac2022v94", yearSource: "pac2011v83" },
  { symbol: "Ar", name: "argon", kind: "interval", lower: "39.792", upper: "39.963", conventional: "39.95", abridged: "39.95", abridgedUncertainty: "0.16", year: 2017, source: "pac2022v94", yearSource: "ciaawNotice2018" },
  { symbol: "K", name: "potassium", kind: "value", value: "39.0983", uncertainty: "0.0001", abridged: "39.098", abridgedUncertainty: "0.001", year: 1979, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Ca", name: "calcium", kind: "value", value: "40.078", uncertainty: "0.004", abridged: "40.078", abridgedUncertainty: "0.004", year: 1983, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Sc", name: "scandium", kind: "value", value: "44.955907", uncertainty: "0.000004", abridged: "44.956", abridgedUncertainty: "0.001", year: 2021, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Ti", name: "titanium", kind: "value", value: "47.867", uncertainty: "0.001", abridged: "47.867", abridgedUncertainty: "0.001", year: 1993, source: "pac2022v94", yearSource: "jpcrd1995v24" },
  { symbol: "V", name: "vanadium", kind: "value", value: "50.9415", uncertainty: "0.0001", abridged: "50.942", abridgedUncertainty: "0.001", year: 1977, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Cr", name: "chromium", kind: "value", value: "51.9961", uncertainty: "0.0006", abridged: "51.996", abridgedUncertainty: "0.001", year: 1983, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Mn", name: "manganese", kind: "value", value: "54.938043", uncertainty: "0.000002", abridged: "54.938", abridgedUncertainty: "0.001", year: 2017, source: "pac2022v94", yearSource: "ciaawNotice2018" },
  { symbol: "Fe", name: "iron", kind: "value", value: "55.845", uncertainty: "0.002", abridged: "55.845", abridgedUncertainty: "0.002", year: 1993, source: "pac2022v94", yearSource: "jpcrd1995v24" },
  { symbol: "Co", name: "cobalt", kind: "value", value: "58.933194", uncertainty: "0.000003", abridged: "58.933", abridgedUncertainty: "0.001", year: 2017, source: "pac2022v94", yearSource: "ciaawNotice2018" },
  { symbol: "Ni", name: "nickel", kind: "value", value: "58.6934", uncertainty: "0.0004", abridged: "58.693", abridgedUncertainty: "0.001", year: 2007, source: "pac2022v94", yearSource: "pac2009v81" },
  { symbol: "Cu", name: "copper", kind: "value", value: "63.546", uncertainty: "0.003", abridged: "63.546", abridgedUncertainty: "0.003", year: 1969, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Zn", name: "zinc", kind: "value", value: "65.38", uncertainty: "0.02", abridged: "65.38", abridgedUncertainty: "0.02", year: 2007, source: "pac2022v94", yearSource: "pac2009v81" },
  { symbol: "Ga", name: "gallium", kind: "value", value: "69.723", uncertainty: "0.001", abridged: "69.723", abridgedUncertainty: "0.001", year: 1987, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Ge", name: "germanium", kind: "value", value: "72.630", uncertainty: "0.008", abridged: "72.630", abridgedUncertainty: "0.008", year: 2011, source: "pac2022v94", yearSource: "pac2013v85" },
  { symbol: "As", name: "arsenic", kind: "value", value: "74.921595", uncertainty: "0.000006", abridged: "74.922", abridgedUncertainty: "0.001", year: 2013, source: "pac2022v94", yearSource: "pac2016v88" },
  { symbol: "Se", name: "selenium", kind: "value", value: "78.971", uncertainty: "0.008", abridged: "78.971", abridgedUncertainty: "0.008", year: 2013, source: "pac2022v94", yearSource: "pac2016v88" },
  { symbol: "Br", name: "bromine", kind: "interval", lower: "79.901", upper: "79.907", conventional: "79.904", abridged: "79.904", abridgedUncertainty: "0.003", year: 2011, source: "pac2022v94", yearSource: "pac2013v85" },
  { symbol: "Kr", name: "krypton", kind: "value", value: "83.798", uncertainty: "0.002", abridged: "83.798", abridgedUncertainty: "0.002", year: 2001, source: "pac2022v94", yearSource: "pac2003v75" },
  { symbol: "Rb", name: "rubidium", kind: "value", value: "85.4678", uncertainty: "0.0003", abridged: "85.468", abridgedUncertainty: "0.001", year: 1969, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Sr", name: "strontium", kind: "value", value: "87.62", uncertainty: "0.01", abridged: "87.62", abridgedUncertainty: "0.01", year: 1969, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Y", name: "yttrium", kind: "value", value: "88.905838", uncertainty: "0.000002", abridged: "88.906", abridgedUncertainty: "0.001", year: 2021, source: "pac2022v94", yearSource: "pac2022v94" },
  { symbol: "Zr", name: "zirconium", kind: "value", value: "91.222", uncertainty: "0.003", abridged: "91.222", abridgedUncertainty: "0.003", year: 2024, source: "ciaaw2024", yearSource: "ciaaw2024" },
  { symbol: "Nb", name: "niobium", kind: "value", value: "92.90637", uncertainty: "0.00001", abridged: "92.906", abridgedUncertainty: "0.001", year: 2017, source: "pac2022v94", yearSource: "ciaawNotice2018" },
  { symbol: "Mo", name: "molybdenum", kind: "value", value: "95.95", uncertainty: "0.01", abridged: "95.95", abridgedUncertainty: "0.01", year: 2013, source: "pac2022v94", yearSource: "pac2016v88" },
  { symbol: "Tc", name: "technetium", kind: "none", longestLived: 97, source: "nubase2020" },
  { symbol: "Ru", name: "ruthenium", kind: "value", value: "101.07", uncertainty: "0.02", abridged: "101.07", abridgedUncertainty: "0.02", year: 1983, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Rh", name: "rhodium", kind: "value", value: "102.90549", uncertainty: "0.00002", abridged: "102.91", abridgedUncertainty: "0.01", year: 2017, source: "pac2022v94", yearSource: "ciaawNotice2018" },
  { symbol: "Pd", name: "palladium", kind: "value", value: "106.42", uncertainty: "0.01", abridged: "106.42", abridgedUncertainty: "0.01", year: 1979, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Ag", name: "silver", kind: "value", value: "107.8682", uncertainty: "0.0002", abridged: "107.87", abridgedUncertainty: "0.01", year: 1985, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Cd", name: "cadmium", kind: "value", value: "112.414", uncertainty: "0.004", abridged: "112.41", abridgedUncertainty: "0.01", year: 2013, source: "pac2022v94", yearSource: "pac2016v88" },
  { symbol: "In", name: "indium", kind: "value", value: "114.818", uncertainty: "0.001", abridged: "114.82", abridgedUncertainty: "0.01", year: 2011, source: "pac2022v94", yearSource: "pac2013v85" },
  { symbol: "Sn", name: "tin", kind: "value", value: "118.710", uncertainty: "0.007", abridged: "118.71", abridgedUncertainty: "0.01", year: 1983, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Sb", name: "antimony", kind: "value", value: "121.760", uncertainty: "0.001", abridged: "121.76", abridgedUncertainty: "0.01", year: 1993, source: "pac2022v94", yearSource: "jpcrd1995v24" },
  { symbol: "Te", name: "tellurium", kind: "value", value: "127.60", uncertainty: "0.03", abridged: "127.60", abridgedUncertainty: "0.03", year: 1969, source: "pac2022v94", yearSource: "memory" },
  { symbol: "I", name: "iodine", kind: "value", value: "126.90447", uncertainty: "0.00003", abridged: "126.90", abridgedUncertainty: "0.01", year: 1985, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Xe", name: "xenon", kind: "value", value: "131.293", uncertainty: "0.006", abridged: "131.29", abridgedUncertainty: "0.01", year: 1999, source: "pac2022v94", yearSource: "jpcrd2001v30" },
  { symbol: "Cs", name: "caesium", kind: "value", value: "132.90545196", uncertainty: "0.00000006", abridged: "132.91", abridgedUncertainty: "0.01", year: 2013, source: "pac2022v94", yearSource: "pac2016v88" },
  { symbol: "Ba", name: "barium", kind: "value", value: "137.327", uncertainty: "0.007", abridged: "137.33", abridgedUncertainty: "0.01", year: 1985, source: "pac2022v94", yearSource: "memory" },
  { symbol: "La", name: "lanthanum", kind: "value", value: "138.90547", uncertainty: "0.00007", abridged: "138.91", abridgedUncertainty: "0.01", year: 2005, source: "pac2022v94", yearSource: "pac2006v78" },
  { symbol: "Ce", name: "cerium", kind: "value", value: "140.116", uncertainty: "0.001", abridged: "140.12", abridgedUncertainty: "0.01", year: 1995, source: "pac2022v94", yearSource: "jpcrd1997v26" },
  { symbol: "Pr", name: "praseodymium", kind: "value", value: "140.90766", uncertainty: "0.00001", abridged: "140.91", abridgedUncertainty: "0.01", year: 2017, source: "pac2022v94", yearSource: "ciaawNotice2018" },
  { symbol: "Nd", name: "neodymium", kind: "value", value: "144.242", uncertainty: "0.003", abridged: "144.24", abridgedUncertainty: "0.01", year: 2005, source: "pac2022v94", yearSource: "pac2006v78" },
  { symbol: "Pm", name: "promethium", kind: "none", longestLived: 145, source: "nubase2020" },
  { symbol: "Sm", name: "samarium", kind: "value", value: "150.36", uncertainty: "0.02", abridged: "150.36", abridgedUncertainty: "0.02", year: 2005, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Eu", name: "europium", kind: "value", value: "151.964", uncertainty: "0.001", abridged: "151.96", abridgedUncertainty: "0.01", year: 1995, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Gd", name: "gadolinium", kind: "value", value: "157.249", uncertainty: "0.002", abridged: "157.25", abridgedUncertainty: "0.01", year: 2024, source: "ciaaw2024", yearSource: "ciaaw2024" },
  { symbol: "Tb", name: "terbium", kind: "value", value: "158.925354", uncertainty: "0.000007", abridged: "158.93", abridgedUncertainty: "0.01", year: 2021, source: "pac2022v94", yearSource: "pac2022v94" },
  { symbol: "Dy", name: "dysprosium", kind: "value", value: "162.500", uncertainty: "0.001", abridged: "162.50", abridgedUncertainty: "0.01", year: 2001, source: "pac2022v94", yearSource: "pac2003v75" },
  { symbol: "Ho", name: "holmium", kind: "value", value: "164.930329", uncertainty: "0.000005", abridged: "164.93", abridgedUncertainty: "0.01", year: 2021, source: "pac2022v94", yearSource: "pac2022v94" },
  { symbol: "Er", name: "erbium", kind: "value", value: "167.259", uncertainty: "0.003", abridged: "167.26", abridgedUncertainty: "0.01", year: 1999, source: "pac2022v94", yearSource: "jpcrd2001v30" },
  { symbol: "Tm", name: "thulium", kind: "value", value: "168.934219", uncertainty: "0.000005", abridged: "168.93", abridgedUncertainty: "0.01", year: 2021, source: "pac2022v94", yearSource: "pac2022v94" },
  { symbol: "Yb", name: "ytterbium", kind: "value", value: "173.045", uncertainty: "0.010", abridged: "173.05", abridgedUncertainty: "0.02", year: 2015, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Lu", name: "lutetium", kind: "value", value: "174.96669", uncertainty: "0.00005", abridged: "174.97", abridgedUncertainty: "0.01", year: 2024, source: "ciaaw2024", yearSource: "ciaaw2024" },
  { symbol: "Hf", name: "hafnium", kind: "value", value: "178.486", uncertainty: "0.006", abridged: "178.49", abridgedUncertainty: "0.01", year: 2019, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Ta", name: "tantalum", kind: "value", value: "180.94788", uncertainty: "0.00002", abridged: "180.95", abridgedUncertainty: "0.01", year: 2005, source: "pac2022v94", yearSource: "memory" },
  { symbol: "W", name: "tungsten", kind: "value", value: "183.84", uncertainty: "0.01", abridged: "183.84", abridgedUncertainty: "0.01", year: 1991, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Re", name: "rhenium", kind: "value", value: "186.207", uncertainty: "0.001", abridged: "186.21", abridgedUncertainty: "0.01", year: 1973, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Os", name: "osmium", kind: "value", value: "190.23", uncertainty: "0.03", abridged: "190.23", abridgedUncertainty: "0.03", year: 1991, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Ir", name: "iridium", kind: "value", value: "192.217", uncertainty: "0.002", abridged: "192.22", abridgedUncertainty: "0.01", year: 2017, source: "pac2022v94", yearSource: "ciaawNotice2018" },
  { symbol: "Pt", name: "platinum", kind: "value", value: "195.084", uncertainty: "0.009", abridged: "195.08", abridgedUncertainty: "0.02", year: 2005, source: "pac2022v94", yearSource: "pac2006v78" },
  { symbol: "Au", name: "gold", kind: "value", value: "196.966570", uncertainty: "0.000004", abridged: "196.97", abridgedUncertainty: "0.01", year: 2017, source: "pac2022v94", yearSource: "ciaawNotice2018" },
  { symbol: "Hg", name: "mercury", kind: "value", value: "200.592", uncertainty: "0.003", abridged: "200.59", abridgedUncertainty: "0.01", year: 2011, source: "pac2022v94", yearSource: "pac2013v85" },
  { symbol: "Tl", name: "thallium", kind: "interval", lower: "204.382", upper: "204.385", conventional: "204.38", abridged: "204.38", abridgedUncertainty: "0.01", year: 2009, source: "pac2022v94", yearSource: "pac2011v83" },
  { symbol: "Pb", name: "lead", kind: "interval", lower: "206.14", upper: "207.94", conventional: "207.2", abridged: "207.2", abridgedUncertainty: "1.1", year: 2020, source: "pac2022v94", yearSource: "memory" },
  { symbol: "Bi", name: "bismuth", kind: "value", value: "208.98040", uncertainty: "0.00001", abridged: "208.98", abridgedUncertainty: "0.01", year: 2005, source: "pac2022v94", yearSource: "pac2006v78" },
  { symbol: "Po", name: "polonium", kind: "none", longestLived: 209, source: "nubase2020" },
  { symbol: "At", name: "astatine", kind: "none", longestLived: 210, source: "nubase2020" },
  { symbol: "Rn", name: "radon", kind: "none", longestLived: 222, source: "nubase2020" },
  { symbol: "Fr", name: "francium", kind: "none", longestLived: 223, source: "nubase2020" },
  { symbol: "Ra", name: "radium", kind: "none", longestLived: 226, source: "nubase2020" },
  { symbol: "Ac", name: "actinium", kind: "none", longestLived: 227, source: "nubase2020" },
  { symbol: "Th", name: "thorium", kind: "value", value: "232.0377", uncertainty: "0.0004", abridged: "232.04", abridgedUncertainty: "0.01", year: 2013, source: "pac2022v94", yearSource: "pac2016v88" },
  { symbol: "Pa", name: "protactinium", kind: "value", value: "231.03588", uncertainty: "0.00001", abridged: "231.04", abridgedUncertainty: "0.01", year: 2017, source: "pac2022v94", yearSource: "ciaawNotice2018" },
  { symbol: "U", name: "uranium", kind: "value", value: "238.02891", uncertainty: "0.00003", abridged: "238.03", abridgedUncertainty: "0.01", year: 1999, source: "pac2022v94", yearSource: "jpcrd2001v30" },
  { symbol: "Np", name: "neptunium", kind: "none", longestLived: 237, source: "nubase2020" },
  { symbol: "Pu", name: "plutonium", kind: "none", longestLived: 244, source: "nubase2020" },
  { symbol: "Am", name: "americium", kind: "none", longestLived: 243, source: "nubase2020" },
  { symbol: "Cm", name: "curium", kind: "none", longestLived: 247, source: "nubase2020" },
  { symbol: "Bk", name: "berkelium", kind: "none", longestLived: 247, source: "nubase2020" },
  { symbol: "Cf", name: "californium", kind: "none", longestLived: 251, source: "nubase2020" },
  { symbol: "Es", name: "einsteinium", kind: "none", longestLived: 252, source: "nubase2020" },
  { symbol: "Fm", name: "fermium", kind: "none", longestLived: 257, source: "nubase2020" },
  { symbol: "Md", name: "mendelevium", kind: "none", longestLived: 258, source: "nubase2020" },
  { symbol: "No", name: "nobelium", kind: "none", longestLived: 259, source: "nubase2020" },
  { symbol: "Lr", name: "lawrencium", kind: "none", longestLived: 266, source: "nubase2020" },
  { symbol: "Rf", name: "rutherfordium", kind: "none", longestLived: 267, source: "nubase2020" },
  { symbol: "Db", name: "dubnium", kind: "none", longestLived: 268, source: "nubase2020" },
  { symbol: "Sg", name: "seaborgium", kind: "none", longestLived: 269, source: "nubase2020" },
  { symbol: "Bh", name: "bohrium", kind: "none", longestLived: 270, source: "nubase2020" },
  { symbol: "Hs", name: "hassium", kind: "none", longestLived: 269, source: "nubase2020" },
  { symbol: "Mt", name: "meitnerium", kind: "none", longestLived: 277, source: "nubase2020" },
  { symbol: "Ds", name: "darmstadtium", kind: "none", longestLived: 282, source: "nubase2020" },
  { symbol: "Rg", name: "roentgenium", kind: "none", longestLived: 282, source: "nubase2020" },
  { symbol: "Cn", name: "copernicium", kind: "none", longestLived: 286, source: "nubase2020" },
  { symbol: "Nh", name: "nihonium", kind: "none", longestLived: 286, source: "nubase2020" },
  { symbol: "Fl", name: "flerovium", kind: "none", longestLived: 290, source: "nubase2020" },
  { symbol: "Mc", name: "moscovium", kind: "none", longestLived: 290, source: "nubase2020" },
  { symbol: "Lv", name: "livermorium", kind: "none", longestLived: 293, source: "nubase2020" },
  { symbol: "Ts", name: "tennessine", kind: "none", longestLived: 294, source: "nubase2020" },
  { symbol: "Og", name: "oganesson", kind: "none", longestLived: 295, source: "nubase2020" },
]);

/**
 * What a molar mass is made from: all but the history of a weight, and what stands in standard-weights.ts already, which are the
 * symbols and the conventional values and the single ones.
 */
export const WEIGHTS = /* @__PURE__ */ columns(ATOMIC_WEIGHTS, ["name", "kind", "lower", "upper", "uncertainty", "abridged", "abridgedUncertainty", "longestLived", "source"]);

export type WeightRow = ReturnType<typeof WEIGHTS>[number];
