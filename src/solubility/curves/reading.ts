// The table read at a temperature: the figure, how it came about, and what it is worth - kind of table, scatter of the
// neighbours, width of the gap, disagreement of sources. Plain numbers; solubility.ts makes them a quantity.

import { parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import type { SolubilityBasis, SolubilityRow } from "../data/curves";
import type { SourceKey } from "../data/sources";
import { SolubilityError } from "../error";
import { anionsOf } from "../precipitating/ions";
import { type Branch, branchesOf, ONE_SIDED_SPREAD, onBranch, runOut } from "./branch";

/**
 * How a figure at a temperature came about; "converted" is an ideal figure from a solubility product, at its temperature,
 * "extrapolated" a curve run out by a few kelvin below its coldest figure.
 */
export type SolubilityKind = "tabulated" | "converted" | "interpolated" | "extrapolated" | "near a single figure";

/** One part of the uncertainty of a solubility, as a relative standard uncertainty. */
export interface UncertaintyPart {
  /** Where the uncertainty comes from, in words. */
  readonly cause: string;
  /** Relative standard uncertainty: 0.05 for 5 %. */
  readonly relative: number;
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
/**
 * A lone figure answers this many kelvin around its own temperature: so far that 25 °C speaks for a room of 20 °C, and a
 * conversion, which is no better than its factor anyway, from 15 to 35 °C.
 */
const NEAR = 6;
const NEAR_CONVERTED = 10;
/** The same for the lone figure of one solid among several: the solid may change on the way. */
const NEAR_AMONG_SOLIDS = 3;
/**
 * Relative change per kelvin allowed for when a lone figure is used beside its temperature, as a standard uncertainty that
 * grows with the distance. It is the root mean square of d ln S / dT of our own curves at 25 °C: 2.2 % per kelvin, and 3.3 %
 * for the salts of which less than 1 g dissolves (checked by test).
 */
const DRIFT_PER_KELVIN = 0.022;
const DRIFT_OF_SPARING = 0.033;
/** Grams per 100 g of water below which a salt counts as sparingly soluble here. */
const SPARING = 1;
/** Sources that differ by more than this are a spread. */
const SPREAD = 0.05;
/** A competing figure speaks for this many kelvin around it. */
const COMPETING_NEAR = 5;
/** Relative standard uncertainty in the middle of a gap of 100 K between figures; it falls with the square of the gap. */
const GAP_SPREAD = 0.3;
/** Digits of a computed figure. */
export const SIGNIFICANT = 6;

/** Branch of a temperature: the coldest whose upper end is not below it. */
function branchAt(row: SolubilityRow, celsius: number): Branch {
  const branches = branchesOf(row);
  return branches.find(({ to }) => celsius <= to) ?? branches.at(-1)!;
}

/** What the table says at a temperature, before it becomes a quantity. */
export interface Reading {
  readonly row: SolubilityRow;
  readonly celsius: number;
  readonly branch: Branch;
  /** g anhydrous per 100 g water. */
  readonly value: number;
  /** The figure as printed, when the temperature is one of the table's. */
  readonly printed: string | undefined;
  /** dS/dT in g/K. */
  readonly slope: number;
  readonly kind: SolubilityKind;
}

function digitsPart(text: string): UncertaintyPart {
  const [mantissa = text, exponent = "0"] = text.split("e");
  const decimals = mantissa.includes(".") ? mantissa.length - mantissa.indexOf(".") - 1 : 0;
  const half = 0.5 * 10 ** (Number(exponent) - decimals);
  return { cause: "last digit printed", relative: half / Math.sqrt(3) / Number(text) };
}

/** A figure of the table, in words and in data. */
function figureBeside(row: SolubilityRow, [celsius, grams]: readonly [number, string]) {
  const { solid } = branchAt(row, celsius);
  return { celsius, grams, solid, text: `${grams} g at ${celsius} °C${solid === undefined ? "" : ` over ${solid}`}` };
}

/** How far the lone figure of a branch speaks; below the coldest figure of all the table names no other solid. */
function nearOf({ knownAs, points }: SolubilityRow, celsius: number): number {
  if (points.length > 1) return celsius < points[0]![0] ? NEAR : NEAR_AMONG_SOLIDS;
  return knownAs === "converted" ? NEAR_CONVERTED : NEAR;
}

/** Refuse what the table does not reach, saying which figure is missing and which are nearest. */
function refuseUnread(row: SolubilityRow, celsius: number, { solid, knots }: Branch): never {
  const { formula, points } = row;
  const [from, to] = [knots[0]?.celsius, knots.at(-1)?.celsius];
  const lone = from !== undefined && from === to;
  const below = points.filter(([at]) => at < celsius).at(-1);
  const above = points.find(([at]) => at > celsius);
  const nearest = [below, above].filter((point) => point !== undefined).map((point) => figureBeside(row, point));
  const over = solid === undefined ? "" : ` over ${solid}`;
  const problem =
    below !== undefined && above !== undefined
      ? `a figure of ${formula} at ${celsius} °C${over} is missing: none is tabulated between ${below[0]} and ${above[0]} °C, where the solid changes`
      : points.length === 1
        ? `the only figure for ${formula} is at ${points[0]![0]} °C; ${celsius} °C is too far from it`
        : `${formula} is known from ${points[0]![0]} to ${points.at(-1)![0]} °C; a figure at ${celsius} °C${over} is missing`;
  const figures = `nearest: ${list(nearest.map(({ text }) => text))}`;
  const ask = lone
    ? `ask within ${nearOf(row, celsius)} K of ${from} °C, or measure`
    : `solubilities are not extrapolated, but for ${NEAR} K below the coldest figure; measure, or pass your own figure`;
  throw new SolubilityError(lone ? "solubility.far-from-single-figure" : "solubility.outside-range", problem, {
    hint: `${figures}; ${ask}${row.note === undefined ? "" : ` (${row.note})`}`,
    details: { formula, celsius, from, to, solid, nearest: nearest.map(({ text: _, ...figure }) => figure) },
  });
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

/** Read the table; refuse what it does not reach. */
export function readCurve(row: SolubilityRow, celsius: number): Reading {
  const branch = branchAt(row, celsius);
  const { knots } = branch;
  const printed = row.points.find(([at]) => at === celsius)?.[1];
  const first = knots[0];
  if (first === undefined) return refuseUnread(row, celsius, branch);
  const last = knots[knots.length - 1]!;
  if (knots.length === 1) {
    const distance = Math.abs(celsius - first.celsius);
    if (distance > nearOf(row, celsius)) refuseUnread(row, celsius, branch);
    if (distance > 0 && row.changesWithin !== undefined) refuseUnplaced(row, celsius);
    const value = first.grams;
    const kind = distance > 0 ? "near a single figure" : row.knownAs === "converted" ? "converted" : "tabulated";
    return { row, celsius, branch, value, printed: first.text, slope: 0, kind };
  }
  if (celsius < first.celsius || celsius > last.celsius) {
    return belowColdest(row, celsius, branch) ?? refuseUnread(row, celsius, branch);
  }
  if (printed === undefined && row.changesWithin !== undefined) refuseUnplaced(row, celsius);
  const { value, slope } = onBranch(branch, celsius);
  return { row, celsius, branch, value, printed, slope, kind: printed === undefined ? "interpolated" : "tabulated" };
}

/** A curve that begins at 25 °C speaks for a room of 20 °C, none for ice: its two coldest figures in a straight line of ln S against 1/T. */
function belowColdest(row: SolubilityRow, celsius: number, branch: Branch): Reading | undefined {
  const [near, far] = branch.knots;
  const distance = row.points[0]![0] - celsius;
  if (near === undefined || near.celsius !== row.points[0]![0] || distance <= 0 || distance > NEAR || celsius < 0)
    return undefined;
  const end = runOut(near, far, celsius);
  if (end === undefined) return undefined;
  const value = Math.exp(end.logarithm);
  const slope = (near.grams - value) / distance;
  return { row, celsius, branch, value, printed: undefined, slope, kind: "extrapolated" };
}

/** Parts of the uncertainty that come from how the figure was read. */
function readingParts({ celsius, branch, printed, kind, value }: Reading): UncertaintyPart[] {
  const [first] = branch.knots;
  if (kind === "extrapolated") {
    const relative = ONE_SIDED_SPREAD * Math.abs(Math.log(value / first!.grams));
    return [{ cause: "extrapolated below the coldest figure", relative }];
  }
  if (branch.knots.length > 1) {
    const parts = betweenKnots(branch, celsius);
    if (printed !== undefined) parts.push(digitsPart(printed));
    return parts;
  }
  const parts = printed === undefined ? [] : [digitsPart(printed)];
  if (kind === "near a single figure" && first !== undefined) {
    const distance = Math.abs(celsius - first.celsius);
    const drift = first.grams < SPARING ? DRIFT_OF_SPARING : DRIFT_PER_KELVIN;
    parts.push({ cause: "distance from the only figure", relative: drift * distance });
  }
  return parts;
}

function refuseUnplaced(row: SolubilityRow, celsius: number): void {
  for (const [from, to] of row.changesWithin!) {
    if (celsius <= from || celsius >= to) continue;
    throw new SolubilityError(
      "solubility.solid-changes",
      `the solid of ${row.formula} changes somewhere between ${from} and ${to} °C, and where is missing: nothing can be read in between`,
      { hint: `ask at ${from} or ${to} °C, or measure`, details: { formula: row.formula, celsius, from, to } },
    );
  }
}

/** How far other sources are off, where they differ by more than 5 %. */
function competingPart({ row, celsius, value }: Reading): UncertaintyPart | undefined {
  let widest = 0;
  for (const figure of row.competing ?? []) {
    if (Math.abs(figure.celsius - celsius) > COMPETING_NEAR) continue;
    const own = figure.celsius === celsius ? value : ownFigure(row, figure.celsius);
    if (own !== undefined) widest = Math.max(widest, Math.abs(Number(figure.value) / own - 1));
  }
  return widest > SPREAD ? { cause: "sources disagree", relative: widest / Math.sqrt(3) } : undefined;
}

function ownFigure(row: SolubilityRow, celsius: number): number | undefined {
  const branch = branchAt(row, celsius);
  const [first, last] = [branch.knots[0], branch.knots.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  if (branch.knots.length === 1) return Math.abs(first.celsius - celsius) <= COMPETING_NEAR ? first.grams : undefined;
  return celsius < first.celsius || celsius > last.celsius ? undefined : onBranch(branch, celsius).value;
}

/** Sources of the figures on both sides of a place, the nearer one's first; one source when they agree. */
export function sourcesOf({ row, celsius }: Reading): readonly SourceKey[] {
  const { points, source, alsoFrom } = row;
  if (alsoFrom === undefined) return [source];
  const below = points.filter(([at]) => at <= celsius).at(-1)?.[0];
  const above = points.find(([at]) => at >= celsius)?.[0];
  return [below, above]
    .filter((at) => at !== undefined)
    .sort((a, b) => Math.abs(a - celsius) - Math.abs(b - celsius))
    .map((at) => (alsoFrom.at.includes(at) ? alsoFrom.source : source))
    .filter((key, i, keys) => keys.indexOf(key) === i);
}

/** How far an ideal conversion falls short, by anion: what measured solubilities say of the same salts (from memory). */
const FALLS_SHORT: readonly { readonly anions: readonly string[]; readonly times: string }[] = [
  { anions: ["CO3^2-"], times: "2 (calcium) to 40 times (lead)" },
  { anions: ["PO4^3-", "AsO4^3-"], times: "100 to 10 000 times" },
  { anions: ["OH-", "S^2-", "CN-"], times: "many powers of ten" },
];

function convertedWarnings({ formula }: SolubilityRow): string[] {
  const [anion] = anionsOf(parseFormula(formula));
  const known = FALLS_SHORT.find(({ anions }) => anion !== undefined && anions.includes(anion));
  return [
    known === undefined
      ? "converted from a solubility product, ideally: an order of magnitude only; ion pairs and complexes dissolve more"
      : `converted from a solubility product, ideally, no more than a lower bound: water reacts with the ${anion} or the metal, and measured solubilities of such salts are higher by ${known.times} (from memory)`,
  ];
}

/** What a careful reader has to know about the figure. */
export function warningsOf(reading: Reading): string[] {
  const { row, branch } = reading;
  const { knots, solid } = branch;
  const spread = competingPart(reading);
  const warnings = knots.length === 1 ? [`rests on a single figure at ${knots[0]!.celsius} °C`] : [];
  if (reading.kind === "extrapolated")
    warnings.push(`extrapolated below the coldest figure, which is at ${knots[0]!.celsius} °C`);
  if (row.knownAs === "converted") warnings.push(...convertedWarnings(row));
  else if (row.knownAs === "memory") warnings.push("recalled from memory, not confirmed in a source");
  else if (row.weak === true) warnings.push("a weak figure: measure before relying on it");
  if (spread !== undefined)
    warnings.push(`sources disagree by ${Math.round(spread.relative * Math.sqrt(3) * 100)} % here`);
  if (solid === undefined) warnings.push("the table does not say which solid is in contact with the solution");
  if (row.note !== undefined) warnings.push(row.note);
  return warnings;
}

/** All parts of the uncertainty of a figure. */
export function partsOf(reading: Reading): UncertaintyPart[] {
  const { row } = reading;
  const parts: UncertaintyPart[] = [{ cause: `kind of table: ${row.knownAs}`, relative: TRUST[row.knownAs] }];
  if (row.weak === true && row.knownAs !== "converted") parts.push({ cause: "weak row", relative: WEAK });
  parts.push(...readingParts(reading));
  const spread = competingPart(reading);
  if (spread !== undefined) parts.push(spread);
  return parts;
}
