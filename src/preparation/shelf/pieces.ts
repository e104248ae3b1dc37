// Metal in pieces, by what a pack says of it.

import { solidFormsIn } from "../../substance/internal";
import { QUICK_METALS } from "../data/firing";
import type { Material } from "./material";

const formsOf = ({ shelf: { name, note = "" } }: Material): string => solidFormsIn(`${name} ${note}`).join();

/** Is it named as pieces, by name or note of its pack, and as nothing finer? */
export const isInPieces = (material: Material): boolean => formsOf(material) === "massive";

/** Is it named as a powder, and as nothing coarser? */
export const isPowder = (material: Material): boolean => formsOf(material) === "powder";

/** Does acid take it little by little? Pieces of some metals are gone in a minute all the same. */
export const isSlowInPieces = (material: Material): boolean =>
  isInPieces(material) && !material.form.symbols.some((symbol) => QUICK_METALS.symbols.includes(symbol));
