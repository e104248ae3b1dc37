// What a composition says beside its pH: how sure it is by what was put in, what left as gas, and the working line by line.
import {
  aqueousComposition,
  attempt,
  type EndPoint,
  endPoints,
  explain,
  indicatorFor,
  pHOf,
  quantity,
  titrationCurve,
  uncertaintyBudget,
} from "preparative";
import { describe, expect, it } from "vitest";

describe("how sure a pH is", () => {
  // pH = -log10(c γ) of a strong acid: u(pH) = u(c) / (c ln 10), whatever γ, as long as γ hardly moves with c
  it.each([
    ["0.001", "0.00005"],
    ["0.001", "0.0001"],
    ["0.002", "0.0001"],
  ])("of hydrochloric acid of %s(%s) mol/L is that of its concentration", (moles, spread) => {
    const spreadOf = (amount: unknown): number =>
      aqueousComposition({
        water: "1 L",
        dissolved: [{ formula: "HCl", amount: amount as "1 mol" }],
      }).pH.standardUncertainty!.toNumber();
    // what the coefficients and constants add stands apart
    const own = spreadOf(`${moles} mol`);
    const whole = spreadOf(quantity({ value: moles, unit: "mol", standardUncertainty: spread }));
    expect(Math.sqrt(whole ** 2 - own ** 2) / (Number(spread) / Number(moles) / Math.LN10)).toBeCloseTo(1, 1);
  });

  it("away from 25 °C adds a tenth of a power of ten for the constants, as one input that is named", () => {
    const of = (temperature: "25 °C" | "40 °C") =>
      uncertaintyBudget(
        pHOf({ water: "1 L", dissolved: [{ formula: "CH3COOH", amount: "0.1 mol" }], temperature }),
      ).find(({ quantity: input }) => input.symbol === "Δlog K");
    expect(of("25 °C")).toBeUndefined();
    const away = of("40 °C")!;
    expect(away.input).toBe("constants away from 25 °C, all together");
    expect(away.standardUncertainty.toNumber()).toBe(0.1);
    // pH of a weak acid is half of its pKa and a constant: half a tenth
    expect(away.contribution.toNumber()).toBeCloseTo(0.05, 2);
  });

  it("grows with each ingredient that is uncertain, as the root of the squares", () => {
    const unsure = (of: "acid" | "salt" | "both" | "none"): number => {
      const of1 = (value: string, is: boolean) =>
        is ? quantity({ value, unit: "mol", standardUncertainty: "0.005" }) : quantity(`${value} mol`);
      const found = pHOf({
        water: "1 L",
        dissolved: [
          { formula: "CH3COOH", amount: of1("0.1", of === "acid" || of === "both") as never },
          { formula: "NaCH3COO", amount: of1("0.1", of === "salt" || of === "both") as never },
        ],
      });
      return found.standardUncertainty?.toNumber() ?? 0;
    };
    const own = unsure("none");
    // pH = pKa + log(salt / acid): 0.005 / 0.1 / ln 10 = 0.0217 for each, to a tenth for what the coefficients move
    for (const of of ["acid", "salt"] as const) {
      const added = Math.sqrt(unsure(of) ** 2 - own ** 2);
      expect(added).toBeGreaterThan(0.0195);
      expect(added).toBeLessThan(0.0239);
    }
    expect(Math.sqrt(unsure("both") ** 2 - own ** 2)).toBeCloseTo(0.0217 * Math.SQRT2, 2);
  });
});

describe("the working of a composition", () => {
  const soda = {
    water: "1 L",
    dissolved: [
      { formula: "NaHCO3", amount: "0.1 mol" },
      { formula: "HCl", amount: "0.01 mol" },
    ],
  } as const;

  it("names the gas that leaves, with its amount, and none where it stays", () => {
    // a tenth of the hydrogencarbonate meets acid, too little to bubble (0.033 mol/L at 1 bar); what is left gives off more as it airs
    const aired = aqueousComposition({ ...soda, carbonDioxide: "leaves" });
    const text = String(explain(aired));
    const [, amount] = /CO2 leaves: ([\d.]+) mol/.exec(text)!;
    expect(Number(amount)).toBeGreaterThan(0.0099);
    expect(Number(amount)).toBeLessThan(0.1);
    expect(String(explain(aqueousComposition(soda)))).not.toMatch(/CO2 leaves: \d/);
  });

  it("has every solid that stands, with its amount", () => {
    const chalk = aqueousComposition({
      water: "1 L",
      dissolved: [
        { formula: "CaCl2", amount: "0.1 mol" },
        { formula: "Na2CO3", amount: "0.1 mol" },
      ],
    });
    const text = String(explain(chalk));
    // all but what the solubility of chalk leaves, far under a thousandth
    expect(text).toMatch(/CaCO3[^\n]*0\.09[89]\d* mol|CaCO3[^\n]*0\.1(?:00)? mol/);
  });
});

describe("an indicator", () => {
  it("is chosen for an end point that a curve gave, and for no other", () => {
    const curve = titrationCurve({
      flask: { volume: "25 mL", dissolved: [{ formula: "CH3COOH", concentration: "0.1 mol/L" }] },
      burette: { formula: "NaOH", concentration: "0.1 mol/L" },
    });
    const [end] = endPoints(curve);
    expect(indicatorFor(end!).length).toBeGreaterThan(3);
    for (const wrong of [{}, { ...end }] as EndPoint[]) {
      const outcome = attempt(() => indicatorFor(wrong));
      expect(outcome.ok ? undefined : outcome.error.code).toBe("aqueous.bad-option");
    }
  });
});
