// Rows of a table by the elements of their formulas. To read a formula, and to work out what substance it is, takes a hundred
// times as long as to see which elements it names: what is asked for one substance reads the rows of its elements alone.
import { symbolAt } from "../element/internal";
import { memoised, once } from "../foundation/memo";
import { type Formula, parseFormula } from "./formula";

/** Of water, whichever hydrogen is in it. */
const LEFT_OUT = ["H", "D", "T", "O"];

/** Symbols of all elements but those of water. */
const NOT_OF_WATER = /[A-CE-GI-NP-SU-Z][a-z]?|[HDTO][a-z]/g;

/** The symbols a formula names, in written order, without reading it. */
export const symbolsIn = (formula: string): readonly string[] => formula.match(/[A-Z][a-z]?/g) ?? [];

/**
 * The elements a formula names, hydrogen and oxygen left out: the same for every form and spelling of a substance, with crystal
 * water or without.
 */
export const elementsIn = /* @__PURE__ */ memoised(1000, (formula) => {
  return [...new Set(formula.match(NOT_OF_WATER))].sort().join(" ");
});

/**
 * What is made of the rows with the elements of a formula, made when they are first asked for. Formulas are texts in the
 * library's own spelling; rows without one are left out.
 */
export function byElements<Row, Made>(
  rows: () => Iterable<Row>,
  formulaOf: (row: Row) => string | undefined,
  make: (rows: readonly Row[]) => Made,
): (formula: string) => Made {
  const sorted = once(() => {
    const kin = new Map<string, Row[]>();
    for (const row of rows()) {
      const formula = formulaOf(row);
      if (formula === undefined) continue;
      const elements = elementsIn(formula);
      const found = kin.get(elements);
      if (found === undefined) kin.set(elements, [row]);
      else found.push(row);
    }
    return kin;
  });
  const made = new Map<string, Made>();
  return (formula) => {
    const elements = elementsIn(formula);
    const known = made.get(elements);
    if (known !== undefined) return known;
    const found = sorted().get(elements);
    if (found === undefined) return make([]);
    const fresh = make(found);
    made.set(elements, fresh);
    return fresh;
  };
}

/** How many of each element to one of the first, water apart: the same for every form and spelling of a substance. */
function dryRatio(formula: Formula): string {
  const counts = new Map<string, number>();
  for (let i = 0; i < formula.size; i += 1) counts.set(symbolAt(formula.elementIndexAt(i)), formula.numeratorAt(i));
  const count = (symbol: string): number => counts.get(symbol) ?? 0;
  const [first, ...others] = [...counts.keys()].filter((symbol) => !LEFT_OUT.includes(symbol)).sort();
  const one = first === undefined ? formula.denominator : count(first);
  const hydrogen = count("H") + count("D") + count("T") - 2 * count("O");
  return [...others.map(count), hydrogen].map((n) => (n / one).toPrecision(9)).join(" ");
}

/**
 * The rows that may be of the substance of a formula, in any form: those with its elements in the same ratio. Which ions a formula
 * has takes longer to find out, and is a question for these few.
 */
export function byDryRatio<Row>(
  rows: () => Iterable<Row>,
  formulaOf: (row: Row) => string,
): (formula: Formula) => readonly Row[] {
  const ofElements = byElements(rows, formulaOf, (found) => {
    const index = new Map<string, Row[]>();
    for (const row of found) {
      const ratio = dryRatio(parseFormula(formulaOf(row)));
      const before = index.get(ratio);
      if (before === undefined) index.set(ratio, [row]);
      else before.push(row);
    }
    return index;
  });
  return (formula) => ofElements(formula.toString()).get(dryRatio(formula)) ?? [];
}
