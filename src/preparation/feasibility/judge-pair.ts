// Several salts in one liquor: which of all their pairings, double salts among them, crystallises first, cold and hot?
import { parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import { doubtfulPairings, type PooledIon, pairingsOf } from "../../solubility/internal";
import { planned } from "../planning/exact";
import { sameCore } from "../reaction/species";
import type { Case } from "./case";
import { cropOf } from "./crop";
import type { Reason, Ruling } from "./feasibility";
import { ionsOf, ranked, type Temperature, waterOf } from "./liquor";
import { brief } from "./pot";

/** Salts shift each other's saturation by some 30 %: nearer than this, which comes first is open. */
const NEAR = 1.3;
/** A crop of more than this part of the product is that product with something beside it; of more than the other, clean. */
const MOSTLY = 0.5;
const PURE = 0.9;

const grams = (kg: number): string => `${brief(1000 * kg)} g`;
const celsius = (q: Temperature): string => q.to("°C").format({ uncertainty: "none" });

/** Double salts of the ions that the table names without a figure, where a half of them is near falling. */
function namedOnly(ions: readonly PooledIon[], kg: number, at: Temperature, c: Case): string[] {
  return doubtfulPairings(ions, kg, at, [c.product.species.formula.toString()])
    .filter((one) => one.ions.length > 2 && one.saturation === undefined)
    .filter((one) => !sameCore(parseFormula(one.formula), c.product.species.formula))
    .map((one) => one.formula);
}

/** Which salt crystallises; undefined where the product is alone in its liquor or has no figures. */
export function judgePair(c: Case): Ruling | undefined {
  const ions = ionsOf(c);
  const molecule = c.product.made.kind !== "salt";
  const own = new Set(c.product.made.inWater.map(({ formula }) => formula));
  if (!molecule && ions.every(({ formula }) => own.has(formula))) return undefined;
  const cold = c.setting.temperature as Temperature;
  const hot = planned("hot") as Temperature;
  const at = cold.toNumber("°C");
  const pairings = pairingsOf(ions, at);
  if (pairings.length === 0) return undefined;
  const atCold = ranked(c, pairings, cold);
  const wanted = atCold.find((one) => one.wanted);
  if (atCold.length === 0) return undefined;
  if (wanted === undefined)
    return {
      verdict: "unknown",
      solids: [],
      reasons: [
        {
          code: "missing",
          text: `missing: the solubility of ${c.product.species.name}, to tell whether it or ${list(
            atCold.map((one) => one.formula).slice(0, 3),
            "or",
          )} crystallises first`,
          source: "commonPractice",
        },
      ],
    };
  const first = atCold[0]!;
  const { name } = c.product.species;
  const figures = atCold.slice(0, 4).map((one) => ({
    value: one.water * 1000,
    unit: "g",
    label: `water below which ${one.formula} precipitates at ${celsius(cold)}, for one mole of ${name}`,
  }));
  const stated = atCold
    .slice(0, 4)
    .map((one) => `${one.formula} below ${grams(one.water)}`)
    .join(", ");
  const order: Reason = {
    code: "salt-pair",
    text: `at ${celsius(cold)} the salts of this liquor begin to precipitate at so much water for one mole of ${name}: ${stated}`,
    figures,
    source: "constants",
  };
  const unfigured = pairings.some((one) => one.doubleSalt !== undefined && waterOf(one, cold) === undefined);
  const double = !unfigured ? [] : namedOnly(ions, wanted.water, cold, c);
  if (double.length > 0 && (first.wanted || first.water < NEAR * wanted.water))
    return {
      verdict: "unknown",
      solids: [],
      reasons: [
        {
          code: "double-salt",
          text: `the double salt ${list(double, "or")} precipitates from strong liquors of these ions; missing: its solubility`,
          source: "commonPractice",
        },
        order,
      ],
    };
  if (first.wanted) return { verdict: "goes", solids: [], reasons: [order] };
  const atHot = ranked(c, pairingsOf(ions, hot.toNumber("°C")), hot);
  const hotFirst = atHot[0];
  if (hotFirst?.wanted === true)
    return {
      verdict: "goes",
      solids: [],
      reasons: [
        {
          ...order,
          code: "salt-pair",
          text: `boiled down, ${name} is the first to precipitate at ${celsius(hot)}: filter it off hot; ${order.text}`,
        },
      ],
    };
  if (first.water < NEAR * wanted.water)
    return {
      verdict: "goes in part",
      solids: [],
      reasons: [{ ...order, text: `${name} and ${first.formula} precipitate together; ${order.text}` }],
    };
  const crop = cropOf(c, ions, { hot: atHot.find((one) => one.wanted), cold: wanted }, hot, cold);
  const main = crop[0];
  if (main === undefined) return undefined;
  const product = crop.find((one) => one.wanted);
  const all = crop.reduce((sum, one) => sum + one.grams, 0);
  const yields = crop.map((one) => `${brief(one.grams)} g of ${one.formula}`).join(" beside ");
  const cropped: Reason = {
    code: "salt-pair",
    isCrop: true,
    text: `boiled down until ${name} is about to precipitate, filtered hot and cooled to ${celsius(cold)}, one mole of it gives ${yields}`,
    figures: crop.map((one) => ({
      value: one.grams,
      unit: "g",
      label: `${one.formula} in the crop, without crystal water`,
    })),
    source: "constants",
  };
  if (product !== undefined && product.grams > MOSTLY * all)
    return { verdict: product.grams > PURE * all ? "goes" : "goes in part", solids: [], reasons: [cropped, order] };
  return {
    verdict: "another solid forms",
    share: 0,
    solids: [{ formula: parseFormula(main.solid).toUnicode(), moles: main.moles, share: main.share }],
    reasons: [{ ...cropped, text: `the crop is ${main.formula}, not ${name}: ${cropped.text}` }, order],
  };
}
