// Trials of two grams, and whole batches, given back to the search: what went counts with its yield, what ended ends the route, what
// settles nothing changes nothing. All names, packs and weighings are invented; figures by hand from the formulas beside them.
import {
  attempt,
  benchSheet,
  evaluateRun,
  explain,
  facts,
  findRoutes,
  isPreparativeError,
  type Plan,
  type PlanRequest,
  planPreparation,
  type Quantity,
  type Route,
  type RouteRequest,
  type Run,
  routeFromJSON,
} from "preparative";
import { describe, expect, it } from "vitest";

const SHELF = [
  { name: "moss killer", form: "ZnSO4·7H2O", pack: { size: "1 kg", price: "6 EUR" } },
  { name: "washing soda", form: "Na2CO3·10H2O", pack: { size: "1 kg", price: "2 EUR" } },
  { name: "potash", form: "K2CO3", pack: { size: "1 kg", price: "9 EUR" } },
  { name: "vinegar", form: "CH3COOH", strength: "5 %", density: "1.006 g/mL", pack: { size: "1 L", price: "1 EUR" } },
] as const;
const ACETATE = "Zn(CH3COO)2·2H2O";
const CARBONATE = "Zn5(CO3)2(OH)6";

type Trials = NonNullable<RouteRequest["trials"]>;
const find = (target: string, trials: Trials = []) => findRoutes({ target, shelf: SHELF, trials });
const plain = find(ACETATE).routes[0]!;
const [carbonate, acetate] = plain.trial.steps.map(({ plan }) => plan) as [Plan, Plan];
/** A run of a plan that gave this share of the theory. */
const giving = (plan: Plan, share: number, decimals = 2): Run => {
  const grams = plan.product.theoreticalYield.toNumber("g") * share;
  return evaluateRun(plan, { dried: `${grams.toFixed(decimals)} g` as "1 g" });
};
const number = (q: Quantity): number => q.toNumber("");
const way = (route: Route | undefined): string | undefined => (route === undefined ? undefined : String(route));

// The theory is 1.9855 g; the liquor, as it has just fizzed, keeps 0.9 mg of it at one atmosphere of carbon dioxide: 1.98 g.
describe("a trial that went", () => {
  const run = evaluateRun(carbonate, { dried: "1.83 g" });
  const found = find(ACETATE, [run]);
  const [route] = found.routes;
  const [step] = route!.steps;

  it("is said with its figures and its place", () => {
    const [reading] = found.trials;
    expect(reading!.outcome).toBe("went");
    expect(reading!.steps).toContainEqual({ route: 1, step: 1 });
    expect(reading!.text).toBe("tried: 1.83 g of 1.98 g expected");
    expect(number(reading!.yield!)).toBeCloseTo(number(run.percentYield!), 12);
  });

  it("raises the evidence of its step, and of no other", () => {
    expect(step!.evidence.grade).toBe("tried here");
    expect(step!.evidence.source).toBe("1 trial here: 1.83 g of 1.98 g expected; yield 92 %");
    expect(step!.evidence.trials!.n).toBe(1);
    expect(number(step!.evidence.trials!.yield)).toBeCloseTo(number(run.percentYield!), 6);
    expect(route!.steps[1]!.evidence).toEqual(plain.steps[1]!.evidence);
    expect(route!.evidence.grade).toBe(plain.evidence.grade);
  });

  it("puts what was lost in place of the usual loss, by the estimator of past runs", () => {
    // prior of the loss: evenly from 0 to 10 %; pack 100 ± 2 %; scatter from run to run 3 % (planning values); normal prior and
    // likelihood (textbook): loss = prior + u² / (u² + s²) × (seen - prior)
    const theory = carbonate.product.theoreticalYield.toNumber("g");
    const seen = 1 - 1.83 / theory;
    const weighing = (run.percentYield!.standardUncertainty!.toNumber() / 100) ** 2;
    const u2 = 0.1 ** 2 / 12;
    const s2 = 0.03 ** 2 + 0.02 ** 2 + weighing;
    const loss = 0.05 + (u2 / (u2 + s2)) * (seen - 0.05);
    expect(number(step!.yield)).toBeCloseTo(1 - loss, 3);
    expect(step!.yield.standardUncertainty!.toNumber()).toBeCloseTo(Math.sqrt(u2 - u2 ** 2 / (u2 + s2)), 3);
  });

  it("moves the yield of the route, the quantities, the cost and the plans", () => {
    const factor = number(step!.yield) / number(plain.steps[0]!.yield);
    expect(number(route!.yield)).toBeCloseTo(number(plain.yield) * factor, 9);
    const theory = ({ steps }: Route) => steps[0]!.plan.product.theoreticalYield.toNumber("g");
    // the balance of the plan shows 0.1 g
    expect(theory(route!)).toBeCloseTo(theory(plain) / factor, 0);
    expect(theory(route!)).toBeLessThan(theory(plain));
    const moss = (one: Route) =>
      one.inventory.find(({ material }) => material === "moss killer")!.portion.toNumber("g");
    expect(moss(route!)).toBeCloseTo(moss(plain) / factor, 1);
    expect(route!.cost.perGram!.compare(plain.cost.perGram!)).toBe(-1);
    expect(String(step!.plan.handlingLoss)).not.toBe(String(plain.steps[0]!.plan.handlingLoss));
  });

  it("shows its loss in the working of the yield", () => {
    expect(String(explain(route!.yield))).toContain("loss in handling, tried: 1.83 g of 1.98 g expected");
  });

  it("stands on the page of the route", () => {
    const page = benchSheet(route!);
    expect(page).toContain("tried: 1.83 g of 1.98 g expected");
    expect(page).toContain("tried here");
  });

  it("is believed the more the less it fits what is usual", () => {
    // 3 % scatter, 2 % pack and 2 % weighing are nothing to a loss of 40 %
    const [low] = find(CARBONATE, [giving(carbonate, 0.6)]).routes;
    expect(number(low!.steps[0]!.yield)).toBeGreaterThan(0.58);
    expect(number(low!.steps[0]!.yield)).toBeLessThan(0.63);
    let before = 0;
    for (const share of [0.55, 0.65, 0.75, 0.8, 0.82, 0.84, 0.86, 0.88, 0.9, 0.95, 0.98]) {
      const now = number(find(CARBONATE, [giving(carbonate, share, 3)]).routes[0]!.steps[0]!.yield);
      expect(now, String(share)).toBeGreaterThan(before);
      expect(now, String(share)).toBeLessThan(share + 0.09);
      before = now;
    }
  });

  it("counts with others: surer with each, the same in any order, the worst alone no longer decides", () => {
    const runs = [0.93, 0.91, 0.95, 0.92].map((share) => giving(carbonate, share, 3));
    const of = (list: readonly Run[]) => find(ACETATE, list).routes[0]!;
    const all = of(runs);
    expect(all.steps[0]!.evidence.trials!.n).toBe(4);
    expect(number(all.steps[0]!.evidence.trials!.yield)).toBeCloseTo((0.93 + 0.91 + 0.95 + 0.92) / 4, 3);
    expect(all.steps[0]!.yield.standardUncertainty!.toNumber()).toBeLessThan(
      of(runs.slice(0, 1)).steps[0]!.yield.standardUncertainty!.toNumber(),
    );
    expect(JSON.stringify(of([...runs].reverse()))).toBe(JSON.stringify(all));
    expect(String(of([...runs].reverse()).yield)).toBe(String(all.yield));
  });

  it("is taken first of jars that serve alike", () => {
    const potash = planPreparation({
      equation: "ZnSO4 + K2CO3 + H2O -> Zn5(CO3)2(OH)6 + K2SO4 + CO2",
      product: CARBONATE,
      materials: [
        { name: "a", form: "ZnSO4·7H2O" },
        { name: "b", form: "K2CO3", excess: "5 %" },
      ],
      scale: { product: "2 g" },
    });
    expect(way(find(CARBONATE).routes[0])).toContain("washing soda");
    const { routes, trials } = find(CARBONATE, [giving(potash, 0.92)]);
    expect(way(routes[0])).toContain("potash");
    expect(routes[0]!.evidence.grade).toBe("tried here");
    expect(trials[0]!.steps).toEqual([{ route: 1, step: 1 }]);
  });

  it("of a liquor counts as a liquor", () => {
    const shelf = [
      { name: "blue vitriol", form: "CuSO4·5H2O" },
      { name: "washing soda", form: "Na2CO3·10H2O" },
      { name: "slaked lime", form: "Ca(OH)2" },
    ];
    const [lye] = findRoutes({ target: "Cu(OH)2", shelf }).routes[0]!.trial.steps;
    const { routes, trials } = findRoutes({ target: "Cu(OH)2", shelf, trials: [giving(lye!.plan, 0.9)] });
    expect(trials[0]!.steps[0]).toEqual({ route: 1, step: 1 });
    expect(routes[0]!.steps[0]!.evidence.grade).toBe("tried here");
    expect(number(routes[0]!.steps[0]!.yield)).toBeCloseTo(0.9, 2);
  });
});

describe("the reaction of a run", () => {
  /** The same work in other words, order, jars and scale. */
  const request: PlanRequest = {
    equation: "K2CO3 + Zn[SO4].H2O -> Zn5(OH)6(CO3)2 + K2SO4 + CO2 + H2O",
    product: "Zn5[OH]6[CO3]2",
    productName: "white stuff",
    materials: [
      { name: "jar 7", form: "K2CO3", excess: "5 %" },
      { name: "jar 3", form: "ZnSO4.H2O" },
    ],
    scale: { product: "2 g" },
  };
  const shelf = SHELF.filter(({ name }) => name !== "washing soda");
  const of = (run: Run) => findRoutes({ target: ACETATE, shelf, trials: [run] });

  it("is found by what is made from what, not by names, spelling, order or crystal water of what dissolves", () => {
    const { trials } = of(giving(planPreparation(request), 0.92));
    expect(trials[0]!.outcome).toBe("went");
    expect(trials[0]!.steps.length).toBeGreaterThan(0);
  });

  it("is the same at another scale: a hundred times as much on a balance a hundred times as coarse", () => {
    const yields = (["2 g", "200 g"] as const).map((mass, i) => {
      const plan = planPreparation({
        ...request,
        scale: { product: mass },
        readability: { mass: i === 0 ? "0.01 g" : "1 g" },
      });
      const weighed = Object.fromEntries(plan.weighings.map(({ material, exact }) => [material, exact]));
      const theory = evaluateRun(plan, { weighed } as object).product.theoreticalYield;
      return of(evaluateRun(plan, { weighed, dried: theory.times("0.9") } as object)).routes[0]!.steps[0]!.yield;
    });
    expect(number(yields[0]!)).toBeCloseTo(number(yields[1]!), 3);
    expect(number(yields[0]!)).toBeLessThan(0.95);
  });

  it("is another one where the product is another form: it says so and changes nothing", () => {
    const dry = planPreparation({
      equation: "Zn5(CO3)2(OH)6 + CH3COOH -> Zn(CH3COO)2 + CO2 + H2O",
      product: "Zn(CH3COO)2",
      materials: [
        { name: "white", form: CARBONATE },
        { name: "vinegar", form: "CH3COOH", strength: "5 %", density: "1.006 g/mL" },
      ],
      scale: { product: "2 g" },
      acknowledge: ["another-hydrate"],
    });
    const { routes, trials } = find(ACETATE, [giving(dry, 0.8)]);
    expect(trials[0]!.outcome).toBe("unrelated");
    expect(trials[0]!.text).toContain("where the route makes Zn(CH₃COO)₂·2H₂O");
    expect(JSON.stringify(routes)).toBe(JSON.stringify(find(ACETATE).routes));
  });

  it("that no route has is said to be unrelated, and changes nothing", () => {
    const magnesia = planPreparation({
      equation: "MgSO4 + Na2CO3 + H2O -> Mg5(CO3)4(OH)2·4H2O + Na2SO4 + CO2",
      product: "Mg5(CO3)4(OH)2·4H2O",
      materials: [
        { name: "Epsom salt", form: "MgSO4·7H2O" },
        { name: "soda", form: "Na2CO3" },
      ],
      scale: { product: "2 g" },
    });
    const { routes, trials } = find(ACETATE, [giving(magnesia, 0.9)]);
    expect(trials[0]!.outcome).toBe("unrelated");
    expect(trials[0]!.steps).toEqual([]);
    expect(trials[0]!.text).toContain("no route here has the reaction");
    expect(JSON.stringify(routes)).toBe(JSON.stringify(find(ACETATE).routes));
  });
});

describe("a trial that ended the route", () => {
  const ended = (found: ReturnType<typeof find>) => found.refusals.filter(({ code }) => code === "trial-ended");

  it("by its mass: less than half of what there should be", () => {
    const found = find(CARBONATE, [evaluateRun(carbonate, { dried: "0.40 g" })]);
    expect(found.routes).toEqual([]);
    expect(found.trials[0]!.outcome).toBe("ended");
    const [refusal] = ended(found);
    expect(refusal!.text).toContain("tried: 0.4 g of 2.0 g expected, less than half of it");
    expect(refusal!.numbers.map((q) => q.toNumber("g").toFixed(1))).toEqual(["0.4", "2.0"]);
    expect(refusal!.source).toBe("own trial");
    expect(refusal!.equation).toBe(String(carbonate.equation));
  });

  it("takes other jars of the same ions with it, unless they went themselves", () => {
    const bad = evaluateRun(carbonate, { dried: "0.40 g" });
    expect(find(ACETATE, [bad]).routes.map(way)).toEqual([]);
    const potash = planPreparation({
      ...carbonate.request,
      equation: "ZnSO4·7H2O + K2CO3 -> Zn5(OH)6(CO3)2 + K2SO4 + CO2 + H2O",
      materials: [carbonate.request.materials[0]!, { name: "potash", form: "K2CO3", excess: "5 %" }],
    });
    const found = find(ACETATE, [bad, giving(potash, 0.95)]);
    expect(way(found.routes[0])).toContain("potash");
    expect(ended(found)[0]!.text).toContain(`the nearest way that works: ${found.routes[0]}`);
    expect(found.routes[0]!.swaps.map(({ use }) => use)).not.toContain("washing soda");
  });

  it("by what was seen, given back by its code", () => {
    const { ends, endCodes } = plain.trial.steps[0]!;
    expect(endCodes).toEqual(["too-little", "stays-clear", "no-gas"]);
    expect(ends).toHaveLength(endCodes.length);
    for (const code of endCodes) {
      const found = find(CARBONATE, [{ run: evaluateRun(carbonate, {}), ended: code }]);
      expect(found.routes).toEqual([]);
      expect(ended(found)).toHaveLength(1);
    }
    const found = find(CARBONATE, [{ run: evaluateRun(carbonate, {}), ended: "stays-clear" }]);
    expect(ended(found)[0]!.text).toContain("tried: the liquor stays clear");
  });

  it("by another compound, which is named and offered as a target", () => {
    // 2 ZnO / 2 Zn(OH)2: 162.76 / 198.78 = 0.8188 is left of zinc hydroxide, 0.7413 of the basic carbonate (atomic weights 2021)
    const run = evaluateRun(carbonate, { dried: "1.90 g", ignition: { before: "1.000 g", after: "0.819 g" } });
    const found = find(CARBONATE, [run]);
    expect(found.routes).toEqual([]);
    expect(found.trials[0]!.instead).toEqual(["Zn(OH)₂"]);
    expect(ended(found)[0]!.text).toContain("what was made is Zn(OH)₂, not Zn₅(OH)₆(CO₃)₂");
    expect(ended(found)[0]!.instead).toEqual(["Zn(OH)₂"]);
    expect(found.refusals.find(({ code }) => code === "forms-instead")!.text).toContain("Zn(OH)₂");
  });

  it("is outvoted by trials that went, and that is said", () => {
    const bad = evaluateRun(carbonate, { dried: "0.40 g" });
    const good = [0.93, 0.92].map((share) => giving(carbonate, share));
    const found = find(CARBONATE, [good[0]!, bad, good[1]!]);
    expect(found.routes[0]!.evidence.trials!.n).toBe(2);
    expect(found.trials.map(({ outcome }) => outcome)).toEqual(["went", "ended", "went"]);
    expect(found.routes[0]!.trial.steps[0]!.tried).toHaveLength(3);
    const tie = find(CARBONATE, [good[0]!, bad]);
    expect(tie.routes).toEqual([]);
    expect(ended(tie)[0]!.text).toContain("1 of 2 trials of it went: repeat it to decide");
  });

  it("ends what the whole shelf gives as well", () => {
    const { routes, refusals } = findRoutes({ shelf: SHELF, trials: [evaluateRun(carbonate, { dried: "0.40 g" })] });
    expect(findRoutes({ shelf: SHELF }).routes.map(({ target }) => target)).toContain("Zn₅(OH)₆(CO₃)₂");
    expect(routes.map(({ target }) => target)).not.toContain("Zn₅(OH)₆(CO₃)₂");
    expect(refusals.map(({ code }) => code)).toEqual(["trial-ended"]);
  });
});

describe("a trial that settles nothing", () => {
  it.each([
    ["too heavy: wet or unwashed", { dried: "2.30 g" }],
    ["still losing mass", { dried: ["2.90 g", "2.50 g", "2.20 g"] }],
    ["spilled, dry", { dried: "1.10 g", lost: [{ mass: "0.8 g", of: "product" }] }],
    ["spilled, wet", { dried: "0.40 g", lost: [{ at: "filter", mass: "0.9 g", of: "cake" }] }],
    ["washed no time", { dried: "1.85 g", washes: 0 }],
    ["one fifth something else", { dried: "1.85 g", assay: "80 %" }],
    ["not weighed", {}],
  ])("%s: it says what to do, and changes nothing", (_, observations) => {
    const { routes, trials, refusals } = find(ACETATE, [evaluateRun(carbonate, observations as object)]);
    expect(trials[0]!.outcome).toBe("unclear");
    expect(trials[0]!.text).toContain("it settles nothing");
    expect(trials[0]!.next).not.toBe("");
    expect(refusals).toEqual(find(ACETATE).refusals);
    expect(routes.map(({ rank }) => rank)).toEqual(find(ACETATE).routes.map(({ rank }) => rank));
    expect(routes[0]!.steps[0]!.evidence.grade).not.toBe("tried here");
    expect(routes[0]!.trial.steps[0]!.tried[0]).toContain(trials[0]!.next);
  });
});

describe("trials", () => {
  const runs = [giving(carbonate, 0.93), giving(acetate, 0.85), evaluateRun(carbonate, {})];

  it("are the same as runs, as records and as parsed text", () => {
    const before = find(ACETATE, runs);
    const records = JSON.parse(JSON.stringify(runs)) as Trials;
    const after = find(ACETATE, records);
    expect(JSON.stringify(after)).toBe(JSON.stringify(before));
    expect(after.routes.map((route) => String(route.yield))).toEqual(before.routes.map((route) => String(route.yield)));
    const report = { run: runs[2]!, ended: "no-gas" } as const;
    expect(find(ACETATE, [JSON.parse(JSON.stringify(report))]).refusals).toEqual(find(ACETATE, [report]).refusals);
  });

  it("are in the record of their route, which is read back equal", () => {
    expect(find(ACETATE, runs).routes.length, "rows to test").toBeGreaterThan(0);
    for (const route of find(ACETATE, runs).routes) {
      const again = routeFromJSON(JSON.parse(JSON.stringify(route)));
      expect(JSON.stringify(again)).toBe(JSON.stringify(route));
      expect(String(again.yield)).toBe(String(route.yield));
      expect(again.evidence).toEqual(route.evidence);
      expect(again.trial.steps.map(({ tried }) => tried)).toEqual(route.trial.steps.map(({ tried }) => tried));
      expect(again.steps.map(({ plan }) => String(plan))).toEqual(route.steps.map(({ plan }) => String(plan)));
    }
  });

  it("change nothing by their order", () => {
    const [a, b] = [runs, [...runs].reverse()].map((list) => find(ACETATE, list));
    expect(JSON.stringify(b!.routes)).toBe(JSON.stringify(a!.routes));
    expect(JSON.stringify(b!.refusals)).toBe(JSON.stringify(a!.refusals));
    expect(b!.trials.map(({ text }) => text).reverse()).toEqual(a!.trials.map(({ text }) => text));
  });

  it("leave the search without them as it was", () => {
    const before = JSON.stringify(find(ACETATE));
    find(ACETATE, runs);
    expect(JSON.stringify(find(ACETATE))).toBe(before);
    expect(find(ACETATE).trials).toEqual([]);
  });

  it("are read with the facts of the caller's own", () => {
    const own = facts({ substances: [{ name: "studio white", formula: CARBONATE, source: "label" }] });
    const { routes, trials } = findRoutes({ target: ACETATE, shelf: SHELF, trials: runs, facts: own });
    expect(trials.map(({ outcome }) => outcome)).toEqual(["went", "went", "unclear"]);
    const again = routeFromJSON(JSON.parse(JSON.stringify(routes[0])));
    expect(JSON.stringify(again)).toBe(JSON.stringify(routes[0]));
  });

  it.each([
    ["no list", {}, "route.request", "trials"],
    ["a number", [5], "route.trial", "trials[0]"],
    ["another record", [JSON.parse(JSON.stringify(carbonate))], "route.trial", "trials[0]"],
    ["a record that was cut short", [runs[0], { type: "run", schema: 1 }], "route.trial", "trials[1]"],
    ["a report of no run", [{ run: 1, ended: "no-gas" }], "route.trial", "trials[0]"],
    ["a report of no ending", [{ run: runs[0] }], "route.request", "trials[0].ended"],
    ["an ending that nobody knows", [{ run: runs[0], ended: "boom" }], "route.request", "trials[0].ended"],
    ["an ending of other work", [{ run: runs[1], ended: "liquor-turns-cloudy" }], "route.trial", "trials[0].ended"],
    ["a field that nobody knows", [{ run: runs[0], ended: "no-gas", saw: 1 }], "route.unknown-option", "trials[0]"],
    ["more than are read", Array(201).fill(runs[0]), "route.request", "trials"],
  ])("refuse %s, with its place", (_, trials, code, place) => {
    const outcome = attempt(() => find(ACETATE, trials as Trials));
    expect(outcome.ok ? "answered" : outcome.error.code).toBe(code);
    if (outcome.ok || !isPreparativeError(outcome.error)) return;
    expect(outcome.error.message).toContain(place);
    if (code === "route.trial") expect(outcome.error.hint).not.toBe("");
  });
});

describe("the cost of a step", () => {
  it("counts what an earlier step makes by what that cost", () => {
    for (const [target, shelf] of [
      [ACETATE, SHELF],
      [
        "Cu(OH)2",
        [
          { name: "blue vitriol", form: "CuSO4·5H2O", pack: { size: "1 kg", price: "12 EUR" } },
          { name: "washing soda", form: "Na2CO3·10H2O", pack: { size: "1 kg", price: "2 EUR" } },
          { name: "slaked lime", form: "Ca(OH)2", pack: { size: "1 kg", price: "3 EUR" } },
        ],
      ],
    ] as const) {
      const [route] = findRoutes({ target, shelf }).routes;
      for (const { plan } of [...route!.steps, ...route!.trial.steps])
        expect(plan.cost.missing, plan.title).toEqual([]);
      // the last step pays for all of it, but for what a step before made too much by the step of its balance
      const last = route!.steps.at(-1)!.plan;
      expect(last.cost.total!.toNumber("EUR")).toBeCloseTo(route!.cost.total!.toNumber("EUR"), 2);
      expect(benchSheet(route!)).not.toContain("is unknown: price of");
    }
  });

  it("is unknown where a price is missing", () => {
    const shelf = SHELF.map((jar) => (jar.name === "washing soda" ? { name: jar.name, form: jar.form } : jar));
    const [route] = findRoutes({ target: ACETATE, shelf: shelf.filter(({ name }) => name !== "potash") }).routes;
    expect(route!.cost.missing).toEqual(["price of washing soda"]);
    expect(route!.steps[1]!.plan.cost.missing).toEqual(["price of Zn₅(OH)₆(CO₃)₂"]);
  });
});
