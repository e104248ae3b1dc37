// How a formula is written, kept for naming: the parts joined by adduct dots, and inside each the units in their order
// and brackets. Composition alone (the formula room's business) cannot tell a ligand from a counter-ion.
import { SubstanceError } from "./error";

/** One element symbol or one bracketed group, with how often it stands there. */
export interface Unit {
  /** Element symbol, or the group as written without its outer bracket and count. */
  readonly text: string;
  readonly count: number;
  /** What is in the group; absent for an element. */
  readonly members?: readonly Unit[];
  readonly bracket?: "(" | "[" | "{";
}

/** One component of an adduct. */
export interface Part {
  /** Leading number of the component, 1 when none is written. */
  readonly multiplier: number;
  readonly units: readonly Unit[];
  /** Atoms of one component, by symbol. */
  readonly counts: ReadonlyMap<string, number>;
  /** The component as written, without its leading number. */
  readonly text: string;
}

/** A formula as written. */
export interface Notation {
  readonly parts: readonly Part[];
  readonly charge: number;
}

const DEEPEST_NESTING = 20;
const DOTS = "·•⋅∙*.";
const CLOSING: Readonly<Record<string, string>> = { "(": ")", "[": "]", "{": "}" };
const FRACTIONS: Readonly<Record<string, string>> = { "½": "0.5", "¼": "0.25", "¾": "0.75", "⅓": "1/3", "⅔": "2/3" };

/** Subscript digits to plain ones, spaces around dots away, vulgar fractions to decimals. */
function fold(text: string): string {
  return text
    .replace(/[₀-₉]/g, (c) => String(c.charCodeAt(0) - 0x2080))
    .replace(/[½¼¾⅓⅔]/g, (c) => FRACTIONS[c]!)
    .replace(/\s*([·•⋅∙*])\s*/g, "$1")
    .trim();
}

/** Atoms of a list of units, added up into `into`. */
function addCounts(units: readonly Unit[], times: number, into: Map<string, number>): void {
  for (const unit of units) {
    const n = times * unit.count;
    if (unit.members === undefined) into.set(unit.text, (into.get(unit.text) ?? 0) + n);
    else addCounts(unit.members, n, into);
  }
}

/** Atoms of a list of units, by symbol. */
export function countsOf(units: readonly Unit[]): Map<string, number> {
  const counts = new Map<string, number>();
  addCounts(units, 1, counts);
  return counts;
}

class Reader {
  private at = 0;

  constructor(private readonly text: string) {}

  private refuse(problem: string): never {
    throw new SubstanceError("substance.unreadable-formula", problem, { input: this.text, position: this.at });
  }

  /** `2`, `0.5`, `1/2`: a leading number may be a decimal; a subscript only when it starts with `0.`. */
  private number(leading: boolean): number | undefined {
    const pattern = leading ? /\d+(?:\.\d+)?(?:\/\d+)?/y : /0\.\d+|\d+/y;
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text);
    if (found === null) return undefined;
    this.at += found[0].length;
    const [over, under] = found[0].split("/");
    const value = Number(over) / Number(under ?? "1");
    if (!(value > 0) || value > 1e6) this.refuse("a count must be positive and at most a million");
    return value;
  }

  private units(end: string | undefined, depth: number): Unit[] {
    if (depth > DEEPEST_NESTING) this.refuse(`brackets nested deeper than ${DEEPEST_NESTING}`);
    const found: Unit[] = [];
    for (;;) {
      const c = this.text[this.at];
      if (c === undefined || c === end || (depth === 0 && DOTS.includes(c))) return found;
      const closing = CLOSING[c];
      if (closing !== undefined) {
        this.at += 1;
        const start = this.at;
        const members = this.units(closing, depth + 1);
        if (this.text[this.at] !== closing) this.refuse(`expected ${closing}`);
        if (members.length === 0) this.refuse("an empty bracket");
        const text = this.text.slice(start, this.at);
        this.at += 1;
        found.push({ text, members, bracket: c as "(" | "[" | "{", count: this.number(false) ?? 1 });
        continue;
      }
      const symbol = /[A-Z][a-z]?/y;
      symbol.lastIndex = this.at;
      const match = symbol.exec(this.text);
      if (match === null) this.refuse("expected an element symbol or a bracket");
      this.at += match[0].length;
      found.push({ text: match[0], count: this.number(false) ?? 1 });
    }
  }

  read(): Part[] {
    const parts: Part[] = [];
    for (;;) {
      const multiplier = this.number(true) ?? 1;
      const start = this.at;
      const units = this.units(undefined, 0);
      if (units.length === 0) this.refuse("expected an element symbol or a bracket");
      parts.push({ multiplier, units, counts: countsOf(units), text: this.text.slice(start, this.at) });
      if (this.at >= this.text.length) return parts;
      this.at += 1;
    }
  }
}

/** Trailing charge: `^2+`, `^+2`, a space and `2+`, superscripts, or one bare sign. */
function splitCharge(text: string): [string, number] {
  const folded = text
    .replace(/[⁰¹²³⁴-⁹]/g, (c) => `^${"⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(c)}`)
    .replace(/⁺/g, "+")
    .replace(/[⁻−]/g, "-");
  const match =
    /^(.*?)(?:\^\{?|\s+|(?<=[\])]))?(\d*)([+-])\}?$/.exec(folded) ?? /^(.*?)(?:\^\{?|\s+)()([+-]\d+)\}?$/.exec(folded);
  if (match === null) {
    const signed = /^(.*?)([+-]\d+)$/.exec(folded);
    return signed === null ? [folded, 0] : [signed[1]!, Number(signed[2])];
  }
  const [, core, digits, sign] = match;
  if (sign!.length > 1) return [core!, Number(sign)];
  const atom =
    /^[+-]/.test(sign!) &&
    digits !== "" &&
    !/(?:\^\{?|\s|[\])])$/.test(folded.slice(0, folded.length - 1 - digits!.length));
  // `NO3-`: the 3 is a subscript, the charge is one
  if (atom) return [core! + digits!, sign === "+" ? 1 : -1];
  const size = digits === "" ? 1 : Number(digits);
  return [core!, sign === "+" ? size : -size];
}

/** Reads a formula as it is written; throws `substance.unreadable-formula` with the place. */
export function readNotation(text: string): Notation {
  const [core, charge] = splitCharge(fold(text));
  return { parts: new Reader(core.trim()).read(), charge };
}

/** The same, or `undefined` where the text is no formula. */
export function tryReadNotation(text: string): Notation | undefined {
  try {
    return readNotation(text);
  } catch (error) {
    if (error instanceof SubstanceError) return undefined;
    throw error;
  }
}

/** One text per composition: symbols sorted, counts as shortest decimals. */
export function compositionKey(counts: ReadonlyMap<string, number>): string {
  return [...counts.keys()]
    .sort()
    .map((symbol) => `${symbol}${Number(counts.get(symbol)!.toFixed(6))}`)
    .join(" ");
}

/** Is this part plain water? */
export function isWater(part: Part): boolean {
  return part.counts.size === 2 && part.counts.get("H") === 2 && part.counts.get("O") === 1;
}

/** One text per formula whatever the order of atoms and of parts: what the tables are looked up by. */
export function formulaKey(notation: Notation): string {
  const parts = notation.parts.map((part) => `${Number(part.multiplier.toFixed(6))}*${compositionKey(part.counts)}`);
  return parts.sort().join(" . ") + (notation.charge === 0 ? "" : ` ^${notation.charge}`);
}

/** The key without crystal water, and the water per formula unit. */
export function anhydrousKey(notation: Notation): { key: string; water: number } {
  let water = 0;
  const rest: Part[] = [];
  for (const part of notation.parts) {
    if (isWater(part)) water += part.multiplier;
    else rest.push(part);
  }
  if (rest.length === 0) return { key: formulaKey(notation), water: 0 };
  return { key: formulaKey({ parts: rest, charge: notation.charge }), water };
}
