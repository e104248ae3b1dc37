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
import { saltFormula } from "../../src/ion/internal";
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
    ["2KHSO5·KHSO4·K2SO4", "5 K+ 2 HSO5- 1 HSO4- 1 SO4^2-"],
    ["(NH4)2Fe(SO4)2·6H2O", "2 NH4+ 1 Fe^2+ 2 SO4^2-"],
    ["H8N2O4S", "2 NH4+ 1 SO4^2-"],
    ["H2SO4", "2 H+ 1 SO4^2-"],
    ["C2H5OH", ""],
    ["CO2", ""],
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

  it("keeps a complex together", () => {
    expect(constitutionOf("[Co(NH3)6]Cl3").complex?.formula).toBe("[Co(NH3)6]^3+");
    expect(constitutionOf("Cl3CoH18N6").complex?.formula).toBe("[Co(NH3)6]^3+");
    expect(constitutionOf("[Co(NH3)5Cl]Cl2").complex?.formula).toBe("[Co(NH3)5Cl]^2+");
    expect(constitutionOf("K2Ni(CN)4").complex?.formula).toBe("[Ni(CN)4]^2-");
    expect(constitutionOf("CuSO4·5H2O").complex).toBeUndefined();
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
      expect(tested).toBeGreaterThanOrEqual(0);
      tested += 1;
    }
  });
});

describe("the tables", () => {
  it("spell the ions of the rules as the constitution writes them", () => {
    let tested = 0;
    for (const { anions, except = {} } of SOLUBILITY_RULES()) {
      for (const ion of [...anions, ...Object.values(except).flatMap((list) => list.flatMap((one) => one.split(" ")))])
        expect(constitutionOf(ion).identity, ion).toBe(ion);
      expect(tested).toBeGreaterThanOrEqual(0);
      tested += 1;
    }
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
      expect(tested).toBeGreaterThanOrEqual(0);
      tested += 1;
    }
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
