// How little of a poisonous gas is dangerous, where a plan is refused for one.
import { describe, expect, it } from "vitest";
import { type PlanRequest, tryPlanPreparation } from "../../src/preparation";

const hintOf = (request: PlanRequest): string => {
  const tried = tryPlanPreparation(request);
  if (tried.ok) throw new Error("planned");
  return tried.error.hint ?? "";
};

// IDLH values of NIOSH: H2S 100 ppm, HCN 50 ppm and Cl2 10 ppm (documentation of 1994). A mole of gas is
// 24.05 L at 20 °C and 101.325 kPa (R T / p with R = 8.31446 J/(mol·K)); a ppm of a cubic metre is a millilitre.
describe("a refusal for a poisonous gas", () => {
  it("says how much of hydrogen cyanide is dangerous, what the batch gives, and how much air that spoils", () => {
    const hint = hintOf({
      equation: "NaCN + HCl -> NaCl + HCN",
      product: "NaCl",
      materials: [
        { name: "cyanide", form: "NaCN" },
        { name: "muriatic acid", form: "HCl", strength: "31 %" },
      ],
      scale: { product: "10 g" },
    });
    // 10 g / 58.44 g/mol = 0.1711 mol, × 24.05 L/mol = 4.12 L; / 50 mL/m3 = 82 m3
    expect(hint).toContain(
      "50 ppm of HCN in the air is immediately dangerous to life or health (IDLH value of NIOSH): the 4.12 L that this batch could give brings 82 m3 of air to it",
    );
    expect(hint).not.toContain("acknowledge: [");
  });

  it("says so beside the code of what may be meant", () => {
    const hint = hintOf({
      equation: "NaOCl + 2 HCl -> NaCl + Cl2 + H2O",
      product: "NaCl",
      materials: [
        { name: "bleach", form: "NaOCl", strength: "5 %" },
        { name: "muriatic acid", form: "HCl", strength: "31 %" },
      ],
      scale: { product: "10 g" },
    });
    // as many moles of chlorine: 4.12 L / 10 mL/m3 = 410 m3
    expect(hint).toContain(
      "10 ppm of Cl₂ in the air is immediately dangerous to life or health (IDLH value of NIOSH): the 4.12 L",
    );
    expect(hint).toContain("brings 410 m3 of air to it");
    expect(hint).toContain('acknowledge: ["hypochlorite-acid"]');
  });

  it("gives the share alone where no batch can be calculated", () => {
    const hint = hintOf({
      equation: "FeS + 2 HCl -> FeCl2 + H2S",
      product: "FeCl2",
      materials: [
        { name: "iron sulfide", form: "FeS" },
        { name: "muriatic acid", form: "HCl", strength: "31 %" },
      ],
      scale: "all",
    });
    expect(hint).toContain(
      "100 ppm of H₂S in the air is immediately dangerous to life or health (IDLH value of NIOSH)",
    );
    expect(hint).not.toContain("this batch");
  });

  it("says nothing of a gas that no figure is known of", () => {
    const hint = hintOf({
      equation: "NaOCl + NH3 -> NH2Cl + NaOH",
      product: "NH2Cl",
      materials: [
        { name: "bleach", form: "NaOCl", strength: "5 %" },
        { name: "ammonia", form: "NH3", strength: "10 %" },
      ],
      scale: { product: "10 g" },
    });
    expect(hint).not.toContain("ppm");
  });
});
