import type { AmountLike } from "../../amount";
import { type MassText, type Quantity, type QuantityLike, quantity, type VolumeText } from "../../quantity";
import { guard } from "../argument";
import { AqueousError } from "../error";
import type { Dissolved } from "../mixture/material";
import { TOO_STRONG } from "../mixture/mixture";
import { ADDITION_FIELDS, type AdditionOptions, pHNow, readAddition, solveAdded } from "./addition";
import type { Reagent } from "./reagent";

/** A mixture, and a reagent added to it bit by bit. */
export interface AlongRequest extends AdditionOptions {
  /** Mass of the water, or volume of the solution before the addition. */
  readonly water: QuantityLike<"mass" | "volume", MassText | VolumeText>;
  /** What is in the water at the beginning. */
  readonly dissolved: readonly Dissolved[];
  /** What is added: a solution of some strength, or a formula for the substance itself. */
  readonly add: Reagent | string;
  /** Amount of the reagent at the end of the way. */
  readonly amount: AmountLike;
  /** Default 50. */
  readonly steps?: number;
}

/** A stretch of the way along which the same solids stand. */
export interface Stretch {
  /** Amount of the reagent added when it begins and when it ends. */
  readonly from: Quantity<"amount of substance">;
  /** Amount of the reagent added when the stretch ends. */
  readonly to: Quantity<"amount of substance">;
  /** Formulas of the solids that stand; empty where everything is dissolved. */
  readonly solids: readonly string[];
  /** pH at its beginning and end. */
  readonly pH: readonly [number, number];
}

const FIELDS = { water: true, dissolved: true, add: true, amount: true, steps: true, ...ADDITION_FIELDS } as const;

/**
 * Which solids stand along an addition, A into B; ask again with B into A for the other order. The end state is the same, but
 * a solid that has once formed may not go back in the time a bench has.
 *
 * @param request - what is in the beaker, what is added, and how much in the end
 * @returns stretches of the way, in order
 * @throws {AqueousError} as `aqueousComposition`
 * @category In the beaker
 * @example
 * solidsAlongAddition({
 *   water: "1 L",
 *   dissolved: [{ formula: "AlCl3", amount: "0.1 mol" }],
 *   add: "NaOH",
 *   amount: "0.45 mol",
 * }).map((stretch) => stretch.solids) // => [[], ["Al(OH)3"], []]
 */
export function solidsAlongAddition(request: AlongRequest): readonly Stretch[] {
  guard.fields(request, FIELDS, "request");
  const steps = request.steps ?? 50;
  guard.number(steps, "steps");
  if (!(Number.isInteger(steps) && steps >= 2 && steps <= 1000))
    throw new AqueousError("aqueous.bad-option", `steps must be a whole number from 2 to 1000, not ${steps}`);
  const addition = readAddition(request, request.add, request, "add");
  const all = quantity(request.amount as "1 mol")
    .in("mol")
    .toNumber();
  const stretches: { from: number; to: number; solids: string[]; pH: [number, number] }[] = [];
  const { equilibrium, conditions } = addition.model;
  for (let i = 0; i <= steps; i += 1) {
    const added = (all * i) / steps;
    solveAdded(addition, added, i > 0);
    const { tableau } = equilibrium;
    if (tableau.ionicStrength > TOO_STRONG) break;
    const solids: string[] = [];
    for (const row of tableau.basis) {
      const condition = row < tableau.system.m ? undefined : conditions[row - tableau.system.m];
      if (condition?.kind === "solid") solids.push(condition.formula);
    }
    solids.sort();
    const pH = pHNow(addition.model);
    const last = stretches.at(-1);
    if (last !== undefined && last.solids.join() === solids.join()) {
      last.to = added;
      last.pH[1] = pH;
    } else stretches.push({ from: added, to: added, solids, pH: [pH, pH] });
  }
  const moles = (x: number): Quantity<"amount of substance"> =>
    quantity({ value: x.toPrecision(8), unit: "mol" }, { symbol: "n" }) as Quantity<"amount of substance">;
  return stretches.map(({ from, to, solids, pH }) => ({ from: moles(from), to: moles(to), solids, pH }));
}
