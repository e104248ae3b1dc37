// Iodine that an iodide gives while it precipitates: it colours the product and goes with it, and sulfite reduces it to iodide.
import { balance } from "../../equation";
import { parseFormula } from "../../formula";
import { once } from "../../foundation/memo";
import { isOneOf } from "../../ion/internal";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";
import { type Term, termsOf } from "../contents/react";
import { add } from "../operation/add";
import { planned } from "../planning/exact";
import { type Bench, POT } from "./bench";

const terms = /* @__PURE__ */ once((): readonly Term[] => termsOf(balance("I2 + Na2SO3 + H2O -> Na2SO4 + 2 HI")));

/** Take iodine out of a solid that precipitated with it. */
export function takeOutIodine(bench: Bench): void {
  const { product } = bench.frame.setting;
  const iodine = bench.pot.books.solids.find(({ matter }) => isOneOf(matter.formula, "I2"));
  if (iodine === undefined || isOneOf(product.formula, "I2")) return;
  const sulfite = matterOf(parseFormula("Na2SO3"));
  const amount = iodine.amount.times(planned("overdose"));
  const mass = amount.times(sulfite.molarMass).to("g");
  const { temperature, pressure } = bench.pot.books;
  const water = amount.dividedBy(planned("feedStrength")).to("g");
  const solution = Pot.empty(temperature, pressure).plusWater(water).plusDissolved(sulfite, amount);
  bench.did(POT, add(bench.pot, solution, [{ terms: terms(), extent: iodine.amount }]), {
    amounts: [mass, water],
    say: () =>
      `Dissolve ${bench.hand.grams(mass)} of sodium sulfite in ${bench.hand.water(water)} and stir it in a little at a time, only until the brown colour is gone: it reduces the ${bench.hand.grams(massOf(iodine))} of iodine to iodide (common practice).`,
  });
}
