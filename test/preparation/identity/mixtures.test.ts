// Samples of two parts. Losses and acid by hand: CaCO3 43.97 % and 19.98 mmol/g, MgCO3 52.20 % and 23.72 mmol/g, CaO 35.66 mmol/g,
// gypsum 20.93 %, malachite 28.05 %, azurite 30.80 % (atomic weights).
import { identifyByMassLoss } from "preparative";
import { describe, expect, it } from "vitest";

const percent = (q: { in(unit: string): { toNumber(): number } }): number => q.in("%").toNumber();

describe("a sample that is no single solid", () => {
  // 2.0000 g lose 0.8182 g: 40.91 %. 40.91/43.97 = 93.04 %. The fire is constant to 0.2 % of 1.18 g: u(loss) = 0.068 points, u(share) 0.155.
  it("is marble with so much that loses nothing, with the uncertainty of it", () => {
    const { verdict, mixtures, next } = identifyByMassLoss({
      before: "2.0000 g",
      after: "1.1818 g",
      candidates: ["CaCO3"],
    });
    expect(verdict).toBe("none fits");
    expect(mixtures.map(({ kind }) => kind)).toEqual([
      "with something inert",
      "fired in part already",
      "fire not done yet",
    ]);
    expect(mixtures.length, "rows to test").toBeGreaterThan(0);
    for (const { share } of mixtures) {
      expect(percent(share)).toBeCloseTo(93.04, 1);
      expect(share.standardUncertainty!.toNumber()).toBeCloseTo(0.155, 2);
    }
    expect(next).toMatch(/ignite again/);
    expect(next).toMatch(/titrate with acid/);
  });

  // Of a gram 0.90 g chalk and 0.10 g sand: 39.57 % and 17.98 mmol. 0.90 g chalk and 0.10 g lime: 39.57 % and 21.55 mmol.
  it.each([
    ["17.98 ± 0.05 mmol/g", "with something inert"],
    ["21.55 ± 0.05 mmol/g", "fired in part already"],
    ["19.98 ± 0.05 mmol/g", "fire not done yet"],
  ] as const)("is told by the acid it takes: %s", (acidPerGram, kind) => {
    const { mixtures } = identifyByMassLoss({
      before: "2.0000 g",
      after: "1.2086 g",
      acidPerGram,
      candidates: ["CaCO3"],
    });
    expect(mixtures.map((one) => one.kind)).toEqual([kind]);
    expect(percent(mixtures[0]!.share)).toBeCloseTo(90, 0);
    expect(mixtures[0]!.off!).toBeLessThan(1);
  });

  // 60 % CaCO3 and 40 % MgCO3: 26.38 + 20.88 = 47.26 %; 11.99 + 9.49 = 21.48 mmol
  it("is two carbonates, from loss and acid together, surer than from one", () => {
    const loss = { before: "2.0000 g", after: "1.0548 g", candidates: ["CaCO3", "MgCO3"] } as const;
    const [alone] = identifyByMassLoss(loss).mixtures;
    const [both] = identifyByMassLoss({ ...loss, acidPerGram: "21.48 ± 0.02 mmol/g" }).mixtures;
    for (const one of [alone!, both!]) {
      expect(one.kind).toBe("two solids");
      expect(one.formulas).toEqual(["CaCO₃", "MgCO₃"]);
      expect(Math.abs(percent(one.share) - 60)).toBeLessThan(1);
    }
    expect(both!.share.standardUncertainty!.lessThan(alone!.share.standardUncertainty!)).toBe(true);
  });

  it.each(["1.1818 g", "1.3000 g", "1.5000 g", "1.0548 g"] as const)(
    "stands with the likeliest first: %s left of 2 g",
    (after) => {
      const { mixtures } = identifyByMassLoss({
        before: "2.0000 g",
        after,
        candidates: ["CaSO4·2H2O", "CaCO3", "MgCO3"],
      });
      const likelihoods = mixtures.map(({ likelihood }) => likelihood);
      expect(likelihoods.length).toBeGreaterThan(1);
      expect(likelihoods).toEqual([...likelihoods].sort((a, b) => b - a));
    },
  );

  it("is no mixture where loss and acid contradict each other", () => {
    const { mixtures } = identifyByMassLoss({
      before: "2.0000 g",
      after: "1.0548 g",
      acidPerGram: "5.0 ± 0.1 mmol/g",
      candidates: ["CaCO3", "MgCO3"],
    });
    expect(mixtures).toEqual([]);
  });

  it("is no mixture where one solid fits", () => {
    const { verdict, mixtures } = identifyByMassLoss({ before: "2.0000 g", after: "1.1207 g", candidates: ["CaCO3"] });
    expect(verdict).toBe("identified");
    expect(mixtures).toEqual([]);
  });

  it("has likelihoods that sum to one", () => {
    const { mixtures } = identifyByMassLoss({ before: "2.0000 g", after: "1.1818 g", product: "CaCO3" });
    expect(mixtures.reduce((sum, { likelihood }) => sum + likelihood, 0)).toBeCloseTo(1, 9);
  });

  // The share must come back for every composition: loss and acid mix by mass.
  it("gives back every share that was mixed", () => {
    for (const share of [0.1, 0.25, 0.4, 0.55, 0.7, 0.9]) {
      const loss = 0.4397 * share + 0.522 * (1 - share);
      const acid = 19.983 * share + 23.721 * (1 - share);
      const [first] = identifyByMassLoss({
        before: "10.0000 g",
        after: `${(10 * (1 - loss)).toFixed(4)} g` as "1 g",
        acidPerGram: `${acid.toFixed(3)} ± 0.010 mmol/g` as "1 mmol/g",
        candidates: ["CaCO3", "MgCO3"],
      }).mixtures.filter(({ kind }) => kind === "two solids");
      expect(Math.abs(percent(first!.share) / 100 - share)).toBeLessThan(0.01);
    }
  });
});

describe("drying before an ignition", () => {
  // Gypsum goes to plaster between 100 and 150 °C; blue vitriol loses water from 30 °C on in dry air, and at 63 °C (from memory).
  it.each([["CaSO4·2H2O"], ["CuSO4·5H2O"], ["Na2CO3·10H2O"]])("of %s never takes it to 100 °C", (formula) => {
    const { next, verdict } = identifyByMassLoss({ before: "1.000 g", after: "0.300 g", candidates: [formula] });
    expect(verdict).toBe("none fits");
    expect(next).not.toMatch(/100|105/);
    expect(next).toMatch(/dry in air/);
  });

  // Limits of the bench (memory): blue vitriol 35 °C, borax 25 °C (crystals dry in the air of a room), basic zinc carbonate 100 °C, chalk 110 °C.
  it.each([
    [["CuSO4·5H2O", "Na2B4O7·10H2O"], "25 °C", "Na₂B₄O₇·10H₂O"],
    [["Na2B4O7·10H2O", "CuSO4·5H2O"], "25 °C", "Na₂B₄O₇·10H₂O"],
    [["CaCO3", "CuSO4·5H2O", "Na2B4O7·10H2O"], "25 °C", "Na₂B₄O₇·10H₂O"],
    // alike: the one nearer to what was found, 28.4 and 31.9 % left of them (NiO, CuO)
    [["CuSO4·5H2O", "NiSO4·6H2O"], "35 °C", "NiSO₄·6H₂O"],
    [["CaCO3", "Zn5(OH)6(CO3)2"], "100 °C", "Zn₅(OH)₆(CO₃)₂"],
  ])("of %j is as warm as the weakest of them bears", (candidates, most, weakest) => {
    const { next } = identifyByMassLoss({ before: "1.000 g", after: "0.100 g", candidates });
    expect(next).toContain(
      `dry in air, or no warmer than ${most}, to constant mass first: more would change ${weakest}`,
    );
  });

  it("of chalk may", () => {
    expect(identifyByMassLoss({ before: "1.000 g", after: "0.500 g", candidates: ["CaCO3"] }).next).toMatch(/105 °C/);
  });
});
