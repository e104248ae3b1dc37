// Two solids together in the verdict of a run. Figures are arithmetic on molar masses (IUPAC weights, two decimals): a mixture of known
// shares, the loss and the metal it has, the mass that so much of the metal gives.
import { evaluateRun, type Finding, type Observations, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const MALACHITE = 221.11;
const HYDROXIDE = 97.56;
const OXIDE = 79.55;
/** 100 g of CuSO4·5H2O, 249.68 g/mol. */
const COPPER = 100 / 249.68;

const plan = planPreparation({
  equation: "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
  product: "Cu2(OH)2CO3",
  materials: [
    { name: "blue vitriol", form: "CuSO4·5H2O" },
    { name: "soda", form: "Na2CO3", excess: "10 %" },
  ],
  scale: { material: "blue vitriol", portion: "100.0 g" },
});

/** Copper in a gram of malachite and hydroxide together, share of malachite by mass. */
const copperIn = (share: number): number => (2 * share) / MALACHITE + (1 - share) / HYDROXIDE;
const massOf = (share: number, part: number): number => (part * COPPER) / copperIn(share);
const g = (mass: number, decimals = 1) => `${mass.toFixed(decimals)} g` as "1 g";

const findings = (observations: Observations, code: Finding["code"] = "mixture-fits"): Finding[] =>
  evaluateRun(plan, observations).verdict.filter((one) => one.code === code);

describe("a mixture of two in a verdict", () => {
  // Half of each at 96 % of the copper, dry: ignition leaves the oxide of all its copper.
  const half = massOf(0.5, 0.96);
  const ignition = { before: "2.000 g", after: g(2 * copperIn(0.5) * OXIDE, 3) } as const;
  const seen: Observations = { dried: [g(half + 0.05), g(half)], ignition };

  it("is named first where ignition finds the share, no single solid fits and the mass agrees", () => {
    const [first] = evaluateRun(plan, seen).verdict;
    expect(first!.code).toBe("mixture-fits");
    expect(first!.text).toContain("of Cu₂(OH)₂CO₃ with Cu(OH)₂");
    expect(first!.figure!.in("%").toNumber()).toBeCloseTo(96, 0);
    expect(first!.mass!.in("g").toNumber()).toBeCloseTo(half / 2, 0);
  });

  it("is not named where the mass contradicts the share that ignition finds", () => {
    const much = massOf(0.5, 1.1);
    expect(findings({ dried: [g(much + 0.05), g(much)], ignition })).toEqual([]);
  });

  it("is not named where one solid fits all the figures", () => {
    const pure = massOf(1, 0.97);
    const after = g((2 * 2 * OXIDE) / MALACHITE, 3);
    expect(findings({ dried: [g(pure), g(pure)], ignition: { before: "2.000 g", after } })).toEqual([]);
    expect(findings({ dried: g(pure) })).toEqual([]);
  });

  it("is named by a titration of the copper, with its share", () => {
    // Hydroxide has 221.11 / (2 × 97.56) of the copper of malachite: 1.133.
    const assay = 0.5 + (0.5 * MALACHITE) / (2 * HYDROXIDE);
    const [first] = findings({ dried: g(half), assay: `${(100 * assay).toFixed(2)} ± 0.3 %` as "100 %" });
    expect(first!.text).toMatch(/find the same in 50 % of Cu₂\(OH\)₂CO₃ with Cu\(OH\)₂/);
  });

  it("is a range by the mass alone, behind what fits singly", () => {
    // Zinc: 5 ZnCO3 weigh 1.142 times their basic carbonate. At 102 %, 90 % of the carbonate alone is 102.8 %: not enough for it.
    const zinc = planPreparation({
      equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
      product: "Zn5(CO3)2(OH)6",
      materials: [
        { name: "zinc sulfate", form: "ZnSO4·7H2O" },
        { name: "soda", form: "Na2CO3", excess: "10 %" },
      ],
      scale: { material: "zinc sulfate", portion: "200.0 g" },
      handlingLoss: "5 %",
    });
    const theory = zinc.product.theoreticalYield.in("g").toNumber();
    const { verdict } = evaluateRun(zinc, { dried: g(1.04 * theory) });
    const [mixture] = verdict.filter(({ code }) => code === "mixture-fits");
    // All of the zinc: share s of ZnCO3 by mass with 1.04 (1 - s + s / 1.142) = 1, s = 31 %.
    expect(mixture!.text).toMatch(/with 31 to \d+ % of ZnCO₃ would give/);
  });
});
