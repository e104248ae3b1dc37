// From a formula to its ions: which cations with which charge, which anions. Composition gives the candidates; charge
// balance, usual charges and the way the formula is written choose among them.
import { gcd } from "../foundation/gcd";
import { givesHydron } from "./hydrogen";
import { type Ion, ionsWithin, isCationElement, timesIn, without } from "./ion-index";
import { type CationUse, metals, whole } from "./metal-charges";
import { compositionKey, countsOf, type Part } from "./notation";

/** An anion and how many of it. */
interface AnionUse {
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
/** Most polyatomic cations looked for in one formula unit. */
const MOST_CATIONS = 12;
/** Steps of the search for one formula; the largest anions come first, so what is cut off is far-fetched. */
const MOST_SETS = 40_000;

/** Is the ion written out in the formula? Asked only where composition leaves a choice. */
function isWritten(ion: Ion, text: string): boolean {
  return (ion.row.written ?? [ion.row.formula]).some((way) => text.includes(way));
}

/** Is the ion written at the front or in brackets? NOCl is nitrosyl chloride, HNO3 is not of its kind. */
function isWrittenFirst(ion: Ion, text: string): boolean {
  return (ion.row.written ?? [ion.row.formula]).some((way) => text.startsWith(way) || text.includes(`(${way})`));
}

/** Kin of ammonium, met beside a metal only where they are written out. */
const isOrganicKin = ({ row }: Ion): boolean =>
  ["PH4", "N2H5", "N2H6", "NH3OH", "CH3NH3", "N(CH3)4"].includes(row.formula);

/** What a rare anion costs. */
const RARE = 7;

/** How unlikely a set of anions is before its cations are known. */
function anionStrain(anions: readonly AnionUse[]): number {
  let strain = 0;
  for (const { ion, count } of anions) {
    strain += 10 + (ion.row.rare ? RARE : 0) + (ion.parent === undefined ? 0 : 6) + count * 0.01;
    if (ion.element === undefined) strain -= 3 + ion.atoms * 0.1;
  }
  return strain;
}

/** What a hypochlorite or chlorite costs that is not met: an oxide chloride is likelier, where there is one. */
const UNMET = 25;

/** A hydroxo complex that nothing in the writing shows, beside hydroxide: ettringite and layered hydroxides hold no aluminate. */
function isUnshownHydroxo(anions: readonly AnionUse[], text: string): boolean {
  if (!anions.some(({ ion }) => ion.row.formula === "OH")) return false;
  return anions.some(({ ion }) => ion.row.formula.includes("(OH)") && !isWritten(ion, text));
}

/** What a set of ions costs that would react with one another. */
const REACTS = 25;

/** Bases that take a hydron from every hydrogen salt. */
const BASES: ReadonlySet<string> = /* @__PURE__ */ new Set(["O", "OH", "NH2", "NH", "N", "H", "C2", "CH3O", "C2H5O"]);

/** Amide, imide and nitride; azide is a ligand beside other anions. */
const NITROGEN: ReadonlySet<string> = /* @__PURE__ */ new Set(["NH2", "NH", "N"]);

/** Hydrogen salts beside oxide or hydroxide, ammonium beside oxide, amide beside anything: no such solids. */
function reacting(cations: readonly CationUse[], anions: readonly AnionUse[]): boolean {
  if (anions.length > 1 && anions.some(({ ion }) => NITROGEN.has(ion.row.formula))) return true;
  const base = anions.find(({ ion }) => BASES.has(ion.row.formula));
  if (base === undefined) return false;
  const acid = anions.some(({ ion }) => givesHydron(ion));
  const hydron = cations.some(({ ion }) => ion?.counts.has("H") === true);
  return acid || (hydron && base.ion.row.formula !== "OH");
}

/** Monatomic anions that share a salt with other anions; nitride, carbide and the like stand alone. */
const SHARING: ReadonlySet<string> = /* @__PURE__ */ new Set(["O", "F", "Cl", "Br", "I", "S", "Se", "Te"]);

/** Peroxide, superoxide, ozonide, and oxoanions with a peroxo group. */
const PEROXO: ReadonlySet<string> = /* @__PURE__ */ new Set(["O2", "O3", "HO2", "SO5", "HSO5"]);

/** Nitride, carbide, peroxide, ozonide, acetylide: one element only, and the whole anion part of their salts; azide is a ligand. */
function standsAlone({ element, row, counts }: Ion): boolean {
  if (element !== undefined) return !SHARING.has(element.symbol);
  return counts.size === 1 && row.formula !== "N3";
}

/** Are only metals left when that many of an ion are taken out? */
function leavesMetals(rest: ReadonlyMap<string, number>, { counts }: Ion, times: number): boolean {
  for (const [symbol, n] of rest)
    if (Math.abs(n - times * (counts.get(symbol) ?? 0)) >= 1e-9 && !isCationElement(symbol)) return false;
  return true;
}

/** Could there be a cation: a metal, ammonium, phosphonium, nitrosyl? */
function mayHoldCation(counts: ReadonlyMap<string, number>): boolean {
  for (const symbol of counts.keys()) if (isCationElement(symbol) || symbol === "N" || symbol === "P") return true;
  return counts.has("O") && counts.has("H") && [...counts.keys()].every((symbol) => symbol !== "C");
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
  for (let i = from; i < pool.length; i += 1) {
    const ion = pool[i]!;
    if (shared && standsAlone(ion)) continue;
    const most = timesIn(ion.counts, rest);
    // the last kind takes all that is no metal
    for (let count = most; count >= (kinds === 1 ? Math.max(most, 1) : 1); count -= 1) {
      budget.left -= 1;
      if (budget.left < 0) return;
      if (kinds === 1) {
        if (leavesMetals(rest, ion, count)) yield { taken: [{ ion, count }], rest: without(rest, ion.counts, count) };
        continue;
      }
      const left = without(rest, ion.counts, count);
      for (const more of anionSets(left, pool, i + 1, kinds - 1, shared, budget))
        yield { taken: [{ ion, count }, ...more.taken], rest: more.rest };
    }
  }
}

/** Anions that fit into a composition at least once. Hydride only where hydrogen is the one non-metal. */
function anionPool(counts: ReadonlyMap<string, number>): Ion[] {
  const others = [...counts.keys()].filter((symbol) => !isCationElement(symbol));
  const pool = ionsWithin(counts).anions.filter((ion) => {
    if (ion.element?.symbol === "H" && others.length > 1) return false;
    // a metal as the anion (bismuthide) only where nothing else can be one
    if (ion.element?.charges !== undefined && others.length > 0) return false;
    return timesIn(ion.counts, counts) >= 1;
  });
  return pool.sort((a, b) => b.atoms - a.atoms);
}

/** Metals whose hypochlorites are met, and chlorites that are not written as such; MoO2Cl2 and CrO2Cl2 are oxide chlorides. */
function formsHypochlorite(use: CationUse): boolean {
  return (
    use.element === undefined ||
    ["Li", "Na", "K", "Rb", "Cs", "Mg", "Ca", "Sr", "Ba", "Ag"].includes(use.element.symbol)
  );
}

const isOxide = ({ ion }: AnionUse): boolean => ion.row.formula === "O";

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
  // peroxo anions are those of metals with one charge: CrO2 is chromium(IV) oxide, VOSO4 no peroxosulfate
  if (
    taken.some(({ ion }) => PEROXO.has(ion.row.formula) && !(ion.counts.has("S") && isWritten(ion, text))) &&
    !cations.every((use) => use.ion !== undefined || use.element?.fixed)
  )
    return undefined;
  if (cations.length === 0) return undefined;
  // U3O8 is an oxide, no uranate of uranium; Cr2(CrO4)3 is written as a chromate
  const sharesMetal = ({ counts }: Ion) =>
    cations.some((use) => use.element !== undefined && counts.has(use.element.symbol));
  if (taken.some(({ ion }) => sharesMetal(ion) && !ion.row.complex && !isWritten(ion, text))) return undefined;
  // two organic acids in one salt are only taken where the formula spells them
  const organic = taken.filter(({ ion }) => ion.counts.has("H") && ion.counts.has("C") && ion.row.formula !== "HCO3");
  if (organic.length > 1 && !organic.every(({ ion }) => isWritten(ion, text))) return undefined;
  // an oxo cation with oxide is the metal's oxide
  if (start.uses.some(({ ion }) => ion!.counts.has("O") && ion!.counts.size === 2) && taken.some(isOxide))
    return undefined;
  const oxideHalide =
    taken.some(
      ({ ion }) => ion.row.name.startsWith("hypo") || (ion.row.name === "chlorite" && !isWritten(ion, text)),
    ) && cations.some((use) => !formsHypochlorite(use));
  // Na6P6O18 is one cyclo-hexaphosphate sooner than six metaphosphates
  const [cation, anion] = [cations[0]!, taken[0]!];
  const lone = cations.length === 1 && taken.length === 1 && anion.ion.element === undefined;
  const multiple = lone && gcd(cation.count, anion.count) > 1;
  // AgCNO is the fulminate, KCNO the cyanate in the trade's writing
  const common = taken.some(
    ({ ion }) =>
      isWritten(ion, text) && cations.some((use) => ion.row.commonWith?.includes(use.element?.symbol ?? "") ?? false),
  );
  const unlikely =
    (reacting(cations, taken) ? REACTS : 0) +
    (oxideHalide || isUnshownHydroxo(taken, text) ? UNMET : 0) +
    (multiple ? 12 : 0) -
    (common ? RARE + 1 : 0);
  const strain = start.strain + solved.strain + 10 * cations.length + anionStrain(taken) + unlikely;
  return { cations, anions: taken, strain };
}

/**
 * Ways of reading a composition as a salt of the given total charge, likeliest first.
 *
 * @param text - the part as written, which decides only where composition does not: cyanate or fulminate, nitrosyl
 */
function salts(counts: ReadonlyMap<string, number>, text: string, charge = 0): Salt[] {
  if (![...counts.values()].every((n) => n > 0)) return [];
  if (!mayHoldCation(counts)) return [];
  const found: Salt[] = [];
  const starts: { uses: CationUse[]; rest: ReadonlyMap<string, number>; strain: number }[] = [];
  const metallic = [...counts.keys()].some(isCationElement);
  for (const ion of ionsWithin(counts).cations) {
    if (ion.row.alone || ((ion.row.rare || (metallic && isOrganicKin(ion))) && !isWrittenFirst(ion, text))) continue;
    for (let count = Math.min(timesIn(ion.counts, counts), MOST_CATIONS); count >= 1; count -= 1) {
      // kin of ammonium that is written out is meant: N2H6SO4 is no sulfamate of hydroxylammonium
      const usual = ["NH4", "Hg2"].includes(ion.row.formula) || (isOrganicKin(ion) && isWrittenFirst(ion, text));
      const strain = ion.row.rare ? RARE : usual ? -3 : -2;
      starts.push({ uses: [{ ion, count, charge: ion.charge }], rest: without(counts, ion.counts, count), strain });
    }
  }
  const all = [{ uses: [], rest: counts, strain: 0 }, ...starts].map((start) => ({
    start,
    pool: anionPool(start.rest),
  }));
  const budget = { left: MOST_SETS };
  for (let kinds = 1; kinds <= MOST_ANION_KINDS; kinds += 1) {
    for (const { start, pool } of all)
      for (const { taken, rest } of anionSets(start.rest, pool, 0, kinds, kinds > 1, budget)) {
        const one = saltWith(start, taken, rest, charge, text);
        if (one !== undefined) found.push(one);
      }
    // one more kind of anion costs more than anything it could mend in a reading without strain
    if (found.some((one) => one.strain < 10 * one.cations.length + 11)) break;
  }
  return found.sort((a, b) => a.strain - b.strain);
}

/** Readings of a part as a salt that keep what its brackets show, likeliest first; brackets no longer fit once ligands are off. */
export function saltsOf(part: Part, brackets = true): Salt[] {
  if (![...part.counts.values()].every(whole)) return [];
  const found = salts(part.counts, part.text);
  return brackets ? found.filter((salt) => keepsGroups(salt, part) && keepsHydrogen(salt, part)) : found;
}

/** The likeliest reading of a part as a salt. */
export function saltOf(part: Part): Salt | undefined {
  return saltsOf(part)[0];
}

/** Would the ions react with one another? Then the formula means something else, such as a hydrate without its dot. */
export const isReacting = ({ cations, anions }: Salt): boolean => reacting(cations, anions);

/** Hydrogen in front is an acid's and goes to one anion: H3PMo12O40 is no phosphate hydroxide oxide of molybdenum. */
const keepsHydrogen = ({ anions }: Salt, part: Part): boolean => !hasAcidHydrogen(part) || anions.length === 1;

/** Does the formula begin with hydrogen, and not because its symbols stand in alphabetical order? */
export function hasAcidHydrogen({ units }: Part): boolean {
  const symbols = units.map(({ text }) => text);
  return symbols[0] === "H" && [...symbols].sort().some((symbol, i) => symbol !== symbols[i]);
}

/** How many of a bracketed group one ion holds: it may be the group, with or without hydrons, or its formula may show it. */
function groupsIn({ counts, row }: Ion, text: string, key: string): number {
  const bare = new Map([...counts].filter(([symbol]) => symbol !== "H"));
  if (compositionKey(counts) === key || compositionKey(bare) === key) return 1;
  const from = row.formula.indexOf(`(${text})`);
  return from < 0 ? 0 : Number.parseInt(row.formula.slice(from + text.length + 2), 10) || 1;
}

/** A bracketed group that stands there twice or more is one ion, each of them: Cu(C5H7O2)2 holds no acetylide. */
function keepsGroups({ cations, anions }: Salt, part: Part): boolean {
  return part.units.every(({ text, members, count }) => {
    if (members === undefined || count < 2) return true;
    const group = countsOf(members);
    if ([...group.keys()].some(isCationElement)) return true;
    const key = compositionKey(group);
    // oxalate as (COO)2
    const all = compositionKey(new Map([...group].map(([symbol, n]) => [symbol, n * count] as const)));
    if (anions.some(({ ion }) => compositionKey(ion.counts) === all)) return true;
    let kept = 0;
    for (const use of [...cations, ...anions])
      if (use.ion !== undefined) kept += use.count * groupsIn(use.ion, text, key);
    return kept >= count;
  });
}

/** The anion of a part that is an acid, all its charge met by hydrogen: H2SO4, CH3COOH, C6H8O7, H3[Fe(CN)6]. */
export function acidOf(part: Part): Ion | undefined {
  const fitting = ionsWithin(part.counts).anions.filter((ion) => {
    if (ion.parent !== undefined || ion.element !== undefined || timesIn(ion.counts, part.counts) !== 1) return false;
    const rest = without(part.counts, ion.counts, 1);
    return rest.size === 1 && rest.get("H") === -ion.charge;
  });
  // phosphonic acid sooner than the phosphorous one
  return fitting.find(({ row }) => row.acid !== undefined && row.rare !== true) ?? fitting[0];
}
