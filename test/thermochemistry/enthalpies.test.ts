// Laws over the formation table, and an independent check against the CODATA key values.
import { describe, expect, it } from "vitest";
import { sourceKeys } from "../../src/foundation/bibliography";
import { FORMATION } from "../../src/thermochemistry/data/enthalpies";

const DECIMAL = /^-?\d+(\.\d+)?$/;
const enthalpy = (formula: string, state: string) =>
  Number(FORMATION.find((row) => row.formula === formula && row.state === state)!.enthalpy);

describe("the formation table", () => {
  it("lists each substance once in each state and form", () => {
    const keys = FORMATION.map(({ formula, state, form }) => `${formula}(${state}) ${form}`);
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
  });

  it("names a source and writes decimals", () => {
    const known = new Set<string>(sourceKeys());
    for (const { formula, enthalpy: value, gibbs, heatCapacity, source } of FORMATION) {
      expect(known, formula).toContain(source);
      expect(value, formula).toMatch(DECIMAL);
      if (gibbs !== undefined) expect(gibbs, formula).toMatch(DECIMAL);
      if (heatCapacity !== undefined) expect(heatCapacity, formula).toMatch(DECIMAL);
    }
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
      ["SO4-2", "aq", -909.34],
      ["NO3-", "aq", -206.85],
      ["CO3-2", "aq", -675.23],
      ["Na+", "aq", -240.34],
      ["K+", "aq", -252.14],
      ["NH4+", "aq", -133.26],
      ["Mg+2", "aq", -467.0],
      ["Ca+2", "aq", -543.0],
      ["Zn+2", "aq", -153.39],
      ["Cu+2", "aq", 64.9],
      ["NH3", "g", -45.94],
      ["HCl", "g", -92.31],
      ["SO2", "g", -296.81],
    ];
    for (const [formula, state, value] of codata) {
      const { note } = FORMATION.find((row) => row.formula === formula && row.state === state)!;
      if (Math.abs(enthalpy(formula, state) - value) >= 1) expect(note, formula).toMatch(/CODATA/);
    }
  });

  it("neutralises a strong acid with a strong base for about -55.8 kJ/mol", () => {
    // -55.84 kJ/mol at infinite dilution: Vanderzee and Swanson 1963 (memory).
    expect(Math.abs(enthalpy("H2O", "l") - enthalpy("H+", "aq") - enthalpy("OH-", "aq") + 55.84)).toBeLessThan(0.05);
  });

  it("makes every hydrate, in the form met first, lower than its salt and its water apart", () => {
    let pairs = 0;
    const higher: string[] = [];
    for (const row of FORMATION) {
      const { formula, state, enthalpy: value } = row;
      if (FORMATION.find((first) => first.formula === formula && first.state === state) !== row) continue; // metastable
      const match = /^(.*)·([\d.]*)H2O$/.exec(formula);
      const salt = FORMATION.find((other) => other.formula === match?.[1] && other.state === "s");
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
