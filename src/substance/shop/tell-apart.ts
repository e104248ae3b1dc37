// How to tell the forms sold under one name apart: what they lose on drying, how dense they are, what a mole costs.

import { assayOf, positive } from "../../amount/internal";
import { type Formula, massFractionOf, molarMass, parseFormula } from "../../formula";
import { type Fields, shown } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, lookingWith, withItsFacts } from "../../foundation/facts";
import { waterContent } from "../../hydrate";
import {
  isQuantity,
  type Quantity,
  type QuantityLike,
  quantity,
  type StrengthDimension,
  type UnitPriceDimension,
} from "../../quantity";
import { guard } from "../argument";
import type { StatedAssay } from "../data/shop-materials";
import { cite, type SourceKey } from "../data/sources";
import { badInput, SubstanceError } from "../error";
import { type Substance, substance } from "../registry/substance";
import { CANDIDATE, type ShopCandidate, shopMaterial, type TextRange } from "./shop";

const PACK = { formula: true, price: true, size: true, assay: true, facts: true } as const satisfies Fields<PricedPack>;

/** The middle of a range of decimal texts, and half its width, exactly. */
function middle(lower: string, upper: string): { value: string; halfWidth: string } {
  const decimals = Math.max(...[lower, upper].map((text) => text.split(".")[1]?.length ?? 0)) + 1;
  const scaled = (text: string): bigint => {
    if (!/^\d+(?:\.\d+)?$/.test(text)) throw badInput(`the end of a range as plain digits, got ${shown(text)}`);
    const [whole, rest = ""] = text.split(".");
    return BigInt(whole! + rest.padEnd(decimals, "0"));
  };
  const text = (n: bigint): string => {
    const digits = n.toString().padStart(decimals + 1, "0");
    return `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`.replace(/\.?0+$/, "");
  };
  const [low, high] = [scaled(lower), scaled(upper)];
  return { value: text((low + high) / 2n), halfWidth: text((high - low) / 2n) };
}

/** A range as one quantity: its middle, spread evenly between the ends. */
function rangeQuantity(
  range: { lower: string; upper: string },
  unit: string,
  label: string,
  source: ShopCandidate["source"],
): Quantity {
  const { value, halfWidth } = middle(range.lower, range.upper);
  const spread = halfWidth === "0" ? {} : { halfWidth, distribution: "rectangular" as const };
  return quantity({ value, unit, ...spread }, { label, source: cite(source), assumption: "usual range of the trade" });
}

function ofTextRange(range: TextRange, label: string, source: ShopCandidate["source"]): Quantity {
  const [lower, unit] = range.lower.split(" ") as [string, string];
  return rangeQuantity({ lower, upper: range.upper.split(" ")[0]! }, unit, label, source);
}

/** @internal Mass of the formula per mass of what a stated figure counts; available chlorine counts each hypochlorite as Cl2. */
export function massPerStated(formula: string, of: string): Quantity | undefined {
  const counted = parseFormula(of);
  if (counted.symbols.length === 1 && counted.count(counted.symbols[0]!).equals(1)) {
    const share = massFractionOf(of, formula);
    return share.value.isZero() ? undefined : quantity("1").dividedBy(share);
  }
  const whole = parseFormula(formula);
  // the element both share that is not hydrogen, oxygen or carbon tells how many of the one stand in the other
  const key = counted.symbols.find((symbol) => !["H", "O", "C"].includes(symbol) && !whole.count(symbol).equals(0));
  if (key === undefined) return undefined;
  const times = of === "Cl2" ? whole.count(key) : whole.count(key).div(counted.count(key));
  return molarMass(whole).dividedBy(molarMass(counted).times(times));
}

function isPercent(candidate: ShopCandidate): boolean {
  return candidate.form !== "mass concentration";
}

function converted(candidate: ShopCandidate, stated: StatedAssay): Quantity | undefined {
  const factor = massPerStated(candidate.formula, stated.of!);
  if (factor === undefined) return undefined;
  const unit = isPercent(candidate) ? "%" : "g/dL";
  return rangeQuantity(stated, unit, `stated as ${stated.of}`, candidate.source)
    .times(factor)
    .to(unit)
    .named({
      rule: `strength as ${candidate.formula} = stated strength × mass of ${candidate.formula} for one of ${stated.of}`,
    });
}

/** A candidate as the shop table gives it: altered or home-made ones must still be readable. */
function needCandidate(candidate: ShopCandidate): void {
  guard.fields(candidate, CANDIDATE, "the candidate");
  if (candidate.stated === undefined)
    throw badInput("a candidate of shopMaterial", "take one of shopMaterial(name).candidates");
  for (const field of ["formula", "name", "soldAs"] as const) guard.text(candidate[field], field);
  guard.choice(candidate.form, "form", ["solid", "mass fraction", "mass concentration"]);
  parseFormula(candidate.formula);
  cite(candidate.source);
  for (const range of [candidate.assay, candidate.density, ...candidate.stated]) {
    if (range === undefined) continue;
    guard.text(range.lower, "lower");
    guard.text(range.upper, "upper");
  }
  for (const { of } of candidate.stated) if (of !== undefined) guard.text(of, "of");
}

/**
 * Usual strength of a shop candidate, counted as its own formula, with the uncertainty of the usual range.
 *
 * @param candidate - one of {@link shopMaterial}
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns mass fraction (solids and % w/w) or mass concentration; `undefined` where the trade states none for this form
 * @source the candidate's `source`
 * @category Shelf
 * @example
 * usualStrength(shopMaterial("Epsom salt").candidates[0]!)?.format({ uncertainty: "none" }) // => "99.5 %"
 */
export function usualStrength(
  candidate: ShopCandidate,
  options?: LookupOptions,
): Quantity<StrengthDimension> | undefined {
  if (options !== undefined) return lookingWith(options, guard, () => usualStrength(candidate));
  needCandidate(candidate);
  if (candidate.assay !== undefined)
    return ofTextRange(candidate.assay, `usual strength of ${candidate.soldAs}`, candidate.source);
  const stated = candidate.stated.find((one) => one.of !== undefined);
  return stated === undefined ? undefined : converted(candidate, stated);
}

/** A material as a plan takes it. */
export interface ShelfForm {
  /** The good as the shop calls it. */
  readonly name: string;
  /** What is really in it, crystal water included. */
  readonly form: string;
  /** Mass fraction of the form; absent where it is not known. */
  readonly assay?: Quantity<"mass fraction" | "number">;
  /** Of a solution; absent for a solid. */
  readonly strength?: Quantity<StrengthDimension>;
  /** Of a liquid; absent where it is not known. */
  readonly density?: Quantity<"density">;
}

/**
 * A shop candidate as a material of a plan: form, assay of a solid or strength and density of a solution, all from the
 * usual ranges. Replace them by what your own pack says.
 *
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @throws {SubstanceError} `substance.no-strength` where the trade states no strength for this form
 * @category Shelf
 * @example
 * shelfMaterialOf(shopMaterial("washing soda").candidates[2]!).form // => "Na2CO3"
 */
export function shelfMaterialOf(candidate: ShopCandidate, options?: LookupOptions): ShelfForm {
  if (options !== undefined) return lookingWith(options, guard, () => shelfMaterialOf(candidate));
  const strength = usualStrength(candidate);
  if (strength === undefined)
    throw new SubstanceError(
      "substance.no-strength",
      `no usual strength of ${candidate.formula} sold as ${candidate.soldAs} is known`,
      {
        hint: "take the figure on the pack, or titrate",
        details: { formula: candidate.formula, soldAs: candidate.soldAs },
      },
    );
  const shared = { name: candidate.soldAs, form: candidate.formula };
  if (candidate.form === "solid") {
    // more than the whole: the pack is figured on another basis, or drier than its formula
    const stated = candidate.stated.find((one) => one.of !== undefined && one.of.length > 2);
    if (strength.value.greaterThan(100) && stated !== undefined)
      return {
        ...shared,
        form: stated.of!,
        assay: rangeQuantity(stated, "%", `stated as ${stated.of}`, candidate.source),
      };
    return { ...shared, assay: strength as Quantity<"mass fraction" | "number"> };
  }
  if (candidate.density === undefined) return { ...shared, strength };
  return {
    ...shared,
    strength,
    density: ofTextRange(candidate.density, `density of ${candidate.soldAs}`, candidate.source),
  };
}

/** What tells one form from the others. */
export interface FormMarks {
  /** As listed, crystal water included. */
  readonly formula: string;
  /** Name of the form in words. */
  readonly name: string;
  /** Crystal water included. */
  readonly molarMass: Quantity<"molar mass">;
  /** Mass fraction lost when dried to the anhydrous salt; 0 for an anhydrous one. */
  readonly lossOnDrying: Quantity<"number" | "mass fraction">;
  /** Temperature by which the water is gone, where steps are known. */
  readonly dryBy?: Quantity<"temperature">;
  /** Near room temperature; absent where none is known. */
  readonly density?: Quantity<"density">;
  /** Looks, in words; absent where not known. */
  readonly appearance?: string;
  /** A gram of this holds as much as this many grams of the first form. */
  readonly worth: Quantity<"number">;
  /** What density, looks and the temperature rest on, by key. */
  readonly sources: { readonly density?: SourceKey; readonly appearance?: SourceKey; readonly dryBy?: SourceKey };
}

/** By when the last crystal water has gone. */
function dryBy({ thermalSteps }: Substance): Quantity<"temperature"> | undefined {
  const last = thermalSteps.filter((step) => step.leaves.every((one) => one.formula === "H2O")).at(-1);
  const dry = last?.remains.every((one) => !one.formula.includes("·")) ?? false;
  return dry ? (last!.to ?? last!.from) : undefined;
}

/**
 * Marks by which forms sold under one name are told apart: loss on drying, density, looks, and what each is worth by the
 * gram.
 *
 * @param nameOrFormulas - a shop name, or the formulas to compare
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns one row per formula, in the order of the shop table
 * @throws {SubstanceError} as {@link shopMaterial}; {@link FormulaError} for an unreadable formula
 * @source molar masses as {@link molarMass}; densities, looks and temperatures as `sources` of each row says
 * @category Shelf
 * @example
 * distinguishMaterials("washing soda").map((form) => form.lossOnDrying.format({ decimals: 1, uncertainty: "none" })) // => ["63.0 % w/w", "14.5 % w/w", "0.0 % w/w"]
 */
export function distinguishMaterials(
  nameOrFormulas: string | readonly (string | Formula)[],
  options?: LookupOptions,
): FormMarks[] {
  if (options !== undefined) return lookingWith(options, guard, () => distinguishMaterials(nameOrFormulas));
  if (typeof nameOrFormulas !== "string" && !Array.isArray(nameOrFormulas))
    throw badInput("a shop name or a list of formulas");
  const formulas =
    typeof nameOrFormulas === "string"
      ? shopMaterial(nameOrFormulas).candidates.map((one) => one.formula)
      : nameOrFormulas.map(String);
  const distinct = [...new Set(formulas)];
  const first = distinct[0];
  return distinct.map((formula) => {
    const known = substance(parseFormula(formula));
    const temperature = dryBy(known);
    const { density, appearance, sources } = known;
    return {
      formula: known.formula,
      name: known.name,
      molarMass: molarMass(formula),
      lossOnDrying: formula === "H2O" ? quantity("0 % w/w") : waterContent(formula),
      ...(temperature === undefined ? {} : { dryBy: temperature }),
      ...(density === undefined ? {} : { density }),
      ...(appearance === undefined ? {} : { appearance }),
      worth: worth(first!, formula),
      sources: {
        ...(density === undefined ? {} : { density: sources.density! }),
        ...(appearance === undefined ? {} : { appearance: sources.appearance! }),
        ...(temperature === undefined ? {} : { dryBy: sources.thermalSteps! }),
      },
    };
  });
}

/** Moles of the common part in a gram of the one, by those in a gram of the first. */
function worth(first: string, formula: string): Quantity {
  const ratio = molarMass(first).dividedBy(molarMass(formula));
  const [one, other] = [first, formula].map((text) => parseFormula(text));
  const key = one!.symbols.find((symbol) => !["H", "O"].includes(symbol) && !other!.count(symbol).equals(0));
  return key === undefined ? ratio : ratio.times(other!.count(key).div(one!.count(key)));
}

/** A pack to be compared. */
export interface PricedPack extends LookupOptions {
  /** What is in the pack, crystal water included. */
  readonly formula: string | Formula;
  /** Money for the whole pack: `"8.90 EUR"`. */
  readonly price: QuantityLike;
  /** Mass of what is in the pack. */
  readonly size: QuantityLike<"mass">;
  /** Mass fraction of the formula; the whole unless given. */
  readonly assay?: QuantityLike;
}

/**
 * Price of one mole of the substance in a pack.
 *
 * @param pack - price such as "4.20 EUR", size in a unit of mass, assay as mass fraction in (0, 1]
 * @returns money per mole
 * @throws {QuantityError} for a text that is no quantity
 * @throws {AmountError} `amount.not-positive`, `amount.fraction-above-one`
 * @throws {SubstanceError} `substance.bad-input` for a price below zero
 * @category Cost
 * @example
 * pricePerMole({ formula: "Na2CO3·10H2O", price: "2.00 EUR", size: "1 kg" }).format({ decimals: 3, uncertainty: "none" }) // => "0.572 EUR/mol"
 */
export function pricePerMole(pack: PricedPack): Quantity<UnitPriceDimension> {
  if (bringsFacts(pack)) return withItsFacts(pack, guard, pricePerMole);
  guard.fields(pack, PACK, "request");
  const size = positive(pack.size, "mass", "size", { label: "size of the pack" });
  const pure = size.times(assayOf(pack.assay ?? "100 %", "assay"));
  const price = isQuantity(pack.price) ? pack.price : quantity(pack.price, { label: "price of the pack" });
  if (!price.isPositive() && !price.isZero()) throw badInput(`a price that is not below zero, got ${price}`);
  return price
    .dividedBy(pure.dividedBy(molarMass(pack.formula)))
    .named({ rule: "price per mole = price × molar mass / (size × assay)" });
}
