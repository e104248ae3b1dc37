// What a formula is made of: cations, anions, crystal water, ligands, acid hydrogen. Composition decides; how the formula is
// written is asked only where composition leaves a choice (urea or ammonium cyanate), so that Hill order, brackets, CH3COO or
// C2H3O2 and the kind of hydrate dot make no difference.

import { Formula, parseFormula } from "../formula";
import { attempt, type Result } from "../foundation/error";
import { frozen } from "../foundation/frozen";
import { memoised } from "../foundation/memo";
import { readable } from "../foundation/readable";
import { ACIDS, type AcidRow } from "./data/acids";
import { ISOMERS, type IsomerReading, type IsomerRow } from "./data/isomers";
import { type Ion, ionIndex, ionText, isCationElement, timesIn, without } from "./ion-index";
import { bareIon, chargedText } from "./ion-text";
import {
  compositionKey,
  countsOf,
  isWater,
  type Part,
  readNotation,
  showsAcidGroup,
  type Unit,
  unitsText,
} from "./notation";
import { acidOf, type CationUse, isReacting, type Salt, saltsOf } from "./salt-readings";

/** One kind of ion and how many of it. */
export interface ConstituentIon {
  /** With its charge, as tables write it: `Fe^3+`, `SO4^2-`, `CH3COO-`. */
  readonly formula: string;
  readonly charge: number;
  readonly count: number;
  /** The element of a monatomic ion. */
  readonly element?: string;
}

/** One kind of neutral molecule and how many of it. */
export interface Constituent {
  readonly formula: string;
  readonly count: number;
}

/** The hydrogen an acid gives. */
export interface AcidHydrogen {
  /** Hydrons a base takes. */
  readonly protons: number;
  /** What is left when they have gone. */
  readonly anion: string;
  /** Completely dissociated in dilute water. */
  readonly strong: boolean;
  /** As weak as boric or hydrocyanic acid: pKa above 6. */
  readonly veryWeak: boolean;
}

/** What a formula is: a salt (oxides and hydroxides with it), an acid, a molecule, an element, water, an ion, or open. */
export type ConstitutionKind = "salt" | "acid" | "molecule" | "element" | "water" | "ion" | "open";

/** What a formula is made of. Made by {@link constitutionOf}. */
export interface Constitution {
  readonly kind: ConstitutionKind;
  /** Counts are for the formula as written, all its parts together. */
  readonly cations: readonly ConstituentIon[];
  readonly anions: readonly ConstituentIon[];
  /** Waters of crystallization in the formula. */
  readonly waters: number;
  /** Neutral ligands bound to a metal: ammonia, water inside brackets. */
  readonly ligands: readonly Constituent[];
  /** Molecules that are neither water nor ligand; the formula itself if it is one. */
  readonly molecules: readonly Constituent[];
  readonly acid?: AcidHydrogen;
  /** The metal with its ligands as one ion, where it stays together in water. */
  readonly complex?: ConstituentIon;
  /** The ions it gives when it dissolves, cations first: those above, a complex kept together. */
  readonly inWater: readonly ConstituentIon[];
  /** Names of the anions with those of the acids' anions after hydrogen salts, `ammonium` and `ammine`. */
  readonly groups: readonly string[];
  /** What the formula may be, where only a composition is written that several substances share; else empty. */
  readonly readings: readonly string[];
  /** Equal for the same substance however written; crystal water counts. */
  readonly identity: string;
  /** The same without crystal water, for one anhydrous unit. */
  readonly anhydrousIdentity: string;
}

/** What one part of an adduct, or the whole, adds up to. */
interface Content {
  readonly kind: ConstitutionKind;
  readonly cations: readonly ConstituentIon[];
  readonly anions: readonly ConstituentIon[];
  readonly waters: number;
  readonly ammines: number;
  readonly aquas: number;
  readonly molecule?: string;
  readonly acid?: AcidHydrogen;
  readonly groups: readonly string[];
  readonly readings: readonly string[];
}

const EMPTY: Omit<Content, "kind"> = {
  cations: [],
  anions: [],
  waters: 0,
  ammines: 0,
  aquas: 0,
  groups: [],
  readings: [],
};

const WATER: ReadonlyMap<string, number> = /* @__PURE__ */ new Map([
  ["H", 2],
  ["O", 1],
]);
const AMMONIA: ReadonlyMap<string, number> = /* @__PURE__ */ new Map([
  ["N", 1],
  ["H", 3],
]);

/** As the formula layer prints it. */
const canonical = (text: string): string => parseFormula(text).toString();

const rounded = (n: number): number => Number(n.toFixed(6));

/** `Fe^3+`, `[Fe(CN)6]^4-` for a row of the ion table. */
const ionFormula = (ion: Ion): string => canonical(chargedText(ionText(ion.row), ion.charge));

// -- tables by composition

let acidRows: ReadonlyMap<string, AcidRow> | undefined;
let isomerRows: ReadonlyMap<string, IsomerRow> | undefined;

const keyOfText = (text: string): string => compositionKey(readNotation(text).parts[0]!.counts);

function acidRow(key: string): AcidRow | undefined {
  acidRows ??= new Map(ACIDS().map((row) => [keyOfText(row.formula), row]));
  return acidRows.get(key);
}

function isomerRow(key: string): IsomerRow | undefined {
  isomerRows ??= new Map(ISOMERS().map((row) => [keyOfText(row.readings[0]!.formula), row]));
  return isomerRows.get(key);
}

// -- ions of one part

function cationIons(use: CationUse): ConstituentIon[] {
  const { ion, element, charge, count } = use;
  if (ion !== undefined) return [{ formula: ionFormula(ion), charge, count }];
  const symbol = element!.symbol;
  const one = (z: number, n: number) => ({
    formula: canonical(chargedText(symbol, z)),
    charge: z,
    count: n,
    element: symbol,
  });
  if (use.mixed === undefined) return [one(charge, count)];
  const [low, high] = use.mixed;
  const above = (charge * count - low * count) / (high - low);
  return [one(low, rounded(count - above)), one(high, rounded(above))];
}

/** The anion without its hydrogen, by names: hydrogencarbonate belongs to the carbonates. */
function rootNames(ion: Ion): string[] {
  const names = [ion.row.name];
  if (ion.parent !== undefined) names.push(ion.parent.row.name);
  const hydrogens = ion.counts.get("H") ?? 0;
  for (let n = 1; n <= Math.min(hydrogens, 3) && ion.parent === undefined; n += 1) {
    const counts = new Map(ion.counts);
    if (hydrogens === n) counts.delete("H");
    else counts.set("H", hydrogens - n);
    const key = compositionKey(counts);
    const root = ionIndex().listed.find((one) => one.charge === ion.charge - n && compositionKey(one.counts) === key);
    if (root !== undefined) names.push(root.row.name);
  }
  return names;
}

function saltContent(salt: Salt): Content {
  const groups = salt.anions.flatMap(({ ion }) => rootNames(ion));
  if (salt.cations.some(({ ion }) => ion?.row.formula === "NH4")) groups.push("ammonium");
  return {
    ...EMPTY,
    kind: "salt",
    cations: salt.cations.flatMap(cationIons),
    anions: salt.anions.map(({ ion, count }) => ({
      formula: ionFormula(ion),
      charge: ion.charge,
      count,
      ...(ion.element === undefined ? {} : { element: ion.element.symbol }),
    })),
    groups,
  };
}

/** Hydron and anion of an acid. */
function acidContent(protons: number, anion: string, groups: readonly string[], row?: AcidRow): Content {
  return {
    ...EMPTY,
    kind: "acid",
    cations: [{ formula: "H+", charge: 1, count: protons, element: "H" }],
    anions: [{ formula: anion, charge: -protons, count: 1 }],
    acid: { protons, anion, strong: row?.strong === true, veryWeak: row?.veryWeak === true },
    groups,
  };
}

const molecule = (text: string): Content => ({ ...EMPTY, kind: "molecule", molecule: text });

/** Does the text show more than a composition: an element twice, or brackets? */
const showsStructure = ({ units }: Part): boolean =>
  units.some(({ members }) => members !== undefined) || new Set(units.map(({ text }) => text)).size < units.length;

const isSpelled = ({ row }: Ion, text: string): boolean =>
  (row.written ?? [row.formula]).some((way) => text.includes(way));

const spells = ({ formula, written = [] }: IsomerReading, text: string): boolean => {
  const plain = text.replace(/[[{]/g, "(").replace(/[\]}]/g, ")");
  return formula === plain || written.includes(plain);
};

/** The part among the substances that share its composition. */
function isomerContent(part: Part, row: IsomerRow): Content {
  const meant = row.readings.find((reading) => spells(reading, part.text));
  if (meant !== undefined) {
    const own = readNotation(meant.formula).parts[0]!;
    const acid = acidRow(compositionKey(own.counts));
    if (acid !== undefined && acid.formula === meant.formula) return fromAcidRow(acid);
    const salts = saltsOf(own);
    const salt =
      salts.find(({ cations }) => cations.every(({ ion }) => ion === undefined || isSpelled(ion, own.text))) ??
      salts[0];
    return salt === undefined ? molecule(meant.formula) : saltContent(salt);
  }
  if (showsStructure(part)) return molecule(part.text);
  const [only, ...others] = row.readings;
  if (others.length === 0) return molecule(only!.formula);
  return { ...EMPTY, kind: "open", molecule: part.text, readings: row.readings.map(({ formula }) => formula) };
}

function fromAcidRow(row: AcidRow): Content {
  const { parts, charge } = readNotation(row.anion);
  const { counts } = parts[0]!;
  const anion = canonical(row.anion);
  const isAlike = (one: Ion): boolean =>
    one.charge === charge && one.counts.size === counts.size && timesIn(one.counts, counts) === 1;
  // isomers have the composition in common, so the formula decides
  const ion = ionIndex().anions.find((one) => isAlike(one) && ionFormula(one) === anion);
  return acidContent(row.protons, anion, ion === undefined ? [] : rootNames(ion), row);
}

const hasMetal = (counts: ReadonlyMap<string, number>): boolean => [...counts.keys()].some(isCationElement);

/** Neutral ligands that the brackets of a part show. */
function shownLigands(units: readonly Unit[], inside: boolean): { ammines: number; aquas: number } {
  let [ammines, aquas] = [0, 0];
  for (const unit of units) {
    if (unit.members === undefined) continue;
    const key = compositionKey(countsOf(unit.members));
    if (key === "H3 N1") ammines += unit.count;
    else if (key === "H2 O1" && inside) aquas += unit.count;
    else {
      const more = shownLigands(unit.members, unit.bracket === "[");
      ammines += more.ammines * unit.count;
      aquas += more.aquas * unit.count;
    }
  }
  return { ammines, aquas };
}

/** A reading as a salt with what was taken off before. */
interface Solvate {
  readonly salt: Salt;
  readonly waters: number;
  readonly ammines: number;
  readonly aquas: number;
  readonly strain: number;
}

/** Water or ammonia that nothing in the writing shows costs so much. */
const UNSHOWN = 3;
/** Most waters looked for in a formula without dots, most ammonias. */
const MOST_WATERS = 24;
const MOST_AMMINES = 8;

/** The likeliest salt once so many waters and ammonias are taken off. */
function saltWithout(part: Part, waters: number, ammines: number): Salt | undefined {
  let { counts } = part;
  if (waters > 0 && timesIn(WATER, counts) < waters) return undefined;
  if (waters > 0) counts = without(counts, WATER, waters);
  if (ammines > 0 && timesIn(AMMONIA, counts) < ammines) return undefined;
  if (ammines > 0) counts = without(counts, AMMONIA, ammines);
  if (counts.size === 0) return undefined;
  // a formula taken several times for its half water: the salt itself is one again
  const [scale, rest] = [part.multiplier, counts];
  const whole = scale > 1 && [...rest.values()].every((n) => n % scale === 0);
  if (whole) counts = new Map([...rest].map(([symbol, n]) => [symbol, n / scale] as const));
  const salt = saltsOf({ ...part, counts }, waters + ammines === 0).find((one) => !isReacting(one));
  return salt === undefined || !whole ? salt : severalOf(salt, scale);
}

const severalOf = ({ cations, anions, strain }: Salt, times: number): Salt => ({
  cations: scaled(cations, times),
  anions: scaled(anions, times),
  strain,
});

/** As good as a reading gets: one usual anion of several atoms. */
const isSound = ({ salt, strain }: Solvate): boolean => strain < 10 * salt.cations.length + 7 + UNSHOWN;

/** The likeliest reading as a salt, with water and ammonia that stand in the formula without a dot: CuH10O9S, [Co(NH3)6]Cl3. */
function solvateOf(part: Part, alone: boolean): Solvate | undefined {
  const shown = shownLigands(part.units, false);
  let best: Solvate | undefined;
  const tried = (waters: number, ammines: number, aquas: number): boolean => {
    const salt = saltWithout(part, waters + aquas, ammines);
    if (salt === undefined) return false;
    const unshown = (waters > 0 ? UNSHOWN + waters * 0.01 : 0) + (ammines > shown.ammines ? UNSHOWN : 0);
    const strain = salt.strain + unshown;
    if (best === undefined || strain < best.strain) best = { salt, waters, ammines, aquas, strain };
    return isSound(best);
  };
  if (shown.ammines + shown.aquas > 0 && (tried(0, shown.ammines, shown.aquas) || best !== undefined)) return best;
  if (tried(0, 0, 0)) return best;
  const written = !alone || part.units.some(({ members }) => members !== undefined);
  if (written && best !== undefined) return best;
  const mostWaters = alone ? Math.min(timesIn(WATER, part.counts), MOST_WATERS) : 0;
  for (let waters = 1; waters <= mostWaters; waters += 1) if (tried(waters, 0, 0)) return best;
  // all the nitrogen as ammonia first
  for (let ammines = Math.min(timesIn(AMMONIA, part.counts), MOST_AMMINES); ammines >= 2; ammines -= 1)
    for (let waters = 0; waters <= Math.min(mostWaters, 2); waters += 1) if (tried(waters, ammines, 0)) return best;
  return best;
}

/** The salt of a part that holds no metal: ammonium must be written, or the composition must leave no molecule to think of. */
function nonMetalSalt(part: Part): Salt | undefined {
  const salt = saltsOf(part).find((one) => !isReacting(one));
  if (salt === undefined || !part.counts.has("C")) return salt;
  const ammonium = salt.cations.every(({ ion }) => ion?.row.formula === "NH4");
  if (showsStructure(part)) return part.text.includes("NH4") || !ammonium ? salt : undefined;
  return ammonium && salt.anions.every(({ ion }) => ion.counts.has("O")) ? salt : undefined;
}

/** An organic formula that shows its structure is an acid only where it shows the acid: (CH3O)2CO is no lactic acid. */
function mayBeAcid(part: Part): boolean {
  if (!part.counts.has("C") || !part.counts.has("H") || !showsStructure(part)) return true;
  return part.units[0]!.text === "H" || showsAcidGroup(part);
}

function partContent(part: Part, alone: boolean): Content {
  if (isWater(part)) return { ...EMPTY, kind: "water", waters: 1 };
  const key = compositionKey(part.counts);
  const isomers = isomerRow(key);
  if (isomers !== undefined) return isomerContent(part, isomers);
  if (part.counts.size === 1 && part.units.length === 1) return { ...molecule(part.text), kind: "element" };
  const acid = acidRow(key);
  if (acid !== undefined && mayBeAcid(part)) return fromAcidRow(acid);
  const times = wholeTimes(part.counts);
  if (times === undefined) return molecule(compositionText(part));
  if (times > 1) return divided(partContent(multiplied(part, times), alone), times);
  const named = mayBeAcid(part) ? acidOf(part) : undefined;
  if (named !== undefined && (named.ion.row.acid !== undefined || named.ion.row.complex))
    return acidContent(-named.ion.charge, ionFormula(named.ion), rootNames(named.ion));
  if (!hasMetal(part.counts)) {
    const salt = nonMetalSalt(part);
    if (salt !== undefined || part.counts.has("C") || !part.counts.has("N"))
      return salt === undefined ? molecule(moleculeText(part)) : saltContent(salt);
  }
  const solvate = solvateOf(part, alone);
  if (solvate !== undefined) {
    const content = saltContent(solvate.salt);
    const groups = solvate.ammines > 0 ? [...content.groups, "ammine"] : content.groups;
    return { ...content, waters: solvate.waters, ammines: solvate.ammines, aquas: solvate.aquas, groups };
  }
  const [any] = saltsOf(part);
  return any === undefined ? molecule(moleculeText(part)) : saltContent(any);
}

/** Fewest times a composition must be taken for whole numbers; undefined beyond a dozen. */
function wholeTimes(counts: ReadonlyMap<string, number>): number | undefined {
  for (let times = 1; times <= 12; times += 1)
    if ([...counts.values()].every((n) => Math.abs(n * times - Math.round(n * times)) < 1e-9)) return times;
  return undefined;
}

/** The composition so many times, without its writing; the multiplier says how many. */
function multiplied(part: Part, times: number): Part {
  const counts = new Map([...part.counts].map(([symbol, n]) => [symbol, Math.round(n * times)] as const));
  const units = [...counts].map(([text, count]) => ({ text, count }));
  return { multiplier: times, counts, units, text: unitsText(units) };
}

function divided(content: Content, times: number): Content {
  const each = <T extends { readonly count: number }>(list: readonly T[]): T[] => scaled(list, 1 / times);
  const { cations, anions, waters, ammines, aquas } = content;
  if (content.kind !== "salt") return content;
  return {
    ...content,
    cations: each(cations),
    anions: each(anions),
    waters: rounded(waters / times),
    ammines: rounded(ammines / times),
    aquas: rounded(aquas / times),
  };
}

/** A text for a molecule: as written where that shows structure, else its composition. */
const moleculeText = (part: Part): string =>
  part.counts.has("C") && showsStructure(part) ? part.text : compositionText(part);

const compositionText = ({ text }: Part): string => parseFormula(text).toHill();

// -- complexes

/** Anions that a metal beside an alkali holds as ligands, in brackets or not; oxalate and nitrite by the metal's charge. */
const HELD_FAST: Readonly<Record<string, readonly string[]>> = {
  "CN-": [
    "Cr",
    "Mn",
    "Fe",
    "Co",
    "Ni",
    "Cu",
    "Zn",
    "Mo",
    "Ru",
    "Rh",
    "Pd",
    "Ag",
    "Cd",
    "W",
    "Os",
    "Ir",
    "Pt",
    "Au",
    "Hg",
  ],
  "C2O4^2-": ["Fe3", "Cr3", "Al3", "Co3", "Cu2"],
  "NO2-": ["Co3"],
};

const isTransition = ({ element }: ConstituentIon): boolean =>
  element !== undefined && !["Li", "Na", "K", "Rb", "Cs", "Mg", "Ca", "Sr", "Ba", "H"].includes(element);

/** A complex and the ions around it. */
interface Kept {
  readonly complex: ConstituentIon;
  readonly around: readonly ConstituentIon[];
}

const kept = (text: string, charge: number, count: number, around: readonly ConstituentIon[]): Kept => ({
  complex: { formula: canonical(chargedText(text, charge)), charge, count },
  around,
});

/** What square brackets hold together. */
function bracketed(part: Part, { members, text, count }: Unit, ions: readonly ConstituentIon[]): Kept | undefined {
  const inside = countsOf(members!);
  if (timesIn(inside, part.counts) < count) return undefined;
  let outside: ReadonlyMap<string, number> = without(part.counts, inside, count);
  let charge = 0;
  const around: ConstituentIon[] = [];
  for (const ion of ions) {
    const { counts } = readNotation(ion.formula).parts[0]!;
    const times = Math.min(timesIn(counts, outside), ion.count);
    if (times < 1) continue;
    outside = without(outside, counts, times);
    charge += times * ion.charge;
    around.push({ ...ion, count: times });
  }
  const own = -charge / count;
  if (outside.size > 0 || own === 0 || !Number.isInteger(own)) return undefined;
  return kept(`[${text}]`, own, count, around);
}

/** The ion that the square brackets of a part, or its ammonias or cyanides, hold together. */
function complexOf(part: Part, { cations, anions, ammines }: Content): Kept | undefined {
  const ions = [...cations, ...anions];
  const bracket = part.units.find(
    (unit) => unit.bracket === "[" && unit.members !== undefined && hasMetal(countsOf(unit.members)),
  );
  if (bracket !== undefined) return bracketed(part, bracket, ions);
  const metals = cations.filter(isTransition);
  const [metal] = metals;
  if (metal === undefined || metals.length > 1) return undefined;
  const others = (gone: readonly ConstituentIon[]) => ions.filter((ion) => !gone.includes(ion));
  const perMetal = ammines / metal.count;
  if (perMetal > 0 && Number.isInteger(perMetal)) {
    const text = `[${metal.element}(NH3)${perMetal === 1 ? "" : perMetal}]`;
    return kept(text, metal.charge, metal.count, others([metal]));
  }
  const [anion] = anions;
  if (anions.length !== 1 || cations.length < 2) return undefined;
  const each = anion!.count / metal.count;
  const charge = metal.charge + anion!.charge * each;
  const holds = HELD_FAST[anion!.formula]?.includes(`${metal.element}${anion!.formula === "CN-" ? "" : metal.charge}`);
  if (holds !== true || !Number.isInteger(each) || charge >= 0) return undefined;
  const text = bareIon(anion!.formula);
  return kept(`[${metal.element}(${text})${each}]`, charge, metal.count, others([metal, anion!]));
}

// -- the whole

/** Vanadyl and its like, which stand in water as they stand in the salt beside another anion: VOSO4, TiOSO4. */
function withOxoCation(cations: readonly ConstituentIon[], anions: readonly ConstituentIon[]): ConstituentIon[] {
  const oxide = anions.find(({ formula }) => formula === "O^2-");
  const [metal] = cations;
  if (oxide === undefined || anions.length === 1 || cations.length > 1) return [...cations, ...anions];
  const oxygens = oxide.count / metal!.count;
  const oxo = ionIndex().cations.find(
    ({ row, counts, charge }) =>
      row.alone && counts.get(metal!.element ?? "") === 1 && counts.get("O") === oxygens && charge > 0,
  );
  if (oxo === undefined || oxo.charge !== metal!.charge - 2 * oxygens) return [...cations, ...anions];
  const cation = { formula: ionFormula(oxo), charge: oxo.charge, count: metal!.count };
  return [cation, ...anions.filter((ion) => ion !== oxide)];
}

/** Equal things added up, in order of first appearance. */
function added<T extends { readonly formula: string; readonly count: number }>(list: readonly T[]): T[] {
  const all = new Map<string, T>();
  for (const one of list) {
    const before = all.get(one.formula);
    all.set(one.formula, before === undefined ? one : { ...before, count: rounded(before.count + one.count) });
  }
  return [...all.values()];
}

const byCharge = (ions: readonly ConstituentIon[]): ConstituentIon[] =>
  [...ions].sort((one, other) => Number(one.charge < 0) - Number(other.charge < 0));

const scaled = <T extends { readonly count: number }>(list: readonly T[], times: number): T[] =>
  times === 1 ? [...list] : list.map((one) => ({ ...one, count: rounded(one.count * times) }));

/** `2 Na+ + 1 SO4^2-`, sorted; in lowest terms. */
function identityText(things: readonly { readonly formula: string; readonly count: number }[], units: number): string {
  return things
    .filter(({ count }) => count !== 0)
    .map(({ formula, count }) => `${rounded(count / units)} ${formula}`)
    .sort()
    .join(" + ");
}

/** Greatest common divisor of counts; 1 where one is not a whole number. */
function commonFactor(counts: readonly number[]): number {
  if (counts.length === 0 || !counts.every((n) => Number.isInteger(n) && n > 0)) return 1;
  return counts.reduce((a, b) => {
    let [x, y] = [a, b];
    while (y !== 0) [x, y] = [y, x % y];
    return x;
  });
}

function ionConstitution(formula: Formula, part: Part): Constitution {
  const { charge } = formula;
  const key = compositionKey(part.counts);
  const { anions, cations } = ionIndex();
  const row = [...anions, ...cations].find((ion) => ion.charge === charge && compositionKey(ion.counts) === key);
  const shown = shownLigands(part.units, false);
  const symbol = part.units.length === 1 && part.units[0]!.members === undefined ? part.units[0]!.text : undefined;
  const text = row === undefined ? canonical(chargedText(part.text, charge)) : ionFormula(row);
  const own: ConstituentIon = {
    formula: text,
    charge,
    count: 1,
    ...(symbol === undefined || part.units[0]!.count !== 1 ? {} : { element: symbol }),
  };
  const ligands = [
    ...(shown.ammines > 0 ? [{ formula: "NH3", count: shown.ammines }] : []),
    ...(shown.aquas > 0 ? [{ formula: "H2O", count: shown.aquas }] : []),
  ];
  return {
    kind: "ion",
    cations: charge > 0 ? [own] : [],
    anions: charge < 0 ? [own] : [],
    waters: 0,
    ligands,
    molecules: [],
    ...(ligands.length > 0 ? { complex: own } : {}),
    inWater: [own],
    groups: row === undefined ? [] : rootNames(row),
    readings: [],
    identity: text,
    anhydrousIdentity: text,
  };
}

function constitutionFor(formula: Formula): Constitution {
  const { parts, charge } = readNotation(formula);
  if (charge !== 0 && parts.length === 1 && parts[0]!.units.length > 0) return ionConstitution(formula, parts[0]!);
  const contents = parts.map((part) => ({
    part,
    times: part.multiplier,
    content: partContent(part, parts.length === 1),
  }));
  const all = <T extends { readonly formula: string; readonly count: number }>(
    of: (content: Content) => readonly T[],
  ) => added(contents.flatMap(({ times, content }) => scaled(of(content), times)));
  const sum = (of: (content: Content) => number): number =>
    rounded(contents.reduce((total, { times, content }) => total + times * of(content), 0));
  const cations = all(({ cations }) => cations);
  const anions = all(({ anions }) => anions);
  const waters = sum((content) => content.waters);
  const ammines = sum((content) => content.ammines);
  const aquas = sum((content) => content.aquas);
  const molecules = all(({ molecule: text }) => (text === undefined ? [] : [{ formula: text, count: 1 }]));
  const dry = contents.filter(({ content }) => content.kind !== "water");
  const kinds = new Set(dry.map(({ content }) => content.kind));
  const kind =
    dry.length === 0
      ? "water"
      : kinds.size === 1
        ? [...kinds][0]!
        : kinds.has("open")
          ? "open"
          : cations.length > 0
            ? "salt"
            : "molecule";
  const [only] = dry;
  const single = dry.length === 1 ? only : undefined;
  const held = single === undefined ? undefined : complexOf(single.part, single.content);
  const things = [...cations, ...anions, ...molecules, { formula: "NH3", count: ammines }];
  const units = commonFactor(
    [...cations, ...anions, ...molecules].map(({ count }) => count).concat(ammines > 0 ? [ammines] : []),
  );
  const perUnit = molecules.length > 0 && single !== undefined ? single.times : units;
  return {
    kind,
    cations,
    anions,
    waters,
    ligands: [
      ...(ammines > 0 ? [{ formula: "NH3", count: ammines }] : []),
      ...(aquas > 0 ? [{ formula: "H2O", count: aquas }] : []),
    ],
    molecules,
    ...(single?.content.acid === undefined ? {} : { acid: single.content.acid }),
    ...(held === undefined ? {} : { complex: scaled([held.complex], single!.times)[0]! }),
    inWater:
      held === undefined
        ? withOxoCation(cations, anions)
        : scaled(byCharge([held.complex, ...held.around]), single!.times),
    groups: [...new Set(contents.flatMap(({ content }) => content.groups))],
    readings: [...new Set(contents.flatMap(({ content }) => content.readings))],
    identity: identityText(
      [...things, { formula: "H2O", count: rounded(waters + aquas) }],
      dry.length === 0 ? 1 : perUnit,
    ),
    anhydrousIdentity: identityText(things, perUnit),
  };
}

const known = /* @__PURE__ */ new WeakMap<Formula, Constitution>();
const byText = /* @__PURE__ */ memoised(4000, (text: string) => frozen(readable(constitutionFor(parseFormula(text)))));

/**
 * What a formula is made of: cations with their charges, anions, crystal water, ligands, the hydrogen of an acid. The same
 * for every way of writing one substance.
 *
 * @param formula - a salt, acid, molecule or ion, crystal water allowed
 * @returns ions for the formula as written; `identity`, equal for the same substance; `readings`, what a bare composition
 * such as CH4N2O may stand for. What the rules do not read is a molecule of its own.
 * @throws {FormulaError} those of `parseFormula`
 * @source charges and ions: IUPAC Recommendations 2005 (see the rows of the ion table); isomers: common practice
 * @category Formulas
 * @example
 * constitutionOf("Zn5C2H6O12").anions.map((ion) => `${ion.count} ${ion.formula}`) // => ["2 CO3^2-", "6 OH-"]
 * constitutionOf("CuHAsO3").cations[0]?.formula // => "Cu^2+"
 * constitutionOf("CuSO4.5H2O").identity === constitutionOf("CuH10O9S").identity // => true
 * constitutionOf("CH4N2S").readings // => ["CS(NH2)2", "NH4SCN"]
 * constitutionOf("C2H2O4·2H2O").acid?.protons // => 2
 */
export function constitutionOf(formula: Formula | string): Constitution {
  if (!(formula instanceof Formula)) return byText(formula);
  let constitution = known.get(formula);
  if (constitution === undefined) {
    constitution = byText(formula.text);
    known.set(formula, constitution);
  }
  return constitution;
}

/**
 * Are two formulas the same substance, however each is written? Isomers are not; crystal water counts.
 *
 * @category Formulas
 * @example
 * sameSubstance("Pb(C2H3O2)2·3H2O", "Pb(CH3COO)2.3H2O") // => true
 * sameSubstance("NH4OCN", "CO(NH2)2") // => false
 */
export function sameSubstance(one: Formula | string, other: Formula | string): boolean {
  return constitutionOf(one).identity === constitutionOf(other).identity;
}

/**
 * Does the formula hold an ion, in whatever numbers?
 *
 * @param ion - with its charge, as `constitutionOf` writes it: `CO3^2-`, `NH4+`
 * @category Formulas
 * @example
 * hasIon("Cu2(OH)2CO3", "OH-") // => true
 * hasIon("CH3OH", "OH-") // => false
 */
export function hasIon(formula: Formula | string, ion: string): boolean {
  const { cations, anions } = constitutionOf(formula);
  return [...cations, ...anions].some((one) => one.formula === ion);
}

/**
 * {@link constitutionOf}, with the outcome as data.
 *
 * @category Formulas
 * @example
 * tryConstitutionOf("NACL").ok // => false
 */
export function tryConstitutionOf(formula: Formula | string): Result<Constitution> {
  return attempt(() => constitutionOf(formula));
}
