import { describe, expect, it } from "vitest";
import {
  balance,
  balancedEquationFromJSON,
  EquationError,
  type ImpossibleDetails,
  parseEquation,
  reactionSpace,
  tryBalance,
  tryReactionSpace,
} from "../../src/equation";

describe("balancing", () => {
  it("passes the check of the house: basic zinc carbonate", () => {
    // wanted by the project: 5 + 5 + 3 -> 1 + 5 + 3
    expect(balance("ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2").coefficients).toEqual([
      5n,
      5n,
      3n,
      1n,
      5n,
      3n,
    ]);
  });

  it("checks given coefficients and puts them in lowest terms", () => {
    expect(balance("4 H2 + 2 O2 -> 4 H2O").coefficients).toEqual([2n, 1n, 2n]);
    expect(balance("H2 + 1/2 O2 -> H2O").coefficients).toEqual([2n, 1n, 2n]);
    const outcome = tryBalance("2 H2 + O2 -> H2O");
    expect(outcome).toMatchObject({
      ok: false,
      error: {
        code: "equation.wrong-coefficients",
        details: { imbalance: { H: "-2", O: "-1" }, balanced: "2 H2 + O2 -> 2 H2O" },
      },
    });
    expect(balance("2 H2 + O2 -> H2O", { coefficients: "ignore" }).toString()).toBe("2 H2 + O2 -> 2 H2O");
  });

  // permanganate and peroxide, and peroxide by itself, both balance: the coefficients are those of every textbook (memory)
  it("keeps the coefficients of a balanced equation that is balanced again", () => {
    const written = balance("2 KMnO4 + 5 H2O2 + 3 H2SO4 -> K2SO4 + 2 MnSO4 + 5 O2 + 8 H2O");
    const expected = [2n, 5n, 3n, 1n, 2n, 5n, 8n];
    expect(balance(written).coefficients).toEqual(expected);
    expect(balance(balancedEquationFromJSON(JSON.parse(JSON.stringify(written)))).coefficients).toEqual(expected);
    expect(tryBalance(written, { coefficients: "ignore" })).toMatchObject({
      ok: false,
      error: { code: "equation.underdetermined", hint: expect.stringContaining("coefficients into the equation") },
    });
    const conditions = [{ species: ["KMnO4", "H2O2"], ratio: "2:7" }] as const;
    expect(balance(written, { conditions }).coefficients).toEqual([2n, 7n, 3n, 1n, 2n, 6n, 10n]);
  });

  it("takes spectators out of a balanced equation with their share", () => {
    const written = balance("2 NaOH + H2SO4 + Na+ -> Na2SO4 + 2 H2O + Na+");
    expect(balance(written, { spectators: "cancel" }).toString()).toBe("2 NaOH + H2SO4 -> Na2SO4 + 2 H2O");
  });

  it("takes given coefficients that balance as the choice among several solutions", () => {
    const text = "2 KMnO4 + 5 H2O2 + 3 H2SO4 -> K2SO4 + 2 MnSO4 + 5 O2 + 8 H2O";
    expect(balance(text).toString()).toBe(text);
    expect(tryBalance(text, { coefficients: "ignore" }).ok).toBe(false);
  });

  it("accepts a fixed ratio that makes an equation of two dimensions unique", () => {
    const text = "FeS2 + HNO3 -> Fe(NO3)3 + H2SO4 + NO + NO2 + H2O";
    const balanced = balance(text, { conditions: [{ species: ["NO", "NO2"], ratio: "1:3" }] });
    const no = balanced.stoichiometricNumber("NO")!;
    expect(balanced.stoichiometricNumber("NO2")).toBe(3n * no);
    expect(parseEquation(balanced.toString()).given?.length).toBe(balanced.coefficients.length);
    // measured amounts, in one unit: 0.30 to 0.10
    const measured = balance(text, { conditions: [{ species: ["NO2", "NO"], ratio: "0.30 mol : 0.10 mol" }] });
    expect(measured.coefficients).toEqual(balanced.coefficients);
  });

  it.each([
    [[{ species: ["NO", "NO2"], ratio: "1:0" }], "equation.bad-ratio"],
    [[{ species: ["NO", "NO2"], ratio: "1 mol : 1 g" }], "equation.bad-ratio"],
    [[{ species: ["NO", "N2O"], ratio: "1:1" }], "equation.unknown-species"],
    [
      [
        { species: ["NO", "NO2"], ratio: "1:1" },
        { species: ["NO", "NO2"], ratio: "1:2" },
      ],
      "equation.impossible",
    ],
    [[{ species: ["FeS2", "Fe(NO3)3"], ratio: "1:1" }], "equation.underdetermined"],
  ] as const)("refuses conditions %j", (conditions, code) => {
    const text = "FeS2 + HNO3 -> Fe(NO3)3 + H2SO4 + NO + NO2 + H2O";
    expect(tryBalance(text, { conditions })).toMatchObject({ ok: false, error: { code } });
  });

  it("balances non-stoichiometric formulas, nuclides and electrons exactly", () => {
    expect(balance("Fe + O2 -> Fe0.95O").coefficients).toEqual([19n, 10n, 20n]);
    expect(balance("[13C]O2 + H2 -> [13C]H4 + H2O").coefficients).toEqual([1n, 4n, 1n, 2n]);
    expect(balance("D2O + H2O -> HDO").coefficients).toEqual([1n, 1n, 2n]);
    expect(balance("Zn -> Zn^2+ + e-").coefficients).toEqual([1n, 1n, 2n]);
  });

  it("keeps phases apart and conserves an element that only changes its phase", () => {
    expect(balance("H2O(l) <=> H2O(g)").toString()).toBe("H2O(l) <=> H2O(g)");
  });

  it("names species forced to zero in an equation of several dimensions too", () => {
    const outcome = tryBalance("C + O2 + Na -> CO + CO2 + Na2O + NaCl");
    if (outcome.ok) throw new Error("balanced");
    expect(outcome.error.code).toBe("equation.impossible");
    const details = outcome.error.details as unknown as ImpossibleDetails;
    expect(details.forcedZero).toEqual(["NaCl"]);
    expect(details.elementsOnOneSideOnly).toEqual(["Cl"]);
  });

  it("offers the other reading of digits before a sign when nothing balances", () => {
    const outcome = tryBalance("Fe3+ + SCN- -> [FeSCN]^2+");
    expect(!outcome.ok && outcome.error.hint).toContain('digitsBeforeSign: "charge" }: Fe^3+ + SCN- -> [FeSCN]^2+');
    // balances either way, so it is answered as read, with a remark
    expect(balance("Zn + Cu2+ -> Zn2+ + Cu").remarks).toEqual([
      "Cu2+: 2 was read as a subscript; a charge is written Cu^2+",
      "Zn2+: 2 was read as a subscript; a charge is written Zn^2+",
    ]);
  });

  it("answers at once for systems too large to explain in full", () => {
    const species = (from: number) => Array.from({ length: 150 }, (_, at) => `C${at + from}H${2 * at + 1}O`);
    const outcome = tryBalance({ reactants: species(1), products: species(200) });
    expect(outcome).toMatchObject({ ok: false, error: { code: "equation.underdetermined" } });
  });

  it("hands the same answer out as text, Unicode, HTML, LaTeX and JSON", () => {
    const balanced = balance("Cr2O7^2- + H+ + e- -> Cr^3+ + H2O");
    expect(balanced.toUnicode()).toBe("Cr₂O₇²⁻ + 14 H⁺ + 6 e⁻ → 2 Cr³⁺ + 7 H₂O");
    expect(balanced.toHTML()).toContain("14 H<sup>+</sup>");
    expect(balanced.toLaTeX()).toContain("\\longrightarrow");
    const back = balancedEquationFromJSON(JSON.parse(JSON.stringify(balanced)));
    expect(back.equals(balanced)).toBe(true);
    expect(back.coefficients).toEqual(balanced.coefficients);
    expect(balance(balanced.toString()).equals(balanced)).toBe(true);
    expect(balance(balanced).equals(balanced)).toBe(true);
  });

  it("lets nothing unbalanced in through JSON", () => {
    const record = JSON.parse(JSON.stringify(balance("H2 + O2 -> H2O")));
    record.products[0].coefficient = "3";
    expect(() => balancedEquationFromJSON(record)).toThrow(EquationError);
  });

  it("keeps its lists out of the caller's reach", () => {
    const balanced = balance("H2 + O2 -> H2O");
    balanced.coefficients[0] = 99n;
    balanced.reactants.length = 0;
    expect(balanced.toString()).toBe("2 H2 + O2 -> 2 H2O");
  });

  it("gives a stoichiometric table whose columns add up to zero", () => {
    const table = balance("KMnO4 + FeSO4 + H2SO4 -> K2SO4 + MnSO4 + Fe2(SO4)3 + H2O").table();
    const sums = new Map<string, number>();
    for (const { side, brings } of table) {
      for (const [name, count] of Object.entries(brings)) {
        sums.set(name, (sums.get(name) ?? 0) + (side === "reactant" ? -1 : 1) * Number(count.toFraction()));
      }
    }
    expect([...sums.values()].every((sum) => sum === 0)).toBe(true);
    expect(table.map(({ stoichiometricNumber }) => stoichiometricNumber)).toEqual([-2n, -10n, -8n, 1n, 2n, 5n, 8n]);
  });
});

describe("reaction space", () => {
  it("is empty where nothing balances and single where the answer is unique", () => {
    expect(reactionSpace("NaCl -> Na2O + Cl2")).toMatchObject({ dimension: 0, basis: [], elementary: [] });
    expect(reactionSpace("H2 + O2 -> H2O").elementary.map(String)).toEqual(["2 H2 + O2 -> 2 H2O"]);
  });

  it("makes every balanced choice a sum of elementary reactions", () => {
    // permanganate and peroxide, as printed in textbooks: 2, 5, 3 -> 1, 2, 5, 8 (memory)
    const space = reactionSpace("KMnO4 + H2O2 + H2SO4 -> K2SO4 + MnSO4 + O2 + H2O");
    const [permanganate, peroxide] = space.vectors;
    const sum = permanganate!.map((value, at) => value + 5n * peroxide![at]!);
    expect(sum.map((value) => value / 2n)).toEqual([2n, 5n, 3n, 1n, 2n, 5n, 8n]);
  });

  it("refuses past its limit by code", () => {
    const oxides = Array.from({ length: 12 }, (_, at) => `C${at + 1}O${at + 2}`);
    const more = Array.from({ length: 12 }, (_, at) => `C${at + 2}O${at + 1}`);
    const outcome = tryReactionSpace({ reactants: oxides, products: more }, { limit: 20 });
    expect(outcome).toMatchObject({ ok: false, error: { code: "equation.too-many-reactions" } });
  });
});
