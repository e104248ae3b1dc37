// Which species of an equation a caller means: the one that is written so; else any of the same atoms and charge, and of the phase where
// one is named.
import { Formula, tryParseFormula } from "../formula";

/** Places of the species meant; none where the text is no formula or of none of them. */
export function speciesMeant(formulas: readonly Formula[], wanted: Formula | string): readonly number[] {
  const text = String(wanted);
  const where = (is: (own: Formula) => boolean): number[] => formulas.flatMap((own, at) => (is(own) ? [at] : []));
  const written = where((own) => own.text === text || String(own) === text);
  if (written.length > 0) return written;
  const read = wanted instanceof Formula ? wanted : tryParseFormula(text);
  const formula = read instanceof Formula ? read : read.ok ? read.value : undefined;
  return formula === undefined
    ? []
    : where((own) => [undefined, own.phase].includes(formula.phase) && own.hasSameComposition(formula));
}
