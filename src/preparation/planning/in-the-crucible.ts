// What is in a crucible at the end, and what its mass tells: what a pack has besides stays in it as it is, unless it is water after
// all; and a charge of several solids may weigh what it should without having reacted.
import { parseFormula } from "../../formula";
import type { Quantity } from "../../quantity";
import type { SolidInside } from "../contents/contents";
import { goneByItself } from "../reaction/mute-mass";
import { type PackRest, restOfPacks } from "./basic-pack";
import type { Batch } from "./batch";
import { exact, isWorthAWord } from "./exact";

/** What it has in it at the end; nothing where nothing is fired. */
const atTheEnd = ({ isolation, steps }: Pick<Batch, "isolation" | "steps">) =>
  isolation.how === "residue" ? steps.at(-1)?.before : undefined;

const worthAWord = (rest: Quantity, { product }: Pick<Batch, "product">): Quantity =>
  isWorthAWord(rest, product.theoreticalYield) ? rest : exact("0 g");

/** What the fire leaves of all that was over the need, and of what a pack is known to have besides: solids that are no product. */
export function standsBesideInCrucible(batch: Pick<Batch, "isolation" | "steps" | "product">): Quantity {
  const solids = atTheEnd(batch)?.solids ?? [];
  return solids
    .filter(({ key }) => key !== batch.product.key)
    .reduce((all, { mass }) => all.plus(worthAWord(mass, batch)), exact("0 g"));
}

/** The firing, and whether it adds more than it drives out; undefined where nothing is fired. */
function firingOf({ isolation, steps }: Pick<Batch, "isolation" | "steps">) {
  const step = isolation.how === "residue" ? steps.find(({ operation }) => operation === "fire") : undefined;
  return step && { step, gains: step.after.mass.compare(step.before.mass) > 0 };
}

const restIn = (batch: Pick<Batch, "isolation" | "steps" | "product">): PackRest =>
  restOfPacks({
    other: atTheEnd(batch)?.other ?? exact("0 g"),
    gains: firingOf(batch)?.gains ?? false,
    theory: batch.product.theoreticalYield,
    packs: () =>
      batch.steps
        .filter(({ operation }) => operation === "weigh")
        .flatMap(({ after: { solids, other } }) =>
          solids.slice(0, 1).map(({ formula }) => ({ form: parseFormula(formula), other })),
        ),
  });

/** What a pack has besides, and nobody knows; nothing where it is not worth a word. */
export const restInCrucible = (batch: Pick<Batch, "isolation" | "steps" | "product">): Quantity => restIn(batch).rest;

/** All that stays in the crucible beside what is made. */
export const staysInCrucible = (batch: Pick<Batch, "isolation" | "steps" | "product">): Quantity =>
  standsBesideInCrucible(batch).plus(restInCrucible(batch));

/** The part of it that may be water after all, and leave. */
export const mayLeaveCrucible = (batch: Pick<Batch, "isolation" | "steps" | "product">): Quantity =>
  restIn(batch).mayLeave;

/** The part of it that usually is water. */
export const usuallyWater = (batch: Pick<Batch, "isolation" | "steps" | "product">): Quantity => restIn(batch).water;

/** What leaves a fired charge, where that tells nothing of a reaction between its feeds; undefined also where nothing is fired, or where it gets heavier. */
export function goneByItselfIn(batch: Pick<Batch, "isolation" | "steps">): readonly string[] | undefined {
  const firing = firingOf(batch);
  if (firing === undefined || firing.gains) return undefined;
  const { step: fired } = firing;
  const left = fired.left.flatMap(({ what, contents: { gas, water, dissolved } }) =>
    what === "vapour"
      ? [...(water.isPositive() ? ["H2O"] : []), ...dissolved.map(({ formula }) => formula)]
      : gas.map(({ formula }) => formula),
  );
  const gases = [...new Set(left)].map((text) => parseFormula(text));
  const at = fired.target?.dimension === "temperature" ? fired.target : undefined;
  // what the fire leaves as it is takes no part, and a single solid that gives its gas off has reacted
  const isLeft = ({ key, mass }: SolidInside): boolean =>
    fired.after.solids.some((after) => after.key === key && after.mass.equals(mass));
  const feeds = fired.before.solids.filter((solid) => !isLeft(solid)).map(({ formula }) => parseFormula(formula));
  return goneByItself(feeds, gases, at)?.map((gas) => gas.toUnicode());
}
