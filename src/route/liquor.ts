// What is made for the next step and stays dissolved is used as the liquor it is in, where that liquor is of nothing else and the next
// step takes a solution: to crystallise and dry it would cost most of it, and days.
import { anhydrousOf } from "../hydrate";
import type { Candidate } from "./candidates";
import { falls, formulaFrom, whyDissolved } from "./compound";
import type { FamilyCode } from "./data/families";

/** Kinds that leave a liquor of their product alone: a solid in excess is filtered off, a gas leaves. */
const LEAVES_A_LIQUOR: ReadonlySet<FamilyCode> = /* @__PURE__ */ new Set([
  "neutralise",
  "neutralise-acid-salt",
  "metal-and-acid",
  "metal-acid-and-peroxide",
  "displace",
  "keep-filtrate",
  "oxidise",
]);

/** Kinds that are worked dry, or that count the water. */
const TAKES_A_SOLID: ReadonlySet<FamilyCode> = /* @__PURE__ */ new Set([
  "heat",
  "slake",
  "salt-pair",
  "drive-water-off",
  "recrystallise",
]);

/** Does a step leave a liquor that others can use as it is? */
export const leavesLiquor = ({ family, product }: Candidate): boolean =>
  LEAVES_A_LIQUOR.has(family.code) && falls(product) === false;

/** Is what it makes handed out as a solution, for want of a solid that a bench brings out? */
export const isKeptDissolved = (candidate: Candidate): boolean =>
  leavesLiquor(candidate) && whyDissolved(candidate.product) !== undefined;

/** Does a step take a solution? */
export const takesLiquor = ({ family }: Candidate): boolean => !TAKES_A_SOLID.has(family.code);

/** What a compound is in solution: without crystal water. */
export const dissolvedForm = (form: string): string => anhydrousOf(formulaFrom(form)).toString();
