// Problems of an open textbook with the constants it gives, answers to the digits it prints: OpenStax, Chemistry 2e (2019),
// sections 14.1 to 14.7 and 15.1 to 15.3, examples and "check your learning"; figures as remembered from the book. The book
// calculates with concentrations in the place of activities and names which reactions count.
import { describe, expect, it } from "vitest";
import { type AqueousRequest, aqueousComposition, type GivenConstants, titrationCurve } from "../../src";

type Amounts = Readonly<Record<string, number>>;

const dissolved = (amounts: Amounts): AqueousRequest["dissolved"] =>
  Object.entries(amounts).map(([formula, moles]) => ({ formula, amount: `${moles} mol` as const }));

const litre = (amounts: Amounts, constants: GivenConstants = {}) =>
  aqueousComposition({
    water: "1 L",
    dissolved: dissolved(amounts),
    constants: { only: true, pKw: 14, ...constants },
    activity: "ideal",
  });

const p = (k: number): number => -Math.log10(k);
const pH = (...request: Parameters<typeof litre>): number => litre(...request).pH.value.toNumber();
const free = (formula: string, ...request: Parameters<typeof litre>): number =>
  litre(...request)
    .species.find((one) => one.formula === formula)!
    .molality.value.toNumber();
const filtrate = (formula: string, ...request: Parameters<typeof litre>): number =>
  litre(...request)
    .filtrate.find((one) => one.formula === formula)!
    .concentration.value.toNumber();

describe("pH of acids, bases and salts (chapter 14)", () => {
  it.each([
    ["HCl 1.2e-3", { HCl: 1.2e-3 }, {}, 2, "2.92"],
    ["KOH 0.0125", { KOH: 0.0125 }, {}, 3, "12.097"],
    ["formic acid 0.534, Ka 1.8e-4", { HCOOH: 0.534 }, { pKa: { HCOOH: [p(1.8e-4)] } }, 2, "2.01"],
    ["hydrogensulfate 0.50, Ka 1.2e-2", { NaHSO4: 0.5 }, { pKa: { "HSO4-": [p(1.2e-2)] } }, 2, "1.14"],
    ["trimethylamine 0.25, Kb 6.3e-5", { C3H9N: 0.25 }, { pKa: { "C3H10N+": [14 - p(6.3e-5)] } }, 2, "11.60"],
    ["ammonium nitrate 0.100, Ka 5.6e-10", { NH4NO3: 0.1 }, { pKa: { "NH4+": [p(5.6e-10)] } }, 2, "5.13"],
    [
      "anilinium chloride 0.233, Ka 2.3e-5",
      { "C6H8N+": 0.233, "Cl-": 0.233 },
      { pKa: { "C6H8N+": [p(2.3e-5)] } },
      2,
      "2.64",
    ],
    ["carbonic acid 0.033, Ka 4.3e-7", { CO2: 0.033 }, { pKa: { H2CO3: [p(4.3e-7), p(4.7e-11)] } }, 2, "3.92"],
    ["buffer 0.10 + 0.10, Ka 1.8e-5", { CH3COOH: 0.1, CH3COONa: 0.1 }, { pKa: { CH3COOH: [p(1.8e-5)] } }, 2, "4.74"],
    [
      "the same, 1.0 mL of 0.10 M NaOH in 100 mL",
      { CH3COOH: 0.1 / 1.01, CH3COONa: 0.1 / 1.01, NaOH: 0.001 / 1.01 },
      { pKa: { CH3COOH: [p(1.8e-5)] } },
      2,
      "4.75",
    ],
  ] as const)("%s mol/L: pH", (_, amounts, constants, decimals, printed) => {
    expect(pH(amounts, constants as GivenConstants).toFixed(decimals)).toBe(printed);
  });

  it("acetic acid 0.100 mol/L is ionised to 1.3 %, ammonia 0.0325 mol/L (Kb 1.76e-5) to 2.33 %", () => {
    expect((100 * free("CH3COO-", { CH3COOH: 0.1 }, { pKa: { CH3COOH: [p(1.8e-5)] } })) / 0.1).toBeCloseTo(1.3, 1);
    const ammonium = free("NH4+", { NH3: 0.0325 }, { pKa: { "NH4+": [14 - p(1.76e-5)] } });
    expect(((100 * ammonium) / 0.0325).toPrecision(2)).toBe("2.3");
  });

  it("carbonic acid 0.033 mol/L: carbonate is Ka2, 4.7e-11", () => {
    const carbonate = free("CO3^2-", { CO2: 0.033 }, { pKa: { H2CO3: [p(4.3e-7), p(4.7e-11)] } });
    expect(carbonate.toPrecision(2)).toBe("4.7e-11");
  });

  const titrated = (acid: string, constants: GivenConstants) =>
    titrationCurve({
      flask: { volume: "25.00 mL", dissolved: [{ formula: acid, concentration: "0.100 mol/L" }] },
      burette: { formula: "NaOH", concentration: "0.100 mol/L" },
      constants: { only: true, pKw: 14, ...constants },
      activity: "ideal",
    });

  it.each([
    ["12.5 mL", "4.75"],
    ["25.0 mL", "8.72"],
    ["37.5 mL", "12.30"],
  ] as const)("25.00 mL of 0.100 M acetic acid (Ka 1.8e-5) with %s of 0.100 M NaOH: pH %s", (volume, printed) => {
    const curve = titrated("CH3COOH", { pKa: { CH3COOH: [p(1.8e-5)] } });
    expect(curve.at(volume).value.toNumber().toFixed(2)).toBe(printed);
  });

  it.each([
    ["0 mL", "1.00"],
    ["12.5 mL", "1.48"],
    ["25.0 mL", "7.00"],
    ["37.5 mL", "12.30"],
  ] as const)("25.00 mL of 0.100 M HCl with %s of 0.100 M NaOH: pH %s", (volume, printed) => {
    expect(titrated("HCl", {}).at(volume).value.toNumber().toFixed(2)).toBe(printed);
  });
});

describe("solids and complexes (chapter 15)", () => {
  it.each([
    ["AgI, Ksp 1.5e-16", "Ag+", { AgI: 0.1 }, { pKsp: { AgI: p(1.5e-16) } }, 2, "1.2e-8"],
    ["PbI2, Ksp 1.4e-8", "Pb^2+", { PbI2: 0.1 }, { pKsp: { PbI2: p(1.4e-8) } }, 2, "0.0015"],
    ["calomel, Ksp 1.1e-18", "Hg2^2+", { Hg2Cl2: 0.1 }, { pKsp: { Hg2Cl2: p(1.1e-18) } }, 2, "6.5e-7"],
    ["CaF2, Ksp 3.98e-11", "Ca^2+", { CaF2: 0.1 }, { pKsp: { CaF2: p(3.98e-11) } }, 3, "0.000215"],
    ["AgCl, Ksp 1.6e-10", "Ag+", { AgCl: 0.1 }, { pKsp: { AgCl: p(1.6e-10) } }, 2, "0.000013"],
    ["Mg(OH)2, Ksp 8.9e-12", "Mg^2+", { "Mg(OH)2": 0.1 }, { pKsp: { "Mg(OH)2": p(8.9e-12) } }, 2, "0.00013"],
  ] as const)("%s: what dissolves", (_, ion, amounts, constants, digits, printed) => {
    expect(filtrate(ion, amounts, constants as GivenConstants).toPrecision(digits)).toBe(printed);
  });

  it("leaves 1.0e-26 mol/L of sulfide over CdS (Ksp 1.0e-28) in 0.010 M CdBr2", () => {
    const sulfide = free("S^2-", { CdS: 0.1, CdBr2: 0.01 }, { pKsp: { CdS: 28 } });
    expect(sulfide.toPrecision(2)).toBe("1.0e-26");
  });

  it("lets AgCl fall from equal volumes of 2.0e-4 M silver and chloride, Q 1.0e-8 over 1.6e-10", () => {
    const mixed = litre({ AgNO3: 1e-4, NaCl: 1e-4 }, { pKsp: { AgCl: p(1.6e-10) } });
    expect(mixed.solids.map(({ formula }) => formula)).toEqual(["AgCl"]);
    expect(litre({ AgNO3: 1e-5, NaCl: 1e-5 }, { pKsp: { AgCl: p(1.6e-10) } }).solids).toEqual([]);
  });

  it("begins to throw Mg(OH)2 down from 0.0537 M magnesium at 1.3e-5 M hydroxide, Ksp 8.9e-12", () => {
    const falls = (hydroxide: number): boolean =>
      aqueousComposition({
        water: "1 L",
        dissolved: dissolved({ MgCl2: 0.0537 }),
        pH: 14 + Math.log10(hydroxide),
        constants: { only: true, pKw: 14, pKsp: { "Mg(OH)2": p(8.9e-12) } },
        activity: "ideal",
      }).solids.length > 0;
    expect([falls(1.25e-5), falls(1.35e-5)]).toEqual([false, true]);
  });

  it("needs 8.9e-6 M oxalate for CaC2O4 (Ksp 1.96e-8) to fall from 2.2e-3 M calcium", () => {
    const falls = (oxalate: number): boolean =>
      litre({ CaCl2: 2.2e-3, Na2C2O4: oxalate }, { pKsp: { CaC2O4: p(1.96e-8) } }).solids.length > 0;
    expect([falls(8.85e-6), falls(8.95e-6)]).toEqual([false, true]);
  });

  it("keeps manganese to 1.8e-6 M from pH 10.52 on, Ksp(Mn(OH)2) 2e-13", () => {
    const left = aqueousComposition({
      water: "1 L",
      dissolved: dissolved({ MnCl2: 0.01 }),
      pH: "10.52",
      constants: { only: true, pKw: 14, pKsp: { "Mn(OH)2": p(2e-13) } },
      activity: "ideal",
    }).filtrate.find(({ formula }) => formula === "Mn^2+")!;
    expect(left.concentration.value.toNumber().toPrecision(2)).toBe("0.0000018");
  });

  it("leaves 1.1e-3 M silver free in 0.10 M diamminesilver, Kf 1.7e7 and ammonia no base", () => {
    const silver = free("Ag+", { AgNO3: 0.1, NH3: 0.2 }, { logBeta: { "[Ag(NH3)2]^+": Math.log10(1.7e7) } });
    expect(silver.toPrecision(2)).toBe("0.0011");
  });
});
