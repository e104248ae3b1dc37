// What a pack has besides of a metal whose sulfate is built like the product: no crystallising parts them. Of iron the way out is
// offered, for it is oxidised and precipitates before the others do.

import { type Formula, parseFormula } from "../../formula";
import { capital, list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { type Quantity, sum } from "../../quantity";
import { matterOf } from "../contents/matter";
import { IRON_OUT, VITRIOLS } from "../data/ends";
import { hold } from "../operation/hold";
import { exact, planned } from "../planning/exact";
import { isMetal } from "../reaction/acids";
import type { Material } from "../shelf/material";
import { type Bench, POT } from "./bench";
import { againstIron } from "./iron-out";
import { dropOfOwnAcid } from "./protection";
import { celsius } from "./words";

/** The metal of a sulfate that is built like the others; undefined for any other salt. */
function vitriolOf(formula: Formula): string | undefined {
  const { cations, anions, complex } = constitutionOf(formula);
  const [metal] = cations;
  return complex === undefined && cations.length === 1 && anions.length === 1 && anions[0]!.formula === VITRIOLS.anion
    ? VITRIOLS.metals.find((one) => metal!.formula === `${one}^2+`)
    : undefined;
}

/** A metal that comes into the liquor from what a pack has besides. */
interface Foreign {
  readonly metal: string;
  readonly amount: Quantity;
  readonly from: string;
}

/** What a portion has besides of such metals: itself, where acid takes it, or as its sulfate. */
function foreignIn(material: Material, portion: Quantity, own: string): Foreign[] {
  const mass = material.massOf(portion);
  return material.also.flatMap(({ form, share }) => {
    const metal = isMetal(form)
      ? VITRIOLS.metals.find((one) => one === form.symbols[0] && !VITRIOLS.stay.some((stays) => stays === one))
      : vitriolOf(form);
    if (metal === undefined || metal === own || mass === undefined) return [];
    const amount = mass.times(share).dividedBy(matterOf(form).molarMass).times(form.count(metal)).to("mol");
    return [{ metal, amount, from: material.shelf.name }];
  });
}

/** How a little iron is taken out of the hot clear liquor, in words. */
function ironOut({ hand, frame: { setting } }: Bench, amount: Quantity, own: string): string {
  const { perPeroxide, strength, test } = VITRIOLS.iron;
  const pure = amount
    .dividedBy(exact(perPeroxide))
    .times(planned("overdose"))
    .times(matterOf(parseFormula(IRON_OUT.oxidiser)).molarMass);
  const peroxide = hand.grams(pure.dividedBy(exact(strength)).to("g"));
  const acid = dropOfOwnAcid(setting.product.formula);
  const sour = acid === undefined ? "" : `; then ${acid} by drops until it shows pH ${IRON_OUT.acidTo}`;
  return ` Where ${test} and that matters, put up to ${peroxide} of hydrogen peroxide of ${strength} to it by drops, then oxide or carbonate of ${own} a pinch at a time, until a drop that has cooled shows pH ${IRON_OUT.pH}, keep it at ${celsius(planned("hot") as Quantity<"temperature">)} for ${IRON_OUT.time}, and filter the brown ${parseFormula(IRON_OUT.solid).toUnicode()} off${sour}. Every figure is for the work without it.`;
}

/** Says what crystallises as one with the product, and how iron is kept from it. */
export function sayBuiltAlike(bench: Bench): void {
  const { setting, portions } = bench.frame;
  const { product, materials } = setting;
  const own = vitriolOf(product.formula);
  const isBuiltSo = matterOf(product.formula).waters.compare(exact(VITRIOLS.waters)) === 0;
  if (own === undefined || !isBuiltSo || againstIron(setting) !== undefined) return;
  const found = materials
    .flatMap((one, i) => foreignIn(one, portions[i]!, own))
    .filter(({ metal, amount }) => {
      const mass = amount.times(matterOf(parseFormula(metal)).molarMass).to("g");
      return mass.compare(setting.steps.mass) >= 0;
    });
  if (found.length === 0) return;
  const iron = found.filter(({ metal }) => metal === VITRIOLS.iron.metal);
  const amount = iron.length === 0 ? undefined : sum(iron.map((one) => one.amount));
  const as = amount?.times(matterOf(parseFormula(VITRIOLS.iron.as)).molarMass).to("g");
  const many =
    as === undefined ? "" : `, up to ${bench.hand.grams(as)} as ${parseFormula(VITRIOLS.iron.as).toUnicode()}`;
  const metals = [...new Set(found.map(({ metal }) => metal))];
  const packs = [...new Set(found.map(({ from }) => from))];
  bench.did(POT, hold(bench.pot), {
    ...(amount === undefined ? {} : { atHand: [VITRIOLS.iron.atHand] }),
    say: () =>
      `${capital(list(metals))} of the ${list(packs)} that has dissolved crystallises with the ${product.name}${many}: their sulfates are built alike, and no recrystallisation parts them.${amount === undefined ? "" : ironOut(bench, amount, own)}`,
  });
}
