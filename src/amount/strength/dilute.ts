// Diluting with water: of the strength and quantity of the stock and of the diluted solution, three give the fourth.

import { molarMass } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import type { Quantity, StrengthDimension } from "../../quantity";
import { type DensityLike, grouped, guard } from "../argument";
import { AmountError } from "../error";
import { bothWays, contentOf, type PortionLike, portionOf, sameCount, soluteOf } from "../jar/portion";
import { DETAILS, type StrengthLike, type StrengthOptions } from "./strength-kind";

const DILUTION = {
  from: true,
  take: true,
  to: true,
  makeUpTo: true,
  fromDensity: true,
  toDensity: true,
  of: true,
  ...DETAILS,
  facts: true,
} as const satisfies Fields<Dilution>;

/** Three of `take`, `to`, `makeUpTo` and `from`; the fourth is the answer. */
export interface Dilution extends Omit<StrengthOptions, "density">, LookupOptions {
  /** Strength of the stock. */
  readonly from?: StrengthLike | undefined;
  /** How much stock, as volume or mass. */
  readonly take?: PortionLike | undefined;
  /** Strength wanted. */
  readonly to?: StrengthLike | undefined;
  /** How much in all, as volume or mass. */
  readonly makeUpTo?: PortionLike | undefined;
  /** Density of the stock; looked up for `of` where it is not given. */
  readonly fromDensity?: DensityLike | undefined;
  /** Density of the diluted solution; looked up for `of` where it is not given. */
  readonly toDensity?: DensityLike | undefined;
}

/** A dilution worked out. */
export interface DilutionPlan {
  /** The one of the four that was asked for. */
  readonly answer: Quantity<StrengthDimension | "mass" | "volume">;
  /** Which of the four was left out of the request. */
  readonly asked: "from" | "take" | "to" | "makeUpTo";
  /** Strength of the stock. */
  readonly from: Quantity<StrengthDimension>;
  /** Volume or mass of stock to take. */
  readonly take: Quantity<"mass"> | Quantity<"volume">;
  /** Strength of the diluted solution. */
  readonly to: Quantity<StrengthDimension>;
  /** Volume or mass of the diluted solution in all. */
  readonly makeUpTo: Quantity<"mass"> | Quantity<"volume">;
  /** Mass of water to add, where both masses can be known; volumes are not subtracted. */
  readonly water: Quantity<"mass"> | undefined;
}

const kindOf = (portion: Quantity): "mass" | "volume" => (portion.dimension === "mass" ? "mass" : "volume");

/**
 * Work out a dilution: of the strength and quantity of the stock and of the diluted solution, give three.
 *
 * Quantities may be volumes or masses. A strength per mass over a volume (or the reverse) needs the density, which is
 * looked up for `of` or given. "Make up to" means to that volume in all, not that volume of water.
 *
 * @param dilution - three of `from`, `take`, `to`, `makeUpTo`; `of` and densities where they are needed. Normality to
 *   normality needs no `equivalents`: they cancel
 * @returns all four, which one was asked for, and the mass of water to add where the densities are known
 * @throws {AmountError} `amount.missing-input`, `amount.too-many-inputs`, `amount.not-possible` (stronger than the stock),
 *   `amount.missing-formula`, `amount.missing-density`, and those of {@link convertStrength}
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @source conservation of solute: c1 V1 = c2 V2, w1 m1 = w2 m2
 * @category Solutions
 * @example
 * dilute({ from: "5.00 mol/L", take: "0.850 L", makeUpTo: "1.80 L" }).answer.format({ decimals: 2 }) // => "2.36 mol/L"
 * dilute({ of: "HCl", from: "37 % w/w", to: "1 mol/L", makeUpTo: "500 mL" }).answer.format({ decimals: 1, uncertainty: "none" }) // => "41.6 mL"
 */
export function dilute(dilution: Dilution): DilutionPlan {
  if (bringsFacts(dilution)) return withItsFacts(dilution, guard, dilute);
  const { from, take, to, makeUpTo, fromDensity, toDensity, ...options } = grouped(dilution, DILUTION, "request");
  const missing = (["from", "take", "to", "makeUpTo"] as const).filter((key) => dilution[key] === undefined);
  const asked = missing[0];
  if (asked === undefined) {
    throw new AmountError("amount.too-many-inputs", "all four of a dilution are given: there is nothing left to ask", {
      hint: "leave out the one you want to know",
    });
  }
  if (missing.length > 1) {
    throw new AmountError("amount.missing-input", `a dilution needs three of four; missing: ${missing.join(", ")}`, {
      hint: "give three of from, take, to and makeUpTo",
      details: { missing },
    });
  }
  const stock = { ...options, density: fromDensity };
  const thin = { ...options, density: toDensity };
  const solve = (): Omit<DilutionPlan, "water" | "answer" | "asked"> => {
    const V1 = take === undefined ? undefined : portionOf(take, "stock taken", "stock");
    const V2 = makeUpTo === undefined ? undefined : portionOf(makeUpTo, "diluted solution", "diluted");
    if (V1 !== undefined && V2 !== undefined) {
      if (V1.dimension === V2.dimension && V2.compare(V1) < 0) {
        throw new AmountError("amount.not-possible", `${V1} of stock cannot be made up to ${V2}`);
      }
      const known = (from ?? to)!;
      const forward = from !== undefined;
      const [own, other] = forward ? [V1, V2] : [V2, V1];
      const { content, counts } = contentOf(known, kindOf(own), forward ? stock : thin, true);
      const raw = content.times(own).dividedBy(other);
      const found = strengthFrom(raw, content, forward, options, counts === "equivalents" ? "N" : "c");
      return forward
        ? { from: content, take: V1, to: found, makeUpTo: V2 }
        : { from: found, take: V1, to: content, makeUpTo: V2 };
    }
    const side = kindOf((V1 ?? V2)!);
    const c = sameCount(contentOf(from!, side, stock, true), contentOf(to!, side, thin, true), options);
    weakerThan(c.b, c.a);
    if (V1 !== undefined) {
      const whole = V1.times(c.a).dividedBy(c.b).to(V1.unit);
      return { from: c.a, take: V1, to: c.b, makeUpTo: named(whole, "diluted", "from × take / to") };
    }
    const portion = V2!.times(c.b).dividedBy(c.a).to(V2!.unit);
    return { from: c.a, take: named(portion, "stock", "to × make up to / from"), to: c.b, makeUpTo: V2! };
  };
  const plan = solve();
  return readable({
    ...plan,
    asked,
    answer: plan[asked],
    water: waterToAdd(plan, from ?? plan.from, to ?? plan.to, stock, thin),
  });
}

const named = (portion: Quantity, symbol: string, words: string): Quantity =>
  portion.named({
    symbol: `${kindOf(portion) === "mass" ? "m" : "V"}(${symbol})`,
    rule: `solute is conserved: ${words}`,
  });

/** Solute over portion, in the unit its parts suggest. */
function strengthFrom(
  raw: Quantity,
  like: Quantity,
  forward: boolean,
  options: StrengthOptions,
  perVolume: "c" | "N",
): Quantity {
  const rule = `solute is conserved: ${forward ? "from × take / make up to" : "to × make up to / take"}`;
  const name = options.of === undefined ? "" : `(${soluteOf(options.of)})`;
  const as = (q: Quantity, symbol: string, unit: string): Quantity =>
    q.to(unit).named({ symbol: `${symbol}${forward ? 2 : 1}${name}`, rule });
  switch (raw.dimension) {
    case "concentration":
      return as(raw, perVolume, like.dimension === "concentration" ? like.unit : "mol/L");
    case "density":
      return as(raw, "γ", like.dimension === "density" ? like.unit : "g/L");
    case "molality": // moles in a mass of solution are no molality: turn them into a mass fraction
      return possible(as(raw.times(molarMass(options.of ?? missingSolute())), "w", "% w/w"));
    default:
      return possible(as(raw, "w", "% w/w"));
  }
}

function possible(w: Quantity): Quantity {
  if (w.compare("1") <= 0) return w;
  throw new AmountError("amount.not-possible", `a mass fraction of ${w} is more than the whole`);
}

function missingSolute(): never {
  throw new AmountError("amount.missing-formula", "moles in a mass of solution need the solute", {
    hint: 'give of: "HCl"',
  });
}

function weakerThan(to: Quantity, from: Quantity): void {
  if (!from.isPositive() || !to.isPositive()) {
    throw new AmountError("amount.not-positive", "a dilution needs strengths above zero");
  }
  if (to.compare(from) <= 0) return;
  throw new AmountError(
    "amount.not-possible",
    `water cannot make ${from} into ${to}: the wanted strength is the higher one`,
    {
      hint: "if from and to are the wrong way round, swap them",
      details: { from: String(from), to: String(to) },
    },
  );
}

/** Mass of water between the two portions, undefined where a density is not known. */
function waterToAdd(
  plan: Omit<DilutionPlan, "water" | "answer" | "asked">,
  from: StrengthLike,
  to: StrengthLike,
  stock: StrengthOptions,
  thin: StrengthOptions,
): Quantity | undefined {
  if (stock.of === undefined && (stock.density === undefined || thin.density === undefined)) {
    if (kindOf(plan.take) !== "mass" || kindOf(plan.makeUpTo) !== "mass") return undefined;
  }
  const before = bothWays(plan.take, from, stock, "stock").mass;
  const after = bothWays(plan.makeUpTo, to, thin, "diluted").mass;
  if (before === undefined || after === undefined) return undefined;
  return after.minus(before).to("g").named({
    symbol: "m(water to add)",
    rule: "water to add = mass of the diluted solution - mass of the stock",
  });
}
