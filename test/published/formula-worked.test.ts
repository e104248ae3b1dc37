// Published and usual figures: molar masses, percent compositions and empirical formulas.
// `within` is half a unit of the last printed digit where the figure reproduces, and wider, with the reason, where the
// source used older atomic weights or rounded on the way.
import { describe, expect, it } from "vitest";
import { empiricalFormula, massFractionOf, molarMass, parseFormula } from "../../src/formula";
import { quantity } from "../../src/quantity";

const OPENSTAX = "Chemistry 2e (OpenStax), 2019";

interface MassRow {
  readonly formula: string;
  readonly molarMass: string;
  readonly within: number;
  readonly source: string;
}

const MOLAR_MASSES: readonly MassRow[] = [
  { formula: "P4", molarMass: "123.896", within: 0.001, source: `${OPENSTAX}, 3.1 exercises (older weight of P)` },
  { formula: "H2O", molarMass: "18.015", within: 0.0005, source: `${OPENSTAX}, 3.1 exercises` },
  { formula: "S8", molarMass: "256.48", within: 0.005, source: `${OPENSTAX}, 3.1 exercises` },
  {
    formula: "Sc2(SO4)3",
    molarMass: "378.103",
    within: 0.024,
    source: `${OPENSTAX}, 3.1 exercises (S taken as 32.066)`,
  },
  { formula: "CH3COCH3", molarMass: "58.080", within: 0.0005, source: `${OPENSTAX}, 3.1 exercises` },
  { formula: "C6H12O6", molarMass: "180.158", within: 0.0025, source: `${OPENSTAX}, 3.1 exercises (older weights)` },
  { formula: "C2HBrClF3", molarMass: "197.382", within: 0.003, source: `${OPENSTAX}, 3.1, halothane (older weights)` },
  {
    formula: "C12H14N2Cl2",
    molarMass: "257.163",
    within: 0.0055,
    source: `${OPENSTAX}, 3.1, paraquat (older weights)`,
  },
  { formula: "C17H35CO2Na", molarMass: "306.464", within: 0.002, source: `${OPENSTAX}, 3.1, soap (rounded weights)` },
  { formula: "Ca3(PO4)2", molarMass: "310.18", within: 0.01, source: `${OPENSTAX}, 3.1, after example 3.2 (rounded)` },
  { formula: "C7H5NO3S", molarMass: "183.18", within: 0.005, source: `${OPENSTAX}, 3.1, example 3.8` },
];

describe("published molar masses", () => {
  it.each(MOLAR_MASSES)("$formula weighs $molarMass g/mol ($source)", ({ formula, molarMass: printed, within }) => {
    expect(Math.abs(molarMass(formula).in("g/mol").toNumber() - Number(printed))).toBeLessThanOrEqual(within);
  });
});

describe("published percent compositions", () => {
  it.each([
    { what: "C", formula: "C9H8O4", percent: "60.00", item: "3.2, example 3.10" },
    { what: "H", formula: "C9H8O4", percent: "4.476", item: "3.2, example 3.10" },
    { what: "N", formula: "NH3", percent: "82.24", item: "3.2, exercise 2a" },
    { what: "H", formula: "NH3", percent: "17.76", item: "3.2, exercise 2a" },
    { what: "O", formula: "Na2S2O3", percent: "30.36", item: "3.2, exercise 2b" },
    { what: "Ca", formula: "Ca3(PO4)2", percent: "38.76", item: "3.2, exercise 2c" },
    { what: "NH3", formula: "Co(NH3)6Cl3", percent: "38.2", item: "3.2, exercise 4" },
  ])(`$what in $formula is $percent % (${OPENSTAX}, $item)`, ({ what, formula, percent }) => {
    const decimals = percent.split(".")[1]!.length;
    expect(massFractionOf(what, formula).in("%").toFixed(decimals)).toBe(percent);
  });
});

// Moles and masses that need nothing but a molar mass; `printed` has the digits of the source.
describe("published amounts and masses", () => {
  it.each([
    { formula: "Be", mass: "3.24 g", moles: 0.36, within: 0.0005, item: "after example 3.3" },
    { formula: "C2H5O2N", mass: "28.35 g", moles: 0.3776, within: 0.0001, item: "example 3.6 (truncated)" },
  ])(`$mass of $formula are $moles mol (${OPENSTAX}, 3.1, $item)`, ({ formula, mass, moles, within }) => {
    const amount = quantity(mass as "1 g").dividedBy(molarMass(formula));
    expect(Math.abs(amount.in("mol").toNumber() - moles)).toBeLessThanOrEqual(within);
  });

  it.each([
    { formula: "Au", amount: "2.561 mol", grams: 504.5, within: 0.1, item: "after example 3.4 (rounded weight)" },
    { formula: "C6H8O6", amount: "1.42e-4 mol", grams: 0.025, within: 0.00005, item: "example 3.7" },
    { formula: "N2H4", amount: "0.443 mol", grams: 14.2, within: 0.05, item: "after example 3.7" },
    { formula: "Co(NH3)6Cl3", amount: "2.86 mol", grams: 765, within: 0.5, item: "exercise 17" },
    { formula: "LiCl", amount: "2.345 mol", grams: 99.41, within: 0.01, item: "exercise 19 (rounded weight)" },
    { formula: "C2H2", amount: "0.0872 mol", grams: 2.27, within: 0.005, item: "exercise 19" },
  ])(`$amount of $formula weigh $grams g (${OPENSTAX}, 3.1, $item)`, ({ formula, amount, grams, within }) => {
    const mass = quantity(amount as "1 mol").times(molarMass(formula));
    expect(Math.abs(mass.in("g").toNumber() - grams)).toBeLessThanOrEqual(within);
  });

  it.each([
    { formula: "Cu", mass: "5.00 g", particles: 4.74e22, within: 0.005e22, item: "example 3.5" },
    { formula: "C7H5NO3S", mass: "0.0400 g", particles: 1.31e20, within: 0.01e20, item: "example 3.8 (truncated)" },
  ])(
    `$mass of $formula hold $particles particles (${OPENSTAX}, 3.1, $item)`,
    ({ formula, mass, particles, within }) => {
      const amount = quantity(mass as "1 g")
        .dividedBy(molarMass(formula))
        .in("mol")
        .toNumber();
      // Avogadro constant, exact by definition: SI Brochure, 9th ed.
      expect(Math.abs(amount * 6.02214076e23 - particles)).toBeLessThanOrEqual(within);
    },
  );

  it.each([
    { what: "Zr", grams: 30.87 },
    { what: "O", grams: 21.66 },
  ])(`0.3384 mol of ZrSiO4 hold $grams g of $what (${OPENSTAX}, 3.1, exercise 23)`, ({ what, grams }) => {
    const mass = quantity("0.3384 mol").times(molarMass("ZrSiO4")).times(massFractionOf(what, "ZrSiO4"));
    expect(Math.abs(mass.in("g").toNumber() - grams)).toBeLessThanOrEqual(0.005);
  });
});

describe("published empirical and molecular formulas", () => {
  it.each([
    { found: { C: "27.29 %", O: "72.71 %" }, formula: "CO2", item: "3.2, example 3.12" },
    { found: { C: "40.0 %", H: "6.71 %", O: "53.28 %" }, formula: "CH2O", item: "3.2, after example 3.12" },
    { found: { C: "15.8 %", S: "84.2 %" }, formula: "CS2", item: "3.2, exercise 6a" },
    {
      found: { C: "92.3 %", H: "7.7 %" },
      molar: "78.1 g/mol",
      formula: "CH",
      molecular: "C6H6",
      item: "3.2, exercise 8",
    },
    {
      found: { C: "74.02 %", H: "8.710 %", N: "17.27 %" },
      molar: "162.28 g/mol",
      formula: "C5H7N",
      molecular: "C10H14N2",
      item: "3.2, example 3.13 (40.57 g are 0.2500 mol)",
    },
    {
      found: { Mg: "28.03 %", Si: "21.60 %", H: "1.16 %", O: "49.21 %" },
      molar: "520.8 g/mol",
      formula: "Mg3Si2H3O8",
      molecular: "Mg6Si4H6O16",
      item: "3.2, exercise 10",
    },
    {
      found: { C: "75.95 %", N: "17.72 %", H: "6.33 %" },
      molar: "240 g/mol",
      formula: "C5H5N",
      molecular: "C15H15N3",
      item: "3.2, exercise 12",
    },
    // 46.2 mL of 0.1051 mol/L hydroxide took the hydrogen chloride that the chloride gave
    { found: { W: "0.2232 g", Cl: "4.85562 mmol" }, formula: "WCl4", item: "4.5, exercise 18" },
  ] as const)(`is $formula (${OPENSTAX}, $item)`, (row) => {
    const molar = "molar" in row ? { molarMass: row.molar } : {};
    const result = empiricalFormula(row.found, molar);
    expect(result.formula.hasSameComposition(parseFormula(row.formula))).toBe(true);
    if ("molecular" in row) {
      expect(result.molecularFormula!.hasSameComposition(parseFormula(row.molecular))).toBe(true);
    }
  });
});
