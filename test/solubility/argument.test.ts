// Wrong kinds of arguments: what is left out is a missing option, what is of another kind a bad one, and each refusal names
// the argument.
import { attempt, gasSolubility, solubilityDiagram, washPlan, waterForSolution, willPrecipitate } from "preparative";
import { describe, expect, it } from "vitest";

type Door = (request: unknown) => { readonly ok: boolean; readonly error?: { code: string; details: unknown } };

const outcome = (door: unknown, request: unknown) => {
  const { error } = (door as Door)(request);
  return [error?.code, (error?.details as { argument?: string } | undefined)?.argument];
};

describe("arguments of the solubility room", () => {
  it("name the request that is missing or no object", () => {
    expect(
      outcome((...args: Parameters<typeof willPrecipitate>) => attempt(() => willPrecipitate(...args)), undefined),
    ).toEqual(["solubility.missing-option", "request"]);
    expect(
      outcome((...args: Parameters<typeof willPrecipitate>) => attempt(() => willPrecipitate(...args)), null),
    ).toEqual(["solubility.bad-option", "request"]);
  });

  it("name the list, and the entry of a list", () => {
    expect(
      outcome((...args: Parameters<typeof waterForSolution>) => attempt(() => waterForSolution(...args)), {}),
    ).toEqual(["solubility.missing-option", "salts"]);
    expect(
      outcome((...args: Parameters<typeof waterForSolution>) => attempt(() => waterForSolution(...args)), {
        salts: "KNO3",
      }),
    ).toEqual(["solubility.bad-option", "salts"]);
    expect(
      outcome((...args: Parameters<typeof waterForSolution>) => attempt(() => waterForSolution(...args)), {
        salts: [null],
      }),
    ).toEqual(["solubility.bad-option", "salts[0]"]);
    const ions = { solid: "BaSO4", solutions: [{ volume: "10 mL", ions: "Ba^2+" }] };
    expect(
      outcome((...args: Parameters<typeof willPrecipitate>) => attempt(() => willPrecipitate(...args)), ions),
    ).toEqual(["solubility.bad-option", "solutions[0].ions"]);
  });

  it("refuse a word that is not known instead of taking the usual one", () => {
    expect(
      outcome((...args: Parameters<typeof washPlan>) => attempt(() => washPlan(...args)), { method: "displacing" }),
    ).toEqual(["solubility.bad-option", "method"]);
    expect(
      outcome((pressure: unknown) => attempt(() => gasSolubility("CO2", "20 °C", pressure as "total")), "whole"),
    ).toEqual(["solubility.bad-option", "pressure"]);
  });

  it("limit the points of a picture", () => {
    const points = Array.from({ length: 1001 }, (_, i) => ({ celsius: 20, grams: 10, label: String(i) }));
    expect(() => solubilityDiagram({ formulas: ["KNO3"], points })).toThrow("at most 1000");
  });
});
