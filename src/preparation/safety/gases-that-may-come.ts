// Gases for the hood that materials give where they meet otherwise than planned: chlorine from bleach and acid is in no equation
// that uses it up, and is given off wherever one of the two is ahead.
import { parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import type { Cautions } from "../../substance";
import { ALCOHOL } from "../procedure/alcohol";
import { gasRow } from "../reaction/fluids";
import { nameOfFormula } from "../reaction/species";

const nameForTheHood = (text: string): string[] => {
  const read = attempt(() => parseFormula(text));
  return read.ok && gasRow(read.value)?.hood === true ? [nameOfFormula(read.value)] : [];
};

const isAlcohol = (text: string): boolean => text === ALCOHOL;

/** Names of the gases for the hood that a combination gives, whose conditions are met. */
export const gasesThatMayCome = ({ incompatibilities }: Cautions): readonly string[] => [
  ...new Set(
    incompatibilities
      // a rinse with alcohol, cold, gives none with a salt of its liquor
      .filter(({ state, materials }) => state === "met" && !materials.some(isAlcohol))
      .flatMap(({ products }) => products.flatMap(nameForTheHood)),
  ),
];
