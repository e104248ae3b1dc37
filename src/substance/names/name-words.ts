// The words of a name: what each stands for, with the counting prefixes and oxidation numbers that they carry.

import { ELEMENT_WORDS, type ElementWord } from "../../ion/internal";
import { LIGANDS, type LigandRow } from "../data/ligands";
import { ionsByName } from "./ion-names";
import { leadingPrefixes, romanNumber } from "./prefixes";

interface WordIndex {
  readonly elements: ReadonlyMap<string, ElementWord>;
  /** By symbol in lower case. */
  readonly bySymbol: ReadonlyMap<string, ElementWord>;
  readonly adjectives: ReadonlyMap<string, { element: ElementWord; charge: number }>;
  readonly ligands: readonly (readonly [string, LigandRow])[];
  readonly centres: readonly (readonly [string, ElementWord, boolean])[];
  /** Elements by the name of their oxoanions. */
  readonly oxoCentres: ReadonlyMap<string, string>;
}

let built: WordIndex | undefined;

export function wordIndex(): WordIndex {
  if (built !== undefined) return built;
  const elements = new Map<string, ElementWord>();
  const bySymbol = new Map(ELEMENT_WORDS().map((word) => [word.symbol.toLowerCase(), word] as const));
  const adjectives = new Map<string, { element: ElementWord; charge: number }>();
  const centres: [string, ElementWord, boolean][] = [];
  const oxoCentres = new Map<string, string>();
  for (const word of ELEMENT_WORDS()) {
    for (const name of [word.name, ...(word.also ?? [])]) elements.set(name, word);
    for (const [charge, name] of Object.entries(word.older ?? {}))
      adjectives.set(name, { element: word, charge: Number(charge) });
    if (word.charges !== undefined) centres.push([word.name, word, false]);
    if (word.ate !== undefined) centres.push([word.ate, word, true]);
    if (word.ate !== undefined) oxoCentres.set(word.ate, word.symbol);
  }
  const ligands = LIGANDS().flatMap((row) =>
    [row.name, ...(row.also ?? [])].map((name) => [name.toLowerCase(), row] as const),
  );
  ligands.sort((a, b) => b[0].length - a[0].length);
  centres.sort((a, b) => b[0].length - a[0].length);
  built = { elements, bySymbol, adjectives, ligands, centres, oxoCentres };
  return built;
}

/** The element of a name, any spelling. */
export function elementNamed(name: string): ElementWord | undefined {
  return wordIndex().elements.get(name);
}

/** Names a misspelt word is compared with. */
export function knownWords(): string[] {
  const { elements, adjectives } = wordIndex();
  return [...elements.keys(), ...adjectives.keys(), ...ionsByName().keys()];
}

/** `copper(ii)` to its name and what the bracket says. */
export function splitBracket(word: string): { name: string; roman?: readonly number[]; charge?: number } {
  const match = /^(.*?)\s*\(([^()]*)\)$/.exec(word);
  if (match === null) return { name: word };
  const inside = match[2]!;
  const signed = /^(\d+)([+-])$/.exec(inside);
  if (signed !== null) return { name: match[1]!, charge: Number(signed[1]) * (signed[2] === "+" ? 1 : -1) };
  const numbers = inside.split(/[,/]\s*/).map(romanNumber);
  if (numbers.every((n): n is number => n !== undefined)) return { name: match[1]!, roman: numbers };
  return { name: word };
}

/** The word with a counting prefix taken off in every way, the word itself first. */
export function* counted(word: string): Generator<{ rest: string; count: number | undefined }> {
  yield { rest: word, count: undefined };
  for (const { n, rest, multiple } of leadingPrefixes(word)) {
    const enclosed = /^\((.*)\)$/.exec(rest)?.[1];
    if (enclosed !== undefined) yield { rest: enclosed, count: n };
    else if (!multiple && rest !== "") yield { rest: rest.replace(/^-/, ""), count: n };
  }
}

/** Words of a name: blanks inside brackets do not split, `iron (III)` is one word. */
export function splitWords(name: string): string[] {
  const text = name.replace(/ \(([ivx,/ -]+|\d[+-])\)/g, "($1)");
  const words: string[] = [];
  let depth = 0;
  let word = "";
  for (const c of text) {
    if (c === "(") depth += 1;
    if (c === ")") depth -= 1;
    if (c === " " && depth === 0) {
      if (word !== "") words.push(word);
      word = "";
    } else word += c;
  }
  if (word !== "") words.push(word);
  const joined: string[] = [];
  for (const next of words) {
    // "sodium hydrogen sulfate": the hydrogen belongs to the anion
    const last = joined.at(-1);
    if (last !== undefined && joined.length >= 2 && /^(mono|di|tri)?hydrogen$/.test(last) && !/^[a-z]+s\(/.test(next))
      joined[joined.length - 1] = last.replace(/^mono/, "") + next;
    // "tetraammine copper(II) sulfate": ligands set apart from their metal
    else if (
      last !== undefined &&
      /(?:ammine|aqua|aquo|chloro|chlorido|cyano|cyanido|hydroxo|hydroxido|oxalato\))$/.test(last)
    )
      joined[joined.length - 1] = last + next;
    else if (last === "acid" && joined.length >= 2) joined[joined.length - 1] = `acid ${next}`;
    else joined.push(next);
  }
  return joined;
}
