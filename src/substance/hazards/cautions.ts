// What published classifications say about each material, and which of them must not meet. Reminders, not training:
// every answer ends by deferring to the safety data sheet, the local rules and a qualified person.

import { attempt, type Result } from "../../foundation/error";
import { frozen } from "../../foundation/frozen";
import { anhydrousKey, formulaKey } from "../../ion/keys";
import { type Notation, readNotation, tryReadNotation } from "../../ion/notation";
import { quantity } from "../../quantity";
import { CAUTIONS, guard, OF_STRENGTH, readableOptions } from "../argument";
import { DISPOSAL, HAZARD_FIELD_SOURCES, HAZARDS, type HazardRow } from "../data/hazards";
import type { Circumstance } from "../data/incompatibilities";
import { cite, type SourceKey } from "../data/sources";
import { badInput, readableText, SubstanceError } from "../error";
import { nearestNames } from "../names/formula-of";
import { pictogramsOf, signalWordOf, statementRow } from "../names/label-elements";
import { addTo } from "../names/multimap";
import { type Resolved, resolveAll } from "../names/resolve";
import { formulasSoldAs, nearestShopNames, strengthsSoldAs, tryShopMaterial } from "../shop/shop";
import { classesOf } from "./classes";
import { classed, type Incompatibility, incompatibilities, type Meeting } from "./incompatibility";
import { makeUpOf } from "./make-up";
import { dangerOf } from "./never-made";
import { type Diluted, dilutedEntry } from "./solution-limits";

/** A statement code and our paraphrase of it. */
export interface Statement {
  readonly code: string;
  readonly paraphrase: string;
  /** The classification, or `memory` for a code of ordinary safety data sheets that the classification leaves out. */
  readonly source: SourceKey;
}

/** What is known of one material. */
export interface SubstanceCautions {
  /** The text that was asked for. */
  readonly material: string;
  readonly formula?: string;
  /**
   * `classified`, `not classified` (the source lists no hazard: not the same as safe), `no entry` (nothing is stored for it),
   * or `not read` (the text is no name and no formula that is known here: nothing at all was looked up).
   */
  readonly status: "classified" | "not classified" | "no entry" | "not read";
  /** The form the entry is about: solution, gas, powder ... */
  readonly form?: string;
  /** Mass fraction the entry was read for, where it was given or a shop sells the good at it (its strongest). */
  readonly strength?: string;
  readonly pictograms: readonly { readonly code: string; readonly paraphrase: string }[];
  readonly signalWord?: "Danger" | "Warning";
  readonly statements: readonly Statement[];
  readonly cautions: readonly string[];
  readonly disposal: string;
  /** Formula or group that was classified, when it is not the formula asked for. */
  readonly classifiedAs?: string;
  /** What to keep in mind about this entry. */
  readonly notes: readonly string[];
  /** What classified it: pictograms, signal word and statements. */
  readonly source?: SourceKey;
  /** The source in words, with the index number where there is one. */
  readonly citation?: string;
  /** What cautions and disposal rest on: they are ours, not the classification's. */
  readonly adviceSource: SourceKey;
}

/** A material with its strength, on which statements and rules for strong solutions rest, or in its cylinder. */
export interface MaterialOfStrength {
  readonly material: string;
  /** Mass fraction, such as "5 %". */
  readonly strength?: string;
  /** A gas under pressure: statements and pictogram of the cylinder are added. */
  readonly inCylinder?: boolean;
}

/** What else matters for which materials may meet. */
export interface CautionOptions {
  /** Where the work is done, if in a closed vessel or a kitchen. */
  readonly circumstances?: readonly Circumstance[];
}

/** A text that is no name and no formula known here. */
export interface NotRead {
  readonly material: string;
  /** Names that are near to it. */
  readonly nearest: readonly string[];
}

/** The answer for a set of materials. */
export interface Cautions {
  readonly substances: readonly SubstanceCautions[];
  /** Texts that were not read: what is said below does not cover them. */
  readonly notRead: readonly NotRead[];
  /** What must not meet, the blocking ones first. */
  readonly incompatibilities: readonly Incompatibility[];
  /** To be printed under everything above. */
  readonly closing: string;
}

export const NO_ENTRY = "no entry: read the safety data sheet";
export const CLOSING =
  "Reminders only. The product's safety data sheet, the rules of the place and a qualified person decide, not this text.";
const NO_DISPOSAL = "Ask hazardous-waste collection; the local rules decide.";

interface HazardIndex {
  readonly byFormula: ReadonlyMap<string, readonly HazardRow[]>;
  readonly byCore: ReadonlyMap<string, readonly HazardRow[]>;
  readonly groups: ReadonlyMap<string, HazardRow>;
}

let built: HazardIndex | undefined;

function hazardIndex(): HazardIndex {
  if (built !== undefined) return built;
  const byFormula = new Map<string, HazardRow[]>();
  const byCore = new Map<string, HazardRow[]>();
  const groups = new Map<string, HazardRow>();
  for (const row of HAZARDS()) {
    if (row.group !== undefined) groups.set(row.group, row);
    if (row.formula === undefined) continue;
    const notation = readNotation(row.formula);
    addTo(byFormula, formulaKey(notation), row);
    addTo(byCore, anhydrousKey(notation).key, row);
  }
  built = { byFormula, byCore, groups };
  return built;
}

/** Our paraphrase of a code; a suffix (`H360FD`, `H350i`) falls back to the bare number. */
export function paraphraseOf(code: string): string | undefined {
  return statementRow(code)?.paraphrase;
}

/** Formulas in tables that are compared by composition. */
const among =
  (...formulas: string[]) =>
  (notation: Notation): boolean =>
    formulas.some((formula) => formulaKey(readNotation(formula)) === formulaKey(notation));

const holds =
  (...symbols: string[]) =>
  ({ parts }: Notation): boolean => {
    const all = new Set(parts.flatMap((part) => [...part.counts.keys()]));
    return all.size > 1 && symbols.every((symbol) => all.has(symbol));
  };

interface Group {
  readonly group: string;
  readonly covers: (notation: Notation) => boolean;
  /** What the entry leaves out by name. */
  readonly except?: (notation: Notation) => boolean;
}

/** Groups that stand in where a compound has no entry of its own, the heavier first. */
const GROUPS: readonly Group[] = [
  { group: "chromium(VI) compounds", covers: (notation) => classesOf(notation).has("chromium(VI)") },
  { group: "lead compounds", covers: holds("Pb") },
  { group: "cadmium compounds", covers: holds("Cd") },
  { group: "mercury compounds", covers: holds("Hg"), except: among("HgS") },
  { group: "arsenic compounds", covers: holds("As") },
  { group: "thallium compounds", covers: holds("Tl") },
  { group: "beryllium compounds", covers: holds("Be") },
  { group: "salts of hydrogen cyanide", covers: (notation) => classesOf(notation).has("cyanide") },
  { group: "nickel compounds", covers: holds("Ni") },
  { group: "cobalt compounds", covers: holds("Co") },
  { group: "uranium compounds", covers: holds("U") },
  { group: "selenium compounds", covers: holds("Se") },
  { group: "antimony compounds", covers: holds("Sb"), except: among("Sb2O4", "Sb2O5", "Sb2S3", "Sb2S5") },
  { group: "barium salts", covers: holds("Ba"), except: among("BaSO4") },
  {
    group: "fluorosilicates",
    covers: ({ parts }) => parts.some(({ counts }) => counts.has("Si") && counts.get("F") === 6 * counts.get("Si")!),
  },
  { group: "thiocyanates", covers: ({ parts }) => parts.some((part) => makeUpOf(part).groups.includes("thiocyanate")) },
  { group: "salts of oxalic acid", covers: (notation) => classesOf(notation).has("oxalate") },
];

function groupOf(notation: Notation): HazardRow | undefined {
  const hit = GROUPS.find(({ covers, except }) => covers(notation) && except?.(notation) !== true);
  return hit === undefined ? undefined : hazardIndex().groups.get(hit.group);
}

/** Entries meant for the strength; where it is not known, those that are only meant for strong solutions are left out. */
function ofStrength(rows: readonly HazardRow[], percent: number | undefined): readonly HazardRow[] {
  return rows.filter(({ upTo, above, gas }) => {
    if (percent === undefined) return above === undefined;
    if (gas && rows.length > 1) return false;
    return (upTo === undefined || percent <= Number(upTo)) && (above === undefined || percent > Number(above));
  });
}

/** Rows for a formula and what they stand for: its own entry, its kin by crystal water, or its group. */
function rowsFor(notation: Notation): { rows: readonly HazardRow[]; how: "own" | "hydrate" | "group" } {
  const { byFormula, byCore } = hazardIndex();
  const own = byFormula.get(formulaKey(notation));
  if (own !== undefined) return { rows: own, how: "own" };
  const { key } = anhydrousKey(notation);
  const anhydrous = byFormula.get(key);
  if (anhydrous !== undefined) return { rows: anhydrous, how: "hydrate" };
  const kin = byCore.get(key);
  // an entry that was made for the anhydrous salt is the better stand-in among hydrates
  if (kin !== undefined)
    return { rows: [kin.find((row) => row.classifiedAs !== undefined) ?? kin[0]!], how: "hydrate" };
  const group = groupOf(notation);
  return { rows: group === undefined ? [] : [group], how: "group" };
}

function noEntry(material: string, formula: string): SubstanceCautions {
  const danger = dangerOf(readNotation(formula));
  const deadly = danger === undefined || danger.opens ? [] : [`${danger.name}: ${DEADLY[danger.code]}`];
  return {
    material,
    formula,
    status: "no entry",
    pictograms: [],
    statements: [],
    cautions: [...deadly, NO_ENTRY],
    disposal: NO_DISPOSAL,
    notes: [],
    adviceSource: HAZARD_FIELD_SOURCES.cautions,
  };
}

/** What is said of a substance that no plan makes. */
const DEADLY: Readonly<Record<string, string>> = {
  explosive:
    "goes off at a touch, spark or knock; do not make it, move it or throw it away: call those who remove explosives",
  "deadly-gas": "a breath of it kills; do not make it",
};

/** Names near to a text that was not read, of substances and of goods. */
function notReadOf(material: string): NotRead {
  return {
    material,
    nearest: [...new Set([...nearestNames(material), ...nearestShopNames(material)])].slice(0, 3),
  };
}

function unread(material: string): SubstanceCautions {
  const { nearest } = notReadOf(material);
  const near = nearest.length === 0 ? [] : [`did you mean ${nearest.join(" or ")}`];
  return {
    material,
    status: "not read",
    pictograms: [],
    statements: [],
    cautions: [[`not read: "${material}" is no name or formula known here`, ...near].join("; ")],
    disposal: NO_DISPOSAL,
    notes: ["not known here, so nothing is said of what it must not meet", ...near],
    adviceSource: HAZARD_FIELD_SOURCES.cautions,
  };
}

function notesOf(
  row: HazardRow,
  how: "own" | "hydrate" | "group",
  classifiedAs: string | undefined,
  given: Asked,
  diluted: Diluted | undefined,
): string[] {
  const { formula } = given;
  const notes: string[] = [];
  if (how === "group") notes.push(`no entry for ${formula} itself: the entry for ${classifiedAs} stands in`);
  else if (classifiedAs !== undefined) notes.push(`classified as ${classifiedAs}, not as ${formula}`);
  if (diluted !== undefined) notes.push(diluted.note);
  else if (row.concentrationLimits)
    notes.push("the entry has concentration limits of its own that are not stored here");
  if (row.gas && !given.inCylinder) notes.push("from a cylinder it is a gas under pressure as well (H280)");
  if (row.minimum) notes.push("some categories are minimum classifications: the supplier may add to them");
  if ((row.codes ?? []).length === 0 && diluted === undefined)
    notes.push("no classification in the source: that does not make it safe");
  if (row.source === "memory") notes.push("from memory of ordinary safety data sheets, not confirmed");
  return notes;
}

/** What a text stands for, with what is known of its strength. */
interface Asked extends Resolved {
  /** Mass %. */
  readonly percent?: number;
  readonly inCylinder: boolean;
}

function fromRow(given: Asked, row: HazardRow, how: "own" | "hydrate" | "group"): SubstanceCautions {
  const stand = row.classifiedAs ?? (how === "own" ? undefined : (row.group ?? row.formula));
  const classifiedAs = stand === given.formula ? undefined : stand;
  const { percent } = given;
  const diluted = percent === undefined ? undefined : dilutedEntry(given.notation, row, percent);
  const own = diluted?.codes ?? row.codes ?? [];
  const codes = row.gas && given.inCylinder ? [...own, CYLINDER] : own;
  const signalWord = signalWordOf(codes, diluted?.weaker ?? row.weaker);
  const sourceOf = (code: string): SourceKey => {
    if (code === CYLINDER || row.codesFromMemory?.includes(code)) return HAZARD_FIELD_SOURCES.codesFromMemory;
    return diluted?.source ?? row.source;
  };
  return {
    material: given.given,
    formula: given.formula,
    status: codes.length > 0 ? "classified" : "not classified",
    ...(row.form === undefined ? {} : { form: row.form }),
    ...(percent === undefined ? {} : { strength: percentText(percent) }),
    pictograms: pictogramsOf(codes).map((code) => ({ code, paraphrase: paraphraseOf(code)! })),
    ...(signalWord === undefined ? {} : { signalWord }),
    statements: codes.map((code) => ({ code, paraphrase: paraphraseOf(code)!, source: sourceOf(code) })),
    cautions: diluted?.cautions ?? row.cautions ?? [],
    disposal: DISPOSAL[row.disposal],
    ...(classifiedAs === undefined ? {} : { classifiedAs }),
    notes: notesOf(row, how, classifiedAs, given, diluted),
    source: diluted?.source ?? row.source,
    citation: row.index === undefined ? cite(row.source) : `${cite(diluted?.source ?? row.source)}, index ${row.index}`,
    adviceSource: HAZARD_FIELD_SOURCES.cautions,
  };
}

const CYLINDER = "H280";
const percentText = (percent: number): string => `${Number(percent.toPrecision(3))} %`;

/** Formulas a text may stand for: a formula, or all readings of a name with the forms sold under it. */
function meanings(material: string): Resolved[] {
  const known = resolveAll(material);
  if (known.length > 0 && tryReadNotation(material) !== undefined) return known;
  const formulas = new Set([...known.map((one) => one.formula), ...formulasSoldAs(material)]);
  // a name that only shares words with a good, such as "pool shock", is taken for it where nothing else is known
  const shop = formulas.size > 0 ? undefined : tryShopMaterial(material);
  if (shop?.ok) for (const one of shop.value.candidates) formulas.add(one.formula);
  return [...formulas].map((formula) => ({ given: material, formula, notation: readNotation(formula) }));
}

function entriesOf(text: string, asked: readonly Asked[]): SubstanceCautions[] {
  if (asked.length === 0) return [unread(text)];
  const found = new Map<string, SubstanceCautions>();
  for (const given of asked) {
    const { rows: all, how } = rowsFor(given.notation);
    const rows = ofStrength(all, given.percent);
    for (const entry of rows.length === 0
      ? [noEntry(text, given.formula)]
      : rows.map((row) => fromRow(given, row, how))) {
      // two goods of one name that say the same: the stronger stands for both
      const same = `${entry.formula} ${entry.form} ${entry.statements.map((one) => one.code).join(" ")}`;
      const before = found.get(same)?.strength;
      if (before === undefined || Number.parseFloat(before) < (given.percent ?? 100)) found.set(same, entry);
    }
  }
  return [...found.values()];
}

/** Mass fraction in percent. */
function percentOf(strength: string | undefined): number | undefined {
  return strength === undefined
    ? undefined
    : quantity(strength as "5 %")
        .in("%")
        .toNumber();
}

/** Each strength that was given or is sold, mass %; one of `undefined` where none is known. */
function percentsOf(text: string, formula: string, strength: string | undefined): (number | undefined)[] {
  if (strength !== undefined) return [percentOf(strength)];
  const sold = new Set(strengthsSoldAs(text, formula));
  return sold.size === 0 ? [undefined] : [...sold];
}

function checkedList(materials: unknown): readonly (string | MaterialOfStrength)[] {
  if (Array.isArray(materials) && materials.length <= MOST_MATERIALS) {
    guard.list(materials, "materials");
    return materials;
  }
  throw new SubstanceError("substance.bad-input", `expected a list of at most ${MOST_MATERIALS} materials`, {
    hint: 'give names or formulas, such as ["vinegar", "NaHCO3"]',
  });
}

const MOST_MATERIALS = 200;
const CIRCUMSTANCES: readonly Circumstance[] = ["closed vessel", "kitchen"];

function checkedCircumstances(options: CautionOptions | undefined): readonly Circumstance[] {
  const { circumstances = [] } = readableOptions(options, CAUTIONS);
  if (Array.isArray(circumstances) && circumstances.every((one) => CIRCUMSTANCES.includes(one))) return circumstances;
  throw badInput(`circumstances out of: ${CIRCUMSTANCES.join(", ")}`);
}

/**
 * What published classifications say about each material, and which of them must not meet. A material without an entry
 * says so and points to its safety data sheet; it is never called safe. A text that is not read is said aloud: no silence
 * covers it.
 *
 * @param materials - names, shop names or formulas; with `strength` (mass fraction in water) the statements that apply at
 * that strength, and rules for strong solutions left out at 10 % and below and met above; shop solutions as strong as they are sold; with
 * `inCylinder` a gas under pressure
 * @param options - `circumstances`: "closed vessel", "kitchen"
 * @returns one or more entries per material (a shop name may stand for several substances, a substance for several forms)
 * @throws {SubstanceError} `substance.bad-input`, `substance.too-long`; {@link QuantityError} for a strength that is none
 * @source CLP Annex VI (17th adaptation) and two national lists, as `source` of each entry and of each code says; paraphrases,
 * cautions and disposal notes are our own
 * @category Cautions
 * @example
 * cautions(["CuSO4·5H2O"]).substances[0]?.signalWord // => "Danger"
 * cautions(["CuSO4·5H2O"]).substances[0]?.statements[0]?.source // => "clpAnnexVI"
 * cautions(["CuSO4·3H2O"]).substances[0]?.classifiedAs // => "CuSO4"
 * cautions([{ material: "CH3COOH", strength: "20 %" }]).substances[0]?.statements.map((one) => one.code) // => ["H315", "H319"]
 * cautions(["white vinegar"]).substances[0]?.status // => "not classified"
 * cautions(["moon dust"]).substances[0]?.status // => "not read"
 * cautions(["viengar"]).notRead[0]?.nearest // => ["vinegar"]
 * cautions(["bleach", "vinegar"]).incompatibilities[0]?.code // => "hypochlorite-acid"
 */
export function cautions(materials: readonly (string | MaterialOfStrength)[], options?: CautionOptions): Cautions {
  return cautionsWhere(materials, checkedCircumstances(options));
}

/** The same, with what is known of the way the materials meet. */
export function cautionsWhere(
  materials: readonly (string | MaterialOfStrength)[],
  circumstances: readonly Circumstance[],
  meeting?: Meeting,
): Cautions {
  const list = checkedList(materials).map((one) => {
    if (typeof one === "object" && one !== null) guard.fields(one, OF_STRENGTH, "a material");
    const {
      material,
      strength,
      inCylinder = false,
    }: MaterialOfStrength = typeof one === "object" && one !== null ? one : { material: one };
    const text = readableText(material, "a name or a formula");
    const found = meanings(text);
    const asked = found.flatMap((meaning) =>
      percentsOf(text, meaning.formula, strength).map((percent): Asked => {
        return { ...meaning, inCylinder: inCylinder === true, ...(percent === undefined ? {} : { percent }) };
      }),
    );
    return { text, found, asked, percent: percentOf(strength) };
  });
  const met = list.flatMap(({ text, found, percent }) =>
    found.map((one) => classed(text, one.formula, one.notation, percent)),
  );
  return frozen({
    substances: list.flatMap(({ text, asked }) => entriesOf(text, asked)),
    notRead: list.filter(({ found }) => found.length === 0).map(({ text }) => notReadOf(text)),
    incompatibilities: incompatibilities(met, circumstances, meeting),
    closing: CLOSING,
  });
}

/**
 * As {@link cautions}, with the error returned instead of thrown.
 *
 * @category Cautions
 * @example
 * tryCautions([""]).ok // => false
 */
export function tryCautions(
  materials: readonly (string | MaterialOfStrength)[],
  options?: CautionOptions,
): Result<Cautions> {
  return attempt(() => cautions(materials, options));
}
