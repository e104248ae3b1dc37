// The proof of an answer, made anew from the original rows: every component is where it was put in, charges cancel, no
// solid that may stand is over-saturated, those that stand are just saturated, and there is no negative amount.
import { daviesTerm } from "./davies";
import { amountAt } from "./phases";
import { logActivity, saturation, type Tableau } from "./tableau";

/** Residuals of an answer, relative to what was summed up; `saturation` as ln(Q/K). */
export interface Proof {
  readonly mass: number;
  readonly ionicStrength: number;
  readonly saturation: number;
  /** Most negative amount of a solid or gas, mol/kg. */
  readonly negative: number;
  readonly holds: boolean;
}

const LIMIT = 1e-12;
const SATURATION_LIMIT = 1e-9;

/** A residual; all of it where the sums are beyond what a number holds. */
const share = (residual: number): number => (Number.isNaN(residual) ? 1 : residual);

/** Check the state of a tableau. The mass balance residual is measured from the original rows. */
export function proofOf(t: Tableau): Proof {
  const { n, m, s, nu, lnK, held, open } = t.system;
  const x = t.step;
  for (let j = 0; j < n; j += 1) x[j] = logActivity(t, j);
  const sum = t.residual;
  const all = t.scale;
  for (let j = 0; j < n; j += 1) {
    sum[j] = -t.given[j]!;
    all[j] = Math.abs(t.given[j]!);
  }
  const activity = t.slope * daviesTerm(t.ionicStrength);
  let ionic = 0;
  for (let i = 0; i < m; i += 1) {
    let exponent = lnK[i]! + activity * t.squareCharge[i]!;
    for (let j = 0; j < n; j += 1) exponent += nu[i * n + j]! * x[j]!;
    const molality = Math.exp(exponent);
    ionic += (t.squareCharge[i]! * molality) / 2;
    for (let j = 0; j < n; j += 1) {
      const part = nu[i * n + j]! * molality;
      sum[j]! += part;
      all[j]! += Math.abs(part);
    }
  }
  let over = 0;
  let negative = 0;
  for (let j = 0; j < s; j += 1) {
    if (open[j] === 0) continue;
    const row = m + j;
    const excess = saturation(t, j);
    const column = t.column[row]!;
    if (column < 0) {
      over = Math.max(over, excess);
      continue;
    }
    over = Math.max(over, Math.abs(excess));
    const amount = amountAt(t, column);
    if (held[j] === 0) negative = Math.min(negative, amount);
    for (let k = 0; k < n; k += 1) {
      const part = nu[row * n + k]! * amount;
      sum[k]! += part;
      all[k]! += Math.abs(part);
    }
  }
  let mass = 0;
  for (let j = 0; j < n; j += 1) mass = Math.max(mass, all[j] === 0 ? 0 : share(Math.abs(sum[j]!) / all[j]!));
  const drift = t.slope === 0 ? 0 : share(Math.abs(ionic - t.ionicStrength) / Math.max(ionic, 1e-9));
  return {
    mass,
    ionicStrength: drift,
    saturation: over,
    negative,
    holds: mass <= LIMIT && drift <= 1e-11 && over <= SATURATION_LIMIT && negative >= -1e-13,
  };
}
