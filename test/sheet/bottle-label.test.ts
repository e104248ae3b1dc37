import { bottleLabel, evaluateRun, type Plan, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const plan = planPreparation({
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  productName: "chalk <fine>",
  materials: [
    { name: "de-icer", form: "CaCl2·2H2O" },
    { name: "soda ash", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { product: "20 g" },
});

describe("the label of a bottle", () => {
  it("says what, how much, from what, how dry, and by whom", () => {
    const text = bottleLabel(evaluateRun(plan, { dried: ["19.1 g", "19.0 g"] }), { date: "1 May", owner: "A. B." });
    for (const part of [
      "CaCO₃",
      "chalk",
      "19.0 g",
      "constant mass",
      "assay not measured, estimated",
      "de-icer, soda ash",
      "1 May",
      "A. B.",
    ])
      expect(text).toContain(part);
    expect(text).toMatch(/safety data\s+sheet/);
    for (const line of text.split("\n")) expect([...line].length).toBeLessThanOrEqual(78);
  });

  it("warns of a bottle filled too early", () => {
    expect(bottleLabel(evaluateRun(plan, { dried: ["25 g", "20 g"] }))).toContain("NOT at constant mass");
    expect(bottleLabel(evaluateRun(plan, {}))).toContain("not weighed");
  });

  // GHS, Annex 3: the words as they are printed
  it("has precautionary statements in their official words, three at most", () => {
    const text = bottleLabel("NaOH").replace(/\s+/g, " ");
    expect(text).toContain("Wear protective gloves/protective clothing/eye protection/face protection (P280).");
    expect(text).toContain("IF IN EYES: Rinse cautiously with water for several minutes.");
    expect(text.match(/\(P[0-9+P]+\)/g)).toHaveLength(3);
  });

  it("is written in three formats, escaped", () => {
    expect(bottleLabel(plan, { format: "html" })).toContain("chalk &lt;fine&gt;");
    expect(bottleLabel(plan, { format: "markdown" })).toContain("# CaCO₃");
    expect(() => bottleLabel({} as Plan)).toThrow(expect.objectContaining({ code: "sheet.subject" }));
    expect(() => bottleLabel(plan, { format: "pdf" as "text" })).toThrow(
      expect.objectContaining({ code: "sheet.format" }),
    );
  });
});

describe("a solution on its label", () => {
  it("is called what the solution is called", () => {
    // names of the trade, from memory
    expect(bottleLabel("HCl", { strength: "32 %" })).toContain("hydrochloric acid");
    expect(bottleLabel("HF", { strength: "5 %" })).toContain("hydrofluoric acid");
    expect(bottleLabel("HCl")).toContain("hydrogen chloride");
    expect(bottleLabel("H2SO4", { strength: "37 %" })).toContain("sulfuric acid");
  });
});
