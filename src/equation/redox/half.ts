// Half-reactions: one for what is oxidised, one for what is reduced, with water, H+ or OH-, and electrons filled in by the
// same exact nullspace that balances whole equations. Molecules that fall apart in water are taken apart first, so that
// spectators stay out; the halves added up give the net equation.
import { type Formula, parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bigGcd } from "../../foundation/gcd";
import { withPlainJSON } from "../../foundation/plain-json";
import { printsItself } from "../../foundation/readable";
import { BalancedEquation } from "../balance/balanced";
import { solutionsOf } from "../balance/system";
import { Equation } from "../equation";
import { EquationError } from "../error";
import { inWater } from "../ionic/ions";
import { toBigInts } from "../kernel/nullspace";
import { EQUATION, type EquationOptions, needOptions } from "../options";
import { type EquationInput, readEquation } from "../read/parse";
import { addTo, electronsOf, halfOf, isMediumSpecies, type Medium, type Sides, type Sum } from "./half-solve";
import { notRedox } from "./redox";
import { type Transition, transitionsOf } from "./transitions";

const HALF = { ...EQUATION, medium: true } as const satisfies Fields<HalfReactionOptions>;

/** Options of `halfReactions`. */
export interface HalfReactionOptions extends EquationOptions {
  /** Read off the equation if not given: base where it names OH- or a strong base, else acid. */
  readonly medium?: Medium | undefined;
}

/** An equation split into its halves. */
export interface HalfReactions {
  /** Gives up electrons. The first, where there are several. */
  readonly oxidation: BalancedEquation;
  /** Accepts electrons. The first, where there are several. */
  readonly reduction: BalancedEquation;
  /** All halves of each kind; nearly always one. */
  readonly oxidations: readonly BalancedEquation[];
  /** Halves that accept electrons. */
  readonly reductions: readonly BalancedEquation[];
  /** How often each half is taken: the oxidations, then the reductions. */
  readonly multipliers: readonly bigint[];
  /** Electrons transferred in the overall equation. */
  readonly electrons: bigint;
  /** The halves added up, electrons cancelled, smallest whole numbers; the net equation where the whole one is unique. */
  readonly overall: BalancedEquation;
  /** What the halves alone leave open: H+ supplied or consumed by weak acids and bases, without electrons. */
  readonly acidBase?: BalancedEquation;
  /** Medium that the halves are balanced in. */
  readonly medium: Medium;
  /** The halves and their sum, a line each. */
  toString(): string;
}

/** The equation that signed amounts stand for. */
function equationOf(sum: Sum, arrow: Equation["arrow"]): BalancedEquation {
  const entries = [...sum.values()].filter(({ amount }) => amount !== 0n);
  const left = entries.filter(({ amount }) => amount < 0n);
  const right = entries.filter(({ amount }) => amount > 0n);
  const all = [...left, ...right];
  const common = all.reduce((gcd, { amount }) => bigGcd(gcd, amount), 0n);
  const formulas = all.map(({ formula }) => formula);
  const numbers = all.map(({ amount }) => (amount < 0n ? -amount : amount) / common);
  return new BalancedEquation(new Equation(formulas, left.length, arrow, undefined, []), numbers);
}

/** Groups of transitions that share a species and so run in one half. */
function grouped(transitions: readonly Transition[]): Transition[][] {
  const groups: Transition[][] = [];
  const namesOf = ({ reactants, products }: Transition) =>
    [...reactants, ...products].map(String).filter((text) => !isMediumSpecies(text));
  for (const transition of transitions) {
    const names = new Set(namesOf(transition));
    const touching = groups.filter((group) => group.some((one) => namesOf(one).some((text) => names.has(text))));
    for (const group of touching) groups.splice(groups.indexOf(group), 1);
    groups.push([...touching.flat(), transition]);
  }
  return groups;
}

/**
 * The half-reactions of a redox equation, and the equation they add up to.
 *
 * Coefficients need not be given, nor water, H+ or OH-: they are filled in for the medium. Strong electrolytes are taken
 * apart into ions first. In neutral water both halves use up water and form H+ or OH-, which then join. Where weak acids
 * and bases of the equation supply or consume the H+, the step that does so stands in `acidBase`.
 *
 * @param input - equation, balanced or not; it may leave out water, H+ and OH-
 * @param options - `medium`: `"acid"`, `"base"` or `"neutral"`
 * @throws {EquationError} `equation.not-redox`, `equation.half-reaction-given`, `equation.halves-not-unique`,
 * `equation.oxidation-state-unknown`, `equation.bad-option`; all codes of {@link parseEquation}
 * @source ion-electron method, general chemistry (common practice)
 * @category Redox
 * @example
 * const halves = halfReactions("MnO4- + Fe^2+ -> Mn^2+ + Fe^3+", { medium: "acid" });
 * halves.reduction.toString() // => "MnO4- + 8 H+ + 5 e- -> Mn^2+ + 4 H2O"
 * halves.oxidation.toString() // => "Fe^2+ -> Fe^3+ + e-"
 * String(halves).split("\n")[0] // => "oxidation, taken 5 times: Fe^2+ -> Fe^3+ + e-"
 * halves.overall.toString() // => "MnO4- + 8 H+ + 5 Fe^2+ -> Mn^2+ + 4 H2O + 5 Fe^3+"
 */
export function halfReactions(
  input: EquationInput | BalancedEquation,
  options: HalfReactionOptions = {},
): HalfReactions {
  needOptions(options, HALF);
  const equation = input instanceof BalancedEquation ? input.equation : readEquation(input, options);
  const { formulas, reactantCount, arrow } = equation;
  if (formulas.some((formula) => formula.elementIndices.length === 0)) {
    throw new EquationError("equation.half-reaction-given", `${equation} is a half-reaction already`, {
      details: { equation: String(equation) },
    });
  }
  if (options.medium !== undefined && !["acid", "base", "neutral"].includes(options.medium)) {
    throw new EquationError("equation.bad-option", 'a medium is "acid", "base" or "neutral"');
  }
  const vectors = solutionsOf(formulas, reactantCount);
  const unique = vectors.length === 1 && vectors[0]!.every((value) => value > 0) ? toBigInts(vectors[0]!) : undefined;
  let failure: EquationError | undefined;
  // taken apart first; whole molecules if the halves do not come out that way (thermal decompositions)
  for (const dissolve of [true, false]) {
    const left = inWater(formulas.slice(0, reactantCount), unique?.slice(0, reactantCount), dissolve);
    const right = inWater(formulas.slice(reactantCount), unique?.slice(reactantCount), dissolve);
    const medium = options.medium ?? (left.has("OH-") || right.has("OH-") ? "base" : "acid");
    const result = halvesOf({ left, right, isBalanced: unique !== undefined }, medium, arrow);
    if (!(result instanceof EquationError)) return result;
    failure ??= result;
  }
  throw failure!;
}

function halvesOf(sides: Sides, medium: Medium, arrow: Equation["arrow"]): HalfReactions | EquationError {
  const left = [...sides.left.values()].map(({ formula }) => formula);
  const right = [...sides.right.values()].map(({ formula }) => formula);
  const text = `${left.join(" + ")} -> ${right.join(" + ")}`;
  const transitions = transitionsOf(left, right);
  const up = grouped(transitions.filter(({ to, from }) => to.compare(from) > 0));
  const down = grouped(transitions.filter(({ to, from }) => to.compare(from) < 0));
  if (up.length === 0 || down.length === 0) {
    return notRedox(text, transitions.length === 0 ? undefined : "nothing pairs with what changes its oxidation state");
  }
  const acidIon = parseFormula(sides.left.has("H3O+") || sides.right.has("H3O+") ? "H3O+" : "H+");
  const unclear = new EquationError("equation.halves-not-unique", `the half-reactions of ${text} are not settled`, {
    details: { equation: text },
    hint: "split the equation into reactions with one oxidation and one reduction each",
  });
  const groups = [...up, ...down];
  const sums: Sum[] = [];
  for (const group of groups) {
    const others = groups.filter((other) => other !== group).flat();
    const sum = halfOf(group, others, sides, medium, acidIon);
    if (sum === undefined) return unclear;
    sums.push(sum);
  }
  if (sums.some((sum, at) => (at < up.length ? electronsOf(sum) <= 0n : electronsOf(sum) >= 0n))) return unclear;
  const multipliers =
    sums.length === 2 ? leastMultipliers(electronsOf(sums[0]!), -electronsOf(sums[1]!)) : fitted(sums, sides);
  if (multipliers === undefined) return unclear;
  let electrons = 0n;
  for (let at = 0; at < up.length; at++) electrons += electronsOf(sums[at]!) * multipliers[at]!;
  const total = added(sums, multipliers, acidIon);
  // a simple ion brought in to keep the halves apart must be gone again
  const foreign = [...total].some(
    ([text, { amount }]) => amount !== 0n && !sides.left.has(text) && !sides.right.has(text) && !isMediumSpecies(text),
  );
  if (foreign) return unclear;
  // a species of a changing element that no half includes: O2 beside water from ozone
  const changing = new Set(transitions.map(({ symbol }) => symbol));
  const leftOut = [...left, ...right].some((formula) => {
    const own = String(formula);
    if (total.has(own) || isMediumSpecies(own) || (sides.left.has(own) && sides.right.has(own))) return false;
    return formula.symbols.every((symbol) => changing.has(symbol));
  });
  if (leftOut) return unclear;
  const whole = sides.isBalanced ? completed(total, sides, electrons, groups.flat()) : undefined;
  const overall = whole?.overall ?? total;
  const halves = sums.map((sum) => equationOf(sum, arrow));
  let common = 0n;
  for (const { amount } of overall.values()) common = bigGcd(common, amount);
  const answer = {
    oxidation: halves[0]!,
    reduction: halves[up.length]!,
    oxidations: halves.slice(0, up.length),
    reductions: halves.slice(up.length),
    multipliers,
    electrons: (whole?.electrons ?? electrons) / common,
    overall: equationOf(overall, arrow),
    ...(whole === undefined ? {} : { acidBase: equationOf(whole.rest, arrow) }),
    medium,
  };
  return withPlainJSON(printsItself(answer, printed));
}

function printed({ oxidations, reductions, multipliers, acidBase, overall }: Omit<HalfReactions, "toString">): string {
  const line = (kind: string) => (half: BalancedEquation, at: number) =>
    `${kind}, taken ${multipliers[at]} times: ${half}`;
  return [
    ...oxidations.map(line("oxidation")),
    ...reductions.map((half, at) => line("reduction")(half, oxidations.length + at)),
    ...(acidBase === undefined ? [] : [`acid and base: ${acidBase}`]),
    `sum: ${overall}`,
  ].join("\n");
}

function leastMultipliers(given: bigint, taken: bigint): bigint[] {
  const common = bigGcd(given, taken);
  return [taken / common, given / common];
}

/** With more than two halves, their proportions follow from the balanced equation, if that is unique. */
function fitted(sums: readonly Sum[], { left, right, isBalanced }: Sides): bigint[] | undefined {
  if (!isBalanced) return undefined;
  const ratios: { n: bigint; d: bigint }[] = [];
  for (const sum of sums) {
    const own = [...sum].find(([text, { amount }]) => {
      const there = amount < 0n ? left : right;
      return there.has(text) && !isMediumSpecies(text) && sums.filter((other) => other.has(text)).length === 1;
    });
    if (own === undefined) return undefined;
    const [text, { amount }] = own;
    const there = (amount < 0n ? left : right).get(text)!.amount;
    ratios.push({ n: there, d: amount < 0n ? -amount : amount });
  }
  let denominator = 1n;
  for (const { d } of ratios) denominator = (denominator * d) / bigGcd(denominator, d);
  const whole = ratios.map(({ n, d }) => (n * denominator) / d);
  const electrons = sums.reduce((sum, half, at) => sum + electronsOf(half) * whole[at]!, 0n);
  const common = whole.reduce(bigGcd, 0n);
  return electrons === 0n ? whole.map((value) => value / common) : undefined;
}

/** All halves added up; H+ and OH- on the same side join to water. */
function added(sums: readonly Sum[], multipliers: readonly bigint[], acidIon: Formula): Sum {
  const total: Sum = new Map();
  // the reduction first, as it is mostly written
  for (const at of [...sums.keys()].reverse()) {
    for (const { formula, amount } of sums[at]!.values()) addTo(total, formula, amount * multipliers[at]!);
  }
  const acid = total.get(String(acidIon));
  const base = total.get("OH-");
  if (acid !== undefined && base !== undefined && acid.amount > 0n && base.amount > 0n) {
    let pairs = acid.amount;
    if (base.amount < pairs) pairs = base.amount;
    acid.amount -= pairs;
    base.amount -= pairs;
    addTo(total, parseFormula("H2O"), acidIon.symbols.includes("O") ? 2n * pairs : pairs);
  }
  return total;
}

/**
 * The net equation, where the whole one is unique: the halves may call for H+ that weak acids, carbonates or ammonia
 * supply or consume. What is missing then is a reaction without electrons. Undefined where nothing is missing.
 */
function completed(
  total: Sum,
  { left, right }: Sides,
  electrons: bigint,
  transitions: readonly Transition[],
): { overall: Sum; electrons: bigint; rest: Sum } | undefined {
  const net: Sum = new Map();
  for (const { formula, amount } of left.values()) addTo(net, formula, -amount);
  for (const { formula, amount } of right.values()) addTo(net, formula, amount);
  const size = (amount: bigint) => (amount < 0n ? -amount : amount);
  // the scale between the two: that of a changing species which leaves no change of state in the rest
  for (const name of transitions.flatMap(({ reactants, products }) => [...reactants, ...products].map(String))) {
    const n = net.get(name)?.amount ?? 0n;
    const d = total.get(name)?.amount ?? 0n;
    if (n * d <= 0n) continue;
    const rest: Sum = new Map();
    for (const { formula, amount } of net.values()) addTo(rest, formula, amount * size(d));
    for (const { formula, amount } of total.values()) addTo(rest, formula, -amount * size(n));
    for (const [text, { amount }] of rest) if (amount === 0n) rest.delete(text);
    if (rest.size === 0) return undefined;
    const onSide = (sign: bigint) =>
      [...rest.values()].filter(({ amount }) => amount * sign > 0n).map(({ formula }) => formula);
    if (transitionsOf(onSide(-1n), onSide(1n)).length > 0) continue;
    const overall: Sum = new Map();
    for (const { formula, amount } of net.values()) if (amount !== 0n) addTo(overall, formula, amount * size(d));
    return { overall, electrons: electrons * size(n), rest };
  }
  return undefined;
}
