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

// General chemistry, from memory: oxidation numbers, hydrates with fractions, acids, peroxides, basic and hydrogen salts.
const GENERAL = [
  ["GaN", "gallium(III) nitride"],
  ["Ti2(SO4)3", "titanium(III) sulfate"],
  ["P4O6", "tetraphosphorus hexoxide"],
  ["N2O5", "dinitrogen pentoxide"],
  ["Fe3O4", "iron(II,III) oxide"],
  ["Pb3O4", "lead(II,IV) oxide"],
  ["BaO2", "barium peroxide"],
  ["KO2", "potassium superoxide"],
  ["NaN3", "sodium azide"],
  ["FeS2", "iron(II) disulfide"],
  ["Hg2Cl2", "mercury(I) chloride"],
  ["HgCl2", "mercury(II) chloride"],
  ["CaSO4.0.5H2O", "calcium sulfate hemihydrate"],
  ["K2CO3.1.5H2O", "potassium carbonate sesquihydrate"],
  ["Cu(NO3)2.2.5H2O", "copper(II) nitrate hemipentahydrate"],
  ["(NH4)2Fe(SO4)2.6H2O", "diammonium iron(II) bis(sulfate) hexahydrate"],
  ["[Cu(NH3)4]SO4.H2O", "tetraamminecopper(II) sulfate monohydrate"],
  ["Cu2(OH)2CO3", "dicopper carbonate dihydroxide"],
  ["Ca(ClO)2", "calcium hypochlorite"],
  ["NaClO4", "sodium perchlorate"],
  ["H2SO4", "sulfuric acid"],
  ["HClO", "hypochlorous acid"],
  ["H2C2O4.2H2O", "oxalic acid dihydrate"],
  ["K2S2O8", "potassium peroxodisulfate"],
  ["(NH4)2Cr2O7", "ammonium dichromate"],
  ["Ca(H2PO4)2", "calcium dihydrogenphosphate"],
  ["UO2^2+", "dioxidouranium(VI)"],
  ["[Fe(CN)6]^4-", "hexacyanidoferrate(II)"],
  ["NH4^+", "ammonium"],
  ["O2", "dioxygen"],
  ["[Al(H2O)6]^3+", "hexaaquaaluminium(3+)"],
  ["[Ag(NH3)2]Cl", "diamminesilver(I) chloride"],
  ["K[Ag(CN)2]", "potassium dicyanidoargentate(I)"],
  ["[Pt(NH3)4][PtCl4]", "tetraammineplatinum(II) tetrachloridoplatinate(II)"],
  ["Ni(CO)4", "tetracarbonylnickel(0)"],
  ["MoO2Cl2", "molybdenum dichloride dioxide"],
  ["KHF2", "potassium hydrogendifluoride"],
  ["H5IO6", "orthoperiodic acid"],
  ["H3PO2", "phosphinic acid"],
  ["KFe3(SO4)2(OH)6", "triiron potassium hexahydroxide bis(sulfate)"],
] as const;

describe("names from formulas", () => {
  it.each([...NAMED, ...ADDUCTS, ...RED_BOOK, ...GENERAL])("gives %s the name %s", (formula, name) => {
    expect(namesOf(formula)).toContain(name);
  });

  it.each([...NAMED, ...RED_BOOK, ...GENERAL])("gives %s that name first", (formula, name) => {
    expect(nameOf(formula)).toBe(name);
  });

  it("gives the addition name first where no salt takes up water, and on demand elsewhere", () => {
    for (const [formula, name] of ADDUCTS)
      expect(nameOf(formula, formula.startsWith("Na2SO4") ? "adduct" : "oxidation-numbers")).toBe(name);
  });

  it("names a solution of a hydrogen halide as an acid", () => {
    expect(nameOf("HCl(aq)")).toBe("hydrochloric acid");
    expect(nameOf("HCl")).toBe("hydrogen chloride");
  });
});

describe("formulas from names", () => {
  it.each([...WRITTEN, ...[...NAMED, ...ADDUCTS, ...RED_BOOK, ...GENERAL].map(([f, n]) => [n, f] as const)])(
    "reads %s as %s",
    (name, formula) => same(formulaOf(name).toString(), formula),
  );

  // Older and other names, general knowledge (memory).
  it.each([
    ["ferrous ammonium sulfate hexahydrate", "(NH4)2Fe(SO4)2.6H2O"],
    ["cupric bromide", "CuBr2"],
    ["mercurous chloride", "Hg2Cl2"],
    ["ferric nitrate", "Fe(NO3)3"],
    ["stannous chloride dihydrate", "SnCl2.2H2O"],
    ["sodium bicarbonate", "NaHCO3"],
    ["potassium bitartrate", "KHC4H4O6"],
    ["sodium pyrophosphate", "Na4P2O7"],
    ["potassium ferricyanide", "K3[Fe(CN)6]"],
    ["potassium hexacyanoferrate(II)", "K4[Fe(CN)6]"],
    ["diamminedichloroplatinum(II)", "[PtCl2(NH3)2]"],
    ["blue vitriol", "CuSO4.5H2O"],
    ["green vitriol", "FeSO4.7H2O"],
    ["calcium carbide", "CaC2"],
    ["manganese dioxide", "MnO2"],
    ["titanium tetrachloride", "TiCl4"],
    ["aluminum fluoride trihydrate", "AlF3.3H2O"],
    ["aluminium sulphate", "Al2(SO4)3"],
    ["lithium aluminium hydride", "LiAlH4"],
    ["dinitrogen tetraoxide", "N2O4"],
    ["tetraphosphorus decoxide", "P4O10"],
    ["hydronium ion", "H3O^+"],
    ["iron(III) ion", "Fe^3+"],
    ["perchlorate ion", "ClO4^-"],
    ["uranyl nitrate hexahydrate", "UO2(NO3)2.6H2O"],
    ["iron (III) chloride dihydrate", "FeCl3.2H2O"],
    ["magnesium sulfate 7-hydrate", "MgSO4.7H2O"],
    ["calcium sulfate 1/2 hydrate", "CaSO4.0.5H2O"],
    ["cadmium sulfate (3/8)-hydrate", "3CdSO4.8H2O"],
    ["copper(II)sulfate", "CuSO4"],
    ["copper II sulfate", "CuSO4"],
    ["tetraammine copper(II) sulfate", "[Cu(NH3)4]SO4"],
    ["hexaaquaaluminium(3+)", "[Al(H2O)6]^3+"],
    ["vanadium pentoxide", "V2O5"],
    ["antimony trioxide", "Sb2O3"],
    ["phosphorus pentasulfide", "P2S5"],
    ["chromium trioxide", "CrO3"],
    ["bismuth oxychloride", "BiOCl"],
    ["copper oxychloride", "Cu2(OH)3Cl"],
    ["vanadyl sulfate", "VOSO4"],
    ["mercurous nitrate", "Hg2(NO3)2"],
    ["pyrophosphoric acid", "H4P2O7"],
    ["potassium hexacyanidoferrate(3-)", "K3[Fe(CN)6]"],
    ["carbon(IV) oxide", "CO2"],
    ["dilead(II) lead(IV) oxide", "Pb3O4"],
    ["triiron tetraoxide", "Fe3O4"],
    ["ammonium iron(III) sulfate dodecahydrate", "NH4Fe(SO4)2.12H2O"],
    ["potassium aluminium sulfate", "KAl(SO4)2"],
    ["tris(ethane-1,2-diamine)cobalt(III) chloride", "[Co(C2H8N2)3]Cl3"],
  ])("understands %s as %s", (name, formula) => same(formulaOf(name).toString(), formula));
});
