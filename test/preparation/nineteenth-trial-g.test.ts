// A liquor that is boiled down only if nothing crystallises, and what the label says first.
import { describe, expect, it } from "vitest";
import { planPreparation } from "../../src/preparation";
import { benchSheet } from "../../src/sheet";

const plan = planPreparation({
  equation: "Sn + 2 HCl + 2 H2O -> SnCl2.2H2O + H2",
  product: "SnCl2.2H2O",
  materials: [
    { name: "lead-free tin", form: "Sn", assay: "99.9 %", excess: "15 %" },
    { name: "muriatic acid", form: "HCl", strength: "31 %" },
  ],
  scale: { product: "50 g" },
});
const printed = benchSheet(plan).toString().replace(/\s+/g, " ");

describe("a liquor that may be boiled down to a mass", () => {
  it("has its vessel weighed empty before", () => {
    const step = plan.steps.find(({ text }) => /until the contents weigh no less than/.test(text))!;
    // 1.2 times 50.0 g of crystals
    expect(step.limit!.toNumber("g")).toBeCloseTo(60, 1);
    expect(printed).toMatch(/open vessel of 250 mL, weighed empty/);
    expect(printed).toMatch(/no less than 60\.0 g, .* empty vessel ________ g 7\. \[ \]/);
  });
});

describe("the label of a bottle", () => {
  it("says the statements of danger before those of warning", () => {
    // safety data sheets of suppliers: H302, H332, H314, H317, H335, H373, H412
    expect(printed).toMatch(/Label ----- SnCl₂·2H₂O, .*DANGER: burns skin and eyes badly; harmful if swallowed/);
  });
});
