// What the layer answers besides coefficients: notations of coefficients and arrows, states, halves, electrons, ions. Worked by
// hand: states add up to the charge, halves to the whole, electrons given to electrons taken.
import { describe, expect, it } from "vitest";
import {
  balance,
  completeIonic,
  halfReactions,
  netIonic,
  overallEquation,
  oxidationStates,
  parseEquation,
  reactionSpace,
  redoxAnalysis,
  workingOfEquation,
  workingOfHalfReactions,
} from "../../src/equation";

describe("numbers before a formula", () => {
  it.each([
    ["(1/2) O2", "1/2", "O2"],
    ["(½) O2", "1/2", "O2"],
    ["(.5)O2", "1/2", "O2"],
    [".5 O2", "1/2", "O2"],
    ["(1½)O2", "3/2", "O2"],
    ["(1.5) O2", "3/2", "O2"],
    ["(2)H2O", "2", "H2O"],
    ["2·H2O", "2", "H2O"],
    ["2 * H2O", "2", "H2O"],
    ["2 × H2O", "2", "H2O"],
    ["2\u00a0H2O", "2", "H2O"],
    ["2\u2009H2O", "2", "H2O"],
    ["2\tH2O", "2", "H2O"],
    ["2\u202fH2O", "2", "H2O"],
    ["⅓O2", "1/3", "O2"],
    ["⅔ O2", "2/3", "O2"],
    ["¼ O2", "1/4", "O2"],
    ["¾O2", "3/4", "O2"],
    ["⅕ O2", "1/5", "O2"],
    ["⅖ O2", "2/5", "O2"],
    ["⅗ O2", "3/5", "O2"],
    ["⅘ O2", "4/5", "O2"],
    ["⅙ O2", "1/6", "O2"],
    ["⅚ O2", "5/6", "O2"],
    ["⅛ O2", "1/8", "O2"],
    ["⅜ O2", "3/8", "O2"],
    ["⅝ O2", "5/8", "O2"],
    ["⅞O2", "7/8", "O2"],
    ["2⅓ O2", "7/3", "O2"],
    ["2 [Cu(NH3)4]SO4", "2", "[Cu(NH3)4]SO4"],
    ["2(NH4)2SO4", "2", "(NH4)2SO4"],
    ["3 CdSO4.8H2O", "3", "CdSO4.8H2O"],
    ["3CdSO4.8H2O", undefined, "3CdSO4.8H2O"],
    ["(NH4)2SO4", undefined, "(NH4)2SO4"],
    ["_ H2O", undefined, "H2O"],
    ["___H2O", undefined, "H2O"],
    ["? H2O", undefined, "H2O"],
  ])("%j is %s of %s", (term, coefficient, formula) => {
    for (const equation of [
      parseEquation(`${term} -> N2`),
      parseEquation(`N2 -> ${term}`),
      parseEquation(`N2 + ${term} = N2`),
    ]) {
      const read = [...equation.reactants, ...equation.products].find((one) => one.formula.toString() !== "N2")!;
      expect([read.coefficient?.toFraction(), read.formula.toString()]).toEqual([coefficient, formula]);
    }
  });
});

describe("what stands on the arrow", () => {
  it.each(["CaCO3 --heat--> CaO + CO2", "CaCO3 -heat-> CaO + CO2", "CaCO3 ==heat==> CaO + CO2"])(
    "in %s is left out, with a remark",
    (text) => {
      const { remarks, arrow } = parseEquation(text);
      expect([String(parseEquation(text)), arrow]).toEqual(["CaCO3 -> CaO + CO2", "forward"]);
      expect(remarks).toEqual(['"heat" on the arrow was left out; it is not a species']);
    },
  );

  it("is left out in square brackets too, and in an equilibrium", () => {
    expect(String(parseEquation("CaCO3 ->[heat] CaO + CO2"))).toBe("CaCO3 -> CaO + CO2");
    expect(String(parseEquation("CaCO3 ->[900 °C][1 bar] CaO + CO2"))).toBe("CaCO3 -> CaO + CO2");
    expect(String(parseEquation("N2 <-heat-> N"))).toBe("N2 <=> N");
    // a complex in the same place is a species
    expect(String(parseEquation("Cu^2+ + NH3 ->[Cu(NH3)4]^2+"))).toBe("Cu^2+ + NH3 -> [Cu(NH3)4]^2+");
  });

  it("is doubted where a dash or a plus could be a charge as well", () => {
    expect(parseEquation("Cl2+2e-->2Cl-").remarks).toEqual([
      "the plus at 3 was read as separating two species; white space around it would say so",
      "the dash at 6 was read as a charge; white space before the arrow would leave no doubt",
    ]);
    expect(parseEquation("Cl2 + 2 e- -> 2 Cl-").remarks).toEqual([]);
    expect(parseEquation("2 Fe3+ + 3 Zn -> 2 Fe + 3 Zn2+").remarks).toEqual([
      "digits before a bare sign were read as charges, because the given coefficients then balance",
    ]);
  });
});

describe("oxidation states", () => {
  // element by element as any textbook assigns them (IUPAC rules; general chemistry, from memory)
  it.each([
    ["C60", "C 0"],
    ["N2", "N 0"],
    ["e-", ""],
    ["XeF2", "Xe +2, F -1"],
    ["OF2", "O +2, F -1"],
    ["SF6", "S +6, F -1"],
    ["BrF5", "Br +5, F -1"],
    ["PCl5", "P +5, Cl -1"],
    ["Cl2O7", "Cl +7, O -2"],
    ["CS2", "C +4, S -2"],
    ["Na2O2", "Na +1, O -1"],
    ["KO2", "K +1, O -1/2"],
    ["KO3", "K +1, O -1/3"],
    ["H2SO5", "H +1, S +6, O -1, O -2"],
    ["S2O8^2-", "S +6, O -1, O -2"],
    ["CH4", "C -4, H +1"],
    ["CH3OH", "C -2, H +1, O -2"],
    ["SiH4", "Si +4, H -1"],
    ["AsH3", "As -3, H +1"],
    ["NaBH4", "Na +1, B +3, H -1"],
    ["LiAlH4", "Li +1, Al +3, H -1"],
    ["H3PO2", "H +1, P +1, O -2"],
    ["HN3", "H +1, N -1/3"],
    ["N3-", "N -1/3"],
    ["NH2OH", "N -1, H +1, O -2"],
    ["NH4+", "N -3, H +1"],
    ["N2H5Cl", "N -2, H +1, Cl -1"],
    ["NH4NO2", "N -3 in NH4+, N +3 in NO2-, H +1, O -2"],
    ["(NH4)2Cr2O7", "N -3, H +1, Cr +6, O -2"],
    ["C2N2", "C +3, N -3"],
    ["C6H5NO2", "C -2/3, H +1, N +3, O -2"],
    ["CaC2", "Ca +2, C -1"],
    ["Hg2Cl2", "Hg +1, Cl -1"],
    ["Cu2O", "Cu +1, O -2"],
    ["Fe3O4", "Fe +2, Fe +3, O -2"],
    ["CuFeS2", "Cu +1, Fe +3, S -2"],
    ["P4S3", "P +3/2, S -2"],
    ["UO2^2+", "U +6, O -2"],
    ["VOSO4", "V +4, O -2, S +6"],
    ["NO2BF4", "N +5, O -2, B +3, F -1"],
    ["K2MnF6", "K +1, Mn +4, F -1"],
    ["Fe(CO)5", "Fe 0, C +2, O -2"],
    ["[Fe(H2O)6]^3+", "Fe +3, H +1, O -2"],
    ["[Co(NH3)6]Cl3", "Co +3, N -3, H +1, Cl -1"],
    ["Na2[Fe(CN)5NO]", "Na +1, Fe +2, C +2, N -3 in CN-, N +3 in NO+, O -2"],
    ["CaOCl2", "Ca +2, O -2, Cl -1, Cl +1 in ClO-"],
    ["Ba(OCl)2", "Ba +2, O -2, Cl +1"],
    ["KAl(SO4)2.12H2O", "K +1, Al +3, S +6, O -2, H +1"],
    ["MgNH4PO4.6H2O", "Mg +2, N -3, H +1, P +5, O -2"],
    ["Pb^II2Pb^IVO4", "Pb +2, Pb +4, O -2"],
  ])("of %s: %s", (formula, expected) => {
    const states = oxidationStates(formula);
    expect(states.toString()).toBe(expected);
    // their sum is the charge, and every atom is counted once
    const sum = states.states.reduce((total, { state, count }) => total + state.mul(count).valueOf(), 0);
    expect(sum).toBeCloseTo(formula === "e-" ? 0 : states.formula.charge, 9);
    for (const { symbol, count } of states.formula.composition) {
      const atoms = states.states.filter((site) => site.symbol === symbol);
      expect(
        atoms.reduce((total, site) => total + site.count.valueOf(), 0),
        symbol,
      ).toBeCloseTo(count.valueOf(), 9);
    }
  });

  it("come with the ion or part they sit in, and their number", () => {
    const sites = (formula: string) =>
      oxidationStates(formula).states.map(
        ({ symbol, state, count, in: unit }) => `${count.toFraction()} ${symbol} ${state.toFraction()} ${unit ?? ""}`,
      );
    expect(sites("KAl(SO4)2.12H2O")).toEqual([
      "1 K 1 KAl(SO4)2",
      "1 Al 3 KAl(SO4)2",
      "2 S 6 SO4^2-",
      "8 O -2 SO4^2-",
      "12 O -2 H2O",
      "24 H 1 H2O",
    ]);
    expect(sites("[Co(NH3)6]Cl3")).toEqual(["1 Co 3 ", "6 N -3 NH3", "18 H 1 NH3", "3 Cl -1 "]);
    expect(oxidationStates("Fe3O4").toJSON()).toEqual({ Fe: "8/3", O: "-2" });
    expect(oxidationStates("NH4NO3").toJSON()).toEqual({ N: "1", H: "1", O: "-2" });
  });
});

describe("halves", () => {
  // MnO4- takes 5 e- in acid and 3 in base or neutral water; the sums conserve atoms and charge (general chemistry, from memory)
  it.each([
    [
      "MnO4- + C2O4^2- -> Mn^2+ + CO2",
      undefined,
      ["5 C2O4^2- -> 2 CO2 + 2 e-", "2 MnO4- + 8 H+ + 5 e- -> Mn^2+ + 4 H2O"],
      "2 MnO4- + 16 H+ + 5 C2O4^2- -> 2 Mn^2+ + 8 H2O + 10 CO2",
      10n,
    ],
    [
      "MnO4- + SO3^2- -> MnO2 + SO4^2-",
      "base",
      ["3 SO3^2- + 2 OH- -> SO4^2- + H2O + 2 e-", "2 MnO4- + 2 H2O + 3 e- -> MnO2 + 4 OH-"],
      "2 MnO4- + H2O + 3 SO3^2- -> 2 MnO2 + 2 OH- + 3 SO4^2-",
      6n,
    ],
    [
      "MnO4- + SO3^2- -> MnO2 + SO4^2-",
      "neutral",
      ["3 SO3^2- + H2O -> SO4^2- + 2 H+ + 2 e-", "2 MnO4- + 2 H2O + 3 e- -> MnO2 + 4 OH-"],
      "2 MnO4- + H2O + 3 SO3^2- -> 2 MnO2 + 2 OH- + 3 SO4^2-",
      6n,
    ],
    [
      "MnO4- + SO3^2- -> MnO2 + SO4^2-",
      "acid",
      ["3 SO3^2- + H2O -> SO4^2- + 2 H+ + 2 e-", "2 MnO4- + 4 H+ + 3 e- -> MnO2 + 2 H2O"],
      "2 MnO4- + 2 H+ + 3 SO3^2- -> 2 MnO2 + H2O + 3 SO4^2-",
      6n,
    ],
    [
      "Cl2 + OH- -> Cl- + ClO3- + H2O",
      undefined,
      ["1 Cl2 + 12 OH- -> 2 ClO3- + 6 H2O + 10 e-", "5 Cl2 + 2 e- -> 2 Cl-"],
      "3 Cl2 + 6 OH- -> 5 Cl- + ClO3- + 3 H2O",
      5n,
    ],
    [
      "Al + NaOH + H2O -> Na[Al(OH)4] + H2",
      undefined,
      ["2 Al + 4 OH- -> [Al(OH)4]- + 3 e-", "3 2 H2O + 2 e- -> H2 + 2 OH-"],
      "6 H2O + 2 OH- + 2 Al -> 3 H2 + 2 [Al(OH)4]-",
      6n,
    ],
    [
      "MnO4- + H3O+ + Cl- -> Mn^2+ + Cl2 + H2O",
      undefined,
      ["5 2 Cl- -> Cl2 + 2 e-", "2 MnO4- + 8 H3O+ + 5 e- -> Mn^2+ + 12 H2O"],
      "2 MnO4- + 16 H3O+ + 10 Cl- -> 2 Mn^2+ + 24 H2O + 5 Cl2",
      10n,
    ],
    [
      "KClO3 -> KCl + O2",
      undefined,
      ["3 2 H2O -> O2 + 4 H+ + 4 e-", "2 ClO3- + 6 H+ + 6 e- -> Cl- + 3 H2O"],
      "2 ClO3- -> 2 Cl- + 3 O2",
      12n,
    ],
    [
      "Ag + CN- + O2 + H2O -> [Ag(CN)2]- + OH-",
      undefined,
      ["4 Ag + 2 CN- -> [Ag(CN)2]- + e-", "1 O2 + 2 H2O + 4 e- -> 4 OH-"],
      "O2 + 2 H2O + 4 Ag + 8 CN- -> 4 OH- + 4 [Ag(CN)2]-",
      4n,
    ],
    [
      "PbO2 + HCl -> PbCl2 + Cl2 + H2O",
      undefined,
      ["1 2 Cl- -> Cl2 + 2 e-", "1 PbO2 + 2 Cl- + 4 H+ + 2 e- -> PbCl2 + 2 H2O"],
      "PbO2 + 4 Cl- + 4 H+ -> PbCl2 + 2 H2O + Cl2",
      2n,
    ],
    [
      "FeS2 + O2 -> Fe2O3 + SO2",
      undefined,
      ["2 2 FeS2 + 11 H2O -> Fe2O3 + 4 SO2 + 22 H+ + 22 e-", "11 O2 + 4 H+ + 4 e- -> 2 H2O"],
      "11 O2 + 4 FeS2 -> 2 Fe2O3 + 8 SO2",
      44n,
    ],
    [
      "NaH + H2O -> NaOH + H2",
      undefined,
      ["1 2 NaH -> H2 + 2 Na+ + 2 e-", "1 2 H2O + 2 e- -> H2 + 2 OH-"],
      "H2O + NaH -> H2 + OH- + Na+",
      1n,
    ],
  ] as const)("of %s in %s", (text, medium, halves, sum, electrons) => {
    const split = halfReactions(text, { medium });
    const all = [...split.oxidations, ...split.reductions];
    expect(all.map((half, at) => `${split.multipliers[at]} ${half}`)).toEqual(halves);
    expect([String(split.oxidation), String(split.reduction)]).toEqual(all.map(String));
    expect([String(split.overall), split.electrons]).toEqual([sum, electrons]);
    const lines = String(split).split("\n");
    expect(lines[0]).toBe(`oxidation, taken ${split.multipliers[0]} times: ${split.oxidation}`);
    expect(lines[1]).toBe(`reduction, taken ${split.multipliers[1]} times: ${split.reduction}`);
    expect(lines.at(-1)).toBe(`sum: ${sum}`);
  });

  it("are worked one by one, with the electrons of each", () => {
    const working = workingOfHalfReactions(halfReactions("MnO4- + Fe^2+ -> Mn^2+ + Fe^3+"));
    expect(working.multipliers).toEqual([
      "5 × (Fe^2+ -> Fe^3+ + e-) gives off 5 electrons",
      "1 × (MnO4- + 8 H+ + 5 e- -> Mn^2+ + 4 H2O) accepts 5 electrons",
    ]);
    expect(working.halves.map(({ kind, half }) => `${kind} ${half.withLetters}`)).toEqual([
      "oxidation a Fe^2+ -> b Fe^3+ + c e-",
      "reduction a MnO4- + b H+ + c e- -> d Mn^2+ + e H2O",
    ]);
    const lines = String(working).split("\n");
    expect(lines.filter((line) => /^[A-Z][a-z]+$/.test(line))).toEqual([
      "Oxidation",
      "Conditions",
      "Steps",
      "Check",
      "Reduction",
      "Conditions",
      "Steps",
      "Check",
      "Electrons",
      "Sum",
      "Conditions",
      "Steps",
      "Check",
    ]);
    expect(lines.at(-1)).toBe("MnO4- + 8 H+ + 5 Fe^2+ -> Mn^2+ + 4 H2O + 5 Fe^3+");
  });
});

describe("electrons that change hands", () => {
  const change = (text: string) => {
    const { oxidised, reduced, electrons, oxidisingAgents, reducingAgents, isRedox } = redoxAnalysis(text);
    const words = (list: typeof oxidised) =>
      list.map(
        ({ symbol, from, to, atoms, electrons: e, reactants, products }) =>
          `${atoms.toFraction()} ${symbol} ${from.toFraction()} to ${to.toFraction()}, ${e.toFraction()} e, ` +
          `${reactants.join()} to ${products.join()}`,
      );
    return [
      isRedox,
      words(oxidised),
      words(reduced),
      electrons.toFraction(),
      `${oxidisingAgents} by ${reducingAgents}`,
    ];
  };

  it.each([
    [
      "K2Cr2O7 + FeSO4 + H2SO4 -> K2SO4 + Cr2(SO4)3 + Fe2(SO4)3 + H2O",
      ["6 Fe 2 to 3, 6 e, FeSO4 to Fe2(SO4)3"],
      ["2 Cr 6 to 3, 6 e, K2Cr2O7 to Cr2(SO4)3"],
      "6",
      "K2Cr2O7 by FeSO4",
    ],
    [
      "As2S3 + HNO3 + H2O -> H3AsO4 + H2SO4 + NO",
      ["6 As 3 to 5, 12 e, As2S3 to H3AsO4", "9 S -2 to 6, 72 e, As2S3 to H2SO4"],
      ["28 N 5 to 2, 84 e, HNO3 to NO"],
      "84",
      "HNO3 by As2S3",
    ],
    [
      "Fe3O4 + Al -> Al2O3 + Fe",
      ["8 Al 0 to 3, 24 e, Al to Al2O3"],
      ["3 Fe 2 to 0, 6 e, Fe3O4 to Fe", "6 Fe 3 to 0, 18 e, Fe3O4 to Fe"],
      "24",
      "Fe3O4 by Al",
    ],
    [
      "NH4NO3 -> N2O + H2O",
      ["1 N -3 to 1, 4 e, NH4NO3 to N2O"],
      ["1 N 5 to 1, 4 e, NH4NO3 to N2O"],
      "4",
      "NH4NO3 by NH4NO3",
    ],
    ["Cu^2+ + e- -> Cu", [], ["1 Cu 2 to 0, 2 e, Cu^2+ to Cu"], "2", "Cu^2+ by "],
    ["Zn -> Zn^2+ + e-", ["1 Zn 0 to 2, 2 e, Zn to Zn^2+"], [], "2", " by Zn"],
  ])("in %s", (text, oxidised, reduced, electrons, agents) => {
    expect(change(text)).toEqual([true, oxidised, reduced, electrons, agents]);
  });
});

describe("ions in water", () => {
  // what dissolves and is a strong electrolyte stands as ions; water of crystallization joins the water (general chemistry)
  it.each([
    [
      "CuSO4.5H2O + NaOH -> Cu(OH)2 + Na2SO4 + H2O",
      "Cu^2+ + 2 OH- -> Cu(OH)2",
      "Cu^2+ + SO4^2- + 5 H2O + 2 Na+ + 2 OH- -> Cu(OH)2 + 2 Na+ + SO4^2- + 5 H2O",
      "1 SO4^2-, 5 H2O, 2 Na+",
    ],
    [
      "2 AgNO3(aq) + CuCl2(aq) -> 2 AgCl(s) + Cu(NO3)2(aq)",
      "Ag+(aq) + Cl-(aq) -> AgCl(s)",
      "2 Ag+(aq) + 2 NO3-(aq) + Cu^2+(aq) + 2 Cl-(aq) -> 2 AgCl(s) + Cu^2+(aq) + 2 NO3-(aq)",
      "2 NO3-(aq), 1 Cu^2+(aq)",
    ],
    ["HF + NaOH -> NaF + H2O", "HF + OH- -> F- + H2O", "HF + Na+ + OH- -> Na+ + F- + H2O", "1 Na+"],
    ["Mg + H2SO4 -> MgSO4 + H2", "Mg + 2 H+ -> Mg^2+ + H2", "Mg + 2 H+ + SO4^2- -> Mg^2+ + SO4^2- + H2", "1 SO4^2-"],
    ["Na2O2 + H2O -> NaOH + O2", "2 Na2O2 + 2 H2O -> 4 Na+ + 4 OH- + O2", "2 Na2O2 + 2 H2O -> 4 Na+ + 4 OH- + O2", ""],
    ["Ca(OH)2 + CO2 -> CaCO3 + H2O", "Ca^2+ + 2 OH- + CO2 -> CaCO3 + H2O", "Ca^2+ + 2 OH- + CO2 -> CaCO3 + H2O", ""],
  ])("of %s", (text, net, complete, spectators) => {
    const ionic = netIonic(text);
    expect([String(ionic), String(completeIonic(text))]).toEqual([net, complete]);
    for (const one of [ionic, completeIonic(text)])
      expect(one.spectators.map(({ formula, coefficient }) => `${coefficient} ${formula}`).join(", ")).toBe(spectators);
    expect(ionic.assumptions).toEqual([]);
  });

  it("says which salt no rule covers", () => {
    expect(netIonic("AgNO3 + NaOCN -> AgOCN + NaNO3").assumptions).toEqual([
      "no rule says whether AgOCN dissolves; taken as not dissolved",
    ]);
  });
});

describe("steps added up", () => {
  const nitric = ["NH3 + O2 -> NO + H2O", "NO + O2 -> NO2", "NO2 + H2O -> HNO3 + NO"];
  it("cancel what is named, or what is passed on, in least numbers", () => {
    for (const options of [{}, { intermediates: ["NO", "NO2"] }, { multipliers: [1n, 3, 2] }]) {
      const sum = overallEquation(nitric, options);
      expect(String(sum)).toBe("NH3 + 2 O2 -> H2O + HNO3");
      expect([sum.multipliers, sum.intermediates.map(String)]).toEqual([
        [1n, 3n, 2n],
        ["NO", "NO2"],
      ]);
      expect(sum.steps.map(String)).toEqual([
        "4 NH3 + 5 O2 -> 4 NO + 6 H2O",
        "2 NO + O2 -> 2 NO2",
        "3 NO2 + H2O -> 2 HNO3 + NO",
      ]);
    }
  });

  it("leave out a step that is taken no times", () => {
    const sum = overallEquation(["C + O2 -> CO", "CO + O2 -> CO2", "H2 + O2 -> H2O"], { multipliers: [1, 1n, 0] });
    expect([String(sum), sum.intermediates.map(String)]).toEqual(["C + O2 -> CO2", ["CO"]]);
  });
});

describe("a board", () => {
  it("shows letters, conditions, steps and counts, with charge and fractions", () => {
    const lines = (text: string) => String(workingOfEquation(balance(text))).split("\n");
    expect(lines("MnO4- + Fe^2+ + H+ -> Mn^2+ + Fe^3+ + H2O")).toEqual([
      "a MnO4- + b Fe^2+ + c H+ -> d Mn^2+ + e Fe^3+ + f H2O",
      "Conditions",
      "  Mn: a = d",
      "  O: 4 a = f",
      "  Fe: b = e",
      "  H: c = 2 f",
      "  charge: -a + 2 b + c = 2 d + 3 e",
      "Steps",
      "  1. Take a = 1 for MnO4-, which most conditions contain.",
      "  2. Mn: 1 × 1 = d, so d = 1.",
      "  3. O: 4 × 1 = f, so f = 4.",
      "  4. H: c = 2 × 4, so c = 8.",
      "  5. The conditions that are left, solved together, give b = 5, e = 5.",
      "  6. a = 1, b = 5, c = 8, d = 1, e = 5, f = 4.",
      "Check",
      "  Mn      1 × 1 = 1 × 1 = 1",
      "  O       1 × 4 = 4 × 1 = 4",
      "  Fe      5 × 1 = 5 × 1 = 5",
      "  H       8 × 1 = 4 × 2 = 8",
      "  charge  1 × (-1) + 5 × 2 + 8 × 1 = 1 × 2 + 5 × 3 = 17",
      "MnO4- + 5 Fe^2+ + 8 H+ -> Mn^2+ + 5 Fe^3+ + 4 H2O",
    ]);
    expect(lines("Fe + O2 -> Fe0.95O").slice(1, 9)).toEqual([
      "Conditions",
      "  Fe: a = 19/20 c",
      "  O: 2 b = c",
      "Steps",
      "  1. Take c = 1 for Fe0.95O, which most conditions contain.",
      "  2. Fe: a = 19/20 × 1, so a = 19/20.",
      "  3. O: 2 b = 1 × 1, so b = 1/2.",
      "  4. Times 20, so that all are whole numbers without a common divisor.",
    ]);
    expect(lines("Zn -> Zn^2+ + e-").slice(1, 4)).toEqual(["Conditions", "  Zn: a = b", "  charge: 0 = 2 b - c"]);
  });

  it("takes numbered letters beyond the alphabet", () => {
    // 27 alkanes would need letters beyond z: the first is x1
    const lists = {
      reactants: [...Array(25).keys()].map((n) => `C${n + 1}H${2 * n + 4}`).concat("O2"),
      products: ["CO2", "H2O"],
    };
    const coefficients = [...Array(25).keys()].map((n) => ({
      species: [`C${n + 1}H${2 * n + 4}`, "CH4"] as const,
      ratio: "1:1",
    }));
    const working = workingOfEquation(balance(lists, { conditions: coefficients.slice(1) }));
    expect(working.withLetters).toMatch(/^x1 CH4 \+ x2 C2H6 .*x26 O2 -> x27 CO2 \+ x28 H2O$/);
  });
});

describe("all reactions of an equation", () => {
  it("come as vectors in the places of the species, and as equations without those that sit out", () => {
    const space = reactionSpace("4 C + O2 -> CO + CO2");
    expect(space.equation.toString()).toBe("C + O2 -> CO + CO2");
    expect(space.vectors).toEqual([
      [2n, 1n, 2n, 0n],
      [1n, 1n, 0n, 1n],
    ]);
    expect(space.elementary.map((one) => `${one} ${one.arrow}`)).toEqual([
      "2 C + O2 -> 2 CO forward",
      "C + O2 -> CO2 forward",
    ]);
    expect(reactionSpace(balance("H2 + O2 -> H2O")).vectors).toEqual([[2n, 1n, 2n]]);
  });
});
