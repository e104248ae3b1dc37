// What in a recipe must not meet, and what it makes that is never made: a recipe is printed already, so it is reported, not stopped.

import { list } from "../../foundation/wording";
import { type Judged, judge } from "../safety/combinations";
import type { ReadRecipe } from "./read";
import type { Recipe, RecipeFinding } from "./types";

const formsOf = ({ form }: Recipe["materials"][number]): string => (typeof form === "string" ? form : form[0]!);

/** The first step as its materials say, and the later ones as their equations do, whose strengths nobody stated. */
function stepsOf(recipe: Recipe, read: ReadRecipe): Judged[] {
  const { materials, reactants, products, product, wet, later } = read;
  const first = judge({
    materials: materials.map(({ material }) => material),
    reactants,
    products,
    product,
    wet,
    heated: !wet,
    aside: recipe.materials.filter((one) => one.aside === true).map(formsOf),
  });
  return [
    first,
    ...later.map((step): Judged => {
      const judged = judge({ materials: [], ...step, product, wet, heated: !wet });
      return { ...judged, combinations: judged.combinations.filter(({ conditions }) => conditions.length === 0) };
    }),
  ];
}

export function dangerFindings(recipe: Recipe, read: ReadRecipe): RecipeFinding[] {
  const finding = (code: RecipeFinding["code"], text: string): RecipeFinding => ({
    code,
    text,
    material: undefined,
    figure: undefined,
  });
  return stepsOf(recipe, read).flatMap(({ combinations, dangers }) => [
    ...combinations.map((one) =>
      finding(
        "recipe.dangerous-pair",
        `${list(one.materials)}: ${one.what}${one.condition === undefined ? "" : ` (${one.condition})`}`,
      ),
    ),
    ...dangers.map((one) => finding("recipe.dangerous-product", `${one.formula} (${one.name}) as ${one.as}`)),
  ]);
}
