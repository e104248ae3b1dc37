// What dissolves of a solid when everything is counted: protons, hydroxide, complexes, ion pairs and activities.

import { type AqueousComposition, AqueousError, aqueousComposition } from "../../aqueous";
import { keyOf, originOf } from "../../aqueous/internal";
import { type Quantity, quantity } from "../../quantity";
import { balancing, type MixedIon } from "./in-mixture";
import type { SolubilityProduct } from "./product";

/** The saturated solution at equilibrium. */
export interface SaturatedAtEquilibrium {
  /** Formula units of the solid per litre. */
  readonly concentration: Quantity<"concentration">;
  readonly pH: Quantity;
  readonly ionicStrength: Quantity;
  readonly warnings: readonly string[];
}

/** Nothing sparingly soluble dissolves to more, mol/L. */
const MOST = 3;

/** What dissolves beside `present`, or undefined where that is beyond the model or the tables. */
export function dissolvedAtEquilibrium(
  product: SolubilityProduct,
  present: readonly MixedIon[],
  about: number,
): SaturatedAtEquilibrium | undefined {
  const metal = product.ions.find(({ charge }) => charge > 0);
  if (metal === undefined) return undefined;
  const name = product.form === undefined ? product.solid : `${product.solid} (${product.form})`;
  const bystanders = balancing(present);
  const ask = (solid: number): AqueousComposition =>
    aqueousComposition({
      water: "1 L",
      dissolved: [
        ...present,
        ...bystanders,
        { formula: product.solid, amount: quantity({ value: solid.toPrecision(6), unit: "mol" }) },
      ] as unknown as Parameters<typeof aqueousComposition>[0]["dissolved"],
      solids: { only: [name] },
    });
  try {
    // enough that some is left, and not so much more that nothing but the solid counts
    for (let solid = Math.max(1e-9, 3 * about); solid <= MOST; solid *= 10) {
      const composition = ask(solid);
      if (composition.solids.length === 0) continue;
      const { network } = originOf(composition).read;
      const key = [...network.express(metal.formula).of.keys()].find((one) => one !== "H+");
      const ion = composition.filtrate.find(({ formula }) => keyOf(formula) === key);
      if (ion === undefined) return undefined;
      const before = present.find(({ formula }) => keyOf(formula) === keyOf(metal.formula));
      const molar = quantity("1 kg/L");
      const all = ion.concentration.dimension === "concentration" ? ion.concentration : ion.concentration.times(molar);
      const setFree = before === undefined ? all : all.minus(before.amount.dividedBy(quantity("1 L")));
      if (!setFree.isPositive()) return undefined;
      return {
        concentration: setFree
          .dividedBy(String(metal.count))
          .to("mol/L")
          .named({
            symbol: "s",
            label: `${product.solid} that dissolves, everything counted`,
            rule: "metal in solution in all its forms / count",
          }) as Quantity<"concentration">,
        pH: composition.pH,
        ionicStrength: composition.ionicStrength,
        warnings: composition.warnings,
      };
    }
    return undefined;
  } catch (error) {
    if (error instanceof AqueousError) return undefined;
    throw error;
  }
}
