// What the ions of a sparingly soluble solid do besides: metals bind hydroxide or the solid's own anion in complexes, anions
// of weak acids accept protons. The simple product leaves all that out; here it is said when that matters, and how much.

import { COMPLEXES } from "../../aqueous/internal";
import { parseFormula } from "../../formula";
import { bisected } from "../../foundation/bisect";
import { ACID_STEPS } from "../../ion/internal";
import { DAVIES_LIMIT } from "../davies";
import { activityExponent, KW, PKW, sameIon } from "./ion-balance";
import type { DissolvedIon } from "./product";

/** One complex of a metal with n ligands, as decimal logarithm of beta. */
export interface Complex {
  readonly n: number;
  readonly logBeta: number;
  readonly complex: string;
}

/** The complexes of a metal with a ligand in the table, those that accept protons besides left out. */
export function complexesOf(metal: string, ligand: string): Complex[] {
  const row = COMPLEXES().find((candidate) => sameIon(candidate.ligand, ligand) && sameIon(candidate.metal, metal));
  return (row?.steps ?? [])
    .filter(({ protons }) => protons === undefined)
    .map(({ n, logBeta, complex }) => ({ n, logBeta: Number(logBeta), complex }));
}

/**
 * The hydroxide complexes of a metal. Where the table of complexes has none, the first comes from the pKa of the aquated ion:
 * M + OH = MOH is MOH + H turned round with the product of water.
 */
export function hydroxideComplexes(metal: string): Complex[] {
  const tabulated = complexesOf(metal, "OH-");
  if (tabulated.length > 0) return tabulated;
  const aquated = ACID_STEPS().find(({ acid }) => sameIon(acid, metal));
  return aquated === undefined ? [] : [{ n: 1, logBeta: PKW - Number(aquated.pKa), complex: aquated.base }];
}

const isHydroxide = (formula: string): boolean => sameIon(formula, "OH-");

/**
 * All metal that ML(q) gives to pure water, mol/L: free ions and complexes. For each metal q ligands came along, so
 * [L] = sum of (q − n) [ML(n)], with the ions of water if L is hydroxide; that falls steadily with [L] and is halved down.
 */
function allDissolved(anion: DissolvedIon, ksp: number, complexes: readonly Complex[]): number {
  const species = [{ n: 0, logBeta: 0 }, ...complexes];
  const water = isHydroxide(anion.formula) ? KW : 0;
  const at = (ligand: number) =>
    species.map(({ n, logBeta }) => ({ n, c: ksp * 10 ** logBeta * ligand ** (n - anion.count) }));
  const isTooLittle = (logLigand: number): boolean => {
    const ligand = 10 ** logLigand;
    return at(ligand).reduce((all, { n, c }) => all + (anion.count - n) * c, water / ligand - ligand) > 0;
  };
  const [low] = bisected(isTooLittle, [-60, 1], 80);
  return at(10 ** low).reduce((all, { c }) => all + c, 0);
}

/** From this pKa on, plain water protonates an anion noticeably. */
const BASIC = 7;
/** Complexes that hold less than this share more than the ideal figure are not spoken of. */
const NOTABLE = 1.1;

/** An ideal solution over a solid, and what the caller has settled about it. */
export interface IdealSolution {
  readonly ions: readonly DissolvedIon[];
  readonly ksp: number;
  /** Formula units dissolved, mol/L. */
  readonly dissolved: number;
  /** Concentration of an ion in the solution, mol/L, where the caller gave one; else undefined. */
  readonly given: (ion: DissolvedIon) => number | undefined;
}

/** Complexes with the own anion, where they hold notably more metal than the ideal figure. */
function complexed({ ions, ksp, dissolved, given }: IdealSolution): string[] {
  const [metal, anion] = [ions.find(({ charge }) => charge > 0), ions.find(({ charge }) => charge < 0)];
  if (metal?.count !== 1 || anion === undefined || ions.length !== 2 || given(metal) !== undefined) return [];
  const complexes = isHydroxide(anion.formula)
    ? hydroxideComplexes(metal.formula)
    : complexesOf(metal.formula, anion.formula);
  if (complexes.length === 0) return [];
  const excess = given(anion);
  const all =
    excess === undefined
      ? allDissolved(anion, ksp, complexes)
      : dissolved * complexes.reduce((sum, { n, logBeta }) => sum + 10 ** logBeta * excess ** n, 1);
  if (all <= NOTABLE * dissolved) return [];
  const ask = isHydroxide(anion.formula)
    ? "ask hydroxidePrecipitationRange"
    : excess === undefined
      ? "take the measured solubility"
      : `name ${anion.formula} among freeLigands`;
  return [
    `with the complexes of ${metal.formula} with ${anion.formula}, not counted here, ${all.toPrecision(2)} mol/L dissolves: ${ask}`,
  ];
}

/** What to know about an ideal solubility. */
export function sideReactions(solution: IdealSolution): string[] {
  const protonated = solution.ions
    .filter((ion) => ion.charge < 0 && solution.given(ion) === undefined)
    .flatMap(({ formula }) => {
      const acid = ACID_STEPS().find(({ base, pKa }) => Number(pKa) > BASIC && sameIon(base, formula));
      if (acid === undefined) return [];
      return [`${formula} accepts protons from plain water (pKa ${acid.pKa}): more dissolves than this ideal figure`];
    });
  return [...protonated, ...complexed(solution)];
}

/** A mixture held against an ion product, and what was named in it. */
export interface Mixture {
  readonly ions: readonly DissolvedIon[];
  /** Each of them before and after, mol/L. */
  readonly before: readonly number[];
  readonly after: readonly number[];
  /** Ion product over solubility product. */
  readonly saturation: number;
  /** Everything named in the solutions, mol/L of the mixture. */
  readonly named: readonly { readonly formula: string; readonly molar: number }[];
  /** The pH was given: protons and hydroxide are counted in. */
  readonly held: boolean;
  readonly withActivity: boolean;
}

/** What to know about a verdict from ion products alone. */
export const mixedWarnings = (mixture: Mixture): string[] => [
  ...protonsOfMixture(mixture),
  ...ligandsOfMixture(mixture),
  ...activityOfMixture(mixture),
];

function protonsOfMixture({ ions, held }: Mixture): string[] {
  if (held) return [];
  return ions.flatMap(({ formula, charge }) => {
    const acid =
      charge < 0 ? ACID_STEPS().find(({ base, pKa }) => Number(pKa) > STRONG && sameIon(base, formula)) : undefined;
    if (acid === undefined || isHydroxide(formula)) return [];
    return [`${formula} accepts protons (pKa ${acid.pKa}), not counted without a pH: give the pH, above all in acid`];
  });
}

/** Anions of acids below this pKa keep to themselves in all but strong acid. */
const STRONG = 3;

/** Ligands among what was named: the solid's own anion in excess, and strangers such as ammonia. */
function ligandsOfMixture({ ions, before, after, saturation, named, held }: Mixture): string[] {
  const metal = ions.find(({ charge }) => charge > 0);
  if (metal === undefined) return [];
  const [at, count] = [ions.indexOf(metal), metal.count];
  const own = ions.flatMap(({ formula, charge }, i) =>
    charge < 0 ? [{ formula, molar: after[i]!, start: before[i]! }] : [],
  );
  const strangers = named
    .filter(({ formula }) => !ions.some((ion) => sameIon(ion.formula, formula)))
    .map((each) => ({ ...each, start: each.molar }));
  return [...own, ...strangers].flatMap(({ formula, molar, start }) => {
    if (held && isHydroxide(formula)) return [];
    const complexes = complexesOf(metal.formula, formula);
    if (complexes.length === 0 || molar <= 0) return [];
    const timesAt = (free: number) => complexes.reduce((all, { n, logBeta }) => all + 10 ** logBeta * free ** n, 1);
    const times = timesAt(molar);
    if (times <= NOTABLE) return [];
    const said = `${metal.formula} forms complexes with ${formula}, not counted here`;
    const clear = saturation > 1 && saturation / timesOfAll(before[at]!, start, complexes) ** count <= 1;
    if (clear) return [`${said}: with them it stays clear`];
    return [`${said}: up to ${times.toPrecision(2)} times as much ${metal.formula} stays in solution`];
  });
}

/** All metal over free metal in a clear mixture: the ligand that the metal binds is taken off what is free. */
function timesOfAll(metal: number, ligand: number, complexes: readonly Complex[]): number {
  const sums = (free: number) => {
    let [all, bound] = [1, 0];
    for (const { n, logBeta } of complexes) {
      const term = 10 ** logBeta * free ** n;
      all += term;
      bound += n * term;
    }
    return { all, bound };
  };
  const isTooLittle = (lnFree: number): boolean => {
    const free = Math.exp(lnFree);
    const { all, bound } = sums(free);
    return free + (metal * bound) / all < ligand;
  };
  const [, high] = bisected(isTooLittle, [Math.log(ligand) - 120, Math.log(ligand)], 100);
  return sums(Math.exp(high)).all;
}

/** The ions named alone, with their charges, may hold apart what the ideal product lets precipitate. */
function activityOfMixture({ ions, named, saturation, withActivity }: Mixture): string[] {
  if (withActivity || saturation <= 1) return [];
  const strength = named.reduce((all, { formula, molar }) => all + (molar * parseFormula(formula).charge ** 2) / 2, 0);
  const exponent = activityExponent(ions, Math.min(strength, DAVIES_LIMIT));
  if (saturation / 10 ** exponent > 1) return [];
  return [
    `over-saturated ideally only: at the ionic strength of the ions named, ${strength.toPrecision(2)} mol/L, it stays clear; give ionicStrength`,
  ];
}
