// What a rinse does to crystals: ice water takes a hydrate with its crystal water, and the salt of an earlier batch that their own
// solution leaves on them is weighed with them and is no yield. Solubilities are those of our table (CRC Handbook), the sums by hand.
import { densityOfWater, evaluateRun, type PlanRequest, type ProcedureStep, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const grams = (q: { in(unit: string): { toNumber(): number } } | undefined): number => q!.in("g").toNumber();
const rinseOf = ({ steps }: { readonly steps: readonly ProcedureStep[] }): ProcedureStep =>
  steps.find(({ operation }) => operation === "rinse")!;

const EPSOM: PlanRequest = {
  equation: "MgO + H2SO4 + H2O -> MgSO4·7H2O",
  product: "MgSO4·7H2O",
  materials: [
    { name: "calcined magnesia", form: "MgO" },
    { name: "dilute sulfuric acid", form: "H2SO4", strength: "20 %", excess: "3 %" },
  ],
  scale: { product: "100 g" },
};

const COPPER: PlanRequest = {
  equation: "Cu + HNO3 -> Cu(NO3)2 + NO + H2O",
  product: "Cu(NO3)2",
  materials: [
    { name: "copper wire", form: "Cu" },
    { name: "nitric acid", form: "HNO3", strength: "30 %", excess: "5 %" },
  ],
  scale: { material: "copper wire", portion: "10.5 g" },
};

describe("ice water on the crystals of a hydrate", () => {
  it("dissolves more of them than of the salt alone: their crystal water is water too", () => {
    const step = rinseOf(planPreparation(EPSOM));
    const [water] = step.amounts;
    const w = grams(water);
    // 22.2 g of MgSO4 in 100 g of water at 0 °C; 120.37 of 246.47 g is MgSO4, 126.10 g water:
    // 0.4884 x = 0.222 (w + 0.5116 x)
    const x = (0.222 * w) / (0.4884 - 0.222 * 0.5116);
    const own = (contents: ProcedureStep["before"]): number => grams(contents.solids[0]!.mass);
    expect(own(step.before) - own(step.after)).toBeCloseTo(x, 1);
    expect(step.text).toContain(`it dissolves at most ${x.toFixed(1)} g of them`);
  });
});

describe("their own solution of an earlier batch", () => {
  const plan = planPreparation(COPPER);
  const step = rinseOf(plan);
  const solid = grams(step.after.solids[0]!.mass);
  const brought = grams(step.ofAnotherBatch);
  const keeps = grams(step.before.mass) - solid;
  const poured = step.amounts.map(grams).reduce((one, other) => one + other);
  // each of the two portions mixes with what clings, and as large a volume clings after: no table has the density of this salt, so that
  // each is as large as so much water at its temperature
  const volume = (mass: number, { temperature }: ProcedureStep["before"]): number =>
    mass / densityOfWater(temperature).toNumber("g/mL");
  const [clings, rinse] = [volume(keeps, step.before), volume(poured, step.put[0]!)];
  const left = (clings / (clings + rinse / 2)) ** 2;
  // what is left of their own liquor dries into them: 63.546 + 2 × 62.004 + 6 × 18.015 = 295.644 g/mol with its water
  const crystals =
    solid +
    left *
      step.before.dissolved
        .find(({ formula }) => formula === "Cu(NO₃)₂")!
        .amount.in("mol")
        .toNumber() *
      295.644;

  it("is two times what drained crystals keep, 0.2 mL a gram (common practice, no source), and what is left of their own liquor makes room for the rest", () => {
    const [water, salt] = step.amounts.map(grams);
    expect(water! + salt!).toBeCloseTo(2 * 0.2 * solid, 6);
    expect(brought / salt!).toBeCloseTo(((1 - left) * clings) / rinse, 6);
    // in ice, for the liquor has the water that lets its crystals be stirred, and ice brings a tenth more of them: 90 g of Cu(NO3)2
    // in 100 g at 5 °C, between 82.5 at 0 and 99.2 at 10 °C; 187.55 of 295.65 g is Cu(NO3)2, 108.09 g water: 1 g of water takes
    // 0.90 / (0.6344 - 0.90 · 0.3656) g of the crystals
    expect(salt! / water!).toBeCloseTo(0.9 / (0.63439 - 0.9 * 0.36561), 1);
  });

  it("is no yield: expected are the crystals, with it they weigh so much more", () => {
    const last = plan.steps.at(-1)!;
    expect(grams(last.target)).toBeCloseTo(crystals, 5);
    expect(grams(last.after.mass)).toBeCloseTo(crystals + brought, 3);
    expect(last.text).toContain(`about ${crystals.toFixed(1)} g expected`);
    expect(last.text).toContain(`up to ${brought.toFixed(1)} g more with the salt of the earlier batch`);
    // what the rinse brings is a row of its own
    const [low, own, high] = [0.9 * crystals, crystals, crystals + brought].map((mass) => mass.toFixed(1));
    const text = benchSheet(plan, { format: "text" });
    expect(text).toMatch(new RegExp(`${low} to ${own} g +as expected, allowing for handling`));
    expect(text).toMatch(new RegExp(`${own} to ${high} g +as expected, with what the rinse leaves`));
  });

  // above the theory it makes them no more, for crystals that fill 60 % of the vessel leave a third in the liquor, which is said
  it("is no water left in them, where it makes them heavier than what the steps bring", () => {
    const { verdict } = evaluateRun(plan, { dried: `${Math.round(10 * (crystals + brought)) / 10} g` });
    expect(crystals + brought).toBeGreaterThan(1.1 * crystals);
    const codes = verdict.map(({ code }) => code);
    expect(codes[0]).toBe("loss-explained");
    for (const alarm of ["wet", "unwashed", "too-heavy", "boiled-further"]) expect(codes).not.toContain(alarm);
  });

  it("is not missed by the verdict: who did not rinse has lost nothing", () => {
    const run = evaluateRun(plan, { dried: `${Math.round(9.2 * crystals) / 10} g` });
    expect(grams(run.expected)).toBeCloseTo(crystals, 5);
    expect(run.verdict.map(({ code }) => code)).not.toContain("lighter-than-losses-explain");
  });
});
