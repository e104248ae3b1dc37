// What the classifications say of a formula, and which of several must not meet. No name is read here: a program that has
// formulas does not carry the tables of names and goods (`cautions.ts` reads them).

import type { Fields } from "../../foundation/argument";
import { type Facts, ownRow } from "../../foundation/facts";
import { frozen } from "../../foundation/frozen";
import { readableInside } from "../../foundation/readable";
import { list } from "../../foundation/wording";
import { anhydrousKey, type Notation } from "../../ion/internal";
import { guard, readableOptions } from "../argument";
import { DISPOSAL, HAZARD_FIELD_SOURCES, type HazardRow, type SolidForm } from "../data/hazards";
import type { Circumstance } from "../data/incompatibilities";
import { citeHazard, type HazardSourceKey } from "../data/sources";
import { badInput, SubstanceError } from "../error";
import { pictogramsOf, signalWordOf, statementRow } from "../names/label-elements";
import { firstAidFor, protectionFor } from "./advice";
import type { Asked, SubstanceCautions } from "./entry";
import { ofState, ofStrength, rowsFor } from "./hazard-rows";
import { classed, DILUTE, type Incompatibility, incompatibilities, type Meeting } from "./incompatibility";
import { noEntry, unread, withoutFormula } from "./no-entry";
import { type Diluted, dilutedEntry, dissolvedEntry } from "./solution-limits";

const CAUTIONS = { circumstances: true, facts: true } as const satisfies Fields<CautionOptions>;

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

const STATES: readonly SolidForm[] = ["massive", "powder", "crystalline", "amorphous"];

/** A physical form that the tables tell apart. */
export function checkedState(state: SolidForm): SolidForm {
  if (STATES.includes(state)) return state;
  throw badInput(`state out of: ${STATES.join(", ")}`);
}

const CLOSING =
  "Reminders only. The product's safety data sheet, the rules of the place and a qualified person decide, not this text.";
/** Our paraphrase of a code; a suffix (`H360FD`, `H350i`) falls back to the bare number. */
function paraphraseOf(code: string): string | undefined {
  return statementRow(code)?.paraphrase;
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
  if (how === "group") notes.push(`no entry for ${formula} itself: taken as for the group, ${classifiedAs}`);
  else if (classifiedAs !== undefined) notes.push(`classified as ${classifiedAs}, not as ${formula}`);
  if (diluted !== undefined) notes.push(diluted.note);
  else if (row.concentrationLimits)
    notes.push("the entry has concentration limits of its own that are not stored here");
  if (row.gas && !given.inCylinder) notes.push("from a cylinder it is a gas under pressure as well (H280)");
  if (row.minimum) notes.push("some categories are minimum classifications: the supplier may add to them");
  if ((row.codes ?? []).length === 0 && diluted === undefined)
    notes.push("no classification in the source: that does not make it safe");
  if (row.notified !== undefined)
    notes.push(
      `suppliers notify ${list(row.notified.codes)}, which the entry has not: ${citeHazard(row.notified.source)}`,
    );
  if (row.source === "memory") notes.push("from memory of ordinary safety data sheets, not confirmed");
  return notes;
}

function fromRow(given: Asked, row: HazardRow, how: "own" | "hydrate" | "group"): SubstanceCautions {
  const stand = row.classifiedAs ?? (how === "own" ? undefined : (row.group ?? row.formula));
  const classifiedAs = stand === given.formula ? undefined : stand;
  const { percent } = given;
  const diluted =
    percent !== undefined
      ? dilutedEntry(given.notation, row, percent)
      : given.dissolved === true
        ? dissolvedEntry(given.notation, row)
        : undefined;
  // What keeps all its statements in water is minded as if it were dry.
  const isThin = diluted !== undefined && diluted.dried.length > 0;
  const own = diluted?.codes ?? row.codes ?? [];
  const codes = row.gas && given.inCylinder ? [...own, CYLINDER] : own;
  const signalWord = signalWordOf(codes, diluted?.weaker ?? row.weaker);
  const sourceOf = (code: string): HazardSourceKey => {
    if (code === CYLINDER || row.codesFromMemory?.includes(code)) return HAZARD_FIELD_SOURCES.codesFromMemory;
    if (row.notified?.codes.includes(code)) return row.notified.source;
    return diluted?.source ?? row.joined?.find(({ codes: all }) => all?.includes(code))?.source ?? row.source;
  };
  return {
    material: given.given,
    formula: given.formula,
    status: codes.length > 0 ? "classified" : "not classified",
    ...(row.form === undefined ? {} : { form: row.form }),
    ...(percent === undefined ? {} : { strength: percentText(percent) }),
    ...(diluted !== undefined && percent === undefined ? { dissolved: true as const } : {}),
    pictograms: pictogramsOf(codes).map((code) => ({ code, paraphrase: paraphraseOf(code)! })),
    ...(signalWord === undefined ? {} : { signalWord }),
    statements: codes.map((code) => ({ code, paraphrase: paraphraseOf(code)!, source: sourceOf(code) })),
    cautions: [
      ...(diluted?.cautions ?? [...(row.cautions ?? []), ...(isThin ? [] : (row.dry ?? []))]),
      ...(diluted?.dried ?? []),
      ...(row.frozen?.name === given.given.trim().toLowerCase() ? row.frozen.cautions : []),
    ],
    firstAid: firstAidFor(codes),
    protection: protectionFor(codes).map(({ does }) => does),
    disposal: DISPOSAL[row.disposal],
    ...(classifiedAs === undefined ? {} : { classifiedAs }),
    notes: notesOf(row, how, classifiedAs, given, diluted),
    source: diluted?.source ?? row.source,
    citation: citationOf(row, diluted?.source),
    adviceSource: HAZARD_FIELD_SOURCES.cautions,
  };
}

/** The source in words, with the index number where there is one; of entries that were joined each source with its numbers. */
function citationOf(row: HazardRow, diluted: HazardSourceKey | undefined): string {
  const { joined, index, source } = row;
  if (joined === undefined || diluted !== undefined)
    return index === undefined ? citeHazard(source) : `${citeHazard(diluted ?? source)}, index ${index}`;
  const sources = [...new Set(joined.map((one) => one.source))];
  return sources
    .map((one) => {
      const numbers = joined.flatMap((own) => (own.source === one && own.index !== undefined ? [own.index] : []));
      return numbers.length === 0 ? citeHazard(one) : `${citeHazard(one)}, index ${list(numbers)}`;
    })
    .join("; ");
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
    const rows = ofState(ofStrength(all, given.percent), given);
    for (const entry of (rows.length === 0 ? [noEntry(text, given)] : rows.map((row) => fromRow(given, row, how))).map(
      (one) => withOwn(one, given.notation),
    )) {
      // two goods of one name that say the same: the stronger stands for both
      const same = `${entry.formula} ${entry.form} ${entry.dissolved} ${entry.statements.map((one) => one.code).join(" ")}`;
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
