// Lime, strontia or baryta that a fire has left free, or their carbonates: a pinch of what was fired tells.
import { ALKALI_METALS } from "../../element/internal";
import { type Formula, parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { FREE_BASE } from "../data/kiln";
import { exact } from "../planning/exact";
import { heatingOf } from "../reaction/heating";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import type { AtHand } from "./at-hand";
import { chargeOf, standsWater } from "./grinding";

const isOf = (formula: Formula, symbols: readonly string[]): boolean =>
  formula.symbols.every((symbol) => symbols.includes(symbol));

/** The metal whose oxide or carbonate a fire may leave free, and what brings it; undefined where none does, or the product is alkaline by itself. */
function freeBase({ materials, product: { formula } }: Setting) {
  const metal = FREE_BASE.metals.find((symbol) => formula.count(symbol).n !== 0n);
  const isAlkaline = isOneOf(formula, ...FREE_BASE.alkaline) || isOf(formula, [...FREE_BASE.metals, "C", "H", "O"]);
  if (metal === undefined || isAlkaline || !standsWater(formula)) return undefined;
  const feeds = materials.filter(({ form }) => form.count(metal).n !== 0n && isOf(form, [metal, "C", "H", "O"]));
  return feeds.length === 0 ? undefined : { oxide: parseFormula(`${metal}O`), feeds };
}

/** Is it an alkali carbonate, silicate or the like, which turns paper blue whatever else is there? */
export const isAlkaliFlux = (formula: Formula): boolean =>
  formula.symbols.some((symbol) => ALKALI_METALS.has(symbol)) &&
  formula.symbols.every((symbol) => ALKALI_METALS.has(symbol) || ["B", "C", "H", "O", "Si"].includes(symbol));

/** The oxide that may be left free of what is fired. */
export const freeOxideOf = (setting: Setting): Formula | undefined => freeBase(setting)?.oxide;

/** Does a carbonate stand so much heat, as far as is known? */
const standsFire = ({ form }: Material, at: Quantity | undefined): boolean =>
  form.count("C").n !== 0n && (at === undefined || !heatingOf(form).some(({ from, to = from }) => to.compare(at) <= 0));

/** A test of what was fired, and what it takes. */
interface Pinch {
  readonly text: string;
  readonly atHand: readonly AtHand[];
}

/** What a pinch of what was fired so hot shows where something has not reacted; undefined where it does not tell. */
export function shownByPinch(setting: Setting, at: Quantity | undefined): Pinch | undefined {
  const found = freeBase(setting);
  if (found === undefined || chargeOf(setting).some(({ form }) => isAlkaliFlux(form))) return undefined;
  const carbonates = found.feeds.filter((one) => standsFire(one, at)).map(({ shelf }) => shelf.name);
  const isSlow = at !== undefined && at.compare(exact(FREE_BASE.deadBurnt.above)) > 0;
  const wetted = isSlow ? FREE_BASE.deadBurnt.wetted : "wetted";
  const shows = `a pinch of it, ${wetted}, turns indicator paper deep blue (pH 11 and more) where ${found.oxide.toUnicode()} is free`;
  return carbonates.length === 0
    ? { text: shows, atHand: ["indicator paper"] }
    : {
        text: `${shows}, and fizzes in dilute acid where ${list(carbonates)} is left`,
        atHand: ["indicator paper", "dilute acid for a test"],
      };
}
