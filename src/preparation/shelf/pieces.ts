// Metal in pieces and gas under pressure, by what a pack says of it.

import { once } from "../../foundation/memo";
import { solidFormsIn } from "../../substance/internal";
import { LONG_PIECES, QUICK_METALS } from "../data/firing";
import { CYLINDERS } from "../data/gases";
import type { Material } from "./material";

const textOf = ({ shelf: { name, note = "" } }: Material): string => `${name} ${note}`;
const formsOf = (material: Material): string => solidFormsIn(textOf(material)).join();

/** Is it named as pieces, by name or note of its pack, and as nothing finer? */
export const isInPieces = (material: Material): boolean => formsOf(material) === "massive";

const longPieces = /* @__PURE__ */ once(() => new RegExp(`\\b(?:${LONG_PIECES.words.join("|")})s?\\b`, "i"));

/** Is it named as pieces of which one can hang in a liquor? */
export const isInLongPieces = (material: Material): boolean =>
  isInPieces(material) && longPieces().test(textOf(material));

const cylinders = /* @__PURE__ */ once(() => new RegExp(`\\b(?:${CYLINDERS.words.join("|")})s?\\b`, "i"));

/** Is it named as what stands in a steel bottle under pressure? */
export const isInCylinder = (material: Material): boolean => cylinders().test(textOf(material));

/** Is it named as a powder, and as nothing coarser? */
export const isPowder = (material: Material): boolean => formsOf(material) === "powder";

/** Does acid take it little by little? Pieces of some metals are gone in a minute all the same. */
export const isSlowInPieces = (material: Material): boolean =>
  isInPieces(material) && !material.form.symbols.some((symbol) => QUICK_METALS.symbols.includes(symbol));
