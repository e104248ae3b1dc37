// Verdicts of what was fired, which has no filtrate, and of what no sample may be ignited of. Decomposition of copper(II) oxide
// from 1026 °C: CRC Handbook of Chemistry and Physics, melting points of inorganic compounds ("1026 decomposes", from memory).
import {
  evaluateRun,
  type PlanRequest,
  planPreparation,
  type Quantity,
  quantity,
  whatToMeasureNext,
} from "preparative";
import { describe, expect, it } from "vitest";
import { PRUSSIAN_BLUE } from "../../data/common-requests";

function run(request: PlanRequest, share: number) {
  const plan = planPreparation(request);
  const grams = (plan.product.theoreticalYield.toNumber("g") * share).toFixed(2);
  return evaluateRun(plan, { dried: mass(grams) });
}

const fired = (equation: string, product: string, form: string): PlanRequest => ({
  equation,
  product,
  materials: [{ name: "powder", form }],
  scale: { material: "powder", portion: "50 g" },
});

const KILN: readonly PlanRequest[] = [
  fired("CaCO3 -> CaO + CO2", "CaO", "CaCO3"),
  fired("Cu2(OH)2CO3 -> CuO + CO2 + H2O", "CuO", "Cu2(OH)2CO3"),
  fired("CaSO4·2H2O -> CaSO4·0.5H2O + H2O", "CaSO4·0.5H2O", "CaSO4·2H2O"),
  fired("NaHCO3 -> Na2CO3 + CO2 + H2O", "Na2CO3", "NaHCO3"),
];

const mass = (grams: string) => quantity(`${grams} g`) as Quantity<"mass">;

describe("a verdict of what was fired", () => {
  it("names no filtrate, no wash and no filter: there were none", () => {
    for (const request of KILN)
      for (const share of [0.7, 0.9, 0.985, 1.05]) {
        const { verdict } = run(request, share);
        const said = [...verdict.map(({ next }) => next), ...whatToMeasureNext(verdict).map(({ text }) => text)];
        expect(said.join("\n"), request.product as string).not.toMatch(/filt|liquor|wash(?!ed)|precipitant/);
      }
  });

  it("says first of copper oxide that is a tenth too light that some was lost, not that 290 °C made copper(I) oxide", () => {
    // half of the oxygen of CuO is 10 % of its mass: a share of 0.9 is just what Cu2O would weigh
    const { verdict } = run(KILN[1]!, 0.9);
    expect(verdict[0]!.code).toBe("lighter-than-losses-explain");
    const oxide = verdict.find(({ code }) => code === "other-formula-fits");
    expect(oxide!.text).toContain("Cu₂O, which heat leaves of CuO from 1026 °C on: fired too hot");
    expect(oxide!.weight).toBeLessThan(verdict[0]!.weight);
  });
});

describe("what to measure next", () => {
  const iodide: PlanRequest = {
    equation: "Pb(NO3)2 + KI -> PbI2 + KNO3",
    product: "PbI2",
    materials: [
      { name: "lead nitrate", form: "Pb(NO3)2" },
      { name: "potassium iodide", form: "KI" },
    ],
    scale: { material: "lead nitrate", portion: "10 g" },
  };

  it("is never to ignite a cyanide, its prussiate, or lead iodide, whose vapour is poison", () => {
    for (const request of [PRUSSIAN_BLUE, iodide])
      for (const share of [0.7, 0.9, 1.05, 1.2]) {
        const { verdict } = run(request, share);
        const tests = whatToMeasureNext(verdict).map(({ does }) => does);
        expect(tests.join("\n")).not.toMatch(/ignite/);
        expect(verdict[0]!.without).toContain("product in fire");
      }
    const heated = whatToMeasureNext(run(PRUSSIAN_BLUE, 1.05).verdict).map(({ does }) => does);
    expect(heated).not.toContain("heat a weighed sample of the starting material");
  });

  it("still ignites where that tells, and boils a mother liquor down for crystals only", () => {
    const chalk: PlanRequest = {
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O" },
        { name: "soda", form: "Na2CO3" },
      ],
      scale: { product: "20 g" },
    };
    const heavy = whatToMeasureNext(run(chalk, 1.05).verdict).map(({ does }) => does);
    expect(heavy).toContain("ignite a weighed sample to constant mass");
    const light = whatToMeasureNext(run(chalk, 0.92).verdict).map(({ does }) => does);
    expect(light).not.toContain("boil down the mother liquor for a second crop");
  });
});
