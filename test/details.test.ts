// What the details of a refusal hold, by code: the fields that their types promise, of a call that is refused so; and that the
// codes of a `try...` function are those its type names.
import * as preparative from "preparative";
import {
  aqueousComposition,
  attempt,
  convertStrength,
  densityOfSolution,
  empiricalFormula,
  equivalentMass,
  findRoutes,
  formulaOf,
  fractionalCrystallization,
  molarMass,
  molarSolubility,
  nameOf,
  nuclide,
  type PlanErrorDetails,
  parseFormula,
  planPreparation,
  quantity,
  reactionEnthalpy,
  solubilityOf,
} from "preparative";
import { describe, expect, it } from "vitest";
import { HOSTILE } from "./tools/hostile";

function refusal(run: () => unknown) {
  const outcome = attempt(run);
  if (outcome.ok) throw new Error("it was answered");
  return outcome.error;
}

const plan = (equation: string, product: string, materials: Readonly<Record<string, string>>) =>
  planPreparation({
    equation,
    product,
    materials: Object.entries(materials).map(([form, strength]) => ({
      name: form,
      form,
      ...(strength === "" ? {} : { strength: strength as "5 %" }),
    })),
    scale: { product: "10 g" },
  });

describe("the details of a refusal", () => {
  it.each<readonly [code: string, run: () => unknown, details: object]>([
    ["quantity.look-alike", () => quantity("12.5 \u0433" as "12.5 g"), { codePoint: "U+0433" }],
    ["element.no-atomic-weight", () => molarMass("Tc2O7"), { symbol: "Tc", longestLived: 97, nuclide: "[97Tc]" }],
    ["element.unknown-nuclide", () => nuclide("25C"), { symbol: "C", massNumber: 25, known: [12, 13, 14] }],
    ["formula.look-alike", () => parseFormula("\u0421aO"), { codePoint: "U+0421", ascii: "C" }],
    ["formula.unknown-symbol", () => parseFormula("CuSo4"), { written: "So", hint: "did you mean CuSO4?" }],
    [
      "hydrate.several-readings",
      () => equivalentMass("10 g", { from: "CaHPO4·2H2O", to: "Ca3(PO4)2" }),
      {
        from: "CaHPO4.2H2O",
        to: "Ca3(PO4)2",
        readings: [
          { per: "Ca", ratio: "1/3" },
          { per: "P", ratio: "1/2" },
        ],
      },
    ],
    [
      "amount.ambiguous-percent",
      () => convertStrength("5 %" as "5 % w/w", { of: "HCl", to: "mol/L" }),
      { readings: ["% w/w", "% w/v", "% v/v"] },
    ],
    ["amount.no-density-table", () => densityOfSolution("CsI", "5 %"), { solute: "CsI" }],
    ["thermochemistry.no-data", () => reactionEnthalpy("Eu2O3 + HCl -> EuCl3 + H2O"), { missing: ["Eu2O3", "EuCl3"] }],
    ["substance.unknown-name", () => formulaOf("blue vitrol"), { nearest: ["blue vitriol"] }],
    ["substance.no-name", () => nameOf("Fe3S7Cl"), { parts: ["Fe3S7Cl"] }],
    [
      "aqueous.charged",
      () => aqueousComposition({ water: "1 kg", dissolved: [{ formula: "Na+", amount: "1 mol" }] }),
      { charge: 1 },
    ],
    ["solubility.ambiguous-formula", () => solubilityOf("C2H4O2", "20 °C"), { readings: ["CH3COOH", "HCOOCH3"] }],
    [
      "solubility.solid-changes",
      () => solubilityOf("LiBrO3", "55 °C"),
      { formula: "LiBrO3", celsius: 55, from: 50, to: 60 },
    ],
    [
      "solubility.ionic-strength",
      () => molarSolubility({ solid: "PbI2", ksp: "1.4e-8", ionicStrength: "9 mol/L" }),
      { ionicStrength: 9, limit: 0.5 },
    ],
    [
      "plan.unmatched-material",
      () => plan("NaCl + KNO3 -> NaNO3 + KCl", "NaNO3", { NaCl: "", KNO3: "", CaCO3: "" }),
      { material: "CaCO3", form: "CaCO3" },
    ],
    ["route.refused-target", () => findRoutes({ target: "Pb(N3)2", shelf: [] }), { class: "explosive" }],
  ])("of %s are what its type says", (code, run, details) => {
    const error = refusal(run);
    expect([error.code, error.details]).toEqual([code, details]);
  });

  it("of a name with several readings are the readings", () => {
    const error = refusal(() => formulaOf("alum"));
    const { readings } = error.details as { readings: readonly preparative.NameReading[] };
    expect([error.code, ...readings.map(({ formula }) => formula)]).toEqual([
      "substance.ambiguous-name",
      "KAl(SO4)2·12H2O",
      "NH4Al(SO4)2·12H2O",
      "NaAl(SO4)2·12H2O",
    ]);
  });

  it("of ratios that are not whole are the ratios and what comes nearest", () => {
    const error = refusal(() => empiricalFormula({ Fe: "50 %", O: "20 %", S: "30 %" }, { maxMultiplier: 1 }));
    expect(error.code).toBe("formula.no-simple-ratio");
    // 50/55.85, 20/16.00 and 30/32.06, over the first
    const { ratios, candidates } =
      error.details as unknown as preparative.FormulaErrorDetails["formula.no-simple-ratio"];
    expect(ratios["O"]).toBeCloseTo(20 / 15.999 / (50 / 55.845), 4);
    expect(ratios["S"]).toBeCloseTo(30 / 32.06 / (50 / 55.845), 3);
    expect(candidates[0]!.formula).toBe("FeOS");
  });

  it("of a pair of salts that does not part are the solid in its place", () => {
    // saltpetre is the least soluble in the cold: what the swap of potash saltpetre and common salt is not
    const error = refusal(() =>
      fractionalCrystallization({
        wanted: "KCl",
        other: "NaNO3",
        from: [
          { formula: "KNO3", mass: "101 g" },
          { formula: "NaCl", mass: "58 g" },
        ],
        water: "100 g",
        hot: "100 °C",
        cold: "10 °C",
      }),
    );
    expect(error.code).toBe("solubility.other-solid");
    expect(error.details).toMatchObject({ solid: "KNO3", stays: "no", wanted: "KCl" });
  });

  it("of a plan that does not go are the verdict and its reasons", () => {
    const error = refusal(() => plan("Cu + H2SO4 -> CuSO4 + H2", "CuSO4·5H2O", { Cu: "", H2SO4: "30 %" }));
    expect(error.code).toBe("plan.does-not-go");
    const { verdict, reasons } = error.details as unknown as PlanErrorDetails["plan.does-not-go"];
    expect([verdict, reasons[0]!.code]).toEqual(["does not go", "potentials"]);
  });

  it("of what must not meet are the materials and the gas, of what is never planned its danger", () => {
    const gas = refusal(() => plan("NaClO + HCl -> NaCl + Cl2 + H2O", "NaCl", { NaClO: "5 %", HCl: "30 %" }));
    expect(gas.code).toBe("plan.forbidden-combination");
    const { combinations } = gas.details as unknown as PlanErrorDetails["plan.forbidden-combination"];
    expect(combinations[0]).toMatchObject({ materials: ["NaClO", "HCl"], products: ["Cl2"] });
    const azide = refusal(() => plan("NaN3 + Pb(NO3)2 -> Pb(N3)2 + NaNO3", "Pb(N3)2", { NaN3: "", "Pb(NO3)2": "" }));
    expect(azide.code).toBe("plan.dangerous-product");
    const { dangers } = azide.details as unknown as PlanErrorDetails["plan.dangerous-product"];
    expect(dangers[0]).toMatchObject({ code: "explosive", formula: "Pb(N3)2", as: "product", opens: false });
  });
});

const LOW = ["quantity", "element", "formula"];
const MIXTURE = [...LOW, "amount", "substance", "aqueous"];
const SALTS = [...MIXTURE, "hydrate", "solubility"];
const PLANS = [...SALTS, "equation", "facts", "thermochemistry", "plan"];

/** Areas of the codes that the type of a `try...` function names. */
const AREAS: Readonly<Record<string, readonly string[]>> = {
  tryQuantity: ["quantity"],
  tryParseFormula: ["formula", "element"],
  tryMolarMass: LOW,
  tryConstitutionOf: ["formula", "element"],
  tryParseEquation: ["equation", "formula", "element"],
  tryBalance: ["equation", "formula", "element"],
  tryReactionSpace: ["equation", "formula", "element"],
  tryCautions: [...LOW, "substance"],
  tryFormulaOf: [...LOW, "substance"],
  tryNameOf: [...LOW, "substance"],
  tryShopMaterial: [...LOW, "substance"],
  trySubstance: [...LOW, "substance"],
  tryAqueousComposition: MIXTURE,
  trySolubilityOf: SALTS,
  tryPlanPreparation: PLANS,
  tryPlanSequence: PLANS,
  tryEvaluateRun: PLANS,
  tryCheckRecipe: PLANS,
  tryFindRoutes: [...PLANS, "route"],
  tryBenchSheet: [...PLANS, "route", "sheet"],
  tryBottleLabel: [...PLANS, "route", "sheet"],
  tryFromJSON: [...PLANS, "route", "sheet", "json"],
};

const DOORS = new Map(Object.entries(preparative) as [string, (...args: unknown[]) => preparative.Result<unknown>][]);

describe("the codes of an outcome", () => {
  it("are named for every function that reads what a person wrote", () => {
    const named = Object.keys(preparative).filter((name) => /^try[A-Z]/.test(name));
    expect(Object.keys(AREAS).sort()).toEqual(named.sort());
  });

  it.each(Object.entries(AREAS))("of %s are of its areas, whatever it is given", (name, areas) => {
    const door = DOORS.get(name)!;
    const made = plan("CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2", "Cu2(OH)2CO3", {
      CuSO4·5H2O: "",
      Na2CO3: "",
    });
    let refused = 0;
    expect(HOSTILE.length, "rows to test").toBeGreaterThan(0);
    for (const value of HOSTILE) {
      const request = {
        water: value,
        dissolved: value,
        equation: value,
        product: value,
        materials: value,
        scale: value,
      };
      const calls = [
        [value],
        ["NaCl", value],
        [made, value],
        [{ ...request, target: value, shelf: value }],
        [
          {
            equation: "NaCl + KNO3 -> NaNO3 + KCl",
            product: "NaNO3",
            materials: [{ name: "a", form: value }],
            scale: value,
          },
        ],
        [{ water: "1 L", dissolved: [{ formula: value, amount: value }] }],
        [{ target: value, shelf: [{ name: "a", form: value }] }],
        [{ type: "quantity", value, unit: value }],
        [made, { dried: value }],
      ];
      for (const args of calls) {
        const outcome = door(...args);
        if (outcome.ok) continue;
        refused += 1;
        expect(areas, `${name}: ${outcome.error.code}`).toContain(outcome.error.code.split(".")[0]);
      }
    }
    expect(refused).toBeGreaterThan(HOSTILE.length);
  });
});
