// Writing on the ledger: each function gives a new one. What was written stays as it was.
import type { PortionLike } from "../../amount";
import { Formula, parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { attempt } from "../../foundation/error";
import { LOOKUP, type LookupOptions, lookingIn, lookingWith, under } from "../../foundation/facts";
import { frozen } from "../../foundation/frozen";
import { recordHead } from "../../foundation/record";
import { isQuantity, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { nodeOf, readUnit, usualUnit } from "../../quantity/internal";
import { PlanError } from "../error";
import { formulaFrom } from "../reaction/species";
import { guard } from "../request/argument";
import type { Run } from "../run";
import { portionOf, shareOf } from "../shelf/strength";
import { SCHEMA, takenStock } from "./check";
import { lotsOf } from "./on-hand";
import type { Count, Issue, Kept, Lot, Receipt, Stock, StockEntry } from "./types";

/** As it was given; in a unit of the caller's own in ours, so that the books stay true when that unit is measured anew. */
function kept(like: QuantityLike): Kept {
  const read = isQuantity(like) ? like : quantity(like);
  if (!attempt(() => under(undefined, () => readUnit(read.unit))).ok)
    return read.to(usualUnit(nodeOf(read).unit.dimension).symbol).toJSON();
  return typeof like === "string" ? like : read.toJSON();
}

const optional = <K extends string, V>(key: K, value: V | undefined): Partial<Record<K, V>> =>
  (value === undefined ? {} : { [key]: value }) as Partial<Record<K, V>>;

const written = (stock: Stock, entries: readonly StockEntry[]): Stock =>
  frozen({ ...stock, entries: [...stock.entries, ...entries] });

/**
 * An empty ledger.
 *
 * @returns plain data for {@link receive} to write on
 * @category Stock
 * @example
 * openStock().entries.length // => 0
 */
export const openStock = (): Stock => frozen({ ...recordHead("stock", SCHEMA), entries: [] });

const RECEIPT = {
  name: true,
  lot: true,
  form: true,
  assay: true,
  strength: true,
  amount: true,
  left: true,
  cost: true,
  from: true,
  day: true,
} as const satisfies Fields<Receipt>;

/**
 * Take in a pack or a product.
 *
 * @param stock - the ledger
 * @param receipt - name, formula as sold, amount; `left` of it where the pack is open already; lot, assay with its uncertainty or strength, cost of the whole, where it comes from
 * @param options - `facts`: a set of the caller's own, whose units the figures may have
 * @returns a new ledger; the one given stays
 * @throws {PlanError} `plan.json` for what is no ledger, `plan.not-positive`, `plan.request` for a lot that is there already or an assay above 100 %,
 *   `plan.observation` where more is left than came in;
 *   codes of `parseFormula` and `quantity`
 * @category Stock
 * @example
 * const stock = receive(openStock(), { name: "soda", form: "Na2CO3", assay: "98 ± 1 %", amount: "1 kg", cost: "3.00 EUR", from: "drugstore" });
 * onHand(stock)[0]!.unitCost!.format({ decimals: 4, uncertainty: "none" }) // => "0.0030 EUR/g"
 */
export function receive(stock: Stock, receipt: Receipt, options: LookupOptions = {}): Stock {
  return lookingWith(options, guard, () => received(stock, receipt));
}

function received(stock: Stock, receipt: Receipt): Stock {
  takenStock(stock);
  guard.fields(receipt, RECEIPT, "receipt");
  const { name, form, assay, strength, amount, left, cost, from, day } = receipt;
  guard.text(name, "receipt.name");
  if (!(form instanceof Formula)) guard.text(form, "receipt.form");
  for (const [field, text] of Object.entries({ lot: receipt.lot, from, day }))
    if (text !== undefined) guard.text(text, `receipt.${field}`);
  const whole = portionOf(amount, "receipt.amount");
  if (assay !== undefined) shareOf(assay, `assay of ${name}`, "1");
  checkLeft(left, whole);
  const own = stock.entries.filter((one) => one.kind === "received" && one.name === name);
  const lot = receipt.lot ?? String(own.length + 1);
  if (own.some((one) => one.lot === lot))
    throw new PlanError("plan.request", `${name}: lot ${lot} is in stock already`);
  const entry: StockEntry = {
    kind: "received",
    name,
    lot,
    form: formulaFrom(form).toString(),
    amount: kept(amount as QuantityLike),
    ...optional("left", left === undefined ? undefined : kept(left as QuantityLike)),
    ...optional("assay", assay === undefined ? undefined : kept(assay)),
    ...optional("strength", strength === undefined ? undefined : kept(strength)),
    ...optional("cost", cost === undefined ? undefined : kept(cost)),
    ...optional("from", from),
    ...optional("day", day),
  };
  const after = written(stock, [entry]);
  // What cannot be read back is not taken in.
  lotsOf(after);
  return after;
}

/** What is left of a pack is of its dimension, and no more than all of it. */
function checkLeft(left: PortionLike | undefined, whole: Quantity): void {
  if (left === undefined) return;
  const found = quantity(left as QuantityLike);
  if (found.dimension !== whole.dimension || found.value.isNegative() || found.compare(whole) > 0)
    throw new PlanError("plan.observation", `receipt.left: ${found} is not a part of the ${whole} that came in`);
}

/** Lots of a name that a line may be about, the oldest first. */
function lotsNamed(stock: Stock, name: string, lot: string | undefined): Lot[] {
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
  const there = lots.map(({ onHand }) => String(onHand)).join(" and ");
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

/**
 * Take in what a run made: its dry product with the form and the assay it has as a material, and the cost of what went in.
 *
 * @param stock - the ledger
 * @param run - a run with a dry mass
 * @param options - name and lot of the product; `facts`: a set of the caller's own, whose units the ledger may have
 * @returns a new ledger
 * @throws {PlanError} `plan.observation` where nothing was weighed dry; as {@link receive}
 * @category Stock
 * @example
 * const plan = planPreparation({ equation: "CaCO3 -> CaO + CO2", product: "CaO", materials: [{ name: "chalk", form: "CaCO3" }], scale: { material: "chalk", portion: "100 g" } });
 * onHand(receiveProduct(openStock(), evaluateRun(plan, { dried: "55.6 g" }), { name: "lime" }))[0]!.form // => "CaO"
 */
export function receiveProduct(
  stock: Stock,
  run: Run,
  options: LookupOptions & { readonly name?: string; readonly lot?: string } = {},
): Stock {
  guard.fields(options, { name: true, lot: true, ...LOOKUP });
  if (typeof run?.asMaterial !== "function") throw new PlanError("plan.request", "receiveProduct takes a run");
  const material = run.asMaterial(options.name === undefined ? {} : { name: options.name });
  if (material.available === undefined) throw new PlanError("plan.observation", "the product was not weighed dry");
  const { name, form, available: amount, assay, pack } = material;
  const receipt = {
    name,
    form,
    amount,
    ...optional("lot", options.lot),
    ...optional("assay", assay),
    ...optional("cost", pack?.price as QuantityLike | undefined),
    ...optional("from", run.plan.title),
  };
  return lookingIn(options.facts, guard, () => received(stock, receipt));
}

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
