// What heat does is said by the thermal steps; drying, ignition, firing and the physical data say a part of it again for their own
// question, and must not contradict them.
import { describe, expect, it } from "vitest";
import { constitutionOf, sameSubstance } from "../../src/ion";
import { DRYING } from "../../src/preparation/data/drying";
import { FIRING } from "../../src/preparation/data/firing";
import { IGNITION, OXIDES } from "../../src/preparation/data/ignition";
import { PHYSICAL } from "../../src/substance/data/physical";
import { THERMAL } from "../../src/substance/data/thermal-steps";

const stepsOf = (formula: string) => THERMAL().find((row) => sameSubstance(row.formula, formula))?.steps ?? [];

describe("with the thermal steps agree", () => {
  it("the drying limits: none is above the first loss", () => {
    let compared = 0;
    for (const { formula, upTo } of DRYING()) {
      const [first] = stepsOf(formula);
      if (first === undefined) continue;
      compared += 1;
      expect(Number(upTo), formula).toBeLessThanOrEqual(Number(first.from));
    }
    // a limit that heat undercuts is no row: the first loss says it
    expect(compared).toBeGreaterThan(20);
  });

  it("the residues of ignition: each is a solid of the steps", () => {
    let compared = 0;
    for (const { formula, residue } of IGNITION) {
      const steps = stepsOf(formula);
      if (steps.length === 0) continue;
      compared += 1;
      const solids = [formula, ...steps.flatMap(({ remains }) => remains.map((one) => one.formula))];
      expect(
        solids.some((one) => sameSubstance(one, residue)),
        `${formula} to ${residue}`,
      ).toBe(true);
    }
    expect(compared).toBeGreaterThan(5);
  });

  it("the oxides that carbonates, hydroxides and oxalates of a metal leave", () => {
    const others: string[] = [];
    let compared = 0;
    for (const { metal, oxide } of OXIDES)
      for (const { formula, steps } of THERMAL()) {
        const { kind, cations, anions } = constitutionOf(formula);
        const [cation, ...more] = cations;
        if (steps.length === 0 || kind !== "salt" || cation?.element !== metal || more.length > 0) continue;
        if (!anions.every((ion) => ["CO3^2-", "HCO3-", "OH-", "C2O4^2-"].includes(ion.formula))) continue;
        compared += 1;
        const solids = steps.flatMap(({ remains }) => remains.map((one) => one.formula));
        if (!solids.some((one) => sameSubstance(one, oxide))) others.push(`${formula} to ${solids.at(-1)}`);
      }
    expect(compared).toBeGreaterThan(30);
    // the steps are those of a covered crucible: in air the lower oxide or the metal takes oxygen up to the oxide of the table
    expect(others.sort()).toEqual([
      "Co(OH)2 to CoO",
      "CoC2O4·2H2O to Co",
      "CoCO3 to CoO",
      "CuC2O4 to Cu",
      "FeC2O4·2H2O to FeC2O4",
      "MnC2O4·2H2O to MnO",
      "MnCO3 to MnO",
      "NiC2O4·2H2O to Ni",
      "Sr(OH)2·8H2O to Sr(OH)2",
    ]);
  });

  it("the firing temperatures: below the melting point of the product", () => {
    let compared = 0;
    for (const { formula, at } of FIRING) {
      const row = PHYSICAL().find((one) => one.change === "melts" && sameSubstance(one.formula, formula));
      if (row === undefined) continue;
      compared += 1;
      expect(Number(at), formula).toBeLessThan(Number(row.celsius));
    }
    expect(compared).toBeGreaterThan(1);
  });

  it("the temperatures at which solids decompose: within 30 K of a step", () => {
    const apart: string[] = [];
    let compared = 0;
    for (const { formula, change, celsius } of PHYSICAL()) {
      const steps = stepsOf(formula);
      if (change !== "decomposes" || celsius === undefined || steps.length === 0) continue;
      compared += 1;
      const at = Number(celsius);
      const meets = steps.some(({ from, to = from }) => at >= Number(from) - 30 && at <= Number(to) + 30);
      if (!meets) apart.push(formula);
    }
    expect(compared).toBeGreaterThan(90);
    // the physical data print where a slow change begins that the steps of an open crucible pass over
    expect(apart.sort()).toEqual(["K3C6H5O7·H2O", "K3[Fe(C2O4)3]·3H2O", "MnCO3", "NH4MgPO4·6H2O"]);
  });
});
