// Laws of routes: whatever the shelf.
import { attempt, evaluateRun, findRoutes, type Route, routeFromJSON, type ShelfMaterial } from "preparative";
import { describe, expect, it } from "vitest";
import { indexOf } from "../../src/route/shelf";
import { jars, waysOf } from "./shelves";

const SHELF: readonly ShelfMaterial[] = jars(
  "ZnSO4·7H2O",
  "CuSO4·5H2O",
  "MgSO4·7H2O",
  "FeSO4·7H2O",
  "(NH4)2SO4",
  "Na2CO3",
  "NaHCO3",
  "K2CO3",
  "CaCO3",
  "NaOH",
  "CH3COOH",
  "HCl",
  "H2SO4",
  "NH3",
  "Na2B4O7·10H2O",
  "NaNO3",
  "KCl",
  "Zn",
  "Fe",
  "NaCl",
).map(
  (jar): ShelfMaterial => ({
    ...jar,
    pack: { size: jar.strength === undefined ? "1 kg" : "1 L", price: "6 EUR" },
    available: jar.strength === undefined ? "500 g" : "800 mL",
  }),
);
const TARGETS = [
  "Zn(CH3COO)2·2H2O",
  "Cu2(OH)2CO3",
  "(NH4)2Fe(SO4)2·6H2O",
  "H3BO3",
  "KNO3",
  "CuO",
  "CaCl2·6H2O",
  "ZnCl2",
];
const found = new Map(TARGETS.map((target) => [target, findRoutes({ target, shelf: SHELF })]));
const all: Route[] = [...found.values()].flatMap(({ routes }) => routes);

const money = (q: Route["cost"]["perGram"]): number => q!.value.toNumber();

describe("every route", () => {
  it("was found for each target", () => {
    for (const [target, { routes }] of found) expect(routes.length, target).toBeGreaterThan(0);
  });

  it("has balanced steps that the engine lets go", () => {
    for (const { steps } of all)
      for (const { equation, plan } of steps) {
        expect(plan.equation.toString()).toBe(equation.toString());
        expect(["goes", "goes in part"]).toContain(plan.feasibility.verdict);
      }
  });

  it("gives evidence, margins, yield, cost and a trial of two grams", () => {
    for (const route of all) {
      expect(route.yield.value.toNumber()).toBeGreaterThan(0);
      expect(route.yield.value.toNumber()).toBeLessThanOrEqual(1);
      expect(route.cost.perGram!.value.toNumber()).toBeGreaterThan(0);
      expect(route.trial.steps).toHaveLength(route.steps.length);
      for (const { margins, evidence } of route.steps) {
        expect(margins.length).toBeGreaterThan(0);
        expect(evidence.source).not.toBe("");
      }
      for (const { plan, expect: seen, ends } of route.trial.steps) {
        expect(plan.product.theoreticalYield.value.toNumber()).toBeGreaterThan(0);
        expect(seen.length).toBeGreaterThan(0);
        expect(ends.length).toBeGreaterThan(0);
      }
    }
  });

  it("makes enough in each step for the next one", () => {
    let tested = 0;
    for (const { steps } of all)
      for (const [i, { plan, yield: share }] of steps.slice(0, -1).entries()) {
        const needed = steps
          .slice(i + 1)
          .flatMap((later) => later.plan.materialBalance.supplied)
          .filter(({ material }) => material === plan.product.name)
          .reduce((n, { amount }) => n + amount.toNumber("mol"), 0);
        const made = plan.product.amount.times(share).toNumber("mol");
        expect(needed, plan.title).toBeGreaterThan(0);
        // masses are rounded to the balance, 0.1 g
        expect(made).toBeGreaterThanOrEqual(needed * 0.98);
        expect(made).toBeLessThanOrEqual(needed * 1.05 + 0.005);
        tested += 1;
      }
    expect(tested).toBeGreaterThanOrEqual(8);
  });

  it("survives its own plan, run with what the plan expects", () => {
    for (const { steps } of all)
      for (const { plan, yield: share } of steps.filter(({ kept }) => kept === "solid")) {
        const dry = plan.product.theoreticalYield.times(share).to("g").format({ decimals: 2, uncertainty: "none" });
        const run = evaluateRun(plan, { dried: [dry as `${number} g`] });
        // what the liquor keeps of a crop is a loss that the solubility explains
        const expected = plan.crystallising === undefined ? ["consistent"] : ["consistent", "loss-explained"];
        expect(expected, `${plan.title}: ${run.verdict.map(({ text }) => text).join("; ")}`).toContain(
          run.verdict[0]!.code,
        );
      }
  });

  it("goes when a jar that it needs is taken away", () => {
    expect(found.size, "rows to test").toBeGreaterThan(0);
    for (const [target, { routes }] of found)
      for (const { material } of routes[0]!.inventory) {
        const ways = findRoutes({ target, shelf: SHELF.filter(({ name }) => name !== material) });
        for (const { inventory } of ways.routes) expect(inventory.map((line) => line.material)).not.toContain(material);
      }
  });

  it("is the same when a jar that nobody needs is added, and in whatever order the jars stand", () => {
    expect(found.size, "rows to test").toBeGreaterThan(0);
    for (const [target, before] of found) {
      expect(waysOf(findRoutes({ target, shelf: [...SHELF, ...jars("C12H22O11")] }))).toEqual(waysOf(before));
      expect(waysOf(findRoutes({ target, shelf: [...SHELF].reverse() }))).toEqual(waysOf(before));
    }
  });

  it("gets no better place when a jar of it gets dearer", () => {
    let tested = 0;
    for (const [target, { routes }] of found) {
      const [first] = routes;
      const dear = first!.inventory[0]!.material;
      const shelf = SHELF.map((jar) =>
        jar.name === dear ? { ...jar, pack: { ...jar.pack!, price: "600 EUR" as const } } : jar,
      );
      const same = findRoutes({ target, shelf }).routes.find(
        (route) => waysOf({ routes: [route] })[0] === waysOf({ routes: [first!] })[0],
      );
      if (same === undefined) continue;
      expect(same.rank.score).toBeGreaterThanOrEqual(first!.rank.score);
      expect(money(same.cost.perGram)).toBeGreaterThan(money(first!.cost.perGram));
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(8);
  });

  it("moves up by no rise of the price of a jar that it takes, whatever its place", () => {
    let tested = 0;
    for (const target of ["CuO", "CaCl2·6H2O", "ZnCl2"]) {
      const before = waysOf(found.get(target)!);
      for (const [place, route] of found.get(target)!.routes.entries()) {
        const dear = route.inventory.at(-1)!.material;
        const shelf = SHELF.map((jar) =>
          jar.name === dear ? { ...jar, pack: { ...jar.pack!, price: "60 EUR" as const } } : jar,
        );
        const after = waysOf(findRoutes({ target, shelf })).indexOf(before[place]!);
        if (after < 0) continue;
        expect(after, before[place]).toBeGreaterThanOrEqual(place);
        tested += 1;
      }
    }
    expect(tested).toBeGreaterThanOrEqual(3);
  });

  it("gives no more when there is half of each jar", () => {
    const half = SHELF.map(
      (jar): ShelfMaterial => ({ ...jar, available: jar.strength === undefined ? "250 g" : "400 mL" }),
    );
    let tested = 0;
    for (const [target, { routes }] of found) {
      const less = new Map(
        findRoutes({ target, shelf: half }).routes.map((route) => [waysOf({ routes: [route] })[0], route]),
      );
      for (const route of routes) {
        const same = less.get(waysOf({ routes: [route] })[0]);
        if (same === undefined) continue;
        expect(same.most!.toNumber("g"), target).toBeLessThanOrEqual(route.most!.toNumber("g") * 0.51);
        tested += 1;
      }
    }
    expect(tested).toBeGreaterThanOrEqual(TARGETS.length);
  });

  it("can be written down and read", () => {
    for (const route of all) {
      const again = routeFromJSON(JSON.parse(JSON.stringify(route)));
      expect(waysOf({ routes: [again] })).toEqual(waysOf({ routes: [route] }));
      expect(String(again.yield)).toBe(String(route.yield));
      expect(String(again.cost.perGram)).toBe(String(route.cost.perGram));
      expect(again.steps.map(({ plan }) => String(plan))).toEqual(route.steps.map(({ plan }) => String(plan)));
      expect(JSON.stringify(again)).toBe(JSON.stringify(route));
    }
  });

  it.each([
    ["nothing", {}, "route.json"],
    ["a newer layout", { schema: 2 }, "route.json"],
    ["no steps", { steps: [] }, "route.json"],
    ["a kind that nobody knows", { steps: [{ family: "wish", product: "CaO", materials: [] }] }, "route.json"],
    [
      "a target that is never made",
      { steps: [{ family: "heat", product: "PbO", materials: [{ name: "a", form: "PbCO3" }] }] },
      "route.refused-target",
    ],
    [
      "a step that does not go",
      {
        steps: [
          {
            family: "precipitate-carbonate",
            product: "CuCO3",
            materials: [
              { name: "a", form: "CuSO4·5H2O" },
              { name: "b", form: "Na2CO3" },
            ],
          },
        ],
      },
      "route.no-longer",
    ],
  ])("is not read back from %s", (_, change, code) => {
    const record = JSON.parse(JSON.stringify(all[0]));
    const given = Object.keys(change).length === 0 ? {} : { ...record, ...change };
    const outcome = attempt(() => routeFromJSON(given));
    expect(outcome.ok ? "read" : outcome.error.code).toBe(code);
  });
});

describe("without a target", () => {
  it("the best way to everything that one step gives is found, and nothing that stands there", () => {
    const shelf = jars("ZnSO4·7H2O", "Na2CO3", "CH3COOH", "CaCO3");
    const made = findRoutes({ shelf }).routes.map(({ target }) => target);
    expect(made).toContain("Zn₅(OH)₆(CO₃)₂");
    expect(made).toContain("NaCH₃COO·3H₂O");
    for (const jar of ["ZnSO₄·7H₂O", "Na₂CO₃", "CaCO₃"]) expect(made).not.toContain(jar);
  });
});

describe("the index of a shelf", () => {
  it("is kept while the same jars stand there, in whatever order, and made anew when one changes", () => {
    const before = indexOf(SHELF, []);
    expect(indexOf([...SHELF].reverse(), [])).toBe(before);
    expect(
      indexOf(
        SHELF.map((jar) => ({ ...jar })),
        [],
      ),
    ).toBe(before);
    expect(indexOf(SHELF.slice(1), [])).not.toBe(before);
    expect(indexOf([{ ...SHELF[0]!, available: "1 g" }, ...SHELF.slice(1)], [])).not.toBe(before);
  });
});
