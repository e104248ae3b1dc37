// A good of the shop as a material of a plan: its usual strength, counted as its own formula, and its density.

import { massFractionOf, molarMass, parseFormula } from "../../formula";
import { shown } from "../../foundation/argument";
import { type LookupOptions, lookingWith } from "../../foundation/facts";
import { type Quantity, quantity, type StrengthDimension } from "../../quantity";
import { guard } from "../argument";
import type { StatedAssay } from "../data/shop-materials";
import { cite } from "../data/sources";
import { badInput, SubstanceError } from "../error";
import { CANDIDATE, type ShopCandidate } from "./shop";
import type { TextRange } from "./sold-goods";

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
