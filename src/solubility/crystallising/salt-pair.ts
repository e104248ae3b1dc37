// The swap of a salt pair, such as potassium nitrate from sodium nitrate and potassium chloride: no precipitate at one
// temperature, but the salt least soluble hot leaves first and the steepest one on cooling.

import type { MassLike, TemperatureLike } from "../../amount";
import { type Formula, molarMass } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import { minimum, type Quantity } from "../../quantity";
import { guard } from "../argument";
import { positiveMass } from "../curves/figure";
import { solubilityOf } from "../curves/solubility";
import { type Solute, soluteOf } from "../curves/solute";
import { SolubilityError } from "../error";
import type { Solubility } from "../record";
import { saturatedBy, settleSalts } from "./crop-balance";
import { ionsOf, needNoOther, type PutIn, pooled } from "./salt-pair-solids";

const PUT_IN = { formula: true, mass: true } as const satisfies Fields<PutIn>;

const SALT_PAIR = {
  wanted: true,
  other: true,
  from: [PUT_IN],
  water: true,
  hot: true,
  cold: true,
  facts: true,
} as const satisfies Fields<FractionalCrystallizationRequest>;

/** What `fractionalCrystallization` needs to know. */
export interface FractionalCrystallizationRequest extends LookupOptions {
  /** The salt to be made, anhydrous. */
  readonly wanted: string | Formula;
  /** The salt that is filtered off hot, anhydrous. */
  readonly other: string | Formula;
  /** The two salts put in, as weighed. */
  readonly from: readonly PutIn[];
  /** All the water, the crystal water of the salts put in included. */
  readonly water: MassLike;
  /** Temperature at which the other salt is filtered off. */
  readonly hot: TemperatureLike;
  /** Temperature at which the wanted salt crystallises. */
  readonly cold: TemperatureLike;
}

/** How a salt pair parts; all masses are of anhydrous salt, whatever hydrate it precipitates as. */
export interface FractionalCrystallization {
  /** Whole amount of the wanted salt that the materials can give. */
  readonly wantedMass: Quantity<"mass">;
  /** Other salt on the filter at the hot temperature. */
  readonly filteredHot: Quantity<"mass">;
  /** Wanted salt on the filter at the hot temperature, which the water does not hold; 0 g when all of it dissolves. */
  readonly wantedFilteredHot: Quantity<"mass">;
  /** Wanted salt that crystallises on cooling. */
  readonly crop: Quantity<"mass">;
  /** Other salt that comes with it. */
  readonly contamination: Quantity<"mass">;
  /** Wanted salt in the crop, as a mass fraction in %. */
  readonly purity: Quantity<"number">;
  /** Crop over the whole amount. */
  readonly yield: Quantity<"number">;
  /** S(hot)/S(cold) of the wanted salt over 3, of the other under 1.5, crop over 90 % pure: worth doing (common practice). */
  readonly worthwhile: boolean;
  /** Solubility at the hot temperature over that at the cold one, for each salt. */
  readonly ratios: { readonly wanted: Quantity<"number">; readonly other: Quantity<"number"> };
  /** What the calculation takes as true, in words. */
  readonly assumption: string;
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

const STEEP = "3";
const FLAT = "1.5";
/** Purer than this, one more crystallisation makes a crop clean. */
const PURE = "90 %";
const ASSUMPTION = "each salt keeps its own solubility in pure water; the salts' influence on each other is neglected";

/** Amounts of every ion put in. */
function pool(from: readonly PutIn[]): Map<string, Quantity> {
  const amounts = new Map<string, Quantity>();
  for (const { formula, mass } of from) {
    const solute = soluteOf(formula);
    const weighed = positiveMass(mass, "mass", `m(${solute.formula})`, `${solute.formula} as weighed`);
    const amount = weighed.dividedBy(molarMass(solute.formula)).named({
      symbol: `n(${solute.formula})`,
      label: `amount of ${solute.formula}`,
      rule: "amount = mass / molar mass",
    });
    for (const { formula: ion, count } of ionsOf(solute)) {
      const here = amount.times(BigInt(count)).times(solute.units.toString());
      amounts.set(ion, amounts.get(ion)?.plus(here) ?? here);
    }
  }
  return amounts;
}

/** Most of a salt the ions can make, as an amount. */
function mostOf(solute: Solute, amounts: ReadonlyMap<string, Quantity>): Quantity {
  const shares = ionsOf(solute).map(({ formula, count }) => {
    const amount = amounts.get(formula);
    if (amount !== undefined) return amount.dividedBy(BigInt(count));
    throw new SolubilityError("solubility.other-solute", `the materials bring no ${formula} for ${solute.formula}`, {
      details: { ion: formula, formula: solute.formula.toString() },
    });
  });
  return minimum(shares);
}

const massOf = (solute: Solute, most: Quantity): Quantity =>
  most.times(molarMass(solute.anhydrous)).named({
    symbol: `m(${solute.anhydrous})`,
    label: `${solute.anhydrous} the ions can make`,
    rule: "scarcer ion × molar mass",
  });

/** Two salts that share an ion must not be calculated as if each had all of it. */
function needBoth(wanted: Solute, other: Solute, most: readonly Quantity[], amounts: ReadonlyMap<string, Quantity>) {
  for (const { formula: ion, count } of ionsOf(wanted)) {
    const twin = ionsOf(other).find(({ formula }) => formula === ion);
    if (twin === undefined) continue;
    const needed = most[0]!.times(BigInt(count)).plus(most[1]!.times(BigInt(twin.count)));
    if (needed.compare(amounts.get(ion)!) <= 0) continue;
    throw new SolubilityError(
      "solubility.other-solute",
      `the materials bring too little ${ion} for all the ${wanted.anhydrous} and the ${other.anhydrous} at once`,
      {
        hint: "name two salts that use up different ions, such as KNO3 and NaCl",
        details: { ion, wanted: wanted.formula.toString(), other: other.formula.toString() },
      },
    );
  }
}

/**
 * Part a salt pair by temperature: other salt filtered hot, wanted salt crystallised cold.
 *
 * @param request - wanted and other salt, the two salts put in, water, hot and cold temperature
 * @returns masses on the hot filter and in the cold crop, purity and yield of the crop, and whether it is worth doing
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, `solubility.not-a-salt`,
 *   `solubility.other-solute` (an ion is missing, or both salts need it), `solubility.no-crop`, `solubility.no-liquor`
 *   (crystals that would bind all the water), `solubility.other-solid` (another pairing of the ions or a double salt precipitates), and the codes of `solubilityOf`
 * @source water balance with independent solubilities; the ratios 3 and 1.5 are common practice, no source
 * @category Crystallising
 * @example
 * fractionalCrystallization({
 *   wanted: "KNO3", other: "NaCl", from: [{ formula: "NaNO3", mass: "85 g" }, { formula: "KCl", mass: "74.6 g" }],
 *   water: "100 g", hot: "100 °C", cold: "10 °C",
 * }).worthwhile // => true
 */
export function fractionalCrystallization(request: FractionalCrystallizationRequest): FractionalCrystallization {
  if (bringsFacts(request)) return withItsFacts(request, guard, fractionalCrystallization);
  guard.fields(request, SALT_PAIR, "request");
  guard.list(request.from, "from");
  const [wanted, other] = [soluteOf(request.wanted), soluteOf(request.other)];
  const water = positiveMass(request.water, "water", "m(H2O)", "water");
  const amounts = pool(request.from);
  const most = [mostOf(wanted, amounts), mostOf(other, amounts)] as const;
  needBoth(wanted, other, most, amounts);
  const [wantedMass, otherMass] = [massOf(wanted, most[0]), massOf(other, most[1])];
  const at = (solute: Solute, temperature: FractionalCrystallizationRequest["hot"]): Solubility =>
    solubilityOf(solute.formula, temperature);
  const [wantedHot, wantedCold] = [at(wanted, request.hot), at(wanted, request.cold)];
  const [otherHot, otherCold] = [at(other, request.hot), at(other, request.cold)];
  const saturated = ({ perHundredGramsWater, solidPhase, formula }: Solubility) =>
    saturatedBy(perHundredGramsWater, solidPhase ?? formula);
  const onFilter = settleSalts(
    [
      { dry: wantedMass, saturated: saturated(wantedHot) },
      { dry: otherMass, saturated: saturated(otherHot) },
    ],
    water,
  );
  const [wantedFilteredHot, filtered] = onFilter.solids as [Quantity, Quantity];
  const filteredHot = filtered.named({
    label: `${other.anhydrous} on the hot filter`,
    rule: "mass − hot solubility × water / 100 g",
  });
  const cooled = settleSalts(
    [
      { dry: wantedMass.minus(wantedFilteredHot), saturated: saturated(wantedCold) },
      { dry: otherMass.minus(filteredHot), saturated: saturated(otherCold) },
    ],
    onFilter.water,
  );
  const [crystals, contamination] = cooled.solids as [Quantity, Quantity];
  const crop = crystals.named({
    label: `${wanted.anhydrous} crystallised cold`,
    rule: "dissolved hot − cold solubility × water / 100 g",
    assumption: ASSUMPTION,
  });
  if (crop.isZero()) {
    throw new SolubilityError("solubility.no-crop", `the cold liquor still dissolves all the ${wanted.anhydrous}`, {
      hint: "use less water, or cool further",
    });
  }
  const brought = pooled(request.from);
  const own = [wanted, other];
  needNoOther(own, brought, {
    solids: cooled.solids.map((solid, i) => solid.plus(onFilter.solids[i]!)),
    water: cooled.water,
    temperature: request.cold,
  });
  needNoOther(own, brought, { solids: onFilter.solids, water: onFilter.water, temperature: request.hot });
  const ratio = (hot: Solubility, cold: Solubility): Quantity =>
    hot.perHundredGramsWater.dividedBy(cold.perHundredGramsWater);
  const purity = crop.dividedBy(crop.plus(contamination)).to("%");
  const ratios = { wanted: ratio(wantedHot, wantedCold), other: ratio(otherHot, otherCold) };
  const warnings = [wantedHot, wantedCold, otherHot, otherCold].flatMap((s) =>
    s.warnings.map((w) => `${s.formula}: ${w}`),
  );
  for (const [mass, { solidPhase, formula }] of [
    [filteredHot, otherHot],
    [crop, wantedCold],
    [contamination, otherCold],
  ] as const) {
    if (!mass.isZero() && solidPhase !== undefined && soluteOf(solidPhase).isHydrate)
      warnings.push(
        `${formula} precipitates as ${solidPhase}: its mass is given without the crystal water, which the liquor loses`,
      );
  }
  if (!wantedFilteredHot.isZero()) warnings.push(`not all ${wanted.anhydrous} dissolves hot: use more water`);
  return readable({
    wantedMass,
    filteredHot,
    wantedFilteredHot,
    crop,
    contamination,
    purity,
    yield: crop.dividedBy(wantedMass).to("%"),
    worthwhile: ratios.wanted.compare(STEEP) > 0 && ratios.other.compare(FLAT) < 0 && purity.compare(PURE) > 0,
    ratios,
    assumption: ASSUMPTION,
    warnings: [...new Set(warnings)],
  });
}
