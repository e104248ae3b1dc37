// The beaker against published figures. pH standards at 25 °C, each with where it was looked up; those marked "memory" are
// remembered from Bates, J. Res. Natl. Bur. Stand. 66A (1962) 179, and Buck et al., Pure Appl. Chem. 74 (2002) 2169. The
// Japanese standard JIS Z 8802:2011 prints two decimals of five of them: 1.68, 4.01, 6.86, 9.18, 10.02.
import { describe, expect, it } from "vitest";
import { acidConstant, aqueousComposition, stabilityConstants } from "../../src";

type Mixture = Readonly<Record<string, number>>;

const dissolved = (mixture: Mixture) =>
  Object.entries(mixture).map(([formula, moles]) => ({ formula, amount: `${moles} mol` as const }));

const kilogram = (mixture: Mixture, more = {}) =>
  aqueousComposition({ water: "1 kg", dissolved: dissolved(mixture), ...more });

/** Staples and Bates, J. Res. Natl. Bur. Stand. 73A (1969) 37, abstract: the citrate and carbonate standards, and borax. */
const NBS_1969 = "J. Res. NBS 73A, 37";
/** Hamer, Pinching and Acree, J. Res. Natl. Bur. Stand. 36 (1946) 47, abstract; 4.006 by the equation of 81A (1977) 21. */
const NBS_1946 = "J. Res. NBS 36, 47";
const JIS = "two decimals: JIS Z 8802; the third: memory";

const BUFFERS: readonly (readonly [string, Mixture, number, string])[] = [
  ["potassium hydrogentartrate, saturated", { KHC4H4O6: 0.1 }, 3.557, "memory"],
  ["potassium dihydrogencitrate 0.05", { KH2C6H5O7: 0.05 }, 3.776, NBS_1969],
  ["potassium hydrogenphthalate 0.05", { KHC8H4O4: 0.05 }, 4.005, NBS_1946],
  ["phosphate 0.025 + 0.025", { KH2PO4: 0.025, Na2HPO4: 0.025 }, 6.865, JIS],
  ["phosphate 0.008695 + 0.03043", { KH2PO4: 0.008695, Na2HPO4: 0.03043 }, 7.413, "memory"],
  ["borax 0.01", { Na2B4O7·10H2O: 0.01 }, 9.18, NBS_1969],
  ["carbonate 0.025 + 0.025", { NaHCO3: 0.025, Na2CO3: 0.025 }, 10.012, NBS_1969],
  ["calcium hydroxide, saturated", { "Ca(OH)2": 0.1 }, 12.454, "memory"],
  ["tris 0.01667 with 0.05 of its hydrochloride", { C4H11NO3: 0.06667, HCl: 0.05 }, 7.699, "memory"],
  ["potassium tetroxalate 0.05", { KHC2O4·H2C2O4·2H2O: 0.05 }, 1.679, JIS],
];

describe("pH standards", () => {
  const computed = BUFFERS.map(([, mixture]) => kilogram(mixture).pH.value.toNumber());

  it.each(BUFFERS.map(([name, , pH, source], i) => [name, pH, source, computed[i]!] as const))(
    "%s: %d (%s)",
    (_, pH, __, found) => {
      expect(Math.abs(found - pH)).toBeLessThan(0.06);
    },
  );

  it("has a root mean square error of at most 0.025", () => {
    const sum = BUFFERS.reduce((all, [, , pH], i) => all + (computed[i]! - pH) ** 2, 0);
    expect(Math.sqrt(sum / BUFFERS.length)).toBeLessThan(0.025);
  });
});

describe("calcite and gypsum", () => {
  const calcium = (c: ReturnType<typeof kilogram>): number =>
    c.filtrate.find(({ formula }) => formula === "Ca^2+")!.concentration.value.toNumber();

  // the textbook triple (Stumm and Morgan, Aquatic Chemistry, from memory): closed, open to air, under 1 atm of CO2
  it.each([
    ["kept", 9.91, 0.122e-3],
    ["open air", 8.2, 0.54e-3],
    [{ pressure: "101.325 kPa" }, 6.01, 9.8e-3],
  ] as const)("calcite, carbon dioxide %j", (carbonDioxide, pH, calciumMolality) => {
    const c = kilogram({ CaCO3: 0.1 }, { carbonDioxide });
    expect(c.pH.value.toNumber()).toBeCloseTo(pH, 1);
    expect(calcium(c) / calciumMolality).toBeCloseTo(1, 1);
  });

  it("dissolves gypsum as measured, within 10 %", () => {
    // 0.0151 mol/L, the curve of the solubility room at 25 °C
    expect(Math.abs(calcium(kilogram({ CaSO4·2H2O: 0.1 })) / 0.0151 - 1)).toBeLessThan(0.1);
  });

  it("dissolves more gypsum in acid and less beside sulfate", () => {
    // engine of another make on the same tables: 0.069 in 0.5 M HCl, 0.0070 in 0.2 M Na2SO4
    expect(calcium(kilogram({ CaSO4·2H2O: 0.3, HCl: 0.5 }))).toBeGreaterThan(0.06);
    expect(calcium(kilogram({ CaSO4·2H2O: 0.3, Na2SO4: 0.2 }))).toBeLessThan(0.009);
  });
});

describe("textbook problems with their own constants", () => {
  const own = (constants: object, mixture: Mixture) =>
    aqueousComposition({
      water: "1 L",
      dissolved: dissolved(mixture),
      constants: { only: true, ...constants },
      activity: "ideal",
    });

  it("weak acid: 0.1 M acetic acid, pKa 4.76, is the exact root", () => {
    let h = 1e-3;
    for (let i = 0; i < 500; i += 1) h = (h + 1e-14 / h + (0.1 * 10 ** -4.76) / (h + 10 ** -4.76)) / 2;
    expect(own({ pKa: { CH3COOH: ["4.76"] } }, { CH3COOH: 0.1 }).pH.value.toNumber()).toBeCloseTo(-Math.log10(h), 8);
  });

  it("ammonium chloride 0.1 M, pKa 9.25: pH 5.12", () => {
    // h = sqrt(Ka c)
    expect(own({ pKa: { "NH4+": "9.25" } }, { NH4Cl: 0.1 }).pH.value.toNumber()).toBeCloseTo(5.125, 2);
  });

  it("sodium hydrogencarbonate: the mean of the two pKa", () => {
    expect(own({ pKa: { H2CO3: ["6.35", "10.33"] } }, { NaHCO3: 0.1 }).pH.value.toNumber()).toBeCloseTo(8.34, 2);
  });

  it("silver chloride, pKsp 9.75, in water, beside chloride and in ammonia", () => {
    const silver = (c: ReturnType<typeof own>): number =>
      c.filtrate.find(({ formula }) => formula === "Ag+")!.concentration.value.toNumber();
    const pKsp = { AgCl: "9.75" };
    expect(silver(own({ pKsp }, { AgCl: 0.1 })) / 10 ** -4.875).toBeCloseTo(1, 6);
    expect(silver(own({ pKsp }, { AgCl: 0.1, NaCl: 0.01 })) / 10 ** -7.75).toBeCloseTo(1, 4);
    // s = sqrt(K)·a/(1 + 2 sqrt K) with K = Ksp β2 (ammonia not a base here)
    const root = Math.sqrt(10 ** (7.21 - 9.75));
    const found = silver(own({ pKsp, logBeta: { "[Ag(NH3)2]^+": "7.21" } }, { AgCl: 0.5, NH3: 1 }));
    expect(found / (root / (1 + 2 * root))).toBeCloseTo(1, 3);
  });

  it("takes no constant of the tables when told so", () => {
    const c = own({}, { CaCl2: 0.1, Na2CO3: 0.1 });
    expect(c.solids).toEqual([]);
    expect(c.pH.value.toNumber()).toBeCloseTo(7, 8);
  });

  it("dissolves carbon dioxide by the caller's Henry constant", () => {
    const c = aqueousComposition({
      water: "1 L",
      dissolved: [],
      carbonDioxide: { pressure: "101.325 kPa" },
      constants: { only: true, pKH: { CO2: "1.47" }, pKa: { H2CO3: ["6.35", "10.33"] } },
      activity: "ideal",
    });
    expect(c.pH.value.toNumber()).toBeCloseTo((1.47 + 6.35) / 2, 3);
  });
});

describe("the tables, asked one by one", () => {
  it("gives acid and stability constants", () => {
    expect(acidConstant("H2PO4-").pKa.value.toNumber()).toBe(7.2);
    expect(() => acidConstant("HCl")).toThrowError(expect.objectContaining({ code: "aqueous.no-data" }));
    expect(stabilityConstants({ metal: "Cu^2+", ligand: "NH3" })).toHaveLength(5);
  });

  it("brings a constant of another ionic strength to zero", () => {
    // Ca2+ + NH3 at 0.5 mol/L, no change of squared charges: the same figure
    expect(stabilityConstants({ metal: "Ca^2+", ligand: "NH3" })[0]!.logBeta.value.toNumber()).toBe(0.1);
    // Fe3+ + CH3COO- at 0.1: squares 9 + 1 - 4 = 6, Davies term at 0.1 = 0.2102, times 0.509
    const acetate = stabilityConstants({ metal: "Fe^3+", ligand: "CH3COO-" })[0]!;
    expect(acetate.logBeta.value.toNumber()).toBeCloseTo(4.02 + 0.5092 * 0.2103 * 6, 2);
  });
});
