// One half-reaction: the species that change, helped by what they need from the equation, water, H+ or OH-, electrons.
// Atoms are balanced by element and oxidation state, not by element alone, so that hydrogen leaving as H2 is distinguished from
// hydrogen of the water, and peroxide from oxide.
import { elementOf, symbolAt } from "../../element/internal";
import { type Formula, parseFormula } from "../../formula";
import { Fraction } from "../../foundation/fraction";
import { bigGcd } from "../../foundation/gcd";
import { nullspaceInBigInts } from "../kernel/bareiss";
import { isNonmetal } from "../oxidation/rules";
import { oxidationStates } from "../oxidation/states";
import type { Transition } from "./transitions";

/** What the water holds: H+ to spare, OH- to spare, or neither. */
export type Medium = "acid" | "base" | "neutral";

/** Amounts by canonical text; signed where it stands for a reaction, negative what is used up. */
export type Sum = Map<string, { readonly formula: Formula; amount: bigint }>;

/** One side of an equation, amounts positive. */
export type Side = Sum;

/** Both sides in water; the amounts mean something only where the equation is balanced. */
export interface Sides {
  readonly left: Side;
  readonly right: Side;
  readonly isBalanced: boolean;
}

const MEDIUM_SPECIES: readonly string[] = ["H2O", "H+", "OH-", "H3O+"];
const ELECTRON = "e-";

export function isMediumSpecies(text: string): boolean {
  return MEDIUM_SPECIES.includes(text);
}

export function electronsOf(sum: Sum): bigint {
  return sum.get(ELECTRON)?.amount ?? 0n;
}

export function addTo(sum: Sum, formula: Formula, amount: bigint): void {
  const text = String(formula);
  const entry = sum.get(text);
  if (entry === undefined) sum.set(text, { formula, amount });
  else entry.amount += amount;
}

const unique = (lists: readonly (readonly Formula[])[]) => [
  ...new Map(lists.flat().map((formula) => [String(formula), formula])).values(),
];

/**
 * The half that a group of transitions stands for, or undefined where it is not unique.
 *
 * @param others - transitions of the other halves, whose species are not to be mixed in
 */
export function halfOf(
  transitions: readonly Transition[],
  others: readonly Transition[],
  sides: Sides,
  medium: Medium,
  acidIon: Formula,
): Sum | undefined {
  const changing = (lists: readonly (readonly Formula[])[]) =>
    unique(lists).filter((formula) => !isMediumSpecies(String(formula)));
  let reactants = changing(transitions.map((one) => one.reactants));
  let products = changing(transitions.map((one) => one.products));
  // an element that comes from the water: the solver finds the left side, so the half is solved backwards
  const backwards = reactants.length === 0;
  if (backwards) [reactants, products] = [products, reactants];
  if (reactants.length === 0) return undefined;
  products = withoutSharedProducts(products, transitions, others);

  const moving = new Set([...transitions, ...others].flatMap((one) => [...one.reactants, ...one.products].map(String)));
  const helpersInTurn = helperChoices(reactants, products, sides, moving);
  const ratios = sides.isBalanced ? ratioRows(reactants, products, transitions, others, sides) : [];
  const solve = (ion: Formula): Sum | undefined => {
    for (const rows of ratios.length > 0 ? [[], ratios] : [[]]) {
      for (const helpers of helpersInTurn) {
        const sum = solved(reactants, products, helpers, ion, transitions, rows);
        if (sum === undefined) continue;
        if (backwards) for (const entry of sum.values()) entry.amount = -entry.amount;
        return sum;
      }
    }
    return undefined;
  };
  const base = parseFormula("OH-");
  const sum = solve(medium === "base" ? base : acidIon);
  // in neutral water the ion is formed, not used up
  const usesUpAcid = sum !== undefined && (sum.get(String(acidIon))?.amount ?? 0n) < 0n;
  return medium === "neutral" && usesUpAcid ? (solve(base) ?? sum) : sum;
}

/**
 * A product in which the element meets the partner of the other half (Si + Cl2 -> SiCl4) is not a product of its own: the
 * reduced element goes to its simple ion, which then takes part in the other half.
 */
function withoutSharedProducts(
  products: readonly Formula[],
  transitions: readonly Transition[],
  others: readonly Transition[],
): Formula[] {
  const elsewhere = new Set(others.flatMap((one) => one.products.map(String)));
  return unique([
    products.flatMap((formula) => {
      if (!elsewhere.has(String(formula))) return [formula];
      const own = transitions.find((one) => one.products.includes(formula) && one.to.compare(0) < 0 && one.to.d === 1n);
      return own === undefined ? [formula] : [simpleIon(own.symbol, own.to)];
    }),
  ]);
}

function simpleIon(symbol: string, state: Fraction): Formula {
  const size = state.abs();
  return parseFormula(`${symbol}^${size.equals(1) ? "" : size.toFraction()}${state.compare(0) < 0 ? "-" : "+"}`);
}

const HYDROGEN = 0;
const OXYGEN = 7;

/**
 * Species that can supply what stands on one side only: none, one of the equation, a simple ion, several, or all that do
 * not change (cyanide and the complex it forms, together).
 */
function helperChoices(
  reactants: readonly Formula[],
  products: readonly Formula[],
  sides: Sides,
  moving: ReadonlySet<string>,
): Formula[][] {
  const left = new Set(reactants.flatMap((formula) => formula.elementIndices));
  const right = new Set(products.flatMap((formula) => formula.elementIndices));
  const all = new Set([...left, ...right]);
  const missing = [...all].filter(
    (element) => element !== HYDROGEN && element !== OXYGEN && left.has(element) !== right.has(element),
  );
  if (missing.length === 0) return [[]];
  const inside = new Set([...reactants, ...products].map(String));
  const everything = unique([[...sides.left.values(), ...sides.right.values()].map(({ formula }) => formula)]);
  const candidates = everything.filter(
    (formula) =>
      !inside.has(String(formula)) &&
      !isMediumSpecies(String(formula)) &&
      formula.elementIndices.some((element) => missing.includes(element)) &&
      formula.elementIndices.every((element) => all.has(element) || element === HYDROGEN || element === OXYGEN),
  );
  const ions = missing.flatMap((element) => {
    const symbol = symbolAt(elementOf(element));
    const holder = [...reactants, ...products].find((formula) => formula.elementIndices.includes(element))!;
    const state = oxidationStates(holder).of(symbol);
    const plain = state.d === 1n && state.n !== 0n && (state.compare(0) < 0 || !isNonmetal(symbol));
    return plain ? [simpleIon(symbol, state)] : [];
  });
  const unchanging = everything.filter((formula) => !moving.has(String(formula)) && !isMediumSpecies(String(formula)));
  const choices = [...candidates.map((one) => [one]), candidates, unchanging];
  if (ions.length > 0) choices.push(ions, ...candidates.map((one) => [one, ...ions]));
  return choices.filter((choice) => choice.length > 0);
}

/** Ratios among the species of this half alone, as the balanced equation has them. */
function ratioRows(
  reactants: readonly Formula[],
  products: readonly Formula[],
  transitions: readonly Transition[],
  others: readonly Transition[],
  sides: Sides,
): { at: number; amount: bigint }[][] {
  const shared = new Set(others.flatMap((one) => [...one.reactants, ...one.products].map(String)));
  const known: { at: number; amount: bigint }[] = [];
  [...reactants, ...products].forEach((formula, at) => {
    const text = String(formula);
    const left = sides.left.get(text)?.amount;
    const right = sides.right.get(text)?.amount;
    // what stands on both sides changes only in part
    if (shared.has(text) || (left !== undefined && right !== undefined)) return;
    const inTransition = transitions.some((one) => [...one.reactants, ...one.products].includes(formula));
    const amount = left ?? right;
    if (inTransition && amount !== undefined) known.push({ at, amount });
  });
  return known.slice(1).map((one) => [known[0]!, one]);
}

/** Which balance an atom belongs to: states that this half turns into each other count together. */
function balanceKey(symbol: string, state: Fraction, transitions: readonly Transition[]): string {
  const changes = transitions.some((one) => one.symbol === symbol && (one.from.equals(state) || one.to.equals(state)));
  return changes ? `${symbol} changing` : `${symbol} ${state.toFraction()}`;
}

function solved(
  reactants: readonly Formula[],
  products: readonly Formula[],
  helpers: readonly Formula[],
  ion: Formula,
  transitions: readonly Transition[],
  ratios: readonly (readonly { at: number; amount: bigint }[])[],
): Sum | undefined {
  const all = [...reactants, ...products, ...helpers, parseFormula("H2O"), ion, parseFormula(ELECTRON)];
  const rows = new Map<string, Fraction[]>();
  const rowOf = (key: string) => {
    const row = rows.get(key) ?? all.map(() => new Fraction(0));
    rows.set(key, row);
    return row;
  };
  all.forEach((formula, at) => {
    const sign = at < reactants.length ? 1 : -1;
    for (const { symbol, state, count } of oxidationStates(formula).states) {
      const row = rowOf(balanceKey(symbol, state, transitions));
      row[at] = row[at]!.add(count.mul(sign));
    }
    if (formula.charge !== 0) rowOf("charge")[at] = new Fraction(sign * formula.charge);
  });
  for (const pair of ratios) {
    const [one, other] = [pair[0]!, pair[1]!];
    const row = all.map(() => new Fraction(0));
    row[one.at] = new Fraction(other.amount);
    row[other.at] = new Fraction(-one.amount);
    rows.set(`ratio ${other.at}`, row);
  }
  const vectors = nullspaceInBigInts([...rows.values()].map(wholeRow), all.length);
  if (vectors.length !== 1) return undefined;
  let vector = vectors[0]!;
  if (vector[0]! < 0n) vector = vector.map((value) => -value);
  if (vector.slice(0, reactants.length + products.length).some((value) => value <= 0n)) return undefined;
  const sum: Sum = new Map();
  all.forEach((formula, at) => {
    const amount = vector[at]!;
    if (amount !== 0n) addTo(sum, formula, at < reactants.length ? -amount : amount);
  });
  return sum;
}

/** A row of fractions, multiplied out. */
function wholeRow(row: readonly Fraction[]): bigint[] {
  let denominator = 1n;
  for (const { d } of row) denominator = (denominator * d) / bigGcd(denominator, d);
  return row.map(({ s, n, d }) => (s * n * denominator) / d);
}
