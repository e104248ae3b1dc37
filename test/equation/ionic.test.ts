import { describe, expect, it } from "vitest";
import { completeIonic, netIonic, overallEquation } from "../../src/equation";
import { dissociated } from "../../src/equation/ionic/ions";
import { parseFormula } from "../../src/formula";
import { attempt } from "../../src/foundation/error";
import { ACIDS } from "../../src/ion/data/acids";
import { residue } from "./composition";

// Net ionic equations as general chemistry texts print them (OpenStax Chemistry 2e, sections 4.1 and 4.2, and memory).
const NET: readonly (readonly [string, string])[] = [
  ["AgNO3 + NaCl -> AgCl + NaNO3", "Ag+ + Cl- -> AgCl"],
  ["AgNO3(aq) + NaCl(aq) -> AgCl(s) + NaNO3(aq)", "Ag+(aq) + Cl-(aq) -> AgCl(s)"],
  ["HCl + NaOH -> NaCl + H2O", "H+ + OH- -> H2O"],
  ["Pb(NO3)2 + KI -> PbI2 + KNO3", "Pb^2+ + 2 I- -> PbI2"],
  ["BaCl2 + Na2SO4 -> BaSO4 + NaCl", "Ba^2+ + SO4^2- -> BaSO4"],
  ["CaCO3 + HCl -> CaCl2 + CO2 + H2O", "CaCO3 + 2 H+ -> Ca^2+ + CO2 + H2O"],
  ["Zn + CuSO4 -> ZnSO4 + Cu", "Zn + Cu^2+ -> Zn^2+ + Cu"],
  ["CuSO4.5H2O + Al -> Cu + Al2(SO4)3 + H2O", "3 Cu^2+ + 2 Al -> 3 Cu + 2 Al^3+"],
  ["Na2CO3 + CH3COOH -> CH3COONa + CO2 + H2O", "CO3^2- + 2 CH3COOH -> 2 CH3COO- + CO2 + H2O"],
  ["NH4Cl + NaOH -> NaCl + NH3 + H2O", "NH4+ + OH- -> NH3 + H2O"],
  ["KMnO4 + FeSO4 + H2SO4 -> K2SO4 + MnSO4 + Fe2(SO4)3 + H2O", "MnO4- + 5 Fe^2+ + 8 H+ -> Mn^2+ + 5 Fe^3+ + 4 H2O"],
  ["CuSO4 + NH3 -> [Cu(NH3)4]SO4", "Cu^2+ + 4 NH3 -> [Cu(NH3)4]^2+"],
  ["K4[Fe(CN)6] + FeCl3 -> Fe4[Fe(CN)6]3 + KCl", "3 [Fe(CN)6]^4- + 4 Fe^3+ -> Fe4[Fe(CN)6]3"],
  ["Hg2(NO3)2 + NaCl -> Hg2Cl2 + NaNO3", "Hg2^2+ + 2 Cl- -> Hg2Cl2"],
  ["H2SO4 + Ba(OH)2 -> BaSO4 + H2O", "2 H+ + SO4^2- + Ba^2+ + 2 OH- -> BaSO4 + 2 H2O"],
  ["KAl(SO4)2.12H2O + NaHCO3 -> Al(OH)3 + Na2SO4 + K2SO4 + CO2 + H2O", "Al^3+ + 3 HCO3- -> Al(OH)3 + 3 CO2"],
  ["Al + NaOH + H2O -> Na[Al(OH)4] + H2", "2 Al + 2 OH- + 6 H2O -> 2 [Al(OH)4]- + 3 H2"],
  ["Na2O + H2O -> NaOH", "Na2O + H2O -> 2 Na+ + 2 OH-"],
  [
    "[Ag(NH3)2]OH + HCHO -> Ag + HCOONH4 + NH3 + H2O",
    "2 [Ag(NH3)2]+ + 2 OH- + HCHO -> 2 Ag + NH4+ + HCOO- + 3 NH3 + H2O",
  ],
  ["V2O5 + SO2 + H2SO4 -> VOSO4 + H2O", "V2O5 + SO2 + 2 H+ -> 2 VO^2+ + SO4^2- + H2O"],
];

const sorted = (text: string) => text.split(" -> ").map((side) => side.split(" + ").sort());

describe("ionic equations", () => {
  it.each(NET)("%s", (equation, net) => {
    expect(sorted(String(netIonic(equation)))).toEqual(sorted(net));
  });

  it("conserves every element and the charge", () => {
    let tested = 0;
    for (const [equation] of NET) {
      for (const ionic of [netIonic(equation), completeIonic(equation)]) {
        const sums = residue(String(ionic.equation), ionic.coefficients);
        expect(
          [...sums.values()].every((value) => value === 0n),
          String(ionic),
        ).toBe(true);
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(20);
  });

  it("dissolves every strong acid to its hydrons and its anion, whether or not a rule speaks of its salts", () => {
    const strong = ACIDS().filter((row) => row.strong);
    expect(strong.length).toBeGreaterThan(14);
    for (const { formula, protons } of strong) {
      const { ions, assumption } = dissociated(parseFormula(formula));
      expect(ions?.find(({ text }) => text === "H+")?.count, formula).toBe(BigInt(protons));
      expect(assumption).toBeUndefined();
    }
    for (const { formula } of ACIDS().filter((row) => !row.strong))
      expect(dissociated(parseFormula(formula)).ions, formula).toBeUndefined();
  });

  it("names the spectators with their amounts", () => {
    const spectators = netIonic("AgNO3 + CaCl2 -> AgCl + Ca(NO3)2").spectators;
    expect(spectators.map(({ formula, coefficient }) => `${coefficient} ${formula}`).sort()).toEqual([
      "1 Ca^2+",
      "2 NO3-",
    ]);
  });

  it("lets a written phase outweigh the solubility rules", () => {
    expect(sorted(String(netIonic("CaSO4(aq) + Na2CO3(aq) -> CaCO3(s) + Na2SO4(aq)")))).toEqual(
      sorted("Ca^2+(aq) + CO3^2-(aq) -> CaCO3(s)"),
    );
    expect(String(netIonic("NaCl(s) -> NaCl(aq)"))).toBe("NaCl(s) -> Na+(aq) + Cl-(aq)");
  });

  it("refuses where every ion only looks on", () => {
    expect(attempt(() => netIonic("NaCl + KNO3 -> NaNO3 + KCl"))).toMatchObject({
      ok: false,
      error: { code: "equation.no-net-reaction" },
    });
  });

  it("lets lithium phosphate precipitate, and reads oxalate as (COO)2", () => {
    expect(String(netIonic("LiCl + Na3PO4 -> Li3PO4 + NaCl"))).toBe("3 Li+ + PO4^3- -> Li3PO4");
    expect(String(netIonic("FeSO4 + Na2C2O4 -> Fe(COO)2 + Na2SO4"))).toBe("Fe^2+ + C2O4^2- -> Fe(COO)2");
  });

  it("says so when no rule tells whether a salt dissolves", () => {
    expect(netIonic("AgNO3 + NaOCN -> AgOCN + NaNO3").assumptions).toHaveLength(1);
    expect(netIonic("HCl + NaOH -> NaCl + H2O").assumptions).toEqual([]);
  });
});

describe("complexes without their square brackets (general chemistry, memory)", () => {
  it.each([
    ["Zn(OH)2 + NaOH -> Na2Zn(OH)4", "Zn(OH)2 + 2 OH- -> [Zn(OH)4]^2-"],
    ["SnCl4 + NaOH -> Na2Sn(OH)6 + NaCl", "Sn^4+ + 6 OH- -> [Sn(OH)6]^2-"],
    ["Al + NaOH + H2O -> NaAl(OH)4 + H2", "2 Al + 2 OH- + 6 H2O -> 2 [Al(OH)4]- + 3 H2"],
    ["AgNO3 + KCN -> KAg(CN)2 + KNO3", "Ag+ + 2 CN- -> [Ag(CN)2]-"],
    ["KHC8H4O4 + NaOH -> KNaC8H4O4 + H2O", "HC8H4O4- + OH- -> C8H4O4^2- + H2O"],
  ])("%s", (molecular, net) => {
    expect(sorted(String(netIonic(molecular)))).toEqual(sorted(net));
  });

  it("says so when an alkali salt has ions it does not know", () => {
    expect(netIonic("HCl + NaC5H7O3 -> NaCl + HC5H7O3").assumptions).toEqual([
      "the ions of NaC5H7O3 are not known; it is kept whole",
    ]);
  });
});

describe("overall equation of several steps", () => {
  it("multiplies the steps so that intermediates cancel", () => {
    // contact process and Ostwald process, textbook commonplaces (memory)
    const sulfuric = overallEquation(["S + O2 -> SO2", "SO2 + O2 -> SO3", "SO3 + H2O -> H2SO4"]);
    expect(String(sulfuric)).toBe("2 S + 3 O2 + 2 H2O -> 2 H2SO4");
    expect(sulfuric.multipliers).toEqual([2n, 1n, 2n]);
    expect(sulfuric.intermediates.map(String)).toEqual(["SO2", "SO3"]);
    const nitric = overallEquation(["NH3 + O2 -> NO + H2O", "NO + O2 -> NO2", "NO2 + H2O -> HNO3 + NO"]);
    expect(String(nitric)).toBe("NH3 + 2 O2 -> H2O + HNO3");
  });

  it("chains two preparations: sulfate to basic carbonate to acetate", () => {
    const overall = overallEquation([
      "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
      "Zn5(CO3)2(OH)6 + CH3COOH -> Zn(CH3COO)2 + CO2 + H2O",
    ]);
    expect(String(overall)).toBe("ZnSO4 + Na2CO3 + 2 CH3COOH -> H2O + Na2SO4 + CO2 + Zn(CH3COO)2");
  });

  it("takes multipliers and runs a step backwards", () => {
    expect(String(overallEquation(["C + O2 -> CO2", "CO + O2 -> CO2"], { multipliers: [2, -1] }))).toBe(
      "2 C + O2 -> 2 CO",
    );
  });

  it("refuses steps that do not chain", () => {
    expect(attempt(() => overallEquation(["H2 + O2 -> H2O", "Na + Cl2 -> NaCl"]))).toMatchObject({
      ok: false,
      error: { code: "equation.steps-do-not-chain" },
    });
    expect(attempt(() => overallEquation(["H2 + O2 -> H2O", "H2O -> H2 + O2"]))).toMatchObject({ ok: false });
    expect(attempt(() => overallEquation([]))).toMatchObject({
      ok: false,
      error: { code: "equation.steps-do-not-chain" },
    });
  });
});
