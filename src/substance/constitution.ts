// From a formula to its ions: which cations with which charge, which anions. Composition gives the candidates; charge
// balance, usual charges and the way the formula is written choose among them.
import { gcd } from "../foundation/gcd";
import type { ElementWord } from "./data/element-words";
import { type Ion, ionIndex, isCationElement, timesIn, without } from "./ion-index";
import { compositionKey, countsOf, type Part } from "./notation";

/** A cation and how many of it. */
export interface CationUse {
  readonly count: number;
  /** Charge of one; for mixed valence the mean. */
  readonly charge: number;
  readonly element?: ElementWord;
  readonly ion?: Ion;
  /** The charges of a mixed-valence metal, lower first. */
  readonly mixed?: readonly [number, number];
  /** The charge could also be split another way: names must not state it. */
  readonly undecided?: true;
}

/** An anion and how many of it. */
export interface AnionUse {
  readonly count: number;
  readonly ion: Ion;
}

/** One way of reading a formula as a salt. */
export interface Salt {
  readonly cations: readonly CationUse[];
  readonly anions: readonly AnionUse[];
  /** Lower is likelier. */
  readonly strain: number;
}

const MOST_ANION_KINDS = 3;
/** Steps of the search for one formula; the largest anions come first, so what is cut off is far-fetched. */
const MOST_SETS = 20_000;

const whole = (n: number) => Math.abs(n - Math.round(n)) < 1e-9;

/** Is the ion written out in the formula? */
function isWritten(ion: Ion, text: string): boolean {
  return (ion.row.written ?? [ion.row.formula]).some((way) => text.includes(way));
}

/** How often a polyatomic cation is written out: `(NH4)2` twice. Ammonium anywhere, others only where a word begins. */
function timesWritten(ion: Ion, text: string): number {
  let times = 0;
  const front = ion.row.formula === "NH4" ? "(\\()?" : "(?:^|(\\())";
  for (const way of ion.row.written ?? [ion.row.formula]) {
    if (!text.includes(way)) continue;
    const escaped = way.replace(/[()]/g, "\\$&");
    for (const match of text.matchAll(new RegExp(`${front}${escaped}(?!\\d)(?:\\)(\\d+))?`, "g"))) {
      times += match[1] === undefined || match[2] === undefined ? 1 : Number(match[2]);
    }
  }
  return times;
}

/** Metals left over, given the charge they must carry together; `undefined` when they cannot. */
function metals(rest: ReadonlyMap<string, number>, charge: number): { uses: CationUse[]; strain: number } | undefined {
  const uses: CationUse[] = [];
  const open: { word: ElementWord; count: number }[] = [];
  let needed = charge;
  for (const [symbol, count] of rest) {
    const word = ionIndex().elements.get(symbol);
    if (word?.charges === undefined) return undefined;
    if (word.charges.length === 1) {
      uses.push({ element: word, count, charge: word.charges[0]! });
      needed -= count * word.charges[0]!;
    } else open.push({ word, count });
  }
  if (open.length === 0) return Math.abs(needed) < 1e-9 ? { uses, strain: 0 } : undefined;
  if (needed <= 0) return undefined;
  if (open.length === 1) return oneMetal(open[0]!, needed, uses);
  return severalMetals(open, needed, uses);
}

function oneMetal(
  { word, count }: { word: ElementWord; count: number },
  needed: number,
  uses: CationUse[],
): { uses: CationUse[]; strain: number } | undefined {
  const each = needed / count;
  const usual = word.charges!;
  if (whole(each)) {
    const charge = Math.round(each);
    const rank = usual.indexOf(charge);
    return rank < 0 ? undefined : { uses: [...uses, { element: word, count, charge }], strain: rank };
  }
  const sorted = [...usual].sort((a, b) => a - b);
  const above = sorted.find((charge) => charge > each);
  const below = sorted.filter((charge) => charge < each).at(-1);
  if (above === undefined || below === undefined) return undefined;
  return { uses: [...uses, { element: word, count, charge: each, mixed: [below, above] }], strain: 9 };
}

function severalMetals(
  open: readonly { word: ElementWord; count: number }[],
  needed: number,
  uses: CationUse[],
): { uses: CationUse[]; strain: number } | undefined {
  let best: { charges: number[]; strain: number } | undefined;
  let ways = 0;
  const walk = (i: number, left: number, charges: number[], strain: number): void => {
    if (i === open.length) {
      if (Math.abs(left) > 1e-9) return;
      ways += 1;
      if (best === undefined || strain < best.strain) best = { charges: [...charges], strain };
      return;
    }
    const { word, count } = open[i]!;
    for (const [rank, charge] of word.charges!.entries())
      if (left - count * charge > -1e-9) walk(i + 1, left - count * charge, [...charges, charge], strain + rank);
  };
  walk(0, needed, [], 0);
  if (best === undefined) return undefined;
  const { charges, strain } = best;
  const undecided = ways > 1 ? { undecided: true as const } : {};
  return {
    uses: [...uses, ...open.map(({ word, count }, i) => ({ element: word, count, charge: charges[i]!, ...undecided }))],
    strain,
  };
}

/** What a rare anion costs. */
const RARE = 7;

/** How unlikely a set of anions is before its cations are known. */
function anionStrain(anions: readonly AnionUse[], text: string): number {
  let strain = 0;
  for (const { ion, count } of anions) {
    strain += 10 + (ion.row.rare ? RARE : 0) + (ion.parent === undefined ? 0 : 6) + count * 0.01;
    if (ion.element === undefined && isWritten(ion, text)) strain -= 3 + ion.atoms * 0.1;
  }
  return strain;
}

/** Monatomic anions that share a salt with other anions; nitride, carbide and the like stand alone. */
const SHARING: ReadonlySet<string> = /* @__PURE__ */ new Set(["O", "F", "Cl", "Br", "I", "S", "Se", "Te"]);

/** Nitride, carbide, peroxide, ozonide, acetylide: one element only, and the whole anion part of their salts. */
function standsAlone(ion: Ion): boolean {
  if (ion.element !== undefined) return !SHARING.has(ion.element.symbol);
  return ion.row.rare === true && ion.counts.size === 1;
}

function onlyMetals(rest: ReadonlyMap<string, number>): boolean {
  for (const symbol of rest.keys()) if (!isCationElement(symbol)) return false;
  return true;
}

/** Every way of taking so many kinds of anion out of a composition that only metals are left. */
function* anionSets(
  rest: ReadonlyMap<string, number>,
  pool: readonly Ion[],
  from: number,
  kinds: number,
  shared: boolean,
  budget: { left: number },
): Generator<{ taken: AnionUse[]; rest: ReadonlyMap<string, number> }> {
  if (kinds === 0) {
    if (onlyMetals(rest)) yield { taken: [], rest };
    return;
  }
  for (let i = from; i < pool.length; i += 1) {
    const ion = pool[i]!;
    if (shared && standsAlone(ion)) continue;
    for (let count = timesIn(ion.counts, rest); count >= 1; count -= 1) {
      budget.left -= 1;
      if (budget.left < 0) return;
      const left = without(rest, ion.counts, count);
      for (const more of anionSets(left, pool, i + 1, kinds - 1, shared, budget))
        yield { taken: [{ ion, count }, ...more.taken], rest: more.rest };
    }
  }
}

/** Anions that fit into a composition at least once. Hydride only where hydrogen is the one non-metal. */
function anionPool(counts: ReadonlyMap<string, number>): Ion[] {
  const { anions, elements } = ionIndex();
  const others = [...counts.keys()].filter((symbol) => elements.get(symbol)?.charges === undefined);
  const pool = anions.filter((ion) => {
    if (ion.element?.symbol === "H" && others.length > 1) return false;
    // a metal as the anion (bismuthide) only where nothing else can be one
    if (ion.element?.charges !== undefined && others.length > 0) return false;
    return timesIn(ion.counts, counts) >= 1;
  });
  return pool.sort((a, b) => b.atoms - a.atoms);
}

/** Metals whose hypochlorites are met; MoO2Cl2 is an oxide chloride. */
function formsHypochlorite(use: CationUse): boolean {
  return (
    use.element === undefined ||
    ["Li", "Na", "K", "Rb", "Cs", "Mg", "Ca", "Sr", "Ba", "Ag"].includes(use.element.symbol)
  );
}

/** The salt of these anions, if the metals left can carry the charge. */
function saltWith(
  start: { uses: readonly CationUse[]; strain: number },
  taken: readonly AnionUse[],
  rest: ReadonlyMap<string, number>,
  charge: number,
  text: string,
): Salt | undefined {
  let needed = charge;
  for (const { ion, count } of taken) needed -= ion.charge * count;
  for (const use of start.uses) needed -= use.charge * use.count;
  const solved = metals(rest, needed);
  if (solved === undefined) return undefined;
  const cations = [...start.uses, ...solved.uses];
  // peroxides, superoxides and ozonides are those of metals with one charge: CrO2 is chromium(IV) oxide
  if (
    taken.some(({ ion }) => /^(peroxide|superoxide|ozonide)$/.test(ion.row.name)) &&
    !cations.every((use) => use.ion !== undefined || use.element?.fixed)
  )
    return undefined;
  if (cations.length === 0) return undefined;
  // U3O8 is an oxide, no uranate of uranium; Cr2(CrO4)3 is written as a chromate
  const sharesMetal = ({ counts }: Ion) =>
    cations.some((use) => use.element !== undefined && counts.has(use.element.symbol));
  if (taken.some(({ ion }) => sharesMetal(ion) && !isWritten(ion, text))) return undefined;
  const oxideHalide =
    taken.some(({ ion }) => /^hypo/.test(ion.row.name)) && cations.some((use) => !formsHypochlorite(use));
  // Na6P6O18 is one cyclo-hexaphosphate sooner than six metaphosphates
  const [cation, anion] = [cations[0]!, taken[0]!];
  const lone = cations.length === 1 && taken.length === 1 && anion.ion.element === undefined;
  const multiple = lone && gcd(cation.count, anion.count) > 1;
  // AgCNO is the fulminate, KCNO the cyanate in the trade's writing
  const common = taken.some(
    ({ ion }) =>
      isWritten(ion, text) && cations.some((use) => ion.row.commonWith?.includes(use.element?.symbol ?? "") ?? false),
  );
  const unlikely = (oxideHalide ? 12 : 0) + (multiple ? 12 : 0) - (common ? RARE : 0);
  const strain = start.strain + solved.strain + 10 * cations.length + anionStrain(taken, text) + unlikely;
  return { cations, anions: taken, strain };
}

/**
 * Ways of reading a composition as a salt of the given total charge, likeliest first.
 *
 * @param text - the part as written: polyatomic cations are only seen where they are written out
 */
export function salts(counts: ReadonlyMap<string, number>, text: string, charge = 0): Salt[] {
  if (![...counts.values()].every((n) => n > 0)) return [];
  const found: Salt[] = [];
  const { cations } = ionIndex();
  const starts: { uses: CationUse[]; rest: ReadonlyMap<string, number>; strain: number }[] = [];
  for (const ion of cations) {
    if (ion.row.alone) continue;
    const count = Math.min(timesIn(ion.counts, counts), timesWritten(ion, text));
    if (count === 0) continue;
    const uses = [{ ion, count, charge: ion.charge }];
    starts.push({ uses, rest: without(counts, ion.counts, count), strain: ion.row.rare ? 7 : -3 });
  }
  starts.push({ uses: [], rest: counts, strain: 0 });
  for (const start of starts) {
    // all of a written-out cation counts; a smaller number is only tried where that finds nothing
    if (found.length > 0 && start.uses.length === 0 && starts.length > 1 && !starts[0]!.uses[0]!.ion!.row.rare) break;
    const pool = anionPool(start.rest);
    for (let kinds = 1; kinds <= MOST_ANION_KINDS; kinds += 1) {
      const budget = { left: MOST_SETS };
      for (const { taken, rest } of anionSets(start.rest, pool, 0, kinds, kinds > 1, budget)) {
        const one = saltWith(start, taken, rest, charge, text);
        if (one !== undefined) found.push(one);
      }
      // one more kind of anion costs more than anything it could mend in a reading without strain
      if (found.some((one) => one.strain < 10 * one.cations.length + 11)) break;
    }
  }
  return found.sort((a, b) => a.strain - b.strain);
}

/** The likeliest reading of a part as a salt. */
export function saltOf(part: Part, charge = 0): Salt | undefined {
  if (![...part.counts.values()].every(whole)) return undefined;
  return salts(part.counts, part.text, charge).find((salt) => keepsGroups(salt, part) && keepsHydrogen(salt, part));
}

/** Hydrogen in front is an acid's and goes to one anion: H3PMo12O40 is no phosphate hydroxide oxide of molybdenum. */
function keepsHydrogen({ anions }: Salt, part: Part): boolean {
  return !/^H(?![a-z])/.test(part.text) || anions.length === 1;
}

/** A bracketed group that stands there twice or more is one ion: Cu(C5H7O2)2 holds no acetylide. */
function keepsGroups({ cations, anions }: Salt, part: Part): boolean {
  return part.units.every(({ text, members, count }) => {
    if (members === undefined || count < 2) return true;
    const group = countsOf(members);
    if ([...group.keys()].some(isCationElement)) return true;
    const key = compositionKey(group);
    return [...cations, ...anions].some(
      ({ ion }) => ion !== undefined && (compositionKey(ion.counts) === key || ion.row.formula.includes(`(${text})`)),
    );
  });
}

/** An acid: one anion with all its charge met by hydrogen. */
export interface Acid {
  readonly ion: Ion;
  readonly count: number;
  readonly hydrogens: number;
}

/** The part as an acid of a listed anion: H2SO4, CH3COOH, C6H8O7, H3[Fe(CN)6]. */
export function acidOf(part: Part): Acid | undefined {
  const hydrogens = part.counts.get("H");
  if (hydrogens === undefined) return undefined;
  let best: Acid | undefined;
  for (const ion of ionIndex().anions) {
    if (ion.parent !== undefined || ion.element !== undefined) continue;
    const count = timesIn(ion.counts, part.counts);
    if (count !== 1) continue;
    const rest = without(part.counts, ion.counts, 1);
    if (rest.size !== 1 || rest.get("H") !== -ion.charge) continue;
    const rank = (one: Ion) => Number(one.row.acid === undefined) + Number(one.row.rare ?? false);
    if (best === undefined || rank(ion) < rank(best.ion)) best = { ion, count, hydrogens };
  }
  return best;
}
