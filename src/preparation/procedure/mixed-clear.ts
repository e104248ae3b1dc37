// Solutions that are each clear before they are mixed: what comes then is product, and nothing is filtered from it any more.

import { isLedIn } from "../reaction/fluids";
import type { Bench } from "./bench";
import type { ProcedureKind } from "./kinds";

/** Kinds whose product is there as soon as two solutions meet, and is held in solution by nothing in them. */
const AT_ONCE: readonly ProcedureKind[] = ["other", "crystallisation", "double salt", "neutralisation"];

/** Is a product whose solubility no table has made of solutions alone, of which one is brought to the other? */
export const isMixedClear = ({ frame: { isolation, feeds, kind, ranks, setting } }: Bench): boolean =>
  isolation.how === "unknown" &&
  AT_ONCE.includes(kind) &&
  new Set(ranks).size > 1 &&
  feeds.every(({ how }) => how !== "solid") &&
  !setting.materials.some(isLedIn);
