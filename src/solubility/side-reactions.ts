// What the ions of a sparingly soluble solid do besides: metals bind hydroxide or the solid's own anion in complexes, anions
// of weak acids take up protons. The simple product leaves all that out; here it is told when that matters, and how much.
import { ACIDS } from "./data/acids";
import { COMPLEXES } from "./data/complexes";
import { KW, sameIon } from "./ion-balance";
import type { DissolvedIon } from "./product";

/** One complex of a metal with n ligands, as decimal logarithm of beta. */
export interface Complex {
  readonly n: number;
  readonly logBeta: number;
  readonly complex: string;
}

/** The complexes of a metal with a ligand in the table, those that take up protons besides left out. */
export function complexesOf(metal: string, ligand: string): Complex[] {
  const row = COMPLEXES.find((candidate) => sameIon(candidate.ligand, ligand) && sameIon(candidate.metal, metal));
  return (row?.steps ?? [])
    .filter(({ protons }) => protons === undefined)
    .map(({ n, logBeta, complex }) => ({ n, logBeta: Number(logBeta), complex }));
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
  let [low, high] = [-60, 1];
  for (let i = 0; i < 80; i += 1) {
    const middle = (low + high) / 2;
    const ligand = 10 ** middle;
    const balance = at(ligand).reduce((all, { n, c }) => all + (anion.count - n) * c, water / ligand - ligand);
    if (balance > 0) low = middle;
    else high = middle;
  }
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
  const complexes = complexesOf(metal.formula, anion.formula);
  if (complexes.length === 0) return [];
  const excess = given(anion);
  const all =
    excess === undefined
      ? allDissolved(anion, ksp, complexes)
      : dissolved * complexes.reduce((sum, { n, logBeta }) => sum + 10 ** logBeta * excess ** n, 1);
  if (all <= NOTABLE * dissolved) return [];
  const ask = isHydroxide(anion.formula)
    ? "ask hydroxideWindow"
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
      const acid = ACIDS.find(({ base, pKa }) => Number(pKa) > BASIC && sameIon(base, formula));
      if (acid === undefined) return [];
      return [`${formula} takes up protons from plain water (pKa ${acid.pKa}): more dissolves than this ideal figure`];
    });
  return [...protonated, ...complexed(solution)];
}
