// Nullspace of an integer matrix modulo word-size primes, joined by the Chinese remainder theorem: the path for systems
// whose minors leave the exact range of doubles. Primes stay below 2^24, so that 32 products fit into a double before a
// remainder is taken. What is joined are minors (Cramer's rule), not fractions, which halves the number of primes; the
// answer leaves only after A x = 0 has been verified exactly, so that neither an unlucky prime nor stopping early can
// let a wrong one pass.
import { bigGcd } from "../../foundation/gcd";
import { gcd } from "./doubles";

/** Products that may be added up before a remainder is due: 2^24 * 2^24 * 32 = 2^53. */
const PRODUCTS = 31;
const FIRST_CANDIDATE = 2 ** 24 - 1;
const primes: number[] = [];

function isPrime(candidate: number): boolean {
  for (let divisor = 3; divisor * divisor <= candidate; divisor += 2) if (candidate % divisor === 0) return false;
  return true;
}

/** The n-th prime below 2^24, counted downwards. */
function prime(n: number): number {
  while (primes.length <= n) {
    let candidate = primes.length === 0 ? FIRST_CANDIDATE : primes[primes.length - 1]! - 2;
    while (!isPrime(candidate)) candidate -= 2;
    primes.push(candidate);
  }
  return primes[n]!;
}

/** Remainder in [0, p) of an exact integer below 2^53 in magnitude; `inverse` is 1/p. */
function remainder(value: number, p: number, inverse: number): number {
  let rest = value - Math.floor(value * inverse) * p;
  // the quotient may be off by one, never more
  if (rest < 0) rest += p;
  else if (rest >= p) rest -= p;
  return rest;
}

/** Inverse modulo a prime by the extended Euclidean algorithm. */
function inverseOf(value: number, p: number): number {
  let [r0, r1, t0, t1] = [p, value, 0, 1];
  while (r1 !== 0) {
    const quotient = Math.floor(r0 / r1);
    [r0, r1] = [r1, r0 - quotient * r1];
    [t0, t1] = [t1, t0 - quotient * t1];
  }
  return t0 < 0 ? t0 + p : t0;
}

/** What one prime tells: the shape of the echelon form, and minors that solve the system. */
interface Image {
  rank: number;
  /** Row that holds the pivot of a column, or -1 for a free column. */
  readonly pivotRow: Int32Array;
  /** For each free column in turn, the denominator followed by the entries, modulo the prime. */
  readonly minors: Float64Array;
}

/** Echelon form and minors of the matrix modulo p. Each row is reduced by those above it, remainders taken late. */
function imageModulo(a: Float64Array, order: Int32Array, columns: number, p: number): Image {
  const rows = order.length;
  const inverse = 1 / p;
  const u = new Float64Array(rows * columns);
  const pivotRow = new Int32Array(columns).fill(-1);
  let rank = 0;
  let determinant = 1;
  for (let index = 0; index < rows; index++) {
    const own = index * columns;
    const from = order[index]! * columns;
    for (let at = 0; at < columns; at++) u[own + at] = a[from + at]! % p;
    let pending = 0;
    for (let column = 0; column < columns; column++) {
      const value = remainder(u[own + column]!, p, inverse);
      if (value === 0) continue;
      const row = pivotRow[column]!;
      if (row < 0) {
        // a new pivot: the row is scaled so that it reads one there
        const scale = inverseOf(value, p);
        for (let at = column + 1; at < columns; at++) {
          const entry = u[own + at]!;
          if (entry !== 0) u[own + at] = remainder(scale * remainder(entry, p, inverse), p, inverse);
        }
        determinant = remainder(determinant * value, p, inverse);
        pivotRow[column] = index;
        rank++;
        break;
      }
      if (pending === PRODUCTS) {
        for (let at = column + 1; at < columns; at++) u[own + at] = remainder(u[own + at]!, p, inverse);
        pending = 0;
      }
      pending++;
      const top = row * columns;
      for (let at = column + 1; at < columns; at++) u[own + at] = u[own + at]! - value * u[top + at]!;
    }
  }
  return { rank, pivotRow, minors: backSubstitute(u, pivotRow, columns, rank, determinant, p) };
}

function backSubstitute(
  u: Float64Array,
  pivotRow: Int32Array,
  columns: number,
  rank: number,
  determinant: number,
  p: number,
): Float64Array {
  const inverse = 1 / p;
  const minors = new Float64Array((columns - rank) * columns);
  let base = 0;
  for (let free = 0; free < columns; free++) {
    if (pivotRow[free]! >= 0) continue;
    minors[base + free] = determinant;
    for (let column = free - 1; column >= 0; column--) {
      const row = pivotRow[column]!;
      if (row < 0) continue;
      const top = row * columns;
      let sum = 0;
      let pending = 0;
      for (let at = column + 1; at <= free; at++) {
        sum += u[top + at]! * minors[base + at]!;
        if (++pending === PRODUCTS) {
          sum = remainder(sum, p, inverse);
          pending = 0;
        }
      }
      const value = remainder(sum, p, inverse);
      if (value !== 0) minors[base + column] = p - value;
    }
    base += columns;
  }
  return minors;
}

/** Rows with few entries first: less fill, and the same order for every prime. */
function orderOfRows(a: Float64Array, rows: number, columns: number): Int32Array {
  const filled = new Int32Array(rows);
  for (let row = 0; row < rows; row++) {
    for (let at = row * columns; at < (row + 1) * columns; at++) if (a[at] !== 0) filled[row]!++;
  }
  return Int32Array.from([...filled.keys()].sort((one, other) => filled[one]! - filled[other]! || one - other));
}

function sameShape(one: Image, other: Image): boolean {
  return one.pivotRow.every((row, column) => row === other.pivotRow[column]);
}

/**
 * Primitive integer vectors spanning the nullspace of a matrix of exact integers, one for each free column, whose own
 * entry is positive.
 *
 * @param a - row by row, magnitudes below 2^53; left untouched
 */
export function nullspaceModular(a: Float64Array, rows: number, columns: number): (number[] | bigint[])[] {
  const order = orderOfRows(a, rows, columns);
  let shape: Image | undefined;
  let misfits = 0;
  /** One mixed-radix digit per value and accepted prime, each balanced around zero. */
  let digits: Float64Array[] = [];
  let used: number[] = [];
  for (let n = 0; ; n++) {
    const p = prime(n);
    const image = imageModulo(a, order, columns, p);
    if (image.rank === columns) return [];
    if (shape === undefined || image.rank > shape.rank || (misfits > 1 && !sameShape(shape, image))) {
      // a larger rank, or several primes against one: the earlier prime was the unlucky one
      shape = image;
      digits = [];
      used = [];
      misfits = 0;
    } else if (!sameShape(shape, image)) {
      misfits++;
      continue;
    }
    const added = nextDigits(image.minors, digits, used, p);
    digits.push(added.digit);
    used.push(p);
    // a prime that adds nothing is the sign to stop; small systems are cheap to verify after every prime
    if ((added.settled || digits.length <= 4) && verified(a, rows, columns, digits, used)) {
      return vectorsOf(digits, used, columns, shape.pivotRow);
    }
  }
}

/** The next mixed-radix digit of every value (Garner), and whether all of them are zero. */
function nextDigits(minors: Float64Array, digits: readonly Float64Array[], used: readonly number[], p: number) {
  const inverse = 1 / p;
  const half = (p - 1) / 2;
  let product = 1;
  for (const earlier of used) product = remainder(product * (earlier % p), p, inverse);
  const scale = inverseOf(product, p);
  const digit = new Float64Array(minors.length);
  let settled = digits.length > 0;
  for (let at = 0; at < minors.length; at++) {
    // value of the digits so far, modulo p, by Horner's rule
    let known = 0;
    for (let k = digits.length - 1; k >= 0; k--)
      known = remainder(known * (used[k]! % p) + digits[k]![at]!, p, inverse);
    const rest = remainder(scale * remainder(minors[at]! - known, p, inverse), p, inverse);
    const balanced = rest > half ? rest - p : rest;
    digit[at] = balanced;
    if (balanced !== 0) settled = false;
  }
  return { digit, settled };
}

/** A x = 0 for every vector, in exact integers: the digits are multiplied out one by one and carried. */
function verified(
  a: Float64Array,
  rows: number,
  columns: number,
  digits: readonly Float64Array[],
  used: readonly number[],
): boolean {
  const count = digits[0]!.length / columns;
  for (let row = 0; row < rows; row++) {
    let reach = 0;
    for (let at = row * columns; at < (row + 1) * columns; at++) reach += Math.abs(a[at]!);
    // each digit is below 2^23, and the carry adds less than the row's reach
    if (reach * 2 ** 23 + reach >= 2 ** 53) {
      if (!rowVerifiedInBigInts(a, row, columns, digits, used)) return false;
      continue;
    }
    for (let index = 0; index < count; index++) {
      let carry = 0;
      for (let k = 0; k < digits.length; k++) {
        const digit = digits[k]!;
        let sum = carry;
        for (let at = 0; at < columns; at++) sum += a[row * columns + at]! * digit[index * columns + at]!;
        if (k === digits.length - 1) {
          if (sum !== 0) return false;
        } else {
          carry = sum / used[k]!;
          if (Math.floor(carry) !== carry || carry * used[k]! !== sum) return false;
        }
      }
    }
  }
  return true;
}

function rowVerifiedInBigInts(
  a: Float64Array,
  row: number,
  columns: number,
  digits: readonly Float64Array[],
  used: readonly number[],
): boolean {
  const values = join(digits, used);
  for (let base = 0; base < values.length; base += columns) {
    let sum = 0n;
    for (let at = 0; at < columns; at++) sum += BigInt(a[row * columns + at]!) * values[base + at]!;
    if (sum !== 0n) return false;
  }
  return true;
}

/** Big integers from their mixed-radix digits; two digits are put together in a double before BigInt begins. */
function join(digits: readonly Float64Array[], used: readonly number[]): bigint[] {
  const pairs = Math.ceil(digits.length / 2);
  const radix = Array.from({ length: pairs }, (_, k) => BigInt(used[2 * k]! * (used[2 * k + 1] ?? 1)));
  return Array.from({ length: digits[0]!.length }, (_, at) => {
    let value = 0n;
    for (let k = pairs - 1; k >= 0; k--) {
      const pair = digits[2 * k]![at]! + used[2 * k]! * (digits[2 * k + 1]?.[at] ?? 0);
      value = value === 0n ? BigInt(pair) : value * radix[k]! + BigInt(pair);
    }
    return value;
  });
}

/** Cut the joined values into vectors, without their content, the entry of the free column positive. */
function vectorsOf(
  digits: readonly Float64Array[],
  used: readonly number[],
  columns: number,
  pivotRow: Int32Array,
): (number[] | bigint[])[] {
  const free = [...pivotRow.keys()].filter((column) => pivotRow[column]! < 0);
  if (digits.length <= 2) {
    const values = digits.length === 1 ? digits[0]! : digits[0]!.map((low, at) => low + used[0]! * digits[1]![at]!);
    return free.map((column, index) => {
      const vector = Array.from(values.subarray(index * columns, (index + 1) * columns));
      let content = 0;
      for (const value of vector) content = gcd(content, Math.abs(value));
      if (vector[column]! < 0) content = -content;
      return vector.map((value) => (value === 0 ? 0 : value / content));
    });
  }
  const values = join(digits, used);
  return free.map((column, index) => {
    const vector = values.slice(index * columns, (index + 1) * columns);
    let content = vector[column]!;
    for (const value of vector) {
      if (content === 1n || content === -1n) break;
      if (value !== 0n) content = bigGcd(content, value);
    }
    if (vector[column]! < 0n !== content < 0n) content = -content;
    return content === 1n ? vector : vector.map((value) => value / content);
  });
}
