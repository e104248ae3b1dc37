import { readFile } from "node:fs/promises";
import {
  balance,
  crystalWater,
  equivalenceOptions,
  equivalentsIn,
  evaluateRun,
  fromJSON,
  halfReactions,
  hydrationNumber,
  type IonicEquation,
  netIonic,
  type OverallEquation,
  overallEquation,
  oxideEquivalents,
  parseEquation,
  parseFormula,
  percentComposition,
  planPreparation,
  planSequence,
  quantity,
  reactionAmounts,
  reactionEnthalpy,
  reactionSpace,
  redoxAnalysis,
  solubilityOf,
  substance,
  tryFromJSON,
  tryParseFormula,
} from "preparative";
import { describe, expect, it } from "vitest";
import { curvesWithSolids } from "../tools/solids";

const plan = planPreparation({
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials: [
    { name: "de-icer", form: "CaCl2·2H2O" },
    { name: "soda", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { product: "20 g" },
});

describe("records", () => {
  it.each([
    ["a quantity", quantity("12.5(2) g", { label: "jar" })],
    ["a formula", parseFormula("[Cu(NH3)4]SO4·H2O")],
    ["an equation", parseEquation("1/2 O2 + H2 -> H2O")],
    ["a balanced equation", balance("KMnO4 + HCl -> KCl + MnCl2 + Cl2 + H2O")],
    ["a plan", plan],
    ["a run", evaluateRun(plan, { weighed: { soda: "21.0 g" }, dried: "19.0 g" })],
  ])("bring %s back as it was", (_, value) => {
    const text = JSON.stringify(value);
    const back = fromJSON(JSON.parse(text));
    expect(JSON.stringify(back)).toBe(text);
    expect(String(back)).toBe(String(value));
    expect(structuredClone(JSON.parse(text))).toEqual(JSON.parse(text));
  });

  it.each([[null], [undefined], [5], ["text"], [{}], [[]], [{ type: "poem" }]])("refuse %j by code", (data) => {
    const outcome = tryFromJSON(data);
    expect(outcome.ok ? "" : outcome.error.code).toBe("json.unknown-record");
  });
});

describe("the release in a record", () => {
  it("is that of the package", async () => {
    const { version } = JSON.parse(await readFile(new URL("../../package.json", import.meta.url), "utf8"));
    expect(quantity("1 g").toJSON().library).toBe(version);
  });
});

const chain = planSequence({
  steps: [
    {
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O" },
        { name: "soda", form: "Na2CO3" },
      ],
    },
    { equation: "CaCO3 -> CaO + CO2", product: "CaO", materials: [{ name: "CaCO3", form: "CaCO3" }] },
  ],
  wanted: "56.077 g",
});

/** One value of every kind that has a record, and the class it must come back as. */
const KINDS: readonly (readonly [string, { toJSON(): object }])[] = [
  ["Quantity", quantity("12.5(2) g", { label: "jar" })],
  ["Formula", parseFormula("[Cu(NH3)4]SO4·H2O")],
  ["Equation", parseEquation("1/2 O2 + H2 -> H2O")],
  ["BalancedEquation", balance("H2 + O2 -> H2O")],
  ["IonicEquation", netIonic("AgNO3 + NaCl -> AgCl + NaNO3")],
  ["OverallEquation", overallEquation(["S + O2 -> SO2", "SO2 + O2 -> SO3"])],
  ["Substance", substance("Epsom salt")],
  ["Solubility", solubilityOf("CuSO4", "25 °C")],
  ["Plan", plan],
  ["Run", evaluateRun(plan, { dried: "19.0 g" })],
  ["Chain", chain],
];

describe("every kind of record", () => {
  it.each(KINDS)("%s comes back as itself", (name, value) => {
    const back = fromJSON(JSON.parse(JSON.stringify(value)));
    expect(back.constructor.name).toBe(name);
    expect(JSON.stringify(back)).toBe(JSON.stringify(value));
    expect(Object.isFrozen(back) || name === "Formula").toBe(true);
  });

  it("keeps what only its kind knows", () => {
    const ionic = fromJSON(JSON.parse(JSON.stringify(netIonic("AgNO3 + NaCl -> AgCl + NaNO3")))) as IonicEquation;
    expect(ionic.spectators.map(({ formula }) => String(formula))).toEqual(["NO3-", "Na+"]);
    const overall = fromJSON(
      JSON.parse(JSON.stringify(overallEquation(["S + O2 -> SO2", "SO2 + O2 -> SO3"]))),
    ) as OverallEquation;
    expect([overall.multipliers, overall.intermediates.map(String)]).toEqual([[2n, 1n], ["SO2"]]);
  });

  it.each(KINDS)("%s says when a newer release wrote it", (_, value) => {
    const record = { ...JSON.parse(JSON.stringify(value)), schema: 2, library: "9.9.9" };
    const outcome = tryFromJSON(record);
    expect(outcome.ok ? "" : outcome.error.message).toContain("written by a newer library (9.9.9): schema 2");
  });

  it.each(KINDS)("%s is refused without a schema, or with one that is none", (_, value) => {
    for (const schema of [undefined, 0, "1", null, {}]) {
      const outcome = tryFromJSON({ ...JSON.parse(JSON.stringify(value)), schema });
      expect(outcome.ok).toBe(false);
    }
  });
});

describe("a record that somebody altered", () => {
  const altered = (value: object, change: object): string => {
    const outcome = tryFromJSON({ ...JSON.parse(JSON.stringify(value)), ...change });
    return outcome.ok ? "read" : outcome.error.code;
  };
  const salt = solubilityOf("NaCl", "20 °C");

  it.each([
    [{ celsius: Number.NaN }],
    [{ celsius: -500 }],
    [{ formula: "XX" }],
    [{ solidPhase: "<script>" }],
    [{ basis: "g per litre" }],
    [{ kind: "guessed" }],
    [{ knownAs: "hearsay" }],
    [{ source: "nobody" }],
    [{ source: "constructor" }],
    [{ weak: "no" }],
    [{ warnings: [5] }],
    [{ competing: [{ celsius: 20, value: "-5", source: "memory" }] }],
    [{ uncertainty: [{ cause: "x", relative: -1 }] }],
    [{ perHundredGramsWater: quantity("5 mL").toJSON() }],
    [{ perHundredGramsWater: quantity("-5 g").toJSON() }],
  ])("is no solubility: %j", (change) => expect(altered(salt, change)).toBe("solubility.bad-option"));

  it.each([
    [{ standardUncertainty: "-0.2" }],
    [{ decimals: 1e9 }],
    [{ decimals: 0.5 }],
    [{ dimension: "volume" }],
    [{ degreesOfFreedom: -1 }],
    [{ library: 5 }],
  ])("is no quantity: %j", (change) => expect(altered(quantity("12.5(2) g"), change)).toBe("quantity.json"));

  it.each([[{ observations: undefined }], [{ plan: {} }], [{ figures: "x" }], [{ figures: [{ what: 5 }] }]])(
    "is no run: %j",
    (change) => expect(altered(evaluateRun(plan, {}), change)).toBe("plan.json"),
  );

  it.each([
    [{ type: "balanced equation", reactants: [{ formula: "H2", coefficient: {} }] }, "equation.not-a-record"],
    [{ reactants: [{ formula: "H2", coefficient: "3" }, { formula: "O2" }] }, "equation.wrong-coefficients"],
    [{ remarks: [5] }, "equation.not-a-record"],
  ])("is no balanced equation: %j", (change, code) => expect(altered(balance("H2 + O2 -> H2O"), change)).toBe(code));

  it("is no overall equation where the steps do not add up", () =>
    expect(altered(overallEquation(["S + O2 -> SO2", "SO2 + O2 -> SO3"]), { multipliers: ["1", "1"] })).not.toBe(
      "read",
    ));
});

describe("the table of solubilities", () => {
  it("knows only solids that a record can name", () => {
    let tested = 0;
    for (const { solids } of curvesWithSolids()) {
      for (const { solid } of solids) if (solid !== undefined) expect(tryParseFormula(solid).ok, solid).toBe(true);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(430);
  });
});

// Exact numbers are bigints and fractions, which JSON.stringify refuses; the answers they stand in were refused with them.
describe("answers with exact numbers", () => {
  const reaction = reactionAmounts("H2 + 1/2 O2 -> H2O", { H2: "1 mol" });
  const balanced = balance("MnO4- + Fe^2+ + H+ -> Mn^2+ + Fe^3+ + H2O");
  it.each<readonly [string, object, string]>([
    ["a term of an equation", balanced.reactants[1]!, '"coefficient":"5"'],
    ["a term as written", parseEquation("1/2 O2 + H2 -> H2O").reactants[0]!, '"coefficient":"1/2"'],
    ["a stoichiometric table", balanced.table(), '"stoichiometricNumber":"-8"'],
    ["half-reactions", halfReactions("MnO4- + Fe^2+ -> Mn^2+ + Fe^3+"), '"electrons":"5"'],
    ["a reaction space", reactionSpace("C + O2 -> CO + CO2"), '"basis":[["'],
    ["changes of state", redoxAnalysis(balanced), '"from":"7"'],
    ["a composition", parseFormula("Fe0.95O").composition, '"count":"19/20"'],
    ["parts of an adduct", parseFormula("CuSO4·5H2O").parts, '"multiplier":"5"'],
    ["shares by mass", percentComposition("H2O"), '"count":"2"'],
    ["oxides", oxideEquivalents("CaCO3"), '"amount":"1"'],
    ["crystal water", crystalWater("3CdSO4·8H2O"), '"waters":"8/3"'],
    ["waters from heating", hydrationNumber({ before: "5 g", after: "3.2 g", anhydrous: "CuSO4" }), '"waters":"5"'],
    ["equivalence", equivalenceOptions({ from: "Na2CO3", to: "NaHCO3" }), '"ratio":"2"'],
    ["equivalents", equivalentsIn("H2SO4 + NaOH -> Na2SO4 + H2O", "H2SO4"), '"perMole":"2"'],
    ["amounts in a reaction", reaction, '"coefficient":"1/2"'],
    ["heat of a reaction", reactionEnthalpy("H2(g) + 1/2 O2(g) -> H2O(l)"), '"stoichiometricNumber":"-1/2"'],
  ])("write %s as JSON, the numbers as text", (_, answer, written) => {
    const text = JSON.stringify(answer);
    expect(text).toContain(written);
    const { toJSON } = answer as { toJSON?(): unknown };
    if (toJSON !== undefined) expect(structuredClone(toJSON.call(answer))).toEqual(JSON.parse(text));
    // nothing that lists the fields of the answer sees how it is written
    expect(Object.keys(answer)).not.toContain("toJSON");
  });
});
