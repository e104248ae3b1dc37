import { explain, quantity } from "preparative";
import { describe, expect, it } from "vitest";

const m = quantity("250.0(1) g", { symbol: "m", label: "salt as weighed" });
const w = quantity("98 %", { symbol: "w", label: "assay", source: "label of the pack (invented)" });
const M = quantity("287.54 g/mol", { symbol: "M", label: "molar mass", source: "CIAAW 2024" });
const n = m.times(w).dividedBy(M).named({ symbol: "n", rule: "amount = mass × mass fraction / molar mass" });
const yield_ = n
  .dividedBy(5)
  .times(quantity("549.0 g/mol", { symbol: "M2" }))
  .named({ symbol: "m2", rule: "theoretical yield", assumption: "all of it precipitates" });

describe("the working of a result", () => {
  it("prints as a teacher would write it", () => {
    expect(explain(yield_).toString()).toBe(
      [
        "Given",
        "  m  = 250.00 ± 0.10 g   salt as weighed",
        "  w  = 98 %   assay  [1]",
        "  M  = 287.54 g/mol   molar mass  [2]",
        "  M2 = 549.0 g/mol",
        "1. amount = mass × mass fraction / molar mass",
        "   n = m × w / M",
        "     = 250.0 g × 98 % / 287.54 g/mol",
        "     = 0.85206 mol",
        "2. theoretical yield",
        "   m2 = n / 5 × M2",
        "      = 0.85206 mol / 5 × 549.0 g/mol",
        "      = 93.556 g",
        "Assumptions",
        "  - all of it precipitates",
        "Sources",
        "  [1] label of the pack (invented)",
        "  [2] CIAAW 2024",
      ].join("\n"),
    );
  });

  it("gives the same as data", () => {
    const { steps, given, sources, assumptions, result } = explain(yield_);
    expect(steps.map((s) => [s.symbol, s.formula, s.result])).toEqual([
      ["n", "m × w / M", "0.85206 mol"],
      ["m2", "n / 5 × M2", "93.556 g"],
    ]);
    expect(given.map((g) => g.symbol)).toEqual(["m", "w", "M", "M2"]);
    expect(sources).toEqual(["label of the pack (invented)", "CIAAW 2024"]);
    expect(assumptions).toEqual(["all of it precipitates"]);
    expect(result).toBe("93.556 g");
  });

  it("writes no step twice, and brackets only where they matter", () => {
    const twice = n
      .plus(n)
      .times(quantity("2", { symbol: "k" }).minus("1"))
      .dividedBy(n.times(w))
      .named({ symbol: "q" });
    const { steps } = explain(twice);
    expect(steps.map((s) => s.symbol)).toEqual(["n", "q"]);
    expect(steps[1]!.formula).toBe("(n + n) × (k - 1) / (n × w)");
  });

  it("gives an unnamed result that is used twice a line of its own", () => {
    const x = m.times(2);
    expect(explain(x.plus(x)).steps.map((s) => s.formula)).toEqual(["2 × m", "x1 + x1"]);
  });

  it("gives two things of one name two symbols, and one thing in two units one", () => {
    const first = quantity("21.15 mL", { symbol: "mean", label: "mean of 3 titres" });
    const second = quantity("20.05 mL", { symbol: "mean", label: "mean of 2 titres" });
    const ratio = explain(first.dividedBy(second).named({ symbol: "f" }));
    expect(ratio.given.map((g) => g.symbol)).toEqual(["mean", "mean₂"]);
    expect(ratio.steps[0]!.formula).toBe("mean / mean₂");
    expect(explain(n.plus(n.to("mmol")).named({ symbol: "q" })).steps.at(-1)!.formula).toBe("n + n");
  });
});
