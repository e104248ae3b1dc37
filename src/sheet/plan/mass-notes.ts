// What a mass does not tell by itself: a feed that weighs less than what is made of it, a solid that is not oxidised all the way, and a neighbour that only acid tells.
import { lessOxidised, splitByAcid } from "../../preparation/internal";
import { about } from "../figures";
import { filled } from "../words";
import { bare, handFor, type OnPaper } from "./context";

/** What a mass means where a feed is stirred in as a solid and weighs less than the precipitate made of it: it would not show. */
export function ifFeedReacted(on: OnPaper, means: string): string {
  const { plan, words } = on;
  if (plan.isolation.how !== "precipitate") return means;
  const feed = plan.feeds.find((one) => one.how === "solid" && !one.dissolves);
  const own = plan.weighings.find(({ material }) => material === feed?.material);
  if (own?.portion.dimension !== "mass" || own.portion.compare(plan.product.theoreticalYield) >= 0) return means;
  return filled(words.lighterFeed, { means, formula: own.form, mass: handFor(on).grams(own.portion) });
}

/** What acid leaves of a sample, where that tells the product from its neighbours. */
export function acidRows({ plan, words }: OnPaper): string[][] {
  const split = splitByAcid(plan);
  if (split === undefined) return [];
  const { acid, metal, left, none } = split;
  return [
    [
      filled(words.acidLeaves, { share: about(left, "%", 2) }),
      filled(words.acidTells, { formula: plan.product.formula, acid, metal, none }),
    ],
  ];
}

/** What is not oxidised all the way, where it weighs about as much as the product. */
export function lessOxidisedRows(on: OnPaper): string[][] {
  const { plan, words } = on;
  const less = lessOxidised(plan);
  if (less === undefined) return [];
  const { grams } = handFor(on);
  const formula = less.formulas.reduce((one, other) => filled(words.or, { one, other }));
  const found = filled(words.within, { low: bare(grams(less.least)), high: grams(less.most) });
  return [[found, filled(words.untoldByMass, { formula })]];
}
