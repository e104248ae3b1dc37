// Who is oxidised and who reduced in a balanced equation, and how many electrons change hands. Atoms are followed element
// by element: what stays in its state is set aside, the rest is matched in order of state.

import type { Formula } from "../../formula";
import { Fraction } from "../../foundation/fraction";
import { withPlainJSON } from "../../foundation/plain-json";
import { readable } from "../../foundation/readable";
import { type BalanceOptions, balancedOf } from "../balance/balance";
import type { BalancedEquation, BalancedTerm } from "../balance/balanced";
import { EquationError } from "../error";
import { type OxidationStates, oxidationStates } from "../oxidation/states";
import type { EquationInput } from "../read/parse";

/** Atoms of one element going from one state to another. */
export interface StateChange {
  /** Of the element. */
  readonly symbol: string;
  /** Oxidation state before. */
  readonly from: Fraction;
  /** Oxidation state after. */
  readonly to: Fraction;
  /** Atoms that change, in the balanced equation. */
  readonly atoms: Fraction;
  /** Electrons given up (oxidation) or taken (reduction) by all of them together. */
  readonly electrons: Fraction;
  /** Species that hold these atoms before and after. */
  readonly reactants: readonly Formula[];
  /** Species that hold these atoms after. */
  readonly products: readonly Formula[];
}

/** The electron bookkeeping of an equation. */
export interface RedoxAnalysis {
  /** The balanced equation that is analysed. */
  readonly equation: BalancedEquation;
  /** Does any element change its oxidation state? */
  readonly isRedox: boolean;
  /** Elements whose state rises. */
  readonly oxidised: readonly StateChange[];
  /** Elements whose state is lowered. */
  readonly reduced: readonly StateChange[];
  /** Electrons transferred in the equation as balanced. */
  readonly electrons: Fraction;
  /** Species that are reduced, and so oxidise. */
  readonly oxidisingAgents: readonly Formula[];
  /** Species that are oxidised, and so reduce. */
  readonly reducingAgents: readonly Formula[];
}

interface Pool {
  readonly state: Fraction;
  atoms: Fraction;
  readonly formulas: Formula[];
}

/** Atoms by element and state on one side. */
function poolsOf(terms: readonly BalancedTerm[], states: (formula: Formula) => OxidationStates) {
  const pools = new Map<string, Pool[]>();
  for (const { formula, coefficient } of terms) {
    for (const { symbol, state, count } of states(formula).states) {
      const own = pools.get(symbol) ?? [];
      pools.set(symbol, own);
      const pool = own.find((other) => other.state.equals(state));
      const atoms = count.mul(coefficient);
      if (pool === undefined) own.push({ state, atoms, formulas: [formula] });
      else {
        pool.atoms = pool.atoms.add(atoms);
        if (!pool.formulas.includes(formula)) pool.formulas.push(formula);
      }
    }
  }
  for (const own of pools.values()) own.sort((one, other) => one.state.compare(other.state));
  return pools;
}

function smaller(one: Fraction, other: Fraction): Fraction {
  return one.compare(other) < 0 ? one : other;
}

/** Match what does not keep its state, lowest with lowest. */
function changesOf(symbol: string, left: readonly Pool[], right: readonly Pool[]): StateChange[] {
  for (const pool of left) {
    const same = right.find((other) => other.state.equals(pool.state));
    if (same === undefined) continue;
    const kept = smaller(pool.atoms, same.atoms);
    pool.atoms = pool.atoms.sub(kept);
    same.atoms = same.atoms.sub(kept);
  }
  const before = left.filter(({ atoms }) => atoms.n > 0n);
  const after = right.filter(({ atoms }) => atoms.n > 0n);
  const changes: StateChange[] = [];
  for (let a = 0, b = 0; a < before.length && b < after.length; ) {
    const from = before[a]!;
    const to = after[b]!;
    const atoms = smaller(from.atoms, to.atoms);
    const change = {
      symbol,
      from: from.state,
      to: to.state,
      atoms,
      electrons: to.state.sub(from.state).abs().mul(atoms),
      reactants: from.formulas,
      products: to.formulas,
    };
    changes.push(withPlainJSON(change));
    from.atoms = from.atoms.sub(atoms);
    to.atoms = to.atoms.sub(atoms);
    if (from.atoms.n === 0n) a++;
    if (to.atoms.n === 0n) b++;
  }
  return changes;
}

/**
 * Who is oxidised and who reduced, and how many electrons are transferred.
 *
 * @param input - equation, balanced here if it is not yet
 * @returns changes of state with the atoms and electrons of the balanced equation; empty lists if nothing changes
 * @throws {EquationError} `equation.oxidation-state-unknown`; all codes of {@link balance}
 * @source IUPAC Gold Book, oxidation, reduction (memory)
 * @category Redox
 * @example
 * const redox = redoxAnalysis("MnO4- + Fe^2+ + H+ -> Mn^2+ + Fe^3+ + H2O");
 * redox.electrons.toFraction() // => "5"
 * redox.reduced.map(({ symbol, from, to }) => `${symbol} ${from.toFraction()} to ${to.toFraction()}`) // => ["Mn 7 to 2"]
 * redox.reducingAgents.map(String) // => ["Fe^2+"]
 */
export function redoxAnalysis(input: EquationInput | BalancedEquation, options: BalanceOptions = {}): RedoxAnalysis {
  const balanced = balancedOf(input, options);
  const left = poolsOf(balanced.reactants, oxidationStates);
  const right = poolsOf(balanced.products, oxidationStates);
  const oxidised: StateChange[] = [];
  const reduced: StateChange[] = [];
  for (const [symbol, pools] of left) {
    for (const change of changesOf(symbol, pools, right.get(symbol) ?? [])) {
      (change.to.compare(change.from) > 0 ? oxidised : reduced).push(change);
    }
  }
  const total = (changes: readonly StateChange[]) =>
    changes.reduce((sum, { electrons }) => sum.add(electrons), new Fraction(0));
  const lost = total(oxidised);
  const gained = total(reduced);
  const agents = (changes: readonly StateChange[]) => [...new Set(changes.flatMap(({ reactants }) => reactants))];
  return withPlainJSON(
    readable({
      equation: balanced,
      isRedox: oxidised.length + reduced.length > 0,
      oxidised,
      reduced,
      // with free electrons in the equation only one side counts
      electrons: lost.compare(gained) > 0 ? lost : gained,
      oxidisingAgents: agents(reduced),
      reducingAgents: agents(oxidised),
    }),
  );
}

/** The refusal where nothing is oxidised or reduced. */
export function notRedox(equation: unknown, problem = "no element changes its oxidation state"): EquationError {
  return new EquationError("equation.not-redox", `${problem} in ${String(equation)}`, {
    details: { equation: String(equation) },
  });
}
