// Reading a unit: one symbol, or a product or quotient of symbols with whole powers - "g/mol", "J/(mol K)", "kg m^-3",
// "EUR/kg", "g/100 g". Every factor is an exact fraction, so every conversion round-trips exactly.

import { kindOf } from "../../foundation/argument";
import { lowered } from "../../foundation/characters";
import { ownRow, ownRows } from "../../foundation/facts";
import { QuantityError } from "../error";
import { type Dimension, dimension, dimensionPower, isNumber, product } from "./dimension";
import { divide, multiply, ONE, power, type Rational, rational, ZERO } from "./rational";
import { readNumber } from "./read-number";
import { AMBIGUOUS, CURRENCIES, PREFIXES, SPELLINGS, UNIT_ROWS, type UnitRow } from "./unit-table";

/** A unit: value in SI = value in unit x factor + offset. */
export interface Unit {
  readonly symbol: string;
  readonly dimension: Dimension;
  readonly factor: Rational;
  readonly offset: Rational;
}

const ratio = (text: string | readonly [string, string]): Rational =>
  typeof text === "string" ? readNumber(text) : divide(readNumber(text[0]), readNumber(text[1]));

const NONE = [0, 0, 0, 0, 0, 0];

const currency = (code: string): Unit => ({
  symbol: code,
  dimension: dimension(NONE, [[code, 1]]),
  factor: ONE,
  offset: ZERO,
});

function unitOf({ symbol, factor = "1", exponents, kind, offset }: UnitRow, prefix: string): Unit {
  const unit = {
    symbol: prefix + symbol,
    dimension: dimension(exponents, [], kind),
    factor: ratio(factor),
    offset: offset === undefined ? ZERO : ratio(offset),
  };
  return prefix === "" ? unit : { ...unit, factor: multiply(unit.factor, readNumber(PREFIXES[prefix]!)) };
}

/** What makes the unit of each symbol: of the hundreds that there are, a program reads a few. */
function makersOfUnits(): Map<string, () => Unit> {
  const makers = new Map<string, () => Unit>();
  for (const row of UNIT_ROWS)
    for (const prefix of ["", ...(row.prefixes ?? "")]) makers.set(prefix + row.symbol, () => unitOf(row, prefix));
  for (const code of CURRENCIES()) makers.set(code, () => currency(code));
  makers.set("", () => ({ symbol: "", dimension: dimension(NONE), factor: ONE, offset: ZERO }));
  for (const [symbol, spellings] of Object.entries(SPELLINGS))
    for (const spelling of spellings.split(", ")) makers.set(spelling, () => unitAt(symbol)!);
  return makers;
}

let makers: ReadonlyMap<string, () => Unit> | undefined;
const symbols = (): ReadonlyMap<string, () => Unit> => (makers ??= makersOfUnits());

const made = /* @__PURE__ */ new Map<string, Unit>();

/** The unit of one symbol of the table. */
function unitAt(symbol: string): Unit | undefined {
  const before = made.get(symbol);
  if (before !== undefined) return before;
  const unit = symbols().get(symbol)?.();
  if (unit !== undefined) made.set(symbol, unit);
  return unit;
}

/** Units read so far, so that a text is analysed once; bounded, because texts come from outside. */
const CACHE_LIMIT = 500;
const MAX_LENGTH = 80;
const cache = /* @__PURE__ */ new Map<string, Unit>();

/** Symbols by falling length, so that "mmol" is not read as "m" and "% w/w" not as "%". */
let bySize: readonly string[] | undefined;
const symbolsBySize = (): readonly string[] =>
  (bySize ??= [...symbols().keys()].filter((s) => s !== "").sort((a, b) => b.length - a.length));

/** Units of the caller's own; none has a symbol of ours. */
const ownUnits = (): readonly Unit[] => ownRows<Unit>("units");

/** Is it a symbol of the table, such as a unit of the caller's own may not have? */
export const isUnitSymbol = (text: string): boolean => symbols().has(text);

function unknown(text: string, position: number, input: string): QuantityError {
  const word = /^[^\s/·*()^0-9]+(?: [^\s/·*()^0-9]+)?/.exec(text.slice(position))?.[0] ?? text.slice(position);
  const at = input.length - text.length + position;
  const place = { input, position: at };
  for (const w of [word, word.split(" ")[0]!]) {
    const meant = AMBIGUOUS.find(([units]) => units.split(", ").includes(w))?.[1];
    if (meant !== undefined) {
      return new QuantityError("quantity.ambiguous-unit", `'${w}' does not name one unit`, { ...place, hint: meant });
    }
  }
  if (word === "") {
    return new QuantityError("quantity.unknown-unit", "an incomplete unit", {
      ...place,
      hint: "write what is below the solidus, as in g/mol",
    });
  }
  const folded = word.toLowerCase();
  const near = [...symbols().keys()].find((symbol) => symbol.toLowerCase() === folded);
  return new QuantityError("quantity.unknown-unit", `unknown unit '${word}'`, {
    ...place,
    hint:
      near === undefined
        ? "units look like g, mg, mol, mL, g/mol, mol/L, °C, kPa, % w/w, EUR/kg"
        : `did you mean '${near}'?`,
  });
}

/** `mg %` of the clinic is mg in 100 mL, and no product of a milligram and a hundredth. */
function refuseMilligramPercent(text: string, input: string): void {
  const unit = /^((?:[kmµnp]?g|[mµn]mol)) ?[·*]? ?%$/.exec(text)?.[1];
  if (unit === undefined) return;
  throw new QuantityError("quantity.ambiguous-unit", `'${text}' is not a product of ${unit} and %`, {
    input,
    position: input.length - text.length,
    hint: `${unit} in 100 mL is written ${unit}/(100 mL), ${unit} in 100 g ${unit}/(100 g)`,
    details: { readings: [`${unit}/(100 mL)`, `${unit}/(100 g)`] },
  });
}

/** `5 % g` is no twentieth of a gram: nobody weighs in it, and `1.5 ± 5 % g` means five parts in a hundred of the value. */
function refusePercentOf(text: string, input: string): void {
  if (!/^% ?[·*]? ?[A-Za-zµ°Ω]/.test(text)) return;
  const rest = text.replace(/% ?[·*]? ?/, "");
  throw new QuantityError("quantity.ambiguous-unit", `'${text}' is not a product of % and ${rest}`, {
    input,
    position: input.length - text.length,
    hint: `a relative uncertainty is written after the unit, as in 1.5 ${rest} ± 5 %`,
  });
}

/** One pass over the text: factors, each with its sign and power; brackets may follow a solidus. */
function compose(text: string, input: string): Unit {
  let at = 0;
  let factor = ONE;
  let dim = unitAt("")!.dimension;
  let below = false; // after a solidus
  let inBrackets = false;
  let divided = false; // by one symbol without brackets
  const single = unitAt(text);
  if (single !== undefined) return single;
  refuseMilligramPercent(text, input);
  if (!symbolsBySize().some((symbol) => symbol.startsWith("% ") && text.startsWith(symbol)))
    refusePercentOf(text, input);
  while (at < text.length) {
    const c = text[at]!;
    if (c === " " || c === "·" || c === "*" || c === "⋅") {
      at += 1;
      continue;
    }
    if (c === "/") {
      below = true;
      at += 1;
      continue;
    }
    if (c === "(" && below && !inBrackets) {
      inBrackets = true;
      at += 1;
      continue;
    }
    if (c === ")" && inBrackets) {
      inBrackets = false;
      below = false;
      at += 1;
      continue;
    }
    const scale = /^10*(?![0-9])/.exec(text.slice(at));
    if (scale !== null) {
      const count = rational(BigInt(scale[0]));
      factor = below ? divide(factor, count) : multiply(factor, count);
      at += scale[0].length;
      continue;
    }
    const standsHere = (s: string) => text.startsWith(s, at) && !/^[A-Za-zµ°Ω]/.test(text.slice(at + s.length));
    const own = ownUnits().find((one) => standsHere(one.symbol));
    const symbol = own?.symbol ?? symbolsBySize().find(standsHere);
    if (symbol === undefined) throw unknown(text, at, input);
    const unit = own ?? unitAt(symbol)!;
    const from = at;
    at += symbol.length;
    const written = /^(?:\^?(-?[0-9]{1,2})|(⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]{1,2}))/.exec(text.slice(at));
    const exponent = written === null ? 1 : Number(written[1] ?? lowered(written[2]!));
    at += written?.[0].length ?? 0;
    if (divided && !below && exponent > 0) {
      const fixed = text.slice(0, from).replace(/\/([^/]*?)[ ·*⋅]*$/, "/($1 ");
      throw new QuantityError("quantity.ambiguous-unit", "a product after a solidus: above or below it?", {
        input,
        position: input.length - text.length + from,
        hint: `write ${fixed}${text.slice(from)}) if below`,
      });
    }
    const k = below ? -exponent : exponent;
    factor = multiply(factor, power(unit.factor, k));
    dim = product(dim, dimensionPower(unit.dimension, k));
    if (below && !inBrackets) {
      below = false;
      divided = true;
    }
  }
  if (inBrackets || below) throw unknown(text, text.length, input);
  return { symbol: text, dimension: dim, factor, offset: ZERO };
}

/** The unit a text names, if it was read before. */
export const knownUnit = (text: string): Unit | undefined => cache.get(text);

/**
 * The unit a text names.
 * @param text - a unit symbol or expression
 * @param input - the whole text it stands at the end of, for the caret of an error
 */
export function readUnit(text: string, input: string = text): Unit {
  const known = cache.get(text);
  if (known !== undefined) return known;
  if (typeof text !== "string") {
    throw new QuantityError("quantity.unknown-unit", `a unit is text, not ${kindOf(text)}`, { hint: 'such as "g"' });
  }
  if (text.length > MAX_LENGTH) {
    throw new QuantityError("quantity.too-long", `a unit of ${text.length} characters; the limit is ${MAX_LENGTH}`);
  }
  const own = ownRow<Unit>("units", () => text);
  if (own !== undefined) return own;
  const unit = compose(text, input);
  if (cache.size < CACHE_LIMIT && ownUnits().length === 0) cache.set(text, unit);
  return unit;
}

/** The unit results of a dimension are shown in when nobody asked for another. */
const USUAL: Readonly<Record<string, string>> = {
  mass: "g",
  volume: "L",
  "amount of substance": "mol",
  temperature: "K",
  "temperature difference": "ΔK",
  pressure: "kPa",
  energy: "kJ",
  density: "g/mL",
  "molar mass": "g/mol",
  concentration: "mol/L",
  "molar volume": "L/mol",
  "molar energy": "kJ/mol",
  "heat capacity": "J/K",
  "molar heat capacity": "J/(mol K)",
  "specific heat capacity": "J/(g K)",
  "specific energy": "J/g",
  "specific volume": "mL/g",
  "mass fraction": "% w/w",
  "volume fraction": "% v/v",
  "mole fraction": "mol %",
};

const SI = ["kg", "m", "s", "K", "mol", "A"];

const usualUnits = /* @__PURE__ */ new WeakMap<Dimension, Unit>();

export function usualUnit(dim: Dimension): Unit {
  const before = usualUnits.get(dim);
  if (before !== undefined) return before;
  const unit = chooseUnit(dim);
  usualUnits.set(dim, unit);
  return unit;
}

function chooseUnit(dim: Dimension): Unit {
  const usual = USUAL[dim.name];
  if (usual !== undefined) return readUnit(usual);
  if (isNumber(dim)) return readUnit("");
  const money = dim.currencies.map(([code, e]) => (e === 1 ? code : `${code}^${e}`));
  const exponents = [...dim.exponents];
  if (money.length > 0 && exponents[0] !== 0) {
    // prices per gram, not per kilogram, are what a bench sheet compares
    const text = [...money, exponents[0] === 1 ? "g" : `g^${exponents[0]}`];
    exponents[0] = 0;
    return readUnit([...text, ...siText(exponents)].join(" ").replace(/^(\S+) g\^-1$/, "$1/g"));
  }
  return readUnit([...money, ...siText(exponents)].join(" ").replace(/^(\S+) mol\^-1$/, "$1/mol"));
}

const siText = (exponents: readonly number[]): string[] =>
  SI.map((symbol, i) => [symbol, exponents[i]!] as const)
    .filter(([, e]) => e !== 0)
    .map(([symbol, e]) => (e === 1 ? symbol : `${symbol}^${e}`));
