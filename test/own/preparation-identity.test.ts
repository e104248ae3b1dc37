// Loss on ignition as a test of identity. The expected losses are the trade's table (bench practice, calculated there on
// IUPAC 2021 abridged weights; which residue forms is common practice, no source); the samples carry their source.
import { attempt, identifyByMassLoss } from "preparative";
import { describe, expect, it } from "vitest";

/** Solid, residue, percent lost: the table of identity by ignition, figures recomputed outside the library. */
const LOSSES = [
  ["Cu2(OH)2CO3", "CuO", "28.05"],
  ["Cu3(OH)2(CO3)2", "CuO", "30.76"],
  ["CuCO3", "CuO", "35.62"],
  ["Cu(OH)2", "CuO", "18.47"],
  ["Zn5(OH)6(CO3)2", "ZnO", "25.88"],
  ["ZnCO3", "ZnO", "35.10"],
  ["Mg5(CO3)4(OH)2·4H2O", "MgO", "56.91"],
  ["Mg4(CO3)3(OH)2·3H2O", "MgO", "55.87"],
  ["MgCO3·3H2O", "MgO", "70.87"],
  ["CuSO4·5H2O", "CuSO4", "36.08"],
  ["NiCO3", "NiO", "37.08"],
  ["Ni3(CO3)(OH)4", "NiO", "26.32"],
  ["Ni3(CO3)(OH)4·4H2O", "NiO", "40.43"],
  ["CoCO3", "Co3O4", "32.52"],
  ["MnCO3", "Mn2O3", "31.33"],
  ["CaCO3", "CaO", "43.97"],
  ["CaC2O4·H2O", "CaCO3", "31.50"],
  ["FeC2O4·2H2O", "Fe2O3", "55.62"],
  ["NaHCO3", "Na2CO3", "36.92"],
  ["KAl(SO4)2·12H2O", "KAl(SO4)2", "45.57"],
] as const;

describe("the loss of a solid on ignition", () => {
  it.each(LOSSES)("%s to %s is %s %%", (formula, residue, percent) => {
    const [candidate] = identifyByMassLoss({ before: "1.000 g", after: "0.900 g", candidates: [formula] }).candidates;
    expect(candidate!.residue.normalize("NFKC").replaceAll("·", "·")).toBe(residue);
    expect(candidate!.expectedLoss.in("%").toFixed(2)).toBe(percent);
  });
});

describe("a sample", () => {
  // two samples and two pairs more of alum, student data: 0.5000 to 0.2721, 0.6815 to 0.3709, 0.5646 to 0.3073 g; x = 12.00
  it.each([
    ["0.5000 g", "0.2721 g"],
    ["0.6815 g", "0.3709 g"],
    ["0.5646 g", "0.3073 g"],
  ] as const)("of alum, %s to %s, is the dodecahydrate", (before, after) => {
    const { verdict, remaining } = identifyByMassLoss({
      before,
      after,
      candidates: ["KAl(SO4)2·12H2O", "KAl(SO4)2·11H2O", "KAl(SO4)2·3H2O"],
    });
    expect([verdict, ...remaining]).toEqual(["identified", "KAl(SO₄)₂·12H₂O"]);
  });

  // school exercise on the web, 2020: 1.86 g left 1.08 g; recomputed: 19 % of water on the basic carbonate
  it("that fits no formula dry says how wet each would have to be", () => {
    const { verdict, text, next } = identifyByMassLoss({ before: "1.86 g", after: "1.08 g", product: "Cu2(OH)2CO3" });
    expect(verdict).toBe("none fits");
    expect(text).toMatch(/Cu₂\(OH\)₂CO₃ if it contained 19 % of water/);
    expect(next).toMatch(/dry/);
  });

  // British pharmacopoeial assay, 19th century: 50 grains leave 22 of MgO; four printed formulas lie within two grains
  it("of light magnesium carbonate cannot be determined at one grain", () => {
    const assay = { before: "50 grain", after: "22 grain", product: "Mg4(CO3)3(OH)2·3H2O" } as const;
    expect(identifyByMassLoss(assay).verdict).toBe("cannot tell apart");
    expect(identifyByMassLoss(assay).remaining).toEqual(["Mg₄(CO₃)₃(OH)₂·3H₂O", "Mg₅(CO₃)₄(OH)₂·4H₂O"]);
  });
});

// Acid equivalents by hand: 4 H+ for 221.114 g, 4 for 195.11 g (Cu(OH)2 twice), 10 for 548.96 g, 2 for 125.39 g.
describe("the acid a gram takes up", () => {
  it.each([
    ["Cu2(OH)2CO3", 4000 / 221.114],
    ["Cu(OH)2", 2000 / 97.56],
    ["Zn5(CO3)2(OH)6", 10000 / 548.96],
    ["ZnCO3", 2000 / 125.39],
    ["CaCO3", 2000 / 100.086],
    ["NaHCO3", 1000 / 84.006],
  ] as const)("for %s is %f mmol", (formula, expected) => {
    const { candidates } = identifyByMassLoss({ acidPerGram: "10 mmol/g", candidates: [formula] });
    expect(candidates[0]!.acidPerGram!.in("mmol/g").toNumber()).toBeCloseTo(expected, 2);
  });

  it("is none that can be determined for a sulfate", () => {
    const { candidates } = identifyByMassLoss({ before: "1.000 g", after: "0.7 g", candidates: ["CuSO4·5H2O"] });
    expect(candidates[0]!.acidPerGram).toBeUndefined();
  });

  it("decides where the loss does not", () => {
    // 36.92 and 37.08 % lost, but 11.90 and 16.85 mmol/g of acid
    const alike = { before: "1.00 g", after: "0.63 g", candidates: ["NaHCO3", "NiCO3"] } as const;
    expect(identifyByMassLoss(alike).verdict).toBe("cannot tell apart");
    expect(identifyByMassLoss(alike).next).toMatch(/titrate/);
    expect(identifyByMassLoss({ ...alike, acidPerGram: "11.9 mmol/g" }).remaining).toEqual(["NaHCO₃"]);
    expect(identifyByMassLoss({ ...alike, acidPerGram: "16.9 mmol/g" }).remaining).toEqual(["NiCO₃"]);
  });

  it("does not decide between carbonates of one metal that hold water, and is not advised then", () => {
    // residue and acid both measure the copper: 1 - 0.7195 × 0.91 is the loss of malachite with 9 %, azurite with 5.4 %
    const wet = {
      before: "1.000 g",
      after: "0.655 g",
      adsorbedWater: "10 %",
      candidates: ["Cu2(OH)2CO3", "Cu3(OH)2(CO3)2"],
    };
    const alone = identifyByMassLoss(wet as never);
    expect(alone.verdict).toBe("cannot tell apart");
    expect(alone.next).not.toMatch(/titrate/);
    expect(alone.candidates.map((c) => Math.round(c.water.in("%").toNumber())).sort()).toEqual([5, 9]);
    expect(identifyByMassLoss({ ...wet, acidPerGram: "16.46 mmol/g" } as never).verdict).toBe("cannot tell apart");
  });
});

describe("an identity", () => {
  it("gives shares that sum to one, best first", () => {
    const { candidates } = identifyByMassLoss({ before: "0.50 g", after: "0.35 g", product: "Cu2(OH)2CO3" });
    expect(candidates.reduce((sum, c) => sum + c.share, 0)).toBeCloseTo(1, 12);
    expect(candidates.map((c) => c.share)).toEqual([...candidates.map((c) => c.share)].sort((a, b) => b - a));
  });

  it.each([
    [{ before: "1 g", after: "2 g", candidates: ["CaCO3"] }, "plan.observation"],
    [{ before: "1 g", candidates: ["CaCO3"] }, "plan.observation"],
    [{ candidates: ["CaCO3"] }, "plan.observation"],
    [{ before: "1 g", after: "0.5 g" }, "plan.request"],
    [{ before: "1 g", after: "0.5 g", candidates: ["NH4Cl"] }, "plan.no-residue"],
    [{ before: "0 g", after: "0 g", candidates: ["CaCO3"] }, "plan.not-positive"],
    [{ before: "1 g", after: "0.5 g", candidates: ["CaCO3"], adsorbedWater: "100 %" }, "plan.request"],
    [{ before: "1 g", after: "0.5 g", candidates: [{ formula: "CaCO3", residue: "ZnO" }] }, "plan.no-residue"],
  ])("refuses %j with %s", (request, code) => {
    const outcome = attempt(() => identifyByMassLoss(request as never));
    expect(outcome.ok ? "no refusal" : outcome.error.code).toBe(code);
  });
});

describe("residues that are no oxide of the metal", () => {
  // Losses by hand from the formulas; which residue forms: gravimetric practice (memory).
  it.each([
    ["Na2CO3·10H2O", "0.3704 g", "Na₂CO₃"],
    ["MgNH4PO4·6H2O", "0.4534 g", "Mg₂P₂O₇"],
    ["(NH4)2Cr2O7", "0.6030 g", "Cr₂O₃"],
    ["H3BO3", "0.5630 g", "B₂O₃"],
    ["Ag2CO3", "0.7824 g", "Ag"],
    ["NaCH3COO·3H2O", "0.6028 g", "NaCH₃COO"],
  ])("%s leaves %s of a gram as %s", (product, after, residue) => {
    const sample = identifyByMassLoss({ before: "1.0000 g", after: after as "1 g", product });
    expect(sample.verdict).toBe("identified");
    expect(sample.candidates[0]!.residue).toBe(residue);
  });

  it("heats all hydrates of a salt to the same residue", () => {
    const { candidates } = identifyByMassLoss({ before: "1.000 g", after: "0.561 g", product: "ZnSO4·7H2O" });
    expect(new Set(candidates.map((c) => c.residue))).toEqual(new Set(["ZnSO₄"]));
  });

  // in air iron(II) sulfate turns before its water is gone (Thermochim. Acta 274, 273): at red heat all of it is the oxide,
  // 79.844 / 278.01 = 28.7 %
  it("heats what air turns to the oxide, with and without water", () => {
    const { candidates } = identifyByMassLoss({ before: "1.000 g", after: "0.287 g", product: "FeSO4·7H2O" });
    expect(new Set(candidates.map((c) => c.residue))).toEqual(new Set(["Fe₂O₃"]));
    expect(candidates.find((c) => c.formula === "FeSO₄·7H₂O")?.fits).toBe(true);
  });
});
