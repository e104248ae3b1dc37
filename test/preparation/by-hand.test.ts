// What a person at the bench asks, with the arithmetic beside each answer. Molar masses by IUPAC weights, two decimals.
import {
  distinguishMaterials,
  evaluateRun,
  fromJSON,
  type Observations,
  planPreparation,
  type Run,
  whatToMeasureNext,
} from "preparative";
import { describe, expect, it } from "vitest";

// 147.0 / 147.01 × 100.09 = 100.08 g
const chalk = planPreparation({
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials: [
    { name: "de-icer", form: "CaCl2·2H2O" },
    { name: "soda", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { material: "de-icer", portion: "147.0 g" },
});
const runOf = (observations: Observations): Run => evaluateRun(chalk, observations);

describe("observations of a run", () => {
  it.each([
    // a fifth of a cake of 200 g: 0.2 × 100.08 = 20.02 of product, 80.06 left
    ["wet cake", { lost: [{ of: "cake", mass: "40 g" }], wetCake: "200 g", dried: "77.0 g" }, 80.06],
    // product itself: 100.08 - 12.0
    ["dry product", { lost: [{ of: "product", mass: "12.0 g" }], dried: "86.0 g" }, 88.08],
    // both: 100.08 - 20.02 - 12.0
    [
      "both",
      {
        lost: [
          { of: "cake", mass: "40 g" },
          { of: "product", mass: "12.0 g" },
        ],
        wetCake: "200 g",
        dried: "66.0 g",
      },
      68.06,
    ],
  ] as const)("%s that was spilled takes its share", (_, observations, left) => {
    const run = runOf(observations);
    expect(run.expected.toNumber("g")).toBeCloseTo(left, 1);
    expect(run.verdict[0]!.code).toBe("spilled");
    expect((fromJSON(JSON.parse(JSON.stringify(run))) as Run).expected.equals(run.expected)).toBe(true);
  });

  it("a tare that stands in each weighing is one reading", () => {
    const tare = "52.1 g";
    const run = runOf({
      dried: [
        { gross: "150.2 g", tare },
        { gross: "149.3 g", tare },
        { gross: "149.2 g", tare },
      ],
    });
    // 149.2 - 52.1; each reading on a balance of 0.1 g that was set to zero before has 0.1 / √12 × √2 = 0.041
    expect(run.dryMass!.toNumber("g")).toBeCloseTo(97.1, 6);
    expect(run.dryMass!.standardUncertainty!.toNumber()).toBeCloseTo(0.0577, 3);
    // 0.1 g from one weighing to the next, the tare gone from the difference
    expect(run.dryness.lastLoss!.standardUncertainty!.toNumber()).toBeCloseTo(0.0577, 3);
    expect(run.dryness.state).toBe("constant mass");
  });

  it("crops are added: (120.4 - 60.2) + 12.0 of 101.11 g", () => {
    const saltpetre = planPreparation({
      equation: "NaNO3 + KCl -> KNO3 + NaCl",
      product: "KNO3",
      materials: [
        { name: "nitre", form: "NaNO3" },
        { name: "potash", form: "KCl", excess: "2 %" },
      ],
      scale: { material: "nitre", portion: "85.0 g" },
    });
    const run = evaluateRun(saltpetre, { crops: [{ gross: "120.4 g", tare: "60.2 g" }, "12.0 g"] });
    // 85.0 / 84.99 × 101.10
    expect(run.product.theoreticalYield.toNumber("g")).toBeCloseTo(101.11, 1);
    expect(run.dryMass!.toNumber("g")).toBeCloseTo(72.2, 6);
    expect(run.percentYield!.toNumber("%")).toBeCloseTo(71.4, 1);
  });

  it("a titrated product counts as what is pure of it, a titrated pack as what it is", () => {
    const product = runOf({ dried: "98.0 g", assay: "96.0 %" });
    // 98.0 × 0.960 = 94.08; over 100.08
    expect(product.pureMass!.toNumber("g")).toBeCloseTo(94.08, 2);
    expect(product.pureYield!.toNumber("%")).toBeCloseTo(94.0, 1);
    const pack = runOf({ assays: { "de-icer": "90 %" }, dried: "86.0 g" });
    // 0.90 × 100.08 = 90.07; 86.0 of it
    expect(pack.product.theoreticalYield.toNumber("g")).toBeCloseTo(90.07, 1);
    expect(pack.percentYield!.toNumber("%")).toBeCloseTo(95.5, 1);
    expect(pack.verdict[0]!.code).toBe("consistent");
  });
});

describe("what to measure next", () => {
  it("is the assay of a pack that is known to 3 %", () => {
    const plan = planPreparation({
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O", assay: "97 ± 3 %" },
        { name: "soda", form: "Na2CO3", excess: "10 %" },
      ],
      scale: { material: "de-icer", portion: "60.0 g" },
    });
    const run = evaluateRun(plan, { weighed: { "de-icer": "60.0 g" }, dried: "36.5 g" });
    // 60.0 × 0.97 / 147.01 × 100.09 = 39.63; 36.5 is 92.1 %, u 92.1 × 3 / 97 = 2.85
    expect(run.percentYield!.toNumber("%")).toBeCloseTo(92.1, 1);
    expect(run.percentYield!.standardUncertainty!.toNumber()).toBeCloseTo(2.85, 1);
    const [first] = whatToMeasureNext(run.percentYield!);
    // with 0.6 % left of it 92.1 × 0.006 = 0.55, and 0.12 by the balance
    expect(first!.text).toMatch(/^titrate for the assay of de-icer, three times: u of .* from 2\.9 to 0\.57 %/);
  });

  it("is the product, where a little lime was weighed on a coarse balance", () => {
    const lime = planPreparation({
      equation: "CaCO3 -> CaO + CO2",
      product: "CaO",
      materials: [{ name: "chalk", form: "CaCO3" }],
      scale: { material: "chalk", portion: "5.0 g" },
    });
    const run = evaluateRun(lime, { weighed: { chalk: "5.0 g" }, dried: "2.7 g" });
    // 2.7 / (5.0 × 0.5603) = 96.4 %; 0.041 / 2.7 = 1.51 %, 0.041 / 5.0 = 0.82 %: 77 and 23 % of the variance, 1.66 points of 96.4
    expect(run.percentYield!.standardUncertainty!.toNumber()).toBeCloseTo(1.66, 1);
    const [first, second] = whatToMeasureNext(run.percentYield!);
    expect(first!.text).toMatch(/^weigh the dry product .* from 1\.7 to 0\.8 % \(77 % of the variance\)/);
    expect(second!.text).toMatch(/^weigh the chalk .* \(23 % of the variance\)/);
  });

  it("is the vinegar of a label", () => {
    const plan = planPreparation({
      equation: "ZnO + CH3COOH + H2O -> Zn(CH3COO)2·2H2O",
      product: "Zn(CH3COO)2·2H2O",
      materials: [
        { name: "zinc white", form: "ZnO", excess: "10 %" },
        { name: "vinegar", form: "CH3COOH", strength: "5 ± 0.5 %", density: "1.006 g/mL" },
      ],
      scale: { material: "vinegar", portion: "500 mL" },
    });
    // 500 × 1.006 × 0.05 / 60.05 / 2 × 219.5 = 45.97 g, a tenth of it uncertain; with 0.6 % left 0.28
    expect(plan.product.theoreticalYield.toNumber("g")).toBeCloseTo(45.97, 1);
    expect(whatToMeasureNext(plan.product.theoreticalYield)[0]!.text).toMatch(
      /^titrate for the strength of vinegar, three times: .* from 4\.6 to 0\.28 g/,
    );
  });
});

describe("forms of one name", () => {
  it.each([
    // 18.02 / 179.45 and 7 × 18.02 / 287.54; 179.45 / 287.54 of the worth
    [["ZnSO4·H2O", "ZnSO4·7H2O"], [10.04, 43.86], 0.6241],
    // nothing and 10 × 18.02 / 286.14; 105.99 / 286.14
    [["Na2CO3", "Na2CO3·10H2O"], [0, 62.96], 0.3704],
    // 5 × 18.02 / 249.68; 159.60 / 249.68
    [["CuSO4", "CuSO4·5H2O"], [0, 36.08], 0.6392],
  ] as const)("%j differ in what they lose", (forms, losses, worth) => {
    const rows = distinguishMaterials(forms);
    expect(rows.map(({ lossOnDrying }) => lossOnDrying.toNumber("%").toFixed(2))).toEqual(
      losses.map((one) => one.toFixed(2)),
    );
    expect(rows[1]!.worth.toNumber("")).toBeCloseTo(worth, 4);
  });
});
