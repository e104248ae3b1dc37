// Fuzzing of the readers of a person's text: texts made by grammars and then damaged. Whatever comes in, a reader gives a
// value or one of the library's own errors, quickly; what is read prints and reads back as the same.
//
//   npx tsx --tsconfig test/tsconfig.json test/tools/fuzz.ts [inputs in millions, 10] [seed]
//
// Prints the seed, so that a find can be seen again; a find belongs into a test of its reader.
import {
  attempt,
  balance,
  checkRecipe,
  formulaOf,
  identify,
  isPreparativeError,
  parseEquation,
  parseFormula,
  quantity,
} from "preparative";
import { seeded } from "./random";

// the library makes errors by the million here; nobody reads where
Error.stackTraceLimit = 0;

const millions = Number(process.argv[2] ?? 10);
const seed = Number(process.argv[3] ?? Date.now() % 1_000_000);
const random = seeded(seed);
const below = (n: number): number => Math.floor(random() * n);
const pick = <T>(list: readonly T[]): T => list[below(list.length)]!;
const times = (most: number, make: () => string): string => Array.from({ length: below(most + 1) }, make).join("");

const ELEMENTS = "H C N O F Na Mg Al Si P S Cl K Ca Cr Mn Fe Co Ni Cu Zn As Br Ag Sn I Ba Hg Pb U D".split(" ");
const DIGITS = ["", "", "", "", "2", "2", "2", "3", "3", "4", "6", "10", "₂", "₁₂", "0.5", "0"];
const GROUPS = ["SO4", "CO3", "OH", "NH4", "NO3", "PO4", "CH3COO", "CN", "H2O", "NH3", "C2O4"];

const bracketed = (depth: number): string => {
  const inside = part(depth) + times(2, () => part(depth));
  return random() < 0.5 ? `(${inside})` : `[${inside}]`;
};
const part = (depth = 3): string =>
  pick([
    () => pick(ELEMENTS),
    () => pick(ELEMENTS),
    () => pick(GROUPS),
    () => (depth === 0 ? pick(GROUPS) : bracketed(depth - 1)),
  ])() + pick(DIGITS);
const formulaText = (): string =>
  pick(["", "", "", "", "", "", "", "2", "3", "^{13}"]) +
  part() +
  times(3, () => part()) +
  pick(["", "", "", "", "·5H2O", ".7H2O", " · 2 H2O", "·½H2O", "·"]) +
  pick(["", "", "", "", "", "^2+", "-", "²⁻", "(aq)", "(s)", "↓", "2+"]);

const FIGURES = [
  "0",
  "1",
  "12.5",
  "1e-3",
  "1,5",
  "1 000",
  ".5",
  "-3",
  "+2",
  "12.5(2)",
  "1.0 ± 0.1",
  "[1, 2]",
  "½",
  "1/3",
  "∞",
  "1e400",
  "１２",
  "1_000",
];
const UNITS =
  "g kg mg mL L mol mmol/L g/mL °C K % ppm kPa atm EUR EUR/kg J/(g K) g·mol-1 oz cup lb µg μg N M % w/w".split(" ");
const quantityText = (): string =>
  pick(FIGURES) +
  pick([" ", "", "\u00a0", "\u2009", "  "]) +
  pick(UNITS) +
  pick(["", "", "", " ± 0.1 g", " ± 2 %", "/100 g", "²", "^-1", " (rectangular)"]);

const equationText = (): string => {
  const side = (): string => {
    const term = (): string => pick(["", "", "", "", "2 ", "3 ", "1/2 ", "0 "]) + formulaText();
    return [term(), ...Array.from({ length: below(3) }, term)].join(pick([" + ", " + ", " + ", "+", " +", " ＋ "]));
  };
  return side() + pick([" -> ", " -> ", " = ", " → ", " ⇌ ", " <=> ", " ", "->->", "<-"]) + side();
};

const WORDS =
  "copper iron(II) zinc sodium potassium ammonium sulfate sulphate chloride carbonate basic hydroxide oxide acid nitric hydrate pentahydrate di tri bis(sulfate) soda washing vitriol blue of salt pool shock vinegar Epsom hydrogen peroxide ferric lead(IV) hexacyanoferrate(II)".split(
    " ",
  );
const nameText = (): string => Array.from({ length: 1 + below(5) }, () => pick(WORDS)).join(pick([" ", " ", "-", ""]));

const STRANGE = [
  "\u0000",
  "\u202e",
  "\ud800",
  "😀",
  "Ｈ",
  "О",
  "`",
  "\\",
  "$",
  "<sub>",
  "\n",
  "\t",
  "^",
  "{",
  "}",
  "_",
  "—",
  "'",
  '"',
];

/** A text with a character gone, doubled, exchanged or strange. */
function damaged(text: string): string {
  if (random() < 0.5) return text;
  const at = below(text.length + 1);
  return pick([
    () => text.slice(0, at) + text.slice(at + 1),
    () => text.slice(0, at) + text.slice(at),
    () => text.slice(0, at) + pick(STRANGE) + text.slice(at),
    () => text.slice(0, at),
    () => text.slice(0, at) + text.slice(below(text.length + 1)),
    () => text + text,
  ])();
}

interface Reader {
  readonly name: string;
  /** Share of the inputs. */
  readonly share: number;
  readonly make: () => string;
  /** Reads, and throws a plain Error where what was read does not read back as the same. */
  readonly read: (text: string) => void;
}

function same(first: string, second: string, text: string): void {
  if (first !== second) throw new Error(`${JSON.stringify(text)} prints ${first} and reads back as ${second}`);
}

const READERS: readonly Reader[] = [
  {
    name: "quantity",
    share: 0.4,
    make: quantityText,
    read: (text) => {
      const read = quantity(text as string);
      const printed = read.toString();
      same(printed, quantity(printed as string).toString(), text);
    },
  },
  {
    name: "formula",
    share: 0.4,
    make: formulaText,
    read: (text) => {
      const printed = parseFormula(text).toString();
      same(printed, parseFormula(printed).toString(), text);
      same(printed, parseFormula(parseFormula(text).toUnicode()).toString(), text);
    },
  },
  {
    name: "equation",
    share: 0.19,
    make: equationText,
    read: (text) => {
      const printed = parseEquation(text).toString();
      same(printed, parseEquation(printed).toString(), text);
      if (random() < 0.1) balance(text);
    },
  },
  { name: "name", share: 0.007, make: nameText, read: (text) => void formulaOf(text) },
  { name: "label", share: 0.001, make: () => pick([nameText, formulaText])(), read: (text) => void identify(text) },
  {
    name: "recipe",
    share: 0.002,
    make: equationText,
    read: (text) =>
      void checkRecipe({
        equation: text,
        product: formulaText(),
        materials: [{ formula: formulaText(), amount: quantityText() }],
      } as never),
  },
];

/** Milliseconds that one text may take. */
const SLOW = 250;

let finds = 0;
console.log(`seed ${seed}, ${millions} million inputs`);
for (const { name, share, make, read } of READERS) {
  const count = Math.round(millions * 1e6 * share);
  let values = 0;
  // tables are read once, on first use
  attempt(() => read("copper sulfate"));
  let slowest = 0;
  const start = performance.now();
  for (let i = 0; i < count; i++) {
    const text = damaged(make());
    const before = performance.now();
    try {
      read(text);
      values++;
    } catch (error) {
      if (!isPreparativeError(error)) {
        if (++finds <= 40) console.log(`${name}: ${JSON.stringify(text)}: ${String(error)}`);
      }
    }
    const took = performance.now() - before;
    if (took > slowest) slowest = took;
    if (took > SLOW) {
      finds++;
      console.log(`${name}: ${JSON.stringify(text)} took ${took.toFixed(0)} ms`);
    }
  }
  const seconds = (performance.now() - start) / 1000;
  console.log(
    `${name}: ${count} texts, ${values} read, slowest ${slowest.toFixed(1)} ms, ${((seconds / count) * 1e6).toFixed(1)} µs each`,
  );
}
console.log(`${finds} finds`);
process.exitCode = finds === 0 ? 0 : 1;
