// Salts that no bench gets as a solid: hydrogencarbonates and hydrogensulfites that are known as solutions, and salts whose solutions
// thicken to a syrup or lose their acid where they are boiled down.
import type { Formula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import { ONLY_IN_SOLUTION } from "../../solubility/internal";
import type { SourceKey } from "../data/sources";
import { SYRUPS } from "../data/stands";
import { bySubstance } from "./by-substance";

/** Why a salt is kept in its solution. */
interface Kept {
  readonly why: string;
  readonly sold?: true;
  /** As in the table of syrups. */
  readonly comesApart?: true;
  readonly source: SourceKey;
}

const remembered = /* @__PURE__ */ remembering<Kept | undefined>(200);

/** A salt that is known as a solution only, by its ions; undefined where it can be had as a solid, or nobody knows. */
export const onlyInSolution = (formula: Formula): Kept | undefined =>
  remembered(formula.toString(), () => {
    const { cations, anions, complex } = constitutionOf(formula);
    if (complex !== undefined || cations.length !== 1 || anions.length !== 1) return undefined;
    return ONLY_IN_SOLUTION.find(
      (row) => row.cations.includes(cations[0]!.formula) && row.anions.includes(anions[0]!.formula),
    );
  });

const syrup = /* @__PURE__ */ bySubstance(SYRUPS);

/** Why a salt written without crystal water is handed out as its solution; undefined for what a bench brings out. */
export const keptInSolution = (formula: Formula): Kept | undefined =>
  onlyInSolution(formula) ?? (constitutionOf(formula).waters === 0 ? syrup(formula) : undefined);
