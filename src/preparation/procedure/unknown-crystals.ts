// Crystals of a product whose solubility no table has: cooled, in ice where nothing speaks against it, and what is done where
// little or nothing comes.

import type { Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import { STANDS_WITH_ALCOHOL } from "../data/antisolvent";
import { isHeatSensitive } from "../identity/by-ignition";
import { concentrate } from "../operation/concentrate";
import { cool } from "../operation/cool";
import { planned } from "../planning/exact";
import { usuallyBrought } from "../reaction/with-alcohol";
import {
  type Antisolvent,
  alcoholOnTable,
  antisolventFor,
  bearsAlcohol,
  isWetWithAlcohol,
  liquorAtCrystals,
} from "./alcohol";
import { putAsides } from "./asides";
import { type Bench, POT } from "./bench";
import { boiledTo } from "./boiled-to";
import { type ByEye, boiledByEye, mayStandInIce } from "./by-eye";
import { filterFlocks, filterHot, lookThrough } from "./clearing";
import { cooledBelow, evaporatedBelow, leastWarmthOf, type Turning, turningOf } from "./double-salt";
import { keptFrom, withAcidFirst } from "./keeping";
import { isMixedClear } from "./mixed-clear";
import { inTheWay } from "./mixed-hot";
import { isEvaporated, spoiltByBoiling } from "./not-warm";
import { isAirless } from "./protection";
import { filterAndRinse } from "./rinsing";
import { keepLiquor } from "./second-crop";
import { useOf } from "./use";
import { celsius } from "./words";

/** Of a complex alcohol brings out most, of plain salts whatever it meets. */
const isComplex = ({ frame }: Bench): boolean => frame.kind === "complex formation";

const hasAlcohol = ({ frame: { setting } }: Bench): boolean =>
  setting.asides.some((one) => useOf(one, setting) === "alcohol");

/** Much liquor is boiled down before alcohol brings the rest out: it would take as much of that. */
function boilFirst(bench: Bench): void {
  const { pot, hand, frame } = bench;
  const to = boiledTo(frame.setting, frame.theory);
  const isForAlcohol = to.compare(frame.theory.times(planned("boiledTo")).to("g")) < 0;
  const isMuch = pot.mass.compare(to.times(planned(isForAlcohol ? "moreThanAlcohol" : "muchMore"))) > 0;
  if (!isMuch || !isComplex(bench) || spoiltByBoiling(frame.setting.product.formula) !== undefined) return;
  const isBrought = hasAlcohol(bench) ? bearsAlcohol(bench) : antisolventFor(bench).volume !== undefined;
  if (!isBrought || pot.books.waterMissing.length > 0) return;
  const off = pot.mass.minus(to).to("g");
  // beside much of other salts there is not so much water to boil off: half of what is no crystals is to be water still
  const least = isForAlcohol ? to.minus(frame.theory).dividedBy(2) : frame.theory;
  if (pot.books.water.minus(off).compare(least) < 0) return;
  const kept = keptFrom(bench);
  bench.did(
    POT,
    withAcidFirst(kept, pot, (all) => concentrate(all, off, planned("hot") as Quantity<"temperature">)),
    {
      ...kept.takes,
      care: "isolating",
      target: to,
      say: () => `Boil the liquor down, stirring, until the contents weigh about ${hand.grams(to)}${kept.text}.`,
    },
  );
}

/** What is done where nothing crystallises, and with the liquor where little did; in words. */
interface Otherwise {
  readonly text: string;
  readonly again?: string | undefined;
  /** Mass of the contents that a liquor is boiled down to at most. */
  readonly to?: Quantity | undefined;
}

/** What brings crystals out of a liquor of which no figure is known; heat only where the product bears it. */
function otherwise(bench: Bench, antisolvent: Antisolvent, inIce: boolean): Otherwise {
  const { formula } = bench.frame.setting.product;
  const spoilt = spoiltByBoiling(formula);
  const never = spoilt === undefined ? "" : `; never boil it down: ${spoilt}`;
  if (antisolvent.volume !== undefined && isComplex(bench)) {
    const alcohol = bench.hand.litres(antisolvent.volume);
    return {
      text: `once it is cold and no more crystallises, add alcohol slowly and stirring, up to as much as there is liquor (${alcohol}): it brings out most of the rest (common practice)${never}`,
    };
  }
  if (spoilt === undefined && antisolvent.volume === undefined && antisolvent.oxidiser)
    return {
      text: "if nothing crystallises, evaporate it slowly in an open dish on a water bath until a skin forms or a drop of it crystallises on cold glass, and cool it again, never with alcohol: it is an oxidiser",
    };
  const eye = spoilt === undefined ? boiledByEye(bench) : undefined;
  const turning = turningOf(formula);
  const isBoiled = eye?.isBoiled === true;
  const said = eye?.text ?? never;
  if (antisolvent.volume !== undefined)
    return {
      text: `if nothing crystallises, ${isBoiled ? `${shrunk(turning)}, or ` : ""}add up to ${bench.hand.litres(antisolvent.volume)} of alcohol, as much as there is liquor, slowly and stirring, once it is cold${said}`,
      again: "add up to as much alcohol as there is liquor, unless some is in it already",
    };
  const not = antisolvent.why === undefined ? "" : `; no alcohol: ${antisolvent.why}`;
  if (isBoiled)
    return {
      text: `if nothing crystallises, ${shrunk(turning)} a little at a time, until a drop of it crystallises on cold glass, and cool it again${said}${not}`,
      to: eye.to,
      again:
        isHeatSensitive(formula) || isAirless(formula) || isEvaporated(formula)
          ? undefined
          : boiledOn(bench, eye, turning),
    };
  const cold = inIce ? "leave it in the cold overnight, covered, and" : "cool it in ice to 0 to 5 °C, covered,";
  const then = inIce ? "" : ", and leave it overnight";
  return {
    text: `if nothing crystallises, ${cold} scratch the glass or put a crystal of the salt in${then}${said}${not}`,
  };
}

/** Making less of a liquor, in words. */
const shrunk = (turning: Turning | undefined): string =>
  turning === undefined ? "boil it down" : `evaporate it ${evaporatedBelow(turning)}`;

/** Making less of the mother liquor for a second crop, in words; undefined where hardly any water may go. */
function boiledOn({ pot, hand }: Bench, { off, text }: ByEye, turning: Turning | undefined): string | undefined {
  const way = shrunk(turning);
  if (off === undefined) return text === "" ? `${way} to about half` : undefined;
  const isHalf = off.compare(pot.books.water.dividedBy(2)) >= 0;
  return `${way}${isHalf ? " to about half" : ""}, no more than ${hand.water(off)} off in all with what went before`;
}

/** What crystals are that came before it cooled, in words; empty where none do. */
const ofProduct = (bench: Bench): string =>
  isMixedClear(bench) ? " (crystals that came as it was mixed are the product)" : "";

/** The alcohol of the plan comes to a cold liquor. */
function bringOut(bench: Bench, room: Quantity<"temperature">): void {
  if (bench.pot.books.temperature.compare(planned("feelsHot")) > 0)
    bench.did(POT, cool(bench.pot, room), {
      target: room,
      say: () => `Let it cool to ${celsius(room)}${ofProduct(bench)}.`,
    });
  putAsides(bench, "alcohol");
}

/** Has about as much alcohol come to the liquor as there is of that? */
function isEnough({ drafts, frame }: Bench): boolean {
  const alcohol = alcoholOnTable(frame.setting);
  const poured = drafts.find(({ vessel, put }) => vessel === POT && put.some(isWetWithAlcohol));
  if (alcohol === undefined || poured === undefined) return false;
  return alcohol.compare(liquorAtCrystals(frame, poured.before).times(planned("enoughAlcohol"))) >= 0;
}

export function isolateUnknown(bench: Bench): void {
  const { isolation, setting, theory, roles } = bench.frame;
  if (isolation.how !== "unknown") return;
  const { product, temperature: room } = setting;
  // What is not wanted, charcoal or a base that is left, goes before anything comes out.
  const { temperature: at } = bench.pot.books;
  if (bench.pot.books.solids.length > 0) filterHot(bench, at);
  else if (!isComplex(bench) && !isMixedClear(bench) && at.compare(planned("feelsHot")) > 0) lookThrough(bench, at);
  else if (bench.frame.kind === "metal and acid") filterFlocks(bench);
  boilFirst(bench);
  const isBrought = hasAlcohol(bench);
  if (isBrought) bringOut(bench, room);
  const inIce = mayStandInIce(bench, isBrought);
  const least = leastWarmthOf(product.formula);
  const cold = inIce
    ? (planned("iced") as Quantity<"temperature">)
    : least !== undefined && least.compare(room) > 0
      ? least
      : room;
  const crop = matterOf(product.formula);
  const there = bench.pot.books.dissolved.find((one) => one.matter.key === crop.core.key)?.amount;
  const coming = there === undefined ? [] : [{ matter: crop, amount: there }];
  const kept = keptFrom(bench);
  const cooled = withAcidFirst(kept, bench.pot, (pot) => cool(pot, cold, coming));
  const contains = `what it still contains of ${product.name}`;
  const unknown = [...new Set([...cooled.after.books.unknown, contains])];
  const slowly = inTheWay(setting, roles) === undefined ? "" : "slowly, undisturbed, ";
  const turning = turningOf(product.formula);
  const cools = turning === undefined ? `Let it cool ${slowly}` : `${cooledBelow(turning, product.name)} let it cool `;
  const to = `${celsius(inIce ? room : cold)}${inIce ? `, then in ice and water to ${celsius(cold)},` : ""}`;
  const antisolvent = antisolventFor(bench);
  const rest = otherwise(bench, antisolvent, inIce);
  const way = `${rest.text}${kept.text}`;
  bench.did(
    POT,
    { ...cooled, after: cooled.after.with({ unknown }) },
    {
      ...kept.takes,
      target: cold,
      care: "isolating",
      limit: () => rest.to,
      ...(inIce ? { atHand: ["ice" as const] } : {}),
      say: () =>
        isBrought
          ? `Let it stand ${inIce ? `in ice and water at ${celsius(cold)}` : `at ${to}`}, covered, for ${STANDS_WITH_ALCOHOL.time} or more; what of the ${product.name} the alcohol leaves dissolved is in no table.`
          : `${cools}to ${to} and stand${ofProduct(bench)}; how much ${product.name} crystallises is in no table: ${way}.`,
      ...(isBrought || antisolvent.volume === undefined ? {} : { alcohol: antisolvent.volume }),
    },
  );
  filterAndRinse(bench, product.formula, theory, cold);
  const usual = isBrought && isEnough(bench) ? usuallyBrought(product.formula) : undefined;
  const more =
    usual === undefined ? undefined : "put in what is missing of so much alcohol, and leave it in the cold overnight";
  keepLiquor(bench, contains, isBrought ? more : rest.again, usual);
}
