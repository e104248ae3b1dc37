// Which species leave as gas, and which leave with the water a cake dries from.
import type { Formula } from "../../formula";
import type { Quantity } from "../../quantity";
import { GASES, GASES_IN_WATER, type GasRow } from "../data/gases";
import { LIQUIDS, type LiquidRow, NOT_MIXING } from "../data/liquids";
import { exact, planned } from "../planning/exact";
import { isAmmonia } from "./acids";
import { bySubstance } from "./by-substance";

export const gasRow: (formula: Formula) => GasRow | undefined = /* @__PURE__ */ bySubstance(GASES);
const liquidRow: (formula: Formula) => LiquidRow | undefined = /* @__PURE__ */ bySubstance(LIQUIDS);

/** The gas that is meant where a formula is written for it in water, such as H2SO3. */
export const gasInWater: (formula: Formula) => { readonly gas: string } | undefined =
  /* @__PURE__ */ bySubstance(GASES_IN_WATER);

/** Does this species leave as gas? A phase written in the equation decides; else the table. */
export function isGas(formula: Formula, wet: boolean): boolean {
  if (formula.phase !== undefined) return formula.phase === "g";
  const row = gasRow(formula);
  return row !== undefined && !(wet && row.keptByWater === true);
}

/** A material that comes as gas, by itself and not in water. */
export const isLedIn = ({ form, isSolution }: { readonly form: Formula; readonly isSolution: boolean }): boolean =>
  !isSolution && isGas(form, false);

/** Alcohol or acetone, which bring a salt out of water or rinse it, and burn. */
export const isAntisolvent = (formula: Formula): boolean => liquidRow(formula)?.antisolvent === true;

/** A liquid that mixes with water. */
export const isMiscible = (formula: Formula): boolean => liquidRow(formula) !== undefined;

/** A liquid or gas that stays in its water: nothing of it crystallises at a bench. */
export const staysInWater = (formula: Formula): boolean =>
  formula.phase === undefined && (isMiscible(formula) || gasRow(formula)?.keptByWater === true);

const otherLiquid = /* @__PURE__ */ bySubstance(NOT_MIXING);

/** A liquid that is parted from water by a funnel or by distilling. */
export const isOtherLiquid = (formula: Formula): boolean => otherLiquid(formula) !== undefined;

/** Leaves a drying cake with the water. */
export const isVolatile = (formula: Formula): boolean => (gasRow(formula) ?? liquidRow(formula))?.leavesCake === true;

/** Where a liquid boils that leaves a liquor before the water does; undefined for all else. */
export function boilingPoint(formula: Formula): Quantity<"temperature"> | undefined {
  const { boils } = liquidRow(formula) ?? {};
  return boils === undefined ? undefined : (exact(`${boils} °C`) as Quantity<"temperature">);
}

/** Is it as good as gone from water that is so warm: so much hotter than it boils by itself? */
export function leavesWarm(formula: Formula, at: Quantity<"temperature">): boolean {
  const boils = boilingPoint(formula);
  return boils !== undefined && boils.plus(planned("drivesOff")).compare(at) <= 0;
}

/** Goes with the first of the steam where water is boiled off. */
export const leavesWithSteam = (formula: Formula): boolean => boilingPoint(formula) !== undefined || isAmmonia(formula);

/** A product beside the wanted one that warm hands make boil. */
export const boilsLow = (formula: Formula): boolean =>
  boilingPoint(formula)?.compare(planned("boilsLow") as Quantity<"temperature">) === -1;

/** Is it a gas that burns? */
export const burns = (formula: Formula): boolean => gasRow(formula)?.burns === true;
