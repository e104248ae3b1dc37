// What an acid gas makes of the salt that it made: led in further it gives the acid salt.
import { type Formula, parseFormula } from "../../formula";
import { constitutionOf } from "../../ion";
import { ACID_STEPS, isOneOf, saltFormula } from "../../ion/internal";
import { GASES_IN_WATER } from "../data/gases";

/** Is it what a gas is in water, or the gas itself? */
const isAcidOf = (acid: string, gas: Formula): boolean =>
  isOneOf(gas, acid) || GASES_IN_WATER.some((row) => row.formula === acid && isOneOf(gas, row.gas));

/** The acid salt that more of the gas makes of a salt of its acid; undefined where there is none. */
export function acidSaltOfGas(gas: Formula, salt: Formula): Formula | undefined {
  const { cations, anions } = constitutionOf(salt);
  const [cation, ...others] = cations;
  const [anion, ...more] = anions;
  if (cation === undefined || anion === undefined || others.length + more.length > 0) return undefined;
  // A^2- is the base of HA-, and that the base of the acid which the gas is in water
  const last = ACID_STEPS().find(({ base }) => base === anion.formula);
  const first = last === undefined ? undefined : ACID_STEPS().find(({ base }) => base === last.acid);
  if (last === undefined || first === undefined || !isAcidOf(first.acid, gas)) return undefined;
  return parseFormula(saltFormula(cation.formula, last.acid));
}
