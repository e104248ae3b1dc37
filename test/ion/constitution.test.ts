// What formulas are made of. The ions of the salts are those any textbook gives (general chemistry); mixed oxides: Fe3O4 is
// FeO·Fe2O3, Pb3O4 2 PbO·PbO2 (Greenwood and Earnshaw, Chemistry of the Elements; from memory).

import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { constitutionOf, hasIon, sameSubstance } from "../../src/ion";
import { ACID_STEPS } from "../../src/ion/data/acid-steps";
import { ACIDS } from "../../src/ion/data/acids";
import { ANIONS, CATIONS } from "../../src/ion/data/ions";
import { ISOMERS } from "../../src/ion/data/isomers";
import { SOLUBILITY_RULES } from "../../src/ion/data/rules";
import { elementOfIon, saltFormula } from "../../src/ion/internal";
import { anhydrousKey, formulaKey } from "../../src/ion/keys";
import { readNotation } from "../../src/ion/notation";
import { REGISTRY } from "../../src/substance/data/registry";

const ions = (formula: string): string => {
  const { cations, anions } = constitutionOf(formula);
  return [...cations, ...anions].map(({ formula: ion, count }) => `${count} ${ion}`).join(" ");
};

describe("constitutionOf", () => {
  it.each([
    ["NaCl", "1 Na+ 1 Cl-"],
    ["Fe2(SO4)3", "2 Fe^3+ 3 SO4^2-"],
    ["Hg2Cl2", "1 Hg2^2+ 2 Cl-"],
    ["Fe3O4", "1 Fe^2+ 2 Fe^3+ 4 O^2-"],
    ["Pb3O4", "2 Pb^2+ 1 Pb^4+ 4 O^2-"],
    ["CuHAsO3", "1 Cu^2+ 1 HAsO3^2-"],
    ["NaAlO2", "1 Na+ 1 AlO2-"],
    ["Fe(COO)2", "1 Fe^2+ 1 C2O4^2-"],
    ["Cu2Fe(CN)6", "2 Cu^2+ 1 [Fe(CN)6]^4-"],
    ["K4Fe(CN)6", "4 K+ 1 [Fe(CN)6]^4-"],
    ["Zn5C2H6O12", "5 Zn^2+ 2 CO3^2- 6 OH-"],
    ["BiOCl", "1 Bi^3+ 1 O^2- 1 Cl-"],
    ["NaOCl", "1 Na+ 1 ClO-"],
    ["BaO2", "1 Ba^2+ 1 O2^2-"],
    ["PbO2", "1 Pb^4+ 2 O^2-"],
    ["3CdSO4·8H2O", "3 Cd^2+ 3 SO4^2-"],
    // hydroxides of two metals hold no aluminate: ettringite, Friedel's salt, hydrotalcite (formulas of the IMA list of minerals)
    ["Ca6Al2(SO4)3(OH)12·26H2O", "6 Ca^2+ 2 Al^3+ 3 SO4^2- 12 OH-"],
    ["Ca2Al(OH)6Cl·2H2O", "2 Ca^2+ 1 Al^3+ 6 OH- 1 Cl-"],
    ["Mg6Al2CO3(OH)16·4H2O", "6 Mg^2+ 2 Al^3+ 1 CO3^2- 16 OH-"],
    ["Ca3Al2(OH)12", "3 Ca^2+ 2 Al^3+ 12 OH-"],
    // and one that shows it does
    ["Ca[Al(OH)4]2", "1 Ca^2+ 2 [Al(OH)4]-"],
    ["NaAl(OH)4", "1 Na+ 1 [Al(OH)4]-"],
    ["2KHSO5·KHSO4·K2SO4", "5 K+ 2 HSO5- 1 HSO4- 1 SO4^2-"],
    ["(NH4)2Fe(SO4)2·6H2O", "2 NH4+ 1 Fe^2+ 2 SO4^2-"],
    ["H8N2O4S", "2 NH4+ 1 SO4^2-"],
    ["H2SO4", "2 H+ 1 SO4^2-"],
    ["C2H5OH", ""],
    ["CO2", ""],
    // ammonium beside carbon: where it is written, or where nothing else has the composition in common use
    ["CH3COONH4", "1 NH4+ 1 CH3COO-"],
    ["HCOONH4", "1 NH4+ 1 HCOO-"],
    ["C6H5COONH4", "1 NH4+ 1 C6H5COO-"],
    ["(NH4)2C2O4", "2 NH4+ 1 C2O4^2-"],
    ["(NH4)2CO3", "2 NH4+ 1 CO3^2-"],
    ["CH8N2O3", "2 NH4+ 1 CO3^2-"],
    ["CH5NO3", "1 NH4+ 1 HCO3-"],
    ["NH4CN", "1 NH4+ 1 CN-"],
    ["NH4SCN", "1 NH4+ 1 SCN-"],
    ["CO(NH2)2", ""],
    ["(CH3O)2CO", ""],
    ["CS(NH2)2", ""],
    ["CH4N2", ""],
    ["CH6ClN", ""],
  ])("reads %s as %s", (formula, expected) => {
    expect(ions(formula)).toBe(expected);
  });

  it("counts crystal water, and water that stands in brackets apart", () => {
    expect(constitutionOf("CaSO4·½H2O").waters).toBe(0.5);
    expect(constitutionOf("CuH10O9S").waters).toBe(5);
    const complex = constitutionOf("[Cu(H2O)4]SO4·H2O");
    expect([complex.waters, complex.ligands]).toEqual([1, [{ formula: "H2O", count: 4 }]]);
    expect(sameSubstance("[Cu(H2O)4]SO4·H2O", "CuSO4·5H2O")).toBe(true);
  });

  it("keeps azide in its complex beside other anions", () => {
    // azidopentaamminecobalt(III) chloride, the usual starting point of linkage isomers: cobalt(III), one azide inside, two
    // chlorides outside (name and formula from memory; its charges are those of Co 3+ and of N3-)
    const salt = constitutionOf("[Co(NH3)5(N3)]Cl2");
    expect(salt.kind).toBe("salt");
    expect(salt.complex?.formula).toBe("[Co(NH3)5(N3)]^2+");
    expect(salt.cations.map(({ formula }) => formula)).toEqual(["Co^3+"]);
    expect(salt.anions.map(({ formula, count }) => `${count} ${formula}`).sort()).toEqual(["1 N3-", "2 Cl-"]);
    // no ammonium, amide or hydroxide is made of the ammonia and the nitrate
    expect(constitutionOf("[Cr(NH3)5(N3)](NO3)2").complex?.formula).toBe("[Cr(NH3)5(N3)]^2+");
  });

  it("keeps a complex together", () => {
    expect(constitutionOf("[Co(NH3)6]Cl3").complex?.formula).toBe("[Co(NH3)6]^3+");
    expect(constitutionOf("Cl3CoH18N6").complex?.formula).toBe("[Co(NH3)6]^3+");
    expect(constitutionOf("[Co(NH3)5Cl]Cl2").complex?.formula).toBe("[Co(NH3)5Cl]^2+");
    expect(constitutionOf("K2Ni(CN)4").complex?.formula).toBe("[Ni(CN)4]^2-");
    expect(constitutionOf("CuSO4·5H2O").complex).toBeUndefined();
  });

  it("is a salt of an adduct that holds one, and a molecule where none does", () => {
    expect(["CaCl2·4CH3OH", "CaCl2·6H2O", "I2·CCl4", "Na2CO3·1½H2O2"].map((f) => constitutionOf(f).kind)).toEqual([
      "salt",
      "salt",
      "molecule",
      "salt",
    ]);
  });

  it("makes a complex of cyanide and oxalate with the metals that hold them, and with no other", () => {
    const complex = (formula: string) => constitutionOf(formula).complex?.formula;
    expect(["K2Ni(CN)4", "Na2Zn(CN)4", "K4Fe(CN)6", "K3Al(C2O4)3", "Na3Co(NO2)6"].map(complex)).toEqual([
      "[Ni(CN)4]^2-",
      "[Zn(CN)4]^2-",
      "[Fe(CN)6]^4-",
      "[Al(C2O4)3]^3-",
      "[Co(NO2)6]^3-",
    ]);
    expect(["K2Mg(CN)4", "Na2Ca(CN)4", "Ni(CN)2", "KFe(C2O4)2Cl"].map(complex)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("tells the hydrogen of an acid", () => {
    expect(constitutionOf("H2C2O4·2H2O").acid).toMatchObject({ protons: 2, anion: "C2O4^2-", strong: false });
    expect(constitutionOf("HCl").acid?.strong).toBe(true);
    expect(constitutionOf("C6H8O7").acid?.protons).toBe(3);
    // phosphonic acid has one hydrogen on the phosphorus and is dibasic
    expect(constitutionOf("H3PO3").acid?.protons).toBe(2);
    expect(constitutionOf("C2H5OH").acid).toBeUndefined();
    expect(constitutionOf("H2O2").acid).toBeUndefined();
    expect(constitutionOf("NH3").acid).toBeUndefined();
  });

  it("keeps isomers apart where the writing tells them, and leaves both open where it does not", () => {
    for (const [one, other] of [
      ["NH4OCN", "CO(NH2)2"],
      ["NH4SCN", "CS(NH2)2"],
      ["CH3COOH", "HCOOCH3"],
      ["C2H5OH", "CH3OCH3"],
    ] as const) {
      expect(sameSubstance(one, other), one).toBe(false);
      const bare = constitutionOf(parseFormula(one).toHill());
      expect(bare.readings, one).toContain(one);
      expect(bare.readings, other).toContain(other);
      expect(bare.kind).toBe("open");
    }
    expect(sameSubstance("(NH2)2CO", "CO(NH2)2")).toBe(true);
    expect(sameSubstance("NH4NCS", "NH4SCN")).toBe(true);
  });

  it("names the groups, those of hydrogen salts with the acid's", () => {
    expect(constitutionOf("Cu2(OH)2CO3").groups).toEqual(["carbonate", "hydroxide"]);
    expect(constitutionOf("NaHCO3").groups).toContain("carbonate");
    expect(constitutionOf("SrCO3").groups).toEqual(["carbonate"]);
    expect(hasIon("NH4Cl", "NH4+")).toBe(true);
    expect(hasIon("CH3OH", "OH-")).toBe(false);
  });

  it("puts an ion among those of its charge, with the water beside it", () => {
    expect(constitutionOf("Fe^3+")).toMatchObject({ cations: [{ formula: "Fe^3+", element: "Fe" }], anions: [] });
    expect(constitutionOf("SO4^2-")).toMatchObject({ cations: [], anions: [{ formula: "SO4^2-" }], readings: [] });
    expect(constitutionOf("Fe^3+·6H2O").identity).toBe("1 Fe^3+ + 6 H2O");
    expect(constitutionOf("2Na+·H2O").identity).toBe("0.5 H2O + 1 Na+");
    expect(constitutionOf("2SO4^2-").identity).toBe("SO4^2-");
    expect(constitutionOf("[Cu(NH3)4]^2+").complex?.formula).toBe("[Cu(NH3)4]^2+");
    expect(constitutionOf("[Fe(CN)6]^4-").complex?.formula).toBe("[Fe(CN)6]^4-");
    // methylammonium and its like stand in brackets without a metal
    for (const ion of ["[N(CH3)4]+", "SO4^2-", "Fe^3+", "MnO4-"])
      expect(constitutionOf(ion).complex, ion).toBeUndefined();
  });

  it("answers for ions, elements and water", () => {
    expect(constitutionOf("SO4-2").identity).toBe("SO4^2-");
    expect(constitutionOf("C2H3O2-").identity).toBe("CH3COO-");
    expect(constitutionOf("Fe").kind).toBe("element");
    expect(constitutionOf("H2O").kind).toBe("water");
  });

  it("is the same object for a formula asked twice", () => {
    const formula = parseFormula("CuSO4·5H2O");
    expect(constitutionOf(formula)).toBe(constitutionOf(formula));
  });

  it("conserves atoms and charge", () => {
    let tested = 0;
    for (const { formula } of REGISTRY()) {
      const { cations, anions, waters, ligands, molecules, kind } = constitutionOf(formula);
      let charge = 0;
      const atoms = new Map<string, number>();
      for (const thing of [...cations, ...anions, ...ligands, ...molecules, { formula: "H2O", count: waters }]) {
        const read = parseFormula(thing.formula);
        charge += read.charge * thing.count;
        for (const { symbol, count } of read.composition)
          atoms.set(symbol, (atoms.get(symbol) ?? 0) + Number(count.valueOf()) * thing.count);
      }
      expect(kind, formula).not.toBe("open");
      expect(charge, formula).toBeCloseTo(0, 9);
      for (const { symbol, count } of parseFormula(formula).composition)
        expect(atoms.get(symbol), `${formula} ${symbol}`).toBeCloseTo(Number(count.valueOf()), 9);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(520);
  });
});

/** Spellings without any structure that a reader cannot be asked to see through, with the reason. */
const BARE_EXCEPTIONS: Readonly<Record<string, string>> = {
  "(NH4)2C2O4·H2O": "crystal water without its dot is looked for beside metals only",
  H2C2O4·2H2O: "crystal water without its dot is looked for beside metals only",
  C6H8O7·H2O: "crystal water without its dot is looked for beside metals only; C6H10O8 is also glucaric acid",
  "2Na2CO3·3H2O2": "hydrogen peroxide without its dot",
  "2KHSO5·KHSO4·K2SO4": "three salts in one composition",
  C3N3O3Cl2Na·2H2O: "crystal water on an organic salt",
  Na2SnO3·3H2O: "is Na2[Sn(OH)6], and reads so",
  "Al2Si2O5(OH)4": "kaolinite as its oxide formula, Al2Si2O7·2H2O",
  NH4SCN: "isomer",
  CH3COOH: "isomer",
  "CO(NH2)2": "isomer",
  C2H5OH: "isomer",
  CH3COCH3: "isomer",
};

describe("spelling", () => {
  it("makes no difference, over the registry", () => {
    const differing: string[] = [];
    for (const { formula } of REGISTRY()) {
      const read = parseFormula(formula);
      const { identity } = constitutionOf(read);
      const hillParts = read.parts.map(
        (part) => `${part.multiplier.equals(1) ? "" : part.multiplier.toFraction()}${part.formula.toHill()}`,
      );
      const written = [
        read.toUnicode(),
        formula.replaceAll("·", "."),
        formula.replaceAll("·", "*"),
        formula.replaceAll("CH3COO", "C2H3O2"),
        formula.replaceAll("CH3COO", "CH3CO2"),
        formula.replaceAll("C2O4", "(COO)2"),
        formula.replaceAll("HCOO", "CHO2"),
        formula.replace(/\(([A-Z]\w*)\)/g, "[$1]"),
        ...(formula in BARE_EXCEPTIONS ? [] : [read.toHill(), hillParts.join("·")]),
      ];
      for (const spelling of written)
        if (constitutionOf(spelling).identity !== identity) differing.push(`${formula} as ${spelling}`);
    }
    expect(differing).toEqual([]);
  });

  it("lists no exception that is none", () => {
    let tested = 0;
    for (const [formula, why] of Object.entries(BARE_EXCEPTIONS)) {
      expect(sameSubstance(parseFormula(formula).toHill(), formula), `${formula}: ${why}`).toBe(false);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(13);
  });
});

describe("the tables", () => {
  it("spell the ions of the rules as the constitution writes them", () => {
    let tested = 0;
    for (const { anions, except = {} } of SOLUBILITY_RULES()) {
      for (const ion of [...anions, ...Object.values(except).flatMap((list) => list.flatMap((one) => one.split(" ")))])
        expect(constitutionOf(ion).identity, ion).toBe(ion);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(23);
  });

  it("give an acid's anion with the charge and atoms its hydrons leave", () => {
    let tested = 0;
    for (const { formula, protons, anion } of ACIDS()) {
      const left = parseFormula(anion);
      expect(left.charge, formula).toBe(-protons);
      const hydrons = parseFormula(`H${protons}^${protons}+`);
      expect(left.plus(hydrons).hasSameComposition(parseFormula(formula)), formula).toBe(true);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(31);
  });

  it("list every acid, ion and isomer once", () => {
    const acids = ACIDS().map(({ formula }) => constitutionOf(formula).identity);
    expect(new Set(acids).size).toBe(acids.length);
    for (const table of [ANIONS(), CATIONS()]) {
      const keys = table.map(({ formula, charge, name }) => `${formula} ${charge} ${name}`);
      expect(new Set(keys).size).toBe(keys.length);
    }
    let tested = 0;
    for (const { readings } of ISOMERS()) {
      const [first] = readings;
      for (const { formula, written = [] } of readings)
        for (const text of [formula, ...written])
          expect(parseFormula(text).hasSameComposition(parseFormula(first!.formula)), text).toBe(true);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(12);
  });

  it("know the conjugate acid of every anion that a step of the constants ends at", () => {
    let tested = 0;
    for (const { acid, base } of ACID_STEPS()) {
      expect(parseFormula(acid).charge - parseFormula(base).charge, `${acid} ${base}`).toBe(1);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(120);
  });
});

describe("the solubility rules", () => {
  // A rule for an anion that the ion table does not know, or writes otherwise, would never be asked.
  it("speak of ions as formulas give them", () => {
    const dead: string[] = [];
    let asked = 0;
    for (const { anions, except = {} } of SOLUBILITY_RULES()) {
      for (const anion of anions) {
        asked += 1;
        if (!hasIon(saltFormula("Na+", anion), anion)) dead.push(anion);
      }
      for (const pair of Object.values(except).flat()) {
        const [cation, anion = anions[0]!] = pair.split(" ");
        if (!hasIon(saltFormula(cation!, anion), cation!)) dead.push(pair);
      }
    }
    expect(asked).toBeGreaterThan(60);
    expect(dead).toEqual([]);
  });
});

// Ions, charges and structures as textbooks give them (general and inorganic chemistry, from memory): oxo cations that stay
// together in water, complexes in brackets or not, mixed valence, peroxides and the like, acids, double salts, isomers.
describe("what a formula is made of", () => {
  const list = (things: readonly { readonly formula: string; readonly count: number }[]): string =>
    things.map(({ formula, count }) => (count === 1 ? formula : `${count} ${formula}`)).join(" ");

  it.each([
    ["VOSO4", "salt V^4+ SO4^2- O^2-", "sulfate oxide", "VO^2+ SO4^2-"],
    ["(VO)SO4", "salt V^4+ SO4^2- O^2-", "sulfate oxide", "VO^2+ SO4^2-"],
    // the oxo cation of a double salt, and of a formula taken twice, is the same
    ["Na2VO(SO4)2", "salt 2 Na+ V^4+ 2 SO4^2- O^2-", "sulfate oxide", "2 Na+ VO^2+ 2 SO4^2-"],
    ["V2O2(SO4)2", "salt 2 V^4+ 2 SO4^2- 2 O^2-", "sulfate oxide", "2 VO^2+ 2 SO4^2-"],
    ["VO2Cl", "salt V^5+ 2 O^2- Cl-", "oxide chloride", "VO2+ Cl-"],
    ["(VO2)2SO4", "salt 2 V^5+ SO4^2- 4 O^2-", "sulfate oxide", "2 VO2+ SO4^2-"],
    ["VO", "salt V^2+ O^2-", "oxide", "as written"],
    ["VO2", "salt V^4+ 2 O^2-", "oxide", "as written"],
    ["UO2SO4", "salt UO2^2+ SO4^2-", "sulfate", "as written"],
    ["UO2(NO3)2·6H2O", "salt UO2^2+ 2 NO3- + 6 H2O", "nitrate", "as written"],
    ["UO3", "salt U^6+ 3 O^2-", "oxide", "as written"],
    ["V2O5", "salt 2 V^5+ 5 O^2-", "oxide", "as written"],
    ["TiOSO4", "salt Ti^4+ SO4^2- O^2-", "sulfate oxide", "TiO^2+ SO4^2-"],
    ["ZrOCl2·8H2O", "salt Zr^4+ O^2- 2 Cl- + 8 H2O", "oxide chloride", "ZrO^2+ 2 Cl-"],
    ["BiOCl", "salt Bi^3+ O^2- Cl-", "oxide chloride", "as written"],
    ["BiO(NO3)", "salt Bi^3+ NO3- O^2-", "nitrate oxide", "as written"],
    ["MoO2Cl2", "salt Mo^6+ 2 O^2- 2 Cl-", "oxide chloride", "as written"],
    ["CrO2Cl2", "salt Cr^6+ 2 O^2- 2 Cl-", "oxide chloride", "as written"],
    ["K3[Fe(CN)6]", "salt 3 K+ [Fe(CN)6]^3-", "hexacyanidoferrate(III)", "as written"],
    ["K3(Fe(CN)6)", "salt 3 K+ [Fe(CN)6]^3-", "hexacyanidoferrate(III)", "as written"],
    ["K3Fe(CN)6", "salt 3 K+ [Fe(CN)6]^3-", "hexacyanidoferrate(III)", "as written"],
    ["C6FeK4N6", "salt 4 K+ [Fe(CN)6]^4-", "hexacyanidoferrate(II)", "as written"],
    ["Na3[Co(NO2)6]", "salt 3 Na+ Co^3+ 6 NO2-", "nitrite", "3 Na+ [Co(NO2)6]^3-"],
    ["K3[Cr(C2O4)3]·3H2O", "salt 3 K+ Cr^3+ 3 C2O4^2- + 3 H2O", "oxalate", "3 K+ [Cr(C2O4)3]^3-"],
    ["K3Fe(C2O4)3·3H2O", "salt 3 K+ Fe^3+ 3 C2O4^2- + 3 H2O", "oxalate", "3 K+ [Fe(C2O4)3]^3-"],
    ["K2Ni(CN)4", "salt 2 K+ Ni^2+ 4 CN-", "cyanide", "2 K+ [Ni(CN)4]^2-"],
    // several complexes in one formula unit; ligands are counted in all of them
    ["[Co(NH3)6]2(SO4)3", "salt 2 Co^3+ 3 SO4^2- holding 12 NH3", "sulfate ammine", "2 [Co(NH3)6]^3+ 3 SO4^2-"],
    ["[Cr(H2O)6]2(SO4)3", "salt 2 Cr^3+ 3 SO4^2- holding 12 H2O", "sulfate", "2 [Cr(H2O)6]^3+ 3 SO4^2-"],
    ["[Ag(NH3)2]2SO4", "salt 2 Ag+ SO4^2- holding 4 NH3", "sulfate ammine", "2 [Ag(NH3)2]+ SO4^2-"],
    ["(Ag(NH3)2)2SO4", "salt 2 Ag+ SO4^2- holding 4 NH3", "sulfate ammine", "2 [Ag(NH3)2]+ SO4^2-"],
    ["K6Cr2(C2O4)6", "salt 6 K+ 2 Cr^3+ 6 C2O4^2-", "oxalate", "6 K+ 2 [Cr(C2O4)3]^3-"],
    ["2K2[Ni(CN)4]·H2O", "salt 4 K+ 2 Ni^2+ 8 CN- + 1 H2O", "cyanide", "4 K+ 2 [Ni(CN)4]^2-"],
    ["Ag(NH3)NO3", "salt Ag+ NO3- holding NH3", "nitrate ammine", "[Ag(NH3)]+ NO3-"],
    // one cyanide and a half for each copper: no complex of one copper
    ["KCu2(CN)3", "salt K+ 2 Cu+ 3 CN-", "cyanide", "as written"],
    // a complex without charge is no ion; cisplatin
    ["[Pt(NH3)2Cl2]", "salt Pt^2+ 2 Cl- holding 2 NH3", "chloride ammine", "as written"],
    // nothing shows which of two metals holds the ammonia
    ["CuPt(NH3)4Cl4", "salt Cu^2+ Pt^2+ 4 Cl- holding 4 NH3", "chloride ammine", "as written"],
    // three ammonias on two formula units
    ["Cu2Cl4(NH3)3", "salt 2 Cu^2+ 4 Cl- holding 3 NH3", "chloride ammine", "as written"],
    ["CaCl2(NH3)8", "salt Ca^2+ 2 Cl- holding 8 NH3", "chloride ammine", "as written"],
    ["K4[Mo(CN)8]", "salt 4 K+ Mo^4+ 8 CN-", "cyanide", "4 K+ [Mo(CN)8]^4-"],
    ["Na3[Ag(S2O3)2]", "salt 3 Na+ Ag+ 2 S2O3^2-", "thiosulfate", "3 Na+ [Ag(S2O3)2]^3-"],
    ["(NH4)2[TiF6]", "salt 2 NH4+ Ti^4+ 6 F-", "fluoride ammonium", "2 NH4+ [TiF6]^2-"],
    // two organic anions in one salt where the formula spells them; CaC3H4O4 may as well be a malonate with water
    ["Ca(HCOO)(CH3COO)", "salt Ca^2+ CH3COO- HCOO-", "acetate formate", "as written"],
    // an acid salt that no table lists is read from its anion
    ["NaHSiO3", "salt Na+ HSiO3-", "hydrogenmetasilicate metasilicate", "as written"],
    ["Mg3Bi2", "salt 3 Mg^2+ 2 Bi^3-", "bismuthide", "as written"],
    ["NaBiO3", "salt Na+ Bi^5+ 3 O^2-", "oxide", "as written"],
    ["U3O8", "salt 2 U^5+ U^6+ 8 O^2-", "oxide", "as written"],
    ["Mg(NH4PO4)·6H2O", "salt NH4+ Mg^2+ PO4^3- + 6 H2O", "phosphate ammonium", "as written"],
    // no oxidation number of copper is above 4 or, beside oxide, below 1
    ["Cu3O7", "molecule Cu3O7", "", "as written"],
    ["Cu3O", "molecule Cu3O", "", "as written"],
    ["[Cu(NH3)4]SO4·H2O", "salt Cu^2+ SO4^2- + 1 H2O holding 4 NH3", "sulfate ammine", "[Cu(NH3)4]^2+ SO4^2-"],
    ["Cu(NH3)4SO4", "salt Cu^2+ SO4^2- holding 4 NH3", "sulfate ammine", "[Cu(NH3)4]^2+ SO4^2-"],
    ["[Co(NH3)5Cl]Cl2", "salt Co^3+ 3 Cl- holding 5 NH3", "chloride ammine", "[Co(NH3)5Cl]^2+ 2 Cl-"],
    ["[Co(NH3)4(CO3)]NO3", "salt Co^3+ NO3- CO3^2- holding 4 NH3", "nitrate carbonate ammine", "[Co(NH3)4(CO3)]+ NO3-"],
    ["[Cr(H2O)6]Cl3", "salt Cr^3+ 3 Cl- holding 6 H2O", "chloride", "[Cr(H2O)6]^3+ 3 Cl-"],
    ["[Cr(H2O)4Cl2]Cl·2H2O", "salt Cr^3+ 3 Cl- + 2 H2O holding 4 H2O", "chloride", "[Cr(H2O)4Cl2]+ Cl-"],
    ["Ni(NH3)6Cl2", "salt Ni^2+ 2 Cl- holding 6 NH3", "chloride ammine", "[Ni(NH3)6]^2+ 2 Cl-"],
    ["Ag(NH3)2Cl", "salt Ag+ Cl- holding 2 NH3", "chloride ammine", "[Ag(NH3)2]+ Cl-"],
    ["K2[HgI4]", "salt 2 K+ Hg^2+ 4 I-", "iodide", "2 K+ [HgI4]^2-"],
    ["K2[PtCl6]", "salt 2 K+ [PtCl6]^2-", "hexachloridoplatinate(IV)", "as written"],
    ["H2PtCl6·6H2O", "acid 2 H+ [PtCl6]^2- + 6 H2O", "hexachloridoplatinate(IV)", "as written"],
    ["KAuCl4", "salt K+ [AuCl4]-", "tetrachloridoaurate(III)", "as written"],
    ["Na2Zn(OH)4", "salt 2 Na+ [Zn(OH)4]^2-", "tetrahydroxidozincate", "as written"],
    ["H3[Fe(CN)6]", "acid 3 H+ [Fe(CN)6]^3-", "hexacyanidoferrate(III)", "as written"],
    ["Mn3O4", "salt Mn^2+ 2 Mn^3+ 4 O^2-", "oxide", "as written"],
    ["CrO2", "salt Cr^4+ 2 O^2-", "oxide", "as written"],
    ["Cr2(CrO4)3", "salt 2 Cr^3+ 3 CrO4^2-", "chromate", "as written"],
    ["KCr(SO4)2·12H2O", "salt K+ Cr^3+ 2 SO4^2- + 12 H2O", "sulfate", "as written"],
    ["FeTiO3", "salt Fe^2+ TiO3^2-", "titanate", "as written"],
    ["CoMn2O4", "salt Co^2+ 2 Mn^3+ 4 O^2-", "oxide", "as written"],
    ["ZnFe2O4", "salt Zn^2+ 2 Fe^3+ 4 O^2-", "oxide", "as written"],
    ["KMnO4", "salt K+ MnO4-", "permanganate", "as written"],
    ["MnO2", "salt Mn^4+ 2 O^2-", "oxide", "as written"],
    ["Na2O2", "salt 2 Na+ O2^2-", "peroxide", "as written"],
    ["BaO2", "salt Ba^2+ O2^2-", "peroxide", "as written"],
    ["KO2", "salt K+ O2-", "superoxide", "as written"],
    ["KO3", "salt K+ O3-", "ozonide", "as written"],
    ["CaC2", "salt Ca^2+ C2^2-", "acetylide", "as written"],
    ["Al4C3", "salt 4 Al^3+ 3 C^4-", "carbide", "as written"],
    ["Mg3N2", "salt 3 Mg^2+ 2 N^3-", "nitride", "as written"],
    ["NaN3", "salt Na+ N3-", "azide", "as written"],
    ["NaH", "salt Na+ H-", "hydride", "as written"],
    ["CaH2", "salt Ca^2+ 2 H-", "hydride", "as written"],
    ["LiAlH4", "salt Li+ AlH4-", "tetrahydridoaluminate", "as written"],
    ["NH4Cl", "salt NH4+ Cl-", "chloride ammonium", "as written"],
    ["PH4I", "salt PH4+ I-", "iodide", "as written"],
    ["N2H5Cl", "salt N2H5+ Cl-", "chloride", "as written"],
    ["N2H6SO4", "salt N2H6^2+ SO4^2-", "sulfate", "as written"],
    ["NH3OHCl", "salt NH3OH+ Cl-", "chloride", "as written"],
    ["(NH3OH)2SO4", "salt 2 NH3OH+ SO4^2-", "sulfate", "as written"],
    ["CH3NH3Cl", "salt CH3NH3+ Cl-", "chloride", "as written"],
    ["N(CH3)4OH", "salt [N(CH3)4]+ OH-", "hydroxide", "as written"],
    ["NOCl", "salt NO+ Cl-", "chloride", "as written"],
    ["HNO3", "acid H+ NO3-", "nitrate", "as written"],
    ["H3PO4", "acid 3 H+ PO4^3-", "phosphate", "as written"],
    ["H3PO3", "acid 2 H+ HPO3^2-", "phosphonate phosphite", "as written"],
    ["H3PO2", "acid H+ H2PO2-", "phosphinate", "as written"],
    ["Na2HPO3", "salt 2 Na+ HPO3^2-", "phosphonate phosphite", "as written"],
    ["NH4MgPO4·6H2O", "salt NH4+ Mg^2+ PO4^3- + 6 H2O", "phosphate ammonium", "as written"],
    ["NaHC2O4", "salt Na+ HC2O4-", "hydrogenoxalate oxalate", "as written"],
    ["KNaC4H4O6·4H2O", "salt K+ Na+ C4H4O6^2- + 4 H2O", "tartrate", "as written"],
    ["H2C2O4·2H2O", "acid 2 H+ C2O4^2- + 2 H2O", "oxalate", "as written"],
    ["C6H8O7·H2O", "acid 3 H+ C6H5O7^3- + 1 H2O", "citrate", "as written"],
    ["NaCH3COO·3H2O", "salt Na+ CH3COO- + 3 H2O", "acetate", "as written"],
    ["Pb(CH3COO)2·Pb(OH)2", "salt 2 Pb^2+ 2 CH3COO- 2 OH-", "acetate hydroxide", "as written"],
    ["Cu2(OH)2CO3", "salt 2 Cu^2+ CO3^2- 2 OH-", "carbonate hydroxide", "as written"],
    ["Na2CO3·NaHCO3·2H2O", "salt 3 Na+ CO3^2- HCO3- + 2 H2O", "carbonate hydrogencarbonate", "as written"],
    ["KCl·MgCl2·6H2O", "salt K+ Mg^2+ 3 Cl- + 6 H2O", "chloride", "as written"],
    ["KCNO", "salt K+ OCN-", "cyanate", "as written"],
    ["AgCNO", "salt Ag+ CNO-", "fulminate", "as written"],
    ["Cu(SCN)2", "salt Cu^2+ 2 SCN-", "thiocyanate", "as written"],
    ["CO(NH2)2", "molecule CO(NH2)2", "", "as written"],
    ["CCl4", "molecule CCl4", "", "as written"],
    // two non-metals in the order of IUPAC 1990, I-4.6.1.2
    ["P4O10", "molecule P4O10", "", "as written"],
    ["D2O", "molecule D2O", "", "as written"],
    ["T2O", "molecule T2O", "", "as written"],
    ["[13C]O2", "molecule [13C]O2", "", "as written"],
    ["H4N2O3", "salt NH4+ NO3-", "nitrate ammonium", "as written"],
    ["H10Na2O8Si", "salt 2 Na+ SiO3^2- + 5 H2O", "metasilicate", "as written"],
    ["S8", "element S8", "", "as written"],
    ["Na6P6O18", "salt 6 Na+ P6O18^6-", "cyclo-hexaphosphate", "as written"],
    ["Na4P2O7", "salt 4 Na+ P2O7^4-", "diphosphate", "as written"],
    ["Na2B4O7·10H2O", "salt 2 Na+ B4O7^2- + 10 H2O", "tetraborate", "as written"],
    ["(NH4)2SO4·FeSO4·6H2O", "salt 2 NH4+ Fe^2+ 2 SO4^2- + 6 H2O", "sulfate ammonium", "as written"],
    ["3CdSO4·8H2O", "salt 3 Cd^2+ 3 SO4^2- + 8 H2O", "sulfate", "as written"],
    ["2CaSO4·H2O", "salt 2 Ca^2+ 2 SO4^2- + 1 H2O", "sulfate", "as written"],
    ["CuH10O9S", "salt Cu^2+ SO4^2- + 5 H2O", "sulfate", "as written"],
    ["Ca10(PO4)6(OH)2", "salt 10 Ca^2+ 6 PO4^3- 2 OH-", "phosphate hydroxide", "as written"],
    ["CaOCl2", "salt Ca^2+ ClO- Cl-", "hypochlorite chloride", "as written"],
    ["NaClO2", "salt Na+ ClO2-", "chlorite", "as written"],
    ["HClO4", "acid H+ ClO4-", "perchlorate", "as written"],
    ["K2S2O8", "salt 2 K+ S2O8^2-", "peroxodisulfate", "as written"],
    ["H2S", "acid 2 H+ S^2-", "sulfide", "as written"],
    ["NaHS", "salt Na+ HS-", "hydrogensulfide", "as written"],
    ["KHF2", "salt K+ HF2-", "hydrogendifluoride", "as written"],
    ["HCO3-", "ion HCO3-", "hydrogencarbonate carbonate", "as written"],
    ["NH4+", "ion NH4+", "ammonium", "as written"],
    ["Fe^3+", "ion Fe^3+", "", "as written"],
    ["[Cu(NH3)4]^2+", "ion [Cu(NH3)4]^2+ holding 4 NH3", "", "as written"],
    ["[Fe(H2O)6]^3+", "ion [Fe(H2O)6]^3+ holding 6 H2O", "", "as written"],
    ["[Fe(CN)6]^4-", "ion [Fe(CN)6]^4-", "hexacyanidoferrate(II)", "as written"],
    ["Hg2^2+", "ion Hg2^2+", "dimercury(2+)", "as written"],
    ["VO2+", "ion VO2+", "dioxidovanadium(V)", "as written"],
    ["2SO4^2-", "ion 2 SO4^2-", "sulfate", "as written"],
    ["3Na+", "ion 3 Na+", "", "as written"],
    ["Fe^3+·6H2O", "ion Fe^3+ + 6 H2O", "", "as written"],
    ["e-", "ion e-", "", "as written"],
    ["Cu(C5H7O2)2", "salt Cu^2+ 2 C5H7O2-", "acetylacetonate", "as written"],
    ["H3PMo12O40", "molecule H3Mo12O40P", "", "as written"],
    ["KH2PO4", "salt K+ H2PO4-", "dihydrogenphosphate hydrogenphosphate phosphate", "as written"],
    ["NH4VO3", "salt NH4+ VO3-", "trioxidovanadate(V) ammonium", "as written"],
    ["Hg2Cl2", "salt Hg2^2+ 2 Cl-", "chloride", "as written"],
    ["FeO(OH)", "salt Fe^3+ OH- O^2-", "hydroxide oxide", "as written"],
    ["CH3NO2", "molecule CH3NO2", "", "as written"],
    ["C2H5NO2", "acid H+ NH2CH2COO-", "glycinate", "as written"],
    ["Fe(CO)5", "molecule Fe(CO)5", "", "as written"],
    ["LiFePO4", "salt Li+ Fe^2+ PO4^3-", "phosphate", "as written"],
    ["4MgCO3·Mg(OH)2·4H2O", "salt 5 Mg^2+ 4 CO3^2- 2 OH- + 4 H2O", "carbonate hydroxide", "as written"],
  ])("%s: %s", (formula, expected, groups, inWater) => {
    const made = constitutionOf(formula);
    const ions = list([...made.cations, ...made.anions]);
    const parts = [
      ions,
      made.waters === 0 ? "" : `+ ${made.waters} H2O`,
      made.ligands.length === 0 ? "" : `holding ${list(made.ligands)}`,
      list(made.molecules),
    ];
    expect([made.kind, ...parts].filter((part) => part !== "").join(" ")).toBe(expected);
    expect(made.groups.join(" ")).toBe(groups);
    expect(list(made.inWater)).toBe(inWater === "as written" ? ions : inWater);
    // what stays together in water is the complex, and an atom's ion names its element
    const together = made.inWater.find((ion) => /^\[(?!N\()/.test(ion.formula));
    expect(made.complex?.formula).toBe(together?.formula);
    for (const ion of [...made.cations, ...made.anions])
      if (made.kind !== "acid") expect(ion.element, ion.formula).toBe(elementOfIon(ion.formula));
  });

  it("shares an acetylide, a peroxide or two organic anions that are not spelled with no other anion", () => {
    // acetylides and peroxides react with water and acids: their salts hold no other anion (general chemistry, from memory)
    for (const bare of ["PbC6H8O6", "Ca2C2Cl2", "PbC5H8O4", "CaC3H4O4", "ZnC7H8O4", "Ba2O2Cl2"]) {
      const { groups } = constitutionOf(bare);
      expect(
        groups.filter((group) => /acetylide|peroxide|superoxide|ozonide/.test(group)),
        bare,
      ).toEqual([]);
      expect(
        groups.filter((group) => /formate|acetate|propionate|oxalate|succinate/.test(group)).length,
        bare,
      ).toBeLessThan(2);
    }
  });

  it("is one substance whatever the number of units, and another with other water", () => {
    for (const [one, other] of [
      ["2CaSO4·H2O", "CaSO4·½H2O"],
      ["Ca10(PO4)6(OH)2", "Ca5(PO4)3OH"],
      ["Hg2Cl2", "Cl2Hg2"],
      ["3Na2CO3·6H2O", "Na2CO3·2H2O"],
      ["P4O10", "O10P4"],
    ] as const)
      expect(constitutionOf(one).identity, one).toBe(constitutionOf(other).identity);
    for (const [one, other] of [
      ["CaSO4·½H2O", "CaSO4·2H2O"],
      ["Hg2Cl2", "HgCl2"],
      ["P4O10", "P2O5"],
      ["Fe^3+", "Fe^2+"],
      ["[Cu(NH3)4]SO4", "[Cu(NH3)4]SO4·H2O"],
    ] as const)
      expect(constitutionOf(one).identity, one).not.toBe(constitutionOf(other).identity);
    expect(constitutionOf("2CaSO4·H2O").identity).toBe("0.5 H2O + 1 Ca^2+ + 1 SO4^2-");
    expect(constitutionOf("Cu2Cl4(NH3)3").identity).toBe("2 Cu^2+ + 3 NH3 + 4 Cl-");
    expect(constitutionOf("Cu2Cl4(NH3)8").identity).toBe("1 Cu^2+ + 2 Cl- + 4 NH3");
    expect(constitutionOf("2CaSO4·H2O").anhydrousIdentity).toBe("1 Ca^2+ + 1 SO4^2-");
  });

  it("gives the hydrogen of acids with their strength", () => {
    // strong in dilute water: HCl, HBr, HI, HNO3, HClO4, H2SO4; pKa above 6: H2S, HCN, H2CO3, H3BO3 (general chemistry, from memory)
    const acid = (formula: string) => {
      const { protons, anion, strong, veryWeak } = constitutionOf(formula).acid!;
      return `${protons} ${anion}${strong ? " strong" : ""}${veryWeak ? " very weak" : ""}`;
    };
    expect(["HCl", "HBr", "HI", "HNO3", "HClO4", "H2SO4", "HF", "H3PO4", "H3PO3", "H3PO2"].map(acid)).toEqual([
      "1 Cl- strong",
      "1 Br- strong",
      "1 I- strong",
      "1 NO3- strong",
      "1 ClO4- strong",
      "2 SO4^2- strong",
      "1 F-",
      "3 PO4^3-",
      "2 HPO3^2-",
      "1 H2PO2-",
    ]);
    expect(["HCN", "H2S", "H2CO3", "H3BO3"].every((formula) => constitutionOf(formula).acid!.veryWeak)).toBe(true);
  });
});

describe("the key of tables", () => {
  const key = (formula: string) => formulaKey(readNotation(formula));
  it("is one for parts and atoms in any order, and tells charges and isomers apart", () => {
    expect(key("2H2O·CaSO4")).toBe(key("CaSO4·2H2O"));
    expect(key("ZnCO3·2Zn(OH)2·H2O")).toBe(key("2Zn(OH)2·H2O·ZnCO3"));
    expect(key("O4SCa")).toBe(key("CaSO4"));
    expect(new Set(["Fe", "Fe^2+", "Fe^3+", "SO4^2-", "SO4"].map(key)).size).toBe(5);
    expect(key("NH4OCN")).not.toBe(key("CO(NH2)2"));
    expect(key("3CdSO4·8H2O")).not.toBe(key("CdSO4·8H2O"));
  });

  it("without crystal water keeps the rest and counts the water", () => {
    const dry = (formula: string) => anhydrousKey(readNotation(formula));
    expect(dry("CuSO4·5H2O")).toEqual({ key: key("CuSO4"), water: 5 });
    expect(dry("CaSO4·½H2O")).toEqual({ key: key("CaSO4"), water: 0.5 });
    expect(dry("3CdSO4·8H2O")).toEqual({ key: key("3CdSO4"), water: 8 });
    expect(dry("NaCl")).toEqual({ key: key("NaCl"), water: 0 });
    expect(dry("H2O")).toEqual({ key: key("H2O"), water: 0 });
  });
});
