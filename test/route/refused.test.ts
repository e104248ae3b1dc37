// What no route leads to: classes, not names. Whatever the writing, the refusal is the same, and it says nothing but the class.
import { findRoutes, isPreparativeError } from "preparative";
import { describe, expect, it } from "vitest";
import { jars } from "./shelves";

const SHELF = jars(
  "NaCl",
  "KCl",
  "NH3",
  "HNO3",
  "HCl",
  "H2SO4",
  "NaOH",
  "KOH",
  "AgNO3",
  "CuSO4·5H2O",
  "Pb(NO3)2",
  "K2Cr2O7",
  "MnO2",
  "H2O2",
  "I2",
  "C2H5OH",
  "Na2S",
  "Zn",
  "Hg",
  "As2O3",
  "K4[Fe(CN)6]·3H2O",
);

const refusalOf = (target: string): { code: string; message: string; details: unknown } => {
  try {
    findRoutes({ target, shelf: SHELF });
  } catch (error) {
    if (isPreparativeError(error)) return { code: error.code, message: error.message, details: error.details };
  }
  return { code: "answered", message: "", details: {} };
};

describe("a target that is never made", () => {
  it.each([
    "Cl2",
    "H2S",
    "HCN",
    "PH3",
    "AsH3",
    "NO2",
    "SO2",
    "CO",
    "NaN3",
    "Pb(N3)2",
    "AgCNO",
    "Hg(CNO)2",
    "NI3",
    "NCl3",
    "KClO3",
    "KClO4",
    "NH4ClO4",
    "NaClO",
    "KMnO4",
    "K2CrO4",
    "Na2Cr2O7·2H2O",
    "CrO3",
    "HgCl2",
    "Hg2Cl2",
    "PbI2",
    "PbCrO4",
    "As2O3",
    "CdCO3",
    "Tl2SO4",
    "BeSO4",
    "KCN",
    "AgCN",
    "NH4NO3",
    "[Ag(NH3)2]NO3",
    "Ag3N",
    "C9H18O6",
    "Na2O2",
    "K2S2O8",
    "HNO3",
    "H2O2",
    "PCl3",
    "SOCl2",
    "HI",
    "C4H6O3",
  ])("%s is refused by its class", (target) => {
    const refusal = refusalOf(target);
    expect(refusal.code).toBe("route.refused-target");
    expect(Object.keys(refusal.details as object)).toEqual(["class"]);
    expect(refusal.message).toBe("no route is given to a substance of this class");
  });

  it.each([
    [["PbI2", "I2Pb", "lead(II) iodide", "lead iodide", "PbI₂", " PbI2 "]],
    [["NH4NO3", "ammonium nitrate", "N2H4O3", "(NH4)NO3", "NH₄NO₃"]],
    [["Na2Cr2O7", "Na2Cr2O7·2H2O", "sodium dichromate", "Na2Cr2O7.2H2O"]],
    [["KClO3", "potassium chlorate", "ClKO3"]],
    [["HgCl2", "mercury(II) chloride", "Cl2Hg"]],
  ])("is refused alike however it is written: %j", (writings) => {
    const refusals = writings.map(refusalOf);
    for (const one of refusals) expect(one).toEqual(refusals[0]);
    expect(refusals[0]!.code).toBe("route.refused-target");
  });
});

describe("no route", () => {
  it("passes, makes or sets free what is never made", () => {
    for (const target of ["CuCl2·2H2O", "ZnSO4·7H2O", "Na2SO4", "KNO3", "CuO", "FeCl3", "Ag", "I2", "KI"]) {
      for (const route of findRoutes({ target, shelf: SHELF, most: 10 }).routes)
        for (const { equation } of route.steps)
          for (const { formula } of equation.products)
            expect(["Cl2", "NO", "NO2", "SO2", "H2S", "CO", "HCN", "SO3"]).not.toContain(formula.toString());
    }
  });
});
