// What a material that takes no part in the equation is for, which follows from what it is.
import { isOneOf } from "../../ion/internal";
import { isAcid } from "../reaction/acids";
import { isAntisolvent } from "../reaction/fluids";
import { sameCore } from "../reaction/species";
import type { Material } from "../shelf/material";
import { boundBy } from "./slow-complex";

/** What an aside is for. */
export type Use = "acidify" | "bound" | "with the first" | "charcoal" | "seed" | "alcohol";

export function useOf({ form }: Material, product: Material["form"]): Use {
  if (isOneOf(form, "C")) return "charcoal";
  if (sameCore(form, product)) return "seed";
  if (isAntisolvent(form)) return "alcohol";
  const bound = boundBy(product);
  if (bound !== undefined && isOneOf(form, bound.acid)) return "bound";
  return isAcid(form) ? "acidify" : "with the first";
}
