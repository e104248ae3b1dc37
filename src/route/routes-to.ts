// The routes to one compound, or to everything that a shelf gives: searched, planned, ranked; and why the others do not go.

import { Formula } from "../formula";
import { attempt } from "../foundation/error";
import { remembering } from "../foundation/memo";
import { isQuantity, type Quantity, quantity } from "../quantity";
import { expectDimension } from "../quantity/internal";
import { type Compound, formOf } from "./compound";
import { type Draft, draftOf, triedOf, type Wish } from "./draft";
import { heatOf, inventoryOf } from "./figures";
import { freedGas } from "./freed-gas";
import { insolubleBases } from "./insoluble-bases";
import { partsOf, rankOf, WEIGHTS } from "./rank";
import type { RefusedRoute } from "./reason";
import { barred, endedBy, lackingOnTheWay, nearest, noKind, noWater, refusalsOf, unread } from "./refusals";
import { type RouteRequest, USUAL } from "./request";
import { routeOf } from "./route";
import { isRefused } from "./safety";
import { type Found, type FoundStep, search } from "./search";
import { unfitFor } from "./setting";
import { type Index, MOST_STEPS } from "./shelf";
import { swapsOf } from "./swaps";
import { NO_TRIALS, type Tried } from "./tried";
import type { Rank, RankParts, Route } from "./types";

/** Kinds of route looked at beyond those asked for: the ranking may put them first. */
const SPARE = 5;
const JUDGEMENTS = 250;

const keptDrafts = /* @__PURE__ */ remembering<Draft>(200);

/** Is it text all through? Quantities are inputs of their own, and no key. */
const isText = (value: unknown): boolean =>
  typeof value === "object" && value !== null && !isQuantity(value) && !(value instanceof Formula)
    ? Object.values(value).every(isText)
    : typeof value !== "object";

/** The plans of a route, kept where the jars and what is wanted are given as text. */
function draftFor(found: Found, wish: Wish, { wanted, temperature }: RouteRequest): Draft {
  const key = [wanted, temperature, ...found.steps.map(({ candidate, materials }) => [candidate.id, materials])];
  return isText(key) && found.steps.every((step) => triedOf(step, wish) === undefined)
    ? keptDrafts(JSON.stringify([found.steps.at(-1)!.judgement.product, key]), () => draftOf(found, wish))
    : draftOf(found, wish);
}

/** Least part of the theory that a pair of salts must give. */
const LEAST_OF_A_PAIR = 0.2;

/** A pair of salts that keeps most of the product in its liquor. */
const isTooLittle = ({ step, yield: share }: Draft["planned"][number]): boolean =>
  step.candidate.family.code === "salt-pair" && share.toNumber() < LEAST_OF_A_PAIR;

/** Routes, the refusals beside them, and what is said of the reactions that trials ended. */
export interface Answer {
  readonly routes: readonly Route[];
  readonly refusals: readonly RefusedRoute[];
  readonly over: ReadonlyMap<Tried, RefusedRoute>;
}

/** A refusal of a way that was found. */
const refused = (
  code: string,
  text: string,
  { judgement }: FoundStep,
  rest: Partial<Pick<RefusedRoute, "numbers" | "source">> = {},
): RefusedRoute => ({
  code,
  text,
  numbers: [],
  source: "common practice, no source",
  equation: String(judgement.equation),
  instead: [],
  unknown: false,
  ...rest,
});

/** The step of a way that needs more heat than there is. */
function tooHot({ steps }: Found, hottest: number | undefined): RefusedRoute | undefined {
  const step = hottest === undefined ? undefined : steps.find((one) => (heatOf(one) ?? 0) > hottest);
  if (step === undefined) return undefined;
  const needed = heatOf(step)!;
  return refused("too-hot", `${step.judgement.equation.toUnicode()} needs ${needed} °C and more`, step, {
    numbers: [quantity(`${needed} °C`)],
    source: step.judgement.feasibility.reasons[0]?.source ?? "",
  });
}

/** Why a way that is planned is none; undefined where it serves. */
function unsuitable(draft: Draft, setting: RouteRequest["setting"]): RefusedRoute | undefined {
  const little = draft.planned.find(isTooLittle);
  if (little !== undefined) {
    const share = (100 * little.yield.toNumber()).toFixed(0);
    return refused(
      "too-little",
      `${share} % of the theory crystallises: the rest stays with the other salt`,
      little.step,
      { numbers: [little.yield], source: "solubilities of the tables, each with its source" },
    );
  }
  return setting === undefined ? undefined : unfitFor(draft, setting);
}

/** Routes to one compound, in their order; one that is not alone asked for gets no reasons why others do not go. */
export function routesTo(
  target: Compound,
  form: string,
  index: Index,
  request: RouteRequest,
  wish: Wish,
  first: readonly Found[] = [],
  isAlone = true,
): Answer {
  const { trials = NO_TRIALS } = wish;
  const limit = request.limit ?? USUAL.limit;
  const looked = search(target, form, index, {
    steps: request.steps ?? MOST_STEPS,
    kinds: limit + SPARE,
    judgements: JUDGEMENTS,
    trials,
  });
  const refusals = isAlone
    ? [
        ...refusalsOf(looked.refused, target, index),
        ...barred(target, form, index),
        ...insolubleBases(target, index),
        ...freedGas(target, index),
      ]
    : [];
  const hottest =
    request.heat === undefined
      ? undefined
      : expectDimension(request.heat as Quantity, "temperature", "heat").toNumber("°C");
  const ended = new Set(looked.over);
  const ranked: Ranked[] = [];
  for (const one of [...first, ...looked.found]) {
    const hot = tooHot(one, hottest);
    if (hot !== undefined) {
      refusals.push(hot);
      continue;
    }
    const planned = attempt(() => {
      const draft = draftFor(one, wish, request);
      return { draft, rank: rankOf(partsOf(draft), request.weights), kind: one.kind };
    });
    if (!planned.ok) {
      refusals.push(refused("no-plan", planned.error.problem, one.steps.at(-1)!));
      continue;
    }
    const { draft } = planned.value;
    const gone = draft.planned.flatMap(({ tried }) => (tried?.isOver ? [tried] : []));
    for (const tried of gone) ended.add(tried);
    if (gone.length > 0) continue;
    const why = unsuitable(draft, request.setting);
    if (why === undefined) ranked.push(planned.value);
    else refusals.push(why);
  }
  const routes = bestOf(ranked, limit, request.weights).map(({ draft, rank }) =>
    routeOf(draft, rank, () => swapsOf(draft.found, index, trials)),
  );
  const way = routes[0] === undefined ? undefined : String(routes[0]);
  const over = new Map([...ended].map((tried) => [tried, endedBy(tried, way)] as const));
  const isSaid = !isAlone || routes.length > 0 || refusals.some(({ code }) => code === "not-in-water");
  const known = [...(isSaid ? [] : noWater(target, form)), ...over.values(), ...refusals];
  const all =
    routes.length > 0 || !isAlone
      ? known
      : [...known, ...lackingOnTheWay(looked.refused, target, index), ...nearest(target, form, index, known, trials)];
  return {
    routes,
    refusals: [...(routes.length + all.length === 0 ? [noKind(form)] : all), ...unread(index)],
    over,
  };
}

interface Ranked {
  readonly draft: Draft;
  readonly rank: Rank;
  readonly kind: string;
}

/** The best first, without those that another one is better than in everything. */
function bestOf(ranked: readonly Ranked[], limit: number, weights: RouteRequest["weights"]): readonly Ranked[] {
  const order = [...ranked].sort((a, b) => a.rank.score - b.rank.score || (a.kind < b.kind ? -1 : 1));
  const counted = (Object.keys(WEIGHTS) as (keyof RankParts)[]).filter(
    (part) => (weights?.[part] ?? WEIGHTS[part]) > 0,
  );
  return order.filter((one, i) => !order.slice(0, i).some((better) => dominates(better, one, counted))).slice(0, limit);
}

/** A route that takes no other jars and is worse in nothing that counts folds the other away. */
function dominates(better: Ranked, one: Ranked, counted: readonly (keyof RankParts)[]): boolean {
  const jars = new Set(inventoryOf(one.draft).map(({ material }) => material));
  if (!inventoryOf(better.draft).every(({ material }) => jars.has(material))) return false;
  return counted.every((part) => better.rank.parts[part] <= one.rank.parts[part]);
}

/** Everything that the shelf gives in one step, the best way to each. */
export function everything(index: Index, request: RouteRequest, wish: Wish): Answer {
  const routes: Route[] = [];
  const over = new Map<Tried, RefusedRoute>();
  for (const compound of index.all.compounds) {
    const reach = index.reach(compound.key, request.steps ?? 1);
    if (reach === undefined || reach.steps === 0 || isRefused(compound) || compound.made.kind === "molecule") continue;
    const one = { ...request, limit: 1, steps: request.steps ?? 1 } as const;
    const answer = routesTo(compound, formOf(compound), index, one, wish, [], false);
    const [best] = answer.routes;
    if (best !== undefined) routes.push(best);
    for (const [tried, refusal] of answer.over) over.set(tried, refusal);
  }
  routes.sort((a, b) => a.rank.score - b.rank.score || (a.target < b.target ? -1 : 1));
  return {
    routes: routes.slice(0, request.limit ?? routes.length),
    refusals: [...over.values()],
    over,
  };
}
