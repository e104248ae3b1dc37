// A stored request with the facts of the caller's own that it was written with. Apart, because only who reads records back
// carries the reader of facts.
import { factsFromJSON } from "../../facts";
import { isFacts } from "../../foundation/facts";

/** The same with the set that its record of facts stands for. */
export function revived<T extends object>(stored: T): T {
  const { facts } = stored as { readonly facts?: unknown };
  return facts === undefined || isFacts(facts) ? stored : { ...stored, facts: factsFromJSON(facts) };
}
