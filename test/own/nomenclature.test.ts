// Names and formulas of general chemistry as remembered; formulas compared by composition, since order in a formula is a matter
// of style.
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { formulaOf, nameOf, namesOf } from "../../src/substance";

const same = (a: string, b: string) => expect(parseFormula(a).toHill()).toBe(parseFormula(b).toHill());

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

describe("names of general chemistry", () => {
  it.each(GENERAL)("gives %s the name %s, first", (formula, name) => {
    expect(namesOf(formula)).toContain(name);
    expect(nameOf(formula)).toBe(name);
  });

  it.each(GENERAL)("reads the name of %s, %s", (formula, name) => same(formulaOf(name).toString(), formula));

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
