// A target as a person writes it, in words or ions: read for its class alone, so that phrasing opens nothing. What is read here is
// never answered with a route.
import { attempt } from "../foundation/error";
import { isCationElement, readNotation, saltFormula } from "../ion/internal";
import { tryFormulaOf } from "../substance";
import { formulaFrom, madeOf } from "./compound";
import { DANGER_WORDS, STATE_WORDS } from "./data/danger-words";
import { refusedClass } from "./safety";

/** Charges that a metal may have where its name does not say it. */
const CHARGES = ["I", "II", "III", "IV"];

/** Class of a name or formula that is read; undefined for what is not read or may be made. */
function classOfRead(text: string): string | undefined {
  const read = attempt(() => formulaFrom(text));
  const found = read.ok ? read : tryFormulaOf(text);
  return found.ok ? refusedClass(String(found.value)) : undefined;
}

/** Class of the salt of a metal whose charge the name leaves open: the worst that it may be. */
function classOfMetal(metal: string, rest: string): string | undefined {
  const classes = CHARGES.flatMap((charge) => classOfRead(`${metal}(${charge}) ${rest}`) ?? []);
  return classes.find((one) => one === "explosive") ?? classes[0];
}

/** Of a metal alone the number before the sign is meant as its charge: Pb2+. */
function chargeOf(ion: string): string {
  const formula = formulaFrom(ion);
  const [symbol = "", other] = formula.symbols;
  const count = readNotation(formula).parts[0]?.counts.get(symbol) ?? 1;
  return other === undefined && count > 1 && formula.charge === 1 && isCationElement(symbol)
    ? `${symbol}^${count}+`
    : ion;
}

/** Ions side by side: the class of the salt that they make, else of any of them. */
function classOfIons(words: readonly string[]): string | undefined {
  const ions = words.filter((word) => attempt(() => formulaFrom(word)).ok);
  if (ions.length === 0 || ions.length < words.length) return undefined;
  const made = ions.map((ion) => madeOf(chargeOf(ion)));
  const [cation] = made.flatMap((one) => one?.cations ?? []);
  const [anion] = made.flatMap((one) => one?.anions ?? []);
  const salt =
    cation === undefined || anion === undefined ? undefined : attempt(() => saltFormula(cation.formula, anion.formula));
  const ofSalt = salt?.ok ? refusedClass(salt.value) : undefined;
  return ofSalt ?? ions.map(refusedClass).find((one) => one !== undefined);
}

/** The class that words say, for a name that is not read. */
function classOfWords(words: readonly string[]): string | undefined {
  const text = words.join(" ");
  return DANGER_WORDS().find(({ word, whole }) => (whole ? words.includes(word) : text.includes(word)))?.class;
}

/** The class for which a text is refused as a target, however it is phrased; undefined where nothing in it says one. */
export function classOfText(text: string): string | undefined {
  // a plus sign that stands alone joins; at the end of a word it is a charge
  const words = text
    .split(/[\s,;]+(?:\+[\s,;]+)?/u)
    .filter((word) => word !== "" && !STATE_WORDS.has(word.toLowerCase()));
  const [first, ...rest] = words;
  if (first === undefined) return undefined;
  const plain = text
    .split(/\s+/u)
    .flatMap((word) => word.toLowerCase().split(/[^\p{L}]+/u))
    .filter((word) => word !== "");
  return (
    classOfRead(words.join(" ")) ?? classOfMetal(first, rest.join(" ")) ?? classOfIons(words) ?? classOfWords(plain)
  );
}

/** The class that a trade's letters say, though they can be read as a formula as well. */
export const classOfLetters = (text: string): string | undefined =>
  DANGER_WORDS().find(({ word, whole }) => whole && word === text.trim().toLowerCase())?.class;
