// Of every listed substance it is decided what is known of its hazards, and why nothing is said where nothing is.
import { describe, expect, it } from "vitest";
import { cautionsForFormulas, statementOf } from "../../src/substance";
import { FIRST_AID } from "../../src/substance/data/first-aid";
import { FOOD_ADDITIVES } from "../../src/substance/data/food-additives";
import { HAZARD_ENTRIES } from "../../src/substance/data/hazards";
import { REGISTRY } from "../../src/substance/data/registry";

const statusOf = (formula: string) => cautionsForFormulas([formula]).substances[0]!.status;

describe("status of hazards", () => {
  it("is decided for every listed substance", () => {
    const counts = new Map<string, number>();
    for (const { formula } of REGISTRY()) counts.set(statusOf(formula), (counts.get(statusOf(formula)) ?? 0) + 1);
    expect([...counts.keys()].sort()).toEqual(["classified", "food", "not classified", "not looked up"]);
    expect([...counts.values()].reduce((sum, n) => sum + n, 0)).toBe(REGISTRY().length);
    // what is not looked up can only become less
    expect(counts.get("not looked up")).toBeLessThanOrEqual(146);
  });

  it("calls food only what is listed and has no entry of its own", () => {
    const listed = new Set(REGISTRY().map((row) => row.formula));
    const classified = new Set(HAZARD_ENTRIES().map((row) => row.formula));
    for (const { formula, number } of FOOD_ADDITIVES()) {
      expect(listed.has(formula), formula).toBe(true);
      expect(classified.has(formula), formula).toBe(false);
      expect(statusOf(formula)).toBe("food");
      if (number !== undefined) expect(number).toMatch(/^E \d{3}b?$/);
    }
    expect(new Set(FOOD_ADDITIVES().map((row) => row.formula)).size).toBe(FOOD_ADDITIVES().length);
  });

  // irritants, dusts and what must not meet acid are no food here, whatever their number (common practice)
  it.each(["Ca(H2PO4)2·H2O", "K3PO4", "(NH4)2CO3", "Mg3Si4O10(OH)2", "Na4[Fe(CN)6]·10H2O"])(
    "calls %s no food",
    (formula) => {
      expect(statusOf(formula)).not.toBe("food");
    },
  );

  // numbers as printed on packs of the shop (common knowledge; Regulation (EC) No 1333/2008, recalled)
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
    for (const { codes, when } of FIRST_AID()) {
      for (const code of codes) expect(statementOf(code).code, code).toBe(code);
      expect(["in the eyes", "on the skin", "swallowed", "breathed in", "fire"]).toContain(when);
    }
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
