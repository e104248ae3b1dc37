// How species are told apart and how reactions of the tables are read. A species is its composition and charge; the same
// ion written in two ways is one species.

import { parseFormula } from "../../formula";
import { plainAtoms } from "../../formula/internal";
import { memoised } from "../../foundation/memo";

/** Composition and charge as one text; `H+` and `H2O` read as they are written. */
export type Key = string;

/** Atoms by symbol, the charge under `e`. */
type Atoms = ReadonlyMap<string, number>;

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
