// What water itself does to the ions of a sparingly soluble solid: metals bind its hydroxide, anions of weak acids take its
// protons. The simple product leaves both out; here it is told when that matters, and for hydroxides how much.
import { ACIDS } from "./data/acids";
import { COMPLEXES } from "./data/complexes";
import { KW, sameIon } from "./ion-balance";
import type { DissolvedIon } from "./product";

/** One hydroxide complex of a metal: M + n OH⁻, as decimal logarithm of beta. */
export interface HydroxideComplex {
  readonly n: number;
  readonly logBeta: number;
  readonly complex: string;
}

/** The hydroxide complexes of a metal in the table. */
export function hydroxideComplexes(metal: string): HydroxideComplex[] {
  const row = COMPLEXES.find((candidate) => candidate.ligand === "OH-" && sameIon(candidate.metal, metal));
  return (row?.steps ?? []).map(({ n, logBeta, complex }) => ({ n, logBeta: Number(logBeta), complex }));
}

/**
 * All metal that a hydroxide M(OH)z gives to pure water, mol/L: free ions and hydroxide complexes in balance with the ions of
 * the water. The charge balance falls steadily with [OH⁻], so it is halved down.
 */
function allDissolved(metal: DissolvedIon, ksp: number, complexes: readonly HydroxideComplex[]): number {
  const species = [{ n: 0, logBeta: 0 }, ...complexes];
  const at = (oh: number) => {
    const free = ksp / oh ** metal.charge;
    return species.map(({ n, logBeta }) => ({ charge: metal.charge - n, c: free * 10 ** logBeta * oh ** n }));
  };
  let [low, high] = [-14, 1];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    const oh = 10 ** middle;
    const balance = at(oh).reduce((all, { charge, c }) => all + charge * c, KW / oh - oh);
    if (balance > 0) low = middle;
    else high = middle;
  }
  return at(10 ** low).reduce((all, { c }) => all + c, 0);
}

/** From this pKa on, plain water protonates an anion noticeably. */
const BASIC = 7;
/** Complexes that hold less than this share more than the ideal figure are not spoken of. */
const NOTABLE = 1.1;

/**
 * What to know about an ideal solubility in water.
 *
 * @param given - whether an ion's concentration was given: then the caller has settled the pH or the excess
 */
export function hydrolysisWarnings(
  ions: readonly DissolvedIon[],
  ksp: number,
  ideal: number,
  given: (ion: DissolvedIon) => boolean,
): string[] {
  const warnings = ions
    .filter((ion) => ion.charge < 0 && !given(ion))
    .flatMap(({ formula }) => {
      const acid = ACIDS.find(({ base, pKa }) => Number(pKa) > BASIC && sameIon(base, formula));
      if (acid === undefined) return [];
      return [`${formula} takes up protons from plain water (pKa ${acid.pKa}): more dissolves than this ideal figure`];
    });
  const [metal, hydroxide] = [
    ions.find(({ charge }) => charge > 0),
    ions.find(({ formula }) => sameIon(formula, "OH-")),
  ];
  if (metal?.count === 1 && hydroxide !== undefined && ions.length === 2 && !given(hydroxide) && !given(metal)) {
    const all = allDissolved(metal, ksp, hydroxideComplexes(metal.formula));
    if (all > NOTABLE * ideal) {
      warnings.push(
        `with the hydroxide complexes of ${metal.formula}, not counted here, ${all.toPrecision(2)} mol/L dissolves: ask hydroxideWindow`,
      );
    }
  }
  return warnings;
}
