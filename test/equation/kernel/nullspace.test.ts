import { describe, expect, it } from "vitest";
import { nullspaceInBigInts } from "../../../src/equation/kernel/bareiss";
import { nullspaceInDoubles } from "../../../src/equation/kernel/doubles";
import { nullspaceModular } from "../../../src/equation/kernel/modular";
import { integerNullspace } from "../../../src/equation/kernel/nullspace";
import { seeded } from "../../tools/random";
import { randomMatrix, rankModulo } from "./matrices";

/** One shape for the answers of the three paths. */
const text = (vectors: readonly (readonly (number | bigint)[])[]) =>
  vectors.map((vector) => vector.map((value) => BigInt(value).toString()).join(","));

const rowsOf = (entries: Float64Array, columns: number) =>
  Array.from({ length: entries.length / columns }, (_, row) =>
    Array.from(entries.subarray(row * columns, (row + 1) * columns), BigInt),
  );

describe("exact nullspace of an integer matrix", () => {
  it("solves hydrogen burning in oxygen", () => {
    expect(
      integerNullspace([
        [2, 0, -2],
        [0, 2, -1],
      ]),
    ).toEqual([[2n, 1n, 2n]]);
  });

  it("gives one vector for each dimension and none for full rank", () => {
    expect(integerNullspace([[1, 1, 1]])).toEqual([
      [-1n, 1n, 0n],
      [-1n, 0n, 1n],
    ]);
    expect(
      integerNullspace([
        [1, 2],
        [3, 4],
      ]),
    ).toEqual([]);
    expect(integerNullspace([[0, 0]])).toEqual([
      [1n, 0n],
      [0n, 1n],
    ]);
  });

  it("refuses entries that are not whole numbers and rows of unequal length", () => {
    expect(() => integerNullspace([[0.5, 1]])).toThrow(expect.objectContaining({ code: "equation.bad-matrix" }));
    expect(() => integerNullspace([[2 ** 53, 1]])).toThrow(expect.objectContaining({ code: "equation.bad-matrix" }));
    expect(() => integerNullspace([[1, 2], [1]])).toThrow(expect.objectContaining({ code: "equation.bad-matrix" }));
  });

  it("gives no wrong answer in 20 000 systems chosen to overflow, whichever path is taken", () => {
    const random = seeded(20261125);
    let overflowed = 0;
    for (let round = 0; round < 20_000; round++) {
      const rows = 1 + Math.floor(random() * 7);
      const columns = 2 + Math.floor(random() * 8);
      const largest = [1, 12, 1000, 1e7, 1e12][Math.floor(random() * 5)]!;
      const entries = randomMatrix(random, rows, columns, 0.6, largest);
      // rows with a common factor: it is taken out only when the bounds grow, in the middle of a column
      if (round % 3 === 0 && largest <= 1000) {
        for (let row = 0; row < rows; row++) {
          const factor = 1 + Math.floor(random() * 1e9);
          for (let at = row * columns; at < (row + 1) * columns; at++) entries[at]! *= factor;
        }
      }
      const reference = text(nullspaceInBigInts(rowsOf(entries, columns), columns));
      const fast = nullspaceInDoubles(entries, rows, columns);
      if (fast === undefined) overflowed++;
      else expect(text(fast)).toEqual(reference);
      if (round % 4 === 0) expect(text(nullspaceModular(entries, rows, columns))).toEqual(reference);
    }
    // the set is of use only if both paths are taken often
    expect(overflowed).toBeGreaterThan(3000);
    expect(overflowed).toBeLessThan(17_000);
  });

  it("agrees with elimination in big integers past the cliff where doubles overflow", () => {
    const random = seeded(7);
    for (const [rows, columns, density] of [
      [15, 16, 0.9],
      [24, 25, 0.9],
      [30, 40, 0.2],
    ] as const) {
      const entries = randomMatrix(random, rows, columns, density, 9);
      expect(text(nullspaceModular(entries, rows, columns))).toEqual(
        text(nullspaceInBigInts(rowsOf(entries, columns), columns)),
      );
    }
  });

  // 16777213, 16777199, 16777183 are the largest primes below 2^24 (trial division in the test): modulo each of them entries
  // vanish, the rank falls or other columns are free, and what it told has to be thrown away
  it("finds the rank again after unlucky primes, one or several in a row", () => {
    const isPrime = (n: number) => {
      for (let d = 2; d * d <= n; d++) if (n % d === 0) return false;
      return true;
    };
    const unlucky: number[] = [];
    for (let n = 2 ** 24 - 1; unlucky.length < 3; n--) if (isPrime(n)) unlucky.push(n);
    expect(unlucky).toEqual([16_777_213, 16_777_199, 16_777_183]);
    const [p, q, r] = unlucky as [number, number, number];
    const matrices = [
      [[p, 1, -1]],
      [[1, p, -p]],
      [[p, -1]],
      [
        [p, 0, -1],
        [0, 1, -1],
      ],
      [
        [p, 2, -1],
        [p, 3, -1],
      ],
      [
        [p * q, 3, -1],
        [0, q, -2],
      ],
      [
        [p * q, 5, -1, 0],
        [p, 5, 0, -1],
        [q, 1, 1, 1],
      ],
      [
        [1, 1, 1],
        [1, 1 + p, 1],
      ],
      [
        [1, 1, 1],
        [1, 1 + p * q, 2],
      ],
      [
        [r, 1, -1, 4],
        [p, q, r, -1],
      ],
      [
        [p, 0],
        [0, q],
      ],
    ];
    for (const matrix of matrices) {
      const columns = matrix[0]!.length;
      const entries = Float64Array.from(matrix.flat());
      expect(text(nullspaceModular(entries, matrix.length, columns)), JSON.stringify(matrix)).toEqual(
        text(nullspaceInBigInts(rowsOf(entries, columns), columns)),
      );
    }
    const random = seeded(20261128);
    for (let round = 0; round < 2000; round++) {
      const rows = 1 + Math.floor(random() * 4);
      const columns = 2 + Math.floor(random() * 4);
      const entries = randomMatrix(random, rows, columns, 0.7, 5);
      for (let at = 0; at < entries.length; at++) {
        const dice = random();
        entries[at]! *= dice < 0.3 ? p : dice < 0.4 ? q : dice < 0.5 ? p * q : dice < 0.55 ? r : 1;
      }
      expect(text(nullspaceModular(entries, rows, columns)), entries.join()).toEqual(
        text(nullspaceInBigInts(rowsOf(entries, columns), columns)),
      );
    }
  });

  it("keeps every digit where only the answer leaves the exact range of doubles", () => {
    // P x = z and Q y = z with P and Q odd, without common divisor: z = P Q, just beyond 2^53
    const [P, Q] = [94_906_267, 94_906_273];
    expect(P * Q).toBeGreaterThan(2 ** 53);
    expect(
      integerNullspace([
        [P, 0, -1],
        [0, Q, -1],
      ]),
    ).toEqual([[BigInt(Q), BigInt(P), BigInt(P) * BigInt(Q)]]);
    const [p, q] = [94_906_249, 94_906_247];
    expect(p * q).toBeLessThan(2 ** 53);
    expect(
      integerNullspace([
        [p, 0, -1],
        [0, q, -1],
      ]),
    ).toEqual([[BigInt(q), BigInt(p), BigInt(p) * BigInt(q)]]);
  });

  it("keeps every digit of coefficients with two hundred digits", () => {
    // x = (10^200, 1): 1 x - 10^200 y = 0, padded with a second row that says the same twice over
    const large = 10n ** 200n;
    expect(
      integerNullspace([
        [1n, -large],
        [2n, -2n * large],
      ]),
    ).toEqual([[large, 1n]]);
  });

  it("gives as many vectors as columns less rank, the rank counted independently modulo a large prime", () => {
    const random = seeded(99);
    for (let round = 0; round < 300; round++) {
      const rows = 1 + Math.floor(random() * 10);
      const columns = 1 + Math.floor(random() * 12);
      const entries = randomMatrix(random, rows, columns, 0.4, 6);
      const matrix = rowsOf(entries, columns);
      const vectors = integerNullspace(matrix);
      expect(vectors.length).toBe(columns - rankModulo(matrix, (1n << 61n) - 1n));
      for (const vector of vectors) {
        for (const row of matrix) expect(row.reduce((sum, entry, at) => sum + entry * vector[at]!, 0n)).toBe(0n);
      }
    }
  });

  it("answers the next question rightly after an overflow or a refusal", () => {
    const bad = Float64Array.from([1e12, 1e12 - 1, 7, 3, 1e12 - 11, 1e12 + 5, 11, 1e12, 1e12 + 1, 1e12 + 77, 13, 17]);
    expect(nullspaceInDoubles(bad, 3, 4)).toBeUndefined();
    expect(integerNullspace([[1, -1]])).toEqual([[1n, 1n]]);
  });
});
