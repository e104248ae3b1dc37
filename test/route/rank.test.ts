// What a route is ranked by. Figures are read off the plans of its steps; which solids are slimes is common practice.
import { findRoutes, type RankParts, type Route, routeWeights, type ShelfMaterial } from "preparative";
import { describe, expect, it } from "vitest";
import { jars, waysOf } from "./shelves";

const best = (target: string, ...shelf: string[]): Route => findRoutes({ target, shelf: jars(...shelf) }).routes[0]!;

describe("the rank of a route", () => {
  it("counts the wash water of its plans for a gram of the target", () => {
    const route = best("Cu2(OH)2CO3", "CuSO4·5H2O", "Na2CO3");
    const { washing } = route.steps[0]!.plan;
    const water = washing !== undefined && "plan" in washing ? washing.plan.totalWater.toNumber("mL") : 0;
    expect(water).toBeGreaterThan(0);
    const perGram = water / route.wanted.toNumber("g");
    // jugs show steps, so the plan for this scale and the one it is read off differ by one step
    expect(route.rank.parts.washing).toBeGreaterThan(0);
    expect(Math.abs(route.rank.parts.washing - perGram / (perGram + 50))).toBeLessThan(0.1);
    expect(best("CaCl2·6H2O", "CaCO3", "HCl").rank.parts.washing).toBe(0);
  });

  it.each([
    ["a hydroxide", "Al(OH)3", ["Al2(SO4)3·18H2O", "NaHCO3"], 1],
    ["a basic carbonate", "Cu2(OH)2CO3", ["CuSO4·5H2O", "Na2CO3"], 0.5],
    ["a dense precipitate", "BaSO4", ["BaCl2·2H2O", "Na2SO4"], 0],
    ["crystals", "CaCl2·6H2O", ["CaCO3", "HCl"], 0],
  ] as const)("knows %s by what its cake keeps", (_, target, shelf, gel) => {
    expect(best(target, ...shelf).rank.parts.gel).toBe(gel);
  });

  it("counts a gas by what it asks for, and by its litres for a gram of the target", () => {
    const gasPart = (formula: string, asksFor: number, target: string, ...shelf: string[]): number => {
      const route = best(target, ...shelf);
      const own = route.gas.filter((gas) => gas.formula === formula);
      expect(own).toHaveLength(1);
      const perGram = own[0]!.volume.toNumber("L") / route.wanted.toNumber("g");
      expect(route.rank.parts.gas).toBeCloseTo((asksFor * (1 + perGram / (perGram + 0.1))) / 2, 2);
      return route.rank.parts.gas;
    };
    const chalk = gasPart("CO₂", 0.1, "CaCl2·6H2O", "CaCO3", "HCl");
    const zinc = gasPart("H₂", 0.4, "ZnSO4·7H2O", "Zn", "H2SO4");
    gasPart("H₂", 0.4, "AlCl3", "Al", "HCl");
    expect(chalk).toBeLessThan(zinc);
    expect(best("BaSO4", "BaCl2·2H2O", "Na2SO4").rank.parts.gas).toBe(0);
  });

  it("says what the dearest jar gives, and half where a price is missing", () => {
    const shelf = (dear: ShelfMaterial["pack"]): ShelfMaterial[] =>
      jars("CuSO4·5H2O", "Na2CO3").map((jar, i) => ({
        ...jar,
        pack: i === 0 ? dear : { size: "1 kg", price: "2 EUR" },
      }));
    const of = (dear: ShelfMaterial["pack"]) => findRoutes({ target: "Cu2(OH)2CO3", shelf: shelf(dear) }).routes[0]!;
    const route = of({ size: "1 kg", price: "9 EUR" });
    const dearest = (name: string): number => {
      const grams = route.inventory.find(({ material }) => material === name)!.portion.toNumber("g");
      return (100 * route.wanted.toNumber("g")) / grams;
    };
    expect(route.rank.parts.dearest).toBeCloseTo(100 / (100 + dearest("CuSO4·5H2O")), 6);
    expect(of({ size: "1 kg", price: "1 EUR" }).rank.parts.dearest).toBeCloseTo(100 / (100 + dearest("Na2CO3")), 6);
    expect(of(undefined).rank.parts.dearest).toBe(0.5);
  });

  it("counts and says what else stands in a solid that is taken on, by its last vessel", () => {
    const route = best("Zn(CH3COO)2·2H2O", "ZnSO4·7H2O", "Na2CO3", "CH3COOH");
    const [first, second] = route.steps;
    const note = second!.plan.request.materials[0]!.note!;
    const share = Number(/it brings about (0\.\d+) % of Na₂SO₄/.exec(note)?.[1]) / 100;
    const { solids, mass } = first!.plan.steps.at(-1)!.after;
    const left = solids.find(({ formula }) => formula === "Na₂SO₄")!.mass;
    // the plan washes to 0.5 % or less
    expect(share).toBeGreaterThan(0);
    expect(share).toBeLessThanOrEqual(0.005);
    // two figures are printed
    expect(share).toBeCloseTo(left.dividedBy(mass).toNumber(""), 4);
    expect(route.rank.parts.purity).toBeGreaterThanOrEqual(1.8 * share);
  });

  it("orders by the weights that are given", () => {
    const shelf = jars("CuSO4·5H2O", "Na2CO3", "NaOH", "Cu2(OH)2CO3");
    const weights = Object.fromEntries(Object.keys(routeWeights).map((part) => [part, 0])) as unknown as RankParts;
    for (const part of ["washing", "gel", "dearest"] as const) {
      const { routes } = findRoutes({ target: "CuO", shelf, weights: { ...weights, [part]: 1 } });
      const scores = routes.map(({ rank }) => rank.parts[part]);
      expect(routes.map(({ rank }) => rank.score)).toEqual(scores.map((score) => Number(score.toFixed(6))));
      expect(scores).toEqual([...scores].sort((a, b) => a - b));
    }
  });

  it("folds away what is worse in all that counts and takes the jars of another", () => {
    const shelf = jars("CuSO4·5H2O", "Na2CO3", "NaOH", "Cu2(OH)2CO3", "Cu", "H2O2", "CH3COOH", "HCl");
    for (const target of ["CuO", "Cu(CH3COO)2·H2O", "CuCl2·2H2O", "Cu(OH)2", "Na2SO4·10H2O"]) {
      const { routes } = findRoutes({ target, shelf, limit: 10 });
      for (const [i, one] of routes.entries())
        for (const better of routes.slice(0, i)) {
          const own = one.inventory.map(({ material }) => material);
          const isWithin = better.inventory.every(({ material }) => own.includes(material));
          const parts = (Object.keys(routeWeights) as (keyof RankParts)[]).filter((part) => routeWeights[part] > 0);
          const isNowhereWorse = parts.every((part) => better.rank.parts[part] <= one.rank.parts[part]);
          expect(isWithin && isNowhereWorse, `${better} | ${one}`).toBe(false);
        }
      expect(new Set(waysOf({ routes })).size).toBe(routes.length);
    }
  });
});
