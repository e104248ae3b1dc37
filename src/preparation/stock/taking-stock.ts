// Counting: what is really there goes before the books.
import type { Fields } from "../../foundation/argument";
import { type LookupOptions, lookingWith } from "../../foundation/facts";
import { type QuantityLike, quantity } from "../../quantity";
import { PlanError } from "../error";
import { guard } from "../request/argument";
import { takenStock } from "./check";
import { kept, lotsNamed, optional, written } from "./lines";
import type { Count, Stock } from "./types";

const COUNT = { name: true, lot: true, found: true, day: true } as const satisfies Fields<Count>;

/**
 * Put the books right by weighing: what is really there of a lot. What the books had more is unaccounted for.
 *
 * @param stock - the ledger
 * @param count - name, lot where there are several, and what was found
 * @param options - `facts`: a set of the caller's own, whose units the figures may have
 * @returns a new ledger
 * @throws {PlanError} `plan.no-such-material`, `plan.request` where the lot is open, `plan.observation` for another dimension
 * @category Stock
 * @example
 * const stock = issue(receive(openStock(), { name: "soda", form: "Na2CO3", amount: "1 kg" }), { name: "soda", amount: "400 g" });
 * const counted = stocktake(stock, { name: "soda", found: "588 g" });
 * onHand(counted)[0]!.unaccounted.in("g").toString() // => "12"
 */
export function stocktake(stock: Stock, count: Count, options: LookupOptions = {}): Stock {
  return lookingWith(options, guard, () => counted(stock, count));
}

function counted(stock: Stock, count: Count): Stock {
  takenStock(stock);
  guard.fields(count, COUNT, "count");
  guard.text(count.name, "count.name");
  const { name, day } = count;
  const lots = lotsNamed(stock, name, count.lot);
  const [one, another] = lots;
  if (another !== undefined)
    throw new PlanError("plan.request", `${name}: which lot was counted?`, {
      hint: lots.map(({ lot }) => lot).join(", "),
    });
  const found = quantity(count.found as QuantityLike);
  if (found.dimension !== one!.onHand.dimension || found.value.isNegative())
    throw new PlanError("plan.observation", `${name}: ${found} is not a count of what came in as ${one!.received}`);
  return written(stock, [
    { kind: "counted", name, lot: one!.lot, amount: kept(count.found as QuantityLike), ...optional("day", day) },
  ]);
}
