// How species are told apart and how reactions of the tables are read. A species is its composition and charge; the same
// ion written in two ways is one species.
import { parseFormula } from "../../formula";

/** Composition and charge as one text. */
export type Key = string;

const keys = /* @__PURE__ */ new Map<string, Key>();

/** The key of a species written as text. */
export function keyOf(text: string): Key {
  let key = keys.get(text);
  if (key === undefined) {
    key = parseFormula(text).compositionText;
    keys.set(text, key);
  }
  return key;
}

export const HYDRON = "H+";
export const WATER = "H2O";

/** How many of a species. */
export type Term = readonly [count: number, species: string];

const TERM = /^(?:(\d+(?:\.\d+)?) )?(\S+)$/;

/** One side of a reaction: `2 Fe+3 + 2 H2O`. */
function side(text: string): Term[] {
  return text.split(" + ").map((part) => {
    const [, count = "1", species = part] = TERM.exec(part) ?? [];
    return [Number(count), species] as const;
  });
}

/** A reaction of the tables, `a A + b B -> c C + d D`. */
export function readReaction(text: string): { readonly left: readonly Term[]; readonly right: readonly Term[] } {
  const at = text.indexOf(" -> ");
  return { left: side(text.slice(0, at)), right: side(text.slice(at + 4)) };
}

/** Atoms by symbol, and the charge under `e`, of a species. */
export function atomsOf(text: string): ReadonlyMap<string, number> {
  const formula = parseFormula(text);
  const atoms = new Map<string, number>();
  for (const { symbol, count } of formula.composition) atoms.set(symbol, Number(count.n) / Number(count.d));
  if (formula.charge !== 0) atoms.set("e", formula.charge);
  return atoms;
}
