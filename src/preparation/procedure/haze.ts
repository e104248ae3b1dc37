// A hydroxide that the acid after the lye takes again: whether the liquor is clear is seen hot, where the product would come out cold.
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { HAZE_HOT } from "../data/with-lye";
import type { Bench } from "./bench";
import { solutesOf } from "./coming";
import { isByLye } from "./roles";
import { saturatedAt } from "./settling";

/** Is the liquor warmed before anybody can say whether hydroxide is left in it? */
export function isClearedHot({ pot, frame: { setting, roles, crystallising } }: Bench): boolean {
  if (!isByLye(setting, roles) || crystallising === undefined || crystallising.asItForms) return false;
  if (pot.books.temperature.compare(crystallising.hot) >= 0) return false;
  const { own } = solutesOf(pot, matterOf(setting.product.formula));
  const keeps = own && saturatedAt(own.matter, setting.temperature)?.perGram;
  if (own === undefined || keeps === undefined) return false;
  const dry = massOf({ matter: own.matter.core, amount: own.amount }).toNumber("g");
  return dry > keeps * pot.books.water.toNumber("g");
}

/** What is waited for as it is warmed, after "stirring". */
export const untilClearHot = (bench: Bench): string =>
  isClearedHot(bench)
    ? ` until the white hydroxide that forms at first has dissolved again; only a haze that stays ${HAZE_HOT.time} there goes with a few drops more of the acid, for colder the white may be ${bench.frame.setting.product.name}`
    : "";
