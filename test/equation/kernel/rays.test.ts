import { describe, expect, it } from "vitest";
import { supportOfCone } from "../../../src/equation/kernel/feasible";
import { integerNullspace, nullspaceOf } from "../../../src/equation/kernel/nullspace";
import { extremeRays } from "../../../src/equation/kernel/rays";
import { seeded } from "../../tools/random";
import { randomMatrix } from "./matrices";

const rowsOf = (entries: Float64Array, columns: number) =>
  Array.from({ length: entries.length / columns }, (_, row) =>
    Array.from(entries.subarray(row * columns, (row + 1) * columns), BigInt),
  );

/**
 * Extreme rays from their definition: a non-negative solution whose set of species contains no smaller one. Every subset
 * of the species is tried; where the solutions on it are the multiples of one positive vector, that vector is a ray.
 */
function raysByDefinition(matrix: bigint[][], columns: number): string[] {
  const rays: string[] = [];
  for (let mask = 1; mask < 1 << columns; mask++) {
    const chosen = [...Array(columns).keys()].filter((column) => mask & (1 << column));
    const vectors = integerNullspace(matrix.map((row) => chosen.map((column) => row[column]!)));
    if (vectors.length !== 1) continue;
    const vector = vectors[0]!;
    if (!vector.every((value) => value > 0n)) continue;
    const full = new Array<bigint>(columns).fill(0n);
    chosen.forEach((column, at) => {
      full[column] = vector[at]!;
    });
    rays.push(full.join());
  }
  return rays.sort();
}

describe("extreme rays of the non-negative solutions", () => {
  it("finds every elementary reaction of random systems, as the definition lists them", () => {
    const random = seeded(5);
    let several = 0;
    for (let round = 0; round < 400; round++) {
      const rows = 1 + Math.floor(random() * 4);
      const columns = rows + 1 + Math.floor(random() * (9 - rows - 1));
      const entries = randomMatrix(random, rows, columns, 0.6, 4);
      const result = extremeRays(nullspaceOf(entries, rows, columns), 10_000);
      if (!result.complete) throw new Error("gave up");
      const found = result.rays.map((ray) => ray.join()).sort();
      expect(found).toEqual(raysByDefinition(rowsOf(entries, columns), columns));
      if (found.length > 3) several++;
    }
    expect(several).toBeGreaterThan(50);
  });

  it("gives the same rays through big integers when entries leave the exact range", () => {
    const large = 10n ** 30n;
    const basis = integerNullspace([[1n, large, -1n, -large - 1n]]);
    const result = extremeRays(basis, 100);
    expect(result.complete && result.rays.map((ray) => ray.join()).sort()).toEqual(
      [
        [1n, 0n, 1n, 0n],
        [large + 1n, 0n, 0n, 1n],
        [0n, 1n, large, 0n],
        [0n, large + 1n, 0n, large],
      ]
        .map((ray) => ray.join())
        .sort(),
    );
  });

  it("gives each ray without a common divisor through big integers too, as through doubles", () => {
    const random = seeded(5);
    let compared = 0;
    for (let round = 0; round < 60; round++) {
      const basis = nullspaceOf(randomMatrix(random, 3, 7, 0.7, 6), 3, 7);
      const far = basis.map((vector) => [...vector].map(BigInt));
      const [near, big] = [extremeRays(basis, 500), extremeRays(far, 500)];
      if (!near.complete || !big.complete) continue;
      expect(big.rays.map((ray) => [...ray].join())).toEqual(near.rays.map((ray) => [...ray].join()));
      compared += near.rays.length;
    }
    expect(compared).toBeGreaterThan(20);
  });

  it("stops at the limit instead of running on", () => {
    // n sources and n sinks of one thing: n times n rays
    const row = Float64Array.from({ length: 80 }, (_, at) => (at < 40 ? 1 : -1));
    expect(extremeRays(nullspaceOf(row, 1, 80), 500)).toMatchObject({ complete: false });
  });

  it("keeps to the limit where the first cone is all there is", () => {
    const basis = [
      [1, 0, 1],
      [0, 1, 1],
    ];
    expect(extremeRays(basis, 2)).toMatchObject({ complete: true });
    expect(extremeRays(basis, 1)).toEqual({ complete: false, found: 2 });
    expect(extremeRays([], 1)).toEqual({ complete: true, rays: [] });
  });

  it("puts reactions of earlier species first, also where they differ beyond the thirtieth", () => {
    const ray = (last: number) => Array.from({ length: 70 }, (_, at) => Number(at === 0 || at === last));
    for (const [one, other] of [
      [31, 32],
      [5, 31],
      [29, 30],
      [32, 65],
      [1, 2],
    ] as const)
      expect(extremeRays([ray(other), ray(one)], 10)).toEqual({ complete: true, rays: [ray(one), ray(other)] });
  });

  it("lists the species that can take part, the same by linear programming and by the rays", () => {
    const random = seeded(11);
    for (let round = 0; round < 300; round++) {
      const rows = 1 + Math.floor(random() * 5);
      const columns = 2 + Math.floor(random() * 7);
      const entries = randomMatrix(random, rows, columns, 0.5, 3);
      const result = extremeRays(nullspaceOf(entries, rows, columns), 10_000);
      if (!result.complete) throw new Error("gave up");
      const fromRays = [...Array(columns).keys()].map((column) => result.rays.some((ray) => ray[column]! > 0));
      expect(supportOfCone(rowsOf(entries, columns), columns)).toEqual(fromRays);
    }
  });
});
