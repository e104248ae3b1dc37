import { describe, expect, test } from "vitest";
import { type Dilution, dilute, mixSolutions, mixToStrength } from "../../src/amount";
import { attempt } from "../../src/foundation/error";
import { explain } from "../../src/quantity";

describe("dilution", () => {
  test("gives whichever of the four is left out", () => {
    const whole = { from: "5 mol/L", take: "100 mL", to: "1 mol/L", makeUpTo: "500 mL" } as const;
    for (const key of ["from", "take", "to", "makeUpTo"] as const) {
      const plan = dilute({ ...whole, [key]: undefined });
      expect(plan.asked).toBe(key);
      expect(plan.answer.in(key === "from" || key === "to" ? "mol/L" : "mL").toNumber()).toBeCloseTo(
        Number(whole[key].split(" ")[0]),
        12,
      );
    }
  });

  test("adds water by mass, because volumes do not add up", () => {
    const plan = dilute({ of: "H2SO4", from: "96 % w/w", to: "30 % w/w", makeUpTo: "1000 g" });
    expect(plan.answer.in("g").toNumber()).toBeCloseTo(312.5, 9);
    expect(plan.water!.in("g").toNumber()).toBeCloseTo(687.5, 9);
    const byVolume = dilute({ of: "C2H5OH", from: "96 % v/v", to: "70 % v/v", makeUpTo: "1 L" });
    // 1 L less 729 mL is 271 mL, but the mixture shrinks: 297 g of water are needed
    expect(byVolume.answer.in("mL").toNumber()).toBeCloseTo(729.17, 2);
    expect(byVolume.water!.in("g").toNumber()).toBeGreaterThan(290);
  });

  test("joins a strength per mass to one per volume by the density", () => {
    const plan = dilute({ of: "HCl", from: "37 % w/w", to: "1 mol/L", makeUpTo: "500 mL" });
    expect(plan.answer.in("mL").toNumber()).toBeCloseTo(41.62, 2);
    const given = dilute({ of: "HCl", from: "37 % w/w", to: "1 mol/L", makeUpTo: "500 mL", fromDensity: "1.19 g/mL" });
    expect(given.answer.in("mL").toNumber()).toBeCloseTo((500 * 36.458) / (0.37 * 1190), 2);
  });

  test("says that making up is not adding, by keeping the solute", () => {
    const steps = explain(dilute({ from: "5 mol/L", take: "100 mL", makeUpTo: "500 mL" }).answer).steps;
    expect(steps.at(-1)!.rule).toContain("solute is conserved");
  });

  test("keeps normality against normality without its reaction, and says what it counts", () => {
    const plan = dilute({ from: "36 N", to: "2 N", makeUpTo: "1 L" });
    expect(plan.answer.in("mL").toNumber()).toBeCloseTo(55.556, 3);
    expect(plan.water).toBeUndefined();
    const to = dilute({ from: "36 N", take: "10 mL", makeUpTo: "1 L" }).answer;
    expect(to.in("mol/L").toString()).toBe("0.36");
    expect(to.symbol).toBe("N2");
    const mixed = attempt(() => dilute({ of: "H2SO4", from: "36 N", to: "2 mol/L", makeUpTo: "1 L" }));
    expect(mixed.ok ? "" : mixed.error.code).toBe("amount.missing-equivalents");
  });

  test.each([
    ["all four", { from: "5 mol/L", take: "1 L", to: "1 mol/L", makeUpTo: "5 L" }, "amount.too-many-inputs"],
    ["two", { from: "5 mol/L", take: "1 L" }, "amount.missing-input"],
    ["stronger than the stock", { from: "1 mol/L", to: "2 mol/L", makeUpTo: "1 L" }, "amount.not-possible"],
    ["less than was taken", { from: "1 mol/L", take: "2 L", makeUpTo: "1 L" }, "amount.not-possible"],
    ["nothing in it", { from: "1 mol/L", to: "0 mol/L", makeUpTo: "1 L" }, "amount.not-positive"],
    ["no solute where it is needed", { from: "1 mol/L", to: "5 g/L", makeUpTo: "1 L" }, "amount.missing-formula"],
    ["no density where it is needed", { from: "37 % w/w", to: "5 g/L", makeUpTo: "1 L" }, "amount.missing-density"],
    ["no volume at all", { from: "1 mol/L", to: "0.5 mol/L", makeUpTo: "0 L" }, "amount.not-positive"],
    ["a length", { from: "1 mol/L", to: "0.5 mol/L", makeUpTo: "1 m" }, "quantity.wrong-dimension"],
    ["percent of what", { from: "37 %", to: "0.5 mol/L", makeUpTo: "1 L", of: "HCl" }, "amount.ambiguous-percent"],
  ])("refuses %s", (_, dilution, code) => {
    const outcome = attempt(() => dilute(dilution as Dilution));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
  });
});

describe("mixing", () => {
  test("keeps mass and solute", () => {
    const mixture = mixSolutions(
      [
        { strength: "30 % w/w", portion: "200 g" },
        { strength: "10 % w/w", portion: "300 g" },
      ],
      { of: "NaOH" },
    );
    expect(mixture.mass!.in("g").toString()).toBe("500");
    expect(mixture.massFraction!.in("%").toString()).toBe("18");
    const back = mixture.concentration!.times(mixture.volume!).in("mol").toNumber();
    expect(back).toBeCloseTo(90 / 39.997, 3);
  });

  // Half a litre of each: the usual lecture experiment, about 970 mL for 96 % spirit (common practice, no source).
  test("half a litre of spirit and half a litre of water are not a litre", () => {
    const mixture = mixSolutions(
      [
        { strength: "96 % v/v", portion: "500 mL" },
        { strength: "0 % w/w", portion: "500 mL" },
      ],
      { of: "C2H5OH" },
    );
    expect(Math.abs(mixture.volume!.in("mL").toNumber() - 970)).toBeLessThan(5);
  });

  test("takes volumes to add up only when the request gives it, and says so", () => {
    const parts = [
      { strength: "1 mol/L", portion: "500 mL" },
      { strength: "3 mol/L", portion: "500 mL" },
    ] as const;
    const refused = attempt(() => mixSolutions(parts));
    expect(refused.ok ? "" : refused.error.code).toBe("amount.missing-density");
    const mixture = mixSolutions(parts, { additiveVolumes: true });
    expect(mixture.concentration!.in("mol/L").toString()).toBe("2");
    expect(explain(mixture.concentration!).assumptions.join()).toContain("volumes add up");
    expect(mixture.mass).toBeUndefined();
  });

  test("adds moles to grams, and equivalents to equivalents", () => {
    const grams = { strength: "259.81 g/L", portion: "1 L" } as const;
    const moles = { strength: "3 mol/L", portion: "1 L" } as const;
    for (const parts of [
      [grams, moles],
      [moles, grams],
    ]) {
      const { concentration } = mixSolutions(parts, { of: "CsI", additiveVolumes: true });
      expect(concentration!.in("mol/L").toNumber()).toBeCloseTo(2, 4);
    }
    const normal = mixSolutions(
      [
        { strength: "6 N", portion: "1 L" },
        { strength: "2 N", portion: "1 L" },
      ],
      { additiveVolumes: true },
    );
    expect(normal.concentration!.in("mol/L").toString()).toBe("4");
    const unlike = attempt(() =>
      mixSolutions([moles, { strength: "2 N", portion: "1 L" }], { of: "CsI", additiveVolumes: true }),
    );
    expect(unlike.ok ? "" : unlike.error.code).toBe("amount.missing-equivalents");
  });

  test("refuses a mixture of one", () => {
    const outcome = attempt(() => mixSolutions([{ strength: "1 mol/L", portion: "1 L" }]));
    expect(outcome.ok ? "" : outcome.error.code).toBe("amount.missing-input");
  });
});

describe("aiming between two strengths", () => {
  test("finds masses that mix to the wanted strength", () => {
    const { strong, weak } = mixToStrength({
      of: "HCl",
      strong: "37 % w/w",
      weak: "2 mol/L",
      wanted: "20 % w/w",
      mass: "1 kg",
    });
    const mixture = mixSolutions(
      [
        { strength: "37 % w/w", portion: strong },
        { strength: "2 mol/L", portion: weak },
      ],
      { of: "HCl" },
    );
    expect(mixture.massFraction!.in("%").toNumber()).toBeCloseTo(20, 9);
    expect(mixture.mass!.in("g").toNumber()).toBeCloseTo(1000, 9);
  });

  test("takes a volume in all, and tells the volumes of both, which do not add up to it", () => {
    const aim = { of: "H2SO4", strong: "96 % w/w", weak: "0 % w/w", wanted: "50 % w/w" } as const;
    const { strong, weak, volumeOfStrong, volumeOfWeak } = mixToStrength({ ...aim, mass: "1 L" });
    // 50 % acid weighs 1.395 g/mL (memory of handbooks)
    expect(strong.plus(weak).in("g").toNumber()).toBeCloseTo(1395, 0);
    expect(volumeOfStrong!.plus(volumeOfWeak!).in("mL").toNumber()).toBeGreaterThan(1050);
    expect(mixToStrength({ ...aim, wanted: "0 % w/w", mass: "1 kg" }).volumeOfStrong).toBeUndefined();
  });

  test.each([
    [
      "the two the wrong way round",
      { strong: "10 % w/w", weak: "40 % w/w", wanted: "20 % w/w", mass: "1 kg" },
      "amount.not-possible",
    ],
    [
      "a volume of unknown density",
      { strong: "40 % w/w", weak: "10 % w/w", wanted: "20 % w/w", mass: "1 L" },
      "amount.missing-density",
    ],
  ] as const)("refuses %s, with a hint", (_, aim, code) => {
    const outcome = attempt(() => mixToStrength(aim));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
    expect(outcome.ok ? undefined : outcome.error.hint).toMatch(/swap them|give mass in g/);
  });

  test.each(["5 % w/w", "50 % w/w"] as const)("refuses %s, which does not lie between", (wanted) => {
    const outcome = attempt(() => mixToStrength({ strong: "40 % w/w", weak: "10 % w/w", wanted, mass: "1 kg" }));
    expect(outcome.ok ? "" : outcome.error.code).toBe("amount.not-possible");
  });
});
