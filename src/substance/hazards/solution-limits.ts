// What is left of a classification in water, by strength: the entry's own limits first, the general ones for the rest.
import { formulaKey, type Notation, readNotation } from "../../ion/internal";
import {
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
  readonly note: string;
  readonly source: HazardSourceKey;
}

let own: ReadonlyMap<string, SolutionLimits> | undefined;

function ownLimits(notation: Notation): SolutionLimits | undefined {
  own ??= new Map(SOLUTION_LIMITS().map((row) => [formulaKey(readNotation(row.formula)), row] as const));
  return own.get(formulaKey(notation));
}

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
      note: noteOf(left.length, "by the limits of its entry"),
      source: limits.source,
    };
  }
  if (row.concentrationLimits || (row.codes ?? []).length === 0) return undefined;
  const codes = [...new Set(row.codes!.flatMap((code) => generally(code, percent)))];
  // where skin is burnt, irritation is part of it
  const burns = codes.includes("H314");
  return {
    codes: codes.filter((code) => !(burns && /^H31[589]$/.test(code))),
    weaker: row.weaker ?? [],
    note: noteOf(codes.length, "by the general limits of mixtures"),
    source: GENERAL_LIMITS_SOURCE,
  };
}

const noteOf = (statements: number, how: string): string =>
  statements === 0
    ? `so dilute that no statement applies, ${how}: that does not make it safe`
    : `statements for this strength, ${how}`;
