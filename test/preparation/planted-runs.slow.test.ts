// The verdict against good runs and planted faults whose figures are arithmetic on molar masses (test/data/planted-runs.ts).
import { evaluateRun, identifyByMassLoss, type Observations, type Plan, planPreparation, type Run } from "preparative";
import { describe, expect, it } from "vitest";
import { FIRED, PLANTED_RUNS, PRECIPITATES } from "../data/planted-runs";
import { about, scaled, standingOf } from "./verdict/laws";

const plans = new Map<string, Plan>(
  [...PRECIPITATES, ...FIRED].map(({ id, request }) => [id, planPreparation(request)]),
);
const runOf = ({ prepared, observations }: (typeof PLANTED_RUNS)[number]): Run =>
  evaluateRun(plans.get(prepared.id)!, observations);

describe("planted faults and good runs", () => {
  it.each([...PRECIPITATES, ...FIRED].map((one) => [one.id, one] as const))(
    "%s: the theory is that of the hand calculation",
    (id, { theory }) => {
      expect(plans.get(id)!.product.theoreticalYield.in("g").toNumber() / theory).toBeCloseTo(1, 3);
    },
  );

  const judged = PLANTED_RUNS.map((one) => ({ one, first: runOf(one).verdict[0]!.code }));

  it("are enough", () => {
    expect(PLANTED_RUNS.length).toBeGreaterThanOrEqual(120);
  });

  it("raise no false alarm in a good run", () => {
    expect(
      judged
        .filter(({ one, first }) => one.good && !one.first.includes(first))
        .map(({ one, first }) => `${one.id} -> ${first}`),
    ).toEqual([]);
  });

  it("are named first in at least nine of ten", () => {
    const faults = judged.filter(({ one }) => !one.good);
    const missed = faults
      .filter(({ one, first }) => !one.first.includes(first))
      .map(({ one, first }) => `${one.id} -> ${first}`);
    expect(missed.length, missed.join("\n")).toBeLessThanOrEqual(0.1 * faults.length);
  });

  // Chalk burns from 840 °C on (from memory): 55 % of it is a loss, although 56 % would be lime.
  it("are no product dried too hot where only a kiln makes it", () => {
    const { verdict } = evaluateRun(plans.get("chalk")!, { dried: "37.4 g" });
    expect(verdict[0]!.code).toBe("lighter-than-losses-explain");
    expect(verdict.some(({ text }) => text.includes("dried too hot"))).toBe(false);
  });

  // Each is weighed on a balance of 0.1 g.
  it("are told in masses no finer than the balance", () => {
    const finer = PLANTED_RUNS.flatMap((one) =>
      runOf(one).verdict.flatMap(({ text }) => text.match(/(?<![\d.])\d+\.\d{2,} g\b/g) ?? []),
    );
    expect(finer).toEqual([]);
  });

  it("are among the three first in all but one, whose salts are below what counts", () => {
    const missed = PLANTED_RUNS.filter((one) => {
      const codes = runOf(one)
        .verdict.slice(0, 3)
        .map(({ code }) => code);
      return !one.first.some((code) => codes.includes(code));
    });
    // Its liquor is so thin that 0.75 g of salts stay in 47.2 g, 1.6 %: below the 2 % that need a word.
    expect(missed.map(({ id }) => id)).toEqual(["calcium oxalate: 95 %, never washed"]);
  });
});

describe("laws of a verdict", () => {
  const codes = (run: Run): unknown => run.verdict.map(({ code, weight }) => [code, Number(weight.toFixed(9))]);

  it("observations in any order give the same", () => {
    let tested = 0;
    for (const one of PLANTED_RUNS) {
      const reversed = Object.fromEntries(Object.entries(one.observations).reverse()) as Observations;
      expect(codes(evaluateRun(plans.get(one.prepared.id)!, reversed))).toEqual(codes(runOf(one)));
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(130);
  });

  it("ten times a batch gives the same", () => {
    let tested = 0;
    for (const one of PLANTED_RUNS) {
      const { request } = one.prepared;
      const large = planPreparation({
        ...request,
        scale: scaled(request.scale) as typeof request.scale,
        readability: { mass: "1 g", volume: "10 mL" },
      });
      const first = evaluateRun(large, scaled(one.observations) as Observations).verdict[0]!.code;
      expect([one.id, first]).toEqual([one.id, runOf(one).verdict[0]!.code]);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(130);
  });

  it("a more precise weighing never brings back what a coarser one excluded, nor adds anything but that the mass is off", () => {
    for (const { id } of [...PRECIPITATES, ...FIRED]) {
      const plan = plans.get(id)!;
      const theory = plan.product.theoreticalYield.in("g").toNumber();
      for (const part of [0.5, 0.7, 0.85, 0.89, 0.95, 0.995, 1.004, 1.02, 1.06, 1.12, 1.3]) {
        const verdicts = [0.08, 0.04, 0.02, 0.01, 0.004, 0.001, 0.0002].map(
          (u) => evaluateRun(plan, { dried: `${part * theory} ± ${u * theory} g` as "1 g" }).verdict,
        );
        expect(verdicts.slice(1).length, "rows to test").toBeGreaterThan(0);
        for (const [i, finer] of verdicts.slice(1).entries()) {
          const coarser = verdicts[i]!;
          const label = `${id}, ${part} of the theory, step ${i}`;
          const [before, now] = [standingOf(coarser), standingOf(finer)];
          // A mass that is off stays off.
          if (before !== "fits") expect(now, label).toBe(before);
          if (before !== now) continue;
          // That a mass is too heavy for all formulas explains nothing: it says that they are excluded.
          const explained = finer.filter(({ code }) => code !== "too-heavy");
          expect(coarser.map(about), label).toEqual(expect.arrayContaining(explained.map(about)));
          expect(finer.length, "rows to test").toBeGreaterThan(0);
          for (const one of finer) {
            const same = coarser.find((other) => about(other) === about(one));
            if (one.likelihood !== undefined && same?.likelihood !== undefined)
              expect(one.likelihood, `${label}: ${one.text}`).toBeLessThanOrEqual(same.likelihood + 1e-9);
          }
        }
      }
    }
  });

  it("a more precise weighing never makes a yield less sure, nor an identity wider", () => {
    const plan = plans.get("chalk")!;
    const us = [2, 1, 0.5, 0.1, 0.02].map((u) =>
      evaluateRun(plan, { dried: `66.0 ± ${u} g` as "1 g" }).percentYield!.standardUncertainty!.toNumber(),
    );
    expect(us).toEqual([...us].sort((a, b) => b - a));
    for (const [loss, product] of [
      [0.288, "Cu2(OH)2CO3"],
      [0.56, "Mg5(CO3)4(OH)2·4H2O"],
      [0.26, "Zn5(CO3)2(OH)6"],
    ] as const) {
      const left = [0.1, 0.03, 0.01, 0.003].map((u) => {
        const { candidates } = identifyByMassLoss({
          before: `2.000 ± ${u} g` as "1 g",
          after: `${(2 * (1 - loss)).toFixed(3)} ± ${u} g` as "1 g",
          product,
        });
        return candidates.filter(({ fits }) => fits).map(({ formula }) => formula);
      });
      expect(left.slice(1).length, "rows to test").toBeGreaterThan(0);
      for (const [i, finer] of left.slice(1).entries()) expect(left[i]).toEqual(expect.arrayContaining(finer));
    }
  });
});
