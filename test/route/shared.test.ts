// What is made once and used twice is one step, and is paid once. Copper(I) chloride from the dichloride and the metal is a
// common preparation (common practice); the metal is set free by iron from the same dichloride.
import { findRoutes, type ShelfMaterial } from "preparative";
import { describe, expect, it } from "vitest";
import { jars } from "./shelves";

const SHELF = jars("CuO", "HCl", "Fe").map(
  (jar): ShelfMaterial => ({ ...jar, pack: { size: jar.strength === undefined ? "1 kg" : "1 L", price: "6 EUR" } }),
);

describe("an intermediate that two steps use", () => {
  const { routes } = findRoutes({ target: "CuCl", shelf: SHELF });
  const route = routes.find(({ steps }) => steps.filter(({ family }) => family === "neutralise").length === 1);

  it("is made in one step", () => {
    expect(routes.map(({ steps }) => steps.map(({ family }) => family))).toContainEqual([
      "neutralise",
      "cement",
      "listed",
    ]);
  });

  it("is made for both", () => {
    const [salt, ...later] = route!.steps;
    const asked = later
      .flatMap(({ plan }) => plan.materialBalance.supplied)
      .filter(({ material }) => material === salt!.plan.product.name)
      .map(({ amount }) => amount.toNumber("mol"));
    expect(asked).toHaveLength(2);
    const made = salt!.plan.product.amount.times(salt!.yield).toNumber("mol");
    const needed = asked.reduce((a, b) => a + b);
    expect(made).toBeGreaterThanOrEqual(needed * 0.98);
    expect(made).toBeLessThanOrEqual(needed * 1.05);
  });

  it("is paid once: the oxide is listed and bought for the whole of it", () => {
    const oxide = route!.inventory.filter(({ material }) => material === "CuO");
    expect(oxide).toHaveLength(1);
    expect(oxide[0]!.steps).toEqual([1]);
    const money = route!.inventory.reduce(
      (n, { portion }) => n + 0.006 * (portion.dimension === "mass" ? portion.toNumber("g") : portion.toNumber("mL")),
      0,
    );
    // plans pay for what is weighed and measured, to 0.1 g and 1 mL
    expect(route!.cost.total!.toNumber() / money).toBeGreaterThan(0.98);
    expect(route!.cost.total!.toNumber() / money).toBeLessThan(1.02);
  });

  it("is no feed for itself", () => {
    for (const { steps } of routes) {
      const made = steps.map(({ key }) => key);
      expect(new Set(made).size).toBe(made.length);
    }
  });
});
