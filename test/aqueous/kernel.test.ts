// The solver as pure numbers. Checks are laws of the convex problem and a general-purpose root finder (reference.py).

import { describe, expect, it } from "vitest";
import { Equilibrium } from "../../src/aqueous/solve/equilibrium";
import { type Figure, gradientOf, type Solution, solutionOf } from "../../src/aqueous/solve/sensitivity";
import { type SystemRows, systemOf } from "../../src/aqueous/solve/system";
import { attempt } from "../../src/foundation/error";
import reference from "./reference.json";
import { numbersFrom, type RandomSystem, randomSystem } from "./systems";

const LN10 = Math.LN10;

function solved(rows: SystemRows, totals: readonly number[], slope?: number): Solution {
  const equilibrium = new Equilibrium(systemOf(rows));
  equilibrium.solve(totals, slope);
  return solutionOf(equilibrium.tableau);
}

const many = (count: number, seed: number): RandomSystem[] => {
  const random = numbersFrom(seed);
  return Array.from({ length: count }, () => randomSystem(random));
};

/** Largest difference of ln activity between two answers. */
const apart = (a: ArrayLike<number>, b: ArrayLike<number>, count: number): number => {
  let worst = 0;
  for (let i = 0; i < count; i += 1) worst = Math.max(worst, Math.abs(a[i]! - b[i]!));
  return worst;
};

describe("the solver", () => {
  it("solves every random system and proves it", () => {
    let tested = 0;
    for (const [i, rows] of many(2000, 1).entries()) {
      const proof = new Equilibrium(systemOf(rows)).solve(rows.totals);
      expect(proof.mass, `system ${i}`).toBeLessThanOrEqual(1e-12);
      expect(proof.saturation, `system ${i}`).toBeLessThanOrEqual(1e-9);
      expect(proof.negative, `system ${i}`).toBeGreaterThanOrEqual(-1e-13);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(1800);
  });

  it("agrees with a general root finder on 1000 systems", () => {
    expect(reference).toHaveLength(1000);
    const systems = many(1400, 2024);
    for (const [number, lnH, lnLast, ionicStrength] of reference as [number, number, number, number][]) {
      const rows = systems[number]!;
      const s = solved(rows, rows.totals);
      expect.soft(Math.abs(s.lnActivity[0]! - lnH), `H+ of system ${number}`).toBeLessThan(1e-9);
      expect.soft(Math.abs(s.lnActivity[s.n - 1]! - lnLast), `last of system ${number}`).toBeLessThan(1e-9);
      expect.soft(Math.abs(s.ionicStrength / ionicStrength - 1), `I of system ${number}`).toBeLessThan(1e-9);
    }
  });

  it("gives the exact root of a weak acid and of pure water", () => {
    const acid: SystemRows = {
      components: [1, -1],
      species: [
        { lnK: -14 * LN10, charge: -1, nu: [[0, -1]] },
        {
          lnK: 4.76 * LN10,
          charge: 0,
          nu: [
            [0, 1],
            [1, 1],
          ],
        },
      ],
      conditions: [],
    };
    // h² + Ka h = Ka c + Kw (1 + Ka/h), solved by iteration on h; ideal
    const [ka, c] = [10 ** -4.76, 0.1];
    let h = 1e-3;
    for (let i = 0; i < 100; i += 1) h = 1e-14 / h + (c * ka) / (h + ka);
    for (let i = 0; i < 200; i += 1) h = (h + 1e-14 / h + (c * ka) / (h + ka)) / 2;
    expect(solved(acid, [0.1, 0.1], 0).lnActivity[0]).toBeCloseTo(Math.log(h), 12);
    expect(solved({ ...acid, components: [1], species: [acid.species[0]!] }, [0], 0).lnActivity[0]! / LN10).toBeCloseTo(
      -7,
      12,
    );
  });

  it("finds derivatives that agree with differences", () => {
    const h = 1e-4;
    let tested = 0;
    for (const [i, rows] of many(15, 7).entries()) {
      const s = solved(rows, rows.totals);
      const standing = s.amount.findIndex((amount) => amount > 1e-9);
      const figures: { figure: Figure; of: (x: Solution) => number }[] = [
        { figure: { lnActivity: [[0, 1]] }, of: (x) => x.lnActivity[0]! },
        { figure: { molality: [[1, 1]] }, of: (x) => x.molality[1]! },
        ...(standing < 0
          ? []
          : [{ figure: { amount: [[standing, 1]] } as Figure, of: (x: Solution) => x.amount[standing]! }]),
      ];
      const set = (x: Solution): string =>
        [...x.basis]
          .filter((b) => b >= x.m)
          .sort()
          .join();
      for (const { figure, of } of figures) {
        const gradient = gradientOf(s, figure);
        const compare = (analytic: number, moved: (d: number) => Solution, what: string): void => {
          const [a, b, c, d] = [moved(h), moved(-h), moved(2 * h), moved(-2 * h)];
          // a solid that comes or goes within the difference makes a kink
          if ([a, b, c, d].some((x) => set(x) !== set(s))) return;
          const difference = (8 * (of(a) - of(b)) - (of(c) - of(d))) / (12 * h);
          const scale = (figure.lnActivity === undefined ? Math.abs(of(s)) : 1) + Math.abs(analytic);
          expect(Math.abs(difference - analytic) / scale, `system ${i}: ${what}`).toBeLessThan(1e-7);
        };
        for (const [j, total] of rows.totals.entries()) {
          const with_ = (d: number) => rows.totals.map((t, k) => (k === j ? t * (1 + d) : t));
          compare(gradient.totals[j]! * total, (d) => solved(rows, with_(d)), `total ${j}`);
        }
        for (const [j] of rows.conditions.entries()) {
          const with_ = (d: number) => rows.conditions.map((x, k) => (k === j ? { ...x, lnK: x.lnK + d } : x));
          compare(gradient.lnK[s.m + j]!, (d) => solved({ ...rows, conditions: with_(d) }, rows.totals), `solid ${j}`);
        }
        for (const [j] of rows.species.entries()) {
          const with_ = (d: number) => rows.species.map((x, k) => (k === j ? { ...x, lnK: x.lnK + d } : x));
          compare(gradient.lnK[s.n + j]!, (d) => solved({ ...rows, species: with_(d) }, rows.totals), `species ${j}`);
        }
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(15);
  });
});

describe("laws of the convex problem (ideal solutions)", () => {
  const pairs = many(200, 11);

  it("moves activities with totals: (T - T')·(x - x') is never negative", () => {
    const random = numbersFrom(12);
    expect(pairs.length, "rows to test").toBeGreaterThan(0);
    for (const rows of pairs) {
      const other = rows.totals.map((t) => t * (0.3 + 1.4 * random()));
      const [a, b] = [solved(rows, rows.totals, 0), solved(rows, other, 0)];
      let sum = 0;
      for (const [j, t] of rows.totals.entries()) sum += (t - other[j]!) * (a.lnActivity[j]! - b.lnActivity[j]!);
      expect(sum).toBeGreaterThanOrEqual(-1e-12);
    }
  });

  it("changes nothing but the amount when more of a standing solid is added (phase rule)", () => {
    let seen = 0;
    for (const rows of pairs) {
      const a = solved(rows, rows.totals);
      const standing = a.amount.findIndex((amount) => amount > 1e-9);
      if (standing < 0) continue;
      seen += 1;
      const totals = [...rows.totals];
      for (const [j, count] of rows.conditions[standing]!.nu) totals[j]! += 0.01 * count;
      const b = solved(rows, totals);
      expect(apart(a.lnActivity, b.lnActivity, a.m)).toBeLessThan(1e-9);
      expect(b.amount[standing]! - a.amount[standing]!).toBeCloseTo(0.01, 10);
    }
    expect(seen).toBeGreaterThan(90);
  });

  it("does not depend on the order of components", () => {
    expect(pairs.length, "rows to test").toBeGreaterThan(0);
    for (const rows of pairs) {
      const n = rows.components.length;
      const to = (j: number): number => n - 1 - j;
      const turned = <T extends { nu: readonly (readonly [number, number])[] }>(list: readonly T[]): T[] =>
        list.map((row) => ({ ...row, nu: row.nu.map(([j, count]) => [to(j), count] as const) }));
      const a = solved(rows, rows.totals);
      const b = solved(
        {
          components: [...rows.components].reverse(),
          species: turned(rows.species),
          conditions: turned(rows.conditions).reverse(),
        },
        [...rows.totals].reverse(),
      );
      for (let j = 0; j < n; j += 1) expect(Math.abs(a.lnActivity[j]! - b.lnActivity[to(j)]!)).toBeLessThan(1e-9);
    }
  });

  it("keeps the least soluble of two solids of one composition", () => {
    for (const rows of pairs) {
      const more = rows.conditions.map((x) => ({ ...x, lnK: x.lnK + 1 }));
      const a = solved(rows, rows.totals);
      const of = (conditions: RandomSystem["conditions"]): number =>
        apart(a.lnActivity, solved({ ...rows, conditions }, rows.totals).lnActivity, a.m);
      expect(of([...rows.conditions, ...more])).toBe(0);
      // the other order takes another way to the same answer
      expect(of([...more, ...rows.conditions])).toBeLessThan(1e-9);
    }
  });

  it("adds a component with nothing of it without a change", () => {
    expect(pairs.length, "rows to test").toBeGreaterThan(0);
    for (const rows of pairs) {
      const n = rows.components.length;
      const shift = <T extends { nu: readonly (readonly [number, number])[] }>(list: readonly T[]): T[] => [...list];
      const a = solved(rows, rows.totals);
      const b = solved(
        { components: [...rows.components, -1], species: shift(rows.species), conditions: shift(rows.conditions) },
        [...rows.totals, 0],
      );
      expect(apart(a.lnActivity, b.lnActivity, n)).toBeLessThan(1e-9);
    }
  });

  it("holds a pH, and the multiplier is what must be added: adding it by hand gives the same pH", () => {
    expect(pairs.length, "rows to test").toBeGreaterThan(0);
    for (const rows of pairs) {
      const held = {
        ...rows,
        conditions: [...rows.conditions, { kind: "held" as const, lnK: -5 * LN10, nu: [[0, 1]] as const }],
      };
      const a = solved(held, rows.totals);
      expect(a.lnActivity[0]).toBeCloseTo(-5 * LN10, 12);
      // the condition takes up what is too much
      const dose = -a.amount[rows.conditions.length]!;
      const b = solved(
        rows,
        rows.totals.map((t, j) => (j === 0 ? t + dose : t)),
      );
      expect(Math.abs(b.lnActivity[0]! + 5 * LN10)).toBeLessThan(1e-6);
    }
  });

  it("refuses what is not met, with the residuals", () => {
    // more of a component than any molality can make up in a double
    const rows: SystemRows = {
      components: [1, 2],
      species: [{ lnK: -14 * LN10, charge: -1, nu: [[0, -1]] }],
      conditions: [],
    };
    const refused = attempt(() => solved(rows, [0, 1e140]));
    expect(refused.ok ? undefined : refused.error.code).toBe("aqueous.not-converged");
    const { mass, holds } = (refused.ok ? {} : refused.error.details) as { mass: number; holds: boolean };
    expect(mass).toBeGreaterThan(1e-12);
    expect(holds).toBe(false);
  });

  it("refuses what is held twice, with a code", () => {
    const rows: SystemRows = {
      components: [1],
      species: [{ lnK: -14 * LN10, charge: -1, nu: [[0, -1]] }],
      conditions: [
        { kind: "held", lnK: -3 * LN10, nu: [[0, 1]] },
        { kind: "held", lnK: -4 * LN10, nu: [[0, 2]] },
      ],
    };
    expect(() => solved(rows, [0])).toThrowError(
      expect.objectContaining({
        code: "aqueous.over-determined",
        details: expect.objectContaining({ holds: false, saturation: expect.any(Number) }),
      }),
    );
    expect(() => solved({ ...rows, components: [1, 1], conditions: [] }, [0, -1])).toThrowError(
      expect.objectContaining({ code: "aqueous.impossible-totals" }),
    );
  });
});
