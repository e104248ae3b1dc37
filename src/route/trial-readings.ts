// What each trial says of the routes that were found: where it belongs among them, and what it changes.

import type { Quantity } from "../quantity";
import { formulaFrom } from "./compound";
import { productOf } from "./draft";
import { plannedOf } from "./route";
import { reactionOfCandidate } from "./trial-reaction";
import { yieldOf } from "./trial-read";
import type { Trials, Tried } from "./tried";
import type { Route } from "./types";

/** What a trial says of the routes that were found. */
export interface TrialReading {
  /** Place of the trial in the list that was given, from 1. */
  readonly trial: number;
  /** Equation of what was run. */
  readonly equation: string;
  /** Went: its yield counts. Ended: no route goes by this reaction. Unclear: it settles nothing. Unrelated: no route has the reaction. */
  readonly outcome: "went" | "ended" | "unclear" | "unrelated";
  /** Where the reaction stands among the routes that were found, both from 1. */
  readonly steps: readonly { readonly route: number; readonly step: number }[];
  /** What was weighed dry; undefined where nothing was. */
  readonly dry: Quantity<"mass"> | undefined;
  /** What there should have been by what was weighed in, less what liquor and washings keep. */
  readonly expected: Quantity<"mass">;
  /** Dry mass over theory. */
  readonly yield: Quantity<"number"> | undefined;
  /** What was made in place of the product, where ignition or acid shows it. */
  readonly instead: readonly string[];
  /** One sentence for a person to read. */
  readonly text: string;
  /** What to do next; empty where there is nothing to do. */
  readonly next: string;
}

/** Where each trial belongs, and what it changes. */
export function readingsOf({ reads }: Trials, routes: readonly Route[], over: Iterable<Tried>): TrialReading[] {
  const planned = routes.map((route) => plannedOf(route));
  const ended = [...over];
  return reads.map((read) => {
    const steps = planned.flatMap((all, route) =>
      all.flatMap(({ tried }, step) => (tried?.reads.includes(read) ? [{ route: route + 1, step: step + 1 }] : [])),
    );
    const group = ended.find((tried) => tried.reads.includes(read));
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
