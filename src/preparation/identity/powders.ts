// Telling powders apart: which of several a jar contains, by the tests of a bench, the next one being what tells most for its time.

import type { Formula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { frozen } from "../../foundation/frozen";
import { readable } from "../../foundation/readable";
import { isQuantity, type Quantity, type QuantityLike } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { shopMaterial } from "../../substance";
import { POWDER_TESTS, type PowderTestRow, PRECIPITATION_TAKES, PRECIPITATION_TESTS } from "../data/powder-tests";
import { PlanError } from "../error";
import { informationOf } from "../measuring/information";
import { exact } from "../planning/exact";
import { formulaFrom, nameOfFormula } from "../reaction/species";
import { guard } from "../request/argument";
import {
  type Behaviour,
  density,
  inAcid,
  inFlame,
  inLye,
  inWater,
  onHeating,
  slurryPH,
  withReagent,
} from "./powder-behaviour";

/** What is asked, and what was found so far. */
export interface PowdersRequest extends LookupOptions {
  /** What the powder may be: formulas, or the name of a good of the shop whose forms it may be. */
  readonly candidates: string | readonly (string | Formula)[];
  /** What tests showed so far, by their names: `{ water: "stays", pH: 9, loss: "36 %", acid: "fizzes, dissolves" }`. */
  readonly found?: Readonly<Record<string, string | number | QuantityLike>> | undefined;
}

/** One outcome of a test and which candidates would show it. */
export interface PowderOutcome {
  /** In words; for a test with a figure, about which one. */
  readonly shows: string;
  /** Candidates that would show it, by formula. */
  readonly leaves: readonly string[];
}

/** A test with what it would show. */
export interface PowderTest {
  /** Its name, the key of `found`. */
  readonly test: string;
  /** What to do, in words. */
  readonly does: string;
  /** Time of the test at the bench. */
  readonly takes: Quantity<"time">;
  /** What it may show. */
  readonly outcomes: readonly PowderOutcome[];
  /** Candidates of which it is not known what they would show. */
  readonly unknown: readonly string[];
  /** What it tells on average, in bits. */
  readonly bits: number;
}

/** What the tests leave, and what to do next. */
export interface Powders {
  /** What it may still be. */
  readonly remaining: readonly string[];
  /** What it cannot be any more, and the test that says so. */
  readonly excluded: readonly { readonly formula: string; readonly by: string }[];
  /** Tests that would tell more, the most for its time first. */
  readonly tests: readonly PowderTest[];
  /** The first of `tests`; undefined where nothing is left to decide or no test would. */
  readonly next: PowderTest | undefined;
  /** One sentence for a person to read. */
  readonly text: string;
}

/** A test of the bench as it is run over candidates. */
interface Bench {
  readonly test: string;
  readonly does: string;
  readonly takes: string;
  readonly resolves: string | undefined;
  readonly behaviour: (formula: Formula) => Behaviour;
}

const bench = (test: string, row: PowderTestRow, behaviour: Bench["behaviour"]): Bench => ({
  test,
  does: row.does,
  takes: row.takes,
  resolves: row.resolves,
  behaviour,
});

const tests = (): readonly Bench[] => [
  bench("water", POWDER_TESTS.water, inWater),
  bench("pH", POWDER_TESTS.pH, slurryPH),
  bench("acid", POWDER_TESTS.acid, inAcid),
  bench("lye", POWDER_TESTS.lye, inLye),
  ...PRECIPITATION_TESTS.map(({ test, reagent, excess }) => ({
    test,
    does: `filter, and drop ${test === "lye by drops" ? "lye" : test} solution into the clear liquid, then an excess of it`,
    takes: PRECIPITATION_TAKES,
    resolves: undefined,
    behaviour: (formula: Formula) => withReagent(formula, reagent, excess),
  })),
  bench("flame", POWDER_TESTS.flame, inFlame),
  bench("loss", POWDER_TESTS.loss, onHeating),
  bench("density", POWDER_TESTS.density, density),
];

interface Candidate {
  readonly name: string;
  readonly formula: Formula;
}

/** Figures in groups of which no two neighbours can be told apart; words by themselves. */
function outcomesOf(behaviours: readonly Behaviour[], resolves: string | undefined): (string | undefined)[] {
  if (resolves === undefined) return behaviours.map((one) => (typeof one === "string" ? one : undefined));
  const step = exact(resolves);
  const values = behaviours.map((one) => (isQuantity(one) ? one.dividedBy(step).toNumber("") : undefined));
  const sorted = [...new Set(values.filter((one) => one !== undefined))].sort((a, b) => a - b);
  const groups: number[][] = [];
  for (const value of sorted) {
    const last = groups.at(-1);
    if (last === undefined || value - last.at(-1)! >= 1) groups.push([value]);
    else last.push(value);
  }
  const words = (group: readonly number[]): string => {
    const shown = (value: number): string =>
      step.times(String(Number(value.toPrecision(6)))).format({ significant: 2, uncertainty: "none" });
    const [least, most] = [shown(group[0]!), shown(group.at(-1)!)];
    return least === most ? `about ${least}` : `${least} to ${most}`;
  };
  return values.map((value) => (value === undefined ? undefined : words(groups.find((g) => g.includes(value))!)));
}

function testOf(one: Bench, candidates: readonly Candidate[]): PowderTest {
  const outcomes = outcomesOf(
    candidates.map(({ formula }) => one.behaviour(formula)),
    one.resolves,
  );
  const known = outcomes.filter((outcome) => outcome !== undefined);
  const distinct = [...new Set(known)];
  // What cannot be known of some candidates tells that much less.
  const share = known.length / candidates.length;
  return {
    test: one.test,
    does: one.does,
    takes: exact(one.takes) as Quantity<"time">,
    outcomes: distinct.map((shows) => ({
      shows,
      leaves: candidates.filter((_, i) => outcomes[i] === shows || outcomes[i] === undefined).map(({ name }) => name),
    })),
    unknown: candidates.filter((_, i) => outcomes[i] === undefined).map(({ name }) => name),
    bits:
      known.length === 0
        ? 0
        : share *
          informationOf(
            known.map(() => 1),
            known,
          ),
  };
}

/** Does a candidate agree with what a test showed? Undefined where that is not known. */
function agrees(one: Bench, { formula }: Candidate, found: string | number | QuantityLike): boolean | undefined {
  const expected = one.behaviour(formula);
  if (expected === undefined) return undefined;
  if (typeof expected === "string") return expected === found;
  const step = exact(one.resolves!);
  const text = (typeof found === "number" ? String(found) : found) as QuantityLike;
  const value = expectDimension(text, expected.dimension, one.test);
  const off = value.minus(expected).dividedBy(step).in("").abs();
  return off.lessThan(1);
}

const REQUEST = { candidates: true, found: true, facts: true } as const satisfies Fields<PowdersRequest>;

const MOST_CANDIDATES = 50;

function candidatesOf(given: PowdersRequest["candidates"]): Candidate[] {
  if (typeof given !== "string") guard.list(given, "candidates");
  const texts = typeof given === "string" ? shopMaterial(given).candidates.map(({ formula }) => formula) : given;
  const formulas = texts.map((one) => formulaFrom(one));
  const distinct = formulas.filter((one, i) => formulas.findIndex((other) => other.hasSameComposition(one)) === i);
  if (distinct.length > 0 && distinct.length <= MOST_CANDIDATES)
    return distinct.map((formula) => ({ name: nameOfFormula(formula), formula }));
  throw new PlanError("plan.request", `candidates must be 1 to ${MOST_CANDIDATES} formulas, not ${distinct.length}`);
}

/** The test of that name, with an outcome that it can have. */
function checked(test: string, found: string | number | QuantityLike, candidates: readonly Candidate[]): Bench {
  const all = tests();
  const one = all.find((each) => each.test === test);
  if (one === undefined)
    throw new PlanError("plan.unknown-option", `found: no test is called '${test}'`, {
      hint: all.map((each) => each.test).join(", "),
    });
  if (one.resolves !== undefined) return one;
  const words = [
    ...new Set(candidates.map(({ formula }) => one.behaviour(formula)).filter((b) => typeof b === "string")),
  ];
  if (words.length === 0 || words.includes(found as string)) return one;
  throw new PlanError("plan.observation", `${test}: no candidate would show '${String(found)}'`, {
    hint: words.join("; "),
  });
}

/**
 * Which of several powders a jar contains, by the tests of a bench; the next test is the one that tells most for its time.
 *
 * @param request - `candidates` as formulas or the name of a good of the shop; `found`, what tests showed so far, in the words of
 *   their outcomes, figures for pH, loss and density
 * @returns what remains and what is excluded by which test; the tests that would tell more, with what each candidate would show:
 *   water, pH of a slurry, acid, lye, seven reagents with their excess, colour of a flame, loss on heating, density
 * @throws {PlanError} `plan.request` for no candidates, `plan.unknown-option` for an unknown test, `plan.observation` for words no
 *   candidate would show; codes of `parseFormula`, `quantity` and `shopMaterial`
 * @source solubilities and equilibria of this library at 20 and 25 °C; losses from the formulas; times and what tests resolve:
 *   common practice; colours of flames: the table; a test of which nothing is known for a candidate excludes it never
 * @category Shelf
 * @example
 * const jar = distinguishPowders({ candidates: ["Na2CO3", "NaHCO3", "CaCO3", "CaSO4·2H2O"] });
 * jar.next!.test // => "pH"
 * distinguishPowders({ candidates: ["Na2CO3", "NaHCO3", "CaCO3", "CaSO4·2H2O"], found: { water: "stays", acid: "fizzes, dissolves" } }).remaining // => ["CaCO₃"]
 */
export function distinguishPowders(request: PowdersRequest): Powders {
  if (bringsFacts(request)) return withItsFacts(request, guard, distinguishPowders);
  guard.fields(request, REQUEST, "request");
  const candidates = candidatesOf(request.candidates);
  const found = Object.entries(request.found ?? {});
  const excluded: { formula: string; by: string }[] = [];
  const remaining = found.reduce<readonly Candidate[]>((left, [test, shown]) => {
    const one = checked(test, shown, candidates);
    return left.filter((candidate) => {
      if (agrees(one, candidate, shown) !== false) return true;
      excluded.push({ formula: candidate.name, by: test });
      return false;
    });
  }, candidates);
  const done = new Set(found.map(([test]) => test));
  const useful = tests()
    .filter(({ test }) => !done.has(test))
    .map((one) => testOf(one, remaining))
    .filter(({ bits }) => bits > 1e-9)
    .sort((a, b) => b.bits / b.takes.toNumber("min") - a.bits / a.takes.toNumber("min"));
  const next = remaining.length > 1 ? useful[0] : undefined;
  const names = remaining.map(({ name }) => name);
  return frozen(
    readable({
      remaining: names,
      excluded,
      tests: remaining.length > 1 ? useful : [],
      next,
      text:
        names.length === 0
          ? "none of the candidates agrees with every test"
          : names.length === 1
            ? `it is ${names[0]}, if it is one of the candidates`
            : next === undefined
              ? `no test here tells ${names.join(", ")} apart`
              : `${next.does}: ${next.outcomes.map(({ shows, leaves }) => `${shows} - ${leaves.join(", ")}`).join("; ")}`,
    }),
  );
}
