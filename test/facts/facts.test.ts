// Facts of the caller's own: what is taken, what is refused and how, and that nothing is left behind. Figures are invented.
import {
  acidConstant,
  atomicWeight,
  cautions,
  densityOfSolution,
  type FactRows,
  facts,
  formationEnthalpy,
  formulaOf,
  fromJSON,
  identify,
  isPreparativeError,
  molarMass,
  nameOf,
  quantity,
  search,
  shopMaterial,
  solubilityOf,
  solubilityProduct,
  stabilityConstants,
  substance,
  substanceFromJSON,
} from "preparative";
import { describe, expect, it } from "vitest";

const source = "studio notebook, page 12";
const own = facts({
  source,
  substances: [{ formula: "CoCO3.6H2O", name: "cobalt blush", otherNames: ["kiln blush"], density: "1.9 g/cm3" }],
  names: [{ name: "blue vitriol", formula: "CuSO4" }],
  solubilities: [{ formula: "NaCl", points: [["20 °C", "35.0 g"]] }],
  densities: [
    {
      solute: "NaCl",
      points: [
        ["10 %", "1.07 g/mL"],
        ["20 %", "1.15 g/mL"],
      ],
    },
  ],
  materials: [{ name: "washing soda", formula: "Na2CO3·10H2O", assay: "96 %", trap: "damp bag" }],
  hazards: [{ formula: "CuSO4·5H2O", codes: ["H361d"], cautions: ["our batch contains lead"], disposal: "Blue bin." }],
  incompatibilities: [
    { code: "studio-zinc-soda", a: ["ZnSO4·7H2O"], b: ["carbonate"], what: "house rule", severity: "forbid" },
  ],
  units: [{ symbol: "scoop", is: "4.2 g" }],
  weights: [{ element: "Pb", weight: "207.19(1) g/mol" }],
});

/** The code and the message of a refusal. */
const refusalOf = (work: () => unknown): string => {
  try {
    work();
  } catch (error) {
    if (isPreparativeError(error)) return `${error.code}: ${error.message}`;
    throw error;
  }
  return "";
};

describe("own rows come first, and only where they are given", () => {
  it("names and substances", () => {
    expect(String(formulaOf("blue vitriol", { facts: own }))).toBe("CuSO4");
    expect(String(formulaOf("blue vitriol"))).toBe("CuSO4.5H2O");
    expect(nameOf("CoCO3·6H2O", undefined, { facts: own })).toBe("cobalt blush");
    expect(String(formulaOf("kiln blush", { facts: own }))).toBe("CoCO3.6H2O");
    expect(refusalOf(() => formulaOf("kiln blush"))).toContain("substance.unknown-name");
    const blush = substance("kiln blush", { facts: own });
    expect(blush.formula).toBe("CoCO3·6H2O");
    expect(blush.density?.toString()).toBe("1.9 g/cm3");
    expect(blush.sources.density).toBe(`own figure: ${source}`);
    expect(identify("kiln blush", { facts: own }).formula).toBe("CoCO3·6H2O");
    expect(identify("kiln blush").meanings).toEqual([]);
  });

  it("substances with counts and waters that are no whole numbers", () => {
    const ours = facts({
      source,
      substances: [
        { formula: "Fe0.95O", name: "our wustite" },
        { formula: "ZnCl2·1½H2O", name: "our zinc chloride" },
        { formula: "3CdSO4·8H2O", name: "our cadmium sulfate" },
        { formula: "CdSO4·8/3H2O", name: "our cadmium sulfate by the unit" },
      ],
      hazards: [{ formula: "CaSO4·0.5H2O", cautions: ["sets in the sink"] }],
    });
    const formulas = ["our wustite", "our zinc chloride", "our cadmium sulfate"].map(
      (name) => substance(name, { facts: ours }).formula,
    );
    expect(formulas).toEqual(["Fe0.95O", "ZnCl2·1.5H2O", "3CdSO4·8H2O"]);
    expect(String(formulaOf("our cadmium sulfate by the unit", { facts: ours }).count("O"))).toBe("6.(6)");
  });

  it("solubilities, for every spelling and hydrate of the salt", () => {
    const figure = solubilityOf("ClNa", "20 °C", { facts: own });
    expect(figure.perHundredGramsWater.toNumber("g")).toBe(35);
    expect(figure.source).toBe(`own figure: ${source}`);
    expect(figure.perHundredGramsWater.source).toBe(`own figure: ${source}`);
    expect(solubilityOf("NaCl", "20 °C").perHundredGramsWater.toNumber("g")).toBe(35.89);
    const read = fromJSON(JSON.parse(JSON.stringify(figure))) as typeof figure;
    expect(read.source).toBe(`own figure: ${source}`);
  });

  it("densities", () => {
    const density = densityOfSolution("NaCl", "10 %", { facts: own });
    expect(density.format({ decimals: 3, uncertainty: "none" })).toBe("1.070 g/mL");
    expect(densityOfSolution("NaCl", "10 %").format({ decimals: 3, uncertainty: "none" })).toBe("1.071 g/mL");
  });

  it("goods of the shop", () => {
    const good = shopMaterial("Washing Soda", { facts: own });
    expect(good.candidates.map(({ formula, assay, source: from }) => [formula, assay?.upper, from])).toEqual([
      ["Na2CO3·10H2O", "96 %", `own figure: ${source}`],
    ]);
    expect(shopMaterial("washing soda").candidates).toHaveLength(3);
  });

  it("units, also in a compound unit", () => {
    expect(quantity("3 scoop", { facts: own }).to("g").toString()).toBe("12.6 g");
    expect(quantity("10 scoop/L", { facts: own }).in("g/L").toString()).toBe("42");
    expect(refusalOf(() => quantity("3 scoop"))).toContain("quantity.unknown-unit");
    expect(refusalOf(() => quantity("10 scoop/L"))).toContain("quantity.unknown-unit");
  });

  it("atomic weights", () => {
    expect(atomicWeight("Pb", { facts: own }).toNumber()).toBe(207.19);
    expect(molarMass("PbO", { facts: own }).toNumber()).toBeCloseTo(207.19 + 15.999, 9);
    expect(molarMass("PbO").toNumber()).toBeCloseTo(207.2 + 15.999, 9);
    // the working is made later, and still of the weights that the value is made of
    const outside = molarMass("PbO");
    expect(outside.minus(molarMass("PbO", { facts: own })).isZero()).toBe(false);
  });
});

describe("what an own row says of itself", () => {
  const measured = facts({
    source,
    constants: [
      { kind: "pKa", of: "CH3COOH", value: "4.70" },
      { kind: "pKsp", of: "Ag2CrO4", value: "11.50" },
      { kind: "logBeta", of: "[Ag(NH3)2]^+", value: "7.10" },
    ],
    enthalpies: [{ formula: "C6H8O7(s)", enthalpy: "-1540(2) kJ/mol" }],
    names: [{ name: "kiln blue", formula: "CoCO3" }],
  });
  const cited = `own figure: ${source}`;

  it("constants, with their ions and their source", () => {
    const acid = acidConstant("CH3COOH", { facts: measured });
    expect([String(acid.pKa), acid.source, acid.pKa.source]).toEqual(["4.70", cited, cited]);
    const product = solubilityProduct("Ag2CrO4", undefined, { facts: measured });
    expect([String(product.pKsp), product.source]).toEqual(["11.50", cited]);
    expect(product.ions.map(({ formula, count }) => `${count} ${formula}`)).toEqual(["2 Ag+", "1 CrO4^2-"]);
    const [first, second] = stabilityConstants({ metal: "Ag+", ligand: "NH3", facts: measured });
    expect([first!.source, second!.source, String(second!.logBeta)]).toEqual([first!.source, cited, "7.10"]);
    expect(first!.source).not.toBe(cited);
  });

  it("a constant of an acid that no table has", () => {
    const own = facts({ source, constants: [{ kind: "pKa", of: "C8H8O3", value: "3.40" }] });
    const { pKa, base, source: from } = acidConstant("C8H8O3", { facts: own });
    expect([String(pKa), base, from]).toEqual(["3.40", "C8H7O3-", cited]);
  });

  it("a constant of a solid that no table has", () => {
    const own = facts({ source, constants: [{ kind: "pKsp", of: "CoWO4·2H2O", value: "8.2" }] });
    const { dissolution, warnings } = solubilityProduct("CoWO4·2H2O", undefined, { facts: own });
    expect([dissolution, warnings]).toEqual(["CoWO4·2H2O -> Co^2+ + WO4^2-", []]);
  });

  it("an enthalpy, with its own uncertainty", () => {
    const { enthalpy, source: from } = formationEnthalpy("C6H8O7", { state: "s", facts: measured });
    expect([String(enthalpy), from]).toEqual(["-1540.0 ± 2.0 kJ/mol", cited]);
  });

  it("a name is found with its slips", () => {
    expect(search("kiln bleu", { facts: measured })[0]?.formula).toBe("CoCO3");
    expect(search("kiln bleu").map(({ matched }) => matched)).not.toContain("kiln blue");
  });

  it("a substance keeps its facts through JSON", () => {
    const blush = substance("kiln blush", { facts: own });
    const read = fromJSON(JSON.parse(JSON.stringify(blush))) as typeof blush;
    expect(read.name).toBe("cobalt blush");
    expect(JSON.stringify(read)).toBe(JSON.stringify(blush));
    expect(refusalOf(() => substanceFromJSON(JSON.parse(JSON.stringify(blush))))).toContain("fromJSON reads");
  });
});

describe("hazards and rules are added, and none goes", () => {
  it("a hazard", () => {
    const [ours] = cautions(["CuSO4·5H2O"]).substances;
    const [both] = cautions(["CuSO4·5H2O"], { facts: own }).substances;
    expect(ours!.statements.length, "rows to test").toBeGreaterThan(0);
    for (const { code } of ours!.statements) expect(both!.statements.map((one) => one.code)).toContain(code);
    expect(ours!.pictograms.length, "rows to test").toBeGreaterThan(0);
    for (const { code } of ours!.pictograms) expect(both!.pictograms.map((one) => one.code)).toContain(code);
    expect(both!.statements.at(-1)).toMatchObject({ code: "H361d", source: `own figure: ${source}` });
    expect(both!.cautions).toContain("our batch contains lead");
    expect(both!.disposal).toBe(`${ours!.disposal} Blue bin.`);
    expect(both!.citation).toContain(`own figure: ${source}`);
  });

  it("a rule", () => {
    expect(cautions(["ZnSO4", "Na2CO3"], { facts: own }).incompatibilities.map((one) => one.code)).toContain(
      "studio-zinc-soda",
    );
    expect(cautions(["ZnSO4", "Na2CO3"]).incompatibilities.map((one) => one.code)).not.toContain("studio-zinc-soda");
  });

  it("a name of a danger that is given another meaning keeps the danger", () => {
    const renamed = facts({
      source,
      names: [{ name: "bleach", formula: "NaCl" }],
      materials: [{ name: "vinegar", formula: "H2O" }],
    });
    expect(cautions(["bleach", "vinegar"], { facts: renamed }).incompatibilities[0]?.code).toBe("hypochlorite-acid");
  });

  it("a rule cannot have the code of one of ours", () => {
    const rule = { code: "hypochlorite-acid", a: ["acid"], b: ["NaCl"], what: "x", severity: "warn", source } as const;
    expect(refusalOf(() => facts({ incompatibilities: [rule] }))).toContain("facts.clash: incompatibilities[0]");
  });
});

describe("what is refused", () => {
  const bad: readonly [string, FactRows | Record<string, unknown>, string][] = [
    ["no source", { names: [{ name: "a b", formula: "NaCl" }] }, "facts.no-source: names[0] names no source"],
    ["an unknown table", { solubility: [] }, "did you mean solubilities"],
    ["an unknown field", { names: [{ nme: "x", formula: "NaCl", source }] }, "did you mean name"],
    ["a field left out", { names: [{ name: "x", source }] }, "facts.missing-field: names[0].formula"],
    ["a bad formula", { names: [{ name: "xx", formula: "Nacl", source }] }, "facts.bad-row: names[0]: "],
    ["an ion", { names: [{ name: "xx", formula: "SO4^2-", source }] }, "is an ion"],
    [
      "a wrong unit",
      { solubilities: [{ formula: "NaCl", points: [["20 °C", "35 mL"]], source }] },
      "facts.bad-row: solubilities[0]: ",
    ],
    [
      "two figures for one temperature",
      {
        solubilities: [
          {
            formula: "NaCl",
            points: [
              ["20 °C", "35 g"],
              ["20 °C", "36 g"],
            ],
            source,
          },
        ],
      },
      "two figures for a temperature of 20",
    ],
    [
      "the same thing twice",
      {
        source,
        names: [
          { name: "kiln blue", formula: "CoO" },
          { name: "Kiln Blue", formula: "CuO" },
        ],
      },
      "facts.clash: names[1] and names[0]",
    ],
    [
      "a unit of ours",
      { units: [{ symbol: "mol", is: "4 g", source }] },
      "facts.clash: units[0]: mol is a unit already",
    ],
    ["a statement that is none", { hazards: [{ formula: "NaCl", codes: ["H999"], source }] }, "H999"],
    [
      "a class that is none",
      { incompatibilities: [{ code: "x-y", a: ["acidd"], b: ["NaCl"], what: "w", severity: "warn", source }] },
      "did you mean acid",
    ],
    [
      "a severity that is none",
      { incompatibilities: [{ code: "x-y", a: ["acid"], b: ["NaCl"], what: "w", severity: "allow", source }] },
      "forbid, warn",
    ],
    [
      "a heat of formation without a state",
      { enthalpies: [{ formula: "NaCl", enthalpy: "-411 kJ/mol", source }] },
      "facts.bad-row: enthalpies[0]: NaCl does not say its state",
    ],
    ["an element that is none", { weights: [{ element: "Xx", weight: "3", source }] }, "facts.bad-row: weights[0]"],
    ["a number for a text", { units: [{ symbol: "scoop", is: 4.2, source }] }, "units[0].is must be text"],
  ];
  it.each(bad)("%s", (_, rows, message) => {
    expect(refusalOf(() => facts(rows as FactRows))).toContain(message);
  });

  it("facts that are none", () => {
    expect(refusalOf(() => solubilityOf("NaCl", "20 °C", { facts: {} as never }))).toContain(
      "facts must be what facts() gave",
    );
  });
});

describe("a set", () => {
  it("is immutable and copies what it is given", () => {
    const rows = { source, names: [{ name: "kiln blue", formula: "CoO" }] };
    const set = facts(rows);
    rows.names[0]!.formula = "CuO";
    expect(String(formulaOf("kiln blue", { facts: set }))).toBe("CoO");
    expect(Object.isFrozen(set)).toBe(true);
  });

  it("goes through JSON", () => {
    const read = fromJSON(JSON.parse(JSON.stringify(own)));
    expect(JSON.stringify(read)).toBe(JSON.stringify(own));
    expect(String(read)).toBe(String(own));
    expect(refusalOf(() => fromJSON({ type: "facts", schema: 2, parts: [] }))).toContain("facts.json");
  });

  it("is added to another, the later row counting", () => {
    const both = facts(own, { names: [{ name: "blue vitriol", formula: "CuSO4·5H2O", source: "label" }] });
    expect(String(formulaOf("blue vitriol", { facts: both }))).toBe("CuSO4.5H2O");
    expect(quantity("1 scoop", { facts: both }).toNumber("g")).toBe(4.2);
    const read = fromJSON(JSON.parse(JSON.stringify(both))) as typeof both;
    expect(String(formulaOf("blue vitriol", { facts: read }))).toBe("CuSO4.5H2O");
  });

  it("leaves nothing in force behind a refusal", () => {
    expect(refusalOf(() => formulaOf("no such name", { facts: own }))).toContain("substance.unknown-name");
    expect(String(formulaOf("blue vitriol"))).toBe("CuSO4.5H2O");
  });
});
