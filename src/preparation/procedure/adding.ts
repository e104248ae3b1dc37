// How the addition of one material is worded: in which portions, how fast, how cool, and what gas that gives.

import { list } from "../../foundation/wording";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { BARE_METAL } from "../data/ends";
import { NOT_WETTED, SLOW_IN_ACID, WARM_FOR_METAL } from "../data/firing";
import type { Done } from "../operation/operation";
import { planned } from "../planning/exact";
import { isMetal } from "../reaction/acids";
import type { Material } from "../shelf/material";
import { isInLongPieces } from "../shelf/pieces";
import { type Bench, type Look, POT } from "./bench";
import { isClosed } from "./closed-flask";
import { isHung } from "./displaced";
import { isSlowMetal } from "./feed-single";
import { vesselIn } from "./filling";
import { nextPortion } from "./late-start";
import { goesInAir } from "./not-warm";
import { isHeldBack } from "./paper-end";
import { warmWhileReduced } from "./slow-complex";
import { gasesIn, gasInRoom, notCaught } from "./trap";
import { asRead } from "./weighing";
import { about, asSolution, celsius, lasting, litres } from "./words";

/** Does water alone leave it dry, so that it floats? */
export const isWettedFirst = ({ form }: Pick<Material, "form">): boolean => isOneOf(form, ...NOT_WETTED.formulas);

/** Does a material have a vessel of its own before it comes in? */
export const hasVessel = (bench: Bench, i: number): boolean => {
  const feed = bench.frame.feeds[i]!;
  return feed.how === "dissolve" || feed.how === "unknown" || (feed.how === "solution" && feed.dilution !== undefined);
};

/** Where a material waits until it comes in: its solution, or its pack. */
export const vesselOf = (bench: Bench, i: number): string =>
  hasVessel(bench, i) ? asSolution(bench.name(i)) : bench.pack(bench.name(i));

const isVeryWarm = ({ heat }: Look): boolean => "rise" in heat && heat.rise.rise.compare(planned("needsCooling")) > 0;

/** Is it to cool between two portions? Not what is kept warm for a metal that cold acid hardly takes. */
const coolsDown = ({ keptDissolved }: Bench, look: Look): boolean => keptDissolved?.isSlow !== true && isVeryWarm(look);

const isHungIn = ({ frame: { setting } }: Bench, i: number): boolean => isHung(setting, setting.materials[i]!);

/** Is it cooled in a bath between two portions? */
export const coolsBetween = (bench: Bench, i: number, look: Look): boolean =>
  look.gas.length > 0 && look.additionRate !== undefined && coolsDown(bench, look) && !isHungIn(bench, i);

/** The second pack of what has been added from the first. */
export const alsoAdding = (bench: Bench, i: number): string =>
  `${bench.frame.feeds[i]!.how === "solid" ? `Add the ${asRead(bench.frame.setting, bench.frame.portions[i]!)} of` : "Pour in the"} ${bench.name(i)} in the same way.`;

/** A base into the acid that dissolves it, before the metal comes. */
export function intoAcid(bench: Bench, i: number, done: Done): string {
  const gas = gasesIn(done).map(({ matter, amount }) => `${litres(gasInRoom(bench, amount))} of ${matter.name}`);
  const foam = gas.length === 0 ? "" : `, each once the foam of the last has subsided: ${list(gas)} in all`;
  return `Add the ${asRead(bench.frame.setting, bench.frame.portions[i]!)} of ${bench.name(i)} in small portions, stirring: it warms${foam}.`;
}

/** The last material comes in, and everything reacts. */
export function adding(
  bench: Bench,
  i: number,
  look: Look,
  {
    isLast,
    warmest,
    from,
    gone,
    warms,
  }: {
    /** Everything reacts with it. */
    readonly isLast: boolean;
    /** How warm the vessel may get. */
    readonly warmest: Quantity<"temperature"> | undefined;
    /** How warm the vessel is before. */
    readonly from: Quantity<"temperature">;
    /** Gas that has left before. */
    readonly gone?: string | undefined;
    /** What it does beside the reaction that the vessel is paced by, in words. */
    readonly warms: string;
  },
): string {
  const { feeds, roles, portions, setting } = bench.frame;
  const name = bench.name(i);
  const solid = feeds[i]!.how === "solid";
  const alone = feeds[i]!.how === "solid" || (feeds[i]!.how === "solution" && !hasVessel(bench, i));
  const what = alone ? `${asRead(setting, portions[i]!)} of ${name}` : asSolution(name);
  const closed = isLast && isClosed(bench);
  const verb = solid ? "Add" : closed ? "Let" : "Pour";
  const hot = warmWhileReduced(setting, bench.material(i).form);
  const into = solid
    ? `the ${what}${closed ? ", the flask open for no longer than a portion takes," : ""}`
    : closed
      ? `the ${what} in from the dropping funnel`
      : `the ${what} into the vessel${hot === undefined ? "" : `, kept at ${hot},`}`;
  if (!isLast) return `${verb} ${into}, ${solid ? "" : "slowly and "}stirring${warms}.`;
  const { additionRate, heat: warming } = look;
  const gas = look.gas.filter(({ key }) => key !== gone && !bench.laterGas.has(key));
  const room = vesselIn(look);
  const cool =
    roles[i] === "oxidiser" || (roles[i] === "reducer" && warmest !== undefined)
      ? `, cooling from outside${warmest === undefined ? "" : `, never above ${celsius(warmest)}`}`
      : "rise" in warming && warming.rise.rise.toNumber("ΔK") >= 10
        ? `; it warms by up to ${about(warming.rise.rise, "ΔK", 2).replace("ΔK", "K")} if added at once${warmest !== undefined && (warming.rise.end?.compare(warmest) ?? 1) > 0 ? `: a little at a time, in a bath of cold water, never above ${celsius(warmest)}` : gas.length === 0 && from.plus(warming.rise.rise).compare(planned("waterBoils")) >= 0 ? `, and would boil over: each portion only when it is back at ${celsius(from)}` : ""}`
        : "rise" in warming && gas.length > 0 && warming.rise.rise.toNumber("ΔK") <= -5
          ? `; it cools by about ${about(warming.rise.rise.negated(), "ΔK", 2).replace("ΔK", "K")}, and the gas lags: stir on until no more rises, and warm it slowly after, for it foams again`
          : "";
  const wetted = isWettedFirst(bench.material(i))
    ? ", rubbed to a paste with a little water and a drop of washing-up liquid first (dry it floats),"
    : "";
  if (isHungIn(bench, i))
    return `Hang the ${what} in the liquor, which is to cover it (a narrow vessel helps), in one piece or coiled loosely and not cut up, ${BARE_METAL.text}, and shake it now and then, so that what it is coated with falls off${cool}${room}${gas.length === 0 ? "" : `; ${volumesOf(gas)} comes from it by and by`}.`;
  if (solid && isSlowMetal(bench.material(i), setting))
    return `Put all of the ${what} into the cold acid, ${SLOW_IN_ACID.as}${room}: cold it hardly dissolves; ${volumesOf(gas)} comes by and by. ${SLOW_IN_ACID.pure}.`;
  const ground = solid && goesInAir(bench.material(i).form) ? ", ground fine just before," : "";
  const bare = isInLongPieces(bench.material(i)) && isMetal(bench.material(i).form) ? `, ${BARE_METAL.text},` : "";
  if (gas.length === 0 || additionRate === undefined)
    return solid || roles[i] === "oxidiser"
      ? `${verb} ${into}${wetted}${ground} in small portions, stirring${cool}${room}.`
      : `${verb} ${into}, slowly and stirring${cool}${room}.`;
  const time = lasting(additionRate.leastTime);
  // Where heat sets the pace minutes mean nothing: the thermometer says when.
  const isHot = coolsDown(bench, look);
  const over = time === undefined || isHot ? "" : ` over at least ${time}`;
  const { sign, otherwise } = nextPortion(bench, i);
  const usual = planned("coolsDownTo") as Quantity<"temperature">;
  const kept = bench.keptDissolved?.byItself === true ? bench.keptDissolved : undefined;
  // below what it is kept at there would be no room between the two
  const least = kept !== undefined && kept.at.compare(usual) >= 0 ? above(kept.at) : usual;
  const down = warmest !== undefined && warmest.compare(least) < 0 ? warmest : least;
  const wait = isHot
    ? `until ${sign} and it is below ${celsius(down)} again, in a bath of cold water,`
    : `until ${sign}${isVeryWarm(look) ? ` and it is at ${WARM_FOR_METAL.kept} again` : ""}`;
  const staysWarm =
    kept === undefined ? "" : `; once half of it is in, keep it no colder than ${celsius(kept.at)}: ${kept.why}`;
  const poison = notCaught(gasesLeft(bench));
  const hood = poison.length === 0 ? "" : `; nothing here absorbs ${list(poison)}: all of it must leave through a hood`;
  const portion = alone ? ` (${portionShown(bench, portions[i]!.dividedBy(additionRate.portions))})` : "";
  const back = isHeldBack(bench, i) ? "; hold the last portion back until paper shows the pH" : "";
  return `${verb} ${into}${wetted}${bare} in at least ${additionRate.portions} portions${portion}${over}, stirring; wait ${wait} before the next portion${back}${otherwise}${cool}${room}: ${volumesOf(gas)} in all, ${litres(sum(gas.map(({ volume }) => volume)).dividedBy(additionRate.portions))} from one portion${hood}${staysWarm}.`;
}

/** So far above what a vessel is kept at that both can be held. */
const above = (at: Quantity<"temperature">): Quantity<"temperature"> =>
  at.plus(planned("coolsBetween")) as Quantity<"temperature">;

const volumesOf = (gas: Look["gas"]): string =>
  list(gas.map(({ volume, formula }) => `${litres(volume)} of ${formula}`));

/** Gas that the pot has given off. */
const gasesLeft = ({ drafts }: Bench) => drafts.filter(({ vessel }) => vessel === POT).flatMap(gasesIn);

/** Less than the balance shows is parted by eye. */
const portionShown = ({ hand, frame: { setting } }: Bench, portion: Quantity): string =>
  portion.dimension === "volume"
    ? `about ${hand.litres(portion)} each`
    : portion.compare(setting.steps.mass) < 0
      ? "equal parts, by eye"
      : `about ${hand.grams(portion)} each`;
