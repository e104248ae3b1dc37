// What the solver does for an answer, counted on the random systems of kernel.test.ts: Newton steps and rounds of the set of
// solids. The counts are exact for a seed; a change that moves them up makes every function of the beaker slower.
import { describe, expect, it } from "vitest";
import { Equilibrium } from "../../src/aqueous/solve/equilibrium";
import { newton } from "../../src/aqueous/solve/newton";
import { settleSmoothly } from "../../src/aqueous/solve/phases";
import { proofOf } from "../../src/aqueous/solve/proof";
import { crossing } from "../../src/aqueous/solve/root";
import { solutionOf } from "../../src/aqueous/solve/sensitivity";
import { systemOf } from "../../src/aqueous/solve/system";
import { compile, logActivity } from "../../src/aqueous/solve/tableau";
import { numbersFrom, type RandomSystem, randomSystem } from "./systems";

const many = (count: number, seed: number): RandomSystem[] => {
  const random = numbersFrom(seed);
  return Array.from({ length: count }, () => randomSystem(random));
};

describe("the effort of the solver", () => {
  const systems = many(400, 1);
  const solvers = systems.map((rows) => new Equilibrium(systemOf(rows)));

  it("is 17.7 Newton steps and 2.9 rounds for an answer from nothing, and the first way serves all of 400", () => {
    let [steps, rounds, first] = [0, 0, 0];
    for (const [i, solver] of solvers.entries()) {
      solver.solve(systems[i]!.totals);
      steps += solver.tableau.iterations;
      rounds += solver.tableau.rounds;
      if (solver.way === "active set") first += 1;
    }
    expect(steps / systems.length).toBeLessThan(17.7);
    expect(rounds / systems.length).toBeLessThan(2.94);
    expect(first).toBe(systems.length);
  });

  it("is 4.2 steps and one round from an answer nearby, with the same result as from nothing", () => {
    let [steps, rounds] = [0, 0];
    for (const [i, solver] of solvers.entries()) {
      const totals = systems[i]!.totals.map((total) => total * 1.001);
      solver.solve(totals, undefined, true);
      steps += solver.tableau.iterations;
      rounds += solver.tableau.rounds;
    }
    expect(steps / systems.length).toBeLessThan(4.18);
    expect(rounds).toBe(systems.length);
  });

  it("begins from the answer of another system of the same components", () => {
    let [steps, cold] = [0, 0];
    expect(systems.slice(0, 100).length, "rows to test").toBeGreaterThan(0);
    for (const [i, rows] of systems.slice(0, 100).entries()) {
      const other = new Equilibrium(systemOf(rows));
      const near = rows.totals.map((total) => total * 1.01);
      other.solve(near);
      cold += other.tableau.iterations;
      const fromNothing = solutionOf(other.tableau);
      solvers[i]!.solve(rows.totals);
      const { lnActivity, ionicStrength, amount } = solutionOf(solvers[i]!.tableau);
      other.solve(near, undefined, { lnActivity, ionicStrength, binds: (j) => amount[j]! !== 0 });
      steps += other.tableau.iterations;
      const fromNear = solutionOf(other.tableau);
      for (let j = 0; j < rows.components.length; j += 1)
        expect(Math.abs(fromNear.lnActivity[j]! - fromNothing.lnActivity[j]!)).toBeLessThan(1e-9);
    }
    // from nothing the same takes three times the steps
    expect(steps).toBeLessThan(cold / 2.5);
  });
});

describe("the other ways of the solver", () => {
  it("find the same answer: every condition as a steep exponential", () => {
    let [solved, standing] = [0, 0];
    for (const [i, rows] of many(80, 31).entries()) {
      const solver = new Equilibrium(systemOf(rows));
      solver.solve(rows.totals);
      const found = solutionOf(solver.tableau);
      standing += [...found.amount].filter((amount) => amount > 0).length;
      const again = new Equilibrium(systemOf(rows));
      // a start that knows no solids: all that is dissolved at the answer, none of them standing
      again.solve(rows.totals);
      if (settleSmoothly(again.tableau, true) !== "solved") continue;
      solved += 1;
      expect(proofOf(again.tableau).holds, `system ${i}`).toBe(true);
      const smooth = solutionOf(again.tableau);
      for (let j = 0; j < rows.components.length; j += 1)
        expect(Math.abs(smooth.lnActivity[j]! - found.lnActivity[j]!), `system ${i}`).toBeLessThan(1e-9);
    }
    expect(solved).toBeGreaterThan(77);
    expect(standing).toBeGreaterThan(50);
  });

  it("find the same answer: the ionic strength held, its own balance left out", () => {
    expect(many(100, 32).length, "rows to test").toBeGreaterThan(0);
    for (const [i, rows] of many(100, 32).entries()) {
      const solver = new Equilibrium(systemOf(rows));
      solver.solve(rows.totals);
      const t = solver.tableau;
      const before = Array.from({ length: rows.components.length }, (_, j) => logActivity(t, j));
      const { ionicStrength } = t;
      for (let k = 0; k < t.free; k += 1) t.x[t.freeColumn[k]!]! += k % 2 === 0 ? 0.3 : -0.3;
      compile(t);
      expect(newton(t, 1e-12, false), `system ${i}`).toBe(true);
      expect(t.ionicStrength).toBe(ionicStrength);
      expect(before.length, "rows to test").toBeGreaterThan(0);
      for (const [j, x] of before.entries()) expect(Math.abs(logActivity(t, j) - x), `system ${i}`).toBeLessThan(1e-9);
    }
  });
});

describe("the zero between two places", () => {
  const counted = (f: (x: number) => number) => {
    const seen: number[] = [];
    const told = (x: number): number => {
      seen.push(x);
      return f(x);
    };
    return { seen, f: told };
  };

  it("is found to twelve digits, whichever way the function runs", () => {
    for (const [f, ends, zero] of [
      [(x: number) => x * x - 2, [0, 2], Math.SQRT2],
      [(x: number) => 2 - x * x, [0, 2], Math.SQRT2],
      [(x: number) => x * x - 2, [2, 0], Math.SQRT2],
      [(x: number) => Math.exp(x) - 10, [-50, 50], Math.LN10],
      [(x: number) => Math.log(x) + 7, [1e-12, 1], Math.exp(-7)],
      [(x: number) => Math.cbrt(x + 3), [-10, 1], -3],
    ] as const) {
      const { seen, f: told } = counted(f);
      expect(crossing(told, ends) / zero).toBeCloseTo(1, 11);
      expect(seen.length).toBeLessThan(60);
    }
  });

  it("takes a dozen looks at a smooth function, never outside of the two places", () => {
    const { seen, f } = counted((x) => x * x - 2);
    crossing(f, [0, 2]);
    expect(seen.length).toBeLessThanOrEqual(13);
    expect(Math.min(...seen)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...seen)).toBeLessThanOrEqual(2);
  });

  it("is an end where the function is nothing there", () => {
    const { seen, f } = counted((x) => x - 1);
    expect(crossing(f, [1, 5])).toBe(1);
    expect(crossing(f, [-5, 1])).toBe(1);
    expect(seen).toEqual([1, 5, -5, 1]);
  });

  it("asks not again for values that are known", () => {
    const { seen, f } = counted((x) => x - 1);
    expect(crossing(f, [0, 3], [-1, 2])).toBeCloseTo(1, 12);
    expect(seen).not.toContain(0);
    expect(seen).not.toContain(3);
  });

  it("stops at the tolerance that is asked for, and goes on to a step without a slope", () => {
    const fine = counted((x) => x ** 3 - 5);
    const rough = counted((x) => x ** 3 - 5);
    crossing(fine.f, [1, 10]);
    const found = crossing(rough.f, [1, 10], undefined, 1e-2);
    expect(Math.abs(found / Math.cbrt(5) - 1)).toBeLessThan(2e-2);
    expect(rough.seen.length).toBeLessThan(fine.seen.length);
    // a step has no slope to follow: halving alone closes in on it
    const step = counted((x) => (x < 0.123456789 ? -1 : 1));
    expect(crossing(step.f, [0, 1])).toBeCloseTo(0.123456789, 11);
    expect(step.seen.length).toBeLessThan(170);
  });
});
