// What a material that takes no part in the equation is for, which follows from what it is.
import { isAcid } from "../reaction/acids";
import { sameCore } from "../reaction/species";
import type { Material } from "../shelf/material";

/** What an aside is for. */
export type Use = "acidify" | "with the first" | "charcoal" | "seed" | "alcohol";

/** Liquids that bring a salt out of water, or rinse it, in Hill order. */
const ALCOHOLS = new Set(["CH4O", "C2H6O", "C3H8O", "C3H6O"]);

export function useOf({ form }: Material, product: Material["form"]): Use {
  if (form.compositionText === "C") return "charcoal";
  if (sameCore(form, product)) return "seed";
  if (ALCOHOLS.has(form.compositionText)) return "alcohol";
  return isAcid(form) ? "acidify" : "with the first";
}
