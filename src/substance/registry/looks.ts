// How a substance looks, by its formula: columns of the registry of their own, for a program that names nothing.
import type { Formula } from "../../formula";
import { byElements } from "../../formula/internal";
import { ownRow } from "../../foundation/facts";
import { remembering } from "../../foundation/memo";
import { formulaKey, readNotation, textOf } from "../../ion/internal";
import { REGISTRY_LOOKS } from "../data/registry";
import type { SourceKey } from "../data/sources";

interface Looks {
  readonly appearance?: string;
  readonly source: SourceKey;
}

/** Rows by composition; of isomers none, for nobody knows which is meant. */
const byComposition = /* @__PURE__ */ byElements(
  REGISTRY_LOOKS,
  ({ formula }) => formula,
  (rows) => {
    const found = new Map<string, Looks | undefined>();
    for (const row of rows) {
      const key = formulaKey(readNotation(row.formula));
      found.set(key, found.has(key) ? undefined : row);
    }
    return found;
  },
);

const remembered = /* @__PURE__ */ remembering<Required<Looks> | undefined>(200);

/** How the substance of a formula looks, crystal water and all, and where that is from; undefined where it is not known. */
export const looksOf = (formula: Formula): Required<Looks> | undefined =>
  remembered(formula.toString(), () => {
    const notation = readNotation(formula);
    const key = formulaKey(notation);
    const found = ownRow<Looks>("substances", () => key) ?? byComposition(textOf(notation)).get(key);
    return found?.appearance === undefined ? undefined : { appearance: found.appearance, source: found.source };
  });
