// Printing: one rounding, at the very end, by a stated rule. Everything printed without a locale reads back.
import type { Fields } from "../../foundation/argument";
import { QuantityError } from "../error";
import { uncertaintyOf } from "../uncertainty/budget";
import { guard } from "../value/argument";
import type { Node } from "../value/graph";
import {
  decimalText,
  divide,
  exactText,
  leadingExponent,
  type Rational,
  type Rounding,
  scaled,
  significantText,
  square,
  subtract,
} from "../value/rational";
import { fromDecimal, squareRootOf } from "../value/real";
import { readUnit, type Unit } from "../value/unit";
import type { FormatOptions } from "./format-options";

const OPTIONS = {
  unit: true,
  decimals: true,
  significant: true,
  uncertainty: true,
  uncertaintyFigures: true,
  rounding: true,
  prefix: true,
  locale: true,
} as const satisfies Fields<FormatOptions>;

/** @internal */
export const ROUNDINGS = ["half-even", "half-up"] as const satisfies readonly Rounding[];
const UNCERTAINTIES = ["none", "plus-minus", "concise"] as const;

function needFormat(options: FormatOptions): void {
  guard.fields(options, OPTIONS);
  const { rounding, uncertainty, prefix, unit, locale } = options;
  if (rounding !== undefined) guard.choice(rounding, "rounding", ROUNDINGS);
  if (uncertainty !== undefined) guard.choice(uncertainty, "uncertainty", UNCERTAINTIES);
  if (prefix !== undefined) guard.choice(prefix, "prefix", ["engineering"]);
  if (unit !== undefined) guard.text(unit, "unit");
  if (locale !== undefined) needLocale(locale);
}

function needLocale(locale: unknown): void {
  guard.text(locale, "locale");
  try {
    Intl.getCanonicalLocales(locale as string);
  } catch {
    throw guard.refused(locale, "locale", 'a language tag such as "de"');
  }
}

/** Figures printed for a computed value without uncertainty that does not end sooner. */
const DEFAULT_FIGURES = 12;
const MAX_FIGURES = 60;

const ENGINEERING: readonly (readonly string[])[] = [
  ["µg", "mg", "g", "kg"],
  ["µmol", "mmol", "mol", "kmol"],
  ["µL", "mL", "L"],
  ["mPa", "Pa", "kPa", "MPa"],
  ["mJ", "J", "kJ", "MJ"],
  ["µm", "mm", "m", "km"],
  ["µmol/L", "mmol/L", "mol/L"],
  ["µg/L", "mg/L", "g/L"],
];

function engineeringUnit(value: Rational, unit: Unit): Unit {
  const family = ENGINEERING.map((row) => row.map((symbol) => readUnit(symbol))).find(
    (row) => row[0]!.dimension === unit.dimension,
  );
  if (family === undefined || value.n === 0n) return unit;
  const fits = family.filter((u) => leadingExponent(divide(value, u.factor)) >= 0);
  return fits[fits.length - 1] ?? family[0]!;
}

function figures(name: string, n: number | undefined, least: number): void {
  if (n === undefined || (Number.isInteger(n) && n >= least && n <= MAX_FIGURES)) return;
  throw new QuantityError(
    "quantity.format",
    `${name} must be a whole number from ${least} to ${MAX_FIGURES}, not ${n}`,
  );
}

const localised = (text: string, locale: string | undefined): string => {
  if (locale === undefined) return text;
  const decimals = /\.(\d*)/.exec(text)?.[1]?.length ?? 0;
  const format = new Intl.NumberFormat(locale, { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
  // Intl accepts decimal text and keeps every digit of it; the type of older libs does not say so.
  return (format.format as (value: string) => string)(text);
};

const AS_IT_IS: FormatOptions = {};

const withUnit = (text: string, unit: Unit): string => (unit.symbol === "" ? text : `${text} ${unit.symbol}`);

export function formatQuantity(node: Node, options: FormatOptions = AS_IT_IS): string {
  if (options !== AS_IT_IS) needFormat(options);
  const { decimals, significant, rounding = "half-even", uncertaintyFigures = 2, locale } = options;
  figures("decimals", decimals, -MAX_FIGURES);
  figures("significant", significant, 1);
  figures("uncertaintyFigures", uncertaintyFigures, 1);
  let unit = options.unit === undefined ? node.unit : readUnit(options.unit);
  if (unit.dimension.exponents.join() !== node.dimension.exponents.join()) {
    throw new QuantityError(
      "quantity.wrong-dimension",
      `${node.dimension.name} cannot be printed in '${unit.symbol}'`,
      {
        details: { expected: node.dimension.name, received: unit.dimension.name },
      },
    );
  }
  if (options.prefix === "engineering") unit = engineeringUnit(node.value, unit);
  const value = divide(subtract(node.value, unit.offset), unit.factor);
  const style = options.uncertainty ?? (decimals === undefined && significant === undefined ? "plus-minus" : "none");
  const variance = style === "none" ? undefined : uncertaintyOf(node);
  if (variance === undefined) {
    const text =
      decimals !== undefined
        ? decimalText(scaled(value, decimals, rounding), decimals)
        : significant !== undefined
          ? significantText(value, significant, rounding)
          : plainText(node, value, unit, rounding);
    return withUnit(localised(text, locale), unit);
  }
  const u = fromDecimal(squareRootOf(divide(variance, square(unit.factor))));
  let places = decimals ?? (u.n === 0n ? Math.max(node.decimals ?? 0, 0) : uncertaintyFigures - 1 - leadingExponent(u));
  if (decimals === undefined && u.n !== 0n && scaled(u, places, rounding).toString().length > uncertaintyFigures)
    places -= 1;
  if (u.n === 0n) return withUnit(`${localised(plainText(node, value, unit, rounding), locale)} ± 0`, unit);
  const spread = scaled(u, places, rounding);
  const whole = decimalText(scaled(value, places, rounding), places);
  // a value that towers over its uncertainty by more figures than are read back
  const towers = decimals === undefined && leadingExponent(value) + places > MAX_FIGURES;
  if (towers) {
    const near = `${significantText(value, DEFAULT_FIGURES, rounding)} ± ${decimalText(spread, places)}`;
    return withUnit(localised(near, locale), unit);
  }
  const text = whole;
  if (style === "concise") {
    const [mantissa, exponent] = text.split("e");
    // in units of the last digit shown, which without an exponent is that of ones
    const steps = places < 0 && exponent === undefined ? decimalText(spread, places) : `${spread}`;
    return withUnit(`${mantissa}(${steps})${exponent === undefined ? "" : `e${exponent}`}`, unit);
  }
  return withUnit(`${localised(text, locale)} ± ${localised(decimalText(spread, places), locale)}`, unit);
}

/** As written if it was read from text and its unit was kept; else exact where that is short, else rounded. */
function plainText(node: Node, value: Rational, unit: Unit, rounding: Rounding): string {
  if (node.decimals !== undefined && unit === node.unit)
    return decimalText(scaled(value, node.decimals), node.decimals);
  return exactText(value, DEFAULT_FIGURES) ?? significantText(value, DEFAULT_FIGURES, rounding);
}
