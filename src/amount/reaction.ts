// Amounts in a reaction: extent, limiting reagent, what is left, what can be made, and how well it went.

import { type BalancedEquation, balance, type EquationInput } from "../equation";
import type { Formula } from "../formula";
import { molarMass } from "../formula";
import { attempt, type Result } from "../foundation/error";
import { type Quantity, quantity, smallest, sum } from "../quantity";
import { massOf, type Purity } from "./amount";
import {
  assayOf,
  type FormulaLike,
  formulaOfArgument,
  inSymbol,
  type MassFractionLike,
  type MassLike,
  positive,
} from "./argument";
import { AmountError } from "./error";
import { feedAmount, type SpeciesFeed } from "./feed";
import { bothWays, contentOf } from "./portion";
import { isPerMass, readStrength, type StrengthLike, type StrengthOptions } from "./strength";

/** An equation as text, lists, or balanced already. */
export type ReactionLike = EquationInput | BalancedEquation;

/** One species of a reaction, in the quantities worked out. */
export interface ReactionSpecies {
  readonly formula: Formula;
  readonly side: "reactant" | "product";
  readonly coefficient: bigint;
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
  readonly equation: BalancedEquation;
  /** Extent of reaction in mol: amount of any species over its coefficient. */
  readonly extent: Quantity<"amount of substance">;
  /** What runs out; more than one when they run out together; empty when a product was given. */
  readonly limiting: readonly Formula[];
  readonly species: readonly ReactionSpecies[];
  /** The species with this formula, in any notation. */
  of(formula: FormulaLike): ReactionSpecies;
}

interface Place {
  readonly formula: Formula;
  readonly side: "reactant" | "product";
  readonly coefficient: bigint;
}

const placesOf = (equation: BalancedEquation): Place[] => [
  ...equation.reactants.map((term) => ({ ...term, side: "reactant" as const })),
  ...equation.products.map((term) => ({ ...term, side: "product" as const })),
];

/** The species meant by a formula: by composition, and by notation where two species are made of the same atoms. */
function find<T extends Place>(places: readonly T[], like: FormulaLike): T {
  const formula = formulaOfArgument(like);
  const alike = places.filter((place) => place.formula.hasSameComposition(formula));
  if (alike.length === 1) return alike[0]!;
  const written = alike.filter((place) => place.formula.equals(formula));
  const found = written.length > 0 ? written : alike;
  if (found.length === 1) return found[0]!;
  if (found.length > 1) {
    throw new AmountError("amount.several-readings", `${formula} stands in the equation ${found.length} times`, {
      details: { formula: formula.toString(), readings: found.map((place) => `${place.side} ${place.formula}`) },
    });
  }
  throw new AmountError("amount.not-in-equation", `${formula} is not in the equation`, {
    hint: `it holds ${places.map((place) => place.formula.toString()).join(", ")}`,
    details: { formula: formula.toString(), species: places.map((place) => place.formula.toString()) },
  });
}

/**
 * Everything that follows from what is known of a reaction: the extent, what runs out, what is left, what is formed.
 *
 * Give either reactants - those not named are taken to be in excess - or one product. Each as a mass, an amount, a volume
 * of solution, of liquid or of gas.
 *
 * @param equation - text (balanced for you) or a balanced equation
 * @param known - feed of each known species by formula, all reactants or one product
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
 */
export function reactionAmounts(equation: ReactionLike, known: Readonly<Record<string, SpeciesFeed>>): ReactionAmounts {
  const balanced = balance(equation);
  const places = placesOf(balanced);
  const given = new Map<Place, Quantity>();
  for (const [formula, feed] of Object.entries(known)) {
    const place = find(places, formula);
    if (given.has(place)) {
      throw new AmountError("amount.too-many-inputs", `${place.formula} is given twice`, {
        details: { formula: place.formula.toString() },
      });
    }
    given.set(place, feedAmount(place.formula, feed));
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
  const extent = smallest(
    extents.map((x) => x.extent),
    extents.length === 1
      ? { symbol: "ξ", rule: "extent = amount / coefficient" }
      : { symbol: "ξ", rule: "extent = smallest of amount / coefficient: the limiting reagent" },
  );
  const least = new Set(extents.filter((x) => x.extent.compare(extent) === 0).map((x) => x.place));
  const untold = places
    .filter((place) => place.side === "reactant" && !given.has(place))
    .map((p) => inSymbol(p.formula));
  const assumption =
    untold.length === 0 || sides.has("product") ? undefined : `${untold.join(", ")} taken to be in excess`;
  const told = assumption === undefined ? extent : extent.named({ assumption });
  const species = places.map((place) =>
    worked(place, told, given.get(place), least.has(place) && !sides.has("product")),
  );
  return {
    equation: balanced,
    extent: told,
    limiting: species.filter((s) => s.limiting).map((s) => s.formula),
    species,
    of: (formula) => find(species, formula),
  };
}

/** Amounts of one species; what nobody asks for is not made. */
function worked(place: Place, extent: Quantity, given: Quantity | undefined, limiting: boolean): ReactionSpecies {
  const { formula, side, coefficient } = place;
  const verb = side === "reactant" ? "used" : "formed";
  let amount: Quantity | undefined;
  let mass: Quantity | undefined;
  const used = (): Quantity => {
    amount ??= extent
      .times(coefficient)
      .to("mol")
      .named({ symbol: `n(${inSymbol(formula)}, ${verb})`, rule: `amount ${verb} = coefficient × extent` });
    return amount;
  };
  return {
    formula,
    side,
    coefficient,
    given: side === "reactant" ? given : undefined,
    limiting,
    get amount() {
      return used();
    },
    get mass() {
      mass ??= used()
        .times(molarMass(formula))
        .to("g")
        .named({ symbol: `m(${inSymbol(formula)}, ${verb})`, rule: `mass ${verb} = amount × molar mass` });
      return mass;
    },
    get left() {
      if (given === undefined || side === "product") return undefined;
      return given
        .minus(used())
        .named({ symbol: `n(${inSymbol(formula)}, left)`, rule: "amount left = amount given - amount used" });
    },
    get excess() {
      if (given === undefined || side === "product") return undefined;
      return given
        .minus(used())
        .dividedBy(used())
        .to("%")
        .named({ symbol: `excess(${inSymbol(formula)})`, rule: "excess = (amount given - amount used) / amount used" });
    },
  };
}

/**
 * What runs out first.
 *
 * @param equation - text (balanced for you) or a balanced equation
 * @param feeds - what is put in, by formula; reactants not named are taken to be in excess
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
): readonly Formula[] {
  return reactionAmounts(equation, feeds).limiting;
}

/**
 * The most of a product that the feeds can give.
 *
 * @param equation - text (balanced for you) or a balanced equation
 * @param product - formula of the product, as it stands in the equation
 * @param feeds - what is put in, by formula; reactants not named are taken to be in excess
 * @returns mass of product in g
 * @throws {AmountError} as for {@link reactionAmounts}; `amount.not-in-equation` for a formula that is no product
 * @throws {EquationError} those of `balance`
 * @category Yield
 * @example
 * theoreticalYield("Fe2O3 + CO -> Fe + CO2", "Fe", { Fe2O3: "25.13 g" }).format({ decimals: 2, uncertainty: "none" }) // => "17.58 g"
 */
export function theoreticalYield(
  equation: ReactionLike,
  product: FormulaLike,
  feeds: Readonly<Record<string, SpeciesFeed>>,
): Quantity<"mass"> {
  const outcome = reactionAmounts(equation, feeds);
  const species = find(
    outcome.species.filter((s) => s.side === "product"),
    product,
  );
  if (outcome.limiting.length === 0) {
    throw new AmountError("amount.same-side", "a theoretical yield is reckoned from reactants, not from a product");
  }
  return species.mass.named({ symbol: `m(${inSymbol(species.formula)}, theory)` });
}

/**
 * How much of the possible product was obtained.
 *
 * @param actual - mass of product obtained, > 0, dry and pure unless `purity` says otherwise
 * @param theoretical - the most that was possible, > 0, from {@link theoreticalYield}
 * @param purity - assay and moisture of what was weighed
 * @returns yield in %, with the uncertainty of both
 * @throws {AmountError} `amount.not-positive`, `amount.fraction-above-one`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @category Yield
 * @example
 * percentYield("0.392 g", theoreticalYield("CuSO4 + Zn -> Cu + ZnSO4", "Cu", { CuSO4: "1.274 g" })).format({ decimals: 1, uncertainty: "none" }) // => "77.3 %"
 */
export function percentYield(actual: MassLike, theoretical: MassLike, purity: Purity = {}): Quantity<"number"> {
  const got = positive(actual, "mass", "actual mass", { symbol: "m(obtained)", label: "mass of product obtained" });
  const most = positive(theoretical, "mass", "theoretical mass", { symbol: "m(theory)", label: "theoretical yield" });
  const { assay, moisture } = purity;
  let pure = got;
  if (moisture !== undefined)
    pure = pure.times(quantity("1").minus(assayOf(moisture, "moisture", { symbol: "w(moisture)" })));
  if (assay !== undefined) pure = pure.times(assayOf(assay, "assay", { symbol: "w(product)" }));
  return pure
    .dividedBy(most)
    .to("%")
    .named({ symbol: "yield", rule: `yield = ${pure === got ? "" : "pure "}mass obtained / theoretical mass` });
}

/**
 * What part of the mass of all reactants ends in the product when everything reacts.
 *
 * @param equation - text (balanced for you) or a balanced equation
 * @param product - formula of the wanted product
 * @returns atom economy in %
 * @throws {AmountError} `amount.not-in-equation`, `amount.several-readings`
 * @throws {EquationError} those of `balance`
 * @source Trost, Science 254, 1471 (1991) (memory)
 * @category Yield
 * @example
 * atomEconomy("CaCO3 -> CaO + CO2", "CaO").format({ decimals: 1, uncertainty: "none" }) // => "56.0 %"
 */
export function atomEconomy(equation: ReactionLike, product: FormulaLike): Quantity<"number"> {
  const places = placesOf(balance(equation));
  const wanted = find(
    places.filter((place) => place.side === "product"),
    product,
  );
  const weight = ({ formula, coefficient }: Place): Quantity => molarMass(formula).times(coefficient);
  const all = sum(places.filter((place) => place.side === "reactant").map(weight));
  return weight(wanted)
    .dividedBy(all)
    .to("%")
    .named({
      symbol: `atom economy(${inSymbol(wanted.formula)})`,
      rule: "coefficient × M(product) / sum of coefficient × M(reactants)",
    });
}

/** The partner as it is at hand. */
export interface Partner extends Purity {
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
 * @param needed - formula of the species wanted
 * @param partner - how it is at hand: `as` a hydrate, assay, moisture, `strength` of its solution, `excess`
 * @returns amount and mass to weigh; with a strength per volume the volume of solution, with one per mass its mass, and its
 *   volume where the density is known
 * @throws {AmountError} as for {@link reactionAmounts} and {@link convertStrength}
 * @throws {EquationError} those of `balance`
 * @category Solutions
 * @example
 * const acid = neededFor("NaHCO3 + HCl -> NaCl + CO2 + H2O", { NaHCO3: "2.50 g" }, "HCl", { strength: "0.600 mol/L" });
 * acid.volume!.format({ decimals: 1, uncertainty: "none" }) // => "49.6 mL"
 */
export function neededFor(
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
  const { as, strength, strengthOptions, excess, assay, moisture } = partner;
  const species = reactionAmounts(equation, known).of(needed);
  const name = inSymbol(species.formula);
  const amount =
    excess === undefined
      ? species.amount
      : species.amount
          .times(quantity("1").plus(assayOf(excess, "excess", { symbol: "excess", label: "wanted excess" })))
          .named({ symbol: `n(${name}, with excess)`, rule: "amount = amount needed × (1 + excess)" });
  if (strength === undefined) {
    if (as === undefined)
      return { amount, mass: massOf(amount, species.formula, { assay, moisture }), volume: undefined };
    const form = formulaOfArgument(as);
    const perForm = feedAmount(species.formula, { amount: "1 mol", as: form });
    const n = amount
      .dividedBy(perForm)
      .times("1 mol")
      .named({ symbol: `n(${inSymbol(form)})`, rule: "amount of the form in the jar" });
    return { amount, mass: massOf(n, form, { assay, moisture }), volume: undefined };
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
    return { amount, ...bothWays(mass, strength, options, `${name} solution`) };
  }
  const { content, counts } = contentOf(strength, "volume", options);
  const volume = (counts === "amount" ? amount : solute())
    .dividedBy(content.symbol === undefined ? content.named({ symbol: `c(${name})` }) : content)
    .to("mL")
    .named({
      symbol: `V(${name})`,
      rule: `volume = ${counts === "amount" ? "amount / concentration" : "mass / mass concentration"}`,
    });
  return { amount, mass: undefined, volume };
}

/**
 * {@link reactionAmounts}, with the outcome as data.
 *
 * @category Yield
 * @example
 * tryReactionAmounts("H2 + O2 -> H2O", { N2: "1 g" }).ok // => false
 */
export const tryReactionAmounts = (...args: Parameters<typeof reactionAmounts>): Result<ReactionAmounts> =>
  attempt(() => reactionAmounts(...args));

/**
 * {@link limitingReagents}, with the outcome as data.
 *
 * @category Yield
 * @example
 * tryLimitingReagents("H2 + O2 -> H2O", { H2: "1 g" }).ok // => true
 */
export const tryLimitingReagents = (...args: Parameters<typeof limitingReagents>): Result<readonly Formula[]> =>
  attempt(() => limitingReagents(...args));

/**
 * {@link theoreticalYield}, with the outcome as data.
 *
 * @category Yield
 * @example
 * tryTheoreticalYield("H2 + O2 -> H2O", "H2", { H2: "1 g" }).ok // => false
 */
export const tryTheoreticalYield = (...args: Parameters<typeof theoreticalYield>): Result<Quantity<"mass">> =>
  attempt(() => theoreticalYield(...args));

/**
 * {@link percentYield}, with the outcome as data.
 *
 * @category Yield
 * @example
 * tryPercentYield("1 g", "0 g").ok // => false
 */
export const tryPercentYield = (...args: Parameters<typeof percentYield>): Result<Quantity<"number">> =>
  attempt(() => percentYield(...args));

/**
 * {@link atomEconomy}, with the outcome as data.
 *
 * @category Yield
 * @example
 * tryAtomEconomy("CaCO3 -> CaO + CO2", "H2O").ok // => false
 */
export const tryAtomEconomy = (...args: Parameters<typeof atomEconomy>): Result<Quantity<"number">> =>
  attempt(() => atomEconomy(...args));

/**
 * {@link neededFor}, with the outcome as data.
 *
 * @category Solutions
 * @example
 * tryNeededFor("H2 + O2 -> H2O", { H2: "1 g" }, "N2").ok // => false
 */
export const tryNeededFor = (...args: Parameters<typeof neededFor>): Result<ReturnType<typeof neededFor>> =>
  attempt(() => neededFor(...args));
