import { describe, expect, test } from "vitest";
import { measuredVolume, stockSolution, strengthPrepared } from "../../src/amount";
import { GLASSWARE } from "../../src/amount/data/glassware";
import { attempt } from "../../src/foundation/error";
import { explain, uncertaintyBudget } from "../../src/quantity";
import { sourceKeys } from "../../src/sources";

describe("stock solutions", () => {
  test("count the crystal water and the assay of what is in the jar", () => {
    const anhydrous = stockSolution({ of: "CuSO4", strength: "0.1 mol/L", volume: "1 L" }).mass;
    const hydrate = stockSolution({ of: "CuSO4·5H2O", strength: "0.1 mol/L", volume: "1 L" }).mass;
    expect(hydrate.dividedBy(anhydrous).in("").toNumber()).toBeCloseTo(1.5644, 4);
    const impure = stockSolution({ of: "CuSO4·5H2O", strength: "0.1 mol/L", volume: "1 L", assay: "98 %" }).mass;
    expect(impure.dividedBy(hydrate).in("").toNumber()).toBeCloseTo(1 / 0.98, 12);
  });

  test("come back to the wanted strength when that mass is weighed", () => {
    const { mass } = stockSolution({ of: "Na2CO3", strength: "0.0500 mol/L", volume: "250 mL", assay: "99.5 %" });
    const made = strengthPrepared(mass, { of: "Na2CO3", volume: "250 mL", assay: "99.5 %" });
    expect(made.concentration.in("mol/L").toNumber()).toBeCloseTo(0.05, 14);
  });

  test("carry balance, assay and flask into the uncertainty of the strength", () => {
    const made = strengthPrepared(
      { value: "1.3250", unit: "g", readability: "0.0001" },
      {
        of: "Na2CO3",
        volume: "250 mL",
        assay: "99.9 ± 0.1 %",
        glassware: { with: "volumetric flask", class: "A" },
      },
    );
    const inputs = uncertaintyBudget(made.concentration).map((line) => line.input);
    expect(inputs[0]).toBe("mass fraction of the substance in the dry material");
    expect(inputs).toContain("volume made up to the mark");
  });

  test("take % w/v and normality as well as mol/L", () => {
    expect(stockSolution({ of: "NaCl", strength: "0.9 % w/v", volume: "1 L" }).mass.in("g").toNumber()).toBeCloseTo(
      9,
      9,
    );
    const acid = stockSolution({
      of: "H2C2O4·2H2O",
      strength: "0.1 N",
      volume: "1 L",
      equivalents: 2,
      reaction: "acid",
    });
    expect(acid.mass.in("g").toNumber()).toBeCloseTo(6.303, 3);
  });

  test.each([
    [{ of: "NaCl", strength: "1 mol/L", volume: "0 L" }, "amount.not-positive"],
    [{ of: "NaCl", strength: "0 mol/L", volume: "1 L" }, "amount.not-positive"],
    [{ of: "NaCl", strength: "5 %", volume: "1 L" }, "amount.ambiguous-percent"],
    [{ of: "NaCl", strength: "1 mol/L", volume: "37 mL", glassware: { with: "volumetric flask" } }, "amount.glassware"],
  ] as const)("%o is refused with %s", (request, code) => {
    const outcome = attempt(() => stockSolution(request));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
  });
});

describe("glassware", () => {
  // JCGM 100:2008, 4.3.7 and 4.3.9: a rectangle of half-width a has u = a/√3, a triangle a/√6.
  test.each([
    ["rectangular", 3],
    ["triangular", 6],
  ] as const)("spreads a %s tolerance over √%i", (distribution, divisor) => {
    const V = measuredVolume("1000 mL", { with: "volumetric flask", class: "A", distribution });
    expect(V.standardUncertainty!.toNumber()).toBeCloseTo(0.4 / Math.sqrt(divisor), 9);
  });

  test("counts a flask by its mark and a burette by what holds the volume", () => {
    expect(measuredVolume("37.42 mL", { with: "burette", class: "A" }).label).toBe("burette, 50 mL, class A");
    expect(measuredVolume("8 mL", { with: "burette", class: "A", size: "25 mL" }).label).toBe(
      "burette, 25 mL, class A",
    );
    expect(measuredVolume("80 mL", { with: "measuring cylinder" }).label).toBe("measuring cylinder, 100 mL, class B");
  });

  test("brings a warm volume back to 20 °C", () => {
    const V = measuredVolume("1000 mL", { with: "volumetric flask", temperature: "25 °C" });
    expect(V.in("mL").toNumber()).toBeCloseTo(1000 * (1 - 0.00021 * 5), 9);
    expect(explain(V).steps.at(-1)!.rule).toContain("20 °C");
  });

  test.each([
    ["37 mL", { with: "pipette" }, "amount.glassware"],
    ["3 L", { with: "measuring cylinder" }, "amount.glassware"],
    ["30 mL", { with: "burette", size: "25 mL" }, "amount.glassware"],
    ["25 mL", { with: "teacup" }, "amount.glassware"],
    ["25 mL", { with: "pipette", class: "C" }, "amount.unknown-word"],
    ["25 mL", { with: "pipette", distribution: "normal" }, "amount.unknown-word"],
    ["25 mL", { with: "pipette", temperature: "60 °C" }, "amount.outside-range"],
    ["-25 mL", { with: "pipette" }, "amount.not-positive"],
  ])("%s in %o is refused with %s", (volume, glassware, code) => {
    const outcome = attempt(() => measuredVolume(volume as "25 mL", glassware as { with: "pipette" }));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
  });

  test("has tolerances that grow with size, class A the tighter, sources that resolve", () => {
    const keys = new Set<string>(sourceKeys());
    let tested = 0;
    for (const { sizes, source } of GLASSWARE) {
      expect(keys).toContain(source);
      sizes.forEach(([nominal, a, b], i) => {
        expect(Number(a)).toBeLessThan(Number(b));
        const before = sizes[i - 1];
        if (before === undefined) return;
        expect(Number(nominal)).toBeGreaterThan(Number(before[0]));
        expect(Number(a)).toBeGreaterThanOrEqual(Number(before[1]));
      });
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(4);
  });
});
