// Solubility products as quantities, at 25 °C and zero ionic strength, with the ions each solid sets free.

import {
  dissolutionOf,
  readReaction,
  SOLUBILITY_PRODUCTS,
  type SolubilityProductRow,
  WATER,
} from "../../aqueous/internal";
import type { Formula } from "../../formula";
import { byDryRatio } from "../../formula/internal";
import { type LookupOptions, lookingWith, ownRows } from "../../foundation/facts";
import { frozen } from "../../foundation/frozen";
import { readable } from "../../foundation/readable";
import { constitutionOf } from "../../ion";
import { chargeOfIon } from "../../ion/internal";
import { applyFunction, type Quantity, quantity } from "../../quantity";
import { guard, needTextOption } from "../argument";
import { type Solute, soluteOf } from "../curves/solute";
import { cite, type SourceKey } from "../data/sources";
import { SolubilityError } from "../error";

/** An ion that a solid sets free, and how many. */
export interface DissolvedIon {
  /** With its charge. */
  readonly formula: string;
  /** In elementary charges, with its sign. */
  readonly charge: number;
  /** Ions from each formula unit of the solid. */
  readonly count: number;
}

/** Solubility product of one solid at 25 °C and zero ionic strength. */
export interface SolubilityProduct {
  /** Formula of the solid, as the table lists it. */
  readonly solid: string;
  /** Name of the solid. */
  readonly name: string;
  /** Mineral name, age or polymorph. */
  readonly form: string | undefined;
  /** The dissolution the constant is for. */
  readonly dissolution: string;
  /** What one formula unit sets free. */
  readonly ions: readonly DissolvedIon[];
  /** Negative decimal logarithm; its uncertainty is half the spread of the sources. */
  readonly pKsp: Quantity<"number">;
  /** The constant, concentrations in mol/L. */
  readonly value: Quantity<"number">;
  /** Key of the source; `cite` prints it. */
  readonly source: SourceKey;
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

/** A row of the table, or one of the caller's own with the figure as it was given. */
export type ProductRow = SolubilityProductRow & { readonly own?: Quantity };

/** Standard uncertainty of a pKsp when only one source is at hand. */
const LONE_SPREAD = 0.1;

/** @internal The ions of a dissolution, water left out. */
export function ionsOf(row: ProductRow): DissolvedIon[] {
  return readReaction(dissolutionOf(row)).right.flatMap(([count, formula]) =>
    formula === WATER ? [] : [{ formula, charge: chargeOfIon(formula), count }],
  );
}

/** The same hydrate first, then the same atoms otherwise written (FeO(OH)·H2O), then the salt without its water. */
const keysOf = ({ formula, key }: Solute): string[] => [
  constitutionOf(formula).identity,
  `atoms ${formula.compositionText}`,
  key,
];

const rowsLike = /* @__PURE__ */ byDryRatio(SOLUBILITY_PRODUCTS, ({ solid }) => solid);

const ownProducts = (): readonly ProductRow[] => ownRows<ProductRow>("products");

/** Of two rows of one solid the caller's own alone counts. */
const ownAlone = (rows: readonly ProductRow[]): readonly ProductRow[] =>
  rows.some(({ own }) => own !== undefined) ? rows.filter(({ own }) => own !== undefined) : rows;

function rowsOf(solid: string | Formula): readonly ProductRow[] {
  const solute = soluteOf(solid);
  const listed = [...ownProducts(), ...rowsLike(solute.formula)];
  const rows = listed.map((row) => ({ row, keys: keysOf(soluteOf(row.solid)) }));
  const key = keysOf(solute).find((one) => rows.some(({ keys }) => keys.includes(one)));
  return key === undefined ? [] : ownAlone(rows.filter(({ keys }) => keys.includes(key)).map(({ row }) => row));
}

/** @internal Every row, the caller's own in place of those of the same solids. */
export function everyProduct(): readonly ProductRow[] {
  const own = ownProducts();
  if (own.length === 0) return SOLUBILITY_PRODUCTS();
  const replaced = new Set(own.map(({ solid }) => keysOf(soluteOf(solid))[0]));
  return [...own, ...SOLUBILITY_PRODUCTS().filter(({ solid }) => !replaced.has(keysOf(soluteOf(solid))[0]))];
}

/** @internal Rows of a solid in the convention this library computes with, of one form if named; none where there is none. */
export function findRows(solid: string | Formula, form: string | undefined): readonly ProductRow[] {
  needTextOption(form, "form");
  const found = rowsOf(solid).filter(({ convention }) => convention !== "free-sulfide");
  if (form === undefined || found.length === 0 || found[0]!.own !== undefined) return found;
  const named = found.filter((candidate) => candidate.form?.includes(form) === true);
  if (named.length > 0) return named;
  throw new SolubilityError("solubility.no-data", `no form '${form}' of ${String(solid)}`, {
    input: String(solid),
    position: 0,
    hint: `forms: ${found.map((f) => f.form ?? "(unnamed)").join("; ")}`,
    details: { solid: String(solid), form },
  });
}

function findRow(solid: string | Formula, form: string | undefined): ProductRow {
  const [row] = findRows(solid, form);
  if (row !== undefined) return row;
  const text = String(solid);
  throw new SolubilityError("solubility.no-data", `no solubility product of ${text}`, {
    input: text,
    position: 0,
    hint: "if you know it, molarSolubility takes it as ksp",
    details: { solid: text, form },
  });
}

/** Forms that precipitate first, before they age. */
const FRESH = /fresh|amorphous|precipitated/;

/** @internal The fresh form of a solid, where the table tells it from the aged one. */
export function freshForm(solid: string | Formula): SolubilityProductRow | undefined {
  return rowsOf(solid).find(({ form, convention }) => convention !== "free-sulfide" && FRESH.test(form ?? ""));
}

/** Constants already handed out, so that one constant used twice is one input of a budget. */
const given = /* @__PURE__ */ new WeakMap<SolubilityProductRow, SolubilityProduct>();

/** 10 to the power of minus a number. */
function powerOfTen(pK: Quantity, symbol: string, label: string): Quantity {
  const read = (value: number): string => (10 ** -value).toPrecision(12);
  return applyFunction(
    [pK],
    {
      name: "10^-",
      unit: "",
      value: ([p]) => read(p!.toNumber()),
      partials: ([p]) => [(-Math.LN10 * 10 ** -p!.toNumber()).toPrecision(12)],
    },
    { symbol, label, rule: "Ksp = 10^(−pKsp)" },
  );
}

function productOf(row: ProductRow): SolubilityProduct {
  const before = given.get(row);
  if (before !== undefined) return before;
  const [low, high] = row.range ?? [row.pKsp, row.pKsp];
  const spread = Math.max(LONE_SPREAD, (Number(high) - Number(low)) / 2 / Math.sqrt(3));
  const pKsp = quantity(row.own ?? { value: row.pKsp, unit: "", standardUncertainty: spread.toPrecision(2) }, {
    symbol: `pKsp(${row.solid})`,
    label: `pKsp of ${row.name}${row.form === undefined ? "" : ` (${row.form})`}, 25 °C`,
    source: cite(row.source),
  });
  const warnings: string[] = [];
  if (row.doubtful === true)
    warnings.push("a doubtful constant: sources differ by powers of ten, or it rests on memory");
  if (row.soluble === true) warnings.push("a soluble salt: use its measured solubility instead");
  if (row.note !== undefined) warnings.push(row.note);
  const made: SolubilityProduct = frozen(
    readable({
      solid: row.solid,
      name: row.name,
      form: row.form,
      dissolution: dissolutionOf(row),
      ions: ionsOf(row),
      pKsp,
      value: powerOfTen(pKsp, `Ksp(${row.solid})`, `solubility product of ${row.name}`),
      source: row.source,
      warnings,
    }),
  );
  given.set(row, made);
  return made;
}

/**
 * Solubility product of a solid at 25 °C and zero ionic strength.
 *
 * @param solid - formula; the hydrate counts (`CaSO4` and `CaSO4·2H2O` differ), and an unknown hydrate falls back on
 *   the salt
 * @param form - part of the form's name, such as `"fresh"` or `"calcite"`; default the first listed
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns constant with its ions; uncertainty from the spread of the sources
 * @throws {SolubilityError} `solubility.no-data`, `solubility.not-a-salt`, `solubility.bad-option`
 * @source each row of the table names its own
 * @category Precipitation
 * @example
 * solubilityProduct("BaSO4").pKsp.value.toString() // => "9.98"
 * solubilityProduct("Mg(OH)2", "fresh").ions.map((ion) => ion.formula) // => ["Mg^2+", "OH-"]
 */
export function solubilityProduct(solid: string | Formula, form?: string, options?: LookupOptions): SolubilityProduct {
  if (options !== undefined) return lookingWith(options, guard, () => solubilityProduct(solid, form));
  return productOf(findRow(solid, form));
}
