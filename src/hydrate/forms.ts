// The known forms of a salt, which of them stands beside its solution at a temperature, and what a pack of it might hold.

import type { FormulaLike, TemperatureLike } from "../amount";
import { inSymbol } from "../amount/internal";
import { type Formula, molarMass } from "../formula";
import { byElements, splitWater } from "../formula/internal";
import { Fraction } from "../foundation/fraction";
import { frozen } from "../foundation/frozen";
import { once } from "../foundation/memo";
import { INSPECT, shownAs } from "../foundation/shown";
import { constitutionOf } from "../ion";
import { type Quantity, type QuantityRecord, quantity } from "../quantity";
import { expectDimension } from "../quantity/internal";
import { anhydrousOf, hydrateOf } from "./crystal-water";
import { HYDRATE_FORMS, type HydrateFormsRow } from "./data/forms";
import { cite } from "./data/sources";

/** One known form of a salt. */
export interface HydrateForm {
  /** Of the form, crystal water included. */
  readonly formula: Formula;
  /** Waters for each anhydrous formula unit. */
  readonly waters: Fraction;
  /** Temperatures between which it is the solid beside its own solution; undefined when not known. */
  readonly range:
    | { readonly from: Quantity<"temperature"> | undefined; readonly to: Quantity<"temperature"> | undefined }
    | undefined;
  /** Sold in shops, so that a pack may hold it. */
  readonly sold: boolean;
  /** Where the form is listed, and where its range comes from. */
  readonly source: string;
  /** What the range rests on; undefined without one. */
  readonly rangeSource: string | undefined;
  /** The formula, in canonical ASCII. */
  toString(): string;
  /** Plain data that survives `JSON.stringify`. */
  toJSON(): HydrateFormData;
}

/** A known form as plain data, for another program to show. */
export interface HydrateFormData {
  /** Canonical ASCII, crystal water included. */
  readonly formula: string;
  /** Whole number or fraction. */
  readonly waters: string;
  /** Temperatures between which it is the solid beside its own solution; absent when not known. */
  readonly range?: { readonly from?: QuantityRecord; readonly to?: QuantityRecord };
  /** Sold in shops, so that a pack may hold it. */
  readonly sold: boolean;
  /** Where the form is listed. */
  readonly source: string;
  /** What the range rests on; absent without one. */
  readonly rangeSource?: string;
}

class KnownForm implements HydrateForm {
  /** What consoles call it, whatever a minifier makes of it. */
  static get name(): string {
    return "HydrateForm";
  }
  declare readonly formula: Formula;
  declare readonly waters: Fraction;
  declare readonly range: HydrateForm["range"];
  declare readonly sold: boolean;
  declare readonly source: string;
  declare readonly rangeSource: string | undefined;

  constructor(fields: Omit<HydrateForm, "toString" | "toJSON">) {
    Object.assign(this, frozen(fields));
    Object.freeze(this);
  }

  get [Symbol.toStringTag](): string {
    return "HydrateForm";
  }

  toString(): string {
    return this.formula.toString();
  }

  [INSPECT](): string {
    return shownAs("HydrateForm", this);
  }

  toJSON(): HydrateFormData {
    const { waters, range, sold, source, rangeSource } = this;
    return {
      formula: this.toString(),
      waters: waters.toFraction(),
      ...(range === undefined
        ? {}
        : {
            range: {
              ...(range.from === undefined ? {} : { from: range.from.toJSON() }),
              ...(range.to === undefined ? {} : { to: range.to.toJSON() }),
            },
          }),
      sold,
      source,
      ...(rangeSource === undefined ? {} : { rangeSource }),
    };
  }
}

const rowsBySalt = /* @__PURE__ */ byElements(
  HYDRATE_FORMS,
  ({ salt }) => salt,
  (rows) => new Map(rows.map((row) => [constitutionOf(row.salt).identity, row])),
);

/** The row of a salt, however it is written. */
function rowOf(formula: FormulaLike): HydrateFormsRow | undefined {
  const salt = anhydrousOf(formula);
  return rowsBySalt(salt.toString()).get(constitutionOf(salt).identity);
}

/** Inventories list what is made or imported: who orders a salt may get such a form, although no shop has it on the shelf. */
const INVENTORIES = /* @__PURE__ */ once(() => new Set((["aiic", "nzioc", "canadaDsl"] as const).map(cite)));

/** Is the form in trade by the table: sold in shops, or listed in a national inventory of chemicals? */
export const isTraded = ({ sold, source }: HydrateForm): boolean => sold || INVENTORIES().has(source);

const formsByRow = /* @__PURE__ */ new Map<HydrateFormsRow, readonly HydrateForm[]>();

function formsOf({ salt, forms }: HydrateFormsRow): HydrateForm[] {
  const degrees = (text: string | undefined): Quantity | undefined =>
    text === undefined ? undefined : quantity({ value: text, unit: "°C" });
  return forms.map(
    ({ waters, source, from, upTo, rangeSource, sold = false }) =>
      new KnownForm({
        formula: hydrateOf(salt, waters),
        waters: new Fraction(waters),
        range: rangeSource === undefined ? undefined : { from: degrees(from), to: degrees(upTo) },
        sold,
        source: cite(source),
        rangeSource: rangeSource === undefined ? undefined : cite(rangeSource),
      }),
  );
}

/**
 * The known forms of a salt: anhydrous and hydrates, with the temperatures at which each is the solid beside its solution.
 *
 * @param formula - the salt in any of its forms
 * @returns forms, fewest waters first; an empty list for a salt the table does not know
 * @throws {HydrateError} `hydrate.only-water`
 * @throws {FormulaError} those of `parseFormula`
 * @category Hydrates
 * @example
 * knownHydrates("ZnSO4").map((form) => form.formula.toString()) // => ["ZnSO4", "ZnSO4.H2O", "ZnSO4.6H2O", "ZnSO4.7H2O"]
 */
export function knownHydrates(formula: FormulaLike): readonly HydrateForm[] {
  const row = rowOf(formula);
  if (row === undefined) return [];
  let forms = formsByRow.get(row);
  if (forms === undefined) {
    forms = frozen(formsOf(row));
    formsByRow.set(row, forms);
  }
  return forms;
}

/**
 * What a pack sold under a salt's name might hold: the forms of it that shops carry.
 *
 * @param formula - the salt in any of its forms
 * @returns the forms that are sold, fewest waters first
 * @throws {HydrateError} `hydrate.only-water`
 * @throws {FormulaError} those of `parseFormula`
 * @category Hydrates
 * @example
 * soldHydrates("Na2CO3").map((form) => form.formula.toString()) // => ["Na2CO3", "Na2CO3.H2O", "Na2CO3.10H2O"]
 */
export function soldHydrates(formula: FormulaLike): HydrateForm[] {
  return knownHydrates(formula).filter((form) => form.sold);
}

/**
 * Which form crystallises: the solid that stands beside the salt's own saturated solution at a temperature.
 *
 * @param formula - the salt in any of its forms
 * @param temperature - temperature of the solution, 0 °C to 100 °C
 * @returns the form; undefined when the table does not say
 * @throws {HydrateError} `hydrate.only-water`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @throws {FormulaError} those of `parseFormula`
 * @category Hydrates
 * @example
 * stableHydrate("Na2CO3", "20 °C")!.formula.toString() // => "Na2CO3.10H2O"
 * stableHydrate("Na2CO3", "40 °C")!.formula.toString() // => "Na2CO3.H2O"
 */
export function stableHydrate(formula: FormulaLike, temperature: TemperatureLike): HydrateForm | undefined {
  const T = expectDimension(temperature, "temperature", "temperature");
  const celsius = T.in("°C");
  if (celsius.lessThan(0) || celsius.greaterThan(100)) return undefined;
  return knownHydrates(formula).find(({ range }) => {
    if (range === undefined) return false;
    const above = range.from === undefined || T.compare(range.from) > 0;
    return above && (range.to === undefined || T.compare(range.to) <= 0);
  });
}

/** @internal Molar mass of a form for one anhydrous unit: a third of that of 3CdSO4·8H2O. */
export function molarMassPerUnit(formula: Formula): Quantity {
  const { units } = splitWater(formula);
  const M = molarMass(formula);
  return units.equals(1) ? M : M.dividedBy(units).named({ symbol: `M(${inSymbol(formula)})/${units.toFraction()}` });
}
