// What a precipitant makes of the first of a metal, as one figure: how far its [CO3]/[OH]² lies above the ratio at which the
// carbonate and the basic solid are in balance.

import type { AqueousRequest } from "../../aqueous";
import { compositionBy } from "../../aqueous/internal";
import { applyFunction, type Quantity, quantity } from "../../quantity";
import { ofCarbonicAcid } from "./by-hand";
import type { CarbonatePrecipitant } from "./carbonate-liquor";
import { sameIon } from "./given-ions";
import type { SolubilityProduct } from "./product";
import { freeIn } from "./way";

/** [CO3] / [OH]² of a precipitant solution of concentration c: carbonic acid and water alone, ideal. */
export function carbonateRatio(precipitant: CarbonatePrecipitant, concentration: Quantity): Quantity {
  const liquor = compositionBy(
    {
      water: "1 L",
      dissolved: [
        {
          formula: precipitant === "soda" ? "Na2CO3" : "NaHCO3",
          amount: concentration.times(quantity("1 L")).to("mol"),
        },
      ] as unknown as AqueousRequest["dissolved"],
      activity: "ideal",
      solids: { only: [] },
    },
    ofCarbonicAcid(),
  );
  const [carbonate, hydroxide] = ["CO3^2-", "OH-"].map((ion) => freeIn(liquor, ion, `${ion} in the precipitant`));
  return carbonate!
    .dividedBy(hydroxide!.times(hydroxide!))
    .dividedBy(quantity("1 L/mol"))
    .named({
      symbol: "[CO3]/[OH]²",
      label: `carbonate over hydroxide squared in ${concentration.format()} ${precipitant} (L/mol)`,
      rule: "carbonic acid and water at equilibrium",
    });
}

/**
 * Exponents of the two products in the balance x carbonate + 2 OH⁻ ⇌ basic solid + CO3²⁻, brought to one [CO3]/[OH]²; a
 * carbonate of two metal ions counts by halves.
 */
function balanceOf(
  carbonate: SolubilityProduct,
  basic: SolubilityProduct,
  metal: string,
): { metals: number; pairs: number } {
  const count = ({ ions }: SolubilityProduct, ion: string): number =>
    ions.find(({ formula }) => sameIon(formula, ion))!.count;
  return { metals: count(basic, metal) / count(carbonate, metal), pairs: count(basic, "OH-") / 2 };
}

/** [CO3]/[OH]² over its value where carbonate and basic solid are in balance. */
export function carbonateIndex(
  ratio: Quantity,
  carbonate: SolubilityProduct,
  basic: SolubilityProduct,
  metal: string,
): Quantity {
  const { metals, pairs } = balanceOf(carbonate, basic, metal);
  const at = (v: readonly { toNumber(): number }[]): number => {
    // x MCO3 + 2p OH- = basic solid + p CO3 : log K = pK(basic) - x pK(carbonate), per pair of OH-
    const logBalance = (v[2]!.toNumber() - metals * v[1]!.toNumber()) / pairs;
    return v[0]!.toNumber() / 10 ** logBalance;
  };
  return applyFunction(
    [ratio, carbonate.pKsp, basic.pKsp],
    {
      name: "index",
      unit: "",
      value: (v) => at(v).toPrecision(6),
      partials: (v) =>
        [1 / v[0]!.toNumber(), (Math.LN10 * metals) / pairs, -Math.LN10 / pairs].map((p) => (p * at(v)).toPrecision(6)),
    },
    {
      symbol: "B",
      label: "carbonate index",
      rule: `B = ([CO3]/[OH]²) / 10^((pKsp(${basic.solid}) − ${metals === 1 ? "" : `${metals} `}pKsp(${carbonate.solid})) / ${pairs})`,
    },
  );
}
