// Cutting an equation text into terms. What the characters mean, by example:
//
//   H2 + O2 -> H2O        a plus with white space on both sides separates
//   Na+ + Cl- -> NaCl     a sign stuck to a formula is its charge
//   Na++Cl-->NaCl         of several signs stuck together the last plus separates, the first minus is a charge
//   H2+O2->H2O            a plus stuck to formulas on both sides separates (doubtful, kept as a remark)
//   Fe+3 + 3 OH-          a plus before a number that ends the term is a charge (Fe, 3+)
//   Cu+2H2SO4             a plus before a number before a formula separates
//   H2+ O2                refused: charge of H2, or a missing space?
//   CaCO3 ->[heat] CaO + CO2   what stands on the arrow is left out
//   CH2=CH2 + H2 -> C2H6  `=` is an arrow only where no other arrow stands
//
// Brackets hide everything inside them. One pass, no backtracking beyond the length of a number.
import { EquationError } from "../error";
import { MAX_LENGTH, MAX_SPECIES } from "./limits";

/** What the arrow says: a reaction that goes, an equilibrium, or bare stoichiometry. */
export type Arrow = "forward" | "equilibrium" | "equality";

/** The terms of an equation text, as positions in it. */
interface Split {
  readonly arrow: Arrow;
  /** Start and end of each term, the reactants first. */
  readonly terms: number[];
  readonly reactants: number;
  /** Readings that another writer might have meant otherwise. */
  readonly remarks: string[];
}

const FORWARD = "→⟶➔➜➝➞⇒⟹⇾⭢↦";
const BOTH_WAYS = "⇌⇋⇄⇆↔⟷⇔⟺⥂⥃⥄";
const BACKWARD = "←⟵⇐⟸";
const DASHES = "-−–—‐‑";
const PLUS = 43;
const FULL_WIDTH_PLUS = 0xff0b;

function isSpace(code: number): boolean {
  return (
    code === 32 || (code >= 9 && code <= 13) || code === 0xa0 || (code >= 0x2000 && code <= 0x200b) || code === 0x202f
  );
}

function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

function isPlus(code: number): boolean {
  return code === PLUS || code === FULL_WIDTH_PLUS;
}

function isDash(character: string): boolean {
  return character !== "" && DASHES.includes(character);
}

/** Index of the first character at or after `from` that is no white space. */
function skipSpace(text: string, from: number): number {
  let at = from;
  while (isSpace(text.charCodeAt(at))) at++;
  return at;
}

/** Does a phase such as `(aq)` stand here? */
function isPhaseAt(text: string, at: number): boolean {
  if (text[at] !== "(") return false;
  const end = text.indexOf(")", at);
  return end > at + 1 && end <= at + 8 && /^[a-z, ]+$/.test(text.slice(at + 1, end));
}

/** Could a formula, with or without a coefficient, begin here? */
function startsFormula(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (code >= 65 && code <= 90) return true;
  if (code === 40 || code === 91 || code === 123) return !isPhaseAt(text, at);
  // e- the electron, superscript mass numbers, vulgar fractions
  return text[at] === "e" || /[_?¹²³⁰⁴-⁹¼½¾⅐-⅞]/.test(text[at] ?? "");
}

interface FoundArrow {
  readonly arrow: Arrow;
  readonly start: number;
  readonly end: number;
  /** What stands on the shaft, in words. */
  readonly label?: string;
}

/** `--heat-->`, `-heat->`, `==heat==>`: one dash needs its label stuck to it on both sides. */
const LABELLED =
  /(?:[-−–—‐‑]{2,9} ?|[-−–—‐‑](?! )|={2,9} ?)([^<>=→⇌]{0,59}?[^<>=→⇌ ])(?: ?[-−–—‐‑]{2,9}|[-−–—‐‑]|={1,9})>/y;

/** An arrow with a label on its shaft, after white space: within a formula a dash is a charge. */
function labelledAt(text: string, at: number, shaft: number, arrow: Arrow): FoundArrow | undefined {
  if (at === 0 || !isSpace(text.charCodeAt(at - 1))) return undefined;
  LABELLED.lastIndex = shaft;
  const label = LABELLED.exec(text)?.[1];
  return label === undefined ? undefined : { arrow, start: at, end: LABELLED.lastIndex, label: label.trim() };
}

/** An arrow with a head at this place: its kind and where it ends. `=` alone is left to the caller. */
function arrowAt(text: string, at: number, termStart: number): FoundArrow | undefined {
  const character = text[at]!;
  if (FORWARD.includes(character)) return { arrow: "forward", start: at, end: at + 1 };
  if (BOTH_WAYS.includes(character)) return { arrow: "equilibrium", start: at, end: at + 1 };
  if (BACKWARD.includes(character)) return refuseBackward(text, at);
  if (character === "<") {
    let end = at + 1;
    while (isDash(text[end] ?? "") || text[end] === "=") end++;
    if (text[end] === ">") return { arrow: "equilibrium", start: at, end: end + 1 };
    if (end > at + 1) return labelledAt(text, at, at + 1, "equilibrium") ?? refuseBackward(text, at);
    return undefined;
  }
  const dashes = isDash(character);
  if (!dashes && character !== "=") return undefined;
  let end = at + 1;
  while (dashes ? isDash(text[end] ?? "") : text[end] === "=") end++;
  if (text[end] !== ">") return labelledAt(text, at, at, "forward");
  // a run of dashes stuck to a formula begins with its charge: Cl-->
  const charge = dashes && end - at > 1 && at > termStart && !isSpace(text.charCodeAt(at - 1)) ? 1 : 0;
  return { arrow: "forward", start: at + charge, end: end + 1 };
}

function refuseBackward(text: string, at: number): never {
  throw new EquationError("equation.backward-arrow", "the arrow points backwards", {
    input: text,
    position: at,
    hint: "write the reactants on the left: A + B -> C",
  });
}

/** Is the plus at this place a charge? `first` is the first plus of the run it stands in. */
function isCharge(text: string, at: number, termStart: number): boolean {
  const stuckLeft = at > termStart && !isSpace(text.charCodeAt(at - 1));
  const next = at + 1;
  if (next >= text.length) return stuckLeft;
  const code = text.charCodeAt(next);
  if (isSpace(code)) return stuckLeft;
  if (isPlus(code)) return true;
  if (isDigit(code)) {
    let end = next;
    while (isDigit(text.charCodeAt(end))) end++;
    const after = skipSpace(text, end);
    if (after >= text.length || isPlus(text.charCodeAt(after)) || isPhaseAt(text, after)) return true;
    return arrowAt(text, after, after) !== undefined || text[after] === "=";
  }
  return !startsFormula(text, next);
}

/**
 * Cut the text at its arrow and its separating pluses.
 *
 * @param readTerm - reads a formula that stands in a text without an arrow, to tell of its fault before the arrow is typed
 */
export function splitEquation(text: string, readTerm: (from: number, to: number) => void): Split {
  if (text.length > MAX_LENGTH) {
    throw new EquationError("equation.too-long", `the text has ${text.length} characters; the limit is ${MAX_LENGTH}`);
  }
  const split = splitAt(text, false, []);
  if (split !== undefined) return split;
  const terms: number[] = [];
  return splitAt(text, true, terms) ?? noArrow(text, terms, readTerm);
}

function noArrow(text: string, terms: readonly number[], readTerm: (from: number, to: number) => void): never {
  // half an arrow: a head without shaft, or a shaft without head
  const half = />|\s[-−–—]{1,9}(?=\s)/.exec(text);
  if (half === null) for (let at = 0; at < terms.length; at += 2) readTerm(terms[at]!, terms[at + 1]!);
  throw new EquationError("equation.no-arrow", "an equation needs an arrow between reactants and products", {
    input: text,
    position: half === null ? text.length : half.index + half[0].length - half[0].trimStart().length,
    hint:
      half === null
        ? "A + B -> C + D; also =>, =, →, ⇌, <=>"
        : `${half[0].trim()} is half an arrow; write -> between reactants and products`,
  });
}

/** One pass; undefined when no arrow of the wanted kind is there. `terms` receives those that a plus or an arrow ends. */
function splitAt(text: string, equals: boolean, terms: number[]): Split | undefined {
  const remarks: string[] = [];
  let arrow: Arrow | undefined;
  let reactants = 0;
  let depth = 0;
  let start = 0;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    // letters, digits, blanks and the other signs of formulas: nothing to decide
    if (code < 128 && (code > 62 || code < 60) && code !== 40 && code !== 41 && code !== 43 && code !== 45) {
      if (code === 91 || code === 123) depth++;
      else if ((code === 93 || code === 125) && depth > 0) depth--;
      continue;
    }
    if (code === 40) depth++;
    else if (code === 41) {
      if (depth > 0) depth--;
    } else if (isPlus(code)) {
      // white space on both sides separates even where a bracket was left open
      const spaced = isSpace(text.charCodeAt(at - 1)) && isSpace(text.charCodeAt(at + 1));
      if (depth > 0 && !spaced) continue;
      if (isCharge(text, at, start)) {
        refuseIfDoubtful(text, at, start);
        continue;
      }
      addTerm(text, start, at, terms);
      if (at > 0 && !isSpace(text.charCodeAt(at - 1)) && !isSpace(text.charCodeAt(at + 1))) {
        remarks.push(`the plus at ${at} was read as separating two species; white space around it would say so`);
      }
      start = at + 1;
      depth = 0;
    } else {
      const found =
        equals && (code === 61 || code === 0xff1d || code === 0x2550)
          ? { arrow: "equality" as const, start: at, end: text[at + 1] === "=" ? at + 2 : at + 1 }
          : arrowAt(text, at, start);
      if (found === undefined) continue;
      if (arrow !== undefined) {
        throw new EquationError("equation.several-arrows", "an equation has one arrow", {
          input: text,
          position: found.start,
          hint: "give the steps one by one; overallEquation adds them up",
        });
      }
      if (found.start > at) {
        remarks.push(`the dash at ${at} was read as a charge; white space before the arrow would leave no doubt`);
      }
      if (found.label !== undefined) remarks.push(`"${found.label}" on the arrow was left out; it is not a species`);
      addTerm(text, start, found.start, terms);
      arrow = found.arrow;
      reactants = terms.length / 2;
      // no arrow stands inside brackets: one that was left open is for the formula reader to point out
      depth = 0;
      start = labelEnd(text, found.end);
      at = start - 1;
    }
  }
  if (arrow === undefined) return undefined;
  addTerm(text, start, text.length, terms);
  return { arrow, terms, reactants, remarks };
}

/** `->[heat] CaO`: what stands on the arrow, in square brackets between it and the products, is not a species. */
function labelEnd(text: string, from: number): number {
  LABEL.lastIndex = from;
  return LABEL.test(text) ? LABEL.lastIndex : from;
}

const LABEL = /(?:\[[^[\]]{0,60}\]){1,2}\s+(?=[A-Z\d([{])/y;

/** `H2+ O2`: a charge must be followed by a plus, an arrow, a phase or the end. */
function refuseIfDoubtful(text: string, at: number, termStart: number): void {
  if (at === termStart || isSpace(text.charCodeAt(at - 1))) return;
  if (at + 1 >= text.length || !isSpace(text.charCodeAt(at + 1))) return;
  const next = skipSpace(text, at + 1);
  if (next >= text.length) return;
  if (!startsFormula(text, next) && !isDigit(text.charCodeAt(next))) return;
  throw new EquationError("equation.doubtful-plus", "this plus may be a charge or may separate two species", {
    input: text,
    position: at,
    hint: "white space on both sides separates (H2 + O2); a charge is followed by a plus of its own (H2+ + O2)",
  });
}

function addTerm(text: string, from: number, to: number, terms: number[]): void {
  let start = from;
  let end = to;
  while (start < end && isSpace(text.charCodeAt(start))) start++;
  while (end > start && isSpace(text.charCodeAt(end - 1))) end--;
  if (start === end) {
    throw new EquationError("equation.empty-term", "a formula is missing here", {
      input: text,
      position: Math.min(to, text.length),
      hint: "each plus and each arrow stands between two formulas",
    });
  }
  if (terms.length >= 2 * MAX_SPECIES) {
    throw new EquationError("equation.too-many-species", `more than ${MAX_SPECIES} species`, {
      input: text,
      position: start,
    });
  }
  terms.push(start, end);
}
