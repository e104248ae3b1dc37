// The figures of a route that are read off its plans: jars, cost, heat, equipment, gas, waste, wash water.

import { type Quantity, quantity, sum } from "../quantity";
import { canonicalFormula } from "../substance";
import { type Draft, made, textOf } from "./draft";
import type { FoundStep } from "./search";
import type { Route, RouteMaterial } from "./types";

/** How many times the unit plan a step is. */
const times = ({ planned, theory }: Draft, i: number): Quantity =>
  textOf(theory[i]!.dividedBy(planned[i]!.unit.product.theoreticalYield));

const isMade = ({ found }: Draft, material: string): boolean => found.steps.some((step) => made(step) === material);

const inventories = new WeakMap<Draft, readonly RouteMaterial[]>();

/** What the plans take from jars, each jar once; put together once for its plans. */
export function inventoryOf(draft: Draft): readonly RouteMaterial[] {
  let list = inventories.get(draft);
  if (list === undefined) {
    list = Object.freeze(takenFrom(draft));
    inventories.set(draft, list);
  }
  return list;
}

function takenFrom(draft: Draft): RouteMaterial[] {
  const lines = new Map<string, { form: string; portions: Quantity[]; steps: number[] }>();
  draft.planned.forEach(({ unit }, i) => {
    for (const { material, form, exact } of unit.weighings) {
      if (isMade(draft, material)) continue;
      const line = lines.get(material) ?? { form, portions: [], steps: [] };
      lines.set(material, line);
      line.portions.push(exact.times(times(draft, i)).to(exact.unit));
      line.steps.push(i + 1);
    }
  });
  return [...lines].map(([material, { form, portions, steps }]) => ({
    material,
    form,
    key: canonicalFormula(form),
    portion: portions.length === 1 ? portions[0]! : sum(portions),
    steps,
  }));
}

export function costsOf(draft: Draft): Route["cost"] {
  const parts: Quantity[] = [];
  const missing = new Set<string>();
  draft.planned.forEach(({ unit }, i) => {
    const { cost } = unit;
    for (const line of cost.lines) if (!isMade(draft, line.material)) parts.push(line.cost.times(times(draft, i)));
    for (const text of cost.missing)
      if (!draft.found.steps.some((step) => text === `price of ${made(step)}`)) missing.add(text);
  });
  if (new Set(parts.map(({ dimension }) => dimension)).size > 1) missing.add("one currency for all prices");
  const total =
    missing.size > 0 || parts.length === 0
      ? undefined
      : sum(parts, {
          symbol: "cost",
          label: "cost of the route",
          rule: "sum of the parts of the packs used in all steps",
        });
  return {
    total,
    perGram: total
      ?.dividedBy(draft.wish.wanted)
      .named({ symbol: "cost per gram", rule: "cost of the route / mass of the target" }),
    missing: [...missing],
  };
}

/** The most that the jars give: the one that runs out first. */
export function mostOf(draft: Draft): Quantity<"mass"> | undefined {
  let least: Quantity | undefined;
  const inventory = inventoryOf(draft);
  for (const { material, portion } of inventory) {
    const jar = draft.found.steps.flatMap(({ materials }) => materials).find(({ name }) => name === material);
    if (jar?.available === undefined) return undefined;
    const available = quantity(jar.available as Quantity);
    if (available.dimension !== portion.dimension) return undefined;
    const part = available.dividedBy(portion);
    if (least === undefined || part.compare(least) < 0) least = part;
  }
  return least
    ?.times(draft.wish.wanted)
    .to("g")
    .named({ label: "most that the jars give", rule: "least of available / needed × wanted mass" }) as
    | Quantity<"mass">
    | undefined;
}

const KILN = 600;

const OVEN = 110;

/** Heat that a step needs, °C. */
export function heatOf({ candidate, judgement }: FoundStep): number | undefined {
  if (candidate.family.separate !== "fire") return undefined;
  const from = judgement.feasibility.reasons.find(({ code }) => code === "thermal")?.numbers[0];
  return from?.toNumber("°C");
}

export function equipmentOf({ found, planned }: Draft): string[] {
  const needs = new Set<string>();
  for (const step of found.steps) {
    const heat = heatOf(step);
    if (heat !== undefined)
      needs.add(heat > KILN ? "kiln" : heat > OVEN ? "furnace, or crucible over a burner" : "oven");
  }
  for (const { unit, step } of planned) {
    if (step.judgement.at !== undefined) needs.add("hot plate");
    if (unit.steps.some(({ operation }) => operation === "heat" || operation === "concentrate")) needs.add("hot plate");
    if (unit.gas.some(({ hood }) => hood)) needs.add("fume cupboard");
  }
  return [...needs];
}

export function gasOf(draft: Draft): Route["gas"] {
  return draft.planned.flatMap(({ unit }, i) =>
    unit.gas.map(({ formula, key, volume, hood }) => ({
      formula,
      key,
      volume: volume.times(times(draft, i)) as Quantity<"volume">,
      hood,
      step: i + 1,
    })),
  );
}

export function wasteOf(draft: Draft): Route["waste"] {
  let volume: Quantity | undefined;
  const metals = new Set<string>();
  draft.planned.forEach(({ unit }, i) => {
    const own = unit.waste.volume?.times(times(draft, i));
    if (own !== undefined) volume = volume === undefined ? own : volume.plus(own);
    for (const { symbol, precipitate } of unit.waste.metals) if (precipitate) metals.add(symbol);
  });
  return { volume: volume as Quantity<"volume"> | undefined, metals: [...metals] };
}

/** Wash water of all steps, mL; undefined where a wash could not be planned. */
export function washWaterOf(draft: Draft): number | undefined {
  let millilitres = 0;
  for (const [i, { unit }] of draft.planned.entries()) {
    const { washing } = unit;
    if (washing === undefined) continue;
    if (!("plan" in washing)) return undefined;
    millilitres += washing.plan.totalWater.toNumber("mL") * times(draft, i).toNumber();
  }
  return millilitres;
}

/**
 * Grams of the target that 100 g of the dearest jar give; undefined where a price is not known, or a volume has no mass.
 * The dearest is the one that costs most for a gram as it is sold.
 */
export function perHundredOfDearest(draft: Draft): number | undefined {
  const { missing } = costsOf(draft);
  if (missing.length > 0) return undefined;
  const jars = new Map<string, { money: number; grams: number }>();
  for (const [i, { unit }] of draft.planned.entries()) {
    const n = times(draft, i).toNumber();
    for (const { material, exact } of unit.weighings) {
      if (isMade(draft, material)) continue;
      const line = unit.cost.lines.find((one) => one.material === material);
      const density = unit.request.materials.find(({ name }) => name === material)?.density;
      const grams =
        exact.dimension === "mass"
          ? exact.toNumber("g")
          : density === undefined
            ? undefined
            : exact.toNumber("mL") * quantity(density as Quantity).toNumber("g/mL");
      // water from the tap has no price
      if (line === undefined) continue;
      if (grams === undefined) return undefined;
      const one = jars.get(material) ?? { money: 0, grams: 0 };
      jars.set(material, { money: one.money + line.cost.toNumber() * n, grams: one.grams + grams * n });
    }
  }
  const perGram = ({ money, grams }: { money: number; grams: number }): number => money / grams;
  const [dearest] = [...jars.values()].sort((a, b) => perGram(b) - perGram(a));
  return dearest === undefined ? undefined : (100 * draft.wish.wanted.toNumber("g")) / dearest.grams;
}
