// The page of a route: the trial of two grams comes first, every step has its sheet, and no figure is lost.
import { benchSheet, findRoutes } from "preparative";
import { describe, expect, it } from "vitest";

const SHELF = [
  { name: "moss killer", form: "ZnSO4·7H2O", pack: { size: "1 kg", price: "6 EUR" } },
  { name: "washing soda", form: "Na2CO3·10H2O", pack: { size: "1 kg", price: "2 EUR" } },
  { name: "potash", form: "K2CO3", pack: { size: "1 kg", price: "9 EUR" } },
  { name: "vinegar", form: "CH3COOH", strength: "5 %", density: "1.006 g/mL", pack: { size: "1 L", price: "1 EUR" } },
] as const;

const [route] = findRoutes({ target: "Zn(CH3COO)2·2H2O", shelf: SHELF, wanted: "20 g" }).routes;

describe("the page of a route", () => {
  const text = benchSheet(route!);

  it("begins with the target and what it is made from", () => {
    expect(text.split("\n")[0]).toBe("Zn(CH₃COO)₂·2H₂O from moss killer, washing soda, vinegar: 2 steps");
  });

  it("has the trial before the steps and the shopping list", () => {
    const places = ["First a trial of 2 g", "What ends the route", "Steps", "Shopping list", "Why it goes"].map(
      (words) => text.indexOf(words),
    );
    expect(places.every((place) => place > 0)).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  });

  it("says how well each step is vouched for, and which other jar would do", () => {
    expect(text).toContain(route!.evidence.grade);
    expect(text).toContain("potash does in place of washing soda");
  });

  it("has no mass finer than a balance of 0.1 g shows, and no liquid finer than a cylinder of 1 mL", () => {
    const page = text.slice(0, text.indexOf("Why it goes")).replace(/[\d.]+ m?L(?: of)? CO₂/g, "");
    const masses = [...page.matchAll(/([\d.]+) (g|mL)\b(?!\/)/g)];
    expect(masses.length).toBeGreaterThan(6);
    for (const [whole, figure, unit] of masses)
      expect(figure!.split(".")[1]?.length ?? 0, whole).toBeLessThanOrEqual(unit === "g" ? 1 : 0);
  });

  it("has the sheet of each step", () => {
    expect(route!.steps.length, "rows to test").toBeGreaterThan(0);
    for (const { plan } of route!.steps) expect(text).toContain(plan.title);
  });

  it.each(["markdown", "html"] as const)("is written in %s as well", (format) => {
    // a figure and its unit stand on one line: in HTML the space between them is hard
    expect(benchSheet(route!, { format }).replaceAll("\u00a0", " ")).toContain("First a trial of 2 g");
  });
});
