// What stands on the bottle of a liquor that is kept: what it is a solution of, how strong, and what else is in it.
import type { Plan } from "../../preparation";
import { about } from "../figures";
import { filled, type SheetWords } from "../words";

/** How strong a liquor is, or at most is, in words. */
export function strengthOf({ strength, atMost }: NonNullable<Plan["keptLiquor"]>, words: SheetWords): string {
  const share = about(strength, "%", 2);
  return atMost === true ? filled(words.atMostStrength, { share }) : share;
}

/** Product, strength by mass, and every other solute that is worth a word: lye of a zincate, salt of a chloride. */
export function liquorOnLabel(
  { product, keptLiquor }: Pick<Plan, "product" | "keptLiquor">,
  words: SheetWords,
): string {
  const name = product.name === product.formula ? (keptLiquor?.formula ?? product.formula) : product.name;
  const strength = keptLiquor === undefined ? words.unknownStrength : strengthOf(keptLiquor, words);
  return (keptLiquor?.also ?? []).reduce(
    (liquor, { formula, share }) => filled(words.liquorBeside, { liquor, share: about(share, "%", 2), formula }),
    filled(words.liquorOnLabel, { product: name, strength }),
  );
}
