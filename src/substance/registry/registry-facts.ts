// What the registry knows of a substance beside its names: registry number, appearance, sources.

import { once } from "../../foundation/memo";
import { type NamesRow, REGISTRY_FACTS, REGISTRY_NAMES } from "../data/registry";

type FactsRow = ReturnType<typeof REGISTRY_FACTS>[number];

const byRow = /* @__PURE__ */ once(
  (): ReadonlyMap<NamesRow, FactsRow> => new Map(REGISTRY_NAMES().map((row, i) => [row, REGISTRY_FACTS()[i]!])),
);

/** The facts of a row; a row of the caller's own has them itself. */
export const factsOf = (row: NamesRow): FactsRow => byRow().get(row) ?? (row as NamesRow & FactsRow);

/** Rows with a registry number. */
export const numbered = /* @__PURE__ */ once((): ReadonlyMap<string, NamesRow> => {
  const facts = REGISTRY_FACTS();
  return new Map(REGISTRY_NAMES().flatMap((row, i) => (facts[i]!.cas === undefined ? [] : [[facts[i]!.cas, row]])));
});
