// What a material that takes no part in the equation is for, which follows from what it is.
import { isOneOf } from "../../ion/internal";
import { isAcid, isLye } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { isAntisolvent } from "../reaction/fluids";
import { hydronsTakenBy } from "../reaction/neutralising";
import { sameCore } from "../reaction/species";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { isForMetalOver } from "./acid-takes";
import { boundBy } from "./slow-complex";

/** What an aside is for. */
export type Use =
  | "acidify"
  | "takes metal"
  | "bound"
  | "with the first"
  | "against acid"
  | "against base"
  | "charcoal"
  | "seed"
  | "alcohol";

/** Does the equation precipitate its product and set an acid free, which may keep some of it dissolved? */
const setsAcidFree = ({ wet, product, products, temperature }: Setting): boolean =>
  wet && products.some(({ formula }) => isAcid(formula)) && fateOf(product.formula, temperature).precipitated === true;

/** Does the equation set lye free beside a product that stays dissolved? */
const setsLyeFree = ({ wet, product, products, temperature }: Setting): boolean =>
  wet &&
  products.some((one) => one !== product && isLye(one.formula)) &&
  fateOf(product.formula, temperature).precipitated === false;

export function useOf(material: Material, setting: Setting): Use {
  const { form } = material;
  const { formula: product } = setting.product;
  if (isOneOf(form, "C")) return "charcoal";
  if (sameCore(form, product)) return "seed";
  if (isAntisolvent(form)) return "alcohol";
  const bound = boundBy(product);
  if (bound !== undefined && isOneOf(form, bound.acid)) return "bound";
  if (hydronsTakenBy(form) > 0 && setsAcidFree(setting)) return "against acid";
  if (isAcid(form) && setsLyeFree(setting)) return "against base";
  if (isForMetalOver(material, setting)) return "takes metal";
  return isAcid(form) ? "acidify" : "with the first";
}
