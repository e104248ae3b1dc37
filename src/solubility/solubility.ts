// How much dissolves: the table read at a temperature, inside one solid only, with a stated or estimated uncertainty and
// everything a careful reader asks of a figure - basis, solid phase, source, how it is known, who disagrees.

import type { TemperatureLike } from "../amount";
import type { Formula } from "../formula";
import { cite, type SourceKey } from "../foundation/bibliography";
import { attempt, type Result } from "../foundation/error";
import { apply, expectDimension, type Quantity, type QuantityLike, quantity } from "../quantity";
import { type Branch, branchesOf, onBranch } from "./branch";
import type { CompetingFigure, SolubilityBasis, SolubilityRow } from "./data/curves";
import { SolubilityError } from "./error";
import { ruleFor } from "./rules";
import { rowOf, type Solute, soluteOf } from "./solute";

/** How a figure at a temperature came about. */
export type SolubilityKind = "tabulated" | "interpolated" | "near a single figure";

/** One part of the uncertainty of a solubility, as a relative standard uncertainty. */
export interface UncertaintyPart {
  readonly cause: string;
  readonly relative: number;
}

/** Solubility of one solute in water at one temperature. */
export interface Solubility {
  /** The solute the figure is for, without crystal water. */
  readonly formula: string;
  readonly name: string;
  readonly celsius: number;
  /** Grams of anhydrous solute with 100 g of water (all water) in the saturated solution. */
  readonly perHundredGramsWater: Quantity<"mass">;
  /** Solid in contact with the solution, which is what crystallises; undefined where the table does not say. */
  readonly solidPhase: string | undefined;
  readonly basis: "g anhydrous per 100 g water";
  readonly kind: SolubilityKind;
  readonly knownAs: SolubilityBasis;
  readonly source: SourceKey;
  /** Figures of other sources that differ by more than about 5 %, wherever they lie. */
  readonly competing: readonly CompetingFigure[];
  /** Do not lean on it without measuring. */
  readonly weak: boolean;
  readonly uncertainty: readonly UncertaintyPart[];
  readonly warnings: readonly string[];
}

/** Relative standard uncertainty taken for a kind of table; planning values of ours, checked by leave-one-out. */
const TRUST: Readonly<Record<SolubilityBasis, number>> = {
  evaluated: 0.01,
  measured: 0.02,
  compiled: 0.03,
  memory: 0.05,
  converted: 1,
};
const WEAK = 0.1;
/** A lone figure answers this many kelvin around its own temperature. */
const NEAR = 3;
/** Relative change per kelvin allowed for when a lone figure is used beside its temperature. */
const DRIFT_PER_KELVIN = 0.02;
/** Sources that differ by more than this are a spread. */
const SPREAD = 0.05;
/** A competing figure speaks for this many kelvin around it. */
const COMPETING_NEAR = 5;
/** Relative standard uncertainty in the middle of a gap of 100 K between figures; it falls with the square of the gap. */
const GAP_SPREAD = 0.3;
const SIGNIFICANT = 6;
const PLAIN_CELSIUS = /^ *([+-]?\d+(?:\.\d+)?) *°C *$/;

interface Temperature {
  readonly celsius: number;
  /** Present when the temperature carries an uncertainty of its own. */
  readonly uncertain: Quantity | undefined;
  readonly text: string;
}

function readTemperature(like: QuantityLike<"temperature">): Temperature {
  const plain = typeof like === "string" ? PLAIN_CELSIUS.exec(like) : null;
  if (plain !== null) return { celsius: Number(plain[1]), uncertain: undefined, text: `${plain[1]} °C` };
  const given = expectDimension(like, "temperature", "temperature").to("°C");
  const celsius = given.value.toNumber();
  return { celsius, uncertain: given.standardUncertainty === undefined ? undefined : given, text: `${celsius} °C` };
}

/** Branch of a temperature: the coldest whose upper end is not below it. */
function branchAt(row: SolubilityRow, celsius: number): Branch {
  const branches = branchesOf(row);
  return branches.find(({ to }) => celsius <= to) ?? branches.at(-1)!;
}

/** What the table says at a temperature, before it becomes a quantity. */
interface Reading {
  readonly grams: string;
  /** dS/dT in g/K. */
  readonly slope: number;
  readonly kind: SolubilityKind;
  readonly solid: string | undefined;
  readonly parts: readonly UncertaintyPart[];
  readonly warnings: readonly string[];
}

function digitsPart(text: string): UncertaintyPart {
  const [mantissa = text, exponent = "0"] = text.split("e");
  const decimals = mantissa.includes(".") ? mantissa.length - mantissa.indexOf(".") - 1 : 0;
  const half = 0.5 * 10 ** (Number(exponent) - decimals);
  return { cause: "last digit printed", relative: half / Math.sqrt(3) / Number(text) };
}

function refuseOutside(
  row: SolubilityRow,
  celsius: number,
  from: number,
  to: number,
  solid: string | undefined,
): never {
  const lone = from === to;
  throw new SolubilityError(
    lone ? "solubility.far-from-single-figure" : "solubility.outside-range",
    lone
      ? `the only figure for ${row.formula} is at ${from} °C; ${celsius} °C is too far from it`
      : `${row.formula} is known from ${from} to ${to} °C${solid === undefined ? "" : ` with ${solid} as the solid`}, not at ${celsius} °C`,
    {
      hint: lone
        ? `ask within ${NEAR} K of ${from} °C, or measure`
        : "solubilities are not extrapolated; measure, or stay inside",
      details: { formula: row.formula, celsius, from, to, solid },
    },
  );
}

/** Spread of the knots on both sides of a place, and of the gap between them. */
function betweenKnots(branch: Branch, celsius: number): UncertaintyPart[] {
  const { knots, scatter } = branch;
  let i = 0;
  while (i < knots.length - 2 && celsius > knots[i + 1]!.celsius) i += 1;
  const [a, b] = [knots[i]!, knots[i + 1]!];
  const gap = b.celsius - a.celsius;
  const share = (celsius - a.celsius) / gap;
  const parts: UncertaintyPart[] = [];
  if (share > 0 && share < 1) {
    parts.push({ cause: "interpolation", relative: GAP_SPREAD * (gap / 100) ** 2 * 4 * share * (1 - share) });
  }
  const rough = Math.max(Math.abs(scatter[i]!), Math.abs(scatter[i + 1]!)) / 2;
  if (rough > 0) parts.push({ cause: "scatter of neighbouring figures", relative: rough });
  const meeting = a.spread * (1 - share) + b.spread * share;
  if (meeting > 0) parts.push({ cause: "change of solid, placed from both sides", relative: meeting });
  return parts;
}

function readCurve(row: SolubilityRow, celsius: number): Reading {
  const branch = branchAt(row, celsius);
  const { knots, solid } = branch;
  const exact = row.points.find(([at]) => at === celsius);
  const first = knots[0];
  if (first === undefined) {
    const from = row.points[0]![0];
    return refuseOutside(row, celsius, from, row.points.at(-1)![0], undefined);
  }
  const last = knots.at(-1)!;
  if (knots.length === 1) {
    const distance = Math.abs(celsius - first.celsius);
    if (distance > NEAR) refuseOutside(row, celsius, first.celsius, first.celsius, solid);
    const grams = first.text ?? rounded(Math.exp(first.logarithm));
    const parts = [digitsPart(grams)];
    if (distance > 0) parts.push({ cause: "distance from the only figure", relative: DRIFT_PER_KELVIN * distance });
    const kind = distance === 0 ? "tabulated" : "near a single figure";
    const warnings = [`rests on a single figure at ${first.celsius} °C`];
    return { grams, slope: 0, kind, solid, parts, warnings };
  }
  if (celsius < first.celsius || celsius > last.celsius)
    refuseOutside(row, celsius, first.celsius, last.celsius, solid);
  if (exact === undefined) refuseUnplaced(row, celsius);
  const { value, slope } = onBranch(branch, celsius);
  const grams = exact?.[1] ?? rounded(value);
  const parts = betweenKnots(branch, celsius);
  if (exact !== undefined) parts.push(digitsPart(exact[1]));
  return { grams, slope, kind: exact === undefined ? "interpolated" : "tabulated", solid, parts, warnings: [] };
}

function refuseUnplaced(row: SolubilityRow, celsius: number): void {
  for (const [from, to] of row.changesWithin ?? []) {
    if (celsius <= from || celsius >= to) continue;
    throw new SolubilityError(
      "solubility.solid-changes",
      `the solid of ${row.formula} changes somewhere between ${from} and ${to} °C, so nothing can be read in between`,
      { hint: `ask at ${from} or ${to} °C, or measure`, details: { formula: row.formula, celsius, from, to } },
    );
  }
}

/** A computed figure in the digits it deserves. */
function rounded(grams: number): string {
  return String(Number(grams.toPrecision(SIGNIFICANT)));
}

function competingPart(row: SolubilityRow, celsius: number, grams: number): UncertaintyPart | undefined {
  let widest = 0;
  for (const figure of row.competing ?? []) {
    if (Math.abs(figure.celsius - celsius) > COMPETING_NEAR) continue;
    const own = figure.celsius === celsius ? grams : ownFigure(row, figure.celsius);
    if (own !== undefined) widest = Math.max(widest, Math.abs(Number(figure.value) / own - 1));
  }
  return widest > SPREAD ? { cause: "sources disagree", relative: widest / Math.sqrt(3) } : undefined;
}

function ownFigure(row: SolubilityRow, celsius: number): number | undefined {
  const branch = branchAt(row, celsius);
  const [first, last] = [branch.knots[0], branch.knots.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  if (branch.knots.length === 1)
    return Math.abs(first.celsius - celsius) <= COMPETING_NEAR ? Math.exp(first.logarithm) : undefined;
  return celsius < first.celsius || celsius > last.celsius ? undefined : onBranch(branch, celsius).value;
}

function warningsOf(row: SolubilityRow, reading: Reading, spread: UncertaintyPart | undefined): string[] {
  const warnings = [...reading.warnings];
  if (row.knownAs === "converted") warnings.push("converted from a solubility product: an order of magnitude only");
  else if (row.knownAs === "memory") warnings.push("recalled from memory, not confirmed in a source");
  else if (row.weak === true) warnings.push("a weak figure: measure before relying on it");
  if (spread !== undefined)
    warnings.push(`sources disagree by ${Math.round(spread.relative * Math.sqrt(3) * 100)} % here`);
  if (reading.solid === undefined) warnings.push("the table does not say which solid is in contact with the solution");
  if (row.note !== undefined) warnings.push(row.note);
  return warnings;
}

/** Figures already handed out, so that the same figure used twice is one input of a budget. */
const given = /* @__PURE__ */ new WeakMap<SolubilityRow, Map<number, Quantity>>();
const KEPT = 200;

function figureOf(row: SolubilityRow, temperature: Temperature, reading: Reading, relative: number): Quantity {
  const kept = given.get(row) ?? new Map<number, Quantity>();
  given.set(row, kept);
  const before = kept.get(temperature.celsius);
  if (before !== undefined) return before;
  const grams = Number(reading.grams);
  const standardUncertainty = (grams * relative).toPrecision(3);
  const made = quantity(
    { value: reading.grams, unit: "g", standardUncertainty },
    {
      symbol: `S(${row.formula}, ${temperature.text})`,
      label: `solubility of ${row.formula} at ${temperature.text}, g anhydrous per 100 g water`,
      source: cite(row.source),
    },
  );
  if (kept.size >= KEPT) kept.clear();
  kept.set(temperature.celsius, made);
  return made;
}

/** With an uncertain thermometer, the steepness of the curve counts too. */
function withTemperature(figure: Quantity, temperature: Quantity, slope: number): Quantity {
  return apply(
    [figure, temperature],
    {
      name: "solubility curve",
      unit: "g",
      value: ([s]) => s!,
      partials: () => [1, slope.toPrecision(SIGNIFICANT)],
    },
    { symbol: figure.symbol, label: figure.label, source: figure.source, rule: "solubility read at the temperature" },
  );
}

/** Cheap to make: the uncertainty and the quantity are worked out when somebody looks at them. */
class Answer implements Solubility {
  readonly formula: string;
  readonly name: string;
  readonly celsius: number;
  readonly solidPhase: string | undefined;
  readonly basis = "g anhydrous per 100 g water";
  readonly kind: SolubilityKind;
  readonly knownAs: SolubilityBasis;
  readonly weak: boolean;
  readonly #row: SolubilityRow;
  readonly #temperature: Temperature;
  readonly #reading: Reading;
  #figure: Quantity | undefined;

  constructor(row: SolubilityRow, temperature: Temperature, reading: Reading) {
    this.formula = row.formula;
    this.name = row.name;
    this.celsius = temperature.celsius;
    this.solidPhase = reading.solid;
    this.kind = reading.kind;
    this.knownAs = row.knownAs;
    this.weak = row.weak === true;
    this.#row = row;
    this.#temperature = temperature;
    this.#reading = reading;
  }

  get source(): SourceKey {
    const { alsoFrom, source } = this.#row;
    return alsoFrom?.at.includes(this.celsius) ? alsoFrom.source : source;
  }

  get competing(): readonly CompetingFigure[] {
    return this.#row.competing ?? [];
  }

  get #spread(): UncertaintyPart | undefined {
    return competingPart(this.#row, this.celsius, Number(this.#reading.grams));
  }

  get uncertainty(): readonly UncertaintyPart[] {
    return partsOf(this.#row, this.#reading, this.#spread);
  }

  get warnings(): readonly string[] {
    return warningsOf(this.#row, this.#reading, this.#spread);
  }

  get perHundredGramsWater(): Quantity<"mass"> {
    if (this.#figure !== undefined) return this.#figure;
    const relative = Math.sqrt(this.uncertainty.reduce((all, part) => all + part.relative ** 2, 0));
    const figure = figureOf(this.#row, this.#temperature, this.#reading, relative);
    const { uncertain } = this.#temperature;
    this.#figure = uncertain === undefined ? figure : withTemperature(figure, uncertain, this.#reading.slope);
    return this.#figure;
  }

  toJSON(): Record<keyof Solubility, unknown> {
    const { formula, name, celsius, perHundredGramsWater, solidPhase, basis, kind } = this;
    const { knownAs, source, competing, weak, uncertainty, warnings } = this;
    return {
      ...{ formula, name, celsius, perHundredGramsWater, solidPhase, basis, kind },
      ...{ knownAs, source, competing, weak, uncertainty, warnings },
    };
  }
}

function partsOf(row: SolubilityRow, reading: Reading, spread: UncertaintyPart | undefined): UncertaintyPart[] {
  const parts: UncertaintyPart[] = [{ cause: `kind of table: ${row.knownAs}`, relative: TRUST[row.knownAs] }];
  if (row.weak === true && row.knownAs !== "converted") parts.push({ cause: "weak row", relative: WEAK });
  parts.push(...reading.parts);
  if (spread !== undefined) parts.push(spread);
  return parts;
}

function noData(solute: Solute): SolubilityError {
  const text = solute.formula.toString();
  const rule = ruleFor(solute);
  return new SolubilityError("solubility.no-data", `no solubility of ${solute.anhydrous} in the table`, {
    input: text,
    position: 0,
    hint:
      rule === undefined
        ? "measure it, or pass your own figure"
        : `the rules call it ${rule.class} (${rule.rule}); measure it, or pass your own figure`,
    details: { formula: text, anhydrous: solute.anhydrous.toString(), rule },
  });
}

/**
 * How much of a salt dissolves in water at a temperature.
 *
 * The table is read inside one solid only: a curve is followed to each change of solid and never across it, and never
 * beyond its ends. A lone figure answers within 3 K of its temperature and says so.
 *
 * @param formula - the solute, with or without crystal water; `CuSO4` and `CuSO4·5H2O` give the same answer, because
 *   the basis is anhydrous salt with all the water there is
 * @param temperature - a temperature; an uncertain one (`"20 ± 1 °C"`) widens the answer by the steepness of the curve
 * @returns grams of anhydrous salt per 100 g of water with standard uncertainty, the solid in contact, and the source
 * @throws {SolubilityError} `solubility.no-data`, `solubility.outside-range`, `solubility.far-from-single-figure`,
 *   `solubility.solid-changes`, `solubility.not-a-salt`
 * @source each row of the table names its own; interpolation: Hyman, SIAM J. Sci. Stat. Comput. 4, 645 (1983)
 * @category Solubility
 * @example
 * solubilityOf("CuSO4·5H2O", "20 °C").perHundredGramsWater.value.toString() // => "20"
 * solubilityOf("Na2CO3", "20 °C").solidPhase // => "Na2CO3·10H2O"
 */
export function solubilityOf(formula: string | Formula, temperature: TemperatureLike): Solubility {
  const solute = soluteOf(formula);
  const row = rowOf(solute);
  if (row === undefined) throw noData(solute);
  const at = readTemperature(temperature);
  return new Answer(row, at, readCurve(row, at.celsius));
}

/**
 * As `solubilityOf`, but gives the refusal back as data.
 *
 * @category Solubility
 * @example
 * trySolubilityOf("NaCl", "20 °C").ok // => true
 */
export function trySolubilityOf(formula: string | Formula, temperature: TemperatureLike): Result<Solubility> {
  return attempt(() => solubilityOf(formula, temperature));
}

/** A change of the solid in contact with a saturated solution. */
export interface SolidChange {
  readonly celsius: number;
  readonly below: string | undefined;
  readonly above: string | undefined;
}

/**
 * Temperatures at which the solid in contact with the solution changes, coldest first.
 *
 * @throws {SolubilityError} `solubility.no-data`
 * @category Solubility
 * @example
 * solidChanges("Na2SO4").map((change) => change.celsius) // => [32.38]
 */
export function solidChanges(formula: string | Formula): readonly SolidChange[] {
  const solute = soluteOf(formula);
  const row = rowOf(solute);
  if (row === undefined) throw noData(solute);
  return row.solids.slice(1).map(({ solid }, i) => {
    const { solid: below, upTo } = row.solids[i]!;
    return { celsius: Number(upTo), below, above: solid };
  });
}
