// Why a reaction is no way, in words or with figures.

import type { Quantity } from "../quantity";

/** Why a reaction is no way, with its figures. */
export interface Bar {
  readonly text: string;
  readonly numbers: readonly Quantity[];
  readonly source: string;
}

/** Words alone, or with figures that are worked out when they are read. */
export type Why = string | (() => Bar);
