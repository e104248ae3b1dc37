// What is asked of a shelf, and the request looked through.

import type { MassLike, TemperatureLike } from "../amount";
import { Formula } from "../formula";
import type { Fields } from "../foundation/argument";
import { attempt } from "../foundation/error";
import type { Facts } from "../foundation/facts";
import type { Run, RunRecord, ShelfMaterial } from "../preparation";
import { SHELF_MATERIAL } from "../preparation/internal";
import { tryFormulaOf } from "../substance";
import { guard } from "./argument";
import { formulaFrom, keyOf } from "./compound";
import { SETTINGS } from "./data/settings";
import { RouteError } from "./error";
import { refuseClass, refuseTarget } from "./safety";
import { MOST_STEPS } from "./shelf";
import type { TrialReport } from "./trial-read";
import type { RankParts } from "./types";
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

/** What is taken where the request does not say. */
export const USUAL = { wanted: "10 g", limit: 5 } as const;
const MOST_ROUTES = 50;
const MOST_JARS = 1000;

/** The target as a formula; a name is looked up. */
export function targetOf(target: string | Formula): string {
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

/** A request with known fields and figures in their range, or an error. */
export function needRequest(request: RouteRequest): void {
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
