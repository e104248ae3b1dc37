// What to wash a product with, and the drop test that tells when the salt is gone. Common practice, no source; the choice
// of liquid rests on the product's own solubility where it is known.

import type { TemperatureLike } from "../../amount";
import type { Formula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { attempt } from "../../foundation/error";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import { guard } from "../argument";
import { type Figure, figureOrProduct } from "../curves/figure";
import { soluteOf } from "../curves/solute";
import { saltIons } from "../precipitating/ions";
import type { Solubility } from "../record";
import { ruleFor } from "../rules";
import { endTestsFor } from "./end-tests";

const WASH_ADVICE = { product: true, washedOut: true, temperature: true, facts: true } as const satisfies Fields<
  Parameters<typeof washAdvice>[0]
>;

/** A way to wash, and how to know that it is done. */
export interface WashAdvice {
  /** Liquid to wash with, in words. */
  readonly liquid: string;
  /** Why this one. */
  readonly because: string;
  /** Tests on the last wash: of each salt that is washed out the ions that a drop shows. */
  readonly endTests: readonly { readonly ion: string; readonly test: string }[];
  /** Ions that no test tells, for the product gives off as much itself: the washes are counted. */
  readonly untested: readonly string[];
  /** Of the product in water; undefined where nothing is known. */
  readonly solubility: Solubility | undefined;
  /** Practice of the trade, without a table. */
  readonly source: "commonPractice";
}

/** Products with a wash of their own. */
const OWN_WASH: Readonly<Record<string, readonly [liquid: string, because: string]>> = {
  "Cu+ Cl-": [
    "dilute hydrochloric acid, then alcohol, without sucking air through",
    "copper(I) chloride turns green in water and air",
  ],
  "Pb^2+ Cl-": ["a little ice water", "hot water dissolves lead chloride"],
  // Talbot, An Introductory Course of Quantitative Chemical Analysis: dilute ammonia; its strength from memory
  "NH4+ Mg^2+ PO4^3-": [
    "2.5 % ammonia, cold: a tenth of strong ammonia in water, under a hood",
    "pure water takes ammonium and phosphate out of it",
  ],
  "Fe^2+ C2O4^2-": ["hot water", "iron(II) oxalate hardly dissolves even hot, and hot water removes the salts"],
};

/** Liquid by how much of the product water dissolves, g per 100 g. */
function liquidBy(grams: number): readonly [liquid: string, because: string] {
  if (grams < 0.1) return ["water", "the product hardly dissolves"];
  if (grams < 1) return ["a little cold water", "the product dissolves slightly"];
  if (grams < 10) return ["ice water in small portions, or its own saturated solution", "the product dissolves"];
  return ["50 % alcohol, or its own saturated solution", "the product dissolves well; plain water would carry it off"];
}

/**
 * What to wash a product with, and the end test for what is washed out.
 *
 * @param request - the product, the salts to be washed out, and the temperature of the wash (default 20 °C)
 * @returns liquid and reason, and of each salt that the wash takes away the tests that tell it; what the product gives off as well,
 *   and no other ion of its salt tells, is in `untested`: its washes are counted
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, `solubility.not-a-salt` when the
 *   product is an ion or water
 * @source common practice, no source
 * @category Washing
 * @example
 * washAdvice({ product: "CaCO3", washedOut: ["Na2SO4"] }).liquid // => "water"
 */
export function washAdvice(
  request: LookupOptions & {
    readonly product: string | Formula;
    readonly washedOut: readonly (string | Formula)[];
    readonly temperature?: TemperatureLike;
  },
): WashAdvice {
  if (bringsFacts(request)) return withItsFacts(request, guard, washAdvice);
  guard.fields(request, WASH_ADVICE, "request");
  guard.list(request.washedOut, "washedOut");
  const solute = soluteOf(request.product);
  const ions = saltIons(solute.anhydrous);
  const pair = ions?.map(({ formula }) => formula).join(" ");
  const known = attempt(() => figureOrProduct(solute.formula, request.temperature ?? "20 °C", undefined));
  const figure = known.ok ? known.value : undefined;
  const rule = ruleFor(solute)?.class;
  const [liquid, because] = (pair === undefined ? undefined : OWN_WASH[pair]) ?? choose(figure, rule);
  return readable({
    liquid,
    because,
    ...endTestsFor(solute, figure, rule, request.washedOut),
    solubility: figure?.solubility,
    source: "commonPractice",
  });
}

function choose(figure: Figure | undefined, rule: string | undefined): readonly [string, string] {
  if (figure !== undefined) return liquidBy(figure.perHundredGramsWater.toNumber("g"));
  if (rule === "insoluble") return ["water", "the rules call the product insoluble"];
  if (rule === "soluble") return ["50 % alcohol, or its own saturated solution", "the rules call the product soluble"];
  return ["a little cold water", "the solubility of the product is not known: keep the portions small"];
}
