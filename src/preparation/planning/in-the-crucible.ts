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

/** The part of it that may be water after all, and leave; nothing of a charge that gains, which is weighed against itself. */
export function mayLeaveCrucible(batch: Pick<Batch, "isolation" | "steps" | "product">): Quantity {
  const fired = batch.steps.find(({ operation }) => operation === "fire");
  return fired !== undefined && fired.after.mass.compare(fired.before.mass) > 0 ? exact("0 g") : staysInCrucible(batch);
}

/** What leaves a fired charge, where that tells nothing of a reaction between its feeds; undefined also where nothing is fired, or where it gets heavier. */
export function goneByItselfIn({
  isolation,
  steps,
}: Pick<Batch, "isolation" | "steps">): readonly string[] | undefined {
  const fired = isolation.how === "residue" ? steps.find(({ operation }) => operation === "fire") : undefined;
  if (fired === undefined || fired.after.mass.compare(fired.before.mass) > 0) return undefined;
  const left = fired.left.flatMap(({ what, contents }) =>
    what === "vapour" ? ["H2O"] : contents.gas.map(({ formula }) => formula),
  );
  const gases = [...new Set(left)].map((text) => parseFormula(text));
  const at = fired.target?.dimension === "temperature" ? fired.target : undefined;
  const feeds = fired.before.solids.map(({ formula }) => parseFormula(formula));
  return goneByItself(feeds, gases, at)?.map((gas) => gas.toUnicode());
}
