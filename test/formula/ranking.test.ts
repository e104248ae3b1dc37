// How readings of an analysis are made, measured and put in order, each figure by hand; and what an analysis leaves open.
import { empiricalFormula, massAs, oxideEquivalents, parseFormula } from "preparative";
import { describe, expect, it } from "vitest";
import {
  type Constituent,
  neighbours,
  proves,
  ranked,
  type Scored,
  scorer,
} from "../../src/formula/mass/empirical-rank";
import { attempt } from "../../src/foundation/error";
import { quantity } from "../../src/quantity";

const part = (name: string, given: string, share: number, room: number): Constituent => ({
  name,
  formula: parseFormula(name),
  given: quantity(given),
  amount: quantity("1 mol"),
  share,
  room,
});

describe("the whole numbers a ratio may be read as", () => {
  const parts = (room: number) => [part("Fe", "1 mol", 1, room), part("S", "1 mol", 1, room)];

  it("are its neighbours within the room of both shares, and always the nearest", () => {
    // 1.5 × 2 = 3, within 3 × (0.25 + 0.25) = 1.5: 2, 3 and 4; the scarcest is counted twice whatever its room
    expect(neighbours([1, 1.5], parts(0.25), 2, 0)).toEqual([
      [2, 3],
      [2, 2],
      [2, 4],
    ]);
    // 2 × 1 = 2, within 2 × (0.25 + 0.25) = 1: the limit itself counts
    expect(neighbours([1, 2], parts(0.25), 1, 0)).toEqual([
      [1, 2],
      [1, 1],
      [1, 3],
    ]);
    // without room only the nearest
    expect(neighbours([1, 1.4], parts(0), 2, 0)).toEqual([[2, 3]]);
    expect(neighbours([1.4, 1], parts(0), 2, 1)).toEqual([[3, 2]]);
  });

  it("are never nothing", () => {
    // 1 × 1 within 2 × 0.5 = 1: two, but not none; 0.3 is nearest to none and read as one
    expect(neighbours([1, 1], parts(0.5), 1, 0)).toEqual([
      [1, 1],
      [1, 2],
    ]);
    expect(neighbours([1, 0.3], parts(0), 1, 0)).toEqual([[1, 1]]);
  });

  it("are those of 256 combinations at most, the rest at their nearest", () => {
    // eight constituents besides the scarcest, three neighbours each: 3^5 = 243 combinations of five, one of each of the others
    const many = Array.from({ length: 9 }, () => part("Fe", "1 mol", 1, 0.1));
    const found = neighbours([1, ...Array.from({ length: 8 }, () => 5)], many, 1, 0);
    expect(found).toHaveLength(243);
    expect(found.every((counts) => counts.slice(6).every((n) => n === 5))).toBe(true);
  });
});

describe("how well counts fit", () => {
  // iron and sulfur, 55.845 and 32.06 g/mol
  const parts = [part("Fe", "1.0(1) g", 50, 0.5), part("S", "1.0(1) g", 50, 0.25)];
  const score = scorer(parts, undefined, [1, 1.5], 0);

  it("is measured in whole numbers, in shares and in what is allowed", () => {
    const one = score([1, 2]);
    // 1.5 lies 0.5 from 2; relative uncertainties 0.1 and 0.1: 2 × 1.5 × √0.02 = 0.424264 are allowed
    expect(one.deviation).toBe(0.5);
    expect(one.strain).toBeCloseTo(0.5 / 0.424264, 5);
    // 55.845 of 55.845 + 64.12 = 119.965 is 46.5511 %, 3.4489 from 50; 13.7956 times the room of sulfur
    expect(one.residual).toBeCloseTo(3.4489, 4);
    expect(one.misfit).toBeCloseTo(13.7956, 3);
    expect(one.atoms).toBe(3);
    expect(one.multiplier).toBe(1);
  });

  it("counts what fits by chance up to a multiplier", () => {
    // room over share: 0.01 and 0.005; 2 × 1 × 1.5 × 0.015 = 0.045 at one, 0.09 at two, 0.135 at three
    expect(score([1, 2]).chance).toBeCloseTo(0.045, 12);
    expect(score([2, 3]).chance).toBeCloseTo(0.135, 12);
    expect(score([3, 4]).chance).toBeCloseTo(0.27, 12);
    // no more than certain: 2 × 10 × 1.5 × 0.015 = 0.45 up to 22 is below one, 2 × 23 × 0.0225 = 1.035 is one
    const upTo22 = (0.045 * 22 * 23) / 2;
    expect(score([23, 35]).chance).toBeCloseTo(upTo22 + 1, 9);
  });

  it("allows 2 % of a number, at least 0.04 and at most 0.1, to figures without uncertainty", () => {
    const plain = [part("Fe", "1 g", 50, 0.5), part("S", "1 g", 50, 0.5)];
    const strain = (ratio: number, n: number) => scorer(plain, undefined, [1, ratio], 0)([1, n]).strain;
    expect(strain(1.02, 1)).toBeCloseTo(0.02 / 0.04, 9);
    expect(strain(3.03, 3)).toBeCloseTo(0.03 / 0.06, 9);
    expect(strain(9.05, 9)).toBeCloseTo(0.05 / 0.1, 9);
  });

  it("takes the caller's own weights", () => {
    // with sulfur at 55.845 the shares of one to one are halves
    const own = scorer(parts, { weights: { S: "55.845 g/mol" } }, [1, 1], 0)([1, 1]);
    expect(own.residual).toBeCloseTo(0, 9);
  });
});

describe("the order of readings", () => {
  const reading = (name: number, over: Partial<Scored>): Scored => ({
    multiplier: name,
    counts: [name],
    deviation: 0,
    strain: 0.5,
    residual: 0.1,
    misfit: 0.5,
    atoms: 10,
    chance: 0,
    ...over,
  });
  const order = (...all: Scored[]): number[] => ranked(all).map(({ multiplier }) => multiplier);

  it("is: the printed digits, a rough analysis within 0.4 %, beyond it, digits by chance, the rest by strain", () => {
    const far = reading(3, { misfit: 5, strain: 4 });
    const farther = reading(4, { misfit: 5, strain: 9 });
    const chance = reading(5, { strain: 2, chance: 0.5 });
    const rough = reading(6, { misfit: 3, residual: 0.5, atoms: 4 });
    const close = reading(7, { misfit: 3, residual: 0.4, atoms: 20 });
    const exact = reading(8, { atoms: 30 });
    const proven = reading(9, { strain: 2, chance: 0.1, atoms: 40 });
    expect(order(farther, far, chance, rough, close, proven, exact)).toEqual([8, 9, 7, 6, 5, 3, 4]);
  });

  it("is by atoms among equals, a multiplier counted by its best", () => {
    expect(order(reading(3, { atoms: 12 }), reading(4, { atoms: 11 }))).toEqual([4, 3]);
    // the best of multiplier 3 has 20 atoms, so both of its readings come after the 15 of multiplier 4, the better one first
    const worse = { ...reading(3, { atoms: 5, residual: 0.3 }), counts: [1] };
    const better = { ...reading(3, { atoms: 20, residual: 0.2 }), counts: [2] };
    const other = reading(4, { atoms: 15 });
    expect(ranked([worse, better, other]).map(({ counts }) => counts[0])).toEqual([4, 2, 1]);
    expect(ranked([better, other, worse]).map(({ counts }) => counts[0])).toEqual([4, 2, 1]);
  });

  it("puts a rough reading of a third of the atoms first, once", () => {
    const exact = reading(3, { atoms: 30 });
    const second = reading(4, { atoms: 33 });
    const rough = reading(5, { misfit: 2, atoms: 10 });
    const far = reading(6, { misfit: 5, strain: 4 });
    expect(order(exact, second, rough, far)).toEqual([5, 3, 4, 6]);
    expect(order(exact, second, { ...rough, atoms: 11 }, far)).toEqual([3, 4, 5, 6]);
    // one that lies beyond 0.4 % of the whole is not rough but wrong
    expect(order(exact, { ...rough, residual: 0.41 })).toEqual([3, 5]);
    expect(order()).toEqual([]);
  });

  it("takes digits for proof up to a multiplier of two, or to one formula in ten by chance", () => {
    expect(proves(reading(2, { chance: 5 }))).toBe(true);
    expect(proves(reading(3, { chance: 0.1 }))).toBe(true);
    expect(proves(reading(3, { chance: 0.11 }))).toBe(false);
  });
});

describe("what an analysis leaves open", () => {
  it("is the formulas with the printed digits alone, where there are any", () => {
    // C10H21 has 85.02 %, C9H19 84.95 %: both are 85.0 %; C8H17 has 84.87 %, which is 84.9 %
    const wax = empiricalFormula({ C: "85.0 %", H: "15.0 %" });
    const all = [wax.formula, ...wax.alternatives.map(({ formula }) => formula)].map(String);
    expect(all).toContain("C10H21");
    expect(all).not.toContain("C8H17");
  });

  it("takes two standard uncertainties to the last bit", () => {
    // sulfur 1.25 to one of iron, uncertain by a tenth: 0.25 from one, and 2 × 0.1 × 1.25 = 0.25 is allowed
    const vague = scorer([part("Fe", "1 mol", 50, 0), part("S", "1.250(125) mol", 50, 0)], undefined, [1, 1.25], 0);
    expect(vague([1, 1]).strain).toBe(1);
  });
});

describe("a mass stated as something else", () => {
  it("is by the element that is named, where several are shared", () => {
    // Na2S2O3, 2 × 22.98977 + 64.12 + 47.997 = 158.0965; Na2S, 78.0395: one for its sodium, two for its sulfur
    const as = (element: string) => massAs("1 g", "Na2S2O3", "Na2S", { element }).toNumber("g");
    expect(as("Na")).toBeCloseTo(78.0395 / 158.0965, 5);
    expect(as("S")).toBeCloseTo((2 * 78.0395) / 158.0965, 5);
  });

  it.each([
    ["ZnSO4", "ZnS", { element: "Fe" }, "no-common-element", { basis: "ZnS", material: "ZnSO4" }],
    ["ZnSO4", "ZnS", {}, "ambiguous-basis", { shared: ["Zn", "S"] }],
    ["NaCl", "ZnO", {}, "no-common-element", { basis: "ZnO", material: "NaCl" }],
    ["ZnO", "MgO", {}, "no-common-element", { basis: "MgO", material: "ZnO" }],
  ] as const)("%s as %s with %j is refused: %s", (of, as, options, code, details) => {
    expect(attempt(() => massAs("1 g", of, as, options))).toMatchObject({
      ok: false,
      error: { code: `formula.${code}`, details },
    });
  });

  it("is oxygen by itself where that alone is asked for", () => {
    // 15.999 of 40.304 (24.305 + 15.999)
    expect(massAs("1 g", "MgO", "O2").toNumber("g")).toBeCloseTo(15.999 / 40.304, 5);
  });

  it("names the element to be named", () => {
    expect(attempt(() => massAs("1 g", "ZnSO4", "ZnS"))).toMatchObject({
      error: { hint: expect.stringContaining('{ element: "Zn" }') },
    });
  });

  it.each<[() => unknown, string]>([
    [() => massAs("1 g", "ZnSO4", "ZnS", { element: 5 } as never), "element"],
    [() => massAs("1 g", "ZnSO4", "ZnS", { oxides: [] } as never), "oxides"],
    [() => oxideEquivalents("ZnSO4", { oxides: "ZnO" } as never), "oxides"],
    [() => oxideEquivalents("ZnSO4", { element: "Zn" } as never), "element"],
  ])("refuses what is no option: %s", (run, argument) => {
    expect(attempt(run)).toMatchObject({ ok: false, error: { message: expect.stringContaining(argument) } });
  });

  it("takes the caller's weights for oxide and material alike", () => {
    // zinc of 70 g/mol: 85.999 of 85.999 + 44.009
    const own = { weights: { Zn: "70 g/mol" } };
    expect(oxideEquivalents("ZnCO3", own)[0]!.massFraction.toNumber("")).toBeCloseTo(85.999 / 130.008, 5);
    expect(massAs("1 g", "ZnCO3", "ZnO", own).toNumber("g")).toBeCloseTo(85.999 / 130.008, 5);
  });

  it("leaves out an element without a usual oxide, and counts a labelled one as its own", () => {
    expect(oxideEquivalents("NaCl").map(({ oxide }) => String(oxide))).toEqual(["Na2O"]);
    expect(oxideEquivalents("CaCO3", { oxides: ["CO"] }).map(({ oxide }) => String(oxide))).toEqual(["CaO", "CO"]);
  });
});
