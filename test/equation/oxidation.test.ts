import { describe, expect, it } from "vitest";
import { halfReactions, oxidationStates, redoxAnalysis } from "../../src/equation";
import { parseFormula } from "../../src/formula";
import { attempt } from "../../src/foundation/error";
import { REGISTRY } from "../../src/substance/data/registry";

describe("oxidation states", () => {
  it("tells the nitrogens of ammonium nitrate apart and still gives the average", () => {
    const states = oxidationStates("NH4NO3");
    expect(
      states.states.filter(({ symbol }) => symbol === "N").map(({ state, in: ion }) => [state.toFraction(), ion]),
    ).toEqual([
      ["-3", "NH4+"],
      ["5", "NO3-"],
    ]);
    expect(states.of("N").toFraction()).toBe("1");
    expect(states.toString()).toBe("N -3 in NH4+, N +5 in NO3-, H +1, O -2");
  });

  it("tells the irons of Prussian blue apart by the charges that leave whole numbers", () => {
    const irons = oxidationStates("Fe4[Fe(CN)6]3").states.filter(({ symbol }) => symbol === "Fe");
    expect(irons.map(({ state, count }) => `${count.toFraction()} at ${state.toFraction()}`).sort()).toEqual([
      "3 at 2",
      "4 at 3",
    ]);
  });

  it("tells oxide halides from hypohalites", () => {
    // Bismuth(III) chloride oxide and sodium hypochlorite: IUPAC Red Book 2005, IR-5 (from memory).
    const chlorineIn = (formula: string): string => oxidationStates(formula).of("Cl").toFraction();
    expect(["BiOCl", "FeOCl", "VOCl2"].map(chlorineIn)).toEqual(["-1", "-1", "-1"]);
    expect(["NaOCl", "Ca(OCl)2", "HOCl"].map(chlorineIn)).toEqual(["1", "1", "1"]);
    expect(oxidationStates("BiOCl").of("Bi").toFraction()).toBe("3");
    expect(redoxAnalysis("Bi(NO3)3 + NaCl + H2O -> BiOCl + NaNO3 + HNO3").isRedox).toBe(false);
  });

  it("counts peroxide oxygens by themselves where a metal cannot give more", () => {
    const oxygens = oxidationStates("CrO5").states.filter(({ symbol }) => symbol === "O");
    expect(oxygens.map(({ state, count }) => `${count.toFraction()} at ${state.toFraction()}`)).toEqual([
      "4 at -1",
      "1 at -2",
    ]);
  });

  it("takes stated oxidation numbers as they are", () => {
    expect(
      oxidationStates("Pb^II2Pb^IVO4")
        .states.filter(({ symbol }) => symbol === "Pb")
        .map(({ state }) => state.toFraction()),
    ).toEqual(["2", "4"]);
  });

  // the states of the rest follow by the charge: iron carbonylate 2 - 2 + 4 (2 - 2) = 0, iridium(IX) 9 - 4 × 2 = +1
  // (G. Wang et al., Nature 514 (2014) 475, from memory)
  it.each([
    ["Na2Fe^{-II}(CO)4", "Na 1, Fe -2, C 2, O -2"],
    ["[Fe^-II(CO)4]^2-", "Fe -2, C 2, O -2"],
    ["[Ir^{IX}O4]^+", "Ir 9, O -2"],
    ["Na2S^{-II}", "Na 1, S -2"],
    ["Ru^{I}O^-", "Ru 1, O -2"],
    ["Ru^{II}O", "Ru 2, O -2"],
    ["Ru^{III}O^+", "Ru 3, O -2"],
    ["Ru^{IV}O^2+", "Ru 4, O -2"],
    ["Ru^{V}O^3+", "Ru 5, O -2"],
    ["Ru^{VI}O^4+", "Ru 6, O -2"],
    ["Ru^{VII}O4^-", "Ru 7, O -2"],
    ["Ru^{VIII}O4", "Ru 8, O -2"],
  ])("takes what is stated in %s: %s", (text, states) => {
    expect(
      oxidationStates(text)
        .states.map(({ symbol, state }) => `${symbol} ${state.toFraction()}`)
        .join(", "),
    ).toBe(states);
  });

  it("adds up to the charge, always", () => {
    for (const text of [
      "SO4^2-",
      "[Fe(CN)6]^4-",
      "K2Cr2O7",
      "Cu2(OH)2CO3",
      "NH4+",
      "Zn5(CO3)2(OH)6",
      "UO4.2H2O",
      "e-",
    ]) {
      const formula = parseFormula(text);
      const sum = oxidationStates(formula).states.reduce(
        (total, { state, count }) => total + Number(state.mul(count)),
        0,
      );
      if (text !== "e-") expect(sum, text).toBeCloseTo(formula.charge, 9);
    }
  });

  // arsenite of Scheele's green, lead azide, iron(II) titanate (ilmenite): their ions (general chemistry, from memory)
  it.each([
    ["CuHAsO3", "Cu +2, H +1, As +3, O -2"],
    ["Fe(COO)2", "Fe +2, C +3, O -2"],
    ["PbN6", "Pb +2, N -1/3"],
    ["FeTiO3", "Fe +2, Ti +4, O -2"],
    ["C6FeK4N6", "C +2, Fe +2, K +1, N -3"],
    ["Cr2H8N2O7", "Cr +6, H +1, N -3, O -2"],
  ])("reads the ions in %s", (formula, states) => {
    expect(oxidationStates(formula).toString()).toBe(states);
  });

  it("does not depend on the spelling, over the registry", () => {
    const average = (formula: string) => {
      const states = attempt(() => oxidationStates(formula));
      return states.ok ? JSON.stringify(Object.entries(states.value.toJSON()).sort()) : "unknown";
    };
    let tested = 0;
    for (const { formula } of REGISTRY()) {
      const { parts } = parseFormula(formula);
      const hill = parts.map((part) => `${part.multiplier.toFraction()}${part.formula.toHill()}`);
      const written = [hill.join("·").replace(/(^|·)1(?=[A-Z])/g, "$1"), formula.replaceAll("C2O4", "(COO)2")];
      // urea and the like: a composition alone is judged by its average
      for (const spelling of [...written, formula.replaceAll("CH3COO", "C2H3O2")])
        expect(average(spelling), `${formula} as ${spelling}`).toBe(average(formula));
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(520);
  });

  it("says what it had to assume", () => {
    expect(oxidationStates("CoMn2O4").assumptions).toEqual(["Co taken as +2, its commonest state"]);
    expect(oxidationStates("FeO").assumptions).toEqual([]);
  });

  it("refuses a charge that the metals in brackets cannot carry, and takes one that they can", () => {
    // sodium and potassium are +1 each in compounds
    expect(attempt(() => oxidationStates("[NaK]^4+[Fe(CN)6]^4-"))).toMatchObject({
      ok: false,
      error: { code: "equation.oxidation-state-unknown" },
    });
    expect(String(oxidationStates("[NaK]^2+SO4^2-"))).toBe("Na +1, K +1, S +6, O -2");
  });

  it("refuses where the rules do not settle it, rather than guess", () => {
    expect(attempt(() => oxidationStates("CuZn"))).toMatchObject({
      ok: false,
      error: { code: "equation.oxidation-state-unknown" },
    });
    expect(() => oxidationStates("NaCl").of("K")).toThrow(
      expect.objectContaining({ code: "equation.no-such-element" }),
    );
  });
});

describe("redox analysis", () => {
  it("finds who gives and who takes", () => {
    const redox = redoxAnalysis("K2Cr2O7 + FeSO4 + H2SO4 -> K2SO4 + Cr2(SO4)3 + Fe2(SO4)3 + H2O");
    expect(redox.electrons.toFraction()).toBe("6");
    expect(redox.oxidisingAgents.map(String)).toEqual(["K2Cr2O7"]);
    expect(redox.reducingAgents.map(String)).toEqual(["FeSO4"]);
  });

  it("sees disproportionation: one species on both sides of the trade", () => {
    const redox = redoxAnalysis("Cl2 + OH- -> Cl- + ClO3- + H2O");
    expect(redox.oxidisingAgents.map(String)).toEqual(["Cl2"]);
    expect(redox.reducingAgents.map(String)).toEqual(["Cl2"]);
    expect(redox.electrons.toFraction()).toBe("5");
  });

  it("leaves alone what only changes partners", () => {
    for (const text of [
      "HCl + NaOH -> NaCl + H2O",
      "Fe3O4 + HCl -> FeCl2 + FeCl3 + H2O",
      "CaCO3 -> CaO + CO2",
      "CrO4^2- + H+ -> Cr2O7^2- + H2O",
    ]) {
      expect(redoxAnalysis(text).isRedox, text).toBe(false);
      expect(
        attempt(() => halfReactions(text)),
        text,
      ).toMatchObject({ ok: false, error: { code: "equation.not-redox" } });
    }
  });

  it("refuses to split a half-reaction again", () => {
    expect(attempt(() => halfReactions("Cu^2+ + e- -> Cu"))).toMatchObject({
      ok: false,
      error: { code: "equation.half-reaction-given" },
    });
  });
});

describe("heavy hydrogen", () => {
  it.each([
    ["D2O", "D", "1"],
    ["D2O", "H", "1"],
    ["HDO", "D", "1"],
    ["LiAlD4", "D", "-1"],
    ["[2H]2O", "D", "1"],
    ["T2", "T", "0"],
  ])("in %s, asked for as %s, counts as hydrogen", (formula, symbol, state) => {
    expect(oxidationStates(formula).of(symbol).toFraction()).toBe(state);
  });

  it("is not in a formula that does not name it", () => {
    expect(() => oxidationStates("H2O").of("D")).toThrow("D is not in H2O");
  });
});
