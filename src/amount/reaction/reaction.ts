// Amounts in a reaction: extent, limiting reagent, what is used, formed and left.

import type { BalancedEquation } from "../../equation";
import { asWritten } from "../../equation/internal";
import { type Formula, molarMass } from "../../formula";
import { type LookupOptions, lookingWith } from "../../foundation/facts";
import type { Fraction } from "../../foundation/fraction";
import { lazily } from "../../foundation/lazy";
import { once } from "../../foundation/memo";
import { PLAIN_JSON } from "../../foundation/plain-json";
import { readable } from "../../foundation/readable";
import { minimum, type Quantity } from "../../quantity";
import { type FormulaLike, guard, inSymbol, tabled } from "../argument";
import { AmountError } from "../error";
import { feedAmount, feedOf, type SpeciesFeed } from "../jar/feed";
import { find, findForm, type Place, placesOf, type ReactionLike, reactionOf } from "../jar/species";

/** One species of a reaction, in the quantities worked out. */
export interface ReactionSpecies {
  /** The species, as read from the equation. */
  readonly formula: Formula;
  /** Side of the equation it stands on. */
  readonly side: "reactant" | "product";
  /** How many of it one mole of reaction counts: as written, where the equation was given with coefficients. */
  readonly coefficient: Fraction;
  /** Amount put in; undefined for products and for reactants taken to be in excess. */
  readonly given: Quantity<"amount of substance"> | undefined;
  /** Amount used up or formed when the reaction runs to its end. */
  readonly amount: Quantity<"amount of substance">;
  /** Mass used up or formed. */
  readonly mass: Quantity<"mass">;
  /** Amount left over; undefined where none was given. */
  readonly left: Quantity<"amount of substance"> | undefined;
  /** What was given beyond the need, as a fraction of the need. */
  readonly excess: Quantity<"number"> | undefined;
  /** Does this one run out? */
  readonly limiting: boolean;
}

/** A reaction worked out. */
export interface ReactionAmounts {
  /** As balanced; its coefficients are the smallest whole numbers. */
  readonly equation: BalancedEquation;
  /** What one mole of reaction is: the equation as written, `"H2 + 1/2 O2 -> H2O"`, or balanced where it had no coefficients. */
  readonly moleOfReaction: string;
  /** Extent of reaction in mol: amount of any species over its coefficient. */
  readonly extent: Quantity<"amount of substance">;
  /** What runs out; more than one when they run out together; empty when a product was given. */
  readonly limiting: readonly Formula[];
  /** All species, the reactants first. */
  readonly species: readonly ReactionSpecies[];
  /** The species with this formula, in any notation. */
  of(formula: FormulaLike): ReactionSpecies;
}

/**
 * Everything that follows from what is known of a reaction: the extent, what runs out, what is left, what is formed.
 *
 * Give either reactants - those not named are taken to be in excess - or one product. Each as a mass, an amount, a volume
 * of solution, of liquid or of gas. A hydrate that is in the jar may stand for the species it is a form of. An equation
 * that balances as it stands is taken as it stands, also where several reactions together could follow it; written
 * coefficients stay as written, and the extent counts moles of that equation: of `H2 + 1/2 O2 -> H2O`, not of 2 H2.
 *
 * @param equation - text (balanced for you) or a balanced equation
 * @param known - feed of each known species by formula, all reactants or one product
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns extent, limiting reagents, and for each species given, used or formed, left, excess
 * @throws {AmountError} `amount.not-in-equation`, `amount.same-side`, `amount.missing-input`, `amount.several-readings`,
 *   and those of {@link feedAmount}
 * @throws {EquationError} those of `balance`
 * @throws {FormulaError} those of `parseFormula`
 * @source IUPAC Green Book, 3rd ed. (2007), section 2.10.1: extent ξ = n/ν (section number from memory)
 * @category Yield
 * @example
 * const salt = reactionAmounts("Na + Cl2 -> NaCl", { Na: "8 g", Cl2: "8 g" });
 * salt.limiting.map(String) // => ["Cl2"]
 * salt.of("Na").left!.format({ decimals: 3, uncertainty: "none" }) // => "0.122 mol"
 * reactionAmounts("BaCl2 + Na2SO4 -> BaSO4 + NaCl", { "BaCl2·2H2O": "24.4 g" }).extent.format({ decimals: 3, uncertainty: "none" }) // => "0.100 mol"
 */
export function reactionAmounts(
  equation: ReactionLike,
  known: Readonly<Record<string, SpeciesFeed>>,
  options?: LookupOptions,
): ReactionAmounts {
  if (options !== undefined) return lookingWith(options, guard, () => reactionAmounts(equation, known));
  const balanced = reactionOf(equation);
  const written = asWritten(equation, balanced);
  const places = placesOf(balanced, written);
  const given = new Map<Place, Quantity>();
  for (const [formula, feed] of Object.entries(tabled(known, "known"))) {
    const { place, form } = findForm(places, formula);
    if (given.has(place)) {
      throw new AmountError("amount.too-many-inputs", `${place.formula} is given twice`, {
        details: { formula: place.formula.toString() },
      });
    }
    given.set(place, feedAmount(place.formula, form === undefined ? feed : feedOf(feed, form)));
  }
  const sides = new Set([...given.keys()].map((place) => place.side));
  if (given.size === 0) throw new AmountError("amount.missing-input", "no quantity of any species was given");
  if (sides.size > 1 || (sides.has("product") && given.size > 1)) {
    throw new AmountError("amount.same-side", "give reactants, or one product, but not both", {
      hint: "what was really obtained goes into percentYield",
      details: { given: [...given.keys()].map((place) => place.formula.toString()) },
    });
  }
  const extents = [...given].map(([place, n]) => ({ place, extent: n.dividedBy(place.coefficient) }));
  const extent =
    extents.length === 1
      ? extents[0]!.extent.named({ symbol: "ξ", rule: "extent = amount / coefficient" })
      : minimum(
          extents.map((x) => x.extent),
          { symbol: "ξ", rule: "extent = smallest of amount / coefficient: the limiting reagent" },
        );
  const least = new Set(extents.filter((x) => x.extent.compare(extent) === 0).map((x) => x.place));
  const unstated = places
    .filter((place) => place.side === "reactant" && !given.has(place))
    .map((p) => inSymbol(p.formula));
  const assumption =
    unstated.length === 0 || sides.has("product") ? undefined : `${unstated.join(", ")} taken to be in excess`;
  const stated = assumption === undefined ? extent : extent.named({ assumption });
  const species = places.map((place) =>
    worked(place, stated, given.get(place), least.has(place) && !sides.has("product")),
  );
  return readable({
    equation: balanced,
    moleOfReaction: written.text,
    extent: stated,
    limiting: species.filter((s) => s.limiting).map((s) => s.formula),
    species,
    of: (formula) => find(species, formula),
  });
}

/** Amounts of one species; what nobody asks for is not made. */
function worked(place: Place, extent: Quantity, given: Quantity | undefined, limiting: boolean): ReactionSpecies {
  const { formula, side, coefficient } = place;
  const verb = side === "reactant" ? "used" : "formed";
  const used = once(() =>
    extent
      .times(coefficient)
      .to("mol")
      .named({ symbol: `n(${inSymbol(formula)}, ${verb})`, rule: `amount ${verb} = coefficient × extent` }),
  );
  const taken = side === "reactant" ? given : undefined;
  return lazily<ReactionSpecies, object, object>(
    {
      formula: () => formula,
      side: () => side,
      coefficient: () => coefficient,
      given: () => taken,
      limiting: () => limiting,
      amount: used,
      mass: () =>
        used()
          .times(molarMass(formula))
          .to("g")
          .named({ symbol: `m(${inSymbol(formula)}, ${verb})`, rule: `mass ${verb} = amount × molar mass` }),
      left: () =>
        taken
          ?.minus(used())
          .named({ symbol: `n(${inSymbol(formula)}, left)`, rule: "amount left = amount given - amount used" }),
      excess: () =>
        taken
          ?.minus(used())
          .dividedBy(used())
          .to("%")
          .named({
            symbol: `excess(${inSymbol(formula)})`,
            rule: "excess = (amount given - amount used) / amount used",
          }),
    },
    {},
    PLAIN_JSON,
  );
}

/**
 * What runs out first.
 *
 * @param equation - text (balanced for you) or a balanced equation
 * @param feeds - what is put in, by formula; reactants not named are taken to be in excess
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns the limiting reagent; several when they run out together
 * @throws {AmountError} as for {@link reactionAmounts}
 * @throws {EquationError} those of `balance`
 * @category Yield
 * @example
 * limitingReagents("Na + Cl2 -> NaCl", { Na: "8 g", Cl2: "8 g" }).map(String) // => ["Cl2"]
 */
export function limitingReagents(
  equation: ReactionLike,
  feeds: Readonly<Record<string, SpeciesFeed>>,
  options?: LookupOptions,
): readonly Formula[] {
  if (options !== undefined) return lookingWith(options, guard, () => limitingReagents(equation, feeds));
  return reactionAmounts(equation, feeds).limiting;
}
