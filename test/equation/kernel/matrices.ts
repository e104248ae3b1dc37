// Helpers of the kernel tests: seeded random matrices and an independent rank, sharing no code with the library.

/** Row by row, a share of the entries filled with whole numbers up to `largest` in magnitude. */
export function randomMatrix(
  random: () => number,
  rows: number,
  columns: number,
  density: number,
  largest: number,
): Float64Array {
  return Float64Array.from({ length: rows * columns }, () =>
    random() < density ? Math.round((random() * 2 - 1) * largest) : 0,
  );
}

function power(base: bigint, exponent: bigint, p: bigint): bigint {
  let result = 1n;
  for (let b = base % p, e = exponent; e > 0n; e >>= 1n) {
    if (e & 1n) result = (result * b) % p;
    b = (b * b) % p;
  }
  return result;
}

/** Rank by schoolbook elimination modulo a prime, inverses by Fermat. */
export function rankModulo(matrix: readonly (readonly bigint[])[], p: bigint): number {
  const a = matrix.map((row) => row.map((entry) => ((entry % p) + p) % p));
  const columns = a[0]?.length ?? 0;
  let rank = 0;
  for (let column = 0; column < columns && rank < a.length; column++) {
    const found = a.findIndex((row, at) => at >= rank && row[column] !== 0n);
    if (found < 0) continue;
    [a[rank], a[found]] = [a[found]!, a[rank]!];
    const inverse = power(a[rank]![column]!, p - 2n, p);
    for (let row = rank + 1; row < a.length; row++) {
      const factor = (a[row]![column]! * inverse) % p;
      if (factor !== 0n) a[row] = a[row]!.map((entry, at) => (((entry - factor * a[rank]![at]!) % p) + p) % p);
    }
    rank++;
  }
  return rank;
}
