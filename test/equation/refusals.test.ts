// What is wrong, where, and what to write instead: place, words, hint and details of the refusals of this layer. What is left
// of an equation, and what would mend it, is worked out by hand: atoms counted on both sides.
import { describe, expect, it } from "vitest";
import {
  balance,
  halfReactions,
  imbalance,
  isBalanced,
  netIonic,
  overallEquation,
  parseEquation,
  reactionSpace,
  redoxAnalysis,
  workingOfEquation,
  workingOfHalfReactions,
} from "../../src/equation";
import { attempt } from "../../src/foundation/error";

const refusal = (ask: () => unknown) => {
  const outcome = attempt(ask);
  if (outcome.ok) throw new Error(`answered: ${String(outcome.value)}`);
  const { code, position, message, hint, details } = outcome.error;
  return { code, position, message: message.split("\n")[0]!, hint, details };
};

describe("an equation that cannot be read", () => {
  it.each([
    ["H2 + O2", "no-arrow", 7, "A + B -> C + D; also =>, =, →, ⇌, <=>"],
    ["", "no-arrow", 0, "A + B -> C + D; also =>, =, →, ⇌, <=>"],
    ["H2 + O2 > H2O", "no-arrow", 8, "> is half an arrow; write -> between reactants and products"],
    ["H2 + O2 - H2O", "no-arrow", 8, "- is half an arrow; write -> between reactants and products"],
    ["H2 + O2 -- H2O", "no-arrow", 8, "-- is half an arrow; write -> between reactants and products"],
    ["-> H2O", "empty-term", 0, "each plus and each arrow stands between two formulas"],
    ["H2 + -> H2O", "empty-term", 5, "each plus and each arrow stands between two formulas"],
    ["H2 + O2 ->", "empty-term", 10, "each plus and each arrow stands between two formulas"],
    ["H2 -> O2 -> C", "several-arrows", 9, "give the steps one by one; overallEquation adds them up"],
    ["H2O <- H2", "backward-arrow", 4, "write the reactants on the left: A + B -> C"],
    ["H2O ← H2 + O2", "backward-arrow", 4, "write the reactants on the left: A + B -> C"],
    ["2 H2+ O2 -> 2 H2O", "doubtful-plus", 4, "white space on both sides separates (H2 + O2)"],
    ["0 H2 + O2 -> H2O", "bad-coefficient", 0, "leave out a species that takes no part"],
    ["O2 + 0.0 H2 -> H2", "bad-coefficient", 5, "leave out a species that takes no part"],
    ["1/0 H2 + O2 -> H2O", "bad-coefficient", 0, "write a fraction such as 1/2"],
    ["O2 + 1234567890123456 H2 -> H2O", "bad-coefficient", 5, "up to 15 digits are read"],
    ["1/2½ O2 -> O2", "bad-coefficient", 0, "write 3/2 or 1½"],
    ["1.5½ O2 -> O2", "bad-coefficient", 0, "write 3/2 or 1½"],
  ])("%j: %s at %d", (text, code, position, hint) => {
    const error = refusal(() => parseEquation(text));
    expect([error.code, error.position]).toEqual([`equation.${code}`, position]);
    expect(error.hint).toContain(hint);
  });

  it("takes a coefficient of fifteen digits", () => {
    expect(parseEquation("123456789012345 H2 + O2 -> H2O").reactants[0]!.coefficient?.toFraction()).toBe(
      "123456789012345",
    );
  });

  it.each([
    [{ reactants: "H2", products: ["H2"] }, "equation.not-an-equation"],
    [{ reactants: ["H2"] }, "equation.not-an-equation"],
    [null, "equation.not-an-equation"],
    [7, "equation.not-an-equation"],
    [{ reactants: ["H2"], products: [] }, "equation.empty-term"],
    [{ reactants: [], products: ["H2"] }, "equation.empty-term"],
    [{ reactants: ["H2"], products: ["H2"], catalyst: "Pt" }, "equation.unknown-option"],
    [{ reactants: ["H2"], products: [7] }, "equation.not-a-formula"],
    [{ reactants: ["H2"], products: [{ text: "H2" }] }, "equation.not-a-formula"],
    [{ reactants: new Array(300).fill("O2"), products: new Array(101).fill("O3") }, "equation.too-many-species"],
  ])("lists %j: %s", (lists, code) => {
    expect(refusal(() => parseEquation(lists as never)).code).toBe(code);
  });

  it("takes four hundred species in lists", () => {
    const lists = { reactants: new Array(300).fill("O2"), products: new Array(100).fill("O3") };
    expect(parseEquation(lists).formulas).toHaveLength(400);
  });
});

describe("an equation that cannot be balanced", () => {
  const details = {
    dimension: 0,
    elementsOnOneSideOnly: [],
    balancesThatBlock: [],
    forcedZero: [],
    onTheWrongSide: [],
    mending: [],
  };

  it.each([
    [
      "NaCl -> Na2O + Cl2",
      "O on one side only",
      "with O2: 4 NaCl + O2 -> 2 Na2O + 2 Cl2",
      {
        elementsOnOneSideOnly: ["O"],
        balancesThatBlock: ["O"],
        mending: [{ add: ["O2"], equation: "4 NaCl + O2 -> 2 Na2O + 2 Cl2" }],
      },
    ],
    [
      "P4O10 -> H3PO4",
      "H on one side only",
      "with H2O: P4O10 + 6 H2O -> 4 H3PO4",
      { elementsOnOneSideOnly: ["H"], mending: [{ add: ["H2O"], equation: "P4O10 + 6 H2O -> 4 H3PO4" }] },
    ],
    [
      "Na2CO3 -> Na2O",
      "C on one side only",
      "with CO2: Na2CO3 -> Na2O + CO2",
      { elementsOnOneSideOnly: ["C"], mending: [{ add: ["CO2"], equation: "Na2CO3 -> Na2O + CO2" }] },
    ],
    [
      "Ca(OH)2 -> CaCO3",
      "C, H on one side only",
      "with H2O and CO2: Ca(OH)2 + CO2 -> CaCO3 + H2O",
      {
        elementsOnOneSideOnly: ["C", "H"],
        mending: [{ add: ["H2O", "CO2"], equation: "Ca(OH)2 + CO2 -> CaCO3 + H2O" }],
      },
    ],
    [
      "NaOH -> Na + H2O",
      "the balance of H or of O cannot be met",
      "with O2: 4 NaOH -> 4 Na + 2 H2O + O2",
      {
        balancesThatBlock: ["H", "O"],
        mending: [{ add: ["O2"], equation: "4 NaOH -> 4 Na + 2 H2O + O2" }],
      },
    ],
    [
      "MnO4- + Fe^2+ -> Mn^2+ + Fe^3+",
      "O on one side only",
      "with H2O and H+: MnO4- + 5 Fe^2+ + 8 H+ -> Mn^2+ + 5 Fe^3+ + 4 H2O; " +
        "with H2O and OH-: MnO4- + 5 Fe^2+ + 4 H2O -> Mn^2+ + 5 Fe^3+ + 8 OH-",
      {
        elementsOnOneSideOnly: ["O"],
        mending: [
          { add: ["H2O", "H+"], equation: "MnO4- + 5 Fe^2+ + 8 H+ -> Mn^2+ + 5 Fe^3+ + 4 H2O" },
          { add: ["H2O", "OH-"], equation: "MnO4- + 5 Fe^2+ + 4 H2O -> Mn^2+ + 5 Fe^3+ + 8 OH-" },
        ],
      },
    ],
    [
      "H2 + O2 -> H2O2 + N2",
      "N on one side only; N2 could only have the coefficient zero",
      "without N2: H2 + O2 -> H2O2",
      {
        dimension: 1,
        elementsOnOneSideOnly: ["N"],
        balancesThatBlock: ["N"],
        forcedZero: ["N2"],
        withoutForcedZero: "H2 + O2 -> H2O2",
      },
    ],
    [
      "H2O + H2 -> O2",
      "H on one side only; H2 on the wrong side",
      "after moving: 2 H2O -> O2 + 2 H2",
      {
        dimension: 1,
        elementsOnOneSideOnly: ["H"],
        balancesThatBlock: ["H"],
        onTheWrongSide: ["H2"],
        moved: "2 H2O -> O2 + 2 H2",
      },
    ],
    [
      "CO2 + H2O -> CO + H2",
      "H2O, H2 on the wrong side",
      "after moving: CO2 + H2 -> CO + H2O",
      {
        dimension: 1,
        balancesThatBlock: ["C", "O"],
        onTheWrongSide: ["H2O", "H2"],
        moved: "CO2 + H2 -> CO + H2O",
      },
    ],
    // the smaller part of a relation is moved: H2 alone, wherever it stands and whichever sign its part has
    [
      "H2 + H2O -> O2",
      "H on one side only; H2 on the wrong side",
      "after moving: 2 H2O -> O2 + 2 H2",
      {
        dimension: 1,
        elementsOnOneSideOnly: ["H"],
        balancesThatBlock: ["H"],
        onTheWrongSide: ["H2"],
        moved: "2 H2O -> O2 + 2 H2",
      },
    ],
    [
      "O2 -> H2O + H2",
      "H on one side only; H2 on the wrong side",
      "after moving: O2 + 2 H2 -> 2 H2O",
      {
        dimension: 1,
        elementsOnOneSideOnly: ["H"],
        balancesThatBlock: ["H"],
        onTheWrongSide: ["H2"],
        moved: "O2 + 2 H2 -> 2 H2O",
      },
    ],
    // of two equal parts that without the first species
    [
      "CO2 + H2O -> H2 + CO",
      "H2O, H2 on the wrong side",
      "after moving: CO2 + H2 -> CO + H2O",
      {
        dimension: 1,
        balancesThatBlock: ["C", "O"],
        onTheWrongSide: ["H2O", "H2"],
        moved: "CO2 + H2 -> CO + H2O",
      },
    ],
    [
      "Fe^3+ -> Fe^2+",
      "the balance of Fe or of charge cannot be met",
      "with e-: Fe^3+ + e- -> Fe^2+",
      { balancesThatBlock: ["Fe", "charge"], mending: [{ add: ["e-"], equation: "Fe^3+ + e- -> Fe^2+" }] },
    ],
    [
      "MnO4- + H+ -> Mn^2+ + H2O",
      "the balance of H or of Mn or of O or of charge cannot be met",
      "with O2: 4 MnO4- + 12 H+ -> 4 Mn^2+ + 6 H2O + 5 O2; with e-: MnO4- + 8 H+ + 5 e- -> Mn^2+ + 4 H2O",
      {
        balancesThatBlock: ["H", "Mn", "O", "charge"],
        mending: [
          { add: ["O2"], equation: "4 MnO4- + 12 H+ -> 4 Mn^2+ + 6 H2O + 5 O2" },
          { add: ["e-"], equation: "MnO4- + 8 H+ + 5 e- -> Mn^2+ + 4 H2O" },
        ],
      },
    ],
    ["H2 -> He", "H, He on one side only", undefined, { elementsOnOneSideOnly: ["H", "He"] }],
    ["Fe + H2O -> Fe3O4", "H on one side only", undefined, { elementsOnOneSideOnly: ["H"], balancesThatBlock: ["H"] }],
  ])("%s: %s", (text, reason, hint, special) => {
    const error = refusal(() => balance(text));
    expect(error.code).toBe("equation.impossible");
    expect(error.message).toBe(`no coefficients balance ${text}: ${reason}`);
    expect(error.hint).toBe(hint);
    expect(error.details).toEqual({ equation: text, ...details, ...special });
  });

  it("does not put acid beside base to mend it", () => {
    const adds = (text: string) =>
      (refusal(() => balance(text)).details as { mending: { add: string[] }[] }).mending.map(({ add }) => add.join());
    expect(adds("MnO4- + Fe^2+ + H+ -> Mn^2+ + Fe^3+")).toEqual(["H2O"]);
    expect(adds("MnO4- + SO3^2- + OH- -> MnO2 + SO4^2-")).not.toContain("H+");
    expect(adds("MnO4- + Fe^2+ + H3O+ -> Mn^2+ + Fe^3+").some((add) => add.includes("OH-"))).toBe(false);
  });

  it("lists what an equation of several reactions mixes", () => {
    const error = refusal(() => balance("KClO3 -> KCl + KClO4 + O2"));
    expect(error.message).toBe(
      "KClO3 -> KCl + KClO4 + O2 has 2 independent solutions, so no single set of coefficients",
    );
    const elementary = ["4 KClO3 -> KCl + 3 KClO4", "2 KClO3 -> 2 KCl + 3 O2"];
    expect(error.details).toEqual({ equation: "KClO3 -> KCl + KClO4 + O2", dimension: 2, elementary });
    expect(error.hint).toContain(`it mixes ${elementary.join("; ")}. Balance one of these`);
  });

  it("names the six first of many reactions, and how many more there are", () => {
    const error = refusal(() => balance("C + O2 + H2 + N2 -> CO + CO2 + CH4 + C2H6 + NH3 + NO + NO2 + N2O + H2O"));
    const { elementary } = error.details as { elementary: string[] };
    expect(elementary.length).toBeGreaterThan(6);
    expect(error.hint).toContain(
      `it mixes ${elementary.slice(0, 6).join("; ")}; ... ${elementary.length - 6} more. Balance one of these`,
    );
  });

  it("offers to take spectators out", () => {
    const error = refusal(() => balance("Cu + HNO3 + H2O -> Cu(NO3)2 + NO + H2O"));
    expect(error.hint).toContain('H2O on both sides; take spectators out with { spectators: "cancel" }');
    expect(error.details).toMatchObject({ spectators: ["H2O"] });
  });

  it.each([
    ["2 H2 + O2 -> H2O", "H -2, O -1", { H: "-2", O: "-1" }, "2 H2 + O2 -> 2 H2O"],
    ["2 Na + Cl2 -> Na2O", "Cl -2, O +1", { Cl: "-2", O: "1" }, undefined],
    ["MnO4- + 8 H+ -> Mn^2+ + 4 H2O", "charge -5", { charge: "-5" }, undefined],
    ["1/2 O2 + H2O -> H2O", "O -1", { O: "-1" }, undefined],
  ])("%s as written: right minus left %s", (text, list, imbalance, balanced) => {
    const error = refusal(() => balance(text));
    expect(error.code).toBe("equation.wrong-coefficients");
    expect(error.message).toBe(`the given coefficients do not balance (right minus left: ${list})`);
    expect(error.details).toEqual({ equation: text, imbalance, ...(balanced === undefined ? {} : { balanced }) });
    expect(error.hint).toBe(
      balanced === undefined
        ? 'pass { coefficients: "ignore" } to see why it cannot be balanced'
        : `${balanced}; { coefficients: "ignore" } gives this`,
    );
  });

  // counted on both sides; the atomic numbers 8, 11, 17 and 13, 19, 25, 26 are in another order than the letters
  it.each([
    ["2 Na + O2 -> Cl2", ["Cl +2", "Na -2", "O -2"]],
    ["MnO4- + 8 H+ + Fe -> 2 Mn^2+ + 4 H2O + K", ["Fe -1", "K +1", "Mn +1", "charge -3"]],
    ["2 Zn + 3 Cl2 + Al -> ZnCl2", ["Al -1", "Cl -4", "Zn -1"]],
    ["2 Fe^3+ + Zn -> Fe^2+ + Al", ["Al +1", "Fe -1", "Zn -1", "charge -4"]],
    ["Zn^2+ -> Al", ["Al +1", "Zn -1", "charge -2"]],
  ])("%s is off by %j, elements by the alphabet and the charge last", (text, list) => {
    const off = Object.entries(imbalance(text)).map(([name, n]) => `${name} ${n.s > 0n ? "+" : ""}${n.toFraction()}`);
    expect(off).toEqual(list);
    expect(isBalanced(text)).toBe(false);
    expect(refusal(() => balance(`1 ${text}`.replace("1 2 ", "2 "))).message).toContain(list.join(", "));
  });

  it("finds nothing off in what balances, as written or balanced", () => {
    expect(imbalance("2 H2 + O2 -> 2 H2O")).toEqual({});
    expect(imbalance(balance("H2 + O2 -> H2O"))).toEqual({});
    expect(isBalanced("2 H2 + O2 -> 2 H2O")).toBe(true);
    expect(isBalanced(balance("H2 + O2 -> H2O"))).toBe(true);
  });

  const burning = "C + O2 -> CO + CO2";
  it.each([
    [{ species: ["CO", "CO2"], ratio: "1:0" }, "equation.bad-ratio", "a ratio with zero leaves a species out"],
    [{ species: ["CO", "CO2"], ratio: "0.0 : 1" }, "equation.bad-ratio", "a ratio with zero leaves a species out"],
    [{ species: ["CO", "CO2"], ratio: "one to two" }, "equation.bad-ratio", "is not a ratio of two numbers"],
    [{ species: ["CO", "CO2"], ratio: "1 g : 2 mol" }, "equation.bad-ratio", "is not a ratio of two numbers"],
    [{ species: ["CO", "CO2"], ratio: 2 }, "equation.bad-ratio", "is not a ratio of two numbers"],
    [{ species: ["CO"], ratio: "1:2" }, "equation.bad-ratio", "a condition names two species"],
    [{ species: "CO", ratio: "1:2" }, "equation.bad-ratio", "a condition names two species"],
    [{ species: ["CO", "CH4"], ratio: "1:2" }, "equation.unknown-species", "CH4 is not in the equation"],
    [{ species: ["CO", 4], ratio: "1:2" }, "equation.not-a-formula", "a species is a formula, or its text"],
  ])("refuses the condition %j", (condition, code, message) => {
    const error = refusal(() => balance(burning, { conditions: [condition as never] }));
    expect(error.code).toBe(code);
    expect(error.message).toContain(message);
  });

  it("refuses a condition on a species that stands on both sides, or that the given coefficients break", () => {
    const twice = refusal(() =>
      balance("Cu + HNO3 + H2O -> Cu(NO3)2 + NO + H2O", {
        conditions: [{ species: ["H2O", "NO"], ratio: "1:1" }],
      }),
    );
    expect(twice.code).toBe("equation.ambiguous-species");
    expect(twice.details).toMatchObject({ species: "H2O" });
    const conditions = [{ species: ["CO", "CO2"], ratio: "1:2" }] as const;
    const against = refusal(() => balance("3 C + 2 O2 -> 2 CO + CO2", { conditions }));
    expect(against.message).toBe("the given coefficients contradict the conditions");
    expect(balance("6 C + 5 O2 -> 2 CO + 4 CO2", { conditions }).coefficients).toEqual([6n, 5n, 2n, 4n]);
  });

  it("refuses a limit that is none", () => {
    for (const limit of [0, -1, 1.5, Number.NaN])
      expect(refusal(() => reactionSpace(burning, { limit })).code, String(limit)).toBe("equation.bad-option");
    expect(reactionSpace(burning, { limit: 2 }).elementary).toHaveLength(2);
    const error = refusal(() => reactionSpace(burning, { limit: 1 }));
    expect([error.code, error.details["limit"], error.details["dimension"]]).toEqual([
      "equation.too-many-reactions",
      1,
      2,
    ]);
  });
});

describe("what cannot be split, added or worked", () => {
  it.each([
    ["HCl + NaOH -> NaCl + H2O", "not-redox", "no element changes its oxidation state in"],
    ["Na -> Na+", "not-redox", "nothing pairs with what changes its oxidation state in Na -> Na+"],
    ["Cu^2+ + e- -> Cu", "half-reaction-given", "Cu^2+ + e- -> Cu is a half-reaction already"],
    // ozone gives an oxygen to water and one to iodide: O2 is in neither half
    ["O3 + I- -> O2 + I2", "halves-not-unique", "the half-reactions of O3 + I- -> O2 + I2 are not settled"],
  ])("halves of %s: %s", (text, code, message) => {
    const error = refusal(() => halfReactions(text));
    expect(error.code).toBe(`equation.${code}`);
    expect(error.message).toContain(message);
    expect(error.details).toHaveProperty("equation");
  });

  it("a medium that is none", () => {
    const error = refusal(() => halfReactions("Zn + Cu^2+ -> Zn^2+ + Cu", { medium: "sour" as never }));
    expect([error.code, error.message]).toEqual(["equation.bad-option", 'a medium is "acid", "base" or "neutral"']);
  });

  const nitric = ["NH3 + O2 -> NO + H2O", "NO + O2 -> NO2", "NO2 + H2O -> HNO3 + NO"];
  it.each([
    [nitric, { intermediates: ["SO2"] }, "unknown-species", "SO2 is in none of the steps", { species: "SO2" }],
    [
      nitric,
      { multipliers: [1] },
      "steps-do-not-chain",
      "there is one multiplier for each step",
      { steps: 3, multipliers: 1 },
    ],
    [nitric, { multipliers: [1.5, 1, 1] }, "bad-option", "a multiplier is a whole number, not 1.5", {}],
    [[], {}, "steps-do-not-chain", "no steps were given", {}],
    ["H2", {}, "steps-do-not-chain", "steps are a list of equations", {}],
    [["H2 + O2 -> H2O", "H2O -> H2 + O2"], {}, "nothing-left", "the steps cancel each other completely", {}],
    [
      ["H2 + O2 -> H2O", "Na + Cl2 -> NaCl"],
      {},
      "steps-do-not-chain",
      "no single set of multipliers cancels the intermediates",
      { steps: ["2 H2 + O2 -> 2 H2O", "2 Na + Cl2 -> 2 NaCl"], intermediates: [] },
    ],
  ])("steps %j with %j: %s", (steps, options, code, message, details) => {
    const error = refusal(() => overallEquation(steps as string[], options));
    expect([error.code, error.message]).toEqual([`equation.${code}`, message]);
    expect(error.details).toEqual(details);
  });

  it("ions that all stand on both sides", () => {
    const error = refusal(() => netIonic("NaCl + KNO3 -> NaNO3 + KCl"));
    expect(error.message).toBe("nothing reacts in NaCl + KNO3 -> NaNO3 + KCl: every ion is on both sides");
    expect(error.details).toEqual({
      equation: "NaCl + KNO3 -> NaNO3 + KCl",
      spectators: ["Na+", "Cl-", "K+", "NO3-"],
    });
    expect(error.hint).toContain("write its phase: AgCl(s), CO2(g)");
  });

  it("a working of what was not balanced, or not split", () => {
    expect(refusal(() => workingOfEquation("H2" as never)).message).toBe("a balanced equation is wanted, not 'H2'");
    for (const value of [{}, null, "H2", { overall: {} }, { overall: {}, oxidations: [] }])
      expect(refusal(() => workingOfHalfReactions(value as never)).code).toBe("equation.not-an-equation");
    expect(redoxAnalysis("HCl + NaOH -> NaCl + H2O").isRedox).toBe(false);
  });
});
