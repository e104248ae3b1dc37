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

  it("gives a result named once more under the same symbol no second symbol", () => {
    expect(explain(n.plus(n.named({ symbol: "n", label: "as before" }))).steps.map((s) => s.formula)).toEqual([
      "m × w / M",
      "n",
      "n + n",
    ]);
  });

  it("gives one input under other words one symbol, and two results of one name two", () => {
    const again = m.named({ label: "the same jar" });
    expect(explain(m.plus(again)).steps[0]!.formula).toBe("m + m");
    expect(explain(m.plus(again)).given).toHaveLength(1);
    const [twice, thrice] = [2, 3].map((k) => m.times(k).named({ symbol: "x" }));
    expect(explain(twice!.dividedBy(thrice!)).steps.map((s) => `${s.symbol} = ${s.formula}`)).toEqual([
      "x = 2 × m",
      "x₂ = 3 × m",
      "result = x / x₂",
    ]);
  });

  it("gives a line to what has a rule or a symbol, and calls the last line a result", () => {
    const doubled = m.times(2);
    const formulas = (q: typeof m) => explain(q).steps.map((s) => `${s.symbol} = ${s.formula}`);
    expect(formulas(doubled.named({ rule: "twice" }).plus("1 g"))).toEqual(["x1 = 2 × m", "result = x1 + 1 g"]);
    expect(formulas(doubled.named({ symbol: "d" }).plus("1 g"))).toEqual(["d = 2 × m", "result = d + 1 g"]);
    expect(formulas(doubled.plus("1 g"))).toEqual(["result = 2 × m + 1 g"]);
  });

  it("does not say the words of a figure twice where they are its symbol", () => {
    expect(
      explain(quantity("5 g", { label: "sugar" }).plus("1 g"))
        .toString()
        .split("\n")[1],
    ).toBe("  sugar = 5 g");
  });

  it("lists the sources of what was given before those of the steps", () => {
    const rule = m.times(2).named({ symbol: "d", source: "the rule" });
    const later = rule.plus(quantity("1 g", { symbol: "k", source: "the figure" }));
    expect(explain(later).sources).toEqual(["the figure", "the rule"]);
  });

  // seven characters are shown whole, more are cut to five figures: 24691.2 / 2 = 12345.6, 24691.34 / 2 = 12345.67
  it("shows an exact result whole where it is short, to five figures where it is not", () => {
    const half = (text: "1 g") => explain(quantity(text).dividedBy(2)).result;
    expect(["0.25 g", "24691.2 g", "24691.34 g"].map((text) => half(text as "1 g"))).toEqual([
      "0.125 g",
      "12345.6 g",
      "12346 g",
    ]);
    expect(explain(quantity("1 g").dividedBy(3)).result).toBe("0.33333 g");
    expect(explain(quantity("1 g").minus("1 g").times(2)).result).toBe("0.00 g");
  });
});
