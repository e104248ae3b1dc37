// How much water a sample really holds: from a heating experiment, or from an assay; as a number of waters with its
// uncertainty, and the whole numbers it could mean.

import type { FormulaLike, MassLike } from "../amount";
import { formulaOfArgument, inSymbol, positive } from "../amount/internal";
import { type Formula, molarMass } from "../formula";
import type { Fields } from "../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../foundation/facts";
import { Fraction } from "../foundation/fraction";
import { readable } from "../foundation/readable";
import { type Quantity, quantity } from "../quantity";
import { guard } from "./argument";
import { anhydrousOf, crystalWater } from "./crystal-water";
import { HydrateError } from "./error";
import { candidatesFor, type HydrationCandidate, ignited, judged } from "./hydration-candidates";

const HEATING = {
  before: true,
  after: true,
  anhydrous: true,
  vessel: true,
  residue: true,
  facts: true,
} as const satisfies Fields<HeatingExperiment>;

/** What a heating experiment says. */
export interface HydrationNumber {
  /** Waters for each anhydrous formula unit, with standard uncertainty. */
  readonly waters: Quantity<"number">;
  /** The first candidate's formula. */
  readonly formula: Formula;
  /**
   * Candidates, nearest first and improbable ones last; whole numbers, and known forms with fractions of water. Where no
   * believable number of waters fits, forms that fit if the salt went to its oxides.
   */
  readonly candidates: readonly HydrationCandidate[];
  /** What to doubt: a salt that went on to its oxide, a number of waters that no known form comes near. */
  readonly warnings: readonly string[];
}

/** A heating experiment. */
export interface HeatingExperiment extends LookupOptions {
  /** Mass before heating, vessel included if `vessel` is given. */
  readonly before: MassLike;
  /** Mass after heating to constant mass, vessel included if `vessel` is given. */
  readonly after: MassLike;
  /** The salt, in any of its forms. */
  readonly anhydrous: FormulaLike;
  /** Mass of the empty vessel. */
  readonly vessel?: MassLike | undefined;
  /** What is left after heating, if the water did not all go: `"CuSO4·H2O"`. */
  readonly residue?: FormulaLike | undefined;
}

/**
 * Waters of crystallization from a heating experiment.
 *
 * @param experiment - `before` and `after` heating to constant mass, the `anhydrous` salt, the empty `vessel` if it was
 *   weighed along, and the `residue` if that is not the anhydrous salt
 * @returns waters for each formula unit with standard uncertainty if the salt is what is left, the candidates it could mean,
 *   and warnings: a number of waters no known form comes near, and a known form that fits if the oxide is what is left
 * @throws {HydrateError} `hydrate.gained-mass` when it weighs more after heating, `hydrate.not-positive` when nothing is
 *   left, `hydrate.no-common-part` for a residue of another salt
 * @throws {AmountError} `amount.not-positive`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @throws {FormulaError} those of `parseFormula`
 * @source n(H2O)/n(salt) = ((m1 - m2)/M(H2O)) / (m2/M(salt))
 * @category Hydrates
 * @example
 * const x = hydrationNumber({ before: "5.000 g", after: "3.196 g", anhydrous: "CuSO4" });
 * x.waters.format({ decimals: 2, uncertainty: "none" }) // => "5.00"
 * x.formula.toString() // => "CuSO4.5H2O"
 */
export function hydrationNumber(experiment: HeatingExperiment): HydrationNumber {
  if (bringsFacts(experiment)) return withItsFacts(experiment, guard, hydrationNumber);
  guard.fields(experiment, HEATING, "request");
  const { before, after, anhydrous, vessel, residue } = experiment;
  const salt = anhydrousOf(anhydrous);
  const name = inSymbol(salt);
  const m1 = positive(before, "mass", "before", { symbol: "m1", label: "mass before heating" });
  const m2 = positive(after, "mass", "after", { symbol: "m2", label: "mass after heating" });
  const empty =
    vessel === undefined ? undefined : positive(vessel, "mass", "vessel", { symbol: "m0", label: "empty vessel" });
  const lost = m1.minus(m2);
  if (!lost.isPositive() && !lost.isZero()) {
    throw new HydrateError("hydrate.gained-mass", `it weighs more after heating: ${m1} before, ${m2} after`, {
      hint: "check the order of the weighings; a salt that oxidises or absorbs carbon dioxide gains mass",
      details: { before: String(m1), after: String(m2) },
    });
  }
  const left = empty === undefined ? m2 : m2.minus(empty);
  if (!left.isPositive()) {
    throw new HydrateError("hydrate.not-positive", `nothing is left: ${m2} after heating in a vessel of ${empty}`, {
      details: { after: String(m2), vessel: String(empty) },
    });
  }
  const end =
    residue === undefined
      ? { anhydrous: salt, units: new Fraction(1), waters: new Fraction(0) }
      : crystalWater(residue);
  if (!end.anhydrous.hasSameComposition(salt)) {
    throw new HydrateError("hydrate.no-common-part", `${formulaOfArgument(residue!)} is not a form of ${salt}`, {
      details: { residue: String(residue), anhydrous: salt.toString() },
    });
  }
  const whole = residue === undefined ? salt : formulaOfArgument(residue);
  const rest =
    empty === undefined ? left : left.named({ symbol: "m(residue)", rule: "residue = mass after heating - vessel" });
  const perUnit = end.units.equals(1) ? molarMass(whole) : molarMass(whole).dividedBy(end.units);
  const nSalt = rest
    .dividedBy(perUnit)
    .to("mol")
    .named({ symbol: `n(${name})`, rule: "amount of salt = residue / molar mass" });
  const nWater = lost
    .named({ symbol: "m(H₂O)", rule: "water lost = mass before - mass after" })
    .dividedBy(molarMass("H2O"))
    .to("mol")
    .named({ symbol: "n(H₂O)", rule: "amount of water = water lost / molar mass" });
  const ratio = nWater.dividedBy(nSalt);
  const waters = (end.waters.equals(0) ? ratio : ratio.plus(quantity({ value: end.waters, unit: "" }))).named({
    symbol: "x",
    rule: `waters = n(H₂O) / n(${name})${end.waters.equals(0) ? "" : ` + ${end.waters.toFraction()} still in the residue`}`,
  });
  const weighed = [m1, m2, empty].some((m) => m?.standardUncertainty !== undefined);
  const dried = candidatesFor(salt, waters, weighed, { formula: whole });
  const share = left.dividedBy(empty === undefined ? m1 : m1.minus(empty));
  const oxides = residue === undefined ? ignited(salt, share, weighed) : [];
  const { candidates, warnings } = judged(salt, dried, oxides);
  return readable({ waters, formula: candidates[0]!.formula, candidates, warnings });
}
