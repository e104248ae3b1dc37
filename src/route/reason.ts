// Why a route goes or does not, with the figures it rests on.
import type { Quantity } from "../quantity";

/** Why: a code, words, figures and what they rest on. */
export interface RouteReason {
  /** What the reason is about, for programs. */
  readonly code: string;
  /** One sentence for a person to read. */
  readonly text: string;
  /** Figures behind the text; empty where there are none. */
  readonly numbers: readonly Quantity[];
  /** What the reason rests on, in words. */
  readonly source: string;
}

/** A reaction that was looked at and does not serve, or what is missing for one that would. */
export interface RefusedRoute extends RouteReason {
  /** The equation that was tried. */
  readonly equation: string | undefined;
  /** What stands in place of the product. */
  readonly instead: readonly string[];
  /** Its figures are missing: whether it goes is not known. */
  readonly unknown: boolean;
}
