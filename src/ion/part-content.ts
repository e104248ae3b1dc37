// From one part of a formula to what it adds up to: among the isomers of its composition, as an acid, as a salt with what it
// holds of water and ammonia, as a molecule.

import { parseFormula } from "../formula";
import { byElements } from "../formula/internal";
import { shownLigands } from "./complexes";
import {
  type ConstituentIon,
  type Content,
  canonical,
  EMPTY,
  hasMetal,
  ionFormula,
  rootNames,
  rounded,
  scaled,
} from "./content";
import { ACIDS, type AcidRow } from "./data/acids";
import { ISOMERS, type IsomerReading, type IsomerRow } from "./data/isomers";
import { type Ion, ionsAs, timesIn, without } from "./ion-index";
import { chargedText } from "./ion-text";
import type { CationUse } from "./metal-charges";
import { atomsIn, compositionKey, isWater, type Part, readNotation, showsAcidGroup, unitsText } from "./notation";
import { acidOf, hasAcidHydrogen, isReacting, type Salt, saltsOf } from "./salt-readings";

const WATER: ReadonlyMap<string, number> = /* @__PURE__ */ new Map([
  ["H", 2],
  ["O", 1],
]);
const AMMONIA: ReadonlyMap<string, number> = /* @__PURE__ */ new Map([
  ["N", 1],
  ["H", 3],
]);

const keyOfText = (text: string): string => compositionKey(atomsIn(text));

/** The elements that a composition names, as a formula does. */
const symbolsOf = (counts: ReadonlyMap<string, number>): string => [...counts.keys()].join("");

/** Acids by composition, those with the elements of a formula. */
const acidRows = /* @__PURE__ */ byElements(
  ACIDS,
  ({ formula }) => formula,
  (rows): ReadonlyMap<string, AcidRow> => new Map(rows.map((row) => [keyOfText(row.formula), row])),
);

/** Isomers by composition, those with the elements of a formula. */
const isomerRows = /* @__PURE__ */ byElements(
  ISOMERS,
  ({ readings }) => readings[0]!.formula,
  (rows): ReadonlyMap<string, IsomerRow> => new Map(rows.map((row) => [keyOfText(row.readings[0]!.formula), row])),
);

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
    const acid = acidRows(symbolsOf(own.counts)).get(compositionKey(own.counts));
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
  const anion = canonical(row.anion);
  // isomers have the composition in common, so the formula decides
  const ion = ionsAs(parts[0]!.counts, charge).find((one) => ionFormula(one) === anion);
  return acidContent(row.protons, anion, ion === undefined ? [] : rootNames(ion), row);
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
  // hydrogen in front is an acid's, not that of water without its dot: H3PMo12O40
  const mostWaters = alone && !hasAcidHydrogen(part) ? Math.min(timesIn(WATER, part.counts), MOST_WATERS) : 0;
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

export function partContent(part: Part, alone: boolean): Content {
  if (isWater(part)) return { ...EMPTY, kind: "water", waters: 1 };
  const key = compositionKey(part.counts);
  const isomers = isomerRows(symbolsOf(part.counts)).get(key);
  if (isomers !== undefined) return isomerContent(part, isomers);
  if (part.counts.size === 1 && part.units.length === 1) return { ...molecule(part.text), kind: "element" };
  const acid = acidRows(symbolsOf(part.counts)).get(key);
  if (acid !== undefined && mayBeAcid(part)) return fromAcidRow(acid);
  const times = wholeTimes(part.counts);
  if (times === undefined) return molecule(compositionText(part));
  if (times > 1) return divided(partContent(multiplied(part, times), alone), times);
  const named = mayBeAcid(part) ? acidOf(part) : undefined;
  if (named !== undefined && (named.row.acid !== undefined || named.row.complex))
    return acidContent(-named.charge, ionFormula(named), rootNames(named));
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

/** Non-metals as the formula of a compound of two of them names them (IUPAC Nomenclature of Inorganic Chemistry 1990, I-4.6.1.2). */
const IN_ORDER = /* @__PURE__ */ "B Si C Sb As P N H Te Se S At I Br Cl O F".split(" ");

/** A compound of two non-metals in their order, NH3 and not H3N; anything else in the order of Hill. */
function compositionText({ text, counts }: Part): string {
  const formula = parseFormula(text);
  const symbols = [...counts.keys()];
  if (
    symbols.length !== 2 ||
    !symbols.every((one) => one !== "C" && IN_ORDER.includes(one) && Number.isInteger(counts.get(one)))
  )
    return formula.toHill();
  const count = (one: string): string => (counts.get(one) === 1 ? "" : String(counts.get(one)));
  return symbols
    .sort((a, b) => IN_ORDER.indexOf(a) - IN_ORDER.indexOf(b))
    .map((one) => one + count(one))
    .join("");
}
