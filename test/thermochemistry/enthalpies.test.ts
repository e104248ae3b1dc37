// Laws over the formation table, and an independent check against the CODATA key values.
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { crystalWater } from "../../src/hydrate";
import { sourceKeys } from "../../src/sources";
import { FORMATION, type FormationRow } from "../../src/thermochemistry/data/enthalpies";

const DECIMAL = /^-?\d+(\.\d+)?$/;

/**
 * Standard entropies of the elements in their reference states, J/(mol K) for one atom, 298.15 K. CODATA Key Values for
 * Thermodynamics (1989) where it lists the element; the others (Bi, Ni, Co, Fe, Mn, Cr, Mo, W, V, Sr, Ba) NBS Tables
 * (1982). All from memory of the lists, the last line as NBS 1982 prints it.
 */
// biome-ignore format: a table, one row a line
const ELEMENT_ENTROPY: Readonly<Record<string, number>> = {
  O: 205.152 / 2, H: 130.68 / 2, F: 202.791 / 2, Cl: 223.081 / 2, Br: 152.21 / 2, I: 116.14 / 2, S: 32.054, N: 191.609 / 2,
  P: 41.09, C: 5.74, Si: 18.81, Sn: 51.18, Pb: 64.8, B: 5.9, Al: 28.3, Zn: 41.63, Cd: 51.8, Hg: 75.9, Cu: 33.15, Ag: 42.55,
  Ti: 30.72, Mg: 32.67, Ca: 41.59, Li: 29.12, Na: 51.3, K: 64.68,
  Bi: 56.74, Ni: 29.87, Co: 30.04, Fe: 27.28, Mn: 32.01, Cr: 23.77, Mo: 28.66, W: 32.64, V: 28.91, Sr: 52.3, Ba: 62.8,
  Se: 42.442, As: 35.1, Sb: 45.69, Zr: 38.99, Ce: 72.0,
};

/** S = (enthalpy − Gibbs energy) of formation / T + entropies of the elements; undefined without a Gibbs energy. */
function entropyOf({ formula, enthalpy: h, gibbs }: FormationRow): number | undefined {
  if (gibbs === undefined) return undefined;
  const elements = parseFormula(formula).composition.reduce(
    (all, { symbol, count }) => all + ELEMENT_ENTROPY[symbol]! * count.valueOf(),
    0,
  );
  return elements + ((Number(h) - Number(gibbs)) / 298.15) * 1000;
}

const enthalpy = (formula: string, state: string) =>
  Number(FORMATION().find((row) => row.formula === formula && row.state === state)!.enthalpy);

describe("the formation table", () => {
  it("lists each substance once in each state and form", () => {
    const keys = FORMATION().map(({ formula, state, form }) => `${formula}(${state}) ${form}`);
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
  });

  it("names a source and writes decimals", () => {
    const known = new Set<string>(sourceKeys());
    let tested = 0;
    for (const { formula, enthalpy: value, gibbs, heatCapacity, source } of FORMATION()) {
      expect(known, formula).toContain(source);
      expect(value, formula).toMatch(DECIMAL);
      if (gibbs !== undefined) expect(gibbs, formula).toMatch(DECIMAL);
      if (heatCapacity !== undefined) expect(heatCapacity, formula).toMatch(DECIMAL);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(840);
  });

  it("gives elements in their reference state zero", () => {
    for (const formula of ["O2", "H2", "N2", "Cl2"]) expect(enthalpy(formula, "g")).toBe(0);
    for (const formula of ["Zn", "Cu", "Fe", "Mg", "Na", "K", "Al", "S", "C", "I2"])
      expect(enthalpy(formula, "s")).toBe(0);
    expect(enthalpy("H+", "aq")).toBe(0);
  });

  it("agrees with CODATA key values within 1 kJ/mol, or says so in a note", () => {
    // CODATA Key Values for Thermodynamics (1989), kJ/mol at 298.15 K (memory for the list).
    const codata: [string, string, number][] = [
      ["H2O", "l", -285.83],
      ["H2O", "g", -241.826],
      ["CO2", "g", -393.51],
      ["OH-", "aq", -230.015],
      ["Cl-", "aq", -167.08],
      ["SO4^2-", "aq", -909.34],
      ["NO3-", "aq", -206.85],
      ["CO3^2-", "aq", -675.23],
      ["Na+", "aq", -240.34],
      ["K+", "aq", -252.14],
      ["NH4+", "aq", -133.26],
      ["Mg^2+", "aq", -467.0],
      ["Ca^2+", "aq", -543.0],
      ["Zn^2+", "aq", -153.39],
      ["Cu^2+", "aq", 64.9],
      ["NH3", "g", -45.94],
      ["HCl", "g", -92.31],
      ["SO2", "g", -296.81],
    ];
    let tested = 0;
    for (const [formula, state, value] of codata) {
      const { note } = FORMATION().find((row) => row.formula === formula && row.state === state)!;
      if (Math.abs(enthalpy(formula, state) - value) >= 1) expect(note, formula).toMatch(/CODATA/);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(18);
  });

  it("neutralises a strong acid with a strong base for about -55.8 kJ/mol", () => {
    // -55.84 kJ/mol at infinite dilution: Vanderzee and Swanson 1963 (memory).
    expect(Math.abs(enthalpy("H2O", "l") - enthalpy("H+", "aq") - enthalpy("OH-", "aq") + 55.84)).toBeLessThan(0.05);
  });

  it("dissolves what was added since with the heat that was measured", () => {
    const dissolving = (solid: string, dissolved: number, waters: number) =>
      dissolved + waters * enthalpy("H2O", "l") - enthalpy(solid, "s");
    // oxalic acid -2.29 and its dihydrate -8.58 kcal/mol (heats taken): heats of solution of an engineers' handbook, memory
    expect(Math.abs(dissolving("H2C2O4", enthalpy("H2C2O4", "aq"), 0) - 9.6)).toBeLessThan(1);
    expect(Math.abs(dissolving("H2C2O4·2H2O", enthalpy("H2C2O4", "aq"), 2) - 35.9)).toBeLessThan(1);
    // citric acid 18 to 19 and its monohydrate 26 to 29 kJ/mol (calorimetry, memory)
    expect(Math.abs(dissolving("C6H8O7", enthalpy("C6H8O7", "aq"), 0) - 18.5)).toBeLessThan(0.6);
    expect(Math.abs(dissolving("C6H8O7·H2O", enthalpy("C6H8O7", "aq"), 1) - 27.5)).toBeLessThan(1.6);
    // borax: its solubility 1.6 g at 10 °C and 6.2 g at 40 °C (CRC Handbook, 98th ed.), three ions, van 't Hoff: 100 kJ/mol
    const borax = 2 * enthalpy("Na+", "aq") + enthalpy("B4O7^2-", "aq");
    expect(Math.abs(dissolving("Na2B4O7·10H2O", borax, 10) - 100)).toBeLessThan(20);
    // steps of citric acid: +4.1, +2.2, -3.4 kJ/mol (evaluated enthalpies of ionisation, 2002, memory)
    const steps = ["C6H7O7-", "C6H6O7^2-", "C6H5O7^3-"].map((ion) => enthalpy(ion, "aq"));
    expect(steps[2]! - steps[1]!).toBeLessThan(0);
    expect(steps[1]! - steps[0]!).toBeGreaterThan(0);
  });

  it("knows the minerals and oxides of a kiln within 2 in 1000 of a later compilation", () => {
    // Robie and Hemingway, U.S. Geological Survey Bulletin 2131, 1995, kJ/mol (memory for the list)
    const later: readonly (readonly [string, number])[] = [
      ["ZrO2", -1100.6],
      ["ZrSiO4", -2034.2],
      ["CeO2", -1088.7],
      ["V2O5", -1550.6],
      ["CaTiO3", -1660.6],
      ["CaSiO3", -1634.8],
      ["MgAl2O4", -2299.1],
      ["Al2Si2O5(OH)4", -4119.0],
      ["NaAlSi3O8", -3935.0],
      ["KAlSi3O8", -3974.6],
      ["NaAlSiO4", -2090.4],
    ];
    let tested = 0;
    for (const [formula, value] of later) {
      expect(Math.abs(enthalpy(formula, "s") / value - 1), formula).toBeLessThan(0.002);
      tested += 1;
    }
    expect(tested).toBe(11);
  });

  it("gives every solid, liquid and gas an entropy above zero, the denser state the lower", () => {
    // Third law: S(298 K) of a pure substance is positive. Per atom, diamond (2.4) is the lowest known solid.
    const wrong: string[] = [];
    let checked = 0;
    for (const row of FORMATION()) {
      const entropy = row.state === "aq" ? undefined : entropyOf(row);
      if (entropy === undefined) continue;
      checked += 1;
      const atoms = parseFormula(row.formula).composition.reduce((all, { count }) => all + count.valueOf(), 0);
      if (!(entropy / atoms > 2)) wrong.push(`${row.formula}(${row.state}) ${entropy.toFixed(1)}`);
      for (const other of FORMATION()) {
        if (other.formula !== row.formula || other.state === "aq") continue;
        const above = entropyOf(other);
        const denser = "slg".indexOf(row.state) < "slg".indexOf(other.state);
        if (denser && above !== undefined && above <= entropy) wrong.push(`${row.formula}(${row.state})`);
      }
    }
    expect(wrong).toEqual([]);
    expect(checked).toBeGreaterThan(450);
  });

  it("lets the entropy of a hydrate rise with its water, by less than liquid water has", () => {
    // Physics: bound water is ordered more than liquid water (69.95 J/(mol K), CODATA 1989) and less than not at all.
    const byCore = new Map<string, { readonly waters: number; readonly entropy: number; readonly name: string }[]>();
    for (const row of FORMATION()) {
      const entropy = entropyOf(row);
      if (row.state !== "s" || entropy === undefined) continue;
      const { anhydrous, units, waters } = crystalWater(row.formula);
      const key = `${anhydrous} × ${units.toFraction()}`;
      const name = `${row.formula} ${row.form ?? ""}`;
      byCore.set(key, [...(byCore.get(key) ?? []), { waters: waters.valueOf(), entropy, name }]);
    }
    const wrong: string[] = [];
    let pairs = 0;
    for (const forms of byCore.values()) {
      for (const dry of forms) {
        for (const wet of forms) {
          if (wet.waters <= dry.waters) continue;
          pairs += 1;
          const each = (wet.entropy - dry.entropy) / (wet.waters - dry.waters);
          if (!(each > 0 && each < 69.95)) wrong.push(`${dry.name} to ${wet.name}: ${each.toFixed(1)} for each water`);
        }
      }
    }
    expect(wrong).toEqual([]);
    expect(pairs).toBeGreaterThan(100);
  });

  it("makes every hydrate, in the form met first, lower than its salt and its water apart", () => {
    let pairs = 0;
    const higher: string[] = [];
    for (const row of FORMATION()) {
      const { formula, state, enthalpy: value } = row;
      if (FORMATION().find((first) => first.formula === formula && first.state === state) !== row) continue; // metastable
      const match = /^(.*)·([\d.]*)H2O$/.exec(formula);
      const salt = FORMATION().find((other) => other.formula === match?.[1] && other.state === "s");
      if (match === null || salt === undefined || state !== "s") continue;
      const waters = match[2] === "" ? 1 : Number(match[2]);
      pairs += 1;
      if (Number(value) >= Number(salt.enthalpy) + waters * enthalpy("H2O", "l")) higher.push(formula);
    }
    // plaster of Paris is metastable beside anhydrite and water (common practice)
    expect(higher).toEqual(["CaSO4·0.5H2O"]);
    expect(pairs).toBeGreaterThan(120);
  });
});
