// A balanced equation put to the contents of a vessel: what it uses is taken from solution and solids, what it makes is booked
// where it goes, and crystal water with either.
import type { BalancedEquation } from "../../equation";
import type { Formula } from "../../formula";
import type { Quantity } from "../../quantity";
import type { Entry } from "./entry";
import { type Matter, matterOf } from "./matter";
import { Pot } from "./pot";

/** Where a product of an equation goes. */
type Whereto = "dissolved" | "precipitated" | "left by heat" | "gas";

/** One species of an equation: used where its count is below zero. */
export interface Term {
  readonly matter: Matter;
  /** By the extent, below zero for what is used. */
  readonly count: bigint;
  /** Of a product; of what is used only whether the air gives it. */
  readonly whereto: Whereto | "air";
}

/** A balanced equation as terms; what it makes is dissolved where nothing else is said. */
export const termsOf = (
  { reactants, products }: Pick<BalancedEquation, "reactants" | "products">,
  wheretoOf: (product: Formula) => Whereto = () => "dissolved",
): readonly Term[] => [
  ...reactants.map(
    ({ formula, coefficient }): Term => ({ matter: matterOf(formula), count: -coefficient, whereto: "dissolved" }),
  ),
  ...products.map(
    ({ formula, coefficient }): Term => ({
      matter: matterOf(formula),
      count: coefficient,
      whereto: wheretoOf(formula),
    }),
  ),
];

/** What a reaction leaves in the vessel, what left it as gas, and what the air or a gas lead brought. */
interface Reacted {
  readonly pot: Pot;
  readonly gas: readonly Entry[];
  readonly taken: readonly Entry[];
}

/** Let the terms react to an extent. */
export function react(before: Pot, terms: readonly Term[], extent: Quantity): Reacted {
  const gas: Entry[] = [];
  const taken: Entry[] = [];
  let pot = before;
  for (const { matter, count, whereto } of terms) {
    const size = count < 0n ? -count : count;
    if (size === 0n) continue;
    const amount = size === 1n ? extent : extent.times(size);
    if (count < 0n && whereto === "air") taken.push({ matter, amount });
    else if (count < 0n) pot = pot.minus(matter, amount);
    else if (whereto === "gas") {
      gas.push({ matter, amount });
      pot = pot.plusGas(matter, amount);
    } else if (matter.isWater || whereto === "dissolved") pot = pot.plusDissolved(matter, amount);
    else pot = pot.plusSolid(matter, amount, whereto === "air" ? "put in" : whereto);
  }
  return { pot, gas, taken };
}

/** An amount of a solid goes into the liquor, with its crystal water. */
export const dissolve = (pot: Pot, matter: Matter, amount: Quantity): Pot => {
  const at = pot.books.solids.findIndex((one) => one.matter.key === matter.key);
  const solid = pot.books.solids[at];
  if (solid === undefined) return pot;
  const most = solid.amount.compare(amount) < 0 ? solid.amount : amount;
  const left = solid.amount.minus(most);
  const solids = pot.books.solids.flatMap((one, i) =>
    i !== at ? [one] : left.isPositive() ? [{ ...one, amount: left }] : [],
  );
  return pot.with({ solids }).plusDissolved(matter, most);
};

/** An amount crystallises from the liquor, with its crystal water. */
export function crystallised(pot: Pot, matter: Matter, amount: Quantity): Pot {
  const without = new Pot(pot.books).minus(matter, amount);
  return without.plusSolid(matter, amount, "crystallised");
}
