// The dangers of the bench, as they were written down apart from the tables: `npx tsx test/tools/safety-mutations.ts`
// deletes and shifts the rows of the tables one by one and counts which of them these facts notice.
import { describe, expect, it } from "vitest";
import { SAFETY_FACTS } from "../data/safety-facts";

describe("safety facts", () => {
  it("are at least 120, each once", () => {
    const facts = SAFETY_FACTS.map((one) => one.fact);
    expect(new Set(facts).size).toBe(facts.length);
    expect(facts.length).toBeGreaterThan(120);
  });

  it.each(SAFETY_FACTS.map((one) => [one.fact, one] as const))("%s", (_, { ground, broken }) => {
    expect(broken(), ground).toBeUndefined();
  });
});
