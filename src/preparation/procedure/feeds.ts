// The feeds of a batch together: salts that share one hot water, and the water that the liquor has to have at the end.

import { molarMass } from "../../formula";
import { type Quantity, sum } from "../../quantity";
import type { DissolvingWater } from "../../solubility";
import { exact, planned } from "../planning/exact";
import type { Account } from "../reaction/account";
import { isAcid } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { isGas, isLedIn } from "../reaction/fluids";
import { waterOfReaction } from "../reaction/water-of-reaction";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { asItReacts } from "./as-it-reacts";
import { baseBeforeSalt } from "./base-in-acid";
import { crystalWaterOf, type Feed, type Feeding, waterToAdd } from "./feed";
import { keepsMuch, leastWater } from "./feed-dissolved";
import { fallingFeed } from "./feed-falling";
import { AT_THE_END, withMore } from "./feed-more";
import { feedOf, isOxidisingAcid } from "./feed-single";
import { notWarmOf } from "./not-warm";
import { inOrder, ranksOf } from "./ranks";
import { isStated } from "./stated-water";

/** Water that a feed brings beside crystal water. */
function waterOf(feed: Feed): Quantity | undefined {
  if (feed.how === "dissolve") return feed.dissolving.water;
  if (feed.how === "unknown" || feed.how === "solid") return feed.water;
  return feed.dilution === undefined ? feed.water : feed.water?.plus(feed.dilution.water);
}

/** A feed as it was weighed, in the water that was planned. */
function withWaterOf(plan: Feed, now: Feed): Feed {
  if (plan.how === "dissolve" && now.how === "dissolve") {
    const { water } = plan.dissolving;
    const more = water.minus(now.dissolving.water);
    const totalWater = now.dissolving.totalWater.plus(more) as Quantity<"mass">;
    const shares = plan.shares === true ? { shares: true as const } : {};
    return {
      ...now,
      ...(plan.alike === undefined ? {} : { alike: plan.alike }),
      why: plan.why,
      by: plan.by ?? [],
      at: plan.at,
      dissolving: { ...now.dissolving, water, totalWater },
      ...shares,
    };
  }
  if (plan.how === "unknown" && now.how === "unknown") return { ...now, water: plan.water };
  if (plan.how === "solid") return plan;
  return plan.how === "solution" && now.how === "solution" ? { ...now, dilution: plan.dilution } : now;
}

/** Why a feed has the water of the whole pot, or none of its own. */
const SHARED = "one hot water for all that goes into the pot";

/** Water that dissolves each of the other salts that form, hot unless it is said how warm: it is clear only then. */
const swapped = (
  { products, product, temperature: cold }: Setting,
  { formed }: Account,
  at = planned("hot") as Quantity<"temperature">,
): Quantity[] =>
  products.flatMap(({ formula, isWater }, i) => {
    if (products[i] === product || isWater || isGas(formula, true)) return [];
    const { mass } = formed[i]!;
    // what precipitates is filtered off, and until then it must be stirred
    if (fateOf(formula, cold).precipitated === true) return [mass.times(planned("stirredSolids")).to("g")];
    const least = leastWater(formula, mass, at);
    return least === undefined ? [] : [least.totalWater];
  });

const mostOf = (waters: readonly Quantity[]): Quantity =>
  waters.reduce((most, one) => (one.compare(most) > 0 ? one : most));

/** Water that keeps the other salts dissolved where strong feeds make a precipitate. */
const besidePrecipitate = ({ setting, account, precipitates, mixedHot }: Feeding): Quantity[] =>
  precipitates && keepsMuch(setting.product.formula)
    ? swapped(setting, account, mixedHot ?? setting.temperature).map((water) => water.times(planned("coldWaterFactor")))
    : [];

/** Does a pack bring along what stays on the hot filter? */
const leavesOnFilter = ({ materials, temperature }: Setting): boolean =>
  materials.some(({ also }) => also.some(({ form }) => fateOf(form, temperature).precipitated === true));

/** Salts that go hot into one pot share its water: as much as the one that needs most, or as what is to crystallise. */
function sharing(
  feeds: readonly Feed[],
  { setting, account, roles, crystals, cold, target, alike }: Feeding,
): readonly Feed[] {
  if (!crystals || cold || setting.request.waterFactor !== undefined) return feeds;
  const { materials } = setting;
  const ranks = ranksOf(setting, roles);
  const order = inOrder(setting, ranks, (i) => feeds[i]!.how === "solid");
  const first = ranks[order[0]!];
  const isIn = (i: number): boolean => {
    const feed = feeds[i]!;
    const { dissolve } = materials[i]!.shelf;
    return ranks[i] === first && feed.how === "dissolve" && dissolve === undefined;
  };
  const group = order.filter(isIn);
  // Where a solution is there first, its water is not theirs alone.
  if (group.length < 2 || group[0] !== order[0]) return feeds;
  const dissolving = (i: number): DissolvingWater => (feeds[i] as Extract<Feed, { how: "dissolve" }>).dissolving;
  // what just dissolves a salt leaves some of it on a filter, with what is filtered off; boiled down it is after that
  const isFiltered = leavesOnFilter(setting);
  const over = isFiltered ? planned("hotFilter") : exact("1");
  const needs = [
    ...group.map((i) => (dissolving(i).totalWater as Quantity).times(over)),
    ...swapped(setting, account),
    ...(target === undefined ? [] : [target]),
  ];
  const total = mostOf(needs);
  const crystal = sum(group.map((i) => crystalWaterOf(materials[i]!, account.supplied[i]!.amount)));
  const water = total.minus(crystal).to("g");
  if (!water.isPositive()) return feeds;
  const why = target !== undefined && total.compare(target) === 0 ? AT_THE_END : SHARED;
  return feeds.map((feed, i): Feed => {
    if (feed.how !== "dissolve" || !group.includes(i)) return feed;
    const own =
      i === group[0]
        ? waterToAdd(
            water,
            "water to add = the most that a salt of the pot needs, or what is to crystallise, less crystal water",
          )
        : (exact("0 g") as Quantity<"mass">);
    const totalWater = (i === group[0] ? water.plus(crystal) : exact("0 g")) as Quantity<"mass">;
    return {
      ...feed,
      why,
      by: why === SHARED && !isFiltered ? ["hotWaterFactor"] : [],
      shares: true,
      ...(i === group[0] && alike !== undefined ? { alike } : {}),
      dissolving: { ...feed.dissolving, water: own, totalWater, meltsInOwnWater: false },
    };
  });
}

/** Solids alone: the first is stirred into the water that the liquor is to have at the end, or that keeps it moving. */
function stirredIn(feeds: readonly Feed[], { setting, account, roles, portions, target }: Feeding): readonly Feed[] {
  const { materials, reactants, products } = setting;
  const first = inOrder(setting, ranksOf(setting, roles), () => true).find(
    (i) => target !== undefined || !isLedIn(materials[i]!),
  );
  if (first === undefined || feeds[first]!.how !== "solid") return feeds;
  const solid = target === undefined ? materials[first]!.massOf(portions[first]!) : undefined;
  const wanted = target ?? solid?.times(planned("slurry"));
  const water = wanted?.minus(waterOfReaction(materials, account, reactants, products)).to("g");
  if (water === undefined || !water.isPositive()) return feeds;
  const rule =
    target === undefined
      ? "water to add = what keeps so much of a solid moving"
      : "water to add = what the liquor needs at the end less all other water";
  return feeds.map((feed, i) =>
    i === first && feed.how === "solid" ? { ...feed, water: waterToAdd(water, rule) } : feed,
  );
}

/** The feeds of a run: what nothing changed is as planned, and the rest has the water of the plan unless its own was measured. */
const feedsOfRun = (plan: NonNullable<Feeding["planned"]>, feeding: Feeding): readonly Feed[] =>
  feeding.setting.materials.map((material, i) => {
    if (plan.same(i)) return plan.feeds[i]!;
    const now = feedOf(material, i, feeding);
    return plan.isMeasured(i) ? now : withWaterOf(plan.feeds[i]!, now);
  });

/** How much more water the liquor needs at the end than the feeds bring; zero or less where they bring enough. */
function waterWanting(brought: Quantity, feeding: Feeding): Quantity {
  const { setting, account, target } = feeding;
  const { materials, reactants, products, product } = setting;
  // A reaction that binds the water leaves some of it liquid all the same.
  const wanted = target ?? mostOf([brought.times(planned("staysLiquid")), ...besidePrecipitate(feeding)]);
  // The target is the water before crystals come: what they will bind is still liquid then.
  const bound =
    target === undefined
      ? exact("0 g")
      : account.extent.times(product.coefficient).times(product.waters).times(molarMass("H2O")).to("g");
  return wanted.minus(sum([brought, bound, waterOfReaction(materials, account, reactants, products)])).to("g");
}

/** An acid that does the same in more water. */
const isThinned = (material: Material, setting: Setting): boolean =>
  isAcid(material.form) && !isOxidisingAcid(material, setting);

/**
 * A product that comes out cold as it forms, and is kept by the more of it the more water there is: of two salts the one that needs
 * most water to dissolve is stirred into the solution of the other.
 */
function intoTheOther(
  feeds: readonly Feed[],
  { setting: { product, materials }, crystals, roles }: Feeding,
): readonly Feed[] {
  if (!crystals || notWarmOf(product.formula)?.asItForms !== true) return feeds;
  const isSalt = (i: number): boolean => roles[i] === "salt" || roles[i] === "metal salt";
  const waters = feeds.map((feed, i) =>
    feed.how === "dissolve" && isSalt(i) && !isStated(materials[i]!) ? feed.dissolving.totalWater : undefined,
  );
  const own = waters.filter((one) => one !== undefined);
  if (own.length < 2) return feeds;
  const at = waters.indexOf(mostOf(own) as (typeof own)[number]);
  const why = "it is stirred in as a solid: its own water would keep more of the product";
  return feeds.map(
    (feed, i): Feed => (i === at ? { material: feed.material, how: "solid", why, dissolves: true } : feed),
  );
}

/** A salt that comes to a hot liquor which has water enough for the crystals of both: as it is. */
function intoHotLiquor(feeds: readonly Feed[], { setting, target }: Feeding): readonly Feed[] {
  const salt = baseBeforeSalt(setting)?.salt;
  if (salt === undefined || target === undefined || isStated(setting.materials[salt]!)) return feeds;
  const why = "it dissolves in the hot liquor: its own water would be boiled off again";
  return feeds.map(
    (feed, i): Feed =>
      i === salt && feed.how === "dissolve" ? { material: feed.material, how: "solid", why, dissolves: true } : feed,
  );
}

/** The feeds, with as much more water as the liquor needs at the end. */
export function feedsOf(feeding: Feeding): readonly Feed[] {
  const { setting } = feeding;
  if (feeding.planned !== undefined) return feedsOfRun(feeding.planned, feeding);
  const single = sharing(
    setting.materials.map((material, i) => feedOf(material, i, feeding)),
    feeding,
  ).map((feed, i) => fallingFeed(feed, setting.materials[i]!, i, feeding));
  const feeds = asItReacts(intoTheOther(intoHotLiquor(single, feeding), feeding), feeding);
  const waters = feeds.map(waterOf).filter((q) => q !== undefined);
  if (waters.length === 0) return setting.wet ? stirredIn(feeds, feeding) : feeds;
  const more = waterWanting(sum(waters), feeding);
  if (!more.isPositive()) return feeds;
  // Water that a strong solution is poured into comes first. Of salts that share a hot water the first has all of it.
  // What the request says of the water of a feed stands.
  const isOpen = (i: number): boolean => !isStated(setting.materials[i]!);
  const strong = feeds.findIndex((feed, i) => isOpen(i) && feed.how === "solution" && feed.dilution !== undefined);
  const takes = (feed: Feed, i: number): boolean =>
    isOpen(i) &&
    (feed.how === "unknown" ||
      (feed.how === "solid" && feed.reacts === true) ||
      (feed.how === "dissolve" && (feed.shares !== true || feed.dissolving.water.isPositive())));
  const own = strong >= 0 ? strong : feeds.findIndex(takes);
  // Where nothing else takes water, what is poured as it is is diluted with it.
  const poured = feeds.findIndex(
    (feed, i) =>
      isOpen(i) && feed.how === "solution" && feed.water !== undefined && isThinned(setting.materials[i]!, setting),
  );
  const at = own >= 0 || feeding.target === undefined ? own : poured;
  return feeds.map((feed, i) => (i === at ? withMore(feed, i, more, feeding) : feed));
}
