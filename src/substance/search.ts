// Search over the registry and the shop table: name, mineral, formula, element, ion, number; ranked, forgiving of slips.
// One index of words and keys, built on first use; a query walks it once.

import { attempt, type Result } from "../foundation/error";
import { REGISTRY, type RegistryRow } from "./data/registry";
import { SHOP_MATERIALS } from "./data/shop-materials";
import { badInput, readableOptions, readableText } from "./error";
import { ionIndex } from "./ion-index";
import { addTo } from "./multimap";
import { tryNameOf } from "./name-of";
import { elementNamed } from "./name-parse";
import { formulaKey, readNotation, tryReadNotation } from "./notation";
import { namesOfRow, registryIndex, rowOf } from "./registry-index";
import { nameKey, slips } from "./words";

/** One hit. */
export interface SearchHit {
  readonly formula: string;
  /** Systematic name. */
  readonly name: string;
  /** The text that matched. */
  readonly matched: string;
  readonly by: "formula" | "number" | "name" | "shop name" | "element" | "ion";
  /** 1 for an exact match, less for a weaker one, > 0. */
  readonly score: number;
}

interface Entry {
  readonly row: RegistryRow;
  readonly key: string;
  /** Indices into the word list. */
  readonly words: readonly number[];
  readonly text: string;
  readonly by: "name" | "shop name";
}

/** A word that occurs in names, with the letters it holds as bits. */
interface Word {
  readonly text: string;
  readonly letters: number;
}

interface SearchIndex {
  readonly entries: readonly Entry[];
  readonly words: readonly Word[];
  readonly numbers: ReadonlyMap<string, number>;
  readonly byElement: ReadonlyMap<string, readonly RegistryRow[]>;
}

let built: SearchIndex | undefined;

function letterBits(text: string): number {
  let bits = 0;
  for (let i = 0; i < text.length; i += 1) {
    const code = text.charCodeAt(i) - 97;
    if (code >= 0 && code < 26) bits |= 1 << code;
  }
  return bits;
}

function bitCount(bits: number): number {
  let n = 0;
  for (let left = bits; left !== 0; left &= left - 1) n += 1;
  return n;
}

/** The index, built once: some 2000 names made of some 1300 words. */
function searchIndex(): SearchIndex {
  if (built !== undefined) return built;
  const entries: Entry[] = [];
  const words: Word[] = [];
  const numbers = new Map<string, number>();
  const byElement = new Map<string, RegistryRow[]>();
  const numberOf = (text: string): number => {
    const known = numbers.get(text);
    if (known !== undefined) return known;
    numbers.set(text, words.length);
    words.push({ text, letters: letterBits(text) });
    return words.length - 1;
  };
  const add = (row: RegistryRow, text: string, by: Entry["by"]) => {
    const key = nameKey(text);
    entries.push({ row, key, words: key.split(" ").map(numberOf), text, by });
  };
  for (const row of REGISTRY) {
    for (const { name } of namesOfRow(row)) add(row, name, "name");
    const symbols = new Set(row.formula.match(/[A-Z][a-z]?/g));
    for (const symbol of symbols) addTo(byElement, symbol, row);
  }
  for (const good of SHOP_MATERIALS) {
    const row = rowOf(readNotation(good.formula));
    if (row !== undefined) for (const name of [good.name, ...(good.alsoCalled ?? [])]) add(row, name, "shop name");
  }
  built = { entries, words, numbers, byElement };
  return built;
}

/** Slips allowed in a word of this length. */
function slipsAllowed(length: number): number {
  return length < 4 ? 0 : length < 6 ? 1 : 2;
}

/** How well one word of the query meets one of the index; 0 for not at all. */
function wordScore(asked: Word, has: Word): number {
  if (asked.text === has.text) return 1;
  if (has.text.startsWith(asked.text)) return 0.6 + 0.3 * (asked.text.length / has.text.length);
  if (asked.text.length >= 4 && has.text.includes(asked.text)) return 0.5;
  const allowed = slipsAllowed(asked.text.length);
  if (allowed === 0 || Math.abs(asked.text.length - has.text.length) > allowed) return 0;
  // each slip brings at most one letter in and one out
  if (bitCount(asked.letters ^ has.letters) > 2 * allowed) return 0;
  const distance = slips(asked.text, has.text, allowed);
  return distance <= allowed ? 0.75 - 0.2 * distance : 0;
}

/** How well an entry meets the query, from the scores of its words. */
function entryScore(key: string, scores: readonly Float64Array[], one: Entry): number {
  if (one.key === key) return one.by === "name" ? 1 : 0.97;
  let total = 0;
  for (const table of scores) {
    let best = 0;
    for (const word of one.words) {
      const score = table[word]!;
      if (score > best) best = score;
    }
    if (best === 0) return 0;
    total += best;
  }
  // of two entries that hold all the words, the one with fewer others is nearer
  const fullness = scores.length / Math.max(scores.length, one.words.length);
  return (one.by === "name" ? 0.9 : 0.87) * (total / scores.length) * (0.7 + 0.3 * fullness);
}

const MOST_WORDS = 12;

const MOST_HITS = 200;

/** How the search is narrowed. */
export interface SearchOptions {
  /** At most this many hits, 1 to 200; 10 unless told. */
  readonly limit?: number;
}

/**
 * Substances that a text may mean, best first: by formula (any order of atoms), registry number, systematic, mineral, trade
 * or shop name with small slips forgiven, by element or by ion.
 *
 * @param text - what to look for
 * @returns hits with a score from 1 (exact) downwards; empty where nothing comes near
 * @throws {SubstanceError} `substance.bad-input`, `substance.too-long`
 * @category Substances
 * @example
 * search("epsom sallt")[0]?.formula // => "MgSO4·7H2O"
 * search("7758-99-8")[0]?.name // => "copper(II) sulfate pentahydrate"
 * search("malachite")[0]?.formula // => "Cu2(OH)2CO3"
 */
export function search(text: string, options?: SearchOptions): SearchHit[] {
  const asked = readableText(text, "a search text");
  const { limit = 10 } = readableOptions(options) as SearchOptions;
  if (!Number.isInteger(limit) || limit < 1 || limit > MOST_HITS)
    throw badInput(`a limit as a whole number from 1 to ${MOST_HITS}, got ${String(limit)}`);
  const best = new Map<string, SearchHit>();
  const add = (row: RegistryRow, matched: string, by: SearchHit["by"], score: number) => {
    const before = best.get(row.formula);
    if (before === undefined || before.score < score)
      best.set(row.formula, { formula: row.formula, name: row.name, matched, by, score });
  };
  byNumberOrFormula(asked, add);
  const key = nameKey(asked);
  const { entries, words } = searchIndex();
  const query = key
    .split(" ")
    .filter((word) => word !== "")
    .slice(0, MOST_WORDS);
  if (query.length > 0) {
    const scores = query.map((text) => {
      const one = { text, letters: letterBits(text) };
      return Float64Array.from(words, (word) => wordScore(one, word));
    });
    for (const one of entries) {
      const score = entryScore(key, scores, one);
      if (score > 0) add(one.row, one.text, one.by, score);
    }
  }
  byElementOrIon(asked, key, add);
  return [...best.values()]
    .sort((a, b) => b.score - a.score || a.name.length - b.name.length || (a.name < b.name ? -1 : 1))
    .slice(0, limit);
}

type Add = (row: RegistryRow, matched: string, by: SearchHit["by"], score: number) => void;

function byNumberOrFormula(asked: string, add: Add): void {
  if (/^\d{2,7}-\d{2}-\d?$/.test(asked))
    for (const row of REGISTRY)
      if (row.cas?.startsWith(asked)) add(row, row.cas, "number", row.cas === asked ? 1 : 0.8);
  const notation = tryReadNotation(asked);
  if (notation === undefined) return;
  const row = registryIndex().byFormula.get(formulaKey(notation));
  if (row !== undefined) add(row, row.formula, "formula", 1);
  const plain = asked.replace(/[.*•⋅]/g, "·");
  if (notation.parts.some((part) => part.counts.size > 1))
    for (const other of REGISTRY)
      if (other.formula.startsWith(plain))
        add(other, other.formula, "formula", 0.7 + 0.2 * (plain.length / other.formula.length));
}

function byElementOrIon(asked: string, key: string, add: Add): void {
  const { byElement, entries, numbers } = searchIndex();
  const symbol = byElement.has(asked) ? asked : elementNamed(key)?.symbol;
  for (const row of (symbol === undefined ? undefined : byElement.get(symbol)) ?? []) add(row, symbol!, "element", 0.4);
  // an ion by formula or by an older name: its word of today in the systematic names
  const charged = tryReadNotation(asked);
  const name = charged !== undefined && charged.charge !== 0 ? tryNameOf(asked) : undefined;
  const ions = name?.ok ? [name.value] : (ionIndex().byName.get(key) ?? []).map((ion) => ion.row.name);
  for (const ion of ions) {
    const word = numbers.get(nameKey(ion));
    if (word === undefined) continue;
    for (const one of entries) if (one.by === "name" && one.words.includes(word)) add(one.row, ion, "ion", 0.5);
  }
}

/**
 * As {@link search}, with the error returned instead of thrown.
 *
 * @category Substances
 * @example
 * trySearch("").ok // => false
 */
export function trySearch(text: string, options?: SearchOptions): Result<SearchHit[]> {
  return attempt(() => search(text, options));
}
