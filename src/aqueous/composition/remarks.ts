// What an answer says of itself: assumptions, warnings, and the proof of its balances.

import { redoxPartners } from "../mixture/coverage";
import type { Solved } from "../mixture/mixture";
import { HYDRON } from "../mixture/notation";
import type { Read } from "../mixture/request";
import type { Proof } from "../solve/proof";
import { gradientOf } from "../solve/sensitivity";
import type { AqueousComposition } from "./answer";
import { activityDoubt } from "./figures";

export function assumptionsOf({ assumptions, celsius, ideal, pH }: Read, { model }: Solved): string[] {
  const list = [...assumptions];
  list.push(
    ideal
      ? "activities equal molalities"
      : "activity coefficients by Davies, constant beyond an ionic strength of 0.5 mol/kg; water at activity 1",
  );
  if (pH !== undefined) list.push("what holds the pH brings no counter-ion into the ionic strength");
  if (celsius !== 25) {
    const without = [...model.uses.keys()].filter(({ enthalpy, symbol }) => enthalpy === undefined && symbol !== "pKw");
    if (without.length > 0) {
      const named = without.slice(0, 6).map(({ symbol }) => symbol);
      list.push(
        `constants of 25 °C are used where the heat of reaction is not known: ${named.join(", ")}${
          without.length > named.length ? ` and ${without.length - named.length} more` : ""
        }`,
      );
    }
  }
  return list;
}

/** Share of the variance from which a doubtful constant is named first. */
const CARRIES = 0.3;

/** Doubtful constants on which much of the doubt of the pH rests. */
function doubtfulOf({ model, solution }: Solved): string[] {
  const gradient = gradientOf(solution, { lnActivity: [[model.components.indexOf(HYDRON), -1]] });
  const parts: { readonly label: string; readonly doubtful: boolean; readonly variance: number }[] = [];
  let all = 0;
  for (const [{ label, doubtful, standardUncertainty }, uses] of model.uses) {
    let slope = 0;
    for (const [row, count] of uses) slope += gradient.lnK[row]! * count;
    const variance = (slope * standardUncertainty) ** 2;
    all += variance;
    parts.push({ label, doubtful, variance });
  }
  return parts
    .filter(({ doubtful, variance }) => doubtful && variance > CARRIES * all)
    .map(
      ({ label, variance }) =>
        `doubtful: ${Math.round((100 * variance) / all)} % of the variance of the pH is that of the ${label}`,
    );
}

export function warningsOf(read: Read, solved: Solved): string[] {
  const { model, solution } = solved;
  const list: string[] = read.pH === undefined ? doubtfulOf(solved) : [];
  if (!read.own) list.push(...redoxPartners(model.network, presentOf(solved)));
  if (!read.ideal && solution.ionicStrength > 0.5) {
    list.push(
      `rough: at an ionic strength of ${solution.ionicStrength.toPrecision(2)} mol/kg log γ is good to ± ${activityDoubt(solution.ionicStrength)} only`,
    );
  }
  for (const [j, { phase, kind, formula }] of model.conditions.entries()) {
    if (kind !== "solid" || !(solution.amount[j]! > 0)) continue;
    if (phase?.shares[0]?.[0].doubtful === true)
      list.push(`doubtful: the solubility product of ${formula} differs much between sources, or rests on memory`);
    for (const note of phase?.notes ?? []) list.push(`${formula}: ${note}`);
  }
  return list;
}

export function balanceOf({ model, solution, totals }: Solved, proof: Proof): AqueousComposition["balance"] {
  let [charge, all] = [0, 0];
  for (const [i, { charge: z }] of model.species.entries()) {
    charge += z * solution.molality[i]!;
    all += Math.abs(z) * solution.molality[i]!;
  }
  let put = 0;
  for (let j = 0; j < totals.length; j += 1) put += model.species[j]!.charge * totals[j]!;
  for (const [j, { kind, phase }] of model.conditions.entries())
    if (kind === "held" && phase === undefined) put -= solution.amount[j]!;
  return {
    mass: proof.mass,
    charge: all === 0 ? 0 : Math.abs(charge - put) / all,
    ionicStrength: proof.ionicStrength,
    saturation: proof.saturation / Math.LN10,
  };
}

/** Components of which there is something. */
export const presentOf = ({ model, totals }: Solved): string[] =>
  model.components.filter((_, j) => totals[j]! > 1e-9 || model.components[j] === HYDRON);
