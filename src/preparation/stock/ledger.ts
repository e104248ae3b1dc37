// The ledger: opened empty, or read back from its record. Whoever writes on it makes a new one; what was written stays as it was.
import { attempt } from "../../foundation/error";
import { type LookupOptions, lookingWith } from "../../foundation/facts";
import { frozen } from "../../foundation/frozen";
import { recordHead } from "../../foundation/record";
import { PlanError } from "../error";
import { guard } from "../request/argument";
import { SCHEMA, takenStock } from "./check";
import { optional } from "./lines";
import { lotsOf } from "./on-hand";
import type { Stock } from "./types";

/**
 * An empty ledger.
 *
 * @returns plain data for {@link receive} to write on
 * @category Stock
 * @example
 * openStock().entries.length // => 0
 */
export const openStock = (): Stock => frozen({ ...recordHead("stock", SCHEMA), entries: [] });

/**
 * A ledger from its record, checked: every line is read and every balance is drawn.
 *
 * @param data - the record, parsed
 * @param options - `facts`: a set of the caller's own, whose units the ledger may have where somebody wrote it by hand
 * @throws {PlanError} `plan.json` for anything else
 * @category Records
 * @example
 * stockFromJSON(JSON.parse(JSON.stringify(openStock()))).entries.length // => 0
 */
export function stockFromJSON(data: unknown, options: LookupOptions = {}): Stock {
  return lookingWith(options, guard, () => readBack(data));
}

function readBack(data: unknown): Stock {
  const stock = takenStock(data as Stock);
  const copy = frozen(structuredCopy(stock));
  const lots = attempt(() => lotsOf(copy));
  if (!lots.ok)
    throw new PlanError(
      "plan.json",
      `not a stock record: a line cannot be read (${lots.error.message.split("\n")[0]})`,
    );
  return copy;
}

/** The data alone, and a copy of it. */
const structuredCopy = ({ type, schema, library, entries }: Stock): Stock => ({
  type,
  schema,
  ...optional("library", library),
  entries: entries.map((one) => ({ ...one })),
});
