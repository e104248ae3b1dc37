// What is left of each material once everything has reacted: how much of it, as the vessels have it, and in what words.

import { molarMass } from "../../formula";
import { type Quantity, sum } from "../../quantity";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import type { Supplied } from "../reaction/account";
import type { Material } from "../shelf/material";
import type { Watched } from "./check";
import { exact, planned } from "./exact";

/** A material that is fed, and what is left of it. */
export interface Feeding {
  readonly material: Material;
  readonly supplied: Supplied;
  readonly isSolid: boolean;
  /** What is left of it is dissolved, and no filter takes it off. */
  readonly dissolves: boolean;
  /** What stands in the vessel once everything has reacted. */
  readonly left: Quantity;
}

/** How much of a material stands in a vessel, dissolved or solid. */
function standingOf({ form }: Material, pot: Pot | undefined): Quantity {
  const { key } = matterOf(form).core;
  return [...(pot?.books.dissolved ?? []), ...(pot?.books.solids ?? [])]
    .filter(({ matter }) => matter.core.key === key)
    .reduce((all, { amount }) => all.plus(amount), exact("0 mol"));
}

/** What is fed; water that stands among the materials is neither precipitant nor excess. */
export const feedingsOf = ({ setting, batch, work }: Watched): Feeding[] =>
  setting.materials
    .map((material, i): Feeding => {
      const supplied = batch.materialBalance.supplied[i]!;
      // Of two packs of the same each has its share of what is over.
      const alike = setting.materials.flatMap((one, j) =>
        one.species === material.species ? [batch.materialBalance.supplied[j]!.amount] : [],
      );
      const all = standingOf(material, work.reacted ?? work.liquor);
      const left = alike.length === 1 ? all : all.times(supplied.amount).dividedBy(sum(alike));
      const feed = batch.feeds[i]!;
      const dissolves = feed.how !== "solid" || feed.dissolves;
      return { material, supplied, isSolid: feed.how === "solid", dissolves, left };
    })
    .filter(({ material }) => !material.species.isWater);

/** Mass of the form that is left over. */
export const leftOf = ({ left, material }: Feeding): Quantity => left.times(molarMass(material.form)).to("g");

/** What is left of it in words: of a solution it is what was dissolved. */
export const calledLeft = ({ material }: Feeding): string =>
  material.isSolution ? material.formName : material.shelf.name;

/** More is left of it than counts as none. */
export const isOver = ({ supplied, left }: Feeding): boolean =>
  left.compare(supplied.amount.times(planned("asGoodAsNone"))) > 0;
