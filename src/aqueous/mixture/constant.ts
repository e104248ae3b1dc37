// One tabulated or given constant: a plain number for the solver, and one shared input of the graph, made when asked for,
// so that a constant used twice is one input of a budget.

import { type Quantity, quantity } from "../../quantity";
import { cite, type SourceKey } from "../data/sources";

/** A decimal logarithm of an equilibrium constant. */
export interface Constant {
  readonly symbol: string;
  readonly label: string;
  /** At 25 °C and zero ionic strength. */
  readonly value: number;
  readonly standardUncertainty: number;
  readonly doubtful: boolean;
  readonly source: SourceKey | undefined;
  /** kJ/mol of the reaction as the constant is written; undefined when it is not known. */
  readonly enthalpy: number | undefined;
  /** Where it is known at several temperatures: [°C, value]. */
  readonly points: readonly (readonly [celsius: number, value: number])[] | undefined;
  readonly input: () => Quantity;
}

/** Standard uncertainty of a constant when only one source is at hand. */
export const LONE_SPREAD = 0.1;
/** The same when that source is a memory or stands far from others. */
const DOUBTFUL_SPREAD = 0.3;

/** Standard uncertainty from the range of the sources: rectangular, and never below that of a lone one. */
export function spreadOf(range: readonly [string, string] | undefined, doubtful = false): number {
  const half = range === undefined ? 0 : (Number(range[1]) - Number(range[0])) / 2 / Math.sqrt(3);
  return Math.max(doubtful ? DOUBTFUL_SPREAD : LONE_SPREAD, half);
}

/** A constant with its input made once. */
export function constant(
  symbol: string,
  label: string,
  text: string,
  standardUncertainty: number,
  more: {
    readonly source?: SourceKey;
    readonly doubtful?: boolean;
    readonly enthalpy?: number | undefined;
    readonly points?: Constant["points"];
  } = {},
): Constant {
  let made: Quantity | undefined;
  return {
    symbol,
    label,
    value: Number(text),
    standardUncertainty,
    doubtful: more.doubtful ?? false,
    source: more.source,
    enthalpy: more.enthalpy,
    points: more.points,
    input: () =>
      (made ??= quantity(
        { value: text, unit: "", standardUncertainty: standardUncertainty.toPrecision(2) },
        { symbol, label, ...(more.source === undefined ? {} : { source: cite(more.source) }) },
      )),
  };
}

/** A constant the caller brought: its own input, with whatever uncertainty it states. */
export function givenConstant(symbol: string, label: string, input: Quantity): Constant {
  return {
    symbol,
    label,
    value: input.toNumber(),
    standardUncertainty: input.standardUncertainty?.toNumber() ?? 0,
    doubtful: false,
    source: undefined,
    enthalpy: undefined,
    points: undefined,
    input: () => input,
  };
}
