// Names and formulas as printed. Source of each block above it; formulas compared by composition, since order in a
// formula is a matter of style.
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { formulaOf, nameOf, namesOf } from "../../src/substance";

const same = (a: string, b: string) => expect(parseFormula(a).toHill()).toBe(parseFormula(b).toHill());

// Chemistry 2e (OpenStax, 2019), section 2.7, worked examples 2.13 and 2.14.
const NAMED = [
  ["Fe2S3", "iron(III) sulfide"],
  ["CuSe", "copper(II) selenide"],
  ["MgSO4.7H2O", "magnesium sulfate heptahydrate"],
  ["SF6", "sulfur hexafluoride"],
  ["N2O3", "dinitrogen trioxide"],
  ["Cl2O7", "dichlorine heptoxide"],
] as const;

// The same section, follow-ups and exercises 3 to 11.
const WRITTEN = [
  ["chromium(III) phosphide", "CrP"],
  ["phosphorus pentachloride", "PCl5"],
  ["dinitrogen monoxide", "N2O"],
  ["ammonium sulfate", "(NH4)2SO4"],
  ["potassium phosphide", "K3P"],
  ["titanium(IV) oxide", "TiO2"],
  ["sodium hydrogen sulfate", "NaHSO4"],
  ["cobalt(II) chloride hexahydrate", "CoCl2.6H2O"],
  ["molybdenum(IV) sulfide", "MoS2"],
] as const;

// Nomenclature of Inorganic Chemistry, IUPAC Recommendations 2005 (Red Book), IR-5.5, examples 1, 5, 6, 9, 10, 11, 12.
const ADDUCTS = [
  ["BF3.2H2O", "boron trifluoride—water (1/2)"],
  ["AlCl3*4C2H5OH", "aluminium chloride—ethanol (1/4)"],
  ["BiCl3*3PCl5", "bismuth(III) chloride—phosphorus(V) chloride (1/3)"],
  ["Na2SO4.10H2O", "sodium sulfate—water (1/10)"],
  ["Al2(SO4)3.K2SO4.24H2O", "aluminium sulfate—potassium sulfate—water (1/1/24)"],
  ["AlK(SO4)2.12H2O", "aluminium potassium bis(sulfate) dodecahydrate"],
  ["3CdSO4.8H2O", "cadmium sulfate—water (3/8)"],
] as const;

// Further examples of the Red Book 2005 as remembered (IR-5.4, IR-5.5, IR-7, IR-9, Table IX; places from memory).
const RED_BOOK = [
  ["8Kr.46H2O", "krypton—water (8/46)"],
  ["CaCl2.8NH3", "calcium chloride—ammonia (1/8)"],
  ["2Na2CO3.3H2O2", "sodium carbonate—hydrogen peroxide (2/3)"],
  ["Cu2Cl(OH)3", "dicopper chloride trihydroxide"],
  ["VO(SO4)", "vanadium(IV) oxide sulfate"],
  ["ZrCl2O.8H2O", "zirconium dichloride oxide octahydrate"],
  ["Ca5F(PO4)3", "pentacalcium fluoride tris(phosphate)"],
  ["MgCl(OH)", "magnesium chloride hydroxide"],
  ["KNaCO3", "potassium sodium carbonate"],
  ["MgNH4PO4.6H2O", "ammonium magnesium phosphate hexahydrate"],
  ["K4[Fe(CN)6]", "potassium hexacyanidoferrate(II)"],
  ["[Co(NH3)6]Cl3", "hexaamminecobalt(III) chloride"],
  ["[CoCl(NH3)5]Cl2", "pentaamminechloridocobalt(III) chloride"],
  ["[PtCl2(NH3)2]", "diamminedichloridoplatinum(II)"],
  ["K2[PtCl4]", "potassium tetrachloridoplatinate(II)"],
  ["Hg2^2+", "dimercury(2+)"],
  ["Fe^3+", "iron(3+)"],
  ["H2PO4^-", "dihydrogenphosphate"],
  ["S2O3^2-", "thiosulfate"],
  ["SF6", "sulfur hexafluoride"],
] as const;

describe("names from formulas", () => {
  it.each([...NAMED, ...ADDUCTS, ...RED_BOOK])("gives %s the name %s", (formula, name) => {
    expect(namesOf(formula)).toContain(name);
  });

  it.each([...NAMED, ...RED_BOOK])("gives %s that name first", (formula, name) => {
    expect(nameOf(formula)).toBe(name);
  });

  it("gives the addition name first where no salt takes up water, and on demand elsewhere", () => {
    let tested = 0;
    for (const [formula, name] of ADDUCTS) {
      expect(nameOf(formula, formula.startsWith("Na2SO4") ? "adduct" : "oxidation-numbers")).toBe(name);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(7);
  });

  it("names a solution of a hydrogen halide as an acid", () => {
    expect(nameOf("HCl(aq)")).toBe("hydrochloric acid");
    expect(nameOf("HCl")).toBe("hydrogen chloride");
  });
});

describe("formulas from names", () => {
  it.each([...WRITTEN, ...[...NAMED, ...ADDUCTS, ...RED_BOOK].map(([f, n]) => [n, f] as const)])(
    "reads %s as %s",
    (name, formula) => same(formulaOf(name).toString(), formula),
  );
});
