// Observations as they come in: copied, frozen, of known fields, and of values that make sense.
import { ArgumentGuard, type Fields, isRecord } from "../../foundation/argument";
import { isQuantity } from "../../quantity";
import { PlanError } from "../error";
import { taken } from "../request/door";
import type { Observations } from "./observations";
import { OUTCOMES } from "./test-outcome";

const observed = /* @__PURE__ */ new ArgumentGuard(PlanError, {
  unknown: "plan.unknown-option",
  bad: "plan.observation",
});

const OBSERVATIONS = {
  weighed: true,
  measured: true,
  strengths: true,
  assay: true,
  assays: true,
  temperature: true,
  lost: [{ at: true, of: true, volume: true, mass: true }],
  wetCake: true,
  washes: true,
  filtrateVolume: true,
  dried: true,
  crops: true,
  ignition: { before: true, after: true, residue: true },
  tests: { filtrate: true, lastWash: true },
  pH: true,
  acidPerGram: true,
  note: true,
} as const satisfies Fields<Observations>;

/** A vessel weighed full and empty. */
const WITH_VESSEL = { gross: true, tare: true } as const;

/** A weighing that is not a quantity has both readings of its vessel. */
function checkWeighing(given: unknown, argument: string): void {
  if (!isRecord(given) || isQuantity(given)) return;
  observed.fields(given, WITH_VESSEL, argument);
  for (const field of ["gross", "tare"] as const)
    if (given[field] === undefined) throw observed.refused(undefined, `${argument}.${field}`, "a mass", "left out");
}

function checkWeighings({ dried, crops }: Observations): void {
  if (Array.isArray(dried)) for (const [i, one] of dried.entries()) checkWeighing(one, `dried[${i}]`);
  else checkWeighing(dried, "dried");
  if (crops === undefined) return;
  observed.list(crops, "crops");
  for (const [i, one] of crops.entries()) checkWeighing(one, `crops[${i}]`);
  if (crops.length === 0) throw new PlanError("plan.observation", "crops is an empty list: leave it out");
  if (dried !== undefined)
    throw new PlanError("plan.observation", "a run has dried or crops, not both", {
      hint: "dried are successive weighings of the whole product, crops are dry masses to be added",
    });
}

/** Observations as they are kept. */
export function takenObservations(given: Observations): Observations {
  if (typeof given !== "object" || given === null || Array.isArray(given))
    throw new PlanError("plan.observation", 'observations are an object, such as { dried: "90.0 g" }');
  const observations = taken(given);
  observed.fields(observations, OBSERVATIONS);
  for (const table of ["weighed", "measured", "strengths", "assays"] as const)
    if (observations[table] !== undefined) observed.record(observations[table], table);
  checkWeighings(observations);
  for (const [name, outcome] of Object.entries(observations.tests ?? {}))
    if (outcome !== undefined) observed.choice(outcome, `tests.${name}`, OUTCOMES);
  if (observations.note !== undefined) observed.text(observations.note, "note");
  return observations;
}
