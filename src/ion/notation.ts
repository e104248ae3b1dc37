// How a formula is written, kept for naming: the parts joined by adduct dots, and inside each the units in their order
// and brackets. Composition alone cannot tell a ligand from a counter-ion.
import { elementOf, symbolAt } from "../element/internal";
import { Formula, parseFormula, tryParseFormula } from "../formula";

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
  readonly phase?: string;
}

const CLOSING = { "(": ")", "[": "]", "{": "}" } as const;

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

/** Units as text again. */
export function unitsText(units: readonly Unit[]): string {
  return units
    .map((unit) => {
      const count = unit.count === 1 ? "" : String(unit.count);
      return unit.bracket === undefined ? unit.text + count : unit.bracket + unit.text + CLOSING[unit.bracket] + count;
    })
    .join("");
}

/** Symbol of an atom node; nuclides keep their mass number, so that no table row matches them by mistake. */
function symbolOf(atom: number, short: boolean): string {
  const element = symbolAt(elementOf(atom));
  if (atom < 1000) return element;
  const mass = atom % 1000;
  return short ? (mass === 2 ? "D" : "T") : `[${mass}${element}]`;
}

/** The element of an atom's symbol, which for a nuclide is `D`, `T` or `[13C]`. */
export function elementOfAtom(symbol: string): string {
  if (symbol === "D" || symbol === "T") return "H";
  return symbol.startsWith("[") ? symbol.slice(1, -1).replace(/\d+/, "") : symbol;
}

/** The formula's parts with units in written order. */
function notationOf(formula: Formula): Notation {
  const parts: { multiplier: number; units: Unit[] }[] = [];
  const stack: { units: Unit[]; bracket: "(" | "[" | "{"; count: number }[] = [];
  let units: Unit[] = [];
  for (const node of formula.reading().nodes) {
    if (node.kind === "part" && stack.length === 0) {
      units = [];
      parts.push({ multiplier: node.number.n / node.number.d, units });
    } else if (node.kind === "atom") {
      units.push({ text: symbolOf(node.atom, node.short), count: node.count.n / node.count.d });
    } else if (node.kind === "open") {
      stack.push({ units, bracket: node.bracket, count: node.count.n / node.count.d });
      units = [];
    } else if (node.kind === "close") {
      const { units: outer, bracket, count } = stack.pop()!;
      outer.push({ text: unitsText(units), members: units, bracket, count });
      units = outer;
    }
  }
  return {
    parts: parts.map((part) => ({ ...part, counts: countsOf(part.units), text: unitsText(part.units) })),
    charge: formula.charge,
    ...(formula.phase === undefined ? {} : { phase: formula.phase }),
  };
}

/** Atoms in the formula of a table by symbol, without its structure, which takes longer to read. */
export function atomsIn(text: string): ReadonlyMap<string, number> {
  const formula = parseFormula(text);
  const atoms = new Map<string, number>();
  for (let i = 0; i < formula.size; i += 1)
    atoms.set(symbolAt(formula.elementIndexAt(i)), formula.numeratorAt(i) / formula.denominator);
  return atoms;
}

/** Reads a formula as it is written; throws the formula layer's errors. */
export function readNotation(formula: string | Formula): Notation {
  return notationOf(formula instanceof Formula ? formula : parseFormula(formula));
}

/** The same, or `undefined` where the text is no formula. */
export function tryReadNotation(text: string): Notation | undefined {
  const outcome = tryParseFormula(text);
  return outcome.ok ? notationOf(outcome.value) : undefined;
}

/** The parts as text. */
export const textOf = ({ parts }: Notation): string => parts.map(({ text }) => text).join(".");

/** One text per composition: symbols sorted, counts as shortest decimals. */
export function compositionKey(counts: ReadonlyMap<string, number>): string {
  const one = (symbol: string): string => {
    const n = counts.get(symbol)!;
    return `${symbol}${Number.isInteger(n) ? n : Number(n.toFixed(6))}`;
  };
  return [...counts.keys()].sort().map(one).join(" ");
}

/** Do the letters show the group of a carboxylic or sulfonic acid? */
export const showsAcidGroup = ({ text }: Part): boolean =>
  ["COOH", "CO2H", "CHO2H", "HOOC", "HOCO", "SO3H"].some((group) => text.includes(group));

/** Is this part plain water? */
export function isWater(part: Part): boolean {
  return part.counts.size === 2 && part.counts.get("H") === 2 && part.counts.get("O") === 1;
}
