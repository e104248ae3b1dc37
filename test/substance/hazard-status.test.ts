// Of every listed substance it is decided what is known of its hazards, and why nothing is said where nothing is.
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { cautionsForFormulas, nameOf, statementOf } from "../../src/substance";
import { FIRST_AID } from "../../src/substance/data/first-aid";
import { FOOD_ADDITIVES } from "../../src/substance/data/food-additives";
import { HAZARD_ENTRIES } from "../../src/substance/data/hazards";
import { KIN_ADVICE, NOT_LISTED } from "../../src/substance/data/not-listed";
import { PROTECTION_BY_CODE } from "../../src/substance/data/protection";
import { REGISTRY } from "../../src/substance/data/registry";

const statusOf = (formula: string) => cautionsForFormulas([formula]).substances[0]!.status;

describe("status of hazards", () => {
  it("is decided for every listed substance", () => {
    const counts = new Map<string, number>();
    for (const { formula } of REGISTRY()) counts.set(statusOf(formula), (counts.get(statusOf(formula)) ?? 0) + 1);
    expect([...counts.keys()].sort()).toEqual(["classified", "food", "not classified", "not listed"]);
    expect([...counts.values()].reduce((sum, n) => sum + n, 0)).toBe(REGISTRY().length);
  });

  it("calls not listed only what has neither an entry nor a group, each once", () => {
    const rows = NOT_LISTED().flatMap(({ formulas }) => formulas);
    for (const formula of rows) expect(statusOf(formula), formula).toBe("not listed");
    expect(new Set(rows).size).toBe(rows.length);
    // NaCN, PbCO3 and KMnO4 have numbers in the list (006-007-00-5, 082-001-00-6, 025-002-00-9)
    for (const formula of ["NaCN", "PbCO3", "KMnO4"]) expect(statusOf(formula)).toBe("classified");
    expect(statusOf("Rb2SO4")).toBe("not looked up");
  });

  it("says of what is not listed what its kin are known for", () => {
    // zinc oxide and sulfate are H410 in the list; the basic carbonate is not in it
    const zinc = cautionsForFormulas(["Zn5(OH)6(CO3)2"]).substances[0]!;
    expect(zinc.cautions.join()).toMatch(/harm water life.*fume/);
    expect(zinc.disposal).toMatch(/precipitate the metal/);
    expect(zinc.notes.join()).toMatch(/not in the harmonised list/);
    expect(cautionsForFormulas(["KBr"]).substances[0]!.citation).toMatch(/23rd adaptation/);
    expect(KIN_ADVICE.length, "rows to test").toBeGreaterThan(0);
    for (const { element } of KIN_ADVICE) expect(() => parseFormula(element)).not.toThrow();
  });

  it("calls food only what is listed and has no entry of its own", () => {
    const listed = new Set(REGISTRY().map((row) => row.formula));
    const classified = new Set(HAZARD_ENTRIES().map((row) => row.formula));
    let tested = 0;
    for (const { formula, number } of FOOD_ADDITIVES()) {
      expect(listed.has(formula) || nameOf(formula).length > 0, formula).toBe(true);
      expect(classified.has(formula), formula).toBe(false);
      expect(statusOf(formula)).toBe("food");
      if (number !== undefined) expect(number).toMatch(/^E \d{3}b?$/);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(37);
    expect(new Set(FOOD_ADDITIVES().map((row) => row.formula)).size).toBe(FOOD_ADDITIVES().length);
  });

  // irritants, dusts and what must not meet acid are no food here, whatever their number (common practice)
  it.each(["Ca(H2PO4)2·H2O", "K3PO4", "(NH4)2CO3", "Mg3Si4O10(OH)2", "Na4[Fe(CN)6]·10H2O"])(
    "calls %s no food",
    (formula) => {
      expect(statusOf(formula)).not.toBe("food");
    },
  );

  // numbers as a second list prints them (Food Standards Australia New Zealand, numeric list of July 2014, read)
  it.each([
    ["K2SO4", "E 515"],
    ["CaCO3", "E 170"],
    ["KHC4H4O6", "E 336"],
    ["C6H8O6", "E 300"],
  ])("knows %s as %s", (formula, number) => {
    expect(cautionsForFormulas([formula]).substances[0]!.additive).toBe(number);
  });

  it.each(["NaCl", "H2O", "C12H22O11"])("takes %s for a food", (formula) => {
    expect(cautionsForFormulas([formula]).substances[0]).toMatchObject({ status: "food", statements: [] });
  });
});

describe("first aid", () => {
  it("belongs to statements that exist, once for each place", () => {
    let tested = 0;
    for (const { codes, when } of FIRST_AID()) {
      for (const code of codes) expect(statementOf(code).code, code).toBe(code);
      expect(["in the eyes", "on the skin", "swallowed", "breathed in", "fire"]).toContain(when);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(12);
    expect(FIRST_AID().length).toBe(12);
  });

  it("is what a safety data sheet would say first", () => {
    // lye: rinse eyes and skin for long, do not vomit (GHS P305+P351+P338, P303+P361+P353, P301+P330+P331)
    const lye = cautionsForFormulas(["NaOH"]).substances[0]!.firstAid.join("\n");
    expect(lye).toMatch(/in the eyes: rinse at once.*15 minutes/);
    expect(lye).toMatch(/swallowed: .*do not make it come up/);
    const ethanol = cautionsForFormulas(["C2H5OH"]).substances[0]!.firstAid.join("\n");
    expect(ethanol).toMatch(/fire: take flames away/);
    expect(cautionsForFormulas(["NaCl"]).substances[0]!.firstAid).toEqual([]);
  });
});

describe("protection", () => {
  it("belongs to statements that exist, one row of a kind", () => {
    let tested = 0;
    for (const { codes } of PROTECTION_BY_CODE()) {
      for (const code of codes) expect(statementOf(code).code).toBe(code);
      tested += 1;
    }
    // the fifteenth is the mask for the dust of H373
    expect(tested).toBe(15);
    // gloves for what poisons by the mouth are common practice, no statement of the GHS
    const kinds = PROTECTION_BY_CODE().map(({ kind, source }) => `${kind} ${source}`);
    expect(new Set(kinds).size).toBe(kinds.length);
  });

  // prevention statements that the GHS assigns (Annex 3, recalled): H314 P260 P280, H334 P261 P284, H272 P210 P220,
  // H260 P223 P232, H360 P201, H410 P273
  it.each([
    ["NaOH", /goggles.*gloves.*apron/],
    ["KNO3", /flame.*nothing near that burns/],
    ["CaC2", /keep it dry/],
    ["H3BO3", /pregnant/],
    ["ZnO", /catch the rinse/],
    ["CoSO4·7H2O", /no dust/],
    ["Cl2", /hood/],
  ])("of %s is what its statements ask for", (formula, words) => {
    expect(cautionsForFormulas([formula]).substances[0]!.protection.join("; ")).toMatch(words);
  });

  it("is not asked for where nothing is stated", () => {
    expect(cautionsForFormulas(["NaCl"]).substances[0]!.protection).toEqual([]);
  });
});
