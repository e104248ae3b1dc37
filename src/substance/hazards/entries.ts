// What the classifications say of a formula, and which of several must not meet. No name is read here: a program that has
// formulas does not carry the tables of names and goods (`cautions.ts` reads them).

import { byElements } from "../../formula/internal";
import type { Fields } from "../../foundation/argument";
import { type Facts, ownRow } from "../../foundation/facts";
import { frozen } from "../../foundation/frozen";
import { readableInside } from "../../foundation/readable";
import { anhydrousKey, compositionKey, formulaKey, type Notation, readNotation, textOf } from "../../ion/internal";
import { guard, readableOptions } from "../argument";
import { FIRST_AID } from "../data/first-aid";
import { FOOD_ADDITIVES } from "../data/food-additives";
import { DISPOSAL, HAZARD_ENTRIES, HAZARD_FIELD_SOURCES, type HazardRow } from "../data/hazards";
import type { Circumstance } from "../data/incompatibilities";
import { KIN_ADVICE, NOT_LISTED } from "../data/not-listed";
import { PROTECTION_BY_CODE, type ProtectionKind } from "../data/protection";
import { cite, type SourceKey } from "../data/sources";
import { badInput, SubstanceError } from "../error";
import { pictogramsOf, signalWordOf, statementRow } from "../names/label-elements";
import { addTo } from "../names/multimap";
import { classesOf } from "./classes";
import { classed, DILUTE, type Incompatibility, incompatibilities, type Meeting } from "./incompatibility";
import { makeUpOf } from "./make-up";
import { dangerOf } from "./never-made";
import { type Diluted, dilutedEntry } from "./solution-limits";

const CAUTIONS = { circumstances: true, facts: true } as const satisfies Fields<CautionOptions>;

/** A statement code and our paraphrase of it. */
export interface Statement {
  /** As on the label: `H302`, `P280`. */
  readonly code: string;
  /** What it says, in our words. */
  readonly paraphrase: string;
  /** The classification, or `memory` for a code of ordinary safety data sheets that the classification leaves out. */
  readonly source: SourceKey;
}

/** What was found where the hazards of a material were looked up. */
export type HazardStatus = "classified" | "not classified" | "food" | "not listed" | "not looked up" | "not read";

/** What is known of one material. */
export interface SubstanceCautions {
  /** The text that was asked for. */
  readonly material: string;
  /** Formula, where the material has one. */
  readonly formula?: string;
  /**
   * `classified`, `not classified` (the source lists no hazard: not the same as safe), `food` (no entry, but sold as food or
   * as a food additive), `not listed` (looked up in the harmonised list: neither an entry nor a group), `not looked up` (no
   * list was read for it), or `not read` (the text is no name and no formula that is known here: nothing was looked up).
   */
  readonly status: HazardStatus;
  /** Number of a food additive, such as `E 515`. */
  readonly additive?: string;
  /** The form the entry is about: solution, gas, powder ... */
  readonly form?: string;
  /** Mass fraction the entry was read for, where it was given or a shop sells the good at it (its strongest). */
  readonly strength?: string;
  /** GHS pictograms by code, with what each says. */
  readonly pictograms: readonly { readonly code: string; readonly paraphrase: string }[];
  /** The stronger of the signal words of its statements. */
  readonly signalWord?: "Danger" | "Warning";
  /** Hazard statements by code. */
  readonly statements: readonly Statement[];
  /** What to mind at the bench, beyond the statements. */
  readonly cautions: readonly string[];
  /** What to do first if it goes wrong, by where it went; from the statement codes. */
  readonly firstAid: readonly string[];
  /** What protects from it, from the statement codes. */
  readonly protection: readonly string[];
  /** What becomes of what is left. */
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

/** What else matters for which materials may meet. */
export interface CautionOptions {
  /** Where the work is done, if in a closed vessel or a kitchen. */
  readonly circumstances?: readonly Circumstance[];
  /** Facts of the caller's own: their hazards and rules are added to those of the library and take none away. */
  readonly facts?: Facts | undefined;
}

/** A text that is no name and no formula known here. */
export interface NotRead {
  /** The text that was asked for. */
  readonly material: string;
  /** Names that are near to it. */
  readonly nearest: readonly string[];
}

/** The answer for a set of materials. */
export interface Cautions {
  /** One entry for each material, in the order given. */
  readonly substances: readonly SubstanceCautions[];
  /** Texts that were not read: what is said below does not cover them. */
  readonly notRead: readonly NotRead[];
  /** What must not meet, the blocking ones first. */
  readonly incompatibilities: readonly Incompatibility[];
  /** To be printed under everything above. */
  readonly closing: string;
}

const NOT_LOOKED_UP = "not looked up in any list here: read the safety data sheet";
const NOT_LISTED_TEXT = "not in the harmonised list of the EU: its safety data sheet says what the supplier found";
const CLOSING =
  "Reminders only. The product's safety data sheet, the rules of the place and a qualified person decide, not this text.";
const NO_DISPOSAL = "Ask hazardous-waste collection; the local rules decide.";

const entriesWith = /* @__PURE__ */ byElements(
  HAZARD_ENTRIES,
  ({ formula }) => formula,
  (rows) => {
    const byFormula = new Map<string, HazardRow[]>();
    const byCore = new Map<string, HazardRow[]>();
    for (const row of rows) {
      const notation = readNotation(row.formula!);
      addTo(byFormula, formulaKey(notation), row);
      addTo(byCore, anhydrousKey(notation).key, row);
    }
    return { byFormula, byCore };
  },
);

/** Our paraphrase of a code; a suffix (`H360FD`, `H350i`) falls back to the bare number. */
function paraphraseOf(code: string): string | undefined {
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
  { group: "lead compounds", covers: /* @__PURE__ */ holds("Pb") },
  { group: "cadmium compounds", covers: /* @__PURE__ */ holds("Cd") },
  { group: "mercury compounds", covers: /* @__PURE__ */ holds("Hg"), except: /* @__PURE__ */ among("HgS") },
  { group: "arsenic compounds", covers: /* @__PURE__ */ holds("As") },
  { group: "thallium compounds", covers: /* @__PURE__ */ holds("Tl") },
  { group: "beryllium compounds", covers: /* @__PURE__ */ holds("Be") },
  { group: "salts of hydrogen cyanide", covers: (notation) => classesOf(notation).has("cyanide") },
  { group: "nickel compounds", covers: /* @__PURE__ */ holds("Ni") },
  { group: "cobalt compounds", covers: /* @__PURE__ */ holds("Co") },
  {
    group: "tetrachloridoplatinates and hexachloridoplatinates",
    covers: ({ parts }) => parts.some(({ counts }) => counts.has("Pt") && counts.has("Cl")),
  },
  {
    group: "hydrazine salts",
    covers: ({ parts }) =>
      parts.some((part) => makeUpOf(part).cations.some(({ symbol }) => symbol === "N2H5")) ||
      (parts.some(({ counts }) => compositionKey(counts) === "H4 N2") && parts.some((part) => makeUpOf(part).isAcid)),
  },
  { group: "uranium compounds", covers: /* @__PURE__ */ holds("U") },
  { group: "selenium compounds", covers: /* @__PURE__ */ holds("Se") },
  {
    group: "antimony compounds",
    covers: /* @__PURE__ */ holds("Sb"),
    except: /* @__PURE__ */ among("Sb2O4", "Sb2O5", "Sb2S3", "Sb2S5"),
  },
  { group: "barium salts", covers: /* @__PURE__ */ holds("Ba"), except: /* @__PURE__ */ among("BaSO4") },
  {
    group: "fluorosilicates",
    covers: ({ parts }) => parts.some(({ counts }) => counts.has("Si") && counts.get("F") === 6 * counts.get("Si")!),
  },
  { group: "thiocyanates", covers: ({ parts }) => parts.some((part) => makeUpOf(part).groups.includes("thiocyanate")) },
  { group: "salts of oxalic acid", covers: (notation) => classesOf(notation).has("oxalate") },
  {
    group: "soluble fluorides",
    covers: (notation) => classesOf(notation).has("fluoride"),
    except: /* @__PURE__ */ among("CaF2", "MgF2", "SrF2", "AlF3", "Ca5(PO4)3F", "KLi2AlSi4O10F2"),
  },
  { group: "nitrites", covers: (notation) => classesOf(notation).has("nitrite") },
  { group: "salts of acids that feed a fire", covers: (notation) => classesOf(notation).has("oxidiser") },
];

function groupOf(notation: Notation): HazardRow | undefined {
  const hit = GROUPS.find(({ covers, except }) => covers(notation) && except?.(notation) !== true);
  return hit === undefined ? undefined : HAZARD_ENTRIES().find(({ group }) => group === hit.group);
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
  const { byFormula, byCore } = entriesWith(textOf(notation));
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

/** Rows by substance, crystal water aside. */
const byCore = <Row extends { readonly formula: string }>(rows: readonly Row[]): ReadonlyMap<string, Row> =>
  new Map(rows.map((row) => [anhydrousKey(readNotation(row.formula)).key, row]));

const additives = /* @__PURE__ */ byElements(FOOD_ADDITIVES, ({ formula }) => formula, byCore);

const unlisted = /* @__PURE__ */ byElements(
  () => NOT_LISTED().flatMap(({ formulas, source }) => formulas.map((formula) => ({ formula, source }))),
  ({ formula }) => formula,
  byCore,
);

/** What is known of the element that matters most. */
const kinOf = ({ parts }: Notation): (typeof KIN_ADVICE)[number] | undefined =>
  KIN_ADVICE.find(({ element }) => parts.some(({ counts }) => counts.has(element)));

function noEntry(material: string, { formula, notation }: Asked): SubstanceCautions {
  const { key } = anhydrousKey(notation);
  const text = textOf(notation);
  const food = additives(text).get(key);
  const source = food?.source ?? unlisted(text).get(key)?.source;
  const kin = food === undefined ? kinOf(notation) : undefined;
  const danger = dangerOf(notation);
  const deadly = danger === undefined || danger.opens ? [] : [`${danger.name}: ${DEADLY[danger.code]}`];
  const says = food !== undefined ? foodText(food.number) : source === undefined ? NOT_LOOKED_UP : undefined;
  return {
    material,
    formula,
    status: food !== undefined ? "food" : source === undefined ? "not looked up" : "not listed",
    ...(food?.number === undefined ? {} : { additive: food.number }),
    pictograms: [],
    statements: [],
    cautions: [...deadly, ...(says === undefined ? [] : [says]), ...(kin === undefined ? [] : [kin.text])],
    firstAid: [],
    protection: [],
    disposal: kin === undefined ? NO_DISPOSAL : DISPOSAL[kin.disposal],
    notes:
      food === undefined
        ? source === undefined
          ? []
          : [NOT_LISTED_TEXT]
        : ["never eat what has been in a workshop; other grades may contain more"],
    ...(source === undefined ? {} : { source, citation: cite(source) }),
    adviceSource: HAZARD_FIELD_SOURCES.cautions,
  };
}

const foodText = (number: string | undefined): string =>
  number === undefined ? "a food: no hazard is listed here" : `a food additive (${number}): no hazard is listed here`;

/** The first lines for a set of codes: of each place the gravest row. */
export function firstAidFor(codes: readonly string[]): string[] {
  const bare = codes.map((code) => code.slice(0, 4));
  const said = new Map<string, string>();
  for (const { codes: asking, when, does } of FIRST_AID()) {
    if (!said.has(when) && asking.some((code) => bare.includes(code))) said.set(when, `${when}: ${does}`);
  }
  return [...said.values()];
}

/** The protection that a set of codes asks for, a line of each kind. */
export function protectionFor(codes: readonly string[]): readonly { kind: ProtectionKind; does: string }[] {
  const bare = new Set(codes.flatMap((code) => [code, code.slice(0, 4)]));
  return PROTECTION_BY_CODE().filter((row) => row.codes.some((code) => bare.has(code)));
}

/** What is said of a substance that no plan makes. */
const DEADLY: Readonly<Record<string, string>> = {
  explosive:
    "goes off at a touch, spark or knock; do not make it, move it or throw it away: call those who remove explosives",
  "deadly-gas": "a breath of it kills; do not make it",
};

function unread(material: string, nearest: readonly string[]): SubstanceCautions {
  const near = nearest.length === 0 ? [] : [`did you mean ${nearest.join(" or ")}`];
  return {
    material,
    status: "not read",
    pictograms: [],
    statements: [],
    firstAid: [],
    protection: [],
    cautions: [[`not read: "${material}" is not a name or formula known here`, ...near].join("; ")],
    disposal: NO_DISPOSAL,
    notes: ["not known here, so nothing is said of what it must not meet", ...near],
    adviceSource: HAZARD_FIELD_SOURCES.cautions,
  };
}

/** A good that no formula stands for. */
const withoutFormula = (material: string, what: string): SubstanceCautions => ({
  material,
  status: "not looked up",
  pictograms: [],
  statements: [],
  firstAid: [],
  protection: [],
  cautions: [NOT_LOOKED_UP],
  disposal: NO_DISPOSAL,
  notes: [`${what}: no formula stands for it, so nothing is said of what it must not meet`],
  adviceSource: HAZARD_FIELD_SOURCES.cautions,
});

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
export interface Asked {
  /** The text that was asked for. */
  readonly given: string;
  readonly formula: string;
  readonly notation: Notation;
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
    cautions: [
      ...(diluted?.cautions ?? row.cautions ?? []),
      ...(row.frozen?.name === given.given.trim().toLowerCase() ? row.frozen.cautions : []),
    ],
    firstAid: firstAidFor(codes),
    protection: protectionFor(codes).map(({ does }) => does),
    disposal: DISPOSAL[row.disposal],
    ...(classifiedAs === undefined ? {} : { classifiedAs }),
    notes: notesOf(row, how, classifiedAs, given, diluted),
    source: diluted?.source ?? row.source,
    citation: row.index === undefined ? cite(row.source) : `${cite(diluted?.source ?? row.source)}, index ${row.index}`,
    adviceSource: HAZARD_FIELD_SOURCES.cautions,
  };
}

/** What the caller's own facts add to an entry; the row does it itself, so that nobody without such rows carries it. */
export type AddsHazard = (entry: SubstanceCautions) => SubstanceCautions;

const withOwn = (entry: SubstanceCautions, notation: Notation): SubstanceCautions =>
  ownRow<AddsHazard>("hazards", () => anhydrousKey(notation).key)?.(entry) ?? entry;

const CYLINDER = "H280";
const percentText = (percent: number): string => `${Number(percent.toPrecision(3))} %`;

/** What is said of a text, for each formula it may stand for. */
function entriesOf({ text, asked, nearest }: Asking): SubstanceCautions[] {
  if (asked.length === 0) return [unread(text, nearest)];
  const found = new Map<string, SubstanceCautions>();
  for (const given of asked) {
    const { rows: all, how } = rowsFor(given.notation);
    const rows = ofStrength(all, given.percent);
    for (const entry of (rows.length === 0 ? [noEntry(text, given)] : rows.map((row) => fromRow(given, row, how))).map(
      (one) => withOwn(one, given.notation),
    )) {
      // two goods of one name that say the same: the stronger stands for both
      const same = `${entry.formula} ${entry.form} ${entry.statements.map((one) => one.code).join(" ")}`;
      const before = found.get(same)?.strength;
      if (before === undefined || Number.parseFloat(before) < (given.percent ?? 100)) found.set(same, entry);
    }
  }
  return [...found.values()];
}

const MOST_MATERIALS = 200;
const CIRCUMSTANCES: readonly Circumstance[] = ["closed vessel", "kitchen"];

/** The circumstances that the options name. */
export function checkedCircumstances(options: CautionOptions | undefined): readonly Circumstance[] {
  const { circumstances = [] } = readableOptions(options, CAUTIONS);
  if (Array.isArray(circumstances) && circumstances.every((one) => CIRCUMSTANCES.includes(one))) return circumstances;
  throw badInput(`circumstances out of: ${CIRCUMSTANCES.join(", ")}`);
}

/** A list of materials, not too long. */
export function checkedList<T>(materials: readonly T[]): readonly T[] {
  if (Array.isArray(materials) && materials.length <= MOST_MATERIALS) {
    guard.list(materials, "materials");
    return materials;
  }
  throw new SubstanceError("substance.bad-input", `expected a list of at most ${MOST_MATERIALS} materials`, {
    hint: 'give names or formulas, such as ["vinegar", "NaHCO3"]',
  });
}

/** One text that was asked about. */
export interface Asking {
  readonly text: string;
  /** What it stands for; empty where it was not read. */
  readonly asked: readonly Asked[];
  /** Mass %, where it was given. */
  readonly percent: number | undefined;
  /** Names near to a text that was not read. */
  readonly nearest: readonly string[];
  /** What the text means, where it is a good without a formula. */
  readonly good?: string;
}

/**
 * The strongest that a good is sold at, where that is dilute: vinegar is no strong acid. A stronger one rules nothing out,
 * since what a can of acid holds is only usual, and it grows stronger as it dries; undefined then.
 */
function soldDilute(asked: readonly Asked[], formula: string): number | undefined {
  const percents = asked.filter((one) => one.formula === formula).map((one) => one.percent ?? 100);
  const most = Math.max(...percents);
  return most <= DILUTE ? most : undefined;
}

/** What is said of each text, and which of them must not meet. */
export function cautionsOver(
  list: readonly Asking[],
  circumstances: readonly Circumstance[],
  meeting?: Meeting,
): Cautions {
  const met = list.flatMap(({ text, asked, percent }) => {
    const formulas = new Map(asked.map((one) => [one.formula, one.notation]));
    return [...formulas].map(([formula, notation]) =>
      classed(text, formula, notation, percent ?? soldDilute(asked, formula)),
    );
  });
  return frozen(
    {
      substances: list.flatMap((one) =>
        one.good === undefined ? entriesOf(one) : [withoutFormula(one.text, one.good)],
      ),
      notRead: list
        .filter(({ asked, good }) => asked.length === 0 && good === undefined)
        .map(({ text, nearest }) => ({ material: text, nearest })),
      incompatibilities: incompatibilities(met, circumstances, meeting),
      closing: CLOSING,
    },
    readableInside,
  );
}
