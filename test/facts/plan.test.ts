// Facts of the caller's own, each kind in a plan and on its sheet. Figures are invented.
import {
  aqueousComposition,
  attempt,
  benchSheet,
  bottleLabel,
  type Chain,
  doesItGo,
  evaluateRun,
  facts,
  findRoutes,
  fromJSON,
  lossToLiquor,
  massFractionFromDensity,
  type Plan,
  type PlanRequest,
  planPreparation,
  planSequence,
  type Route,
  type Run,
  solubilityOf,
  waterToDissolve,
} from "preparative";
import { describe, expect, it } from "vitest";

const REQUEST: PlanRequest = {
  equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
  product: "Zn5(CO3)2(OH)6",
  materials: [
    { name: "moss killer", form: "ZnSO4·7H2O", assay: "98 %" },
    { name: "washing soda", form: "Na2CO3·10H2O", excess: "5 %" },
  ],
  scale: { material: "moss killer", portion: "250.0 g" },
};
const SOURCE = "weighed in the studio, March 2026";

describe("a plan with own facts", () => {
  it("reads an own solubility and prints its source", () => {
    const own = facts({
      solubilities: [
        {
          formula: "Na2CO3",
          solid: "Na2CO3·10H2O",
          points: [
            ["20 °C", "19.0 g"],
            ["30 °C", "33 g"],
          ],
          source: SOURCE,
        },
      ],
    });
    expect(solubilityOf("Na2CO3", "25 °C", { facts: own }).source).toBe(`own figure: ${SOURCE}`);
    const plan = planPreparation({ ...REQUEST, facts: own });
    expect(benchSheet(plan)).toContain(`own figure: ${SOURCE}`);
    const read = fromJSON(JSON.parse(JSON.stringify(plan))) as Plan;
    expect(benchSheet(read)).toBe(benchSheet(plan));
    expect(benchSheet(planPreparation(REQUEST))).not.toContain("own figure");
  });
  it("leaves the sheets of plans without facts as they were, asked before and after", () => {
    const before = benchSheet(planPreparation(REQUEST));
    const own = facts({
      source: SOURCE,
      solubilities: [{ formula: "ZnSO4", points: [["20 °C", "30 g"]] }],
      weights: [{ element: "Zn", weight: "66.0(1) g/mol" }],
      densities: [
        {
          solute: "ZnSO4",
          points: [
            ["10 %", "1.2 g/mL"],
            ["20 %", "1.4 g/mL"],
          ],
        },
      ],
    });
    const plan = planPreparation({ ...REQUEST, facts: own });
    expect(benchSheet(plan)).not.toBe(before);
    expect(benchSheet(planPreparation(REQUEST))).toBe(before);
    expect(benchSheet(planPreparation({ ...REQUEST, facts: own }))).toBe(benchSheet(plan));
  });

  it("reads a scale in an own unit", () => {
    const own = facts({ units: [{ symbol: "scoop", is: "4.2 g", source: SOURCE }] });
    const plan = planPreparation({
      ...REQUEST,
      scale: { material: "moss killer", portion: "10 scoop" as "10 g" },
      facts: own,
    });
    expect(plan.weighings[0]!.portion.format({ unit: "g", decimals: 1, uncertainty: "none" })).toBe("42.0 g");
    const read = fromJSON(JSON.parse(JSON.stringify(plan))) as Plan;
    expect(String(read)).toBe(String(plan));
  });

  it("is blocked by an own rule, and goes where that is acknowledged", () => {
    const own = facts({
      source: SOURCE,
      incompatibilities: [
        { code: "studio-zinc-soda", a: ["ZnSO4"], b: ["Na2CO3"], what: "house rule", severity: "forbid" },
      ],
    });
    const refused = attempt(() => planPreparation({ ...REQUEST, facts: own }));
    expect(refused.ok ? "" : refused.error.code).toBe("plan.forbidden-combination");
    const plan = planPreparation({ ...REQUEST, facts: own, acknowledge: ["studio-zinc-soda"] });
    expect(benchSheet(plan)).toContain("house rule");
    expect(attempt(() => planPreparation({ ...REQUEST, acknowledge: ["studio-zinc-soda"] })).ok).toBe(false);
  });

  it("prints an own hazard and rests on own weights", () => {
    const own = facts({
      source: SOURCE,
      hazards: [{ formula: "ZnSO4·7H2O", codes: ["H361d"], cautions: ["this lot contains cadmium"] }],
      weights: [{ element: "Zn", weight: "66.0(1) g/mol" }],
    });
    const plan = planPreparation({ ...REQUEST, facts: own });
    expect(plan.cautions.substances[0]!.statements.map((one) => one.code)).toContain("H361d");
    expect(benchSheet(plan)).toContain("this lot contains cadmium");
    const usual = planPreparation(REQUEST);
    expect(plan.product.theoreticalYield.compare(usual.product.theoreticalYield)).not.toBe(0);
    expect(benchSheet(plan)).toContain(`own figure: ${SOURCE}`);
  });

  it("is the same plan where the facts repeat the figures of the library", () => {
    const figure = solubilityOf("ZnSO4", "25 °C").perHundredGramsWater.value.toString();
    const own = facts({
      source: SOURCE,
      solubilities: [{ formula: "ZnSO4·7H2O", points: [["25 °C", `${figure} g`]] }],
      weights: [{ element: "Zn", weight: "65.38 g/mol" }],
      units: [{ symbol: "scoop", is: "4.2 g" }],
    });
    const values = (plan: Plan) => plan.figures().map(({ what, text }) => `${what}: ${text.split(" ±")[0]}`);
    expect(values(planPreparation({ ...REQUEST, temperature: "25 °C", facts: own }))).toEqual(
      values(planPreparation({ ...REQUEST, temperature: "25 °C" })),
    );
  });

  it("hands its facts to its run, and both are read back with them", () => {
    const own = facts({ weights: [{ element: "Zn", weight: "66.0(1) g/mol", source: SOURCE }] });
    const run = evaluateRun(planPreparation({ ...REQUEST, facts: own }), { dried: "92.0 g" });
    const usual = evaluateRun(planPreparation(REQUEST), { dried: "92.0 g" });
    expect(String(run.percentYield)).not.toBe(String(usual.percentYield));
    const read = fromJSON(JSON.parse(JSON.stringify(run))) as Run;
    expect(String(read.percentYield)).toBe(String(run.percentYield));
    expect(read.moved).toEqual([]);
  });

  it("gives a chain its facts", () => {
    const own = facts({ units: [{ symbol: "scoop", is: "4.2 g", source: SOURCE }] });
    const { scale: _, ...step } = REQUEST;
    const chain = planSequence({ steps: [step], wanted: "10 scoop" as "10 g", facts: own });
    expect(chain.plans[0]!.request.facts).toBe(own);
    expect(chain.plans[0]!.product.theoreticalYield.format({ unit: "g", decimals: 0, uncertainty: "none" })).toBe(
      "42 g",
    );
    const read = fromJSON(JSON.parse(JSON.stringify(chain))) as Chain;
    expect(JSON.stringify(read.figures())).toBe(JSON.stringify(chain.figures()));
  });
});

describe("what else takes facts", () => {
  const own = facts({
    source: SOURCE,
    names: [{ name: "kiln chalk", formula: "CaCO3" }],
    hazards: [{ formula: "CaO", codes: ["H361d"] }],
    solubilities: [{ formula: "NaCl", points: [["20 °C", "50 g"]] }],
    densities: [
      {
        solute: "NaCl",
        points: [
          ["10 %", "1.5 g/mL"],
          ["20 %", "2.0 g/mL"],
        ],
      },
    ],
  });

  it("routes, whose plans and records keep them", () => {
    const request = { target: "CaO", shelf: [{ name: "chalk", form: "CaCO3" }] } as const;
    const [route] = findRoutes({ ...request, facts: own }).routes;
    expect(benchSheet(route!)).toContain("H361d");
    const read = fromJSON(JSON.parse(JSON.stringify(route))) as Route;
    expect(benchSheet(read)).toBe(benchSheet(route!));
    expect(benchSheet(findRoutes(request).routes[0]!)).not.toContain("H361d");
  });

  it("labels", () => {
    expect(bottleLabel("CaO", { facts: own })).not.toBe(bottleLabel("CaO"));
    expect(bottleLabel("kiln chalk", { facts: own })).toContain("CaCO₃");
  });

  it("water, crystals and losses", () => {
    const salt = { formula: "NaCl", mass: "50 g", temperature: "20 °C" } as const;
    expect(waterToDissolve({ ...salt, facts: own }).water.toNumber("g")).toBeCloseTo(100, 6);
    expect(waterToDissolve(salt).water.toNumber("g")).toBeGreaterThan(130);
    const loss = lossToLiquor({ formula: "NaCl", water: "10 g", temperature: "20 °C", facts: own });
    expect(loss.mass.toNumber("g")).toBeCloseTo(5, 6);
  });

  it("strength from a density", () => {
    expect(massFractionFromDensity("NaCl", "1.5 g/mL", { facts: own }).toNumber("%")).toBeCloseTo(10, 6);
    expect(attempt(() => massFractionFromDensity("NaCl", "1.5 g/mL")).ok).toBe(false);
  });

  it("whether it goes", () => {
    const pinch = facts({ units: [{ symbol: "pinch", is: "0.36 g", source: SOURCE }] });
    const asked = { equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl", product: "CaCO3" } as const;
    const scale = { product: "30 pinch" as "30 g" };
    expect(doesItGo({ ...asked, scale, facts: pinch }).verdict).toBe(doesItGo(asked).verdict);
    expect(attempt(() => doesItGo({ ...asked, scale })).ok).toBe(false);
  });
});

describe("a beaker with own constants", () => {
  it("takes them in place of ours, and a given constant before them", () => {
    const own = facts({ constants: [{ kind: "pKa", of: "CH3COOH", value: "5.5", source: SOURCE }] });
    const request = {
      water: "1 L",
      dissolved: [{ formula: "CH3COOH", amount: "0.1 mol" }],
      activity: "ideal",
    } as const;
    const usual = aqueousComposition(request).pH.toNumber();
    const weaker = aqueousComposition({ ...request, facts: own }).pH.toNumber();
    // pH = (pKa - log c) / 2 for a weak acid, nearly
    expect(weaker).toBeCloseTo((5.5 + 1) / 2, 2);
    expect(usual).toBeCloseTo((4.76 + 1) / 2, 1);
    expect(aqueousComposition(request).pH.toNumber()).toBe(usual);
    const given = aqueousComposition({ ...request, facts: own, constants: { pKa: { CH3COOH: "4.0" } } });
    expect(given.pH.toNumber()).toBeCloseTo((4 + 1) / 2, 1);
  });
});
