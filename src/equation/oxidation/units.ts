// Cutting a formula into the ions and ligands it is made of, so that each is judged by itself: NH4NO3 holds nitrogen in
// two states, [Co(NH3)6]Cl3 has neutral ligands, Fe4[Fe(CN)6]3 two kinds of iron.

import { parseFormula } from "../../formula";
import { Fraction } from "../../foundation/fraction";
import type { Constitution } from "../../ion";
import { KNOWN_STRUCTURES, type StructureRow } from "../data/oxidation-rules";
import { fixedState, isNonmetal, limitsOf, unitStates } from "./rules";
import { countsOf, type Item, type KnownIon, keyOf, knownIon, partsOf, spelledIon, spelling } from "./structure";

/** The state of one element in one kind of unit. */
export interface SiteState {
  readonly symbol: string;
  readonly state: Fraction;
  readonly count: Fraction;
  /** The ion or ligand it sits in, with its charge. */
  readonly unit: string | undefined;
}

export interface Analysis {
  readonly sites: readonly SiteState[];
  readonly assumptions: readonly string[];
}

interface Unit {
  readonly items: readonly Item[];
  readonly count: Fraction;
  /** Possible charges, in order of preference. */
  readonly charges: readonly number[];
  readonly label: string;
}

/** Anions that may stand beside a cation of non-metals only (NO2BF4); the others would be read into covalent molecules. */
const FREE_ANIONS = /* @__PURE__ */ new Set(["BF4", "PF6", "AsF6", "SbF6", "ClO4", "HSO4", "AlCl4"]);
/** Hypohalites written with the oxygen first. */
const OXYGEN_FIRST = /* @__PURE__ */ new Set(["OCl", "OBr", "OI"]);
/** Metals that make salts as +1 ions (common practice, no source). */
const UNIVALENT = /* @__PURE__ */ new Set(["Li", "Na", "K", "Rb", "Cs", "Fr", "Ag", "Tl", "Cu", "Hg"]);
/** Choices of ion charges that are tried at most. */
const MAX_CHOICES = 64;

const one = () => new Fraction(1);

/** `SO4^2-`, `NH4+`, `H2O`. */
function labelOf(formula: string, charge: number): string {
  if (charge === 0) return formula;
  const size = Math.abs(charge);
  return `${formula}${size === 1 ? "" : `^${size}`}${charge > 0 ? "+" : "-"}`;
}

let structures: ReadonlyMap<string, StructureRow> | undefined;

/** The sites of a compound that the rules misjudge. */
function knownStructure(items: readonly Item[], unit: string | undefined): Analysis | undefined {
  structures ??= new Map(
    KNOWN_STRUCTURES.map((row) => [keyOf(countsOf(partsOf(parseFormula(row.formula))[0]!.items)), row]),
  );
  const counts = countsOf(items);
  const known = structures.get(keyOf(counts));
  if (known === undefined) return undefined;
  const sites = [...counts].flatMap(([symbol, count]) => {
    const shares = known.states[symbol]!.split(" ");
    return shares.map((state) => ({ symbol, count: count.div(shares.length), state: new Fraction(state), unit }));
  });
  return { sites, assumptions: [] };
}

/** A salt from its ions: each polyatomic one judged by itself, the metals and simple anions together. */
export function analyseSalt(
  { cations, anions, ligands, waters }: Constitution,
  items: readonly Item[],
  unit: string | undefined,
): Analysis | undefined {
  const known = knownStructure(items, unit);
  if (known !== undefined) return known;
  const units: Unit[] = [];
  const rest: Item[] = [];
  for (const { formula, charge, count, element } of [...cations, ...anions]) {
    if (element !== undefined) {
      rest.push({ kind: "atom", symbol: element, count: new Fraction(count), stated: undefined });
      continue;
    }
    const inner = partsOf(parseFormula(formula))[0]!.items;
    const [only] = inner;
    const plain = inner.length === 1 && only!.kind === "group" ? only!.items : inner;
    units.push({ items: inner, count: new Fraction(count), charges: [charge], label: spelling(plain) });
  }
  for (const { formula, count } of [...ligands, ...(waters > 0 ? [{ formula: "H2O", count: waters }] : [])])
    units.push({
      items: partsOf(parseFormula(formula))[0]!.items,
      count: new Fraction(count),
      charges: [0],
      label: formula,
    });
  return choose(units, rest, new Fraction(0), unit);
}

/** Sites of all atoms among the items, their charges adding up to `charge`; undefined where the rules do not settle it. */
export function analyse(items: readonly Item[], charge: Fraction, unit: string | undefined): Analysis | undefined {
  const known = charge.n === 0n ? knownStructure(items, unit) : undefined;
  if (known !== undefined) return known;
  const units: Unit[] = [];
  const rest: Item[] = [];
  collect(items, one(), units, rest, true);
  const whole = rest.length === 0 && units.length === 1 ? units[0] : undefined;
  // an ion alone: its charge is the formula's, not the table's
  if (whole?.count.equals(1)) {
    const plain = whole.items.every((item) => item.kind === "atom");
    return plain ? analyseRest(whole.items, charge, unit) : analyse(whole.items, charge, unit);
  }
  const found = choose(units, rest, charge, unit);
  if (found !== undefined || units.length === 0) return found;
  // the ions do not fit the charge (dicyanogen, (SCN)2): judge the formula as one molecule
  return analyseRest(items, charge, unit);
}

/** Sort items into known units and the rest; an unknown bracket is opened, unless it states its charge. */
function collect(items: readonly Item[], factor: Fraction, units: Unit[], rest: Item[], outermost: boolean): void {
  const flat: Item[] = [];
  for (const item of items) {
    const count = item.count.mul(factor);
    const ion = item.kind === "group" ? knownIon(item.items) : undefined;
    if (item.kind === "atom") flat.push(item);
    else if (item.charge !== 0) {
      units.push({ items: item.items, count, charges: [item.charge], label: ion?.formula ?? "[...]" });
    } else if (ion !== undefined) {
      units.push({ items: item.items, count, charges: ion.charges, label: ion.formula });
    } else {
      const inner: Item[] = [];
      collect(item.items, count, units, inner, false);
      rest.push(...inner);
    }
  }
  const plain = withoutIons(flat, items, units, factor, outermost);
  rest.push(...plain.map((item) => ({ ...item, count: item.count.mul(factor) })));
}

/** Take ammonium and the like, and an anion at the end, out of a plain run of atoms. */
function withoutIons(
  flat: readonly Item[],
  written: readonly Item[],
  units: Unit[],
  factor: Fraction,
  outermost: boolean,
): Item[] {
  let items = [...flat];
  const symbols = new Set(items.map((item) => (item.kind === "atom" ? item.symbol : "")));
  const organic = symbols.has("C") && symbols.has("H") && [...symbols].every(isNonmetal);
  for (const [symbols, counts] of [
    [
      ["N", "H"],
      [1, 4],
    ],
    [
      ["N", "H"],
      [2, 5],
    ],
  ] as const) {
    for (let at = 0; at + 1 < items.length; at++) {
      if (organic && at > 0) break;
      const pair = items.slice(at, at + 2);
      const fits = pair.every(
        (item, index) => item.kind === "atom" && item.symbol === symbols[index] && item.count.equals(counts[index]!),
      );
      if (!fits || (items.length === 2 && units.length === 0)) continue;
      const ion = knownIon(pair)!;
      units.push({ items: pair, count: factor, charges: ion.charges, label: ion.formula });
      items = [...items.slice(0, at), ...items.slice(at + 2)];
      at--;
    }
  }
  // only what stands last in the formula can be its anion, and a bracket last is no run of atoms
  if (written[written.length - 1]?.kind !== "atom") return items;
  const trailing = trailingIon(items, units, organic, outermost);
  if (trailing === undefined) return items;
  const cut = items.slice(-trailing.length);
  units.push({ items: cut, count: factor, charges: trailing.ion.charges, label: trailing.ion.formula });
  return items.slice(0, -trailing.length);
}

/** The longest known anion that the last atoms spell, with something left that can be its cation. */
function trailingIon(
  items: readonly Item[],
  units: readonly Unit[],
  organic: boolean,
  outermost: boolean,
): { ion: KnownIon; length: number } | undefined {
  for (let length = Math.min(6, items.length); length >= 2; length--) {
    const last = items.slice(-length);
    const ion = spelledIon(last);
    // inside the brackets of a complex a neutral ligand or a nitrosyl may stand last as well
    if (ion === undefined || (outermost && ion.charges.every((charge) => charge >= 0))) continue;
    const before = items.slice(0, -length);
    if (before.length === 0 && units.length === 0) continue;
    if (organic) {
      // a nitro group is the only part of an organic molecule that has a state of its own
      if (ion.formula === "NO2" || ion.formula === "NO3") return { ion, length };
      continue;
    }
    const cation =
      before.length === 0 ||
      before.some((item) => item.kind === "group" || !isNonmetal(item.symbol)) ||
      (before.length === 1 && before[0]!.kind === "atom" && before[0]!.symbol === "H") ||
      FREE_ANIONS.has(ion.formula);
    if (cation && !isOxideHalide(ion, before)) return { ion, length };
  }
  return undefined;
}

/** BiOCl is an oxide chloride, NaOCl a hypochlorite: the atoms after a metal that is never +1 alone are two anions. */
const isOxideHalide = (ion: KnownIon, before: readonly Item[]): boolean =>
  OXYGEN_FIRST.has(ion.formula) &&
  before.some((item) => item.kind === "atom" && !isNonmetal(item.symbol) && !UNIVALENT.has(item.symbol));

/** Try the possible charges of the units in turn: whole states for the rest first, any states otherwise. */
function choose(
  units: readonly Unit[],
  rest: readonly Item[],
  charge: Fraction,
  unit: string | undefined,
): Analysis | undefined {
  let fallback: Analysis | undefined;
  let choices: number[][] = [[]];
  for (const { charges } of units) {
    const longer = choices.flatMap((choice) => charges.map((value) => [...choice, value]));
    choices = longer.length <= MAX_CHOICES ? longer : choices.map((choice) => [...choice, charges[0]!]);
  }
  for (const choice of choices) {
    let left = charge;
    units.forEach(({ count }, at) => {
      left = left.sub(count.mul(choice[at]!));
    });
    const core = analyseRest(rest, left, unit);
    if (core === undefined || !core.sites.every(isPossible)) continue;
    const parts = units.map((known, at) => inside(known, choice[at]!));
    if (parts.some((part) => part === undefined)) continue;
    const analysis = {
      sites: [...core.sites, ...parts.flatMap((part) => part!.sites)],
      assumptions: [...core.assumptions, ...parts.flatMap((part) => part!.assumptions)],
    };
    if (core.sites.every(({ state }) => state.d === 1n)) return analysis;
    fallback ??= analysis;
  }
  return fallback;
}

/** Within the limits of the element, and its only state if it has but one. */
function isPossible({ symbol, state }: SiteState): boolean {
  if (state.n === 0n) return true;
  if (symbol === "H") return state.abs().equals(1);
  const { lowest, highest } = limitsOf(symbol);
  const only = fixedState(symbol);
  return state.compare(lowest) >= 0 && state.compare(highest) <= 0 && (only === undefined || state.equals(only));
}

/** The sites inside one unit, counted for all its copies. */
function inside({ items, count, label }: Unit, charge: number): Analysis | undefined {
  const name = labelOf(label, charge);
  const hasGroups = items.some((item) => item.kind === "group");
  const analysis = hasGroups
    ? analyse(items, new Fraction(charge), name)
    : analyseRest(items, new Fraction(charge), name);
  if (analysis === undefined) return undefined;
  return { ...analysis, sites: analysis.sites.map((site) => ({ ...site, count: site.count.mul(count) })) };
}

/** One unit by the rules, stated oxidation numbers first. */
export function analyseRest(items: readonly Item[], charge: Fraction, unit: string | undefined): Analysis | undefined {
  const stated: SiteState[] = [];
  const plain: Item[] = [];
  let left = charge;
  for (const item of items) {
    if (item.kind === "atom" && item.stated !== undefined) {
      const state = new Fraction(item.stated);
      stated.push({ symbol: item.symbol, state, count: item.count, unit });
      left = left.sub(state.mul(item.count));
    } else plain.push(item);
  }
  const counts = countsOf(plain);
  const solved = unitStates(counts, left);
  if (solved === undefined) return undefined;
  const sites = solved.sites.map((site) => ({ ...site, unit }));
  return { sites: [...stated, ...sites], assumptions: solved.assumptions };
}

/** Sites with the same element, state and unit put together. */
export function merged(sites: readonly SiteState[]): SiteState[] {
  const found = new Map<string, SiteState>();
  for (const site of sites) {
    const key = `${site.symbol} ${site.state.toFraction()} ${site.unit ?? ""}`;
    const before = found.get(key);
    found.set(key, before === undefined ? site : { ...site, count: before.count.add(site.count) });
  }
  return [...found.values()];
}
