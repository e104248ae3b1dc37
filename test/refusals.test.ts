// Calls which once ended in an error of the runtime, in a wrong answer or in an endless wait, each with the code it is
// refused with now.
import * as preparative from "preparative";
import { isPreparativeError } from "preparative";
import { describe, expect, it } from "vitest";

// Callers without types.
// biome-ignore lint/suspicious/noExplicitAny: every call here is one that the types forbid
const p = preparative as any;

const codeOf = (run: () => unknown): string => {
  try {
    return `answered ${String(run())}`;
  } catch (error) {
    return isPreparativeError(error) ? error.code : `not coded: ${String(error)}`;
  }
};

const table = (name: string, rows: readonly (readonly [call: string, run: () => unknown, code: string])[]) =>
  describe(name, () => {
    it.each(rows)("%s", (_, run, code) => expect(codeOf(run)).toBe(code));
  });

const q = preparative.quantity("12.5(2) g");

const HOLED: unknown[] = ["1 g"];
HOLED[2] = "2 g";

table("sources", [
  ["source of no key", () => p.source("nope"), "source.unknown"],
  ["source of what objects inherit", () => p.source("constructor"), "source.unknown"],
  ["source __proto__", () => p.source("__proto__"), "source.unknown"],
  ["cite of no key", () => p.cite("nope"), "source.unknown"],
  ["cite of what objects inherit", () => p.cite("toString"), "source.unknown"],
  ["cite of nothing", () => p.cite(undefined), "source.unknown"],
]);

table("quantities", [
  ["a lone superscript minus", () => p.quantity("1 g⁻"), "quantity.unknown-unit"],
  [
    "a misspelt uncertainty",
    () => p.quantity({ value: 1, unit: "g", standardUncertanty: 1 }),
    "quantity.unknown-option",
  ],
  ["an inherited distribution", () => p.quantity("1 ± 1 g", { distribution: "toString" }), "quantity.bad-option"],
  [
    "a distribution of no kind",
    () => p.quantity({ value: 1, unit: "g", halfWidth: 1, distribution: "flat" }),
    "quantity.bad-option",
  ],
  ["a misspelt label", () => p.quantity("1 g", { lable: "x" }), "quantity.unknown-option"],
  ["a label that is no text", () => p.quantity("1 g", { label: 5 }), "quantity.bad-option"],
  ["a name that is no object", () => q.named("m" as never), "quantity.bad-option"],
  ["no unit to show in", () => p.quantity("1 g").in(undefined), "quantity.unknown-unit"],
  ["no unit to turn into", () => p.quantity("1 g").to(null), "quantity.unknown-unit"],
  ["null for a format", () => p.quantity("1 g").format(null), "quantity.bad-option"],
  ["text for a format", () => p.quantity("1 g").format("g"), "quantity.bad-option"],
  ["a misspelt format", () => p.quantity("1 g").format({ decimls: 1 }), "quantity.unknown-option"],
  ["figures by another word", () => p.quantity("1 g").format({ digits: 2 }), "quantity.unknown-option"],
  ["an inherited rounding", () => q.format({ decimals: 1, rounding: "toString" as never }), "quantity.bad-option"],
  ["an inherited uncertainty", () => q.format({ uncertainty: "__proto__" as never }), "quantity.bad-option"],
  ["an uncertainty of false", () => q.format({ uncertainty: false as never }), "quantity.bad-option"],
  ["a locale of no language", () => q.format({ locale: "not a locale" }), "quantity.bad-option"],
  ["a prefix of no kind", () => q.format({ prefix: "SI" as never }), "quantity.bad-option"],
  ["an inherited operation", () => p.withSignificantFigures("__proto__", ["1", "2"]), "quantity.bad-option"],
  ["an operation that objects have", () => p.withSignificantFigures("toString", ["1", "2"]), "quantity.bad-option"],
  ["a misspelt level", () => p.expandedUncertainty("1(1) g", { levl: 0.99 }), "quantity.unknown-option"],
  ["a list with a hole", () => p.sum(HOLED), "quantity.bad-option"],
  ["the smallest with a hole", () => p.smallest(HOLED), "quantity.bad-option"],
  ["the largest with a hole", () => p.largest(HOLED), "quantity.bad-option"],
  ["readings with a hole", () => p.readings(HOLED), "quantity.bad-option"],
  ["compared with <", () => (q as never) < (preparative.quantity("2 g") as never), "quantity.not-a-number"],
  ["added with +", () => (q as never) + 1, "quantity.not-a-number"],
  ["an unknown dimension", () => p.expectDimension("1 g", {}, "mass"), "quantity.wrong-dimension"],
  [
    "a record with an uncertainty below zero",
    () => p.quantityFromJSON({ ...q.toJSON(), standardUncertainty: "-0.2" }),
    "quantity.json",
  ],
  ["a record with endless decimals", () => p.quantityFromJSON({ ...q.toJSON(), decimals: 1e9 }), "quantity.json"],
]);

describe("a hundred million holes", () => {
  it.each(["sum", "smallest", "largest", "readings", "replicates"])("%s refuses them at once", (name) => {
    const holes = new Array(1e8);
    const start = performance.now();
    expect(codeOf(() => p[name](holes))).toMatch(/^(quantity|amount)\./);
    expect(performance.now() - start).toBeLessThan(500);
  });
});

describe("a quantity for programs", () => {
  it("gives a plain number, in its own unit or another", () => {
    expect([q.toNumber(), q.toNumber("mg")]).toEqual([12.5, 12500]);
  });

  it("is read from its own record", () => {
    expect(p.quantity(JSON.parse(JSON.stringify(q))).equals(q)).toBe(true);
  });

  it("is text where text is wanted", () => expect(`${preparative.quantity("12.50 g")}`).toBe("12.50 g"));
});

// Two weighings of temperature: 20 °C and 22 °C lie 2 K apart, s = √2 K.
describe("replicates of temperatures", () => {
  it("have a spread in degrees and a mean on the scale", () => {
    const { mean, range, standardDeviation } = preparative.replicates(["20.0 °C", "22.0 °C"]);
    expect([range.toString(), range.dimension]).toEqual(["2 Δ°C", "temperature difference"]);
    expect(standardDeviation!.format({ decimals: 3 })).toBe("1.414 Δ°C");
    expect(mean.in("°C").toString()).toBe("21");
  });

  it("take the uncertainty of the thermometer into the mean", () => {
    const { mean } = preparative.replicates(["20.0(1) °C", "22.0(1) °C"]);
    // s/√2 = 1 °C, and 0.1 °C that both share: √1.01
    expect(mean.standardUncertainty!.toFixed(4)).toBe("1.0050");
  });
});
