import { describe, expect, it } from "vitest";
import { doesItGo, type PlanRequest, tryPlanPreparation } from "../../src";
import { fromJars, type Jar } from "../tools/jars";

const request = (equation: string, product: string, jars: readonly Jar[], more = {}): PlanRequest =>
  fromJars(equation, product, jars, "20.0 g", more);

const refusal = (given: PlanRequest) => {
  const outcome = tryPlanPreparation(given);
  if (outcome.ok) throw new Error(`planned: ${outcome.value.title}`);
  return outcome.error;
};

// Common practice, no source: a gas is driven over from a closed flask; ammonia of 14 % is not filtered on suction.
describe("a gas that is wanted", () => {
  const GASES: readonly (readonly [string, string, readonly Jar[]])[] = [
    ["Ca(OH)2 + (NH4)2SO4 -> CaSO4 + NH3 + H2O", "NH3", [["(NH4)2SO4"], ["Ca(OH)2"]]],
    ["NH4Cl + NaOH -> NaCl + NH3 + H2O", "NH3", [["NH4Cl"], ["NaOH"]]],
    ["NaCl + H2SO4 -> NaHSO4 + HCl", "HCl", [["NaCl"], ["H2SO4", "96 %"]]],
    ["CaCO3 + HCl -> CaCl2 + CO2 + H2O", "CO2", [["CaCO3"], ["HCl", "10 %"]]],
    ["Zn + HCl -> ZnCl2 + H2", "H2", [["Zn"], ["HCl", "10 %"]]],
    ["H2O2 -> H2O + O2", "O2", [["H2O2", "10 %"]]],
    ["KMnO4 -> K2MnO4 + MnO2 + O2", "O2", [["KMnO4"]]],
    ["CaCO3 -> CaO + CO2", "CO2", [["CaCO3"]]],
    ["Na2SO3 + H2SO4 -> Na2SO4 + SO2 + H2O", "SO2", [["Na2SO3"], ["H2SO4", "30 %"]]],
    ["MnO2 + HCl -> MnCl2 + Cl2 + H2O", "Cl2", [["MnO2"], ["HCl", "30 %"]]],
    ["Na2CO3 + HCl -> NaCl + CO2(g) + H2O", "CO2(g)", [["Na2CO3"], ["HCl", "10 %"]]],
  ];
  const MEANT = { acknowledge: ["poison-gas", "hydrochloric-higher-oxide"] };

  it.each(GASES)(
    "is refused before anything is weighed, with another way to it: %s",
    (equation, product, materials) => {
      const outcome = tryPlanPreparation(request(equation, product, materials, /SO2|Cl2/.test(product) ? MEANT : {}));
      const error = outcome.ok ? undefined : outcome.error;
      expect(error?.code).toBe("plan.no-procedure");
      expect(error!.message).toMatch(/is a gas: it is driven over from a closed flask and caught/);
      expect(error!.hint).toMatch(/among its materials|a solution of .* ready made/);
    },
  );

  it("names what may be planned beside it, and that plan is made", () => {
    const [equation, , materials] = GASES[0]!;
    expect(refusal(request(equation, "NH3", materials)).hint).toMatch(/plan for CaSO₄·2H₂O/);
    expect(tryPlanPreparation(request(equation, "CaSO4·2H2O", materials)).ok).toBe(true);
  });

  it("is judged all the same", () => {
    expect(doesItGo({ equation: "Zn + HCl -> ZnCl2 + H2", product: "H2" }).verdict).toBe("goes");
    expect(doesItGo({ equation: "KMnO4 -> K2MnO4 + MnO2 + O2", product: "O2" }).verdict).not.toBe("does not go");
  });

  it("is planned where it is in water already, is led into it, or is all that a precipitate leaves in it", () => {
    for (const [equation, product, materials] of [
      ["NH3 -> NH3", "NH3", [["NH3", "25 %"]]],
      ["NH3 -> NH3", "NH3", [["NH3"]]],
      ["BaCl2 + H2SO4 -> BaSO4 + HCl", "HCl", [["BaCl2·2H2O"], ["H2SO4", "10 %"]]],
    ] as const)
      expect(tryPlanPreparation(request(equation, product, materials)).ok).toBe(true);
  });
});

// Common practice, no source: hydrogencarbonates of calcium and magnesium, and the acids of carbon dioxide and sulfur dioxide,
// are known in water only.
describe("what is known in water only", () => {
  it.each([
    ["SO2 + H2O -> H2SO3", "H2SO3", "SO2"],
    ["CO2 + H2O -> H2CO3", "H2CO3", "CO2"],
    ["NH3 + H2O -> NH4OH", "NH4OH", "NH3"],
  ])("is no product that crystallises: %s", (equation, product, gas) => {
    const error = refusal(request(equation, product, [[gas]]));
    expect(error.code).toBe("plan.no-procedure");
    expect(error.hint).toBe(`write ${gas} + H2O for it`);
  });

  it("is no by-product either: its gas would go unsaid", () => {
    const sulfite = request("Na2SO3 + H2SO4 -> Na2SO4 + H2SO3", "Na2SO4", [["Na2SO3"], ["H2SO4", "10 %"]]);
    expect(refusal(sulfite).hint).toBe("write SO2 + H2O for it");
  });

  it.each([
    ["Ca(HCO3)2 -> CaCO3 + CO2 + H2O", "CaCO3", "Ca(HCO3)2"],
    ["Mg(HCO3)2 -> MgCO3 + CO2 + H2O", "MgCO3", "Mg(HCO3)2"],
  ])("is in no jar as a solid: %s", (equation, product, form) => {
    const error = refusal(request(equation, product, [[form]]));
    expect(error.code).toBe("plan.no-procedure");
    expect(error.message).toMatch(/is known as a solution only/);
  });

  it("is not asked for as crystals", () => {
    const { code, hint } = refusal(
      request("MgCO3 + CO2 + H2O -> Mg(HCO3)2", "Mg(HCO3)2", [["MgCO3"]], { isolate: true }),
    );
    expect([code, hint]).toEqual(["plan.no-procedure", "leave out isolate: the plan keeps it in its liquor"]);
  });

  it("is no liquor where another solid has taken it: lime and carbon dioxide in little water give chalk", () => {
    const { code, hint } = refusal(request("CaO + CO2 + H2O -> Ca(HCO3)2", "Ca(HCO3)2", [["CaO"]]));
    expect(code).toBe("plan.no-procedure");
    expect(hint).toMatch(/plan for CaCO₃/);
  });

  it("may be a jar of the trade: what is sold as sodium bisulfite", () => {
    const bisulfite = request("NaHSO3 + NaOH -> Na2SO3 + H2O", "Na2SO3", [["NaHSO3"], ["NaOH"]]);
    expect(tryPlanPreparation(bisulfite).ok).toBe(true);
  });
});

describe("what does not go", () => {
  it("names another way to it where a rule knows one, and who looks for one otherwise", () => {
    // copper stands above hydrogen, +0.34 V: its oxide, or an oxidiser (every textbook)
    const copper = refusal(request("Cu + H2SO4 -> CuSO4 + H2", "CuSO4·5H2O", [["Cu"], ["H2SO4", "10 %"]]));
    expect(copper.code).toBe("plan.does-not-go");
    expect(copper.hint).toMatch(/oxide, hydroxide or carbonate of Cu with the acid, or the metal with an oxidiser/);
    const spar = refusal(request("BaSO4 + NaCl -> BaCl2 + Na2SO4", "BaCl2·2H2O", [["BaSO4"], ["NaCl"]]));
    expect(spar.hint).toMatch(/findRoutes looks for one/);
  });
});
