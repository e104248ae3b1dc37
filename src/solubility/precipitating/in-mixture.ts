// A mixture of ions at equilibrium, with one solid that may stand: protons, hydroxide, ligands and activities are counted.

import { type AqueousComposition, AqueousError, aqueousComposition } from "../../aqueous";
import { chargeOf, keyOf, originOf } from "../../aqueous/internal";
import { type NumberLike, type Quantity, quantity } from "../../quantity";
import type { SolubilityProduct } from "./product";

/** An ion with its amount in the mixture. */
export interface MixedIon {
  readonly formula: string;
  readonly amount: Quantity;
}

/** The solid in the mixture. */
export interface InMixture {
  /** Ion activity product over the solubility product, before anything precipitates. */
  readonly saturation: Quantity;
  /** Amount of the solid that stands at equilibrium. */
  readonly stands: Quantity | undefined;
  /** What stays dissolved of an ion, whatever it is bound to; undefined for hydroxide. */
  left(ion: string): Quantity | undefined;
  readonly warnings: readonly string[];
}

/** Ions that only balance charges. */
const BYSTANDERS = { positive: "C4H12N+", negative: "ClO4-" } as const;

/** What a list of ions lacks in charge, as an ion that does nothing else. */
export function balancing(ions: readonly MixedIon[]): MixedIon[] {
  let charge = 0;
  for (const { formula, amount } of ions) charge += chargeOf(formula) * amount.in("mol").toNumber();
  if (charge === 0) return [];
  const formula = charge > 0 ? BYSTANDERS.negative : BYSTANDERS.positive;
  return [{ formula, amount: quantity({ value: Math.abs(charge).toPrecision(12), unit: "mol" }) }];
}

/** log10 of the ion activity product of a solid, as the ions of its row. */
function productIn(composition: AqueousComposition, product: SolubilityProduct): Quantity | undefined {
  const { solved, maker } = originOf(composition);
  const { model, solution } = solved;
  const weights: (readonly [number, number])[] = [];
  let ln = 0;
  for (const { formula, count } of product.ions) {
    const i = model.species.findIndex((one) => keyOf(one.formula) === keyOf(formula));
    if (i < 0) return undefined;
    weights.push([i, count]);
    ln += count * solution.lnActivity[i]!;
  }
  const value = Math.exp(ln);
  if (!(value > 0 && Number.isFinite(value))) return undefined;
  return maker.make(value, "", { lnActivity: weights }, value, {
    symbol: "Q",
    label: "ion activity product",
    rule: "product of activities^count, protons, complexes and ionic strength counted",
  });
}

/** log10(Q/K) of a solid in a clear solution held at a pH; undefined where it is too strong or not all of it known. */
export function saturationIndexAt(
  product: SolubilityProduct,
  ions: readonly MixedIon[],
  volume: Quantity,
  pH: number,
): number | undefined {
  try {
    const clear = aqueousComposition({
      water: volume as Quantity<"volume">,
      dissolved: [...ions, ...balancing(ions)] as unknown as Parameters<typeof aqueousComposition>[0]["dissolved"],
      solids: { only: [] },
      pH,
    });
    const q = productIn(clear, product);
    return q === undefined ? undefined : Math.log10(q.value.toNumber()) + product.pKsp.value.toNumber();
  } catch (error) {
    if (error instanceof AqueousError) return undefined;
    throw error;
  }
}

/** The mixture at equilibrium; undefined where it is too strong or holds what the tables do not know. */
export function inMixture(
  product: SolubilityProduct,
  ions: readonly MixedIon[],
  volume: Quantity,
  pH: NumberLike | undefined,
): InMixture | undefined {
  const dissolved = [
    ...ions.map(({ formula, amount }) => ({ formula, amount })),
    ...balancing(ions),
  ] as unknown as Parameters<typeof aqueousComposition>[0]["dissolved"];
  const ask = (only: readonly string[]): AqueousComposition =>
    aqueousComposition({
      water: volume as Quantity<"volume">,
      dissolved,
      solids: { only },
      ...(pH === undefined ? {} : { pH }),
    });
  try {
    const clear = ask([]);
    const q = productIn(clear, product);
    if (q === undefined) return undefined;
    const saturation = q.dividedBy(product.value).named({
      symbol: "Q/Ksp",
      label: "ion activity product over solubility product",
      rule: "product of activities^count / Ksp",
    });
    const name = product.form === undefined ? product.solid : `${product.solid} (${product.form})`;
    const settled = saturation.compare("1") > 0 ? ask([name]) : clear;
    const solid = settled.solids[0];
    return {
      saturation,
      stands: solid?.amount,
      left: (ion) => {
        const key = [...originOf(settled).read.network.express(ion).of.keys()].find((one) => one !== "H+");
        if (key === undefined) return undefined;
        return settled.filtrate.find(({ formula }) => keyOf(formula) === key)?.concentration;
      },
      warnings: settled.warnings.filter((text) => text.startsWith("rough") || text.includes("oxidises")),
    };
  } catch (error) {
    if (error instanceof AqueousError) return undefined;
    throw error;
  }
}
