// The words of a name to ions and complexes: every way each word can be read, prefixes and oxidation numbers included.

import {
  compositionKey,
  ELEMENT_WORDS,
  type ElementWord,
  type Ion,
  ionIndex,
  ionText,
  readNotation,
} from "../../ion/internal";
import type { LigandRow } from "../data/ligands";
import { LIGANDS } from "../data/ligands";
import { ionsByName } from "./ion-names";
import { otherNamesOf } from "./other-names";
import { leadingPrefixes, romanNumber, roman as romanNumeral } from "./prefixes";

/** One species of a name: an ion, or a metal whose charge the name may leave open. */
export interface Species {
  /** Formula text of one, without charge. */
  readonly text: string;
  /** Set in brackets when more than one stands in a formula. */
  readonly group: boolean;
  /** Signed charge of one; `undefined` where the name does not tell. */
  readonly charge: number | undefined;
  /** How many, if a prefix says so. */
  readonly count: number | undefined;
  readonly element?: ElementWord;
  /** Two charges of a mixed-valence metal. */
  readonly mixed?: readonly [number, number];
  readonly ion?: Ion;
  /** Named without an oxidation number although its metal has several: what a clear name would say. */
  readonly open?: string;
}

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

function wordIndex(): WordIndex {
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
function splitBracket(word: string): { name: string; roman?: readonly number[]; charge?: number } {
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
function* counted(word: string): Generator<{ rest: string; count: number | undefined }> {
  yield { rest: word, count: undefined };
  for (const { n, rest, multiple } of leadingPrefixes(word)) {
    const enclosed = /^\((.*)\)$/.exec(rest)?.[1];
    if (enclosed !== undefined) yield { rest: enclosed, count: n };
    else if (!multiple && rest !== "") yield { rest: rest.replace(/^-/, ""), count: n };
  }
}

/** Ligands in a run of additive names: `tetraammineaqua`, `tris(oxalato)`. The first full reading wins. */
function ligandsOf(text: string, budget: { left: number }): { row: LigandRow; count: number }[] | undefined {
  budget.left -= 1;
  if (budget.left < 0) return undefined;
  if (text === "") return [];
  const trimmed = text.replace(/^-/, "");
  const tryRest = (row: LigandRow, count: number, rest: string) => {
    const more = ligandsOf(rest, budget);
    return more === undefined ? undefined : [{ row, count }, ...more];
  };
  for (const [name, row] of wordIndex().ligands) {
    if (trimmed.startsWith(`(${name})`)) return tryRest(row, 1, trimmed.slice(name.length + 2));
    if (trimmed.startsWith(name)) {
      const found = tryRest(row, 1, trimmed.slice(name.length));
      if (found !== undefined) return found;
    }
  }
  for (const { n, rest } of leadingPrefixes(trimmed)) {
    const plain = rest.replace(/^-/, "");
    for (const [name, row] of wordIndex().ligands) {
      const form = plain.startsWith(`(${name})`) ? `(${name})` : plain.startsWith(name) ? name : undefined;
      if (form === undefined) continue;
      const found = tryRest(row, n, plain.slice(form.length));
      if (found !== undefined) return found;
    }
  }
  return undefined;
}

function complexText(metal: ElementWord, ligands: readonly { row: LigandRow; count: number }[]): string {
  const parts = [...ligands]
    .sort((a, b) => (a.row.formula < b.row.formula ? -1 : 1))
    .map(({ row, count }) => {
      const single = /^[A-Z][a-z]?$/.test(row.formula);
      return single ? row.formula + (count === 1 ? "" : count) : `(${row.formula})${count === 1 ? "" : count}`;
    });
  return `[${metal.symbol}${parts.join("")}]`;
}

/** Ligands that hold a neutral metal. */
const HOLD_NEUTRAL: ReadonlySet<string> = /* @__PURE__ */ new Set(["CO", "NO", "N2", "P(C6H5)3"]);

/** Is there an ion of this composition and charge in the table? */
function isListed(text: string, charge: number): boolean {
  const key = compositionKey(readNotation(text).parts[0]!.counts);
  return ionIndex().anions.some((ion) => ion.charge === charge && compositionKey(ion.counts) === key);
}

/** A coordination entity by its additive name; several where the oxidation number is left out. */
function complexesNamed(word: string): Species[] {
  const { name, roman, charge } = splitBracket(word);
  const found: Species[] = [];
  for (const [ending, metal, isAnion] of wordIndex().centres) {
    if (!name.endsWith(ending) || name.length === ending.length) continue;
    const ligands = ligandsOf(name.slice(0, -ending.length), { left: 2000 });
    if (ligands === undefined || ligands.length === 0) continue;
    let ligandCharge = 0;
    for (const { row, count } of ligands) ligandCharge += row.charge * count;
    const text = complexText(metal, ligands);
    const oxidations =
      roman ?? (charge === undefined ? (metal.charges ?? [metal.ideCharge ?? 0]) : [charge - ligandCharge]);
    const stated = roman !== undefined || charge !== undefined;
    // carbonyls of the neutral metal come with (0) or nothing at all
    const neutral =
      !isAnion && !stated && ligandCharge === 0 && ligands.some(({ row }) => HOLD_NEUTRAL.has(row.formula));
    const possible = oxidations.filter((n) => (isAnion ? n + ligandCharge < 0 : n + ligandCharge >= 0));
    const listed = stated ? [] : possible.filter((n) => isListed(text, n + ligandCharge));
    const fitting = neutral ? [0] : listed.length > 0 ? listed : possible;
    for (const oxidation of fitting) {
      const open = stated || fitting.length === 1 ? {} : { open: `${name}(${romanNumeral(oxidation)})` };
      found.push({ text, group: false, charge: oxidation + ligandCharge, count: undefined, ...open });
    }
    if (found.length > 0) return found;
  }
  return found;
}

function ionSpecies(ion: Ion, count: number | undefined): Species {
  if (ion.element !== undefined) return { text: ion.element.symbol, group: false, charge: ion.charge, count, ion };
  const text = ionText(ion.row);
  return { text, group: !text.startsWith("["), charge: ion.charge, count, ion };
}

/** Every way a word names a cation. */
export function cationsNamed(word: string): Species[] {
  const found: Species[] = [];
  const { adjectives, bySymbol, elements } = wordIndex();
  for (const { rest, count } of counted(word)) {
    for (const ion of ionsByName().get(rest) ?? []) if (ion.charge > 0) found.push(ionSpecies(ion, count));
    const { name, roman, charge } = splitBracket(rest);
    // dimercury(2+) is one ion, not two of mercury(2+); tetramethylammonium not four of methylammonium
    if (count === undefined && found.length > 0) return found;
    const adjective = adjectives.get(name);
    // mercury(I) is a pair, and an ion of the table
    if (adjective !== undefined && !(adjective.element.symbol === "Hg" && adjective.charge === 1)) {
      const { element, charge: own } = adjective;
      found.push({ text: element.symbol, group: false, charge: own, count, element });
    }
    // a symbol stands for its name only before a number: Fe(III)
    const element = elements.get(name) ?? (roman === undefined ? undefined : bySymbol.get(name));
    if (element === undefined) continue;
    if (element.symbol === "H") found.push({ text: "H", group: false, charge: 1, count, element });
    else if (roman?.length === 2)
      found.push({
        text: element.symbol,
        group: false,
        charge: undefined,
        count,
        element,
        mixed: [roman[0]!, roman[1]!],
      });
    else {
      const own = roman?.[0] ?? charge ?? (element.fixed ? element.charges![0] : undefined);
      if (element.symbol === "Hg" && own === 1) continue;
      found.push({ text: element.symbol, group: false, charge: own, count, element });
    }
  }
  if (found.length > 0) return found;
  for (const { rest, count } of counted(word))
    for (const species of complexesNamed(rest)) if (species.charge! > 0) found.push({ ...species, count });
  return found;
}

/** Oxidation number of the one element beside oxygen and hydrogen; `undefined` for other ions. */
function centralOxidation(ion: Ion, centre: string): number | undefined {
  const n = ion.counts.get(centre);
  if (n === undefined || [...ion.counts.keys()].some((symbol) => ![centre, "O", "H"].includes(symbol)))
    return undefined;
  const others = 2 * (ion.counts.get("O") ?? 0) - (ion.counts.get("H") ?? 0);
  return /^(hydrogen)?peroxo/.test(ion.row.name) ? undefined : (ion.charge + others) / n;
}

/** The anion of an element by its oxidation number: `sulfate(IV)` is sulfite, `chlorate(I)` hypochlorite. */
function numberedOxoanions(word: string): Species[] {
  const { name, roman } = splitBracket(word);
  if (roman?.length !== 1) return [];
  for (const { rest, count } of counted(name)) {
    const [, hydrogen = "", ate = ""] = /^((?:di|tri)?hydrogen)?(.*)$/.exec(rest)!;
    const [, , stem = ""] = /^(di|per)?(.*)$/.exec(ate)!;
    const centre = wordIndex().oxoCentres.get(ate) ?? wordIndex().oxoCentres.get(stem);
    if (centre === undefined) continue;
    const fitting = ionIndex().anions.filter((ion) => centralOxidation(ion, centre) === roman[0]);
    const named = fitting.filter((ion) => [ion.row.name, ...otherNamesOf(ion)].includes(rest));
    const hydrogens = hydrogen === "" ? undefined : { hydrogen: 1, dihydrogen: 2, trihydrogen: 3 }[hydrogen];
    const alike = fitting.filter((ion) => ion.counts.get("H") === hydrogens && ion.counts.get(centre) === 1);
    const ions = named.length > 0 ? named : alike.filter((ion) => !ion.row.rare);
    if (ions.length > 0) return ions.map((ion) => ionSpecies(ion, count));
  }
  return [];
}

/** Every way a word names an anion. */
export function anionsNamed(word: string): Species[] {
  const found: Species[] = [];
  for (const { rest, count } of counted(word)) {
    const joined = rest.replace(/^((?:di|tri)?hydrogen) (?=[a-z])/, "$1");
    const direct = ionsByName().get(joined) ?? [];
    const { name, charge } = splitBracket(joined);
    const bare =
      direct.length > 0
        ? direct
        : charge === undefined
          ? []
          : (ionsByName().get(name) ?? []).filter((ion) => ion.charge === charge);
    const own = bare.filter((ion) => ion.charge < 0);
    // an anion by its first name (silicate, disulfate) is not also another one's second name or two of a shorter one
    const first = own.filter((ion) => ion.row.name.toLowerCase() === joined && !ion.row.rare);
    for (const ion of first.length > 0 ? first : own) found.push(ionSpecies(ion, count));
    // and one that tells its charge is no count of a shorter one: disulfide(2-)
    if (count === undefined && (first.length > 0 || (charge !== undefined && own.length > 0))) break;
    // disulfide(2-) by its bare name; dioxide stays two oxides
    for (const n of [-1, -2])
      for (const ion of ionsByName().get(`${joined}(${-n}-)`) ?? [])
        if (ion.row.name === `${joined}(${-n}-)`) found.push(ionSpecies(ion, count));
  }
  for (const species of numberedOxoanions(word)) found.push(species);
  // hexa + chloroplatinate is six of them only where it is not one hexachloroplatinate
  if (found.some((one) => one.count === undefined)) return found;
  for (const { rest, count } of counted(word))
    for (const species of complexesNamed(rest)) if (species.charge! < 0) found.push({ ...species, count });
  return found;
}

/** Neutral complexes: tetracarbonylnickel(0). */
export function neutralComplexes(word: string): Species[] {
  return complexesNamed(word).filter((species) => species.charge === 0);
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
