// Everything together: the vessel filled, the rest brought to it in the order of the roles, and the reaction with the last.

import { madeOf } from "../../substance/internal";
import type { Pot } from "../contents/pot";
import type { Term } from "../contents/react";
import type { Reaction } from "../operation/add";
import { planned } from "../planning/exact";
import { isAcid, isAmmonia, isLye } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import type { Material } from "../shelf/material";
import { acidTaken } from "./acid-taken";
import { hasVessel, vesselOf } from "./adding";
import { alone } from "./alone";
import { putAsides, putCatalyst } from "./asides";
import { offerBase, putAgainstAcid } from "./base-against-acid";
import { type Bench, type Frame, POT } from "./bench";
import { bring, type Course } from "./bring";
import { giveItTime } from "./comes-slowly";
import { isWithoutWater } from "./feed";
import { putInto, putWater } from "./filling";
import { againstIron, takeIronOut } from "./iron-out";
import { asInTheRoom } from "./kept-dissolved";
import { isAcidSalt } from "./kind";
import { inOrder } from "./ranks";
import { alsoUsed, baseLeft, gasLeft, mainReaction, peroxideLeft, settled } from "./reactions";
import { isSplitInto, sharesAnion } from "./roles";
import { type Stage, stageOf, waitsForStage } from "./stage";
import { againstDissolved } from "./taken-out";

/**
 * The feed that a base is put to beforehand: a sour reducer, which it makes the salt of, so that no hydroxide precipitates;
 * an anion that it splits into that of the product; and the anion of an ammonium double salt, which without its ammonia
 * precipitates as another salt.
 */
function hostOf(bench: Bench, i: number): number | undefined {
  const { setting, roles } = bench.frame;
  const { form } = setting.materials[i]!;
  const hosts = (isHost: (material: Material, j: number) => boolean): number | undefined => {
    const host = setting.materials.findIndex((one, j) => j !== i && hasVessel(bench, j) && isHost(one, j));
    return host < 0 ? undefined : host;
  };
  if (isLye(form))
    return hasVessel(bench, i)
      ? hosts(
          (one, j) =>
            (roles[j] === "reducer" && isAcidSalt(one.form)) ||
            (roles[j] === "precipitant" && isSplitInto(one.form, setting.product.formula)),
        )
      : undefined;
  return isAmmonia(form) && roles[i] === "precipitant" && madeOf(setting.product.formula).ammonium
    ? hosts(({ form: other }, j) => roles[j] === "precipitant" && sharesAnion(other, setting.product.formula))
    : undefined;
}

/** Does another solid than the product come of feeds that have each a water of their own? On what is put in as a solid it would be a crust. */
const leavesSolid = ({ setting: { products, product, temperature }, feeds }: Frame): boolean =>
  feeds.every((feed) => feed.how !== "dissolve" || feed.shares !== true) &&
  products.some((one) => one !== product && fateOf(one.formula, temperature).precipitated === true);

/** Fill the vessel with what is there first, and the vessels of the others; what is still to be brought to it, in order. */
function fill(bench: Bench, stage: Stage | undefined): readonly number[] {
  const { ranks, setting, feeds } = bench.frame;
  const order = inOrder(setting, ranks, (i) => isWithoutWater(feeds[i]!));
  const first = order[0]!;
  // What has the same rank and dissolves goes straight into the vessel.
  const isBase = (i: number): boolean => i === first || (ranks[i] === ranks[first] && hasVessel(bench, i));
  const together = order.filter(isBase);
  // Two that make a precipitate are never dissolved in the same vessel.
  const { how } = bench.frame.isolation;
  const makesSolid = how === "precipitate" || (how === "liquor" && leavesSolid(bench.frame));
  const apart = together.length === order.length && order.length > 1 && makesSolid;
  const feed = bench.frame.feeds[first]!;
  const meetsWater = feed.how === "solid" && feed.reacts === true;
  const base = meetsWater ? [] : apart ? together.slice(0, 1) : together;
  const rest = order.filter((i) => !base.includes(i) && hostOf(bench, i) === undefined);
  // Strong acid goes into what is there already, never the water onto it.
  const isStrong = setting.asides.some(
    (one) => isAcid(one.form) && one.massFraction()?.compare(planned("dilute")) === 1,
  );
  const against = againstIron(setting);
  // what keeps the liquor acid comes after the base that takes iron out
  const acidify = (): void => {
    if (against === undefined) putAsides(bench, "acidify");
  };
  if (!isStrong) acidify();
  if (meetsWater) putWater(bench, feed.water!);
  for (const i of base) {
    putInto(bench, i, POT);
    acidify();
  }
  takeIronOut(bench, against);
  putAsides(bench, "with the first");
  for (const i of rest)
    if (hasVessel(bench, i) && !waitsForStage(bench.frame, stage, i)) putInto(bench, i, vesselOf(bench, i));
  for (const i of order) {
    const host = hostOf(bench, i);
    if (host !== undefined) putInto(bench, i, vesselOf(bench, host));
  }
  return rest;
}

/** Fill the vessel, bring the rest to it in order, and let it react with the last. */
export function combine(bench: Bench): void {
  const stage = stageOf(bench.frame);
  // what is put in at the end is not to go in with the rest
  for (const one of againstDissolved(bench)) bench.takesAside(one);
  const rest = fill(bench, stage);
  const main = mainReaction(bench);
  const asStaged =
    stage === undefined
      ? [main]
      : [stage.back, { ...main, terms: main.terms.filter(({ matter }) => matter.key !== stage.gas) }];
  const reactions = [
    ...alsoUsed(bench),
    ...asStaged,
    ...baseLeft(bench),
    ...acidTaken(bench),
    ...peroxideLeft(bench),
    ...gasLeft(bench),
  ];
  const settle = (pot: Pot): Pot =>
    asInTheRoom(bench, (one) => ({ pot: settled(bench, one), left: [], taken: [] }))(pot).pot;
  // A gas that no material brings is led in once all else is there.
  const isBrought = ({ whereto, count }: Term): boolean => whereto === "air" && count < 0n;
  const isLedLast = rest.length > 0 && stage === undefined && main.terms.some(isBrought);
  const course: Course = { bench, rest, stage, settle };
  rest.reduce<readonly Reaction[]>((open, i) => bring(course, i, open), isLedLast ? [] : reactions);
  if (rest.length === 0 || isLedLast) {
    putCatalyst(bench);
    alone(bench, reactions, settle);
  }
  const { before, put } = bench.drafts.filter(({ vessel }) => vessel === POT).at(-1)!;
  bench.mixed = put.reduce((all, one) => all.plus(one.mass), before.mass);
  putAgainstAcid(bench, settle);
  offerBase(bench);
  giveItTime(bench);
  bench.reacted = bench.pot;
  bench.liquor = bench.pot;
  putAsides(bench, "charcoal");
}
