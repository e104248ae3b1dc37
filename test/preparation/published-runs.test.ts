// The verdict against runs that were published with their figures and their causes (test/data/published-runs.ts).
import { evaluateRun, identifyByMassLoss, parseFormula, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";
import { PUBLISHED_RUNS, PUBLISHED_SAMPLES } from "../data/published-runs";

describe("a run that was published", () => {
  it.each(PUBLISHED_RUNS.map((one) => [one.id, one] as const))("%s", (_, one) => {
    const plan = planPreparation(one.request);
    if (one.theory !== undefined)
      expect(plan.product.theoreticalYield.in("g").toNumber() / one.theory).toBeCloseTo(1, 2);
    const { verdict } = evaluateRun(plan, one.observations);
    const [first] = verdict;
    expect(one.first, `${one.says}: ${first!.text}`).toContain(first!.code);
  });

  it.each(PUBLISHED_SAMPLES.map((one) => [one.source, one] as const))("%s: the loss is that of its label", (_, one) => {
    const { product, before, after } = one;
    const { candidates } = identifyByMassLoss({ product, before, after });
    expect(candidates.find(({ formula }) => formula === parseFormula(product).toUnicode())!.fits).toBe(true);
  });
});
