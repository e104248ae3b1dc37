// How much a reaction can give, how much it gave, and how much of what went in ends in the product.

import { molarMass } from "../../formula";
import { splitWater } from "../../formula/internal";
import { type LookupOptions, lookingWith } from "../../foundation/facts";
import { type Quantity, quantity, sum } from "../../quantity";
import { massOf, PURITY, type Purity } from "../amount";
import { assayOf, type FormulaLike, grouped, guard, inSymbol, type MassLike, moistureOf, positive } from "../argument";
import { AmountError } from "../error";
import type { SpeciesFeed } from "../jar/feed";
import { find, findForm, type Place, placesOf, type ReactionLike, reactionOf } from "../jar/species";

import { reactionAmounts } from "./reaction";

/**
 * The most of a product that the feeds can give.
 *
 * @param equation - text (balanced for you) or a balanced equation
 * @param product - formula of the product, as it stands in the equation or as the hydrate that is weighed
 * @param feeds - what is put in, by formula; reactants not named are taken to be in excess
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns mass of product in g
 * @throws {AmountError} as for {@link reactionAmounts}; `amount.not-in-equation` for a formula that is no product
 * @throws {EquationError} those of `balance`
 * @category Yield
 * @example
 * theoreticalYield("Fe2O3 + CO -> Fe + CO2", "Fe", { Fe2O3: "25.13 g" }).format({ decimals: 2, uncertainty: "none" }) // => "17.58 g"
 * theoreticalYield("ZnO + H2SO4 -> ZnSO4 + H2O", "ZnSO4·7H2O", { ZnO: "8.14 g" }).format({ decimals: 2, uncertainty: "none" }) // => "28.76 g"
 */
export function theoreticalYield(
  equation: ReactionLike,
  product: FormulaLike,
  feeds: Readonly<Record<string, SpeciesFeed>>,
  options?: LookupOptions,
): Quantity<"mass"> {
  if (options !== undefined) return lookingWith(options, guard, () => theoreticalYield(equation, product, feeds));
  const outcome = reactionAmounts(equation, feeds);
  const { place: species, form } = findForm(
    outcome.species.filter((s) => s.side === "product"),
    product,
  );
  if (outcome.limiting.length === 0) {
    throw new AmountError("amount.same-side", "a theoretical yield is calculated from reactants, not from a product");
  }
  if (form === undefined) return species.mass;
  const ratio = splitWater(species.formula).units.div(splitWater(form).units);
  const [name, as] = [inSymbol(species.formula), inSymbol(form)];
  const n = species.amount.times(ratio).named({
    symbol: `n(${as})`,
    rule: `${ratio.toFraction()} mol ${as} from 1 mol ${name}`,
    assumption: `the product is weighed as ${as}, whose water is not that of the equation`,
  });
  return massOf(n, form);
}

/**
 * How much of the possible product was obtained.
 *
 * @param actual - mass of product obtained, > 0, dry and pure unless `purity` says otherwise
 * @param theoretical - the most that was possible, > 0, from {@link theoreticalYield}
 * @param purity - assay and moisture of what was weighed
 * @returns yield in %, with the uncertainty of both; one that is over 100 % beyond doubt says so among its assumptions
 * @throws {AmountError} `amount.not-positive`, `amount.fraction-above-one`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @category Yield
 * @example
 * percentYield("0.392 g", theoreticalYield("CuSO4 + Zn -> Cu + ZnSO4", "Cu", { CuSO4: "1.274 g" })).format({ decimals: 1, uncertainty: "none" }) // => "77.3 %"
 */
export function percentYield(actual: MassLike, theoretical: MassLike, purity: Purity = {}): Quantity<"number"> {
  const got = positive(actual, "mass", "actual mass", { symbol: "m(obtained)", label: "mass of product obtained" });
  const most = positive(theoretical, "mass", "theoretical mass", { symbol: "m(theory)", label: "theoretical yield" });
  const { assay, moisture } = grouped(purity, PURITY);
  let pure = got;
  if (moisture !== undefined) pure = pure.times(quantity("1").minus(moistureOf(moisture, { symbol: "w(moisture)" })));
  if (assay !== undefined) pure = pure.times(assayOf(assay, "assay", { symbol: "w(product)" }));
  const share = pure.dividedBy(most).to("%");
  return share.named({
    symbol: "yield",
    rule: `yield = ${pure === got ? "" : "pure "}mass obtained / theoretical mass`,
    ...(isBeyondTheory(share) ? { assumption: BEYOND_THEORY } : {}),
  });
}

const BEYOND_THEORY =
  "what was weighed is all product, although it is more than the theory allows: it may be wet, unwashed or of another formula";

/** Over 100 % by more than twice its standard uncertainty. */
function isBeyondTheory(share: Quantity): boolean {
  const doubt = share.standardUncertainty?.times(2) ?? 0;
  return share.in("%").minus(doubt).greaterThan(100);
}

/**
 * What part of the mass of all reactants ends in the product when everything reacts.
 *
 * @param equation - text (balanced for you) or a balanced equation
 * @param product - formula of the wanted product
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns atom economy in %
 * @throws {AmountError} `amount.not-in-equation`, `amount.several-readings`
 * @throws {EquationError} those of `balance`
 * @source Trost, Science 254, 1471 (1991) (memory)
 * @category Yield
 * @example
 * atomEconomy("CaCO3 -> CaO + CO2", "CaO").format({ decimals: 1, uncertainty: "none" }) // => "56.0 %"
 */
export function atomEconomy(equation: ReactionLike, product: FormulaLike, options?: LookupOptions): Quantity<"number"> {
  if (options !== undefined) return lookingWith(options, guard, () => atomEconomy(equation, product));
  const places = placesOf(reactionOf(equation));
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
