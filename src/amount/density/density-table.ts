// Tables of density against strength made ready: pure water first, each figure one object for good, and everything that is
// doubtful about a reading. Between two points the specific volume (1/density) runs in a straight line over the mass
// fraction: exact for ideal mixing, and it can be solved both ways in closed form.

import { type Formula, molarMass } from "../../formula";
import { splitWater } from "../../formula/internal";
import type { Fields } from "../../foundation/argument";
import { type Facts, type LookupOptions, lookingWith, ownRow, ownRows } from "../../foundation/facts";
import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { type Quantity, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { formulaOfArgument, guard, inSymbol, type TemperatureLike } from "../argument";
import { SOLUTION_DENSITIES, type SolutionDensityRow } from "../data/solution-densities";
import { cite } from "../data/sources";
import { AmountError } from "../error";
import { densityOfWater } from "../jar/water";
import { type CurvePoint, chordBound } from "./density-chord";

export const DENSITY = { temperature: true, facts: true } as const satisfies Fields<DensityOptions>;

/** How a density is looked up. */
export interface DensityOptions {
  /** Temperature of the solution; that of the table, 18 °C to 20 °C, unless given. At most 10 K away from it. */
  readonly temperature?: TemperatureLike | undefined;
  /** Facts of the caller's own, whose densities are read in place of the table's. */
  readonly facts?: Facts | undefined;
}

/** A solution shrinks and swells by 0.01 to 0.09 % for each kelvin near room temperature. */
const EXPANSION = { value: "0.0005", halfWidth: "0.0004", unit: "K^-1" } as const;
const FARTHEST_KELVIN = 10;

interface Point extends CurvePoint {
  readonly w: Quantity;
  readonly rho: Quantity;
}

/** @internal One table made ready: pure water first, then its points, each one object for good. */
interface DensityTable {
  readonly row: SolutionDensityRow;
  readonly formula: Formula;
  readonly points: readonly Point[];
  /** What another source would say differently; undefined where none is known to. */
  readonly doubt: Quantity | undefined;
  /** The segments between the points, each made when first needed. */
  readonly segments: Segment[];
}

const tables = /* @__PURE__ */ new WeakMap<SolutionDensityRow, DensityTable>();
let expansion: Quantity | undefined;

/** What the equation for water is good to near room temperature, in g/mL. */
const WATER_HALF_WIDTH = 1e-5;

/** Half of the last printed digit: 0.00005 of 1.0054. */
const halfDigit = (printed: string): string => `5e-${printed.length - printed.indexOf(".")}`;

/** @internal The points of a row in plain numbers, pure water first. */
export const curveOf = ({ celsius, points }: SolutionDensityRow): CurvePoint[] => [
  { percent: 0, plain: densityOfWater(`${celsius} °C`).toNumber("g/mL"), half: WATER_HALF_WIDTH },
  ...points.map(([percent, density]) => ({
    percent: Number(percent),
    plain: Number(density),
    half: Number(halfDigit(density)),
  })),
];

function prepared(row: SolutionDensityRow): DensityTable {
  const before = tables.get(row);
  if (before !== undefined) return before;
  const formula = formulaOfArgument(row.solute);
  const name = inSymbol(formula);
  const curve = curveOf(row);
  const points = row.points.map(([percent, density, source = row.source], i): Point => {
    const plain = curve[i + 1]!;
    const rho = quantity(
      { value: density, unit: "g/mL", halfWidth: halfDigit(density) },
      {
        symbol: `ρ(${percent} %)`,
        label: `density of ${percent} % ${name} at ${row.celsius} °C`,
        source: cite(source),
      },
    );
    return { ...plain, w: quantity({ value: percent, unit: "% w/w" }), rho };
  });
  const zero: Point = { ...curve[0]!, w: quantity("0 % w/w"), rho: densityOfWater(`${row.celsius} °C`) };
  const doubt =
    row.doubt === undefined
      ? undefined
      : quantity(
          { value: 0, unit: "g/mL", halfWidth: row.doubt },
          { symbol: "δ(table)", label: `how far sources differ over ${name} solutions`, source: cite(row.source) },
        );
  const table: DensityTable = { row, formula, points: [zero, ...points], doubt, segments: [] };
  tables.set(row, table);
  return table;
}

/** The tables for a solute, and what mass of the tabulated form stands for a mass of the form asked about. */
interface TablesOfSolute {
  readonly tables: readonly DensityTable[];
  /** Undefined when the table counts the very form that is asked about. */
  readonly perAsked: Quantity | undefined;
}

/** The tables of one solute, the preferred first. */
export interface SoluteRows {
  readonly solute: Formula;
  readonly rows: SolutionDensityRow[];
}

/** Solutes by what they are, and by what they are without their water: isomers share no figure. */
interface SoluteIndex {
  readonly exact: ReadonlyMap<string, SoluteRows>;
  readonly dry: ReadonlyMap<string, SoluteRows>;
}

/** One printed point beside water shows no bend, so that nobody could say how good a reading between the two is. */
const isCurve = ({ points }: SolutionDensityRow): boolean => points.length > 1;

const identityOf = (formula: Formula): string => constitutionOf(formula).identity;

let solutes: SoluteIndex | undefined;

/** The index is made on first use. */
function soluteIndex(): SoluteIndex {
  if (solutes !== undefined) return solutes;
  const exact = new Map<string, SoluteRows>();
  const dry = new Map<string, SoluteRows>();
  for (const row of SOLUTION_DENSITIES().filter(isCurve)) {
    const solute = formulaOfArgument(row.solute);
    const known = exact.get(identityOf(solute));
    if (known !== undefined) {
      known.rows.push(row);
      continue;
    }
    const entry = { solute, rows: [row] };
    exact.set(identityOf(solute), entry);
    const salt = splitWater(solute).dry;
    if (salt !== undefined && !dry.has(identityOf(salt))) dry.set(identityOf(salt), entry);
  }
  solutes = { exact, dry };
  return solutes;
}

/** Tables of a solute, the first the preferred. A hydrate is looked up by the form its table counts. */
export function tablesOf(asked: Formula): TablesOfSolute {
  const index = soluteIndex();
  const own = (of: Formula) => ownRow<SoluteRows>("densities", () => identityOf(of));
  const exact = own(asked) ?? index.exact.get(identityOf(asked));
  if (exact !== undefined) return { tables: exact.rows.map(prepared), perAsked: undefined };
  const { dry, units } = splitWater(asked);
  const first = dry === undefined ? undefined : (own(dry) ?? index.dry.get(identityOf(dry)));
  if (first === undefined) {
    throw new AmountError("amount.no-density-table", `no densities of ${inSymbol(asked)} solutions are tabulated`, {
      hint:
        constitutionOf(asked).readings.length > 1
          ? `it may be ${list(constitutionOf(asked).readings, "or")}: write it so that the structure shows`
          : "measure the density and give it, or ask tabulatedSolutes() for what is there",
      details: { solute: asked.toString() },
    });
  }
  const counted = first.solute;
  const ratio = units.div(splitWater(counted).units);
  const perAsked = molarMass(counted)
    .times(ratio)
    .dividedBy(molarMass(asked))
    .named({
      symbol: `m(${inSymbol(counted)})/m(${inSymbol(asked)})`,
      rule: `the density table counts ${inSymbol(counted)}: mass of it for each mass of ${inSymbol(asked)}`,
    });
  return { tables: first.rows.map(prepared), perAsked };
}

/** One stretch of a table: specific volume at its start, slope over the mass fraction, and the doubt of the chord. */
interface Segment {
  readonly a: Point;
  readonly b: Point;
  readonly va: Quantity;
  readonly slope: Quantity;
  /** Doubt of the chord at its middle. */
  readonly chord: Quantity;
}

/** @internal Segment k of a table, one object for good, so that a point used twice is one input. */
export function segmentAt(table: DensityTable, k: number): Segment {
  const before = table.segments[k];
  if (before !== undefined) return before;
  const [a, b] = [table.points[k]!, table.points[k + 1]!];
  const [va, vb] = [a, b].map(({ rho, percent }) =>
    quantity("1")
      .dividedBy(rho)
      .named({ symbol: `v(${percent} %)`, rule: "specific volume = 1 / density" }),
  ) as [Quantity, Quantity];
  const chord = quantity(
    { value: 0, unit: "g/mL", halfWidth: chordBound(table.points, k).toFixed(9) },
    { symbol: "δ(chord)", label: `uncertainty of reading midway between ${a.percent} % and ${b.percent} %` },
  );
  const slope = vb
    .minus(va)
    .dividedBy(b.w.minus(a.w))
    .named({ symbol: "v′", rule: "slope of the specific volume against the mass fraction" });
  const segment = { a, b, va, slope, chord };
  table.segments[k] = segment;
  return segment;
}

/** Everything that is doubtful about a reading of the table, as a density of value zero; undefined when nothing is. */
export function doubtAt(table: DensityTable, { a, b, chord }: Segment, percent: number): Quantity | undefined {
  const along = (percent - a.percent) / (b.percent - a.percent);
  const share = 4 * along * (1 - along);
  // nothing at the ends
  if (!(share >= 0.005)) return table.doubt;
  const here = chord.times(String(Number(share.toFixed(2))));
  return table.doubt === undefined ? here : table.doubt.plus(here);
}

/** Index of the segment that holds a mass percent; undefined outside the table. */
export function segmentOf({ points }: DensityTable, percent: number): number | undefined {
  const above = points.findIndex((point) => point.percent >= percent);
  if (above < 0 || percent < 0) return undefined;
  return Math.max(0, above - 1);
}

export const RULE = "between two tabulated points 1/density is linear in the mass fraction";

/** Temperature factor 1 - β (T - T0), undefined at the table's own temperature. */
export function expansionFactor(table: DensityTable, temperature: TemperatureLike | undefined): Quantity | undefined {
  if (temperature === undefined) return undefined;
  const T = expectDimension(temperature, "temperature", "temperature").to("°C");
  const T0 = quantity({ value: table.row.celsius, unit: "°C" }, { symbol: "T0", label: "temperature of the table" });
  const away = T.minus(T0);
  if (away.isZero() && T.standardUncertainty === undefined) return undefined;
  const kelvin = away.toNumber("ΔK");
  if (Math.abs(kelvin) > FARTHEST_KELVIN) {
    throw new AmountError(
      "amount.outside-range",
      `densities of ${inSymbol(table.formula)} are tabulated at ${table.row.celsius} °C; ${T} is too far from it`,
      {
        hint: "measure the density at that temperature and give it",
        details: {
          quantity: "temperature",
          low: `${table.row.celsius - FARTHEST_KELVIN} °C`,
          high: `${table.row.celsius + FARTHEST_KELVIN} °C`,
          value: String(T),
        },
      },
    );
  }
  expansion ??= quantity(EXPANSION, {
    symbol: "β",
    label: "cubic expansion of aqueous solutions near 20 °C",
    source: cite("commonPractice"),
  });
  const warmer = T.named({ symbol: T.symbol ?? "T", label: T.label ?? "temperature of the solution" }).minus(T0);
  return quantity("1").minus(expansion.times(warmer));
}

export const stated = (table: DensityTable): string =>
  `density of the solution at ${table.row.celsius} °C, the temperature of its table`;

export function outside(solute: Formula, all: readonly DensityTable[], what: string): AmountError {
  const top = Math.max(...all.map(({ points }) => points.at(-1)!.percent));
  return new AmountError(
    "amount.outside-range",
    `densities of ${inSymbol(solute)} run from 0 % to ${top} % w/w, not to ${what}`,
    {
      hint: "a table is not extrapolated beyond its last point: measure the density and give it",
      details: { quantity: "mass fraction", low: "0 % w/w", high: `${top} % w/w`, value: what },
    },
  );
}

/** @internal d(density)/d(mass fraction) of a chord and the density, in g/mL: for carrying the table's doubt through. */
export function steepness({ a, b }: Segment, percent: number): { rho: number; slope: number } {
  const slopeOfVolume = (1 / b.plain - 1 / a.plain) / ((b.percent - a.percent) / 100);
  const v = 1 / a.plain + (slopeOfVolume * (percent - a.percent)) / 100;
  return { rho: 1 / v, slope: -slopeOfVolume / (v * v) };
}

/**
 * Which solutes have a density table, and how far it runs.
 *
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns formula, last mass percent, temperature and source of each table
 * @category Solutions
 * @example
 * tabulatedSolutes().filter((t) => t.solute === "NaOH").map((t) => t.upTo.toString()) // => ["50 % w/w"]
 */
export function tabulatedSolutes(options?: LookupOptions): {
  readonly solute: string;
  readonly upTo: Quantity<"mass fraction">;
  readonly temperature: Quantity<"temperature">;
  readonly source: string;
}[] {
  if (options !== undefined) return lookingWith(options, guard, () => tabulatedSolutes());
  const own = ownRows<SoluteRows>("densities").flatMap(({ rows }) => rows);
  const replaced = new Set(own.map(({ solute }) => identityOf(formulaOfArgument(solute))));
  const others = SOLUTION_DENSITIES().filter(
    (row) => isCurve(row) && (own.length === 0 || !replaced.has(identityOf(formulaOfArgument(row.solute)))),
  );
  return [...new Set(own), ...others].map((row) => ({
    solute: row.solute,
    upTo: quantity({ value: row.points.at(-1)![0], unit: "% w/w" }),
    temperature: quantity({ value: row.celsius, unit: "°C" }),
    source: cite(row.source),
  }));
}
