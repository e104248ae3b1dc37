// What independent readers objected to in printed sheets, as rules; the preparations are theirs. Facts of the bench are common
// practice, no source.
import { type PlanRequest, planPreparation, solubilityOf, tryPlanPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const refusal = (request: PlanRequest): { code: string; message: string; hint: string } => {
  const outcome = tryPlanPreparation(request);
  if (outcome.ok) throw new Error("planned");
  const { code, message, hint = "" } = outcome.error;
  return { code, message: message.split("\n")[0]!, hint };
};

describe("packs that give a poisonous gas where they meet", () => {
  const chlorine: PlanRequest = {
    equation: "NaOCl + 2 HCl -> NaCl + Cl2 + H2O",
    product: "Cl2",
    materials: [
      { name: "bleach", form: "NaOCl", strength: "6.0 %" },
      { name: "muriatic acid", form: "HCl", strength: "31 %", excess: "20 %" },
    ],
    scale: { product: "10 g" },
  };

  // chlorine: H331 (CLP, Annex VI)
  it("are refused with the gas by name, and that it is poisonous", () => {
    expect(refusal(chlorine)).toMatchObject({
      code: "plan.forbidden-combination",
      message: "NaOCl and HCl: acid sets chlorine free (a poisonous gas: chlorine, Cl₂)",
    });
    const sulfide: PlanRequest = {
      equation: "Na2S + 2 HCl -> 2 NaCl + H2S",
      product: "NaCl",
      materials: [
        { name: "sulfide", form: "Na2S" },
        { name: "acid", form: "HCl", strength: "10 %" },
      ],
      scale: { product: "10 g" },
    };
    const { message, hint } = refusal(sulfide);
    expect(message).toContain("(a poisonous gas: hydrogen sulfide, H₂S)");
    expect(hint).toMatch(/^under a hood that works, or not at all; .*acknowledge: \["acid-sulfide"\]/);
  });

  it("have no code in the hint where the gas is what is wanted: none leads to a plan", () => {
    const { hint } = refusal(chlorine);
    expect(hint).not.toContain("hypochlorite-acid");
    expect(hint).toMatch(/^never in an open vessel, nor in a room/);
    expect(refusal({ ...chlorine, acknowledge: ["hypochlorite-acid"] }).code).toBe("plan.no-procedure");
    expect(refusal({ ...chlorine, product: "NaCl" }).hint).toContain('acknowledge: ["hypochlorite-acid"]');
  });

  it("that give none say nothing of a gas", () => {
    const { message, hint } = refusal({
      equation: "NaNO2 + NH4Cl -> N2 + NaCl + 2 H2O",
      product: "NaCl",
      materials: [
        { name: "nitrite", form: "NaNO2" },
        { name: "sal ammoniac", form: "NH4Cl" },
      ],
      scale: { product: "5 g" },
    });
    expect(message).not.toContain("poisonous");
    expect(hint).toMatch(/^if this is known and meant/);
  });

  // chlorine dioxide: H330 (CLP, Annex VI)
  it("are known by the statements of the gas where it is listed as an explosive", () => {
    const { message } = refusal({
      equation: "KClO3 + 6 HCl -> KCl + 3 Cl2 + 3 H2O",
      product: "KCl",
      materials: [
        { name: "chlorate", form: "KClO3" },
        { name: "acid", form: "HCl", strength: "30 %" },
      ],
      scale: { product: "5 g" },
    });
    expect(message).toContain("sets chlorine dioxide free (a poisonous gas: chlorine dioxide, ClO₂)");
  });
});

describe("a liquor that is filtered hot and not boiled down after it", () => {
  const keeps = (formula: string, at: "65 °C" | "50 °C"): number =>
    solubilityOf(formula, at).perHundredGramsWater.toNumber("g") / 100;
  const textOf = (request: PlanRequest, start: RegExp): string =>
    planPreparation(request).steps.find(({ text }) => start.test(text))!.text;

  const crude: PlanRequest = {
    equation: "CuSO4.5H2O -> CuSO4.5H2O",
    product: "CuSO4.5H2O",
    materials: [{ name: "crude copper sulfate", form: "CuSO4.5H2O", assay: "98 %" }],
    scale: { material: "crude copper sulfate", portion: "50.0 g" },
  };

  it("is saturated 15 K below the filter of a crude salt", () => {
    // 49.0 g are 49.0 × 159.60 / 249.68 = 31.32 g of CuSO4 and 17.68 g of water
    const water = 31.32 / keeps("CuSO4", "65 °C") - 17.68;
    const dissolve = planPreparation(crude).steps.find(({ operation }) => operation === "dissolve")!;
    expect(dissolve.amounts[0]!.toNumber("g")).toBeCloseTo(water, 0);
    expect(textOf(crude, /^Look through/)).toContain("filter it at 80 °C through a warmed funnel");
  });

  it("is as it was where the pack has nothing besides: nearly saturated it is filtered near the boil", () => {
    const pure = { ...crude, materials: [{ name: "crude copper sulfate", form: "CuSO4.5H2O" }] };
    expect(textOf(pure, /look through/)).toContain("at 90 to 95 °C");
  });

  it("is saturated 10 K below it where it stands on metal and keeps no more near the boil", () => {
    const vitriol: PlanRequest = {
      equation: "Fe + H2SO4 + 7 H2O -> FeSO4.7H2O + H2",
      product: "FeSO4.7H2O",
      materials: [
        { name: "steel wool", form: "Fe", assay: "98 %", excess: "10 %" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { product: "50.0 g" },
    };
    const filter = planPreparation(vitriol).steps.find(({ text }) => text.startsWith("Filter hot (60 °C)"))!;
    // 50.0 × 151.90 / 278.01 = 27.32 g of FeSO4, 48.5 g in 100 g of water at 50 °C: about 56 g of water
    expect(filter.before.water.toNumber("g")).toBeCloseTo(27.32 / keeps("FeSO4", "50 °C"), 0);
    expect(planPreparation(vitriol).steps.some(({ operation }) => operation === "concentrate")).toBe(false);
  });
});
