// Alcohol that no pack of the plan brings: put to a liquor from which nothing crystallises, and over a last wash. How much of
// it, and where it is not the way.

import { type Formula, parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import { type Quantity, sum } from "../../quantity";
import { type Entry, massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";
import { crystallised } from "../contents/react";
import type { Done } from "../operation/operation";
import { displaceWater } from "../operation/rinse";
import { exact, planned } from "../planning/exact";
import { isAcid } from "../reaction/acids";
import { isAntisolvent } from "../reaction/fluids";
import { withAlcohol } from "../reaction/with-alcohol";
import type { Setting } from "../request/setting";
import { densityAt, volumeOf } from "../shelf/strength";
import { type Bench, type Frame, POT } from "./bench";
import { limited } from "./coming";
import { isAgent, isHarshOxidiser } from "./roles";
import { useOf } from "./use";

/** Formula of what is sold as alcohol. */
export const ALCOHOL = "C2H5OH";

/** What brings a product out of a liquor of which no figure is known, or why alcohol does not. */
export type Antisolvent =
  | { readonly volume: Quantity<"volume"> }
  /** Why not, in words; undefined where it is not known what alcohol does. */
  | { readonly volume?: undefined; readonly why: string | undefined; readonly oxidiser?: true };

/** Is something dissolved that alcohol must not meet: an oxidiser, or nitric or perchloric acid? */
const refusesAlcohol = ({ books }: Pot): boolean =>
  books.dissolved.some(
    ({ matter: { formula } }) => isHarshOxidiser(formula) || (isAcid(formula) && isAgent(formula, "oxidiser")),
  );

/** All the alcohol that stands on the table; undefined for none, or where a volume is not known. */
export function alcoholOnTable(setting: Setting): Quantity | undefined {
  const all = setting.asides
    .filter((one) => useOf(one, setting) === "alcohol")
    .map((one) => {
      const own = one.asideTaken();
      return own && volumeOf(one, own.portion);
    });
  const known = all.filter((one) => one !== undefined);
  return known.length === 0 || known.length < all.length ? undefined : sum(known);
}

/** Salts beside the product that alcohol brings out with it, or of which that is not known. */
export function comingAlong({ pot, frame: { setting, theory } }: Bench): readonly Entry[] {
  const { key } = matterOf(setting.product.formula).core;
  const least = theory.times(planned("worthAWord"));
  return pot.books.dissolved.filter(
    (one) =>
      one.matter.key !== key && massOf(one).compare(least) > 0 && withAlcohol(one.matter.formula) !== "dissolves it",
  );
}

/** May alcohol that is put in whatever comes with it be put to the liquor, and does it bring the product out? */
export const bearsAlcohol = ({ pot, frame }: Bench): boolean =>
  !refusesAlcohol(pot) && withAlcohol(frame.setting.product.formula) === "brings it out";

/** The same, where it brings nothing else out with the product. */
export const bringsOnlyProduct = (bench: Bench): boolean => bearsAlcohol(bench) && comingAlong(bench).length === 0;

/** Does alcohol alone over its crystals take their water along, and nothing of them? */
export const bearsLastAlcohol = (product: Formula): boolean =>
  !isHarshOxidiser(product) && withAlcohol(product) === "brings it out";

/** The liquor that alcohol goes into: of a complex what stands over its crystals, of other salts that none has come out of. */
export function liquorAtCrystals(
  { kind, theory, isolation }: Pick<Frame, "kind" | "theory" | "isolation">,
  pot: Pot,
): Quantity<"volume"> {
  if (kind !== "complex formation" || isolation.how === "precipitate") return pot.liquor.volume as Quantity<"volume">;
  const liquor = pot.mass.minus(theory);
  const least = theory.times(planned("leastLiquor"));
  const mass = liquor.compare(least) > 0 ? liquor : least;
  return mass.dividedBy(exact("1 g/mL")).to("mL") as Quantity<"volume">;
}

/** As much alcohol as liquor, where it brings out the product and nothing else. */
export function antisolventFor(bench: Bench): Antisolvent {
  const { product } = bench.frame.setting;
  if (refusesAlcohol(bench.pot)) return { why: "it is an oxidiser", oxidiser: true };
  const does = withAlcohol(product.formula);
  if (does === "dissolves it") return { why: `it dissolves ${product.name} as well` };
  if (does === undefined) return { why: undefined };
  const along = comingAlong(bench);
  if (along.length > 0)
    return {
      why: `it would bring out the ${list(along.map((one) => `${bench.hand.grams(massOf(one))} of ${one.matter.name}`))} as well`,
    };
  return { volume: liquorAtCrystals(bench.frame, bench.pot) };
}

/** Alcohol that takes the water of a cake or of crystals along. */
export const lastAlcoholFor = ({ books }: Pot): Quantity<"volume"> =>
  books.water.times(planned("lastAlcohol")).dividedBy(exact("1 g/mL")).to("mL") as Quantity<"volume">;

/** Alcohol over rinsed crystals: of the liquor that they keep it brings their salt out, with its water. */
export function displacedFrom(bench: Bench, pot: Pot, product: Formula, volume: Quantity): Done {
  const matter = matterOf(product);
  const own = pot.books.dissolved.find((one) => one.matter.key === matter.core.key);
  const coming = own === undefined ? [] : limited(pot, [{ matter, amount: own.amount }]);
  const brought = coming.reduce((all, one) => crystallised(all, one.matter, one.amount), pot);
  return displaceWater(brought, alcoholOf(bench, volume));
}

/** The last wash of a cake: alcohol takes its water along, unless some that stands on the table did so. */
export function washWithAlcohol(bench: Bench, airless: boolean): void {
  if (!bench.pot.books.water.isPositive() || isWetWithAlcohol(bench.pot)) return;
  const volume = lastAlcoholFor(bench.pot);
  bench.did(POT, displaceWater(bench.pot, alcoholOf(bench, volume)), {
    amounts: [volume],
    alcohol: volume,
    say: () =>
      `Wash the last time with ${bench.hand.litres(volume)} of alcohol, in two portions, ${
        airless
          ? "each drawn off only until the cake is no longer covered: no air is sucked through it"
          : "sucking off after each"
      }: it takes the water along, and dries fast.`,
  });
}

/** A vessel with a volume of alcohol and nothing else. */
export function alcoholOf({ pot: { books } }: Bench, volume: Quantity): Pot {
  const matter = matterOf(parseFormula(ALCOHOL));
  const density = densityAt(matter.formula, exact("100 %"))!;
  const mass = volume.times(density).to("g");
  return Pot.empty(books.temperature, books.pressure).plusDissolved(matter, mass.dividedBy(matter.molarMass).to("mol"));
}

/** Is what is in a vessel wet with alcohol, or acetone? */
export const isWetWithAlcohol = ({ books }: Pot): boolean =>
  books.dissolved.some(({ matter }) => isAntisolvent(matter.formula));
