// The units of the bench as data: symbol, exact factor to the SI, exponents. Factors are decimal text or a fraction of
// two; nothing here is rounded. Source: SI Brochure, 9th ed. (2019), and for the customary units their legal definitions
// (international yard and pound agreement of 1959; imperial gallon 4.54609 L; US gallon 231 cubic inches).
import type { Kind } from "./dimension";

/** symbol, factor to the SI unit (text, or two texts for a ratio), exponents over BASES, and what sets it apart. */
export interface UnitRow {
  readonly symbol: string;
  readonly factor: string | readonly [string, string];
  readonly exponents: readonly number[];
  readonly kind?: Kind;
  /** Added after the factor, for temperature scales with a zero of their own. */
  readonly offset?: string | readonly [string, string];
  /** May take an SI prefix. */
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
  { symbol: "g", factor: "0.001", exponents: MASS, prefixes: "n µ m c d k M" },
  { symbol: "t", factor: "1000", exponents: MASS },
  { symbol: "lb", factor: "0.45359237", exponents: MASS },
  { symbol: "oz av", factor: ["0.45359237", "16"], exponents: MASS },
  { symbol: "grain", factor: "0.00006479891", exponents: MASS },
  { symbol: "mol", factor: "1", exponents: AMOUNT, prefixes: "n µ m k" },
  { symbol: "L", factor: "0.001", exponents: VOLUME, prefixes: "n µ m c d h k" },
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
  { symbol: "m", factor: "1", exponents: LENGTH, prefixes: "n µ m c d k" },
  { symbol: "in", factor: "0.0254", exponents: LENGTH },
  { symbol: "ft", factor: "0.3048", exponents: LENGTH },
  { symbol: "ha", factor: "10000", exponents: AREA },
  { symbol: "s", factor: "1", exponents: TIME, prefixes: "n µ m" },
  { symbol: "min", factor: "60", exponents: TIME },
  { symbol: "h", factor: "3600", exponents: TIME },
  { symbol: "d", factor: "86400", exponents: TIME },
  { symbol: "K", factor: "1", exponents: TEMPERATURE, prefixes: "m" },
  { symbol: "°C", factor: "1", exponents: TEMPERATURE, offset: "273.15" },
  { symbol: "°F", factor: ["5", "9"], exponents: TEMPERATURE, offset: ["2298.35", "9"] },
  { symbol: "ΔK", factor: "1", exponents: TEMPERATURE, kind: "difference" },
  { symbol: "Δ°C", factor: "1", exponents: TEMPERATURE, kind: "difference" },
  { symbol: "Δ°F", factor: ["5", "9"], exponents: TEMPERATURE, kind: "difference" },
  { symbol: "A", factor: "1", exponents: [0, 0, 0, 0, 0, 1], prefixes: "µ m" },
  { symbol: "C", factor: "1", exponents: [0, 0, 1, 0, 0, 1], prefixes: "µ m k" },
  { symbol: "V", factor: "1", exponents: [1, 2, -3, 0, 0, -1], prefixes: "µ m k" },
  { symbol: "Ω", factor: "1", exponents: [1, 2, -3, 0, 0, -2], prefixes: "m k M" },
  { symbol: "W", factor: "1", exponents: [1, 2, -3, 0, 0, 0], prefixes: "m k M" },
  { symbol: "N", factor: "1", exponents: [1, 1, -2, 0, 0, 0], prefixes: "m k" },
  { symbol: "Pa", factor: "1", exponents: PRESSURE, prefixes: "m h k M" },
  { symbol: "bar", factor: "100000", exponents: PRESSURE, prefixes: "m" },
  { symbol: "atm", factor: "101325", exponents: PRESSURE },
  { symbol: "torr", factor: ["101325", "760"], exponents: PRESSURE },
  { symbol: "mmHg", factor: "133.322387415", exponents: PRESSURE },
  { symbol: "psi", factor: ["4.4482216152605", "0.00064516"], exponents: PRESSURE },
  { symbol: "J", factor: "1", exponents: ENERGY, prefixes: "m k M" },
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
  { symbol: "rad", factor: "1", exponents: NUMBER },
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

/** Other spellings of the same unit. */
export const SPELLINGS: Readonly<Record<string, string>> = {
  l: "L",
  ml: "mL",
  ug: "µg",
  uL: "µL",
  ul: "µL",
  umol: "µmol",
  um: "µm",
  gram: "g",
  grams: "g",
  kilogram: "kg",
  litre: "L",
  liter: "L",
  mole: "mol",
  moles: "mol",
  tonne: "t",
  tonnes: "t",
  lbs: "lb",
  "oz avoirdupois": "oz av",
  hour: "h",
  hours: "h",
  minute: "min",
  minutes: "min",
  day: "d",
  days: "d",
  degC: "°C",
  degF: "°F",
  "℃": "°C",
  "℉": "°F",
  Torr: "torr",
  ohm: "Ω",
  "% m/m": "% w/w",
  "% m/v": "% w/v",
  "% n/n": "mol %",
  sec: "s",
  second: "s",
  seconds: "s",
  hr: "h",
  hrs: "h",
  mcg: "µg",
  "mm Hg": "mmHg",
  "deg C": "°C",
  "° C": "°C",
  percent: "%",
  pct: "%",
  "% (w/w)": "% w/w",
  "% (m/m)": "% w/w",
  "% (v/v)": "% v/v",
  "% (w/v)": "% w/v",
  "wt %": "% w/w",
  "wt.%": "% w/w",
  "wt. %": "% w/w",
  "mass %": "% w/w",
  "mass%": "% w/w",
  "vol %": "% v/v",
  "vol.%": "% v/v",
  "vol. %": "% v/v",
  "wt%": "% w/w",
  "vol%": "% v/v",
  "mol%": "mol %",
  "%w/w": "% w/w",
  "%v/v": "% v/v",
  "%w/v": "% w/v",
  "ppm m/m": "ppm w/w",
  "ppb m/m": "ppb w/w",
  dl: "dL",
  cl: "cL",
};

/** Units that mean several things: refused, with the readings that are meant. */
export const AMBIGUOUS: Readonly<Record<string, string>> = {
  cup: "write 'US cup', or measure it: '250 mL'",
  cups: "write 'US cup', or measure it: '250 mL'",
  drop: "count the drops into a cylinder and give mL; drops run from about 0.03 to 0.06 mL",
  drops: "count the drops into a cylinder and give mL; drops run from about 0.03 to 0.06 mL",
  oz: "write 'oz av' for the ounce of weight, 'US fl oz' or 'imp fl oz' for volume",
  ounce: "write 'oz av' for the ounce of weight, 'US fl oz' or 'imp fl oz' for volume",
  ounces: "write 'oz av' for the ounce of weight, 'US fl oz' or 'imp fl oz' for volume",
  "fl oz": "write 'US fl oz' (29.57 mL) or 'imp fl oz' (28.41 mL)",
  gal: "write 'US gal' (3.785 L) or 'imp gal' (4.546 L)",
  gallon: "write 'US gal' (3.785 L) or 'imp gal' (4.546 L)",
  gallons: "write 'US gal' (3.785 L) or 'imp gal' (4.546 L)",
  pt: "write 'US pt' (473 mL) or 'imp pt' (568 mL)",
  pint: "write 'US pt' (473 mL) or 'imp pt' (568 mL)",
  pints: "write 'US pt' (473 mL) or 'imp pt' (568 mL)",
  qt: "write 'US qt' (946 mL) or 'imp qt' (1137 mL)",
  quart: "write 'US qt' (946 mL) or 'imp qt' (1137 mL)",
  tsp: "spoons differ: measure the volume in mL or weigh it",
  tbsp: "spoons differ: measure the volume in mL or weigh it",
  teaspoon: "spoons differ: measure the volume in mL or weigh it",
  tablespoon: "spoons differ: measure the volume in mL or weigh it",
  gr: "write 'grain' (64.8 mg) or 'g'",
  dram: "an apothecary's dram is 3.888 g, an avoirdupois dram 1.772 g: give grams",
  F: "write '°F' for a temperature; the farad is not among the units",
  deg: "write '°C' or '°F'",
  degrees: "write '°C' or '°F'",
  M: "write 'mol/L'",
  mM: "write 'mmol/L'",
  $: "name the currency by its ISO 4217 code, such as USD, CAD or AUD",
  "€": "name the currency by its ISO 4217 code: EUR",
  "£": "name the currency by its ISO 4217 code: GBP",
};

/** ISO 4217 alphabetic codes of circulating currencies (list from memory; no figure depends on it). */
export const CURRENCIES =
  "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BHD BIF BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CLP CNY COP CRC CUP CVE CZK DJF DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GNF GTQ GYD HKD HNL HTG HUF IDR ILS INR IQD IRR ISK JMD JOD JPY KES KGS KHR KMF KPW KRW KWD KYD KZT LAK LBP LKR LRD LSL LYD MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD OMR PAB PEN PGK PHP PKR PLN PYG QAR RON RSD RUB RWF SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TND TOP TRY TTD TWD TZS UAH UGX USD UYU UZS VED VES VND VUV WST XAF XCD XCG XOF XPF YER ZAR ZMW ZWG";
