// What is in a crucible at the end, and what its mass tells: what a pack has besides stays in it as it is, unless it is water after
// all; and a charge of several solids may weigh what it should without having reacted.
import { parseFormula } from "../../formula";
import type { Quantity } from "../../quantity";
import { goneByItself } from "../reaction/mute-mass";
import type { Batch } from "./batch";
import { exact, isWorthAWord } from "./exact";

/** What stays in the crucible beside what is made; nothing where nothing is fired, or where it is not worth a word. */
export function staysInCrucible({
  isolation,
  steps,
  product,
}: Pick<Batch, "isolation" | "steps" | "product">): Quantity {
  const rest = isolation.how === "residue" ? steps.at(-1)?.before.other : undefined;
  return rest !== undefined && isWorthAWord(rest, product.theoreticalYield) ? rest : exact("0 g");
}

/** The firing, and whether it adds more than it drives out; undefined where nothing is fired. */
function firingOf({ isolation, steps }: Pick<Batch, "isolation" | "steps">) {
  const step = isolation.how === "residue" ? steps.find(({ operation }) => operation === "fire") : undefined;
  return step && { step, gains: step.after.mass.compare(step.before.mass) > 0 };
}

/** The part of it that may be water after all, and leave; nothing of a charge that gains, which is weighed against itself. */
export function mayLeaveCrucible(batch: Pick<Batch, "isolation" | "steps" | "product">): Quantity {
  return firingOf(batch)?.gains ? exact("0 g") : staysInCrucible(batch);
}

/** What leaves a fired charge, where that tells nothing of a reaction between its feeds; undefined also where nothing is fired, or where it gets heavier. */
export function goneByItselfIn(batch: Pick<Batch, "isolation" | "steps">): readonly string[] | undefined {
  const firing = firingOf(batch);
  if (firing === undefined || firing.gains) return undefined;
  const { step: fired } = firing;
  const left = fired.left.flatMap(({ what, contents }) =>
    what === "vapour" ? ["H2O"] : contents.gas.map(({ formula }) => formula),
  );
  const gases = [...new Set(left)].map((text) => parseFormula(text));
  const at = fired.target?.dimension === "temperature" ? fired.target : undefined;
  const feeds = fired.before.solids.map(({ formula }) => parseFormula(formula));
  return goneByItself(feeds, gases, at)?.map((gas) => gas.toUnicode());
}
