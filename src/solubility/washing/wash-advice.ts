// What to wash a product with, and the drop test that tells when the salt is gone. Common practice, no source; the choice
// of liquid rests on the product's own solubility where it is known.

import type { TemperatureLike } from "../../amount";
import { type Formula, parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { attempt } from "../../foundation/error";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import { constitutionOf } from "../../ion";
import { guard } from "../argument";
import { type Figure, figureOrProduct } from "../curves/figure";
import { soluteOf } from "../curves/solute";
import { OWN_WASH } from "../data/own-wash";
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
  /** The acid in the water of each wash, without which the product turns: its strength, and the one it is sold in, by mass; undefined for none. */
  readonly acid:
    | { readonly formula: string; readonly name: string; readonly strength: string; readonly sold: string }
    | undefined;
  /** What the liquid is made from beside water and that acid; undefined where nothing is. */
  readonly needs: "strong ammonia" | undefined;
  /** The same by its formula and strength, by mass, for whoever has it in another; undefined where nothing is. */
  readonly dilute: { readonly formula: string; readonly called: string; readonly strength: string } | undefined;
  /**
   * Tests on the last wash: of each salt that is washed out the ions that a drop shows. `boxes` are what the end and what is before it
   * look like, `showsFrom` the strength of the ion from which on it shows (from memory); both undefined where no drop test tells.
   * `takes` is what it is done with, `harm` what of that does harm (from memory of its classification).
   */
  readonly endTests: readonly {
    readonly ion: string;
    readonly test: string;
    readonly takes: readonly string[];
    readonly harm: string | undefined;
    readonly boxes: readonly [done: string, shows: string] | undefined;
    readonly showsFrom: string | undefined;
  }[];
  /** Ions that no test tells, for the product gives off as much itself: the washes are counted. */
  readonly untested: readonly string[];
  /** Of the product in water; undefined where nothing is known. */
  readonly solubility: Solubility | undefined;
  /** Practice of the trade, without a table. */
  readonly source: "commonPractice";
}

/** Liquid by how much of the product water dissolves, g per 100 g. */
function liquidBy(grams: number): readonly [liquid: string, because: string] {
  if (grams < 0.1) return ["water", "the product hardly dissolves"];
  if (grams < 1) return [COLD_WATER, "the product dissolves slightly"];
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
  const row = OWN_WASH.find((one) => one.ions === pair);
  const [liquid, because] =
    row !== undefined
      ? [row.liquid, row.because]
      : figure !== undefined && dissolvesLessHot(solute.formula, figure)
        ? [HOT_WATER, "the product dissolves less hot than cold"]
        : choose(figure, rule);
  const tests = endTestsFor(solute, figure, rule, request.washedOut);
  return readable({
    liquid,
    because,
    acid: row?.acid,
    needs: row?.needs,
    dilute: row?.dilute,
    ...(row?.acid === undefined ? tests : besideAcid(tests, row.acid.formula)),
    solubility: figure?.solubility,
    source: "commonPractice",
  });
}

/** The tests without those that the acid of the wash itself answers. */
function besideAcid(
  { endTests, untested }: ReturnType<typeof endTestsFor>,
  acid: string,
): ReturnType<typeof endTestsFor> {
  const made = constitutionOf(parseFormula(acid)).acid?.anion;
  const isIts = (ion: string): boolean => ion === "H+" || ion === made;
  return {
    endTests: endTests.filter(({ ion }) => !isIts(ion)),
    untested: [...untested, ...endTests.filter(({ ion }) => ion !== "H+" && isIts(ion)).map(({ ion }) => ion)],
  };
}

/** What is washed with where cold water dissolves more. */
export const HOT_WATER = "hot water";
/** @internal Liquid of a wash of which some of the product goes along. */
export const COLD_WATER = "a little cold water";

/** Hot enough to wash with, and how much less of the product that has to dissolve than the wash in the room does. */
export const HOT_WASH = { at: "80 °C", share: 0.8 } as const;

/** Does hot water dissolve clearly less of a product that cold water would take a part of? */
function dissolvesLessHot(formula: Formula, { perHundredGramsWater }: Figure): boolean {
  const cold = perHundredGramsWater.toNumber("g");
  if (cold < 0.1 || cold >= 10) return false;
  const hot = attempt(() => figureOrProduct(formula, HOT_WASH.at, undefined));
  return hot.ok && hot.value.perHundredGramsWater.toNumber("g") < HOT_WASH.share * cold;
}

function choose(figure: Figure | undefined, rule: string | undefined): readonly [string, string] {
  if (figure !== undefined) return liquidBy(figure.perHundredGramsWater.toNumber("g"));
  if (rule === "insoluble") return ["water", "the rules call the product insoluble"];
  if (rule === "soluble") return ["50 % alcohol, or its own saturated solution", "the rules call the product soluble"];
  return [COLD_WATER, "the solubility of the product is not known: keep the portions small"];
}
