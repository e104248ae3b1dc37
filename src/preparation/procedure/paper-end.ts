// The end of a neutralisation by paper: what it should show, what keeps it from showing that, and what brings the liquor there.

import { isOneOf } from "../../ion/internal";
import { madeOf } from "../../substance/internal";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { exact, isFromRounding } from "../planning/exact";
import { isAmmonia, isLye } from "../reaction/acids";
import { isGas } from "../reaction/fluids";
import type { Material } from "../shelf/material";
import type { Bench } from "./bench";
import { isAcidSalt, isSourSalt } from "./kind";
import { spoiltByBoiling } from "./not-warm";
import { onPaper } from "./paper";
import type { Role } from "./roles";
import { gasesIn } from "./trap";

/** How much alkalinity makes paper wait for the carbon dioxide to go. */
const ALKALINE = "7.5";

/** The vessel without what only the step of the balance put over: at the point of equivalence that alone would set the pH. */
export const asMeant = ({ pot, frame: { setting, account } }: Bench): Pot =>
  setting.materials.reduce((all, { form }, i) => {
    const { left, excess } = account.supplied[i]!;
    if (!left.isPositive() || !isFromRounding(excess)) return all;
    const { core } = matterOf(form);
    const there = all.books.dissolved.find(({ matter }) => matter.key === core.key);
    return there === undefined || there.amount.compare(left) < 0 ? all : all.minus(core, left);
  }, pot);

/** What brings a liquor to its pH, where all is dissolved, or some of the base stays over on purpose; nothing elsewhere. */
export function toCorrect(bench: Bench): string {
  const { pot, frame } = bench;
  const { setting, roles, account } = frame;
  const { materials } = setting;
  const at = (...of: readonly Role[]): number => materials.findIndex((_, i) => of.includes(roles[i]!));
  const own = at("acid");
  const acid = own < 0 ? materials.findIndex(({ form }) => isSourSalt(form)) : own;
  const base = at("base", "gas-giving base");
  if (acid < 0 || base < 0 || acid === base) return "";
  const name = (i: number): string => materials[i]!.shelf.name;
  const isOver = (i: number): boolean => !isFromRounding(account.supplied[i]!.excess);
  const { solids } = pot.books;
  if (solids.length > 0) {
    const { key } = matterOf(materials[base]!.form).core;
    return isOver(base) &&
      frame.isolation.how === "crystallise" &&
      solids.every(({ matter }) => matter.core.key === key)
      ? `; where it is lower, ${givesCarbonDioxide(bench) ? "warm it until no more bubbles rise, for carbon dioxide in it is an acid, and test again; " : ""}more of the ${name(base)} only where none of it is left undissolved`
      : "";
  }
  // of what was to be in excess there may be too little all the same
  const more = isHeldBack(bench, base) ? "of what was held back" : `more of the ${name(base)}`;
  if (isOver(base))
    return `; where it is acid a little ${more} is needed, where it is more than 1 higher a little more of the ${name(acid)}`;
  return isOver(acid)
    ? `; where it is alkaline a little more of the ${name(acid)} is needed`
    : `; where it is more than 1 higher a little more of the ${name(acid)} is needed, where it is more than 1 lower of the ${name(base)}`;
}

/** The base without which a precipitate of its other partners stays dissolved, and what paper shows once enough of it is in; undefined where no paper tells. */
export function baseOnPaper(bench: Bench, tested: Material | undefined) {
  const { materials, product, temperature } = bench.frame.setting;
  const base = materials.find((one) => one !== tested && (isAmmonia(one.form) || isLye(one.form)));
  // a salt that brings hydrogen in gives its anion only to a base
  const isFreed = materials.some(({ form }) => isAcidSalt(form)) && !isAcidSalt(product.formula);
  const found =
    !isFreed || tested === undefined || base === undefined ? undefined : onPaper(asMeant(bench).at(temperature));
  return found === undefined || found.pH.compare(exact(ALKALINE)) <= 0
    ? undefined
    : {
        pH: found.pH,
        text: ` Paper shows about pH ${found.shown}${found.thinned ? " of a drop of it in nine drops of water" : ""}: lower by more than 1, stir in a little more of the ${base!.shelf.name}, for without it much of the product stays dissolved though no drop shows it.`,
      };
}

/** What paper should show, as near as paper shows it. */
export function toExpect(found: ReturnType<typeof onPaper>, fizzes: boolean): string {
  if (found === undefined) return "note the pH";
  const { pH, shown, thinned } = found;
  const of = thinned ? " of a drop of it in nine drops of water" : "";
  return fizzes && pH.compare(exact(ALKALINE)) > 0
    ? `about pH 6 to 7 while carbon dioxide is in it, ${shown} once that has gone, note the pH${of}`
    : `about pH ${shown} is expected${of}, note the pH`;
}

/** Carbon dioxide leaves it as it is neutralised. */
export const givesCarbonDioxide = ({ drafts }: Bench): boolean =>
  drafts.flatMap(gasesIn).some(({ matter }) => isOneOf(matter.formula, "CO2"));

/**
 * How a sample is tested that carbon dioxide must have left, or paper shows it as well: boiled where heat does the product no harm and
 * drives nothing else out; empty where there is none to wait for.
 */
export function withoutGas(bench: Bench, { pH }: NonNullable<ReturnType<typeof onPaper>>): string {
  const { pot, frame } = bench;
  const { formula } = frame.setting.product;
  const stays = pH.compare(exact(ALKALINE)) > 0 && givesCarbonDioxide(bench) && pot.books.solids.length === 0;
  const isChanged = spoiltByBoiling(formula) !== undefined || madeOf(formula).ammonium;
  return stays && !isChanged
    ? " a little of it that has boiled for a minute (carbon dioxide that stays dissolved makes it read lower) and cooled,"
    : "";
}

/** The last of a base is held back until paper shows the pH: an acid salt takes an excess of it up as another salt, or keeps it beside. */
export function isHeldBack({ frame: { setting, roles, account, isolation } }: Bench, i: number): boolean {
  const { form } = setting.materials[i]!;
  const isBase = roles[i] === "base" || roles[i] === "gas-giving base";
  return (
    isBase &&
    roles.includes("acid") &&
    isAcidSalt(setting.product.formula) &&
    isolation.how === "crystallise" &&
    !isGas(form, false) &&
    !isFromRounding(account.supplied[i]!.excess)
  );
}
