// What is left of a classification in water, by strength: the entry's own limits first, the general ones for the rest.
import type { Formula } from "../../formula";
import { formulaKey, type Notation, readNotation } from "../../ion/internal";
import {
  DRIES_TO_OXIDISER,
  FIRE_LIMITS,
  GENERAL_LIMITS,
  GENERAL_LIMITS_SOURCE,
  type LimitRow,
  SOLUTION_LIMITS,
  type SolutionLimits,
} from "../data/concentration-limits";
import type { HazardRow } from "../data/hazards";
import type { HazardSourceKey } from "../data/sources";

/** An entry as it applies to a solution. */
export interface Diluted {
  readonly codes: readonly string[];
  /** Codes in the category of the weaker signal word. */
  readonly weaker: readonly string[];
  /** In place of the reminders of the entry, where those are about burns that such a solution does not give. */
  readonly cautions?: readonly string[];
  /** Beside the reminders of the entry: what is left when the water has gone. */
  readonly dried: readonly string[];
  readonly note: string;
  readonly source: HazardSourceKey;
}

let own: ReadonlyMap<string, SolutionLimits> | undefined;

function ownLimits(notation: Notation): SolutionLimits | undefined {
  own ??= new Map(SOLUTION_LIMITS().map((row) => [formulaKey(readNotation(row.formula)), row] as const));
  return own.get(formulaKey(notation));
}

/** Has its entry limits of its own for solutions, and are they stored? */
export const hasOwnLimits = (formula: Formula): boolean => ownLimits(readNotation(formula.toString())) !== undefined;

const applies =
  (percent: number) =>
  ({ from, below }: LimitRow) =>
    percent >= Number(from) && (below === undefined || percent < Number(below));

const BURNS = /^H31[48]$/;

/** Suffixes stay: H360FD stays H360FD as long as it applies. */
function generally(code: string, percent: number): string[] {
  const bare = code.replace(/[A-Za-z]+$/, "");
  const limits = GENERAL_LIMITS[bare];
  if (limits === undefined) return [code];
  return limits.filter(applies(percent)).map((limit) => (limit.code === bare ? code : limit.code));
}

/** A metal is in no water as itself. */
const isElement = ({ parts }: Notation): boolean => parts.length === 1 && parts[0]!.counts.size === 1;

/** What a solution does not do of what the dry solid does: feed a fire where it is thin, burn, or give a gas with water. */
function goneInWater(notation: Notation, codes: readonly string[], percent: number | undefined): readonly string[] {
  if (isElement(notation)) return [];
  const gone = FIRE_LIMITS.filter(({ from }) => from === undefined || percent === undefined || percent < Number(from));
  return codes.filter((code) => gone.some((row) => row.codes.includes(code)));
}

const FEEDS_FIRE = /^H27[12]$/;

const driedOf = (gone: readonly string[]): readonly string[] =>
  gone.some((code) => FEEDS_FIRE.test(code)) ? [DRIES_TO_OXIDISER] : [];

/** An entry without what it does not do in water; undefined where it keeps all. */
function thinned(notation: Notation, { codes = [], weaker = [], source }: HazardRow, percent: number | undefined) {
  const gone = goneInWater(notation, codes, percent);
  if (gone.length === 0) return undefined;
  return {
    codes: codes.filter((code) => !gone.includes(code)),
    weaker,
    dried: driedOf(gone),
    note: "of the dry substance more is said than of it dissolved",
    source,
  };
}

/** The entry of what stays dissolved, at a strength that nobody knows: only its dangers by fire are gone. */
export const dissolvedEntry = (notation: Notation, row: HazardRow): Diluted | undefined =>
  row.gas || ownLimits(notation) !== undefined ? undefined : thinned(notation, row, undefined);

/** A pure substance is no solution. */
const PURE = 99;

/**
 * The entry at a mass fraction in water; undefined for what is as good as pure, for gases, and for entries with limits of
 * their own that are not stored: their codes stay as they are.
 *
 * @param percent - mass %
 */
export function dilutedEntry(notation: Notation, row: HazardRow, percent: number): Diluted | undefined {
  if (percent >= PURE || row.gas) return undefined;
  const limits = ownLimits(notation);
  if (limits !== undefined) {
    const left = limits.limits.filter(applies(percent));
    const burns = left.some(({ code }) => BURNS.test(code));
    return {
      codes: left.map((one) => one.code),
      weaker: left.filter((one) => one.weaker).map((one) => one.code),
      ...(burns ? {} : { cautions: limits.weak }),
      dried: [],
      note: noteOf(left.length, "by the limits of its entry"),
      source: limits.source,
    };
  }
  if ((row.codes ?? []).length === 0) return undefined;
  if (row.concentrationLimits) return thinned(notation, row, percent);
  const gone = goneInWater(notation, row.codes!, percent);
  const kept = row.codes!.filter((code) => !gone.includes(code));
  const codes = [...new Set(kept.flatMap((code) => generally(code, percent)))];
  // where skin is burnt, irritation is part of it
  const burns = codes.includes("H314");
  return {
    codes: codes.filter((code) => !(burns && /^H31[589]$/.test(code))),
    weaker: row.weaker ?? [],
    dried: driedOf(gone),
    note: noteOf(codes.length, "by the general limits of mixtures"),
    source: GENERAL_LIMITS_SOURCE,
  };
}

const noteOf = (statements: number, how: string): string =>
  statements === 0
    ? `so dilute that no statement applies, ${how}: that does not make it safe`
    : `statements for this strength, ${how}`;
