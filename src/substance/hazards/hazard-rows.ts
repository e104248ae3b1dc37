// Which rows of the classifications are meant by a formula: its own, those of its kin by crystal water, or those of a group.
import { byElements } from "../../formula/internal";
import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import {
  anhydrousKey,
  compositionKey,
  formulaKey,
  isWater,
  type Notation,
  readNotation,
  textOf,
} from "../../ion/internal";
import { HAZARD_ENTRIES, type HazardRow } from "../data/hazards";
import { addTo } from "../names/multimap";
import { classesOf } from "./classes";
import type { Asked } from "./entry";
import { gravest } from "./gravest";
import { makeUpOf } from "./make-up";
import { solidFormsIn } from "./solid-form";

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

const isFluorosilicate = ({ parts }: Notation): boolean =>
  parts.some(({ counts }) => counts.has("Si") && counts.get("F") === 6 * counts.get("Si")!);

const isSparingFluoride = /* @__PURE__ */ among("CaF2", "MgF2", "SrF2", "AlF3", "PbF2", "Ca5(PO4)3F", "KLi2AlSi4O10F2");

/** Groups that stand in where a compound has no entry of its own, the heavier first. */
const GROUPS: readonly Group[] = [
  { group: "chromium(VI) compounds", covers: (notation) => classesOf(notation).has("chromium(VI)") },
  { group: "lead compounds", covers: /* @__PURE__ */ holds("Pb") },
  { group: "cadmium compounds", covers: /* @__PURE__ */ holds("Cd") },
  { group: "mercury compounds", covers: /* @__PURE__ */ holds("Hg"), except: /* @__PURE__ */ among("HgS") },
  { group: "arsenic compounds", covers: /* @__PURE__ */ holds("As") },
  { group: "thallium compounds", covers: /* @__PURE__ */ holds("Tl") },
  {
    group: "beryllium compounds",
    covers: /* @__PURE__ */ holds("Be"),
    // aluminium beryllium silicates
    except: /* @__PURE__ */ holds("Be", "Al", "Si", "O"),
  },
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
  { group: "fluorosilicates", covers: isFluorosilicate },
  { group: "thiocyanates", covers: ({ parts }) => parts.some((part) => makeUpOf(part).groups.includes("thiocyanate")) },
  { group: "salts of oxalic acid", covers: (notation) => classesOf(notation).has("oxalate") },
  {
    group: "soluble fluorides",
    covers: (notation) => classesOf(notation).has("fluoride"),
    // fluorosilicates are a group of their own, of less fluoride
    except: (notation) => isSparingFluoride(notation) || isFluorosilicate(notation),
  },
  {
    group: "nitrites",
    covers: (notation) => classesOf(notation).has("nitrite"),
    // held by the metal of a complex it is no nitrite ion
    except: (notation) => constitutionOf(textOf(notation)).complex !== undefined,
  },
  {
    group: "salts of acids that feed a fire",
    covers: (notation) => classesOf(notation).has("oxidiser"),
    // the harmonised entries of single chromates have no such statement
    except: (notation) => classesOf(notation).has("chromium(VI)"),
  },
];

const each = <T>(items: readonly T[]): T[] => [...new Set(items)];

/** Entries of several groups that cover one substance, as one: of each hazard the graver classification. */
function together(rows: readonly HazardRow[]): HazardRow {
  const [first, ...others] = rows as readonly [HazardRow, ...HazardRow[]];
  if (others.length === 0) return first;
  const codes = gravest(rows.flatMap((row) => row.codes ?? []));
  const read = rows.filter(({ source }) => source !== "memory");
  const wasRead = (code: string): boolean =>
    read.some((row) => row.codes?.includes(code) === true && row.codesFromMemory?.includes(code) !== true);
  const known = read.length === 0 ? rows : read;
  const { source } = known[0]!;
  const index = read.flatMap((row) => (row.index === undefined ? [] : [row.index]));
  return {
    group: list(rows.map(({ group }) => group!)),
    codes,
    codesFromMemory: codes.filter((code) => !wasRead(code)),
    ...(rows.some(({ minimum }) => minimum) ? { minimum: true } : {}),
    ...(rows.some(({ concentrationLimits }) => concentrationLimits) ? { concentrationLimits: true } : {}),
    cautions: each(rows.flatMap(({ cautions = [] }) => cautions)),
    dry: each(rows.flatMap(({ dry = [] }) => dry)),
    disposal: first.disposal,
    ...(index.length === 0 ? {} : { index: list(index) }),
    joined: known,
    source,
  };
}

/** What the groups say that cover a compound; undefined where none does. */
function groupOf(notation: Notation): HazardRow | undefined {
  const hits = GROUPS.filter(({ covers, except }) => covers(notation) && except?.(notation) !== true);
  if (hits.length === 0) return undefined;
  return together(hits.map((hit) => HAZARD_ENTRIES().find(({ group }) => group === hit.group)!));
}

/** Entries meant for the strength; where it is not known, those that are only meant for strong solutions are left out. */
export function ofStrength(rows: readonly HazardRow[], percent: number | undefined): readonly HazardRow[] {
  return rows.filter(({ upTo, above, gas }) => {
    if (percent === undefined) return above === undefined;
    if (gas && rows.length > 1) return false;
    return (upTo === undefined || percent <= Number(upTo)) && (above === undefined || percent > Number(above));
  });
}

/** Entries for the form that a solid is in, by its name or as stated; all where nothing says it, or none is about that form. */
export function ofState(rows: readonly HazardRow[], { given, state }: Asked): readonly HazardRow[] {
  if (rows.every((row) => row.state === undefined)) return rows;
  const said = state === undefined ? solidFormsIn(given) : [state];
  const own = rows.filter((row) => row.state === undefined || said.includes(row.state));
  return own.length === 0 ? rows : own;
}

/** Rows of the salt that several parts make together: a basic carbonate written as carbonate and hydroxide. */
function ofOneSalt(notation: Notation, byFormula: ReadonlyMap<string, HazardRow[]>): HazardRow[] | undefined {
  if (notation.parts.filter((part) => !isWater(part)).length < 2) return undefined;
  const { identity } = constitutionOf(textOf(notation));
  return [...byFormula.values()].find(([row]) => constitutionOf(row!.formula!).identity === identity);
}

/** Rows for a formula and what they stand for: its own entry, its kin by crystal water, or its group. */
export function rowsFor(notation: Notation): { rows: readonly HazardRow[]; how: "own" | "hydrate" | "group" } {
  const { byFormula, byCore } = entriesWith(textOf(notation));
  const own = byFormula.get(formulaKey(notation)) ?? ofOneSalt(notation, byFormula);
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
