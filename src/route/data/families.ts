// The kinds of reaction that lead from one jar to another, as data: what goes in, what comes beside the product, which tests
// decide, how the product is got apart. What the product of a precipitation really is, the equilibrium says.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** What a place of a left side takes, M for the cation and A for the anion of the product. */
export type Slot =
  /** A soluble salt of M with another anion, double salts among them. */
  | "salt of M"
  /** A salt of M that water does not dissolve. */
  | "solid salt of M"
  /** Oxide, hydroxide or carbonate of M; ammonia for ammonium. */
  | "base of M"
  | "oxide of M"
  | "metal M"
  /** A soluble salt of A with an alkali or ammonium. */
  | "alkali salt of A"
  /** A salt of A with a cation that precipitates with the anion of the other feed. */
  | "carrier of A"
  | "acid of A"
  /** A salt of M in its lower oxidation state, with the same anion. */
  | "lower salt of M"
  /** A simple salt of one cation of a double salt, and of the other, with the same anion. */
  | "parent"
  | "other parent"
  /** What takes a cation down as hydroxide. */
  | "alkali"
  /** What brings carbonate. */
  | "carbonate"
  /** A salt of a nobler metal with A. */
  | "salt of a nobler metal"
  /** A cheap metal below the wanted one. */
  | "baser metal"
  | "the same salt without ammonia"
  | "ammonia"
  | "peroxide"
  | "strong acid"
  | "alkali lye"
  /** A salt of M whose anion has one more hydron than A. */
  | "acid salt of M and A"
  | "what heat makes it from"
  /** The same compound with more or less crystal water. */
  | "another hydrate"
  | "as listed";

/** Tests that decide, by name; `tests.ts` has them. */
type TestName =
  | "feeds dissolve"
  | "feeds are solids that react"
  | "it precipitates at equilibrium"
  | "it stays dissolved at equilibrium"
  | "potentials"
  | "table of heat"
  | "crystallises from the pair";

/** One kind of reaction. */
export interface FamilyRow {
  readonly code: FamilyCode;
  readonly name: string;
  readonly left: readonly Slot[];
  /** Whether the engine decides what the product is, or the row does. */
  readonly right: "engine" | "written";
  /** Added to the one that each step costs: 0 for the surest kind. */
  readonly doubt: number;
  readonly tests: readonly TestName[];
  /** How the product is got apart. */
  readonly separate: "filter" | "crystallise" | "fire" | "filter off the other";
  /** Which feed is taken in excess, by its place, and how much, %. */
  readonly excess?: { readonly of: number; readonly percent: number };
  /** Whether what is left of the excess goes with washing, leaves, or stays. */
  readonly leaves: "washes out" | "evaporates" | "filtered off" | "stays";
  readonly source: SourceKey;
}

/** Codes of the kinds of reaction. */
export type FamilyCode =
  | "neutralise"
  | "neutralise-acid-salt"
  | "slake"
  | "precipitate"
  | "precipitate-by-acid"
  | "precipitate-carbonate"
  | "precipitate-hydroxide"
  | "metal-and-acid"
  | "metal-acid-and-peroxide"
  | "double-salt"
  | "alum-from-metal"
  | "heat"
  | "displace"
  | "cement"
  | "ammine"
  | "set-acid-free"
  | "keep-filtrate"
  | "salt-pair"
  | "oxidise"
  | "listed"
  | "solid-to-solid"
  | "complex"
  | "drive-water-off"
  | "recrystallise";

const row = (
  code: FamilyCode,
  name: string,
  left: readonly Slot[],
  rest: Omit<FamilyRow, "code" | "name" | "left" | "source">,
): FamilyRow => ({ code, name, left, ...rest, source: "commonPractice" });

export const FAMILIES = /* @__PURE__ */ once((): readonly FamilyRow[] => [
  row("neutralise", "a base dissolved in acid", ["base of M", "acid of A"], { right: "written", doubt: 0, tests: ["feeds are solids that react"], separate: "crystallise", leaves: "filtered off" }),
  row("neutralise-acid-salt", "an acid salt neutralised", ["acid salt of M and A", "base of M"], { right: "written", doubt: 0.05, tests: ["feeds are solids that react"], separate: "crystallise", leaves: "stays" }),
  row("slake", "an oxide into water", ["oxide of M"], { right: "written", doubt: 0, tests: ["feeds are solids that react"], separate: "filter", leaves: "washes out" }),
  row("precipitate", "two solutions that precipitate", ["salt of M", "alkali salt of A"], { right: "engine", doubt: 0.1, tests: ["feeds dissolve", "it precipitates at equilibrium"], separate: "filter", excess: { of: 1, percent: 5 }, leaves: "washes out" }),
  row("precipitate-by-acid", "a salt precipitated by its acid", ["salt of M", "acid of A"], { right: "engine", doubt: 0.2, tests: ["feeds dissolve", "it precipitates at equilibrium"], separate: "filter", excess: { of: 1, percent: 5 }, leaves: "washes out" }),
  row("precipitate-carbonate", "precipitated with carbonate", ["salt of M", "carbonate"], { right: "engine", doubt: 0, tests: ["feeds dissolve", "it precipitates at equilibrium"], separate: "filter", excess: { of: 1, percent: 5 }, leaves: "washes out" }),
  row("precipitate-hydroxide", "precipitated with alkali", ["salt of M", "alkali"], { right: "engine", doubt: 0.15, tests: ["feeds dissolve", "it precipitates at equilibrium"], separate: "filter", leaves: "washes out" }),
  row("metal-and-acid", "a metal dissolved in acid", ["metal M", "acid of A"], { right: "written", doubt: 0.1, tests: ["potentials"], separate: "crystallise", excess: { of: 0, percent: 5 }, leaves: "filtered off" }),
  row("metal-acid-and-peroxide", "a metal dissolved in acid and peroxide", ["metal M", "acid of A", "peroxide"], { right: "written", doubt: 0.3, tests: ["potentials"], separate: "crystallise", excess: { of: 2, percent: 50 }, leaves: "evaporates" }),
  row("double-salt", "two salts crystallised together", ["parent", "other parent"], { right: "written", doubt: 0.05, tests: ["it stays dissolved at equilibrium"], separate: "crystallise", leaves: "stays" }),
  row("alum-from-metal", "a metal through lye into its alum", ["metal M", "alkali lye", "acid of A"], { right: "written", doubt: 0.3, tests: ["potentials"], separate: "crystallise", leaves: "stays" }),
  row("heat", "heated dry", ["what heat makes it from"], { right: "written", doubt: 0.05, tests: ["table of heat"], separate: "fire", leaves: "evaporates" }),
  row("displace", "a nobler metal displaced", ["metal M", "salt of a nobler metal"], { right: "written", doubt: 0.4, tests: ["potentials"], separate: "crystallise", excess: { of: 0, percent: 5 }, leaves: "filtered off" }),
  row("cement", "a metal set free by a baser one", ["salt of M", "baser metal"], { right: "written", doubt: 0.2, tests: ["potentials"], separate: "filter", leaves: "stays" }),
  row("ammine", "a salt in ammonia", ["the same salt without ammonia", "ammonia"], { right: "engine", doubt: 0.2, tests: ["it stays dissolved at equilibrium"], separate: "crystallise", excess: { of: 1, percent: 50 }, leaves: "evaporates" }),
  row("set-acid-free", "a weak acid set free by a strong one", ["alkali salt of A", "strong acid"], { right: "engine", doubt: 0.15, tests: ["feeds dissolve"], separate: "filter", excess: { of: 1, percent: 5 }, leaves: "washes out" }),
  row("keep-filtrate", "the other salt filtered off", ["salt of M", "carrier of A"], { right: "engine", doubt: 0.5, tests: ["feeds dissolve", "it stays dissolved at equilibrium"], separate: "filter off the other", leaves: "stays" }),
  row("salt-pair", "two salts that swap ions on cooling", ["salt of M", "alkali salt of A"], { right: "written", doubt: 0.4, tests: ["crystallises from the pair"], separate: "crystallise", leaves: "stays" }),
  row("oxidise", "oxidised with peroxide in acid", ["lower salt of M", "acid of A", "peroxide"], { right: "written", doubt: 0.3, tests: ["potentials"], separate: "crystallise", excess: { of: 2, percent: 50 }, leaves: "evaporates" }),
  row("listed", "as listed", ["as listed"], { right: "written", doubt: 0.3, tests: ["potentials"], separate: "filter", leaves: "washes out" }),
  row("solid-to-solid", "one solid turned into another", ["solid salt of M", "alkali salt of A"], { right: "engine", doubt: 0.35, tests: ["it precipitates at equilibrium"], separate: "filter", excess: { of: 1, percent: 50 }, leaves: "washes out" }),
  row("complex", "a complex from its ions", ["salt of M", "alkali salt of A"], { right: "written", doubt: 0.3, tests: ["it stays dissolved at equilibrium"], separate: "crystallise", leaves: "stays" }),
  row("drive-water-off", "crystal water driven off", ["another hydrate"], {
    right: "written",
    doubt: 0,
    tests: ["table of heat"],
    separate: "fire",
    leaves: "evaporates",
  }),
  row("recrystallise", "dissolved and crystallised with its water", ["another hydrate"], {
    right: "written",
    doubt: 0,
    tests: ["it stays dissolved at equilibrium"],
    separate: "crystallise",
    leaves: "stays",
  }),
]);

/** A reaction of no general kind, written down. */
interface ListedRow {
  readonly product: string;
  readonly feeds: readonly string[];
  /** What comes beside the product, water left out. */
  readonly beside: readonly string[];
  readonly note: string;
  readonly source: SourceKey;
}

const listed = (product: string, feeds: readonly string[], beside: readonly string[], note: string): ListedRow => ({
  product, feeds, beside, note, source: "commonPractice",
});

export const LISTED = /* @__PURE__ */ once((): readonly ListedRow[] => [
  listed("CuCl", ["CuSO4", "NaCl", "Na2SO3"], ["Na2SO4", "H2SO4"], "sulfite reduces copper(II) in the presence of chloride"),
  listed("CuCl", ["CuSO4", "NaCl", "NaHSO3"], ["Na2SO4", "H2SO4"], "hydrogensulfite reduces copper(II) in the presence of chloride"),
  listed("CuCl", ["CuSO4", "NaCl", "NaHSO3", "NaOH"], ["Na2SO4", "H2SO4"], "hydrogensulfite reduces copper(II) in the presence of chloride; lye takes some of the acid"),
  listed("CuCl", ["CuCl2", "Na2SO3"], ["Na2SO4", "HCl"], "sulfite reduces copper(II)"),
  listed("CuCl", ["CuCl2", "Cu"], [], "copper reduces copper(II) chloride in strong hydrochloric acid or brine"),
  listed("Na2S2O3", ["Na2SO3", "S"], [], "boiled with an excess of sulfur"),
]);

/** Anions that a weak acid is set free from beside its own. */
export const OTHER_ANIONS: readonly { readonly acid: string; readonly anions: readonly string[]; readonly source: SourceKey }[] = [
  { acid: "H3BO3", anions: ["B4O7^2-", "BO2-"], source: "commonPractice" },
];

/** Cations whose salts with these anions precipitate, so that the other salt can be filtered. */
export const CARRIERS: readonly { readonly cation: string; readonly takes: readonly string[]; readonly source: SourceKey }[] = [
  { cation: "Ca^2+", takes: ["SO4^2-", "CO3^2-", "C2O4^2-"], source: "commonPractice" },
  { cation: "Ba^2+", takes: ["SO4^2-", "CO3^2-"], source: "commonPractice" },
  { cation: "Sr^2+", takes: ["SO4^2-", "CO3^2-"], source: "commonPractice" },
];
