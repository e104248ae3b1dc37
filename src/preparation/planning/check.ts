// One thing to watch, what it is read from, and how a figure stands in its sentence.

import type { Quantity } from "../../quantity";
import type { Work } from "../procedure/bench";
import type { Role } from "../procedure/roles";
import type { Setting } from "../request/setting";
import type { BatchFigures } from "./batch-figures";

/** One thing to watch. */
export interface Check {
  /** One sentence for a person to read. */
  readonly text: string;
  /** The figure behind it. */
  readonly figure: Quantity | undefined;
  /** The crystals that are to come, which the verdict on the reaction quotes; what keeps them from being pure; what decides how much is weighed. */
  readonly about?: "crop" | "purity" | "weighing" | undefined;
}

/** What the checks of a batch are read from. */
export interface Watched {
  readonly setting: Setting;
  readonly batch: BatchFigures;
  /** The work that is looked at: what is over, and what comes out, stands in its vessels. */
  readonly work: Work;
  readonly roles: readonly Role[];
}

/** A figure as it stands in a sentence. */
export const shown = (q: Quantity, figures = 3): string => q.format({ significant: figures, uncertainty: "none" });
export const check = (text: string, figure?: Quantity): Check => ({ text, figure });
/** The same, of what decides how much is weighed: it is read before that. */
export const ofWeighing = (text: string, figure: Quantity): Check => ({ text, figure, about: "weighing" });
