// The phase belongs to an equation, not to a substance: tables and names leave it out.
import { type Formula, parseFormula } from "./formula";
import { asciiText } from "./print/print";

/** @internal The same formula without its phase. */
export function withoutPhase(formula: Formula): Formula {
  if (formula.phase === undefined) return formula;
  return parseFormula(asciiText({ nodes: formula.reading().nodes, phase: undefined }));
}
