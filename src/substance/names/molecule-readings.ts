// Molecules, acids, elements and other names of one thing: what the rules make of them without ions to balance.

import { symbolsIn } from "../../formula/internal";
import { gcd } from "../../foundation/gcd";
import { acidText, allIons, type ElementWord, elementCharges, ionText, readNotation } from "../../ion/internal";
import { MOLECULES } from "../data/molecules";
import { REGISTRY_NAMES } from "../data/registry";
import type { SourceKey } from "../data/sources";
import { neutralComplexes } from "./complex-names";
import { elementNamed } from "./name-words";
import { otherNamesOf } from "./other-names";
import { leadingPrefixes, romanNumber, simpleNumber } from "./prefixes";
import { isHalogen, NON_METAL_CHARGE } from "./salt-name";
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

export function moleculeNamed(name: string): string | undefined {
  molecules ??= new Map(
    MOLECULES().flatMap((row) =>
      [row.name, ...(row.also ?? []), ...(row.solution === undefined ? [] : [row.solution])].map(
        (n) => [plainName(n).name, row.formula] as const,
      ),
    ),
  );
  return molecules.get(name);
}

/** `chloroaurate` to `chloroauric acid`, `hypophosphite` to `hypophosphorous acid`; the number goes. */
function acidOfAnion(anion: string): string | undefined {
  const match = /^(.+?)(ate|ite)(?:\([ivx]+\))?$/i.exec(anion);
  if (match === null) return undefined;
  const stem = match[1]!.replace(/(sulf)$/, "$1ur").replace(/(phosph)$/, "$1or");
  return `${stem}${match[2] === "ate" ? "ic" : "ous"} acid`;
}

/** `sulfuric acid` to `H2SO4`. */
export function acidNamed(name: string): string | undefined {
  if (acids === undefined) {
    const map = new Map<string, string>();
    for (const { row } of allIons().anions) {
      if (row.acid === undefined) continue;
      map.set(row.acid, acidText(row.formula, -row.charge));
    }
    // older names of an anion give older names of its acid: pyrosulfate, pyrosulfuric; fluoroborate, fluoroboric
    for (const ion of allIons().anions) {
      const { row, parent } = ion;
      if (parent !== undefined || /hydrogen|oxido/.test(row.name)) continue;
      const formula = acidText(ionText(row), -row.charge);
      for (const name of [row.name, ...otherNamesOf(ion)]) {
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
export function binaryNamed(name: string, literal: boolean): string[] {
  const words = name.split(" ");
  if (words.length !== 2) return [];
  const fronts: { symbol: string; n: number; stated: boolean }[] = [];
  const front = elementNamed(words[0]!);
  if (front !== undefined) fronts.push({ symbol: front.symbol, n: 1, stated: false });
  for (const { n, rest } of leadingPrefixes(words[0]!)) {
    const word = elementNamed(rest);
    if (word !== undefined) fronts.push({ symbol: word.symbol, n, stated: true });
  }
  const ides = allIons().anions.filter((ion) => ion.element !== undefined);
  const backs: { symbol: string; n: number; stated: boolean }[] = [];
  const add = (rest: string, n: number, stated: boolean) => {
    const ion = ides.find((one) => one.row.name === rest);
    if (ion !== undefined) backs.push({ symbol: ion.element!.symbol, n, stated });
  };
  add(words[1]!, 1, false);
  for (const { n, rest } of leadingPrefixes(words[1]!)) add(rest, n, true);
  const found: string[] = [];
  for (const one of fronts)
    for (const other of backs) {
      // without any prefix a metal makes a salt, balanced elsewhere, and two non-metals are told apart below
      if (!one.stated && !other.stated && one.symbol !== "H") continue;
      if (one.symbol === "H" && !one.stated && !other.stated) {
        const charge = elementCharges().get(other.symbol)!.ideCharge!;
        found.push(`H${charge === 1 ? "" : charge}${other.symbol}`);
        continue;
      }
      const n = !literal && !one.stated && other.stated && takesTwo(one.symbol, other) ? 2 : one.n;
      found.push(`${one.symbol}${n === 1 ? "" : n}${other.symbol}${other.n === 1 ? "" : other.n}`);
    }
  return found;
}

/** Several metals and one non-metal, counted by prefixes alone: dibismuth trizirconium trioxide. */
export function countedNamed(name: string): string | undefined {
  const words = name.split(" ");
  const ide = words.at(-1)!;
  if (words.length < 3) return undefined;
  const ides = allIons().anions.filter((ion) => ion.element !== undefined);
  const front = words.slice(0, -1).map((word) => countedElement(word, (rest) => elementNamed(rest)));
  const back = countedElement(ide, (rest) => ides.find((ion) => ion.row.name === rest)?.element);
  if (back === undefined || front.some((one) => one?.charges === undefined)) return undefined;
  return [...front, back].map((one) => one!.symbol + (one!.n === 1 ? "" : one!.n)).join("");
}

function countedElement(
  word: string,
  named: (rest: string) => ElementWord | undefined,
): (ElementWord & { readonly n: number }) | undefined {
  const bare = named(word);
  if (bare !== undefined) return { ...bare, n: 1 };
  for (const { n, rest } of leadingPrefixes(word)) {
    const element = named(rest);
    if (element !== undefined) return { ...element, n };
  }
  return undefined;
}

/** Two non-metals without any prefix: by their charges where those are certain, else whatever is listed of the two. */
export function unprefixedNamed(name: string): Found[] {
  const words = name.split(" ");
  const front = words.length === 2 ? elementNamed(words[0]!) : undefined;
  const back = allIons().anions.find((ion) => ion.element !== undefined && ion.row.name === words[1])?.element;
  if (front === undefined || back === undefined || front.charges !== undefined || front.symbol === "H") return [];
  const certain = certainBinary(front.symbol, back);
  if (certain !== undefined) return [{ formula: certain, decides: "" }];
  const listed = REGISTRY_NAMES().filter(({ formula }) => {
    const symbols = symbolsIn(formula);
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
export function numberedNonMetal(name: string): string[] {
  const match = /^([a-z]+) ?\(([ivx]+)\) ([a-z]+)$/.exec(name);
  if (match === null) return [];
  const word = elementNamed(match[1]!);
  if (word === undefined || word.charges !== undefined) return [];
  const anion = allIons().anions.find((ion) => ion.element !== undefined && ion.row.name === match[3]);
  const oxidation = romanNumber(match[2]!) ?? 0;
  if (anion === undefined || oxidation < 1) return [];
  return [binaryFormula(word.symbol, oxidation, anion.element!)];
}

/** Elements whose name by itself means the gas, liquid or solid of two atoms. */
const DIATOMIC: ReadonlySet<string> = /* @__PURE__ */ new Set(["H", "N", "O", "F", "Cl", "Br", "I"]);

/** What a pack says of the shape of an element: zinc dust, copper wire. */
const SHAPES =
  / (?:dust|powder|filings|turnings|foil|wire|granules|ribbon|mesh|shot|sheet|strip|rod|metal|wool|sponge)$/;

/** An element by its name: iron, dioxygen, zinc dust. */
export function elementsNamed(given: string): string[] {
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
export function halogenatedNamed(name: string): string[] {
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
export function carbonylNamed(name: string): string[] {
  const match = /^([a-z]+) ([a-z]+)carbonyl$/.exec(name);
  return match === null ? [] : neutralComplexes(`${match[2]}carbonyl${match[1]}(0)`).map((species) => species.text);
}
