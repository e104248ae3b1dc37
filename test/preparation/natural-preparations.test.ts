// Sixty preparations as they are naturally written, read line by line as a sceptical chemist would: what a sheet has to say, and
// what it said before and must not. Grounds beside the rows; where none is named, general chemistry, from memory.
import { describe, expect, it } from "vitest";
import { evaluateRun, planPreparation, tryPlanPreparation } from "../../src/preparation";
import { NATURAL_PREPARATIONS } from "../data/natural-preparations";

/** Everything that a person reads of a plan; of a refusal its words. */
function linesOf({ request }: (typeof NATURAL_PREPARATIONS)[number]): readonly string[] {
  const plan = tryPlanPreparation(request);
  if (!plan.ok) return [plan.error.message];
  const { steps, checks, byProducts, feasibility } = plan.value;
  return [
    ...steps.flatMap(({ text, cautions }) => [text, ...cautions.map((one) => one.text)]),
    ...checks.map(({ text }) => text),
    ...byProducts.map(
      ({ formula, mass, why }) => `${formula} ${mass.format({ significant: 3, uncertainty: "none" })}: ${why}`,
    ),
    ...feasibility.reasons.map(({ text }) => text),
  ];
}

describe("what a sheet says of a preparation written the natural way", () => {
  it("has sixty of them, each once", () => {
    expect(new Set(NATURAL_PREPARATIONS.map(({ id }) => id)).size).toBe(60);
  });

  it.each(NATURAL_PREPARATIONS.filter(({ says, never }) => says !== undefined || never !== undefined))("$id", (one) => {
    const lines = linesOf(one);
    for (const fact of one.says ?? [])
      expect(
        lines.some((line) => fact.test(line)),
        `${fact}:\n${lines.join("\n")}`,
      ).toBe(true);
    for (const fault of one.never ?? []) expect(lines.filter((line) => fault.test(line))).toEqual([]);
  });
});

describe("a liquor that has just fizzed", () => {
  it("is next to neutral over the carbonate that is left, and misses no base", () => {
    const { request } = NATURAL_PREPARATIONS.find(({ id }) => id.startsWith("Epsom salt"))!;
    const codes = (pH: number) =>
      evaluateRun(planPreparation(request), { pH, dried: "94 g" }).verdict.map(({ code }) => code);
    expect(codes(6.5)).not.toContain("liquor-ph");
    expect(codes(3)).toContain("liquor-ph");
  });
});
