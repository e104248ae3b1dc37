// What the steps and checks name where several materials could be meant. Amounts by hand from molar masses (IUPAC weights).
import { planPreparation } from "preparative";
import { describe, expect, it } from "vitest";
import { BENCH_PREPARATIONS, requestOf } from "../data/bench-preparations";

describe("the excess that keeps a complex whole", () => {
  it("is that of the ammonia, whatever other ligand is listed before it", () => {
    // triamminetrinitrocobalt: three ammonia and three nitrite for each cobalt
    const { checks } = planPreparation({
      equation: "CoCl2 + NaNO2 + NH3 + H2O2 -> Co(NH3)3(NO2)3 + NaCl + NaOH",
      product: "Co(NH3)3(NO2)3",
      materials: [
        { name: "cobalt", form: "CoCl2·6H2O" },
        { name: "nitrite", form: "NaNO2", excess: "10 %" },
        { name: "spirit", form: "NH3", strength: "25 %", excess: "50 %" },
        { name: "peroxide", form: "H2O2", strength: "30 %", excess: "50 %" },
      ],
      scale: { material: "cobalt", portion: "24 g" },
    });
    expect(checks[0]!.text).toBe("1.50 times the spirit that the formula contains; the excess keeps the complex whole");
  });
});

describe("a portion of what gives a gas", () => {
  const adding = (strength: "10 %" | "1 mol/L", portion: "500 g" | "500 mL") =>
    planPreparation({
      equation: "HCl + Na2CO3 -> NaCl + H2O + CO2",
      product: "NaCl",
      materials: [
        { name: "acid", form: "HCl", strength: "10 %" },
        { name: "soda", form: "Na2CO3", strength },
      ],
      scale: { material: "soda", portion },
    }).steps.find(({ text }) => /portions/.test(text))!.text;

  it.each([
    ["10 %", "500 g", "g"],
    ["1 mol/L", "500 mL", "mL"],
  ] as const)("of a solution of %s, %s of it, is in %s", (strength, portion, unit) => {
    const [, many, each, found] = /in at least (\d+) portions \(about ([\d.]+) (\w+) each\)/.exec(
      adding(strength, portion),
    )!;
    expect(found).toBe(unit);
    expect(Number(each) / (500 / Number(many))).toBeCloseTo(1, 1);
  });
});

describe("a sentence of a step or a check", () => {
  it.each(BENCH_PREPARATIONS)("of $id has nothing left open by mistake", (one) => {
    const { steps, checks } = planPreparation(requestOf(one));
    for (const { text } of [...steps, ...checks]) {
      expect(text).not.toMatch(/\b(?:undefined|null|NaN|Infinity|true|false)\b|\[object/);
      // what no balance or cylinder shows is less than its finest step
      expect(text).not.toMatch(/(?<![\d.])0(?:\.0+)? (?:k?g|m?L)\b|about less/);
      expect(text).not.toMatch(/ {2}|[ (][,.;:)]|[,;:][,;:.)]|\(\)/);
    }
  });
});
