// What of a recipe's product stays in its water, and what its liquor leaves in the product.

import { isWater } from "../../formula/internal";
import { attempt } from "../../foundation/error";
import type { Quantity } from "../../quantity";
import { lossToLiquor, retainedLiquor } from "../../solubility";
import { PLANNING } from "../data/planning";
import { asMassOfWater, asVolumeOfWater } from "../planning/exact";
import { kindOfCake } from "../procedure/isolation";
import { fateInRoom } from "../reaction/fate";
import { heldWaterOf } from "../reaction/held-water";
import type { RecipeFigures } from "./figures";
import type { Recipe, RecipeFinding } from "./types";
import { shown } from "./words";

const ROOM = PLANNING.temperature.value;

/** What stays in the water, or comes out with the product. */
export function liquorFindings(recipe: Recipe, { read, account, theoreticalYield }: RecipeFigures): RecipeFinding[] {
  const findings: RecipeFinding[] = [];
  const { formula, name } = read.product;
  const fate = fateInRoom(formula);
  const add = (code: RecipeFinding["code"], text: string, figure?: Quantity): void => {
    findings.push({ code, text, material: undefined, figure });
  };
  if (recipe.isolation === "precipitate" && fate.precipitated === false)
    add("recipe.product-dissolves", `${name} is said to precipitate, but ${fate.why}`, fate.perHundredGramsWater);
  const water = read.water[0];
  if (water !== undefined && theoreticalYield !== undefined) {
    const kept = attempt(() => lossToLiquor({ formula, water: asMassOfWater(water), temperature: ROOM }));
    if (kept.ok && kept.value.mass.compare(theoreticalYield.dividedBy(2)) > 0)
      add(
        "recipe.stays-dissolved",
        `${water} of water keeps ${shown(kept.value.mass, 2)} of the ${shown(theoreticalYield)} of ${name} at ${ROOM}: boil down, or most is lost`,
        kept.value.mass,
      );
  }
  if (account === undefined) return findings;
  const salts = account.formed.filter(
    (_, i) =>
      read.products[i] !== read.product &&
      !isWater(read.products[i]!.formula) &&
      fateInRoom(read.products[i]!.formula).precipitated === false,
  );
  if (recipe.washed === false && fate.precipitated === true && salts.length > 0 && theoreticalYield !== undefined) {
    const perGram = retainedLiquor(kindOfCake(formula));
    const held = water === undefined ? undefined : theoreticalYield.times(perGram).dividedBy(asVolumeOfWater(water));
    const mass =
      held === undefined
        ? undefined
        : salts
            .map((s) => s.mass.times(held))
            .reduce((a, b) => a.plus(b))
            .to("g");
    add(
      "recipe.unwashed",
      `not washed: ${salts.map((s) => s.formula).join(", ")} stays in the cake${mass === undefined ? "" : `, about ${shown(mass, 2)} of it to ${shown(theoreticalYield)} of product`}, and any dry mass is high`,
      mass,
    );
  }
  // A liquor boiled to dryness leaves every soluble excess with the product.
  if (recipe.isolation === "evaporate" && fate.precipitated === false) {
    const over = account.supplied.filter((s) => !s.limiting && s.timesStoichiometric.compare("1.01") > 0);
    for (const s of over)
      add(
        "recipe.filtrate-impure",
        `${name} left by boiling down contains the excess of ${s.material} (${shown(s.excess, 2)}), and what dissolves of any precipitate`,
        s.excess,
      );
  }
  const held = heldWaterOf(formula);
  if (held !== undefined) {
    const [low, high] = [held.least, held.most].map((times) => times.minus("1").to("%"));
    add(
      "recipe.variable-water",
      `${name} as it dries contains ${held.from} to ${held.to} H₂O: ${shown(low!, 2)} to ${shown(high!, 2)} more than the anhydrous theory`,
      high,
    );
  }
  return findings;
}
