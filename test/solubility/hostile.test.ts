// A drawer of bad inputs thrown at every entry point: nothing but the library's own coded errors may come out, and the
// next good call must still work.
import { describe, expect, it } from "vitest";
import { isPreparativeError } from "../../src/foundation/error";
import * as solubility from "../../src/solubility";
import * as thermochemistry from "../../src/thermochemistry";

const HOSTILE: readonly unknown[] = [
  "",
  " ",
  "NACL",
  "__proto__",
  "constructor",
  "toString",
  "H2O",
  "e-",
  "💧",
  "NaCl\u0000",
  "Na\u202eCl",
  "(".repeat(5000),
  "A".repeat(100_000),
  "20,5 °C",
  "20",
  "-300 °C",
  "1e999 g",
  "NaN g",
  0,
  -1,
  Number.NaN,
  null,
  undefined,
  true,
  [],
  {},
  { value: "x", unit: "g" },
  () => 1,
];

/** One good call for each function, as a function of the part to spoil. */
const calls: Record<string, (bad: never) => unknown> = {
  "solubilityOf formula": (bad) => solubility.solubilityOf(bad, "20 °C"),
  "solubilityOf temperature": (bad) => solubility.solubilityOf("NaCl", bad),
  solidTransitions: (bad) => solubility.solidTransitions(bad),
  solubilityRule: (bad) => solubility.solubilityRule(bad),
  "waterToDissolve mass": (bad) => solubility.waterToDissolve({ formula: "NaCl", mass: bad, temperature: "20 °C" }),
  "waterToDissolve waterFactor": (bad) =>
    solubility.waterToDissolve({ formula: "NaCl", mass: "1 g", temperature: "20 °C", waterFactor: bad }),
  "saturatedSolution density": (bad) =>
    solubility.saturatedSolution({ formula: "NaCl", temperature: "20 °C", density: bad }),
  "remainsInSolution water": (bad) =>
    solubility.remainsInSolution({ substances: [], water: bad, temperature: "20 °C" }),
  "residual water": (bad) => solubility.lossToLiquor({ formula: "NaCl", water: bad, temperature: "20 °C" }),
  "washPlan target": (bad) =>
    solubility.washPlan({
      dryCakeMass: "1 g",
      kindOfSolid: "hydroxide gel",
      saltConcentration: "1 g/L",
      washVolume: "1 mL",
      targetResidue: bad,
    }),
  retainedLiquor: (bad) => solubility.retainedLiquor(bad),
  "crystallise hot": (bad) => solubility.crystallise({ formula: "KNO3", mass: "1 g", hot: bad, cold: "0 °C" }),
  solubilityProduct: (bad) => solubility.solubilityProduct(bad),
  molarSolubility: (bad) => solubility.molarSolubility({ solid: "AgCl", ksp: bad }),
  hydroxidePrecipitationRange: (bad) =>
    solubility.hydroxidePrecipitationRange({ metal: bad, concentration: "1 mol/L" }),
  precipitatedCarbonate: (bad) => solubility.precipitatedCarbonate({ metal: bad, precipitant: "soda" }),
  reactionEnthalpy: (bad) => thermochemistry.reactionEnthalpy(bad),
  formationEnthalpy: (bad) => thermochemistry.formationEnthalpy(bad),
  temperatureRise: (bad) => thermochemistry.temperatureRise({ heat: bad, mass: "1 kg" }),
  sulfuricAcidDilution: (bad) => thermochemistry.sulfuricAcidDilution(bad),
};

describe("hostile input", () => {
  it.each(Object.keys(calls))("%s lets nothing out but coded errors", (name) => {
    for (const bad of HOSTILE) {
      try {
        calls[name]!(bad as never);
      } catch (error) {
        const shown = typeof bad === "string" ? bad.slice(0, 20) : String(bad);
        expect(isPreparativeError(error), `${name} with ${shown}: ${error}`).toBe(true);
      }
    }
    expect(solubility.solubilityOf("NaCl", "20 °C").perHundredGramsWater.value.toString()).toBe("35.89");
  });
});
