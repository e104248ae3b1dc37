// The gate: plans that must never come through, in whatever spelling, and everyday ones that must. That each of these is
// dangerous is textbook knowledge (Prudent Practices, Bretherick's Handbook, printed incompatibility lists; from memory).
import { describe, expect, it } from "vitest";
import {
  checkRecipe,
  type PlanRequest,
  planPreparation,
  planSequence,
  tryPlanPreparation,
} from "../../src/preparation";
import { benchSheet } from "../../src/sheet";

type Given = readonly [form: string, strength?: string];

/** A request with an amount of each material; what happens is only asked by the gate. */
const asked = (equation: string, product: string, ...materials: readonly Given[]): PlanRequest => ({
  equation,
  product,
  materials: materials.map(([form, strength], i) => ({
    name: `material ${i + 1}`,
    form,
    ...(strength === undefined ? {} : { strength: strength as "5 %" }),
  })),
  scale: { material: "material 1", portion: "10 g" },
});

/** Code of the refusal; `planned` where there is none. */
const fate = (request: PlanRequest): string => {
  const outcome = tryPlanPreparation(request);
  return outcome.ok ? "planned" : outcome.error.code;
};
const REFUSED = /^plan\.(forbidden-combination|dangerous-product)$/;

describe("the spelling of a material", () => {
  it.each([["CH3COCH3"], ["(CH3)2CO"], ["C3H6O"]])("lets no peroxide of acetone through: %s", (ketone) => {
    expect(fate(asked(`3 ${ketone} + 3 H2O2 -> C9H18O6 + 3 H2O`, "C9H18O6", [ketone], ["H2O2", "30 %"]))).toMatch(
      REFUSED,
    );
    expect(fate(asked(`${ketone} + NaClO -> CHCl3 + NaC2H3O2 + NaOH`, "CHCl3", [ketone], ["NaClO", "5 %"]))).toMatch(
      REFUSED,
    );
  });

  it.each([
    ["K(CN)", "K", 1],
    ["KCN", "K", 1],
    ["CNK", "K", 1],
    ["Na(CN)", "Na", 1],
    ["Ca(CN)2", "Ca", 2],
    ["Zn(CN)2", "Zn", 2],
    ["Cu(CN)2", "Cu", 2],
    ["Hg(CN)2", "Hg", 2],
  ] as const)("lets no acid meet %s", (cyanide, metal, n) => {
    const salt = n === 1 ? `${metal}Cl` : `${metal}Cl2`;
    const request = asked(`${cyanide} + ${n} HCl -> ${salt} + ${n} HCN`, salt, [cyanide], ["HCl", "5 %"]);
    expect(fate(request)).toMatch(REFUSED);
    // nothing opens what sets hydrogen cyanide free
    expect(fate({ ...request, acknowledge: ["acid-cyanide", "acid-cyanido-complex", "poison-gas"] })).toBe(
      "plan.dangerous-product",
    );
  });

  it("lets no ammonia in any writing meet iodine, silver or chlorine", () => {
    expect(fate(asked("NH4OH + I2 -> NI3 + NH4I + H2O", "NI3", ["NH4OH", "10 %"], ["I2"]))).toMatch(REFUSED);
    expect(fate(asked("NH4OH + AgNO3 -> Ag2O + NH4NO3 + H2O", "Ag2O", ["NH4OH", "10 %"], ["AgNO3"]))).toMatch(REFUSED);
    expect(fate(asked("NH4OH + AgCl -> [Ag(NH3)2]Cl + H2O", "[Ag(NH3)2]Cl", ["NH4OH", "10 %"], ["AgCl"]))).toMatch(
      REFUSED,
    );
    expect(fate(asked("NH4OH + Cl2 -> NH4Cl + N2 + H2O", "NH4Cl", ["NH4OH", "10 %"], ["Cl2"]))).toMatch(REFUSED);
  });

  it("lets no hypochlorous acid meet ammonia or acid", () => {
    expect(fate(asked("HClO + NH3 -> NH2Cl + H2O", "NH2Cl", ["HClO", "5 %"], ["NH3", "5 %"]))).toMatch(REFUSED);
    expect(fate(asked("HOCl + HCl -> Cl2 + H2O", "H2O", ["HOCl", "5 %"], ["HCl", "5 %"]))).toMatch(REFUSED);
  });

  it("lets no nuclide or ion hide anything", () => {
    expect(fate(asked("K[13C]N + HCl -> KCl + H[13C]N", "KCl", ["K[13C]N"], ["HCl", "5 %"]))).toMatch(REFUSED);
    expect(fate(asked("KCN + DCl -> KCl + DCN", "KCl", ["KCN"], ["DCl", "5 %"]))).toMatch(REFUSED);
    expect(fate(asked("ND3 + AgNO3 -> AgND2 + DNO3", "AgND2", ["AgNO3"]))).toMatch(REFUSED);
    expect(fate(asked("3 (CD3)2CO + 3 H2O2 -> C9D18O6 + 3 H2O", "C9D18O6", ["(CD3)2CO"], ["H2O2", "30 %"]))).toMatch(
      REFUSED,
    );
    expect(fate(asked("ClO^- + 2 H^+ + Cl^- -> Cl2 + H2O", "H2O", ["ClO^-"]))).toMatch(REFUSED);
    expect(fate(asked("ClO^- + NH3 -> Cl^- + N2H4 + H2O", "N2H4", ["ClO^-"], ["NH3", "5 %"]))).toMatch(REFUSED);
  });

  it("finds ammonium in the alphabetical order of a formula", () => {
    expect(fate(asked("ClH4N + NaClO -> NCl3 + NaCl + NaOH + H2O", "NaCl", ["ClH4N"], ["NaClO", "5 %"]))).toMatch(
      REFUSED,
    );
  });
});

/** Equation, product, materials: forbidden under a condition that the request meets. */
const MET: readonly [string, string, ...Given[]][] = [
  ["KMnO4 + H2SO4 -> Mn2O7 + K2SO4 + H2O", "Mn2O7", ["KMnO4"], ["H2SO4", "98 %"]],
  ["KMnO4 + H2SO4 -> K2SO4 + MnSO4 + O2 + H2O", "MnSO4", ["KMnO4"], ["H2SO4", "98 %"]],
  ["KMnO4 + HCl -> KCl + MnCl2 + Cl2 + H2O", "MnCl2", ["KMnO4"], ["HCl", "37 %"]],
  ["KMnO4 + C3H8O3 -> K2CO3 + Mn2O3 + CO2 + H2O", "Mn2O3", ["KMnO4"], ["C3H8O3"]],
  ["HNO3 + C2H6O -> C2H4O2 + NO2 + H2O", "C2H4O2", ["HNO3", "65 %"], ["C2H6O"]],
  ["HNO3 + C3H6O -> CO2 + NO2 + H2O", "CO2", ["HNO3", "65 %"], ["C3H6O"]],
  ["3 HNO3 + C3H8O3 -> C3H5N3O9 + 3 H2O", "C3H5N3O9", ["HNO3", "98 %"], ["C3H8O3"]],
  ["3 HNO3 + C7H8 -> C7H5N3O6 + 3 H2O", "C7H5N3O6", ["HNO3", "98 %"], ["C7H8"]],
  ["3 HNO3 + C6H6O -> C6H3N3O7 + 3 H2O", "C6H3N3O7", ["HNO3", "65 %"], ["C6H6O"]],
  ["2 HNO3 + C6H12N4 -> C6H14N6O6", "C6H14N6O6", ["HNO3", "65 %"], ["C6H12N4"]],
  ["3 HNO3 + C6H10O5 -> C6H7N3O11 + 3 H2O", "C6H7N3O11", ["HNO3"], ["C6H10O5"]],
  ["HNO3 + CO(NH2)2 -> CO(NH2)2·HNO3", "CO(NH2)2·HNO3", ["HNO3", "65 %"], ["CO(NH2)2"]],
  ["2 KNO3 + 3 C + S -> K2S + N2 + 3 CO2", "K2S", ["KNO3"], ["C"], ["S"]],
  ["KNO3 + C12H22O11 -> K2CO3 + CO2 + N2 + H2O", "K2CO3", ["KNO3"], ["C12H22O11"]],
  ["NH4NO3 + Al -> Al2O3 + N2 + H2O", "Al2O3", ["NH4NO3"], ["Al"]],
  ["NH4NO3 + Zn -> ZnO + N2 + H2O", "ZnO", ["NH4NO3"], ["Zn"]],
  ["NH4NO3 + C8H18 -> N2 + CO2 + H2O", "CO2", ["NH4NO3"], ["C8H18"]],
  ["Fe2O3 + Al -> Al2O3 + Fe", "Fe", ["Fe2O3"], ["Al"]],
  ["CuO + Mg -> MgO + Cu", "Cu", ["CuO"], ["Mg"]],
  ["K4[Fe(CN)6] + H2SO4 -> K2SO4 + FeSO4 + HCN", "HCN", ["K4[Fe(CN)6]·3H2O"], ["H2SO4", "60 %"]],
  ["K4[Fe(CN)6] + 2 H2SO4 -> H4[Fe(CN)6] + 2 K2SO4", "H4[Fe(CN)6]", ["K4[Fe(CN)6]·3H2O"], ["H2SO4", "96 %"]],
  ["H2O2 + C2H4O2 -> CH3COOOH + H2O", "CH3COOOH", ["H2O2", "50 %"], ["C2H4O2"]],
  ["K2Cr2O7 + HCl -> KCl + CrCl3 + Cl2 + H2O", "CrCl3", ["K2Cr2O7"], ["HCl", "37 %"]],
  ["NaNO2 + NH4Cl -> N2 + NaCl + H2O", "NaCl", ["NaNO2"], ["NH4Cl"]],
];

describe("a condition that the request meets", () => {
  it.each(MET)("stops %s", (...[equation, product, ...materials]: [string, string, ...Given[]]) => {
    expect(fate(asked(equation, product, ...materials))).toMatch(REFUSED);
  });

  it("is no longer met by thin solutions", () => {
    const acid = (strength: string) =>
      asked("KMnO4 + HCl -> KCl + MnCl2 + Cl2 + H2O", "MnCl2", ["KMnO4"], ["HCl", strength]);
    const stopped = (strength: string): unknown => {
      const outcome = tryPlanPreparation(acid(strength));
      return outcome.ok ? [] : outcome.error.details["combinations"];
    };
    expect(stopped("37 %")).toMatchObject([{ code: "permanganate-hydrochloric", condition: "strong acid" }]);
    expect(stopped("5 %")).toBeUndefined();
    expect(
      fate(
        asked(
          "FeSO4 + H2SO4 + H2O2 -> Fe2(SO4)3 + H2O",
          "Fe2(SO4)3",
          ["FeSO4·7H2O"],
          ["H2SO4", "10 %"],
          ["H2O2", "3 %"],
        ),
      ),
    ).toBe("planned");
  });

  it("asks how concentrated the sulfuric acid on permanganate is", () => {
    const thin = (strength: string) =>
      asked(
        "KMnO4 + FeSO4 + H2SO4 -> MnSO4 + Fe2(SO4)3 + K2SO4 + H2O",
        "Fe2(SO4)3",
        ["KMnO4"],
        ["FeSO4·7H2O"],
        ["H2SO4", strength],
      );
    expect(fate(thin("20 %"))).toBe("planned");
    expect(fate(thin("96 %"))).toBe("plan.forbidden-combination");
  });

  it("may be a strength in moles per litre", () => {
    const strong = asked("KMnO4 + HCl -> KCl + MnCl2 + Cl2 + H2O", "MnCl2", ["KMnO4"], ["HCl", "12 mol/L"]);
    expect(fate(strong)).toBe("plan.forbidden-combination");
  });

  it("opens when it is acknowledged by its code", () => {
    const thermite = asked("Fe2O3 + Al -> Al2O3 + Fe", "Fe", ["Fe2O3"], ["Al"]);
    expect(fate({ ...thermite, acknowledge: ["thermite"] })).toBe("planned");
  });
});

/** Pairs on which nothing was said. */
const WITHOUT_RULE: readonly [string, string, ...Given[]][] = [
  ["KClO4 + S -> KCl + SO2", "KCl", ["KClO4"], ["S"]],
  ["NaClO4 + C -> NaCl + CO2", "NaCl", ["NaClO4"], ["C"]],
  ["KClO3 + Sb2S3 -> KCl + Sb2O3 + SO2", "KCl", ["KClO3"], ["Sb2S3"]],
  ["KClO3 + C6H10O5 -> KCl + CO2 + H2O", "KCl", ["KClO3"], ["C6H10O5"]],
  ["KClO3 + C2H5OH -> KCl + CO2 + H2O", "KCl", ["KClO3"], ["C2H5OH"]],
  ["KBrO3 + S -> KBr + SO2", "KBr", ["KBrO3"], ["S"]],
  ["KBrO3 + C -> KBr + CO2", "KBr", ["KBrO3"], ["C"]],
  ["KBrO3 + HBr -> KBr + Br2 + H2O", "KBr", ["KBrO3"], ["HBr", "40 %"]],
  ["KNO3 + Al -> Al2O3 + KAlO2 + N2", "Al2O3", ["KNO3"], ["Al"]],
  ["KNO3 + P -> K2O + P2O5 + N2", "P2O5", ["KNO3"], ["P"]],
  ["NH4Cl + 3 Cl2 -> NCl3 + 4 HCl", "HCl", ["NH4Cl"], ["Cl2"]],
  ["(NH4)2SO4 + Br2 -> N2 + HBr + H2SO4", "HBr", ["(NH4)2SO4"], ["Br2"]],
  ["2 AgNO3 + CaC2 -> Ag2C2 + Ca(NO3)2", "Ca(NO3)2", ["AgNO3"], ["CaC2"]],
  ["H2O2 + H2SO4 -> H2SO5 + H2O", "H2SO5", ["H2O2", "30 %"], ["H2SO4", "98 %"]],
  ["H2O2 + HCOOH -> HCOOOH + H2O", "HCOOOH", ["H2O2", "30 %"], ["HCOOH"]],
  ["NaCN + NaClO -> NaOCN + NaCl", "NaOCN", ["NaCN"], ["NaClO", "10 %"]],
  ["Na + CHCl3 -> NaCl + C2H2", "NaCl", ["Na"], ["CHCl3"]],
  ["Na + C2H5OH -> NaC2H5O + H2", "NaC2H5O", ["Na"], ["C2H5OH"]],
  ["MnO2 + 4 HCl -> MnCl2 + Cl2 + 2 H2O", "MnCl2", ["MnO2"], ["HCl", "30 %"]],
  ["KHSO5 + 2 HCl -> KHSO4 + Cl2 + H2O", "KHSO4", ["KHSO5"], ["HCl", "30 %"]],
];

describe("pairs on which nothing was said before", () => {
  it.each(WITHOUT_RULE)("stop %s", (...[equation, product, ...materials]: [string, string, ...Given[]]) => {
    expect(fate(asked(equation, product, ...materials))).toMatch(REFUSED);
  });
});

describe("water", () => {
  it.each([
    ["2 Na + 2 H2O -> 2 NaOH + H2", "NaOH", "Na"],
    ["2 K + 2 H2O -> 2 KOH + H2", "KOH", "K"],
    ["NaH + H2O -> NaOH + H2", "NaOH", "NaH"],
    ["Ca3P2 + 6 H2O -> 3 Ca(OH)2 + 2 PH3", "Ca(OH)2", "Ca3P2"],
  ])("counts as a material: %s", (equation, product, form) => {
    expect(fate(asked(equation, product, [form]))).toMatch(REFUSED);
    expect(fate(asked(equation, product, [form], ["H2O"]))).toMatch(REFUSED);
  });

  it("may stand among the materials", () => {
    const lime = asked("CaO + H2O -> Ca(OH)2", "Ca(OH)2", ["CaO"], ["H2O"]);
    expect(fate(lime)).toBe("planned");
    const plan = planPreparation(lime);
    expect(plan.cautions.incompatibilities.map((one) => one.code)).toContain("water-quicklime");
    expect(plan.feeds.map((feed) => feed.how)).toEqual(["unknown", "solution"]);
    expect(benchSheet(plan)).toContain("Ca(OH)₂");
    // what is over is water in the liquor, not a salt to wash out
    const zinc = planPreparation({
      ...asked("ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2", "Zn5(CO3)2(OH)6", ["ZnSO4·7H2O"], ["Na2CO3"]),
      materials: [
        { name: "material 1", form: "ZnSO4·7H2O" },
        { name: "soda", form: "Na2CO3" },
        { name: "water", form: "H2O", excess: "10000 %" },
      ],
    });
    const washing = zinc.washing!;
    expect("salts" in washing && washing.salts).toContain("Na₂SO₄");
    expect("salts" in washing && washing.salts).not.toContain("H₂O");
    expect(zinc.checks.map((one) => one.text).join(" ")).not.toMatch(/water/);
    expect(benchSheet(zinc)).not.toMatch(/not a solute/);
  });
});

describe("what the equation takes without a material", () => {
  it("is put in all the same", () => {
    expect(fate(asked("NaClO + 2 HCl -> NaCl + Cl2 + H2O", "NaCl", ["HCl", "10 %"]))).toMatch(REFUSED);
  });
});

describe("an acid that the reaction itself sets free", () => {
  // Common practice, no source: lead dioxide is made with bleach in alkaline liquor; bleach that turns acid gives chlorine.
  it.each([
    [
      "Pb(CH3COO)2 + NaClO + H2O -> PbO2 + NaCl + CH3COOH",
      "PbO2",
      "Pb(CH3COO)2·3H2O",
      /CH3COOH that the reaction forms/,
    ],
    ["MnSO4 + NaClO + H2O -> MnO2 + NaCl + H2SO4", "MnO2", "MnSO4·H2O", /H2SO4 that the reaction forms/],
  ])("meets what is put in: %s", (equation, product, salt, said) => {
    const request: PlanRequest = {
      equation,
      product,
      materials: [
        { name: "salt", form: salt },
        { name: "bleach", form: "NaClO", strength: "5 %", excess: "20 %" },
      ],
      scale: { product: "10 g" },
    };
    expect(fate(request)).toBe("plan.forbidden-combination");
    expect(() => planPreparation(request)).toThrow(said);
    expect(() => planPreparation(request)).toThrow(/take a base into the equation/);
    expect(fate({ ...request, acknowledge: ["hypochlorite-acid"] })).toBe("planned");
  });

  it("is none where a base of the equation binds it", () => {
    const materials = [
      { name: "lead acetate", form: "Pb(CH3COO)2·3H2O" },
      { name: "bleach", form: "NaClO", strength: "5 %" },
      { name: "lye", form: "NaOH" },
    ] as const;
    const equation = "Pb(CH3COO)2 + NaClO + NaOH -> PbO2 + NaCl + CH3COONa + H2O";
    expect(fate({ equation, product: "PbO2", materials, scale: { product: "10 g" } })).toBe("planned");
  });

  it("is no danger beside an oxidiser that only strong acid makes dangerous", () => {
    const materials = [
      { name: "permanganate", form: "KMnO4" },
      { name: "manganese sulfate", form: "MnSO4·H2O" },
    ] as const;
    const equation = "KMnO4 + MnSO4 + H2O -> MnO2 + K2SO4 + H2SO4";
    expect(fate({ equation, product: "MnO2", materials, scale: { product: "10 g" } })).toBe("planned");
  });
});

describe("products that are never made", () => {
  it.each([
    ["C9H18O6", "C + H2 + O2 -> C9H18O6"],
    ["(C3H6O2)3", "C + H2 + O2 -> (C3H6O2)3"],
    ["NI3", "N2 + I2 -> NI3"],
    ["NCl3", "N2 + Cl2 -> NCl3"],
    ["Ag2C2", "Ag + C -> Ag2C2"],
    ["Pb(N3)2", "Pb + N2 -> Pb(N3)2"],
    ["PbN6", "Pb + N2 -> PbN6"],
    ["AgCNO", "Ag + C + N2 + O2 -> AgCNO"],
    ["CHN", "C + H2 + N2 -> CHN"],
    ["H3As", "As + H2 -> H3As"],
    ["CCl2O", "CO + Cl2 -> CCl2O"],
  ])("stop %s whatever is acknowledged", (product, equation) => {
    const request = asked(equation, product, [equation.split(" ")[0]!]);
    const all = ["poison-gas", "halogen-ammonia", "mercury-cadmium", "lead-acid", "azide-metal"];
    expect(fate(request)).toBe("plan.dangerous-product");
    expect(fate({ ...request, acknowledge: all })).toBe("plan.dangerous-product");
  });

  it("say what is done where it is there already", () => {
    // common practice, no source
    const hintOf = (request: PlanRequest): string => {
      const result = tryPlanPreparation(request);
      return result.ok ? "" : result.error.hint!;
    };
    const nitrite = hintOf(asked("NaNO2 + NH4Cl -> NH4NO2 + NaCl", "NH4NO2", ["NaNO2"], ["NH4Cl"]));
    expect(nitrite).toMatch(/already, do not warm, dry, scratch, make sour or close it/);
    expect(nitrite).toContain("fire brigade");
    expect(hintOf(asked("C + H2 + N2 -> CHN", "CHN", ["C"]))).toMatch(/already, leave at once/);
  });

  it("stop a material that is one of them", () => {
    expect(fate(asked("Pb(N3)2 -> Pb + N2", "Pb", ["Pb(N3)2"]))).toBe("plan.dangerous-product");
  });

  it("stop a poisonous gas that is wanted, until it is acknowledged", () => {
    const chlorine = asked("NaCl + H2O -> NaOH + Cl2 + H2", "Cl2", ["NaCl"]);
    expect(fate(chlorine)).toBe("plan.dangerous-product");
    expect(fate({ ...chlorine, product: "NaOH" })).toBe("plan.dangerous-product");
    // brine gives chlorine by a current only: chlorine to chloride stands at +1.36 V, hydrogen at 0
    expect(fate({ ...chlorine, acknowledge: ["poison-gas"] })).toBe("plan.does-not-go");
    expect(fate({ ...chlorine, acknowledge: ["poison-gas", "does-not-go"] })).toBe("plan.no-procedure");
    // nitrogen oxides that come off beside the product ask for a hood, as before
    expect(fate(asked("Cu(NO3)2·3H2O -> CuO + NO2 + O2 + H2O", "CuO", ["Cu(NO3)2·3H2O"]))).toBe("planned");
  });
});

describe("acknowledging", () => {
  const bleach = asked("NaClO + HCl -> NaCl + Cl2 + H2O", "NaCl", ["HCl", "10 %"], ["NaClO", "5 %"]);

  it("takes nothing but a list of known codes", () => {
    for (const acknowledge of ["hypochlorite-acid", "I did not read hypochlorite-acid", 5, {}, [5], [["x"]], null]) {
      const outcome = tryPlanPreparation({ ...bleach, acknowledge } as never);
      expect(outcome.ok).toBe(false);
      if (!outcome.ok) expect(outcome.error.code, String(acknowledge)).toBe("plan.acknowledge");
    }
    const misspelt = tryPlanPreparation({ ...bleach, acknowledge: ["hypochlorit-acid"] });
    expect(!misspelt.ok && misspelt.error.hint).toMatch(/hypochlorite-acid/);
    for (const code of ["*", "explosive", "deadly-gas", "plan.forbidden-combination"])
      expect(fate({ ...bleach, acknowledge: [code] })).toBe("plan.acknowledge");
  });

  it("is said on the plan and on its sheet", () => {
    const plan = planPreparation({ ...bleach, acknowledge: ["hypochlorite-acid"] });
    expect(plan.assumptions[0]).toMatchObject({ value: "hypochlorite-acid" });
    expect(plan.assumptions[0]!.what).toMatch(/acknowledged as known and meant/);
    const mixing = plan.stepCautions.find((one) => one.step === "mixing")!;
    expect(mixing.cautions.map((one) => one.text).join(" ")).toMatch(/acknowledged, and only as the steps say/);
    expect(benchSheet(plan).replace(/\s+/g, " ")).toMatch(/hypochlorite-acid \(acknowledged as known and meant: .*Cl/);
  });
});

describe("a chain and a recipe", () => {
  it("carries no danger from one step into the next", () => {
    const steps = [
      { ...asked("Cl2 + 2 NaOH -> NaClO + NaCl + H2O", "NaClO", ["NaOH"], ["Cl2"]), productName: "lye of Javel" },
      {
        equation: "NaClO + 2 HCl -> NaCl + Cl2 + H2O",
        product: "NaCl",
        materials: [
          { name: "lye of Javel", form: "NaClO" },
          { name: "acid", form: "HCl", strength: "5 %" as const },
        ],
      },
    ].map(({ scale: _, ...step }: PlanRequest | (Omit<PlanRequest, "scale"> & { scale?: never })) => step);
    expect(() => planSequence({ steps, wanted: "1 g" })).toThrow(/acid sets chlorine free/);
  });

  it("is a finding of a recipe", () => {
    const check = checkRecipe({
      equation: "NaClO + 2 HCl -> NaCl + Cl2 + H2O",
      product: "NaCl",
      materials: [
        { form: "NaClO", amount: "100 g", strength: "5 %" },
        { form: "HCl", amount: "100 g", strength: "5 %" },
      ],
    });
    const found = check.findings.filter((one) => one.code === "recipe.dangerous-pair");
    expect(found.map((one) => one.text).join(" ")).toMatch(/acid sets chlorine free/);
    expect(check.findings.map((one) => one.code)).toContain("recipe.dangerous-product");
  });

  it("is found in a later step of a recipe and in what takes no part", () => {
    const found = (recipe: Parameters<typeof checkRecipe>[0]) => checkRecipe(recipe).findings.map((one) => one.text);
    const later = found({
      equation: ["Zn + S -> ZnS", "ZnS + 2 HCl -> ZnCl2 + H2S"],
      product: "ZnCl2",
      materials: [
        { form: "Zn", amount: "6.5 g" },
        { form: "S", amount: "3.2 g" },
      ],
    });
    expect(later.join(" ")).toMatch(/HCl and ZnS: deadly gas/);
    const aside = found({
      equation: "KMnO4 -> K2MnO4 + MnO2 + O2",
      product: "MnO2",
      materials: [
        { form: "KMnO4", amount: "1 g" },
        { form: "C2H5OH", amount: "5 mL", aside: true },
      ],
    });
    expect(aside.join(" ")).toMatch(/catches fire by itself/);
  });

  it("is no finding of a harmless one", () => {
    const check = checkRecipe({
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { form: "CaCl2", amount: "11.1 g" },
        { form: "Na2CO3", amount: "10.6 g" },
      ],
    });
    expect(check.findings.filter((one) => /dangerous/.test(one.code))).toEqual([]);
  });
});

describe("what no equation has", () => {
  const chalk = { name: "chalk", form: "CaCO3" } as const;
  const acid = { name: "acid", form: "HCl", strength: "10 %" } as const;
  const fateWith = (materials: PlanRequest["materials"]): string =>
    fate({
      equation: "CaCO3 + HCl -> CaCl2 + CO2 + H2O",
      product: "CaCl2",
      materials,
      scale: { material: "chalk", portion: "10 g" },
    });

  it.each([
    ["NaClO", "plan.forbidden-combination"],
    ["KCN", "plan.forbidden-combination"],
    ["NaCl", "planned"],
  ])("is looked at all the same: %s in the pack or beside is %s", (form, expected) => {
    expect(fateWith([{ ...chalk, also: [{ form, share: "2 %" }] }, acid])).toBe(expected);
    expect(fateWith([chalk, acid, { name: "other", form, aside: true }])).toBe(expected);
  });
});
