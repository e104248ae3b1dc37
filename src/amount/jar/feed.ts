// What is put in, in any form the bench knows: a mass, moles, a solution, a pure liquid, a gas - as moles of one species.
import type { Formula } from "../../formula";
import { splitWater } from "../../formula/internal";
import type { Fields } from "../../foundation/argument";
import { type LookupOptions, lookingWith } from "../../foundation/facts";
import { isQuantity, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { amountOf, PURITY, type Purity } from "../amount";
import {
  type AmountLike,
  type DensityLike,
  type FormulaLike,
  formulaOfArgument,
  grouped,
  guard,
  inSymbol,
  liquidDensity,
  type MassLike,
  positive,
  type VolumeLike,
} from "../argument";
import { AmountError } from "../error";
import { gasAmount } from "../gas/gas";
import { type GasConditions, NAMED_GAS } from "../gas/gas-state";
import { DETAILS, type StrengthLike, type StrengthOptions } from "../strength/strength-kind";
import { contentOf, portionOf } from "./portion";

const FEED = {
  ...PURITY,
  mass: true,
  amount: true,
  volume: true,
  as: true,
  strength: true,
  density: true,
  gas: NAMED_GAS,
  strengthOptions: DETAILS,
} as const satisfies Fields<FeedRecord>;

/** One species as it is put in. Give exactly one of `mass`, `amount` and `volume`. */
export interface FeedRecord extends Purity {
  /** Mass of what is put in: of the solution, where a strength is given. */
  readonly mass?: MassLike | undefined;
  /** Amount of substance of the species that is put in. */
  readonly amount?: AmountLike | undefined;
  /** Volume of a solution, of a pure liquid, or of a gas. */
  readonly volume?: VolumeLike | undefined;
  /** What the jar holds, where it is the species with more or less crystal water. */
  readonly as?: FormulaLike | undefined;
  /** Strength of the solution that `mass` or `volume` measures. */
  readonly strength?: StrengthLike | undefined;
  /** Density of the solution, or of a pure liquid given by volume. */
  readonly density?: DensityLike | undefined;
  /** Conditions of a gas given by volume; `{}` for 25 °C and 101.325 kPa. */
  readonly gas?: Omit<GasConditions, "gas"> | undefined;
  /** Further details of a strength: what `%` means, equivalents. */
  readonly strengthOptions?: Omit<StrengthOptions, "of" | "density"> | undefined;
}

/** A species as put in: a mass or an amount as text or quantity, or a record. */
export type SpeciesFeed = MassLike | AmountLike | FeedRecord;

const isRecord = (feed: SpeciesFeed): feed is FeedRecord =>
  typeof feed === "object" && feed !== null && !isQuantity(feed) && !("unit" in feed);

/** @internal A feed of which the jar holds another form; what the feed itself says of the jar goes before. */
export function feedOf(feed: SpeciesFeed, form: Formula): FeedRecord {
  if (isRecord(feed)) return feed.as === undefined ? { ...feed, as: form } : feed;
  const q = quantity(feed as QuantityLike);
  if (q.dimension === "mass") return { mass: q, as: form };
  return q.dimension === "volume" ? { volume: q, as: form } : { amount: q, as: form };
}

/**
 * How many moles of a species a feed brings.
 *
 * @param species - formula as it stands in the equation
 * @param feed - mass, amount, solution, liquid or gas
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns amount in mol
 * @throws {AmountError} `amount.missing-input`, `amount.too-many-inputs`, `amount.not-possible` when the jar holds another
 *   salt, `amount.not-positive`, and those of strengths and gases
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @category Weighing
 * @example
 * feedAmount("CuSO4", { mass: "249.68 g", as: "CuSO4·5H2O" }).format({ decimals: 3, uncertainty: "none" }) // => "1.000 mol"
 * feedAmount("HCl", { volume: "25.0 mL", strength: "0.100 mol/L" }).in("mmol").toString() // => "2.5"
 * feedAmount("H2", { volume: "24.0 L", gas: { temperature: "20 °C" } }).format({ decimals: 3 }) // => "0.998 mol"
 */
export function feedAmount(
  species: FormulaLike,
  feed: SpeciesFeed,
  options?: LookupOptions,
): Quantity<"amount of substance"> {
  if (options !== undefined) return lookingWith(options, guard, () => feedAmount(species, feed));
  const formula = formulaOfArgument(species);
  if (!isRecord(feed)) {
    const q = quantity(feed as QuantityLike);
    if (q.dimension === "volume") {
      throw new AmountError("amount.missing-input", `${q} of ${inSymbol(formula)} says nothing without more`, {
        hint: "give { volume, strength } for a solution, { volume, density } for a liquid, { volume, gas: {} } for a gas",
      });
    }
    return q.dimension === "mass" ? amountOf(q, formula) : amountIn(q, formula);
  }
  grouped(feed, FEED, "feed");
  const { as } = feed;
  if (as === undefined) return amountOfRecord(formula, feed);
  const form = formulaOfArgument(as);
  const [have, want] = [splitWater(form), splitWater(formula)];
  const same = have.dry !== undefined && want.dry !== undefined && have.dry.hasSameComposition(want.dry);
  if (!same) {
    throw new AmountError(
      "amount.not-possible",
      `${inSymbol(form)} is not ${inSymbol(formula)} with more or less water`,
      {
        hint: "write the equation with the salt that is in the jar",
        details: { species: formula.toString(), as: form.toString() },
      },
    );
  }
  const ratio = have.units.div(want.units);
  const n = amountOfRecord(form, feed);
  if (ratio.equals(1) && form.equals(formula)) return n;
  return (ratio.equals(1) ? n : n.times(ratio)).named({
    symbol: `n(${inSymbol(formula)})`,
    rule: `${ratio.toFraction()} mol ${inSymbol(formula)} in 1 mol ${inSymbol(form)}`,
  });
}

const amountIn = (like: QuantityLike, formula: Formula): Quantity =>
  positive(like, "amount of substance", "amount", {
    symbol: `n(${inSymbol(formula)})`,
    label: `amount of ${inSymbol(formula)}`,
  });

function amountOfRecord(formula: Formula, feed: FeedRecord): Quantity<"amount of substance"> {
  const { mass, amount, volume, strength, density, gas, strengthOptions, assay, moisture } = feed;
  const purity = { assay, moisture };
  const given = [mass, amount, volume].filter((x) => x !== undefined).length;
  if (given !== 1) {
    throw new AmountError(
      given === 0 ? "amount.missing-input" : "amount.too-many-inputs",
      `a feed of ${inSymbol(formula)} needs one of mass, amount and volume; ${given} are given`,
      { hint: 'such as { mass: "5.00 g" } or { volume: "25 mL", strength: "0.1 mol/L" }' },
    );
  }
  const name = inSymbol(formula);
  if (amount !== undefined) return amountIn(amount, formula);
  if (strength !== undefined) {
    const portion = portionOf((mass ?? volume)!, "solution", `${name} solution`);
    const side = portion.dimension === "mass" ? "mass" : "volume";
    const { content, counts } = contentOf(strength, side, { ...strengthOptions, of: formula, density });
    const words = { symbol: content.symbol ?? `${counts === "amount" ? "c" : "γ"}(${name})` };
    const held = (content.symbol === undefined ? content.named(words) : content).times(portion);
    if (counts === "amount") {
      return held.to("mol").named({ symbol: `n(${name})`, rule: "amount = concentration × volume" });
    }
    const solute = held.to("g").named({ symbol: `m(${name})`, rule: "mass of solute = strength × portion" });
    return amountOf(solute, formula);
  }
  if (mass !== undefined) return amountOf(mass, formula, purity);
  const V = positive(volume!, "volume", "volume", { symbol: `V(${name})`, label: `volume of ${name}` });
  if (gas !== undefined) return gasAmount(V, { ...gas, gas: formula });
  if (density === undefined) {
    throw new AmountError("amount.missing-input", `${V} of ${name} says nothing without more`, {
      hint: "add strength for a solution, density for a liquid, gas: {} for a gas",
    });
  }
  const rho = liquidDensity(density, "density", { symbol: `ρ(${name})`, label: `density of ${name}` });
  return amountOf(
    V.times(rho)
      .to("g")
      .named({ symbol: `m(${name})`, rule: "mass = volume × density" }),
    formula,
    purity,
  );
}
