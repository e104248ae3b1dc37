// One spelling within one preparation: tables write a salt and its hydrates their own way, a person another.
import type { Formula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { crystalWater, hydrateOf } from "../../hydrate";

const remembered = /* @__PURE__ */ remembering<Formula>(300);

/** A form of a salt, dry or with any water, written as the salt is written elsewhere; anything else as it is. */
export const spelledLike = (formula: Formula, own: Formula): Formula =>
  remembered(`${formula} ${own}`, () => {
    const [form, asked] = [crystalWater(formula), crystalWater(own)];
    const isSame =
      form.anhydrous.hasSameComposition(asked.anhydrous) && form.anhydrous.toString() !== asked.anhydrous.toString();
    return isSame ? hydrateOf(asked.anhydrous, form.waters) : formula;
  });
