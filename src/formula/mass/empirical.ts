// Empirical and molecular formulas from what an analysis found. The only judgement is when a ratio counts as whole; it is
// written down with the result, and so is the next best reading.

import { elementIndexOf } from "../../element/internal";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { gcd } from "../../foundation/gcd";
import { readable } from "../../foundation/readable";
import type { Quantity, QuantityLike } from "../../quantity";
import { guard } from "../argument";
import { FormulaError } from "../error";
import { type Formula, parseFormula } from "../formula";
import { hillOrder } from "../print/order";
import { type Constituent, neighbours, proves, ranked, type Scored, scorer } from "./empirical-rank";
import { type FoundComposition, readComposition } from "./found-composition";
import { measuredMass, molecular, ofMass } from "./molecular";
import { type MolarMassOptions, needMassOptions } from "./options";

/** How an empirical formula is judged. */
export interface EmpiricalOptions extends LookupOptions {
  /** Measured molar mass, for the molecular formula. */
  readonly molarMass?: QuantityLike | undefined;
  /** The element (or compound) that makes up the rest to 100 %, such as `"O"`. */
  readonly remainder?: string | undefined;
  /** Largest number the ratios are multiplied by to make them whole. Default 12, at most 100. */
  readonly maxMultiplier?: number | undefined;
  /** Atomic weights, as in {@link molarMass}. */
  readonly weights?: MolarMassOptions | undefined;
}

const EMPIRICAL = {
  molarMass: true,
  remainder: true,
  maxMultiplier: true,
  weights: true,
  facts: true,
} as const satisfies Fields<EmpiricalOptions>;

/** Options of an analysis. */
function needEmpiricalOptions(options: EmpiricalOptions): void {
  guard.fields(options, EMPIRICAL);
  const { remainder, maxMultiplier, weights } = options;
  if (remainder !== undefined) guard.text(remainder, "remainder");
  if (maxMultiplier !== undefined) guard.number(maxMultiplier, "maxMultiplier");
  if (weights !== undefined) needMassOptions(weights);
}

/** One candidate formula. */
export interface EmpiricalCandidate {
  /** With whole-number counts. */
  readonly formula: Formula;
  /** What the smallest ratio was multiplied by. */
  readonly multiplier: number;
  /** Largest distance of a multiplied ratio from the whole number it was rounded to. */
  readonly deviation: number;
  /** Largest difference between the found share and the share in the formula, in per cent of the whole. */
  readonly residual: number;
}

/** What {@link empiricalFormula} returns. */
export interface EmpiricalFormula extends EmpiricalCandidate {
  /** Amount of each constituent, its ratio to the smallest, and the whole number it was read as. */
  readonly ratios: readonly {
    readonly constituent: string;
    readonly amount: Quantity<"amount of substance" | "molality">;
    readonly ratio: number;
    readonly count: number;
  }[];
  /** The next best reading of the same figures; undefined if none comes near. */
  readonly runnerUp: EmpiricalCandidate | undefined;
  /**
   * Every other formula that the figures allow as well, the simplest first, at most ten: the figures alone do not decide
   * between them. Empty for a formula that stands alone.
   */
  readonly alternatives: readonly EmpiricalCandidate[];
  /** Formula of the molecule, where a molar mass was given. */
  readonly molecularFormula: Formula | undefined;
  /** How many empirical units make the molecule. */
  readonly units: number | undefined;
  /** The rounding judgement in words, line by line. */
  readonly judgement: readonly string[];
}

const DEFAULT_MULTIPLIER = 12;
const MOST_ALTERNATIVES = 10;

/** The constituents with their counts as one formula: elements run together, compounds joined by dots. */
function assemble(parts: readonly Constituent[], counts: readonly number[]): Formula {
  const elements = parts.every(({ name }) => elementIndexOf(name) >= 0 || name === "D" || name === "T");
  if (!elements) {
    return parseFormula(parts.map(({ formula }, i) => `${counts[i] === 1 ? "" : counts[i]}${formula}`).join("*"));
  }
  // Carbon compounds in Hill order, others in the order given.
  const order = parts.some(({ name }) => name === "C")
    ? hillOrder(parts.map(({ formula }) => formula.elementIndexAt(0)))
    : parts.map((_, i) => i);
  return parseFormula(order.map((i) => `${parts[i]!.name}${counts[i] === 1 ? "" : counts[i]}`).join(""));
}

/**
 * Empirical formula from an analysis, and the molecular formula if the molar mass is known.
 *
 * Amounts are mass / molar mass; each is divided by the smallest and the ratios are multiplied by 1, 2, 3... A formula whose
 * own shares, rounded, are the printed ones is taken first, the simplest of several; the others are its `alternatives`.
 * Where the figures were measured and no formula has them to the last digit, the simplest counts whose ratios lie near whole
 * numbers: within 2 % of the number, at least 0.04 and at most 0.1, or two standard uncertainties where the figures carry
 * one. A molar mass, where given, decides first: only formulas of which it is a multiple are looked at.
 * Constituents may be compounds: `{ CuSO4: "63.9 %", H2O: "36.1 %" }` gives the hydrate.
 *
 * @param found - share of each element or compound, or its mass or amount in one sample, with the digits it is known to
 * @param options - molar mass, remainder element, largest multiplier
 * @returns the formula, residual in per cent of the whole, runner-up, ratios and the judgement in words
 * @throws {FormulaError} `formula.no-composition`, `formula.mixed-composition`, `formula.not-positive`,
 *   `formula.over-hundred`, `formula.no-simple-ratio`, `formula.molar-mass-mismatch`,
 *   `formula.bad-option`
 * @source the ratio method is common practice, as are its limits; 0.4 % is what journals allow a combustion analysis (memory)
 * @category Formulas
 * @example
 * empiricalFormula({ C: "40.0 %", H: "6.71 %", O: "53.28 %" }).formula // => CH2O
 * empiricalFormula({ C: "92.3 %", H: "7.7 %" }, { molarMass: "78.1 g/mol" }).molecularFormula // => C6H6
 */
export function empiricalFormula(found: FoundComposition, options: EmpiricalOptions = {}): EmpiricalFormula {
  if (bringsFacts(options)) return withItsFacts(options, guard, (others) => empiricalFormula(found, others));
  needEmpiricalOptions(options);
  const { parts, notes } = readComposition(found, options);
  const most = Math.min(100, Math.max(1, Math.floor(options.maxMultiplier ?? DEFAULT_MULTIPLIER)));
  const unit = parts[0]!.amount.unit;
  const amounts = parts.map(({ amount }) => amount.toNumber(unit));
  const smallest = Math.min(...amounts);
  const ratios = amounts.map((amount) => amount / smallest);
  const anchor = amounts.indexOf(smallest);
  const score = scorer(parts, options.weights, ratios, anchor);
  const measured = measuredMass(options);
  const tried = new Map<string, Scored>();
  const tryCounts = (counts: readonly number[]): void => {
    const key = counts.join(",");
    if (counts.reduce(gcd) === 1 && !tried.has(key)) tried.set(key, score(counts));
  };
  for (let k = 1; k <= most; k += 1) for (const counts of neighbours(ratios, parts, k, anchor)) tryCounts(counts);
  const all = ranked([...tried.values()]);
  const fitting = measured === undefined ? all : ofMass(all, measured, (one) => assemble(parts, one.counts), options);
  const candidate = ({ multiplier, counts, deviation, residual }: Scored): EmpiricalCandidate => {
    return { formula: assemble(parts, counts), multiplier, deviation, residual };
  };
  const good = (one: Scored): boolean =>
    one.strain <= 1 || (one.misfit <= 1 && (measured !== undefined || proves(one)));
  const best = fitting.find(good) ?? all.find(good);
  const rest = all.filter((other) => other !== best);
  if (best === undefined) {
    throw new FormulaError("formula.no-simple-ratio", `no multiplier up to ${most} makes the ratios whole`, {
      hint: "look at the candidates in details, or raise maxMultiplier",
      details: {
        ratios: Object.fromEntries(parts.map(({ name }, i) => [name, ratios[i]])),
        candidates: rest
          .slice(0, 3)
          .map((other) => ({ ...candidate(other), formula: assemble(parts, other.counts).toString() })),
      },
    });
  }
  const chosen = candidate(best);
  const kept = rest.filter((other) => fitting.includes(other));
  const exact = best.misfit <= 1 || kept.some(({ misfit }) => misfit <= 1);
  const alternatives = kept
    .filter(({ misfit, strain }) => misfit <= 1 || (!exact && strain <= 1))
    .slice(0, MOST_ALTERNATIVES)
    .map(candidate);
  const next = kept.find(({ misfit, strain }) => misfit <= 1 || strain <= 3);
  const runnerUp = next === undefined ? undefined : candidate(next);
  const molecule = measured === undefined ? undefined : molecular(chosen.formula, measured, options);
  return readable({
    ...chosen,
    ratios: parts.map(({ name, amount }, i) => ({
      constituent: name,
      amount,
      ratio: ratios[i]!,
      count: best.counts[i]!,
    })),
    runnerUp,
    alternatives,
    molecularFormula: molecule?.formula,
    units: molecule?.units,
    judgement: [
      ...notes,
      ...explainRounding(parts, ratios, best, chosen, runnerUp, alternatives.length),
      ...(molecule?.words ?? []),
    ],
  });
}

function explainRounding(
  parts: readonly Constituent[],
  ratios: readonly number[],
  best: Scored,
  chosen: EmpiricalCandidate,
  runnerUp: EmpiricalCandidate | undefined,
  others: number,
): string[] {
  const list = (values: readonly string[]): string => parts.map(({ name }, i) => `${name} ${values[i]}`).join(", ");
  const lines = [`amounts divided by the smallest: ${list(ratios.map((ratio) => ratio.toFixed(3)))}`];
  if (best.multiplier > 1) {
    lines.push(`times ${best.multiplier}: ${list(ratios.map((ratio) => (ratio * best.multiplier).toFixed(3)))}`);
  }
  lines.push(
    `read as ${list(best.counts.map(String))}: ${chosen.formula}; farthest from whole ${best.deviation.toFixed(3)}, ` +
      `shares within ${chosen.residual.toFixed(2)} % of the whole`,
  );
  lines.push(
    best.misfit <= 1
      ? "its shares, rounded, are the figures given"
      : "its shares are not the given figures to their last digit: they are taken as measured",
  );
  if (others > 0) lines.push(`${others} more ${others === 1 ? "formula fits" : "formulas fit"} these figures as well`);
  lines.push(
    runnerUp === undefined
      ? "no other reading comes near"
      : `runner-up ${runnerUp.formula} (times ${runnerUp.multiplier}): shares within ${runnerUp.residual.toFixed(2)} %`,
  );
  return lines;
}
