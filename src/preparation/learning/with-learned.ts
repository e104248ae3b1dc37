// A request with what past runs teach put in where the person left it open.

import { attempt } from "../../foundation/error";
import { type Quantity, quantity } from "../../quantity";
import { planPreparation } from "../plan";
import { formulaFrom, nameOfFormula } from "../reaction/species";
import { guard } from "../request/argument";
import { takenRequest } from "../request/door";
import type { PlanRequest } from "../request/request";
import type { Learned } from "./learn";
import { wayOf } from "./lesson";

/**
 * A request for a plan with what runs taught in place of planning values: the handling loss to allow for, the liquor that a cake of
 * this product keeps, the assays of packs of the same names. What the request states itself stays, but for assays.
 *
 * @param request - as for `planPreparation`
 * @param learned - what `learnFromRuns` gave
 * @returns a request for `planPreparation`
 * @throws {PlanError} `plan.request` for what is no request or nothing learned; the codes of `planPreparation`
 * @category Planning
 * @example
 * const request = {
 *   equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
 *   product: "CaCO3",
 *   materials: [{ name: "de-icer", form: "CaCl2·2H2O" }, { name: "soda", form: "Na2CO3", excess: "5 %" }],
 *   scale: { product: "100 g" },
 * } as const;
 * const runs = ["97.1 g", "96.8 g", "97.4 g"].map((dried) => evaluateRun(planPreparation(request), { dried: dried as "1 g" }));
 * planPreparation(withLearned(request, learnFromRuns(runs))).handlingLoss.compare("10 %") // => -1
 */
export function withLearned(request: PlanRequest, learned: Learned): PlanRequest {
  const taken = takenRequest(request);
  const way = wayOf(planPreparation(taken));
  guard.record(learned, "learned");
  for (const field of ["allowances", "retainedLiquor", "assays"] as const)
    guard.list(learned[field], `learned.${field}`);
  const allowance = learned.allowances.find(({ of }) => of === way)?.handlingLoss;
  const wanted = attempt(() => nameOfFormula(formulaFrom(taken.product)));
  const liquor = wanted.ok ? learned.retainedLiquor.find(({ of }) => of === wanted.value)?.value : undefined;
  return {
    ...taken,
    ...(taken.handlingLoss !== undefined || allowance === undefined
      ? {}
      : { handlingLoss: allowance as NonNullable<PlanRequest["handlingLoss"]> }),
    ...(liquor === undefined
      ? {}
      : { washing: { retainedLiquorPerGram: liquor as Quantity<"specific volume">, ...taken.washing } }),
    materials: taken.materials.map((material) => {
      const found = learned.assays.find(({ of }) => of === material.name);
      if (found === undefined || material.strength !== undefined) return material;
      // Nothing is purer than pure.
      const whole = quantity({
        value: "100",
        unit: "%",
        standardUncertainty: found.value.standardUncertainty!.toString(),
      });
      const assay = found.value.compare("100 %") > 0 ? whole : found.value;
      return { ...material, assay: assay as Quantity<"number"> };
    }),
  };
}
