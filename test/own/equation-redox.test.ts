// Oxidation states and half-reactions that every chemist knows, and the corpus seen as redox.
import { describe, expect, it } from "vitest";
import { balance, halfReactions, netIonic, oxidationStates, redoxAnalysis, tryBalance } from "../../src/equation";
import { attempt } from "../../src/foundation/error";
import { CORPUS } from "../data/equation-corpus";

// Textbook commonplaces, from memory unless a section is named; of() gives the average over all atoms of the element.
const COMMON: readonly (readonly [formula: string, symbol: string, state: string])[] = [
  ["H2O2", "O", "-1"],
  ["BaO2", "O", "-1"],
  ["KO2", "O", "-1/2"],
  ["KO3", "O", "-1/3"],
  ["OF2", "O", "2"],
  ["O2F2", "O", "1"],
  ["NaH", "H", "-1"],
  ["LiAlH4", "H", "-1"],
  ["NaBH4", "B", "3"],
  ["Na2S2O3", "S", "2"],
  ["Na2S4O6", "S", "5/2"],
  ["Na2S2", "S", "-1"],
  ["FeS2", "S", "-1"],
  ["FeS2", "Fe", "2"],
  ["K2S2O8", "S", "6"],
  ["H2SO5", "S", "6"],
  ["CrO5", "Cr", "6"],
  ["Fe3O4", "Fe", "8/3"],
  ["Pb3O4", "Pb", "8/3"],
  ["NH4NO3", "N", "1"],
  ["N2H4", "N", "-2"],
  ["NH2OH", "N", "-1"],
  ["NaN3", "N", "-1/3"],
  ["K3[Fe(CN)6]", "Fe", "3"],
  ["K4[Fe(CN)6]", "Fe", "2"],
  ["[Co(NH3)6]Cl3", "Co", "3"],
  ["[Cu(NH3)4]SO4.H2O", "Cu", "2"],
  ["[Pt(NH3)2Cl2]", "Pt", "2"],
  ["Ni(CO)4", "Ni", "0"],
  ["Na2[Fe(CN)5NO]", "Fe", "2"],
  ["K2MnO4", "Mn", "6"],
  ["Ca(ClO)2", "Cl", "1"],
  ["H5IO6", "I", "7"],
  ["XeO6^4-", "Xe", "8"],
  ["I3-", "I", "-1/3"],
  ["Hg2Cl2", "Hg", "1"],
  ["C2H5OH", "C", "-2"],
  ["C6H12O6", "C", "0"],
  ["H2C2O4", "C", "3"],
  ["CO(NH2)2", "C", "4"],
  ["YBa2Cu3O7", "Cu", "7/3"],
  ["VOSO4", "V", "4"],
  ["UO2(NO3)2", "U", "6"],
  ["HAuCl4", "Au", "3"],
  ["P4", "P", "0"],
  ["PbCrO4", "Cr", "6"],
  ["(NH4)2Cr2O7", "Cr", "6"],
];

describe("oxidation states known to every chemist (memory)", () => {
  it.each(COMMON)("%s: %s is %s", (formula, symbol, state) => {
    expect(oxidationStates(formula).of(symbol).toFraction()).toBe(state);
  });
});

describe("the whole corpus, seen as redox", () => {
  const balanced = CORPUS.flatMap((text) => {
    const outcome = tryBalance(text);
    return outcome.ok && !/(^| )e-( |$)/.test(text) ? [outcome.value] : [];
  });
  const sides = (equation: { toString(): string }) =>
    equation
      .toString()
      .split(/ (?:->|<=>|=) /)
      .map((side) =>
        side
          .replace(/[[\]()]/g, "")
          .split(" + ")
          .sort()
          .join(" + "),
      );

  it("gives up as many electrons as are taken, in every equation", () => {
    let redox = 0;
    let tested = 0;
    for (const equation of balanced) {
      if (/C3H5N3O9/.test(String(equation))) continue; // nitroglycerin: the formula does not show its nitrate groups
      const { oxidised, reduced, isRedox } = redoxAnalysis(equation);
      const total = (changes: typeof oxidised) => changes.reduce((sum, one) => sum + Number(one.electrons), 0);
      expect(total(oxidised), String(equation)).toBeCloseTo(total(reduced), 9);
      if (isRedox) redox++;
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(580);
    expect(redox).toBeGreaterThan(350);
  });

  it("adds halves up to the net equation of the balanced one wherever the halves are unique", () => {
    let equal = 0;
    let tested = 0;
    for (const equation of balanced) {
      const halves = attempt(() => halfReactions(equation));
      if (!halves.ok) {
        expect(halves.error.code, String(equation)).toMatch(/not-redox|halves-not-unique|oxidation-state-unknown/);
        continue;
      }
      const net = attempt(() => netIonic(equation));
      const expected = [String(equation), ...(net.ok ? [String(net.value)] : [])].map((text) =>
        sides(text).join(" -> "),
      );
      expect(expected, String(equation)).toContain(sides(halves.value.overall).join(" -> "));
      // each half is balanced by itself, electrons included
      for (const half of [...halves.value.oxidations, ...halves.value.reductions]) {
        expect(balance(half.toString()).equals(half), String(half)).toBe(true);
      }
      equal++;
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(330);
    expect(equal).toBeGreaterThanOrEqual(370);
  });
});

describe("half-reactions of the textbooks", () => {
  // OpenStax Chemistry 2e, appendix of standard electrode potentials and section 17.1; the rest from memory
  it.each([
    ["MnO4- + Fe^2+ -> Mn^2+ + Fe^3+", "acid", "MnO4- + 8 H+ + 5 e- -> Mn^2+ + 4 H2O", "Fe^2+ -> Fe^3+ + e-"],
    [
      "Cr2O7^2- + C2H5OH -> Cr^3+ + CH3COOH",
      "acid",
      "Cr2O7^2- + 14 H+ + 6 e- -> 2 Cr^3+ + 7 H2O",
      "C2H5OH + H2O -> CH3COOH + 4 H+ + 4 e-",
    ],
    ["MnO4- + CN- -> MnO2 + CNO-", "base", "MnO4- + 2 H2O + 3 e- -> MnO2 + 4 OH-", "CN- + 2 OH- -> CNO- + H2O + 2 e-"],
    [
      "PbO2 + Pb + H2SO4 -> PbSO4 + H2O",
      "acid",
      "PbO2 + SO4^2- + 4 H+ + 2 e- -> PbSO4 + 2 H2O",
      "Pb + SO4^2- -> PbSO4 + 2 e-",
    ],
    ["Al + NaOH + H2O -> Na[Al(OH)4] + H2", "base", "2 H2O + 2 e- -> H2 + 2 OH-", "Al + 4 OH- -> [Al(OH)4]- + 3 e-"],
    ["H2O2 + MnO4- -> Mn^2+ + O2", "acid", "MnO4- + 8 H+ + 5 e- -> Mn^2+ + 4 H2O", "H2O2 -> O2 + 2 H+ + 2 e-"],
    ["Br2 -> BrO3- + Br-", "base", "Br2 + 2 e- -> 2 Br-", "Br2 + 12 OH- -> 2 BrO3- + 6 H2O + 10 e-"],
    ["MnO4- + I- -> MnO2 + I2", "neutral", "MnO4- + 2 H2O + 3 e- -> MnO2 + 4 OH-", "2 I- -> I2 + 2 e-"],
  ] as const)("%s in %s", (equation, medium, reduction, oxidation) => {
    const halves = halfReactions(equation, { medium });
    expect(halves.reduction.toString()).toBe(reduction);
    expect(halves.oxidation.toString()).toBe(oxidation);
  });

  it("counts the electrons of permanganate and oxalate: ten", () => {
    expect(halfReactions("MnO4- + C2O4^2- -> Mn^2+ + CO2", { medium: "acid" }).electrons).toBe(10n);
  });

  it("names the acid-base step when weak acids or bases take up the H+", () => {
    const halves = halfReactions("NH3 + Cl2 -> NH4Cl + N2");
    expect(halves.acidBase?.toString()).toBe("NH3 + H+ -> NH4+");
    expect(sidesOf(halves.overall)).toEqual(sidesOf(netIonic("NH3 + Cl2 -> NH4Cl + N2")));
  });
});

const sidesOf = (equation: { toString(): string }) =>
  equation
    .toString()
    .split(" -> ")
    .map((side) => side.split(" + ").sort());
