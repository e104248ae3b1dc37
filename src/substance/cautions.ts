// What published classifications say about each material, and which of them must not meet. Reminders, not training:
// every answer ends by deferring to the safety data sheet, the local rules and a qualified person.
import { cite, type SourceKey } from "../foundation";
import { attempt, type Result } from "../foundation/error";
import { quantity } from "../quantity";
import { classesOf } from "./classes";
import { DISPOSAL, HAZARD_FIELD_SOURCES, HAZARDS, type HazardRow } from "./data/hazards";
import type { Circumstance } from "./data/incompatibilities";
import { HAZARD_STATEMENTS, PICTOGRAMS, SUPPLEMENTAL_STATEMENTS } from "./data/statements";
import { badInput, readableOptions, readableText, SubstanceError } from "./error";
import { classed, type Incompatibility, incompatibilities } from "./incompatibility";
import { addTo } from "./multimap";
import { anhydrousKey, formulaKey, type Notation, readNotation, tryReadNotation } from "./notation";
import { type Resolved, resolveAll } from "./resolve";
import { formulasSoldAs, tryShopMaterial } from "./shop";

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
  /** `classified`, `not classified` (the source lists no hazard: not the same as safe), or `no entry`. */
  readonly status: "classified" | "not classified" | "no entry";
  /** The form the entry is about: solution, gas, powder ... */
  readonly form?: string;
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

/** A material with its strength, for rules that only hold for strong solutions. */
export interface MaterialOfStrength {
  readonly material: string;
  /** Mass fraction, such as "5 %". */
  readonly strength: string;
}

/** What else matters for which materials may meet. */
export interface CautionOptions {
  /** Where the work is done, if in a closed vessel or a kitchen. */
  readonly circumstances?: readonly Circumstance[];
}

/** The answer for a set of materials. */
export interface Cautions {
  readonly substances: readonly SubstanceCautions[];
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
  readonly paraphrases: ReadonlyMap<string, string>;
}

let built: HazardIndex | undefined;

function hazardIndex(): HazardIndex {
  if (built !== undefined) return built;
  const byFormula = new Map<string, HazardRow[]>();
  const byCore = new Map<string, HazardRow[]>();
  const groups = new Map<string, HazardRow>();
  for (const row of HAZARDS) {
    if (row.group !== undefined) groups.set(row.group, row);
    if (row.formula === undefined) continue;
    const notation = readNotation(row.formula);
    addTo(byFormula, formulaKey(notation), row);
    addTo(byCore, anhydrousKey(notation).key, row);
  }
  const paraphrases = new Map(
    [...PICTOGRAMS, ...HAZARD_STATEMENTS, ...SUPPLEMENTAL_STATEMENTS].map((row) => [row.code, row.paraphrase] as const),
  );
  built = { byFormula, byCore, groups, paraphrases };
  return built;
}

/** Our paraphrase of a code; a suffix (`H360FD`, `H350i`) falls back to the bare number. */
export function paraphraseOf(code: string): string | undefined {
  const { paraphrases } = hazardIndex();
  return paraphrases.get(code) ?? paraphrases.get(code.replace(/[A-Za-z]+$/, ""));
}

/** Groups that stand in where a compound has no entry of its own: by element, and what is left out. */
const GROUPS: readonly { readonly group: string; readonly covers: (counts: ReadonlyMap<string, number>) => boolean }[] =
  [
    { group: "lead compounds", covers: (c) => c.has("Pb") && c.size > 1 },
    { group: "cadmium compounds", covers: (c) => c.has("Cd") && c.size > 1 },
    { group: "mercury compounds", covers: (c) => c.has("Hg") && c.size > 1 },
    { group: "arsenic compounds", covers: (c) => c.has("As") && c.size > 1 },
    { group: "barium salts", covers: (c) => c.has("Ba") && c.size > 1 },
  ];

function groupOf(notation: Notation): HazardRow | undefined {
  const { byFormula, groups } = hazardIndex();
  const classes = classesOf(notation);
  if (classes.has("chromium(VI)")) return groups.get("chromium(VI) compounds");
  const all = new Map(notation.parts.flatMap((part) => [...part.counts]));
  const hit = GROUPS.find(({ covers }) => covers(all));
  if (hit !== undefined) return groups.get(hit.group);
  // one harmonised entry for the salts of oxalic acid; the table lists it under the sodium salt
  if (classes.has("oxalate")) return byFormula.get(formulaKey(readNotation("Na2C2O4")))?.[0];
  return undefined;
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

function noEntry(material: string, formula: string | undefined): SubstanceCautions {
  return {
    material,
    ...(formula === undefined ? {} : { formula }),
    status: "no entry",
    pictograms: [],
    statements: [],
    cautions: [NO_ENTRY],
    disposal: NO_DISPOSAL,
    notes: formula === undefined ? ["not known here, so nothing is said of what it must not meet"] : [],
    adviceSource: HAZARD_FIELD_SOURCES.cautions,
  };
}

function notesOf(
  row: HazardRow,
  how: "own" | "hydrate" | "group",
  classifiedAs: string | undefined,
  formula: string,
): string[] {
  const notes: string[] = [];
  if (how === "group") notes.push(`no entry for ${formula} itself: the entry for ${classifiedAs} stands in`);
  else if (classifiedAs !== undefined) notes.push(`classified as ${classifiedAs}, not as ${formula}`);
  if (row.concentrationLimits) notes.push("the entry holds concentration limits: dilute solutions classify lower");
  if (row.minimum) notes.push("some categories are minimum classifications: the supplier may add to them");
  if ((row.codes ?? []).length === 0) notes.push("no classification in the source: that does not make it safe");
  if (row.source === "memory") notes.push("from memory of ordinary safety data sheets, not confirmed");
  return notes;
}

function fromRow(given: Resolved, row: HazardRow, how: "own" | "hydrate" | "group"): SubstanceCautions {
  const stand = row.classifiedAs ?? (how === "own" ? undefined : (row.group ?? row.formula));
  const classifiedAs = stand === given.formula ? undefined : stand;
  const codes = row.codes ?? [];
  return {
    material: given.given,
    formula: given.formula,
    status: codes.length > 0 ? "classified" : "not classified",
    ...(row.form === undefined ? {} : { form: row.form }),
    pictograms: (row.pictograms ?? []).map((code) => ({ code, paraphrase: paraphraseOf(code)! })),
    ...(row.signalWord === undefined ? {} : { signalWord: row.signalWord }),
    statements: codes.map((code) => ({
      code,
      paraphrase: paraphraseOf(code)!,
      source: row.codesFromMemory?.includes(code) ? HAZARD_FIELD_SOURCES.codesFromMemory : row.source,
    })),
    cautions: row.cautions ?? [],
    disposal: DISPOSAL[row.disposal],
    ...(classifiedAs === undefined ? {} : { classifiedAs }),
    notes: notesOf(row, how, classifiedAs, given.formula),
    source: row.source,
    citation: row.index === undefined ? cite(row.source) : `${cite(row.source)}, index ${row.index}`,
    adviceSource: HAZARD_FIELD_SOURCES.cautions,
  };
}

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

function entriesOf(text: string, found: readonly Resolved[]): SubstanceCautions[] {
  if (found.length === 0) return [noEntry(text, undefined)];
  return found.flatMap((given) => {
    const { rows, how } = rowsFor(given.notation);
    return rows.length === 0 ? [noEntry(text, given.formula)] : rows.map((row) => fromRow(given, row, how));
  });
}

/** At most a tenth by mass: vinegar, household ammonia, pharmacy peroxide. */
const DILUTE = "10 %";

function isDilute(strength: string | undefined): boolean {
  return strength !== undefined && quantity(strength as "5 %").compare(quantity(DILUTE)) <= 0;
}

function checkedList(materials: unknown): readonly (string | MaterialOfStrength)[] {
  if (Array.isArray(materials) && materials.length <= MOST_MATERIALS) return materials;
  throw new SubstanceError("substance.bad-input", `expected a list of at most ${MOST_MATERIALS} materials`, {
    hint: 'give names or formulas, such as ["vinegar", "NaHCO3"]',
  });
}

const MOST_MATERIALS = 200;
const CIRCUMSTANCES: readonly Circumstance[] = ["closed vessel", "kitchen"];

function checkedCircumstances(options: CautionOptions | undefined): readonly Circumstance[] {
  const { circumstances = [] } = readableOptions(options) as CautionOptions;
  if (Array.isArray(circumstances) && circumstances.every((one) => CIRCUMSTANCES.includes(one))) return circumstances;
  throw badInput(`circumstances out of: ${CIRCUMSTANCES.join(", ")}`);
}

/**
 * What published classifications say about each material, and which of them must not meet. A material without an entry
 * says so and points to its safety data sheet; it is never called safe.
 *
 * @param materials - names, shop names or formulas; with `strength` (mass fraction) rules for strong solutions are left
 * out at 10 % and below
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
 * cautions(["moon dust"]).substances[0]?.cautions // => ["no entry: read the safety data sheet"]
 * cautions(["bleach", "vinegar"]).incompatibilities[0]?.code // => "hypochlorite-acid"
 */
export function cautions(materials: readonly (string | MaterialOfStrength)[], options?: CautionOptions): Cautions {
  const circumstances = checkedCircumstances(options);
  const list = checkedList(materials).map((one) => {
    const { material, strength } = typeof one === "object" && one !== null ? one : { material: one };
    const text = readableText(material, "a name or a formula");
    return { text, found: meanings(text), dilute: isDilute(strength) };
  });
  const met = list.flatMap(({ text, found, dilute }) =>
    found.map((one) => classed(text, one.formula, one.notation, dilute)),
  );
  return {
    substances: list.flatMap(({ text, found }) => entriesOf(text, found)),
    incompatibilities: incompatibilities(met, circumstances),
    closing: CLOSING,
  };
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
