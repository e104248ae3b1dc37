// What a preparation is watched for is read off its vessels, for every kind: what stands there once everything has reacted.
import { type PlanRequest, type ProcedureStep, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";
import { BENCH_PREPARATIONS, requestOf } from "../data/bench-preparations";

const plan = (request: PlanRequest) => planPreparation(request);
const checksOf = (request: PlanRequest): string =>
  plan(request)
    .checks.map(({ text }) => text)
    .join("\n");

describe("checks", () => {
  it("count what stays what it was: 0.89 of the barium sulfate and as much of the soda do not react", () => {
    const request: PlanRequest = {
      equation: "BaSO4 + Na2CO3 -> BaCO3 + Na2SO4",
      product: "BaCO3",
      materials: [
        { name: "barite", form: "BaSO4" },
        { name: "soda", form: "Na2CO3", dissolve: { water: "100 mL" } },
      ],
      scale: { material: "barite", portion: "23.3 g" },
      acknowledge: ["does-not-go"],
    };
    // pKsp 9.97 and 8.57: sulfate over carbonate stops at 0.04; at 1 mol/kg some 11 % reacts (see must-be-told)
    const { after } = plan(request).steps.find(({ operation }) => operation === "add")!;
    const barite = after.solids
      .find(({ formula }) => formula === "BaSO₄")!
      .mass.in("g")
      .toNumber();
    expect(barite).toBeGreaterThan(18);
    expect(checksOf(request)).toContain(`${barite.toPrecision(3)} g of that stays`);
  });

  it("share what is over between two packs of the same", () => {
    const request: PlanRequest = {
      equation: "MgO + H2SO4 + H2O -> MgSO4·7H2O",
      product: "MgSO4·7H2O",
      materials: [
        { name: "acid", form: "H2SO4", strength: "20 %" },
        { name: "old magnesia", form: "MgO", available: "2.0 g", excess: "10 %" },
        { name: "new magnesia", form: "MgO", available: "6.0 g", excess: "10 %" },
      ],
      scale: { material: "acid", portion: "49.0 g" },
    };
    // 49.0 × 0.2 / 98.07 = 0.0999 mol of acid; what the hot filter keeps is what the checks filter off, from both packs
    const made = plan(request);
    const residue = made.steps
      .flatMap(({ left }) => left)
      .find(({ what }) => what === "residue")!
      .contents.mass.in("g")
      .toNumber();
    const { supplied } = made.materialBalance;
    // the balance has what is over of both with each of them
    expect(supplied[1]!.left.in("mol").toNumber() * 40.304).toBeCloseTo(residue, 1);
    const named = /filter ([\d.]+) g of (?:old|new) magnesia off/.exec(checksOf(request))!;
    const share =
      supplied[1]!.amount.in("mol").toNumber() / supplied[1]!.amount.plus(supplied[2]!.amount).in("mol").toNumber();
    expect(Number(named[1])).toBeCloseTo(residue * (named[0].includes("old") ? share : 1 - share), 1);
  });

  const masses = (steps: readonly ProcedureStep[]): number[] =>
    steps.flatMap(({ before, after }) =>
      [before, after].flatMap(({ solids, water, mass }) => [
        mass.in("g").toNumber(),
        water.in("g").toNumber(),
        ...solids.map((one) => one.mass.in("g").toNumber()),
      ]),
    );

  it.each(BENCH_PREPARATIONS)("of $id: crystals, residues and heated masses are those of a vessel", (one) => {
    const made = plan(requestOf(one));
    const there = [...masses(made.steps), made.product.theoreticalYield.in("g").toNumber()];
    for (const { text } of made.checks) {
      const said = /(?:, |filter |and )([\d.]+) g of \S+ (?:crystallises|off)|when ([\d.]+) g has fallen/.exec(text);
      if (said === null) continue;
      const grams = Number(said[1] ?? said[2]);
      expect(
        there.some((mass) => Math.abs(mass - grams) <= 0.006 * grams + 1e-9),
        text,
      ).toBe(true);
    }
  });
});
