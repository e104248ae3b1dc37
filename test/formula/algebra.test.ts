// Formulas added, taken away and multiplied, their parts compared and their water told apart: every count by hand.
import { parseFormula } from "preparative";
import { describe, expect, it } from "vitest";
import { splitWater } from "../../src/formula/internal";
import { attempt } from "../../src/foundation/error";

const f = parseFormula;
const counts = (formula: ReturnType<typeof f>): string =>
  formula.composition.map(({ symbol, count }) => `${symbol} ${count.toFraction()}`).join(", ");

describe("a sum of formulas", () => {
  it.each([
    ["CuSO4", "H2O", "Cu 1, H 2, O 5, S 1"],
    ["Fe0.5O", "O", "Fe 1/2, O 2"],
    ["Fe0.5O", "Fe0.25O", "Fe 3/4, O 2"],
    ["Fe0.5", "O0.25", "Fe 1/2, O 1/4"],
    ["Fe0.25O", "Mg0.5", "Fe 1/4, Mg 1/2, O 1"],
    ["CaSO4·½H2O", "H2O", "Ca 1, H 3, O 11/2, S 1"],
    ["D2O", "H2O", "D 2, H 2, O 2"],
  ])("%s plus %s has %s, either way round", (one, other, expected) => {
    const sorted = (text: string) => text.split(", ").sort().join(", ");
    expect(sorted(counts(f(one).plus(f(other))))).toBe(sorted(expected));
    expect(sorted(counts(f(other).plus(f(one))))).toBe(sorted(expected));
    // what was added can be taken away again
    expect(f(one).plus(f(other)).minus(f(other)).hasSameComposition(f(one))).toBe(true);
  });

  it.each([
    ["Fe^2+", "Cl^-", 1],
    ["SO4^2-", "H^+", -1],
    ["Fe^3+", "e^-", 2],
  ])("%s plus %s has the charge %d", (one, other, charge) => {
    expect(f(one).plus(f(other)).charge).toBe(charge);
  });

  it.each([
    ["H2O", "H3", "negative-count", { symbol: "H" }],
    ["H2O", "NaCl", "negative-count", { symbol: "Na" }],
    ["H2O", "H2O", "nothing-left", {}],
  ])("%s less %s is refused: %s", (one, other, code, details) => {
    expect(attempt(() => f(one).minus(f(other)))).toMatchObject({ error: { code: `formula.${code}`, details } });
  });
});

describe("a multiple of a formula", () => {
  it.each<[string, unknown, string]>([
    ["H2O", 2, "2H2O"],
    ["H2O", "1/2", "0.5H2O"],
    ["CuSO4·5H2O", 3, "3CuSO4.15H2O"],
    ["[Cu(NH3)4]SO4", 2, "2[Cu(NH3)4]SO4"],
    ["3CdSO4·8H2O", "1/3", "CdSO4.(8/3)H2O"],
  ])("%s times %s is %s", (text, factor, expected) => {
    const product = f(text).times(factor as number);
    expect(product.hasSameComposition(f(expected))).toBe(true);
    expect(product.hasSameParts(f(expected))).toBe(true);
  });

  it.each([undefined, null, Symbol("n"), 0, -1, "x", Number.NaN, { n: 1n, d: 2n, s: -1n }])(
    "by %s is refused",
    (factor) => {
      expect(attempt(() => f("H2O").times(factor as never))).toMatchObject({ error: { code: "formula.bad-factor" } });
    },
  );
});

describe("the parts of two adducts", () => {
  it.each([
    ["ZnCO3·2Zn(OH)2", "2Zn(OH)2·ZnCO3", true],
    ["CuSO4·5H2O", "CuO4S·5OH2", true],
    ["ZnCO3·2Zn(OH)2", "2ZnCO3·Zn(OH)2", false],
    ["CuSO4·5H2O", "CuSO4·5NH3", false],
    ["CuSO4·5H2O", "CuSO4·3H2O", false],
    ["CuSO4·5H2O", "CuSO4", false],
    ["CuSO4", "CuSO4·5H2O", false],
    ["CuSO4·H2O·H2O", "CuSO4·CuSO4·H2O", false],
  ])("%s and %s: the same is %s", (one, other, same) => {
    expect(f(one).hasSameParts(f(other))).toBe(same);
    expect(f(other).hasSameParts(f(one))).toBe(same);
  });
});

describe("the water of a formula", () => {
  it.each([
    ["CuSO4", "CuSO4", "1", "0"],
    ["CuSO4·5H2O", "CuSO4", "1", "5"],
    ["3CdSO4·8H2O", "CdSO4", "3", "8"],
    ["CaSO4·½H2O", "CaSO4", "1", "1/2"],
    ["ZnCO3·2Zn(OH)2·H2O", "ZnCO3.2Zn(OH)2", "1", "1"],
    ["2ZnCO3·4Zn(OH)2", "ZnCO3.2Zn(OH)2", "2", "0"],
    ["NaCl(s)", "NaCl", "1", "0"],
    ["H2O", undefined, "0", "1"],
    ["3H2O", undefined, "0", "3"],
    ["D2O", "D2O", "1", "0"],
    ["H2O2", "H2O2", "1", "0"],
  ])("%s: dry %s, %s of it, %s waters", (text, dry, units, waters) => {
    const split = splitWater(f(text));
    expect(split.dry === undefined).toBe(dry === undefined);
    if (dry !== undefined) expect(split.dry!.hasSameParts(f(dry))).toBe(true);
    expect([split.units.toFraction(), split.waters.toFraction()]).toEqual([units, waters]);
  });
});

describe("what a formula lacks", () => {
  it.each<[string, string, number, object]>([
    ["CaSO4·nH2O", "unknown-number", 6, { variable: "n" }],
    ["CaSO4·xH2O", "unknown-number", 6, { variable: "x" }],
    ["CuSO4·", "empty-part", 5, {}],
    ["CuSO4·5", "misplaced-number", 6, {}],
    ["Cu(SO4·", "unclosed-bracket", 2, {}],
    ["(CuSO4·)H2O", "empty-group", 0, {}],
    ["(·H2O)Cu", "empty-part", 0, {}],
    ["[Cu(NH3)4", "unclosed-bracket", 0, {}],
  ])("%s is refused: %s at %d", (text, code, position, details) => {
    expect(attempt(() => f(text))).toMatchObject({ error: { code: `formula.${code}`, position, details } });
  });

  it("may be how digits before a sign are meant, in one of two words", () => {
    expect(f("Fe3+", { digitsBeforeSign: "charge" }).charge).toBe(3);
    expect(f("Fe3+", { digitsBeforeSign: "subscript" }).charge).toBe(1);
    expect(attempt(() => f("Fe3+", { digitsBeforeSign: "both" as never }))).toMatchObject({
      error: { code: "formula.bad-option", details: { argument: "digitsBeforeSign" } },
    });
  });

  it("is given as a positive number", () => {
    expect(f("CaSO4·nH2O", { n: "1/2" }).hasSameComposition(f("CaSO4·½H2O"))).toBe(true);
    expect(f("CaSO4·nH2O", { n: "5/12" }).hasSameComposition(f("12CaSO4·5H2O").times("1/12"))).toBe(true);
    for (const n of [0, -1, "two", {}])
      expect(attempt(() => f("CaSO4·nH2O", { n: n as never }))).toMatchObject({
        error: { code: "formula.unknown-number", details: { variable: "n" } },
      });
  });
});
