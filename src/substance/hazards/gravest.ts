// Codes of hazard statements from several entries for one substance, as the codes of one.
import { HAZARD_LADDERS } from "../data/hazard-ladders";

/** H360 and Df of H360Df. */
function partsOf(code: string): { readonly bare: string; readonly suffix: string } {
  const [, bare = code, suffix = ""] = /^((?:EU)?H\d+)([A-Za-z]*)$/.exec(code) ?? [];
  return { bare, suffix };
}

/** As the regulation writes them: FD, Fd, Df, fd. */
const SUFFIX_ORDER = "FDfdi";

const bySuffix = (one: string, other: string): number => SUFFIX_ORDER.indexOf(one) - SUFFIX_ORDER.indexOf(other);

/** Suffixes of one statement as one: F and D as FD, F and d as Fd; no suffix is any route or harm, which covers the others. */
function joined(suffixes: readonly string[]): string {
  if (suffixes.includes("")) return "";
  const letters = new Set(suffixes.join(""));
  const isCovered = (letter: string): boolean => letter !== letter.toUpperCase() && letters.has(letter.toUpperCase());
  return [...letters]
    .filter((letter) => !isCovered(letter))
    .sort(bySuffix)
    .join("");
}

/** Statements of several entries, each once, without those that a graver one of the same class stands for. */
export function gravest(codes: readonly string[]): string[] {
  const suffixes = new Map<string, string[]>();
  for (const { bare, suffix } of codes.map(partsOf)) suffixes.set(bare, [...(suffixes.get(bare) ?? []), suffix]);
  const isBelow = (bare: string): boolean =>
    HAZARD_LADDERS.ladders.some((ladder: readonly string[]) => {
      const at = ladder.indexOf(bare);
      return at > 0 && ladder.slice(0, at).some((graver) => suffixes.has(graver));
    });
  return [...suffixes].filter(([bare]) => !isBelow(bare)).map(([bare, all]) => `${bare}${joined(all)}`);
}
