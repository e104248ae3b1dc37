// Two grams first: what should be seen and weighed, and which outcome ends the route before anything is spent on it.

import type { Plan } from "../preparation";
import { type Quantity, quantity } from "../quantity";
import { trySubstance } from "../substance";
import { gramsOn } from "./balance";
import { formulaFrom } from "./compound";
import { type Draft, productOf } from "./draft";
import { ENDINGS, HALF, type TrialEndCode } from "./endings";
import type { FoundStep } from "./search";
import type { Trial } from "./types";

const TWO_GRAMS = "2 g";

const shown = (q: Quantity, decimals = 1): string => q.format({ decimals, uncertainty: "none" });

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

function endsOf(plan: Plan, { candidate: { family } }: FoundStep): TrialEndCode[] {
  const isLiquor = plan.keptLiquor !== undefined;
  const found: TrialEndCode[] = isLiquor ? ["liquor-turns-cloudy", "liquor-leaves-nothing"] : ["too-little"];
  if (family.separate === "filter") found.push("stays-clear");
  if (!isLiquor && family.separate === "crystallise") found.push("oil-or-other-crop");
  if (plan.gas.length > 0) found.push("no-gas");
  if (family.separate === "fire") found.push("not-constant");
  return found;
}

/** An outcome that ends the route, in words; how little is too little is given as a mass. */
function words(code: TrialEndCode, plan: Plan, share: Quantity): string {
  if (code !== "too-little") return ENDINGS[code];
  const least = plan.product.theoreticalYield.times(share).times(String(HALF));
  return `less than ${gramsOn(plan)(least)} of dry product`;
}

/** The trial of a route, its plans made for two grams of each product. */
export function trialOf({ planned }: Draft, planFor: (step: FoundStep, product: Quantity<"mass">) => Plan): Trial {
  const product = quantity(TWO_GRAMS) as Quantity<"mass">;
  return {
    product,
    steps: planned.map(({ step, yield: share, tried }) => {
      const plan = planFor(step, product);
      const endCodes = endsOf(plan, step);
      return {
        plan,
        expect: expectations(plan, formulaFrom(productOf(step)).toString(), share),
        ends: endCodes.map((code) => words(code, plan, share)),
        endCodes,
        tried: (tried?.reads ?? []).map(({ text, next }) => (next === "" ? text : `${text}; next: ${next}`)),
      };
    }),
  };
}
