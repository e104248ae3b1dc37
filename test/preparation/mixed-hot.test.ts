// A complex whose metal and ligand make a salt that hardly dissolves: mixed hot, the ligand first. A teaching recipe of
// K2[Cu(C2O4)2]·2H2O pours the hot copper solution into the oxalate; a thesis (Ljubljana) works at 90 °C and says so for good
// crystals. The rest is common practice, no source.
import { describe, expect, it } from "vitest";
import { type PlanRequest, planPreparation } from "../../src/preparation";
import { AMMINE } from "../data/common-requests";

const oxalato = (metal: string, salt: string, product: string, beside: string): PlanRequest => ({
  equation: `${metal} + K2C2O4 + H2O -> ${product} + ${beside}`,
  product,
  materials: [
    { name: "metal salt", form: salt },
    { name: "potassium oxalate", form: "K2C2O4·H2O" },
  ],
  scale: { product: "15 g" },
});
const textsOf = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);

describe("a complex with a salt in its way", () => {
  const texts = textsOf(oxalato("CuSO4", "CuSO4·5H2O", "K2[Cu(C2O4)2]·2H2O", "K2SO4"));
  const at = (find: RegExp): number => texts.findIndex((text) => find.test(text));

  it("has the oxalate hot in the vessel before the copper goes into it, is stirred hot, and cools slowly", () => {
    const order = [
      /^Dissolve the potassium oxalate in \d+ mL/,
      /^Warm the contents to 85 °C.*CuC₂O₄ precipitates/,
      /^Pour the metal salt solution into the vessel/,
      /^Stir, still at 85 °C, until it is clear/,
      /^Let it cool slowly, undisturbed, to 20 °C/,
    ].map(at);
    expect(order).not.toContain(-1);
    expect(order).toEqual([...order].sort((one, other) => one - other));
  });

  it("asks for more than the usual excess where the plain salt stays, and speaks of no solid of which there is none", () => {
    const plan = planPreparation(oxalato("CuSO4", "CuSO4·5H2O", "K2[Cu(C2O4)2]·2H2O", "K2SO4"));
    expect(plan.checks.map(({ text }) => text).join("\n")).toMatch(/where CuC₂O₄ stays undissolved it takes more/);
    const [reason] = plan.feasibility.reasons;
    expect(reason!.text).toMatch(/as CuC₂O₄/);
    expect(reason!.text).not.toMatch(/\b0 % as/);
    const ammine = planPreparation(AMMINE).checks.map(({ text }) => text);
    expect(ammine.join("\n")).toMatch(/times the .* that the formula contains/);
    expect(ammine.join("\n")).not.toMatch(/stays undissolved/);
  });

  it("says nothing of a gel where crystals are weighed", () => {
    expect(texts.join("\n")).not.toMatch(/gel/);
  });

  it("iron(III) oxalate dissolves, so that its complex is mixed as before", () => {
    const iron = textsOf(oxalato("FeCl3", "FeCl3·6H2O", "K3[Fe(C2O4)3]·3H2O", "KCl")).join("\n");
    expect(iron).not.toMatch(/still at 85 °C|precipitates and hardly/);
  });

  it("an ammine is never warmed for it, nor a cyanide", () => {
    expect(textsOf(AMMINE).join("\n")).not.toMatch(/Warm the contents/);
  });
});
