// Permanganate that is left in a liquor whose product is dissolved: it would colour the crystals, and a filter of paper does not bear it.
import { ALKALI_METALS } from "../../element/internal";
import { balance } from "../../equation";
import { parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";
import { type Term, termsOf } from "../contents/react";
import { CLEARED } from "../data/ends";
import { add } from "../operation/add";
import { heat } from "../operation/heat";
import { exact, planned } from "../planning/exact";
import { meetsCyanide } from "../reaction/sour-cyanide";
import type { Material } from "../shelf/material";
import { densityAt } from "../shelf/strength";
import { ALCOHOL } from "./alcohol";
import { type Bench, POT } from "./bench";
import { useOf } from "./use";

interface Clearing {
  readonly terms: readonly Term[];
  /** Of the permanganate, and of alcohol, in the equation. */
  readonly salt: bigint;
  readonly alcohol: bigint;
}

const remembered = /* @__PURE__ */ remembering<Clearing>(10);

/** Alcohol turns permanganate in a hot liquor into the dioxide, acetate and lye. */
const clearingOf = (salt: string, cation: string): Clearing =>
  remembered(salt, () => {
    const equation = balance(`${salt} + ${ALCOHOL} -> MnO2 + ${cation}CH3COO + ${cation}OH + H2O`);
    const [used, alcohol] = equation.reactants;
    const terms = termsOf(equation, (formula) => (isOneOf(formula, "MnO2") ? "precipitated" : "dissolved"));
    return { terms, salt: used!.coefficient, alcohol: alcohol!.coefficient };
  });

/** The alcohol of the plan, where it is so little that it is there for this; more brings the product out later. */
function dropsOnTable(bench: Bench, need: Quantity): Material | undefined {
  const most = need.times(planned("dropsAtMost"));
  return bench.frame.setting.asides.find(
    (one) =>
      useOf(one, bench.frame.setting) === "alcohol" && bench.in(bench.pack(one.shelf.name)).mass.compare(most) <= 0,
  );
}

/** What is left of a permanganate goes with drops of alcohol, hot; false where none is left. */
export function clearPermanganate(bench: Bench): boolean {
  const product = matterOf(bench.frame.setting.product.formula).core;
  const own = bench.pot.books.dissolved.find(
    ({ matter }) => matter.key !== product.key && constitutionOf(matter.formula).groups.includes("permanganate"),
  );
  const cation = own && constitutionOf(own.matter.formula).cations[0]?.element;
  // of alkali metals acetate and lye are left; other permanganates are of no shop
  if (own === undefined || cation === undefined || !ALKALI_METALS.has(cation) || massOf(own).compare(CLEARED.least) < 0)
    return false;
  const isCold = meetsCyanide(bench.frame.setting);
  if (!isCold) {
    const at = exact(CLEARED.at) as Quantity<"temperature">;
    bench.did(POT, heat(bench.pot, at), {
      target: at,
      say: () =>
        `Warm it to ${CLEARED.at} and keep it there, covered and stirred, ${CLEARED.time}; the clear liquor is purple or green still: where it is not, a little more of the ${own.matter.name} goes in first, until it is.`,
    });
  }
  const { terms, salt, alcohol } = clearingOf(own.matter.formula.toString(), cation);
  const extent = own.amount.dividedBy(exact(String(salt)));
  const matter = matterOf(parseFormula(ALCOHOL));
  const taken = extent.times(exact(String(alcohol)));
  const { temperature, pressure } = bench.pot.books;
  const drops = Pot.empty(temperature, pressure).plusDissolved(matter, taken);
  const volume = drops.mass.dividedBy(densityAt(matter.formula, exact("100 %"))!);
  const small = dropsOnTable(bench, drops.mass);
  if (small !== undefined) bench.takesAside(small);
  bench.did(POT, add(bench.pot, drops, [{ terms, extent }]), {
    ...(small === undefined ? { atHand: ["drops of alcohol"] as const } : { materials: [small.shelf.name] }),
    amounts: [drops.mass],
    say: () =>
      `Put in alcohol, a drop at a time and away from any flame, ${isCold ? `and leave it cold ${CLEARED.cold}, ` : ""}until neither purple nor green is left in the clear liquor (about ${bench.hand.litres(volume)} in all): what is left of the ${own.matter.name} would colour the crystals and eat the filter.`,
  });
  return true;
}
