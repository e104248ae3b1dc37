// The place of a route among others: a vector of penalties, each from 0 (best) to 1, and their sum with the caller's weights.
// The vector is shown; the sum only orders.

import { molarMass } from "../formula";
import { kindOfCake } from "../preparation/internal";
import { formulaFrom } from "./compound";
import { type Draft, dryOf, foreignIn, productOf } from "./draft";
import { gradeOf } from "./evidence";
import { costsOf, gasOf, heatOf, inventoryOf, perHundredOfDearest, washWaterOf } from "./figures";
import { marginsOf } from "./margin";
import type { Rank, RankParts, Route } from "./types";

/** Weights where the caller gives none. */
export const WEIGHTS: RankParts = {
  evidence: 2,
  margin: 1,
  steps: 4,
  yield: 1.5,
  cost: 1,
  excess: 1,
  purity: 1.5,
  gas: 1,
  waste: 1,
  equipment: 1,
  time: 0.5,
  washing: 0.2,
  gel: 0.2,
  // none unless asked for: another jar may become the dearest, and a rise of a price would move a route up
  dearest: 0,
};

/** Wash water for a gram of the target that counts half, mL. */
const HALF_WASH = 50;
/** Litres of a gas for a gram of the target that count half. */
const HALF_GAS = 0.1;
/** Grams of the target from 100 g of the dearest jar that count half. */
const HALF_DEAREST = 100;
/** What a cake keeps of its liquor and of the alkali in it. */
const GEL: Partial<Record<ReturnType<typeof kindOfCake>, number>> = { "hydroxide gel": 1, "basic carbonate": 0.5 };

/** What a gas asks for: a fume cupboard, no flame near it, an open vessel. */
const classOf = ({ hood, formula }: Route["gas"][number]): number => (hood ? 1 : formula === "H₂" ? 0.4 : 0.1);

const clamp = (x: number): number => Math.max(0, Math.min(1, x));

const kept = new WeakMap<Draft, RankParts>();

/** The vector of a route, worked out once for its plans. */
export function partsOf(draft: Draft): RankParts {
  let parts = kept.get(draft);
  if (parts === undefined) {
    parts = Object.freeze(weighed(draft));
    kept.set(draft, parts);
  }
  return parts;
}

function weighed(draft: Draft): RankParts {
  const { found, planned } = draft;
  const steps = found.steps;
  const perGram = costsOf(draft).perGram?.toNumber();
  const gases = gasOf(draft);
  const hottest = Math.max(0, ...steps.map((step) => heatOf(step) ?? 0));
  const whole = planned.reduce((n, one) => n * one.yield.toNumber(), 1);
  const doubt = steps.reduce((n, { candidate }) => n + candidate.family.doubt, 0);
  const stays = steps.filter(
    ({ candidate }) => candidate.family.excess !== undefined && candidate.family.leaves === "stays",
  ).length;
  const beside = Math.max(...steps.map(({ judgement }) => judgement.beside));
  // what is filtered off and taken on brings what else stands in it
  const brought = planned.slice(0, -1).reduce((n, { step, unit, tried }) => n + foreignIn(dryOf(step, unit, tried)), 0);
  const cocrystals = steps.some(
    ({ candidate }) =>
      candidate.family.code === "salt-pair" ||
      candidate.family.code === "keep-filtrate" ||
      candidate.family.code === "displace",
  );
  const metals = new Set(
    planned.flatMap(({ unit }) =>
      unit.waste.metals.flatMap(({ symbol, precipitate }) => (precipitate ? [symbol] : [])),
    ),
  );
  const crystals = steps.filter(
    ({ candidate, inLiquor }) => !inLiquor && candidate.family.separate === "crystallise",
  ).length;
  const grams = molarMass(formulaFrom(steps.at(-1)!.judgement.product))
    .in("g/mol")
    .toNumber();
  const used = inventoryOf(draft).length;
  const wash = washWaterOf(draft);
  const target = draft.wish.wanted.toNumber("g");
  const gels = planned.map(({ step, unit }) =>
    unit.isolation.how === "precipitate" ? (GEL[kindOfCake(formulaFrom(productOf(step)))] ?? 0) : 0,
  );
  const dearest = perHundredOfDearest(draft);
  // from 0 towards 1, half where there is as much for a gram of the target
  const saturating = (amount: number, half: number): number => amount / (amount + half * target);
  return {
    // what was tried here and what is published serve alike
    evidence: Math.max(0, ...planned.map(({ evidence }) => gradeOf(evidence) - 1)) / 2,
    margin: 1 - Math.min(...planned.map(({ step, unit }) => marginsOf(step, unit)[0]!.room)),
    steps: clamp((steps.length - 1) / 2 + doubt / 4 + (grams > 0 ? Math.max(0, used - 2) * 0.02 : 0)),
    yield: clamp(1 - whole),
    cost: perGram === undefined ? 0.5 : perGram / (perGram + 1),
    excess: clamp(stays / steps.length),
    purity: clamp(2 * (beside + brought) + (cocrystals ? 0.4 : 0)),
    // half of it by what the gas asks for, half by how much there is
    gas: Math.max(0, ...gases.map((gas) => (classOf(gas) * (1 + saturating(gas.volume.toNumber("L"), HALF_GAS))) / 2)),
    waste: clamp(metals.size / 2),
    equipment: hottest > 600 ? 1 : hottest > 110 ? 0.5 : hottest > 0 ? 0.2 : 0,
    time: clamp((crystals + steps.length) / 6),
    washing: wash === undefined ? 0.5 : saturating(wash, HALF_WASH),
    gel: Math.max(0, ...gels),
    dearest: dearest === undefined ? 0.5 : HALF_DEAREST / (HALF_DEAREST + dearest),
  };
}

/** The place of a vector under some weights. */
export function rankOf(parts: RankParts, weights: Partial<RankParts> = {}): Rank {
  const names = Object.keys(WEIGHTS) as (keyof RankParts)[];
  const score = names.reduce((n, name) => n + parts[name] * (weights[name] ?? WEIGHTS[name]), 0);
  return { score: Number(score.toFixed(6)), parts };
}
