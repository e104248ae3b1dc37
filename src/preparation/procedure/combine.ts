// Everything together: the vessel filled, the rest brought to it in the order of the roles, and the reaction with the last.

import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { type Matter, matterOf } from "../contents/matter";
import { less, Pot } from "../contents/pot";
import type { Term } from "../contents/react";
import { WARM_IN_ACID } from "../data/firing";
import { added, type Reaction, reacted } from "../operation/add";
import { hold } from "../operation/hold";
import { exact, planned } from "../planning/exact";
import { isAcid, isAmmonia, isLye } from "../reaction/acids";
import { isGas, isLedIn } from "../reaction/fluids";
import { meetsCyanide } from "../reaction/sour-cyanide";
import type { Species } from "../reaction/species";
import type { Material } from "../shelf/material";
import { adding, alsoAdding, coolsBetween, hasVessel, intoAcid, isWettedFirst } from "./adding";
import { putAsides, putCatalyst } from "./asides";
import { acidOnMetal, baseInAcid, dissolvedInAcid, gasOfBase } from "./base-in-acid";
import { type Bench, type Look, POT, type Telling } from "./bench";
import { ammoniaToDrive, driveAmmonia, driveOut, isClosed } from "./closed-flask";
import { putInto, putWater } from "./filling";
import { againstIron, takeIronOut } from "./iron-out";
import { asInTheRoom, keepWarm } from "./kept-dissolved";
import { isAcidSalt } from "./kind";
import { warmedForStart } from "./late-start";
import { escapes, gasIsIn, type Led, leading, stopsByPaper } from "./leading";
import { lyeStage, warmedByAcid } from "./lye-stage";
import { withOtherSolids } from "./other-solid";
import { inOrder } from "./ranks";
import { acidsUsed, baseLeft, gasLeft, mainReaction, peroxideLeft, settled } from "./reactions";
import { sharesAnion } from "./roles";
import { cooledFor, warmed, warmedForProduct, warmedLigand, warmestAsAdded } from "./tempering";
import { gasesIn, gasInRoom, trapsFor } from "./trap";
import { about, asSolution, litres } from "./words";

const amountOf = ({ frame }: Bench, i: number): Quantity => frame.setting.materials[i]!.amountIn(frame.portions[i]!);

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

const vesselOf = (bench: Bench, i: number): string =>
  hasVessel(bench, i) ? asSolution(bench.name(i)) : bench.pack(bench.name(i));

/**
 * The feed that a base is put to beforehand: a sour reducer, which it makes the salt of, so that no hydroxide precipitates; and the
 * anion of an ammonium double salt, which without its ammonia precipitates as another salt.
 */
function hostOf(bench: Bench, i: number): number | undefined {
  const { setting, roles } = bench.frame;
  const { form } = setting.materials[i]!;
  const hosts = (isHost: (material: Material, j: number) => boolean): number | undefined => {
    const host = setting.materials.findIndex((one, j) => j !== i && hasVessel(bench, j) && isHost(one, j));
    return host < 0 ? undefined : host;
  };
  if (isLye(form))
    return hasVessel(bench, i) ? hosts((one, j) => roles[j] === "reducer" && isAcidSalt(one.form)) : undefined;
  return isAmmonia(form) && roles[i] === "precipitant" && madeOf(setting.product.formula).ammonium
    ? hosts(({ form: other }, j) => roles[j] === "precipitant" && sharesAnion(other, setting.product.formula))
    : undefined;
}

/** Fill the vessel, bring the rest to it in order, and let it react with the last. */
export function combine(bench: Bench): void {
  const { ranks, roles, setting, feeds } = bench.frame;
  const order = inOrder(setting, ranks, (i) => feeds[i]!.how === "solid");
  const first = order[0]!;
  // What has the same rank and dissolves goes straight into the vessel.
  const isBase = (i: number): boolean => i === first || (ranks[i] === ranks[first] && hasVessel(bench, i));
  const together = order.filter(isBase);
  // Two that make a precipitate are never dissolved in the same vessel.
  const apart = together.length === order.length && order.length > 1 && bench.frame.isolation.how === "precipitate";
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
  for (const i of rest) if (hasVessel(bench, i)) putInto(bench, i, vesselOf(bench, i));
  for (const i of order) {
    const host = hostOf(bench, i);
    if (host !== undefined) putInto(bench, i, vesselOf(bench, host));
  }
  const stage = lyeStage(bench.frame);
  const sour = bench.frame.kind === "displacement" ? baseInAcid(setting) : undefined;
  const inAcid = sour && {
    ...dissolvedInAcid(setting, bench.frame.account, sour),
    gas: gasOfBase(sour),
    base: sour.base,
  };
  const main = mainReaction(bench);
  const apartFrom = (back: Reaction, gas: string | undefined): Reaction[] => [
    back,
    { ...main, terms: main.terms.filter(({ matter }) => matter.key !== gas) },
  ];
  const asStaged =
    stage !== undefined
      ? apartFrom(stage.back, stage.gas.key)
      : inAcid !== undefined
        ? apartFrom(inAcid.back, inAcid.gas)
        : [main];
  const reactions = [...acidsUsed(bench), ...asStaged, ...baseLeft(bench), ...peroxideLeft(bench), ...gasLeft(bench)];
  const settle = (pot: Pot): Pot =>
    asInTheRoom(bench, (one) => ({ pot: settled(bench, one), left: [], taken: [] }))(pot).pot;
  const last = rest.at(-1);
  const alike = (i: number): boolean =>
    last !== undefined && bench.material(i).species === bench.material(last).species;
  // Of two packs of the same the first already reacts, and tells how it is added.
  const speaker = rest.find(alike);
  // A gas that no material brings is led in once all else is there.
  const isBrought = ({ whereto, count }: Term): boolean => whereto === "air" && count < 0n;
  const isLedLast = rest.length > 0 && stage === undefined && main.terms.some(isBrought);
  let open = isLedLast ? [] : reactions;
  rest.forEach((i, at) => {
    const isLast = at === rest.length - 1;
    // Charcoal that is to help an oxidiser along is there before it.
    if (isLast && roles[i] === "oxidiser") {
      putAsides(bench, "charcoal");
      putCatalyst(bench);
    }
    if (i === speaker) cooledFor(bench, i);
    if (isLast) warmedForStart(bench, i);
    if (isLast) warmedForProduct(bench);
    if (isLast && roles[i] === "metal salt") warmedLigand(bench);
    const dissolves = inAcid?.base === i;
    if ((isLast || dissolves) && roles.includes("acid") && isOneOf(bench.material(i).form, ...WARM_IN_ACID.formulas))
      warmed(bench, bench.name(i));
    if (isLast && stage === undefined) keepWarm(bench, i, open);
    const own = vesselOf(bench, i);
    const giving = dissolves || (stage !== undefined && roles[i] === "metal");
    const shared =
      !isLast && stage === undefined && alike(i)
        ? split(open, bench.material(i).species, amountOf(bench, i))
        : undefined;
    if (shared !== undefined) open = shared.rest;
    const now = dissolves ? [inAcid.first] : giving ? [stage!.first] : (shared?.first ?? []);
    const speaks = stage === undefined ? i === speaker : giving;
    const [before, other] = [bench.pot, bench.in(own)];
    const joined = before.plusAll(other);
    if (isLast && bench.frame.kind === "displacement") open = [...open, ...acidOnMetal(reacted(joined, open).pot)];
    const outcome = isLast
      ? asInTheRoom(bench, (pot) => withOtherSolids(bench, pot, open))(joined)
      : reacted(joined, now);
    const free = isLast ? ammoniaToDrive(bench, outcome.pot.books.dissolved) : undefined;
    const gases = gasesIn(outcome);
    const caught = trapsFor(bench, free === undefined ? gases : [...gases, free]);
    const done = added(before, other, outcome, isLast ? settle : undefined);
    const warmest = warmestAsAdded(bench, i);
    const warms = isLast && stage !== undefined ? warmedByAcid(bench.frame, stage, joined.mass) : "";
    const led: Led | undefined = isLedIn(bench.material(i))
      ? {
          // what a gas has beside it is air, and passes through
          gain: isLast ? done.after.mass.minus(before.mass).minus(other.books.other).to("g") : undefined,
          leaves: gases.map(({ matter }) => matter.name).filter((one) => one !== matterOf(bench.material(i).form).name),
          before,
          after: done.after,
        }
      : undefined;
    const telling: Telling = {
      say: (look) =>
        led !== undefined
          ? leading(bench, i, look, led)
          : stage === undefined && i !== speaker && alike(i)
            ? alsoAdding(bench, i)
            : dissolves
              ? intoAcid(bench, i, done)
              : adding(bench, i, look, { isLast: speaks, warmest, warms, gone: inAcid?.gas }),
      ...(hasVessel(bench, i) ? {} : { materials: [bench.name(i)], amounts: [bench.frame.portions[i]!] }),
      ...(isLast && isClosed(bench) && bench.frame.feeds[i]!.how !== "solid" && !isLedIn(bench.material(i))
        ? { apparatus: "dropping funnel" as const }
        : isLast && meetsCyanide(setting)
          ? { apparatus: "fume hood" as const }
          : {}),
      atHand: (look) => [
        ...(led !== undefined && stopsByPaper(bench, i, led) ? ["indicator paper" as const] : []),
        ...(isWettedFirst(bench.material(i)) ? ["washing-up liquid" as const] : []),
        ...(led === undefined && isLast && coolsBetween(bench, i, look) ? ["cold-water bath" as const] : []),
      ],
      from: own,
      adds: !hasVessel(bench, i) && !bench.material(i).isSolution ? "solid" : "liquid",
      ...(isLast || (giving && (!dissolves || gases.length > 0)) ? { care: "mixing" as const } : {}),
      ...(isLast ? { limit: (look: Look) => look.additionRate?.leastTime } : {}),
    };
    bench.did(POT, done, telling);
    if (led !== undefined) gasIsIn(bench, i, led);
    if (isLast) driveOut(bench, gases);
    if (free !== undefined) driveAmmonia(bench);
    caught();
    if (giving)
      bench.did(POT, hold(bench.pot), {
        say: () =>
          dissolves
            ? `Stir until the ${bench.name(i)} has dissolved${inAcid.gas === undefined ? "" : " and no more gas rises"}, and filter it if it is not clear: what does not dissolve would be in the product. Only then comes the metal.`
            : `Let it stand until no more gas rises and the ${bench.name(i)} has gone into solution, warming at the end if it has become slow; if it is not clear, filter it through glass wool or synthetic cloth, for lye eats paper, and rinse that with a little water: what the metal has beside it would dissolve in the acid. Only then comes the acid.`,
      });
  });
  if (rest.length === 0 || isLedLast) {
    putCatalyst(bench);
    alone(bench, reactions, settle);
  }
  bench.reacted = bench.pot;
  bench.liquor = bench.pot;
  const { before, put } = bench.drafts.filter(({ vessel }) => vessel === POT).at(-1)!;
  bench.mixed = put.reduce((all, one) => all.plus(one.mass), before.mass);
  putAsides(bench, "charcoal");
}

/** Share of oxygen in air. */
const OXYGEN = "0.209";

/** What no material brings: led in as gas, or simply missing on the table. */
const bringing = (bench: Bench, matter: Matter, amount: Quantity): string =>
  isOneOf(matter.formula, "O2")
    ? `Draw air through it, or stir it in the open, until it is done: it uses ${litres(gasInRoom(bench, amount))} of oxygen, which is in ${litres(gasInRoom(bench, amount).dividedBy(exact(OXYGEN)))} of air.`
    : isGas(matter.formula, false)
      ? `Lead in ${litres(gasInRoom(bench, amount))} of ${matter.name} (${about(amount, "mol")}), until no more is absorbed${escapes(matter.formula)}.`
      : `Add ${about(amount, "mol")} of ${matter.name}, which no material of the plan brings.`;

/** Nothing else is put in: what the air or a gas brings, or only the water. */
function alone(bench: Bench, reactions: readonly Reaction[], settle: (pot: Pot) => Pot): void {
  const { setting } = bench.frame;
  const airs = reactions.flatMap(({ terms }) => terms).filter(({ whereto, count }) => whereto === "air" && count < 0n);
  const changes = setting.reactants.some(
    ({ formula }) => !setting.products.some((other) => other.formula.hasSameComposition(formula)),
  );
  if (!changes) return;
  if (airs.length === 0 && reactions.every(({ terms }) => terms.every(({ whereto }) => whereto !== "gas"))) {
    bench.amend(settle(withOtherSolids(bench, bench.pot, reactions).pot));
    return;
  }
  const outcome = withOtherSolids(bench, bench.pot, reactions);
  const caught = trapsFor(bench, gasesIn(outcome));
  const done = added(bench.pot, Pot.empty(setting.temperature, setting.pressure), outcome, settle);
  bench.did(POT, done, {
    care: "mixing",
    say: () =>
      airs.length === 0
        ? "Stir until the reaction has ended."
        : airs.map(({ matter, count }) => bringing(bench, matter, bench.frame.account.extent.times(-count))).join(" "),
  });
  caught();
}
