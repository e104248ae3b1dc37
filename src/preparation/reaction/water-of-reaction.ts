// The water of a reaction: of the crystals that go in, and used up or set free by the equation.
import { molarMass } from "../../formula";
import { isWater } from "../../formula/internal";
import { type Quantity, sum } from "../../quantity";
import type { Material } from "../shelf/material";
import type { Account } from "./account";
import type { Species } from "./species";

/** Water by the equation: that of the crystals, less what the solids keep, plus what the reaction sets free. */
export function waterOfReaction(
  materials: readonly Material[],
  account: Account,
  reactants: readonly Species[],
  products: readonly Species[],
): Quantity {
  const M = molarMass("H2O");
  const crystal = materials.map(({ waters, species }, i) =>
    account.supplied[i]!.amount.times(waters.minus(species.waters)),
  );
  // Reactants written as hydrates that are left over still bring their water into the liquor.
  const unused = materials.map(({ species }, i) => account.supplied[i]!.left.times(species.waters));
  const count = (side: readonly Species[]): bigint =>
    side.filter((s) => isWater(s.formula)).reduce((n, s) => n + s.coefficient, 0n);
  const net = account.extent.times(count(products) - count(reactants));
  return sum([...crystal, ...unused, net])
    .times(M)
    .to("g")
    .named({
      symbol: "m(H2O, crystals and reaction)",
      label: "water from crystals and reaction",
      rule: "mass = amount of water × molar mass",
    });
}
