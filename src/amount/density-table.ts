// Tables of density against strength made ready: pure water first, each figure one object for good, and everything that is
// doubtful about a reading. Between two points the specific volume (1/density) runs in a straight line over the mass
// fraction: exact for ideal mixing, and it can be solved both ways in closed form.

import { type Formula, molarMass } from "../formula";
import { cite } from "../foundation/bibliography";
import { expectDimension, type Quantity, quantity } from "../quantity";
import { formulaOfArgument, inSymbol, type TemperatureLike } from "./argument";
import { SOLUTION_DENSITIES, type SolutionDensityRow } from "./data/solution-densities";
import { AmountError } from "./error";
import { splitWater } from "./split-water";
import { densityOfWater } from "./water";

/** How a density is looked up. */
export interface DensityOptions {
  /** Temperature of the solution; that of the table, 18 °C to 20 °C, unless told. At most 10 K away from it. */
  readonly temperature?: TemperatureLike | undefined;
}

/** How far a table may be from the print, where that is known; other tables by how they came to us. In g/mL. */
const DOUBT: Readonly<Record<string, string>> = {
  C12H22O11: "0.002",
  CH3COOH: "0.0021",
  H2SO4: "0.0006",
  H3PO4: "0.0005",
  HCl: "0.0006",
  HNO3: "0.0003",
  KOH: "0.004",
  NH3: "0.0001",
  NaOH: "0.0002",
};
const DOUBT_BY_KIND = { compiled: "0.0003", computed: "0.00001", memory: "0.001", estimated: "0.01" } as const;

/** @internal Half-width of what a table itself may be off, in g/mL. */
export const tableDoubt = (row: SolutionDensityRow): string => DOUBT[row.solute] ?? DOUBT_BY_KIND[row.knownAs];

/** A solution shrinks and swells by 0.01 to 0.09 % for each kelvin near room temperature. */
const EXPANSION = { value: "0.0005", halfWidth: "0.0004", unit: "K^-1" } as const;
const FARTHEST_KELVIN = 10;

interface Point {
  readonly percent: number;
  /** Density as a plain number, for the shape of the curve. */
  readonly plain: number;
  readonly w: Quantity;
  readonly rho: Quantity;
}

/** @internal One table made ready: pure water first, then its points, each one object for good. */
export interface DensityTable {
  readonly row: SolutionDensityRow;
  readonly formula: Formula;
  readonly points: readonly Point[];
  readonly doubt: Quantity;
  /** Doubt at the middle of each segment, made when first needed. */
  readonly chords: Map<number, Quantity>;
}

const tables = /* @__PURE__ */ new Map<SolutionDensityRow, DensityTable>();
let expansion: Quantity | undefined;

function prepared(row: SolutionDensityRow): DensityTable {
  const before = tables.get(row);
  if (before !== undefined) return before;
  const formula = formulaOfArgument(row.solute);
  const name = inSymbol(formula);
  const source = cite(row.source);
  const water = densityOfWater({ value: row.celsius, unit: "°C" });
  const points = row.points.map(([percent, density]): Point => {
    const decimals = density.length - density.indexOf(".") - 1;
    const rho = quantity(
      { value: density, unit: "g/mL", halfWidth: `5e-${decimals + 1}` },
      { symbol: `ρ(${percent} %)`, label: `density of ${percent} % ${name} at ${row.celsius} °C`, source },
    );
    return { percent: Number(percent), plain: Number(density), w: quantity({ value: percent, unit: "% w/w" }), rho };
  });
  const zero: Point = { percent: 0, plain: water.in("g/mL").toNumber(), w: quantity("0 % w/w"), rho: water };
  const doubt = quantity(
    { value: 0, unit: "g/mL", halfWidth: tableDoubt(row) },
    { symbol: "δ(table)", label: `doubt of the density table of ${name}`, source },
  );
  const table: DensityTable = { row, formula, points: [zero, ...points], doubt, chords: new Map() };
  tables.set(row, table);
  return table;
}

/** The tables for a solute, and what mass of the tabulated form stands for a mass of the form asked about. */
export interface TablesOfSolute {
  readonly tables: readonly DensityTable[];
  /** Undefined when the table counts the very form that is asked about. */
  readonly perAsked: Quantity | undefined;
}

/** A row with its solute read, made once. */
interface ReadRow {
  readonly row: SolutionDensityRow;
  readonly solute: Formula;
  readonly dry: Formula | undefined;
}

let rowsRead: readonly ReadRow[] | undefined;

function readRows(): readonly ReadRow[] {
  rowsRead ??= SOLUTION_DENSITIES.map((row) => {
    const solute = formulaOfArgument(row.solute);
    return { row, solute, dry: splitWater(solute).dry };
  });
  return rowsRead;
}

/** Tables of a solute, the first the preferred. A hydrate is looked up by the form its table counts. */
export function tablesOf(asked: Formula): TablesOfSolute {
  const exact = readRows().filter(({ solute }) => solute.hasSameComposition(asked));
  if (exact.length > 0) return { tables: exact.map(({ row }) => prepared(row)), perAsked: undefined };
  const { dry, units } = splitWater(asked);
  const kin = readRows().filter((read) => dry !== undefined && read.dry?.hasSameComposition(dry) === true);
  const first = kin[0];
  if (first === undefined) {
    throw new AmountError("amount.no-density-table", `no densities of ${inSymbol(asked)} solutions are tabulated`, {
      hint: "measure the density and give it, or ask tabulatedSolutes() for what is there",
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
  return { tables: kin.map(({ row }) => prepared(row)), perAsked };
}

/** @internal A point of a density curve in plain numbers. */
export interface CurvePoint {
  readonly percent: number;
  readonly plain: number;
}

/** The largest bend of 1/density around segment k, by its neighbours. */
function bend(points: readonly CurvePoint[], k: number): number {
  const second = (i: number): number => {
    const [a, b, c] = [points[i], points[i + 1], points[i + 2]];
    if (a === undefined || b === undefined || c === undefined) return 0;
    const slope = (p: CurvePoint, q: CurvePoint): number => (1 / q.plain - 1 / p.plain) / (q.percent - p.percent);
    return Math.abs((slope(b, c) - slope(a, b)) / (c.percent - a.percent));
  };
  return Math.max(second(k - 1), second(k));
}

/**
 * @internal How far a density read from the chord of segment k may be from the curve: twice the bend that the neighbouring
 * points show, times the distance to both ends. Held-out points of every table lie within it.
 */
export function chordBound(points: readonly CurvePoint[], k: number, percent: number): number {
  const [a, b] = [points[k]!, points[k + 1]!];
  const rho = Math.max(a.plain, b.plain);
  return 2 * bend(points, k) * (percent - a.percent) * (b.percent - percent) * rho * rho;
}

/** The doubt of a chord at its middle, one object for each segment, and its share elsewhere: nothing at the ends. */
function chordDoubt(table: DensityTable, k: number, percent: number): Quantity | undefined {
  const [a, b] = [table.points[k]!, table.points[k + 1]!];
  const along = (percent - a.percent) / (b.percent - a.percent);
  const share = 4 * along * (1 - along);
  if (!(share >= 0.005)) return undefined;
  let middle = table.chords.get(k);
  if (middle === undefined) {
    const halfWidth = chordBound(table.points, k, (a.percent + b.percent) / 2).toFixed(9);
    middle = quantity(
      { value: 0, unit: "g/mL", halfWidth },
      { symbol: "δ(chord)", label: `doubt of reading midway between ${a.percent} % and ${b.percent} %` },
    );
    table.chords.set(k, middle);
  }
  return middle.times(share.toFixed(2));
}

/** Everything that is doubtful about a reading of the table, as a density of value zero. */
export function doubtAt(table: DensityTable, k: number, percent: number): Quantity {
  const chord = chordDoubt(table, k, percent);
  return chord === undefined ? table.doubt : table.doubt.plus(chord);
}

/** Index of the segment that holds a mass percent; undefined outside the table. */
export function segmentOf({ points }: DensityTable, percent: number): number | undefined {
  const above = points.findIndex((point) => point.percent >= percent);
  if (above < 0 || percent < 0) return undefined;
  return Math.max(0, above - 1);
}

export const RULE = "between two tabulated points 1/density runs in a straight line over the mass fraction";

/** Temperature factor 1 - β (T - T0), undefined at the table's own temperature. */
export function expansionFactor(table: DensityTable, temperature: TemperatureLike | undefined): Quantity | undefined {
  if (temperature === undefined) return undefined;
  const T = expectDimension(temperature, "temperature", "temperature").to("°C");
  const T0 = quantity({ value: table.row.celsius, unit: "°C" }, { symbol: "T0", label: "temperature of the table" });
  const away = T.minus(T0);
  if (away.isZero() && T.standardUncertainty === undefined) return undefined;
  const kelvin = away.in("ΔK").toNumber();
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
      hint: "a table is not run out beyond its last point: measure the density and give it",
      details: { quantity: "mass fraction", low: "0 % w/w", high: `${top} % w/w`, value: what },
    },
  );
}

/** @internal d(density)/d(mass fraction) of a chord and the density, in g/mL: for carrying the table's doubt through. */
export function steepness(table: DensityTable, k: number, percent: number): { rho: number; slope: number } {
  const [a, b] = [table.points[k]!, table.points[k + 1]!];
  const slopeOfVolume = (1 / b.plain - 1 / a.plain) / ((b.percent - a.percent) / 100);
  const v = 1 / a.plain + (slopeOfVolume * (percent - a.percent)) / 100;
  return { rho: 1 / v, slope: -slopeOfVolume / (v * v) };
}

/** Ends of each segment in specific volume, as quantities. */
export function ends(table: DensityTable, k: number): { a: Point; b: Point; va: Quantity; slope: Quantity } {
  const [a, b] = [table.points[k]!, table.points[k + 1]!];
  const va = quantity("1").dividedBy(a.rho);
  const vb = quantity("1").dividedBy(b.rho);
  return { a, b, va, slope: vb.minus(va).dividedBy(b.w.minus(a.w)) };
}

export const sensitivity = (x: number): string => x.toPrecision(12);

/**
 * Which solutes have a density table, and how far it runs.
 *
 * @returns formula, last mass percent, temperature and source of each table
 * @category Solutions
 * @example
 * tabulatedSolutes().filter((t) => t.solute === "NaOH").map((t) => t.upTo.toString()) // => ["50 % w/w"]
 */
export function tabulatedSolutes(): {
  readonly solute: string;
  readonly upTo: Quantity;
  readonly temperature: Quantity;
  readonly source: string;
}[] {
  return SOLUTION_DENSITIES.map((row) => ({
    solute: row.solute,
    upTo: quantity({ value: row.points.at(-1)![0], unit: "% w/w" }),
    temperature: quantity({ value: row.celsius, unit: "°C" }),
    source: cite(row.source),
  }));
}
