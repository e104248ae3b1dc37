// How one step of a chain fits to the next: under which name, in which form, and how much of it is taken.

import type { BalancedEquation } from "../../equation";
import type { Formula } from "../../formula";
import type { Quantity } from "../../quantity";
import { PlanError } from "../error";
import type { Plan } from "../plan";
import { withForm } from "../reaction/in-form";
import { formulaFrom, sameCore } from "../reaction/species";
import { settingOf } from "../request/read-setting";
import type { ShelfMaterial } from "../request/request";
import type { ChainStep } from "./types";

/** Name under which the next step takes what this one makes. */
export const madeName = (step: ChainStep): string => step.productName ?? step.product;

/** What a step makes, in the form that water gives. */
const madeBy = ({ expectedYield: _, ...step }: ChainStep): Formula =>
  settingOf({ ...step, scale: { product: "1 mol" } }).product.formula;

/** A step that takes what the one before makes as that is written takes it in the form in which it is made. */
export function takingAsMade(step: ChainStep, before: ChainStep | undefined): ChainStep {
  if (before === undefined) return step;
  const asked = formulaFrom(before.product);
  const made = madeBy(before);
  if (made.hasSameComposition(asked)) return step;
  const name = madeName(before);
  const materials = step.materials.map((one) =>
    one.name === name && one.strength === undefined && formulaFrom(one.form).hasSameComposition(asked)
      ? { ...one, form: made }
      : one,
  );
  return { ...step, materials };
}

/** What a step makes is what the next one takes, unless that makes a solution of it. */
function checkForm({ form, strength }: ShelfMaterial, before: ChainStep, i: number, name: string): void {
  const made = madeBy(before);
  if (strength !== undefined || formulaFrom(form).hasSameComposition(made)) return;
  throw new PlanError("plan.request", `step ${i + 1} takes ${name} as ${form}, step ${i} makes ${made}`, {
    hint: "give the form that is made, or add what turns it into the other as a step",
  });
}

/** How much a step, the one at `i`, takes of what the one before makes. */
export function takenOf({ weighings, materialBalance }: Plan, step: ChainStep, before: ChainStep, i: number): Quantity {
  const name = madeName(before);
  if (!weighings.some(({ material }) => material === name)) {
    throw new PlanError("plan.request", `step ${i + 1} uses nothing that is called '${name}'`, {
      hint: `call the material that step ${i} makes '${name}', or give step ${i} another productName`,
    });
  }
  checkForm(step.materials.find((one) => one.name === name)!, before, i, name);
  return materialBalance.supplied.find(({ material }) => material === name)!.amount;
}

/** The equation of a plan with what the step before makes in the form in which that makes it, so that it cancels. */
export function asMade({ equation }: Plan, before: ChainStep | undefined): BalancedEquation {
  if (before === undefined) return equation;
  const made = madeBy(before);
  const used = equation.reactants.find(({ formula }) => sameCore(formula, made))?.formula;
  return used === undefined || used.hasSameComposition(made) ? equation : withForm(equation, used, made);
}
