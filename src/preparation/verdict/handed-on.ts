// The product of a run as a material for the next plan: its assay as it is given, as it was titrated, or as the run allows.

import { frozen } from "../../foundation/frozen";
import { type Quantity, quantity } from "../../quantity";
import type { Batch } from "../planning/batch";
import { guard } from "../request/argument";
import type { ShelfMaterial } from "../request/request";
import type { Observed } from "./observations";

/** Purity that washing and yield allow: no more than the theory can be in it, no less than the salts left behind. */
function assayEstimate(batch: Batch, dry: Quantity, washes: number | undefined): Quantity | undefined {
  const { theoreticalYield } = batch.product;
  const { washing } = batch;
  if (washing === undefined || !("plan" in washing)) return undefined;
  const { residueAfter, residueUnwashed } = washing.plan;
  const done = Math.min(washes ?? residueAfter.length, residueAfter.length);
  const salt = done === 0 ? residueUnwashed : (residueAfter[done - 1]?.times(washing.drains) ?? residueUnwashed);
  const most = theoreticalYield.compare(dry) < 0 ? theoreticalYield.dividedBy(dry).toNumber("") : 1;
  const least = Math.max(0.01, most - salt.dividedBy(dry).toNumber(""));
  const [middle, half] = [(50 * (most + least)).toFixed(2), (50 * (most - least)).toFixed(2)];
  return quantity(
    { value: middle, unit: "%", halfWidth: half, distribution: "rectangular" },
    {
      label: `assay of ${batch.product.name}, estimated`,
      assumption: "between pure and holding the salts that the washing leaves",
    },
  );
}

/** A titration says what an estimate can only bound; nothing is purer than pure. */
const titrated = (assay: Quantity | undefined): Quantity | undefined =>
  assay === undefined || assay.compare("100 %") > 0 ? undefined : assay;

/** The dry product with its cost, where both are known. */
export function materialMade(
  batch: Batch,
  { setting, dry, assay: found, washes }: Observed,
  title: string,
  options: { readonly name?: string; readonly assay?: ShelfMaterial["assay"] },
): ShelfMaterial {
  guard.fields(options, { name: true, assay: true });
  const { name = batch.product.name, assay } = options;
  const estimate = assay ?? titrated(found) ?? (dry === undefined ? undefined : assayEstimate(batch, dry, washes));
  return frozen({
    name,
    form: setting.product.formula.toString(),
    ...(estimate === undefined ? {} : { assay: estimate }),
    ...(dry === undefined ? {} : { available: dry }),
    ...(dry === undefined || batch.cost.total === undefined ? {} : { pack: { size: dry, price: batch.cost.total } }),
    note: `from ${title}`,
  });
}
