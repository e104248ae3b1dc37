// The equilibrium of one system with given totals: start, active set, ionic strength, and the proof that the answer is one.

import { AqueousError } from "../error";
import { debyeHueckelSlope } from "./davies";
import { evaluate } from "./newton";
import { amountAt, enter, type Outcome, settle, settleSmoothly } from "./phases";
import { type Proof, proofOf } from "./proof";
import type { System } from "./system";
import { compile, logActivity, preferAbundant, type Tableau, tableauOf, toComponents } from "./tableau";

/** Least total of a component that no species is without, mol/kg: there is no logarithm of nothing. */
const NOTHING = 1e-60;

const SLOPE_25 = /* @__PURE__ */ debyeHueckelSlope(25);

/** The answer of another system of the same components, to begin from. */
export interface Neighbour {
  /** ln activity of each component. */
  readonly lnActivity: ArrayLike<number>;
  readonly ionicStrength: number;
  /** Does the condition bind there? */
  readonly binds: (condition: number) => boolean;
}

/** A system with room to be solved in; keeps the last answer as the start of the next. */
export class Equilibrium {
  readonly tableau: Tableau;
  proof: Proof | undefined;
  /** How the last answer was found; the later ways are slower and surer. */
  way: "active set" | "smooth" | "bracket" = "active set";

  constructor(readonly system: System) {
    this.tableau = tableauOf(system);
  }

  /** ln activity of a species of the last answer. */
  lnActivityOf(species: number): number {
    return logActivity(this.tableau, species);
  }

  /** Amount of the condition in a column of the last answer, mol/kg. */
  amountOf(column: number): number {
    return amountAt(this.tableau, column);
  }

  /**
   * Solve for new totals.
   *
   * @param start - begin from nothing, from the last answer, or from that of another system
   * @throws {AqueousError} `aqueous.not-converged`, `aqueous.over-determined`, `aqueous.impossible-totals`
   */
  solve(totals: ArrayLike<number>, slope: number = SLOPE_25, start: boolean | Neighbour = false): Proof {
    const t = this.tableau;
    t.iterations = 0;
    t.rounds = 0;
    t.slope = slope;
    setTotals(t, totals);
    const goesOn = start === true && this.proof !== undefined;
    if (typeof start === "object") beginNear(t, start);
    else if (!goesOn) begin(t);
    this.proof = undefined;
    this.way = "active set";
    let outcome: Outcome = settle(t, true, goesOn);
    let proof = outcome === "solved" ? proofOf(t) : undefined;
    if (proof?.holds !== true && outcome !== "over-determined") {
      begin(t);
      this.way = "smooth";
      outcome = settleSmoothly(t, true);
      proof = outcome === "solved" ? proofOf(t) : undefined;
    }
    if (proof?.holds !== true && outcome !== "over-determined") {
      this.way = "bracket";
      outcome = bracket(t);
      proof = outcome === "solved" ? proofOf(t) : undefined;
    }
    if (outcome === "over-determined") {
      throw new AqueousError("aqueous.over-determined", "more is held at once than can be chosen freely", {
        hint: "hold the pH or the pressure of a gas, not both, or leave a solid out",
        details: { ...proofOf(t) },
      });
    }
    if (proof?.holds !== true) {
      throw new AqueousError("aqueous.not-converged", "the balances of this mixture were not met", {
        details: { ...(proof ?? proofOf(t)) },
      });
    }
    this.proof = proof;
    return proof;
  }
}

function setTotals(t: Tableau, totals: ArrayLike<number>): void {
  const { n, twoSided } = t.system;
  for (let j = 0; j < n; j += 1) {
    const total = totals[j]!;
    if (twoSided[j] === 0 && total < 0) {
      throw new AqueousError("aqueous.impossible-totals", "a negative amount of a component", {
        details: { component: j, total },
      });
    }
    t.given[j] = twoSided[j] === 0 && total < NOTHING ? NOTHING : total;
  }
}

/** Sweeps of the start; each brings the sums some powers of ten nearer to the totals. */
const SWEEPS = 3;

/** A start from nothing: each component as if free, lowered until its species do not hold much more than there is. */
function begin(t: Tableau): void {
  const { n, m, twoSided } = t.system;
  toComponents(t);
  const { x, c, given, start, index, coefficient, offset, residual: up, scale: down, border: order } = t;
  for (let j = 0; j < n; j += 1) x[j] = twoSided[j] === 1 ? Math.log(1e-7) : Math.log(given[j]!);
  // all columns are free in the original components, and stand in their order
  compile(t);
  for (let sweep = 0; sweep < SWEEPS; sweep += 1) {
    for (let j = 0; j < n; j += 1) {
      up[j] = given[j]! < 0 ? -given[j]! : 0;
      down[j] = Math.max(given[j]!, 0);
      order[j] = 1;
    }
    for (let i = 0; i < m; i += 1) {
      let exponent = offset[i]!;
      for (let p = start[i]!; p < start[i + 1]!; p += 1) exponent += coefficient[p]! * x[index[p]!]!;
      const molality = Math.exp(Math.min(exponent, 250));
      c[i] = molality;
      for (let p = start[i]!; p < start[i + 1]!; p += 1) {
        const j = index[p]!;
        const part = coefficient[p]! * molality;
        if (part > 0) up[j]! += part;
        else down[j]! -= part;
        // what weighs most in a sum says how fast the sum moves
        if (part > 0.3 * up[j]! && coefficient[p]! > order[j]!) order[j] = coefficient[p]!;
      }
    }
    let moved = 0;
    for (let j = 0; j < n; j += 1) {
      if (!(up[j]! > 0 && down[j]! > 0)) continue;
      const change = Math.log(down[j]! / up[j]!) / (twoSided[j] === 1 ? 2 : order[j]!);
      x[j]! += Math.max(-40, Math.min(40, change));
      moved = Math.max(moved, Math.abs(change));
    }
    if (moved < 1) break;
  }
  let ionic = 0;
  for (let i = 0; i < m; i += 1) ionic += (t.squareCharge[i]! * Math.min(c[i]!, 1)) / 2;
  t.ionicStrength = Math.min(Math.max(ionic, 1e-7), 1);
}

/** A start from the answer of a neighbour. */
function beginNear(t: Tableau, { lnActivity, ionicStrength, binds }: Neighbour): void {
  const { n, m, s } = t.system;
  toComponents(t);
  for (let j = 0; j < n; j += 1) t.x[j] = lnActivity[j]!;
  t.ionicStrength = ionicStrength;
  compile(t);
  evaluate(t, false);
  preferAbundant(t);
  for (let j = 0; j < s; j += 1) if (t.column[m + j]! < 0 && binds(j)) enter(t, j);
}

/** The ionic strength by bracketing: at each one the problem is convex and has one answer. */
function bracket(t: Tableau): Outcome {
  let [low, high] = [0, 0];
  let [atLow, atHigh] = [1, -1];
  const difference = (ionic: number): number | undefined => {
    t.ionicStrength = ionic;
    if (settle(t, false) !== "solved") {
      begin(t);
      t.ionicStrength = ionic;
      if (settleSmoothly(t, false) !== "solved") return undefined;
    }
    let sum = 0;
    for (let i = 0; i < t.system.m; i += 1) sum += t.squareCharge[i]! * t.c[i]!;
    return sum / 2 - ionic;
  };
  begin(t);
  let side = 0;
  for (high = 1e-3; ; high *= 4) {
    const d = difference(high);
    if (d === undefined) return "stuck";
    if (d <= 0) {
      atHigh = d;
      break;
    }
    [low, atLow] = [high, d];
    if (high > 1e4) return "stuck";
  }
  for (let turn = 0; turn < 200; turn += 1) {
    const middle = turn % 8 === 7 ? (low + high) / 2 : (low * -atHigh + high * atLow) / (atLow - atHigh);
    const d = difference(middle);
    if (d === undefined) return "stuck";
    if (Math.abs(d) <= 1e-12 * middle || high - low <= 1e-15 * high) return "solved";
    if (d > 0) {
      [low, atLow] = [middle, d];
      if (side === 1) atHigh /= 2;
      side = 1;
    } else {
      [high, atHigh] = [middle, d];
      if (side === -1) atLow /= 2;
      side = -1;
    }
  }
  return "stuck";
}
