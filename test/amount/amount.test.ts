import { describe, expect, test } from "vitest";
import { type AmountError, amountOf, amountOfEntities, entitiesOf, massOf } from "../../src/amount";
import { attempt } from "../../src/foundation/error";
import { explain, quantity } from "../../src/quantity";

describe("mass and amount", () => {
  test("undo each other, purity included", () => {
    const purity = { assay: "97.5 %", moisture: "1.2 %" } as const;
    const mass = massOf("0.25 mol", "ZnSO4·7H2O", purity);
    expect(amountOf(mass, "ZnSO4·7H2O", purity).in("mol").toNumber()).toBeCloseTo(0.25, 14);
  });

  test("counts assay on the dry material and moisture on the whole", () => {
    const pure = amountOf("100 g", "Na2CO3");
    expect(amountOf("100 g", "Na2CO3", { assay: "98 %" }).dividedBy(pure).in("").toNumber()).toBeCloseTo(0.98, 14);
    expect(amountOf("100 g", "Na2CO3", { moisture: "10 %" }).dividedBy(pure).in("").toNumber()).toBeCloseTo(0.9, 14);
    const both = amountOf("100 g", "Na2CO3", { assay: "98 %", moisture: "10 %" });
    expect(both.dividedBy(pure).in("").toNumber()).toBeCloseTo(0.882, 14);
  });

  test("reads like a board", () => {
    const working = explain(amountOf("100.0 g", "ZnSO4·7H2O", { assay: "98.0 %" }));
    const last = working.steps.at(-1)!;
    expect(last.symbol).toBe("n(ZnSO₄·7H₂O)");
    expect(last.rule).toBe("amount = mass fraction × mass / molar mass");
    expect(last.formula.startsWith("w(ZnSO₄·7H₂O) × m(ZnSO₄·7H₂O) / M(ZnSO₄·7H₂O")).toBe(true);
  });

  test("carries the uncertainty of mass and assay", () => {
    const n = amountOf("100.0 ± 0.1 g", "NaCl", { assay: "98.0 ± 0.5 %" });
    expect(n.standardUncertainty!.div(n.value).toNumber()).toBeCloseTo(Math.hypot(0.001, 0.5 / 98), 5);
  });

  test.each([
    ["-1 g", {}, "amount.not-positive"],
    ["0 g", {}, "amount.not-positive"],
    ["1 g", { assay: "101 %" }, "amount.fraction-above-one"],
    ["1 g", { assay: "0 %" }, "amount.not-positive"],
    ["1 g", { moisture: "100 %" }, "amount.fraction-above-one"],
    ["1 g", { moisture: "-1 %" }, "amount.negative"],
  ] as const)("refuses %s with %o", (mass, purity, code) => {
    const outcome = attempt(() => amountOf(mass, "NaCl", purity));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
  });

  test("refuses a volume for a mass and says which argument", () => {
    const outcome = attempt(() => amountOf(quantity("1 L" as string), "NaCl"));
    expect(outcome.ok ? "" : outcome.error.code).toBe("quantity.wrong-dimension");
    expect(outcome.ok ? "" : outcome.error.message).toContain("mass");
  });

  test("refuses a formula it cannot read", () => {
    const outcome = attempt(() => massOf("1 mol", "NACL"));
    expect(outcome.ok ? "" : outcome.error.code).toBe("formula.unknown-symbol");
  });

  test("survives a bad call and answers the next good one", () => {
    expect(attempt(() => amountOf("x" as never, "NaCl")).ok).toBe(false);
    expect(attempt(() => amountOf("1 g", "NaCl")).ok).toBe(true);
  });

  test("gives an error that survives JSON", () => {
    const outcome = attempt(() => amountOf("-1 g", "NaCl"));
    const record = JSON.parse(JSON.stringify(outcome.ok ? {} : (outcome.error as AmountError)));
    expect(record).toMatchObject({ name: "AmountError", code: "amount.not-positive", details: { argument: "mass" } });
  });
});

describe("entities", () => {
  // SI Brochure, 9th ed. (2019): one mole is exactly 6.022 140 76e23 entities.
  test("a mole is the Avogadro number, exactly", () => {
    expect(entitiesOf("1 mol").in("").toFixed()).toBe("602214076000000000000000");
    expect(amountOfEntities("6.02214076e23").toString()).toBe("1 mol");
    expect(amountOfEntities(602214076000000000000000n).toString()).toBe("1 mol");
  });

  test("refuses less than nothing", () => {
    expect(attempt(() => entitiesOf("-1 mol")).ok).toBe(false);
  });
});
