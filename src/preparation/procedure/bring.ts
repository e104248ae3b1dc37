// One material comes into the vessel: what is made ready for it, what reacts, and how it is worded.

import type { Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import { less, type Pot } from "../contents/pot";
import { added, type Reaction, reacted } from "../operation/add";
import { hold } from "../operation/hold";
import type { Done } from "../operation/operation";
import { exact } from "../planning/exact";
import { isLedIn } from "../reaction/fluids";
import { meetsCyanide } from "../reaction/sour-cyanide";
import type { Species } from "../reaction/species";
import { adding, alsoAdding, coolsBetween, hasVessel, intoAcid, isWettedFirst, vesselOf } from "./adding";
import { putAsides, putCatalyst } from "./asides";
import { acidOnMetal } from "./base-in-acid";
import { type Bench, type Look, POT, type Telling } from "./bench";
import { ammoniaToDrive, driveAmmonia, driveOut, isClosed } from "./closed-flask";
import { putInto } from "./filling";
import { asInTheRoom, keepWarm } from "./kept-dissolved";
import { warmedForStart } from "./late-start";
import { gasIsIn, type Led, leading, stopsByPaper } from "./leading";
import { warmedByAcid } from "./lye-stage";
import { withOtherSolids } from "./other-solid";
import { isKeptDark } from "./protection";
import { type Stage, waitsForStage } from "./stage";
import { cooledFor, warmed, warmedForProduct, warmedForSparingAcid, warmedLigand, warmestAsAdded } from "./tempering";
import { gasesIn, trapsFor } from "./trap";

/** Materials that come to the vessel one after the other. */
export interface Course {
  readonly bench: Bench;
  readonly rest: readonly number[];
  /** What one of them does before the last. */
  readonly stage: Stage | undefined;
  /** What becomes of the vessel when all is in it. */
  readonly settle: (pot: Pot) => Pot;
}

/** What a first portion of a reactant does of the reactions, in their order, and what is left to do. */
function split(
  reactions: readonly Reaction[],
  { formula }: Species,
  portion: Quantity,
): { readonly first: Reaction[]; readonly rest: Reaction[] } {
  const { key } = matterOf(formula).core;
  const first: Reaction[] = [];
  const rest: Reaction[] = [];
  let open: Quantity | undefined = portion;
  for (const reaction of reactions) {
    const count = reaction.terms.find((term) => term.matter.core.key === key && term.count < 0n)?.count;
    if (count === undefined || open === undefined) {
      rest.push(reaction);
      continue;
    }
    const most: Quantity = open.dividedBy(exact(String(-count)));
    const isAll: boolean = most.compare(reaction.extent) >= 0;
    const extent = isAll ? reaction.extent : most;
    first.push({ ...reaction, extent });
    if (!isAll) rest.push({ ...reaction, extent: reaction.extent.minus(extent) });
    open = isAll ? less(open, extent.times(-count)) : undefined;
  }
  return { first, rest };
}

/** Has the course no stage that sets the pace, and is this another pack of what comes last? */
const isAlike = ({ bench, rest, stage }: Course, i: number): boolean =>
  stage?.setsPace !== true && bench.material(i).species === bench.material(rest.at(-1)!).species;

/** The first of several packs of the same already reacts, and tells how they are added. */
const speakerOf = (course: Course): number =>
  course.stage?.setsPace === true ? course.stage.by : course.rest.find((i) => isAlike(course, i))!;

/** What is there, and how warm or cold the vessel is, before a material comes. */
function makeReady(course: Course, i: number, open: readonly Reaction[]): void {
  const { bench, rest, stage } = course;
  const { roles } = bench.frame;
  const isLast = i === rest.at(-1);
  if (waitsForStage(bench.frame, stage, i)) putInto(bench, i, vesselOf(bench, i));
  // Charcoal that is to help an oxidiser along is there before it.
  if (isLast && roles[i] === "oxidiser") {
    putAsides(bench, "charcoal");
    putCatalyst(bench);
  }
  if (i === speakerOf(course)) cooledFor(bench, i);
  if (isLast) warmedForStart(bench, i);
  if (isLast) warmedForProduct(bench);
  if (isLast) warmedForSparingAcid(bench);
  if (isLast && roles[i] === "metal salt") warmedLigand(bench);
  if ((isLast || i === stage?.by) && roles.includes("acid")) warmed(bench, i);
  if (isLast && stage?.setsPace !== true) keepWarm(bench, i, open);
}

/** The words for a gas that is led in; undefined for what is poured or put in. */
function ledIn({ bench, rest }: Course, i: number, { before, after, put, left }: Done): Led | undefined {
  const { form } = bench.material(i);
  if (!isLedIn(bench.material(i))) return undefined;
  return {
    // what a gas has beside it is air, and passes through
    gain: i === rest.at(-1) ? after.mass.minus(before.mass).minus(put[0]!.books.other).to("g") : undefined,
    leaves: gasesIn({ left })
      .map(({ matter }) => matter.name)
      .filter((one) => one !== matterOf(form).name),
    before,
    after,
  };
}

/** A complex that light takes apart is there from now on. */
const inDimLight = ({ frame: { kind, setting } }: Bench): string =>
  kind === "complex formation" && isKeptDark(setting.product.formula)
    ? " From here on work in dim light: light decomposes what forms."
    : "";

/** The words for a material that comes into the vessel. */
function tellingOf(course: Course, i: number, done: Done, led: Led | undefined): Telling {
  const { bench, rest, stage } = course;
  const { portions, feeds, setting } = bench.frame;
  const isLast = i === rest.at(-1);
  const speaks = i === speakerOf(course);
  const warmest = warmestAsAdded(bench, i);
  const warms =
    isLast && stage?.byLye === true ? warmedByAcid(bench.frame, stage, done.before.mass.plus(done.put[0]!.mass)) : "";
  // where a stage sets the pace and no lye is there, its own heat is all that is felt
  const isMixing =
    stage?.setsPace === true && !stage.byLye ? i === stage.by : isLast || (i === stage?.by && gasesIn(done).length > 0);
  const apparatus =
    isLast && isClosed(bench) && feeds[i]!.how !== "solid" && led === undefined
      ? "dropping funnel"
      : isLast && meetsCyanide(setting)
        ? "fume hood"
        : undefined;
  return {
    say: (look) =>
      led !== undefined
        ? leading(bench, i, look, led)
        : !speaks && isAlike(course, i)
          ? alsoAdding(bench, i)
          : i === stage?.by && !stage.setsPace
            ? intoAcid(bench, i, done)
            : `${adding(bench, i, look, {
                isLast: speaks,
                warmest,
                from: done.before.books.temperature,
                warms,
                gone: stage?.setsPace === false ? stage.gas : undefined,
              })}${isLast ? inDimLight(bench) : ""}`,
    ...(hasVessel(bench, i) ? {} : { materials: [bench.name(i)], amounts: [portions[i]!] }),
    ...(apparatus === undefined ? {} : { apparatus }),
    atHand: (look) => [
      ...(led !== undefined && stopsByPaper(bench, i, led) ? ["indicator paper" as const] : []),
      ...(isWettedFirst(bench.material(i)) ? ["washing-up liquid" as const] : []),
      ...(led === undefined && isLast && coolsBetween(bench, i, look) ? ["cold-water bath" as const] : []),
    ],
    from: vesselOf(bench, i),
    adds: !hasVessel(bench, i) && !bench.material(i).isSolution ? "solid" : "liquid",
    ...(isMixing ? { care: "mixing" as const } : {}),
    ...(isLast ? { limit: (look: Look) => look.additionRate?.leastTime } : {}),
  };
}

/** Bring a material to what is there; what is still to react after it. */
export function bring(course: Course, i: number, open: readonly Reaction[]): readonly Reaction[] {
  const { bench, rest, stage, settle } = course;
  const isLast = i === rest.at(-1);
  makeReady(course, i, open);
  const [before, other] = [bench.pot, bench.in(vesselOf(bench, i))];
  const joined = before.plusAll(other);
  const portion = bench.material(i).amountIn(bench.frame.portions[i]!);
  const shared = !isLast && isAlike(course, i) ? split(open, bench.material(i).species, portion) : undefined;
  const still = shared?.rest ?? open;
  if (isLast && bench.frame.kind === "displacement") bench.onMetal = acidOnMetal(reacted(joined, still).pot);
  const all = (): readonly Reaction[] => [...still, ...bench.onMetal];
  const now = i === stage?.by ? [stage.first] : (shared?.first ?? []);
  const outcome = isLast
    ? asInTheRoom(bench, (pot) => withOtherSolids(bench, pot, all()))(joined)
    : reacted(joined, now);
  const free = isLast ? ammoniaToDrive(bench, outcome.pot.books.dissolved) : undefined;
  const gases = gasesIn(outcome);
  const caught = trapsFor(bench, free === undefined ? gases : [...gases, free]);
  const done = added(before, other, outcome, isLast ? settle : undefined);
  const led = ledIn(course, i, done);
  bench.did(POT, done, tellingOf(course, i, done, led));
  if (led !== undefined) gasIsIn(bench, i, led);
  if (isLast) driveOut(bench, gases);
  if (free !== undefined) driveAmmonia(bench);
  caught();
  if (i === stage?.by) bench.did(POT, hold(bench.pot), { say: () => stage.after });
  return still;
}
