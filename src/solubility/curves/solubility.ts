// How much dissolves: the table read at a temperature, inside one solid only, with a stated or estimated uncertainty and
// everything a careful reader asks of a figure - basis, solid phase, source, how it is known, who disagrees.

import type { TemperatureLike } from "../../amount";
import { GASES_KNOWN } from "../../aqueous/internal";
import type { Formula } from "../../formula";
import { attempt, type Result } from "../../foundation/error";
import { LOOKUP, type LookupOptions, lookingIn } from "../../foundation/facts";
import { frozen } from "../../foundation/frozen";
import { applyFunction, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard } from "../argument";
import type { CompetingFigure, SolubilityBasis, SolubilityRow } from "../data/curves";
import { cite, type SourceKey } from "../data/sources";
import { SolubilityError, type SolubilityRefusal } from "../error";
import { readSolubility, type Solubility, SolubilityMethods, type SolubilityRecord } from "../record";
import { ruleInWater } from "../rules";
import {
  partsOf,
  type Reading,
  readCurve,
  SIGNIFICANT,
  type SolubilityKind,
  sourcesOf,
  type UncertaintyPart,
  warningsOf,
} from "./reading";
import { rowOf, type Solute, soluteOf } from "./solute";

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
  const celsius = given.toNumber();
  return { celsius, uncertain: given.standardUncertainty === undefined ? undefined : given, text: `${celsius} °C` };
}

/** Figures of one solute asked for last, latest at the end; plain lists, because a map that drops its entries keeps them alive. */
interface HandedOut {
  readonly celsius: number[];
  readonly figures: Quantity[];
}
const KEPT = 32;
const handedOut = /* @__PURE__ */ new WeakMap<SolubilityRow, HandedOut>();

/** The figure at a temperature; the same figure used twice is the same object, hence one input of a budget. */
function figureOf(reading: Reading, text: string): Quantity {
  const { row, celsius } = reading;
  let kept = handedOut.get(row);
  if (kept === undefined) {
    kept = { celsius: [], figures: [] };
    handedOut.set(row, kept);
  }
  const at = kept.celsius.indexOf(celsius);
  const figure = kept.figures[at] ?? makeFigure(reading, text);
  if (at >= 0 || kept.celsius.length === KEPT) {
    kept.celsius.splice(Math.max(at, 0), 1);
    kept.figures.splice(Math.max(at, 0), 1);
  }
  kept.celsius.push(celsius);
  kept.figures.push(figure);
  return figure;
}

/** A float to so many significant digits, as a fraction of whole numbers: no text to write and read back. */
function rounded(value: number, digits: number): { readonly n: bigint; readonly d: bigint } {
  const decimals = digits - 1 - Math.floor(Math.log10(value));
  return decimals >= 0
    ? { n: BigInt(Math.round(value * 10 ** decimals)), d: 10n ** BigInt(decimals) }
    : { n: BigInt(Math.round(value / 10 ** -decimals)) * 10n ** BigInt(-decimals), d: 1n };
}

function makeFigure(reading: Reading, text: string): Quantity {
  const { row, printed, value } = reading;
  const relative = Math.sqrt(partsOf(reading).reduce((all, part) => all + part.relative ** 2, 0));
  return quantity(
    {
      value: printed ?? rounded(value, SIGNIFICANT),
      unit: "g",
      standardUncertainty: rounded(value * relative, 3),
    },
    {
      symbol: `S(${row.formula}, ${text})`,
      label: `solubility of ${row.formula} at ${text}, g anhydrous per 100 g water`,
      source: sourcesOf(reading).map(cite).join("; "),
      // The default, but stated: added to the record later, it costs as much as the rest of the lookup (bench/solubility.ts).
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    },
  );
}

/** With an uncertain thermometer, the steepness of the curve counts too. */
function withTemperature(figure: Quantity, temperature: Quantity, slope: number): Quantity {
  return applyFunction(
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
class Answer extends SolubilityMethods implements Solubility {
  static override get name(): string {
    return "Solubility";
  }
  readonly formula: string;
  readonly name: string;
  readonly celsius: number;
  readonly solidPhase: string | undefined;
  readonly basis = "g anhydrous per 100 g water";
  readonly kind: SolubilityKind;
  readonly knownAs: SolubilityBasis;
  readonly weak: boolean;
  readonly #temperature: Temperature;
  readonly #reading: Reading;
  #figure: Quantity | undefined;

  constructor(temperature: Temperature, reading: Reading) {
    super();
    const { row } = reading;
    this.formula = row.formula;
    this.name = row.name;
    this.celsius = temperature.celsius;
    this.solidPhase = reading.branch.solid;
    this.kind = reading.kind;
    this.knownAs = row.knownAs;
    this.weak = row.weak === true;
    this.#temperature = temperature;
    this.#reading = reading;
    Object.freeze(this);
  }

  get source(): SourceKey {
    return sourcesOf(this.#reading)[0]!;
  }

  get solidPhaseSource(): SourceKey | undefined {
    const { solidsFrom, knownAs, source } = this.#reading.row;
    // a solubility product is that of one solid, named beside it
    return this.solidPhase === undefined ? undefined : (solidsFrom ?? (knownAs === "converted" ? source : "memory"));
  }

  get competing(): readonly CompetingFigure[] {
    return frozen(this.#reading.row.competing ?? []);
  }

  get uncertainty(): readonly UncertaintyPart[] {
    return partsOf(this.#reading);
  }

  get warnings(): readonly string[] {
    return warningsOf(this.#reading);
  }

  get perHundredGramsWater(): Quantity<"mass"> {
    if (this.#figure !== undefined) return this.#figure;
    const figure = figureOf(this.#reading, this.#temperature.text);
    const { uncertain } = this.#temperature;
    this.#figure = uncertain === undefined ? figure : withTemperature(figure, uncertain, this.#reading.slope);
    return this.#figure;
  }
}

const isGas = (solute: Solute): boolean => GASES_KNOWN().some(({ gas }) => soluteOf(gas).key === solute.key);

/** @internal */
export function noData(solute: Solute): SolubilityError {
  const text = solute.formula.toString();
  const rule = ruleInWater(solute);
  return new SolubilityError("solubility.no-data", `no solubility of ${solute.anhydrous} in the table`, {
    input: text,
    position: 0,
    hint:
      rule === undefined
        ? isGas(solute)
          ? "as a gas over water it is known: ask gasSolubility"
          : "measure it, or pass your own figure"
        : `the rules call it ${rule.class} (${rule.rule}); measure it, or pass your own figure`,
    details: { formula: text, anhydrous: solute.anhydrous.toString(), rule },
  });
}

/**
 * How much of a salt dissolves in water at a temperature.
 *
 * The table is read inside one solid only: a curve is followed to each change of solid and never across it, and never
 * beyond its ends. A lone figure answers within 6 K of its temperature (10 K where it is a converted solubility product, 3 K
 * where it is that of one solid among several), says so, and is the
 * less certain the farther it is: 2.2 % per kelvin, 3.3 % for sparingly soluble salts.
 *
 * @param formula - the solute, with or without crystal water; `CuSO4` and `CuSO4·5H2O` give the same answer, because
 *   the basis is anhydrous salt with all the water there is
 * @param temperature - a temperature; an uncertain one (`"20 ± 1 °C"`) widens the answer by the steepness of the curve
 * @param options - `facts`: facts of the caller's own, whose solubilities are read in place of the table's
 * @returns grams of anhydrous salt per 100 g of water with standard uncertainty, the solid in contact, and the source
 * @throws {SolubilityError} `solubility.no-data`, `solubility.outside-range`, `solubility.far-from-single-figure`,
 *   `solubility.solid-changes`, `solubility.not-a-salt`
 * @source each row of the table names its own; interpolation: Hyman, SIAM J. Sci. Stat. Comput. 4, 645 (1983)
 * @category Solubility
 * @example
 * solubilityOf("CuSO4·5H2O", "20 °C").perHundredGramsWater.value.toString() // => "20"
 * solubilityOf("Na2CO3", "20 °C").solidPhase // => "Na2CO3·10H2O"
 * solubilityOf("Na2CO3", "20 °C").solidPhaseSource // => "richardsFiske1914"
 */
export function solubilityOf(
  formula: string | Formula,
  temperature: TemperatureLike,
  options?: LookupOptions,
): Solubility {
  if (options === undefined) return readAt(formula, temperature);
  guard.fields(options, LOOKUP);
  return lookingIn(options.facts, guard, () => readAt(formula, temperature));
}

function readAt(formula: string | Formula, temperature: TemperatureLike): Solubility {
  const solute = soluteOf(formula);
  const row = rowOf(solute);
  if (row === undefined) throw noData(solute);
  const at = readTemperature(temperature);
  return new Answer(at, readCurve(row, at.celsius));
}

/**
 * As `solubilityOf`, but gives the refusal back as data.
 *
 * @category Solubility
 * @example
 * trySolubilityOf("NaCl", "20 °C").ok // => true
 */
export function trySolubilityOf(
  formula: string | Formula,
  temperature: TemperatureLike,
  options?: LookupOptions,
): Result<Solubility, SolubilityRefusal> {
  return attempt(() => solubilityOf(formula, temperature, options));
}

/**
 * The answer behind plain data from `JSON.stringify`: the same figures, whatever the table says today.
 *
 * @throws {QuantityError} `quantity.json` when the figure is no quantity record
 * @throws {SolubilityError} `solubility.bad-option` when the data is no record, or a field of it is none
 * @category Solubility
 * @example
 * solubilityFromJSON(JSON.parse(JSON.stringify(solubilityOf("NaCl", "20 °C")))).perHundredGramsWater.value.toString() // => "35.89"
 */
export function solubilityFromJSON(record: SolubilityRecord): Solubility {
  return readSolubility(record);
}
