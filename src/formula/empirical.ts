// Empirical and molecular formulas from what an analysis found. The only judgement is when a ratio counts as whole; it is
// written down with the result, and so is the next best reading.
import { isRecord, kindOf } from "../element/argument";
import { elementIndexOf } from "../element/symbols";
import { attempt, type Result } from "../foundation/error";
import { gcd } from "../foundation/gcd";
import { type Quantity, type QuantityLike, quantity } from "../quantity";
import { needNumberOption, needOptions, needTextOption } from "./argument";
import { FormulaError } from "./error";
import { type Formula, parseFormula } from "./formula";
import { type MolarMassOptions, molarMass } from "./molar-mass";
import { hillOrder } from "./order";

/** What was found, by element or by compound: all as percentages, or all as masses and amounts of one sample. */
export type FoundComposition = Readonly<Record<string, QuantityLike | number>>;

/** How an empirical formula is judged. */
export interface EmpiricalOptions {
  /** Measured molar mass, for the molecular formula. */
  readonly molarMass?: QuantityLike | undefined;
  /** The element (or compound) that makes up the rest to 100 %, such as `"O"`. */
  readonly remainder?: string | undefined;
  /** Largest number the ratios are multiplied by to make them whole. Default 12, at most 100. */
  readonly maxMultiplier?: number | undefined;
  /** Atomic weights, as in {@link molarMass}. */
  readonly weights?: MolarMassOptions | undefined;
}

/** One candidate formula. */
export interface EmpiricalCandidate {
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
    readonly amount: Quantity;
    readonly ratio: number;
    readonly count: number;
  }[];
  /** The next best reading of the same figures; undefined if none comes near. */
  readonly runnerUp: EmpiricalCandidate | undefined;
  /** Formula of the molecule, where a molar mass was given. */
  readonly molecularFormula: Formula | undefined;
  /** How many empirical units make the molecule. */
  readonly units: number | undefined;
  /** The rounding judgement in words, line by line. */
  readonly judgement: readonly string[];
}

const DEFAULT_MULTIPLIER = 12;
const MAX_CONSTITUENTS = 30;

/**
 * How far a multiplied ratio may lie from a whole number: 2 % of it, at least 0.04 and at most 0.1 (common practice in
 * teaching laboratories, no source), or two standard uncertainties where the figures carry one.
 */
function allowance(count: number, uncertainty: number): number {
  return Math.max(Math.min(0.1, Math.max(0.04, 0.02 * count)), 2 * uncertainty);
}

interface Constituent {
  readonly name: string;
  readonly formula: Formula;
  readonly given: Quantity;
  readonly amount: Quantity;
  /** Share of the whole in per cent, where masses or percentages were given. */
  readonly share: number;
}

function readComposition(
  found: FoundComposition,
  options: EmpiricalOptions,
): { parts: Constituent[]; notes: string[] } {
  if (!isRecord(found)) {
    throw new FormulaError("formula.no-composition", `what was found is an object, not ${kindOf(found)}`, {
      hint: 'such as { C: "40.0 %", H: "6.71 %", O: "53.28 %" }',
    });
  }
  const entries: [string, Quantity][] = Object.entries(found).map(([name, like]) => [
    name,
    typeof like === "number" ? quantity({ value: like, unit: "" }) : quantity(like),
  ]);
  const notes: string[] = [];
  if (entries.length === 0)
    throw new FormulaError("formula.no-composition", "nothing was found, so there is no formula");
  if (entries.length > MAX_CONSTITUENTS) {
    throw new FormulaError("formula.no-composition", `more than ${MAX_CONSTITUENTS} constituents`);
  }
  const first = entries[0]![1];
  const plain = isFraction(first);
  for (const [name, q] of entries) {
    const known = isFraction(q) || q.dimension === "mass" || q.dimension === "amount of substance";
    if (!known || isFraction(q) !== plain) {
      throw new FormulaError(
        "formula.mixed-composition",
        `${name} is of another kind (${q.dimension}) than the first (${first.dimension})`,
        {
          hint: "give all as percentages, or all as masses and amounts",
        },
      );
    }
    if (!q.isPositive()) {
      throw new FormulaError("formula.not-positive", `${name} must be more than nothing, not ${q}`, {
        details: { constituent: name },
      });
    }
  }
  let percent = plain && entries.some(([, q]) => q.unit.startsWith("%"));
  if (options.remainder !== undefined) {
    if (!plain) {
      throw new FormulaError("formula.mixed-composition", "a remainder can only make up percentages", {
        hint: "give the composition in per cent",
      });
    }
    const rest = entries.reduce((left, [, q]) => left.minus(q), quantity("100 %"));
    if (!rest.isPositive()) {
      throw new FormulaError("formula.over-hundred", "the percentages leave no remainder", {
        details: { remainder: options.remainder },
      });
    }
    entries.push([options.remainder, rest]);
    notes.push(`${options.remainder} is taken as the remainder to 100 %: ${rest.to("%").format({ significant: 4 })}`);
    percent = true;
  }
  const parts = entries.map(([name, given]): Omit<Constituent, "share"> & { mass: number } => {
    const formula = parseFormula(name);
    const M = molarMass(formula, options.weights);
    const byAmount = given.dimension === "amount of substance";
    const amount = byAmount ? given : given.dividedBy(M);
    const mass = byAmount
      ? given.in("mol").toNumber() * M.in("g/mol").toNumber()
      : given.in(plain ? "%" : "g").toNumber();
    return { name, formula, given, amount, mass };
  });
  const whole = parts.reduce((sum, { mass }) => sum + mass, 0);
  if (percent) {
    const sum = entries.reduce((total, [, q]) => total + q.in("%").toNumber(), 0);
    if (sum > 102) {
      throw new FormulaError("formula.over-hundred", `the percentages sum to ${sum.toPrecision(5)} %`, {
        hint: "a composition sums to 100 %",
        details: { sum },
      });
    }
    if (sum < 98) notes.push(`the percentages sum to ${sum.toPrecision(4)} % only: a constituent may be missing`);
  }
  return { parts: parts.map(({ mass, ...rest }) => ({ ...rest, share: (100 * mass) / whole })), notes };
}

function isFraction(q: Quantity): boolean {
  return q.dimension === "number" || q.dimension.endsWith("fraction") || q.unit === "%";
}

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

interface Scored {
  readonly multiplier: number;
  readonly counts: number[];
  readonly deviation: number;
  /** Largest deviation in units of what is allowed: 1 or less is accepted. */
  readonly strain: number;
}

function score(ratios: readonly number[], relative: readonly number[], multiplier: number): Scored {
  const counts = ratios.map((ratio) => Math.max(1, Math.round(ratio * multiplier)));
  let deviation = 0;
  let strain = 0;
  ratios.forEach((ratio, i) => {
    const distance = Math.abs(ratio * multiplier - counts[i]!);
    deviation = Math.max(deviation, distance);
    strain = Math.max(strain, distance / allowance(counts[i]!, ratio * multiplier * relative[i]!));
  });
  return { multiplier, counts, deviation, strain };
}

/**
 * Empirical formula from an analysis, and the molecular formula if the molar mass is known.
 *
 * Amounts are mass / molar mass; each is divided by the smallest and the ratios are multiplied by 1, 2, 3... until all lie
 * near whole numbers: within 2 % of the number, at least 0.04 and at most 0.1, or two standard uncertainties where the
 * figures carry one. The first multiplier that does is taken, and the next best is reported as runner-up.
 * Constituents may be compounds: `{ CuSO4: "63.9 %", H2O: "36.1 %" }` gives the hydrate.
 *
 * @param found - share of each element or compound, or its mass or amount in one sample
 * @param options - molar mass, remainder element, largest multiplier
 * @returns the formula, residual in per cent of the whole, runner-up, ratios and the judgement in words
 * @throws {FormulaError} `formula.no-composition`, `formula.mixed-composition`, `formula.not-positive`,
 *   `formula.over-hundred`, `formula.no-simple-ratio`, `formula.molar-mass-mismatch`,
 *   `formula.bad-option`
 * @source the ratio method is common practice, as are its limits
 * @category Formulas
 * @example
 * empiricalFormula({ C: "40.0 %", H: "6.71 %", O: "53.28 %" }).formula // => CH2O
 * empiricalFormula({ C: "92.3 %", H: "7.7 %" }, { molarMass: "78.1 g/mol" }).molecularFormula // => C6H6
 */
export function empiricalFormula(found: FoundComposition, options: EmpiricalOptions = {}): EmpiricalFormula {
  needOptions(options);
  needTextOption(options.remainder, "remainder");
  needNumberOption(options.maxMultiplier, "maxMultiplier");
  const { parts, notes } = readComposition(found, options);
  const most = Math.min(100, Math.max(1, Math.floor(options.maxMultiplier ?? DEFAULT_MULTIPLIER)));
  const unit = parts[0]!.amount.unit;
  const amounts = parts.map(({ amount }) => amount.in(unit).toNumber());
  const smallest = Math.min(...amounts);
  const ratios = amounts.map((amount) => amount / smallest);
  // Relative uncertainty of what was given; that of the atomic weights is far smaller than any allowance.
  const given = parts.map((part) => {
    const u = part.given.standardUncertainty;
    return u === undefined ? 0 : u.div(part.given.value).toNumber();
  });
  const least = given[amounts.indexOf(smallest)]!;
  const relative = given.map((u, i) => (amounts[i] === smallest ? 0 : Math.hypot(u, least)));

  const seen = new Set<string>();
  const all: Scored[] = [];
  for (let k = 1; k <= most; k += 1) {
    const candidate = score(ratios, relative, k);
    if (candidate.counts.reduce(gcd) > 1) continue; // the same formula as a smaller multiplier
    const key = candidate.counts.join(",");
    if (!seen.has(key)) all.push(candidate);
    seen.add(key);
  }
  const candidate = ({ multiplier, counts, deviation }: Scored): EmpiricalCandidate => {
    const formula = assemble(parts, counts);
    return { formula, multiplier, deviation, residual: residualOf(parts, counts, options) };
  };
  const best = all.find(({ strain }) => strain <= 1);
  const rest = all.filter((other) => other !== best).sort((a, b) => a.strain - b.strain);
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
  const next = rest.find(({ strain }) => strain <= 3);
  const runnerUp = next === undefined ? undefined : candidate(next);
  const molecule = molecular(chosen.formula, options);
  return {
    ...chosen,
    ratios: parts.map(({ name, amount }, i) => ({
      constituent: name,
      amount,
      ratio: ratios[i]!,
      count: best.counts[i]!,
    })),
    runnerUp,
    molecularFormula: molecule?.formula,
    units: molecule?.units,
    judgement: [...notes, ...explainRounding(parts, ratios, best, chosen, runnerUp), ...(molecule?.words ?? [])],
  };
}

/** Largest difference of the shares, in per cent of the whole. */
function residualOf(parts: readonly Constituent[], counts: readonly number[], options: EmpiricalOptions): number {
  const masses = parts.map(({ formula }, i) => counts[i]! * molarMass(formula, options.weights).value.toNumber());
  const whole = masses.reduce((sum, mass) => sum + mass, 0);
  return Math.max(...parts.map(({ share }, i) => Math.abs(share - (100 * masses[i]!) / whole)));
}

function explainRounding(
  parts: readonly Constituent[],
  ratios: readonly number[],
  best: Scored,
  chosen: EmpiricalCandidate,
  runnerUp: EmpiricalCandidate | undefined,
): string[] {
  const list = (values: readonly string[]): string => parts.map(({ name }, i) => `${name} ${values[i]}`).join(", ");
  const lines = [`amounts over the smallest: ${list(ratios.map((ratio) => ratio.toFixed(3)))}`];
  if (best.multiplier > 1) {
    lines.push(`times ${best.multiplier}: ${list(ratios.map((ratio) => (ratio * best.multiplier).toFixed(3)))}`);
  }
  lines.push(
    `read as ${list(best.counts.map(String))}: ${chosen.formula}; farthest from whole ${best.deviation.toFixed(3)}, ` +
      `shares within ${chosen.residual.toFixed(2)} % of the whole`,
  );
  lines.push(
    runnerUp === undefined
      ? "no other reading comes near"
      : `runner-up ${runnerUp.formula} (times ${runnerUp.multiplier}): shares within ${runnerUp.residual.toFixed(2)} %`,
  );
  return lines;
}

function molecular(
  empirical: Formula,
  options: EmpiricalOptions,
): { formula: Formula; units: number; words: string[] } | undefined {
  if (options.molarMass === undefined) return undefined;
  const measured = quantity(options.molarMass);
  if (measured.dimension !== "molar mass") {
    throw new FormulaError(
      "formula.molar-mass-mismatch",
      `a molar mass is expected, not ${measured} (${measured.dimension})`,
      {
        hint: 'such as "180.2 g/mol"',
      },
    );
  }
  const unit = molarMass(empirical, options.weights);
  const ratio = measured.in("g/mol").toNumber() / unit.in("g/mol").toNumber();
  const units = Math.round(ratio);
  // Within 5 % of a whole number, or two standard uncertainties of the molar mass.
  const u = measured.standardUncertainty;
  const relative = u === undefined ? 0 : u.div(measured.value).toNumber();
  const allowed = Math.max(Math.min(0.1, 0.05 * units), 2 * relative * ratio);
  if (units < 1 || Math.abs(ratio - units) > allowed) {
    throw new FormulaError(
      "formula.molar-mass-mismatch",
      `${measured} is ${ratio.toFixed(3)} times the mass of ${empirical}, no whole number`,
      { details: { ratio, empirical: empirical.toString() } },
    );
  }
  const multiplied = empirical.parts.length > 1 ? empirical.times(units) : scaleElements(empirical, units);
  return {
    formula: multiplied,
    units,
    words: [`${measured} / ${unit.format({ decimals: 3 })} = ${ratio.toFixed(3)}: ${units} units, ${multiplied}`],
  };
}

/** Every count of a formula without groups multiplied. */
function scaleElements(formula: Formula, factor: number): Formula {
  if (factor === 1) return formula;
  return parseFormula(
    formula
      .toString()
      .replace(
        /([A-Z][a-z]?)(\d*)/g,
        (_, symbol: string, digits: string) => `${symbol}${Number(digits || 1) * factor}`,
      ),
  );
}

/**
 * {@link empiricalFormula}, with the outcome as data.
 *
 * @category Formulas
 * @example
 * tryEmpiricalFormula({}).ok // => false
 */
export function tryEmpiricalFormula(found: FoundComposition, options?: EmpiricalOptions): Result<EmpiricalFormula> {
  return attempt(() => empiricalFormula(found, options));
}
