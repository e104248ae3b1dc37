// Extreme rays of the cone { x >= 0, A x = 0 }: every elementary reaction of a system. Double description (Motzkin et
// al. 1953) on the nullspace: the free columns give a first simplicial cone, and each further species cuts it. Exact:
// doubles while products stay below 2^53, big integers after. The work is bounded, because the number of rays can grow
// exponentially.
import { bigGcd } from "../../foundation/gcd";
import { EXACT, gcd } from "./doubles";
import type { IntegerVector } from "./nullspace";
import { toBigInts } from "./nullspace";

/** Steps of the adjacency test after which the enumeration gives up, about a second of work. */
const WORK_LIMIT = 2e8;

/** The rays, or how far the enumeration came when it passed a limit. */
type RayResult =
  | { readonly complete: true; readonly rays: IntegerVector[] }
  | { readonly complete: false; readonly found: number };

/** Which entries of a vector are not zero, thirty to a word. */
type Support = Int32Array;

interface Ray<T> {
  readonly vector: T[];
  readonly support: Support;
}

/** The little arithmetic that double description needs, over doubles or over big integers. */
interface Arithmetic<T extends number | bigint> {
  /** a x + b y without its content, or undefined past the exact range. */
  combine(a: T, x: readonly T[], b: T, y: readonly T[]): T[] | undefined;
}

const doubles: Arithmetic<number> = {
  combine(a, x, b, y) {
    const common = gcd(a, b);
    const left = a / common;
    const right = b / common;
    const vector = new Array<number>(x.length);
    let content = 0;
    for (let at = 0; at < x.length; at++) {
      const first = left * x[at]!;
      const second = right * y[at]!;
      if (Math.abs(first) + Math.abs(second) >= EXACT) return undefined;
      const value = first + second;
      vector[at] = value;
      if (value !== 0 && content !== 1) content = gcd(content, Math.abs(value));
    }
    if (content > 1) for (let at = 0; at < vector.length; at++) vector[at] = vector[at]! / content;
    return vector;
  },
};

const bigIntegers: Arithmetic<bigint> = {
  combine(a, x, b, y) {
    const vector = x.map((value, at) => a * value + b * y[at]!);
    let content = 0n;
    for (const value of vector) content = bigGcd(content, value);
    return content > 1n ? vector.map((value) => value / content) : vector;
  },
};

function supportOf(vector: readonly (number | bigint)[]): Support {
  const words = new Int32Array(Math.ceil(vector.length / 30));
  for (let at = 0; at < vector.length; at++) {
    // 0 and 0n are both false
    if (vector[at]) words[(at / 30) | 0]! |= 1 << (at % 30);
  }
  return words;
}

/**
 * All extreme rays of the non-negative cone in the space that the basis spans, each without content, in a fixed order.
 *
 * @param basis - one vector per free column, as `nullspaceOf` gives them
 * @param limit - rays to hold at most, at any stage
 */
export function extremeRays(basis: readonly IntegerVector[], limit: number): RayResult {
  if (basis.length === 0) return { complete: true, rays: [] };
  const small = basis.every((vector) => typeof vector[0] === "number");
  const fast = small ? describe(basis as number[][], doubles, limit) : undefined;
  return fast ?? describe(basis.map(toBigInts), bigIntegers, limit)!;
}

/** Columns where exactly one basis vector has an entry, one for each: they span the first cone. */
function freeColumns<T extends number | bigint>(basis: readonly T[][]): number[] {
  return basis.map((vector, index) => {
    for (let column = vector.length - 1; column >= 0; column--) {
      if (vector[column]! > 0 && basis.every((other, at) => at === index || !other[column])) return column;
    }
    throw new Error("a nullspace basis has a column of its own for each vector");
  });
}

function describe<T extends number | bigint>(
  basis: readonly T[][],
  arithmetic: Arithmetic<T>,
  limit: number,
): RayResult | undefined {
  const columns = basis[0]!.length;
  const done = new Int32Array(Math.ceil(columns / 30));
  const mark = (column: number) => {
    done[(column / 30) | 0]! |= 1 << (column % 30);
  };
  const free = new Set(freeColumns(basis));
  for (const column of free) mark(column);
  let rays: Ray<T>[] = basis.map((vector) => ({ vector: [...vector], support: supportOf(vector) }));
  let work = 0;

  for (let column = 0; column < columns; column++) {
    if (free.has(column)) continue;
    mark(column);
    const above = rays.filter((ray) => ray.vector[column]! > 0);
    const below = rays.filter((ray) => ray.vector[column]! < 0);
    if (below.length === 0) continue;
    const kept = rays.filter((ray) => ray.vector[column]! >= 0);
    for (const plus of above) {
      for (const minus of below) {
        work += rays.length;
        if (work > WORK_LIMIT) return { complete: false, found: kept.length };
        if (!adjacent(plus.support, minus.support, rays, done, column)) continue;
        const vector = arithmetic.combine(
          negated(minus.vector[column]!),
          plus.vector,
          plus.vector[column]!,
          minus.vector,
        );
        if (vector === undefined) return undefined;
        kept.push({ vector, support: supportOf(vector) });
        if (kept.length > limit) return { complete: false, found: kept.length };
      }
    }
    rays = kept;
  }
  // where nothing was cut, the first cone itself may have more rays than are wanted
  if (rays.length > limit) return { complete: false, found: rays.length };
  rays.sort((one, other) => compareSupports(one.support, other.support));
  return { complete: true, rays: rays.map((ray) => ray.vector as IntegerVector) };
}

function negated<T extends number | bigint>(value: T): T {
  return -value as T;
}

/** Two rays are adjacent when no third ray vanishes wherever both of them do, among the species already cut in. */
function adjacent<T>(one: Support, other: Support, rays: readonly Ray<T>[], done: Support, current: number): boolean {
  const words = done.length;
  const currentWord = (current / 30) | 0;
  const currentBit = 1 << (current % 30);
  for (const { support } of rays) {
    if (support === one || support === other) continue;
    let inside = true;
    for (let word = 0; word < words && inside; word++) {
      // the species now being cut in is no constraint of the cone yet
      const among = word === currentWord ? done[word]! & ~currentBit : done[word]!;
      if ((support[word]! & ~(one[word]! | other[word]!) & among) !== 0) inside = false;
    }
    if (inside) return false;
  }
  return true;
}

/** Reactions that use the earlier species come first. */
function compareSupports(one: Support, other: Support): number {
  for (let word = 0; word < one.length; word++) {
    const difference = one[word]! ^ other[word]!;
    if (difference !== 0) return (one[word]! & (difference & -difference)) !== 0 ? -1 : 1;
  }
  return 0;
}
