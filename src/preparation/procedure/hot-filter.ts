// How a hot liquor is filtered, so that nothing crystallises in the funnel.

import type { Formula } from "../../formula";
import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { exact, planned } from "../planning/exact";
import type { Bench } from "./bench";
import { solutesOf } from "./coming";
import { isFilteredNearTheBoil } from "./more-water";
import { saturatedAt } from "./settling";
import { celsius } from "./words";

type Temperature = Quantity<"temperature">;

/** How a liquor that is nearly saturated comes through a filter. */
export interface HotFilter {
  /** Where it is filtered, in words. */
  readonly at: string;
  /** What the contents weigh with the water that has steamed off put in again. */
  readonly target: Quantity;
}

/** Nothing where there is water enough, or no figure tells. */
export function nearlySaturated({ pot, frame }: Bench, hot: Temperature): HotFilter | undefined {
  const { formula } = frame.setting.product;
  const { books } = pot;
  const matter = matterOf(formula);
  const { own } = solutesOf(pot, matter);
  const keeps = saturatedAt(matter, hot)?.perGram;
  if (own === undefined || keeps === undefined || books.waterMissing.length > 0) return undefined;
  if (hot.compare(planned("feelsHot")) <= 0) return undefined;
  const dry = massOf({ matter: own.matter.core, amount: own.amount }).toNumber("g");
  const most = keeps * books.water.toNumber("g");
  if (dry < planned("nearlySaturated").toNumber("") * most) return undefined;
  return { at: filterWarmth(formula, hot), target: pot.mass };
}

/** How hot a liquor of a salt is filtered, in words. */
export function filterWarmth(formula: Formula, hot: Temperature): string {
  const boil = planned("nearTheBoil") as Temperature;
  const from = boil.minus(exact("5 Δ°C")) as Temperature;
  return isFilteredNearTheBoil(formula, hot) ? `${celsius(from).replace(" °C", "")} to ${celsius(boil)}` : celsius(hot);
}
