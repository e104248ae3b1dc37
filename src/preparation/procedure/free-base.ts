// Lime, strontia or baryta that a fire has left free, or their carbonates: a pinch of what was fired tells.
import { type Formula, parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import { isOneOf } from "../../ion/internal";
import { FREE_BASE } from "../data/kiln";
import type { Setting } from "../request/setting";
import { standsWater } from "./grinding";

const isOf = (formula: Formula, symbols: readonly string[]): boolean =>
  formula.symbols.every((symbol) => symbols.includes(symbol));

/** What a pinch shows where something has not reacted, in words; empty where it does not tell. */
export function shownByPinch({ materials, product: { formula } }: Setting): string {
  const metal = FREE_BASE.metals.find((symbol) => formula.count(symbol).n !== 0n);
  const isAlkaline = isOneOf(formula, ...FREE_BASE.alkaline) || isOf(formula, [...FREE_BASE.metals, "C", "H", "O"]);
  if (metal === undefined || isAlkaline || !standsWater(formula)) return "";
  const feeds = materials.filter(({ form }) => form.count(metal).n !== 0n && isOf(form, [metal, "C", "H", "O"]));
  if (feeds.length === 0) return "";
  const carbonates = feeds.filter(({ form }) => form.count("C").n !== 0n);
  const fizz =
    carbonates.length === 0
      ? ""
      : `, and fizzes in dilute acid where ${list(carbonates.map(({ shelf }) => shelf.name))} is left`;
  return `a pinch of it, wetted, turns indicator paper deep blue (pH 11 and more) where ${parseFormula(`${metal}O`).toUnicode()} is free${fizz}`;
}
