// Solids that plain water or too much heat turns: the wash that works as the step itself, the end that is seen, the warmth they stand
// in. Common practice, no source; the warmth and the colours of copper(I) chloride from memory.
import { type PlanRequest, type ProcedureStep, planPreparation, washAdvice } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const CUCL: PlanRequest = {
  equation: "CuSO4 + Na2SO3 + NaCl + H2O -> CuCl + Na2SO4 + H2SO4",
  product: "CuCl",
  materials: [
    { name: "blue vitriol", form: "CuSO4·5H2O" },
    { name: "sodium sulfite", form: "Na2SO3", excess: "10 %" },
    { name: "table salt", form: "NaCl", excess: "5 %" },
  ],
  scale: { product: "20 g" },
};

const saying = (steps: readonly ProcedureStep[], words: RegExp): ProcedureStep => {
  const found = steps.find(({ text }) => words.test(text));
  if (found === undefined) throw new Error(`no ${words} in:\n${steps.map(({ text }) => text).join("\n")}`);
  return found;
};
const gramsOf = (contents: ProcedureStep["before"], formula: string): number => {
  const own = contents.dissolved.find((one) => one.formula === formula);
  return own === undefined ? 0 : own.amount.in("mol").toNumber() * 36.46;
};

describe("copper(I) chloride, which water turns green", () => {
  const { steps } = planPreparation(CUCL);
  const wash = saying(steps, /^Wash .* each of/);

  it("is washed with very dilute hydrochloric acid, the acid that makes it counted, and then with alcohol", () => {
    const liquid = wash.put[0]!;
    const all = liquid.mass.in("g").toNumber();
    expect(gramsOf(liquid, "HCl")).toBeCloseTo(0.01 * all, 3);
    // 1 g of HCl in 100 g: 1 / 0.36 / 1.18 g/mL is 2.35 mL of the acid of 36 %
    expect(all).toBeCloseTo(100, 3);
    expect(wash.text).toContain(
      "1 % hydrochloric acid (2.4 mL of the acid of 36 % into 100 mL of water for all of them",
    );
    expect(wash.text).not.toContain("better");
    const at = steps.indexOf(wash);
    expect(steps.slice(at + 1).some(({ alcohol }) => alcohol !== undefined)).toBe(true);
    expect(benchSheet(planPreparation(CUCL), { format: "text" })).toMatch(
      /2\.4 mL of HCl, 36 % by mass, for 100 mL of wash/,
    );
  });

  it("loses none of the acid from the books: what stays with the cake and what is poured away is what was put in", () => {
    const away = wash.left.reduce((all, { contents }) => all + gramsOf(contents, "HCl"), 0);
    expect(gramsOf(wash.after, "HCl") + away).toBeCloseTo(gramsOf(wash.put[0]!, "HCl"), 6);
  });

  it("is not tested for chloride after that, nor for acid", () => {
    const test = saying(steps, /^Test the last wash/);
    expect(test.text).not.toMatch(/for Cl⁻|Cl⁻ \(|H⁺/);
    // copper(I), which the acid wash dissolves, takes the colour of iodine as sulfite does
    expect(test.text).toMatch(/no test tells SO₃²⁻ and Cl⁻ beside what the product and the wash give off/);
    expect(test.text).toMatch(/SO₄²⁻ \(barium chloride/);
  });

  it("is kept warm under the hood until it is white", () => {
    const end = saying(steps, /^Warm it to 60 °C and keep it there/);
    expect(end.text).toMatch(/under the hood \(sulfur dioxide leaves it\), until the solid is white/);
    expect(steps.indexOf(end)).toBeLessThan(steps.indexOf(saying(steps, /^Filter the CuCl/)));
  });
});

describe("the advice for a wash", () => {
  it("names the acid that has to be in it, its strength and the strength it is sold in", () => {
    const advice = washAdvice({ product: "CuBr", washedOut: ["Na2SO4", "NaBr"] });
    expect(advice.acid).toMatchObject({ formula: "CH3COOH", strength: "1 %", sold: "80 %" });
    expect(washAdvice({ product: "CaCO3", washedOut: ["NaCl"] }).acid).toBeUndefined();
  });
});

describe("basic copper carbonate", () => {
  it("stands at 50 to 65 °C in its liquor: hotter it turns black", () => {
    const { procedure } = planPreparation({
      equation: "CuSO4 + Na2CO3 + H2O -> Cu2CO3(OH)2 + Na2SO4 + CO2",
      product: "Cu2CO3(OH)2",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "washing soda", form: "Na2CO3·10H2O", excess: "8 %" },
      ],
      scale: { product: "50 g" },
    });
    expect(procedure.digestion).toMatch(/at 50 to 65 °C .* turns black/);
    expect(procedure.digestion).not.toContain("90 °C");
  });
});
