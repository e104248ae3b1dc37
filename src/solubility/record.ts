// A solubility as plain data, and back: what was read from the table once is kept, whatever the table says today.
// Every field is checked, because a record may come from anywhere.

import { tryParseFormula } from "../formula";
import { isRecord } from "../foundation/argument";
import { frozen } from "../foundation/frozen";
import { headProblem, type RecordHead, recordHead } from "../foundation/record";
import { INSPECT, shownAs } from "../foundation/shown";
import { ZERO_CELSIUS } from "../foundation/standards";
import { type Quantity, type QuantityRecord, quantityFromJSON } from "../quantity";
import type { SolubilityKind, UncertaintyPart } from "./curves/reading";
import type { CompetingFigure, SolubilityBasis } from "./data/curves";
import { isSourceKey, type SourceKey } from "./data/sources";
import { SolubilityError } from "./error";

const SCHEMA = 1;

/** Solubility of one solute in water at one temperature. */
export interface Solubility {
  /** The solute the figure is for, without crystal water. */
  readonly formula: string;
  /** Systematic name of the substance. */
  readonly name: string;
  /** The temperature, in °C. */
  readonly celsius: number;
  /** Grams of anhydrous solute with 100 g of water (all water) in the saturated solution. */
  readonly perHundredGramsWater: Quantity<"mass">;
  /** Solid in contact with the solution, which is what crystallises; undefined where the table does not say. */
  readonly solidPhase: string | undefined;
  /** What the solid rests on, `memory` where no column of phases was read; undefined where the table does not say which it is. */
  readonly solidPhaseSource: SourceKey | undefined;
  /** What the figure counts. */
  readonly basis: "g anhydrous per 100 g water";
  /** How the figure follows from the table: a row, between two rows, beyond them. */
  readonly kind: SolubilityKind;
  /** How it is known: evaluated, measured, from memory. */
  readonly knownAs: SolubilityBasis;
  /** Source of the figure, or of the nearer one it was read from; `perHundredGramsWater.source` cites both if they differ. */
  readonly source: SourceKey;
  /** Figures of other sources that differ by more than about 5 %, wherever they lie. */
  readonly competing: readonly CompetingFigure[];
  /** Do not lean on it without measuring. */
  readonly weak: boolean;
  /** What the uncertainty consists of. */
  readonly uncertainty: readonly UncertaintyPart[];
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
  /** Formula, figure and temperature in one line. */
  toString(): string;
  /** Plain data, as `fromJSON` reads it back. */
  toJSON(): SolubilityRecord;
}

/** What an answer of the table and one that was read back have in common. */
type Stated = Omit<Solubility, "toJSON" | "toString" | "perHundredGramsWater">;

/** A solubility as plain data; what is undefined may be missing after a trip through JSON. */
export interface SolubilityRecord extends RecordHead<"solubility">, Omit<Stated, "solidPhase" | "solidPhaseSource"> {
  /** Grams of anhydrous solute per 100 g of all water. */
  readonly perHundredGramsWater: QuantityRecord;
  /** Solid in contact with the solution. */
  readonly solidPhase?: string | undefined;
  /** Key of what the solid rests on. */
  readonly solidPhaseSource?: SourceKey | undefined;
}

/** What every solubility can do. */
export abstract class SolubilityMethods {
  /** What consoles call it, whatever a minifier makes of it. */
  static get name(): string {
    return "Solubility";
  }

  get [Symbol.toStringTag](): string {
    return "Solubility";
  }

  toString(this: Solubility): string {
    return `${this.formula}: ${this.perHundredGramsWater} in 100 g of water at ${this.celsius} °C`;
  }

  [INSPECT](this: Solubility): string {
    return shownAs("Solubility", this);
  }

  toJSON(this: Solubility): SolubilityRecord {
    const { formula, name, celsius, perHundredGramsWater, solidPhase, basis, kind } = this;
    const { knownAs, source, solidPhaseSource, competing, weak, uncertainty, warnings } = this;
    return {
      ...recordHead("solubility", SCHEMA),
      ...{ formula, name, celsius, perHundredGramsWater: perHundredGramsWater.toJSON(), solidPhase, basis, kind },
      ...{ knownAs, source, solidPhaseSource, weak, competing: competing.map((one) => ({ ...one })) },
      ...{ uncertainty: uncertainty.map((one) => ({ ...one })), warnings: [...warnings] },
    };
  }
}

/** A solubility that was read back. */
class StatedSolubility extends SolubilityMethods implements Solubility {
  static override get name(): string {
    return "Solubility";
  }
  declare readonly formula: string;
  declare readonly name: string;
  declare readonly celsius: number;
  declare readonly perHundredGramsWater: Quantity<"mass">;
  declare readonly solidPhase: string | undefined;
  declare readonly solidPhaseSource: SourceKey | undefined;
  declare readonly basis: "g anhydrous per 100 g water";
  declare readonly kind: SolubilityKind;
  declare readonly knownAs: SolubilityBasis;
  declare readonly source: SourceKey;
  declare readonly competing: readonly CompetingFigure[];
  declare readonly weak: boolean;
  declare readonly uncertainty: readonly UncertaintyPart[];
  declare readonly warnings: readonly string[];

  constructor(stated: Stated, perHundredGramsWater: Quantity<"mass">) {
    super();
    Object.assign(this, frozen({ ...stated }), { perHundredGramsWater });
    Object.freeze(this);
  }
}

const KINDS: readonly SolubilityKind[] = [
  "tabulated",
  "converted",
  "interpolated",
  "extrapolated",
  "near a single figure",
];
const KNOWN_AS: readonly SolubilityBasis[] = ["evaluated", "measured", "compiled", "converted", "memory"];
const HOTTEST = 1000;
const MOST_ENTRIES = 100;

const isText = (value: unknown): value is string => typeof value === "string" && value.length <= 1000;
const isNumber = (value: unknown): value is number => typeof value === "number" && Number.isFinite(value);
const isFormula = (value: unknown): value is string => isText(value) && tryParseFormula(value).ok;
const isSource = (value: unknown): value is SourceKey => isText(value) && isSourceKey(value);
const isCelsius = (value: unknown): boolean => isNumber(value) && value > -ZERO_CELSIUS && value <= HOTTEST;
const isList = (value: unknown, entry: (one: unknown) => boolean): boolean =>
  Array.isArray(value) && value.length <= MOST_ENTRIES && value.every(entry);

/** Whether each field is one that a solubility can have. */
const FIELDS: { readonly [F in keyof Stated]-?: (value: unknown) => boolean } = {
  formula: isFormula,
  name: isText,
  celsius: isCelsius,
  solidPhase: (value) => value === undefined || isFormula(value),
  solidPhaseSource: (value) => value === undefined || isSource(value),
  basis: (value) => value === "g anhydrous per 100 g water",
  kind: (value) => (KINDS as readonly unknown[]).includes(value),
  knownAs: (value) => (KNOWN_AS as readonly unknown[]).includes(value),
  source: isSource,
  competing: (value) =>
    isList(
      value,
      (one) =>
        isRecord(one) &&
        isCelsius(one["celsius"]) &&
        isSource(one["source"]) &&
        isText(one["value"]) &&
        Number(one["value"]) > 0,
    ),
  weak: (value) => typeof value === "boolean",
  uncertainty: (value) =>
    isList(
      value,
      (one) => isRecord(one) && isText(one["cause"]) && isNumber(one["relative"]) && (one["relative"] as number) >= 0,
    ),
  warnings: (value) => isList(value, isText),
};

/** The fields of a record, each checked, and nothing else of it. */
export function readSolubility(data: unknown): StatedSolubility {
  const bad = (problem: string): SolubilityError =>
    new SolubilityError("solubility.bad-option", `not a solubility record: ${problem}`, {
      hint: "pass what toJSON gave, parsed",
    });
  const problem = headProblem(data, "solubility", SCHEMA);
  if (problem !== undefined) throw bad(problem);
  const record = data as Readonly<Record<string, unknown>>;
  for (const [field, fits] of Object.entries(FIELDS)) if (!fits(record[field])) throw bad(field);
  const figure = quantityFromJSON(record["perHundredGramsWater"]);
  if (figure.dimension !== "mass" || !figure.isPositive()) throw bad("perHundredGramsWater is not a mass above zero");
  const stated = Object.fromEntries(Object.keys(FIELDS).map((field) => [field, structuredCopy(record[field])]));
  return new StatedSolubility(stated as unknown as Stated, figure);
}

/** Lists of a record anew: what is frozen is ours, not the caller's. */
const structuredCopy = (value: unknown): unknown =>
  Array.isArray(value) ? value.map((one: unknown) => (isRecord(one) ? { ...one } : one)) : value;
