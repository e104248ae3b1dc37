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
import { REGISTRY } from "../../src/substance/data/registry";
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

// Cations and anions with their charges: salts that exist, so that some of what is made gets past the first reader.
const CATIONS = [
  ["H", 1],
  ["Na", 1],
  ["K", 1],
  ["NH4", 1],
  ["Ag", 1],
  ["Mg", 2],
  ["Ca", 2],
  ["Cu", 2],
  ["Fe", 2],
  ["Zn", 2],
  ["Pb", 2],
  ["Fe", 3],
  ["Al", 3],
] as const;
const ANIONS = [
  ["Cl", 1],
  ["OH", 1],
  ["NO3", 1],
  ["HCO3", 1],
  ["CH3COO", 1],
  ["SO4", 2],
  ["CO3", 2],
  ["C2O4", 2],
  ["S", 2],
  ["PO4", 3],
  ["Fe(CN)6", 4],
] as const;
type Ion = readonly [group: string, charge: number];
const several = (group: string, n: number): string =>
  n === 1
    ? group
    : /^[A-Z][a-z]?$/.test(group)
      ? group + n
      : `${group.includes("(") ? `[${group}]` : `(${group})`}${n}`;
const salt = ([cation, up]: Ion, [anion, down]: Ion): string => {
  let common = Math.min(up, down);
  while (up % common !== 0 || down % common !== 0) common--;
  return several(cation, down / common) + several(anion, up / common);
};
const exchange = (): { readonly materials: readonly string[]; readonly products: readonly string[] } => {
  const [i, j] = [below(CATIONS.length), below(ANIONS.length)];
  const [a, b] = [CATIONS[i]!, CATIONS[(i + 1 + below(CATIONS.length - 1)) % CATIONS.length]!];
  const [x, y] = [ANIONS[j]!, ANIONS[(j + 1 + below(ANIONS.length - 1)) % ANIONS.length]!];
  return { materials: [salt(a, x), salt(b, y)], products: [salt(a, y), salt(b, x)] };
};
const exchangeText = (): string => {
  const { materials, products } = exchange();
  return (
    materials.join(" + ") +
    pick([" -> ", " = ", " → "]) +
    products.join(" + ") +
    pick(["", "", "", " + CO2 + H2O", " + H2O"])
  );
};

const equationText = (): string => {
  if (random() < 0.3) return exchangeText();
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
const known = REGISTRY().flatMap(({ name, otherNames = [] }) => [
  name,
  ...otherNames.map((other) => (typeof other === "string" ? other : other.name)),
]);
const nameText = (): string => (random() < 0.4 ? pick(known) : wordsText());
const wordsText = (): string => Array.from({ length: 1 + below(5) }, () => pick(WORDS)).join(pick([" ", " ", "-", ""]));

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

/** A recipe as somebody might type it: every text in it may be damaged. */
const recipeText = (): string => {
  const { materials, products } = exchange();
  const water = pick(["", "", "·5H2O", "·7H2O"]);
  const whole = `${materials.join(" + ")} -> ${products.join(" + ")}`;
  const now = (share: number): boolean => random() < share;
  return JSON.stringify({
    equation: now(0.9) ? whole : damaged(`${whole} + CO2 + H2O`),
    product: now(0.95) ? products[0] : damaged(formulaText()),
    materials: materials.map((formula) => ({
      form: now(0.95) ? formula + water : damaged(formula + water),
      ...(now(0.8) ? { amount: now(0.9) ? `${1 + below(99)} g` : quantityText() } : {}),
      ...(now(0.05) ? { strength: quantityText() } : {}),
      ...(now(0.05) ? { assay: quantityText() } : {}),
    })),
    ...(now(0.2) ? { water: now(0.5) ? `${1 + below(99)} mL` : quantityText() } : {}),
    ...(now(0.3) ? { found: now(0.8) ? `${1 + below(99)} g` : quantityText() } : {}),
    ...(now(0.1) ? { stated: { percentYield: quantityText(), theory: quantityText() } } : {}),
  });
};

interface Reader {
  readonly name: string;
  /** Share of the inputs. */
  readonly share: number;
  /** Text, or a request as JSON text, which is damaged where it is made. */
  readonly make: () => string;
  readonly whole?: true;
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
    share: 0.17,
    make: equationText,
    read: (text) => {
      const printed = parseEquation(text).toString();
      same(printed, parseEquation(printed).toString(), text);
      if (random() < 0.1) balance(text);
    },
  },
  { name: "name", share: 0.02, make: nameText, read: (text) => void formulaOf(text) },
  { name: "label", share: 0.005, make: () => pick([nameText, formulaText])(), read: (text) => void identify(text) },
  {
    name: "recipe",
    share: 0.005,
    make: recipeText,
    whole: true,
    read: (text) => void checkRecipe(JSON.parse(text) as never),
  },
];

/** Milliseconds that one text may take. */
const SLOW = 250;

let finds = 0;
console.log(`seed ${seed}, ${millions} million inputs`);
for (const { name, share, make, whole, read } of READERS) {
  const count = Math.round(millions * 1e6 * share);
  let values = 0;
  // tables are read once, on first use
  attempt(() => read(make()));
  let slowest = 0;
  const start = performance.now();
  for (let i = 0; i < count; i++) {
    const text = whole ? make() : damaged(make());
    const before = performance.now();
    try {
      read(text);
      values++;
    } catch (error) {
      if (!isPreparativeError(error)) {
        if (++finds <= 40) console.log(`${name}: ${JSON.stringify(text)}: ${String(error)}`);
      }
    }
    let took = performance.now() - before;
    if (took > SLOW) {
      // slow by itself, or because the machine did something else?
      const again = performance.now();
      attempt(() => read(text));
      took = Math.min(took, performance.now() - again);
    }
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
