// From the shelf to the target: which ways there are, each with its figures, and why the others do not go.

import type { MassLike, TemperatureLike } from "../amount";
import { Formula } from "../formula";
import type { Fields } from "../foundation/argument";
import { attempt, type Result } from "../foundation/error";
import { type Facts, lookingIn } from "../foundation/facts";
import { remembering } from "../foundation/memo";
import { readable } from "../foundation/readable";
import type { Run, RunRecord, ShelfMaterial } from "../preparation";
import { SHELF_MATERIAL } from "../preparation/internal";
import { isQuantity, type Quantity, quantity } from "../quantity";
import { expectDimension } from "../quantity/internal";
import { tryFormulaOf } from "../substance";
import { guard } from "./argument";
import { changeOfWater } from "./candidates";
import { type Compound, formOf, formulaFrom, keyOf, madeOf } from "./compound";
import { SETTINGS } from "./data/settings";
import { type Draft, draftOf, productOf, triedOf, type Wish } from "./draft";
import { RouteError, type RouteRefusal } from "./error";
import { heatOf, inventoryOf } from "./figures";
import { freedGas } from "./freed-gas";
import { insolubleBases } from "./insoluble-bases";
import { judge } from "./judge";
import { partsOf, rankOf, WEIGHTS } from "./rank";
import type { RefusedRoute } from "./reason";
import { barred, endedBy, lackingOnTheWay, nearest, noKind, noWater, onShelf, refusalsOf, unread } from "./refusals";
import { plannedOf, routeOf } from "./route";
import { isRefused, refuseClass, refuseTarget } from "./safety";
import { type Found, search } from "./search";
import { unfitFor } from "./setting";
import { type Index, indexOf, MOST_STEPS } from "./shelf";
import { swapsOf } from "./swaps";
import { reactionOfCandidate } from "./trial-reaction";
import { type TrialReport, yieldOf } from "./trial-read";
import { NO_TRIALS, readTrials, type TrialReading, type Trials, type Tried } from "./tried";
import type { Rank, RankParts, Route } from "./types";
import { classOfLetters, classOfText } from "./words";

/** What is asked of a shelf. */
export interface RouteRequest {
  /** Formula or name of what is wanted, in the form that is wanted; left out, everything that can be made in one step is looked for. */
  readonly target?: string | Formula | undefined;
  /** The jars at hand, each with its form. */
  readonly shelf: readonly ShelfMaterial[];
  /** Mass of the target that the plans are for; 10 g unless given. */
  readonly wanted?: MassLike | undefined;
  /** Steps at most: 1, 2 or 3 (unless given). */
  readonly steps?: 1 | 2 | 3 | undefined;
  /** Routes at most; 5 unless given. */
  readonly limit?: number | undefined;
  /** How much each part of the rank counts; those left out as in `routeWeights`. */
  readonly weights?: Partial<RankParts> | undefined;
  /** The hottest that can be had for a solid; no bound unless given. */
  readonly heat?: TemperatureLike | undefined;
  /** Where the work is done: leaves out what is too toxic, too corrosive or too hot for it. Nothing is left out unless given. */
  readonly setting?: "home" | "school" | "studio" | undefined;
  /** Of room and solutions; as in a plan unless given. */
  readonly temperature?: TemperatureLike | undefined;
  /** What was run already: trials and whole batches, as runs or their records, or with the outcome that ended them. Their order does not matter. */
  readonly trials?: readonly (Run | RunRecord | TrialReport)[] | undefined;
  /** Facts of the caller's own, which the plans of the routes are made with as well. */
  readonly facts?: Facts | undefined;
}

/** What a shelf gives. */
export interface Routes {
  /** The best first. */
  readonly routes: readonly Route[];
  /** Reactions that were looked at and do not go, and what is missing. */
  readonly refusals: readonly RefusedRoute[];
  /** What each of the trials says, in the order they were given. */
  readonly trials: readonly TrialReading[];
}

/** Routes with the reactions that trials ended. */
interface Answer extends Omit<Routes, "trials"> {
  readonly over: readonly Tried[];
}

const FIELDS = {
  target: true,
  shelf: [SHELF_MATERIAL],
  wanted: true,
  steps: true,
  limit: true,
  weights: {
    evidence: true,
    margin: true,
    steps: true,
    yield: true,
    cost: true,
    excess: true,
    purity: true,
    gas: true,
    waste: true,
    equipment: true,
    time: true,
    washing: true,
    gel: true,
    dearest: true,
  },
  trials: true,
  facts: true,
  heat: true,
  setting: true,
  temperature: true,
} as const satisfies Fields<RouteRequest>;

const USUAL = { wanted: "10 g", limit: 5 } as const;
/** Kinds of route looked at beyond those asked for: the ranking may put them first. */
const SPARE = 5;
const JUDGEMENTS = 250;
const MOST_ROUTES = 50;
const MOST_JARS = 1000;

/** Weights of the ranking where the caller gives none. */
export const routeWeights: RankParts = /* @__PURE__ */ (() => Object.freeze({ ...WEIGHTS }))();

/** The target as a formula; a name is looked up. */
function targetOf(target: string | Formula): string {
  if (!(target instanceof Formula)) guard.text(target, "target");
  const text = String(target).trim();
  const read = attempt(() => formulaFrom(text).toString());
  const formula = read.ok ? read : tryFormulaOf(text);
  refuseClass(formula.ok ? classOfLetters(text) : classOfText(text));
  if (!formula.ok)
    throw new RouteError("route.unknown-target", `no formula or name is known for the target`, {
      input: text.slice(0, 100),
      position: 0,
      hint: "give the formula, such as ZnSO4·7H2O",
    });
  const found = String(formula.value);
  refuseTarget(found);
  if (keyOf(found) === undefined)
    throw new RouteError("route.unknown-target", `what ${found} is made of is not known: nothing is invented`, {
      hint: "write it so that its ions show",
    });
  return found;
}

function checked(request: RouteRequest): void {
  guard.fields(request, FIELDS, "request");
  guard.list(request.shelf, "shelf");
  if (request.setting !== undefined)
    guard.choice(
      request.setting,
      "setting",
      SETTINGS.map(({ setting }) => setting),
    );
  if (request.shelf.length > MOST_JARS)
    throw new RouteError("route.request", `a shelf of ${request.shelf.length} jars; the most is ${MOST_JARS}`);
  for (const [i, jar] of request.shelf.entries()) {
    guard.text(jar.name, `shelf[${i}].name`);
  }
  const names = request.shelf.map(({ name }) => name);
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined)
    throw new RouteError("route.request", `two jars are called '${twice.slice(0, 80)}'`, {
      hint: "give each its own name",
    });
  const { steps = MOST_STEPS, limit = USUAL.limit } = request;
  if (![1, 2, 3].includes(steps))
    throw new RouteError("route.request", `steps must be 1, 2 or 3, not ${String(steps)}`);
  if (!Number.isInteger(limit) || limit < 1 || limit > MOST_ROUTES)
    throw new RouteError(
      "route.request",
      `limit must be a whole number from 1 to ${MOST_ROUTES}, not ${String(limit)}`,
    );
  for (const [name, weight] of Object.entries(request.weights ?? {}))
    if (weight !== undefined && !(Number.isFinite(weight) && weight >= 0))
      throw new RouteError("route.request", `weights.${name} must be 0 or more, not ${String(weight)}`);
}

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

/** Routes to one compound, in their order; one that is not alone asked for gets no reasons why others do not go. */
function routesTo(
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
  const { found, refused, over } = search(target, form, index, {
    steps: request.steps ?? MOST_STEPS,
    kinds: limit + SPARE,
    judgements: JUDGEMENTS,
    trials,
  });
  const refusals = isAlone
    ? [
        ...refusalsOf(refused, target, index),
        ...barred(target, form, index),
        ...insolubleBases(target, index),
        ...freedGas(target, index),
      ]
    : [];
  const hottest =
    request.heat === undefined
      ? undefined
      : expectDimension(request.heat as Quantity, "temperature", "heat")
          .in("°C")
          .toNumber();
  const ended = new Set(over);
  const drafts: { readonly draft: Draft; readonly rank: Rank; readonly kind: string }[] = [];
  for (const one of [...first, ...found]) {
    const tooHot = hottest === undefined ? undefined : one.steps.find((step) => (heatOf(step) ?? 0) > hottest);
    if (tooHot !== undefined) {
      const needed = heatOf(tooHot)!;
      refusals.push({
        code: "too-hot",
        text: `${tooHot.judgement.equation.toUnicode()} needs ${needed} °C and more`,
        numbers: [quantity(`${needed} °C`)],
        source: tooHot.judgement.feasibility.reasons[0]?.source ?? "",
        equation: String(tooHot.judgement.equation),
        instead: [],
        unknown: false,
      });
      continue;
    }
    const drafted = attempt(() => {
      const draft = draftFor(one, wish, request);
      return { draft, rank: rankOf(partsOf(draft), request.weights), kind: one.kind };
    });
    const gone = drafted.ok ? drafted.value.draft.planned.flatMap(({ tried }) => (tried?.isOver ? [tried] : [])) : [];
    if (gone.length > 0) {
      for (const tried of gone) ended.add(tried);
      continue;
    }
    const little = drafted.ok ? drafted.value.draft.planned.find(isTooLittle) : undefined;
    if (little !== undefined) {
      refusals.push({
        code: "too-little",
        text: `${(100 * little.yield.toNumber()).toFixed(0)} % of the theory crystallises: the rest stays with the other salt`,
        numbers: [little.yield],
        source: "solubilities of the tables, each with its source",
        equation: String(little.step.judgement.equation),
        instead: [],
        unknown: false,
      });
      continue;
    }
    const unfit =
      drafted.ok && request.setting !== undefined ? unfitFor(drafted.value.draft, request.setting) : undefined;
    if (unfit !== undefined) refusals.push(unfit);
    else if (drafted.ok) drafts.push(drafted.value);
    else
      refusals.push({
        code: "no-plan",
        text: drafted.error.problem,
        numbers: [],
        source: "common practice, no source",
        equation: String(one.steps.at(-1)!.judgement.equation),
        instead: [],
        unknown: false,
      });
  }
  drafts.sort((a, b) => a.rank.score - b.rank.score || (a.kind < b.kind ? -1 : 1));
  const counted = (Object.keys(WEIGHTS) as (keyof RankParts)[]).filter(
    (part) => (request.weights?.[part] ?? WEIGHTS[part]) > 0,
  );
  const kept = drafts
    .filter((one, i) => !drafts.slice(0, i).some((better) => dominates(better, one, counted)))
    .slice(0, limit);
  const routes = kept.map(({ draft, rank }) => routeOf(draft, rank, () => swapsOf(draft.found, index, trials)));
  const way = routes[0] === undefined ? undefined : String(routes[0]);
  const isSaid = !isAlone || routes.length > 0 || refusals.some(({ code }) => code === "not-in-water");
  const known = [
    ...(isSaid ? [] : noWater(target, form)),
    ...[...ended].map((tried) => endedBy(tried, way)),
    ...refusals,
  ];
  const all =
    routes.length > 0 || !isAlone
      ? known
      : [...known, ...lackingOnTheWay(refused, target, index), ...nearest(target, form, index, known, trials)];
  return {
    routes,
    refusals: [...(routes.length + all.length === 0 ? [noKind(form)] : all), ...unread(index)],
    over: [...ended],
  };
}

interface Ranked {
  readonly draft: Draft;
  readonly rank: Rank;
}

/** A route that takes no other jars and is worse in nothing that counts folds the other away. */
function dominates(better: Ranked, one: Ranked, counted: readonly (keyof RankParts)[]): boolean {
  const jars = new Set(inventoryOf(one.draft).map(({ material }) => material));
  if (!inventoryOf(better.draft).every(({ material }) => jars.has(material))) return false;
  return counted.every((part) => better.rank.parts[part] <= one.rank.parts[part]);
}

/** Everything that the shelf gives in one step, the best way to each. */
function everything(index: Index, request: RouteRequest, wish: Wish): Answer {
  const routes: Route[] = [];
  const over = new Map<Tried, RefusedRoute>();
  for (const compound of index.all.compounds) {
    const reach = index.reach(compound.key, request.steps ?? 1);
    if (reach === undefined || reach.steps === 0 || isRefused(compound) || compound.made.kind === "molecule") continue;
    const one = { ...request, limit: 1, steps: request.steps ?? 1 } as const;
    const answer = routesTo(compound, formOf(compound), index, one, wish, [], false);
    const [best] = answer.routes;
    if (best !== undefined) routes.push(best);
    for (const [i, tried] of answer.over.entries()) over.set(tried, answer.refusals[i]!);
  }
  routes.sort((a, b) => a.rank.score - b.rank.score || (a.target < b.target ? -1 : 1));
  return {
    routes: routes.slice(0, request.limit ?? routes.length),
    refusals: [...over.values()],
    over: [...over.keys()],
  };
}

/**
 * What can be made from this shelf, and how: routes of up to three steps back from the target, each reaction judged by the
 * equilibrium, the potentials and the tables, each step a plan that can be run, the best first; and why the others do not go.
 *
 * Routes that differ only in ions that are washed out are one, with the other jars under `swaps`. A route is ranked by its
 * weakest point in each respect; `rank.parts` shows them all. Nothing is invented: what no table knows is no step.
 *
 * @param request - `shelf` as for a plan (names, forms, strengths, packs); `target` in the form that is wanted, left out for
 *   the best way to everything that one step gives; `wanted` mass (10 g), `steps` (3), at most `limit` routes (5), `weights`, the
 *   hottest `heat`, the `setting`; `trials` that were run, of which those that went bring their yield, and those that ended end the route
 * @returns `routes`, the best first; `refusals` with figures and sources, and where nothing goes what one more jar would open;
 *   `trials`: what each trial says, and of which step
 * @throws {RouteError} `route.refused-target` for classes that are never made, `route.unknown-target`, `route.request`,
 *   `route.trial`, `route.unknown-option`
 * @source kinds of reaction: common practice; equilibrium and potentials as in `doesItGo`; what trials teach as in `learnFromRuns`
 * @category Planning
 * @example
 * const shelf = [
 *   { name: "moss killer", form: "ZnSO4·7H2O" },
 *   { name: "washing soda", form: "Na2CO3·10H2O" },
 *   { name: "vinegar", form: "CH3COOH", strength: "5 %" },
 * ] as const;
 * const { routes } = findRoutes({ target: "Zn(CH3COO)2·2H2O", shelf });
 * routes[0]!.steps.map((step) => step.product) // => ["Zn₅(OH)₆(CO₃)₂", "Zn(CH₃COO)₂·2H₂O"]
 * const trials = [evaluateRun(routes[0]!.trial.steps[0]!.plan, { dried: "1.83 g" })];
 * findRoutes({ target: "Zn(CH3COO)2·2H2O", shelf, trials }).routes[0]!.steps[0]!.evidence.grade // => "tried here"
 */
export function findRoutes(request: RouteRequest): Routes {
  checked(request);
  return lookingIn(request.facts, guard, () => searched(request));
}

function searched(request: RouteRequest): Routes {
  const trials = readTrials(request.trials);
  const { routes, refusals, over } = answerTo(request, trials);
  return readable({ routes, refusals, trials: readingsOf(trials, routes, over) });
}

/** Where each trial belongs, and what it changes. */
function readingsOf({ reads }: Trials, routes: readonly Route[], over: readonly Tried[]): TrialReading[] {
  const planned = routes.map((route) => plannedOf(route));
  return reads.map((read) => {
    const steps = planned.flatMap((all, route) =>
      all.flatMap(({ tried }, step) => (tried?.reads.includes(read) ? [{ route: route + 1, step: step + 1 }] : [])),
    );
    const group = over.find((tried) => tried.reads.includes(read));
    const isRelated = steps.length > 0 || group !== undefined;
    const like = planned
      .flat()
      .find(({ step }) => reactionOfCandidate(step.candidate, productOf(step))?.any === read.reaction?.any);
    const { run, expected, outcome, text, next, instead } = read;
    const equation = run.plan.equation.toUnicode();
    const other =
      like === undefined
        ? `no route here has the reaction ${equation}: it changes none of them`
        : `it made ${run.product.formula}${run.plan.request.isolate === false ? " in its liquor" : ""}, where the route makes ${formulaFrom(productOf(like.step)).toUnicode()}${like.step.inLiquor ? " in its liquor" : ""}: its yield says nothing of that`;
    return {
      trial: read.index + 1,
      equation: String(run.plan.equation),
      outcome: isRelated ? outcome : "unrelated",
      steps,
      dry: run.dryMass,
      expected,
      yield: yieldOf(run),
      instead,
      text: isRelated ? text : `${text}; ${other}`,
      next,
    };
  });
}

function answerTo(request: RouteRequest, trials: Trials): Answer {
  const wish: Wish = {
    wanted: expectDimension((request.wanted ?? USUAL.wanted) as Quantity, "mass", "wanted") as Quantity<"mass">,
    temperature: request.temperature,
    trials,
  };
  if (!wish.wanted.isPositive())
    throw new RouteError("route.request", `the wanted mass must be above zero, not ${wish.wanted}`);
  const extra = request.target === undefined ? [] : [targetOf(request.target)];
  const index = indexOf(request.shelf, extra);
  const [form] = extra;
  if (form === undefined) return everything(index, request, wish);
  const key = keyOf(form)!;
  const target = index.all.byKey.get(key);
  if (target === undefined)
    throw new RouteError("route.unknown-target", `${form} is not a substance that is prepared`, {
      hint: "give a salt, an acid, a metal",
    });
  const jar = index.jars.get(key)?.[0];
  if (jar === undefined) return routesTo(target, form, index, request, wish);
  const other = otherWater(target, form, jar.material);
  const found = routesTo(target, form, without(request, key, extra), request, wish, other);
  return other.length > 0 ? found : { ...found, refusals: [onShelf(jar.material.name), ...found.refusals] };
}

/** From a jar of another hydrate: the water driven off, or taken up in crystals. */
function otherWater(target: Compound, form: string, material: ShelfMaterial): readonly Found[] {
  const [own, wanted] = [madeOf(String(material.form)), madeOf(form)];
  if (own === undefined || wanted === undefined || own.identity === wanted.identity) return [];
  const candidate = changeOfWater(target, wanted.waters > own.waters);
  const judgement = judge(candidate, form, [material]);
  return judgement.ok
    ? [{ kind: candidate.id, cost: 0, steps: [{ candidate, judgement, materials: [material], inLiquor: false }] }]
    : [];
}

/** The shelf without the target: what stands there is no feed for itself. */
const without = ({ shelf }: RouteRequest, key: string, extra: readonly string[]): Index =>
  indexOf(
    shelf.filter(({ form }) => attempt(() => keyOf(String(form))).ok && keyOf(String(form)) !== key),
    extra,
  );

/**
 * As `findRoutes`, but gives the refusal back as data.
 *
 * @category Planning
 * @example
 * tryFindRoutes({ shelf: [], target: "KCN" }).ok // => false
 */
export const tryFindRoutes = (request: RouteRequest): Result<Routes, RouteRefusal> =>
  attempt(() => findRoutes(request));
