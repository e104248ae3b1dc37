// Reading the arguments of this layer: quantities of a known dimension, positive where the question needs it, and formulas.
import type { Formula } from "../formula";
import { asFormula } from "../formula/internal";
import { ArgumentGuard, type KnownFields, shown } from "../foundation/argument";
import { list } from "../foundation/wording";
import type {
  AmountText,
  AmountUnit,
  DensityText,
  DensityUnit,
  InputNaming,
  MassFractionText,
  MassFractionUnit,
  MassText,
  MassUnit,
  PressureText,
  PressureUnit,
  Quantity,
  QuantityLike,
  TemperatureText,
  TemperatureUnit,
  VolumeText,
  VolumeUnit,
} from "../quantity";
import { expectDimension } from "../quantity/internal";
import { AmountError } from "./error";

/** A mass: a `Quantity`, a text such as `"12.5 g"`, or value and unit apart. */
export type MassLike = QuantityLike<"mass", MassText, MassUnit>;
/** An amount of substance: a `Quantity`, a text such as `"0.25 mol"`, or value and unit apart. */
export type AmountLike = QuantityLike<"amount of substance", AmountText, AmountUnit>;
/** A volume: a `Quantity`, a text such as `"250 mL"`, or value and unit apart. */
export type VolumeLike = QuantityLike<"volume", VolumeText, VolumeUnit>;
/** A temperature: a `Quantity`, a text such as `"25 °C"`, or value and unit apart. */
export type TemperatureLike = QuantityLike<"temperature", TemperatureText, TemperatureUnit>;
/** A pressure: a `Quantity`, a text such as `"101.3 kPa"`, or value and unit apart. */
export type PressureLike = QuantityLike<"pressure", PressureText, PressureUnit>;
/** A density: a `Quantity`, a text such as `"1.19 g/mL"`, or value and unit apart. */
export type DensityLike = QuantityLike<"density", DensityText, DensityUnit>;
/** A mass fraction: an assay, a moisture. A plain `%` is taken as w/w here, because nothing else is meant. */
export type MassFractionLike = QuantityLike<"mass fraction" | "number", MassFractionText, MassFractionUnit>;
/** A formula as text or as read. */
export type FormulaLike = Formula | string;

/** @internal The formula, read if it is text; anything else is refused by the name of the argument. */
export const formulaOfArgument = (like: FormulaLike, argument = "formula"): Formula => asFormula(like, argument);

/** @internal How a formula stands inside a symbol: `n(ZnSO₄·7H₂O)`. */
export const inSymbol = (formula: Formula): string => formula.toUnicode();

/** @internal Read an argument of one dimension that must be greater than zero. */
export function positive<D extends string>(
  like: QuantityLike,
  dimension: D,
  argument: string,
  naming?: InputNaming,
): Quantity<D> {
  return guard.positive(named(like, dimension, argument, naming), argument);
}

/** @internal Read an argument of one dimension that must not be negative. */
export function notNegative<D extends string>(
  like: QuantityLike,
  dimension: D,
  argument: string,
  naming?: InputNaming,
): Quantity<D> {
  const q = named(like, dimension, argument, naming);
  if (q.isPositive() || q.isZero()) return q;
  throw new AmountError("amount.negative", `${argument} must not be negative: ${q}`, {
    details: { argument, value: String(q) },
  });
}

/** @internal A mass fraction in (0, 1]. */
export function assayOf(like: QuantityLike, argument: string, naming?: InputNaming): Quantity {
  const q = positive(like, "mass fraction", argument, naming);
  return atMostOne(q, argument);
}

/** @internal The moisture of a material: a mass fraction in [0, 1). */
export function moistureOf(like: QuantityLike, naming?: InputNaming): Quantity {
  const argument = "moisture";
  const q = atMostOne(notNegative(like, "mass fraction", argument, naming), argument);
  if (q.compare("1") < 0) return q;
  throw new AmountError("amount.fraction-above-one", `${argument} of ${q} leaves nothing but water`, {
    details: { argument, value: String(q) },
  });
}

function atMostOne(q: Quantity, argument: string): Quantity {
  if (q.compare("1") <= 0) return q;
  throw new AmountError("amount.fraction-above-one", `${argument} of ${q} is more than the whole`, {
    hint: `give a percentage with its sign, such as "98 %"; a bare 98 is 9800 %`,
    details: { argument, value: String(q) },
  });
}

/** Read the argument; a value that already has a name keeps it, so that a chain of steps reads as one. */
function named<D extends string>(
  like: QuantityLike,
  dimension: D,
  argument: string,
  naming: InputNaming = {},
): Quantity<D> {
  const q = expectDimension(like, dimension, argument);
  return q.symbol === undefined ? q.named({ ...naming, label: q.label ?? naming.label ?? argument }) : q;
}

/** Lightest and heaviest liquid near room temperature, in g/mL: liquefied propane is 0.49, mercury 13.5 (memory). */
const LIQUIDS = ["0.4 g/mL", "14 g/mL"] as const;

/** @internal Density of a liquid as the caller gives it; a slip between g/mL and g/L is three orders of magnitude. */
export function liquidDensity(like: QuantityLike, argument: string, naming?: InputNaming): Quantity<"density"> {
  const rho = positive(like, "density", argument, naming);
  const [low, high] = LIQUIDS;
  if (rho.compare(low) >= 0 && rho.compare(high) <= 0) return rho;
  throw new AmountError("amount.outside-range", `no liquid has a density of ${rho}`, {
    hint: "check the unit: 1 g/mL is 1 kg/L and 1000 g/L",
    details: { quantity: argument, low, high, value: String(rho) },
  });
}

/** @internal One of a few words; any other is refused, because it would be read as the usual one. */
export function oneOf<T extends string>(word: T, words: readonly T[], argument: string): T {
  if (words.includes(word)) return word;
  throw new AmountError("amount.unknown-word", `${shown(word)} is no ${argument}`, {
    hint: `give ${list(
      words.map((w) => `"${w}"`),
      "or",
    )}`,
    details: { argument },
  });
}

/** @internal The guard of this layer. */
export const guard = /* @__PURE__ */ new ArgumentGuard(AmountError, {
  unknown: "amount.unknown-option",
  bad: "amount.bad-option",
  missing: "amount.missing-input",
  notPositive: "amount.not-positive",
});

/** @internal An argument that groups several: an object of known fields, or a refusal by name instead of a crash. */
export function grouped<T extends object>(like: T, known: KnownFields, argument = "options"): T {
  guard.fields(like, known, argument);
  return like;
}

/** @internal A table by formula. */
export function tabled<T extends object>(like: T, argument: string): T {
  guard.record(like, argument);
  return like;
}

/** @internal A list argument, without holes. */
export function listed<T>(like: readonly T[], argument: string): readonly T[] {
  guard.list(like, argument);
  return like;
}
