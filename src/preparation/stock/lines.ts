// Lines of the ledger: how a figure is written in them, and which lots a line is about.
import { attempt } from "../../foundation/error";
import { under } from "../../foundation/facts";
import { frozen } from "../../foundation/frozen";
import { isQuantity, type QuantityLike, quantity } from "../../quantity";
import { nodeOf, readUnit, usualUnit } from "../../quantity/internal";
import { PlanError } from "../error";
import { lotsOf } from "./on-hand";
import type { Kept, Lot, Stock, StockEntry } from "./types";

/** As it was given; in a unit of the caller's own in ours, so that the books stay true when that unit is measured anew. */
export function kept(like: QuantityLike): Kept {
  const read = isQuantity(like) ? like : quantity(like);
  if (!attempt(() => under(undefined, () => readUnit(read.unit))).ok)
    return read.to(usualUnit(nodeOf(read).unit.dimension).symbol).toJSON();
  return typeof like === "string" ? like : read.toJSON();
}

/** A field that is left out where there is nothing to write. */
export const optional = <K extends string, V>(key: K, value: V | undefined): Partial<Record<K, V>> =>
  (value === undefined ? {} : { [key]: value }) as Partial<Record<K, V>>;

/** The ledger with more lines at its end. */
export const written = (stock: Stock, entries: readonly StockEntry[]): Stock =>
  frozen({ ...stock, entries: [...stock.entries, ...entries] });

/** Lots of a name that a line may be about, the oldest first. */
export function lotsNamed(stock: Stock, name: string, lot: string | undefined): Lot[] {
  const all = lotsOf(stock);
  const own = all.filter((one) => one.name === name && (lot === undefined || one.lot === lot));
  if (own.length > 0) return own;
  throw new PlanError(
    "plan.no-such-material",
    `nothing in stock is called '${name}'${lot === undefined ? "" : ` with lot ${lot}`}`,
    {
      hint: `in stock: ${[...new Set(all.map((one) => one.name))].join(", ") || "nothing"}`,
    },
  );
}
