// Names and formulas against the rules of Nomenclature of Inorganic Chemistry, IUPAC Recommendations 2005 (Red Book). The
// chapter stands beside each block; numbers and examples from memory of the book unless said otherwise. Kept apart from the
// examples of nomenclature.test.ts: these were chosen to break the rules of this layer.
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { formulaOf, nameOf, readingsOf, tryFormulaOf, tryNameOf } from "../../src/substance";

const same = (a: string, b: string) => parseFormula(a).hasSameComposition(parseFormula(b));

// Named and read back.
const BOTH_WAYS: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  "IR-5.2 stoichiometric names: prefixes for non-metals": [
    ["O2F2", "dioxygen difluoride"],
    ["I2O5", "diiodine pentoxide"],
    ["IF7", "iodine heptafluoride"],
    ["S4N4", "tetrasulfur tetranitride"],
    ["P4S10", "tetraphosphorus decasulfide"],
    ["C3O2", "tricarbon dioxide"],
    ["S2F10", "disulfur decafluoride"],
    ["SiC", "silicon carbide"],
    ["BN", "boron nitride"],
    ["XeO3", "xenon trioxide"],
    ["Al2Cl6", "dialuminium hexachloride"],
    ["Pr6O11", "hexapraseodymium undecoxide"],
    ["CrO2", "chromium(IV) oxide"],
    ["NI3", "nitrogen triiodide"],
    ["U3O8", "triuranium octoxide"],
    ["Mn5O8", "pentamanganese octoxide"],
    ["V6O13", "hexavanadium tridecoxide"],
    ["MoSi2", "molybdenum disilicide"],
    ["TiB2", "titanium diboride"],
    ["CrSi2", "chromium disilicide"],
  ],
  "IR-5.4 oxidation numbers": [
    ["Mn2O7", "manganese(VII) oxide"],
    ["OsO4", "osmium(VIII) oxide"],
    ["Tl2O3", "thallium(III) oxide"],
    ["Mn3O4", "manganese(II,III) oxide"],
    ["Co3O4", "cobalt(II,III) oxide"],
    ["CuSCN", "copper(I) thiocyanate"],
    ["PtCl4", "platinum(IV) chloride"],
    ["Cr2(SO4)3·18H2O", "chromium(III) sulfate octadecahydrate"],
    ["Pb(CH3COO)4", "lead(IV) acetate"],
  ],
  "IR-5.3 homopolyatomic ions: peroxides, superoxides, ozonides, polysulfides": [
    ["ZnO2", "zinc peroxide"],
    ["RbO2", "rubidium superoxide"],
    ["KO3", "potassium ozonide"],
    ["Na2S4", "sodium tetrasulfide"],
    ["K2S5", "potassium pentasulfide"],
  ],
  "IR-5.4.2 several cations or anions, alphabetical, counted": [
    ["CaMg(CO3)2", "calcium magnesium bis(carbonate)"],
    ["KMgCl3·6H2O", "magnesium potassium trichloride hexahydrate"],
    ["Cu3(CO3)2(OH)2", "tricopper bis(carbonate) dihydroxide"],
    ["Pb3(CO3)2(OH)2", "trilead bis(carbonate) dihydroxide"],
    ["Cu4SO4(OH)6", "tetracopper hexahydroxide sulfate"],
    ["BiOCl", "bismuth(III) chloride oxide"],
    ["AlO(OH)", "aluminium hydroxide oxide"],
    ["NiO(OH)", "nickel(III) hydroxide oxide"],
    ["MoO2Cl2", "molybdenum dichloride dioxide"],
    ["VOCl3", "vanadium trichloride oxide"],
    ["LiAl(SO4)2", "aluminium lithium bis(sulfate)"],
    ["LiMn2O4", "lithium dimanganese(III,IV) tetroxide"],
    ["Cr2(CrO4)3", "chromium(III) chromate"],
    ["NaKC4H4O6·4H2O", "potassium sodium tartrate tetrahydrate"],
  ],
  "IR-8.4 hydrogen salts": [
    ["LiH2PO4", "lithium dihydrogenphosphate"],
    ["CaHPO4·2H2O", "calcium hydrogenphosphate dihydrate"],
    ["NaNH4HPO4·4H2O", "ammonium sodium hydrogenphosphate tetrahydrate"],
    ["NH4HF2", "ammonium hydrogendifluoride"],
    ["KHC2O4", "potassium hydrogenoxalate"],
  ],
  "IR-8.1 and IR-8.2 acids and their anions": [
    ["H2S2O7", "disulfuric acid"],
    ["H3PO2", "phosphinic acid"],
    ["H5IO6", "orthoperiodic acid"],
    ["H2N2O2", "hyponitrous acid"],
    ["H6TeO6", "orthotelluric acid"],
    ["HSO3Cl", "chlorosulfuric acid"],
    ["HSO3F", "fluorosulfuric acid"],
    ["HOCN", "cyanic acid"],
    ["HNCO", "isocyanic acid"],
    ["Na2PO3F", "sodium fluorophosphate"],
    ["CaCN2", "calcium cyanamide"],
    ["KCrO3Cl", "potassium chlorochromate"],
    ["HCNO", "fulminic acid"],
    ["AgCNO", "silver(I) fulminate"],
    ["KOCN", "potassium cyanate"],
    ["Na2S2O6·2H2O", "sodium dithionate dihydrate"],
    ["Na3P3O9", "sodium cyclo-triphosphate"],
    ["(NaPO3)6", "sodium cyclo-hexaphosphate"],
  ],
  "IR-9.2 coordination entities": [
    ["[CrCl(H2O)5]Cl2·H2O", "pentaaquachloridochromium(III) chloride monohydrate"],
    ["[Cu(NH3)4(H2O)2]SO4", "tetraamminediaquacopper(II) sulfate"],
    ["K2[Cu(C2O4)2]·2H2O", "potassium bis(oxalato)cuprate(II) dihydrate"],
    ["[Co(CO3)(NH3)5]NO3", "pentaamminecarbonatocobalt(III) nitrate"],
    ["[Ni(C2H8N2)3]Cl2·2H2O", "tris(ethane-1,2-diamine)nickel(II) chloride dihydrate"],
    ["[Ni(CO)4]", "tetracarbonylnickel(0)"],
    ["K[Au(CN)2]", "potassium dicyanidoaurate(I)"],
    ["Cu2[HgI4]", "copper(I) tetraiodidomercurate(II)"],
    ["K2[Sn(OH)6]", "potassium hexahydroxidostannate(IV)"],
    ["[Co(NH3)6][Cr(CN)6]", "hexaamminecobalt(III) hexacyanidochromate(III)"],
    ["[Pt(NH3)4][PtCl4]", "tetraammineplatinum(II) tetrachloridoplatinate(II)"],
    ["K[PtCl3(NH3)]", "potassium amminetrichloridoplatinate(II)"],
    ["[Ru(C10H8N2)3]Cl2", "tris(2,2'-bipyridine)ruthenium(II) chloride"],
    ["[RhCl(P(C6H5)3)3]", "chloridotris(triphenylphosphane)rhodium(I)"],
    ["[Cu(NH3)4]^2+", "tetraamminecopper(II)"],
    ["HAuCl4·3H2O", "hydrogen tetrachloridoaurate(III) trihydrate"],
    ["K3Fe(CN)6", "potassium hexacyanidoferrate(III)"],
  ],
  "IR-5.5 addition compounds": [
    ["CoCl3·6NH3", "cobalt(III) chloride—ammonia (1/6)"],
    ["N2H4·H2O", "hydrazine—water (1/1)"],
    ["BaO2·8H2O", "barium peroxide octahydrate"],
  ],
};

// Read only: older, trade and school names, and what each means.
const READ: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  "names without prefixes that charges settle": [
    ["boron oxide", "B2O3"],
    ["silicon nitride", "Si3N4"],
    ["silicon chloride", "SiCl4"],
    ["iodine chloride", "ICl"],
  ],
  "anions by oxidation number (the usage before 2005)": [
    ["sodium chlorate(I)", "NaClO"],
    ["potassium chlorate(V)", "KClO3"],
    ["potassium manganate(VII)", "KMnO4"],
    ["potassium manganate(VI)", "K2MnO4"],
    ["potassium dichromate(VI)", "K2Cr2O7"],
    ["sodium sulfate(IV)", "Na2SO3"],
    ["sodium nitrate(III)", "NaNO2"],
    ["potassium hydrogensulfate(VI)", "KHSO4"],
    ["copper(II) sulfate(VI) pentahydrate", "CuSO4·5H2O"],
    ["sodium molybdate(VI) dihydrate", "Na2MoO4·2H2O"],
  ],
  "-ous, -ic, bi-, sub-, oxy-, of": [
    ["plumbous acetate trihydrate", "Pb(CH3COO)2·3H2O"],
    ["chromous chloride", "CrCl2"],
    ["ceric sulfate tetrahydrate", "Ce(SO4)2·4H2O"],
    ["ceric ammonium nitrate", "(NH4)2Ce(NO3)6"],
    ["stannic chloride pentahydrate", "SnCl4·5H2O"],
    ["dimercury(2+) nitrate dihydrate", "Hg2(NO3)2·2H2O"],
    ["mercurous nitrate dihydrate", "Hg2(NO3)2·2H2O"],
    ["ammonium bifluoride", "NH4HF2"],
    ["bismuth subnitrate", "BiONO3"],
    ["bismuth oxychloride", "BiOCl"],
    ["phosphorus oxychloride", "POCl3"],
    ["acetate of lead", "Pb(CH3COO)2"],
    ["nitrate of soda", "NaNO3"],
    ["permanganate of potash", "KMnO4"],
    ["sulphuretted hydrogen", "H2S"],
    ["iron pentacarbonyl", "Fe(CO)5"],
    ["arsenious acid", "H3AsO3"],
    ["chloroauric acid trihydrate", "HAuCl4·3H2O"],
    ["tetrafluoroboric acid", "HBF4"],
    ["peroxydisulfuric acid", "H2S2O8"],
    ["disodium dihydrogen pyrophosphate", "Na2H2P2O7"],
    ["sodium hexametaphosphate", "(NaPO3)6"],
    ["potassium hydrogen bis(iodate)", "KH(IO3)2"],
    ["sodium hexachloroplatinate", "Na2[PtCl6]"],
    ["boron carbide", "B4C"],
    ["antimony trisulfide", "Sb2S3"],
    ["iron disulfide", "FeS2"],
    ["copper(II) sulfate-water (1/5)", "CuSO4·5H2O"],
  ],
  "labels and slips of writing": [
    ["Calcium Chloride, Dihydrate", "CaCl2·2H2O"],
    ["iron-III-chloride", "FeCl3"],
    ["Fe(III) chloride", "FeCl3"],
    ["copper(II) sulphate 5H2O", "CuSO4·5H2O"],
    ["magnesium sulfate 7-hydrate", "MgSO4·7H2O"],
    ["disodium phosphate", "Na2HPO4"],
    ["tricalcium phosphate", "Ca3(PO4)2"],
    ["nitrogen", "N2"],
    ["Chile saltpeter", "NaNO3"],
    ["Mohr salt", "(NH4)2Fe(SO4)2·6H2O"],
    ["KHP", "KHC8H4O4"],
  ],
  "minerals and trade": [
    ["microcosmic salt", "NaNH4HPO4·4H2O"],
    ["butter of antimony", "SbCl3"],
    ["silica", "SiO2"],
    ["realgar", "As4S4"],
    ["Epsom salts", "MgSO4·7H2O"],
    ["sodium silicate nonahydrate", "Na2SiO3·9H2O"],
    ["sodium aluminium fluoride", "Na3AlF6"],
    ["lithium cobalt oxide", "LiCoO2"],
    ["nickel oxide hydroxide", "NiO(OH)"],
  ],
  "IR-6.3 halogens in place of hydrogen": [
    ["tetrachloromethane", "CCl4"],
    ["trichlorosilane", "SiHCl3"],
    ["bromochloromethane", "CH2BrCl"],
  ],
};

describe.each(Object.entries(BOTH_WAYS))("Red Book %s", (_, rows) => {
  it.each(rows)("names %s", (formula, name) => expect(nameOf(formula)).toBe(name));
  it.each(rows)("reads the name of %s", (formula, name) =>
    expect(same(formulaOf(name).toString(), formula), String(formulaOf(name))).toBe(true),
  );
});

describe.each(Object.entries(READ))("%s", (_, rows) => {
  it.each(rows)("reads %s", (name, formula) =>
    expect(same(formulaOf(name).toString(), formula), String(formulaOf(name))).toBe(true),
  );
});

describe("what a name or a formula does not settle", () => {
  it("writes the hydrogen of an acid once", () => {
    expect(formulaOf("hypophosphorous acid").toString()).toBe("H3PO2");
    expect(formulaOf("chloroauric acid").toString()).toBe("H[AuCl4]");
  });

  // general chemistry: each of these is said of all of them
  it.each([
    ["nitrogen oxide", ["NO", "NO2", "N2O"]],
    ["sulfur oxide", ["SO2", "SO3"]],
    ["carbon oxide", ["CO2", "CO"]],
    ["potassium hexacyanoferrate", ["K3[Fe(CN)6]", "K4[Fe(CN)6]"]],
    ["potassium hexahydroxidoantimonate", ["K3[Sb(OH)6]", "K[Sb(OH)6]"]],
  ])("gives every reading of %s", (name, formulas) => {
    const readings = readingsOf(name);
    expect(readings.map((one) => one.formula).sort()).toEqual([...formulas].sort());
    expect(readings.length, "rows to test").toBeGreaterThan(0);
    for (const one of readings) expect(one.decides).toMatch(/^the label says /);
  });

  it.each(["phosphorus chloride", "chlorine oxide", "sulfur chloride", "carbon chloride"])(
    "refuses %s, which names no proportions",
    (name) => expect(tryFormulaOf(name).ok).toBe(false),
  );

  it("says so when it took the simplest proportions", () => {
    expect(readingsOf("magnesium carbonate hydroxide")[0]?.notes).toEqual([
      "the simplest proportions; the name does not give them",
    ]);
    expect(readingsOf("magnesium chloride hydroxide")[0]?.formula).toBe("MgCl(OH)");
  });

  it("keeps a bracketed group whole, and counts that charges do not give", () => {
    // no copper acetylide bis(butyrate)
    expect(nameOf("Cu(C5H7O2)2")).toBe("copper(II) acetylacetonate");
    for (const formula of ["Cu(C6H9O2)2", "H3PMo12O40", "Pt(NH3)2Cl2", "Co(NH3)3Cl3", "Cr(H2O)6Cl3"])
      expect(tryNameOf(formula).ok, formula).toBe(false);
    expect(nameOf("Na2Cl2")).toBe("disodium dichloride");
    expect(nameOf("Ag2O2")).toBe("disilver dioxide");
  });
});
