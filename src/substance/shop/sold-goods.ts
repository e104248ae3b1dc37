// The goods of the shop by their names, and each form in which they are sold.

import { ownRow } from "../../foundation/facts";
import { once } from "../../foundation/memo";
import { slips } from "../../foundation/slips";
import { readNotation } from "../../ion/internal";
import { SHOP_NAMES, type SoldRow } from "../data/shop-materials";
import { addTo } from "../names/multimap";
import { MOST_NEAREST, nameKey, nameWords } from "../names/words";
import { rowOf, rowsNamed } from "../registry/registry-index";

/** A range as texts with units, ready for `quantity`. */
export interface TextRange {
  /** Lower end, with its unit. */
  readonly lower: string;
  /** Upper end, with its unit. */
  readonly upper: string;
}

/** Goods by each of their names. */
const byName = /* @__PURE__ */ once((): ReadonlyMap<string, readonly SoldRow[]> => {
  const goods = new Map<string, SoldRow[]>();
  for (const row of SHOP_NAMES()) {
    const names = [row.name, row.name.replace(/\s*\([^)]*\)$/, ""), ...(row.alsoCalled ?? [])];
    for (const key of new Set(names.map(nameKey))) addTo(goods, key, row);
  }
  return goods;
});

/** Goods that are listed under just this name: the caller's own, or those of the table. */
const listedUnder = (name: string): readonly SoldRow[] =>
  ownRow<readonly SoldRow[]>("materials", () => nameKey(name)) ?? byName().get(nameKey(name)) ?? [];

/** Goods with the words of their names. */
const byWords = /* @__PURE__ */ once(() =>
  SHOP_NAMES().map((row) => [new Set([row.name, ...(row.alsoCalled ?? [])].flatMap(nameWords)), row] as const),
);

/** Goods whose name holds every word asked for. */
function partly(name: string): SoldRow[] {
  const wanted = nameWords(name);
  if (wanted.length === 0) return [];
  return byWords()
    .filter(([has]) => wanted.every((word) => has.has(word)))
    .map(([, row]) => row);
}

/** Shop names nearest to a misspelt one. */
export function nearestShopNames(name: string): string[] {
  const key = nameKey(name);
  const limit = key.length < 6 ? 1 : 2;
  const found: [number, string][] = [];
  for (const [other, rows] of byName()) {
    const distance = slips(key, other, limit);
    if (distance <= limit) found.push([distance, other === nameKey(rows[0]!.name) ? rows[0]!.name : other]);
  }
  return [...new Set(found.sort((a, b) => a[0] - b[0]).map(([, text]) => text))].slice(0, MOST_NEAREST);
}

function rangeText(range: { lower: string; upper: string }, unit: string): TextRange {
  return { lower: `${range.lower} ${unit}`, upper: `${range.upper} ${unit}` };
}

/** Ten times a decimal text: g per 100 mL to g/L. */
function tenfold(text: string): string {
  const [whole, decimals = ""] = text.split(".");
  if (decimals === "") return `${whole}0`;
  const rest = decimals.slice(1);
  return `${whole}${decimals[0]}`.replace(/^0+(?=\d)/, "") + (rest === "" ? "" : `.${rest}`);
}

/** The assay that counts the row's own formula, with its unit. */
function assayOf(row: SoldRow): TextRange | undefined {
  const own = row.assays.find((assay) => assay.of === undefined);
  if (own === undefined) return undefined;
  if (row.form !== "mass concentration") return rangeText(own, "%");
  return rangeText({ lower: tenfold(own.lower), upper: tenfold(own.upper) }, "g/L");
}

/** One form of a good. */
export interface SoldForm {
  readonly row: SoldRow;
  readonly formula: string;
  readonly usual: boolean;
  readonly form: SoldRow["form"];
  readonly assay?: TextRange;
  readonly density?: TextRange;
}

function soldForm(row: SoldRow, formula: string, usual: boolean): SoldForm {
  const assay = usual ? assayOf(row) : undefined;
  return {
    ...{ row, formula, usual, form: row.form },
    ...(assay === undefined ? {} : { assay }),
    ...(row.density === undefined || !usual ? {} : { density: rangeText(row.density, "g/mL") }),
  };
}

/** Usual forms first; another form only where no listed good has it as its usual one. */
export function formsOf(rows: readonly SoldRow[]): SoldForm[] {
  const found = rows.map((row) => soldForm(row, row.formula, true));
  const seen = new Set(found.map((one) => one.formula));
  for (const row of rows)
    for (const formula of row.alternatives ?? []) {
      if (seen.has(formula)) continue;
      seen.add(formula);
      found.push(soldForm(row, formula, false));
    }
  return found;
}

/** Forms of the goods that are listed under just this name. */
const soldUnder = (name: string): SoldForm[] => formsOf(listedUnder(name));

/** Every good that may be meant by a name: listed under it, or holding a substance of that name, or sharing its words. */
export function goodsNamed(name: string): SoldRow[] {
  const exact = listedUnder(name);
  if (exact.length > 0) return [...exact];
  const formulas = new Set(rowsNamed(name).map(({ row }) => row.formula));
  const holding = SHOP_NAMES().filter((row) => formulas.has(row.formula));
  return holding.length > 0 ? holding : partly(name);
}

/** Formulas of the goods that are listed under just this name. */
export function formulasSoldAs(name: string): string[] {
  return soldUnder(name).map((one) => one.formula);
}

/** Formulas of every good that may be meant by a name. */
export function formulasMeantBy(name: string): string[] {
  return formsOf(goodsNamed(name)).map((one) => one.formula);
}

/** Grams in a litre of water: what a solution weighs at least, where its density is not listed. */
const WATER = 1000;

/** Mass % at most of a solution; undefined for a solid, and where the strength is stated as something else. */
function strongest({ form, assay, density }: SoldForm): number | undefined {
  if (form === "solid" || assay === undefined) return undefined;
  const upper = Number.parseFloat(assay.upper);
  const percent =
    form === "mass fraction"
      ? upper
      : (upper * 100) / (density === undefined ? WATER : 1000 * Number.parseFloat(density.lower));
  return Number(percent.toPrecision(3));
}

/** Strength of the solutions of a formula that are sold under just this name, weakest to strongest. */
export function solutionSoldAs(name: string, formula: string): TextRange | undefined {
  if (isOwnName(name, formula)) return undefined;
  const goods = soldUnder(name).filter((one) => one.formula === formula);
  // a solution only where every good of the name is one
  if (goods.some((one) => one.form === "solid")) return undefined;
  const ranges = goods.flatMap(({ assay }) => (assay === undefined ? [] : [assay]));
  const [first] = ranges;
  if (first === undefined || ranges.some((one) => unitOf(one.upper) !== unitOf(first.upper))) return undefined;
  const least = ranges.reduce((a, b) => (Number.parseFloat(b.lower) < Number.parseFloat(a.lower) ? b : a));
  const most = ranges.reduce((a, b) => (Number.parseFloat(b.upper) > Number.parseFloat(a.upper) ? b : a));
  return Number.parseFloat(least.lower) > NEAT ? undefined : { lower: least.lower, upper: most.upper };
}

/** From here on (%) a liquid is called by its substance: glacial acetic acid. */
const NEAT = 96;
const unitOf = (text: string): string => text.replace(/^[\d.]+ /, "");

/** The name of the substance itself is no word of the shop: hydrogen peroxide of any strength. */
function isOwnName(name: string, formula: string): boolean {
  const own = rowOf(readNotation(formula))?.name;
  return own !== undefined && nameKey(own) === nameKey(name);
}

/** Mass % at which each good listed under just this name has the formula in it, undefined for one that is no solution. */
export function strengthsSoldAs(name: string, formula: string): (number | undefined)[] {
  if (isOwnName(name, formula)) return [];
  return soldUnder(name)
    .filter((one) => one.formula === formula)
    .map(strongest);
}
