// Reading the ledger: what stands of each lot, what runs out first, what to buy.

import { molarMass, parseFormula } from "../../formula";
import { isPreparativeError } from "../../foundation/error";
import { type LookupOptions, lookingWith } from "../../foundation/facts";
import { frozen } from "../../foundation/frozen";
import { anhydrousOf } from "../../hydrate";
import { type Quantity, type QuantityLike, quantity, sum } from "../../quantity";
import { PlanError } from "../error";
import type { Plan } from "../plan";
import { guard } from "../request/argument";
import type { ShelfMaterial } from "../request/request";
import { takenStock } from "./check";
import type { Kept, Lot, Reach, ShoppingLine, Stock, StockEntry } from "./types";

const read = (like: Kept, label: string): Quantity => quantity(like as QuantityLike, { label });

type Received = Extract<StockEntry, { kind: "received" }>;

const zeroOf = (like: Quantity): Quantity => quantity({ value: "0", unit: like.unit });

function lotOf(receipt: Received, later: readonly StockEntry[]): Lot {
  const { name, lot, form, from } = receipt;
  const received = read(receipt.amount, `${name}, lot ${lot}, as received`);
  let onHand: Quantity =
    receipt.left === undefined ? received : read(receipt.left, `${name}, lot ${lot}, left when the ledger began`);
  let unaccounted = zeroOf(received);
  for (const entry of later) {
    if (entry.kind === "received") continue;
    const amount = read(entry.amount, `${name}, ${entry.kind}`);
    if (entry.kind === "counted") {
      unaccounted = unaccounted.plus(onHand.minus(amount)).to(received.unit);
      onHand = amount;
    } else onHand = onHand.minus(amount);
  }
  const base = received.dimension === "mass" ? "g" : "mL";
  const paid = receipt.cost === undefined ? undefined : read(receipt.cost, `cost of ${name}`);
  const unitCost = paid
    ?.dividedBy(received.to(base))
    .named({ label: `cost of ${name}`, rule: "cost / amount received" });
  const label = `${name}, lot ${lot}, on hand`;
  return {
    name,
    lot,
    form,
    assay: receipt.assay === undefined ? undefined : read(receipt.assay, `assay of ${name}`),
    strength: receipt.strength === undefined ? undefined : read(receipt.strength, `strength of ${name}`),
    received,
    onHand: onHand.to(received.unit).named({ label }),
    unaccounted,
    unitCost,
    value: unitCost?.times(onHand.to(base)).to(paid!.unit),
    from,
  };
}

/** Every lot as it stands, in the order they came in. */
export function lotsOf({ entries }: Stock): Lot[] {
  try {
    const receipts = entries.filter((one): one is Received => one.kind === "received");
    return receipts.map((receipt) =>
      lotOf(
        receipt,
        entries.filter(({ name, lot }) => name === receipt.name && lot === receipt.lot),
      ),
    );
  } catch (error) {
    if (isPreparativeError(error)) throw error;
    throw new PlanError("plan.json", "not a stock record: a line cannot be read");
  }
}

/**
 * What stands in stock, lot by lot in the order they came in: received less issued, from the last count on.
 *
 * @param stock - the ledger
 * @param options - `facts`: a set of the caller's own, whose units the ledger may have
 * @returns amount on hand with its uncertainty, what counts did not find, cost of a gram or millilitre, value
 * @throws {PlanError} `plan.json` for what is no ledger
 * @category Stock
 * @example
 * const stock = receive(openStock(), { name: "soda", form: "Na2CO3", amount: "1 kg", cost: "3 EUR" });
 * String(onHand(issue(stock, { name: "soda", amount: "250 g" }))[0]!.value) // => "2.25 EUR"
 */
export function onHand(stock: Stock, options: LookupOptions = {}): readonly Lot[] {
  return lookingWith(options, guard, () => frozen(lotsOf(takenStock(stock))));
}

/** So much of a lot as the form a plan counts on: another hydrate by its salt; undefined for what is no form of it. */
function inForm(amount: Quantity, lot: Lot, form: string): Quantity | undefined {
  const [own, asked] = [parseFormula(lot.form), parseFormula(form)];
  if (own.hasSameComposition(asked)) return amount;
  if (!anhydrousOf(own).hasSameComposition(anhydrousOf(asked))) return undefined;
  return amount.dimension === "mass"
    ? amount.times(molarMass(asked)).dividedBy(molarMass(own)).to(amount.unit)
    : amount;
}

/** What there is of a name, in one dimension, as the form that is asked for. */
function totalOf(lots: readonly Lot[], { name, form, needed }: Need): Quantity | undefined {
  const own = lots.flatMap((one) => {
    if (one.name !== name || one.onHand.dimension !== needed.dimension || !one.onHand.isPositive()) return [];
    const counted = inForm(one.onHand, one, form);
    return counted === undefined ? [] : [counted];
  });
  return own.length === 0 ? undefined : sum(own);
}

interface Need {
  readonly name: string;
  readonly form: string;
  readonly needed: Quantity;
}

/** What one round of all plans needs of each material, in the dimension it is portioned in. */
function needsOf(plans: readonly Plan[]): Need[] {
  guard.list(plans, "plans");
  const needs = new Map<string, Need>();
  for (const [i, plan] of plans.entries()) {
    guard.list(plan?.weighings, `plans[${i}].weighings`);
    for (const { material, form, portion } of plan.weighings) {
      const key = `${material} ${form} ${portion.dimension}`;
      const before = needs.get(key);
      needs.set(key, { name: material, form, needed: before === undefined ? portion : before.needed.plus(portion) });
    }
  }
  return [...needs.values()];
}

/**
 * What runs out first: for how many rounds of the plans each material is enough, the shortest first.
 *
 * @param stock - the ledger
 * @param plans - what is made in one round
 * @param options - `facts`: a set of the caller's own, whose units the ledger may have
 * @returns rounds as a number, 0 for what is not in stock; another hydrate of the salt counts as the form the plan has
 * @throws {PlanError} `plan.json` for what is no ledger, `plan.request` for what is no list of plans
 * @category Stock
 * @example
 * const plan = planPreparation({ equation: "CaCO3 -> CaO + CO2", product: "CaO", materials: [{ name: "chalk", form: "CaCO3" }], scale: { material: "chalk", portion: "100 g" } });
 * runsOutFirst(receive(openStock(), { name: "chalk", form: "CaCO3", amount: "500 g" }), [plan])[0]!.rounds // => 5
 */
export function runsOutFirst(stock: Stock, plans: readonly Plan[], options: LookupOptions = {}): readonly Reach[] {
  const lots = onHand(stock, options);
  const reaches = needsOf(plans).map((need) => {
    const { name, needed } = need;
    const there = totalOf(lots, need) ?? zeroOf(needed);
    return { name, onHand: there, needed, rounds: there.dividedBy(needed).toNumber("") };
  });
  return frozen(reaches.sort((a, b) => a.rounds - b.rounds));
}

/**
 * What to buy for the plans beyond what is on hand, in packs of the size bought last.
 *
 * @param stock - the ledger
 * @param plans - what is to be made
 * @param options - `facts`: a set of the caller's own, whose units the ledger may have
 * @returns a line for each material that is short; packs and cost where such a pack was bought before; another hydrate of the
 *   salt counts as the form the plan has
 * @throws {PlanError} `plan.json` for what is no ledger, `plan.request` for what is no list of plans
 * @category Stock
 * @example
 * const plan = planPreparation({ equation: "CaCO3 -> CaO + CO2", product: "CaO", materials: [{ name: "chalk", form: "CaCO3" }], scale: { material: "chalk", portion: "900 g" } });
 * const [line] = shoppingList(receive(openStock(), { name: "chalk", form: "CaCO3", amount: "500 g", cost: "2 EUR" }), [plan, plan]);
 * [line!.packs, String(line!.cost)] // => [3, "6 EUR"]
 */
export function shoppingList(
  stock: Stock,
  plans: readonly Plan[],
  options: LookupOptions = {},
): readonly ShoppingLine[] {
  const lots = onHand(stock, options);
  return frozen(
    needsOf(plans).flatMap((need): ShoppingLine[] => {
      const { name, form, needed } = need;
      const there = totalOf(lots, need) ?? zeroOf(needed);
      const missing = needed.minus(there).to(needed.unit);
      if (!missing.isPositive()) return [];
      const bought = lots.filter((one) => one.name === name && one.received.dimension === needed.dimension);
      const last = bought.filter((one) => inForm(one.received, one, form) !== undefined).at(-1);
      const packs =
        last === undefined
          ? undefined
          : missing
              .dividedBy(inForm(last.received, last, form)!)
              .in("")
              .ceil()
              .toNumber();
      const each = last?.unitCost?.times(last.received);
      return [
        {
          name,
          form,
          needed,
          onHand: there,
          missing,
          packs,
          packSize: last?.received,
          cost: each === undefined || packs === undefined ? undefined : each.times(packs),
        },
      ];
    }),
  );
}

/**
 * A lot as a material of a plan: its form, assay or strength, what is on hand, and its pack and price.
 *
 * @param lot - one of {@link onHand}
 * @returns a material for `planPreparation`
 * @throws {PlanError} `plan.request` for what is no lot
 * @category Stock
 * @example
 * const [lot] = onHand(receive(openStock(), { name: "soda", form: "Na2CO3", assay: "98 ± 1 %", amount: "1 kg" }));
 * String(lotAsMaterial(lot!).available) // => "1 kg"
 */
export function lotAsMaterial(lot: Lot): ShelfMaterial {
  guard.record(lot, "lot");
  guard.text(lot.name, "lot.name");
  guard.text(lot.form, "lot.form");
  const { name, form, assay, strength, received, unitCost } = lot;
  const price = unitCost?.times(received.to(received.dimension === "mass" ? "g" : "mL"));
  return frozen({
    name,
    form,
    ...(assay === undefined ? {} : { assay }),
    ...(strength === undefined ? {} : { strength }),
    available: lot.onHand,
    ...(price === undefined ? {} : { pack: { size: received, price } }),
    note: `lot ${lot.lot}${lot.from === undefined ? "" : ` from ${lot.from}`}`,
  } as ShelfMaterial);
}
