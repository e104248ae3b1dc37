// Figures of single substances that bar a reaction or not: what dissolves, how strong an acid is.

import { remembering } from "../foundation/memo";
import { ACID_STEPS } from "../ion/internal";
import { type Quantity, quantity } from "../quantity";
import { trySolubilityOf } from "../solubility";
import { type Compound, formOf } from "./compound";

/** What a bar rests on whose figures are constants. */
export const TABLES = "constants of the tables, each with its source";

/** A figure as it stands in a sentence, and as a quantity. */
export const figure = (value: number, unit: string, label: string): Quantity =>
  quantity({ value: String(Number(value.toPrecision(4))), unit }, { label, source: TABLES });

const solubilities = /* @__PURE__ */ remembering<number | undefined>(2000);

/** Grams in 100 g of water, where a curve tells. */
export const gramsAt = (formula: string, temperature: "20 °C" | "80 °C"): number | undefined =>
  solubilities(`${formula} ${temperature}`, () => {
    const known = trySolubilityOf(formula, temperature);
    return known.ok ? known.value.perHundredGramsWater.toNumber() : undefined;
  });

/** The pKa of an acid, or of the acid of a base. */
export const pKaOf = (which: "acid" | "base", ion: string): number | undefined => {
  const row = ACID_STEPS().find((one) => one[which] === ion);
  return row === undefined ? undefined : Number(row.pKa);
};

/** Less than this of a precipitant in 100 g of water, and its own solid stays in the cake. */
const HARDLY = 2;

/** A precipitant that is hardly in solution itself. */
export const hardlyDissolves = (one: Compound): boolean => (gramsAt(formOf(one), "20 °C") ?? HARDLY) < HARDLY;
