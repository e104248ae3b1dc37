// What a firing says of masses: where they stand still, what has left, and what that does not tell.
import { isWater } from "../../formula/internal";
import { list } from "../../foundation/wording";
import { type Quantity, sum } from "../../quantity";
import { massOf, type SolidEntry } from "../contents/entry";
import type { Done } from "../operation/operation";
import { type PackRest, restOfPacks } from "../planning/basic-pack";
import { exact, isWorthAWord } from "../planning/exact";
import { isGas } from "../reaction/fluids";
import { goneByItself } from "../reaction/mute-mass";
import type { Bench, Look } from "./bench";
import { litres } from "./words";

/** What the mass at the end does not tell, in words; nothing where it does. */
export function untold({ frame: { setting } }: Bench, done: Done, at: Quantity | undefined): string {
  const { name } = setting.product;
  const gases = setting.products.map(({ formula }) => formula).filter((f) => isGas(f, false) || isWater(f));
  const gone =
    done.after.mass.compare(done.before.mass) > 0
      ? undefined
      : goneByItself(
          setting.materials.map(({ form }) => form),
          gases,
          at,
        );
  if (gone === undefined) return "";
  return gone.length === 0
    ? ` Nothing leaves it, so the mass does not tell that ${name} has formed.`
    : ` The mass tells only that ${list(gone.map((gas) => gas.toUnicode()))} ${gone.length === 1 ? "has" : "have"} left, not that ${name} has formed.`;
}

/** What leaves the kiln as gas and as steam. */
export function leaving({ hand }: Bench, { gas }: Look, { left }: Done): string {
  const water = sum([exact("0 g"), ...left.flatMap(({ what, pot }) => (what === "vapour" ? [pot.books.water] : []))]);
  const steam = water.isPositive() ? [`${hand.grams(water)} of steam`] : [];
  const all = [...gas.map(({ volume, formula }) => `${litres(volume)} of ${formula}`), ...steam];
  const cold = gas.length === 0 ? "" : steam.length === 0 ? ", measured cold" : ", the gas measured cold";
  return all.length === 0 ? "" : `; ${list(all)} ${all.length === 1 ? "leaves" : "leave"} it${cold}`;
}

/** What is left over and of which nobody knows here what the fire leaves, in words. */
export function notKnown({ hand, frame: { theory } }: Bench, unknown: readonly SolidEntry[]): string {
  const named = unknown.filter((one) => isWorthAWord(massOf(one), theory));
  return named.length === 0
    ? ""
    : ` What the fire leaves of ${list(named.map((one) => `${hand.grams(massOf(one))} of ${one.matter.name}`))} over the need is not known here: it is counted as it was put in.`;
}

/** What the packs of a firing have besides, and the part of it that usually is water. */
export const restOf = (drafts: readonly Done[], { before, after }: Done, theory: Quantity): PackRest =>
  restOfPacks({
    other: after.books.other,
    gains: after.mass.compare(before.mass) > 0,
    theory,
    packs: () =>
      drafts
        .filter(({ operation }) => operation === "weigh")
        .flatMap(({ after: { books } }) =>
          books.solids.slice(0, 1).map(({ matter }) => ({ form: matter.formula, other: books.other })),
        ),
  });

/** When it is done, by its mass; nothing where that does not change. */
export function standsStill(bench: Bench, done: Done, isGlowing: boolean): string {
  const { grams } = bench.hand;
  const { before, after } = done;
  const { rest, water } = restOf(bench.drafts, done, bench.frame.theory);
  const end = after.mass.minus(water);
  const [first, last] = [before.mass, end].map(grams);
  if (first === last) return "";
  const stone = rest.minus(water);
  const besides = stone.isPositive()
    ? `, with ${grams(stone)} in it of what the pack has besides (${grams(end.minus(stone))} if that is only water)`
    : "";
  const wet = water.isPositive()
    ? `; up to ${grams(after.mass)} only if the ${grams(water)} that the pack has besides is not water, which it usually is`
    : "";
  return `${isGlowing ? "; it is done when, cold, the mass stands still" : " until the mass stands still"} at ${last}, from ${first}${besides}${wet}`;
}
