// No answer depends on what was asked before: the sheet of every preparation that the tests have, written in two orders, with
// other questions about the same materials between. Models, readings and answers are kept from one question to the next; what
// is kept must be what would be worked out anew.
import { aqueousComposition, benchSheet, doesItGo, type PlanRequest, pHOf, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";
import { BENCH_PREPARATIONS, requestOf as benchRequestOf } from "../data/bench-preparations";
import { NATURAL_PREPARATIONS } from "../data/natural-preparations";
import { PREPARATIONS } from "../data/preparations";
import { SECOND_TRIAL } from "../data/second-trial";
import { requestOf } from "../tools/published-plans";
import { seeded } from "../tools/random";

const REQUESTS: readonly PlanRequest[] = [
  ...PREPARATIONS.flatMap((one) => requestOf(one) ?? []),
  ...BENCH_PREPARATIONS.map((one) => benchRequestOf(one)),
  ...NATURAL_PREPARATIONS.map(({ request }) => request),
  ...SECOND_TRIAL.map(({ id: _, kind: _kind, theory: _theory, gas: _gas, ...request }) => request as PlanRequest),
];

/** What a question comes to: its text, or the code of its refusal. */
function said(ask: () => unknown): string {
  try {
    return String(ask());
  } catch (error) {
    return (error as { code?: string }).code ?? "no code";
  }
}

const sheetOf = (request: PlanRequest): string => said(() => benchSheet(planPreparation(request), { format: "text" }));

/** Questions about the same materials that must not move the next answer. */
function othersAbout(request: PlanRequest, random: () => number): (() => unknown)[] {
  const { equation, product, materials } = request;
  const dissolved = materials.map(({ form }) => ({
    formula: `${form}`,
    amount: `${(0.01 + random()).toFixed(3)} mol`,
  }));
  const beaker = { water: `${(0.05 + 2 * random()).toFixed(3)} kg`, dissolved, temperature: "20 °C" } as Parameters<
    typeof aqueousComposition
  >[0];
  const packs = materials.map((one, i) => ({ ...one, name: `pack ${i}` }));
  return [
    () => benchSheet(planPreparation({ ...request, materials: packs }), { format: "text" }),
    () => planPreparation({ ...request, temperature: `${Math.round(5 + 30 * random())} °C` as "5 °C" }).checks,
    () => planPreparation({ ...request, pressure: "90 kPa" }).steps.map(({ text }) => text),
    () => doesItGo({ equation, product }).reasons,
    () => aqueousComposition({ ...beaker, solids: "aged" }).solids,
    () => aqueousComposition({ ...beaker, carbonDioxide: "leaves" }).solids,
    () => pHOf({ ...beaker, constants: { pKw: "14.2" } }),
  ];
}

const inOrderOf = (random: () => number): readonly PlanRequest[] =>
  REQUESTS.map((request) => ({ request, at: random() }))
    .sort((a, b) => a.at - b.at)
    .map(({ request }) => request);

describe("what was asked before", () => {
  it("moves no sheet", { timeout: 300_000 }, () => {
    const random = seeded(20261129);
    const first = new Map(REQUESTS.map((request) => [request, sheetOf(request)]));
    let answered = 0;
    for (const request of inOrderOf(random)) {
      for (const ask of othersAbout(request, random))
        if (random() < 0.5 && !/^[a-z]+\.[a-z-]+$/.test(said(ask))) answered += 1;
      expect(sheetOf(request), request.title ?? request.product).toBe(first.get(request));
    }
    expect(first.size).toBeGreaterThan(200);
    expect(answered).toBeGreaterThan(400);
  });
});
