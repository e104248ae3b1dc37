// One spelling of a formula for each substance: what joins tables, keys of maps and JSON.

import { Formula, parseFormula } from "../../formula";
import { byDryRatio } from "../../formula/internal";
import { attempt } from "../../foundation/error";
import { constitutionOf, sameSubstance } from "../../ion";
import { ACID_STEPS, bareIon, chargeOfIon } from "../../ion/internal";
import { registryFormulas } from "./registry-index";

/** Acids and bases of the steps that are no ions: glycine is written as there, not as a salt of the hydron. */
const molecules = (): readonly string[] =>
  ACID_STEPS()
    .flatMap(({ acid, base }) => [acid, base])
    .filter((formula) => chargeOfIon(formula) === 0);

/** Formulas of the tables that may be of a substance, the registry's before the others. */
const spellings = /* @__PURE__ */ byDryRatio(
  () => [...registryFormulas(), ...molecules()],
  (formula) => formula,
);

/** A substance as the tables spell it. */
const listed = (formula: Formula): string | undefined => {
  const { identity } = constitutionOf(formula);
  return spellings(formula).find((one) => constitutionOf(one).identity === identity);
};

/** A bare part, as often as the formula has it; more than one atom goes into brackets. */
function times(part: string, count: number): string {
  if (count === 1) return part;
  return /^(?:[A-Z][a-z]?|[[(].*[\])])$/.test(part) ? `${part}${count}` : `(${part})${count}`;
}

/** Put together from what it is made of, the lower charge first: undefined where that is another substance. */
function composed(formula: Formula): string | undefined {
  const { kind, cations, anions, complex, inWater, ligands, molecules, waters } = constitutionOf(formula);
  if (kind === "ion") return (cations[0] ?? anions[0])?.formula;
  const ions = (side: typeof cations): string =>
    [...side]
      .sort(
        (a, b) =>
          Number(b.charge > 0) - Number(a.charge > 0) || a.charge - b.charge || (a.formula < b.formula ? -1 : 1),
      )
      .map((one) => times(bareIon(one.formula), one.count))
      .join("");
  // a metal with its ligands stays one ion
  const salt = complex === undefined ? ions(cations) + ions(anions) : ions(inWater);
  const beside = [
    ...(complex === undefined ? ligands : []),
    ...molecules,
    ...(waters > 0 ? [{ formula: "H2O", count: waters }] : []),
  ]
    .map((one) => `${one.count === 1 ? "" : one.count}${one.formula}`)
    .sort();
  const whole = [...(salt === "" ? [] : [salt]), ...beside].join("·");
  return [whole, byParts(formula)].find((text) => {
    const again = attempt(() => parseFormula(text));
    return again.ok && again.value.hasSameComposition(formula) && sameSubstance(text, formula);
  });
}

/** The parts of an adduct, each in its one spelling, in the order of the alphabet. */
const byParts = ({ parts }: Formula): string =>
  parts.length < 2
    ? ""
    : parts
        .map(({ formula, multiplier }) => `${multiplier.equals(1) ? "" : multiplier}${canonicalFormula(formula)}`)
        .sort()
        .join("·");

/**
 * The one spelling of a substance, whichever way its formula was written: as the registry has it, else put together from its
 * ions. Use it as a key: of maps, of rows in a database, of JSON. It is what `substance`, `identify` and `search` answer.
 *
 * @param formula - any spelling: Hill order, brackets, any dot before crystal water; crystal water counts, and isomers differ
 * @returns ASCII but for the dot `·` before crystal water; what can be put together in no other way stays as it was written
 * @throws {FormulaError} those of `parseFormula`
 * @category Names
 * @example
 * canonicalFormula("CuSO4.5H2O") // => "CuSO4·5H2O"
 * canonicalFormula("CuH10O9S") // => "CuSO4·5H2O"
 * canonicalFormula("Ca[OH]2") // => "Ca(OH)2"
 * canonicalFormula("CO(NH2)2") === canonicalFormula("NH4OCN") // => false
 */
export function canonicalFormula(formula: Formula | string): string {
  const read = formula instanceof Formula ? formula : parseFormula(formula);
  return listed(read) ?? composed(read) ?? read.toString();
}
