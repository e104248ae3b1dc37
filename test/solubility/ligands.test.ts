// Solids in solutions of ligands, and a caller's own solubility product.
import { describe, expect, it } from "vitest";
import { COMPLEXES } from "../../src/aqueous/data/complexes";
import { SOLUBILITY_PRODUCTS } from "../../src/aqueous/data/products";
import { attempt } from "../../src/foundation/error";
import { uncertaintyBudget } from "../../src/quantity";
import { type MolarSolubilityRequest, molarSolubility } from "../../src/solubility/precipitating/molar-solubility";
import { ionsOf } from "../../src/solubility/precipitating/product";

const molar = (request: MolarSolubilityRequest) => molarSolubility(request).concentration.in("mol/L").toNumber();
const byHand = (request: MolarSolubilityRequest) =>
  molarSolubility(request).byHand!.concentration.in("mol/L").toNumber();
const codeOf = (request: MolarSolubilityRequest) => {
  const outcome = attempt(() => molarSolubility(request));
  return outcome.ok ? undefined : outcome.error.code;
};
const hintOf = (request: MolarSolubilityRequest) => {
  const outcome = attempt(() => molarSolubility(request));
  return outcome.ok ? undefined : outcome.error.hint;
};

describe("a solid in a solution of ligands", () => {
  it("dissolves no more calcium carbonate than there is EDTA (one to one), by the ligand balance", () => {
    const edta = [{ ligand: "C10H12N2O8^4-", concentration: "0.01 mol/L" }] as const;
    expect(Math.abs(molar({ solid: "CaCO3", freeLigands: edta }) / 0.01 - 1)).toBeLessThan(1e-3);
  });

  it("dissolves copper oxalate to half of the oxalate it meets: CuC2O4 + C2O4^2- = [Cu(C2O4)2]^2-, K near 1", () => {
    const { concentration, ions } = molarSolubility({
      solid: "CuC2O4",
      freeLigands: [{ ligand: "C2O4^2-", concentration: "0.5 mol/L" }],
    });
    // Ksp β2 = s / [ox] and [ox] = 0.5 − s: by hand 0.256
    expect(concentration.in("mol/L").toNumber()).toBeCloseTo(0.256, 3);
    expect(ions[1]!.concentration.in("mol/L").toNumber()).toBeLessThan(0.5);
  });

  it("takes the hydroxide that zincate binds off the lye", () => {
    const lye = { ion: "OH-", concentration: "1 mol/L" } as const;
    const request = {
      solid: "Zn(OH)2",
      commonIons: [lye],
      freeLigands: [{ ligand: "OH-", concentration: "1 mol/L" }],
    } as const;
    const { concentration, ions } = molarSolubility(request).byHand!;
    const s = concentration.in("mol/L").toNumber();
    expect(s).toBeGreaterThan(0.2);
    expect(s).toBeLessThan(0.3);
    // two hydroxides come with each zinc and four or three are bound
    const free = ions[1]!.concentration.in("mol/L").toNumber();
    expect(free).toBeLessThan(1 - s);
    expect(free).toBeGreaterThan(1 - 2 * s - 0.01);
  });

  it("dissolves silver bromide in 0.1 mol/L thiosulfate to nearly half of it (memory: textbooks, 0.045 mol/L)", () => {
    const s = byHand({ solid: "AgBr", freeLigands: [{ ligand: "S2O3^2-", concentration: "0.1 mol/L" }] });
    expect(Math.abs(s - 0.045)).toBeLessThan(0.001);
  });

  it("satisfies the product and dissolves no less than in water, for every solid with every ligand of its metal", () => {
    let tested = 0;
    for (const row of SOLUBILITY_PRODUCTS().filter((_, i) => i % 7 === 0)) {
      if (row.convention === "free-sulfide") continue;
      const ions = ionsOf(row);
      const metal = ions.find(({ charge }) => charge > 0)!;
      for (const { ligand } of COMPLEXES().filter((each) => each.metal === metal.formula)) {
        const found = molarSolubility({
          solid: row.solid,
          ...(row.form !== undefined && { form: row.form }),
          freeLigands: [{ ligand, concentration: "0.1 mol/L" }],
        }).byHand!;
        const q = found.ions.reduce(
          (all, { concentration }, i) => all + ions[i]!.count * Math.log10(concentration.in("mol/L").toNumber()),
          0,
        );
        expect(Math.abs(q + Number(row.pKsp)), `${row.solid} ${ligand}`).toBeLessThan(1e-8);
        expect(found.complexation).toBeGreaterThanOrEqual(1);
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(40);
  });

  it("states slopes that are those of the answer", () => {
    const at = (c: string) =>
      molarSolubility({ solid: "AgCl", freeLigands: [{ ligand: "NH3", concentration: c as "1 mol/L" }] }).byHand!
        .concentration;
    const line = uncertaintyBudget(at("1.00(1) mol/L")).find(({ quantity }) => quantity.symbol === "c(NH3)")!;
    const step = (at("1.0001 mol/L").in("mol/L").toNumber() - at("0.9999 mol/L").in("mol/L").toNumber()) / 2e-4;
    expect(Math.abs(line.sensitivity.toNumber() / step - 1)).toBeLessThan(1e-5);
  });

  it("refuses one ion named with two concentrations", () => {
    expect(
      codeOf({
        solid: "AgCl",
        commonIons: [{ ion: "Cl-", concentration: "1 mol/L" }],
        freeLigands: [{ ligand: "Cl-", concentration: "2 mol/L" }],
      }),
    ).toBe("solubility.conflicting-options");
  });
});

describe("a caller's own solubility product", () => {
  it("asks which ions a sulfide's is for: FeS, 6e-19 in textbooks, is for S^2-", () => {
    expect(codeOf({ solid: "FeS", ksp: "6e-19" })).toBe("solubility.missing-option");
    expect(hintOf({ solid: "FeS", ksp: "6e-19" })).toContain('["Fe^2+", "S^2-"]');
    // sqrt(6e-19)
    expect(molar({ solid: "FeS", ksp: "6e-19", ions: ["Fe^2+", "S^2-"] }).toPrecision(2)).toBe("7.7e-10");
  });

  it("is taken for a solid outside the table, whose ions the formula or the caller tells", () => {
    // sqrt(2e-4) and, by 108 s^5, (1e-31 / 108)^(1/5)
    expect(molar({ solid: "CaSeO4", ksp: "2e-4" }).toPrecision(3)).toBe("0.0141");
    expect(codeOf({ solid: "CaC5H6O4", ksp: "2e-7" })).toBe("solubility.missing-option");
    expect(molar({ solid: "BaSeO3", ksp: "2e-7", ions: ["Ba^2+", "SeO3^2-"] }).toPrecision(2)).toBe("0.00045");
    expect(molar({ solid: "Ca3(AsO3)2", ksp: "1e-31", ions: ["3 Ca^2+", "2 AsO3^3-"] }).toPrecision(3)).toBe("2.47e-7");
  });

  it("refuses ions that are not those of the solid", () => {
    expect(codeOf({ solid: "FeS", ksp: "6e-19", ions: ["Fe^2+", "2 S^2-"] })).toBe("solubility.bad-option");
    expect(codeOf({ solid: "FeS", ksp: "6e-19", ions: ["Fe^2+", "O^2-"] })).toBe("solubility.bad-option");
    expect(codeOf({ solid: "AgCl", ions: ["Ag+", "Cl-"] })).toBe("solubility.bad-option");
  });

  it("refuses a pKsp typed as Ksp and says what it would be", () => {
    expect(codeOf({ solid: "BaSO4", ksp: "9.98" })).toBe("solubility.bad-option");
    expect(hintOf({ solid: "BaSO4", ksp: "9.98" })).toContain("1.05e-10");
  });
});
