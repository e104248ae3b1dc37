// Errors of the element layer.
import { errorClass } from "../foundation/error";

/** Codes of everything that can be refused in the element layer. */
export type ElementErrorCode =
  | "element.unknown"
  | "element.not-a-nuclide"
  | "element.unknown-nuclide"
  | "element.no-atomic-weight"
  | "element.not-a-weight"
  | "element.bad-option"
  | "element.unknown-option"
  | "element.no-natural-nuclide";

/**
 * An element, nuclide or atomic weight that cannot be given. Codes start with `element.`.
 *
 * @category Errors
 * @example
 * const outcome = attempt(() => atomicWeight("Tc"));
 * outcome.ok ? "" : outcome.error.code // => "element.no-atomic-weight"
 */
export class ElementError extends /* @__PURE__ */ errorClass<ElementErrorCode>("ElementError") {}

/** What the details of an element's error hold, by code. */
export interface ElementErrorDetails {
  /** An element that nature has no one composition of. */
  readonly "element.no-atomic-weight": {
    readonly symbol: string;
    readonly longestLived: number;
    readonly nuclide: string;
  };
  /** A nuclide without a mass in the table: mass numbers that have one. */
  readonly "element.unknown-nuclide": {
    readonly symbol: string;
    readonly massNumber: number;
    readonly known: readonly number[];
  };
}
