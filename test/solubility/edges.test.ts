// Places where one branch of a calculation ends and another begins: a target met exactly, an ion that is there already, a
// solid that takes water with it, a figure that is named by the caller. The arithmetic stands beside each check.
import {
  explain,
  facts,
  fractionalCrystallization,
  molarSolubility,
  quantity,
  solubilityDiagram,
  washPlan,
} from "preparative";
import { describe, expect, it } from "vitest";

describe("a wash plan", () => {
  // 25 g keep 50 mL of 117 g/L, 5.85 g; stirred up with 250 mL each wash leaves a sixth: 0.975 g, 0.1625 g
  const request = {
    dryCakeMass: "25 g",
    retainedLiquorPerGram: "2 mL/g",
    saltConcentration: "117 g/L",
    washVolume: "250 mL",
  } as const;

  it.each([
    ["1 g", 1],
    ["0.975 g", 1],
    ["0.974 g", 2],
    ["0.1625 g", 2],
    ["0.16 g", 3],
  ] as const)("to leave %s asks for %d washes", (targetResidue, washes) => {
    expect(washPlan({ ...request, targetResidue }).washes).toBe(washes);
  });

  it("calls the volume of the liquor by the name it was given, or by its own", () => {
    const symbols = (liquorVolume: Parameters<typeof washPlan>[0]["liquorVolume"]) => {
      const { saltConcentration: _, ...others } = request;
      const plan = washPlan({ ...others, saltMassInLiquor: "10 g", liquorVolume: liquorVolume!, targetResidue: "1 g" });
      return explain(plan.residueUnwashed).given.map(({ symbol }) => symbol);
    };
    expect(symbols("100 mL")).toContain("V(liquor)");
    const jug = quantity("100 mL", { symbol: "V(jug)", label: "the jug" });
    expect(symbols(jug)).toContain("V(jug)");
    expect(symbols(jug)).not.toContain("V(liquor)");
  });

  it("says that the loss is not known where the solubility is not", () => {
    const plan = washPlan({ ...request, targetResidue: "1 g", product: { formula: "LiClO2", temperature: "20 °C" } });
    expect(plan.productLost).toBeUndefined();
    expect(plan.warnings[0]).toMatch(/^product lost to washing unknown: /);
  });
});

describe("what dissolves where one of its ions is there", () => {
  // Ksp = 1e-20 at 1 mol/L of the other ion: s = Ksp; of PbI2 in lead, 4 s² = Ksp; in iodide, s = Ksp. A difference of totals
  // would lose all of it in sixteen digits.
  it.each([
    ["AgI", "Ag+", 1e-20],
    ["AgI", "I-", 1e-20],
    ["PbI2", "Pb^2+", Math.sqrt(1e-20 / 4)],
    ["PbI2", "I-", 1e-20],
  ] as const)("%s beside 1 mol/L of %s", (solid, ion, expected) => {
    const { concentration } = molarSolubility({
      solid,
      ksp: "1e-20",
      commonIons: [{ ion, concentration: "1 mol/L" }],
    });
    expect(concentration.in("mol/L").toNumber() / expected).toBeCloseTo(1, 9);
  });
});

describe("a pair of salts", () => {
  const swap = (cold: "0 °C" | "10 °C", own = {}) =>
    fractionalCrystallization({
      wanted: "KNO3",
      other: "NaCl",
      from: [
        { formula: "NaNO3", mass: "190 g" },
        { formula: "KCl", mass: "150 g" },
      ],
      water: "200 g",
      hot: "100 °C",
      cold,
      ...own,
    });

  it("warns of the water that a hydrate takes, and only then: common salt has two below 0.1 °C", () => {
    expect(swap("0 °C").warnings).toEqual([
      "NaCl precipitates as NaCl·2H2O: its mass is given without the crystal water, which the liquor loses",
    ]);
    expect(swap("10 °C").warnings).toEqual([]);
  });

  it("counts with the caller's own figures: 203.4 g less 40 g in 100 g of water", () => {
    const own = facts({
      source: "studio",
      solubilities: [
        {
          formula: "KNO3",
          points: [
            ["10 °C", "40 g"],
            ["100 °C", "245 g"],
          ],
        },
      ],
    });
    expect(swap("10 °C", { facts: own }).crop.in("g").toNumber()).toBeCloseTo(203.43 - 2 * 40, 0);
    // 21 g as the table prints it
    expect(swap("10 °C").crop.in("g").toNumber()).toBeGreaterThan(155);
  });
});

describe("the axis of grams", () => {
  it("ends at a mark above the largest figure, with four to eight marks of 1, 2 or 5 times a power of ten", () => {
    for (const formula of ["NaCl", "KNO3", "CaSO4", "KClO3", "Ba(OH)2", "AgNO3"]) {
      const svg = solubilityDiagram({ formulas: [formula] });
      const marks = [...svg.matchAll(/<text x="54" y="([\d.]+)" text-anchor="end">([\d.]+)</g)].map(
        ([, y, text]) => [Number(y), Number(text)] as const,
      );
      const step = marks[1]![1] - marks[0]![1];
      expect([1, 2, 5], formula).toContain(
        Math.round((step / 10 ** Math.floor(Math.log10(step * 1.0001))) * 1e6) / 1e6,
      );
      // the frame begins 34 px from the top, and the text of a mark stands 4 px lower
      expect(marks.at(-1)![0], formula).toBeCloseTo(38, 1);
      expect(marks.length, formula).toBeGreaterThanOrEqual(4);
      expect(marks.length, formula).toBeLessThanOrEqual(9);
    }
  });
});
