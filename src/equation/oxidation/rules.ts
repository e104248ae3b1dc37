// Oxidation states inside one unit (molecule or ion) from its counts and charge: elements are assigned in a fixed order
// until one is left, which takes the balance. Averages come out as exact fractions (Fe3O4: 8/3), and peroxides,
// superoxides, hydrides and O-F compounds need no lists of their own.
import { Fraction } from "../../foundation/fraction";
import { OXIDATION_LIMITS } from "../data/oxidation-limits";
import { ANION_STATES, COMMON_STATES, FIXED_STATES } from "../data/oxidation-rules";

/** An element in one state, and how many atoms are in it. */
interface UnitSite {
  readonly symbol: string;
  readonly state: Fraction;
  readonly count: Fraction;
}

/** States of all atoms, and what had to be assumed, in words. */
interface UnitStates {
  readonly sites: readonly UnitSite[];
  readonly assumptions: readonly string[];
}

/** Elements beside which hydrogen is the more electronegative partner when nothing else is there. */
const NONMETALS: readonly string[] = [
  "C",
  "N",
  "O",
  "F",
  "P",
  "S",
  "Cl",
  "As",
  "Se",
  "Br",
  "Sb",
  "Te",
  "I",
  "Xe",
  "Kr",
  "At",
];

const fixed = /* @__PURE__ */ new Map<string, number>();
const limits = /* @__PURE__ */ new Map<string, { lowest: number; highest: number }>();

/** The one state of an element that does not vary in compounds. */
export function fixedState(symbol: string): number | undefined {
  if (fixed.size === 0) for (const row of FIXED_STATES) fixed.set(row.symbol, row.state);
  return fixed.get(symbol);
}

/** Lowest and highest known state; wide open for elements without a row. */
export function limitsOf(symbol: string): { lowest: number; highest: number } {
  if (limits.size === 0) for (const row of OXIDATION_LIMITS()) limits.set(row.symbol, row);
  return limits.get(symbol) ?? { lowest: -8, highest: 9 };
}

export function isNonmetal(symbol: string): boolean {
  return symbol === "H" || symbol === "B" || symbol === "Si" || NONMETALS.includes(symbol);
}

/** Oxidation states of a unit, or undefined where the rules do not settle them. */
export function unitStates(counts: ReadonlyMap<string, Fraction>, charge: Fraction): UnitStates | undefined {
  const states = new Map<string, Fraction>();
  const assumptions: string[] = [];
  const open = new Set(counts.keys());
  if (open.size === 0) return charge.n === 0n ? { sites: [], assumptions } : undefined;
  const sites = () => [...counts].map(([symbol, count]) => ({ symbol, count, state: states.get(symbol)! }));
  let rest = charge;
  const assign = (symbol: string, state: number | Fraction) => {
    const value = new Fraction(state);
    states.set(symbol, value);
    rest = rest.sub(value.mul(counts.get(symbol)!));
    open.delete(symbol);
  };
  const assignIfOpen = (symbol: string, state: number) => {
    if (open.size < 2 || !open.has(symbol)) return false;
    assign(symbol, state);
    return true;
  };
  for (const row of FIXED_STATES) assignIfOpen(row.symbol, row.state);
  const hydride = ![...counts.keys()].some((symbol) => NONMETALS.includes(symbol));
  assignIfOpen("H", hydride ? -1 : 1);
  assignIfOpen("O", -2);
  // beside oxygen and a metal, a non-metal other than a halogen is the centre of an oxo anion
  const oxo = states.has("O") && [...open].some((symbol) => !isNonmetal(symbol));
  for (const row of ANION_STATES) if (!oxo || row.state === -1) assignIfOpen(row.symbol, row.state);
  for (const row of COMMON_STATES()) {
    if (assignIfOpen(row.symbol, row.state))
      assumptions.push(`${row.symbol} taken as ${signed(row.state)}, its commonest state`);
  }
  if (open.size !== 1) return undefined;

  const [last] = open as unknown as [string];
  const alone = counts.size === 1;
  const balance = rest.div(counts.get(last)!);
  if (alone) {
    states.set(last, balance);
    return { sites: sites(), assumptions };
  }
  const { lowest, highest } = limitsOf(last);
  if (balance.compare(highest) > 0 && states.has("O") && last !== "O") {
    // more than the element can give: as many oxygens as are too many are peroxide
    assign(last, highest);
    const oxygens = counts.get("O")!;
    const peroxide = rest;
    if (peroxide.compare(oxygens) > 0) return undefined;
    const others = sites().filter(({ symbol }) => symbol !== "O");
    const split = [
      { symbol: "O", state: new Fraction(-1), count: peroxide },
      { symbol: "O", state: new Fraction(-2), count: oxygens.sub(peroxide) },
    ];
    return { sites: [...others, ...split.filter(({ count }) => count.n > 0n)], assumptions };
  }
  if (balance.compare(highest) > 0 || balance.compare(lowest) < 0) return undefined;
  const must = fixedState(last);
  if (must !== undefined && !balance.equals(must)) return undefined;
  if (last === "H" && !balance.abs().equals(1)) return undefined;
  states.set(last, balance);
  return { sites: sites(), assumptions };
}

/** `+2`, `-1`, `+8/3`, `0`. */
export function signed(state: number | Fraction): string {
  const value = new Fraction(state);
  return `${value.compare(0) > 0 ? "+" : ""}${value.toFraction()}`;
}
