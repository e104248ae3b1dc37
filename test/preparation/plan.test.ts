import {
  evaluateRun,
  explain,
  type PlanRequest,
  planFromJSON,
  planPreparation,
  runFromJSON,
  type ShelfMaterial,
  tryPlanPreparation,
} from "preparative";
import { describe, expect, it } from "vitest";

const zinc: ShelfMaterial = {
  name: "moss killer",
  form: "ZnSO4·7H2O",
  assay: "98 %",
  pack: { size: "1 kg", price: "8.90 EUR" },
};
const soda: ShelfMaterial = {
  name: "washing soda",
  form: "Na2CO3·10H2O",
  excess: "5 %",
  pack: { size: "1 kg", price: "2.40 EUR" },
};
const request: PlanRequest = {
  equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
  product: "Zn5(CO3)2(OH)6",
  materials: [zinc, soda],
  scale: { material: "moss killer", portion: "250.0 g" },
  temperature: "25 °C",
};
const number = (q: { toNumber(): number }): number => q.toNumber();

describe("a plan", () => {
  const plan = planPreparation(request);

  it("balances the equation", () => {
    expect(plan.equation.toString()).toBe("5 ZnSO4 + 5 Na2CO3 + 3 H2O -> Zn5(CO3)2(OH)6 + 5 Na2SO4 + 3 CO2");
  });

  // By hand, CIAAW abridged weights: M(ZnSO4·7H2O) = 287.54, 250.0 g of 98 % is 0.8521 mol; a fifth of it times
  // M(Zn5(CO3)2(OH)6) = 548.96 is 93.55 g; three fifths of it are 0.5112 mol of CO2, 12.51 L at 25 °C and 101.325 kPa.
  it("agrees with the sum done by hand", () => {
    expect(number(plan.materialBalance.supplied[0]!.amount.in("mol"))).toBeCloseTo(0.8521, 4);
    expect(number(plan.product.theoreticalYield.in("g"))).toBeCloseTo(93.55, 2);
    expect(number(plan.gas[0]!.volume.in("L"))).toBeCloseTo(12.51, 2);
    expect(plan.gas[0]!.formula).toBe("CO₂");
    expect(plan.materialBalance.limiting).toBe("moss killer");
  });

  it("weighs the formula as sold: 256.0 g of crystals carry what 94.9 g of soda ash do", () => {
    // 0.8521 mol × 1.05 × 286.14 g/mol = 256.0 g; × 105.99 g/mol = 94.83 g, rounded up: it must not run out
    expect(plan.weighings[1]!.portion.format({ decimals: 1, uncertainty: "none" })).toBe("256.0 g");
    const ash = planPreparation({ ...request, materials: [zinc, { ...soda, form: "Na2CO3" }] });
    expect(ash.weighings[1]!.portion.format({ decimals: 1, uncertainty: "none" })).toBe("94.9 g");
    expect(ash.product.theoreticalYield.equals(plan.product.theoreticalYield)).toBe(true);
  });

  it("gives more from the same grams of monohydrate, by the ratio of the molar masses", () => {
    const mono = planPreparation({ ...request, materials: [{ ...zinc, form: "ZnSO4·H2O" }, soda] });
    const ratio = number(mono.product.theoreticalYield.dividedBy(plan.product.theoreticalYield).value);
    expect(ratio).toBeCloseTo(287.54 / 179.45, 3); // 1.60, the usual mix-up
  });

  it("counts all the water: added, of the crystals, used by the reaction", () => {
    const added = plan.feeds.reduce(
      (g, feed) => g + (feed.how === "dissolve" ? number(feed.dissolving.water.in("g")) : 0),
      0,
    );
    const [zn, na] = plan.materialBalance.supplied.map((s) => number(s.amount.in("mol"))) as [number, number];
    const reaction = -3 * number(plan.materialBalance.extent.in("mol"));
    expect(number(plan.liquor.water!.in("g"))).toBeCloseTo(added + (7 * zn + 10 * na + reaction) * 18.015, 1);
    expect(plan.liquor.check!.substances.map((s) => [s.formula, s.stays])).toEqual([
      ["Na2SO4", "yes"],
      ["Na2CO3", "yes"],
    ]);
  });

  it("says so when a by-product will not stay dissolved", () => {
    const cold = planPreparation({ ...request, temperature: "5 °C", waterFactor: 1 });
    expect(cold.liquor.check!.substances.find((s) => s.formula === "Na2SO4")!.stays).toBe("no");
  });

  it("chooses a vessel that holds the foam", () => {
    const { liquid, needed, smallest, vesselFactor } = plan.vessel!;
    expect(vesselFactor).toBe(2);
    expect(needed.equals(liquid.times(2))).toBe(true);
    expect(smallest!.compare(needed)).toBe(1);
    expect(smallest!.dividedBy(2).compare(needed)).toBe(-1);
  });

  it("washes the sulfate down to the stated residue, and says what it assumed", () => {
    if (plan.washing === undefined || "missing" in plan.washing) throw new Error("no wash schedule");
    const { plan: wash } = plan.washing;
    expect(wash.residueAfter.at(-1)!.compare(plan.product.theoreticalYield.times("0.5 %"))).toBe(-1);
    expect(wash.residueAfter.at(-2)!.compare(plan.product.theoreticalYield.times("0.5 %"))).toBe(1);
    expect(explain(wash.residueUnwashed).assumptions.join()).toContain("basic carbonate holds 1.5 to 4 mL");
  });

  it("gives the normal carbonate and the hydroxide beside the basic one", () => {
    // the same 0.8521 mol of zinc as ZnCO3, 125.39 g/mol
    expect(plan.candidates.map((c) => [c.formula, c.wanted])).toEqual([
      ["Zn₅(CO₃)₂(OH)₆", true],
      ["ZnCO₃", false],
      ["Zn(OH)₂", false],
    ]);
    expect(number(plan.candidates[1]!.theoreticalYield.in("g"))).toBeCloseTo(0.852052 * 125.388, 1);
  });

  it("costs what the parts of the packs cost", () => {
    // 250 g of 8.90 EUR/kg and 256.0 g of 2.40 EUR/kg
    expect(plan.cost.total!.format({ decimals: 4, uncertainty: "none" })).toBe("2.8394 EUR");
    expect(plan.cost.perGram!.unit).toBe("EUR/g");
    expect(plan.cost.perMole!.unit).toBe("EUR/mol");
    const unpriced = planPreparation({ ...request, materials: [zinc, { name: "soda", form: "Na2CO3" }] });
    expect(unpriced.cost.total).toBeUndefined();
    expect(unpriced.cost.missing).toEqual(["price of soda"]);
  });

  it("plans the same when the equation tells the phases", () => {
    const phased = planPreparation({
      ...request,
      equation: "ZnSO4(aq) + Na2CO3(aq) + H2O(l) -> Zn5(CO3)2(OH)6(s) + Na2SO4(aq) + CO2(g)",
    });
    expect(phased.product.theoreticalYield.equals(plan.product.theoreticalYield)).toBe(true);
    expect(phased.product.formula).toBe(plan.product.formula);
    expect(phased.liquor.water!.equals(plan.liquor.water!)).toBe(true);
    expect(phased.gas[0]!.volume.equals(plan.gas[0]!.volume)).toBe(true);
    expect(phased.candidates.map((c) => c.formula)).toEqual(plan.candidates.map((c) => c.formula));
  });

  it("scales: k times the batch is k times every mass", () => {
    const double = planPreparation({
      ...request,
      scale: { material: "moss killer", portion: "500.0 g" },
      readability: { mass: "0.01 g" },
    });
    const single = planPreparation({ ...request, readability: { mass: "0.005 g" } });
    const pairs = [
      [single.product.theoreticalYield, double.product.theoreticalYield],
      [single.gas[0]!.volume, double.gas[0]!.volume],
      [single.liquor.water!, double.liquor.water!],
      [single.cost.total!, double.cost.total!],
      [single.vessel!.liquid, double.vessel!.liquid],
    ] as const;
    for (const [one, two] of pairs) expect(two.compare(one.times(2))).toBe(0);
  });

  it("keeps mass: what goes in comes out", () => {
    const taken = plan.materialBalance.taken.reduce((g, t) => g + number(t.mass.in("g")), 0);
    const formed = plan.materialBalance.formed.reduce((g, f) => g + number(f.mass.in("g")), 0);
    const used = plan.materialBalance.supplied.reduce(
      (g, s) => g + number(s.amount.minus(s.left).in("mol")) * { "ZnSO₄": 161.436, "Na₂CO₃": 105.988 }[s.species]!,
      0,
    );
    expect(used + taken).toBeCloseTo(formed, 1);
  });

  it("takes solutions by strength, and metals as they are", () => {
    const acid = planPreparation({
      equation: "Zn + HCl -> ZnCl2 + H2",
      product: "ZnCl2",
      materials: [
        { name: "zinc", form: "Zn", excess: "10 %" },
        { name: "spirits of salt", form: "HCl", strength: "30 % w/w", density: "1.149 g/mL" },
      ],
      scale: { material: "spirits of salt", portion: "100 mL" },
    });
    // 100 mL × 1.149 g/mL × 0.30 / 36.458 g/mol = 0.94547 mol
    expect(number(acid.materialBalance.supplied[1]!.amount.in("mol"))).toBeCloseTo(0.94547, 5);
    expect(acid.gas[0]!.formula).toBe("H₂");
    const molar = planPreparation({
      equation: "AgNO3 + NaCl -> AgCl + NaNO3",
      product: "AgCl",
      materials: [
        { name: "silver", form: "AgNO3", strength: "0.1 mol/L" },
        { name: "salt", form: "NaCl", strength: "58.44 g/L" },
      ],
      scale: { material: "silver", portion: "250 mL" },
    });
    expect(molar.materialBalance.supplied.map((s) => s.portion.format({ decimals: 0, uncertainty: "none" }))).toEqual([
      "250 mL",
      "25 mL",
    ]);
  });

  it("plans for a product, and for what is on the shelf", () => {
    const wanted = planPreparation({ ...request, scale: { product: "100 g" } });
    expect(number(wanted.product.theoreticalYield.in("g"))).toBeCloseTo(100, 0);
    const all = planPreparation({
      ...request,
      materials: [
        { ...zinc, available: "1 kg" },
        { ...soda, available: "500 g" },
      ],
      scale: "all",
    });
    expect(all.weighings[1]!.portion.format({ decimals: 1, uncertainty: "none" })).toBe("500.0 g");
  });

  it("survives JSON", () => {
    const back = planFromJSON(JSON.parse(JSON.stringify(plan)));
    expect(back.product.theoreticalYield.equals(plan.product.theoreticalYield)).toBe(true);
    expect(JSON.stringify(back)).toBe(JSON.stringify(plan));
  });

  it.each([
    [{ product: "ZnO" }, "plan.no-such-product"],
    [{ materials: [zinc, { name: "salt", form: "NaCl" }] }, "plan.unmatched-material"],
    [{ materials: [zinc, zinc] }, "plan.request"],
    [{ materials: [] }, "plan.no-such-material"],
    [{ scale: { material: "moss", portion: "1 g" } }, "plan.no-such-material"],
    [{ scale: { material: "moss killer", portion: "0 g" } }, "plan.not-positive"],
    [{ scale: { material: "moss killer", portion: "0.04 g" } }, "plan.too-small"],
    [{ scale: { material: "moss killer", portion: "10 mL" } }, "plan.strength"],
    [{ scale: "all" }, "plan.scale"],
    [{ materials: [{ ...zinc, assay: "120 %" }, soda] }, "plan.request"],
    [{ materials: [{ ...zinc, strength: "5 % w/w" }, soda] }, "plan.strength"],
    [{ materials: [{ ...zinc, assay: "0 %" }, soda] }, "plan.not-positive"],
    // 31 % of a gas is its solution in water, and no dirty gas to be led in
    [
      {
        equation: "Na2CO3 + HCl -> NaCl + CO2 + H2O",
        product: "NaCl",
        materials: [
          { name: "soda", form: "Na2CO3" },
          { name: "muriatic acid", form: "HCl", assay: "31 %" },
        ],
        scale: { material: "soda", portion: "10 g" },
      },
      "plan.strength",
    ],
    [{ equation: "ZnSO4 + Na2CO3 -> Zn5(CO3)2(OH)6" }, "equation.impossible"],
    [{ materials: [{ ...zinc, pack: { size: "1 kg", price: "8.90 g" } }, soda] }, "plan.request"],
  ])("refuses %j with %s", (change, code) => {
    const outcome = tryPlanPreparation({ ...request, ...(change as object) });
    expect(outcome.ok ? "no refusal" : outcome.error.code).toBe(code);
  });
});

describe("a run", () => {
  const plan = planPreparation(request);

  it("with exactly the planned weighings is the plan", () => {
    const run = evaluateRun(plan, { weighed: { "moss killer": "250.0 g", "washing soda": "256.0 g" } });
    expect(run.changes).toEqual([]);
    expect(run.product.theoreticalYield.equals(plan.product.theoreticalYield)).toBe(true);
    expect(run.liquor.water!.equals(plan.liquor.water!)).toBe(true);
  });

  it("recomputes from what was really weighed: soda short makes soda the limit", () => {
    const run = evaluateRun(plan, { weighed: { "washing soda": "200.0 g" } });
    expect(run.materialBalance.limiting).toBe("washing soda");
    // 200.0 / 286.14 / 5 × 548.96
    expect(number(run.product.theoreticalYield.in("g"))).toBeCloseTo(76.74, 2);
    expect(run.changes.map((c) => c.what)).toEqual([
      "washing soda taken",
      "limiting material",
      "excess of moss killer",
      "excess of washing soda",
      "theoretical yield",
      "CO₂ evolved",
    ]);
  });

  it("gives the percent yield with the uncertainty of weights and balance", () => {
    const run = evaluateRun(plan, { dried: "90.0 g" });
    expect(run.percentYield!.format({ decimals: 2 })).toBe("96.21 %");
    // balance 0.1/√6 g on 250 g and on 90 g; atomic weights of zinc, partly cancelling: about 0.05 %
    expect(number(run.percentYield!.standardUncertainty!)).toBeGreaterThan(0.03);
    expect(number(run.percentYield!.standardUncertainty!)).toBeLessThan(0.07);
  });

  it.each([
    ["93.0 g", "consistent"],
    ["86.0 g", "consistent"],
    ["104.0 g", "other-formula-fits"],
    ["120.0 g", "too-heavy"],
    ["60.0 g", "lighter-than-losses-explain"],
  ] as const)("reads %s of dry product as %s", (dried, code) => {
    expect(evaluateRun(plan, { dried }).verdict[0]!.code).toBe(code);
  });

  it("says by how many grams it is too heavy, and whether unwashed salts could do that", () => {
    const { verdict } = evaluateRun(plan, { dried: "120.0 g" });
    const heavy = verdict.find((f) => f.code === "too-heavy")!;
    expect(number(heavy.mass!.in("g"))).toBeCloseTo(120 - 93.55, 1);
    const unwashed = verdict.find((f) => f.code === "unwashed")!;
    // 121 g of sulfate and 4.5 g of soda in what 1.12 kg of water makes of it, 1.14 L, of which the cake keeps 1.5 to 4 mL/g × 93.55 g: 31 g
    // in 257 mL (26.2 g where the solids were counted as liquor)
    expect(unwashed.text).toMatch(/26\.5 g of .* would explain it: 85 % of what an unwashed cake contains/);
  });

  it("judges dryness from successive weighings", () => {
    expect(evaluateRun(plan, { dried: ["95.0 g", "93.0 g"] }).dryness.constant).toBe(false);
    expect(evaluateRun(plan, { dried: ["93.1 g", "93.0 g"] }).dryness.constant).toBe(true);
    expect(evaluateRun(plan, { dried: "93.0 g" }).dryness.constant).toBeUndefined();
  });

  it("says when the balance is too coarse to judge", () => {
    const small = planPreparation({
      ...request,
      scale: { material: "moss killer", portion: "2.0 g" },
      readability: { mass: "0.1 g" },
    });
    expect(evaluateRun(small, { dried: "0.7 g" }).verdict.map((f) => f.code)).toContain("balance-too-coarse");
  });

  it("hands its product on as a material with its cost", () => {
    const run = evaluateRun(plan, { dried: "90.0 g" });
    const next = planPreparation({
      equation: "Zn5(CO3)2(OH)6 + CH3COOH + H2O -> Zn(CH3COO)2·2H2O + CO2",
      product: "Zn(CH3COO)2·2H2O",
      materials: [
        run.asMaterial({ name: "basic zinc carbonate", assay: "97 %" }),
        { name: "vinegar", form: "CH3COOH", strength: "5 % w/w", excess: "2 %" },
      ],
      scale: "all",
    });
    // 90.0 g × 0.97 / 548.96 × 5 × 219.50 g/mol
    expect(number(next.product.theoreticalYield.in("g"))).toBeCloseTo(174.5, 1);
    expect(next.isolation.how).toBe("crystallise");
    expect(next.vessel!.vesselFactor).toBe(3);
    expect(next.cost.lines[0]!.cost.compare(run.cost.total!)).toBe(0);
  });

  it("refuses observations that do not fit, by code", () => {
    const code = (observations: object): string => {
      try {
        evaluateRun(plan, observations);
      } catch (error) {
        return (error as { code: string }).code;
      }
      return "no refusal";
    };
    expect(code({ weighed: { soda: "1 g" } })).toBe("plan.no-such-material");
    expect(code({ weighed: { "moss killer": "-1 g" } })).toBe("plan.not-positive");
    expect(code({ dried: "0 g" })).toBe("plan.not-positive");
    expect(code({ dried: "5 mL" })).toBe("quantity.wrong-dimension");
  });

  it("survives JSON", () => {
    const run = evaluateRun(plan, { weighed: { "moss killer": "248.6 g" }, dried: "90.0 g" });
    const back = runFromJSON(JSON.parse(JSON.stringify(run)));
    expect(back.percentYield!.equals(run.percentYield!)).toBe(true);
    expect(back.verdict.map((f) => f.text)).toEqual(run.verdict.map((f) => f.text));
  });
});
