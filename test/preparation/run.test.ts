// Runs and verdicts: each explanation with its number, on cases worked out by hand.
import { evaluateRun, type Observations, planPreparation, type Quantity, tryEvaluateRun } from "preparative";
import { describe, expect, it } from "vitest";

const number = (q: Quantity, unit: string): number => q.in(unit).toNumber();

/** 250.0 g of heptahydrate is 0.86944 mol of zinc: 95.46 g of basic carbonate, 109.02 g as ZnCO3. */
const plan = planPreparation({
  equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
  product: "Zn5(CO3)2(OH)6",
  materials: [
    { name: "zinc", form: "ZnSO4·7H2O" },
    { name: "soda", form: "Na2CO3·10H2O", excess: "100 %" },
  ],
  scale: { material: "zinc", portion: "250.0 g" },
});
const run = (observations: Observations) => evaluateRun(plan, observations);
const finding = (observations: Observations, code: string) => run(observations).verdict.find((f) => f.code === code);

describe("a verdict", () => {
  it("finds the monohydrate taken for the heptahydrate: theory goes up by 287.54/179.45", () => {
    const mixUp = finding({ dried: "148 g" }, "hydrate-mix-up")!;
    expect(mixUp.text).toMatch(/ZnSO₄·H₂O and not ZnSO₄·7H₂O/);
    expect(number(mixUp.mass!, "g")).toBeCloseTo((95.46 * 287.54) / 179.45, 0);
    expect(number(mixUp.figure!, "%")).toBeCloseTo(160.2, 0);
    expect(mixUp.next).toMatch(/heat a weighed sample of the zinc/);
  });

  it("finds soda crystals taken for anhydrous soda: 105.99/286.14 of the carbonate", () => {
    const dry = planPreparation({
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "calcium", form: "CaCl2·2H2O" },
        { name: "soda", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { product: "100 g" },
    });
    // 1.05 × 0.3704 = 38.9 % of the theory: common practice calls it the usual reason of a short precipitant
    const { verdict } = evaluateRun(dry, { dried: "38.0 g" });
    const mixUp = verdict.find((f) => f.code === "hydrate-mix-up" && /10H₂O/.test(f.text))!;
    expect(number(mixUp.figure!, "%")).toBeCloseTo(38.9, 0);
    expect(verdict.map((f) => f.code).slice(0, 2)).toEqual(["hydrate-mix-up", "lighter-than-losses-explain"]);
  });

  it("tells what assay would explain a light product", () => {
    const short = run({ dried: "47.73 g" }).verdict.filter((f) => f.code === "reagent-short");
    expect(short.map((f) => Math.round(number(f.figure!, "%")))).toEqual([50, 25]);
  });

  it("says first that a product is still drying, and where it goes", () => {
    // losses 20 and 10 g: halved each time, 10 g more to go
    const { dryness, verdict } = run({ dried: ["140 g", "120 g", "110 g"], wetCake: "220 g" });
    expect(dryness.state).toBe("still drying");
    expect(number(dryness.nextExpected!, "g")).toBeCloseTo(105, 9);
    expect(number(dryness.endsAt!, "g")).toBeCloseTo(100, 9);
    expect(number(dryness.waterLeft!, "g")).toBeCloseTo(10, 9);
    expect(number(dryness.moistureOfCake!, "%")).toBeCloseTo(50, 9);
    expect(verdict[0]!.code).toBe("still-drying");
  });

  it("calls it wet less readily at constant mass", () => {
    const before = finding({ dried: "103.0 g" }, "wet")!.weight;
    const after = finding({ dried: ["103.1 g", "103.0 g"] }, "wet")!;
    expect(after.weight).toBeLessThan(before);
    expect(after.text).toMatch(/constant mass/);
    expect(number(after.mass!, "g")).toBeCloseTo(103 - 95.46, 1);
  });

  it("counts the washes that were done", () => {
    const unwashed = finding({ dried: "103.0 g" }, "unwashed")!;
    const washed = finding({ dried: "103.0 g", washes: 2 }, "unwashed")!;
    expect(unwashed.text).toMatch(/would explain/);
    expect(washed.text).toMatch(/explain at most/);
    expect(washed.weight).toBeLessThan(unwashed.weight);
  });

  it("lets ignition decide between the basic and the normal carbonate", () => {
    // 64.90 % of ZnCO3 is left, 74.12 % of the basic carbonate
    const normal = run({ dried: ["107.0 g", "106.9 g"], ignition: { before: "1.000 g", after: "0.649 g" } });
    expect(normal.identity!.remaining).toEqual(["ZnCO₃"]);
    expect(normal.verdict[0]!.code).toBe("other-formula-fits");
    const basic = run({ dried: "104.0 g", ignition: { before: "1.000 g", after: "0.680 g" } });
    // 0.680 / 0.7412: 8.3 % of water, and 104.0 - 95.46 is 8.2 %
    expect(basic.verdict[0]!.code).toBe("wet");
    expect(basic.verdict[0]!.text).toMatch(/ignition finds 8\.\d % of water/);
  });

  it("ranks by how well each explanation fits", () => {
    for (const dried of ["30 g", "60 g", "84 g", "92 g", "100 g", "107 g", "120 g", "150 g"] as const) {
      const weights = run({ dried }).verdict.map((f) => f.weight);
      expect(weights).toEqual([...weights].sort((a, b) => b - a));
      for (const { next, text } of run({ dried }).verdict) {
        expect(next.length).toBeGreaterThan(10);
        expect(text).toMatch(/\d/);
      }
    }
  });
});

describe("strengths and temperature", () => {
  it("found by titration change the theory", () => {
    const acid = planPreparation({
      equation: "ZnCO3 + H2SO4 + H2O -> ZnSO4·7H2O + CO2",
      product: "ZnSO4·7H2O",
      materials: [
        { name: "carbonate", form: "ZnCO3", excess: "20 %" },
        { name: "acid", form: "H2SO4", strength: "1.0 mol/L" },
      ],
      scale: { material: "acid", portion: "25 mL" },
    });
    // school practical: 25 mL of 1.0 mol/L give 7.1885 g; at 0.9 mol/L nine tenths of it
    expect(number(acid.product.theoreticalYield, "g")).toBeCloseTo(7.1885, 3);
    const weak = evaluateRun(acid, { strengths: { acid: "0.9 mol/L" } });
    expect(number(weak.product.theoreticalYield, "g")).toBeCloseTo(0.9 * 7.1885, 3);
    expect(weak.changes.map((c) => c.what)).toContain("theoretical yield");
    const half = run({ assays: { zinc: "50 %" } });
    expect(number(half.product.theoreticalYield, "g")).toBeCloseTo(95.46 / 2, 1);
  });

  it("of the room move the gas", () => {
    const warm = run({ temperature: "30 °C" });
    expect(number(warm.gas[0]!.volume.dividedBy(plan.gas[0]!.volume), "")).toBeCloseTo(303.15 / 293.15, 6);
  });
});

describe("the product as a material", () => {
  it("carries an assay between pure and what the washing leaves", () => {
    const { assay } = run({ dried: "90.0 g" }).asMaterial();
    const value = (assay as Quantity).in("%").toNumber();
    expect(value).toBeGreaterThan(99);
    expect(value).toBeLessThan(100);
    const unwashed = (run({ dried: "90.0 g", washes: 0 }).asMaterial().assay as Quantity).in("%").toNumber();
    expect(unwashed).toBeLessThan(value);
  });
});

describe("observations", () => {
  it.each([
    [{ weight: "1 g" }, "plan.unknown-option"],
    [{ washes: -1 }, "plan.observation"],
    [{ strengths: { acid: "1 mol/L" } }, "plan.no-such-material"],
    [{ assays: { zinc: "120 %" } }, "plan.request"],
    [{ strengths: { zinc: "1 mol/L" }, assays: { zinc: "90 %" } }, "plan.strength"],
    [{ wetCake: "0 g" }, "plan.not-positive"],
    [{ ignition: { before: "1 g", after: "2 g" } }, "plan.observation"],
    [null, "plan.observation"],
  ])("%j are refused with %s", (observations, code) => {
    const outcome = tryEvaluateRun(plan, observations as never);
    expect(outcome.ok ? "no refusal" : outcome.error.code).toBe(code);
  });
});

describe("what a product is, by acid alone", () => {
  // 2 / 100.09 g/mol = 19.98 mmol of acid for each gram of chalk
  it("is told by the acid it takes, without an ignition; and nothing is told without either", () => {
    const plan = planPreparation({
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "calcium", form: "CaCl2" },
        { name: "soda", form: "Na2CO3" },
      ],
      scale: { product: "20 g" },
    });
    const { identity } = evaluateRun(plan, { acidPerGram: "20.0 mmol/g" });
    expect(identity!.verdict).toBe("identified");
    expect(identity!.remaining).toEqual(["CaCO₃"]);
    expect(evaluateRun(plan, { dried: "19 g" }).identity).toBeUndefined();
  });
});
