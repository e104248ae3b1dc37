// One substance with all that the tables know of it: names, number, looks, density, what heat does. Figures come with
// their source; what rests on memory says so.

import { Formula, molarMass } from "../formula";
import { cite, type SourceKey } from "../foundation";
import { attempt, type Result } from "../foundation/error";
import { type Quantity, quantity } from "../quantity";
import { PHYSICAL, type PhysicalRow } from "./data/physical";
import type { RegistryRow } from "./data/registry";
import { THERMAL, type ThermalRow, type ThermalStepRow } from "./data/thermal-steps";
import { readableText, SubstanceError } from "./error";
import { unknownNameError } from "./formula-of";
import { namesOf, tryNameOf } from "./name-of";
import { formulaKey, type Notation, readNotation } from "./notation";
import { type NameReading, readingsOf } from "./readings";
import { kinOf, namesOfRow, rowOf, rowWithNumber } from "./registry-index";
import { asNotation } from "./resolve";

/** What heat does first, in degrees Celsius; no temperature where none is known. */
export interface PhaseChange {
  readonly kind: "melts" | "decomposes" | "sublimes";
  readonly temperature?: Quantity<"temperature">;
}

/** One step of heating. Before it plus `takes` equals `leaves` plus `remains`, atom for atom. */
export interface ThermalStep {
  readonly from: Quantity<"temperature">;
  readonly to?: Quantity<"temperature">;
  readonly approx: boolean;
  /** What the step starts from: what the one before left. */
  readonly before: readonly { readonly formula: string; readonly coefficient: string }[];
  readonly takes: readonly { readonly formula: string; readonly coefficient: string }[];
  readonly leaves: readonly { readonly formula: string; readonly coefficient: string }[];
  readonly remains: readonly { readonly formula: string; readonly coefficient: string }[];
  /** Mass of what remains by the mass of one formula unit of the substance. */
  readonly massLeft: Quantity;
}

let physical: ReadonlyMap<string, PhysicalRow> | undefined;

/** Physical data by the registry's formula text. */
function physicalOf(formula: string): PhysicalRow | undefined {
  physical ??= new Map(PHYSICAL.map((row) => [row.formula, row] as const));
  return physical.get(formula);
}

let thermal: ReadonlyMap<string, ThermalRow> | undefined;

function thermalOf(notation: Notation): ThermalRow | undefined {
  thermal ??= new Map(THERMAL.map((row) => [formulaKey(readNotation(row.formula)), row] as const));
  return thermal.get(formulaKey(notation));
}

function celsius(text: string, label: string): Quantity<"temperature"> {
  return quantity({ value: text, unit: "°C" }, { label, source: cite("memory") }) as Quantity<"temperature">;
}

/** Mass of some amounts per mole of the substance. */
function massOfAll(amounts: readonly { readonly formula: string; readonly coefficient: string }[]): Quantity {
  let total = quantity({ value: 0, unit: "g/mol" });
  for (const { formula, coefficient } of amounts) {
    const [over, under = "1"] = coefficient.split("/");
    total = total.plus(molarMass(formula).times(BigInt(over!)).dividedBy(BigInt(under)));
  }
  return total;
}

function stepOf(row: ThermalStepRow, before: ThermalStep["before"], formula: string): ThermalStep {
  return {
    from: celsius(row.from, `begins for ${formula}`),
    ...(row.to === undefined ? {} : { to: celsius(row.to, `over for ${formula}`) }),
    approx: row.approx ?? false,
    before,
    takes: row.takes ?? [],
    leaves: row.leaves,
    remains: row.remains ?? [],
    get massLeft() {
      return massOfAll(row.remains ?? [])
        .dividedBy(molarMass(formula))
        .named({ rule: "mass left = mass of what remains / mass before heating" });
    },
  };
}

/**
 * A substance of the registry, or any formula with what can be said of it. Made by {@link substance}. Figures are built
 * when asked for.
 *
 * @category Substances
 * @example
 * substance("MgSO4·7H2O").density?.toString() // => "1.68 g/cm3"
 */
export class Substance {
  /** Formula as listed, crystal water included. */
  readonly formula: string;
  /** Systematic name; the formula itself where no rule gives one. */
  readonly name: string;
  /** In the registry? */
  readonly listed: boolean;
  /** Registry number, with a valid check digit. */
  readonly cas: string | undefined;
  /** Where number and formula were found together. */
  readonly casSource: SourceKey | undefined;
  /** Looks, from memory. */
  readonly appearance: string | undefined;
  /** What to know about the formula. */
  readonly note: string | undefined;
  readonly #notation: Notation;
  readonly #row: RegistryRow | undefined;
  readonly #physical: PhysicalRow | undefined;

  /** @internal Use {@link substance}. */
  constructor(formula: string, notation: Notation) {
    const row = rowOf(notation);
    const named = tryNameOf(formula);
    this.formula = row?.formula ?? formula;
    this.name = row?.name ?? (named.ok ? named.value : formula);
    this.listed = row !== undefined;
    this.cas = row?.cas;
    this.casSource = row?.casSource;
    this.appearance = row?.appearance;
    this.note = row?.note;
    this.#notation = notation;
    this.#row = row;
    this.#physical = physicalOf(this.formula);
  }

  /** Further systematic names that the rules allow. */
  get systematicNames(): string[] {
    const byRule = tryNameOf(this.formula).ok ? namesOf(this.formula) : [];
    return [...new Set([...byRule, ...(this.#row?.systematic ?? [])])].filter((name) => name !== this.name);
  }

  /** Older, mineral and trade names, with a remark where one only holds loosely. */
  get otherNames(): { readonly name: string; readonly remark?: string }[] {
    if (this.#row === undefined) return [];
    const formal = new Set([this.#row.name, ...(this.#row.systematic ?? [])]);
    return namesOfRow(this.#row)
      .filter(({ name }) => !formal.has(name))
      .map(({ name, remark }) => (remark === undefined ? { name } : { name, remark }));
  }

  /** Density near room temperature, in g/cm3, with its source; `undefined` where none is trusted. */
  get density(): Quantity<"density"> | undefined {
    const row = this.#physical;
    if (row?.density === undefined) return undefined;
    const doubt = row.disagrees === undefined ? undefined : `another data set gives ${row.disagrees.density} g/cm3`;
    return quantity(
      { value: row.density, unit: "g/cm3" },
      { symbol: `ρ(${this.formula})`, label: `density of ${this.formula}`, source: cite("memory"), assumption: doubt },
    ) as Quantity<"density">;
  }

  /** How the density compares with an independent molar volume: `agrees` within 2 %, `disagrees`, or not compared. */
  get densityCheck(): "agrees" | "disagrees" | undefined {
    if (this.#physical?.checked !== undefined) return "agrees";
    return this.#physical?.disagrees === undefined ? undefined : "disagrees";
  }

  /** What heat does first: melts, decomposes or sublimes. From memory of the handbooks. */
  get phaseChange(): PhaseChange | undefined {
    const row = this.#physical;
    if (row?.change === undefined) return undefined;
    if (row.celsius === undefined) return { kind: row.change };
    return { kind: row.change, temperature: celsius(row.celsius, `${this.formula} ${row.change}`) };
  }

  /** Steps of heating in open air, each starting from what the one before left. Empty where none are known. */
  get thermalSteps(): ThermalStep[] {
    const row = thermalOf(this.#notation);
    if (row === undefined) return [];
    let before: ThermalStep["before"] = [{ formula: row.formula, coefficient: "1" }];
    return row.steps.map((step) => {
      const made = stepOf(step, before, row.formula);
      before = made.remains;
      return made;
    });
  }

  /** What else happens on heating or keeping, in words. */
  get thermalNote(): string | undefined {
    return thermalOf(this.#notation)?.note;
  }

  /** Listed substances that differ by crystal water only, itself left out. */
  get hydrates(): string[] {
    return kinOf(this.#notation)
      .map((row) => row.formula)
      .filter((formula) => formula !== this.formula);
  }

  toString(): string {
    return `${this.name} (${this.formula})`;
  }

  /** Formula only: everything else follows from it. */
  toJSON(): { readonly substance: string } {
    return { substance: this.formula };
  }
}

function ambiguousError(text: string, readings: readonly NameReading[]): SubstanceError {
  return new SubstanceError("substance.ambiguous-name", `"${text}" stands for ${readings.length} substances`, {
    input: text,
    hint: readings.map((one) => `${one.formula} (${one.decides})`).join("; "),
    details: { readings },
  });
}

/**
 * All that is known of a substance. A formula need not be listed; a name must be known and clear.
 *
 * @param nameOrFormula - systematic, older, mineral or trade name, registry number, or formula
 * @throws {SubstanceError} `substance.ambiguous-name` with the readings in `details`, `substance.unknown-name`,
 * `substance.bad-input`, `substance.too-long`
 * @source registry numbers: national inventories as `casSource` says; other figures from memory of the handbooks
 * @category Substances
 * @example
 * substance("Epsom salt").formula // => "MgSO4·7H2O"
 * substance("7758-99-8").name // => "copper(II) sulfate pentahydrate"
 * substance("CaC2O4·H2O").thermalSteps.map((step) => step.leaves[0]?.formula) // => ["H2O", "CO", "CO2"]
 */
export function substance(nameOrFormula: string | Formula): Substance {
  if (nameOrFormula instanceof Formula) return new Substance(nameOrFormula.toString(), readNotation(nameOrFormula));
  const text = readableText(nameOrFormula, "a name or a formula");
  const byNumber = /^\d{2,7}-\d{2}-\d$/.test(text) ? rowWithNumber(text) : undefined;
  if (byNumber !== undefined) return new Substance(byNumber.formula, readNotation(byNumber.formula));
  const capitals = /^[A-Z]{3,}$/.test(text);
  const notation = asNotation(text);
  const readings = notation === undefined || capitals ? readingsOf(text) : [];
  if (readings.length === 1) return new Substance(readings[0]!.formula, readNotation(readings[0]!.formula));
  if (readings.length > 1) throw ambiguousError(text, readings);
  if (notation !== undefined) return new Substance(text, notation);
  throw unknownNameError(text);
}

/**
 * As {@link substance}, with the error returned instead of thrown.
 *
 * @category Substances
 * @example
 * trySubstance("washing soda").ok // => false
 */
export function trySubstance(nameOrFormula: string | Formula): Result<Substance> {
  return attempt(() => substance(nameOrFormula));
}

/**
 * A substance from its JSON record.
 *
 * @param record - what {@link Substance} gives to `JSON.stringify`
 * @throws {SubstanceError} `substance.bad-input`; {@link FormulaError} for an unreadable formula
 * @category Substances
 * @example
 * substanceFromJSON(JSON.parse(JSON.stringify(substance("gypsum")))).name // => "calcium sulfate dihydrate"
 */
export function substanceFromJSON(record: { readonly substance: string }): Substance {
  const formula = readableText(record?.substance, "a formula");
  return new Substance(formula, readNotation(formula));
}

/**
 * As {@link substanceFromJSON}, with the error returned instead of thrown.
 *
 * @category Substances
 * @example
 * trySubstanceFromJSON({ substance: "" }).ok // => false
 */
export function trySubstanceFromJSON(record: { readonly substance: string }): Result<Substance> {
  return attempt(() => substanceFromJSON(record));
}
