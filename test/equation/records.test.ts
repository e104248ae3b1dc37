// Equations as values: recognised across copies of the library, frozen, printed in four notations, written as records and read back.
import { inspect } from "node:util";
import { describe, expect, it } from "vitest";
import {
  BalancedEquation,
  balance,
  balancedEquationFromJSON,
  completeIonic,
  Equation,
  equationFromJSON,
  ionicEquationFromJSON,
  netIonic,
  overallEquation,
  overallEquationFromJSON,
  parseEquation,
} from "../../src/equation";
import { parseFormula } from "../../src/formula";
import { attempt } from "../../src/foundation/error";

const plain = (value: unknown) => JSON.parse(JSON.stringify(value)) as Record<string, unknown>;
const refusal = (ask: () => unknown) => {
  const outcome = attempt(ask);
  return outcome.ok ? `answered: ${String(outcome.value)}` : `${outcome.error.code}: ${outcome.error.problem}`;
};

const read = parseEquation("1/2 O2 + H2 <=> H2O");
const burning = balance("H2 + O2 -> H2O");
const net = netIonic("AgNO3 + NaOCN -> AgOCN + NaNO3");
const sum = overallEquation(["NH3 + O2 -> NO + H2O", "NO + O2 -> NO2", "NO2 + H2O -> HNO3 + NO"]);

describe("an equation as a value", () => {
  it("is known by its brand, its kinds too, and nothing else is one", () => {
    const copy = (brand: string) => ({ [Symbol.for(brand)]: true });
    expect([read instanceof Equation, copy("preparative.equation/1") instanceof Equation]).toEqual([true, true]);
    for (const one of [burning, net, sum, copy("preparative.balanced-equation/1")])
      expect(one instanceof BalancedEquation).toBe(true);
    for (const other of [null, undefined, "H2", {}, burning]) expect(other instanceof Equation).toBe(false);
    for (const other of [null, undefined, "H2", {}, read]) expect(other instanceof BalancedEquation).toBe(false);
    expect(burning instanceof (net.constructor as typeof BalancedEquation)).toBe(false);
    expect(net instanceof (net.constructor as typeof BalancedEquation)).toBe(true);
  });

  it("says in a console what it is", () => {
    expect([read, burning, net, sum].map((one) => inspect(one))).toEqual([
      "Equation { 1/2 O2 + H2 <=> H2O }",
      "BalancedEquation { 2 H2 + O2 -> 2 H2O }",
      "IonicEquation { Ag+ + OCN- -> AgOCN }",
      "OverallEquation { NH3 + 2 O2 -> H2O + HNO3 }",
    ]);
    expect(Object.prototype.toString.call(read)).toBe("[object Equation]");
    expect(Object.prototype.toString.call(burning)).toBe("[object BalancedEquation]");
  });

  it("is frozen, what it lists too", () => {
    for (const one of [read, burning, net, sum]) expect(Object.isFrozen(one)).toBe(true);
    for (const list of [read.given, net.spectators, net.assumptions, sum.steps, sum.multipliers, sum.intermediates])
      expect(Object.isFrozen(list)).toBe(true);
    for (const one of [net, sum]) expect(Object.isFrozen(one.formulas)).toBe(true);
  });

  it("equals another of the same species, places, coefficients and arrow", () => {
    const same = (one: string, other: string) => parseEquation(one).equals(parseEquation(other));
    expect(same("H2 + O2 -> H2O", "H2+O2->H2O")).toBe(true);
    expect(same("H2 + O2 -> H2O", "O2 + H2 -> H2O")).toBe(false);
    expect(same("H2 + O2 -> H2O", "2 H2 + O2 -> 2 H2O")).toBe(false);
    expect(same("H2 + O2 -> H2O", "H2 + O2 = H2O")).toBe(false);
    expect(burning.equals(balance("2 H2 + O2 -> 2 H2O"))).toBe(true);
    expect(burning.equals(balance("O2 + H2 -> H2O"))).toBe(false);
    expect(refusal(() => read.equals(burning as never))).toBe(
      "equation.not-an-equation: a balanced equation is wanted, not object",
    );
    expect(refusal(() => burning.equals("H2" as never))).toContain("equation.not-an-equation");
  });

  it("prints in four notations", () => {
    expect([read.toString(), read.toUnicode(), read.toHTML(), read.toLaTeX()]).toEqual([
      "1/2 O2 + H2 <=> H2O",
      "1/2 O₂ + H₂ ⇌ H₂O",
      "1/2 O<sub>2</sub> + H<sub>2</sub> &#8652; H<sub>2</sub>O",
      String.raw`1/2\,\mathrm{O_{2}} + \mathrm{H_{2}} \rightleftharpoons \mathrm{H_{2}O}`,
    ]);
    expect([burning.toUnicode(), burning.toHTML()]).toEqual([
      "2 H₂ + O₂ → 2 H₂O",
      "2 H<sub>2</sub> + O<sub>2</sub> &rarr; 2 H<sub>2</sub>O",
    ]);
    expect(burning.toLaTeX()).toBe(String.raw`2\,\mathrm{H_{2}} + \mathrm{O_{2}} \longrightarrow 2\,\mathrm{H_{2}O}`);
    expect(parseEquation("2 2PbCO3.Pb(OH)2 = 6 PbO + 4 CO2 + 2 H2O").toString()).toBe(
      "2 (2PbCO3.Pb(OH)2) = 6 PbO + 4 CO2 + 2 H2O",
    );
  });

  it("writes a first one only where the ones decide which reaction is meant", () => {
    // 4 Fe + 3 O2 -> 2 Fe2O3 and 4 FeO + O2 -> 2 Fe2O3 mix in any ratio; all ones are one of the mixtures: iron 2, oxygen 3
    const ones = balance("1 Fe + 1 FeO + 1 O2 -> 1 Fe2O3");
    expect(String(ones)).toBe("1 Fe + FeO + O2 -> Fe2O3");
    expect(balance(String(ones)).coefficients).toEqual([1n, 1n, 1n, 1n]);
    expect(String(balance("2 Fe + 4 FeO + 5/2 O2 -> 3 Fe2O3"))).toBe("4 Fe + 8 FeO + 5 O2 -> 6 Fe2O3");
    expect(String(balance("Fe + S -> FeS"))).toBe("Fe + S -> FeS");
  });

  it("tells coefficients of a species by sign, sum and any spelling", () => {
    expect(burning.stoichiometricNumber("H2")).toBe(-2n);
    expect(burning.stoichiometricNumber("OH2")).toBe(2n);
    expect(burning.stoichiometricNumber(parseFormula("H2O"))).toBe(2n);
    expect(burning.stoichiometricNumber("CO2")).toBeUndefined();
    expect(burning.stoichiometricNumber("nonsense")).toBeUndefined();
    const phases = balance("H2O(l) -> H2O(g)");
    expect([phases.stoichiometricNumber("H2O(l)"), phases.stoichiometricNumber("H2O(g)")]).toEqual([-1n, 1n]);
    expect(phases.stoichiometricNumber("H2O")).toBe(0n);
    expect(phases.stoichiometricNumber("H2O(s)")).toBeUndefined();
  });

  it("gives terms and table with every species on its side", () => {
    expect(burning.reactants.map(({ formula, coefficient }) => `${coefficient} ${formula}`)).toEqual(["2 H2", "1 O2"]);
    expect(burning.products.map(({ formula, coefficient }) => `${coefficient} ${formula}`)).toEqual(["2 H2O"]);
    const rows = balance("Zn + Fe^3+ -> Zn^2+ + Fe^2+").table();
    expect(
      rows.map(({ side, coefficient, stoichiometricNumber }) => `${side} ${coefficient} ${stoichiometricNumber}`),
    ).toEqual(["reactant 1 -1", "reactant 2 -2", "product 1 1", "product 2 2"]);
    expect(rows.map(({ brings }) => plain(brings))).toEqual([
      { Zn: "1" },
      { Fe: "2", charge: "6" },
      { Zn: "1", charge: "2" },
      { Fe: "2", charge: "4" },
    ]);
  });
});

describe("a record", () => {
  it("holds the equation, and remarks and coefficients only where there are any", () => {
    expect(plain(read)).toMatchObject({
      type: "equation",
      schema: 1,
      reactants: [{ formula: "O2", coefficient: "1/2" }, { formula: "H2" }],
      products: [{ formula: "H2O" }],
      arrow: "equilibrium",
    });
    expect("remarks" in plain(read)).toBe(false);
    const doubtful = parseEquation("H2+O2->H2O");
    expect(equationFromJSON(plain(doubtful) as never).remarks).toEqual(doubtful.remarks);
    expect(equationFromJSON(plain(read) as never).remarks).toEqual([]);
    expect(equationFromJSON(plain(parseEquation("H2 + O2 -> H2O")) as never).hasCoefficients).toBe(false);
    expect(equationFromJSON(plain(read) as never).hasCoefficients).toBe(true);
  });

  it.each([
    [{ reactants: "H2" }, "not the record of an equation: reactants and products are lists"],
    [{ products: undefined }, "not the record of an equation: reactants and products are lists"],
    [{ reactants: [] }, "reactants and products each have one formula at least"],
    [{ products: [] }, "reactants and products each have one formula at least"],
    [{ reactants: [{ formula: 5 }] }, "a term is { formula: text, coefficient: text or nothing }"],
    [{ reactants: [null] }, "a term is { formula: text, coefficient: text or nothing }"],
    [{ reactants: [{ formula: "H2", coefficient: 2 }] }, "a term is { formula: text, coefficient: text or nothing }"],
    [{ reactants: [{ formula: "H2", coefficient: "two" }] }, "'two' is not a coefficient"],
    [{ reactants: [{ formula: "H2", coefficient: "1/0" }] }, "'1/0' is not a coefficient"],
    [{ reactants: [{ formula: "H2", coefficient: "-1" }] }, "'-1' is not a coefficient"],
    [{ reactants: [{ formula: "H2", coefficient: "1.5" }] }, "'1.5' is not a coefficient"],
    [{ arrow: "backward" }, "not the record of an equation: arrow"],
    [{ remarks: "none" }, "remarks are texts"],
    [{ remarks: [5] }, "remarks are texts"],
    [{ type: "balanced equation" }, "not the record of an equation: type is not 'equation'"],
    [{ schema: 7 }, "written by a newer library"],
  ])("with %j is refused", (change, problem) => {
    expect(refusal(() => equationFromJSON({ ...plain(read), ...change } as never))).toContain(problem);
  });

  it("of a balanced equation is counted again", () => {
    expect(balancedEquationFromJSON(plain(burning) as never).equals(burning)).toBe(true);
    const fractions = balance("Fe + O2 -> Fe0.95O");
    expect(balancedEquationFromJSON(plain(fractions) as never).coefficients).toEqual([19n, 10n, 20n]);
    const changed = (reactant: string, product: string) =>
      refusal(() =>
        balancedEquationFromJSON({
          ...plain(burning),
          reactants: [
            { formula: "H2", coefficient: reactant },
            { formula: "O2", coefficient: "1" },
          ],
          products: [{ formula: "H2O", coefficient: product }],
        } as never),
      );
    expect(changed("2", "2")).toMatch(/^answered/);
    for (const [reactant, product] of [
      ["2", "3"],
      ["0", "0"],
      ["2/3", "2"],
    ] as const)
      expect(changed(reactant, product)).toContain("the record does not contain a balanced equation");
    const bare = plain(parseEquation("H2 + O2 -> H2O"));
    expect(refusal(() => balancedEquationFromJSON({ ...bare, type: "balanced equation" } as never))).toContain(
      "equation.wrong-coefficients",
    );
  });

  it("of an ionic equation keeps spectators and assumptions", () => {
    for (const one of [net, completeIonic("AgNO3 + NaCl -> AgCl + NaNO3")]) {
      const back = ionicEquationFromJSON(plain(one) as never);
      expect(back.equals(one)).toBe(true);
      expect(plain(back)).toEqual(plain(one));
    }
    expect(plain(net)).toMatchObject({
      type: "ionic equation",
      spectators: [
        { formula: "NO3-", coefficient: "1" },
        { formula: "Na+", coefficient: "1" },
      ],
      assumptions: ["no rule says whether AgOCN dissolves; taken as not dissolved"],
    });
  });

  it.each([
    [{ spectators: undefined }, "spectators and assumptions are lists"],
    [{ assumptions: "none" }, "spectators and assumptions are lists"],
    [{ assumptions: [5] }, "spectators and assumptions are lists"],
    [{ spectators: [null] }, "a spectator is { formula: text, coefficient: whole number as text }"],
    [{ spectators: [{ formula: "Na+", coefficient: 1 }] }, "a spectator is"],
    [{ spectators: [{ formula: "Na+", coefficient: "0" }] }, "a spectator is"],
    [{ spectators: [{ formula: 5, coefficient: "1" }] }, "a spectator is"],
  ])("of an ionic equation with %j is refused", (change, problem) => {
    expect(refusal(() => ionicEquationFromJSON({ ...plain(net), ...change } as never))).toContain(problem);
  });

  it("of an overall equation adds its steps up again", () => {
    const record = plain(sum);
    expect(record).toMatchObject({ type: "overall equation", multipliers: ["1", "3", "2"] });
    const back = overallEquationFromJSON(record as never);
    expect([String(back), back.multipliers, back.intermediates.map(String)]).toEqual([
      String(sum),
      sum.multipliers,
      ["NO", "NO2"],
    ]);
    expect(plain(back)).toEqual(record);
    const backwards = overallEquation(["C + O2 -> CO2", "CO + O2 -> CO2"], { multipliers: [2, -1] });
    expect(overallEquationFromJSON(plain(backwards) as never).multipliers).toEqual([2n, -1n]);
  });

  it.each([
    [{ multipliers: "1" }, "steps are records, multipliers whole numbers as text"],
    [{ multipliers: [1, 3, 2] }, "steps are records, multipliers whole numbers as text"],
    [{ multipliers: ["1.5", "3", "2"] }, "steps are records, multipliers whole numbers as text"],
    [{ steps: "none" }, "steps are records, multipliers whole numbers as text"],
    [{ multipliers: ["1", "1", "1"] }, "the steps of the record do not add up to its equation"],
  ])("of an overall equation with %j is refused", (change, problem) => {
    expect(refusal(() => overallEquationFromJSON({ ...plain(sum), ...change } as never))).toContain(problem);
  });
});
