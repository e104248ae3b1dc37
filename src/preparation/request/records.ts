// Records that are read back: is the beginning of one right?

import { headProblem, type RecordHead } from "../../foundation/record";
import { PlanError } from "../error";

/** A record whose beginning is right; its fields are still to be checked. */
export function recordOf<R extends RecordHead>(data: unknown, type: R["type"], schema: number): Partial<R> {
  const problem = headProblem(data, type, schema);
  if (problem === undefined) return data as Partial<R>;
  throw new PlanError("plan.json", `not a ${type} record: ${problem}`, { hint: "pass what toJSON gave, parsed" });
}
