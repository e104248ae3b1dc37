// Salts that run in air against measured humidities of air over their saturated solutions.
import { describe, expect, it } from "vitest";
import { sameSubstance } from "../../src/ion";
import { DELIQUESCENT, EFFLORESCENT } from "../../src/preparation/data/drying";

/** Relative humidity over the saturated solution in percent, and where it stands. */
const HUMIDITY: readonly (readonly [formula: string, percent: number, where: string])[] = [
  ["NaOH", 6, "CRC Handbook of Chemistry and Physics, Constant Humidity Solutions, 25 °C"],
  ["LiBr", 6, "the same"],
  ["ZnBr2", 8, "the same"],
  ["KOH", 9, "the same"],
  ["LiCl", 11, "the same"],
  ["CaBr2", 16, "the same"],
  ["LiI", 18, "the same"],
  ["CaCl2", 29, "the same"],
  ["MgCl2", 33, "the same"],
  ["NaI", 38, "the same"],
  ["Ca(NO3)2", 51, "the same; 53.1 at 20 °C: Steiger and others, Stone in Architecture, 2014"],
  ["Mg(NO3)2", 53, "the same"],
  ["NaBr", 58, "the same"],
  ["NH4NO3", 62, "the same"],
  ["KI", 69, "the same"],
  ["SrCl2", 71, "the same"],
  ["NaNO3", 74, "the same"],
  ["NaCl", 75, "the same"],
  ["NH4Cl", 79, "the same"],
  ["KBr", 81, "the same"],
  ["(NH4)2SO4", 81, "the same"],
  ["KCl", 84, "the same"],
  ["Sr(NO3)2", 85, "the same"],
  ["BaCl2", 90, "the same"],
  ["KNO3", 92, "the same"],
  ["K2SO4", 97, "the same"],
];

/** Air of a room in which salts are dried: about half saturated (common practice, no source). */
const USUAL_AIR = 55;

describe("salts that run in air", () => {
  it.each(HUMIDITY)("%s does so if the air over its solution is drier than usual air (%i %%)", (formula, percent) => {
    expect(DELIQUESCENT.some((row) => sameSubstance(row.formula, formula))).toBe(percent < USUAL_AIR);
  });

  it("are none of those that crumble", () => {
    for (const { formula } of EFFLORESCENT)
      expect(DELIQUESCENT.some((row) => formula.startsWith(`${row.formula}·`))).toBe(false);
  });
});
