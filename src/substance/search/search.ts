// Search over the registry and the shop table: name, mineral, formula, element, ion, number; ranked, forgiving of slips.
// A query walks the index of names once; names that only the rules read are read.

import { type Fields, shown } from "../../foundation/argument";
import { attempt } from "../../foundation/error";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { printsItself } from "../../foundation/readable";
import { readNotation, tryReadNotation } from "../../ion/internal";
import { guard, readableOptions } from "../argument";
import { type NamesRow, REGISTRY_NAMES } from "../data/registry";
import { badInput, readableText } from "../error";
import { mendWords } from "../names/formula-of";
import { ionsByName } from "../names/ion-names";
import { tryNameOf } from "../names/name-of";
import { elementNamed } from "../names/name-words";
import { readingsOf } from "../names/readings";
import { nameKey, plainName } from "../names/words";
import { numbered } from "../registry/registry-facts";
import { kinOf, rowOf } from "../registry/registry-index";
import { entryScore, searchIndex, wordScores } from "./search-index";

const SEARCH = { limit: true, facts: true } as const satisfies Fields<SearchOptions>;

/** One hit. */
export interface SearchHit {
  /** As listed, crystal water included. */
  readonly formula: string;
  /** Systematic name. */
  readonly name: string;
  /** The text that matched. */
  readonly matched: string;
  /** What of the substance the text matched. */
  readonly by: "formula" | "registry number" | "name" | "shop name" | "element" | "ion";
  /** 1 for an exact match, less for a weaker one, > 0. */
  readonly score: number;
}

const MOST_WORDS = 12;

const MOST_HITS = 200;

/** From here a hit is the name or formula itself. */
const EXACT = 0.96;

/** From here a hit is what was meant: at most one slip in a name of few words. */
const SURE = 0.65;

/** How the search is narrowed. */
export interface SearchOptions extends LookupOptions {
  /** At most this many hits, 1 to 200; 10 unless given. */
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
  if (bringsFacts(options)) return withItsFacts(options, guard, (others) => search(text, others));
  const asked = readableText(text, "a search text");
  const { limit = 10 } = readableOptions(options, SEARCH);
  if (!Number.isInteger(limit) || limit < 1 || limit > MOST_HITS)
    throw badInput(`a limit as a whole number from 1 to ${MOST_HITS}, got ${shown(limit)}`);
  const best = new Map<string, SearchHit>();
  const add = (row: NamesRow, matched: string, by: SearchHit["by"], score: number) => {
    const before = best.get(row.formula);
    if (before === undefined || before.score < score)
      best.set(row.formula, { formula: row.formula, name: row.name, matched, by, score });
  };
  byNumberOrFormula(asked, add);
  const key = nameKey(asked);
  byElementOrIon(asked, key, add);
  const query = key
    .split(" ")
    .filter((word) => word !== "")
    .slice(0, MOST_WORDS);
  const scores = wordScores(query);
  const byWords = (missing: number) => {
    for (const one of query.length === 0 ? [] : searchIndex().entries) {
      const score = entryScore(key, scores, one, missing);
      if (score > 0) add(one.row, one.text, one.by, score);
    }
  };
  byWords(0);
  const found = (least: number) => [...best.values()].some((hit) => hit.score >= least);
  if (!found(EXACT)) byReading(asked, 1, add);
  // slips in words that only the rules know, then a word that fits nothing: ferous sulfate, gypsum powder
  if (!found(SURE)) {
    const mended = mendWords(plainName(asked).name);
    if (mended !== undefined) byReading(mended, 0.75, add);
    if (best.size === 0 && query.length > 1) byWords(1);
  }
  return [...best.values()]
    .sort((a, b) => b.score - a.score || a.name.length - b.name.length || (a.name < b.name ? -1 : 1))
    .slice(0, limit)
    .map((hit) => printsItself(hit, ({ formula, name, matched }) => `${formula}  ${name} (${matched})`));
}

type Add = (row: NamesRow, matched: string, by: SearchHit["by"], score: number) => void;

function byNumberOrFormula(asked: string, add: Add): void {
  if (/^\d{2,7}-\d{2}-\d?$/.test(asked))
    for (const [cas, row] of numbered())
      if (cas.startsWith(asked)) add(row, cas, "registry number", cas === asked ? 1 : 0.8);
  const notation = tryReadNotation(asked);
  const small = asked.toLowerCase();
  // formulas typed without capitals: cuso4, nacl
  if (notation === undefined && /^[a-z0-9()]{2,}$/.test(asked))
    for (const row of REGISTRY_NAMES()) if (row.formula.toLowerCase() === small) add(row, row.formula, "formula", 0.9);
  if (notation === undefined) return;
  const row = rowOf(notation);
  if (row !== undefined) add(row, row.formula, "formula", 1);
  const plain = asked.replace(/[.*•⋅]/g, "·");
  if (notation.parts.some((part) => part.counts.size > 1))
    for (const other of REGISTRY_NAMES())
      if (other.formula.startsWith(plain))
        add(other, other.formula, "formula", 0.7 + 0.2 * (plain.length / other.formula.length));
}

function byElementOrIon(asked: string, key: string, add: Add): void {
  const { byElement, entries, numbers } = searchIndex();
  const charged = tryReadNotation(asked);
  const ion = charged !== undefined && charged.charge !== 0 ? charged : undefined;
  // Ba^2+ is asked for as its element
  const alone = ion?.parts[0]?.counts.size === 1 ? [...ion.parts[0].counts.keys()][0] : undefined;
  const symbol = alone ?? (byElement.has(asked) ? asked : elementNamed(key)?.symbol);
  for (const row of (symbol === undefined ? undefined : byElement.get(symbol)) ?? []) add(row, symbol!, "element", 0.4);
  // an ion by formula or by an older name: its word of today in the systematic names
  const name = ion === undefined ? undefined : tryNameOf(asked);
  const ions = name?.ok ? [name.value] : (ionsByName().get(key) ?? []).map((ion) => ion.row.name);
  for (const ion of ions) {
    const word = numbers.get(nameKey(ion));
    if (word === undefined) continue;
    for (const one of entries) if (one.by === "name" && one.words.includes(word)) add(one.row, ion, "ion", 0.5);
  }
}

/** Names that no table holds but the rules read: cuprous oxide, ferric chloride hexahydrate; hydrates of what is not listed. */
function byReading(name: string, weight: number, add: Add): void {
  const readings = attempt(() => readingsOf(name));
  for (const one of readings.ok ? readings.value : []) {
    const notation = readNotation(one.formula);
    if (notation.charge !== 0) continue;
    const row = rowOf(notation);
    if (row !== undefined) add(row, one.name, "name", 0.95 * weight);
    else for (const kin of kinOf(notation)) add(kin, one.name, "name", 0.85 * weight);
  }
}
