// Two loaded copies of the library in one program, as when one dependency requires it and another imports it: values of one
// are values of the other.
import * as one from "preparative";
import { beforeAll, describe, expect, it, vi } from "vitest";

let other: typeof one;

beforeAll(async () => {
  vi.resetModules();
  other = await import("preparative");
});

describe("two copies", () => {
  it("are two", () => expect(other.PreparativeError).not.toBe(one.PreparativeError));

  it("add, subtract and compare each other's quantities", () => {
    const [a, b] = [one.quantity("1 g"), other.quantity("2.0(1) g")];
    expect(String(a.plus(b))).toBe("3.00 ± 0.10 g");
    expect(String(b.minus(a))).toBe("1.00 ± 0.10 g");
    expect(a.compare(b)).toBe(-1);
    expect(other.quantity("1 g").equals(a)).toBe(true);
    expect(String(one.quantity("50 % v/v").plus(other.quantity("1 % v/v")))).toBe("51 % v/v");
    expect(String(one.quantity("3 EUR").plus(other.quantity("2 EUR")))).toBe("5 EUR");
    expect(String(one.molarMass("NaCl").minus(other.molarMass("NaCl")).to("g/mol").value)).toBe("0");
  });

  it("multiply into units that both know", () => {
    expect(String(one.quantity("2 g").times(other.quantity("1 g")).dividedBy(one.quantity("1 g")))).toBe("2 g");
    expect(String(other.quantity("20 °C").plus(one.quantity("5 Δ°C")))).toBe("25 °C");
  });

  it("sum, choose and average over both", () => {
    const mixed = [one.quantity("1 g"), other.quantity("2 g"), one.quantity("3 g")];
    expect(String(one.sum(mixed))).toBe("6 g");
    expect(String(other.maximum(mixed))).toBe("3 g");
    expect(String(one.replicateStatistics(mixed).mean.to("g").value)).toBe("2");
  });

  it("know that one input used in both is one input", () => {
    const jar = one.quantity("10.0(1) g");
    expect(jar.minus(other.quantity(jar)).standardUncertainty?.toString()).toBe("0");
    expect(other.quantity(jar).minus(jar).standardUncertainty?.toString()).toBe("0");
  });

  it("plan with each other's values, record runs of each other's plans, and write their sheets", () => {
    const request = {
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "de-icer", form: other.parseFormula("CaCl2·2H2O"), assay: other.quantity("95(1) %") },
        { name: "soda", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { product: other.quantity("20 g") },
    } as const;
    const plan = one.planPreparation(request);
    const run = other.evaluateRun(plan, { dried: one.quantity("19 g") });
    expect(run.percentYield!.format({ decimals: 0, uncertainty: "none" })).toBe("95 %");
    expect(other.benchSheet(plan)).toBe(one.benchSheet(plan));
  });

  it("tell each other's errors by instanceof of the base class, and by code", () => {
    const outcome = other.tryQuantity("1 blob" as "1 g");
    const error = outcome.ok ? undefined : outcome.error;
    expect(error).toBeInstanceOf(one.PreparativeError);
    expect(one.isPreparativeError(error)).toBe(true);
    expect(new TypeError("x")).not.toBeInstanceOf(one.PreparativeError);
    expect(error).not.toBeInstanceOf(one.FormulaError);
  });
});
