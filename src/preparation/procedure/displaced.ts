// A metal that displaces another: how it hangs in the liquor, and how the end shows.

import { isOneOf } from "../../ion/internal";
import { matterOf } from "../contents/matter";
import { METAL_GONE, SALT_GONE, STAYS_IN_NITRIC_ACID } from "../data/ends";
import { isFromRounding } from "../planning/exact";
import type { Supplied } from "../reaction/account";
import { isAcid, isMetal } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { isInLongPieces, isInPieces, isPowder } from "../shelf/pieces";
import { acidTakes } from "./acid-takes";
import type { AtHand } from "./at-hand";
import { baseInAcid } from "./base-in-acid";
import type { Bench } from "./bench";
import { kindOf } from "./kind";

/** Does a strip of this metal hang in the liquor whose metal it displaces? */
export const isHung = (setting: Setting, material: Material): boolean =>
  isMetal(material.form) && isInLongPieces(material) && kindOf(setting) === "displacement";

/** Is metal hung into the liquor? */
export const hangsMetal = (setting: Setting): boolean => setting.materials.some((one) => isHung(setting, one));

/** What becomes of powder of a metal that is over; pieces are lifted out in a step of their own. */
const powderLeft = (bench: Bench, i: number): string =>
  acidTakes(bench.frame.setting, i) === undefined && !isInPieces(bench.material(i))
    ? " and lift them out; what is left as powder stays in the product"
    : "";

/** A feed of which hardly any is dissolved at a time: its liquor tells nothing of the end. */
const sparingFeed = (setting: Setting): Material | undefined =>
  baseInAcid(setting) === undefined
    ? setting.materials.find(({ form }) => !isMetal(form) && fateOf(form, setting.temperature).precipitated === true)
    : undefined;

/** Salt of the product's metal that is in excess on purpose: some stays in the liquor, and a bright piece of the other metal never stays bright. */
export const isSaltOver = ({ product, materials }: Setting, supplied: readonly Pick<Supplied, "excess">[]): boolean =>
  materials.some(
    ({ form }, i) =>
      !isMetal(form) &&
      product.metals.some(({ symbol }) => form.count(symbol).n !== 0n) &&
      !isFromRounding(supplied[i]!.excess),
  );

/** How it shows that all of the added metal is gone, where it is the last of it that counts. */
export function signOfMetalGone(setting: Setting, i: number): string {
  const { name } = matterOf(setting.product.formula);
  const test = acidTakes(setting, i) === undefined ? "" : `, and a bit of the ${name}, washed, ${METAL_GONE.test}`;
  return `lumps broken up with the rod show none of the ${setting.materials[i]!.shelf.name} inside${test}`;
}

/** The end where the salt is over: what was added of the metal is gone. */
function endOfMetal(bench: Bench): string {
  const { setting } = bench.frame;
  const metal = setting.materials.findIndex(({ form }) => isMetal(form));
  const { time } = isPowder(bench.material(metal)) ? METAL_GONE.powder : METAL_GONE.pieces;
  return `Stir now and then until none of the ${bench.name(metal)} is left, ${time}: ${signOfMetalGone(setting, metal)}. Salt is over and stays in the liquor, which dulls a bright piece of the metal to the end: add no more of the ${bench.name(metal)}.`;
}

/** How the end of a displacement shows; `over` is the metal of which some is left over, negative where there is none. */
export function endOfDisplacement(bench: Bench, over: number): string {
  const { setting } = bench.frame;
  const { name } = matterOf(setting.product.formula);
  const shake =
    over < 0 || isPowder(bench.material(over))
      ? ""
      : ` Shake or brush the ${name} off what is left ${isInPieces(bench.material(over)) ? `of the ${bench.name(over)}` : "in pieces"}${powderLeft(bench, over)}.`;
  const sparing = sparingFeed(setting);
  if (sparing !== undefined) return `${endOfSparing(bench, sparing, over)}${shake}`;
  if (over < 0 && isSaltOver(setting, bench.frame.account.supplied)) return endOfMetal(bench);
  const clouds = saltClouds(setting);
  if (over < 0)
    return `Stir until the added metal is gone; ${clouds ? SALT_GONE.test : "a bright piece of the same metal held in a drop of the clear liquor stays bright"}: where it ${clouds ? "clouds" : "does not"}, a little more of the metal is needed.`;
  const acid = clouds ? setting.materials.find(({ form }) => isAcid(form))?.shelf.name : undefined;
  const milky = acid === undefined ? "" : `; ${SALT_GONE.milky.replace("{acid}", acid)}`;
  const end = clouds
    ? `${SALT_GONE.test}: where it clouds, it takes longer`
    : `a bright piece of the same metal as the ${bench.name(over)} stays bright in a drop of the clear liquor: where it turns dull, it takes longer`;
  return `Stir until ${end}${isHung(setting, bench.material(over)) ? ", an hour or more" : ""}${milky}; more of the ${bench.name(over)} is needed only where none is left.${shake}`;
}

/** Does a drop of the liquor cloud water while salt of the product's metal is left? */
const saltClouds = ({ product }: Setting): boolean => SALT_GONE.metals.some((metal) => isOneOf(product.formula, metal));

/** What that end is tested with. */
export function atEndOfDisplacement(bench: Bench, over: number): readonly AtHand[] {
  const { setting, account } = bench.frame;
  if (sparingFeed(setting) !== undefined) return [];
  if (saltClouds(setting)) return [];
  if (over >= 0 || !isSaltOver(setting, account.supplied)) return ["bright piece of the metal"];
  const metal = setting.materials.findIndex(({ form }) => isMetal(form));
  return acidTakes(setting, metal) === undefined ? [] : ["dilute acid for a test"];
}

/** An acid of the plan is in the vessel before the metal: no spoonful is needed to begin with. */
const hasAcid = ({ asides }: Setting): boolean => asides.some(({ form }) => isAcid(form));

/** So little of such a feed is dissolved at a time that its liquor tells nothing: the solid does. */
function endOfSparing(bench: Bench, { form, shelf }: Material, over: number): string {
  const start =
    over < 0 || hasAcid(bench.frame.setting) || acidTakes(bench.frame.setting, over) === undefined
      ? ""
      : ", with a spoonful of the acid that takes the rest of it in the end if nothing begins,";
  const row = STAYS_IN_NITRIC_ACID.find(({ formulas }) => isOneOf(form, ...formulas));
  const test =
    row === undefined
      ? ""
      : `, and a pinch of the solid, washed and warmed with dilute nitric acid under a hood, leaves nothing ${row.looks} undissolved`;
  return `Stir${start} until all of the ${shelf.name} has changed its colour through and through${test}; its liquor tells nothing, for hardly any of it is dissolved.`;
}
