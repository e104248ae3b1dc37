// The door for recipes: copied and frozen as they come in, with fields nobody knows and parts of the wrong kind refused.

import type { Fields } from "../../foundation/argument";
import { guard } from "../request/argument";
import { taken } from "../request/door";
import type { Recipe, RecipeMaterial } from "./types";

const STATED = { of: true, value: true } as const;

const MATERIAL = {
  name: true,
  form: true,
  writtenAs: true,
  amount: true,
  strength: true,
  assay: true,
  density: true,
  statedAmount: true,
  inExcess: true,
  aside: true,
  note: true,
} as const satisfies Fields<RecipeMaterial>;

const RECIPE = {
  equation: true,
  product: true,
  productForms: true,
  materials: [MATERIAL],
  water: true,
  washed: true,
  isolation: true,
  found: true,
  stated: { percentYield: true, theory: true, molarMasses: [STATED], massFractions: [STATED] },
  analysis: { waters: true, parts: true, ignition: { before: true, after: true, residue: true } },
  facts: true,
} as const satisfies Fields<Recipe>;

const WAYS = ["precipitate", "crystallise", "evaporate"];

/** Text, or a list of texts. */
function texts(value: unknown, argument: string): void {
  if (!Array.isArray(value)) {
    guard.text(value, argument);
    return;
  }
  guard.list(value, argument);
  for (const [i, one] of value.entries()) guard.text(one, `${argument}[${i}]`);
}

/** A recipe as it is kept. */
export function takenRecipe(given: Recipe): Recipe {
  const recipe = taken(given);
  guard.fields(recipe, RECIPE);
  const { equation, product, productForms, washed, isolation, analysis } = recipe;
  texts(equation, "equation");
  guard.text(product, "product");
  guard.list(recipe.materials, "materials");
  for (const [i, { name, form, writtenAs, aside, inExcess }] of recipe.materials.entries()) {
    texts(form, `materials[${i}].form`);
    for (const [field, text] of Object.entries({ name, writtenAs }))
      if (text !== undefined) guard.text(text, `materials[${i}].${field}`);
    for (const [field, flag] of Object.entries({ aside, inExcess }))
      if (flag !== undefined) guard.boolean(flag, `materials[${i}].${field}`);
  }
  if (productForms !== undefined) {
    guard.list(productForms, "productForms");
    texts(productForms, "productForms");
  }
  if (washed !== undefined) guard.boolean(washed, "washed");
  if (isolation !== undefined) guard.choice(isolation, "isolation", WAYS);
  if (analysis?.parts !== undefined) guard.record(analysis.parts, "analysis.parts");
  if (analysis?.ignition !== undefined) guard.text(analysis.ignition.residue, "analysis.ignition.residue");
  return recipe;
}
