// The beaker against published figures. Each pH standard with where its value is printed; one more, of tris, is known from
// memory only (looked for twice, not found) and counted apart: the published figures of tris are those of a supplier's table.
import { describe, expect, it } from "vitest";
import { acidConstant, aqueousComposition, stabilityConstants } from "../../src";
import { HENRY } from "../../src/aqueous/data/formations";

type Mixture = Readonly<Record<string, number>>;

const dissolved = (mixture: Mixture) =>
  Object.entries(mixture).map(([formula, moles]) => ({ formula, amount: `${moles} mol` as const }));

const kilogram = (mixture: Mixture, more = {}) =>
  aqueousComposition({ water: "1 kg", dissolved: dissolved(mixture), ...more });

/** Staples and Bates, J. Res. Natl. Bur. Stand. 73A (1969) 37, abstract: the citrate and carbonate standards, and borax. */
const NBS_1969 = "J. Res. NBS 73A, 37";
/** Hamer, Pinching and Acree, J. Res. Natl. Bur. Stand. 36 (1946) 47, abstract; 4.006 by the equation of 81A (1977) 21. */
const NBS_1946 = "J. Res. NBS 36, 47";
/** Hetzer, Durst, Robinson and Bates, J. Res. Natl. Bur. Stand. 81A (1977) 21, abstract. */
const NBS_1977 = "J. Res. NBS 81A, 21: 2073.44/T - 13.3270 + 0.045199 T - 3.4846e-5 T²";
/** Bower, Paabo and Bates, J. Res. Natl. Bur. Stand. 65A (1961) 267, abstract. */
const NBS_1961 = "J. Res. NBS 65A, 267";
/** Bates, Bower and Smith, J. Res. Natl. Bur. Stand. 56 (1956) 305, abstract. */
const NBS_1956 = "J. Res. NBS 56, 305";
/** European Pharmacopoeia, editions 5.0 and 11.0, 2.2.3, Table 2.2.3.-2; two decimals. */
const EP = "European Pharmacopoeia 2.2.3";
/** Japanese standard, edition of 2011, table of pH by temperature; two decimals. */
const JIS = "JIS Z 8802";

const phthalate = (celsius: number): number => {
  const T = celsius + 273.15;
  return Number((2073.44 / T - 13.327 + 0.045199 * T - 3.4846e-5 * T * T).toFixed(3));
};

type Standard = readonly [name: string, Mixture, pH: number, source: string, celsius: number];

const BUFFERS: readonly Standard[] = [
  ["potassium tetroxalate 0.05", { KHC2O4·H2C2O4·2H2O: 0.05 }, 1.68, JIS, 25],
  ["potassium hydrogentartrate, saturated at 25 °C", { KHC4H4O6: 0.1 }, 3.56, EP, 25],
  ["potassium dihydrogencitrate 0.05", { KH2C6H5O7: 0.05 }, 3.776, NBS_1969, 25],
  ["potassium hydrogenphthalate 0.05", { KHC8H4O4: 0.05 }, 4.005, NBS_1946, 25],
  ["phosphate 0.025 + 0.025", { KH2PO4: 0.025, Na2HPO4: 0.025 }, 6.86, JIS, 25],
  ["phosphate 0.008695 + 0.03043", { KH2PO4: 0.008695, Na2HPO4: 0.03043 }, 7.414, NBS_1961, 25],
  ["borax 0.01", { Na2B4O7·10H2O: 0.01 }, 9.18, NBS_1969, 25],
  ["carbonate 0.025 + 0.025", { NaHCO3: 0.025, Na2CO3: 0.025 }, 10.012, NBS_1969, 25],
  ["calcium hydroxide, saturated", { "Ca(OH)2": 0.1 }, 12.45, NBS_1956, 25],
  ["potassium hydrogenphthalate 0.05 at 40 °C", { KHC8H4O4: 0.05 }, phthalate(40), NBS_1977, 40],
  ["phosphate 0.008695 + 0.03043 at 38 °C", { KH2PO4: 0.008695, Na2HPO4: 0.03043 }, 7.382, NBS_1961, 38],
];

/** From memory: Bates (1962) and Buck et al., Pure Appl. Chem. 74 (2002) 2169. */
const REMEMBERED: readonly Standard[] = [
  ["tris 0.01667 with 0.05 of its hydrochloride", { C4H11NO3: 0.06667, HCl: 0.05 }, 7.699, "memory", 25],
];

/** The Japanese standard from 5 to 60 °C, its figures in brackets left out, and two of the European Pharmacopoeia. */
const BY_TEMPERATURE: readonly (readonly [
  name: string,
  Mixture,
  readonly (readonly [celsius: number, pH: number])[],
])[] = [
  [
    "phthalate",
    { KHC8H4O4: 0.05 },
    [
      [5, 4.0],
      [15, 4.0],
      [30, 4.01],
      [40, 4.03],
      [50, 4.06],
      [60, 4.1],
    ],
  ],
  [
    "phosphate",
    { KH2PO4: 0.025, Na2HPO4: 0.025 },
    [
      [5, 6.95],
      [15, 6.9],
      [30, 6.85],
      [40, 6.84],
      [50, 6.83],
      [60, 6.84],
    ],
  ],
  [
    "borax",
    { Na2B4O7·10H2O: 0.01 },
    [
      [5, 9.39],
      [15, 9.27],
      [30, 9.14],
      [40, 9.07],
      [50, 9.01],
      [60, 8.96],
    ],
  ],
  [
    "tetroxalate",
    { KHC2O4·H2C2O4·2H2O: 0.05 },
    [
      [5, 1.67],
      [15, 1.67],
      [30, 1.69],
      [40, 1.7],
      [50, 1.71],
      [60, 1.73],
    ],
  ],
  [
    "carbonate",
    { NaHCO3: 0.025, Na2CO3: 0.025 },
    [
      [10, 10.18],
      [38, 9.91],
    ],
  ],
  // the European Pharmacopoeia, as above
  [
    "citrate",
    { KH2C6H5O7: 0.05 },
    [
      [15, 3.8],
      [20, 3.79],
      [30, 3.77],
      [35, 3.76],
    ],
  ],
  [
    "phosphate of blood",
    { KH2PO4: 0.0087, Na2HPO4: 0.0303 },
    [
      [15, 7.45],
      [20, 7.43],
      [30, 7.4],
      [35, 7.39],
    ],
  ],
];

/** What a litre of a tris buffer of 0.05 mol/L holds, g, and its pH at three temperatures. */
type TrisRow = readonly [hydrochloride: number, tris: number, at5: number, at25: number, at37: number];

/** Sigma-Aldrich, Buffer Reference Center, pH by temperature: the rows that could be read; the pH that a meter shows. */
const TRIS: readonly TrisRow[] = [
  [7.02, 0.67, 7.76, 7.2, 6.91],
  [6.85, 0.8, 7.89, 7.3, 7.02],
  [6.61, 0.97, 7.97, 7.4, 7.12],
  [6.35, 1.18, 8.07, 7.5, 7.22],
  [6.06, 1.39, 8.18, 7.6, 7.3],
];

const pHOfStandard = ([, mixture, , , celsius]: Standard): number =>
  kilogram(mixture, { temperature: `${celsius} °C` }).pH.toNumber();

describe("pH standards", () => {
  it.each(BUFFERS)("%s: %o is pH %d (%s)", (...standard) => {
    expect(Math.abs(pHOfStandard(standard) - standard[2])).toBeLessThan(0.06);
  });

  it.each(REMEMBERED)("%s: %o is pH %d (%s)", (...standard) => {
    expect(Math.abs(pHOfStandard(standard) - standard[2])).toBeLessThan(0.06);
  });

  it.each(TRIS)(
    "tris with %d g of its hydrochloride and %d g of base is pH %d, %d, %d at 5, 25 and 37 °C",
    (...row) => {
      const [hydrochloride, base, ...printed] = row;
      // 157.60 and 121.14 g/mol; a litre of the buffer holds 0.993 kg of water, 0.003 in pH at most
      const [acid, free] = [hydrochloride / 157.6, base / 121.14];
      const off = [5, 25, 37].map(
        (celsius, index) =>
          kilogram({ C4H11NO3: acid + free, HCl: acid }, { temperature: `${celsius} °C` }).pH.toNumber() -
          printed[index]!,
      );
      expect(Math.abs(off[1]!)).toBeLessThan(0.06);
      // the table itself is uneven there: where the pH at 25 °C rises by a tenth, that at 5 °C rises by 0.08 to 0.13
      expect(off.filter((difference) => Math.abs(difference) > 0.09)).toEqual([]);
    },
  );

  it("of tris fall by 0.028 a kelvin (Lange's Handbook, 15th ed., Table 8.16, after Bower and Bates 1955)", () => {
    const at = (celsius: number): number =>
      kilogram({ C4H11NO3: 0.05, HCl: 0.025 }, { temperature: `${celsius} °C` }).pH.toNumber();
    expect(Math.abs((at(30) - at(20)) / 10 + 0.028)).toBeLessThan(0.0015);
  });

  it("have a root mean square error of at most 0.025", () => {
    const rms = (list: readonly Standard[]): number =>
      Math.sqrt(list.reduce((all, one) => all + (pHOfStandard(one) - one[2]) ** 2, 0) / list.length);
    expect(rms(BUFFERS)).toBeLessThan(0.025);
    expect(rms([...BUFFERS, ...REMEMBERED])).toBeLessThan(0.025);
  });

  it.each(BY_TEMPERATURE)(
    "%s within 0.06 from 5 to 50 °C, 0.1 at 60 °C where heats of reaction have moved (the doubt added there)",
    (_, mixture, points) => {
      const off = points.map(
        ([celsius, pH]) => [celsius, kilogram(mixture, { temperature: `${celsius} °C` }).pH.toNumber() - pH] as const,
      );
      expect(off.filter(([celsius, difference]) => Math.abs(difference) > (celsius > 50 ? 0.1 : 0.06))).toEqual([]);
    },
  );
});

describe("Henry's law", () => {
  // Sander, Atmos. Chem. Phys. 23, 10901 (2023): lowest and highest of the reviews (type L), mol/(m3 Pa), and of all entries of
  // d ln H / d(1/T), K, without the outliers of ammonia (1500 and 6600 K); half a unit of the last figure for the print
  it.each([
    ["CO2", "H2CO3", 3.25e-4, 3.45e-4, 2250, 2650],
    ["NH3", "NH3", 5.75e-1, 6.05e-1, 3650, 4450],
    ["SO2", "H2SO3", 1.15e-2, 1.45e-2, 2850, 3250],
    ["H2S", "H2S", 0.95e-3, 1.05e-3, 1650, 2350],
  ] as const)("of %s to %s is that of the compilation", (gas, dissolved, low, high, coldest, warmest) => {
    const row = HENRY.find((one) => one.gas === gas)!;
    expect(row.dissolved).toBe(dissolved);
    // 101325 Pa, 997.05 kg/m3
    const constant = (10 ** Number(row.logK) * 997.05) / 101325;
    expect(constant).toBeGreaterThan(low);
    expect(constant).toBeLessThan(high);
    const slope = (-1000 * Number(row.enthalpy)) / 8.314;
    expect(slope).toBeGreaterThan(coldest);
    expect(slope).toBeLessThan(warmest);
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
