// Requests in other shapes, and those that are refused for what they ask.
import {
  attempt,
  balance,
  checkRecipe,
  isPreparativeError,
  type PlanRequest,
  parseEquation,
  planFromJSON,
  planPreparation,
  type Recipe,
} from "preparative";
import { describe, expect, it } from "vitest";

const chalk: PlanRequest = {
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials: [
    { name: "calcium", form: "CaCl2" },
    { name: "soda", form: "Na2CO3" },
  ],
  scale: { product: "20 g" },
};
const refusal = (more: object): string => {
  const outcome = attempt(() => planPreparation({ ...chalk, ...more } as PlanRequest));
  if (outcome.ok) return "planned";
  return isPreparativeError(outcome.error) ? `${outcome.error.code}: ${outcome.error.message}` : "not refused";
};

describe("a request", () => {
  it("may give its equation as two lists", () => {
    const { equation } = planPreparation({
      ...chalk,
      equation: { reactants: ["CaCl2", "Na2CO3"], products: ["CaCO3", "NaCl"] },
    });
    expect(String(equation)).toBe("CaCl2 + Na2CO3 -> CaCO3 + 2 NaCl");
  });

  it("may have no prototype, and is no instance of a class", () => {
    expect(planPreparation(Object.assign(Object.create(null), chalk)).product.formula).toBe("CaCO₃");
    class Request {}
    const made = attempt(() => planPreparation(Object.assign(new Request(), chalk)));
    expect(made.ok).toBe(false);
  });

  it.each([
    [
      { equation: { reactants: ["CaCl2", "Na2CO3"], products: ["CaCO3", "NaCl"], heat: 1 } },
      /^plan.unknown-option: .*heat/,
    ],
    [{ procedure: "boil" }, /^plan.request: no procedure is called 'boil'/],
    [{ isolate: false }, /^plan.request: CaCO₃ does not stay dissolved/],
    [
      {
        isolate: false,
        equation: "CaCO3 -> CaO + CO2",
        product: "CaO",
        materials: [{ name: "chalk", form: "CaCO3" }],
        scale: { product: "10 g" },
      },
      /^plan.request: CaO does not stay dissolved/,
    ],
    [{ materials: [chalk.materials[0], { name: "calcium", form: "Na2CO3" }] }, /two materials are called 'calcium'/],
    [{ materials: undefined }, /^plan.request/],
  ])("with %j is refused", (more, why) => {
    expect(refusal(more)).toMatch(why);
  });
});

describe("a product that is kept in its liquor", () => {
  const liquor = (equation: string, product: string, base: string, acid: string, strength: "36 %" | "60 %") =>
    planPreparation({
      equation,
      product,
      isolate: false,
      materials: [
        { name: "base", form: base },
        { name: "acid", form: acid, strength },
      ],
      scale: { product: "50 g" },
    });

  // 100 g of water keep 20.5 g of copper sulfate at 20 °C (handbooks), 17.0 % of the liquor
  it("gets as much water as keeps it dissolved in the cold", () => {
    const plan = liquor("CuO + H2SO4 -> CuSO4 + H2O", "CuSO4·5H2O", "CuO", "H2SO4", "60 %");
    expect(plan.steps.find(({ operation, text }) => operation === "dilute" && text.startsWith("Add "))!.text).toMatch(
      /^Add \d+ mL of water: with less it would crystallise at 20 °C.$/,
    );
    const { mass, dissolved } = plan.steps.at(-1)!.after;
    const salt =
      159.6 *
      dissolved
        .find(({ formula }) => formula === "CuSO₄")!
        .amount.in("mol")
        .toNumber();
    // 50 g / 249.68 × 79.545 is 15.93 g of oxide, of which 15.9 g are weighed: / 79.545 × 159.6
    expect(salt).toBeCloseTo(31.9, 1);
    expect(salt / mass.in("g").toNumber()).toBeLessThan(0.17);
    expect(salt / mass.in("g").toNumber()).toBeGreaterThan(0.12);
    // handed on as a solution of this strength, and as nothing that is dry
    const { strength, assay } = plan.asMaterial();
    expect(Number.parseFloat(String(strength))).toBeCloseTo((100 * salt) / mass.in("g").toNumber(), 1);
    expect(assay).toBeUndefined();
    expect(plan.isolation).toMatchObject({ how: "liquor", why: expect.stringMatching(/as asked for$/) });
  });

  // 50 g of salt in more than 200 g of water: 36 g in 100 g are saturated (handbooks)
  it("gets none where there is enough", () => {
    const plan = liquor("NaOH + HCl -> NaCl + H2O", "NaCl", "NaOH", "HCl", "36 %");
    const { water, dissolved } = plan.steps.at(-1)!.after;
    const salt =
      58.44 *
      dissolved
        .find(({ formula }) => formula === "NaCl")!
        .amount.in("mol")
        .toNumber();
    expect(salt / water.in("g").toNumber()).toBeLessThan(0.36);
  });
});

describe("alcohol beside", () => {
  it("is rinsed with after the washing, all of it", () => {
    const { steps } = planPreparation({
      ...chalk,
      materials: [
        ...chalk.materials,
        { name: "spirit", form: "C2H5OH", strength: "96 %", aside: true, portion: "20 g" },
      ],
    });
    const at = steps.findIndex(({ text }) => text === "Rinse with the spirit (20.0 g), so that it dries faster.");
    expect(steps[at]!.materials).toEqual(["spirit"]);
    expect(steps[at]!.amounts.map((one) => one.in("g").toNumber())).toEqual([20]);
    expect([steps[at - 1]!.operation, steps[at + 1]!.operation]).toEqual(["wash", "dry"]);
  });
});

describe("a recipe of several steps", () => {
  const chain = (...equation: string[]): string => {
    const recipe: Recipe = {
      equation,
      product: "CuSO4",
      materials: [
        { form: "CaCl2", amount: "10 g" },
        { form: "Na2CO3", amount: "10 g" },
      ],
    };
    const outcome = attempt(() => checkRecipe(recipe));
    if (outcome.ok) return "read";
    return isPreparativeError(outcome.error) ? outcome.error.message : "not refused";
  };
  const [first, lime, vitriol] = ["CaCl2 + Na2CO3 -> CaCO3 + NaCl", "CaCO3 -> CaO + CO2", "CuO + H2SO4 -> CuSO4 + H2O"];

  it("that does not go on from the step before says which", () => {
    expect(chain(first, vitriol)).toMatch(/^step 2 \(CuO \+ H2SO4 -> CuSO4 \+ H2O\) uses nothing that step 1 makes/);
    expect(chain(first, lime, vitriol)).toMatch(/^step 3 uses nothing that step 2 \(CaCO3 -> CaO \+ CO2\) makes/);
  });
});

// Heats of solution (handbooks): calcium chloride -81.3 kJ/mol, potassium iodide +20.3 kJ/mol; a liquor takes some 4 J/(g K).
describe("dissolving", () => {
  const texts = (
    equation: string,
    product: string,
    materials: PlanRequest["materials"],
    portion: "22.2 g" | "16.6 g",
  ) =>
    planPreparation({ equation, product, materials, scale: { material: "salt", portion } })
      .steps.map(({ text }) => text)
      .filter((text) => text.startsWith("Dissolve the salt"));

  // 0.200 mol × 81.3 kJ/mol / (222 g × 4 J/(g K)) = 18 K
  it("warms", () => {
    const materials = [
      { name: "salt", form: "CaCl2" },
      { name: "soda", form: "Na2CO3" },
    ];
    expect(texts("CaCl2 + Na2CO3 -> CaCO3 + NaCl", "CaCO3", materials, "22.2 g")[0]).toMatch(
      /; it warms by about 18 K/,
    );
  });

  // 0.100 mol × 20.3 kJ/mol / (36.6 g × 4 J/(g K)) = 14 K
  it("or cools", () => {
    const materials: PlanRequest["materials"] = [
      { name: "salt", form: "KI", dissolve: { water: "20 mL" } },
      { name: "lead nitrate", form: "Pb(NO3)2" },
    ];
    expect(texts("Pb(NO3)2 + KI -> PbI2 + KNO3", "PbI2", materials, "16.6 g")[0]).toMatch(/; it cools by about 14 K/);
  });
});

describe("an equation that is read already", () => {
  const text = "CaCl2 + Na2CO3 -> CaCO3 + 2 NaCl";
  it.each([
    ["parsed", parseEquation(text)],
    ["balanced", balance(text)],
  ])("is taken %s, and kept as its text", (_, equation) => {
    const plan = planPreparation({ ...chalk, equation: equation as unknown as string });
    expect(plan.request.equation).toBe(text);
    const kept: unknown = JSON.parse(JSON.stringify(plan));
    expect(planFromJSON(kept).product.theoreticalYield.toString()).toBe(plan.product.theoreticalYield.toString());
  });
});
