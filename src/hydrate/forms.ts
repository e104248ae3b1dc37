// The known forms of a salt, which of them stands beside its solution at a temperature, what a pack of it might hold, and
// how the water goes when it is heated.

import type { FormulaLike, MassLike, TemperatureLike } from "../amount";
import { formulaOfArgument, inSymbol, positive } from "../amount/internal";
import { type Formula, molarMass } from "../formula";
import { byElements, splitWater } from "../formula/internal";
import { type LookupOptions, lookingWith } from "../foundation/facts";
import { Fraction } from "../foundation/fraction";
import { frozen } from "../foundation/frozen";
import { once } from "../foundation/memo";
import { readable } from "../foundation/readable";
import { INSPECT, shownAs } from "../foundation/shown";
import { constitutionOf } from "../ion";
import { type Quantity, type QuantityRecord, quantity } from "../quantity";
import { expectDimension } from "../quantity/internal";
import { guard } from "./argument";
import { anhydrousOf, hydrateOf } from "./crystal-water";
import { DEHYDRATION } from "./data/dehydration";
import { HYDRATE_FORMS, type HydrateFormsRow } from "./data/forms";
import { cite, citeHeating } from "./data/sources";
import { equivalentMass } from "./equivalent";
import { HydrateError } from "./error";

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

/** One stage of heating. */
export interface DehydrationStep {
  /** What is left after the stage. */
  readonly formula: Formula;
  /** Temperatures of the stage; in open air, typical, they move by tens of degrees. */
  readonly from: Quantity<"temperature">;
  /** Where the stage is complete; undefined where it is not known. */
  readonly to: Quantity<"temperature"> | undefined;
  /** Mass left, as part of the mass at the start. */
  readonly massFraction: Quantity<"number">;
  /** Mass lost so far, as part of the mass at the start. */
  readonly loss: Quantity<"number">;
  /** Mass left, where the mass at the start was given. */
  readonly mass: Quantity<"mass"> | undefined;
}

/** Heating of one form, stage by stage. */
export interface DehydrationStages {
  /** The form that is heated. */
  readonly form: Formula;
  /** In the order of heating. */
  readonly steps: readonly DehydrationStep[];
  /** What else happens on heating, in words; undefined where nothing is noted. */
  readonly note: string | undefined;
  /** What stages and temperatures rest on. */
  readonly source: string;
}

/** The rows of dehydration by the form. */
const dehydrationRows = /* @__PURE__ */ byElements(
  DEHYDRATION,
  ({ form }) => form,
  (rows) =>
    new Map(
      rows.map((row) => {
        const form = formulaOfArgument(row.form);
        return [constitutionOf(form).identity, { row, form }] as const;
      }),
    ),
);

/**
 * What is left after each stage of heating a hydrate in an open crucible.
 *
 * @param formula - the hydrate that is heated
 * @param mass - mass at the start, for the expected mass after each stage
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns the stages with formula, temperatures, mass left and loss; with a note where there is something to know
 * @throws {HydrateError} `hydrate.unknown-salt` when no stages are tabulated
 * @throws {AmountError} `amount.not-positive`
 * @throws {FormulaError} those of `parseFormula`
 * @source stages from memory of the usual handbooks; masses from the formulas
 * @category Hydrates
 * @example
 * stagedDehydration("CuSO4·5H2O").steps.map((s) => `${s.formula} ${s.loss.format({ decimals: 2, uncertainty: "none" })}`) // => ["CuSO4.3H2O 14.43 %", "CuSO4.H2O 28.86 %", "CuSO4 36.08 %", "CuO 68.14 %"]
 */
export function stagedDehydration(formula: FormulaLike, mass?: MassLike, options?: LookupOptions): DehydrationStages {
  if (options !== undefined) return lookingWith(options, guard, () => stagedDehydration(formula, mass));
  const form = formulaOfArgument(formula);
  const rows = dehydrationRows(form.toString());
  const row = rows.get(constitutionOf(form).identity)?.row;
  if (row === undefined) {
    const { dry } = splitWater(form);
    const others = [...rows.values()]
      .filter((other) => dry !== undefined && splitWater(other.form).dry?.hasSameComposition(dry) === true)
      .map((other) => other.row.form);
    throw new HydrateError("hydrate.unknown-salt", `how ${inSymbol(form)} loses its water is not tabulated`, {
      hint:
        others.length > 0
          ? `tabulated of this salt: ${others.join(", ")}`
          : "equivalentMass gives the mass of any form; weigh before and after heating for hydrationNumber",
      details: { formula: form.toString() },
    });
  }
  const start =
    mass === undefined
      ? undefined
      : positive(mass, "mass", "mass", { symbol: `m(${inSymbol(form)})`, label: `mass of ${inSymbol(form)}` });
  const unit = quantity("1 g");
  const steps = row.stages.map(({ to, from, until, per }): DehydrationStep => {
    const left = formulaOfArgument(to);
    const massFraction = equivalentMass(unit, { from: form, to: left, per })
      .dividedBy(unit)
      .to("%")
      .named({
        symbol: `left(${inSymbol(left)})`,
        rule: "part of the mass left = mass of the stage / mass at the start",
      });
    const loss = quantity("1")
      .minus(massFraction)
      .to("%")
      .named({ symbol: `loss(${inSymbol(left)})`, rule: "loss = 1 - part of the mass left" });
    return {
      formula: left,
      from: quantity({ value: from, unit: "°C" }),
      to: until === undefined ? undefined : quantity({ value: until, unit: "°C" }),
      massFraction,
      loss,
      mass: start === undefined ? undefined : equivalentMass(start, { from: form, to: left, per }),
    };
  });
  return readable({ form, steps, note: row.note, source: citeHeating(row.source) });
}

/** @internal Molar mass of a form for one anhydrous unit: a third of that of 3CdSO4·8H2O. */
export function molarMassPerUnit(formula: Formula): Quantity {
  const { units } = splitWater(formula);
  const M = molarMass(formula);
  return units.equals(1) ? M : M.dividedBy(units).named({ symbol: `M(${inSymbol(formula)})/${units.toFraction()}` });
}
