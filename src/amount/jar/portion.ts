// A portion of a solution: its volume, its mass, what it holds. Volume and mass know each other through the density.
import { type Formula, molarMass } from "../../formula";
import { isQuantity, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { type FormulaLike, formulaOfArgument, type MassLike, positive, type VolumeLike } from "../argument";
import { AmountError } from "../error";
import { convertStrength, densityOfStrength } from "../strength/strength";
import { readStrength, type StrengthLike, type StrengthOptions } from "../strength/strength-kind";
import { missingEquivalents, tellsEquivalents } from "../strength/strength-ways";

/** How much of a material: a volume or a mass. */
export type PortionLike = VolumeLike | MassLike;

/** @internal Read a portion and tell which it is. */
export function portionOf(like: PortionLike, argument: string, symbol: string): Quantity {
  const q = isQuantity(like) ? like : quantity(like as QuantityLike);
  const dimension = q.dimension === "mass" ? "mass" : "volume";
  return positive(expectDimension(q, dimension, argument), dimension, argument, {
    symbol: `${dimension === "mass" ? "m" : "V"}(${symbol})`,
    label: argument,
  });
}

/** @internal What a solution holds in a unit of itself, counted the way a portion is measured. */
interface Content {
  /** Solute per volume or per mass: mol/L, g/L or a mass fraction. */
  readonly content: Quantity;
  /** Does it count moles of solute, equivalents, or grams? */
  readonly counts: "amount" | "equivalents" | "mass";
}

/**
 * @internal With `sameReaction` a normality whose equivalents nobody stated stays one: where normality stands against
 * normality they cancel.
 */
export function contentOf(
  strength: StrengthLike,
  portion: "mass" | "volume",
  options: StrengthOptions,
  sameReaction = false,
): Content {
  const { kind, value } = readStrength(strength, options.basis);
  if (sameReaction && portion === "volume" && kind === "normality" && !tellsEquivalents(options)) {
    const words = { symbol: "N", label: "equivalents in a litre" };
    return { content: value.times("1 mol/L").named(words), counts: "equivalents" };
  }
  if (portion === "mass") {
    if (kind === "mass fraction") return { content: value, counts: "mass" };
    return { content: convertStrength(strength, { ...options, to: "% w/w" }), counts: "mass" };
  }
  if (kind === "concentration") return { content: value, counts: "amount" };
  if (kind === "mass concentration") return { content: value, counts: "mass" };
  const to = kind === "normality" || kind === "peroxide volumes" ? "mol/L" : "g/L";
  return { content: convertStrength(strength, { ...options, to }), counts: to === "mol/L" ? "amount" : "mass" };
}

/** @internal Grams for moles and back, when the two sides count differently. */
export function sameCount(a: Content, b: Content, options: StrengthOptions): { a: Quantity; b: Quantity } {
  if (a.counts === b.counts) return { a: a.content, b: b.content };
  if (a.counts === "equivalents" || b.counts === "equivalents") throw missingEquivalents();
  const formula = soluteOf(options.of);
  if (formula === undefined) {
    throw new AmountError(
      "amount.missing-formula",
      "one strength counts moles and the other grams: the solute is needed",
      {
        hint: 'give of: "HCl"',
      },
    );
  }
  const M = molarMass(formula);
  const grams = (c: Content): Quantity => (c.counts === "mass" ? c.content : c.content.times(M));
  return { a: grams(a), b: grams(b) };
}

/** @internal The volume and mass of a portion, each where it can be known. */
export function bothWays(
  portion: Quantity,
  strength: StrengthLike,
  options: StrengthOptions,
  symbol: string,
): { volume: Quantity | undefined; mass: Quantity | undefined } {
  const given = portion.dimension === "mass";
  let rho: Quantity;
  try {
    rho = densityOfStrength(strength, options);
  } catch (error) {
    if (!(error instanceof AmountError) || options.density !== undefined) throw error;
    return given ? { volume: undefined, mass: portion } : { volume: portion, mass: undefined };
  }
  if (given) {
    const volume = portion
      .dividedBy(rho)
      .to("mL")
      .named({ symbol: `V(${symbol})`, rule: "volume = mass / density" });
    return { volume, mass: portion };
  }
  const mass = portion
    .times(rho)
    .to("g")
    .named({ symbol: `m(${symbol})`, rule: "mass = volume × density" });
  return { volume: portion, mass };
}

/** @internal The solute as a formula, where one was named. */
export const soluteOf = (of: FormulaLike | undefined): Formula | undefined =>
  of === undefined ? undefined : formulaOfArgument(of);
