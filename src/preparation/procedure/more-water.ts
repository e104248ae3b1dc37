// When a hot solution gets more water than what just dissolves the product: where it is filtered, or would pass through the change
// of a hydrate with its crystals coming.

import type { Formula } from "../../formula";
import { constitutionOf } from "../../ion";
import type { Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import { exact, planned } from "../planning/exact";
import type { Account } from "../reaction/account";
import { isAcid, isMetal } from "../reaction/acids";
import { changeAbove } from "../reaction/change-of-solid";
import { fateOf } from "../reaction/fate";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { isEvaporated } from "./not-warm";
import { isKeptCovered } from "./protection";
import { saturatedAt } from "./settling";

type Temperature = Quantity<"temperature">;

/** Something that is in the packs besides goes on the filter, and nothing is boiled down after that: the salts dissolve and crystallise. */
const isFilteredSaturated = ({ materials, reactants, products }: Setting): boolean =>
  reactants.length === 1 &&
  products.length === 1 &&
  materials.some(({ shelf, also }) => shelf.assay !== undefined || also.length > 0);

/** Metal that is left over stays in a liquor that air changes until it is filtered, and nothing is boiled down after that. */
const standsOnMetal = ({ materials, product }: Setting, { supplied }: Account): boolean =>
  isKeptCovered(product.formula) && materials.some(({ form }, i) => isMetal(form) && supplied[i]!.excess.isPositive());

/**
 * Metal, or a base that hardly dissolves, is over its acid, or just meets one so weak that some of it may stay: it goes on the hot filter.
 */
function leavesSolid({ materials, temperature }: Setting, { supplied }: Account): boolean {
  const isOver = (i: number): boolean => supplied[i]!.excess.compare(planned("asGoodAsNone")) > 0;
  const justMeets = ({ form }: Material, i: number): boolean =>
    isAcid(form) && constitutionOf(form).acid?.strong !== true && !isOver(i);
  return materials.some(({ form }, i) =>
    isMetal(form)
      ? isOver(i)
      : fateOf(form, temperature).precipitated === true && (isOver(i) || materials.some(justMeets)),
  );
}

/** Is a liquor of a salt filtered near the boil: water keeps more of it there, and heat does no harm? */
export function isFilteredNearTheBoil(formula: Formula, hot: Temperature): boolean {
  const matter = matterOf(formula);
  const keeps = (at: Temperature): number => saturatedAt(matter, at)?.perGram ?? 0;
  const boil = planned("nearTheBoil") as Temperature;
  return !isEvaporated(formula) && keeps(boil) >= planned("keepsMore").toNumber("") * keeps(hot);
}

/** How hot a salt is dissolved to be crystallised again: a sparing one near the boil, where that keeps more of it as the same solid. */
export function hotToPurify(formula: Formula): Temperature {
  const [hot, boil] = [planned("hot"), planned("nearTheBoil")] as [Temperature, Temperature];
  const matter = matterOf(formula);
  const [own, top] = [hot, boil].map((at) => saturatedAt(matter, at));
  const isSparing = own?.perHundredGramsWater.compare(planned("sparingBelow")) === -1;
  return isSparing && own?.solid.key === top?.solid.key && isFilteredNearTheBoil(formula, hot) ? boil : hot;
}

/** Times the least hot water with which the liquor is saturated only so far below its hot filter; undefined without figures. */
function belowTheFilter(formula: Formula, hot: Temperature, by: "belowFilter" | "onMetal"): number | undefined {
  const matter = matterOf(formula);
  const [top, lower] = [hot, hot.minus(planned(by)) as Temperature].map((at) => saturatedAt(matter, at)?.perGram);
  return top === undefined || lower === undefined ? undefined : top / lower;
}

/**
 * Times the least hot water of a liquor that is filtered from something and not boiled down after that, the most first: what it may
 * cool by in the funnel, and what may steam off. Near the boil, where it keeps more, the filter has that room without.
 */
export function forTheFilter(setting: Setting, account: Account, hot: Temperature): readonly number[] {
  const { formula } = setting.product;
  const least = planned("hotFilter").toNumber("");
  if (isFilteredSaturated(setting)) return [Math.max(least, belowTheFilter(formula, hot, "belowFilter") ?? 1), least];
  if (!standsOnMetal(setting, account) || isFilteredNearTheBoil(formula, hot)) return [];
  return [Math.max(1, belowTheFilter(formula, hot, "onMetal") ?? 1)];
}

/** The same of a liquor that is filtered from what is over and boiled down only after that: it may have water enough for the filter. */
export function beforeBoilingDown(setting: Setting, account: Account, hot: Temperature): number {
  const { formula } = setting.product;
  const isAfter = leavesSolid(setting, account) && !standsOnMetal(setting, account);
  if (!isAfter || isFilteredNearTheBoil(formula, hot)) return 1;
  return Math.max(1, belowTheFilter(formula, hot, "belowFilter") ?? 1);
}

/**
 * Times the least hot water with which the hydrate that is asked for is the first to crystallise: saturated only below its change
 * into one with less water. 1 where no change is between, or what dissolves hot stays dissolved down to it.
 */
export function belowItsChange(formula: Formula, hot: Temperature, cold: Temperature): number {
  const own = changeAbove(formula);
  if (own === undefined) return 1;
  const at = exact(`${own.celsius} °C`) as Temperature;
  if (at.compare(cold) <= 0 || at.compare(hot) >= 0) return 1;
  const matter = matterOf(formula);
  const [top, change] = [hot, at].map((one) => saturatedAt(matter, one)?.perGram);
  if (top === undefined || change === undefined || top <= change) return 1;
  const safe = saturatedAt(matter, at.minus(planned("underChange")) as Temperature)?.perGram;
  return safe === undefined ? 1 : top / safe;
}
