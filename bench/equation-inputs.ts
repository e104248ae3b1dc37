// Distinct inputs for the equation bench: the corpus with elements exchanged inside their family, which keeps an equation
// balanced, and random matrices of the shapes that equations have. Seeded, so every run sees the same.
import { CORPUS } from "../test/data/equation-corpus";
import { seeded } from "../test/tools/random";

const FAMILIES = [
  ["Li", "Na", "K", "Rb", "Cs"],
  ["Mg", "Ca", "Sr", "Ba"],
  ["F", "Cl", "Br", "I"],
  ["S", "Se", "Te"],
  ["Cr", "Mo", "W"],
  ["Fe", "Co", "Ni", "Zn", "Cd", "Mn"],
  ["Cu", "Ag", "Au"],
  ["Al", "Ga", "In"],
  ["P", "As", "Sb"],
  ["Si", "Ge", "Sn", "Pb"],
];

/** Variants taken of one equation of the corpus at most, so that long equations do not crowd out the short ones. */
const VARIANTS = 400;

/** Distinct equation texts, of the lengths that the corpus has. */
export function equationTexts(count: number, seed = 1): string[] {
  const random = seeded(seed);
  const found = new Set<string>();
  for (let round = 0; round < VARIANTS && found.size < count; round++) {
    for (const text of CORPUS) {
      const swaps = new Map<string, string>();
      for (const family of FAMILIES) {
        const shift = Math.floor(random() * family.length);
        family.forEach((symbol, at) => {
          swaps.set(symbol, family[(at + shift) % family.length]!);
        });
      }
      found.add(text.replace(/[A-Z][a-z]?/g, (symbol) => swaps.get(symbol) ?? symbol));
    }
  }
  return [...found].slice(0, count);
}

/** A matrix of exact integers, row by row. */
export interface BenchMatrix {
  readonly rows: number;
  readonly columns: number;
  readonly entries: Float64Array;
}

/** A matrix with the given share of entries from 1 to `largest`, products negative, as equations have them. */
export function randomSystem(
  random: () => number,
  rows: number,
  columns: number,
  density: number,
  largest: number,
): BenchMatrix {
  const entries = new Float64Array(rows * columns);
  for (let at = 0; at < entries.length; at++) {
    const sign = at % columns < columns / 2 ? 1 : -1;
    if (random() < density) entries[at] = sign * (1 + Math.floor(random() * largest));
  }
  return { rows, columns, entries };
}

/** Systems of the size of textbook equations, each different: 3 to 8 rows, one species more than rows. */
export function typicalSystems(count: number, seed = 2): BenchMatrix[] {
  const random = seeded(seed);
  return Array.from({ length: count }, () => {
    const rows = 3 + Math.floor(random() * 6);
    return randomSystem(random, rows, rows + 1, 0.45, 8);
  });
}

/** The same matrix in big integers. */
export function bigRows({ rows, columns, entries }: BenchMatrix): bigint[][] {
  return Array.from({ length: rows }, (_, row) =>
    Array.from(entries.subarray(row * columns, (row + 1) * columns), BigInt),
  );
}

/**
 * Bareiss' elimination as the books have it, in big integers, to the reduced form: every row is cleared above and below
 * each pivot, the pivot is the first entry that is not zero, and the kernel is read off. The yardstick of the bench.
 */
export function plainBareiss(matrix: readonly (readonly bigint[])[], columns: number): bigint[][] {
  const a = matrix.map((row) => [...row]);
  const pivots: number[] = [];
  let previous = 1n;
  for (let column = 0; column < columns; column++) {
    const rank = pivots.length;
    const found = a.findIndex((row, at) => at >= rank && row[column] !== 0n);
    if (found < 0) continue;
    [a[rank], a[found]] = [a[found]!, a[rank]!];
    const top = a[rank]!;
    const pivot = top[column]!;
    for (let row = 0; row < a.length; row++) {
      if (row === rank) continue;
      const own = a[row]!;
      const value = own[column]!;
      for (let at = 0; at < columns; at++) own[at] = (pivot * own[at]! - value * top[at]!) / previous;
    }
    previous = pivot;
    pivots.push(column);
  }
  const size = (value: bigint) => (value < 0n ? -value : value);
  return [...Array(columns).keys()]
    .filter((column) => !pivots.includes(column))
    .map((free) => {
      const vector = new Array<bigint>(columns).fill(0n);
      vector[free] = previous;
      pivots.forEach((column, row) => {
        vector[column] = -a[row]![free]!;
      });
      let common = 0n;
      for (const value of vector) for (let b = size(value); b !== 0n; ) [common, b] = [b, common % b];
      if (vector[free]! < 0n) common = -common;
      return vector.map((value) => value / common);
    });
}
