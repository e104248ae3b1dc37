// Which ions a salt, a strong acid or a strong base gives in water. The notation tells the ions (structure.ts), oxidation
// states tell the charges of simple ones, the tables tell what dissolves. A phase written by the user outweighs the tables.
import { type Formula, parseFormula } from "../formula/formula";
import { Fraction } from "../foundation/fraction";
import { ALWAYS_SOLUBLE, NOT_IN_WATER, SOLUBILITY_RULES, STRONG_ACIDS } from "./data/electrolytes";
import { addTo, type Side } from "./half-solve";
import { isNonmetal } from "./oxidation/rules";
import { tryOxidationStates } from "./oxidation/states";
import { countsOf, type Item, keyOf, knownIon, type Part, partsOf, spelledIon, spelling } from "./oxidation/structure";

/** An ion, or a molecule of crystal water, and how many a formula unit gives. */
export interface Released {
  readonly text: string;
  readonly charge: number;
  readonly count: bigint;
}

/** Simple anions that a salt can hold as plain atoms. */
const SIMPLE_ANIONS: Readonly<Record<string, number>> = {
  F: -1,
  Cl: -1,
  Br: -1,
  I: -1,
  S: -2,
  O: -2,
  H: -1,
  N: -3,
  P: -3,
};

function chargeText(charge: number): string {
  const size = Math.abs(charge);
  return `${size === 1 ? "" : `^${size}`}${charge > 0 ? "+" : "-"}`;
}

const isMetal = (item: Item): boolean => item.kind === "atom" && !isNonmetal(item.symbol);

/** The same ions, each spelling once, whole numbers only. */
function released(found: readonly { text: string; charge: number; count: Fraction }[]): Released[] | undefined {
  const all = new Map<string, Released>();
  for (const { text, charge, count } of found) {
    if (count.d !== 1n) return undefined;
    const before = all.get(text);
    all.set(text, { text, charge, count: count.n + (before?.count ?? 0n) });
  }
  // cations first, then anions, then water
  const rank = ({ charge }: Released) => (charge > 0 ? 0 : charge < 0 ? 1 : 2);
  return [...all.values()].sort((one, other) => rank(one) - rank(other));
}

/** Ions of a neutral salt or acid with its water of crystallization, from its notation; undefined if it is neither. */
export function ionsOf(formula: Formula): Released[] | undefined {
  if (formula.charge !== 0) return undefined;
  const parts = partsOf(formula);
  const found: { text: string; charge: number; count: Fraction }[] = [];
  for (const part of parts) {
    if (part.charge !== 0) return undefined;
    if (keyOf(countsOf(part.items)) === "H2O1") {
      found.push({ text: "H2O", charge: 0, count: part.number });
      continue;
    }
    const ions = acidIons(part) ?? saltIons(part, formula);
    if (ions === undefined) return undefined;
    for (const ion of ions) found.push({ ...ion, count: ion.count.mul(part.number) });
  }
  return found.some(({ charge }) => charge !== 0) ? released(found) : undefined;
}

interface IonCount {
  readonly text: string;
  readonly charge: number;
  readonly count: Fraction;
}

let acidsByKey: ReadonlyMap<string, (typeof STRONG_ACIDS)[number]> | undefined;

function acidIons(part: Part): IonCount[] | undefined {
  acidsByKey ??= new Map(
    STRONG_ACIDS.map((row) => [keyOf(countsOf(partsOf(parseFormula(row.formula))[0]!.items)), row]),
  );
  const row = acidsByKey.get(keyOf(countsOf(part.items)));
  if (row === undefined) return undefined;
  return [
    { text: "H+", charge: 1, count: new Fraction(row.hydrogens) },
    { text: row.anion, charge: parseFormula(row.anion).charge, count: new Fraction(1) },
  ];
}

const isLigand = (items: readonly Item[]): boolean => ["CN", "OH"].includes(knownIon(items)?.formula ?? "");
const isAlkali = (item: Item): boolean => item.kind === "atom" && ALWAYS_SOLUBLE.includes(`${item.symbol}+`);

/** Cut a salt into cations and anions; one complex in brackets takes the charge that is left. */
function saltIons(part: Part, formula: Formula): IonCount[] | undefined {
  const items = withoutAmmonium(part.items);
  const found: IonCount[] = [...items.ammonium];
  const rest = [...items.rest];
  // K4Fe(CN)6, NaAl(OH)4 without square brackets: the second metal and what surrounds it are one complex
  const complexes: { items: readonly Item[]; count: Fraction }[] = [];
  const ligand = rest.findIndex((item) => item.kind === "group" && isLigand(item.items));
  if (ligand > 1 && isMetal(rest[ligand - 1]!) && isMetal(rest[ligand - 2]!)) {
    const cyanide = knownIon((rest[ligand] as Item & { kind: "group" }).items)?.formula === "CN";
    // hydroxide is a ligand only beside nothing else: the hydroxide of NaAl(CO3)(OH)2 is an ion
    if (cyanide || (ligand === 2 && rest.length === 3 && isAlkali(rest[0]!))) {
      complexes.push({ items: rest.splice(ligand - 1, 2), count: new Fraction(1) });
    }
  }
  const anion = trailingAnion(rest) ?? leadingAnion(rest);
  if (anion !== undefined) {
    rest.splice(anion.at, anion.length);
    found.push({ text: anion.text, charge: anion.charge, count: new Fraction(1) });
  }
  const loose: { symbol: string; count: Fraction }[] = [];
  for (const item of rest) {
    if (item.kind === "atom") {
      loose.push(item);
      continue;
    }
    const ion = knownIon(item.items);
    const known = ion !== undefined && ion.charges[0] !== 0 && ion.charges.length === 1;
    if (known && !hasNonIonMetal(ion.formula)) {
      found.push({ text: ion.formula + chargeText(ion.charges[0]!), charge: ion.charges[0]!, count: item.count });
    } else complexes.push({ items: item.items, count: item.count });
  }
  const states = tryOxidationStates(formula);
  if (!states.ok) return undefined;
  const oxo = oxoCation(loose, found);
  if (oxo !== undefined) {
    found.push(oxo);
    loose.length = 0;
  }
  for (const { symbol, count } of loose) {
    const simple = SIMPLE_ANIONS[symbol];
    const site = states.value.states.find((own) => own.symbol === symbol && own.in === undefined);
    const state = site?.state ?? states.value.of(symbol);
    if (symbol === "O" && state.compare(-1) >= 0 && state.compare(0) < 0) {
      // peroxide and superoxide ions hold two atoms, ozonide three
      const atoms = state.equals({ n: -1, d: 3 }) ? 3 : 2;
      const charge = Number(state.mul(atoms).valueOf());
      if (!Number.isInteger(charge)) return undefined;
      found.push({ text: `O${atoms}${charge === -1 ? "^-" : chargeText(charge)}`, charge, count: count.div(atoms) });
      continue;
    }
    if (state.d !== 1n) return undefined;
    const charge = Number(state.valueOf());
    if (charge === 0 || (isNonmetal(symbol) && charge !== simple && symbol !== "H")) return undefined;
    if (symbol === "H" && charge === 1) return undefined;
    if (symbol === "Hg" && charge === 1) found.push({ text: "Hg2^2+", charge: 2, count: count.div(2) });
    else found.push({ text: symbol + chargeText(charge), charge, count });
  }
  return withComplex(found, complexes);
}

/** Vanadyl, titanyl, uranyl: a metal and oxygen before an anion are one cation. */
function oxoCation(
  loose: readonly { symbol: string; count: Fraction }[],
  anions: readonly IonCount[],
): IonCount | undefined {
  const [metal, oxygen] = loose;
  if (loose.length !== 2 || oxygen!.symbol !== "O" || isNonmetal(metal!.symbol) || !metal!.count.equals(1))
    return undefined;
  let charge = new Fraction(0);
  for (const anion of anions) charge = charge.sub(anion.count.mul(anion.charge));
  if (charge.compare(0) <= 0 || charge.d !== 1n) return undefined;
  const value = Number(charge.valueOf());
  const size = oxygen!.count.equals(1) ? "" : oxygen!.count.toFraction();
  return {
    text: `${metal!.symbol}O${size}${value === 1 ? "^+" : chargeText(value)}`,
    charge: value,
    count: new Fraction(1),
  };
}

/** A complex takes the charge that the other ions leave. */
function withComplex(
  found: readonly IonCount[],
  complexes: readonly { items: readonly Item[]; count: Fraction }[],
): IonCount[] | undefined {
  let sum = new Fraction(0);
  for (const { charge, count } of found) sum = sum.add(count.mul(charge));
  if (complexes.length > 1) return undefined;
  const [complex] = complexes;
  if (complex === undefined) {
    const both = found.some(({ charge }) => charge > 0) && found.some(({ charge }) => charge < 0);
    return sum.n === 0n && both ? [...found] : undefined;
  }
  const charge = sum.neg().div(complex.count);
  if (charge.d !== 1n || charge.n === 0n) return undefined;
  const value = Number(charge.valueOf());
  return [...found, { text: `[${spelling(complex.items)}]${chargeText(value)}`, charge: value, count: complex.count }];
}

/** Is this table entry itself a complex, printed in brackets? */
function hasNonIonMetal(formula: string): boolean {
  return /\(CN\)6|\(OH\)[46]/.test(formula);
}

function withoutAmmonium(items: readonly Item[]): { ammonium: IonCount[]; rest: Item[] } {
  const rest: Item[] = [];
  const ammonium: IonCount[] = [];
  for (let at = 0; at < items.length; at++) {
    const item = items[at]!;
    const next = items[at + 1];
    const pair =
      item.kind === "atom" &&
      item.symbol === "N" &&
      item.count.equals(1) &&
      next?.kind === "atom" &&
      next.symbol === "H";
    if (pair && next.count.equals(4)) {
      ammonium.push({ text: "NH4+", charge: 1, count: new Fraction(1) });
      at++;
    } else rest.push(item);
  }
  return { ammonium, rest };
}

/** A known anion among the items, and where. */
interface FoundAnion {
  readonly text: string;
  readonly charge: number;
  readonly at: number;
  readonly length: number;
}

/** Organic salts are often written anion first: CH3COONa. */
function leadingAnion(items: readonly Item[]): FoundAnion | undefined {
  const metals = items.findIndex(isMetal);
  if (metals < 2 || !items.slice(metals).every(isMetal)) return undefined;
  const ion = knownIon(items.slice(0, metals));
  if (ion === undefined || ion.charges[0]! >= 0) return undefined;
  const charge = ion.charges[0]!;
  return { text: ion.formula + chargeText(charge), charge, at: 0, length: metals };
}

/** The longest known anion spelled by the last atoms, with a cation before it. */
function trailingAnion(items: readonly Item[]): FoundAnion | undefined {
  for (let length = Math.min(6, items.length); length >= 1; length--) {
    const last = items.slice(-length);
    if (last.some((item) => item.kind === "group")) continue;
    const ion = spelledIon(last);
    if (ion === undefined || ion.charges[0]! >= 0) continue;
    const before = items.slice(0, -length);
    if (before.length > 0 && !before.some((item) => item.kind === "group" || isMetal(item))) continue;
    const charge = ion.charges.length === 1 ? ion.charges[0]! : fitting(ion.charges, before);
    return { text: ion.formula + chargeText(charge), charge, at: items.length - length, length };
  }
  return undefined;
}

/** Manganate or permanganate, by the alkali metal in front. */
function fitting(charges: readonly number[], before: readonly Item[]): number {
  const first = before.length === 1 ? before[0]! : undefined;
  if (first?.kind !== "atom") return charges[0]!;
  const each = /^(?:Be|Mg|Ca|Sr|Ba|Ra|Zn)$/.test(first.symbol) ? 2 : 1;
  return charges.find((charge) => first.count.mul(each).equals(-charge)) ?? charges[0]!;
}

/** Does the salt of these ions dissolve? Undefined where the rules have no row. */
export function isSolubleSalt(ions: readonly Released[]): boolean | undefined {
  const cations = ions.filter(({ charge }) => charge > 0);
  const anions = ions.filter(({ charge }) => charge < 0);
  if (cations.every(({ text }) => ALWAYS_SOLUBLE.includes(text))) return true;
  let known = true;
  for (const { text: anion } of anions) {
    const rule = SOLUBILITY_RULES.find((row) => row.anions.includes(anion));
    if (rule === undefined) {
      known = false;
      continue;
    }
    for (const { text: cation } of cations) {
      if (ALWAYS_SOLUBLE.includes(cation)) continue;
      const reversed = rule.except.includes(cation) || rule.except.includes(`${anion} ${cation}`);
      if (rule.soluble === reversed) return false;
    }
  }
  return known ? true : undefined;
}

/** What a species is in water: its ions, or undefined if it stays as it is; and what had to be assumed. */
export function dissociated(formula: Formula): { ions: Released[] | undefined; assumption?: string } {
  const { phase } = formula;
  if (phase !== undefined && phase !== "aq") return { ions: undefined };
  const ions = ionsOf(formula);
  if (ions === undefined) {
    const alkali = partsOf(formula).some(({ items }) => items.length > 1 && isAlkali(items[0]!));
    return alkali ? { ions, assumption: `the ions of ${formula} are not known; it is kept whole` } : { ions };
  }
  if (phase === "aq") return { ions };
  if (ions.some(({ text }) => NOT_IN_WATER.includes(text))) return { ions: undefined };
  if (ions.some(({ text }) => text === "H+")) return { ions };
  // the rules are about simple cations: a complex cation is dissolved with nearly any anion
  if (ions.some(({ text, charge }) => text.startsWith("[") && charge > 0)) return { ions };
  const soluble = isSolubleSalt(ions);
  if (soluble !== undefined) return { ions: soluble ? ions : undefined };
  return { ions: undefined, assumption: `no rule says whether ${formula} dissolves; taken as not dissolved` };
}

function withoutPhase(formula: Formula): Formula {
  return formula.phase === undefined ? formula : parseFormula(String(formula).replace(/\([a-z]+\)$/, ""));
}

/**
 * The species of one side in water, without phase, with their amounts; strong electrolytes as their ions if `dissolve`.
 * What had to be assumed about dissolving is added to `assumptions`.
 */
export function inWater(
  formulas: readonly Formula[],
  amounts: readonly bigint[] | undefined,
  dissolve: boolean,
  assumptions?: string[],
): Side {
  const side: Side = new Map();
  formulas.forEach((formula, at) => {
    const amount = amounts?.[at] ?? 1n;
    const { ions, assumption } = dissolve ? dissociated(formula) : { ions: undefined, assumption: undefined };
    if (assumption !== undefined) assumptions?.push(assumption);
    if (ions === undefined) addTo(side, withoutPhase(formula), amount);
    for (const { text, count } of ions ?? []) addTo(side, parseFormula(text), amount * count);
  });
  return side;
}
