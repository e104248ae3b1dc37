// A product that cold acid splits into a metal and its salt: what is left tells it from its neighbours.
import { balance } from "../../equation";
import { parseFormula } from "../../formula";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import { SPLIT_BY_ACID } from "../data/ends";
import type { Plan } from "../plan";
import { exact } from "../planning/exact";

/** What is left of the product in an acid. */
interface Split {
  readonly acid: string;
  readonly metal: string;
  /** Mass of the metal as a share of the product. */
  readonly left: Quantity;
  /** What leaves none of the metal. */
  readonly none: string;
}

/** What acid leaves of the product; undefined for what it does not split. */
export function splitByAcid({ product }: Pick<Plan, "product">): Split | undefined {
  const formula = parseFormula(product.formula);
  const row = SPLIT_BY_ACID.find((one) => isOneOf(formula, one.product));
  if (row === undefined) return undefined;
  const { reactants, products } = balance(row.equation);
  const of = (text: string) => [...reactants, ...products].find((one) => isOneOf(one.formula, text))!;
  const massOf = (text: string): Quantity =>
    exact(String(of(text).coefficient)).times(matterOf(of(text).formula).molarMass);
  const left = massOf(row.metal).dividedBy(massOf(row.product)).to("%");
  return { acid: row.acid, metal: row.metal, left, none: row.none };
}
