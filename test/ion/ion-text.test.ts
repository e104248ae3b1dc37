// Ions as the tables write them, taken apart and put together, and the acids they come from.
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { sameSubstance } from "../../src/ion";
import { ACIDS } from "../../src/ion/data/acids";
import { ANIONS, CATIONS } from "../../src/ion/data/ions";
import { acidOfAnion, bareIon, chargeOfIon, elementOfIon, isHydrogenAnion, saltFormula } from "../../src/ion/internal";

describe("an ion", () => {
  it.each([
    ["SO4^2-", "SO4", -2, undefined],
    ["NH4+", "NH4", 1, undefined],
    ["Fe^3+", "Fe", 3, "Fe"],
    ["Cl-", "Cl", -1, "Cl"],
    ["[Fe(CN)6]^4-", "[Fe(CN)6]", -4, undefined],
    ["Hg2^2+", "Hg2", 2, undefined],
  ])("%s is taken apart", (ion, bare, charge, element) => {
    expect([bareIon(ion), chargeOfIon(ion), elementOfIon(ion)]).toEqual([bare, charge, element]);
  });

  it("makes a salt without charge, with every other ion of the tables", () => {
    const text = ({ formula, charge }: { readonly formula: string; readonly charge: number }): string =>
      `${formula}^${Math.abs(charge)}${charge < 0 ? "-" : "+"}`;
    let tested = 0;
    for (const cation of CATIONS()) {
      for (const anion of ANIONS()) {
        const salt = parseFormula(saltFormula(text(cation), text(anion)));
        const [plus, minus] = [parseFormula(text(cation)), parseFormula(text(anion))];
        const whole = plus.times(-minus.charge).plus(minus.times(plus.charge));
        expect(salt.charge).toBe(0);
        expect(salt.times(gcd(plus.charge, -minus.charge)).hasSameComposition(whole), salt.text).toBe(true);
      }
      expect(tested).toBeGreaterThanOrEqual(0);
      tested += 1;
    }
  });
});

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

describe("acid hydrogen", () => {
  // textbook acids: IUPAC Recommendations 2005, table IR-8.1 (from memory)
  it("is what hydrogencarbonate has, and formate and phosphite have not", () => {
    for (const anion of ["HCO3-", "HSO4-", "H2PO4-", "HPO4^2-", "HS-", "HC4H4O6-", "HC2O4-"])
      expect(isHydrogenAnion(anion), anion).toBe(true);
    for (const anion of ["HCOO-", "H2PO2-", "HPO3^2-", "OH-", "CH3COO-", "SO4^2-", "H-"])
      expect(isHydrogenAnion(anion), anion).toBe(false);
  });

  it("comes back to the acid", () => {
    for (const { formula, anion } of ACIDS()) expect(sameSubstance(acidOfAnion(anion), formula), anion).toBe(true);
    expect(["HSO4-", "HPO4^2-", "HC4H4O6-", "HCOO-", "VO3-"].map(acidOfAnion)).toEqual([
      "H2SO4",
      "H3PO4",
      "C4H6O6",
      "HCOOH",
      "HVO3",
    ]);
  });
});
