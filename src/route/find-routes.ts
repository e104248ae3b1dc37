// From the shelf to the target: which ways there are, each with its figures, and why the others do not go.

import { attempt, type Result } from "../foundation/error";
import { lookingIn } from "../foundation/facts";
import { readable } from "../foundation/readable";
import type { ShelfMaterial } from "../preparation";
import type { Quantity } from "../quantity";
import { expectDimension } from "../quantity/internal";
import { guard } from "./argument";
import { changeOfWater } from "./candidates";
import { type Compound, keyOf, madeOf } from "./compound";
import type { Wish } from "./draft";
import { RouteError, type RouteRefusal } from "./error";
import { judge } from "./judge";
import { WEIGHTS } from "./rank";
import type { RefusedRoute } from "./reason";
import { onShelf } from "./refusals";
import { needRequest, type RouteRequest, targetOf, USUAL } from "./request";
import { type Answer, everything, routesTo } from "./routes-to";
import type { Found } from "./search";
import { type Index, indexOf } from "./shelf";
import { readingsOf, type TrialReading } from "./trial-readings";
import { readTrials, type Trials } from "./tried";
import type { RankParts, Route } from "./types";

/** What a shelf gives. */
export interface Routes {
  /** The best first. */
  readonly routes: readonly Route[];
  /** Reactions that were looked at and do not go, and what is missing. */
  readonly refusals: readonly RefusedRoute[];
  /** What each of the trials says, in the order they were given. */
  readonly trials: readonly TrialReading[];
}

/** Weights of the ranking where the caller gives none. */
export const routeWeights: RankParts = /* @__PURE__ */ (() => Object.freeze({ ...WEIGHTS }))();

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
  needRequest(request);
  return lookingIn(request.facts, guard, () => searched(request));
}

function searched(request: RouteRequest): Routes {
  const trials = readTrials(request.trials);
  const { routes, refusals, over } = answerTo(request, trials);
  return readable({ routes, refusals, trials: readingsOf(trials, routes, over.keys()) });
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
    shelf.filter(({ form }) => {
      const own = attempt(() => keyOf(String(form)));
      return own.ok && own.value !== key;
    }),
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
