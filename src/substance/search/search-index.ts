// The index behind the search: every name of the registry and the shop table cut into words, scored word by word.

import { symbolsIn } from "../../formula/internal";
import { ownRows } from "../../foundation/facts";
import { remembering } from "../../foundation/memo";
import { slips } from "../../foundation/slips";
import { readNotation } from "../../ion/internal";
import { type NamesRow, REGISTRY_NAMES } from "../data/registry";
import { SHOP_NAMES } from "../data/shop-materials";
import { addTo } from "../names/multimap";
import { nameKey } from "../names/words";
import { namesOfRow, type OwnName, rowOf } from "../registry/registry-index";

/** One name of a substance, cut into words. */
interface Entry {
  readonly row: NamesRow;
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
  readonly byElement: ReadonlyMap<string, readonly NamesRow[]>;
}

const built = /* @__PURE__ */ remembering<SearchIndex>(1);

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

/** The index, built once for each set of facts: some 2000 names made of some 1300 words. */
export const searchIndex = (): SearchIndex => built("", makeIndex);

function makeIndex(): SearchIndex {
  const entries: Entry[] = [];
  const words: Word[] = [];
  const numbers = new Map<string, number>();
  const byElement = new Map<string, NamesRow[]>();
  const numberOf = (text: string): number => {
    const known = numbers.get(text);
    if (known !== undefined) return known;
    numbers.set(text, words.length);
    words.push({ text, letters: letterBits(text) });
    return words.length - 1;
  };
  const own = ownRows<OwnName>("names");
  const meant = new Set(own.map(({ name }) => nameKey(name)));
  const add = (row: NamesRow, text: string, by: Entry["by"], isOwn = false) => {
    const key = nameKey(text);
    if (!isOwn && meant.has(key)) return;
    entries.push({ row, key, words: key.split(" ").map(numberOf), text, by });
  };
  for (const row of REGISTRY_NAMES()) {
    for (const { name } of namesOfRow(row)) add(row, name, "name");
    const symbols = new Set(symbolsIn(row.formula));
    for (const symbol of symbols) addTo(byElement, symbol, row);
  }
  for (const good of SHOP_NAMES()) {
    const row = rowOf(readNotation(good.formula));
    if (row !== undefined) for (const name of [good.name, ...(good.alsoCalled ?? [])]) add(row, name, "shop name");
  }
  for (const { name, formula, row = rowOf(readNotation(formula)) } of own)
    add(row ?? ({ formula, name } as NamesRow), name, "name", true);
  return { entries, words, numbers, byElement };
}

/** Slips allowed in a word of this length; in one of three letters only beside other words. */
function slipsAllowed(length: number, alone: boolean): number {
  if (length < 3 || (length === 3 && alone)) return 0;
  return length < 6 ? 1 : 2;
}

/** How well one word of the query meets one of the index; 0 for not at all. */
function wordScore(asked: Word, has: Word, alone: boolean): number {
  if (asked.text === has.text) return 1;
  if (has.text.startsWith(asked.text)) return 0.6 + 0.3 * (asked.text.length / has.text.length);
  if (asked.text.length >= 4 && has.text.includes(asked.text)) return 0.5;
  const allowed = slipsAllowed(asked.text.length, alone);
  if (allowed === 0 || Math.abs(asked.text.length - has.text.length) > allowed) return 0;
  // each slip brings at most one letter in and one out
  if (bitCount(asked.letters ^ has.letters) > 2 * allowed) return 0;
  const distance = slips(asked.text, has.text, allowed);
  return distance <= allowed ? 0.75 - 0.2 * distance : 0;
}

/** How well each word of a query meets each word of the index. */
export function wordScores(query: readonly string[]): Float64Array[] {
  const { words } = searchIndex();
  return query.map((text) => {
    const one = { text, letters: letterBits(text) };
    return Float64Array.from(words, (word) => wordScore(one, word, query.length === 1));
  });
}

/** How well an entry meets the query, from the scores of its words; 0 where more than `missing` words are not met. */
export function entryScore(key: string, scores: readonly Float64Array[], one: Entry, missing: number): number {
  if (one.key === key) return one.by === "name" ? 1 : 0.97;
  let total = 0;
  let missed = 0;
  for (const table of scores) {
    let best = 0;
    for (const word of one.words) {
      const score = table[word]!;
      if (score > best) best = score;
    }
    if (best === 0) missed += 1;
    if (missed > missing) return 0;
    total += best;
  }
  // of two entries that hold all the words, the one with fewer others is nearer
  const fullness = scores.length / Math.max(scores.length, one.words.length);
  return (one.by === "name" ? 0.9 : 0.87) * (total / scores.length) * (0.7 + 0.3 * fullness);
}
