// What a batch costs: the part of each pack that is used, over what it makes.
import {
  type PriceDimension,
  type Quantity,
  type QuantityLike,
  quantity,
  sum,
  type UnitPriceDimension,
} from "../../quantity";
import { PlanError } from "../error";
import type { Supplied } from "../reaction/account";
import type { Material } from "./material";
import { portionOf } from "./strength";

/** Cost of one material in the batch. */
export interface CostLine {
  /** Name that the person gives it on the shelf. */
  readonly material: string;
  /** Part of the pack price that the portion uses. */
  readonly cost: Quantity<PriceDimension>;
  /** Price per gram or millilitre as sold. */
  readonly unitPrice: Quantity<UnitPriceDimension>;
  /** Part of the cost that pays for the excess left in the liquor. */
  readonly unused: Quantity<PriceDimension>;
}

/** Cost of a batch; undefined parts name what is missing. */
export interface Cost {
  /** One line for each material with a price. */
  readonly lines: readonly CostLine[];
  /** The sum; undefined while a price is missing. */
  readonly total: Quantity<PriceDimension> | undefined;
  /** For a gram of the product that is expected. */
  readonly perGram: Quantity<UnitPriceDimension> | undefined;
  /** For a mole of the product that is expected. */
  readonly perMole: Quantity<UnitPriceDimension> | undefined;
  /** What the cost lacks to be complete, such as a price. */
  readonly missing: readonly string[];
}

/** What is missing where prices are in several currencies. */
export const ONE_CURRENCY = "one currency for all prices";

/** What is said of a material without a price. */
export const lacksPrice = (name: string): string => `price of ${name}`;

export function costOf(
  materials: readonly Material[],
  supplied: readonly Supplied[],
  mass: Quantity,
  amount: Quantity,
): Cost {
  const missing: string[] = [];
  const lines: CostLine[] = [];
  materials.forEach((material, i) => {
    const { name, pack } = material.shelf;
    if (pack === undefined) {
      missing.push(lacksPrice(name));
      return;
    }
    if (typeof pack !== "object" || pack === null) {
      throw new PlanError("plan.request", `the pack of ${name} is not an object`, {
        hint: '{ size: "1 kg", price: "8.90 EUR" }',
      });
    }
    const size = portionOf(pack.size, `pack size of ${name}`, { symbol: `pack(${name})`, label: `pack of ${name}` });
    const price = quantity(pack.price as QuantityLike, {
      symbol: `price(${name})`,
      label: `price of a pack of ${name}`,
    });
    if (!price.dimension.startsWith("price (")) {
      throw new PlanError(
        "plan.request",
        `the price of ${name} must be money for the pack, such as "8.90 EUR", not ${String(price)}`,
      );
    }
    const { portion, amount: n, left } = supplied[i]!;
    if (portion.dimension !== size.dimension) {
      missing.push(
        `${name}: the pack is sold by ${size.dimension}, the portion is measured by ${portion.dimension} (give the density)`,
      );
      return;
    }
    const cost = portion
      .times(price)
      .dividedBy(size)
      .named({ symbol: `cost(${name})`, rule: "cost = portion × price / pack size" });
    lines.push({ material: name, cost, unitPrice: price.dividedBy(size), unused: cost.times(left).dividedBy(n) });
  });
  const currencies = new Set(lines.map((l) => l.cost.dimension));
  if (currencies.size > 1) missing.push(ONE_CURRENCY);
  const complete = missing.length === 0 && lines.length > 0;
  const total = complete
    ? sum(
        lines.map((l) => l.cost),
        { symbol: "cost", label: "cost of the batch", rule: "sum of the parts of the packs used" },
      )
    : undefined;
  return {
    lines,
    total,
    perGram: total?.dividedBy(mass).named({ symbol: "cost per gram", rule: "cost per gram = cost / mass of product" }),
    perMole: total
      ?.dividedBy(amount)
      .named({ symbol: "cost per mole", rule: "cost per mole = cost / amount of product" }),
    missing,
  };
}
