// What independent readers objected to in printed sheets, as rules; the preparations are theirs. Facts of the bench are common
// practice, no source.
import { type PlanRequest, tryPlanPreparation } from "preparative";
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
