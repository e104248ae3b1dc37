// Bringing a product out of its liquor by cooling: how far to boil down and what crop to expect; where a salt pair swaps
// its ions, which salt leaves hot and which cold.

import { type Formula, parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import type { Quantity } from "../../quantity";
import {
  type Crystallisation,
  crystallise,
  type FractionalCrystallization,
  fractionalCrystallization,
} from "../../solubility";
import { exact, planned } from "../planning/exact";
import { type Account, massFor } from "../reaction/account";
import { fateOf } from "../reaction/fate";
import { isGas } from "../reaction/fluids";
import type { Setting } from "../request/setting";
import type { Isolation } from "./isolation";
import { notWarmOf } from "./kind";

/** How a product is crystallised. */
export interface Crystallising {
  /** Temperature of the hot solution. */
  readonly hot: Quantity<"temperature">;
  /** Temperature to which it is cooled. */
  readonly cold: Quantity<"temperature">;
  /** The product by itself: `totalWater` is what to boil the liquor down to; or why there is no such figure. */
  readonly cooling: Crystallisation | { readonly missing: string };
  /** Another solid comes out of these ions in its place. */
  readonly otherComes: boolean;
  /** It is not warmed in its liquor, and comes out as it forms, in the cold. */
  readonly asItForms: boolean;
  /** Where the liquor holds one other salt made of the same ions; undefined where it does not. */
  readonly saltPair: FractionalCrystallization | undefined;
}

/** Where a solubility ends below 80 °C, the hot solution is made at one of these. */
const LOWER = ["60 °C", "50 °C", "40 °C"];

/** Least share of the liquor's water that is left for a second crop. */
const HALF = "0.5";

/** Times the least hot water: a hydrate that would bind all of it is left a liquor by a little more. */
const THINNER = ["1.25", "1.5", "2"] as const;

const firstLine = (error: { readonly message: string }): string => error.message.split("\n")[0]!;

/** The table ends below the hot solution. */
const isBeyondTable = (missing: string): boolean => /is known from|too far/.test(missing);

/** Share of the water of the cold liquor in which the salt is as strong as it was hot: boiled down further it crystallises hot. */
function asHotAsFirst({ path: [hot, , liquor] }: Crystallisation): number {
  const share = liquor!.grams / hot!.grams;
  return Math.min(0.999, Math.ceil(share * 1000) / 1000);
}

/** The crop of so much of a product by cooling; or why there is no figure for it. */
export function coolingOf(
  formula: Formula,
  mass: Quantity<"mass">,
  hot: Quantity<"temperature">,
  cold: Quantity<"temperature">,
): Crystallising["cooling"] {
  const request = { formula, mass, hot, cold } as const;
  const grown = (more: { readonly waterFactor?: (typeof THINNER)[number] } = {}) =>
    attempt((): Crystallisation => {
      const byHalf = crystallise({ ...request, ...more, evaporateTo: HALF });
      const saturated = asHotAsFirst(byHalf);
      return saturated <= Number(HALF) ? byHalf : crystallise({ ...request, ...more, evaporateTo: saturated });
    });
  const setsAsWhole = (found: ReturnType<typeof grown>): boolean =>
    found.ok ? found.value.crop.share.compare(exact("100 %")) > 0 : found.error.code === "solubility.no-liquor";
  const first = grown();
  if (first.ok && !setsAsWhole(first)) return first.value;
  const missing = first.ok
    ? `${first.value.crop.formula} binds all the water: the solution sets as a whole`
    : firstLine(first.error);
  if (!setsAsWhole(first)) return { missing };
  for (const waterFactor of THINNER) {
    const thinner = grown({ waterFactor });
    if (setsAsWhole(thinner)) continue;
    // of another hydrate the thinner liquor gives that one, and not what was asked for
    const isAsked = thinner.ok && parseFormula(thinner.value.crop.formula).hasSameComposition(formula);
    return isAsked ? thinner.value : { missing };
  }
  return { missing };
}

export function crystallisingOf(
  setting: Setting,
  account: Account,
  isolation: Isolation,
  theory: Quantity<"mass">,
): Crystallising | undefined {
  if (isolation.how !== "crystallise") return undefined;
  const { product, products, materials, temperature: cold } = setting;
  const bound = notWarmOf(product.formula);
  const limit = bound?.upTo === undefined ? undefined : (exact(bound.upTo) as Quantity<"temperature">);
  if (limit !== undefined && limit.compare(cold) <= 0) {
    const missing = `${product.name} is not warmed in its liquor: ${bound!.why}`;
    return { hot: cold, cold, cooling: { missing }, otherComes: false, asItForms: true, saltPair: undefined };
  }
  // As hot as the table goes, where it ends below the usual.
  const usual = limit ?? (planned("hot") as Quantity<"temperature">);
  let hot = usual;
  let cooling = coolingOf(product.formula, theory, hot, cold);
  for (const text of LOWER) {
    if (!("missing" in cooling) || !isBeyondTable(cooling.missing)) break;
    const lower = exact(text) as Quantity<"temperature">;
    const again = coolingOf(product.formula, theory, lower, cold);
    if ("missing" in again) continue;
    hot = lower;
    cooling = again;
  }
  const beside = products.filter(
    (s) =>
      s !== product &&
      !s.isWater &&
      !isGas(s.formula, true) &&
      fateOf(s.formula, setting.temperature).precipitated !== true,
  );
  const other = beside[0];
  const base = { hot, cold, cooling, otherComes: false, asItForms: false };
  if (other === undefined || beside.length > 1 || "missing" in cooling) return { ...base, saltPair: undefined };
  const from = materials.map(({ species }, i) => {
    const { amount } = account.supplied[i]!;
    return { formula: species.formula, mass: massFor(amount, species.formula) };
  });
  const pair = attempt(() =>
    fractionalCrystallization({
      wanted: product.formula,
      other: other.formula,
      from,
      water: cooling.totalWater,
      hot,
      cold,
    }),
  );
  if (!pair.ok && pair.error.code === "solubility.other-solid")
    return { ...base, cooling: { missing: firstLine(pair.error) }, otherComes: true, saltPair: undefined };
  return { ...base, saltPair: pair.ok ? pair.value : undefined };
}
