// Preparations the library was not made from: the recipe's figures and flags, the plan of each kind, and a run of it.
import { checkRecipe, evaluateRun, planPreparation, type Quantity } from "preparative";
import { describe, expect, it } from "vitest";
import { BENCH_PREPARATIONS, requestOf, weighedOf } from "../data/bench-preparations";

/** Five printed figures, and 2e-5 for the abridged weights behind them (as in the table of published preparations). */
function agrees(figure: Quantity, unit: string, printed: string): void {
  const value = figure.in(unit).toNumber();
  const half = 0.5 * 10 ** -(/\.(\d+)/.exec(printed)?.[1]?.length ?? 0);
  expect(Math.abs(value - Number(printed)), `${value} against ${printed} ${unit}`).toBeLessThanOrEqual(
    half * 1.0001 + Number(printed) * 2e-5,
  );
}

const plain = (formula: string): string => formula.normalize("NFKC");
describe.each(BENCH_PREPARATIONS)("$id", (p) => {
  it("comes to the figures calculated by hand", () => {
    const found = checkRecipe(p.recipe);
    expect(plain(found.account!.supplied.find((s) => s.limiting)!.form)).toBe(plain(p.limiting));
    agrees(found.theoreticalYield!, "g", p.theory);
    expect(found.gases.map((g) => plain(g.formula))).toEqual(Object.keys(p.gases));
    for (const gas of found.gases) agrees(gas.volume, "L", p.gases[plain(gas.formula)]!);
    expect(found.byProducts.map((b) => plain(b.formula))).toEqual(Object.keys(p.byProducts).map(plain));
    found.byProducts.forEach((by, i) => {
      agrees(by.mass, "g", Object.values(p.byProducts)[i]!);
    });
    for (const s of found.account!.supplied)
      agrees(s.timesStoichiometric, "", p.times[Object.keys(p.times).find((k) => plain(k) === plain(s.form))!]!);
  });

  it("shows what is odd about it, and nothing else", () => {
    expect(new Set(checkRecipe(p.recipe).findings.map((f) => f.code))).toEqual(new Set(p.findings));
  });

  it("is planned as its kind, watched by that kind's figures, and runs to the same theory", () => {
    const plan = planPreparation(requestOf(p));
    expect(plan.procedure.kind).toBe(p.kind);
    expect(plan.checks.length).toBeGreaterThanOrEqual(["redox", "other"].includes(p.kind) ? 0 : 1);
    agrees(evaluateRun(plan, { weighed: weighedOf(p) }).product.theoreticalYield, "g", p.theory);
  });
});
