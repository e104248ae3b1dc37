// How a molar mass is to be taken: the options that every function building on one accepts, and their check.

import type { WeightConvention } from "../../element";
import { CONVENTIONS, elementIndexOf } from "../../element/internal";
import type { Fields, KnownFields } from "../../foundation/argument";
import type { Facts } from "../../foundation/facts";
import type { QuantityLike } from "../../quantity";
import { guard } from "../argument";

/** How a molar mass is to be taken. */
export interface MolarMassOptions {
  /** Which atomic weights: conventional (default), abridged, or interval midpoints. */
  readonly convention?: WeightConvention | undefined;
  /**
   * Atomic weights of the caller's own material by symbol, such as `{ Li: "6.9393(2) g/mol" }`. Give the same `Quantity`
   * to every call that concerns the same material, so that its uncertainty counts once.
   */
  readonly weights?: Readonly<Record<string, QuantityLike>> | undefined;
  /** Use the mass number of the longest-lived nuclide for elements without a standard weight. */
  readonly massNumberIfNone?: boolean | undefined;
  /** Count the electrons that an ion lacks or has in excess. Default false, as tables of molar masses do. */
  readonly electronMass?: boolean | undefined;
  /** Facts of the caller's own, whose atomic weights are taken; a weight given here by `weights` comes before them. */
  readonly facts?: Facts | undefined;
}

export const MASS = {
  convention: true,
  weights: true,
  massNumberIfNone: true,
  electronMass: true,
  facts: true,
} as const satisfies Fields<MolarMassOptions>;

/** Options of a molar mass, and those of a function that builds on it. */
export function needMassOptions(options: MolarMassOptions, known: KnownFields = MASS): void {
  guard.fields(options, known);
  const { convention, weights, massNumberIfNone, electronMass } = options;
  if (convention !== undefined) guard.choice(convention, "convention", CONVENTIONS);
  if (massNumberIfNone !== undefined) guard.boolean(massNumberIfNone, "massNumberIfNone");
  if (electronMass !== undefined) guard.boolean(electronMass, "electronMass");
  if (weights === undefined) return;
  guard.record(weights, "weights");
  for (const symbol of Object.keys(weights)) {
    if (elementIndexOf(symbol) < 0)
      throw guard.refused(symbol, "weights", "by the symbols of elements, such as { Cu: … }");
  }
}
