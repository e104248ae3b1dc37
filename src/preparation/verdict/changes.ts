// Where a run differs from its plan, figure by figure.

import type { Quantity } from "../../quantity";
import type { Batch } from "../planning/batch";

/** How the run differs from the plan, for one figure. */
export interface Change {
  /** Figure or fact that differs, in words. */
  readonly what: string;
  /** As the plan has it. */
  readonly planned: Quantity | string;
  /** As it really was. */
  readonly now: Quantity | string;
}

export function changesBetween(plan: Batch, batch: Batch): Change[] {
  const changes: Change[] = [];
  plan.materialBalance.supplied.forEach((planned, i) => {
    const now = batch.materialBalance.supplied[i]!;
    if (planned.portion.compare(now.portion) !== 0)
      changes.push({ what: `${now.material} taken`, planned: planned.portion, now: now.portion });
  });
  const figures = (what: string, planned: Quantity, now: Quantity): void => {
    if (planned.compare(now) !== 0) changes.push({ what, planned, now });
  };
  if (plan.materialBalance.limiting !== batch.materialBalance.limiting) {
    changes.push({
      what: "limiting material",
      planned: plan.materialBalance.limiting,
      now: batch.materialBalance.limiting,
    });
  }
  batch.materialBalance.supplied.forEach((now, i) => {
    figures(`excess of ${now.material}`, plan.materialBalance.supplied[i]!.excess, now.excess);
  });
  figures("theoretical yield", plan.product.theoreticalYield, batch.product.theoreticalYield);
  batch.gas.forEach((gas, i) => {
    figures(`${gas.formula} evolved`, plan.gas[i]!.volume, gas.volume);
  });
  return changes;
}
