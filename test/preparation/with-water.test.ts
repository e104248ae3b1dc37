// What water makes something else of is not dissolved: the water is there first, and the solid goes into it in portions. Common
// practice, no source; volumes of gas at 20 °C and 1 atm, 24.06 L/mol.
import { type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const plan = (equation: string, product: string, ...forms: readonly string[]) =>
  planPreparation({
    equation,
    product,
    materials: forms.map((form) => ({ name: form, form })),
    scale: { material: forms[0]!, portion: "10.0 g" },
  } satisfies PlanRequest);

describe("a material that water takes", () => {
  it.each([
    ["quicklime", "CaO + H2O -> Ca(OH)2", "Ca(OH)2", "CaO"],
    ["baryta", "BaO + H2O -> Ba(OH)2", "Ba(OH)2", "BaO"],
    ["phosphorus pentoxide", "P4O10 + H2O -> H3PO4", "H3PO4", "P4O10"],
    ["sodium peroxide", "Na2O2 + H2O -> NaOH + O2", "NaOH", "Na2O2"],
    ["bismuth chloride", "BiCl3 + H2O -> BiOCl + HCl", "BiOCl", "BiCl3"],
  ])("goes into the water, and not the water onto it: %s", (_, equation, product, form) => {
    const texts = plan(equation, product, form).steps.map(({ text }) => text);
    const water = texts.findIndex((text) => /^Put \d+ mL of water into the vessel/.test(text));
    const solid = texts.findIndex((text) => text.startsWith(`Add the 10.0 g of ${form} in`));
    expect(water).toBeGreaterThan(0);
    expect(solid).toBe(water + 1);
    expect(texts.some((text) => text.startsWith("Dissolve"))).toBe(false);
  });

  it("says how much gas comes, and from one portion of it", () => {
    const { steps, gas } = plan("CaC2 + H2O -> C2H2 + Ca(OH)2", "Ca(OH)2", "CaC2");
    // 10.0 g / 64.10 g/mol × 24.06 L/mol = 3.75 L
    expect(gas[0]!.volume.toNumber("L")).toBeCloseTo(3.75, 1);
    expect(steps.find(({ text }) => text.startsWith("Add the"))!.text).toMatch(
      /in at least \d+ portions .*3\.7\d L of C₂H₂ in all, \d+ mL from one portion/,
    );
  });

  it("is a hydrate that is dissolved, where water only makes the hydrate of it", () => {
    const texts = plan("CuSO4 + H2O -> CuSO4·5H2O", "CuSO4·5H2O", "CuSO4").steps.map(({ text }) => text);
    expect(texts.some((text) => text.startsWith("Dissolve the CuSO4"))).toBe(true);
  });
});

describe("what gets hot as it dissolves", () => {
  it("is put in a little at a time, cooled", () => {
    const step = plan("AlCl3 + NaOH -> Al(OH)3 + NaCl", "Al(OH)3", "AlCl3", "NaOH").steps.find(({ text }) =>
      text.startsWith("Dissolve the AlCl3"),
    )!;
    expect(step.text).toMatch(/it warms by about 7\d K if put in at once: a little at a time, in a bath of cold water/);
  });

  it("is a lye that does not boil as it is made", () => {
    const step = plan("NH4Cl + NaOH -> NaCl + NH3 + H2O", "NaCl", "NH4Cl", "NaOH").steps.find(({ text }) =>
      text.startsWith("Dissolve the NaOH"),
    )!;
    // 10.0 g / 53.49 g/mol = 0.187 mol, at 4 mol in a kilogram of water 47 g; heat of solution 44.5 kJ/mol over 54 g of lye
    expect(step.amounts[0]!.toNumber("g")).toBeCloseTo(46.7, 0);
    expect(step.text).toMatch(/it warms by about 3\d K/);
  });

  it("is kept hot where the cold is too slow: sugar and alkaline copper", () => {
    const texts = plan(
      "2 CuSO4 + C6H12O6 + 5 NaOH -> Cu2O + NaC6H11O7 + 2 Na2SO4 + 3 H2O",
      "Cu2O",
      "CuSO4·5H2O",
      "C6H12O6",
      "NaOH",
    ).steps.map(({ text }) => text);
    expect(
      texts.some((text) => /^Keep it at 80 °C .*until no green or blue is left and the solid is brick red/.test(text)),
    ).toBe(true);
  });
});
