// What a plan, a run and a chain hand on: the product as a material, the figures, the working of a verdict, the cost.
import { evaluateRun, type Observations, planPreparation, planSequence, workingOfVerdict } from "preparative";
import { describe, expect, it } from "vitest";

const step = {
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials: [
    { name: "calcium", form: "CaCl2" },
    { name: "soda", form: "Na2CO3" },
  ],
} as const;
// 22.2 g / 110.98 g/mol = 0.2000 mol, × 100.09 = 20.02 g
const plan = planPreparation({ ...step, scale: { material: "calcium", portion: "22.20 g" } });

describe("a product as a material", () => {
  const saltpetre = planPreparation({
    equation: "NaNO3 + KCl -> KNO3 + NaCl",
    product: "KNO3",
    materials: [
      { name: "Chile saltpetre", form: "NaNO3" },
      { name: "potash", form: "KCl" },
    ],
    scale: { material: "Chile saltpetre", portion: "85.0 g" },
  });
  const percent = (text: unknown): number => Number.parseFloat(String(text));

  it("has what stands beside it in the books, and both are the whole", () => {
    const { name, form, assay, also, note, strength } = saltpetre.asMaterial();
    expect([name, form, note, strength]).toEqual([
      "KNO₃",
      "KNO3",
      "from KNO₃ from Chile saltpetre and potash",
      undefined,
    ]);
    expect(also!.map((one) => one.form)).toEqual(["NaCl"]);
    expect(percent(assay) + percent(also![0]!.share)).toBeCloseTo(100, 3);
    const [own, salt] = saltpetre.steps.at(-1)!.after.solids.map(({ mass }) => mass.in("g").toNumber());
    expect(percent(also![0]!.share)).toBeCloseTo((100 * salt!) / (own! + salt!), 2);
  });

  it("is as pure as it was titrated, and no purer than the books allow", () => {
    expect(percent(saltpetre.asMaterial({ assay: "90 %" }).assay)).toBeCloseTo(90, 9);
    expect(saltpetre.asMaterial({ assay: "100 %" }).assay).toBe(saltpetre.asMaterial().assay);
    expect(saltpetre.asMaterial({ name: "nitre" }).name).toBe("nitre");
    expect(() => saltpetre.asMaterial({ assay: "101 %" })).toThrow(expect.objectContaining({ code: "plan.request" }));
    expect(() => saltpetre.asMaterial({ purity: "90 %" } as never)).toThrow(
      expect.objectContaining({ code: "plan.unknown-option" }),
    );
  });
});

describe("a run", () => {
  const of = (observations: Observations) => evaluateRun(plan, observations);
  const full = of({
    dried: ["19.01 g", "19.00 g"],
    lost: [{ of: "product", mass: "0.50 g" }],
    ignition: { before: "1.000 g", after: "0.560 g" },
  });

  // 20.02 - 0.50 = 19.52 g; 19.00 / 20.02 = 94.9 %; 44.01 / 100.09 = 43.97 % is lost by chalk
  it("has its working in words", () => {
    const { facts, findings, result } = workingOfVerdict(full);
    expect(facts).toEqual([
      "theory: 20.02 g of CaCO₃",
      expect.stringMatching(/^lost on the way: 0.5 g of dry product was lost$/),
      expect.stringMatching(/^expected after that: 19.52/),
      expect.stringMatching(/^dry mass: 19.000/),
      expect.stringMatching(/^yield = dry mass \/ theory = 94.9/),
      "dried to constant mass: yes",
      expect.stringMatching(/^identity: a loss of 44.00 % is that of CaCO₃/),
    ]);
    expect(findings).toHaveLength(full.verdict.length);
    expect(result).toBe(full.verdict[0]!.text);
    const lines = String(workingOfVerdict(full)).split("\n");
    expect(lines[0]).toBe("What was found");
    expect(lines).toContain("What it may mean, the likeliest first");
    expect(lines).toContain(`  1. ${findings[0]}`);
    expect(findings[0]).toMatch(
      /\(likelihood 1.00 of what was measured if it is so; weight 1.00\); next: nothing more/,
    );
    expect(findings.some((text) => text.includes("(no measurement speaks for or against it; weight "))).toBe(true);
  });

  it("without a mass has next to nothing to work with", () => {
    const { facts } = workingOfVerdict(of({}));
    expect(facts).toEqual(["theory: 20.02 g of CaCO₃", "no dry mass was taken"]);
    expect(workingOfVerdict(of({ dried: ["19.5 g", "19.0 g"] })).facts).toContain("dried to constant mass: no");
    expect(() => workingOfVerdict(plan as never)).toThrow(expect.objectContaining({ code: "plan.request" }));
  });

  it("has the figures of its plan and its own", () => {
    const what = (observations: Observations) =>
      of(observations)
        .figures()
        .map((one) => one.what);
    const own = ["expected after losses", "dry mass", "percent yield"];
    const figures = full.figures();
    expect(figures.map((one) => one.what).filter((one) => own.includes(one))).toEqual(own);
    const value = (name: string) => Number(figures.find((one) => one.what === name)!.value);
    expect(value("expected after losses")).toBeCloseTo(19.52, 2);
    expect(value("dry mass")).toBeCloseTo(19, 9);
    expect(value("percent yield")).toBeCloseTo(94.9, 1);
    expect(what({}).filter((one) => one === "dry mass" || one === "percent yield")).toEqual([]);
    expect(of({}).yields).toEqual([]);
    expect(full.yields.map(({ formula, wanted }) => [formula, wanted])).toEqual([["CaCO₃", true]]);
  });
});

describe("the cost of a chain", () => {
  const chain = (soda: "5 EUR" | "5 USD" | undefined) =>
    planSequence({
      steps: [
        {
          ...step,
          productName: "chalk",
          materials: [
            { ...step.materials[0], pack: { size: "1 kg", price: "10 EUR" } },
            { ...step.materials[1], ...(soda === undefined ? {} : { pack: { size: "1 kg", price: soda } }) },
          ],
        },
        { equation: "CaCO3 -> CaO + CO2", product: "CaO", materials: [{ name: "chalk", form: "CaCO3" }] },
      ],
      wanted: "56.08 g",
    });

  // One mole: 111.0 g for 1.110 EUR and 106.0 g for 0.530 EUR, 1.640 EUR for 56.08 g
  it("is that of what is bought, for a gram of the last product too", () => {
    const { cost } = chain("5 EUR");
    expect(cost.total!.in("EUR").toNumber()).toBeCloseTo(1.64, 2);
    expect(cost.perGram!.in("EUR/g").toNumber()).toBeCloseTo(1.64 / 56.08, 4);
    expect([cost.lines.map(({ material }) => material), cost.missing]).toEqual([["calcium", "soda"], []]);
    expect(chain("5 EUR").figures().at(-1)).toMatchObject({ what: "cost", unit: "EUR" });
  });

  it("is unknown without a price, or in two currencies", () => {
    expect(chain(undefined).cost).toMatchObject({ total: undefined, perGram: undefined, missing: ["price of soda"] });
    const two = chain("5 USD").cost;
    expect([two.total, two.missing]).toEqual([undefined, ["one currency for all prices"]]);
    expect(two.missing.length).toBeGreaterThan(0);
    expect(
      chain(undefined)
        .figures()
        .map((one) => one.what),
    ).not.toContain("cost");
  });
});

describe("a step of a chain", () => {
  it("that yields nothing is refused", () => {
    expect(() => planSequence({ steps: [{ ...step, expectedYield: "0 %" }], wanted: "10 g" })).toThrow(
      expect.objectContaining({ code: "plan.not-positive" }),
    );
  });
});
