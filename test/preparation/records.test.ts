// Records that lack a part are refused as what they are.
import {
  attempt,
  chainFromJSON,
  evaluateRun,
  isPreparativeError,
  planFromJSON,
  planPreparation,
  planSequence,
  runFromJSON,
} from "preparative";
import { describe, expect, it } from "vitest";

const step = {
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials: [
    { name: "calcium", form: "CaCl2" },
    { name: "soda", form: "Na2CO3" },
  ],
} as const;
const plan = planPreparation({ ...step, scale: { product: "10 g" } });
const RECORDS = {
  plan: [plan, planFromJSON],
  run: [evaluateRun(plan, { dried: "9.5 g" }), runFromJSON],
  chain: [planSequence({ steps: [step], wanted: "10 g" }), chainFromJSON],
} as const;

const without = (kind: keyof typeof RECORDS, part: string): unknown => {
  const [given, read] = RECORDS[kind];
  const { [part]: _, ...rest } = JSON.parse(JSON.stringify(given));
  const outcome = attempt<unknown>(() => read(rest));
  if (outcome.ok) return "read";
  return isPreparativeError(outcome.error) ? `${outcome.error.code}: ${outcome.error.message}` : "not refused";
};

describe("a record", () => {
  it.each([
    ["plan", "request", /^plan\.json: not a plan record: no request/],
    ["plan", "type", /^plan\.json: not a plan record: type/],
    ["run", "observations", /^plan\.json: not a run record: no observations/],
    ["run", "plan", /^plan\.json: not a plan record/],
    ["run", "schema", /^plan\.json: not a run record: schema/],
    ["chain", "request", /^plan\.json: not a chain record: no request/],
    ["chain", "schema", /^plan\.json: not a chain record: schema/],
  ] as const)("of a %s without its %s is none", (kind, part, refusal) => {
    expect(without(kind, part)).toMatch(refusal);
  });

  // figures and the version that wrote it are for comparison only
  it.each([["plan"], ["run"], ["chain"]] as const)("of a %s is read without its figures or its library", (kind) => {
    expect([without(kind, "figures"), without(kind, "library")]).toEqual(["read", "read"]);
  });
});
