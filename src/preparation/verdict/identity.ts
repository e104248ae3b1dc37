// What ignition of a sample and acid say the product of a run is.

import { type Quantity, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { alternativesOf } from "../feasibility/oxide-or-hydroxide";
import { identified } from "../identity/identity";
import { lossOf } from "../identity/tests";
import type { Identity } from "../identity/types";
import type { Batch } from "../planning/batch";
import { exact, planned } from "../planning/exact";
import { gainOf } from "../planning/gain";
import { driedOf, inAirOf } from "./candidates";
import { clearlyAbove } from "./difference";
import type { Observations, Observed } from "./observations";

/** What another sample of the same powder may lose beside this one. */
const scatterOfSamples = (): Quantity =>
  quantity(
    { value: "0", unit: "%", standardUncertainty: planned("sampleScatter").in("%").toString() },
    { symbol: "s", label: "scatter of samples", assumption: "one sample represents all of the product" },
  );

/** Does a charge become heavier in its own fire, as this one did? */
const isGaining = (batch: Batch, before: Quantity, after: Quantity): boolean =>
  after.compare(before) >= 0 && gainOf(batch, exact("0 %")) !== undefined;

/** No sample of a product weighs more than all of it: what does is the charge of the kiln, and its ignition the firing itself. */
function isFiring(batch: Batch, { dry, dried }: Observed, { before, after }: NonNullable<Observations["ignition"]>) {
  if (batch.isolation.how !== "residue") return false;
  const charge = expectDimension(before, "mass", "ignition.before");
  if (isGaining(batch, charge, expectDimension(after, "mass", "ignition.after"))) return true;
  const weighings = dry === undefined ? [batch.product.theoreticalYield] : [dry, ...dried];
  if (!weighings.every((one) => clearlyAbove(charge, one))) return false;
  // Refused like any ignition that makes heavier.
  lossOf(charge, expectDimension(after, "mass", "ignition.after"), exact("0 %"));
  return true;
}

/** The product by its tests; undefined where none was made. */
export function identityOf(
  observed: Observed,
  batch: Batch,
  { ignition, acidPerGram }: Observations,
  isDry: boolean,
): Identity | undefined {
  const sample = ignition === undefined || isFiring(batch, observed, ignition) ? undefined : ignition;
  if (sample === undefined && acidPerGram === undefined) return undefined;
  const { product } = observed.setting;
  const residue = sample?.residue;
  return identified(
    {
      before: sample?.before,
      after: sample?.after,
      product: product.formula,
      candidates: [...inAirOf(observed), ...driedOf(observed), ...alternativesOf(observed.setting)],
      ...(residue === undefined ? {} : { residue }),
      // Nothing comes damp out of a fire.
      adsorbedWater: planned(isDry || !observed.setting.wet ? "dryHolds" : "dampHolds"),
      acidPerGram: acidPerGram as "1 mmol/g" | undefined,
    },
    scatterOfSamples(),
  );
}
