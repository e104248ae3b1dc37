// Gases for the hood that materials give where they meet otherwise than planned: chlorine from bleach and acid is in no equation
// that uses it up, and is given off wherever one of the two is ahead.
import { type Formula, parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import type { Cautions } from "../../substance";
import { gasRow, isAntisolvent } from "../reaction/fluids";
import { nameOfFormula } from "../reaction/species";

const nameForTheHood = (text: string): string[] => {
  const read = attempt(() => parseFormula(text));
  return read.ok && gasRow(read.value)?.hood === true ? [nameOfFormula(read.value)] : [];
};

/** Alcohol that takes no part: in the cold it brings crystals out, or rinses them. */
function isOnlyRinse(text: string, reactants: readonly { readonly formula: Formula }[]): boolean {
  const read = attempt(() => parseFormula(text));
  return (
    read.ok && isAntisolvent(read.value) && !reactants.some(({ formula }) => formula.hasSameComposition(read.value))
  );
}

/** Names of the gases for the hood that a combination gives, whose conditions are met. */
export const gasesThatMayCome = (
  { incompatibilities }: Cautions,
  reactants: readonly { readonly formula: Formula }[],
): readonly string[] => [
  ...new Set(
    incompatibilities
      // a rinse with alcohol, cold, gives none with a salt of its liquor
      .filter(({ state, materials }) => state === "met" && !materials.some((one) => isOnlyRinse(one, reactants)))
      .flatMap(({ products }) => products.flatMap(nameForTheHood)),
  ),
];
