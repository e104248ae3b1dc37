// What ignition of a sample says of an explanation: the loss that its parts would have, held against the loss found.
import type { Formula } from "../../formula";
import { parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import type { Quantity } from "../../quantity";
import { mayIgnite } from "../identity/by-ignition";
import { residueOf } from "../identity/ignition";
import { expectedLossOf } from "../identity/tests";
import { planned } from "../planning/exact";
import { COVERAGE, likelihoodAt } from "./difference";
import type { Evidence } from "./evidence";

/** Likelihood of two figures of a sample that should be the same: two ways to tell them agree within some points. */
export function agreement(found: Quantity, asked: Quantity): number {
  const apart = found.minus(asked).toNumber("%");
  return likelihoodAt((COVERAGE * apart) / planned("sameWater").toNumber("%"));
}

/** What to do next, where that is to ignite a sample: what is dangerous in fire is titrated. */
export const nextByFire = ({ observed: { setting } }: Pick<Evidence, "observed">, next: string): string =>
  mayIgnite(setting.product.formula)
    ? next
    : "titrate a weighed sample; never ignite it: what heat makes of it is dangerous";

/** What the sample was ignited to, where that is given; each solid by its own row otherwise. */
function ignitedTo({ batch, identity }: Evidence): Formula | undefined {
  const own = identity?.candidates.find(({ formula }) => formula === batch.product.formula);
  return own === undefined ? undefined : parseFormula(own.residue);
}

/** What ignition drives off of a solid; undefined where no residue is known. */
function lossOf(evidence: Evidence, formula: Formula): Quantity | undefined {
  const end = ignitedTo(evidence) ?? residueOf(formula, undefined)?.residue;
  if (end === undefined) return undefined;
  const loss = attempt(() => expectedLossOf(formula, end));
  return loss.ok ? loss.value : undefined;
}

/** A solid and its part of the sample. */
interface PartOfSample {
  readonly formula: Formula;
  readonly share: Quantity;
}

/** Likelihood of the loss that ignition found, if the sample were so; undefined where nothing was ignited or a loss is not known. */
export function likelihoodByFire(evidence: Evidence, parts: readonly PartOfSample[]): number | undefined {
  const found = evidence.identity?.loss;
  if (found === undefined) return undefined;
  let asked: Quantity | undefined;
  for (const { formula, share } of parts) {
    const loss = lossOf(evidence, formula)?.times(share);
    if (loss === undefined) return undefined;
    asked = asked?.plus(loss) ?? loss;
  }
  return asked === undefined ? undefined : agreement(found, asked);
}
