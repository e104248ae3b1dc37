// Six kinds of nonsense that a generator writes when it only looks at ions (each counted once in a list of 3253 balanced
// candidates: 177 in all), asked of a shelf that holds everything they are made of: none of them may be offered. What is
// nonsense is common practice, no source.
import { constitutionOf, findRoutes, parseFormula, type RouteStep } from "preparative";
import { describe, expect, it } from "vitest";
import { jars } from "./shelves";

const SHELF = jars(
  "NiO",
  "ZnO",
  "CuO",
  "MgO",
  "Fe2O3",
  "Cr2O3",
  "CuSO4·5H2O",
  "NiSO4·6H2O",
  "CoCl2·6H2O",
  "ZnSO4·7H2O",
  "MgCl2·6H2O",
  "MgSO4·7H2O",
  "FeCl3·6H2O",
  "Al2(SO4)3·18H2O",
  "CrCl3·6H2O",
  "SnCl2·2H2O",
  "CaCl2·2H2O",
  "Na2SO4",
  "Na2CO3",
  "NaHCO3",
  "NaOH",
  "CH3COOH",
  "H2C2O4·2H2O",
  "C6H8O7·H2O",
  "NaCH3COO·3H2O",
  "Na3C6H5O7·2H2O",
);

const cationsOf = (formula: string): string[] =>
  constitutionOf(parseFormula(formula)).cations.map(({ formula: ion }) => ion);
const anionsOf = (formula: string): string[] =>
  constitutionOf(parseFormula(formula)).anions.map(({ formula: ion }) => ion);
const has = (list: readonly string[], ...wanted: readonly string[]): boolean =>
  list.some((one) => wanted.includes(one));

interface Seen {
  readonly family: RouteStep["family"];
  readonly product: string;
  readonly feeds: readonly string[];
}

const THREE = ["Fe^3+", "Al^3+", "Cr^3+"];
const NONSENSE: readonly (readonly [name: string, is: (step: Seen) => boolean])[] = [
  [
    "an insoluble oxide that precipitates another metal",
    ({ family, feeds }) =>
      family.startsWith("precipitate") &&
      feeds.some((feed) => has(anionsOf(feed), "O^2-") && !has(cationsOf(feed), "Ca^2+")),
  ],
  [
    "a normal carbonate of copper, nickel, zinc or magnesium from solution, or of cobalt by soda",
    ({ family, product, feeds }) =>
      family.startsWith("precipitate") &&
      anionsOf(product).join() === "CO3^2-" &&
      (has(cationsOf(product), "Cu^2+", "Ni^2+", "Zn^2+", "Mg^2+") ||
        // bicarbonate with its carbon dioxide does give it
        (has(cationsOf(product), "Co^2+") && !has(feeds, "NaHCO3"))) &&
      constitutionOf(parseFormula(product)).waters === 0,
  ],
  [
    "a fired oxide in a weak acid",
    ({ feeds }) => has(feeds, "NiO", "Fe2O3", "Cr2O3") && has(feeds, "CH3COOH", "H2C2O4·2H2O", "C6H8O7·H2O"),
  ],
  [
    "a carbonate of a three-valued metal or tin",
    ({ product }) => has(anionsOf(product), "CO3^2-") && has(cationsOf(product), ...THREE, "Sn^2+"),
  ],
  [
    "an acetate of a three-valued metal from water",
    ({ product }) => has(cationsOf(product), ...THREE) && has(anionsOf(product), "CH3COO-", "C2H3O2-"),
  ],
  [
    "a double sulfate of sodium or calcium after the pattern of ammonium's",
    ({ family, product }) => family === "double-salt" && has(cationsOf(product), "Na+", "Ca^2+"),
  ],
];

describe("what a shelf gives", () => {
  const steps: Seen[] = findRoutes({ shelf: SHELF }).routes.flatMap((route) =>
    route.steps.map(({ family, product, plan }) => ({
      family,
      product,
      feeds: plan.weighings.map(({ material }) => material),
    })),
  );

  it("is much", () => expect(steps.length).toBeGreaterThan(25));

  it.each(NONSENSE)("is never %s", (_, isNonsense) => {
    expect(steps.filter(isNonsense).map(({ feeds, product }) => `${feeds.join(" + ")} > ${product}`)).toEqual([]);
  });

  it.each([
    ["MgCl2·6H2O", "NiO", "Mg(OH)2"],
    ["CuSO4·5H2O", "NaHCO3", "CuCO3"],
    ["NiO", "CH3COOH", "Ni(CH3COO)2·4H2O"],
    ["FeCl3·6H2O", "Na2CO3", "Fe2(CO3)3"],
    ["FeCl3·6H2O", "NaCH3COO·3H2O", "Fe(CH3COO)3"],
    ["ZnSO4·7H2O", "Na2SO4", "Na2Zn(SO4)2·6H2O"],
  ])("%s and %s are not said to give %s", (one, other, target) => {
    try {
      expect(findRoutes({ target, shelf: jars(one, other), steps: 1 }).routes).toEqual([]);
    } catch (error) {
      expect(String(error)).toMatch(/nothing is invented|nothing that is made/);
    }
  });
});
