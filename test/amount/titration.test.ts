import { describe, expect, test } from "vitest";
import {
  backTitrate,
  measuredVolume,
  replicateStatistics,
  standardise,
  type TitrationRequest,
  titrate,
} from "../../src/amount";
import { attempt } from "../../src/foundation/error";
import { explain, uncertaintyBudget } from "../../src/quantity";

describe("replicates", () => {
  // JCGM 100:2008, 4.2: mean, s(q) = sqrt(sum of squares/(n-1)), u = s/√n; figures by hand.
  test("give mean, standard deviation and the uncertainty of the mean", () => {
    const r = replicateStatistics(["24.10 mL", "24.15 mL", "24.20 mL"]);
    expect(r.mean.in("mL").toString()).toBe("24.15");
    expect(r.standardDeviation!.in("mL").toNumber()).toBeCloseTo(0.05, 12);
    expect(r.mean.standardUncertainty!.toNumber()).toBeCloseTo(0.05 / Math.sqrt(3), 12);
    expect(r.concordant).toBe(true);
  });

  test("tell an outlier and leave it in", () => {
    const r = replicateStatistics(["24.10 mL", "24.15 mL", "24.20 mL", "25.40 mL"]);
    expect(r.suspect!.outlier).toBe(true);
    expect(r.suspect!.value.in("mL").toString()).toBe("25.4");
    expect(r.concordant).toBe(false);
    expect(r.mean.in("mL").toNumber()).toBeCloseTo(24.4625, 10);
  });

  test("do not call a spread an outlier", () => {
    expect(replicateStatistics(["24.10 mL", "24.15 mL", "24.25 mL"]).suspect!.outlier).toBe(false);
  });

  test("of one or of equals have no suspect", () => {
    expect(replicateStatistics(["24.10 mL"]).suspect).toBeUndefined();
    expect(replicateStatistics(["24.10 mL", "24.10 mL", "24.10 mL"]).suspect).toBeUndefined();
  });

  test("count what is common to all readings once, not divided by their number", () => {
    const burette = { with: "burette", class: "A", size: "50 mL" } as const;
    const titres = (["24.10 mL", "24.10 mL", "24.10 mL"] as const).map((v) => measuredVolume(v, burette));
    expect(replicateStatistics(titres).mean.standardUncertainty!.toNumber()).toBeCloseTo(0.05 / Math.sqrt(3), 9);
  });

  test.each([
    [[], {}, "amount.readings"],
    [["1 mL", "1 g"], {}, "quantity.wrong-dimension"],
    [["1 mL", "2 mL"], { level: 1 }, "amount.outside-range"],
  ])("%o with %o is refused with %s", (list, options, code) => {
    const outcome = attempt(() => replicateStatistics(list, options));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
  });
});

describe("titration", () => {
  const soda: TitrationRequest = {
    equation: "Na2CO3 + 2 HCl -> 2 NaCl + CO2 + H2O",
    titrant: { strength: "0.1000 mol/L", of: "HCl" },
    titre: ["25.05 mL", "25.00 mL", "25.10 mL"],
    analyte: "Na2CO3",
    sample: "0.1500 g",
  };

  test("reads the proportion from the equation", () => {
    const result = titrate(soda);
    expect(result.amount.in("mmol").toNumber()).toBeCloseTo(1.2525, 10);
    expect(result.massFraction!.in("%").toNumber()).toBeCloseTo((1.2525 * 105.988) / 1.5, 2);
    expect(result.warnings).toEqual([]);
  });

  test("takes a blank off", () => {
    const result = titrate({ ...soda, blank: "0.05 mL" });
    expect(result.titre.in("mL").toString()).toBe("25");
  });

  test("takes the proportion as given, and agrees with the equation", () => {
    const { equation: _, sample: __, ...rest } = soda;
    const byEquation = titrate(soda).amount.in("mol").toString();
    for (const titrantPerAnalyte of [2, "2", 2n])
      expect(
        titrate({ ...rest, titrantPerAnalyte })
          .amount.in("mol")
          .toString(),
      ).toBe(byEquation);
    expect(
      titrate({ ...rest, titrantPerAnalyte: "1" })
        .amount.in("mol")
        .toString(),
    ).not.toBe(byEquation);
  });

  test("warns of discordant titres and of an outlier", () => {
    const result = titrate({ ...soda, titre: ["25.00 mL", "25.05 mL", "25.10 mL", "26.50 mL"] });
    expect(result.warnings).toHaveLength(2);
    expect(result.warnings[1]).toContain("Grubbs");
  });

  test("explains itself from titre to mass fraction", () => {
    const rules = explain(titrate(soda).massFraction!).steps.map((step) => step.rule);
    expect(rules).toContain("amount = concentration × volume");
    expect(rules.at(-1)).toBe("mass fraction = mass of analyte / mass of sample");
  });

  test.each([
    [{ titrant: { strength: "0.1 mol/L" }, titre: "20 mL" }, "amount.missing-input"],
    [{ titrant: { strength: "0.1 mol/L" }, titre: "0 mL", titrantPerAnalyte: 1 }, "amount.not-positive"],
    [{ titrant: { strength: "0 mol/L" }, titre: "20 mL", titrantPerAnalyte: 1 }, "amount.not-positive"],
    [{ titrant: { strength: "0.1 mol/L" }, titre: "20 mL", titrantPerAnalyte: 0 }, "amount.not-positive"],
    [{ titrant: { strength: "0.1 mol/L" }, titre: "1 mL", blank: "2 mL", titrantPerAnalyte: 1 }, "amount.not-possible"],
    [{ titrant: { strength: "0.1 mol/L" }, titre: [], titrantPerAnalyte: 1 }, "amount.readings"],
    [{ ...soda, analyte: "KCl" }, "amount.not-in-equation"],
    [{ titrant: { strength: "5 %", of: "HCl" }, titre: "20 mL", titrantPerAnalyte: 1 }, "amount.ambiguous-percent"],
  ] as const)("%o is refused with %s", (request, code) => {
    const outcome = attempt(() => titrate(request as TitrationRequest));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
  });
});

// Hand arithmetic: 25.05 mmol of acid are 12.525 mmol of Na2CO3, 1.3275 g; no 0.2275 g of sample holds that.
describe("a mass fraction above the whole", () => {
  const soda = (sample: string): TitrationRequest => ({
    equation: "Na2CO3 + 2 HCl -> 2 NaCl + CO2 + H2O",
    titrant: { strength: "1.000 mol/L", of: "HCl" },
    titre: "25.05 mL",
    analyte: "Na2CO3",
    sample: sample as "1 g",
  });

  test("is refused beyond doubt", () => {
    const outcome = attempt(() => titrate(soda("0.2275 g")));
    expect(outcome.ok ? "" : outcome.error.code).toBe("amount.fraction-above-one");
    const back = attempt(() =>
      backTitrate({
        reagent: { strength: "1.000 mol/L" },
        reagentVolume: "50.00 mL",
        titrant: { strength: "0.500 mol/L" },
        titre: "60.0 mL",
        titrantPerReagent: 1,
        reagentPerAnalyte: 2,
        analyte: "CaCO3",
        sample: "0.110 g",
      }),
    );
    expect(back.ok ? "" : back.error.code).toBe("amount.fraction-above-one");
  });

  test("is warned of within the doubt of an assay, or of its own uncertainty", () => {
    expect(titrate(soda("1.320 g")).warnings.join()).toContain("more than the whole");
    expect(titrate(soda("1.340 g")).warnings).toEqual([]);
    expect(titrate(soda("1.25 ± 0.05 g")).warnings.join()).toContain("more than the whole");
    expect(attempt(() => titrate(soda("1.25 ± 0.01 g"))).ok).toBe(false);
  });
});

// 12.525 mmol of Na2CO3·10H2O (286.14 g/mol) are 3.584 g of 5 g; 3CdSO4·8H2O is three of CdSO4.
test("a titration finds a hydrate by the salt that the equation writes", () => {
  const washing = titrate({
    equation: "Na2CO3 + 2 HCl -> 2 NaCl + CO2 + H2O",
    titrant: { strength: "1.000 mol/L", of: "HCl" },
    titre: "25.05 mL",
    analyte: "Na2CO3·10H2O",
    sample: "5.000 g",
  });
  expect(washing.massFraction!.in("%").toNumber()).toBeCloseTo((12.525 * 286.138) / 50, 2);
  const cadmium = titrate({
    equation: "CdSO4 + BaCl2 -> BaSO4 + CdCl2",
    titrant: { strength: "0.1 mol/L", of: "BaCl2·2H2O" },
    titre: "30 mL",
    analyte: "3CdSO4·8H2O",
  });
  expect(cadmium.amount.in("mmol").toString()).toBe("1");
  const other = attempt(() =>
    titrate({
      equation: "Na2CO3 + 2 HCl -> 2 NaCl + CO2 + H2O",
      titrant: { strength: "1 mol/L", of: "HCl" },
      titre: "25 mL",
      analyte: "K2CO3",
    }),
  );
  expect(other.ok ? "" : other.error.code).toBe("amount.not-in-equation");
});

describe("back titration", () => {
  const chalk = {
    reagent: { strength: "1.000 mol/L" },
    reagentVolume: "50.00 mL",
    titrant: { strength: "0.500 mol/L" },
    titrantPerReagent: 1,
    reagentPerAnalyte: 2,
    analyte: "CaCO3",
  } as const;

  test("by blank and by reagent volume agree", () => {
    const byReagent = backTitrate({ ...chalk, titre: "60.0 mL" });
    const byBlank = backTitrate({ ...chalk, titre: "60.0 mL", blank: "100.0 mL" });
    expect(byReagent.amount.in("mmol").toNumber()).toBeCloseTo(10, 12);
    expect(byBlank.amount.in("mmol").toNumber()).toBeCloseTo(10, 12);
  });

  test.each([
    [{ ...chalk, titre: "120 mL" }, "amount.not-possible"],
    [{ ...chalk, titre: "60 mL", blank: "50 mL" }, "amount.not-possible"],
    [{ ...chalk, titre: "60 mL", reagent: undefined }, "amount.missing-input"],
  ] as const)("%o is refused with %s", (request, code) => {
    const outcome = attempt(() => backTitrate(request));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
  });
});

describe("readings of the burette and titres that went wrong", () => {
  const one = { titrant: { strength: "0.1000 mol/L" }, titrantPerAnalyte: 1, sample: "25.00 mL" } as const;

  test("takes the difference of the readings, and shows it", () => {
    const { titre, concentration } = titrate({ ...one, titre: { initial: "1.20 mL", final: "25.60 mL" } });
    expect(titre.format()).toBe("24.40 mL");
    // 24.40 × 0.1000 / 25.00
    expect(concentration!.in("mol/L").toNumber()).toBeCloseTo(0.0976, 12);
    expect(String(explain(titre))).toContain("titre = reading after - reading before");
  });

  test("refuses readings the wrong way round", () => {
    expect(() => titrate({ ...one, titre: { initial: "25.60 mL", final: "1.20 mL" } })).toThrow(/before and .* after/);
  });

  test("leaves out what went wrong, and says so", () => {
    const { titre, warnings, replicates } = titrate({
      ...one,
      titre: ["24.40 mL", "24.45 mL", "25.90 mL"],
      leftOut: [{ titre: 3, because: "overshot" }],
    });
    expect(replicates.count).toBe(2);
    expect(titre.in("mL").toNumber()).toBeCloseTo(24.425, 12);
    expect(warnings).toEqual(["titre 3, 25.90 mL, does not count: overshot"]);
    expect(() => titrate({ ...one, titre: "24 mL", leftOut: [{ titre: 2, because: "x" }] })).toThrow(/no titre 2/);
    expect(() => titrate({ ...one, titre: "24 mL", leftOut: [{ titre: 1, because: "x" }] })).toThrow(/0 readings/);
  });
});

describe("standardisation", () => {
  const soda = { of: "HCl", standard: "Na2CO3", equation: "Na2CO3 + HCl -> NaCl + H2O + CO2" } as const;

  test("gives the strength of an acid from soda", () => {
    // by hand: 0.2650 g / 105.988 g/mol × 2 / 24.95 mL = 0.20042 mol/L
    const { concentration } = standardise({ ...soda, portions: [{ mass: "0.2650 g", titre: "24.95 mL" }] });
    expect(concentration.in("mol/L").toNumber()).toBeCloseTo(((0.265 / 105.988) * 2) / 0.02495, 5);
  });

  test("gives the strength of lye from potassium hydrogen phthalate", () => {
    // by hand: 0.8168 g / 204.22 g/mol / 40.00 mL = 0.0999900 mol/L
    const { concentration } = standardise({
      of: "NaOH",
      standard: "KHC8H4O4",
      titrantPerAnalyte: 1,
      portions: [{ mass: "0.8168 g", titre: "40.00 mL" }],
    });
    expect(concentration.in("mol/L").toNumber()).toBeCloseTo(0.09999, 5);
  });

  test("counts purity, blank and burette readings", () => {
    const found = standardise({
      ...soda,
      purity: "99.5 %",
      blank: "0.05 mL",
      portions: [{ mass: "0.1060 g", titre: { initial: "0.10 mL", final: "20.15 mL" } }],
    });
    expect(found.concentration.in("mol/L").toNumber()).toBeCloseTo((0.106 * 0.995 * 2) / 105.988 / 0.02, 6);
  });

  test("carries the scatter beside what the portions share", () => {
    const portions = [
      { mass: "0.1325(1) g", titre: "25.00(3) mL" },
      { mass: "0.1331(1) g", titre: "25.08(3) mL" },
      { mass: "0.1319(1) g", titre: "24.90(3) mL" },
    ] as const;
    const { concentration, replicates, warnings } = standardise({ ...soda, purity: "99.9(5) %", portions });
    const scatter = replicates.standardDeviation!.in("mol/L").toNumber() / Math.sqrt(3);
    const c = concentration.in("mol/L").toNumber();
    // mass 0.1/132.5, volume 0.03/25 of each portion, independent; purity shared
    const own = Math.hypot(0.1 / 132.5, 0.03 / 25) / Math.sqrt(3);
    const shared = 0.5 / 99.9;
    const expected = Math.hypot(scatter, c * own, c * shared);
    expect(concentration.standardUncertainty!.toNumber() / expected).toBeCloseTo(1, 2);
    expect(warnings).toEqual([]);
  });

  test("warns of portions that disagree", () => {
    const { warnings } = standardise({
      ...soda,
      portions: [
        { mass: "0.1325 g", titre: "25.00 mL" },
        { mass: "0.1325 g", titre: "24.80 mL" },
      ],
    });
    expect(warnings[0]).toMatch(/0\.80 % of their mean apart/);
  });

  test("goes on into a titration with its working and its doubt", () => {
    const { titrant } = standardise({
      ...soda,
      purity: "99.9(5) %",
      portions: [{ mass: "0.1325 g", titre: "25.00 mL" }],
    });
    const { concentration } = titrate({ titrant, titre: "24.00 mL", titrantPerAnalyte: 1, sample: "25.00 mL" });
    expect(uncertaintyBudget(concentration!).map((line) => line.input)).toContain("purity of Na₂CO₃");
  });

  test.each([
    [{ ...soda, portions: [] }, "amount.readings"],
    [{ of: "HCl", standard: "Na2CO3", portions: [{ mass: "1 g", titre: "1 mL" }] }, "amount.missing-input"],
    [{ ...soda, portions: [{ mass: "0 g", titre: "1 mL" }] }, "amount.not-positive"],
    [{ ...soda, blank: "2 mL", portions: [{ mass: "1 g", titre: "1 mL" }] }, "amount.not-possible"],
  ] as const)("refuses %j", (request, code) => {
    expect(() => standardise(request as never)).toThrow(expect.objectContaining({ code }));
  });
});
