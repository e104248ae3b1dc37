// A model: all that may form from a set of components, as one system for the solver. Built once for a kind of mixture and
// solved for as many amounts as wanted.

import { ZERO_CELSIUS } from "../../foundation/standards";
import { Equilibrium } from "../solve/equilibrium";
import { type Composition, type ConditionRow, systemOf } from "../solve/system";
import type { Constant } from "./constant";
import type { Expression, Network, Phase } from "./network";
import { atomsOf, HYDRON, type Key } from "./notation";
import { PKW, waterShift } from "./tabulated";

/** A condition of the model: a phase of the tables, or something held. */
export interface ModelCondition {
  readonly formula: string;
  readonly phase: Phase | undefined;
  readonly kind: "solid" | "gas" | "held";
  /** Natural logarithm of a gas pressure in atm, added to that of its constant. */
  readonly lnPressure: number;
  readonly expression: Expression;
  /** Waters in the formula beyond its components. */
  readonly water: number;
}

interface ModelSpecies {
  readonly formula: string;
  readonly charge: number;
  readonly expression: Expression;
  readonly water: number;
}

/** What a model is asked to hold or let go. */
interface Holding {
  readonly pH: boolean;
  /** Pressure of carbon dioxide in atm, and whether it is held or only cannot be passed. */
  readonly carbonDioxide: { readonly atm: number; readonly held: boolean };
}

export interface Model {
  readonly network: Network;
  readonly celsius: number;
  readonly components: readonly Key[];
  readonly species: readonly ModelSpecies[];
  readonly conditions: readonly ModelCondition[];
  readonly equilibrium: Equilibrium;
  /** Which rows each constant goes into, and how often. */
  readonly uses: ReadonlyMap<Constant, readonly (readonly [row: number, count: number])[]>;
  /** Index of the held pH among the conditions, -1 without one. */
  readonly heldPH: number;
  /** Solids of the tables that are left out, with the reason. */
  readonly excluded: readonly { readonly phase: Phase; readonly why: string }[];
}

const R = 8.314462618;

/** Straight line over the inverse temperature between two points; the nearest point outside. */
function between(points: readonly (readonly [celsius: number, value: number])[], celsius: number): number {
  const above = points.findIndex(([at]) => at >= celsius);
  if (above <= 0) return points[above < 0 ? points.length - 1 : 0]![1];
  const [[t1, v1], [t2, v2]] = [points[above - 1]!, points[above]!];
  const inverse = (t: number): number => 1 / (t + ZERO_CELSIUS);
  return v1 + ((v2 - v1) * (inverse(celsius) - inverse(t1))) / (inverse(t2) - inverse(t1));
}

/** A constant at a temperature: van 't Hoff's equation with the heat at 25 °C. */
function valueAt(constant: Constant, celsius: number): number {
  if (constant.points !== undefined) return between(constant.points, celsius);
  if (celsius === 25) return constant.value;
  if (constant === PKW) return constant.value + waterShift(celsius);
  if (constant.enthalpy === undefined) return constant.value;
  const inverse = 1 / (celsius + ZERO_CELSIUS) - 1 / (25 + ZERO_CELSIUS);
  // the sign is that of the logarithm itself: a pK is minus it
  const sign = constant.symbol.startsWith("p") ? 1 : -1;
  return constant.value + (sign * constant.enthalpy * 1000 * inverse) / (R * Math.LN10);
}

/** Waters that a formula holds beyond the components it is made of; none where they are not counted. */
export function waterIn(formula: string, of: ReadonlyMap<Key, number>, network: Network): number {
  if (!network.isWaterCounted) return 0;
  let oxygen = atomsOf(formula).get("O") ?? 0;
  for (const [key, count] of of) oxygen -= count * (atomsOf(network.formulaOf(key)).get("O") ?? 0);
  return Math.round(oxygen * 1e6) / 1e6;
}

const waters = new WeakMap<Expression, number>();

function waterOf(formula: string, expression: Expression, network: Network): number {
  let water = waters.get(expression);
  if (water === undefined) {
    water = waterIn(formula, expression.of, network);
    waters.set(expression, water);
  }
  return water;
}

const within = (expression: Expression, components: ReadonlySet<Key>): boolean => {
  for (const key of expression.of.keys()) if (!components.has(key)) return false;
  return true;
};

/** Build the model of some components. `admit` says whether a solid may stand, or why not. */
export function modelOf(
  network: Network,
  keys: Iterable<Key>,
  celsius: number,
  holding: Holding,
  admit: (phase: Phase) => string | undefined,
): Model {
  const set = new Set<Key>([HYDRON, ...keys]);
  const carbonate = network.express("H2CO3").of;
  if (holding.carbonDioxide.held) for (const key of carbonate.keys()) set.add(key);
  const components = [...set];
  const index = new Map(components.map((key, j) => [key, j]));
  const composition = ({ of }: Expression): Composition => [...of].map(([key, count]) => [index.get(key)!, count]);

  const species: ModelSpecies[] = components.map((key) => {
    const formula = network.formulaOf(key);
    return {
      formula,
      charge: atomsOf(formula).get("e") ?? 0,
      expression: { of: new Map([[key, 1]]), shares: [] },
      water: 0,
    };
  });
  const isComponent = new Set(components);
  for (const one of network.speciesWithin(set)) {
    if (isComponent.has(one.key) || !within(one, set)) continue;
    species.push({
      formula: one.formula,
      charge: one.charge,
      expression: one,
      water: waterOf(one.formula, one, network),
    });
  }

  const conditions: ModelCondition[] = [];
  const excluded: { phase: Phase; why: string }[] = [];
  let heldPH = -1;
  if (holding.pH) {
    heldPH = conditions.length;
    const expression: Expression = { of: new Map([[HYDRON, 1]]), shares: [] };
    conditions.push({ formula: HYDRON, phase: undefined, kind: "held", lnPressure: 0, expression, water: 0 });
  }
  for (const phase of network.phasesWithin(set)) {
    if (!within(phase, set)) continue;
    if (phase.kind === "solid") {
      const why = admit(phase);
      if (why !== undefined) {
        excluded.push({ phase, why });
        continue;
      }
    }
    const isCarbonDioxide = phase.kind === "gas" && phase.formula === "CO2";
    const { atm, held } = isCarbonDioxide ? holding.carbonDioxide : { atm: 1, held: false };
    conditions.push({
      formula: phase.formula,
      phase,
      kind: held ? "held" : phase.kind,
      lnPressure: Math.log(atm),
      expression: phase,
      water: waterOf(phase.formula, phase, network),
    });
  }

  const rows = [...species, ...conditions];
  const uses = new Map<Constant, (readonly [number, number])[]>();
  for (const [row, { expression }] of rows.entries()) {
    for (const [constant, count] of expression.shares) {
      const list = uses.get(constant);
      if (list === undefined) uses.set(constant, [[row, count]]);
      else list.push([row, count]);
    }
  }
  const lnK = ({ shares }: Expression): number => {
    let sum = 0;
    for (const [constant, count] of shares) sum += count * valueAt(constant, celsius);
    return sum * Math.LN10;
  };
  const system = systemOf({
    components: species.slice(0, components.length).map(({ charge }) => charge),
    species: species
      .slice(components.length)
      .map(({ charge, expression }) => ({ charge, lnK: lnK(expression), nu: composition(expression) })),
    conditions: conditions.map(
      ({ kind, expression, lnPressure }): ConditionRow => ({
        kind,
        lnK: lnK(expression) + lnPressure,
        nu: composition(expression),
      }),
    ),
  });
  return {
    network,
    celsius,
    components,
    species,
    conditions,
    equilibrium: new Equilibrium(system),
    uses,
    heldPH,
    excluded,
  };
}
