// How a charge is ground: dry, or where its dust harms for good wet, or closed where water would dissolve or change it.
import type { Formula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { isOneOf } from "../../ion/internal";
import { cautionsForFormulas } from "../../substance";
import { protectionFor } from "../../substance/internal";
import { SLAKES } from "../data/drying";
import { QUICK_METALS } from "../data/firing";
import { fateInRoom } from "../reaction/fate";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { isHarshOxidiser } from "./roles";
import { type Use, useOf } from "./use";

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
export const standsWater = (formula: Formula): boolean =>
  fateInRoom(formula).precipitated !== false &&
  !isOneOf(formula, ...SLAKES.formulas) &&
  !(formula.symbols.length === 1 && QUICK_METALS.symbols.includes(formula.symbols[0]!));

/** How these are ground together. */
export function grindingOf(solids: readonly Formula[]): Grinding {
  if (!solids.some(harms)) return "dry";
  return solids.every(standsWater) ? "wet" : "closed";
}

/** What takes no part and is a solid of the charge all the same: a colour, a flux, charcoal. */
const GROUND_IN: readonly Use[] = ["with the first", "charcoal", "seed"];

/** The solids of a charge in the order they are ground in; what takes no part is between the first and the last. */
export function chargeOf(setting: Setting): readonly Material[] {
  const { materials, asides } = setting;
  const [first, ...rest] = materials;
  // alone a harsh oxidiser is ground with nothing
  const isAlone = rest.length === 0 && materials.some(({ form }) => isHarshOxidiser(form));
  const beside = isAlone ? [] : asides.filter((one) => !one.isSolution && GROUND_IN.includes(useOf(one, setting)));
  return first === undefined ? [] : rest.length === 0 ? [...beside, first] : [first, ...beside, ...rest];
}

/** How the charge of a setting is ground. */
export const chargeGrinding = (setting: Setting): Grinding =>
  grindingOf([...chargeOf(setting).map(({ form }) => form), setting.product.formula]);
