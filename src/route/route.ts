// A route with its figures: a plan for each step, what comes out in the end, what it costs and leaves. Figures are worked out
// when somebody asks for them.

import { frozen } from "../foundation/frozen";
import { keptWith, lazily } from "../foundation/lazy";
import { readable } from "../foundation/readable";
import { recordHead } from "../foundation/record";
import { INSPECT, shownAs } from "../foundation/shown";
import { type FeasibilityReason, planPreparation } from "../preparation";
import { plain } from "../preparation/internal";
import { type Quantity, quantity } from "../quantity";
import { canonicalFormula } from "../substance";
import { formulaFrom } from "./compound";
import { type Before, type Draft, dryOf, productOf, requestOf } from "./draft";
import type { RouteEvidence } from "./evidence";
import { gradeOf } from "./evidence";
import { costsOf, equipmentOf, gasOf, inventoryOf, mostOf, wasteOf } from "./figures";
import { marginsOf } from "./margin";
import type { RouteReason } from "./reason";
import type { FoundStep } from "./search";
import { trialOf } from "./trial";
import type { Rank, Route, RouteRecord, RouteStep, Swap } from "./types";

/** Version of the layout of a record. */
export const SCHEMA = 1;

/** What all routes share. */
class RouteMethods {
  static get name(): string {
    return "Route";
  }

  get [Symbol.toStringTag](): string {
    return "Route";
  }

  toString(this: Route): string {
    const inSolution = this.steps.at(-1)?.kept === "liquor" ? " in solution" : "";
    return `${this.target}${inSolution} from ${this.inventory.map(({ material }) => material).join(", ")}: ${this.steps.length === 1 ? "one step" : `${this.steps.length} steps`}`;
  }

  [INSPECT](this: Route): string {
    return shownAs("Route", this);
  }

  toJSON(this: Route): RouteRecord {
    const { found, wish, planned } = keptWith(this) as Draft;
    const trials = planned.flatMap(({ tried }) => (tried?.reads ?? []).map(({ record }) => record()));
    const facts = this.steps[0]?.plan.request.facts;
    return {
      ...recordHead("route", SCHEMA),
      target: this.target,
      wanted: plain(wish.wanted) as RouteRecord["wanted"],
      ...(wish.temperature === undefined ? {} : { temperature: plain(wish.temperature) }),
      steps: found.steps.map(({ candidate, judgement, materials, inLiquor }) => ({
        family: candidate.family.code,
        product: judgement.product,
        materials: plain(materials),
        ...(inLiquor ? { kept: "liquor" as const } : {}),
      })),
      swaps: this.swaps,
      rank: this.rank,
      ...(trials.length === 0 ? {} : { trials }),
      ...(facts === undefined ? {} : { facts: facts.toJSON() }),
    };
  }
}

const weakest = (all: readonly RouteEvidence[]): RouteEvidence =>
  all.reduce((a, b) => (gradeOf(b) > gradeOf(a) ? b : a));

const reasonOf = ({ code, text, numbers, source }: FeasibilityReason): RouteReason => ({ code, text, numbers, source });

function stepOf(draft: Draft, i: number, before: (step: FoundStep) => Before): RouteStep {
  const { step, unit, yield: share, evidence, tried } = draft.planned[i]!;
  const { candidate } = step;
  const own: RouteStep = lazily<RouteStep>({
    family: () => candidate.family.code,
    name: () => candidate.family.name,
    equation: () => unit.equation,
    product: () => formulaFrom(productOf(step)).toUnicode(),
    key: () => canonicalFormula(productOf(step)),
    kept: () => (step.inLiquor ? "liquor" : "solid"),
    plan: () =>
      planPreparation(
        requestOf(step, draft.found.steps, { product: draft.theory[i]! as Quantity<"mass"> }, draft.wish, before),
      ),
    yield: () => share,
    purity: () => {
      const dry = dryOf(step, own.plan, tried);
      return dry === undefined ? undefined : readable({ assay: dry.assay, also: dry.also });
    },
    evidence: () => evidence,
    margins: () => marginsOf(step, unit),
    reasons: () => unit.feasibility.reasons.map(reasonOf),
    excess: () => (candidate.family.excess === undefined ? "none" : candidate.family.leaves),
  });
  return own;
}

/** The planned steps behind a route. */
export const plannedOf = (route: Route): Draft["planned"] => (keptWith(route) as Draft).planned;

/** A route with its figures, in its place. */
export function routeOf(draft: Draft, rank: Rank, swaps: () => readonly Swap[]): Route {
  const { found, planned, wish } = draft;
  const steps: readonly RouteStep[] = found.steps.map((_, i) =>
    stepOf(draft, i, (one) => steps[found.steps.indexOf(one)]!),
  );
  const inUnits = (one: FoundStep): Before | undefined => {
    const past = planned.find(({ step }) => step === one);
    return past === undefined ? undefined : { plan: past.unit, yield: past.yield };
  };
  const target = formulaFrom(productOf(found.steps.at(-1)!)).toUnicode();
  return lazily<Route, object, RouteMethods>(
    {
      kind: () => "route",
      target: () => target,
      key: () => canonicalFormula(target),
      steps: () => steps,
      wanted: () => wish.wanted,
      yield: () =>
        planned
          .reduce((n: Quantity, one) => n.times(one.yield), quantity("1"))
          .named({ symbol: "yield", label: "yield over all steps", rule: "product of the yields of the steps" }),
      most: () => mostOf(draft),
      inventory: () => inventoryOf(draft),
      cost: () => frozen(costsOf(draft)),
      equipment: () => equipmentOf(draft),
      gas: () => gasOf(draft),
      waste: () => wasteOf(draft),
      evidence: () => weakest(steps.map(({ evidence }) => evidence)),
      margin: () => steps.flatMap(({ margins }) => margins).reduce((a, b) => (b.room < a.room ? b : a)),
      swaps,
      rank: () => rank,
      trial: () =>
        trialOf(draft, (step, product) => planPreparation(requestOf(step, found.steps, { product }, wish, inUnits))),
      unknown: () => [...new Set(planned.flatMap(({ unit }) => unit.unknown))],
    },
    {},
    RouteMethods.prototype,
    draft,
  );
}
