// Taking in: a pack that was bought, or what a run made.
import type { PortionLike } from "../../amount";
import { Formula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { LOOKUP, type LookupOptions, lookingIn, lookingWith } from "../../foundation/facts";
import { type Quantity, type QuantityLike, quantity } from "../../quantity";
import { PlanError } from "../error";
import { formulaFrom } from "../reaction/species";
import { guard } from "../request/argument";
import type { Run } from "../run";
import { portionOf, shareOf } from "../shelf/strength";
import { takenStock } from "./check";
import { kept, optional, written } from "./lines";
import { lotsOf } from "./on-hand";
import type { Receipt, Stock, StockEntry } from "./types";

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
