// A firing that makes heavier: what its mass says of how far it went, and what else would make it as light. Handling takes a share
// of all of it, the fire adds a part: where that part is the smaller, a mass alone does not tell.

import { molarMass } from "../../formula";
import type { Quantity } from "../../quantity";
import { lessThanAll, planned } from "../planning/exact";
import { type Gain, gainOf, shareDone } from "../planning/gain";
import { belief, clearlyAbove, percent } from "./difference";
import { afterLosses, type Evidence } from "./evidence";
import type { Finding } from "./finding";

/** What the charge gains, of what was left of it by the record; undefined for all else. */
function gainLeft(evidence: Evidence): Gain | undefined {
  const whole = gainOf(evidence.batch, evidence.handlingLoss);
  if (whole === undefined || evidence.losses.length === 0) return whole;
  const { start, end, gain, tells } = whole;
  return {
    start: afterLosses(evidence, start),
    end: afterLosses(evidence, end),
    gain: afterLosses(evidence, gain),
    tells,
  };
}

/** Is it a mass that is light because it gained too little, or that may be so? */
function gainedTooLittle(evidence: Evidence): boolean {
  const whole = gainLeft(evidence);
  if (whole === undefined || evidence.dryness.constant === true) return false;
  const enough = whole.start.plus(whole.gain.times(planned("firedThrough")));
  return clearlyAbove(enough, evidence.dry) && !clearlyAbove(whole.start, evidence.dry);
}

/** The part that has not reacted, or that is no feed at all: both are in the crucible and gained nothing. */
export function notFiredThrough(evidence: Evidence): Finding[] {
  const { batch, dry, dryness, grams, observed } = evidence;
  const whole = gainLeft(evidence);
  const [material, another] = observed.setting.materials;
  const [supplied] = batch.materialBalance.supplied;
  if (whole === undefined || material === undefined || supplied === undefined) return [];
  if (!clearlyAbove(whole.end, dry) || clearlyAbove(whole.start, dry)) return [];
  const done = shareDone(whole, dry);
  const left = lessThanAll(done);
  const feed = afterLosses(evidence, supplied.amount.times(molarMass(material.form)).to("g"));
  const mass = feed.times(left).to("g") as Quantity<"mass">;
  const stands = dryness.constant === true;
  const of = `${grams(whole.start)} to ${grams(whole.end)}`;
  const findings: Finding[] = [
    {
      code: "unreacted",
      text: `not fired through: from ${of}, ${grams(dry)} says that ${percent(done, 2)} has reacted${another === undefined ? ` and ${grams(mass)} of ${material.shelf.name} is left` : ""}, if nothing was lost${stands ? "; but it stands still" : ""}`,
      mass: another === undefined ? mass : undefined,
      figure: done,
      likelihood: undefined,
      weight: belief(stands ? "notDoneAtConstantMass" : "notDone"),
      next: "heat again, stirred up and open to the air, until it gains no more",
    },
  ];
  if (another === undefined && left.compare(planned("mostInert")) <= 0)
    findings.push({
      code: "impure",
      text: `${grams(mass)} of what absorbs nothing in the fire would explain it: ${percent(left, 2)} of the ${material.shelf.name}`,
      mass,
      figure: left.to("%"),
      likelihood: undefined,
      weight: belief(stands ? "inertAtConstantMass" : "inertInFire"),
      next: `titrate a weighed sample of it, or of the ${material.shelf.name}`,
    });
  return findings;
}

/** What a mass says that handling alone would explain, where so small a gain hides in it; undefined where it tells. */
export function hiddenGain(evidence: Evidence): string | undefined {
  const whole = gainLeft(evidence);
  if (whole === undefined || whole.tells || !gainedTooLittle(evidence)) return undefined;
  const { dry, grams, handlingLoss } = evidence;
  return `; but ${percent(handlingLoss, 2)} lost in handling is ${grams(whole.end.times(handlingLoss))}, and the whole gain ${grams(whole.gain)}: the mass alone does not tell it from ${percent(shareDone(whole, dry), 2)} reacted`;
}

/** How far a mass is below the charge itself; undefined where it is not. */
export function belowCharge(evidence: Evidence): string | undefined {
  const whole = gainLeft(evidence);
  const { dry, grams } = evidence;
  if (whole === undefined || !clearlyAbove(whole.start, dry)) return undefined;
  return `${grams(dry)} is ${grams(whole.start.minus(dry).to("g"))} less than the ${grams(whole.start)} that went in: so much was lost at the least, and the mass does not tell how much of the rest has reacted`;
}
