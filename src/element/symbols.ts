// Element symbols by dense index (atomic number - 1), found from one or two letters by direct lookup. The formula reader
// lives on this file, so it holds no strings beyond the symbols and builds its tables on first use.
import { STANDARD_WEIGHTS } from "./data/standard-weights";

/** Number of elements. */
export const ELEMENT_COUNT = 118;

/** Labelled nuclides are numbered `1000 Z + A`, so they never meet an element index. */
export const NUCLIDE_BASE = 1000;

const NONE = -1;
// 26 first letters x 32 (0 = no second letter, 1..26 = a..z)
const table = /* @__PURE__ */ new Int8Array(26 * 32);
/** Default weight in 1e-9 Da by element index; NaN where no standard weight exists. Exact: no weight has more decimals. */
const nanoWeights: number[] = [];
const symbols: string[] = [];
/** Default weights as they are published, by element index; empty where there is none. */
const weights: string[] = [];

/** The symbol table, `[(first - 65) * 32 + (second - 96 or 0)]` -> element index, or -1. */
export function symbolTable(): Int8Array {
  if (nanoWeights.length === 0) fill();
  return table;
}

/** Default atomic weights in integer nano-dalton by element index (conventional for interval elements, else published). */
export function nanoWeightTable(): readonly number[] {
  if (nanoWeights.length === 0) fill();
  return nanoWeights;
}

/** The conventional or the single value of the standard weight, digit for digit, by element index. */
export function standardWeight(index: number): string {
  if (weights.length === 0) fill();
  return weights[index]!;
}

function fill(): void {
  table.fill(NONE);
  STANDARD_WEIGHTS.trim()
    .split(/\s+/)
    .forEach((entry, index) => {
      const symbol = /^[A-Za-z]+/.exec(entry)![0];
      symbols.push(symbol);
      table[(symbol.charCodeAt(0) - 65) * 32 + (symbol.length > 1 ? symbol.charCodeAt(1) - 96 : 0)] = index;
      weights.push(entry.slice(symbol.length));
      nanoWeights.push(toNano(weights[index]!));
    });
}

/** Decimal text in daltons to integer nano-dalton; every standard weight is below 2^53 there and has at most 9 decimals. */
function toNano(text: string): number {
  if (text === "") return Number.NaN;
  const point = text.indexOf(".");
  return Number(text.slice(0, point) + text.slice(point + 1).padEnd(9, "0"));
}

/** Element index of a symbol spelled exactly, or -1. */
export function elementIndexOf(symbol: string): number {
  if (symbol.length === 0 || symbol.length > 2) return NONE;
  const first = symbol.charCodeAt(0) - 65;
  if (first < 0 || first > 25) return NONE;
  if (symbol.length === 1) return symbolTable()[first * 32]!;
  const second = symbol.charCodeAt(1) - 96;
  return second < 1 || second > 26 ? NONE : symbolTable()[first * 32 + second]!;
}

/** Symbol of an element index (`"Na"`), or of a labelled nuclide (`"13C"`; deuterium and tritium are `"D"` and `"T"`). */
export function symbolAt(index: number): string {
  if (symbols.length === 0) fill();
  if (index < ELEMENT_COUNT) return symbols[index]!;
  if (index === 1002) return "D";
  if (index === 1003) return "T";
  return `${index % NUCLIDE_BASE}${symbols[Math.floor(index / NUCLIDE_BASE) - 1]!}`;
}

/** Element index behind an element or nuclide index. */
export function elementOf(index: number): number {
  return index < ELEMENT_COUNT ? index : Math.floor(index / NUCLIDE_BASE) - 1;
}
