// Equivalents from the reaction. The expected numbers are those of the older definition of the equivalent (electrons,
// protons, or charges of what precipitates, per mole): textbook and Gold Book knowledge, from memory.
import { attempt, balance, convertStrength, dilute, equivalentsIn, explain, stockSolution, titrate } from "preparative";
import { describe, expect, it, test } from "vitest";

const IRON = "KMnO4 + FeSO4 + H2SO4 -> K2SO4 + MnSO4 + Fe2(SO4)3 + H2O";
const SULFURIC = "H2SO4 + 2 NaOH -> Na2SO4 + 2 H2O";
const DICHROMATE = "K2Cr2O7 + 6 FeSO4 + 7 H2SO4 -> Cr2(SO4)3 + 3 Fe2(SO4)3 + K2SO4 + 7 H2O";
const IODINE = "I2 + Na2S2O3 -> NaI + Na2S4O6";

const KNOWN: readonly (readonly [formula: string, perMole: string, kind: string, reaction: string])[] = [
  ["H2SO4", "2", "acid-base", SULFURIC],
  ["H2SO4", "1", "acid-base", "H2SO4 + NaOH -> NaHSO4 + H2O"],
  ["NaOH", "1", "acid-base", SULFURIC],
  ["H3PO4", "1", "acid-base", "H3PO4 + NaOH -> NaH2PO4 + H2O"],
  ["H3PO4", "2", "acid-base", "H3PO4 + 2 NaOH -> Na2HPO4 + 2 H2O"],
  ["H3PO4", "3", "acid-base", "H3PO4 + 3 NaOH -> Na3PO4 + 3 H2O"],
  ["H3PO4", "3", "acid-base", "H3PO4 + Ca(OH)2 -> Ca3(PO4)2 + H2O"],
  ["H2C2O4·2H2O", "2", "acid-base", "H2C2O4 + 2 NaOH -> Na2C2O4 + 2 H2O"],
  ["Na2CO3", "1", "acid-base", "Na2CO3 + HCl -> NaHCO3 + NaCl"],
  ["Na2CO3", "2", "acid-base", "Na2CO3 + 2 HCl -> 2 NaCl + CO2 + H2O"],
  ["Na2B4O7·10H2O", "2", "acid-base", "Na2B4O7 + 2 HCl + 5 H2O -> 4 H3BO3 + 2 NaCl"],
  ["Ca(OH)2", "2", "acid-base", "Ca(OH)2 + 2 HCl -> CaCl2 + 2 H2O"],
  ["Ca(OH)2", "2", "acid-base", "Ca(OH)2 + CO2 -> CaCO3 + H2O"],
  ["CO2", "2", "acid-base", "Ca(OH)2 + CO2 -> CaCO3 + H2O"],
  ["CaCO3", "2", "acid-base", "CaCO3 + 2 HCl -> CaCl2 + CO2 + H2O"],
  ["MgO", "2", "acid-base", "MgO + 2 HCl -> MgCl2 + H2O"],
  ["NH3", "1", "acid-base", "NH3 + HCl -> NH4Cl"],
  ["CH3COOH", "1", "acid-base", "NaHCO3 + CH3COOH -> CH3COONa + CO2 + H2O"],
  ["NaHCO3", "1", "acid-base", "NaHCO3 + CH3COOH -> CH3COONa + CO2 + H2O"],
  ["C6H8O7", "3", "acid-base", "3 NaHCO3 + C6H8O7 -> Na3C6H5O7 + 3 CO2 + 3 H2O"],
  ["H2SO4", "2", "acid-base", "H+ + OH- -> H2O"],
  ["H2SO4", "2", "acid-base", IRON],
  ["Ba(OH)2·8H2O", "2", "acid-base", "Ba(OH)2 + H2SO4 -> BaSO4 + 2 H2O"],
  ["KMnO4", "5", "redox", IRON],
  ["FeSO4", "1", "redox", IRON],
  ["FeSO4·7H2O", "1", "redox", IRON],
  ["KMnO4", "5", "redox", "MnO4- + 8 H+ + 5 e- -> Mn^2+ + 4 H2O"],
  ["KMnO4", "3", "redox", "2 KMnO4 + 3 Na2SO3 + H2O -> 2 MnO2 + 3 Na2SO4 + 2 KOH"],
  ["KMnO4", "1", "redox", "2 KMnO4 + Na2SO3 + 2 KOH -> 2 K2MnO4 + Na2SO4 + H2O"],
  ["K2Cr2O7", "6", "redox", DICHROMATE],
  ["K2Cr2O7", "6", "redox", "Cr2O7^2- + 6 Fe^2+ + 14 H+ -> 2 Cr^3+ + 6 Fe^3+ + 7 H2O"],
  ["Na2S2O3·5H2O", "1", "redox", IODINE],
  ["I2", "2", "redox", IODINE],
  ["H2C2O4", "2", "redox", "KMnO4 + H2C2O4 + H2SO4 -> K2SO4 + MnSO4 + CO2 + H2O"],
  ["H2O2", "2", "redox", "2 KMnO4 + 5 H2O2 + 3 H2SO4 -> K2SO4 + 2 MnSO4 + 5 O2 + 8 H2O"],
  ["KIO3", "5", "redox", "KIO3 + 5 KI + 3 H2SO4 -> 3 I2 + 3 K2SO4 + 3 H2O"],
  ["CuSO4·5H2O", "1", "redox", "2 CuSO4 + 4 KI -> 2 CuI + I2 + 2 K2SO4"],
  ["AgNO3", "1", "precipitation", "AgNO3 + NaCl -> AgCl + NaNO3"],
  ["BaCl2·2H2O", "2", "precipitation", "BaCl2 + Na2SO4 -> BaSO4 + 2 NaCl"],
  ["H2SO4", "2", "precipitation", "BaCl2 + H2SO4 -> BaSO4 + 2 HCl"],
  ["FeCl3", "3", "precipitation", "FeCl3 + 3 NaOH -> Fe(OH)3 + 3 NaCl"],
  ["NaOH", "1", "precipitation", "FeCl3 + 3 NaOH -> Fe(OH)3 + 3 NaCl"],
];

describe("equivalents in a reaction", () => {
  it.each(KNOWN)("%s counts for %s (%s) in %s", (formula, perMole, kind, reaction) => {
    const found = equivalentsIn(reaction, formula);
    expect([found.perMole.toFraction(), found.kind]).toEqual([perMole, kind]);
  });

  // By definition one equivalent reacts with one: what one side brings, the other takes up.
  it.each([
    [SULFURIC, "H2SO4", "NaOH"],
    [IRON, "KMnO4", "FeSO4"],
    [DICHROMATE, "K2Cr2O7", "FeSO4"],
    [IODINE, "I2", "Na2S2O3"],
    ["Na2B4O7 + 2 HCl + 5 H2O -> 4 H3BO3 + 2 NaCl", "Na2B4O7", "HCl"],
    ["3 NaHCO3 + C6H8O7 -> Na3C6H5O7 + 3 CO2 + 3 H2O", "NaHCO3", "C6H8O7"],
    ["FeCl3 + 3 NaOH -> Fe(OH)3 + 3 NaCl", "FeCl3", "NaOH"],
    ["5 ZnSO4 + 5 Na2CO3 + 3 H2O -> Zn5(CO3)2(OH)6 + 5 Na2SO4 + 3 CO2", "ZnSO4", "Na2CO3"],
  ])("are equal on both sides of %s", (reaction, one, other) => {
    const balanced = balance(reaction);
    const [a, b] = [one, other].map((formula) =>
      equivalentsIn(balanced, formula).perMole.mul(-balanced.stoichiometricNumber(formula)!),
    );
    expect(a!.toFraction()).toBe(b!.toFraction());
  });

  it("says what was counted", () => {
    expect(equivalentsIn(IRON, "KMnO4").counted).toBe("5 electrons taken (Mn +7 to +2)");
    expect(equivalentsIn("H+ + OH- -> H2O", "Ca(OH)2").counted).toBe("1 proton taken by each of its 2 OH-");
    expect(equivalentsIn("AgNO3 + NaCl -> AgCl + NaNO3", "NaCl").counted).toBe("1 charge of its anion falling");
  });
});

describe("doubtful equivalents", () => {
  it.each([
    ["HNO3", "3 Cu + 8 HNO3 -> 3 Cu(NO3)2 + 2 NO + 4 H2O", ["3 electrons taken (N +5 to +2)", "1 proton given"]],
    ["HNO3", "3 Cu + 8 H+ + 2 NO3- -> 3 Cu^2+ + 2 NO + 4 H2O", ["1 proton given", "3 electrons taken"]],
    ["HCl", "KMnO4 + HCl -> KCl + MnCl2 + Cl2 + H2O", ["1 electron given (Cl -1 to 0)", "1 proton given"]],
    ["KI", "2 CuSO4 + 4 KI -> 2 CuI + I2 + 2 K2SO4", ["1 electron given (I -1 to 0)", "1/2 electrons on average"]],
    ["H2O2", "2 H2O2 -> 2 H2O + O2", ["2 electrons given", "2 electrons taken"]],
    ["NaHCO3", "NaHCO3 + Ca(OH)2 -> CaCO3 + NaOH + H2O", ["1 proton given", "2 charges of its anion falling"]],
  ])("%s in %s is refused with both readings", (formula, reaction, readings) => {
    const outcome = attempt(() => equivalentsIn(reaction, formula));
    if (outcome.ok) throw new Error("not refused");
    expect(outcome.error.code).toBe("amount.several-readings");
    const named = outcome.error.details["readings"] as string[];
    expect(named.map((text, at) => text.startsWith(readings[at]!))).toEqual([true, true]);
    expect(readings.length, "rows to test").toBeGreaterThan(0);
    for (const reading of readings) expect(outcome.error.hint).toContain(reading);
  });

  it.each([
    ["CuSO4", "CuSO4 + 4 NH3 -> [Cu(NH3)4]SO4", "amount.no-equivalents"],
    ["KCN", "AgNO3 + 2 KCN -> K[Ag(CN)2] + KNO3", "amount.no-equivalents"],
    ["NaCl", "NaCl + KNO3 -> NaNO3 + KCl", "amount.no-equivalents"],
    ["K4[Fe(CN)6]", "3 ZnSO4 + 2 K4[Fe(CN)6] -> K2Zn3[Fe(CN)6]2 + 3 K2SO4", "amount.no-equivalents"],
    ["H2O", SULFURIC, "amount.not-in-equation"],
    ["Na2SO4", SULFURIC, "amount.not-in-equation"],
    ["H2SO4", "H2SO4 + NaOH", "equation.no-arrow"],
  ])("%s in %s is refused", (formula, reaction, code) => {
    const outcome = attempt(() => equivalentsIn(reaction, formula));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
    expect(outcome.ok ? "" : outcome.error.hint).toMatch(/equivalents|reactants|->/);
  });
});

describe("normality by its reaction", () => {
  test("needs no equivalents where the reaction is an equation, and says what it counted", () => {
    const c = convertStrength("0.1 N", { of: "KMnO4", to: "mol/L", reaction: IRON });
    expect(c.in("mol/L").toString()).toBe("0.02");
    const { assumptions, given, sources } = explain(c);
    expect(assumptions).toEqual([`equivalents counted for: ${balance(IRON)}`]);
    expect(given.map(({ label }) => label)).toContain("equivalents in one mole: 5 electrons taken (Mn +7 to +2)");
    expect(sources.filter((source) => source.endsWith("(from memory)"))).toHaveLength(1);
  });

  test("takes the sign = as an equation where it reads as one, and words as words", () => {
    const by = (reaction: string) => attempt(() => convertStrength("6 N", { of: "H2SO4", to: "mol/L", reaction }));
    const equal = by("H2SO4 + 2 NaOH = Na2SO4 + 2 H2O");
    expect(equal.ok && equal.value.in("mol/L").toString()).toBe("3");
    const code = (reaction: string) => {
      const outcome = by(reaction);
      return outcome.ok ? "" : outcome.error.code;
    };
    expect(code("both protons")).toBe("amount.missing-equivalents");
    expect(code("z = 2")).toBe("amount.missing-equivalents");
    expect(code("H2SO4 ->")).toBe("equation.empty-term");
    expect(code(IODINE)).toBe("amount.not-in-equation");
  });

  test("keeps equivalents that are stated beside the equation", () => {
    const c = convertStrength("6 N", { of: "H2SO4", to: "mol/L", equivalents: 1, reaction: balance(SULFURIC) });
    expect(c.in("mol/L").toString()).toBe("6");
    expect(explain(c).assumptions).toEqual([`equivalents counted for: ${SULFURIC}`]);
  });

  test("holds for stock solutions, dilutions and titrations", () => {
    // 0.1 N borax against acid is 0.05 mol/L: 19.07 g in a litre (textbook figure, from memory)
    const reaction = "Na2B4O7 + 2 HCl + 5 H2O -> 4 H3BO3 + 2 NaCl";
    const borax = stockSolution({ of: "Na2B4O7·10H2O", strength: "0.1 N", volume: "1 L", reaction });
    expect(borax.mass.format({ decimals: 2, uncertainty: "none" })).toBe("19.07 g");
    const acid = { from: "6 N", to: "1 mol/L", makeUpTo: "300 mL", of: "H2SO4", reaction: SULFURIC } as const;
    // 2 N against 6 N is one part in three: 1 mol/L of sulfuric acid is 2 N
    expect(dilute(acid).answer.in("mL").toString()).toBe("100");
    const iron = titrate({
      titrant: { strength: "0.1 N", of: "KMnO4" },
      titre: "20 mL",
      analyte: "FeSO4",
      equation: IRON,
      sample: "25 mL",
    });
    // N V = N V, and iron(II) counts for one
    expect(iron.concentration?.in("mol/L").toString()).toBe("0.08");
  });
});
