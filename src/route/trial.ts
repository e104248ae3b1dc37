// Two grams first: what should be seen and weighed, and which outcome ends the route before anything is spent on it.

import type { Plan } from "../preparation";
import { type Hand, handOf } from "../preparation/internal";
import { type Quantity, quantity } from "../quantity";
import { trySubstance } from "../substance";
import { formulaFrom } from "./compound";
import { type Draft, productOf } from "./draft";
import type { FoundStep } from "./search";
import type { Trial } from "./types";

const TWO_GRAMS = "2 g";
/** Part of the expected mass below which a trial has failed. */
const HALF = 0.5;

const shown = (q: Quantity, decimals = 1): string => q.format({ decimals, uncertainty: "none" });

/** What balance and cylinder show, where the request does not say. */
const USUAL = { mass: "0.1 g", volume: "1 mL" } as const;

/** Masses as the balance of the plan shows them. */
function gramsOn({ request: { readability = {} } }: Plan): Hand["grams"] {
  const { mass = USUAL.mass, volume = USUAL.volume } = readability;
  return handOf({ mass: quantity(mass as Quantity), volume: quantity(volume as Quantity) }).grams;
}

function expectations(plan: Plan, product: string, share: Quantity): string[] {
  const known = trySubstance(product);
  const seen: string[] = [];
  if (plan.keptLiquor === undefined && known.ok && known.value.appearance !== undefined)
    seen.push(`${plan.product.name}: ${known.value.appearance}`);
  const { keptLiquor } = plan;
  seen.push(
    keptLiquor === undefined
      ? `about ${gramsOn(plan)(plan.product.theoreticalYield.times(share))} of it, dry`
      : `about ${gramsOn(plan)(keptLiquor.mass)} of clear liquor, ${keptLiquor.strength.format({ unit: "%", significant: 2, uncertainty: "none" })} of it`,
  );
  for (const { formula, volume } of plan.gas) seen.push(`about ${shown(volume.to("mL"), 0)} of ${formula}`);
  const pH = plan.filtrate?.pH;
  if (pH !== undefined) seen.push(`filtrate at pH ${shown(pH)}`);
  return seen;
}

function ends(plan: Plan, share: Quantity, step: FoundStep): string[] {
  const least = plan.product.theoreticalYield.times(share).times(String(HALF));
  const found =
    plan.keptLiquor === undefined
      ? [`less than ${gramsOn(plan)(least)} of dry product`]
      : ["the filtered liquor turns cloudy", "a drop of it dried on glass leaves hardly anything"];
  if (step.candidate.family.separate === "filter") found.push("the liquor stays clear");
  if (plan.keptLiquor === undefined && step.candidate.family.separate === "crystallise")
    found.push("an oil, or another crop than the one described");
  if (plan.gas.length > 0) found.push("no gas");
  if (step.candidate.family.separate === "fire") found.push("the mass does not become constant");
  return found;
}

/** The trial of a route, its plans made for two grams of each product. */
export function trialOf({ planned }: Draft, planFor: (step: FoundStep, product: Quantity<"mass">) => Plan): Trial {
  const product = quantity(TWO_GRAMS) as Quantity<"mass">;
  return {
    product,
    steps: planned.map(({ step, yield: share }) => {
      const plan = planFor(step, product);
      return {
        plan,
        expect: expectations(plan, formulaFrom(productOf(step)).toString(), share),
        ends: ends(plan, share, step),
      };
    }),
  };
}
