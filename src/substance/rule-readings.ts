// What the rules make of a name, word by word: molecules, acids, elements, binary compounds, salts, ions, crystal water.

import type { SourceKey } from "../foundation";
import { gcd } from "../foundation/gcd";
import type { ElementWord } from "./data/element-words";
import { MOLECULES } from "./data/molecules";
import { REGISTRY } from "./data/registry";
import { chargedText, ionIndex, ionText } from "./ion-index";
import { anionsNamed, cationsNamed, elementNamed, neutralComplexes, type Species, splitWords } from "./name-parse";
import { readNotation, tryReadNotation } from "./notation";
import { hydrateNumber, leadingPrefixes, roman, romanNumber, simpleNumber } from "./prefixes";
import { rowOf } from "./registry-index";
import { isHalogen, NON_METAL_CHARGE } from "./salt-name";
import { balanced, saltText } from "./stoichiometry";
import { plainName } from "./words";

/** A meaning before it is dressed up. */
export interface Found {
  readonly formula: string;
  readonly decides: string;
  /** Of the table the meaning is taken from; absent where the rules make it. */
  readonly source?: SourceKey;
}

let molecules: ReadonlyMap<string, string> | undefined;
let acids: ReadonlyMap<string, string> | undefined;

function moleculeNamed(name: string): string | undefined {
  molecules ??= new Map(
    MOLECULES.flatMap((row) =>
      [row.name, ...(row.also ?? []), ...(row.solution === undefined ? [] : [row.solution])].map(
        (n) => [plainName(n).name, row.formula] as const,
      ),
    ),
  );
  return molecules.get(name);
}

/** The registry's own writing of a formula, where the composition is listed. */
export function registryWriting(formula: string): string {
  const notation = tryReadNotation(formula);
  return (notation === undefined ? undefined : rowOf(notation)?.formula) ?? formula;
}

/** `chloroaurate` to `chloroauric acid`, `hypophosphite` to `hypophosphorous acid`; the number goes. */
function acidOfAnion(anion: string): string | undefined {
  const match = /^(.+?)(ate|ite)(?:\([ivx]+\))?$/i.exec(anion);
  if (match === null) return undefined;
  const stem = match[1]!.replace(/(sulf)$/, "$1ur").replace(/(phosph)$/, "$1or");
  return `${stem}${match[2] === "ate" ? "ic" : "ous"} acid`;
}

/** `sulfuric acid` to `H2SO4`. */
function acidNamed(name: string): string | undefined {
  if (acids === undefined) {
    const map = new Map<string, string>();
    for (const { row } of ionIndex().anions) {
      if (row.acid === undefined) continue;
      const n = -row.charge;
      const hydrogens = `H${n === 1 ? "" : n}`;
      const formula = /COO$/.test(row.formula) ? `${row.formula}H` : `${hydrogens}${row.formula}`;
      map.set(row.acid, formula);
    }
    // older names of an anion give older names of its acid: pyrosulfate, pyrosulfuric; fluoroborate, fluoroboric
    for (const { row, parent } of ionIndex().anions) {
      if (parent !== undefined || /hydrogen|oxido/.test(row.name)) continue;
      const formula = `H${row.charge === -1 ? "" : -row.charge}${ionText(row)}`;
      for (const name of [row.name, ...(row.also ?? [])]) {
        const acid = acidOfAnion(name);
        if (acid !== undefined && !map.has(acid)) map.set(acid, map.get(row.acid ?? "") ?? formula);
      }
    }
    acids = map;
  }
  return acids.get(name);
}

/** Elements that reach six; of the others a "trioxide" in the trade holds two atoms (antimony trioxide, Sb2O3). */
const REACH_SIX: ReadonlySet<string> = /* @__PURE__ */ new Set([
  "S",
  "Se",
  "Te",
  "Xe",
  "Cr",
  "Mo",
  "W",
  "U",
  "Re",
  "Mn",
  "Os",
  "Cl",
  "Br",
  "I",
]);

/** Trade names leave the "di" out: vanadium pentoxide, phosphorus pentasulfide, arsenic trisulfide. */
function takesTwo(symbol: string, other: { symbol: string; n: number }): boolean {
  if (!["O", "S", "Se", "Te"].includes(other.symbol) || other.n % 2 === 0 || other.n < 3) return false;
  return other.n > 3 || !REACH_SIX.has(symbol);
}

/** Two non-metals, or a metal with prefixes throughout: dinitrogen pentoxide. */
function binaryNamed(name: string, literal: boolean): string[] {
  const words = name.split(" ");
  if (words.length !== 2) return [];
  const fronts: { symbol: string; n: number; told: boolean }[] = [];
  const front = elementNamed(words[0]!);
  if (front !== undefined) fronts.push({ symbol: front.symbol, n: 1, told: false });
  for (const { n, rest } of leadingPrefixes(words[0]!)) {
    const word = elementNamed(rest);
    if (word !== undefined) fronts.push({ symbol: word.symbol, n, told: true });
  }
  const ides = ionIndex().anions.filter((ion) => ion.element !== undefined);
  const backs: { symbol: string; n: number; told: boolean }[] = [];
  const add = (rest: string, n: number, told: boolean) => {
    const ion = ides.find((one) => one.row.name === rest);
    if (ion !== undefined) backs.push({ symbol: ion.element!.symbol, n, told });
  };
  add(words[1]!, 1, false);
  for (const { n, rest } of leadingPrefixes(words[1]!)) add(rest, n, true);
  const found: string[] = [];
  for (const one of fronts)
    for (const other of backs) {
      // without any prefix a metal makes a salt, balanced elsewhere, and two non-metals are told apart below
      if (!one.told && !other.told && one.symbol !== "H") continue;
      if (one.symbol === "H" && !one.told && !other.told) {
        const charge = ionIndex().elements.get(other.symbol)!.ideCharge!;
        found.push(`H${charge === 1 ? "" : charge}${other.symbol}`);
        continue;
      }
      const n = !literal && !one.told && other.told && takesTwo(one.symbol, other) ? 2 : one.n;
      found.push(`${one.symbol}${n === 1 ? "" : n}${other.symbol}${other.n === 1 ? "" : other.n}`);
    }
  return found;
}

/** Two non-metals without any prefix: by their charges where those are certain, else whatever is listed of the two. */
function unprefixedNamed(name: string): Found[] {
  const words = name.split(" ");
  const front = words.length === 2 ? elementNamed(words[0]!) : undefined;
  const back = ionIndex().anions.find((ion) => ion.element !== undefined && ion.row.name === words[1])?.element;
  if (front === undefined || back === undefined || front.charges !== undefined || front.symbol === "H") return [];
  const certain = certainBinary(front.symbol, back);
  if (certain !== undefined) return [{ formula: certain, decides: "" }];
  const listed = REGISTRY.filter(({ formula }) => {
    const symbols = formula.match(/[A-Z][a-z]?/g)!;
    return symbols.length === 2 && symbols[0] === front.symbol && symbols[1] === back.symbol;
  });
  // a lone listed one proves nothing: nitrogen chloride need not be the trichloride
  if (listed.length < 2) return [];
  return listed.map((row) => ({ formula: row.formula, decides: `the label says ${row.name}` }));
}

/** Boron, silicon and pairs of halogens have one formula that the name can mean. */
function certainBinary(symbol: string, back: ElementWord): string | undefined {
  if (isHalogen(symbol) && isHalogen(back.symbol)) return `${symbol}${back.symbol}`;
  const charge = NON_METAL_CHARGE[symbol];
  // boron carbide is no salt of carbon(4-)
  if (charge === undefined || (symbol === "B" && back.symbol === "C")) return undefined;
  return binaryFormula(symbol, charge, back);
}

function binaryFormula(symbol: string, charge: number, back: ElementWord): string {
  const size = back.ideCharge!;
  const g = gcd(charge, size);
  const count = (n: number) => (n === 1 ? "" : String(n));
  return `${symbol}${count(size / g)}${back.symbol}${count(charge / g)}`;
}

/** Non-metal with an oxidation number: phosphorus(V) chloride. */
function numberedNonMetal(name: string): string[] {
  const match = /^([a-z]+) ?\(([ivx]+)\) ([a-z]+)$/.exec(name);
  if (match === null) return [];
  const word = elementNamed(match[1]!);
  if (word === undefined || word.charges !== undefined) return [];
  const anion = ionIndex().anions.find((ion) => ion.element !== undefined && ion.row.name === match[3]);
  const oxidation = romanNumber(match[2]!) ?? 0;
  if (anion === undefined || oxidation < 1) return [];
  return [binaryFormula(word.symbol, oxidation, anion.element!)];
}

/** A salt, word by word. */
function saltsNamed(name: string): Found[] {
  const words = splitWords(name);
  if (words.length < 2 || words.length > 8) return [];
  const asCation = words.map((word) => cationsNamed(word));
  const asAnion = words.map((word) => anionsNamed(word));
  const found = new Map<string, Found>();
  for (let split = 1; split < words.length; split += 1) {
    if (
      asCation.slice(0, split).some((one) => one.length === 0) ||
      asAnion.slice(split).some((one) => one.length === 0)
    )
      continue;
    for (const choice of choices([...asCation.slice(0, split), ...asAnion.slice(split)])) {
      const cations = choice.slice(0, split);
      for (const salt of balanced(cations, choice.slice(split))) {
        const formula = registryWriting(saltText(salt));
        const complex = choice.find((one) => one.open !== undefined)?.open;
        const number = salt.cations.find((one) => one.species.charge === undefined);
        const decides =
          salt.open === "charge" && number !== undefined
            ? `the label says ${number.species.element!.name}(${roman(number.charge)})`
            : complex !== undefined
              ? `the label says ${complex}`
              : salt.open === "proportions"
                ? "the simplest proportions; the name does not tell them"
                : "";
        if (!found.has(formula) || decides === "") found.set(formula, { formula, decides });
      }
    }
  }
  // where prefixes settle the proportions, a guess at a charge has no place: tin disulfide
  const all = [...found.values()];
  const settled = all.filter((one) => one.decides === "");
  return settled.length > 0 ? settled : all;
}

/** Every combination of one reading per word, at most 64. */
function choices(options: readonly (readonly Species[])[]): Species[][] {
  let all: Species[][] = [[]];
  for (const option of options) all = all.flatMap((chosen) => option.map((one) => [...chosen, one])).slice(0, 64);
  return all;
}

const SIGNED = /^(.*?) ?\((\d+)([+-])\)$/;

/** A charged species by itself: sulfate ion, iron(3+), hexacyanidoferrate(II). */
function ionsNamed(name: string): Found[] {
  const bare = name.replace(/ (ion|anion|cation)$/, "");
  const told = bare !== name || SIGNED.test(name);
  const found = new Map<string, Found>();
  if (bare === "hydron" || (told && bare === "hydrogen")) return [{ formula: "H^+", decides: "" }];
  const counted = SIGNED.exec(bare);
  if (counted !== null) {
    // dimercury(2+), triiodide(1-): the charge is that of the whole
    for (const { n, rest } of [{ n: 1, rest: counted[1]! }, ...leadingPrefixes(counted[1]!)]) {
      const word =
        elementNamed(rest) ??
        ionIndex().anions.find((ion) => ion.row.name === rest && ion.element !== undefined)?.element;
      if (word === undefined) continue;
      const charge = Number(`${counted[3]}${counted[2]}`);
      return [{ formula: chargedText(`${word.symbol}${n === 1 ? "" : n}`, charge), decides: "" }];
    }
  }
  for (const species of [...anionsNamed(bare), ...cationsNamed(bare)]) {
    if (species.charge === undefined || (species.count ?? 1) !== 1 || species.charge === 0) continue;
    // "iron" alone is the metal; "sulfate" alone can only be the ion
    if (species.element !== undefined && !told && !/\(/.test(bare)) continue;
    const formula = chargedText(species.text, species.charge);
    found.set(formula, { formula, decides: "" });
  }
  const all = [...found.values()];
  return all.length === 1 ? all : all.map((one) => ({ ...one, decides: `charge of ${one.formula}` }));
}

/** Elements whose name by itself means the gas, liquid or solid of two atoms. */
const DIATOMIC: ReadonlySet<string> = /* @__PURE__ */ new Set(["H", "N", "O", "F", "Cl", "Br", "I"]);

/** What a pack says of the shape of an element: zinc dust, copper wire. */
const SHAPES =
  / (?:dust|powder|filings|turnings|foil|wire|granules|ribbon|mesh|shot|sheet|strip|rod|metal|wool|sponge)$/;

/** An element by its name: iron, dioxygen, zinc dust. */
function elementsNamed(given: string): string[] {
  const name = given.replace(SHAPES, "");
  const word = elementNamed(name);
  if (word !== undefined) return [DIATOMIC.has(word.symbol) ? `${word.symbol}2` : word.symbol];
  for (const { n, rest } of leadingPrefixes(name)) {
    const other = elementNamed(rest);
    if (other !== undefined) return [`${other.symbol}${n}`];
  }
  return [];
}

/** Hydrides with hydrogen replaced by halogens: tetrachloromethane, trichlorosilane. Red Book 2005, IR-6.3. */
function halogenatedNamed(name: string): string[] {
  const match = /^([a-z]+?)(methane|silane|germane|borane|phosphane|arsane)$/.exec(name);
  if (match === null) return [];
  const [, front, parent] = match;
  const hydride = readNotation(moleculeNamed(parent!)!).parts[0]!.counts;
  const counts = new Map(hydride);
  for (const word of front!.match(/(?:[a-z]*?)(?:fluoro|chloro|bromo|iodo)/g) ?? [""]) {
    const [, prefix, halogen] = /^(.*)(fluoro|chloro|bromo|iodo)$/.exec(word) ?? [];
    const symbol = { fluoro: "F", chloro: "Cl", bromo: "Br", iodo: "I" }[halogen ?? ""];
    const n = prefix === "" ? 1 : simpleNumber(prefix ?? "");
    if (symbol === undefined || n === undefined) return [];
    counts.set(symbol, n);
    counts.set("H", counts.get("H")! - n);
  }
  if (!/(?:fluoro|chloro|bromo|iodo)$/.test(front!) || counts.get("H")! < 0) return [];
  return [[...counts].map(([symbol, n]) => (n === 0 ? "" : `${symbol}${n === 1 ? "" : n}`)).join("")];
}

/** Metal and carbonyl without an oxidation number: nickel tetracarbonyl. */
function carbonylNamed(name: string): string[] {
  const match = /^([a-z]+) ([a-z]+)carbonyl$/.exec(name);
  return match === null ? [] : neutralComplexes(`${match[2]}carbonyl${match[1]}(0)`).map((species) => species.text);
}

/** One component without water: its meanings by rule. */
export function componentReadings(name: string, literal = false): Found[] {
  const exact = moleculeNamed(name) ?? acidNamed(name);
  if (exact !== undefined) return [{ formula: registryWriting(exact), decides: "" }];
  const complex = neutralComplexes(name).map((species) => species.text);
  const simple = [
    ...complex,
    ...elementsNamed(name),
    ...numberedNonMetal(name),
    ...carbonylNamed(name),
    ...halogenatedNamed(name),
  ];
  if (simple.length > 0) return [{ formula: registryWriting(simple[0]!), decides: "" }];
  const salts = saltsNamed(name);
  if (salts.length > 0) return salts;
  const binary = binaryNamed(name, literal);
  if (binary.length > 0) return [{ formula: registryWriting(binary[0]!), decides: "" }];
  const unprefixed = unprefixedNamed(name);
  if (unprefixed.length > 0)
    return unprefixed.map(({ formula, decides }) => ({ formula: registryWriting(formula), decides }));
  return ionsNamed(name);
}

/** A name without its hydrate ending, and the water it tells. */
export interface HydrateName {
  readonly core: string;
  /** Waters, `undefined` where the name does not say how many. */
  readonly water: number | undefined;
  /** To so many formula units; 1 but for ratios such as (3/8)-hydrate. */
  readonly units: number;
}

/** Crystal water split off the end of a name. */
export function splitHydrate(name: string): HydrateName | undefined {
  const text = name.replace(/,? anhydrous$|^anhydrous /, "");
  if (text !== name) return { core: text, water: 0, units: 1 };
  const ratio = /^(.*?),? \((\d{1,3})\/(\d{1,3})\)-?hydrate$/.exec(name);
  if (ratio !== null) return { core: ratio[1]!, water: Number(ratio[3]), units: Math.max(1, Number(ratio[2])) };
  const digits = /^(.*?),? (\d{1,3}(?:\.\d{1,3})?|\d\/\d)[- ]?hydrate$/.exec(name);
  if (digits !== null) return { core: digits[1]!, water: hydrateNumber(digits[2]!), units: 1 };
  const written = /^(.*?)[ ·•⋅.*,]+(\d{0,3}(?:\.\d{1,3})?)h2o$/.exec(name);
  if (written !== null)
    return { core: written[1]!, water: written[2] === "" ? 1 : hydrateNumber(written[2]!), units: 1 };
  const bare = /^(.*) hydrate$/.exec(name);
  if (bare !== null) return { core: bare[1]!, water: undefined, units: 1 };
  const match = /^(.*?),? ([a-z]+)-?hydrate$/.exec(name);
  const water = match === null ? undefined : hydrateNumber(match[2]!);
  return water === undefined ? undefined : { core: match![1]!, water, units: 1 };
}

/** The formula with the water of the name. */
export function withWater(formula: string, { water, units }: HydrateName): string {
  if (water === undefined || water === 0) return formula;
  return registryWriting(`${units === 1 ? "" : units}${formula}·${water === 1 ? "" : water}H2O`);
}

/** @internal What the rules alone make of a name, the registry left out: for checking the rules against the tables. */
export function ruleFormulas(name: string): string[] {
  const plain = plainName(name).name;
  const hydrate = splitHydrate(plain);
  if (hydrate?.water === undefined) return componentReadings(plain).map(({ formula }) => formula);
  return componentReadings(hydrate.core).map(({ formula }) => withWater(formula, hydrate));
}
