// Classifications that were wrong or too heavy, and what a known strength leaves of them.
// Sources beside each case; concentration limits: CLP Annex VI and Annex I, from memory.
import { describe, expect, it } from "vitest";
import { cautions } from "../../src/substance";

const entries = (material: string, strength?: string) =>
  cautions([strength === undefined ? material : { material, strength }]).substances;
const only = (material: string, strength?: string) => {
  const found = entries(material, strength);
  expect(found, material).toHaveLength(1);
  return found[0]!;
};
const codes = (material: string, strength?: string) => only(material, strength).statements.map((one) => one.code);

describe("entries", () => {
  it("calls lead oxides a danger, as H360Df demands", () => {
    for (const oxide of ["PbO", "PbO2", "Pb3O4"]) expect(only(oxide).signalWord, oxide).toBe("Danger");
  });

  it("gives long-lasting harm to water alone no signal word", () => {
    expect(only("K4[Fe(CN)6]·3H2O").signalWord).toBeUndefined();
  });

  // Annex VI: 012-001-00-3 is pyrophoric magnesium powder, 012-002-00-9 powder and turnings; 030-001-01-9 and 013-002-00-1
  // are the stabilised zinc and aluminium powders of the trade.
  it("takes magnesium turnings, zinc dust and aluminium powder as they are sold", () => {
    expect(codes("Mg")).toEqual(["H228", "H261", "H252"]);
    expect(entries("Zn").map((one) => one.statements.map((x) => x.code))).toEqual([["H410"], []]);
    expect(entries("Al").map((one) => one.statements.map((x) => x.code))).toEqual([["H228", "H261"], []]);
    expect(entries("Pb").map((one) => one.form)).toEqual(["powder", "massive"]);
  });

  // Annex VI: 007-030-00-3 (up to 70 %), 007-004-00-1 (more); read in a proposal for harmonised classification.
  it("keeps the deadly entry of nitric acid for fuming acid", () => {
    expect(codes("HNO3")).toEqual(["H272", "H331", "H314", "EUH071"]);
    expect(codes("HNO3", "30 %")).not.toContain("H330");
    expect(codes("HNO3", "30 %")).toContain("H314");
    expect(codes("HNO3", "90 %")).toContain("H330");
    expect(codes("HNO3", "6 %")).toEqual(["H314"]);
  });

  it("leaves out of a group what its entry leaves out", () => {
    expect(only("HgS").classifiedAs).toBeUndefined();
    expect(only("HgS").statements).toEqual([]);
    expect(only("BaSO4").statements).toEqual([]);
    expect(only("HgO").classifiedAs).toBe("mercury compounds");
    expect(only("BaSO3").classifiedAs).toBe("barium salts");
  });

  // Where two group entries cover a substance its label has both (Annex VI, 1.1.1.5, from memory): the first alone stood here before
  it.each([
    ["NiC2O4·2H2O", "nickel compounds and salts of oxalic acid", "H350i"],
    ["Ni(CH3COO)2·4H2O", "nickel compounds", "H350i"],
    ["NiS", "nickel compounds", "H317"],
    ["CoC2O4", "cobalt compounds and salts of oxalic acid", "H312"],
    ["Co3(PO4)2", "cobalt compounds", "H334"],
    ["[Co(NH3)6]Cl3", "cobalt compounds", "H350i"],
    ["NaSbO3", "antimony compounds", "H302"],
    ["Na2SeO4", "selenium compounds", "H301"],
    ["(N2H5)2SO4", "hydrazine salts", "H350"],
    ["N2H4·2HCl", "hydrazine salts", "H350"],
    ["Na2PtCl6", "tetrachloridoplatinates and hexachloridoplatinates", "H318"],
    ["Tl2SO4", "thallium compounds", "H300"],
    ["UO2(NO3)2·6H2O", "uranium compounds and salts of acids that feed a fire", "H330"],
    ["MgSiF6·6H2O", "fluorosilicates", "H302"],
    ["NaSCN", "thiocyanates", "EUH032"],
    ["CuCN", "salts of hydrogen cyanide", "H300"],
    ["CaC2O4", "salts of oxalic acid", "H302"],
    ["ZnF2", "soluble fluorides", "H301"],
    ["Ca(NO2)2", "nitrites", "H301"],
    ["NaBrO3", "salts of acids that feed a fire", "H272"],
    ["Mg(ClO4)2", "salts of acids that feed a fire", "H272"],
  ])("lets a group stand in for %s", (formula, group, code) => {
    expect(only(formula).classifiedAs).toBe(group);
    expect(codes(formula)).toContain(code);
    expect(only(formula).notes[0]).toContain(group);
  });

  // Annex VI, 1.1.1.5 (from memory) names lead oxalate, which 082-001-00-6 (H360Df, H302, H332, H373, H410) and 607-007-00-3 (H302,
  // H312) cover: the classification of both. Of cadmium selenide 048-001-00-5 has H302, H312, H332 and H410, and 034-002-00-8
  // H301, H331, H373 and H410: of one hazard the graver.
  it("joins the groups that cover one substance, and of one hazard takes the graver statement", () => {
    expect([...codes("PbC2O4")].sort()).toEqual(["H302", "H312", "H332", "H360Df", "H373", "H410"]);
    expect([...codes("CdSe")].sort()).toEqual(["H301", "H312", "H331", "H373", "H410"]);
    expect(only("PbC2O4").notes[0]).toBe(
      "no entry for PbC2O4 itself: taken as for the group, lead compounds and salts of oxalic acid",
    );
    // Annex VI, 1.1.2.1.2 (from memory): D of nickel and F of cobalt are FD
    expect(codes("NiCo2O4")).toContain("H360FD");
    expect(codes("NiCo2O4")).not.toContain("H360D");
    expect(only("PbC2O4").citation).toMatch(/index 082-001-00-6 and 607-007-00-3$/);
  });

  it("takes no complex for a nitrite, no chromate for what feeds a fire, and beryl for no beryllium compound", () => {
    expect(codes("K3[Co(NO2)6]")).not.toContain("H301");
    expect(codes("Ag2CrO4")).not.toContain("H272");
    expect(codes("Be3Al2Si6O18")).not.toContain("H330");
  });

  // Annex VI, consolidated text of 1 May 2026: 051-001-00-8, 051-004-00-4, 051-005-00-X, 035-002-01-8, 612-082-00-0, 605-001-00-5,
  // 015-010-00-0.
  it.each([
    ["SbCl3", ["H314", "H411"]],
    ["SbF3", ["H331", "H311", "H301", "H411"]],
    ["Sb2O3", ["H351"]],
    ["HBr", ["H314", "H335"]],
    ["thiourea", ["H351", "H361d", "H302", "H411"]],
    ["formaldehyde", ["H350", "H341", "H330", "H302", "H314", "H317"]],
    ["P2O5", ["H314"]],
  ])("gives %s its own entry, which the group leaves out", (material, statements) => {
    expect(codes(material)).toEqual(statements);
  });

  it("reads dangerous pairs by the old and the plain names of their halves", () => {
    const between = (...pair: string[]) => cautions(pair).incompatibilities.map(({ code }) => code);
    expect(between("hydrochloric acid", "formaldehyde")).toEqual(between("HCl", "CH2O"));
    expect(between("spirit of salt", "black oxide of manganese")).toEqual(between("HCl", "MnO2"));
    expect(between("chlorate of potash", "starch")).toEqual(between("KClO3", "C6H10O5"));
    expect(between("KClO3", "C6H10O5")).not.toEqual([]);
    expect(between("aqua fortis", "spirits of wine")).toEqual(between("HNO3", "C2H5OH"));
    expect(between("hydrogen peroxide", "hexamine")).toEqual(between("H2O2", "C6H12N4"));
    for (const pair of [
      ["HCl", "CH2O"],
      ["HCl", "MnO2"],
      ["H2O2", "C6H12N4"],
    ])
      expect(between(...pair)).not.toEqual([]);
  });

  it("asks rules for strong solutions of the strength a good is sold at", () => {
    const between = (...pair: string[]) =>
      cautions(pair).incompatibilities.map(({ code, state }) => `${code} ${state}`);
    // white vinegar 5 to 6 %, cleaning vinegar to 14 %: no strong acid there, perhaps one here
    expect(between("white vinegar", "KMnO4")).toEqual([]);
    expect(between("vinegar", "KMnO4")).toEqual(["permanganate-organic not stated"]);
    // what a can of strong acid holds is only usual: it rules nothing out
    expect(between("muriatic acid", "KMnO4")).toEqual(["permanganate-hydrochloric not stated"]);
    expect(between("battery acid", "KMnO4")).toEqual(between("H2SO4", "KMnO4"));
    expect(between("battery acid", "KMnO4")).not.toEqual([]);
    expect(between("HCl", "KMnO4")).toEqual(["permanganate-hydrochloric not stated"]);
  });

  it("takes from the registrants what the national list said against its own advice", () => {
    for (const harmless of ["Fe2O3", "SnO2", "Cr2O3", "MnCO3", "CaSO4", "MgO", "BaSO4"])
      expect(only(harmless).status, harmless).toBe("not classified");
    expect([only("KNO3").signalWord, codes("KNO3")]).toEqual(["Warning", ["H272"]]);
    expect(codes("KI")).toEqual(["H372"]);
    // General Court of the EU, T-279/20 (2022): the classification of titanium dioxide was annulled
    expect(only("TiO2").statements).toEqual([]);
    // group entry 615-004-00-3
    expect(codes("KSCN")).toContain("H412");
  });
});

describe("solutions", () => {
  it.each([
    ["CH3COOH", "5 %", undefined, []],
    ["CH3COOH", "20 %", "Warning", ["H315", "H319"]],
    ["CH3COOH", "60 %", "Danger", ["H314"]],
    ["NaOH", "0.4 %", undefined, []],
    ["NaOH", "1 %", "Warning", ["H315", "H319"]],
    ["NaOH", "5 %", "Danger", ["H314"]],
    ["H2O2", "3 %", undefined, []],
    ["H2O2", "6 %", "Warning", ["H319"]],
    ["H2O2", "12 %", "Danger", ["H318"]],
    ["HCl", "5 %", undefined, []],
    ["HCl", "15 %", "Warning", ["H315", "H319", "H335"]],
    ["H2SO4", "4 %", undefined, []],
    ["H2SO4", "10 %", "Warning", ["H315", "H319"]],
    ["H3PO4", "9 %", undefined, []],
    ["HCOOH", "5 %", "Warning", ["H315", "H319"]],
    ["NH3", "9 %", "Danger", ["H314", "H335"]],
    ["KOH", "1 %", "Warning", ["H315", "H319"]],
    ["NaClO", "2 %", "Warning", ["H315", "H319", "H412"]],
  ])("%s of %s", (formula, strength, word, expected) => {
    const found = only(formula, strength);
    expect(found.signalWord).toBe(word);
    expect(found.statements.map((one) => one.code)).toEqual(expected);
    expect(found.strength).toBe(strength);
    expect(found.notes.join()).toMatch(/limits of its entry/);
    expect(found.source).toBe("clpRecalled");
  });

  it("lowers what has no limits of its own by the general ones, and only what they reach", () => {
    expect(codes("CuSO4·5H2O", "2 %")).toEqual(["H302", "H319", "H410"]);
    expect(codes("C6H8O7", "5 %")).toEqual([]);
    // the entry has stricter limits of its own, which are not stored
    expect(codes("NiSO4·6H2O", "0.05 %")).toEqual(codes("NiSO4·6H2O"));
  });

  it("takes shop solutions at the strength they are sold at", () => {
    const white = only("white vinegar");
    expect([white.formula, white.strength, white.status]).toEqual(["CH3COOH", "5.97 %", "not classified"]);
    // cleaning vinegar is called vinegar, too: up to 14 g in 100 mL
    expect(entries("vinegar").map((one) => [one.strength, one.signalWord])).toEqual([
      ["5.97 %", undefined],
      ["13.9 %", "Warning"],
    ]);
    expect(entries("peroxide").map((one) => one.signalWord)).toEqual([undefined, "Danger", "Danger"]);
    expect(codes("hydrogen peroxide")).toContain("H271");
    // the pure substance keeps its entry
    expect(codes("CH3COOH")).toEqual(["H226", "H314"]);
  });

  it("does not call what is dilute safe", () => {
    expect(only("CH3COOH", "5 %").notes.join()).toMatch(/does not make it safe/);
    expect(only("NaOH", "1 %").cautions).toContain("slippery on skin: rinse it off");
  });
});

describe("gases", () => {
  it("are under pressure in a cylinder only", () => {
    const free = only("CO2");
    expect(free.statements.map((one) => one.code)).not.toContain("H280");
    expect(free.pictograms.map((one) => one.code)).not.toContain("GHS04");
    expect(free.notes.join()).toMatch(/cylinder/);
    const bottled = cautions([{ material: "CO2", inCylinder: true }]).substances[0]!;
    expect(bottled.statements.map((one) => one.code)).toContain("H280");
    expect(bottled.pictograms.map((one) => one.code)).toContain("GHS04");
  });
});

describe("misspelt names", () => {
  it("are answered with what may be meant", () => {
    const found = only("blue vitrol");
    expect(found.status).toBe("not read");
    expect(found.notes.join("; ")).toMatch(/did you mean blue vitriol/);
    expect(only("household bleech").notes.join("; ")).toMatch(/did you mean .*bleach/);
  });
});
