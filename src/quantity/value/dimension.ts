// Dimensions: exponents over the base dimensions, interned so that comparison is identity. Two refinements that plain
// dimensional analysis misses are kept as a `kind`: a temperature is not a temperature difference, and a mass fraction
// is not a volume fraction. A kind survives sums and is dropped by products. What a product or quotient gives in kelvin, as
// energy over heat capacity does, is a difference; only a temperature times or over a number stays on the scale.

import { QuantityError } from "../error";

/** Base dimensions in the order of the exponent vector. Each currency is a further base dimension of its own. */
const BASES = ["mass", "length", "time", "temperature", "amount of substance", "electric current"] as const;

export type Kind = "" | "difference" | "mass fraction" | "volume fraction" | "mole fraction";

/** One dimension; there is exactly one object for each combination. */
export interface Dimension {
  readonly exponents: readonly number[];
  /** Currency code to exponent, for prices. */
  readonly currencies: readonly (readonly [string, number])[];
  readonly kind: Kind;
  readonly name: string;
  /** The loaded copy of the library it belongs to: within one, comparison is identity. */
  readonly copy: symbol;
  readonly products: Map<Dimension, Dimension>;
  readonly quotients: Map<Dimension, Dimension>;
}

/** Names of the dimensions the bench meets, by exponents over `BASES`. */
const NAMES: Readonly<Record<string, string>> = {
  "0,0,0,0,0,0": "number",
  "1,0,0,0,0,0": "mass",
  "0,1,0,0,0,0": "length",
  "0,2,0,0,0,0": "area",
  "0,3,0,0,0,0": "volume",
  "0,0,1,0,0,0": "time",
  "0,0,0,1,0,0": "temperature",
  "0,0,0,0,1,0": "amount of substance",
  "0,0,0,0,0,1": "electric current",
  "0,0,1,0,0,1": "electric charge",
  "1,-1,-2,0,0,0": "pressure",
  "1,2,-2,0,0,0": "energy",
  "1,2,-3,0,0,0": "power",
  "1,-3,0,0,0,0": "density",
  "1,0,0,0,-1,0": "molar mass",
  "0,-3,0,0,1,0": "concentration",
  "-1,0,0,0,1,0": "molality",
  "0,3,0,0,-1,0": "molar volume",
  "1,2,-2,0,-1,0": "molar energy",
  "1,2,-2,-1,0,0": "heat capacity",
  "1,2,-2,-1,-1,0": "molar heat capacity",
  "0,2,-2,-1,0,0": "specific heat capacity",
  "0,2,-2,0,0,0": "specific energy",
  "-1,3,0,0,0,0": "specific volume",
  "0,3,-1,0,0,0": "volume flow rate",
  "1,0,-1,0,0,0": "mass flow rate",
};

function nameOf(exponents: readonly number[], currencies: Dimension["currencies"], kind: Kind): string {
  if (kind === "difference") return "temperature difference";
  if (kind !== "") return kind;
  const plain = NAMES[exponents.join()];
  if (currencies.length === 0) {
    if (plain !== undefined) return plain;
    return BASES.map((base, i) => [base, exponents[i]!] as const)
      .filter(([, e]) => e !== 0)
      .map(([base, e]) => (e === 1 ? base : `${base}^${e}`))
      .join("·");
  }
  const per = NAMES[exponents.map((e) => -e || 0).join()];
  const money = currencies.map(([code, e]) => (e === 1 ? code : `${code}^${e}`)).join("·");
  if (currencies.length === 1 && currencies[0]![1] === 1) {
    if (plain === "number") return `price (${money})`;
    if (per !== undefined) return `price per ${per} (${money})`;
  }
  return `${money}·${plain ?? exponents.join()}`;
}

/** Largest exponent a dimension may reach; nothing physical comes near, and runaway products are stopped here. */
const MAX_EXPONENT = 48;

const interned = /* @__PURE__ */ new Map<string, Dimension>();
const COPY = /* @__PURE__ */ Symbol("this copy of the library");

/** The one object for a combination of exponents, currencies and kind. */
export function dimension(
  exponents: readonly number[],
  currencies: Dimension["currencies"] = [],
  kind: Kind = "",
): Dimension {
  if (exponents.some((e) => Math.abs(e) > MAX_EXPONENT)) {
    throw new QuantityError("quantity.out-of-range", `a dimension with an exponent beyond ±${MAX_EXPONENT}`);
  }
  const key = `${exponents.join()}|${currencies.map(([code, e]) => `${code}${e}`).join()}|${kind}`;
  const known = interned.get(key);
  if (known !== undefined) return known;
  const made: Dimension = {
    exponents,
    currencies,
    kind,
    name: nameOf(exponents, currencies, kind),
    copy: COPY,
    products: new Map(),
    quotients: new Map(),
  };
  interned.set(key, made);
  return made;
}

/** This copy's own object for a dimension that another loaded copy made. */
export const ownDimension = (d: Dimension): Dimension =>
  d.copy === COPY ? d : dimension(d.exponents, d.currencies, d.kind);

function combine(a: Dimension, b: Dimension, sign: 1 | -1): Dimension {
  const exponents = a.exponents.map((e, i) => e + sign * b.exponents[i]! || 0);
  const money = new Map(a.currencies);
  for (const [code, e] of b.currencies) money.set(code, (money.get(code) ?? 0) + sign * e);
  const currencies = [...money].filter(([, e]) => e !== 0).sort(([x], [y]) => (x < y ? -1 : 1));
  const isScaled = (isAbsolute(a) && isNumber(b)) || (sign > 0 && isNumber(a) && isAbsolute(b));
  const isDifference = exponents.join() === KELVIN && currencies.length === 0 && !isScaled;
  return dimension(exponents, currencies, isDifference ? "difference" : "");
}

/** Exponents of a temperature and of a temperature difference. */
export const KELVIN = "0,0,0,1,0,0";

/** A point on the scale of temperatures, and not a difference between two. */
const isAbsolute = (a: Dimension): boolean =>
  a.kind === "" && a.currencies.length === 0 && a.exponents.join() === KELVIN;

function remembered(table: Map<Dimension, Dimension>, a: Dimension, b: Dimension, sign: 1 | -1): Dimension {
  const before = table.get(b);
  if (before !== undefined) return before;
  const made = combine(a, b, sign);
  table.set(b, made);
  return made;
}

export const product = (a: Dimension, b: Dimension): Dimension => remembered(a.products, a, b, 1);

export const quotient = (a: Dimension, b: Dimension): Dimension => remembered(a.quotients, a, b, -1);

/** The dimension raised to a whole power. */
export function dimensionPower(a: Dimension, k: number): Dimension {
  if (k === 1) return a;
  return dimension(
    a.exponents.map((e) => e * k || 0),
    k === 0 ? [] : a.currencies.map(([code, e]) => [code, e * k] as const),
  );
}

/** Is this a pure number, whatever fraction kind it carries? */
export const isNumber = (a: Dimension): boolean => a.currencies.length === 0 && a.exponents.every((e) => e === 0);

/** Do the two agree in everything but kind? */
export const sameExponents = (a: Dimension, b: Dimension): boolean =>
  a === b || (a.exponents.join() === b.exponents.join() && a.currencies.join() === b.currencies.join());
