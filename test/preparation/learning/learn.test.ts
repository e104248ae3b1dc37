// What runs teach, held against the textbook formulas for a normal prior and likelihood, written out here (from memory).
import { evaluateRun, learnFromRuns, type PlanRequest, planPreparation, type Quantity, withLearned } from "preparative";
import { describe, expect, it } from "vitest";

const percent = (q: Quantity): number => q.in("%").toNumber();

const request: PlanRequest = {
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials: [
    { name: "de-icer", form: "CaCl2·2H2O" },
    { name: "soda", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { product: "100 g" },
};
const plan = planPreparation(request);
const theory = plan.product.theoreticalYield.in("g").toNumber();
const washed = plan.washing as { plan: { productLost: Quantity } };
const dissolved = plan.completeness as { dissolved: Quantity };
const kept = washed.plan.productLost.in("g").toNumber() + dissolved.dissolved.in("g").toNumber();
/** A run that lost so much of the theory to handling. */
const losing = (share: number, extra: object = {}) =>
  evaluateRun(plan, { dried: `${(theory * (1 - share) - kept).toFixed(2)} ± 0.05 g` as "1 g", ...extra });

describe("handling loss from runs", () => {
  // Prior: evenly from 0 to 10 %: 5 % with 10/√12 = 2.887 %; the pack 100 ± 2 %; scatter 3 % counts as two runs.
  it("is prior and runs weighted by what each is worth", () => {
    const losses = [0.022, 0.028, 0.025, 0.025];
    const { handlingLoss, assays } = learnFromRuns(losses.map((loss) => losing(loss)));
    const [h] = handlingLoss;
    const mean = 0.025;
    const squares = losses.reduce((sum, loss) => sum + (loss - mean) ** 2, 0);
    const scatter = (2 * 0.03 ** 2 + squares) / (2 + 3);
    const [u2, a2] = [0.1 ** 2 / 12, 0.02 ** 2];
    const whole = u2 + a2 + scatter / 4;
    expect(h!.of).toBe("wet");
    expect(h!.n).toBe(4);
    expect(percent(h!.prior)).toBeCloseTo(5, 6);
    expect(percent(h!.value)).toBeCloseTo(100 * (0.05 + (u2 / whole) * (mean - 0.05)), 1);
    expect(h!.value.standardUncertainty!.toNumber()).toBeCloseTo(100 * Math.sqrt(u2 - u2 ** 2 / whole), 1);
    // What handling did not lose the pack has more.
    expect(percent(assays[0]!.value)).toBeCloseTo(100 * (1 - (a2 / whole) * (mean - 0.05)), 1);
    expect(percent(h!.interval.lower)).toBeLessThan(2.5);
    expect(percent(h!.interval.upper)).toBeGreaterThan(2.5);
  });

  // Of a solution the strength was measured, not the pack: what is missing is handling alone, u² + s²/n with no part of a pack.
  it("has no pack to share with where a solution runs out", () => {
    const titrated = planPreparation({
      ...request,
      materials: [{ name: "brine", form: "CaCl2", strength: "1.000 mol/L" }, request.materials[1]!],
    });
    const losses = [0.022, 0.028, 0.025, 0.025];
    const { dissolved: inLiquor } = titrated.completeness as { dissolved: Quantity };
    const { plan: schedule } = titrated.washing as { plan: { productLost: Quantity } };
    const stays = inLiquor.plus(schedule.productLost).in("g").toNumber();
    const all = titrated.product.theoreticalYield.in("g").toNumber();
    const runs = losses.map((loss) =>
      evaluateRun(titrated, { dried: `${(all * (1 - loss) - stays).toFixed(2)} ± 0.05 g` as "1 g" }),
    );
    const { handlingLoss, assays } = learnFromRuns(runs);
    expect(assays).toEqual([]);
    const squares = losses.reduce((sum, loss) => sum + (loss - 0.025) ** 2, 0);
    const scatter = (2 * 0.03 ** 2 + squares) / (2 + 3);
    const u2 = 0.1 ** 2 / 12;
    const whole = u2 + scatter / 4;
    expect(percent(handlingLoss[0]!.value)).toBeCloseTo(100 * (0.05 + (u2 / whole) * (0.025 - 0.05)), 1);
    expect(handlingLoss[0]!.value.standardUncertainty!.toNumber()).toBeCloseTo(
      100 * Math.sqrt(u2 - u2 ** 2 / whole),
      1,
    );
  });

  it("is surer with every run, and the same in any order", () => {
    const losses = [0.01, 0.03, 0.05, 0.02, 0.04];
    const learned = (list: readonly number[]) => learnFromRuns(list.map((loss) => losing(loss))).handlingLoss[0]!;
    let before = Number.POSITIVE_INFINITY;
    for (const n of [1, 2, 3, 5]) {
      const u = learned(losses.map(() => 0.03).slice(0, n)).value.standardUncertainty!.toNumber();
      expect(u).toBeLessThan(before);
      before = u;
    }
    expect(percent(learned(losses).value)).toBeCloseTo(percent(learned([...losses].reverse()).value), 5);
  });

  it("leaves out runs whose verdict explains the mass otherwise, and says why", () => {
    const wet = evaluateRun(plan, { dried: "110 g" });
    const { leftOut, handlingLoss } = learnFromRuns([losing(0.02), wet, evaluateRun(plan, {})]);
    expect(handlingLoss[0]!.n).toBe(1);
    expect(leftOut.map(({ run }) => run)).toEqual([1, 2]);
    expect(leftOut[0]!.why).toMatch(/verdict is/);
    expect(leftOut[1]!.why).toMatch(/nothing was weighed/);
  });

  // What cooling leaves in the liquor is no loss of handling: each run is 3 % of the theory short of its crop.
  it("holds crystals against the crop of their cooling, in a way of their own", () => {
    const alum: PlanRequest = {
      equation: "Al2(SO4)3 + K2SO4 + H2O -> KAl(SO4)2·12H2O",
      product: "KAl(SO4)2·12H2O",
      materials: [
        { name: "aluminium sulfate", form: "Al2(SO4)3·18H2O" },
        { name: "potassium sulfate", form: "K2SO4" },
      ],
      scale: { product: "200 g" },
    };
    const grown = planPreparation(alum);
    const crop = grown.steps.at(-1)!.after.solids[0]!.mass.in("g").toNumber();
    expect(crop).toBeLessThan(195);
    const short = (share: number) => evaluateRun(grown, { dried: `${(crop - 200 * share).toFixed(1)} g` as "1 g" });
    const learned = learnFromRuns(Array.from({ length: 6 }, (_, i) => short(0.0275 + 0.001 * i)));
    expect(learned.leftOut).toEqual([]);
    const [h] = learned.handlingLoss;
    expect([h!.of, h!.n]).toEqual(["crystals", 6]);
    expect(Math.abs(percent(h!.value) - 3)).toBeLessThan(1.2);
    expect(h!.value.standardUncertainty!.toNumber()).toBeLessThan(percent(h!.prior) / Math.sqrt(3));
    expect(planPreparation(withLearned(alum, learned)).handlingLoss.in("%").toString()).toBe(
      learned.allowances[0]!.handlingLoss.in("%").toString(),
    );
    // What is filtered off learns nothing from crystals.
    expect(withLearned(request, learned).handlingLoss).toBeUndefined();
  });

  // In a crucible nothing stays dissolved: evenly from 0 to 2 % before, of the theory all the same.
  it("is of its own where a solid is fired", () => {
    const kiln = planPreparation({
      equation: "CaCO3 -> CaO + CO2",
      product: "CaO",
      materials: [{ name: "chalk", form: "CaCO3" }],
      scale: { material: "chalk", portion: "100.09 g" },
    });
    const all = kiln.product.theoreticalYield.in("g").toNumber();
    const losses = [0.02, 0.03, 0.04];
    const { handlingLoss, leftOut } = learnFromRuns(
      losses.map((loss) => evaluateRun(kiln, { dried: `${(all * (1 - loss)).toFixed(2)} g` as "1 g" })),
    );
    expect(leftOut).toEqual([]);
    const scatter = (2 * 0.03 ** 2 + 2 * 0.01 ** 2) / (2 + 2);
    const u2 = 0.02 ** 2 / 12;
    const whole = u2 + 0.02 ** 2 + scatter / 3;
    expect([handlingLoss[0]!.of, handlingLoss[0]!.n]).toEqual(["dry", 3]);
    expect(percent(handlingLoss[0]!.value)).toBeCloseTo(100 * (0.01 + (u2 / whole) * (0.03 - 0.01)), 2);
  });

  // Below 48 °C magnesium sulfate comes with seven waters (handbooks, from memory): one was asked for, which comes from 68 °C on.
  it("is not learned where the crystals that come are others", () => {
    const one = planPreparation({
      equation: "MgCO3 + H2SO4 -> MgSO4·H2O + CO2",
      product: "MgSO4·H2O",
      materials: [
        { name: "carbonate", form: "MgCO3" },
        { name: "acid", form: "H2SO4", strength: "20 %" },
      ],
      scale: { product: "50 g" },
      acknowledge: ["another-hydrate", "does-not-go"],
    });
    const { leftOut } = learnFromRuns([evaluateRun(one, { dried: "42 g" })]);
    expect(leftOut).toEqual([{ run: 0, why: "its steps do not say what cooling brings" }]);
  });

  it("learns nothing from nothing", () => {
    expect(learnFromRuns([])).toMatchObject({ handlingLoss: [], retainedLiquor: [], assays: [], leftOut: [] });
  });
});

describe("the assay of a pack from runs", () => {
  const pack = {
    ...request,
    materials: [{ ...request.materials[0]!, assay: "100 ± 5 %" as const }, request.materials[1]!],
  };
  const stated = planPreparation(pack);
  const weak = Array.from({ length: 8 }, (_, i) =>
    evaluateRun(stated, { dried: `${(theory * 0.9 * (0.955 + 0.0025 * i) - kept).toFixed(1)} g` as "1 g" }),
  );

  // The pack has 90 % and handling loses 3.6 % on average: 13.3 % is missing, shared by what each was uncertain: 2.89 and 5 %.
  it("takes its part of what is missing", () => {
    const { assays } = learnFromRuns(weak);
    const [assay] = assays;
    expect(assay!.n).toBe(8);
    expect(percent(assay!.value)).toBeLessThan(96);
    expect(percent(assay!.interval.lower)).toBeLessThan(90);
    expect(assay!.value.standardUncertainty!.toNumber()).toBeLessThan(5);
  });

  it("is the titration where there is one, and handling has the rest", () => {
    const titrated = evaluateRun(stated, {
      assays: { "de-icer": "90.0 ± 0.3 %" },
      dried: `${(theory * 0.9 * 0.964 - kept).toFixed(1)} g` as "1 g",
    });
    const { assays, handlingLoss } = learnFromRuns([...weak, titrated]);
    expect(Math.abs(percent(assays[0]!.value) - 90)).toBeLessThan(0.5);
    expect(Math.abs(percent(handlingLoss[0]!.value) - 3.6)).toBeLessThan(1.5);
  });
});

describe("liquor in a cake from runs", () => {
  // 250 g wet and 97 g dry: 153/97 = 1.577 mL/g; prior by the plan, 50 % uncertain; one cake scatters as the prior
  it("is half way between plan and a first cake, and nearly all cakes after ten", () => {
    const cake = (n: number) =>
      learnFromRuns(Array.from({ length: n }, () => evaluateRun(plan, { wetCake: "250 g", dried: "97.0 g" })))
        .retainedLiquor[0]!;
    const [one, ten] = [cake(1), cake(10)];
    const prior = one.prior.in("mL/g").toNumber();
    expect(one.value.in("mL/g").toNumber()).toBeCloseTo((prior + 1.5773) / 2, 3);
    // (u²/10)/10 against u²: 1/101 of the prior is left
    expect(ten.value.in("mL/g").toNumber()).toBeCloseTo((prior + 100 * 1.5773) / 101, 3);
    expect(ten).toMatchObject({ of: "CaCO₃", n: 10 });
  });
});

describe("a plan with what runs taught", () => {
  const runs = [0.02, 0.025, 0.03, 0.022, 0.028].map((loss) => losing(loss, { wetCake: "240 g" }));
  const learned = learnFromRuns(runs);

  it("takes handling loss, liquor and assay", () => {
    const next = planPreparation(withLearned(request, learned));
    expect(next.handlingLoss.equals(learned.allowances[0]!.handlingLoss)).toBe(true);
    expect(percent(next.handlingLoss)).toBeLessThan(10);
    const washing = next.washing as { plan: { retainedVolume: Quantity } };
    const perGram = washing.plan.retainedVolume.in("mL").toNumber() / next.product.theoreticalYield.in("g").toNumber();
    expect(perGram).toBeCloseTo(learned.retainedLiquor[0]!.value.in("mL/g").toNumber(), 3);
    expect(percent(next.request.materials[0]!.assay as Quantity)).toBeCloseTo(100, 0);
  });

  it("keeps what the request says itself", () => {
    const own = withLearned({ ...request, handlingLoss: "4 %", washing: { retainedLiquorPerGram: "3 mL/g" } }, learned);
    expect(own).toMatchObject({ handlingLoss: "4 %", washing: { retainedLiquorPerGram: "3 mL/g" } });
    // the strength of a solution says how much of it counts, and nothing was learned of the soda
    const solution = { name: "de-icer", form: "CaCl2", strength: "30 %" } as const;
    const [calcium, soda] = withLearned(
      { ...request, materials: [solution, request.materials[1]!] },
      learned,
    ).materials;
    expect([calcium, soda]).toEqual([solution, request.materials[1]!]);
  });

  it("learns the same from records that went through JSON", () => {
    const records = runs.map((run) => JSON.parse(JSON.stringify(run)));
    expect(learnFromRuns(records).handlingLoss[0]!.text).toBe(learned.handlingLoss[0]!.text);
  });

  it.each([[[{}]], [[null]], [[plan]], ["runs"]])("refuses %o", (runs) => {
    expect(() => learnFromRuns(runs as never)).toThrow(
      expect.objectContaining({ code: expect.stringMatching(/^plan\./) }),
    );
  });
});

describe("by hand", () => {
  const plan = planPreparation({
    equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
    product: "CaCO3",
    materials: [
      { name: "de-icer", form: "CaCl2·2H2O" },
      { name: "soda", form: "Na2CO3", excess: "5 %" },
    ],
    scale: { material: "de-icer", portion: "147.0 g" },
  });
  const runOf = (grams: number, more = {}) => evaluateRun(plan, { dried: `${grams} g` as "1 g", ...more });

  // Theory 100.08 g. Missing 5.08, 4.08, 3.08, 4.58, 3.58 %: mean 4.08, squares about it 2.5 (%)². Scatter² = (2 × 9 + 2.5) / (2 + 4) = 3.42,
  // of the mean 0.683. Loss before 5 ± 2.89, pack 100 ± 2: together 8.33 + 4 = 12.33. Gain on the loss 8.33 / (12.33 + 0.68) = 0.640:
  // 5 - 0.640 × 0.92 = 4.4 %; u² = 8.33 - 8.33² / 13.02 = 3.00, u 1.73. Pack 100 + 4 / 13.02 × 0.92 = 100.3 %.
  it("five runs share what is missing between hand and pack", () => {
    const { handlingLoss, assays } = learnFromRuns([95, 96, 97, 95.5, 96.5].map((grams) => runOf(grams)));
    const [loss, pack] = [handlingLoss[0]!.value, assays[0]!.value];
    expect(loss.toNumber("%")).toBeCloseTo(4.4, 1);
    expect(loss.standardUncertainty!.toNumber()).toBeCloseTo(1.73, 1);
    expect(pack.toNumber("%")).toBeCloseTo(100.3, 1);
  });

  // 94 ± 0.3 % once, and 100 ± 2 % before: 1 / (1/0.09 + 1/4) = 0.088, u 0.297; three times over it was 0.17.
  it("one titration that stands in three runs is one", () => {
    const titrated = [90.6, 90.1, 91.1].map((grams) => runOf(grams, { assays: { "de-icer": "94.0 ± 0.3 %" } }));
    const [pack] = learnFromRuns(titrated).assays;
    expect(pack!.value.standardUncertainty!.toNumber()).toBeCloseTo(0.29, 1);
    const twice = learnFromRuns([...titrated, runOf(90.5, { assays: { "de-icer": "94.4 ± 0.3 %" } })]).assays[0]!;
    expect(twice.value.standardUncertainty!.toNumber()).toBeLessThan(0.24);
  });

  // Cakes of 196 for 96 g, 197 for 97, 195 for 95: 1.04, 1.03, 1.05 mL/g.
  it("cakes tell their liquor", () => {
    const cakes = [96, 97, 95].map((grams) => runOf(grams, { wetCake: `${grams + 100} g` }));
    const [liquor] = learnFromRuns(cakes).retainedLiquor;
    expect(liquor!.n).toBe(3);
    expect(liquor!.value.toNumber("mL/g")).toBeCloseTo(1.02, 1);
  });
});
