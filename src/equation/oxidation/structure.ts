// A formula as a tree of atoms and groups, with the polyatomic ions and ligands in it recognised. This is what oxidation
// states and dissociation need to know of a notation beyond its counts.
import { elementOf, symbolAt } from "../../element/internal";
import { type Formula, parseFormula } from "../../formula";
import type { Ratio } from "../../formula/internal";
import { Fraction } from "../../foundation/fraction";
import { IONS, type IonRow } from "../data/ions";

/** An atom with its subscript, or a bracket with its subscript. */
export type Item =
  | { readonly kind: "atom"; readonly symbol: string; readonly count: Fraction; readonly stated: number | undefined }
  | { readonly kind: "group"; readonly items: readonly Item[]; readonly count: Fraction; readonly charge: number };

/** One part of an adduct. */
interface Part {
  readonly items: readonly Item[];
  readonly number: Fraction;
  readonly charge: number;
}

const ROMAN = ["", "I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX"];

/** An oxidation number as it is stated: `IV`, `-II`. */
const fromRoman = (text: string): number =>
  text.startsWith("-") ? -ROMAN.indexOf(text.slice(1)) : ROMAN.indexOf(text);

function fraction({ n, d }: Ratio): Fraction {
  return new Fraction(BigInt(n), BigInt(d));
}

/** The parts of a formula with their atoms and groups; a nuclide counts as its element. */
export function partsOf(formula: Formula): Part[] {
  type Frame = { items: Item[]; number: Fraction; charge: number; factor: Fraction };
  const one = new Fraction(1);
  const parts: Frame[] = [];
  const stack: Frame[] = [];
  for (const node of formula.reading().nodes) {
    const current = stack[stack.length - 1] ?? parts[parts.length - 1];
    if (node.kind === "part") {
      // inside brackets a number stands for all that follows up to the next dot: Fe(2H2O)
      if (current !== undefined && stack.length > 0) current.factor = fraction(node.number);
      else parts.push({ items: [], number: fraction(node.number), charge: 0, factor: one });
    } else if (node.kind === "open") {
      stack.push({ items: [], number: fraction(node.count), charge: 0, factor: one });
    } else if (node.kind === "close") {
      const { items, number, charge } = stack.pop()!;
      const around = stack[stack.length - 1] ?? parts[parts.length - 1]!;
      around.items.push({ kind: "group", items, count: number.mul(around.factor), charge });
    } else if (node.kind === "atom") {
      const symbol = symbolAt(elementOf(node.atom));
      const count = fraction(node.count).mul(current!.factor);
      current!.items.push({ kind: "atom", symbol, count, stated: undefined });
    } else if (node.kind === "oxidation") {
      const last = current!.items.pop();
      if (last?.kind === "atom") current!.items.push({ ...last, stated: fromRoman(node.roman) });
    } else current!.charge += node.kind === "electron" ? -1 : node.charge;
  }
  return parts;
}

/** Counts by symbol over nested groups. */
export function countsOf(items: readonly Item[], factor = new Fraction(1), into = new Map<string, Fraction>()) {
  for (const item of items) {
    const count = item.count.mul(factor);
    if (item.kind === "group") countsOf(item.items, count, into);
    else into.set(item.symbol, (into.get(item.symbol) ?? new Fraction(0)).add(count));
  }
  return into;
}

/** The same key for the same counts, whatever the order. */
export function keyOf(counts: ReadonlyMap<string, Fraction>): string {
  return [...counts]
    .map(([symbol, count]) => symbol + count.toFraction())
    .sort()
    .join("");
}

/** A known ion or ligand, its items ready. */
export interface KnownIon extends IonRow {
  readonly items: readonly Item[];
}

const byKey = /* @__PURE__ */ new Map<string, KnownIon>();
const bySpelling = /* @__PURE__ */ new Map<string, KnownIon>();

/** The table is read at first need, not at import. */
function prepare(): void {
  if (byKey.size > 0) return;
  for (const row of IONS()) {
    const { items } = partsOf(parseFormula(row.formula))[0]!;
    const ion = { ...row, items };
    const key = keyOf(countsOf(items));
    if (!byKey.has(key)) byKey.set(key, ion);
    bySpelling.set(spelling(items), ion);
  }
}

/** The known ion with the atoms that a list of items has, in whatever order. */
export function knownIon(items: readonly Item[]): KnownIon | undefined {
  prepare();
  return byKey.get(keyOf(countsOf(items)));
}

/** The known ion that a run of items spells. */
export function spelledIon(items: readonly Item[]): KnownIon | undefined {
  prepare();
  return bySpelling.get(spelling(items));
}

/** The items as written. */
export function spelling(items: readonly Item[]): string {
  return items
    .map((item) => {
      const count = item.count.equals(1) ? "" : item.count.toFraction();
      return item.kind === "atom" ? item.symbol + count : `(${spelling(item.items)})${count}`;
    })
    .join("");
}
