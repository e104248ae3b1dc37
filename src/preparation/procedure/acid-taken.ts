// Acid beside the equation, and the ammonia, lye or soda that is over and takes it first.

import type { Quantity } from "../../quantity";
import { type Matter, matterOf } from "../contents/matter";
import type { Reaction } from "../operation/add";
import { exact, isFromRounding } from "../planning/exact";
import { isAcid, protonsOf } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { hydronsTakenBy, neutralisation } from "../reaction/neutralising";
import type { Material } from "../shelf/material";
import type { Bench } from "./bench";
import { useOf } from "./use";

/** A base that the equation leaves over in the liquor. */
interface BaseOver {
  readonly matter: Matter;
  readonly amount: Quantity;
  /** Hydrogen that all of it takes. */
  readonly takes: Quantity;
}

/** Bases over, dissolved; none where acid is over as well, which has them. */
function basesOver({ frame: { setting, account } }: Bench): BaseOver[] {
  const over = setting.materials.flatMap(({ form }, i) => {
    const { left, excess } = account.supplied[i]!;
    return left.isPositive() && !isFromRounding(excess) ? [{ form, left }] : [];
  });
  if (!setting.wet || over.some(({ form }) => isAcid(form))) return [];
  return over.flatMap(({ form, left }) => {
    const takes = hydronsTakenBy(form);
    const isDissolved = fateOf(form, setting.temperature).precipitated !== true;
    return takes === 0 || !isDissolved
      ? []
      : [{ matter: matterOf(form), amount: left.to("mol"), takes: left.times(exact(String(takes))).to("mol") }];
  });
}

const hydronsIn = (material: Material): Quantity | undefined =>
  material.asideTaken()?.amount.times(protonsOf(material.form)).to("mol");

/** What acids that are in the vessel beside the equation do with the bases over. */
export function acidTaken(bench: Bench): Reaction[] {
  const waiting = bench.asidesFor("acidify");
  let bases = basesOver(bench);
  return bench.frame.setting.asides.flatMap((material): Reaction[] => {
    const isIn = useOf(material, bench.frame.setting) === "acidify" && !waiting.includes(material);
    const hydrons = isIn ? hydronsIn(material) : undefined;
    if (hydrons === undefined) return [];
    let free = hydrons;
    const found: Reaction[] = [];
    bases = bases.flatMap((base) => {
      const own = neutralisation(base.matter.formula, material.form);
      if (own === undefined || !free.isPositive()) return [base];
      const taken = free.compare(base.takes) < 0 ? free : base.takes;
      found.push({
        terms: own.terms,
        extent: taken
          .dividedBy(exact(String(own.acids)))
          .dividedBy(protonsOf(material.form))
          .to("mol"),
      });
      free = free.minus(taken).to("mol");
      const rest = base.takes.minus(taken);
      return rest.isPositive() ? [{ ...base, takes: rest.to("mol") }] : [];
    });
    return found;
  });
}

/** What the bases over do to an acid that goes in, in words, and how much of it does what was meant; nothing where none is over. */
export function takenFirst(bench: Bench, material: Material): string {
  const bases = basesOver(bench);
  if (bases.length === 0) return "";
  const { grams, litres } = bench.hand;
  const all = bases.map(({ takes }) => takes).reduce((one, other) => one.plus(other));
  const names = bases
    .map(({ matter, amount }) => `${grams(amount.times(matter.molarMass).to("g"))} of ${matter.name}`)
    .join(" and ");
  const own = material.asideTaken();
  const perPure = all.dividedBy(protonsOf(material.form)).times(matterOf(material.form).molarMass).to("g");
  if (own === undefined) {
    const strength = material.massFraction();
    const mass = strength === undefined ? perPure : perPure.dividedBy(strength).to("g");
    return ` The ${names} that is over takes ${grams(mass)} of it first${strength === undefined ? ", counted without water" : ""}.`;
  }
  const hydrons = hydronsIn(material)!;
  const needed = own.portion.times(hydrons.plus(all).dividedBy(hydrons));
  const total = own.portion.dimension === "volume" ? litres(needed.to("mL")) : grams(needed.to("g"));
  return ` The ${names} that is over takes ${hydrons.compare(all) <= 0 ? "all" : "some"} of it first: for as much free acid as that take ${total} of it in all.`;
}
