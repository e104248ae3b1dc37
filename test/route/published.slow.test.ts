// The published preparations that the project has, given by the name of the product alone. The shelf is a fixed one of shop
// goods and common salts with what the preparation starts from; the product itself is taken away. Nothing that is published
// counts in the ranking (`evidence: 0`). Left out are those with a product, feed or gas of a class that no
// route makes or uses.
import { balance, constitutionOf, findRoutes, isPreparativeError, type ShelfMaterial } from "preparative";
import { describe, expect, it } from "vitest";
import { PREPARATIONS, type PublishedPreparation } from "../data/preparations";
import { jars } from "./shelves";

const SHOP = [
  "NaCl",
  "Na2CO3",
  "NaHCO3",
  "NaOH",
  "KCl",
  "K2CO3",
  "CaCO3",
  "Ca(OH)2",
  "CaCl2·2H2O",
  "MgSO4·7H2O",
  "CuSO4·5H2O",
  "NH4Cl",
  "(NH4)2SO4",
  "NH3",
  "HCl",
  "H2SO4",
  "CH3COOH",
  "C6H8O7",
  "H2C2O4·2H2O",
  "H2O2",
  "Na2B4O7·10H2O",
  "Zn",
  "Fe",
  "Al",
  "S",
  "KNO3",
];

const coreOf = (formula: string): string => constitutionOf(formula).anhydrousIdentity;

/** What reacts, water left out: of the only or the first equation. */
function feedsOf({ recipe }: PublishedPreparation): string[] {
  const equation = typeof recipe.equation === "string" ? recipe.equation : recipe.equation[0]!;
  return balance(equation)
    .reactants.map(({ formula }) => formula.toString())
    .filter((formula) => formula !== "H2O");
}

/** Gases and products for which no route is given. */
const NEVER = new Set(["NO", "NO2", "SO2", "Cl2", "H2S", "CO"]);

const isLeftOut = (one: PublishedPreparation): boolean => {
  const equations = [one.recipe.equation].flat();
  return equations.some((equation) => {
    const { reactants, products } = balance(equation);
    return [...reactants, ...products].some(({ formula }) => NEVER.has(formula.toString()));
  });
};

/** The place of the published way among the routes; 0 where it is none of them. */
function placeOf(one: PublishedPreparation): number | "refused" {
  const product = coreOf(one.recipe.product);
  const feeds = feedsOf(one);
  const own = feeds.filter((feed) => coreOf(feed) !== product || feeds.length === 1);
  const forms = new Map([...SHOP, ...own].map((form) => [coreOf(form), form]));
  if (!own.some((feed) => coreOf(feed) === product)) forms.delete(product);
  const shelf: ShelfMaterial[] = jars(...forms.values());
  const wanted = own.map(coreOf).sort().join();
  try {
    const { routes } = findRoutes({ target: one.recipe.product, shelf, limit: 3, weights: { evidence: 0 } });
    const formNamed = new Map(shelf.map(({ name, form }) => [name, String(form)]));
    return (
      routes.findIndex(({ inventory, swaps }) => {
        const used = inventory.map(({ material }) => material);
        const ways = [used, ...swaps.map(({ instead, use }) => used.map((name) => (name === instead ? use : name)))];
        return ways.some(
          (way) =>
            way
              .map((name) => coreOf(formNamed.get(name)!))
              .sort()
              .join() === wanted,
        );
      }) + 1
    );
  } catch (error) {
    if (isPreparativeError(error) && error.code === "route.refused-target") return "refused";
    throw error;
  }
}

describe("published preparations, by the name of the product alone", () => {
  const places = PREPARATIONS.filter((one) => !isLeftOut(one)).map((one) => ({ id: one.id, place: placeOf(one) }));
  const asked = places.filter(({ place }) => place !== "refused");

  it("are forty and more", () => expect(asked.length).toBeGreaterThanOrEqual(40));

  it("are among the first three routes in four of five cases", () => {
    const missed = asked.filter(({ place }) => place === 0).map(({ id }) => id);
    expect((asked.length - missed.length) / asked.length, `missed: ${missed.join(", ")}`).toBeGreaterThanOrEqual(0.8);
  });
});
