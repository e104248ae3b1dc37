// The units of the bench as data: symbol, exact factor to the SI, exponents. Factors are decimal text or a fraction of
// two; nothing here is rounded. Source: SI Brochure, 9th ed. (2019), and for the customary units their legal definitions
// (international yard and pound agreement of 1959; imperial gallon 4.54609 L; US gallon 231 cubic inches).
import { once } from "../../foundation/memo";
import type { Kind } from "./dimension";

/** symbol, factor to the SI unit (text, or two texts for a ratio), exponents over BASES, and what sets it apart. */
export interface UnitRow {
  readonly symbol: string;
  /** Default 1. */
  readonly factor?: string | readonly [string, string];
  readonly exponents: readonly number[];
  readonly kind?: Kind;
  /** Added after the factor, for temperature scales with a zero of their own. */
  readonly offset?: string | readonly [string, string];
  /** SI prefixes that it may take, a letter each. */
  readonly prefixes?: string;
}

const MASS = [1, 0, 0, 0, 0, 0];
const LENGTH = [0, 1, 0, 0, 0, 0];
const AREA = [0, 2, 0, 0, 0, 0];
const VOLUME = [0, 3, 0, 0, 0, 0];
const TIME = [0, 0, 1, 0, 0, 0];
const TEMPERATURE = [0, 0, 0, 1, 0, 0];
const AMOUNT = [0, 0, 0, 0, 1, 0];
const PRESSURE = [1, -1, -2, 0, 0, 0];
const ENERGY = [1, 2, -2, 0, 0, 0];
const DENSITY = [1, -3, 0, 0, 0, 0];
const NUMBER = [0, 0, 0, 0, 0, 0];

export const UNIT_ROWS: readonly UnitRow[] = [
  { symbol: "g", factor: "0.001", exponents: MASS, prefixes: "nµmcdkM" },
  { symbol: "t", factor: "1000", exponents: MASS },
  { symbol: "lb", factor: "0.45359237", exponents: MASS },
  { symbol: "oz av", factor: ["0.45359237", "16"], exponents: MASS },
  { symbol: "grain", factor: "0.00006479891", exponents: MASS },
  { symbol: "carat", factor: "0.0002", exponents: MASS },
  { symbol: "mol", exponents: AMOUNT, prefixes: "nµmk" },
  { symbol: "L", factor: "0.001", exponents: VOLUME, prefixes: "nµmcdhk" },
  { symbol: "cc", factor: "0.000001", exponents: VOLUME },
  { symbol: "US gal", factor: "0.003785411784", exponents: VOLUME },
  { symbol: "US qt", factor: ["0.003785411784", "4"], exponents: VOLUME },
  { symbol: "US pt", factor: ["0.003785411784", "8"], exponents: VOLUME },
  { symbol: "US cup", factor: ["0.003785411784", "16"], exponents: VOLUME },
  { symbol: "US fl oz", factor: ["0.003785411784", "128"], exponents: VOLUME },
  { symbol: "imp gal", factor: "0.00454609", exponents: VOLUME },
  { symbol: "imp qt", factor: ["0.00454609", "4"], exponents: VOLUME },
  { symbol: "imp pt", factor: ["0.00454609", "8"], exponents: VOLUME },
  { symbol: "imp fl oz", factor: ["0.00454609", "160"], exponents: VOLUME },
  { symbol: "m", exponents: LENGTH, prefixes: "nµmcdk" },
  { symbol: "in", factor: "0.0254", exponents: LENGTH },
  { symbol: "ft", factor: "0.3048", exponents: LENGTH },
  { symbol: "ha", factor: "10000", exponents: AREA },
  { symbol: "s", exponents: TIME, prefixes: "nµm" },
  { symbol: "min", factor: "60", exponents: TIME },
  { symbol: "h", factor: "3600", exponents: TIME },
  { symbol: "d", factor: "86400", exponents: TIME },
  { symbol: "K", exponents: TEMPERATURE, prefixes: "m" },
  { symbol: "°C", exponents: TEMPERATURE, offset: "273.15" },
  { symbol: "°F", factor: ["5", "9"], exponents: TEMPERATURE, offset: ["2298.35", "9"] },
  { symbol: "ΔK", exponents: TEMPERATURE, kind: "difference" },
  { symbol: "Δ°C", exponents: TEMPERATURE, kind: "difference" },
  { symbol: "Δ°F", factor: ["5", "9"], exponents: TEMPERATURE, kind: "difference" },
  { symbol: "A", exponents: [0, 0, 0, 0, 0, 1], prefixes: "µm" },
  { symbol: "C", exponents: [0, 0, 1, 0, 0, 1], prefixes: "µmk" },
  { symbol: "V", exponents: [1, 2, -3, 0, 0, -1], prefixes: "µmk" },
  { symbol: "Ω", exponents: [1, 2, -3, 0, 0, -2], prefixes: "mkM" },
  { symbol: "W", exponents: [1, 2, -3, 0, 0, 0], prefixes: "mkM" },
  { symbol: "N", exponents: [1, 1, -2, 0, 0, 0], prefixes: "mk" },
  { symbol: "Pa", exponents: PRESSURE, prefixes: "mhkM" },
  { symbol: "bar", factor: "100000", exponents: PRESSURE, prefixes: "m" },
  { symbol: "atm", factor: "101325", exponents: PRESSURE },
  { symbol: "torr", factor: ["101325", "760"], exponents: PRESSURE },
  { symbol: "mmHg", factor: "133.322387415", exponents: PRESSURE },
  { symbol: "inHg", factor: "3386.388640341", exponents: PRESSURE },
  { symbol: "psi", factor: ["4.4482216152605", "0.00064516"], exponents: PRESSURE },
  { symbol: "J", exponents: ENERGY, prefixes: "mkM" },
  { symbol: "cal", factor: "4.184", exponents: ENERGY, prefixes: "k" },
  { symbol: "Wh", factor: "3600", exponents: ENERGY, prefixes: "k" },
  { symbol: "%", factor: "0.01", exponents: NUMBER },
  { symbol: "‰", factor: "0.001", exponents: NUMBER },
  { symbol: "% w/w", factor: "0.01", exponents: NUMBER, kind: "mass fraction" },
  { symbol: "% v/v", factor: "0.01", exponents: NUMBER, kind: "volume fraction" },
  { symbol: "mol %", factor: "0.01", exponents: NUMBER, kind: "mole fraction" },
  { symbol: "% w/v", factor: "10", exponents: DENSITY },
  { symbol: "ppm", factor: "0.000001", exponents: NUMBER },
  { symbol: "ppm w/w", factor: "0.000001", exponents: NUMBER, kind: "mass fraction" },
  { symbol: "ppm v/v", factor: "0.000001", exponents: NUMBER, kind: "volume fraction" },
  { symbol: "ppb", factor: "0.000000001", exponents: NUMBER },
  { symbol: "ppb w/w", factor: "0.000000001", exponents: NUMBER, kind: "mass fraction" },
  { symbol: "ppb v/v", factor: "0.000000001", exponents: NUMBER, kind: "volume fraction" },
  { symbol: "rad", exponents: NUMBER },
];

export const PREFIXES: Readonly<Record<string, string>> = {
  n: "1e-9",
  µ: "1e-6",
  m: "1e-3",
  c: "1e-2",
  d: "1e-1",
  h: "1e2",
  k: "1e3",
  M: "1e6",
};

/** Other spellings of a unit, a comma and a space between. */
export const SPELLINGS: Readonly<Record<string, string>> = {
  L: "l, litre, litres, liter, liters",
  mL: "ml, millilitre, millilitres, milliliter, milliliters",
  µg: "ug, microgram, micrograms, mcg",
  µL: "uL, ul",
  µmol: "umol",
  µm: "um",
  g: "gram, grams, gm, gms",
  kg: "kilogram, kilograms",
  mg: "milligram, milligrams",
  mol: "mole, moles",
  mmol: "millimole, millimoles",
  t: "tonne, tonnes",
  lb: "lbs",
  grain: "grains",
  carat: "carats",
  "oz av": "oz avoirdupois, ounce avoirdupois, ounces avoirdupois",
  "US gal": "US gallon, US gallons",
  "imp gal": "imperial gallon, imperial gallons",
  "US pt": "US pint, US pints",
  "imp pt": "imperial pint, imperial pints",
  "US fl oz": "US fluid ounce, US fluid ounces",
  "imp fl oz": "imperial fluid ounce, imperial fluid ounces",
  h: "hour, hours, hr, hrs",
  min: "minute, minutes",
  d: "day, days",
  "°C": "degC, ℃, deg C, ° C",
  "°F": "degF, ℉",
  torr: "Torr",
  Ω: "ohm",
  "% w/w": "% m/m, % (w/w), % (m/m), wt %, wt.%, wt. %, mass %, mass%, wt%, %w/w",
  "% w/v": "% m/v, % (w/v), %w/v",
  "mol %": "% n/n, mol%",
  s: "sec, second, seconds",
  mmHg: "mm Hg",
  "%": "percent, pct",
  "% v/v": "% (v/v), vol %, vol.%, vol. %, vol%, %v/v",
  "ppm w/w": "ppm m/m",
  "ppb w/w": "ppb m/m",
  dL: "dl",
  cL: "cl",
};

/** Units that mean several things: refused, with the readings that are meant. */
export const AMBIGUOUS: readonly (readonly [units: string, hint: string])[] = [
  ["cup, cups", "write 'US cup', or measure it: '250 mL'"],
  ["drop, drops", "count the drops into a cylinder and give mL; drops run from about 0.03 to 0.06 mL"],
  ["oz, ounce, ounces", "write 'oz av' for the ounce of weight, 'US fl oz' or 'imp fl oz' for volume"],
  ["fl oz", "write 'US fl oz' (29.57 mL) or 'imp fl oz' (28.41 mL)"],
  ["gal, gallon, gallons", "write 'US gal' (3.785 L) or 'imp gal' (4.546 L)"],
  ["pt, pint, pints", "write 'US pt' (473 mL) or 'imp pt' (568 mL)"],
  ["qt, quart", "write 'US qt' (946 mL) or 'imp qt' (1137 mL)"],
  ["tsp, tbsp, teaspoon, tablespoon", "spoons differ: measure the volume in mL or weigh it"],
  ["gr", "write 'grain' (64.8 mg) or 'g'"],
  ["pound, pounds", "write 'lb' for the pound of weight (453.6 g), 'GBP' for the money"],
  ["vol, vols, volumes", "oxygen volumes are a strength: give it where a strength is asked for, or '% w/w'"],
  ["drachm", "an apothecary's drachm is 3.888 g, an avoirdupois dram 1.772 g: give grams"],
  ["dram", "an apothecary's dram is 3.888 g, an avoirdupois dram 1.772 g: give grams"],
  ["F", "write '°F' for a temperature; the farad is not among the units"],
  ["deg, degrees", "write '°C' or '°F'"],
  ["M", "write 'mol/L'"],
  ["mM", "write 'mmol/L'"],
  ["$", "name the currency by its ISO 4217 code, such as USD, CAD or AUD"],
  ["€", "name the currency by its ISO 4217 code: EUR"],
  ["£", "name the currency by its ISO 4217 code: GBP"],
];

/**
 * ISO 4217 alphabetic codes of circulating currencies (list from memory; no figure depends on it): a first letter, then the other
 * two of each code that begins with it.
 */
export const CURRENCIES = /* @__PURE__ */ once(() =>
  "AEDFNLLMDOARSUDWGZN BAMBDDTGNHDIFMDNDOBRLSDTNWPYNZD CADDFHFLPNYOPRCUPVEZK DJFKKOPZD EGPRNTBUR FJDKP GBPELHSIPMDNFTQYD HKDNLTGUF IDRLSNRQDRRSK JMDODPY KESGSHRMFPWRWWDYDZT LAKBPKRRDSLYD MADDLGAKDMKNTOPRUURVRWKXNYRZN NADGNIOOKPRZD OMR PABENGKHPKRLNYG QAR RONSDUBWF SARBDCRDGEKGDHPLEOSRDSPTNVCYPZL THBJSMTNDOPRYTDWDZS UAHGXSDYUZS VEDESNDUV WST XAFCDCGOFPF YER ZARMWWG"
    .split(" ")
    .flatMap(([first, ...rest]) => (rest.join("").match(/../g) ?? []).map((two) => `${first}${two}`)),
);
