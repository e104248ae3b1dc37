// Elements, nuclides and atomic weights: look-ups, conventions, refusals.

import { describe, expect, it } from "vitest";
import { atomicWeight, element, elements, nuclide, nuclidesOf } from "../../src/element";
import { elementIndexOf, elementOf, nanoWeightTable, symbolAt } from "../../src/element/symbols";
import { attempt } from "../../src/foundation/error";
import { quantity, uncertaintyBudget } from "../../src/quantity";

describe("element", () => {
  it("is found by symbol, IUPAC name, accepted spelling or number", () => {
    for (const which of ["Al", "aluminium", "Aluminium", "aluminum", 13]) expect(element(which).atomicNumber).toBe(13);
    expect(element("sulphur").symbol).toBe("S");
    expect(element("Cs").name).toBe("caesium");
    expect(element("tin").symbol).toBe("Sn");
  });

  it("tells how its weight is published, digit for digit", () => {
    expect(element("H").standardAtomicWeight).toEqual({
      kind: "interval",
      lower: "1.00784",
      upper: "1.00811",
      conventional: "1.008",
    });
    expect(element("Ge").standardAtomicWeight).toEqual({ kind: "value", value: "72.630", uncertainty: "0.008" });
    expect(element("Zr").standardAtomicWeight).toEqual({ kind: "value", value: "91.222", uncertainty: "0.003" });
    expect(element("Tc").standardAtomicWeight).toEqual({ kind: "none", longestLived: 97 });
    expect(element("Tc").abridged).toBeUndefined();
    expect(element("Dy").abridged).toEqual({ value: "162.50", uncertainty: "0.01" });
    expect(element("Zr").year).toBe(2024);
  });

  it.each([["zn"], ["Xx"], [""], ["zinco"], [0], [119], [1.5]])("is refused: %s", (which) => {
    expect(() => element(which)).toThrow(expect.objectContaining({ code: "element.unknown" }));
  });

  it("suggests the symbol whose case was missed", () => {
    expect(() => element("zn")).toThrow(/did you mean Zn\?/);
  });
});

describe("atomicWeight", () => {
  it("is one shared constant per element and convention", () => {
    expect(atomicWeight("Zn")).toBe(atomicWeight("Zn"));
    expect(atomicWeight("Pb", { convention: "midpoint" })).not.toBe(atomicWeight("Pb"));
    const zero = atomicWeight("Zn").minus(atomicWeight("zinc"));
    expect(zero.isZero() && zero.standardUncertainty!.isZero()).toBe(true);
  });

  it.each([
    ["Cu", "conventional", "63.546", 0.003 / Math.sqrt(3)],
    ["H", "conventional", "1.008", 0.00027 / Math.sqrt(12)],
    ["H", "abridged", "1.008", 0.0002 / Math.sqrt(3)],
    ["H", "midpoint", "1.007975", 0.00027 / Math.sqrt(12)],
    ["Pb", "conventional", "207.2", 1.8 / Math.sqrt(12)],
    ["Pb", "abridged", "207.2", 1.1 / Math.sqrt(3)],
    ["Pb", "midpoint", "207.04", 1.8 / Math.sqrt(12)],
    ["Au", "abridged", "196.97", 0.01 / Math.sqrt(3)],
    ["Au", "midpoint", "196.96657", 0.000004 / Math.sqrt(3)],
  ] as const)("of %s, %s, is %s g/mol with its rectangle", (symbol, convention, value, u) => {
    const weight = atomicWeight(symbol, { convention });
    expect(weight.value.toString()).toBe(value);
    expect(weight.unit).toBe("g/mol");
    expect(weight.standardUncertainty!.toNumber()).toBeCloseTo(u, 14);
    expect(weight.source).toContain("Standard atomic weights");
  });

  it("takes the value of the caller's own material, as text, number or quantity", () => {
    expect(atomicWeight("Li", { value: "6.9393(2) g/mol" }).standardUncertainty!.toString()).toBe("0.0002");
    expect(atomicWeight("Li", { value: "6.9393(2)" }).toString()).toBe(
      atomicWeight("Li", { value: "6.9393(2) g/mol" }).toString(),
    );
    const own = quantity("6.9393(2) g/mol");
    const twice = atomicWeight("Li", { value: own }).minus(atomicWeight("Li", { value: own }));
    expect(twice.standardUncertainty!.isZero()).toBe(true);
    expect(uncertaintyBudget(atomicWeight("Li", { value: own }).times(2))).toHaveLength(1);
    for (const value of ["6.94 g", "-6.94 g/mol", "0 g/mol"]) {
      expect(() => atomicWeight("Li", { value })).toThrow(expect.objectContaining({ code: "element.not-a-weight" }));
    }
  });

  it("is refused without a standard weight, naming the longest-lived nuclide", () => {
    const outcome = attempt(() => atomicWeight("Pm"));
    expect(outcome.ok || outcome.error.code).toBe("element.no-atomic-weight");
    expect(outcome.ok || outcome.error.details).toEqual({ symbol: "Pm", longestLived: 145, nuclide: "[145Pm]" });
    const number = atomicWeight("Pm", { massNumberIfNone: true });
    expect(number.value.toString()).toBe("145");
    expect(number.standardUncertainty).toBeUndefined();
    // Asking once for the mass number does not open the door for everybody.
    expect(attempt(() => atomicWeight("Pm")).ok).toBe(false);
  });
});

describe("nuclide", () => {
  it.each(["13C", "[13C]", "C-13", "carbon-13", "Carbon-13"])("is found as %s", (which) => {
    expect(nuclide(which).mass.in("g/mol").toFixed(8)).toBe("13.00335484");
    expect(nuclide(which).composition).toBe("0.0106");
  });

  it("has hydrogen-2 and -3 as D and T, and shares their constants", () => {
    expect(nuclide("D").mass).toBe(nuclide("2H").mass);
    expect(nuclide("T").massNumber).toBe(3);
    expect(nuclide("3H").composition).toBeUndefined();
  });

  it("lists what occurs", () => {
    expect(nuclidesOf("Cl").map(({ massNumber, composition }) => [massNumber, composition])).toEqual([
      [35, "0.758"],
      [37, "0.242"],
    ]);
    expect(nuclidesOf("F").map(({ massNumber }) => massNumber)).toEqual([19]);
  });

  it.each([
    ["99C", "element.unknown-nuclide"],
    ["carbon", "element.not-a-nuclide"],
    ["13X", "element.not-a-nuclide"],
    ["unobtainium-13", "element.unknown"],
  ])("%s is refused as %s", (which, code) => {
    expect(() => nuclide(which)).toThrow(expect.objectContaining({ code }));
  });
});

describe("symbol index", () => {
  it("finds every symbol and no other pair of letters", () => {
    const known = new Set(elements().map(({ symbol }) => symbol));
    for (let a = 65; a <= 90; a += 1) {
      for (let b = 96; b <= 122; b += 1) {
        const symbol = String.fromCharCode(a) + (b === 96 ? "" : String.fromCharCode(b));
        const index = elementIndexOf(symbol);
        expect(index >= 0, symbol).toBe(known.has(symbol));
        if (index >= 0) expect(symbolAt(index)).toBe(symbol);
      }
    }
    expect(elementIndexOf("Uuo")).toBe(-1);
    expect(elementIndexOf("é")).toBe(-1);
    expect(elementOf(6013)).toBe(5);
    expect(symbolAt(92235)).toBe("235U");
  });

  it("holds the default weights as exact integers", () => {
    elements().forEach(({ symbol, standardAtomicWeight: weight }, index) => {
      const nano = nanoWeightTable()[index]!;
      if (weight.kind === "none") expect(nano, symbol).toBeNaN();
      else {
        const text = weight.kind === "value" ? weight.value : weight.conventional;
        expect(nano, symbol).toBe(Math.round(Number(text) * 1e9));
        expect(Number.isSafeInteger(nano)).toBe(true);
      }
    });
  });
});
