// What all steps of a chain need together: one shopping list, one cost.

import { type Quantity, sum } from "../../quantity";
import type { Plan } from "../plan";
import { lacksPrice, ONE_CURRENCY } from "../shelf/cost";
import type { Chain, ChainMaterial } from "./types";

/** What must be on the shelf; `made` are the names of what one step makes for the next. */
export function inventoryOf(plans: readonly Plan[], made: ReadonlySet<string>): ChainMaterial[] {
  const lines = new Map<string, { form: string; portions: Quantity[]; steps: number[] }>();
  plans.forEach((plan, i) => {
    for (const { material, form, portion } of plan.weighings) {
      if (made.has(material)) continue;
      const key = `${material}|${form}|${portion.dimension}`;
      const line = lines.get(key) ?? { form, portions: [], steps: [] };
      lines.set(key, line);
      line.portions.push(portion);
      line.steps.push(i + 1);
    }
  });
  return [...lines].map(([key, { form, portions, steps }]) => ({
    material: key.split("|")[0]!,
    form,
    portion: portions.length === 1 ? portions[0]! : sum(portions),
    steps,
  }));
}

/** What the packs of all steps cost, and a gram of the last product, of which there is `mass`. */
export function costOfChain(plans: readonly Plan[], made: ReadonlySet<string>, mass: Quantity): Chain["cost"] {
  const lines = plans.flatMap((plan) => plan.cost.lines.filter((line) => !made.has(line.material)));
  const isMade = (text: string): boolean => [...made].some((name) => text === lacksPrice(name));
  const found = new Set(plans.flatMap((plan) => plan.cost.missing.filter((text) => !isMade(text))));
  if (new Set(lines.map((l) => l.cost.dimension)).size > 1) found.add(ONE_CURRENCY);
  const missing = [...found];
  const total =
    missing.length > 0 || lines.length === 0
      ? undefined
      : sum(
          lines.map((l) => l.cost),
          { symbol: "cost", label: "cost of the chain", rule: "sum of the parts of the packs used in all steps" },
        );
  return {
    lines,
    total,
    perGram: total
      ?.dividedBy(mass)
      .named({ symbol: "cost per gram", rule: "cost of the chain / mass of the last product" }),
    missing,
  };
}
