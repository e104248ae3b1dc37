// How much work an order of precipitation is: equilibria solved, which no other program on the machine can change.
import { describe, expect, it } from "vitest";
import { hydroxidePrecipitationRange, precipitationOrder } from "../../src";
import { Equilibrium } from "../../src/aqueous/solve/equilibrium";

const solved = (ask: () => unknown): number => {
  const { solve } = Equilibrium.prototype;
  let calls = 0;
  Equilibrium.prototype.solve = function (this: Equilibrium, ...given) {
    calls += 1;
    return solve.apply(this, given);
  };
  try {
    ask();
  } finally {
    Equilibrium.prototype.solve = solve;
  }
  return calls;
};

const at = (solid: string) => ({ solid, concentration: "0.01 mol/L" }) as const;

describe("the search for where a solid begins", () => {
  // by halving it took 793 and 1,034 equilibria, each from a cold start
  it.each([
    ["Ag+", ["AgCl", "AgBr", "AgI"]],
    ["OH-", ["Fe(OH)3", "Cu(OH)2", "Mg(OH)2"]],
  ])("solves at most 400 equilibria for three solids with %s", (precipitant, solids) => {
    const count = solved(() => precipitationOrder({ precipitant, solids: solids.map(at) }));
    expect(count).toBeGreaterThan(0);
    expect(count).toBeLessThan(400);
  });

  it("solves at most 400 equilibria for both ends of a hydroxide", () => {
    expect(
      solved(() => hydroxidePrecipitationRange({ metal: "Al^3+", concentration: "0.1 mol/L" }).redissolvesFrom),
    ).toBeLessThan(400);
  });
});
