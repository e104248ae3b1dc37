// What a seventeenth round of independent readings found of hot liquors, acid salts, fires and complexes, as rules; the preparations
// are the readers', chosen before any sheet was printed. Facts of the bench are common practice, no source.
import { type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const stepWith = (request: PlanRequest, part: string | RegExp): string =>
  texts(request).find((text) => (typeof part === "string" ? text.includes(part) : part.test(text))) ?? "";
const checks = (request: PlanRequest): string =>
  planPreparation(request)
    .checks.map(({ text }) => text)
    .join("\n");

describe("an acid salt from a carbonate that is over", () => {
  const phosphate: PlanRequest = {
    equation: "H3PO4 + Na2CO3.10H2O + H2O -> Na2HPO4.12H2O + CO2",
    product: "Na2HPO4.12H2O",
    materials: [
      { name: "phosphoric acid", form: "H3PO4", strength: "85 %" },
      { name: "washing soda", form: "Na2CO3.10H2O", assay: "99 %", excess: "3 %" },
    ],
    scale: { product: "100 g" },
  };

  // pKa of HPO4^2- 12.38, of HCO3- 10.33 (table of acid steps): carbonate does not take the last hydrogen of a phosphate
  it("leaves the carbonate what it is, where the salt is the weaker acid of the two", () => {
    expect(checks(phosphate)).toContain("it takes no more hydrogen from the Na₂HPO₄·12H₂O, and stays in the liquor");
    expect(checks(phosphate)).not.toContain("another salt of the product");
  });

  // pKa of H2PO4- 7.20: carbonate takes that hydrogen
  it("makes another salt of it where the salt is the stronger acid", () => {
    const dihydrogen: PlanRequest = {
      ...phosphate,
      equation: "2 H3PO4 + Na2CO3.10H2O -> 2 NaH2PO4.2H2O + CO2 + 7 H2O",
      product: "NaH2PO4.2H2O",
    };
    expect(checks(dihydrogen)).toContain("it makes another salt of the product");
  });

  it("is tested once carbon dioxide has left the sample, with the last portion held back", () => {
    const test = stepWith(phosphate, "indicator paper");
    expect(test).toContain("a little of it that has boiled for a minute");
    expect(test).toContain("where it is acid a little of what was held back is needed");
    expect(test).toContain("where it is more than 1 higher a little more of the phosphoric acid");
    expect(stepWith(phosphate, /^Add the/)).toContain("hold the last portion back until paper shows the pH");
  });
});
