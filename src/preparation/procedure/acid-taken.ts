// Acid beside the equation, and the ammonia, lye or soda that is over and takes it first.

import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Reaction } from "../operation/add";
import { exact, isFromRounding } from "../planning/exact";
import { isAcid, protonsOf } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { hydronsTakenBy } from "../reaction/neutralising";
import type { Material } from "../shelf/material";
import type { Bench } from "./bench";
import { neutralised, type Portion } from "./neutralised";
import { useOf } from "./use";

/** Bases that the equation leaves over in the liquor, dissolved; none where acid is over as well, which has them. */
function basesOver({ frame: { setting, account } }: Bench): readonly Portion[] {
  const over = setting.materials.flatMap(({ form }, i) => {
    const { left, excess } = account.supplied[i]!;
    return left.isPositive() && !isFromRounding(excess) ? [{ formula: form, amount: left.to("mol") }] : [];
  });
  if (!setting.wet || over.some(({ formula }) => isAcid(formula))) return [];
  return over.filter(
    ({ formula }) => hydronsTakenBy(formula) > 0 && fateOf(formula, setting.temperature).precipitated !== true,
  );
}

/** What acids that are in the vessel beside the equation do with the bases over. */
export function acidTaken(bench: Bench): Reaction[] {
  const { setting } = bench.frame;
  const waiting = bench.asidesFor("acidify");
  let bases = basesOver(bench);
  return setting.asides.flatMap((material): readonly Reaction[] => {
    const isIn = useOf(material, setting) === "acidify" && !waiting.includes(material);
    const amount = isIn ? material.asideTaken()?.amount : undefined;
    if (amount === undefined) return [];
    const { reactions, left } = neutralised({ formula: material.form, amount }, bases);
    bases = left;
    return reactions;
  });
}

/** What the bases over do to an acid that goes in, in words, and how much of it does what was meant; nothing where none is over. */
export function takenFirst(bench: Bench, material: Material): string {
  const bases = basesOver(bench);
  if (bases.length === 0) return "";
  const { grams, litres } = bench.hand;
  const all = bases
    .map(({ formula, amount }) => amount.times(exact(String(hydronsTakenBy(formula)))).to("mol") as Quantity)
    .reduce((one, other) => one.plus(other));
  const names = bases
    .map(({ formula, amount }) => ({ matter: matterOf(formula), amount }))
    .map((one) => `${grams(massOf(one))} of ${one.matter.name}`)
    .join(" and ");
  const own = material.asideTaken();
  const protons = protonsOf(material.form);
  const perPure = all.dividedBy(protons).times(matterOf(material.form).molarMass).to("g");
  if (own === undefined) {
    const strength = material.massFraction();
    const mass = strength === undefined ? perPure : perPure.dividedBy(strength).to("g");
    return ` The ${names} that is over takes ${grams(mass)} of it first${strength === undefined ? ", counted without water" : ""}.`;
  }
  const hydrons = own.amount.times(protons).to("mol");
  const needed = own.portion.times(hydrons.plus(all).dividedBy(hydrons));
  const total = own.portion.dimension === "volume" ? litres(needed.to("mL")) : grams(needed.to("g"));
  return ` The ${names} that is over takes ${hydrons.compare(all) <= 0 ? "all" : "some"} of it first: for as much free acid as that take ${total} of it in all.`;
}
