// How a charge is ground: dry, or where its dust harms for good wet, or closed where water would dissolve or change it.
import type { Formula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { isOneOf } from "../../ion/internal";
import { cautionsForFormulas } from "../../substance";
import { protectionFor } from "../../substance/internal";
import { SLAKES } from "../data/drying";
import { QUICK_METALS } from "../data/firing";
import { fateInRoom } from "../reaction/fate";

/** How something is ground. */
export type Grinding = "dry" | "wet" | "closed";

const remembered = /* @__PURE__ */ remembering<boolean>(300);

/** Is there a hazard in its dust? */
const harms = (formula: Formula): boolean =>
  remembered(formula.toString(), () => {
    const { substances } = cautionsForFormulas([formula.toString()]);
    const codes = substances.flatMap(({ statements }) => statements.map(({ code }) => code));
    return protectionFor(codes).some(({ kind }) => kind === "dust");
  });

/** Does it lie in water as it is? */
const standsWater = (formula: Formula): boolean =>
  fateInRoom(formula).precipitated !== false &&
  !isOneOf(formula, ...SLAKES.formulas) &&
  !(formula.symbols.length === 1 && QUICK_METALS.symbols.includes(formula.symbols[0]!));

/** How these are ground together. */
export function grindingOf(solids: readonly Formula[]): Grinding {
  if (!solids.some(harms)) return "dry";
  return solids.every(standsWater) ? "wet" : "closed";
}
