// Ions as the tables write them, taken apart and put together, and the acids they come from.
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { ACIDS } from "../../src/ion/data/acids";
import { ANIONS, CATIONS } from "../../src/ion/data/ions";
import {
  acidOf,
  acidOfAnion,
  allIons,
  atomsIn,
  bareIon,
  chargedText,
  chargeOfIon,
  compositionKey,
  elementOfAtom,
  elementOfIon,
  isHydrogenAnion,
  isMetalCation,
  readNotation,
  saltFormula,
} from "../../src/ion/internal";

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

  it("is put together from formula and charge", () => {
    expect([chargedText("Na", 1), chargedText("Fe", 3), chargedText("Cl", -1), chargedText("SO4", -2)]).toEqual([
      "Na^+",
      "Fe^3+",
      "Cl^-",
      "SO4^2-",
    ]);
    expect(chargedText("H2O", 0)).toBe("H2O");
  });

  it("of one metal atom is told from others: not the hydron, an anion, a pair of atoms or a group", () => {
    expect(["Na+", "Fe^3+", "Cu+", "Al^3+"].every(isMetalCation)).toBe(true);
    expect(["H+", "NH4+", "Cl-", "S^2-", "Hg2^2+", "UO2^2+", "[Ag(NH3)2]+", "Fe"].some(isMetalCation)).toBe(false);
  });

  it("has the element of its nuclide", () => {
    expect(["D", "T", "[13C]", "[235U]", "Fe"].map(elementOfAtom)).toEqual(["H", "H", "C", "U", "Fe"]);
  });

  it("has one name for each composition and charge, but for isomers", () => {
    // cyanate and fulminate (IUPAC Recommendations 2005, table IX: from memory)
    const names = new Map<string, string[]>();
    for (const { counts, charge, row } of allIons().anions) {
      const key = `${compositionKey(counts)} ${charge}`;
      names.set(key, [...(names.get(key) ?? []), row.name]);
    }
    expect(names.size).toBeGreaterThan(100);
    expect([...names.values()].filter(({ length }) => length > 1)).toEqual([["cyanate", "fulminate"]]);
  });

  it("has the atoms of its formula", () => {
    expect(allIons().anions.length, "rows to test").toBeGreaterThan(0);
    for (const { row, atoms, counts } of allIons().anions) {
      expect(atoms, row.name).toBe([...counts.values()].reduce((sum, n) => sum + n, 0));
      expect(compositionKey(counts), row.name).toBe(compositionKey(atomsIn(row.formula)));
    }
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
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(16);
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

  it("is that of the tautomer that is there: H3PO3 is phosphonic acid (IUPAC Recommendations 2005, IR-8.3; from memory)", () => {
    const name = (formula: string) => acidOf(readNotation(formula).parts[0]!)?.row.acid;
    expect(["H3PO3", "H2SO4", "H3PO4", "C6H8O7", "HCNO", "HCl", "C2H5OH", "Na2SO4", "H2O2"].map(name)).toEqual([
      "phosphonic acid",
      "sulfuric acid",
      "phosphoric acid",
      "citric acid",
      "cyanic acid",
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("comes back to the acid", () => {
    expect(ACIDS().length, "rows to test").toBeGreaterThan(0);
    for (const { formula, anion } of ACIDS()) expect(acidOfAnion(anion)).toBe(formula);
    expect(["HSO4-", "HPO4^2-", "HC4H4O6-", "HCOO-", "VO3-"].map(acidOfAnion)).toEqual([
      "H2SO4",
      "H3PO4",
      "C4H6O6",
      "HCOOH",
      "HVO3",
    ]);
  });
});
