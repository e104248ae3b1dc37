// Readings that the letter of the text allows and that another writer may have meant otherwise: a capital I for the l of
// chlorine, capitals for a metal, a zero for the letter O, a mass number that slid down, the short name of a group that is also a symbol. The
// formula is read as it stands; these are the remarks beside it. Nothing here is computed before somebody asks.
import { elementIndexOf } from "../../element/internal";

/** Longer texts are not typed by hand. */
const MAX_REMARKED = 200;

/**
 * Is this a mass number that one would label the element with? Near the valley of stability,
 * Z = A / (1.98 + 0.0155 A^(2/3)), a little wider for heavy elements. Hydrogen is left out: its nuclides are D and T, and
 * `2H2O` is two waters.
 *
 * Source: the semi-empirical mass formula (memory).
 */
function isLikelyLabel(massNumber: number, atomicNumber: number): boolean {
  if (atomicNumber < 2) return false;
  const stable = massNumber / (1.98 + 0.0155 * massNumber ** (2 / 3));
  return Math.abs(stable - atomicNumber) <= 1 + atomicNumber / 50;
}

/** `13CO2`, `(15NH4)2SO4`; in an adduct such as `4BeO·B2O3` the number counts a part. */
function lowMassNumber(text: string): string | undefined {
  if (/[.·•⋅*∙‧×]/.test(text)) return undefined;
  const match = /(?:^|[([{])(\d{1,3})([A-Z][a-z]?)/.exec(text);
  if (match === null || !isLikelyLabel(Number(match[1]), elementIndexOf(match[2]!) + 1)) return undefined;
  return `${match[1]} was read as a number of what follows; the nuclide is written [${match[1]}${match[2]}]`;
}

/** `NaCI`, `CCI4`, `KC1O3`: not the C of an organic formula, whose iodine stands after a bracket, hydrogen or first. */
function mistypedChlorine(text: string): string | undefined {
  const match = /[A-HJ-Z][a-z]?\d*(C(?:I(?![a-z])|1(?![\d.])))/.exec(text);
  if (match === null) return undefined;
  return `${match[1]} was read as ${match[1] === "C1" ? "one carbon atom" : "carbon and iodine"}; chlorine is written Cl, with a small L`;
}

/** `CaC12`, `CC14`, `FeC13·6H2O`: after another element and before none, so many carbon atoms are mostly chlorine. */
function mistypedChlorides(text: string): string | undefined {
  const match = /[A-Z][a-z]?\d*(C1([2-9]))(?![\d.]|[A-Z[(])/.exec(text);
  if (match === null) return undefined;
  return `${match[1]} was read as 1${match[2]} carbon atoms; chlorine is written Cl${match[2]}, with a small L`;
}

const OXOANION = "\\d?\\(?(?:[SC]O3|SO4|NO3|PO4|OH\\))";
const SIMPLE_ANION = "\\d?(?:Cl|Br|I|F|O[235]?|S\\d?)\\d?(?:$|[·.*(\\s])";
const ANY_ANION = `(?:${OXOANION}|${SIMPLE_ANION})`;

/**
 * Metals whose symbol in capitals reads as two elements, and the anions after which hardly anything else is meant: not
 * phosgene COCl2, thiophosgene CSCl2, deuterochloroform CDCl3, phosphoryl chloride POCl3, hypochlorous acid HOCl.
 */
const METALS_IN_CAPITALS: Readonly<Record<string, string>> = {
  CU: ANY_ANION,
  NI: `(?:${OXOANION}|(?:Cl|Br|F|O|S)\\d?(?:$|[·.*(\\s]))`,
  CO: OXOANION,
  CD: OXOANION,
  CS: OXOANION,
  SN: ANY_ANION,
  PB: ANY_ANION,
  BI: ANY_ANION,
  SB: ANY_ANION,
  PD: ANY_ANION,
  TI: ANY_ANION,
  OS: "O4",
};

/** `CUSO4`, `NI(NO3)2`, `TIO2`: a metal salt in capitals. */
function metalInCapitals(text: string): string | undefined {
  const pair = text.slice(0, 2);
  const anion = METALS_IN_CAPITALS[pair];
  if (anion === undefined || !new RegExp(`^..${anion}`).test(text)) return undefined;
  const [first, second] = pair;
  return `${pair} was read as ${first} and ${second}; the metal is written ${first}${second!.toLowerCase()}`;
}

/** `Fe203`, `K2Cr207`, `H20`: such counts stand in organic formulas and beside oxygen, not alone. */
function zeroForOxygen(text: string): string | undefined {
  if (/[OC](?![a-z])/.test(text)) return undefined;
  const match = /[A-Z][a-z]?([1-9]0[1-9])(?!\d)/.exec(text) ?? /^H(20)$/.exec(text);
  if (match === null) return undefined;
  return `${match[1]} was read as a count; with the letter O it is ${match[0].replace("0", "O")}`;
}

/** `Fe.95O`, `Na.33WO3`: a lone element before the dot is hardly an adduct of what follows. */
function bareDecimals(text: string): string | undefined {
  const match = /^([A-Z][a-z]?)\.([1-9]\d*)[A-Z([]/.exec(text);
  if (match === null) return undefined;
  return `.${match[2]} was read as a dot and a number of what follows; the subscript is written ${match[1]}0.${match[2]}`;
}

/** `NaOAc`, `AcOH`, `Ti(OPr)4`, `PrOH`, `BH3·THF`. */
function shortName(text: string): string | undefined {
  const acetyl = /OAc(?![a-z])|^(?:H|Na|K|NH4)Ac\b|Ac(?:OH(?![a-z])|O-|2O(?![\w.(]))/.test(text);
  if (acetyl) return "Ac was read as actinium; acetyl is written CH3CO, acetate CH3COO";
  if (/\(OPr\)|PrOH$/.test(text)) return "Pr was read as praseodymium; propyl is written C3H7";
  if (/THF(?!\w)/.test(text)) return "T was read as tritium; tetrahydrofuran is written C4H8O";
  return undefined;
}

/**
 * One element, a subscript and a bare sign, which many writers mean as the charges of one atom; not molecules and known
 * ions such as `I3-`, `N3-`, `O2-`, `Cl2+`.
 */
export function hasDigitsBeforeSign(text: string): boolean {
  return /^[A-Z][a-z]?[2-9][+-](?:$|\()/.test(text) && !/^(?:(?:F|Cl|Br|I|O|Xe)\d|N3-)/.test(text);
}

function digitsBeforeSign(text: string): string | undefined {
  if (!hasDigitsBeforeSign(text)) return undefined;
  const [, symbol, digit, sign] = /^([A-Z][a-z]?)(.)(.)/.exec(text)!;
  return `${digit} was read as a subscript; a charge is written ${symbol}^${digit}${sign}`;
}

/** `Hg22+`, `O22-`, `S22-`: two atoms and a charge of two, whose superscript was lost. */
function flattenedPair(text: string): string | undefined {
  const match = /^(Hg|O|S|Se|C|Cd)22([+-])(?:$|\()/.exec(text);
  if (match === null) return undefined;
  return `22 was read as a subscript; two atoms with two charges are written ${match[1]}2^2${match[2]}`;
}

/** Other readings that the writer of this text may have meant, in words. */
export function remarksOn(text: string): string[] {
  if (text.length > MAX_REMARKED) return [];
  const asked = [
    digitsBeforeSign,
    flattenedPair,
    lowMassNumber,
    mistypedChlorine,
    mistypedChlorides,
    metalInCapitals,
    zeroForOxygen,
    bareDecimals,
    shortName,
  ];
  return asked.map((ask) => ask(text)).filter((remark) => remark !== undefined);
}
