import type { Fields } from "../../foundation/argument";
import { lookingIn } from "../../foundation/facts";
import { tryReadNotation } from "../../ion/internal";
import { guard } from "../argument";
import type { SolidForm } from "../data/hazards";
import type { Circumstance } from "../data/incompatibilities";
import { badInput, readableText } from "../error";
import {
  type Asking,
  type CautionOptions,
  type Cautions,
  cautionsOver,
  checkedCircumstances,
  checkedList,
  checkedState,
} from "./entries";
import type { Asked } from "./entry";
import type { Meeting } from "./incompatibility";

const OF_MASS_PERCENT = {
  formula: true,
  massPercent: true,
  inCylinder: true,
  dissolved: true,
  state: true,
} as const satisfies Fields<FormulaOfStrength>;

/** A formula with the strength of its solution in water, or in its cylinder. */
export interface FormulaOfStrength {
  /** As text, in any notation. */
  readonly formula: string;
  /** Mass of the substance for each 100 of solution, 0 to 100. */
  readonly massPercent?: number;
  /** A gas under pressure: statements and pictogram of the cylinder are added. */
  readonly inCylinder?: boolean;
  /** It stays dissolved in water, at a strength that is not known: dangers by fire of the dry solid are left out. */
  readonly dissolved?: boolean;
  /** The form of a solid, where its forms are classified apart, as powder and pieces of a metal. */
  readonly state?: SolidForm;
}

/**
 * What {@link cautions} says, for formulas alone: a program that has formulas carries no table of names and goods, and is half
 * as large. A text that is no formula is said to be not read.
 *
 * @param formulas - formulas, with `massPercent` (a number from 0 to 100) the statements that apply at that strength
 * @param options - `circumstances`: "closed vessel", "kitchen"; `facts`: facts of the caller's own, added to ours
 * @returns one or more entries for each formula (a substance may have several forms)
 * @throws {SubstanceError} `substance.bad-input`, `substance.too-long`, `substance.unknown-option`
 * @source as {@link cautions}
 * @category Cautions
 * @example
 * cautionsForFormulas(["CuSO4·5H2O"]).substances[0]?.signalWord // => "Danger"
 * cautionsForFormulas([{ formula: "CH3COOH", massPercent: 20 }]).substances[0]?.statements.map((one) => one.code) // => ["H315", "H319"]
 * cautionsForFormulas(["NaClO", "HCl"]).incompatibilities[0]?.code // => "hypochlorite-acid"
 * cautionsForFormulas(["bleach"]).substances[0]?.status // => "not read"
 */
export function cautionsForFormulas(
  formulas: readonly (string | FormulaOfStrength)[],
  options?: CautionOptions,
): Cautions {
  const circumstances = checkedCircumstances(options);
  return lookingIn(options?.facts, guard, () => cautionsOfFormulas(formulas, circumstances));
}

/** The same, with how they meet; in the facts in force. */
export const cautionsOfFormulas = (
  formulas: readonly (string | FormulaOfStrength)[],
  circumstances: readonly Circumstance[],
  meeting?: Meeting,
): Cautions => cautionsOver(checkedList(formulas).map(asking), circumstances, meeting);

function asking(one: string | FormulaOfStrength): Asking {
  if (typeof one === "object" && one !== null) guard.fields(one, OF_MASS_PERCENT, "a formula");
  const given: FormulaOfStrength = typeof one === "object" && one !== null ? one : { formula: one };
  const { formula, massPercent: percent, inCylinder, dissolved, state } = given;
  if (percent !== undefined && !(typeof percent === "number" && percent >= 0 && percent <= 100))
    throw badInput("massPercent as a number from 0 to 100");
  const text = readableText(formula, "a formula");
  const notation = tryReadNotation(text);
  const asked: Asked[] =
    notation === undefined
      ? []
      : [
          {
            given: text,
            formula: text,
            notation,
            inCylinder: inCylinder === true,
            dissolved: dissolved === true,
            ...(state === undefined ? {} : { state: checkedState(state) }),
            ...(percent === undefined ? {} : { percent }),
          },
        ];
  return { text, asked, percent, nearest: [] };
}
