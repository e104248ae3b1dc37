// How species are told apart and how reactions of the tables are read. A species is its composition and charge; the same
// ion written in two ways is one species.

import { parseFormula } from "../../formula";
import { memoised } from "../../foundation/memo";

/** Composition and charge as one text; `H+` and `H2O` read as they are written. */
export type Key = string;

/** Atoms by symbol, the charge under `e`. */
type Atoms = ReadonlyMap<string, number>;

const CHARGE = /(?:\^(\d+))?([+-])$/;

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isCapital = (code: number): boolean => code >= 65 && code <= 90;
const isSmall = (code: number): boolean => code >= 97 && code <= 122;

/** The atoms of one adduct part; undefined for anything but symbols, numbers and brackets. */
function partAtoms(text: string): Map<string, number> | undefined {
  const stack: Map<string, number>[] = [];
  let inner = new Map<string, number>();
  let group: ReadonlyMap<string, number> | undefined;
  let symbol = "";
  let at = 0;
  while (at < text.length) {
    const from = at;
    const code = text.charCodeAt(at++);
    if (isCapital(code)) {
      if (isSmall(text.charCodeAt(at))) at += 1;
      symbol = text.slice(from, at);
      group = undefined;
      inner.set(symbol, (inner.get(symbol) ?? 0) + 1);
    } else if (isDigit(code)) {
      while (isDigit(text.charCodeAt(at))) at += 1;
      if (text[at] === "." && isDigit(text.charCodeAt(at + 1))) {
        at += 2;
        while (isDigit(text.charCodeAt(at))) at += 1;
      }
      const more = Number(text.slice(from, at)) - 1;
      if (group !== undefined) for (const [one, count] of group) inner.set(one, inner.get(one)! + count * more);
      else if (symbol !== "") inner.set(symbol, inner.get(symbol)! + more);
      else return undefined;
      symbol = "";
      group = undefined;
    } else if (code === 40 || code === 91 || code === 123) {
      // ( [ {
      stack.push(inner);
      inner = new Map();
      symbol = "";
      group = undefined;
    } else if ((code === 41 || code === 93 || code === 125) && stack.length > 0) {
      // ) ] }
      group = inner;
      inner = stack.pop()!;
      symbol = "";
      for (const [one, count] of group) inner.set(one, (inner.get(one) ?? 0) + count);
    } else return undefined;
  }
  return stack.length === 0 ? inner : undefined;
}

/** The plain notation of the tables, read at once; everything else is left to the formula reader. */
function plainAtoms(text: string): Map<string, number> | undefined {
  // in CO3.10H2O the dot is no decimal point: the formula reader knows
  if (text.includes(".") && !text.includes("·")) return undefined;
  const charge = CHARGE.exec(text);
  const body = charge === null ? text : text.slice(0, charge.index);
  const all = new Map<string, number>();
  for (const part of body.split("·")) {
    const [multiplier = ""] = /^\d+(?:\.\d+)?/.exec(part) ?? [];
    const atoms = partAtoms(part.slice(multiplier.length));
    if (atoms === undefined || atoms.size === 0) return undefined;
    for (const [symbol, count] of atoms)
      all.set(symbol, (all.get(symbol) ?? 0) + count * (multiplier === "" ? 1 : Number(multiplier)));
  }
  if (charge !== null) all.set("e", Number(charge[1] ?? 1) * (charge[2] === "+" ? 1 : -1));
  return all;
}

function readAtoms(text: string): Atoms {
  const plain = plainAtoms(text);
  if (plain !== undefined) return plain;
  const formula = parseFormula(text);
  const atoms = new Map<string, number>();
  for (const { symbol, count } of formula.composition) atoms.set(symbol, Number(count.n) / Number(count.d));
  if (formula.charge !== 0) atoms.set("e", formula.charge);
  return atoms;
}

interface Named {
  readonly atoms: Atoms;
  readonly key: Key;
}

/** Names read before; as many as there are in the tables and a day's questions. */
const named = /* @__PURE__ */ memoised(5000, (text: string): Named => {
  const atoms = readAtoms(text);
  let key = "";
  for (const symbol of [...atoms.keys()].sort()) {
    const count = atoms.get(symbol)!;
    if (symbol !== "e" && count !== 0) key += count === 1 ? symbol : symbol + Number(count.toFixed(6));
  }
  const charge = atoms.get("e") ?? 0;
  if (charge !== 0) key += `${Math.abs(charge) === 1 ? "" : `^${Math.abs(charge)}`}${charge > 0 ? "+" : "-"}`;
  return { atoms, key };
});

/** The key of a species written as text. */
export const keyOf = (text: string): Key => named(text).key;

/** Atoms by symbol, and the charge under `e`, of a species. */
export const atomsOf = (text: string): Atoms => named(text).atoms;

/** Charge of a species. */
export const chargeOf = (text: string): number => named(text).atoms.get("e") ?? 0;

export const HYDRON = "H+";
export const WATER = "H2O";

/** How many of a species. */
export type Term = readonly [count: number, species: string];

const TERM = /^(?:(\d+(?:\.\d+)?) )?(\S+)$/;

/** One side of a reaction: `2 Fe^3+ + 2 H2O`. */
function side(text: string): Term[] {
  return text.split(" + ").map((part) => {
    const [, count = "1", species = part] = TERM.exec(part) ?? [];
    return [Number(count), species] as const;
  });
}

/** The dissolution of a row as a whole equation. */
export const dissolutionOf = ({
  solid,
  dissolution,
}: {
  readonly solid: string;
  readonly dissolution: string;
}): string => `${solid} ${dissolution}`;

/** A reaction of the tables, `a A + b B -> c C + d D`. */
export function readReaction(text: string): { readonly left: readonly Term[]; readonly right: readonly Term[] } {
  const at = text.indexOf(" -> ");
  return { left: side(text.slice(0, at)), right: side(text.slice(at + 4)) };
}
