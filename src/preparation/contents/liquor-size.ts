// How much of a liquor there is, without the solids in it: by its density where salts make it heavier than water.
import { type AmountError, densityOfSolution, densityOfWater } from "../../amount";
import { attempt } from "../../foundation/error";
import { type Quantity, sum } from "../../quantity";
import { exact, planned } from "../planning/exact";
import type { Books } from "./books";
import { type Entry, massOf } from "./entry";
import { shareFrom } from "./share";

/** The volume of a liquor, and how good it is. */
export interface LiquorSize {
  readonly volume: Quantity;
  /** False where no table has most of its salts: it is taken as so much water, and is less. */
  readonly isKnown: boolean;
}

const NAMING = { symbol: "V(liquor)", label: "liquor by its density", rule: "volume = mass / density" } as const;

const ROOM = "20 °C";
const isRoom = (temperature: Quantity): boolean => temperature.compare(exact(ROOM)) === 0;

/** Volume of a gram of a solution; of what is stronger than its table on in a straight line, as of ideal mixing. */
function perGramOf({ matter }: Entry, strength: Quantity): { volume: Quantity; isBeyond: boolean } | undefined {
  const at = (w: Quantity) =>
    attempt<Quantity, AmountError>(() =>
      exact("1").dividedBy(densityOfSolution(matter.formula, w as Quantity<"mass fraction">)),
    );
  const read = at(strength);
  if (read.ok) return { volume: read.value, isBeyond: false };
  if (read.error.code !== "amount.outside-range") return undefined;
  const end = exact(String(read.error.details["high"]));
  const before = end.times(exact("90 %"));
  const [last, near] = [at(end), at(before)];
  if (!last.ok || !near.ok) return undefined;
  const steps = strength.minus(end).dividedBy(end.minus(before));
  return { volume: last.value.plus(last.value.minus(near.value).times(steps)), isBeyond: true };
}

/**
 * The liquid of a vessel. Of several salts each counts by its share of them, as a solution of all their strength has it, and
 * those without a table as the others do (common practice); where that would be most of them, none does.
 */
export function sizeOfLiquor({ water, other, dissolved, temperature }: Books): LiquorSize {
  const salts = dissolved.map((one) => ({ one, mass: massOf(one) }));
  const liquid = sum([water, other, ...salts.map(({ mass }) => mass)]);
  const ofWater = densityOfWater(temperature);
  const asWater = (isKnown: boolean): LiquorSize => ({ volume: liquid.dividedBy(ofWater).to("mL"), isKnown });
  if (salts.length === 0 || !liquid.isPositive()) return asWater(true);
  const all = sum(salts.map(({ mass }) => mass));
  // short figures: a density is known to five, and exact quotients of masses would carry a hundred
  const strength = shareFrom(all.toNumber("g") / liquid.toNumber("g"), "strength of the liquor").to("%");
  if (strength.compare(planned("asWater")) <= 0) return asWater(true);
  const known = salts.flatMap(({ one, mass }) => {
    const own = perGramOf(one, strength);
    return own === undefined ? [] : [{ mass, ...own }];
  });
  const counted = sum([exact("0 g"), ...known.map(({ mass }) => mass)]);
  if (counted.compare(all.times(exact("50 %"))) < 0) return asWater(strength.compare(planned("heavyLiquor")) <= 0);
  const shareOf = (mass: Quantity): Quantity =>
    shareFrom(mass.toNumber("g") / counted.toNumber("g"), "share of the salts of a liquor");
  const perGram = sum(known.map(({ mass, volume }) => volume.times(shareOf(mass))));
  const cold = liquid.times(perGram);
  // the tables stand near 20 °C: it swells as water does
  const own = isRoom(temperature) ? cold : cold.times(densityOfWater(ROOM)).dividedBy(ofWater);
  const isBeyond = known.some((one) => one.isBeyond);
  // however far beyond its table, no less than its water by itself; within it lye and bitter salt do take less
  const least = water.dividedBy(ofWater);
  const volume = isBeyond && own.compare(least) < 0 ? least : own;
  return { volume: volume.to("mL").named(NAMING), isKnown: true };
}
