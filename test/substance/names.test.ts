import { describe, expect, it } from "vitest";
import { formulaOf, nameOf, namesOf, readingsOf, tryFormulaOf, tryNameOf } from "../../src/substance";

const refusal = (name: string) => {
  const outcome = tryFormulaOf(name);
  if (outcome.ok) throw new Error(`${name} was read as ${outcome.value}`);
  return outcome.error;
};

describe("ambiguous names", () => {
  // The readings are common practice of the trade, no source.
  it.each([
    ["copper acetate", ["Cu(CH3COO)2·H2O", "Cu(CH3COO)2", "CuCH3COO", "Cu2(OH)(CH3COO)3·5H2O"]],
    ["zinc carbonate", ["ZnCO3", "Zn5(OH)6(CO3)2"]],
    ["magnesium carbonate", ["MgCO3", "Mg5(CO3)4(OH)2·4H2O", "MgCO3·3H2O"]],
    ["soda", ["Na2CO3", "Na2CO3·10H2O", "Na2CO3·H2O", "NaHCO3", "NaOH"]],
  ])("gives every reading of %s with what decides", (name, formulas) => {
    const error = refusal(name);
    expect(error.code).toBe("substance.ambiguous-name");
    const readings = error.details["readings"] as { formula: string; decides: string }[];
    expect(readings.map((one) => one.formula)).toEqual(formulas);
    for (const one of readings) expect(one.decides.length).toBeGreaterThan(10);
    expect(readingsOf(name)).toEqual(readings);
  });

  it("takes them literally on demand", () => {
    expect(formulaOf("zinc carbonate", { literal: true }).toString()).toBe("ZnCO3");
    expect(formulaOf("magnesium carbonate", { literal: true }).toString()).toBe("MgCO3");
  });

  it("asks for the oxidation number where the metal has two usual ones", () => {
    expect(readingsOf("copper chloride").map((one) => [one.formula, one.decides])).toEqual([
      ["CuCl2", "the label says copper(II)"],
      ["CuCl", "the label says copper(I)"],
    ]);
    expect(refusal("tin fluoride").code).toBe("substance.ambiguous-name");
  });

  it("does not ask where the trade knows one only", () => {
    expect(formulaOf("silver nitrate").toString()).toBe("AgNO3");
    expect(formulaOf("copper sulfate pentahydrate").toString()).toBe("CuSO4.5H2O");
    expect(formulaOf("nickel chloride").toString()).toBe("NiCl2");
  });
});

describe("older names and spellings", () => {
  it("answers them with the systematic name and says what was respelled", () => {
    const [reading] = readingsOf("cupric sulphate");
    expect(reading).toMatchObject({ formula: "CuSO4", name: "copper(II) sulfate", notes: ["sulph is written sulf"] });
    expect(readingsOf("aluminum chloride")[0]?.notes).toEqual(["aluminum is written aluminium"]);
    expect(readingsOf("green vitriol")[0]?.name).toBe("iron(II) sulfate heptahydrate");
  });

  it.each([
    ["sodum chloride", "sodium chloride"],
    ["calcium nitrte", "calcium nitrate"],
    ["zink sulfate", "zinc sulfate"],
    ["blu vitriol", "blue vitriol"],
    ["potasium permanganate", "potassium permanganate"],
  ])("hints at the name meant by %s", (slip, meant) => {
    const error = refusal(slip);
    expect(error.code).toBe("substance.unknown-name");
    expect(error.hint).toContain(meant);
  });

  it("asks how much water when the name leaves it open", () => {
    const error = refusal("magnesium sulfate hydrate");
    expect(error.hint).toContain("magnesium sulfate heptahydrate");
    expect(error.hint).toContain("magnesium sulfate monohydrate");
  });
});

describe("styles of names", () => {
  it("tells proportions by oxidation numbers, by prefixes, or as an addition compound", () => {
    expect(nameOf("Fe2O3")).toBe("iron(III) oxide");
    expect(nameOf("Fe2O3", "prefixes")).toBe("diiron trioxide");
    expect(nameOf("Ca3(PO4)2", "prefixes")).toBe("tricalcium bis(phosphate)");
    expect(nameOf("CuSO4·5H2O", "adduct")).toBe("copper(II) sulfate—water (1/5)");
    expect(namesOf("TiO2")).toEqual(["titanium(IV) oxide", "titanium dioxide"]);
  });

  it("does not depend on the order in which a formula is written", () => {
    for (const [one, other] of [
      ["KAl(SO4)2·12H2O", "AlK(SO4)2·12H2O"],
      ["CH3COONa", "NaC2H3O2"],
      ["Cu2CO3(OH)2", "Cu2(OH)2CO3"],
      ["NH4Fe(SO4)2", "Fe(NH4)(SO4)2"],
    ] as const)
      expect(nameOf(one)).toBe(nameOf(other));
  });

  it("refuses what no rule names, instead of making a name up", () => {
    for (const formula of ["C7H16", "C6H5NO2", "Si2H6"]) {
      const outcome = tryNameOf(formula);
      expect(outcome.ok, formula).toBe(false);
      if (!outcome.ok) expect(outcome.error.code).toBe("substance.no-name");
    }
  });

  it("keeps isomers apart: only the listed writing of an organic molecule is named", () => {
    expect(nameOf("C2H5OH")).toBe("ethanol");
    expect(tryNameOf("CH3OCH3").ok).toBe(false);
    expect(nameOf("CH3COOH")).toBe("acetic acid");
    expect(tryNameOf("HCOOCH3").ok).toBe(false);
  });

  // the ions that are written decide (Red Book 2005, IR-5.4)
  it("names a salt by its ions, where a molecule of the table has the same composition", () => {
    expect(nameOf("NH4ClO")).toBe("ammonium hypochlorite");
    expect(nameOf("NH3OHCl")).toBe("hydroxylammonium chloride");
    expect(nameOf("NH4ClO·0.5H2O")).toBe("ammonium hypochlorite hemihydrate");
    expect(String(formulaOf(nameOf("NH4ClO·0.5H2O")))).toBe("NH4ClO.0.5H2O");
  });
});
