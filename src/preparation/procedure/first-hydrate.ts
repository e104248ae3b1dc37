// Which hydrate a liquor gives first that is made above a change of hydrate: saturated only below it, the one that is asked for.

import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { type Matter, matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { exact, planned } from "../planning/exact";
import { changeAbove } from "../reaction/change-of-solid";
import { formulaFrom } from "../reaction/species";
import type { Bench } from "./bench";
import { solutesOf } from "./coming";
import type { Crystallising } from "./crystallising";
import { isRecrystallised } from "./kind";
import { saturatedAt } from "./settling";
import { celsius } from "./words";

type Cooled = Pick<Crystallising, "hot" | "cold">;

/** A change of hydrate on the way of a liquor from hot to cold. */
interface OnTheWay {
  readonly at: Quantity<"temperature">;
  /** The hydrate above it, as printed. */
  readonly above: string;
  /** What is dissolved, as a part of what the liquor keeps there. */
  readonly fullness: number;
}

/** The change that a liquor passes as it cools; undefined where none is known on its way. */
function changeOnTheWay(pot: Pot, product: Matter, { hot, cold }: Cooled): OnTheWay | undefined {
  const change = changeAbove(product.formula);
  if (change?.above === undefined) return undefined;
  const at = exact(`${change.celsius} °C`) as Quantity<"temperature">;
  if (at.compare(cold) <= 0 || at.compare(hot) >= 0) return undefined;
  const { own } = solutesOf(pot, product);
  const figure = saturatedAt(product, at);
  if (own === undefined || figure === undefined) return undefined;
  const dry = massOf({ matter: own.matter.core, amount: own.amount }).toNumber("g");
  const fullness = dry / (figure.perGram * pot.books.water.toNumber("g"));
  return { at, above: formulaFrom(change.above).toUnicode(), fullness };
}

/** The solid that comes first from a liquor which is saturated above a change of hydrate, in words; nothing where none does. */
export function comesFirstAs(pot: Pot, crop: Matter, way: Cooled): string {
  const change = changeOnTheWay(pot, crop, way);
  return change === undefined || change.fullness <= 1 + planned("littleMore").toNumber("")
    ? ""
    : `; what comes above ${celsius(change.at)} is ${change.above}, which turns slowly: leave it in its liquor below that, stirred now and then, for some hours or overnight, before it is filtered`;
}

/** What a liquor would give first with less water, where it has no more than keeps that dissolved, in words; undefined otherwise. */
export function withLessWater(pot: Pot, product: Matter, way: Cooled): string | undefined {
  const change = changeOnTheWay(pot, product, way);
  if (change === undefined) return undefined;
  const isOver = change.fullness > 1 + planned("littleMore").toNumber("");
  return isOver || change.fullness < planned("nearlySaturated").toNumber("")
    ? undefined
    : `with less water ${change.above} would crystallise first, above ${celsius(change.at)}`;
}

/** Why a salt that is recrystallised has no less water, in words. */
export function keepsItsWater({ frame: { crystallising, setting } }: Bench, pot: Pot): string {
  if (crystallising === undefined || !isRecrystallised(setting.reactants, setting.products)) return "";
  const less = withLessWater(pot, matterOf(setting.product.formula), crystallising);
  return less === undefined ? "" : `; boil none of it off: ${less}`;
}
