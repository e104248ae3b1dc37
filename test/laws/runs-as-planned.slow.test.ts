// A run that went exactly as its sheet says is not blamed for anything: over every preparation that the tests have as a plan.
import { describe, expect, it } from "vitest";
import { evaluateRun, type PlanRequest, tryPlanPreparation } from "../../src/preparation";
import { BENCH_PREPARATIONS, requestOf } from "../data/bench-preparations";
import { BLIND_RUNS } from "../data/blind-runs";
import { NATURAL_PREPARATIONS } from "../data/natural-preparations";
import { FIRED, PRECIPITATES } from "../data/planted-runs";
import { PREPARATIONS } from "../data/preparations";
import { SECOND_TRIAL } from "../data/second-trial";

interface Named {
  readonly id: string;
  readonly request: PlanRequest;
}

/** Some of these batches are small: they need a balance of a laboratory. */
const fine = (request: PlanRequest): PlanRequest => ({
  ...request,
  readability: { mass: "0.001 g", volume: "0.1 mL" },
});

/** A published recipe as a request, where it can be one: its equation, its materials, the amount of the first. */
const published = PREPARATIONS.flatMap(({ id, recipe }): Named[] => {
  const { equation, product, materials } = recipe;
  const [first] = materials;
  if (typeof equation !== "string" || first?.form === undefined) return [];
  const shelf = materials.map(({ form, strength, density, assay }) => ({
    name: String(form),
    form: String(form),
    strength,
    density,
    assay,
  }));
  const scale = { material: String(first.form), portion: first.amount } as PlanRequest["scale"];
  const request = fine({ equation, product, materials: shelf, scale });
  const plan = tryPlanPreparation(request);
  return plan.ok || plan.error.code === "plan.does-not-go" ? [{ id, request }] : [];
});

const REQUESTS: readonly Named[] = [
  ...NATURAL_PREPARATIONS,
  ...SECOND_TRIAL.map(({ id, kind: _kind, theory: _theory, gas: _gas, ...request }) => ({ id, request })),
  ...BENCH_PREPARATIONS.map((one) => ({ id: one.id, request: fine(requestOf(one)) })),
  ...published,
  ...[...PRECIPITATES, ...FIRED],
  ...BLIND_RUNS.map(({ id, request }) => ({ id: `blind ${id}`, request })),
];

/** Codes that blame nobody. */
const AS_PLANNED = ["consistent", "loss-explained"];

describe("a run that went as its sheet says", () => {
  it("is one of many", () => expect(REQUESTS.length).toBeGreaterThan(350));

  it.each(REQUESTS)("$id", ({ request }) => {
    const plan = tryPlanPreparation(request);
    // What does not go has no sheet, and no run.
    if (!plan.ok) {
      expect(plan.error.code).toBe("plan.does-not-go");
      return;
    }
    const last = plan.value.steps.at(-1)!.before;
    const own = plan.value.product.theoreticalYield;
    // Salts that washing leaves are less than what sticks to a filter; what comes along in weight is weighed.
    const heavy = last.solids.filter(({ mass }) => mass.compare(own.times("1 %")) > 0);
    if (heavy.length === 0) return;
    // what a pack has besides stays in the crucible, and is weighed there: 54.3 g of lime and 3.0 g of what 97 % marble has besides
    const rest = plan.value.isolation.how === "residue" ? last.other.toNumber("g") : 0;
    const grams = heavy.reduce((all, { mass }) => all + mass.toNumber("g"), rest);
    const { verdict } = evaluateRun(plan.value, {
      dried: `${grams.toFixed(request.readability === undefined ? 1 : 3)} g` as "1 g",
    });
    // What the sheet itself says comes with the product is what the verdict names: lime over the need, wire that was not lifted out, another solid by the equilibrium.
    const isAlone = heavy.every(({ formula }) => formula === plan.value.product.formula);
    const named = verdict.slice(0, 2).map(({ code }) => code);
    if (isAlone) expect(AS_PLANNED, verdict[0]!.text).toContain(named[0]);
    else
      expect(
        named.some((code) =>
          [...AS_PLANNED, "unreacted", "second-solid", "mixture-fits", "other-formula-fits"].includes(code),
        ),
        named.join(),
      ).toBe(true);
  });
});
