// What crystals are watched for: from how much water they come, how many, and what may crystallise beside them.

import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { POT, type Work } from "../procedure/bench";
import { type Check, check, shown, type Watched } from "./check";
import { feedingsOf, isOver, leftOf } from "./left-over";

/** Crystals as the steps have them: from how much water, and how many. */
interface Grown {
  readonly water: Quantity;
  readonly formula: string;
  readonly mass: Quantity;
}

/** Crystals of the step in which the pot cools; undefined where nothing is cooled. */
function grownIn({ drafts }: Work): Grown | undefined {
  const cooled = drafts.find(({ operation, vessel }) => operation === "cool" && vessel === POT);
  const own = cooled?.after.books.solids.find(({ origin }) => origin === "crystallised");
  return cooled === undefined || own === undefined
    ? undefined
    : { water: cooled.before.books.water, formula: own.matter.name, mass: massOf(own) };
}

/** What crystals from a hot liquor are watched for. */
export function crystallisation({ batch, setting, work }: Watched): Check[] {
  const grown = grownIn(work);
  const { crystallising } = batch;
  if (crystallising === undefined) return [];
  const { cooling, saltPair, hot, cold } = crystallising;
  const at = (q: Quantity): string => q.format({ decimals: 0, uncertainty: "none" });
  if (crystallising.asItForms && "missing" in cooling) return [check(cooling.missing)];
  if ("missing" in cooling) return [check(`no crop by cooling can be calculated: ${cooling.missing}`)];
  if (saltPair !== undefined)
    return [
      check(
        `in ${shown(cooling.totalWater)} of water ${saltPair.filteredHot.isPositive() ? `${shown(saltPair.filteredHot)} of the other salt stays on the filter at ${at(hot)}, and` : `the other salt stays dissolved, and`} ${shown(saltPair.crop)} of ${setting.product.name} crystallises at ${at(cold)}, ${shown(saltPair.purity)} pure`,
        saltPair.crop,
      ),
    ];
  if (grown === undefined)
    return [
      check(
        `cooling brings only ${shown(cooling.crop.share)} of it: the liquor is evaporated and gives all ${shown(batch.product.theoreticalYield)}`,
        batch.product.theoreticalYield,
      ),
    ];
  // Less than the theory is there where a solid stayed, more comes where the liquor is boiled down further.
  const isAsked = grown.formula === setting.product.name;
  const share = isAsked ? grown.mass.dividedBy(batch.product.theoreticalYield).to("%") : cooling.crop.share;
  return [
    check(
      `from ${shown(grown.water)} of water at ${at(hot)}, cooled to ${at(cold)}, ${shown(grown.mass)} of ${grown.formula} crystallises, ${shown(share)} of it`,
      grown.mass,
    ),
  ];
}

/** What a double salt is watched for. */
export function doubleSalt(watched: Watched): Check[] {
  const over = feedingsOf(watched).filter(isOver);
  const checks = over.map((f) =>
    check(
      `${shown(leftOf(f))} of ${f.material.shelf.name} is in excess of the ratio of the double salt: it may crystallise beside it`,
      leftOf(f),
    ),
  );
  if (checks.length === 0)
    checks.push(check("the salts are in the ratio of the double salt: nothing else should crystallise"));
  return [...checks, ...crystallisation(watched)];
}
