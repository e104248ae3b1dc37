// Metal in pieces, by what a pack says of it.

import { solidFormsIn } from "../../substance/internal";
import { QUICK_METALS } from "../data/firing";
import type { Material } from "./material";

/** Is it named as pieces, by name or note of its pack, and as nothing finer? */
export function isInPieces({ shelf: { name, note = "" } }: Material): boolean {
  return solidFormsIn(`${name} ${note}`).join() === "massive";
}

/** Does acid take it little by little? Pieces of some metals are gone in a minute all the same. */
export const isSlowInPieces = (material: Material): boolean =>
  isInPieces(material) && !material.form.symbols.some((symbol) => QUICK_METALS.symbols.includes(symbol));
