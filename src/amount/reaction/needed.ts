// How much of one species goes with another, as it is at hand: solid, hydrate or solution.

import { molarMass } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import { type Quantity, quantity } from "../../quantity";
import { massOf, PURITY, type Purity } from "../amount";
import {
  type FormulaLike,
  formulaOfArgument,
  grouped,
  guard,
  inSymbol,
  type MassFractionLike,
  notNegative,
} from "../argument";
import { feedAmount, type SpeciesFeed } from "../jar/feed";
import { bothWays, contentOf } from "../jar/portion";
import { findForm, type ReactionLike } from "../jar/species";
import { DETAILS, isPerMass, readStrength, type StrengthLike, type StrengthOptions } from "../strength/strength-kind";
import { reactionAmounts } from "./reaction";

const PARTNER = {
  ...PURITY,
  as: true,
  strength: true,
  strengthOptions: { ...DETAILS, density: true },
  excess: true,
  facts: true,
} as const satisfies Fields<Partner>;

/** The partner as it is at hand. */
export interface Partner extends Purity, LookupOptions {
  /** What the jar holds, where it is the species with more or less crystal water. */
  readonly as?: FormulaLike | undefined;
  /** Strength of its solution. */
  readonly strength?: StrengthLike | undefined;
  /** Further details of the strength. */
  readonly strengthOptions?: Omit<StrengthOptions, "of"> | undefined;
  /** More than needed, as a fraction of the need: `"10 %"`. */
  readonly excess?: MassFractionLike | undefined;
}

/**
 * How much of one species goes with a known quantity of another: acid for carbonate, precipitant for salt.
 *
 * @param equation - text (balanced for you) or a balanced equation
 * @param known - feed of the known species by formula
 * @param needed - formula of the species wanted, or of the hydrate of it that is at hand
 * @param partner - how it is at hand: `as` a hydrate, assay, moisture, `strength` of its solution, `excess`
 * @returns amount and mass to weigh; with a strength per volume the volume of solution, with one per mass its mass, and its
 *   volume where the density is known
 * @throws {AmountError} as for {@link reactionAmounts} and {@link convertStrength}
 * @throws {EquationError} those of `balance`
 * @category Solutions
 * @example
 * const acid = requiredAmount("NaHCO3 + HCl -> NaCl + CO2 + H2O", { NaHCO3: "2.50 g" }, "HCl", { strength: "0.600 mol/L" });
 * acid.volume!.format({ decimals: 1, uncertainty: "none" }) // => "49.6 mL"
 */
export function requiredAmount(
  equation: ReactionLike,
  known: Readonly<Record<string, SpeciesFeed>>,
  needed: FormulaLike,
  partner: Partner = {},
): {
  readonly amount: Quantity<"amount of substance">;
  /** Mass of the pure or impure solid, or mass of the solution if a strength was given per mass. */
  readonly mass: Quantity<"mass"> | undefined;
  readonly volume: Quantity<"volume"> | undefined;
} {
  if (bringsFacts(partner))
    return withItsFacts(partner, guard, (others) => requiredAmount(equation, known, needed, others));
  const { strength, strengthOptions, excess, assay, moisture } = grouped(partner, PARTNER);
  const { place: species, form: named } = findForm(reactionAmounts(equation, known).species, needed);
  const name = inSymbol(species.formula);
  const amount =
    excess === undefined
      ? species.amount
      : species.amount
          .times(
            quantity("1").plus(
              notNegative(excess, "mass fraction", "excess", { symbol: "excess", label: "wanted excess" }),
            ),
          )
          .named({ symbol: `n(${name}, with excess)`, rule: "amount = amount needed × (1 + excess)" });
  if (strength === undefined) {
    const form = partner.as === undefined ? named : formulaOfArgument(partner.as);
    if (form === undefined)
      return readable({ amount, mass: massOf(amount, species.formula, { assay, moisture }), volume: undefined });
    const perForm = feedAmount(species.formula, { amount: "1 mol", as: form });
    const n = amount
      .dividedBy(perForm)
      .times("1 mol")
      .named({ symbol: `n(${inSymbol(form)})`, rule: "amount of the form in the jar" });
    return readable({ amount, mass: massOf(n, form, { assay, moisture }), volume: undefined });
  }
  const options = { ...strengthOptions, of: species.formula };
  const solute = (): Quantity =>
    amount
      .times(molarMass(species.formula))
      .to("g")
      .named({ symbol: `m(pure ${name})`, rule: "mass = amount × molar mass" });
  if (isPerMass(readStrength(strength, options.basis).kind)) {
    const { content } = contentOf(strength, "mass", options);
    const mass = solute()
      .dividedBy(content.symbol === undefined ? content.named({ symbol: `w(${name})` }) : content)
      .named({ symbol: `m(${name} solution)`, rule: "mass of solution = mass of solute / mass fraction" });
    return readable({ amount, ...bothWays(mass, strength, options, `${name} solution`) });
  }
  const { content, counts } = contentOf(strength, "volume", options);
  const volume = (counts === "amount" ? amount : solute())
    .dividedBy(content.symbol === undefined ? content.named({ symbol: `c(${name})` }) : content)
    .to("mL")
    .named({
      symbol: `V(${name})`,
      rule: `volume = ${counts === "amount" ? "amount / concentration" : "mass / mass concentration"}`,
    });
  return readable({ amount, mass: undefined, volume });
}
