// One substance with all that the tables know of it: names, number, looks, density, what heat does. Each answer tells what
// it rests on.

import { Formula } from "../../formula";
import { attempt, type Result } from "../../foundation/error";
import {
  type Facts,
  factsInForce,
  isFacts,
  LOOKUP,
  type LookupOptions,
  lookingIn,
  under,
} from "../../foundation/facts";
import { frozen } from "../../foundation/frozen";
import { headProblem, type RecordHead, recordHead } from "../../foundation/record";
import { INSPECT, shownAs } from "../../foundation/shown";
import { type Notation, readNotation, tryReadNotation } from "../../ion/internal";
import { type Quantity, quantity } from "../../quantity";
import { guard } from "../argument";
import type { PhysicalRow } from "../data/physical";
import type { NamesRow } from "../data/registry";
import { cite, type SourceKey } from "../data/sources";
import { readableText, SubstanceError, type SubstanceRefusal } from "../error";
import { unknownNameError } from "../names/formula-of";
import { nameSourceOf, namesOf, tryNameOf } from "../names/name-of";
import type { NameReading } from "../names/name-reading";
import { readingsOf } from "../names/readings";
import { mayBeShortName } from "../names/resolve";
import { plainName } from "../names/words";
import { remarksOfShop } from "../shop/shop-remarks";
import { solutionSoldAs, type TextRange } from "../shop/sold-goods";
import { canonicalFormula } from "./canonical";
import { physicalOf } from "./physical";
import { factsOf, numbered } from "./registry-facts";
import { kinOf, namesOfRow, rowOf } from "./registry-index";
import { celsius, stepsOf, type ThermalStep, thermalNoteOf, thermalOf } from "./thermal";

/** What heat does first, in degrees Celsius; no temperature where none is known. */
export interface PhaseChange {
  /** What heat does first. */
  readonly kind: "melts" | "decomposes" | "sublimes";
  /** In °C; absent where none is known. */
  readonly temperature?: Quantity<"temperature">;
  /** Key of the source; `cite` prints it. */
  readonly source: SourceKey;
}

/** What each answer of a {@link Substance} rests on; only the answers that there are. */
export interface SubstanceSources {
  /** Key of what the name rests on. */
  readonly name?: SourceKey;
  /** Key of what the other names rest on. */
  readonly otherNames?: SourceKey;
  /** Inventory in which number and formula or name were found together. */
  readonly cas?: SourceKey;
  /** Key of what the looks rest on. */
  readonly appearance?: SourceKey;
  /** Key of what the note rests on. */
  readonly note?: SourceKey;
  /** Key of the table the density is from. */
  readonly density?: SourceKey;
  /** The other data set that the density was compared with. */
  readonly densityCheck?: SourceKey;
  /** Key of what the change on heating rests on. */
  readonly phaseChange?: SourceKey;
  /** Key of what the steps of heating rest on. */
  readonly thermalSteps?: SourceKey;
  /** Key of what the note on heating rests on. */
  readonly thermalNote?: SourceKey;
}

/** Where the figures of a substance stand. */
interface Tables {
  /** The name it was asked for by. */
  readonly asked: string | undefined;
  readonly notation: Notation;
  readonly row: NamesRow | undefined;
  readonly physical: PhysicalRow | undefined;
  /** The facts of the caller's own that it was made with: what is asked of it later rests on them as well. */
  readonly facts: Facts | undefined;
}

const TABLES: unique symbol = /* @__PURE__ */ Symbol("tables");

/** A substance as plain data: everything follows from its formula, and the name it was asked for by where that says more. */
export interface SubstanceRecord extends RecordHead<"substance"> {
  /** As listed, crystal water included. */
  readonly formula: string;
  /** Name it was asked for by, where that says more. */
  readonly asked?: string;
  /** Facts of the caller's own that it was made with. */
  readonly facts?: Facts;
}

const SCHEMA = 1;

/**
 * A substance of the registry, or any formula with what can be said of it. Made by {@link substance}. Figures are built
 * when asked for.
 *
 * @category Substances
 * @example
 * substance("MgSO4·7H2O").density?.toString() // => "1.68 g/cm3"
 * substance("MgSO4·7H2O").sources.density // => "sshade"
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
  /** Where number and formula were found together; the same as `sources.cas`. */
  readonly casSource: SourceKey | undefined;
  /** Looks. */
  readonly appearance: string | undefined;
  /** What to know about the formula. */
  readonly note: string | undefined;
  /** Where it was asked for by a name: what a pack of that name may hold as well, how strong a solution of it is. */
  readonly remarks: readonly string[];
  /** Where the name is that of a solution: its usual strength, as texts with units. */
  readonly strength: TextRange | undefined;
  /** @internal A function: proxies of state libraries wrap objects, and a frozen field may not be answered so. */
  readonly [TABLES]: () => Tables;

  /** @internal Use {@link substance}. */
  constructor(formula: string, notation: Notation, asked?: string) {
    const row = rowOf(notation);
    const named = tryNameOf(formula);
    this.formula = row?.formula ?? canonicalFormula(formula);
    this.name = row?.name ?? (named.ok ? named.value : formula);
    this.listed = row !== undefined;
    const facts = row === undefined ? undefined : factsOf(row);
    this.cas = facts?.cas;
    this.casSource = facts?.casSource;
    this.appearance = facts?.appearance;
    this.note = facts?.note;
    this.remarks = asked === undefined ? [] : frozen(remarksOfShop(plainName(asked).name, this.formula));
    this.strength = asked === undefined ? undefined : frozen(solutionSoldAs(asked, this.formula));
    const tables: Tables = { asked, notation, row, physical: physicalOf(this.formula), facts: factsInForce() };
    this[TABLES] = () => tables;
    Object.freeze(this);
  }

  /** @internal Its name in consoles, whatever a minifier makes of it. */
  static get name(): string {
    return "Substance";
  }

  /** @internal */
  get [Symbol.toStringTag](): string {
    return "Substance";
  }

  /** @internal */
  [INSPECT](): string {
    return shownAs("Substance", this);
  }

  /** Further systematic names that the rules allow. */
  get systematicNames(): string[] {
    const { row, facts } = this[TABLES]();
    const byRule = under(facts, () => (tryNameOf(this.formula).ok ? namesOf(this.formula) : []));
    return [...new Set([...byRule, ...(row?.systematic ?? [])])].filter((name) => name !== this.name);
  }

  /** Older, mineral and trade names, with a remark where one only holds loosely. */
  get otherNames(): { readonly name: string; readonly remark?: string }[] {
    const { row } = this[TABLES]();
    if (row === undefined) return [];
    const formal = new Set([row.name, ...(row.systematic ?? [])]);
    return namesOfRow(row)
      .filter(({ name }) => !formal.has(name))
      .map(({ name, remark }) => (remark === undefined ? { name } : { name, remark }));
  }

  /** Density near room temperature, in g/cm3, with its source; `undefined` where none is trusted. */
  get density(): Quantity<"density"> | undefined {
    const row = this[TABLES]().physical;
    if (row?.density === undefined) return undefined;
    const doubt = row.disagrees === undefined ? undefined : `another data set gives ${row.disagrees.density} g/cm3`;
    return quantity(
      { value: row.density, unit: "g/cm3" },
      {
        symbol: `ρ(${this.formula})`,
        label: `density of ${this.formula}`,
        source: cite(row.source),
        assumption: doubt,
      },
    ) as Quantity<"density">;
  }

  /** How the density compares with an independent molar volume: `agrees` within 2 %, `disagrees`, or not compared. */
  get densityCheck(): "agrees" | "disagrees" | undefined {
    const { physical } = this[TABLES]();
    if (physical?.checked !== undefined) return "agrees";
    return physical?.disagrees === undefined ? undefined : "disagrees";
  }

  /** What heat does first: melts, decomposes or sublimes. */
  get phaseChange(): PhaseChange | undefined {
    const row = this[TABLES]().physical;
    if (row?.change === undefined) return undefined;
    const source = row.changeSource ?? "memory";
    if (row.celsius === undefined) return { kind: row.change, source };
    return { kind: row.change, temperature: celsius(row.celsius, `${this.formula} ${row.change}`, source), source };
  }

  /** Steps of heating in open air, each starting from what the one before left. Empty where none are known. */
  get thermalSteps(): ThermalStep[] {
    const { notation, facts } = this[TABLES]();
    const row = thermalOf(notation);
    return row === undefined ? [] : under(facts, () => stepsOf(row));
  }

  /** What else happens on heating or keeping, in words. */
  get thermalNote(): string | undefined {
    return thermalNoteOf(this[TABLES]().notation);
  }

  /** What each of these answers rests on, by key: `memory` was recalled from handbooks and not confirmed. */
  get sources(): SubstanceSources {
    const { notation, row, physical: figures, facts } = this[TABLES]();
    const heated = thermalOf(notation);
    const all: { readonly [Answer in keyof SubstanceSources]-?: SourceKey | undefined } = {
      name: this.name === this.formula ? undefined : under(facts, () => nameSourceOf(notation)),
      otherNames: this.otherNames.length === 0 ? undefined : row?.source,
      cas: this.casSource,
      appearance: this.appearance === undefined ? undefined : row?.source,
      note: this.note === undefined ? undefined : row?.source,
      density: figures?.density === undefined ? undefined : figures.source,
      densityCheck: (figures?.checked ?? figures?.disagrees)?.source,
      phaseChange: this.phaseChange?.source,
      thermalSteps: heated?.steps.length === 0 ? undefined : heated?.source,
      thermalNote: thermalNoteOf(notation) === undefined ? undefined : heated?.source,
    };
    return Object.fromEntries(Object.entries(all).filter(([, source]) => source !== undefined));
  }

  /** Listed substances that differ by crystal water only, itself left out. */
  get hydrates(): string[] {
    const { notation, facts } = this[TABLES]();
    return under(facts, () => kinOf(notation))
      .map((row) => row.formula)
      .filter((formula) => formula !== this.formula);
  }

  /** Name and formula. */
  toString(): string {
    return `${this.name} (${this.formula})`;
  }

  /** Formula, and the name it was asked for by where that says more: everything else follows from them. */
  toJSON(): SubstanceRecord {
    const { asked, facts } = this[TABLES]();
    return {
      ...recordHead("substance", SCHEMA),
      formula: this.formula,
      ...(this.remarks.length === 0 || asked === undefined ? {} : { asked }),
      ...(facts === undefined ? {} : { facts }),
    };
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
 * @param options - `facts`: facts of the caller's own, looked up first
 * @throws {SubstanceError} `substance.ambiguous-name` with the readings in `details`, `substance.unknown-name`,
 * `substance.bad-input`, `substance.too-long`
 * @source as `sources` of the answer says: numbers from national inventories, most other figures from memory of handbooks
 * @category Substances
 * @example
 * substance("Epsom salt").formula // => "MgSO4·7H2O"
 * substance("7758-99-8").name // => "copper(II) sulfate pentahydrate"
 * substance("copper sulfate").remarks // => ["a pack of this name may contain CuSO4·5H2O or CuSO4·H2O: the word leaves the water out"]
 * substance("white vinegar").strength // => { lower: "40 g/L", upper: "60 g/L" }
 * substance("CaC2O4·H2O").thermalSteps.map((step) => step.leaves[0]?.formula) // => ["H2O", "CO", "CO2"]
 */
export function substance(nameOrFormula: string | Formula, options?: LookupOptions): Substance {
  guard.options(options, LOOKUP);
  return lookingIn(options?.facts, guard, () => described(nameOrFormula));
}

function described(nameOrFormula: string | Formula): Substance {
  if (nameOrFormula instanceof Formula) return new Substance(nameOrFormula.toString(), readNotation(nameOrFormula));
  const text = readableText(nameOrFormula, "a name or a formula");
  const byNumber = /^\d{2,7}-\d{2}-\d$/.test(text) ? numbered().get(text) : undefined;
  if (byNumber !== undefined) return new Substance(byNumber.formula, readNotation(byNumber.formula));
  const short = mayBeShortName(text);
  const notation = tryReadNotation(text);
  const readings = notation === undefined || short ? readingsOf(text) : [];
  if (readings.length === 1) return new Substance(readings[0]!.formula, readNotation(readings[0]!.formula), text);
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
export function trySubstance(
  nameOrFormula: string | Formula,
  options?: LookupOptions,
): Result<Substance, SubstanceRefusal> {
  return attempt(() => substance(nameOrFormula, options));
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
export function substanceFromJSON(record: SubstanceRecord): Substance {
  const problem = headProblem(record, "substance", SCHEMA);
  if (problem !== undefined)
    throw new SubstanceError("substance.bad-input", `not a substance record: ${problem}`, {
      hint: "pass what toJSON gave, parsed",
    });
  const { facts } = record;
  if (facts !== undefined && !isFacts(facts))
    throw new SubstanceError("substance.bad-input", "the facts of the record are not read yet", {
      hint: "fromJSON reads the whole record",
    });
  const formula = readableText(record.formula, "a formula");
  const asked = record.asked === undefined ? undefined : readableText(record.asked, "a name");
  return under(facts, () => new Substance(formula, readNotation(formula), asked));
}
