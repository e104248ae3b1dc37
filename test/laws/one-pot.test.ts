// One pot, one truth: what is said of a reaction is read from the state that the steps leave, over every preparation that the
// tests have as a plan: the product's share, every other solid, and the pH.
import type { Plan, PlanRequest } from "preparative";
import { describe, expect, it } from "vitest";
import { BENCH_PREPARATIONS, requestOf as benchRequestOf } from "../data/bench-preparations";
import { NATURAL_PREPARATIONS } from "../data/natural-preparations";
import { PREPARATIONS } from "../data/preparations";
import { SECOND_TRIAL } from "../data/second-trial";
import { planOrCode, requestOf } from "../tools/published-plans";

const carbonate = (metal: string, form: string, base: string): PlanRequest => ({
  equation: `${metal}SO4 + ${base} -> ${metal}CO3 + Na2SO4${base === "NaHCO3" ? " + CO2 + H2O" : ""}`,
  product: `${metal}CO3`,
  materials: [
    { name: "salt", form },
    { name: "base", form: base, excess: "5 %" },
  ],
  scale: { product: "0.1 mol" },
});

const REQUESTS: readonly (readonly [string, PlanRequest])[] = [
  ...PREPARATIONS.flatMap((one) => {
    const request = requestOf(one);
    return request === undefined ? [] : [[one.id, request] as const];
  }),
  ...BENCH_PREPARATIONS.map((one) => [one.id, benchRequestOf(one)] as const),
  ...NATURAL_PREPARATIONS.map(({ id, request }) => [id, request] as const),
  ...SECOND_TRIAL.map(
    ({ id, kind: _kind, theory: _theory, gas: _gas, ...request }) => [id, request as PlanRequest] as const,
  ),
  ["nickel carbonate by soda", carbonate("Ni", "NiSO4·6H2O", "Na2CO3")],
  ["nickel carbonate by bicarbonate", carbonate("Ni", "NiSO4·6H2O", "NaHCO3")],
  ["zinc carbonate by soda", carbonate("Zn", "ZnSO4·7H2O", "Na2CO3")],
  ["copper carbonate by bicarbonate", carbonate("Cu", "CuSO4·5H2O", "NaHCO3")],
];

/** Shares that differ by less are the rounding of the balance and of four figures in the equilibrium. */
const SAME = 0.01;
/** A solid of less than this share of the metal is no step's (0.02 in the steps). */
const TOLD = 0.03;

const moles = (solids: readonly { readonly formula: string; readonly amount: { toNumber(u: string): number } }[]) =>
  new Map(solids.map(({ formula, amount }) => [bare(formula), amount.toNumber("mol")]));

/** Without crystal water, as the hydrates of one salt have one constant here and another name there; oxide and hydroxide likewise. */
const bare = (formula: string): string => formula.split("·")[0]!;

/** The pot once the last material of the equation is in it and has reacted. */
function reacted(plan: Plan) {
  const names = plan.weighings.map(({ material }) => material);
  const last = plan.steps.findLastIndex(
    ({ vessel, materials, from }) =>
      vessel === "pot" && (materials.some((one) => names.includes(one)) || names.some((one) => from?.startsWith(one))),
  );
  const next = plan.steps[last + 1];
  // where nothing more is put in, the next step lets it react
  return next?.text.startsWith("Stir until the reaction") ? next.after : plan.steps[last]!.after;
}

describe("what is said of a reaction is what its steps leave", () => {
  const plans = REQUESTS.map(([id, request]) => [id, planOrCode(request)] as const).filter(
    (one): one is readonly [string, Plan] => typeof one[1] !== "string",
  );
  const judged = plans.filter(([, { feasibility }]) => feasibility.reasons.some(({ code }) => code === "equilibrium"));

  it("is asked of many", () => expect(judged.length).toBeGreaterThan(170));

  it.each(judged)("%s", (_, plan) => {
    const { feasibility, isolation, product } = plan;
    const after = reacted(plan);
    const stated = feasibility.reasons
      .find(({ code }) => code === "equilibrium")!
      .numbers.find(({ label }) => label === "pH of the liquor");
    // a liquor still hot from dissolving is judged as it is once it has cooled
    const isCold = isolation.how === "precipitate" || after.temperature.equals(plan.temperature);
    if (after.pH !== undefined && stated !== undefined && isCold)
      expect(Math.abs(after.pH.toNumber() - stated.toNumber())).toBeLessThan(0.1);
    if (isolation.how !== "precipitate" || feasibility.share === undefined) return;
    const theory = product.amount.toNumber("mol");
    const inPot = moles(after.solids);
    const own = (inPot.get(bare(product.formula)) ?? 0) / theory;
    expect(Math.abs(Math.min(1, own) - feasibility.share.toNumber())).toBeLessThan(SAME);
    expect(feasibility.solids.length, "rows to test").toBeGreaterThan(0);
    for (const { formula, amount, share } of feasibility.solids) {
      const told = inPot.get(bare(formula));
      if (share.toNumber() < TOLD || told === undefined) continue;
      const both = `${formula}: ${told} mol in the steps, ${amount} said; ${[...inPot].join(" ")}; ${feasibility.reasons[0]?.text}`;
      expect(Math.abs(told - amount.toNumber("mol")) / theory, both).toBeLessThan(2 * SAME);
    }
  });
});
