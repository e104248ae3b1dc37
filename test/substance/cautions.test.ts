import { describe, expect, it } from "vitest";
import { attempt } from "../../src/foundation/error";
import { cautions, statementOf } from "../../src/substance";

const only = (material: string) => cautions([material]).substances[0]!;

describe("cautions of a substance", () => {
  it("gives pictograms, signal word and codes of its entry", () => {
    // CLP Annex VI Table 3, index 029-023-00-4 (copper(II) sulfate pentahydrate)
    const found = only("blue vitriol");
    expect(found.formula).toBe("CuSO4·5H2O");
    expect(found.signalWord).toBe("Danger");
    expect(found.statements.map((s) => s.code)).toEqual(["H302", "H318", "H410"]);
    expect(found.pictograms.map((p) => p.code)).toEqual(["GHS05", "GHS07", "GHS09"]);
    expect(found.source).toBe("clpAnnexVI");
  });

  it("falls back to the anhydrous entry for a hydrate and says so", () => {
    const found = only("CuSO4·3H2O");
    expect(found.classifiedAs).toBe("CuSO4");
    expect(found.notes[0]).toBe("classified as CuSO4, not as CuSO4·3H2O");
  });

  it("lets a group entry stand in and says so", () => {
    expect(only("PbCl2").classifiedAs).toBe("lead compounds");
    expect(only("K2CrO4·H2O").signalWord).toBe("Danger");
    expect(only("Ag2CrO4").classifiedAs).toBe("chromium(VI) compounds");
  });

  it("never calls a substance without an entry safe", () => {
    for (const material of ["Rb2SO4", "K2CS3", "Na2TeO3"]) {
      const found = only(material);
      expect(found.status).toBe("not looked up");
      expect(found.cautions).toEqual(["not looked up in any list here: read the safety data sheet"]);
    }
    for (const material of ["MgCO3", "K2SO4", "Fe3O4"]) {
      const found = only(material);
      expect(found.status).toBe("food");
      expect(found.cautions).toEqual([`a food additive (${found.additive}): no hazard is listed here`]);
    }
    expect(only("NaHCO3").notes).toContain("no classification in the source: that does not make it safe");
    expect(JSON.stringify(cautions(["MgCO3", "NaHCO3", "NaCl"])).replace("does not make it safe", "")).not.toMatch(
      /\bsafe\b/,
    );
  });

  it("says aloud that a text was not read, and what may have been meant", () => {
    const found = cautions(["viengar", "bleach"]);
    expect(found.substances[0]).toMatchObject({ material: "viengar", status: "not read" });
    expect(found.substances[0]?.cautions[0]).toMatch(/^not read: "viengar".*did you mean.*vinegar/);
    expect(found.notRead).toEqual([{ material: "viengar", nearest: expect.arrayContaining(["vinegar"]) }]);
    expect(cautions(["MgCO3"]).notRead).toEqual([]);
    expect(only("moon dust").cautions[0]).toMatch(/^not read: /);
  });

  it("reads short names of goods before the elements that they spell", () => {
    // Na, D, C, C is no pool chlorine; NaDCC, TCCA and TSP are trade names (memory). With ammonium they give nitrogen
    // trichloride: the rule isocyanurate-ammonia
    const formulaOf = (name: string) => cautions([name]).substances.map(({ formula }) => formula);
    expect(formulaOf("NaDCC")).toEqual(["C3N3O3Cl2Na"]);
    expect(formulaOf("SDIC")).toEqual(["C3N3O3Cl2Na"]);
    expect(formulaOf("TCCA")).toEqual(["C3N3O3Cl3"]);
    expect(formulaOf("TSP")).toContain("Na3PO4·12H2O");
    expect(formulaOf("KCN")).toEqual(["KCN"]);
    for (const tablet of ["NaDCC", "TCCA"])
      expect(cautions([tablet, "ammonium carbonate"]).incompatibilities.map(({ code }) => code)).toContain(
        "isocyanurate-ammonia",
      );
  });

  it("reads a name with the words of its label, and takes the percentage as strength", () => {
    // wording of labels (common practice)
    const pairs: readonly (readonly [string, string, string])[] = [
      ["bleach", "ammonia solution", "hypochlorite-ammonia"],
      ["bleach", "dilute hydrochloric acid", "hypochlorite-acid"],
      ["bleach 5 %", "HCl 30%", "hypochlorite-acid"],
      ["5% vinegar", "sodium hypochlorite solution (10 %)", "hypochlorite-acid"],
      ["KMnO4", "conc. sulfuric acid", "permanganate-sulfuric"],
    ];
    for (const [one, other, code] of pairs) {
      const found = cautions([one, other]);
      expect(found.notRead).toEqual([]);
      expect(
        found.incompatibilities.map((rule) => rule.code),
        `${one} + ${other}`,
      ).toContain(code);
    }
    const state = (acid: string) => cautions([acid, "ethanol"]).incompatibilities[0]?.state;
    expect(state("nitric acid 68 %")).toBe("met");
    expect(state("concentrated nitric acid")).toBe("not stated");
    expect(state("nitric acid 5 %")).toBeUndefined();
    expect(cautions(["nitric acid 68 %"]).substances[0]).toMatchObject({
      material: "nitric acid 68 %",
      strength: "68 %",
    });
    expect(cautions(["dilute moon dust", "5 %"]).notRead.map(({ material }) => material)).toEqual([
      "dilute moon dust",
      "5 %",
    ]);
  });

  it("reads what shops call the things that must not meet", () => {
    // other words for what stands under bleach, household ammonia, acetone, ethanal-free cleaners (general knowledge, memory)
    const pairs: readonly (readonly [string, string])[] = [
      ["chlorine bleach", "vinegar"],
      ["eau de Javel", "lemon juice"],
      ["bleach", "ammonia water"],
      ["bleach", "nail polish remover"],
      ["bleach", "propanone"],
      ["bleach", "smelling salts"],
      ["bleach", "baker's ammonia"],
      ["oxygenated water", "acetone"],
    ];
    for (const pair of pairs) {
      const found = cautions(pair);
      expect(found.notRead, pair.join(" + ")).toEqual([]);
      expect(
        found.incompatibilities.some((one) => one.blocking),
        pair.join(" + "),
      ).toBe(true);
    }
  });

  it("calls an explosive what it is, where no list has it", () => {
    for (const text of ["NI3", "C9H18O6", "Ag2C2", "AgC2H"])
      expect(only(text).cautions[0], text).toMatch(/goes off at a touch/);
    expect(only("NaN3").cautions.join()).not.toMatch(/goes off at a touch/);
  });

  it("shows every form a shop name may stand for", () => {
    const formulas = cautions(["washing soda"]).substances.map((s) => s.formula);
    expect(formulas).toContain("Na2CO3·10H2O");
    expect(formulas).toContain("Na2CO3");
  });

  it("ends by deferring to the safety data sheet, the rules and a qualified person", () => {
    expect(cautions([]).closing).toMatch(/safety data sheet.*rules.*qualified person/);
  });
});

describe("statement codes", () => {
  it("paraphrases hazard, supplemental and precautionary codes and pictograms", () => {
    expect(statementOf("EUH031")).toMatchObject({ kind: "supplemental", paraphrase: "acid frees a poison gas" });
    expect(statementOf("P305+P351+P338").kind).toBe("precautionary");
    expect(statementOf("GHS05").kind).toBe("pictogram");
    expect(statementOf("H350i").code).toBe("H350");
  });

  it("refuses a code it does not know", () => {
    const outcome = attempt(() => statementOf("H999"));
    expect(!outcome.ok && outcome.error.code).toBe("substance.unknown-code");
  });
});

describe("a formula of thousands of atoms", () => {
  it("takes no longer than any other that no table knows: C5001H2 took fifty times as long", () => {
    const least = (text: (i: number) => string): number => {
      const times = Array.from({ length: 15 }, (_, i) => {
        const start = performance.now();
        cautions([text(i)]);
        return performance.now() - start;
      });
      return Math.min(...times);
    };
    least((i) => `C9H${i + 30}N`);
    expect(least((i) => `C${5001 + i}H2`)).toBeLessThan(20 * least((i) => `C${12 + i}H4O9`));
  });
});
