import { describe, expect, test } from "vitest";
import { parseFormula } from "../../src/formula";
import { attempt } from "../../src/foundation/error";
import {
  crystalWater,
  hydrateOf,
  knownHydrates,
  soldHydrates,
  stableHydrate,
  stagedDehydration,
} from "../../src/hydrate";
import { DEHYDRATION } from "../../src/hydrate/data/dehydration";
import { HYDRATE_FORMS } from "../../src/hydrate/data/forms";
import { explain } from "../../src/quantity";
import { sourceKeys } from "../../src/sources";
import { SHOP_MATERIALS } from "../../src/substance/data/shop-materials";
import { THERMAL } from "../../src/substance/data/thermal-steps";

const keys = new Set<string>(sourceKeys());

describe("the table of forms", () => {
  test("has salts that read, no salt twice, forms that rise in water, sources that resolve", () => {
    const seen = new Set<string>();
    let tested = 0;
    for (const { salt, forms } of HYDRATE_FORMS()) {
      const formula = parseFormula(salt);
      expect(crystalWater(formula).waters.equals(0), salt).toBe(true);
      expect(seen.has(formula.toHill()), salt).toBe(false);
      seen.add(formula.toHill());
      const waters = forms.map((form) => hydrateOf(salt, form.waters)).map((f) => crystalWater(f).waters.valueOf());
      expect(
        [...waters].sort((a, b) => a - b),
        salt,
      ).toEqual(waters);
      expect(new Set(waters).size, salt).toBe(waters.length);
      expect(
        waters.some((n) => n > 0),
        salt,
      ).toBe(true);
      for (const { source, rangeSource } of forms) {
        expect(keys).toContain(source);
        if (rangeSource !== undefined) expect(keys).toContain(rangeSource);
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(210);
    expect(HYDRATE_FORMS().length).toBeGreaterThan(150);
  });

  test("has ranges in order that meet and do not overlap", () => {
    let tested = 0;
    for (const { salt, forms } of HYDRATE_FORMS()) {
      const ranges = forms
        .filter((form) => form.rangeSource !== undefined)
        .map(
          ({ from, upTo }) =>
            [Number(from ?? Number.NEGATIVE_INFINITY), Number(upTo ?? Number.POSITIVE_INFINITY)] as const,
        )
        .sort(([a], [b]) => a - b);
      ranges.forEach(([low, high], i) => {
        expect(low, salt).toBeLessThan(high);
        if (i > 0) expect(low, salt).toBeGreaterThanOrEqual(ranges[i - 1]![1]);
      });
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(210);
  });

  // What is sold is a fact of the shop list, which stands in a higher room and names its source on each row.
  test("calls sold what the shop list names, and nothing else", () => {
    const shelf = new Set(
      SHOP_MATERIALS()
        .flatMap(({ formula, alternatives = [] }) => [formula, ...alternatives])
        .map((formula) => parseFormula(formula).compositionText),
    );
    let tested = 0;
    for (const { salt, forms } of HYDRATE_FORMS()) {
      for (const { waters, sold = false } of forms) {
        const form = hydrateOf(salt, waters);
        expect(sold, form.toString()).toBe(shelf.has(form.compositionText));
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(210);
  });
});

describe("the table of dehydration", () => {
  test("has forms that read, no form twice, stages that get hotter and lighter, sources that resolve", () => {
    const seen = new Set<string>();
    let tested = 0;
    for (const { form, stages, source } of DEHYDRATION()) {
      expect(seen.has(parseFormula(form).toHill()), form).toBe(false);
      seen.add(parseFormula(form).toHill());
      expect(keys).toContain(source);
      const { steps } = stagedDehydration(form);
      expect(steps).toHaveLength(stages.length);
      let heat = Number.NEGATIVE_INFINITY;
      let left = 1;
      for (const [i, step] of steps.entries()) {
        const { from, until, per } = stages[i]!;
        expect(Number(from), form).toBeGreaterThan(heat);
        if (until !== undefined) expect(Number(until), form).toBeGreaterThan(Number(from));
        heat = Number(from);
        const part = step.massFraction.in("").toNumber();
        expect(part, form).toBeLessThan(left);
        expect(part, form).toBeGreaterThan(0);
        left = part;
        // a stage that only loses water keeps the anhydrous salt
        if (per === undefined)
          expect(crystalWater(step.formula).anhydrous.hasSameComposition(crystalWater(form).anhydrous), form).toBe(
            true,
          );
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(90);
  });

  // The substance room tells what gases leave; where both name a residue, they must not contradict each other.
  test("reaches a residue at temperatures that meet those of the substance room", () => {
    const thermal = new Map(THERMAL().map((row) => [parseFormula(row.formula).compositionText, row]));
    let compared = 0;
    for (const { form, stages } of DEHYDRATION()) {
      for (const step of thermal.get(parseFormula(form).compositionText)?.steps ?? []) {
        const left = step.remains.map(({ formula }) => parseFormula(formula).compositionText);
        const same = stages.find(({ to }) => left.length === 1 && parseFormula(to).compositionText === left[0]);
        if (same === undefined) continue;
        compared += 1;
        expect(Number(same.from), `${form} to ${same.to}`).toBeLessThanOrEqual(Number(step.to ?? step.from));
        expect(Number(same.until ?? same.from), `${form} to ${same.to}`).toBeGreaterThanOrEqual(Number(step.from));
      }
    }
    expect(compared).toBeGreaterThan(100);
  });

  // Mass loss on heating, bench practice compilation section 10 (calculated there on IUPAC 2021 abridged weights).
  test.each([
    ["CuSO4·5H2O", "CuSO4", 36.08],
    ["KAl(SO4)2·12H2O", "KAl(SO4)2", 45.57],
    ["Mg5(CO3)4(OH)2·4H2O", "MgO", 56.91],
    ["MgCO3·3H2O", "MgO", 70.87],
    ["CaC2O4·H2O", "CaCO3", 31.5],
    ["FeC2O4·2H2O", "Fe2O3", 55.62],
    ["Ni3(OH)4CO3·4H2O", "NiO", 40.43],
  ])("%s loses on the way to %s %d %%", (form, residue, loss) => {
    const step = stagedDehydration(form).steps.find((s) => s.formula.toString() === residue)!;
    expect(Math.abs(step.loss.in("%").toNumber() - loss)).toBeLessThan(0.005);
  });
});

describe("forms of a salt", () => {
  test("are found from any of them, however written", () => {
    const all = knownHydrates("FeSO4").map((form) => form.formula.toString());
    expect(all).toEqual(["FeSO4", "FeSO4.H2O", "FeSO4.4H2O", "FeSO4.7H2O"]);
    expect(knownHydrates("FeSO4·7H2O").map((form) => form.formula.toString())).toEqual(all);
    expect(knownHydrates("(NH4)2SO4·FeSO4·6H2O").map((form) => form.waters.toFraction())).toContain("6");
  });

  test("say which of them a pack may hold", () => {
    expect(soldHydrates("ZnSO4").map((form) => form.formula.toString())).toEqual(["ZnSO4.H2O", "ZnSO4.7H2O"]);
    expect(soldHydrates("C6H8O7").map((form) => form.formula.toString())).toEqual(["C6H8O7", "C6H8O7.H2O"]);
  });

  test("are none for a salt the table does not know", () => {
    expect(knownHydrates("KCl")).toEqual([]);
  });

  // Transition temperatures as taught: Glauber's salt 32.4 °C, Epsom salt 48 °C, copper sulfate 96 °C (memory of handbooks).
  test.each([
    ["Na2SO4", "20 °C", "Na2SO4.10H2O"],
    ["Na2SO4", "40 °C", "Na2SO4"],
    ["MgSO4", "47 °C", "MgSO4.7H2O"],
    ["MgSO4", "49 °C", "MgSO4.6H2O"],
    ["CuSO4", "90 °C", "CuSO4.5H2O"],
    ["Na2CO3", "33 °C", "Na2CO3.7H2O"],
  ] as const)("%s crystallises at %s as %s", (salt, temperature, expected) => {
    expect(stableHydrate(salt, temperature)!.formula.toString()).toBe(expected);
  });

  test("stay unsaid outside the reach of the table", () => {
    expect(stableHydrate("Na2SO4", "-10 °C")).toBeUndefined();
    expect(stableHydrate("Na2SO4", "120 °C")).toBeUndefined();
    expect(stableHydrate("CaSO4", "20 °C")).toBeUndefined();
  });
});

describe("staged dehydration", () => {
  test("gives the mass after each stage of a weighed sample", () => {
    const { steps } = stagedDehydration("CuSO4·5H2O", "5.000 g");
    expect(steps.map((s) => s.mass!.in("g").toFixed(3))).toEqual(["4.278", "3.557", "3.196", "1.593"]);
  });

  test("says what is not tabulated", () => {
    const outcome = attempt(() => stagedDehydration("KCl"));
    expect(outcome.ok ? "" : outcome.error.code).toBe("hydrate.unknown-salt");
    const kin = attempt(() => stagedDehydration("CuSO4"));
    expect(kin.ok ? "" : kin.error.hint).toContain("CuSO4·5H2O");
  });
});

describe("a known form", () => {
  test("is the same value for every spelling, and whenever it is asked for", () => {
    expect(knownHydrates("ZnSO4·7H2O")).toBe(knownHydrates("ZnSO4"));
    expect(Object.isFrozen(knownHydrates("ZnSO4"))).toBe(true);
  });

  test("shows itself as its formula, and as plain data with what is known only", () => {
    const [anhydrous, mono] = knownHydrates("ZnSO4");
    expect([String(anhydrous), String(mono)]).toEqual(["ZnSO4", "ZnSO4.H2O"]);
    const plain = JSON.parse(JSON.stringify(knownHydrates("ZnSO4"))) as Record<string, unknown>[];
    expect(plain.map(({ formula, waters, sold }) => [formula, waters, sold])).toEqual([
      ["ZnSO4", "0", false],
      ["ZnSO4.H2O", "1", true],
      ["ZnSO4.6H2O", "6", false],
      ["ZnSO4.7H2O", "7", true],
    ]);
    // zinc sulfate: heptahydrate to 39 °C (thesis with its literature), hexahydrate to 48 °C, then monohydrate (from memory of handbooks)
    const degrees = (value: string) => expect.objectContaining({ value, unit: "°C" });
    expect(plain.map(({ range }) => range)).toEqual([
      undefined,
      { from: degrees("48") },
      { from: degrees("39"), to: degrees("48") },
      { to: degrees("39") },
    ]);
    expect(plain.map((form) => "rangeSource" in form)).toEqual([false, true, true, true]);
  });

  test("stands at the temperature where it ends, and the next one above", () => {
    const at = (salt: string, temperature: Parameters<typeof stableHydrate>[1]) =>
      String(stableHydrate(salt, temperature));
    expect([at("Na2SO4", "32.38 °C"), at("Na2SO4", "32.39 °C")]).toEqual(["Na2SO4.10H2O", "Na2SO4"]);
    expect([at("ZnSO4", "39 °C"), at("ZnSO4", "39.1 °C")]).toEqual(["ZnSO4.7H2O", "ZnSO4.6H2O"]);
    expect([at("ZnSO4", "48 °C"), at("ZnSO4", "48.1 °C")]).toEqual(["ZnSO4.6H2O", "ZnSO4.H2O"]);
    expect([at("Na2SO4", "0 °C"), at("Na2SO4", "100 °C")]).toEqual(["Na2SO4.10H2O", "Na2SO4"]);
    expect([at("Na2SO4", "-0.01 °C"), at("Na2SO4", "100.01 °C")]).toEqual(["undefined", "undefined"]);
  });
});

describe("stages of heating", () => {
  // of 249.677 g: 213.647 g trihydrate, 177.617 g monohydrate, 159.602 g salt, 79.545 g oxide (IUPAC 2021)
  test("say what is left, what is lost, and at what temperature", () => {
    const { form, steps, source } = stagedDehydration("CuSO4·5H2O");
    expect(form.toString()).toBe("CuSO4.5H2O");
    const masses = [213.647, 177.617, 159.602, 79.545];
    steps.forEach((step, i) => {
      expect(step.massFraction.toNumber("")).toBeCloseTo(masses[i]! / 249.677, 6);
      expect(step.loss.toNumber("")).toBeCloseTo(1 - masses[i]! / 249.677, 6);
      expect(step.mass).toBeUndefined();
    });
    // temperatures as taught, 63, 109, 200 and 650 °C (from memory of handbooks)
    expect(steps.map((step) => step.from.toString())).toEqual(["63 °C", "109 °C", "200 °C", "650 °C"]);
    expect(steps.map((step) => step.to)).toEqual([undefined, undefined, undefined, undefined]);
    expect(source).not.toBe("");
    const [left, loss] = [steps[0]!.massFraction, steps[0]!.loss].map((q) => explain(q).steps.at(-1)!);
    expect([left!.symbol, left!.rule]).toEqual([
      "left(CuSO₄·3H₂O)",
      "part of the mass left = mass of the stage / mass at the start",
    ]);
    expect([loss!.symbol, loss!.rule]).toEqual(["loss(CuSO₄·3H₂O)", "loss = 1 - part of the mass left"]);
  });

  test("of a form without a row name the rows of the same salt", () => {
    const refused = (formula: string) => {
      const outcome = attempt(() => stagedDehydration(formula));
      return outcome.ok ? undefined : outcome.error;
    };
    expect(refused("CuSO4")?.message).toContain("how CuSO₄ loses its water is not tabulated");
    expect(refused("CuSO4")?.hint).toBe("tabulated of this salt: CuSO4·H2O, CuSO4·3H2O, CuSO4·5H2O");
    expect(refused("CuSO4")?.details).toEqual({ formula: "CuSO4" });
    expect(refused("KCl")?.hint).toContain("weigh before and after heating for hydrationNumber");
  });

  test("carry the name of what was weighed into the mass of a stage", () => {
    const [first] = stagedDehydration("CuSO4·5H2O", "5.000 g").steps;
    expect(explain(first!.mass!).given.map(({ symbol, label }) => `${symbol}: ${label}`)).toContain(
      "m(CuSO₄·5H₂O): mass of CuSO₄·5H₂O",
    );
    const outcome = attempt(() => stagedDehydration("CuSO4·5H2O", "0 g"));
    expect(outcome.ok ? "" : outcome.error.code).toBe("amount.not-positive");
  });
});
