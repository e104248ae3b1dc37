// What the ions of a reactant do in a reaction without change of state: how many protons they give or take, and which
// charges precipitate. With hydrogen at +1 and oxygen at -2 throughout, a species has given as many protons as the charge
// of what its other atoms end up in is lower: H3PO4 -> HPO4^2- two, CO3^2- -> CO2 minus two, Al(OH)3 -> Al^3+ minus three.
import type { RedoxAnalysis } from "../../equation";
import { inWater } from "../../equation/internal";
import type { Formula } from "../../formula";
import { Fraction } from "../../foundation/fraction";
import type { Place } from "./species";

/** @internal What one mole of a reactant brings to an exchange. */
interface Exchange {
  /** Protons given; negative where they are taken. */
  readonly protons: Fraction;
  /** Charges of its cations, and of its anions, that precipitate from the solution. */
  readonly falling: { readonly cations: Fraction; readonly anions: Fraction };
  /** It is a hydroxide, and its hydroxide ions precipitate with a metal. */
  readonly hydroxideFalls: boolean;
  /** Ions of it that the reaction uses only in part, or in a way that is no exchange. */
  readonly unclear: readonly string[];
  readonly assumptions: readonly string[];
}

interface Entry {
  readonly text: string;
  readonly formula: Formula;
  /** In the equation as balanced, before anything is struck out. */
  readonly supplied: bigint;
  amount: bigint;
  /** Given by the conjugate pairs found so far. */
  given: bigint;
}

const NONE = /* @__PURE__ */ new Fraction(0);
const ACIDS = ["H+", "H3O+"];
const MEDIUM = [...ACIDS, "OH-", "H2O", "e-"];

const HYDROGEN = ["H", "D", "T"];

const hydrogensIn = (formula: Formula): Fraction =>
  HYDROGEN.reduce((sum, symbol) => sum.add(formula.count(symbol)), NONE);

/** Atoms other than hydrogen; two species that agree here are acid and conjugate base. */
const bareAtoms = (formula: Formula): string =>
  formula.symbols
    .filter((symbol) => !HYDROGEN.includes(symbol))
    .map((symbol) => symbol + formula.count(symbol).toFraction())
    .sort()
    .join(" ");

/** The elements by which a species is followed from one side to the other. */
const coreOf = (formula: Formula): string[] =>
  formula.symbols.filter((symbol) => symbol !== "O" && !HYDROGEN.includes(symbol));

const isSimpleCation = ({ formula }: Entry): boolean =>
  formula.charge > 0 && formula.symbols.length === 1 && !HYDROGEN.includes(formula.symbols[0]!);

function entriesOf(side: ReturnType<typeof inWater>): Entry[] {
  return [...side].map(([text, { formula, amount }]) => ({ text, formula, supplied: amount, amount, given: 0n }));
}

function smaller(one: bigint, other: bigint): bigint {
  if (one < other) return one;
  return other;
}

/** What stands on both sides goes out, in the smaller of its two amounts. */
function strikeOut(left: readonly Entry[], right: readonly Entry[]): void {
  for (const entry of left) {
    const other = right.find(({ text }) => text === entry.text);
    if (other === undefined) continue;
    const both = smaller(entry.amount, other.amount);
    entry.amount -= both;
    other.amount -= both;
  }
}

/** Acids and their conjugate bases, matched before anything else: they may share elements with other species. */
function strikeOutPairs(left: readonly Entry[], right: readonly Entry[]): void {
  for (const entry of left) {
    if (MEDIUM.includes(entry.text)) continue;
    const bare = bareAtoms(entry.formula);
    for (const other of right) {
      if (entry.amount === 0n || other.amount === 0n || MEDIUM.includes(other.text)) continue;
      const protons = entry.formula.charge - other.formula.charge;
      const hydrogens = hydrogensIn(entry.formula).sub(hydrogensIn(other.formula));
      if (!hydrogens.equals(protons) || bareAtoms(other.formula) !== bare) continue;
      const both = smaller(entry.amount, other.amount);
      entry.given += both * BigInt(protons);
      entry.amount -= both;
      other.amount -= both;
    }
  }
}

interface Group {
  readonly left: readonly Entry[];
  readonly right: readonly Entry[];
}

/** Everything that is tied to a species by shared elements. */
function groupOf(entry: Entry, left: readonly Entry[], right: readonly Entry[]): Group {
  const core = new Set(coreOf(entry.formula));
  const others = [...left, ...right].filter(({ amount, text }) => amount > 0n && !MEDIUM.includes(text));
  const inside = new Set<Entry>();
  for (let size = -1; size !== inside.size; ) {
    size = inside.size;
    for (const other of others) {
      const own = coreOf(other.formula);
      if (inside.has(other) || !own.some((symbol) => core.has(symbol))) continue;
      inside.add(other);
      for (const symbol of own) core.add(symbol);
    }
  }
  return { left: left.filter((one) => inside.has(one)), right: right.filter((one) => inside.has(one)) };
}

const chargeOf = (entries: readonly Entry[]): bigint =>
  entries.reduce((sum, { formula, amount }) => sum + amount * BigInt(formula.charge), 0n);

/** Protons that an ion with a core gives, and the charge with which the rest precipitates, per unit; undefined where unclear. */
function fateOf(
  entry: Entry,
  { left, right }: Group,
  isRedox: boolean,
): { protons: Fraction; falls: number } | undefined {
  const { charge } = entry.formula;
  const protons = new Fraction(chargeOf(left) - chargeOf(right), entry.amount);
  const molecules = right.every(({ formula }) => formula.charge === 0);
  if (right.length === 0) return undefined;
  if (left.length === 1) {
    if (isSimpleCation(entry) && molecules) return { protons: NONE, falls: charge };
    return { protons, falls: 0 };
  }
  if (!molecules) return undefined;
  if (isSimpleCation(entry)) return { protons: NONE, falls: charge };
  if (isRedox || protons.n === 0n) return charge === 0 ? undefined : { protons: NONE, falls: charge };
  // metal ions neither give nor take protons here, so what moved belongs to the one species that is none
  if (!left.every((one) => one === entry || isSimpleCation(one)) || protons.d !== 1n) return undefined;
  return { protons, falls: charge - Number(protons.valueOf()) };
}

/** @internal What a reactant exchanges, per mole of it, in a balanced equation. */
export function exchangeOf({ equation, isRedox }: RedoxAnalysis, { formula }: Place): Exchange {
  const assumptions: string[] = [];
  const sideOf = (terms: readonly { formula: Formula; coefficient: bigint }[]): Entry[] =>
    entriesOf(
      inWater(
        terms.map((term) => term.formula),
        terms.map((term) => term.coefficient),
        true,
        assumptions,
      ),
    );
  const left = sideOf(equation.reactants);
  const right = sideOf(equation.products);
  strikeOut(left, right);
  const used = new Map(left.map((entry) => [entry, entry.amount]));
  strikeOutPairs(left, right);
  let protons = NONE;
  let cations = NONE;
  let anions = NONE;
  let hydroxideFalls = false;
  const unclear: string[] = [];
  for (const [text, { amount: count }] of inWater([formula], [1n], true)) {
    const entry = left.find((one) => one.text === text)!;
    const inAll = used.get(entry)!;
    if (text === "H2O" || inAll === 0n) continue;
    if (inAll !== entry.supplied) {
      unclear.push(text);
      continue;
    }
    if (ACIDS.includes(text) || text === "OH-") {
      protons = protons.add(text === "OH-" ? -count : count);
      hydroxideFalls ||= text === "OH-" && takenByMetals(left, right);
      continue;
    }
    protons = protons.add(new Fraction(entry.given * count, inAll));
    if (entry.amount === 0n) continue;
    const fate = coreOf(entry.formula).length === 0 ? undefined : fateOf(entry, groupOf(entry, left, right), isRedox);
    if (fate === undefined) {
      unclear.push(text);
      continue;
    }
    const share = new Fraction(entry.amount * count, inAll);
    protons = protons.add(fate.protons.mul(share));
    if (fate.falls > 0) cations = cations.add(share.mul(fate.falls));
    else anions = anions.add(share.mul(-fate.falls));
  }
  return { protons, falling: { cations, anions }, hydroxideFalls, unclear, assumptions };
}

/** Does a metal ion take hydroxide down with it? */
function takenByMetals(left: readonly Entry[], right: readonly Entry[]): boolean {
  return left.some((entry) => {
    if (entry.amount === 0n || !isSimpleCation(entry)) return false;
    const group = groupOf(entry, left, right);
    return group.left.length === 1 && group.right.length > 0 && chargeOf(group.right) === 0n;
  });
}
