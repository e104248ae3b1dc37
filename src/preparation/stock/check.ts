// A ledger that somebody gives is checked before it is read or written on.
import { headProblem } from "../../foundation/record";
import { PlanError } from "../error";
import { guard } from "../request/argument";
import type { Stock, StockEntry } from "./types";

export const SCHEMA = 1;

/** A ledger as it is used: checked like one that was read. */
export function takenStock(stock: Stock): Stock {
  const problem = headProblem(stock, "stock", SCHEMA);
  if (problem !== undefined) throw new PlanError("plan.json", `not a stock record: ${problem}`);
  guard.list(stock.entries, "stock.entries");
  const bad = stock.entries.findIndex((one) => !isEntry(one));
  if (bad >= 0)
    throw new PlanError("plan.json", `not a stock record: line ${bad + 1} is neither received, issued nor counted`);
  return stock;
}

const KINDS: readonly string[] = ["received", "issued", "counted"];

/** A line by its kind, name and lot; its amounts are read when they are needed. */
const isEntry = (one: StockEntry | null | undefined): boolean =>
  typeof one === "object" &&
  one !== null &&
  KINDS.includes(one.kind) &&
  typeof one.name === "string" &&
  typeof one.lot === "string";
