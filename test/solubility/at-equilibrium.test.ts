// The whole balance beside the hand calculation: what protons, ligands and activities change. Outcomes: Q from the acid
// constants, ligand balances with the constants of the tables, and gypsum's measured 0.0151 mol/L (see the aqueous tests).
import { describe, expect, it } from "vitest";
import { willPrecipitate } from "../../src";

const mix = (solid: string, ions: Readonly<Record<string, number>>, pH?: number) =>
  willPrecipitate({
    solid,
    solutions: [
      {
        volume: "1 L",
        ions: Object.entries(ions).map(([ion, c]) => ({ ion, concentration: `${c} mol/L` as const })),
      },
    ],
    ...(pH === undefined ? {} : { pH }),
  }).atEquilibrium!;

describe("a mixture at equilibrium", () => {
  it.each([
    ["CaC2O4·H2O", { "Ca^2+": 0.01, "C2O4^2-": 0.01 }, 0],
    ["CaCO3", { "Ca^2+": 0.01, "CO3^2-": 0.01 }, 5],
    ["BaCO3", { "Ba^2+": 0.01, "CO3^2-": 0.01 }, 3],
    ["NH4MgPO4·6H2O", { "Mg^2+": 0.01, "NH4+": 0.01, "PO4^3-": 0.01 }, 3],
    ["Cu(OH)2", { "Cu^2+": 0.05, NH3: 2 }, 11],
    ["AgCl", { "Ag+": 0.01, "Cl-": 0.01, NH3: 1 }, undefined],
    ["Zn(OH)2", { "Zn^2+": 0.1 }, 14],
    ["CuC2O4", { "Cu^2+": 0.05, "C2O4^2-": 0.5 }, undefined],
    ["CaCO3", { "Ca^2+": 0.01, "CO3^2-": 0.01, "C10H12N2O8^4-": 0.02 }, undefined],
    ["AgCl", { "Ag+": 0.001, "Cl-": 2.5 }, undefined],
    ["CaSO4·2H2O", { "Ca^2+": 0.01, "SO4^2-": 0.01 }, undefined],
  ] as const)("keeps %s of %j at pH %s clear", (solid, ions, pH) => {
    const found = mix(solid, ions, pH);
    expect(found.precipitates).toBe(false);
    expect(found.saturation.value.toNumber()).toBeLessThan(1);
    expect(found.fallsOut.isZero()).toBe(true);
  });

  it("lets fall what falls, and counts what stays in all its forms", () => {
    const barium = mix("BaSO4", { "Ba^2+": 0.05, "SO4^2-": 0.05 });
    expect(barium.precipitates).toBe(true);
    expect(barium.ions[0]!.shareLeft.value.toNumber()).toBeLessThan(0.2);
    const zinc = mix("ZnC2O4·2H2O", { "Zn^2+": 0.05, "C2O4^2-": 0.5 });
    expect(zinc.ions.find(({ formula }) => formula === "Zn^2+")!.shareLeft.value.toNumber()).toBeCloseTo(35, -1);
  });

  it("is not known beyond the activity model", () => {
    const verdict = willPrecipitate({
      solid: "PbI2",
      solutions: [
        {
          volume: "1 L",
          ions: [
            { ion: "Pb^2+", concentration: "0.01 mol/L" },
            { ion: "I-", concentration: "4 mol/L" },
          ],
        },
      ],
    });
    expect(verdict.atEquilibrium).toBeUndefined();
  });
});
