// A solubility product of the caller's own: the ions it is for are asked for, checked against the formula, and refused in
// words that name what differs. Values by s = (Ksp / Π ν^ν)^(1/Σν), general chemistry.
import { attempt, molarSolubility } from "preparative";
import { describe, expect, it } from "vitest";
import { SOLUBILITY_PRODUCTS } from "../../src/aqueous/data/products";

type Request = Parameters<typeof molarSolubility>[0];

/** Code, message, hint and details of the refusal; undefined where there is none. */
const refusal = (request: Request) => {
  const outcome = attempt(() => molarSolubility(request));
  if (outcome.ok) return undefined;
  const { code, message, hint = "", details } = outcome.error;
  return { code, message: message.split("\n")[0]!, hint, details };
};
const molar = (request: Request): number => molarSolubility(request).concentration.in("mol/L").toNumber();

describe("a sulfide's own constant", () => {
  // S^2- as textbooks print it; HS- and OH- as tables do since the second constant of H2S was found to be 10^-17 or less
  it.each([
    ["Ag2S", '["2 Ag+", "HS-", "OH-"]', '["2 Ag+", "S^2-"]'],
    ["CuS", '["Cu^2+", "HS-", "OH-"]', '["Cu^2+", "S^2-"]'],
    ["MnS", '["Mn^2+", "HS-", "OH-"]', '["Mn^2+", "S^2-"]'],
    ["Bi2S3", '["2 Bi^3+", "3 HS-", "3 OH-"]', '["2 Bi^3+", "3 S^2-"]'],
  ])("of %s is for %s or for %s: both are offered, each once", (solid, hydrogensulfide, sulfide) => {
    const { code, hint, details } = refusal({ solid, ksp: "1e-40" })!;
    expect(code).toBe("solubility.missing-option");
    expect(hint.split("name ions, ")[1]).toBe(`${hydrogensulfide} or ${sulfide}`);
    expect(details).toMatchObject({ solid });
    expect(new Set(details["ions"] as string[])).toContain(hydrogensulfide);
  });

  it("is offered for free sulfide with every sulfide of the table", () => {
    const sulfides = [
      ...new Set(
        SOLUBILITY_PRODUCTS()
          .filter(({ convention }) => convention !== undefined)
          .map(({ solid }) => solid),
      ),
    ];
    expect(sulfides.length).toBeGreaterThanOrEqual(14);
    for (const solid of sulfides) {
      const { hint } = refusal({ solid, ksp: "1e-40" })!;
      const offered = hint.split("name ions, ")[1]!.split(" or ");
      expect(offered.length, solid).toBe(2);
      expect(offered.filter((ions) => ions.includes('S^2-"') && !ions.includes("OH-")).length, solid).toBe(1);
    }
  });

  it("counts by the ions that are named", () => {
    // 4 s^3 = 6e-51
    expect(molar({ solid: "Ag2S", ksp: "6e-51", ions: ["2 Ag+", "S^2-"] })).toBeCloseTo((6e-51 / 4) ** (1 / 3), 22);
  });
});

describe("the ions of a caller's own constant", () => {
  it("come from the formula where it leaves no choice", () => {
    expect(molar({ solid: "Ag2WO4", ksp: "5e-12" })).toBeCloseTo((5e-12 / 4) ** (1 / 3), 9);
    expect(molar({ solid: "La2S3", ksp: "2e-13" })).toBeCloseTo((2e-13 / 108) ** (1 / 5), 8);
    // the mercury(I) ion is a pair
    expect(molar({ solid: "Hg2S", ksp: "1e-45" }) / Math.sqrt(1e-45)).toBeCloseTo(1, 9);
  });

  it("are asked for where a formula is no salt", () => {
    const { code, message, details } = refusal({ solid: "C6H6", ksp: "3e-9" })!;
    expect([code, message]).toEqual(["solubility.missing-option", "what ions does C6H6 dissolve to?"]);
    expect(details).toEqual({ solid: "C6H6" });
  });

  it("may differ from the solid by water alone", () => {
    // FeO(OH) + H2O -> Fe^3+ + 3 OH-, at the 1e-7 mol/L of OH- that water has
    expect(molar({ solid: "FeO(OH)", ksp: "3e-39", ions: ["Fe^3+", "3 OH-"] }) / (3e-39 / 1e-21)).toBeCloseTo(1, 2);
  });

  it.each([
    [["Ag+", "2 Cl-"], "the charges add up to -1", { charge: -1, wrong: ["Cl"] }],
    [["2 Ag+", "Cl-"], "the charges add up to 1", { charge: 1, wrong: ["Ag"] }],
    [["Ag^2+", "Cl-"], "the charges add up to 1", { charge: 1, wrong: [] }],
    [["Ag+", "Br-"], "Cl, Br differ", { charge: 0, wrong: ["Cl", "Br"] }],
    [["0 Ag+", "0 Cl-"], "Ag, Cl differ", { charge: 0, wrong: ["Ag", "Cl"] }],
    [["Ag+", "Cl-", "0 Na+"], " differ", { charge: 0, wrong: [] }],
  ])("%j of AgCl are refused: %s", (ions, why, details) => {
    const said = refusal({ solid: "AgCl", ksp: "1e-10", ions })!;
    expect(said.code).toBe("solubility.bad-option");
    expect(said.message).toBe(`${ions.join(" + ")} is not what AgCl dissolves to: ${why}`);
    expect(said.details).toEqual({ ions, ...details });
  });

  it.each([[[]], ["Ag+"], [["Ag+", 5]], [{}]])("%j are no list of texts", (ions) => {
    const said = refusal({ solid: "AgCl", ksp: "1e-10", ions: ions as never })!;
    expect([said.code, said.message.slice(0, 24)]).toEqual(["solubility.bad-option", "ions are a list of texts"]);
  });
});

describe("the number itself", () => {
  it("is more than zero and less than one", () => {
    expect(refusal({ solid: "AgCl", ksp: "0" })?.code).toBe("solubility.not-positive");
    expect(refusal({ solid: "AgCl", ksp: "-1e-10" })?.code).toBe("solubility.not-positive");
    expect(refusal({ solid: "AgCl", ksp: "1" })?.code).toBe("solubility.bad-option");
    expect(refusal({ solid: "AgCl", ksp: "0.999" })).toBeUndefined();
  });

  it("is shown as what a pKsp would be", () => {
    const { hint, details } = refusal({ solid: "AgCl", ksp: "9.75" })!;
    // 10^-9.75
    expect(hint).toBe('9.75 looks like a pKsp: give ksp as 10^-pKsp, here "1.78e-10"');
    expect(details).toEqual({ ksp: "9.75" });
  });
});
