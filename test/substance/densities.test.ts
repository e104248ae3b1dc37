// Densities that were slips of a handbook row, against the crystal's own cell. Cells from memory of the crystallographic
// literature; V = abc sin(beta), density = Z M / (N V).
import { describe, expect, it } from "vitest";
import { molarMass } from "../../src/formula";
import { substance } from "../../src/substance";

const AVOGADRO = 0.602214076; // per cubic ångström and gram, as 1e24
const density = (formula: string) => substance(formula).density?.in("g/cm3").toNumber();

describe("densities of crystals", () => {
  it.each([
    // rhombohedral, hexagonal setting: V = a a c sin(120°), six formula units
    ["AlCl3·6H2O", 11.83 * 11.83 * 11.9 * Math.sin((120 * Math.PI) / 180), 6],
    ["CoSO4·7H2O", 14.04 * 6.49 * 10.925 * Math.sin((105.23 * Math.PI) / 180), 4],
    ["KAl(SO4)2·12H2O", 12.158 ** 3, 4],
    ["NaCl", 5.6402 ** 3, 4],
  ])("fit the cell of %s", (formula, volume, units) => {
    const byCell = (units * molarMass(formula).in("g/mol").toNumber()) / (AVOGADRO * volume);
    expect(Math.abs(density(formula)! / byCell - 1), formula).toBeLessThan(0.01);
  });

  it("stay out where no figure fits the hydrates beside it", () => {
    // 1.70 is the heptahydrate's; the dihydrate (2.07) would be denser than the salt by 1.2 cm3 a water
    expect(substance("Na2HPO4").density).toBeUndefined();
    expect(substance("MnO2").densityCheck).toBeUndefined();
  });

  it("melts manganese chloride where its curve changes solid", () => {
    expect(substance("MnCl2·4H2O").phaseChange?.temperature?.in("°C").toNumber()).toBe(58);
  });

  // A primary standard is dried at 105 to 250 °C: thermogravimetry shows no loss below 500 °C.
  it("keeps sodium oxalate whole up to 500 °C", () => {
    expect(substance("Na2C2O4").thermalSteps[0]!.from.in("°C").toNumber()).toBeGreaterThanOrEqual(500);
  });
});
