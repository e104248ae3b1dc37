// Which element goes from which oxidation state to which, read from the species alone, before anything is balanced.

import type { Formula } from "../../formula";
import { Fraction } from "../../foundation/fraction";
import { oxidationStates } from "../oxidation/states";

/** An element going from one state to another, and the species that hold it before and after. */
export interface Transition {
  readonly symbol: string;
  readonly from: Fraction;
  readonly to: Fraction;
  /** None where the element comes from water or its ions. */
  readonly reactants: readonly Formula[];
  readonly products: readonly Formula[];
}

interface Holders {
  readonly state: Fraction;
  readonly formulas: Formula[];
}

/** States of each element on one side, lowest first. */
function holdersOf(formulas: readonly Formula[]): Map<string, Holders[]> {
  const all = new Map<string, Holders[]>();
  for (const formula of formulas) {
    for (const { symbol, state } of oxidationStates(formula).states) {
      const own = all.get(symbol) ?? [];
      all.set(symbol, own);
      const holder = own.find((other) => other.state.equals(state));
      if (holder === undefined) own.push({ state, formulas: [formula] });
      else if (!holder.formulas.includes(formula)) holder.formulas.push(formula);
    }
  }
  for (const own of all.values()) own.sort((one, other) => one.state.compare(other.state));
  return all;
}

const has = (list: readonly Holders[], { state }: Holders) => list.some((other) => other.state.equals(state));

/** Oxygen at -2 and hydrogen at +1 come from and go to the medium. */
function isMedium(symbol: string, { state }: Holders): boolean {
  return (symbol === "O" && state.equals(-2)) || (symbol === "H" && state.equals(1));
}

function nearest(list: readonly Holders[], to: Holders): Holders | undefined {
  const distance = (holder: Holders) => holder.state.sub(to.state).abs();
  return list.reduce<Holders | undefined>(
    (best, one) => (best === undefined || distance(one).compare(distance(best)) < 0 ? one : best),
    undefined,
  );
}

function transition(symbol: string, from: Holders, to: Holders): Transition {
  return {
    symbol,
    from: from.state,
    to: to.state,
    reactants: isMedium(symbol, from) ? [] : from.formulas,
    products: isMedium(symbol, to) ? [] : to.formulas,
  };
}

/** Water is at hand on both sides, whether it is written or not. */
function withMedium(all: Map<string, Holders[]>): Map<string, Holders[]> {
  for (const [symbol, state] of [
    ["O", -2],
    ["H", 1],
  ] as const) {
    const own = all.get(symbol) ?? [];
    all.set(symbol, own);
    if (own.some((holder) => holder.state.equals(state))) continue;
    own.push({ state: new Fraction(state), formulas: [] });
    own.sort((one, other) => one.state.compare(other.state));
  }
  return all;
}

/** All transitions between the species of two sides. */
export function transitionsOf(left: readonly Formula[], right: readonly Formula[]): Transition[] {
  const before = withMedium(holdersOf(left));
  const after = withMedium(holdersOf(right));
  const found: Transition[] = [];
  for (const [symbol, own] of before) {
    const other = after.get(symbol) ?? [];
    const gone = own.filter((holder) => !has(other, holder) && !isMedium(symbol, holder));
    const formed = other.filter((holder) => !has(own, holder) && !isMedium(symbol, holder));
    if (gone.length > 0 && gone.length === formed.length && gone.length > 1) {
      gone.forEach((holder, at) => {
        found.push(transition(symbol, holder, formed[at]!));
      });
    } else if (formed.length > 0) {
      for (const to of formed) {
        const from = gone.length > 0 ? gone : [nearest(own, to)!];
        for (const holder of from) found.push(transition(symbol, holder, to));
      }
    } else {
      for (const holder of gone) {
        const to = nearest(other, holder);
        if (to !== undefined) found.push(transition(symbol, holder, to));
      }
    }
  }
  return completed(found, before, after);
}

/**
 * If all changes go one way, the partner is an element that changes only in part: chloride in KClO3 + HCl, where some
 * stays chloride and some becomes chlorine.
 */
function completed(
  found: Transition[],
  before: ReadonlyMap<string, Holders[]>,
  after: ReadonlyMap<string, Holders[]>,
): Transition[] {
  const up = found.some(({ from, to }) => to.compare(from) > 0);
  const down = found.some(({ from, to }) => to.compare(from) < 0);
  if (found.length === 0 || (up && down)) return found;
  const partner = (accept: (symbol: string, from: Holders) => boolean): Transition | undefined => {
    for (const [symbol, own] of before) {
      for (const from of own) {
        if (!accept(symbol, from)) continue;
        for (const to of after.get(symbol) ?? []) {
          const direction = to.state.compare(from.state);
          if (up ? direction < 0 : direction > 0) return transition(symbol, from, to);
        }
      }
    }
    return undefined;
  };
  const changing = (symbol: string, { state }: Holders) =>
    found.some((one) => one.symbol === symbol && one.from.equals(state));
  // another element or state first, then what changes both ways (peroxide to water and oxygen), last the water itself
  const added =
    partner((symbol, from) => !changing(symbol, from) && !isMedium(symbol, from)) ??
    partner((symbol, from) => changing(symbol, from)) ??
    partner((symbol, from) => isMedium(symbol, from));
  return added === undefined ? found : [...found, added];
}
