// Taking out: of a lot, of the oldest first, or what a run used.
import type { PortionLike } from "../../amount";
import { parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { type LookupOptions, lookingWith } from "../../foundation/facts";
import { list } from "../../foundation/wording";
import type { Quantity, QuantityLike } from "../../quantity";
import { PlanError } from "../error";
import { guard } from "../request/argument";
import type { Run } from "../run";
import { portionOf } from "../shelf/strength";
import { takenStock } from "./check";
import { kept, lotsNamed, optional, written } from "./lines";
import type { Issue, Lot, Stock, StockEntry } from "./types";

const ISSUE = { name: true, lot: true, amount: true, purpose: true, day: true } as const satisfies Fields<Issue>;

/**
 * Take something from stock: of the lot given, or of the oldest that has some and then the next.
 *
 * @param stock - the ledger
 * @param issued - name and amount, in the dimension it came in; lot, purpose and day
 * @param options - `facts`: a set of the caller's own, whose units the figures may have
 * @returns a new ledger with a line for each lot that was touched
 * @throws {PlanError} `plan.no-such-material`, `plan.not-positive`, `plan.observation` for more than is there by the books: count
 *   first; codes of `quantity`
 * @category Stock
 * @example
 * const stock = receive(openStock(), { name: "soda", form: "Na2CO3", amount: "1 kg" });
 * onHand(issue(stock, { name: "soda", amount: "48.2 g", purpose: "basic zinc carbonate" }))[0]!.onHand.in("g").toString() // => "951.8"
 */
export function issue(stock: Stock, issued: Issue, options: LookupOptions = {}): Stock {
  return lookingWith(options, guard, () => afterIssue(stock, issued));
}

function afterIssue(stock: Stock, issued: Issue, form?: string): Stock {
  takenStock(stock);
  guard.fields(issued, ISSUE, "issued");
  guard.text(issued.name, "issued.name");
  const { name, purpose, day } = issued;
  const wanted = portionOf(issued.amount, "issued.amount");
  const all = lotsNamed(stock, name, issued.lot).filter(({ onHand }) => onHand.dimension === wanted.dimension);
  // What a run counts on is taken before another hydrate under the same name.
  const isAsked = (lot: Lot): boolean =>
    form === undefined || parseFormula(lot.form).hasSameComposition(parseFormula(form));
  const lots = [...all.filter(isAsked), ...all.filter((lot) => !isAsked(lot))];
  let rest: Quantity = wanted;
  const entries: StockEntry[] = [];
  for (const { lot, onHand } of lots) {
    if (!rest.isPositive() || !onHand.isPositive()) continue;
    const isEnough = onHand.compare(rest) >= 0;
    const part = isEnough ? rest : onHand;
    entries.push({
      kind: "issued",
      name,
      lot,
      amount: isEnough && entries.length === 0 ? kept(issued.amount as QuantityLike) : part.toJSON(),
      ...optional("purpose", purpose),
      ...optional("day", day),
    });
    rest = rest.minus(part);
  }
  if (!rest.isPositive()) return written(stock, entries);
  const there = list(lots.map(({ onHand }) => String(onHand)));
  throw new PlanError(
    "plan.observation",
    `${name}: ${wanted} is more than there is by the books${there === "" ? "" : ` (${there})`}`,
    {
      hint: "weigh what is there, and give it to stocktake",
    },
  );
}

/**
 * Take from stock what a run used: the portions that were really weighed or poured, by the names of its materials.
 *
 * @param stock - the ledger
 * @param run - a run
 * @param options - `facts`: a set of the caller's own, whose units the ledger may have
 * @returns a new ledger; materials that are not in stock under their name are passed over (water of the tap)
 * @throws {PlanError} as {@link issue}
 * @category Stock
 * @example
 * const plan = planPreparation({ equation: "CaCO3 -> CaO + CO2", product: "CaO", materials: [{ name: "chalk", form: "CaCO3" }], scale: { material: "chalk", portion: "100 g" } });
 * const stock = receive(openStock(), { name: "chalk", form: "CaCO3", amount: "500 g" });
 * onHand(issueForRun(stock, evaluateRun(plan, { weighed: { chalk: "101.0 g" } })))[0]!.onHand.in("g").toString() // => "399"
 */
export function issueForRun(stock: Stock, run: Run, options: LookupOptions = {}): Stock {
  takenStock(stock);
  const supplied = run?.materialBalance?.supplied;
  guard.list(supplied, "run.materialBalance.supplied");
  return lookingWith(options, guard, () =>
    supplied
      .filter(({ material }) => stock.entries.some(({ name }) => name === material))
      .reduce(
        (left, { material, form, portion }) =>
          afterIssue(left, { name: material, amount: portion as PortionLike, purpose: run.plan.title }, form),
        stock,
      ),
  );
}
