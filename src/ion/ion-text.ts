// An ion as the tables write it, `SO4^2-`, taken apart and put together: the one place that reads a charge off a text.
import { gcd } from "../foundation/gcd";

const CHARGE = /(?:\^(\d*))?([+-])$/;
const SYMBOL = /^[A-Z][a-z]?$/;

/** `SO4^2-` from formula and charge. */
export function chargedText(formula: string, charge: number): string {
  if (charge === 0) return formula;
  const size = Math.abs(charge);
  return `${formula}^${size === 1 ? "" : size}${charge < 0 ? "-" : "+"}`;
}

/** The ion without its charge: `SO4`. */
export const bareIon = (ion: string): string => ion.replace(CHARGE, "");

/** Charge of the ion, signed. */
export function chargeOfIon(ion: string): number {
  const [, size = "", sign] = CHARGE.exec(ion) ?? [];
  if (sign === undefined) return 0;
  return (size === "" ? 1 : Number(size)) * (sign === "-" ? -1 : 1);
}

/** The element of a monatomic ion. */
export function elementOfIon(ion: string): string | undefined {
  const bare = bareIon(ion);
  return SYMBOL.test(bare) ? bare : undefined;
}

/** A cation of one metal atom. */
export const isMetalCation = (ion: string): boolean =>
  chargeOfIon(ion) > 0 && elementOfIon(ion) !== undefined && ion !== "H+";

/** A metal or another atom with what is bound to it, in square brackets. */
export const isComplexIon = (ion: string): boolean => ion.startsWith("[");

/** One kind of ion as often as a salt needs it. */
function counted(ion: string, count: number): string {
  const text = bareIon(ion);
  if (count === 1) return text;
  return SYMBOL.test(text) || isComplexIon(text) ? `${text}${count}` : `(${text})${count}`;
}

/** The formula of the salt of two ions. */
export function saltFormula(cation: string, anion: string): string {
  const [plus, minus] = [chargeOfIon(cation), -chargeOfIon(anion)];
  const shared = gcd(plus, minus);
  return `${counted(cation, minus / shared)}${counted(anion, plus / shared)}`;
}
