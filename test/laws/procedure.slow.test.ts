// Laws of the work: whatever is planned, elements are conserved in every step, nothing is below zero, every material is used,
// and a larger batch is the same work with larger figures.
import fc from "fast-check";
import {
  attempt,
  balance,
  type Contents,
  evaluateRun,
  type Plan,
  type PlanRequest,
  type ProcedureStep,
  parseFormula,
  planPreparation,
  quantity,
} from "preparative";
import { describe, expect, it } from "vitest";
import { BENCH_PREPARATIONS, requestOf as benchRequestOf } from "../data/bench-preparations";
import { CORPUS } from "../data/equation-corpus";
import { PREPARATIONS } from "../data/preparations";
import { SECOND_TRIAL } from "../data/second-trial";
import { planOrCode, requestOf } from "../tools/published-plans";

/** mol of each element, and g of what nobody knows: of vessels, whose gas is gone, and of what moves between them, gas with it. */
function elementsOf(vessels: readonly Contents[], moved: readonly Contents[]): Map<string, number> {
  const sums = new Map<string, number>();
  const plus = (symbol: string, n: number): void => {
    sums.set(symbol, (sums.get(symbol) ?? 0) + n);
  };
  const inside = (one: Contents) => [...one.dissolved, ...one.solids];
  const all = [
    ...vessels.map((one) => ({ ...one, entries: inside(one) })),
    ...moved.map((one) => ({ ...one, entries: [...inside(one), ...one.gas] })),
  ];
  for (const { water, entries, other } of all) {
    const moles = water.in("g").toNumber() / 18.015;
    plus("H", 2 * moles);
    plus("O", moles);
    plus("?", other.in("g").toNumber());
    for (const { formula, amount } of entries) {
      const parsed = parseFormula(formula);
      for (const symbol of parsed.symbols) plus(symbol, amount.in("mol").toNumber() * parsed.count(symbol).valueOf());
    }
  }
  return sums;
}

/** Elements conserved over one step, within the rounding of the printed molar mass of water. */
function conserved(step: ProcedureStep): void {
  const into = elementsOf([step.before], step.put);
  const out = elementsOf(
    [step.after],
    step.left.map((one) => one.contents),
  );
  for (const symbol of new Set([...into.keys(), ...out.keys()])) {
    const [a, b] = [into.get(symbol) ?? 0, out.get(symbol) ?? 0];
    const size = Math.max(Math.abs(a), Math.abs(b), 1e-9);
    expect(Math.abs(a - b) / size, `${symbol} in ${step.operation}: ${a} in, ${b} out: ${step.text}`).toBeLessThan(
      1e-6,
    );
  }
}

/** Nothing in a vessel is below zero. */
function notBelowZero({ after, text }: ProcedureStep): void {
  expect(after.water.in("g").toNumber(), text).toBeGreaterThanOrEqual(-1e-6);
  for (const { formula, amount } of [...after.dissolved, ...after.solids])
    expect(amount.in("mol").toNumber(), `${formula} after: ${text}`).toBeGreaterThanOrEqual(-1e-9);
}

/** Operations that put a weighed portion in. */
const PUTS_IN: readonly string[] = ["dissolve", "dilute", "suspend", "add", "rinse"];

/** What a filter or a boiling down takes of a pack is beside what was weighed of it: stated, and little. */
function takesLittle({ weighings }: Plan, { amounts, text }: ProcedureStep, name: string): void {
  const portion = weighings.find(({ material }) => material === name)!.portion;
  const more = amounts.at(-1)!;
  expect(more.isPositive(), text).toBe(true);
  expect(more.dividedBy(portion).toNumber(""), text).toBeLessThan(0.1);
}

function lawful(plan: Plan): void {
  const last = new Map<string, Contents>();
  const used = new Map<string, string[]>();
  for (const step of plan.steps) {
    conserved(step);
    notBelowZero(step);
    // before is what the vessel was left with
    const before = last.get(step.vessel);
    if (before !== undefined)
      expect(step.before.mass.in("g").toNumber()).toBeCloseTo(before.mass.in("g").toNumber(), 9);
    last.set(step.vessel, step.after);
    if (step.from !== undefined) last.delete(step.from);
    if (PUTS_IN.includes(step.operation) || step.operation === "weigh")
      for (const name of step.materials) used.set(name, [...(used.get(name) ?? []), step.operation]);
    else for (const name of step.materials) takesLittle(plan, step, name);
    expect(step.text).toMatch(/^[A-Z].*\.$/s);
  }
  for (const { shelf } of plan.request.materials.map((m) => ({ shelf: m }))) {
    const [first, second, ...more] = used.get(shelf.name) ?? [];
    expect([shelf.name, first, more]).toEqual([shelf.name, "weigh", []]);
    expect(PUTS_IN).toContain(second);
  }
}

/** Three times the batch: three times everything, up to the washes, which are rounded to what a jug shows and take product along. */
function thrice(plan: Plan): void {
  const { scale } = plan.request;
  const named = typeof scale === "object" && "material" in scale ? scale.material : plan.weighings[0]!.material;
  const portion = plan.weighings.find((w) => w.material === named)!.portion;
  const times = (q: unknown) => quantity(q as "1 g").times(3) as never;
  const materials = plan.request.materials.map((m) => ({
    ...m,
    ...(m.portion === undefined ? {} : { portion: times(m.portion) }),
    ...(m.available === undefined ? {} : { available: times(m.available) }),
    ...(m.dissolve?.water === undefined ? {} : { dissolve: { ...m.dissolve, water: times(m.dissolve.water) } }),
  }));
  const one = planOrCode({ ...plan.request, materials: plan.request.materials, scale: { material: named, portion } });
  const large = planOrCode({
    ...plan.request,
    materials,
    scale: { material: named, portion: portion.times(3) as never },
  });
  if (typeof large === "string" || typeof one === "string") throw new Error(`${large} ${one}`);
  // a second crop is boiled for where a cylinder shows the water, which it does of the larger batch sooner
  const firstCrop = ({ steps }: Plan) => steps.filter((s) => s.vessel !== "mother liquor");
  const [ofOne, ofLarge] = [firstCrop(one), firstCrop(large)];
  expect(ofLarge.map((s) => s.operation)).toEqual(ofOne.map((s) => s.operation));
  const second = ({ steps }: Plan) => steps.filter((s) => s.vessel === "mother liquor").map((s) => s.operation);
  if (second(one).includes("concentrate")) expect(second(large)).toEqual(second(one));
  const upTo = ofOne.findIndex((s) => s.operation === "wash");
  ofOne.slice(0, upTo < 0 ? undefined : upTo).forEach((step, i) => {
    const [small, three] = [step, ofLarge[i]!].map((s) => s.after.mass.in("g").toNumber());
    // rounding to the balance moves a partner by a milligram or by the step that was asked for
    expect(Math.abs(three! - 3 * small!), step.text).toBeLessThan(0.06 + 0.004 * Math.abs(3 * small!));
  });
}

/** A run in which everything was weighed as planned. */
function asPlanned(plan: Plan): void {
  const run = evaluateRun(plan, { weighed: Object.fromEntries(plan.weighings.map((w) => [w.material, w.portion])) });
  expect(run.changes).toEqual([]);
  expect(run.steps.map((s) => s.text)).toEqual(plan.steps.map((s) => s.text));
  expect(run.product.theoreticalYield.equals(plan.product.theoreticalYield)).toBe(true);
  expect(run.waste.vessels.map((v) => String(v.contents.mass))).toEqual(
    plan.waste.vessels.map((v) => String(v.contents.mass)),
  );
  expect(run.checks.map((one) => one.text)).toEqual(plan.checks.map((one) => one.text));
}

/** Observations forwards and backwards. */
function inAnyOrder(plan: Plan): void {
  const { theoreticalYield } = plan.product;
  const share = (percent: bigint) => theoreticalYield.times(percent).dividedBy(100n) as never;
  const all = {
    weighed: Object.fromEntries(plan.weighings.map((w) => [w.material, w.portion])),
    temperature: "22 °C",
    wetCake: theoreticalYield.times(2n) as never,
    dried: [share(110n), share(90n), share(88n)],
    note: "any order",
  } as const;
  const said = (keys: readonly string[]): string => {
    const run = evaluateRun(plan, Object.fromEntries(keys.map((k) => [k, all[k as keyof typeof all]])));
    return JSON.stringify([run.verdict.map((f) => f.text), String(run.percentYield), run.steps.map((s) => s.text)]);
  };
  const keys = Object.keys(all);
  expect(said([...keys].reverse())).toBe(said(keys));
}

const REQUESTS = PREPARATIONS.flatMap((p) => {
  const request = requestOf(p);
  return request === undefined ? [] : [[p.id, request] as const];
});

describe("the published preparations", () => {
  const plans = REQUESTS.map(([id, request]) => [id, planOrCode(request)] as const);
  const made = plans.filter((one): one is readonly [string, Plan] => typeof one[1] !== "string");

  it("can nearly all be planned", () => {
    // the first half of this one is a melt of solid lye: it was planned as work in water, which does nothing
    expect(plans.filter(([, plan]) => typeof plan === "string")).toEqual([["k-permanganate-1936", "plan.does-not-go"]]);
    // three of the 59 are several equations, or say nowhere how much of what limits
    expect(made.length).toBe(55);
  });

  it.each(made)("%s conserves elements, has every vessel as it was left, and uses every material once", (_, plan) => {
    lawful(plan);
  });

  it.each(made)("%s: three times the batch is three times every figure of the work", (_, plan) => thrice(plan));
  it.each(made)("%s: a run with the planned figures is the plan", (_, plan) => asPlanned(plan));
  it.each(made)("%s: the order of what is observed changes nothing", (_, plan) => inAnyOrder(plan));
});

/** The same of the classic preparations that stand in no list the library was made from. */
const CLASSIC = BENCH_PREPARATIONS.map(
  (p) => [p.id, planOrCode({ ...benchRequestOf(p), readability: { mass: "0.001 g", volume: "0.001 mL" } })] as const,
);

describe("the classic preparations", () => {
  const made = CLASSIC.filter((one): one is readonly [string, Plan] => typeof one[1] !== "string");

  it("can be planned", () => {
    expect(CLASSIC.filter(([, plan]) => typeof plan === "string")).toEqual([]);
    expect(made.length).toBe(81);
  });

  it.each(made)("%s keeps the laws", (_, plan) => {
    lawful(plan);
    thrice(plan);
    asPlanned(plan);
    inAnyOrder(plan);
  });
});

describe("the second trial", () => {
  it.each(SECOND_TRIAL)("$id keeps the laws", ({ id: _id, kind: _kind, theory: _theory, gas: _gas, ...request }) => {
    const plan = planOrCode({ ...request, readability: { mass: "0.01 g" } });
    if (typeof plan === "string") throw new Error(plan);
    lawful(plan);
    thrice(plan);
    asPlanned(plan);
    inAnyOrder(plan);
  });
});

/** Acid that waits for the metal that is over, a liquor that is poured off before it, and what passes a hot filter and comes again. */
const PARTED: readonly (readonly [string, PlanRequest])[] = [
  [
    "copper from its etchant, with acid on the table",
    {
      equation: "CuCl2 + Fe -> Cu + FeCl2",
      product: "Cu",
      materials: [
        {
          name: "etchant",
          form: "CuCl2",
          strength: "1.20 mol/L",
          density: "1.16 g/mL",
          also: [{ form: "HCl", share: "2.83 %" }],
        },
        { name: "iron wire coil", form: "Fe", assay: "98.5 %", excess: "10 %" },
        { name: "rinse acid", form: "H2SO4", strength: "5 %", aside: true, portion: "30 mL" },
      ],
      scale: { material: "etchant", portion: "500 mL" },
    },
  ],
  [
    "cream of tartar with calcium tartrate in it",
    {
      equation: "KHC4H4O6 -> KHC4H4O6",
      product: "KHC4H4O6",
      materials: [
        { name: "wine stone", form: "KHC4H4O6", assay: "82 %", also: [{ form: "CaC4H4O6·4H2O", share: "8 %" }] },
      ],
      scale: { material: "wine stone", portion: "250 g" },
    },
  ],
];

describe("what is poured off, and what comes again", () => {
  it.each(PARTED)("%s keeps the laws", (_, request) => {
    const plan = planOrCode({ ...request, readability: { mass: "0.001 g", volume: "0.001 mL" } });
    if (typeof plan === "string") throw new Error(plan);
    lawful(plan);
    thrice(plan);
    asPlanned(plan);
    inAnyOrder(plan);
  });
});

describe("anything that balances", () => {
  /** Every product of an equation from the list, made from ten grams of its first reactant; water and air are there. */
  const plansOf = (text: string): (Plan | string)[] => {
    const balanced = attempt(() => balance(text));
    if (!balanced.ok) return [];
    const materials = balanced.value.reactants
      .map(({ formula }) => formula.toString())
      .filter((formula) => formula !== "H2O" && formula !== "O2")
      .map((form, i) => ({ name: `${form} ${i}`, form }));
    const [first] = materials;
    if (first === undefined) return [];
    return balanced.value.products
      .filter(({ formula }) => formula.toString() !== "H2O" && formula.charge === 0)
      .map(({ formula }) =>
        planOrCode({
          equation: text,
          product: formula.toString(),
          materials,
          scale: { material: first.name, portion: "10 g" },
        }),
      );
  };
  // an eighth of the list, which is in no order
  const texts = CORPUS.filter((_, i) => i % 8 === 0);

  it("keeps the laws, or is refused by a code of its own", () => {
    let made = 0;
    let gases = 0;
    let tested = 0;
    for (const plan of texts.flatMap(plansOf)) {
      // a gas that is wanted is refused, and counts as judged
      if (plan === "plan.no-procedure") gases += 1;
      if (typeof plan === "string") expect(plan).toMatch(/^(plan|element)\./);
      else {
        lawful(plan);
        made += 1;
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(110);
    expect(made + gases).toBeGreaterThan(80);
    expect(made).toBeGreaterThan(gases);
  });
});

describe("any batch", () => {
  const zinc = (grams: number, excess: number) =>
    planPreparation({
      equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
      product: "Zn5(CO3)2(OH)6",
      materials: [
        { name: "zinc", form: "ZnSO4·7H2O", assay: "98 %" },
        { name: "soda", form: "Na2CO3·10H2O", excess: `${excess} %` },
      ],
      scale: { material: "zinc", portion: `${grams} g` },
    });
  const epsom = (grams: number, excess: number) =>
    planPreparation({
      equation: "MgO + H2SO4 + H2O -> MgSO4·7H2O",
      product: "MgSO4·7H2O",
      materials: [
        { name: "acid", form: "H2SO4", strength: "96 %" },
        { name: "magnesia", form: "MgO", excess: `${excess} %` },
      ],
      scale: { material: "acid", portion: `${grams} g` },
    });

  it.each([zinc, epsom])("keeps the laws at any scale and excess", (make) => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 5000 }), fc.integer({ min: 0, max: 60 }), (grams, excess) => {
        lawful(make(grams, excess));
      }),
      { numRuns: 25 },
    );
  });

  it("is the plan again when a run weighs what was planned", () => {
    const plan = epsom(100, 5);
    const run = evaluateRun(plan, { weighed: Object.fromEntries(plan.weighings.map((w) => [w.material, w.portion])) });
    expect(run.steps.map((s) => s.text)).toEqual(plan.steps.map((s) => s.text));
  });

  it("keeps the laws when a run weighs otherwise, in the water that was planned", () => {
    const plan = zinc(250, 5);
    const run = evaluateRun(plan, { weighed: { zinc: "240.0 g", soda: "270.0 g" } });
    for (const step of run.steps) {
      conserved(step);
      notBelowZero(step);
    }
    const water = (steps: readonly ProcedureStep[]) => steps.find((s) => s.operation === "dissolve")!.amounts[0]!;
    expect(water(run.steps).compare(water(plan.steps))).toBe(0);
  });
});
