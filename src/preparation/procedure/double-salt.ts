// A double salt of unknown solubility that warmth or water takes apart: the water in which its crystals begin below its change, where
// it is seeded and how its liquor is evaporated, and what it is rinsed with.

import type { Formula } from "../../formula";
import { parseFormula } from "../../formula";
import { constitutionOf } from "../../ion";
import { type Quantity, quantity } from "../../quantity";
import type { DoubleSaltRow } from "../../solubility/internal";
import { exact, planned } from "../planning/exact";
import type { Account } from "../reaction/account";
import { doubleSaltOf } from "../reaction/double-salt";
import { isGas } from "../reaction/fluids";
import { formulaFrom } from "../reaction/species";
import { withAlcohol } from "../reaction/with-alcohol";
import type { Setting } from "../request/setting";
import { celsius } from "./words";

type Temperature = Quantity<"temperature">;

/** Where a double salt gives way to one with less water as it gets warmer. */
export interface Turning {
  readonly at: Temperature;
  /** What comes above it, as printed. */
  readonly into: string;
  /** It is seeded a little below. */
  readonly seeded: Temperature;
}

export function turningOf(product: Formula): Turning | undefined {
  const turns = doubleSaltOf(product)?.turns;
  if (turns === undefined) return undefined;
  const at = exact(`${turns.at} °C`) as Temperature;
  return {
    at,
    into: formulaFrom(turns.into).toUnicode(),
    seeded: at.minus(planned("belowTurning")) as Temperature,
  };
}

/** The coldest that a double salt may be cooled to, where the table has one: below it its salts come apart. */
export function leastWarmthOf(product: Formula): Temperature | undefined {
  const from = doubleSaltOf(product)?.from;
  return from === undefined ? undefined : (exact(`${from} °C`).plus(planned("aboveChange")) as Temperature);
}

/** Moles of an ion that all materials bring. */
const broughtOf = (ion: string, { materials }: Setting, { supplied }: Account): number =>
  materials.reduce((all, { species }, i) => {
    const { cations, anions } = constitutionOf(species.formula);
    const count = [...cations, ...anions].find(({ formula }) => formula === ion)?.count ?? 0;
    return all + supplied[i]!.amount.toNumber("mol") * Number(count);
  }, 0);

/** Water in which the ions are as far from the double salt as in the measured liquor, by the ion product in mol per kilogram of water. */
function waterLike({ ions, turns }: DoubleSaltRow, setting: Setting, account: Account): number | undefined {
  const there = turns?.both?.molal;
  if (there === undefined) return undefined;
  let [own, measured, power] = [1, 1, 0];
  for (const [ion, count] of ions) {
    own *= broughtOf(ion, setting, account) ** count;
    measured *= there.find(([one]) => one === ion)![1] ** count;
    power += count;
  }
  return (own / measured) ** (1 / power);
}

/**
 * Water that such a liquor is to have before anything crystallises, so that this begins below the change; undefined where nothing
 * was measured, or something else forms beside the double salt.
 */
export function waterBelowTurning(setting: Setting, account: Account): Quantity | undefined {
  const { product, products } = setting;
  const row = doubleSaltOf(product.formula);
  const isAlone = products.every((one) => one === product || one.isWater || isGas(one.formula, true));
  const kilograms = row && isAlone ? waterLike(row, setting, account) : undefined;
  if (kilograms === undefined || !(kilograms > 0)) return undefined;
  return quantity({ value: (1000 * kilograms).toPrecision(6), unit: "g" });
}

/** How such a liquor is cooled at first, in words. */
export const cooledBelow = ({ at, into, seeded }: Turning, name: string): string =>
  `Let it cool, stirring, and put a crystal of ${name} in at ${celsius(seeded)}, or a drop dried on glass (if crystals come above ${celsius(at)}, they are ${into}: add a little water, warm it until it is clear, and cool it again); then`;

/** How it is evaporated, in words. */
export const evaporatedBelow = ({ at }: Turning): string => `in a wide dish below ${celsius(at)}`;

/** How crystals that water takes apart are freed of their liquor, and what water would leave of them, as printed. */
export function apartInWater(
  product: Formula,
): { readonly how: "alcohol" | "none"; readonly leaves: string } | undefined {
  const leaves = doubleSaltOf(product)?.leaves;
  if (leaves === undefined) return undefined;
  return {
    how: withAlcohol(product) === "brings it out" ? "alcohol" : "none",
    leaves: parseFormula(leaves.solid).toUnicode(),
  };
}
