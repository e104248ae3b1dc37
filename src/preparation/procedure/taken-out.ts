// What a pack brings besides as a dissolved salt, taken out as a sparing one by a salt that is at hand beside the equation: barium by a
// sulfate, sulfate by a barium salt. It comes once the equation has gone, and leaves with the filter before the crystals.

import { tryBalance } from "../../equation";
import { type Formula, parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { saltFormula } from "../../ion/internal";
import { minimum, type Quantity } from "../../quantity";
import { type Entry, massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { type Term, termsOf } from "../contents/react";
import { add, type Reaction, reacted } from "../operation/add";
import { exact } from "../planning/exact";
import { isAcid } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import type { Material } from "../shelf/material";
import { type Bench, POT } from "./bench";

/** Cation and anion of a salt of one each. */
function pairOf(formula: Formula): readonly [cation: string, anion: string] | undefined {
  const { cations, anions, complex } = constitutionOf(formula);
  return complex === undefined && cations.length === 1 && anions.length === 1
    ? [cations[0]!.formula, anions[0]!.formula]
    : undefined;
}

/** The sparing salt that two dissolved ones give, and the other salt; undefined where none precipitates. */
function exchanged(one: Formula, other: Formula, at: Quantity<"temperature">): readonly [string, string] | undefined {
  const [a, b] = [pairOf(one), pairOf(other)];
  if (a === undefined || b === undefined || a[0] === b[0] || a[1] === b[1]) return undefined;
  const salts = [saltFormula(a[0], b[1]), saltFormula(b[0], a[1])] as const;
  const isSparing = (salt: string): boolean => fateOf(parseFormula(salt), at).precipitated === true;
  if (isSparing(salts[0])) return salts;
  return isSparing(salts[1]) ? [salts[1], salts[0]] : undefined;
}

/** Salts beside the equation that precipitate with what a pack brings besides. */
export function againstDissolved({ frame: { setting, isolation } }: Bench): readonly Material[] {
  const { materials, asides, temperature } = setting;
  if (isolation.how === "precipitate" || !setting.wet) return [];
  const besides = materials.flatMap(({ also }) => also.map(({ form }) => form));
  return asides.filter(
    (one) =>
      !isAcid(one.form) &&
      one.asideTaken() !== undefined &&
      besides.some((form) => exchanged(form, one.form, temperature) !== undefined),
  );
}

/** The exchange of a salt of the vessel with one that is put in, as far as both last. */
function reactionWith(
  entry: Entry,
  put: Formula,
  left: Quantity,
  at: Quantity<"temperature">,
): { readonly terms: readonly Term[]; readonly extent: Quantity; readonly uses: Quantity } | undefined {
  const salts = exchanged(entry.matter.formula, put, at);
  if (salts === undefined) return undefined;
  const own = matterOf(put).core;
  const found = tryBalance(`${entry.matter.formula} + ${own.formula} -> ${salts.join(" + ")}`);
  if (!found.ok) return undefined;
  const solid = matterOf(parseFormula(salts[0])).key;
  const terms = termsOf(found.value, (formula) => (matterOf(formula).key === solid ? "precipitated" : "dissolved"));
  const times = (key: string): Quantity => exact(String(-terms.find(({ matter }) => matter.key === key)!.count));
  const extent = minimum([entry.amount.dividedBy(times(entry.matter.key)), left.dividedBy(times(own.key))]);
  return { terms, extent, uses: extent.times(times(own.key)) };
}

/** With every salt of the vessel, the one first that leaves the least dissolved: barium before strontium. */
function reactionsOf({ books }: Pot, put: Pot, at: Quantity<"temperature">): Reaction[] {
  const [salt] = [...put.books.solids, ...put.books.dissolved];
  if (salt === undefined) return [];
  const keeps = ({ matter }: Entry): number => {
    const [solid] = exchanged(matter.formula, salt.matter.formula, at) ?? [];
    const kept = solid === undefined ? undefined : fateOf(parseFormula(solid), at).perHundredGramsWater;
    return kept?.toNumber("g") ?? 0;
  };
  let left = salt.amount;
  return [...books.dissolved]
    .sort((one, other) => keeps(one) - keeps(other))
    .flatMap((entry) => {
      const found = left.isPositive() ? reactionWith(entry, salt.matter.formula, left, at) : undefined;
      if (found === undefined) return [];
      left = left.minus(found.uses);
      return [found];
    });
}

/** Puts those salts in, and says what comes of them. */
export function takeOut(bench: Bench): void {
  const { temperature } = bench.frame.setting;
  for (const { shelf } of againstDissolved(bench)) {
    const put = bench.in(bench.pack(shelf.name));
    const before = bench.pot.books.solids;
    const reactions = reactionsOf(bench.pot, put, temperature);
    const { pot } = reacted(bench.pot.plusAll(put), reactions);
    const grown = pot.books.solids.filter(
      (one) => one.origin === "precipitated" && !before.some(({ matter }) => matter.key === one.matter.key),
    );
    const out = list(grown.map((one) => `${bench.hand.grams(massOf(one))} of ${one.matter.name}`));
    bench.did(POT, add(bench.pot, put, reactions), {
      materials: [shelf.name],
      amounts: [put.mass],
      from: bench.pack(shelf.name),
      adds: "solid",
      later: true,
      say: () =>
        grown.length === 0
          ? `Put the ${bench.hand.grams(put.mass)} of ${shelf.name} into the vessel and stir.`
          : `Put in the ${bench.hand.grams(put.mass)} of ${shelf.name}, dissolved in a little water, and keep the liquor warm for half an hour, stirring now and then: ${out} ${grown.length > 1 ? "precipitate" : "precipitates"}, which without it would stay dissolved beside the product. Do not leave it out; it is fine: filter through a dense paper, and pour back what runs through cloudy.`,
    });
  }
}
