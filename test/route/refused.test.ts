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
    // an oxidiser and what it burns in one solid (energetic pairing, by class)
    "[Cu(NH3)4](NO3)2",
    "[Co(NH3)6](NO3)3",
    "[Cr(NH3)6](NO3)3",
    "NH4NO2",
    "NH4IO3",
    "(NH4)2Ce(NO3)6",
    "KNO3·C·S",
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
    // hydrazine and what it is bound in: carcinogen and rocket fuel (general knowledge, from memory)
    "N2H4",
    "N2H4·H2O",
    "NH2NH2",
    "N2H5Cl",
    "N2H6SO4",
    "(N2H5)2SO4",
    "[Ni(N2H4)3](NO3)2",
    // vapours of acid anhydrides, and a nitro compound that shows no ion (from memory)
    "N2O3",
    "N2O5",
    "SO3",
    "C(NO2)4",
    // the letters of a trade read as a formula of tritium and nitrogen
    "TNT",
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
    [["HgCl2", "mercury(II) chloride", "Cl2Hg", "mercury(II) chloride solution", "Hg2+ Cl-"]],
    [["Pb(N3)2", "lead(II) azide", "lead azide", "dry lead azide", "Pb2+ N3-"]],
    [["Hg(CNO)2", "mercury(II) fulminate", "mercury fulminate", "mercury fulminate crystals"]],
    [["C9H18O6", "TATP", "tatp", "acetone peroxide", "Acetone peroxide, dry"]],
    [["Tl2SO4", "thallium(I) sulfate", "thallium sulfate", "Tl+ SO4^2-"]],
    [["Cl2", "chlorine", "chlorine gas", "Cl2 gas", "gaseous chlorine"]],
    [
      [
        "KClO3",
        "potassium chlorate solution",
        "a solution of potassium chlorate in water",
        "K+ ClO3-",
        "K+ + ClO3-",
        "KClO3(aq)",
      ],
    ],
    [["NH4NO3", "NH4+ NO3-", "ammonium nitrate solution"]],
    [["N2H6SO4", "hydrazine sulfate", "hydrazinium sulfate"]],
    [["N2H4", "(NH2)2", "NH2NH2", "H4N2", "hydrazine"]],
    [["C(NO2)4", "CN4O8", "tetranitromethane"]],
    [["[Ni(N2H4)3](NO3)2", "NiH12N8O6"]],
  ])("is refused alike however it is written: %j", (writings) => {
    const refusals = writings.map(refusalOf);
    expect(refusals.length, "rows to test").toBeGreaterThan(0);
    for (const one of refusals) expect(one).toEqual(refusals[0]);
    expect(refusals[0]!.code).toBe("route.refused-target");
  });
});

describe("a name that nobody reads", () => {
  it("is unknown, where no word of it says a class", () => {
    for (const target of ["moon dust", "mauve number 7", "leaden sky", "a powder"])
      expect(refusalOf(target).code).toBe("route.unknown-target");
  });

  it("is refused, where a word of it says one", () => {
    for (const target of [
      "some hydrazine thing",
      "methyl mercury",
      "zinc perchlorate mush",
      "black powder",
      "arsenical glass",
    ])
      expect(refusalOf(target).code).toBe("route.refused-target");
  });

  it("leaves what only sounds like one", () => {
    for (const target of [
      "potassium ferrocyanide",
      "potassium hexacyanoferrate(II)",
      "silver chloride",
      "zinc nitrate",
    ])
      expect(refusalOf(target).code).not.toBe("route.refused-target");
  });
});

describe("no route", () => {
  it.each([
    ["heats an azide", "Na", ["NaN3"]],
    ["heats a chlorate", "KCl", ["KClO3"]],
    ["heats a perchlorate", "KCl", ["KClO4"]],
    ["heats a hypochlorite", "CaCl2·6H2O", ["Ca(ClO)2·3H2O"]],
    ["heats a dichromate", "Cr2O3", ["(NH4)2Cr2O7"]],
    ["takes silver oxalate from a jar", "AgI", ["Ag2C2O4", "KI"]],
    ["leaves silver with ammonia", "Ag2CO3", ["AgNO3", "NH4HCO3"]],
    ["leaves ammonium nitrate", "CaCO3", ["Ca(NO3)2·4H2O", "NH4HCO3"]],
    ["gives off nitrogen oxides", "CuO", ["Cu(NO3)2·3H2O"]],
    ["gives off sulfur oxides", "Fe2O3", ["FeSO4·7H2O"]],
    ["sets hydrogen sulfide free", "ZnSO4·7H2O", ["ZnS", "H2SO4"]],
    ["leaves nitric acid", "AgCl", ["AgNO3", "HCl"]],
    ["passes lead", "NaCH3COO·3H2O", ["Pb(CH3COO)2·3H2O", "Na2SO4"]],
  ])("%s", (_, target, forms) => {
    expect(findRoutes({ target, shelf: jars(...forms) }).routes).toEqual([]);
  });

  it("passes silver oxalate on the way, or makes it, in whatever writing", () => {
    for (const target of ["Ag2C2O4", "silver oxalate", "C2Ag2O4"])
      expect(refusalOf(target).code).toBe("route.refused-target");
    const { routes } = findRoutes({ target: "AgI", shelf: jars("AgNO3", "Na2C2O4", "KI"), limit: 10 });
    expect(routes.length, "rows to test").toBeGreaterThan(0);
    for (const { steps } of routes) for (const { product } of steps) expect(product).not.toBe("Ag₂C₂O₄");
  });

  it("passes, makes or sets free what is never made", () => {
    for (const target of ["CuCl2·2H2O", "ZnSO4·7H2O", "Na2SO4", "KNO3", "CuO", "FeCl3", "Ag", "I2", "KI"]) {
      for (const route of findRoutes({ target, shelf: SHELF, limit: 10 }).routes)
        for (const { equation } of route.steps)
          for (const { formula } of equation.products)
            expect(["Cl2", "NO", "NO2", "SO2", "H2S", "CO", "HCN", "SO3"]).not.toContain(formula.toString());
    }
  });
});
