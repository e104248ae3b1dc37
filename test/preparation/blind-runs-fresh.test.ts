// The fifth set of runs written blind (test/data/blind-runs-fresh.ts). At first sight 38 of 45 faults were named first, no good run raised
// an alarm.
import { evaluateRun, identifyByMassLoss, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";
import { FRESH_RUNS } from "../data/blind-runs-fresh";

/** Cream of tartar that stayed back and was boiled down with the rest weighs what is missing of the salt: only the sand seen in it tells. */
const BEYOND_FIGURES = ["e38-rochelle-salt-soda-monohydrate"];

describe("sixty more runs written blind", () => {
  const good = FRESH_RUNS.filter(({ id }) => id.startsWith("eg"));
  const faults = FRESH_RUNS.filter((run) => !good.includes(run) && !BEYOND_FIGURES.includes(run.id));
  const firstOf = ({ request, observations }: (typeof FRESH_RUNS)[number]) =>
    evaluateRun(planPreparation(request), observations).verdict[0]!;

  it("are 45 faults and 15 good ones, each once", () => {
    expect([faults.length + BEYOND_FIGURES.length, good.length]).toEqual([45, 15]);
    expect(new Set(FRESH_RUNS.map(({ id }) => id)).size).toBe(60);
  });

  it.each(faults)("$id is named first", (run) => {
    const first = firstOf(run);
    expect(run.accept, first.text).toContain(first.code);
  });

  it.each(good)("$id raises no alarm", (run) => {
    const first = firstOf(run);
    expect(run.accept, first.text).toContain(first.code);
  });
});

describe("what the fifth set taught", () => {
  // 2 × 136.06 of CaHPO4 leave 254.10 of Ca2P2O7: 6.62 % lost; 2 × 119.98 of NaH2PO4 leave 203.92 of (NaPO3)2: 15.0 %.
  it("acid phosphates lose their hydrogen as water", () => {
    const lossOf = (formula: string) => {
      const [one] = identifyByMassLoss({ before: "10 g", after: "9 g", candidates: [formula] }).candidates;
      return [one!.residue, one!.expectedLoss.format({ decimals: 1, uncertainty: "none" })];
    };
    expect(lossOf("CaHPO4")).toEqual(["Ca₂P₂O₇", "6.6 %"]);
    expect(lossOf("NaH2PO4")).toEqual(["NaPO₃", "15.0 %"]);
    // 1 - 254.10 / (2 × 172.09)
    expect(lossOf("CaHPO4·2H2O")).toEqual(["Ca₂P₂O₇", "26.2 %"]);
  });
});
