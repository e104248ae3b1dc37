// How to tell the forms sold under one name apart: what they lose on drying, how dense they are, what a mole costs.

import { assayOf, positive } from "../../amount/internal";
import { type Formula, molarMass, parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, lookingWith, withItsFacts } from "../../foundation/facts";
import { waterContent } from "../../hydrate";
import { isQuantity, type Quantity, type QuantityLike, quantity, type UnitPriceDimension } from "../../quantity";
import { guard } from "../argument";
import type { SourceKey } from "../data/sources";
import { badInput } from "../error";
import { type Substance, substance } from "../registry/substance";
import { shopMaterial } from "./shop";

const PACK = { formula: true, price: true, size: true, assay: true, facts: true } as const satisfies Fields<PricedPack>;

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
