// A trial with preparations written down before the code was read: each sheet read line by line as a bench worker who has only the
// sheet. What it said wrong is held here; grounds beside each, general chemistry and common practice from memory where none is named.
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { doesItGo, type Plan, type PlanRequest, planPreparation, tryPlanPreparation } from "../../src/preparation";
import { dryingOf } from "../../src/preparation/procedure/drying";
import { benchSheet } from "../../src/sheet";
import { washAdvice } from "../../src/solubility";
import { PHYSICAL } from "../../src/substance/data/physical";
import { FRESH_PREPARATIONS } from "../data/fresh-trial";

const requestOf = (number: string): PlanRequest =>
  FRESH_PREPARATIONS.find(({ id }) => id.split(" ")[0] === number)!.request;
const planOf = (number: string, more: Partial<PlanRequest> = {}): Plan =>
  planPreparation({ ...requestOf(number), ...more });
const sheetOf = (plan: Plan): string => benchSheet(plan, { format: "text" }).replace(/\s+/g, " ");
const cautionsIn = (plan: Plan): string[] => plan.steps.flatMap(({ cautions }) => cautions.map(({ text }) => text));

describe("thirty-five preparations written down beforehand", () => {
  it.each(FRESH_PREPARATIONS)("$id gives the theory worked out by hand, and ends in a bottle", ({ request, grams }) => {
    const plan = planPreparation({ ...request, readability: { mass: "0.01 g", volume: "0.1 mL" } });
    // 0.5 %: portions are rounded up to the marks of the cylinder
    expect(plan.product.theoreticalYield.toNumber("g") / grams).toBeCloseTo(1, 2);
    expect(plan.steps.at(-1)!.operation).toBe("collect");
    expect(plan.steps.flatMap(({ operation, materials }) => (operation === "weigh" ? materials : [])).sort()).toEqual(
      request.materials.map(({ name }) => name).sort(),
    );
  });

  it.each(FRESH_PREPARATIONS)("$id says nothing that a worker could not do", ({ request }) => {
    const plan = planPreparation(request);
    const text = sheetOf(plan);
    const warmed = plan.steps.some(({ operation, target }) => operation === "heat" && target !== undefined);
    // "filter it cold" beside "warm the liquor to 80 °C", unless it has cooled again by then
    const cooled = plan.steps.some(({ operation }) => operation === "cool");
    if (warmed && !cooled) expect(text).not.toContain("filter it cold");
    expect(plan.checks.map((one) => one.text).join()).not.toMatch(/\d mol\b/);
    expect(text).not.toMatch(/about less than|at pH not known|at pH any/);
    // a liquor that is evaporated where it stands leaves nothing to collect
    const pours = plan.steps.some(({ left }) => left.some(({ what }) => what === "filtrate" || what === "wash water"));
    expect(plan.waste.volume === undefined).toBe(!pours);
  });
});

describe("an equation without the water of its crystals", () => {
  it("is balanced with it, and the plan says so", () => {
    const plan = planOf("25");
    expect(String(plan.equation)).toBe("2 KHC4H4O6 + Na2CO3 + 7 H2O -> 2 KNaC4H4O6.4H2O + CO2");
    expect(plan.assumptions[0]).toMatchObject({ value: "H₂O", source: "commonPractice" });
    // the same on the side of the products: citric acid and three NaHCO3 set one water more free than the dihydrate binds
    expect(String(planOf("27").equation)).toBe("C6H8O7 + 3 NaHCO3 -> Na3C6H5O7.2H2O + 3 CO2 + H2O");
    const written = planOf("6", { equation: "Fe + H2SO4 + 7 H2O -> FeSO4·7H2O + H2" });
    expect(written.assumptions.some(({ value }) => value === "H₂O")).toBe(false);
    expect(written.product.theoreticalYield.toString()).toBe(planOf("6").product.theoreticalYield.toString());
  });

  it("is asked whether it goes as well", () => {
    expect(doesItGo({ equation: "Fe + H2SO4 -> FeSO4·7H2O + H2", product: "FeSO4·7H2O" }).verdict).toBe("goes");
  });

  it("is refused where coefficients are wrong, or something else is missing", () => {
    const codeOf = (equation: string, product: string): string | undefined => {
      const plan = tryPlanPreparation({ ...requestOf("25"), equation, product });
      return plan.ok ? undefined : plan.error.code;
    };
    expect(codeOf("KHC4H4O6 + Na2CO3 -> 2 KNaC4H4O6·4H2O + CO2", "KNaC4H4O6·4H2O")).toBe("equation.wrong-coefficients");
    expect(codeOf("KHC4H4O6 + Na2CO3 -> KNaC4H4O6·4H2O", "KNaC4H4O6·4H2O")).toBe("equation.impossible");
  });
});

describe("read as a bench worker", () => {
  it("stirs solids that nothing brings water for into the water that dissolves the product", () => {
    const plan = planOf("25");
    // 67.8 g of KNaC4H4O6 (210.2 g/mol) in 100 g of water at 20 °C (Lange; 45 g at 25 °C before): 21.0 g need 31.0 g, of which
    // the crystals' 7 H2O a pair are no part
    const water = plan.steps.find(({ operation }) => operation === "suspend")!.amounts[0]!.toNumber("g");
    expect(water).toBeGreaterThan(27);
    expect(water).toBeLessThan(40);
    expect(plan.vessel?.smallest?.toNumber("mL")).toBe(250);
    expect(plan.unknown.join()).not.toContain("how much water");
    // an acid salt of a weak acid is the acid: the worker is told when it is done
    expect(plan.procedure.kind).toBe("neutralisation");
    expect(plan.steps.find(({ operation }) => operation === "hold")!.blank).toBe("pH");
  });

  it("seeds where the seed does not dissolve", () => {
    // Glauber's salt melts at 32.4 °C, and its liquor is saturated at 30 to 31 °C (41 g of Na2SO4 in 100 g of water at 30 °C)
    expect(planOf("4").steps.find(({ operation }) => operation === "seed")!.text).toContain("about 27 °C");
    // alum: as soon as there is 5 % more than water keeps, for seeded at 50 °C, half way down, it sets to mush at once
    expect(planOf("14").steps.find(({ operation }) => operation === "seed")!.text).toContain("about 70 °C");
  });

  it("lets the lye take all of a metal before the acid comes", () => {
    const { steps, checks, waste, dissolvingHeat } = planOf("14");
    const metal = steps.findIndex(({ text }) => /^Add the .* of foil/.test(text));
    expect(steps[metal + 1]!.text).toMatch(/no more gas rises and the foil has gone into solution/);
    expect(steps[metal]!.cautions.map(({ text }) => text).join()).not.toMatch(/into the acid|diluted acid/);
    const acid = steps.find(({ text }) => text.startsWith("Pour the sulfuric acid solution"))!;
    expect(acid.cautions.map(({ text }) => text).join()).not.toMatch(/gas is given off|the gas burns/);
    // 10 K and more is hot (common practice): by the heat of dilution this acid warms by less
    const diluting = dissolvingHeat.find(({ material }) => material === "sulfuric acid")!;
    expect("rise" in diluting && diluting.rise.rise.in("ΔK").toNumber()).toBeLessThan(10);
    expect(acid.cautions.map(({ text }) => text).join()).not.toContain("diluted acid is hot");
    expect(checks.map(({ text }) => text).join()).not.toContain("runs out");
    // what is left of lye and of acid is potassium sulfate
    const names = waste.vessels.flatMap(({ contents }) => contents.dissolved.map(({ formula }) => formula));
    expect(names).toContain("K₂SO₄");
    expect(names).not.toContain("KOH");
  });

  it("tests for carbonate with the gas that brings it", () => {
    expect(planOf("24").completeness!.test).toBe(
      "lead a little carbon dioxide through some of the clear liquor: a cloud means that more is needed",
    );
  });

  it("washes crystals of an ammine as crystals", () => {
    const { steps } = planOf("19");
    const wash = steps.find(({ operation }) => operation === "wash")!;
    // 0.4 g dissolves in 100 g of cold water: 10 g washed with litres would be gone
    expect(wash.amounts[0]!.toNumber("mL")).toBeLessThan(100);
    expect(steps.at(-1)!.target!.toNumber("g")).toBeGreaterThan(9.5);
  });

  it("boils nothing off for a second crop that no cylinder shows", () => {
    // 0.5 g of water is left of the liquor
    expect(sheetOf(planOf("20"))).not.toMatch(/second crop\s+(?:boil|evaporate)/);
    // of ferrous sulfate 60 °C dissolves more than the boil; in ice so much comes that no second crop is worth it
    expect(sheetOf(planOf("6"))).toMatch(/on a water\s+bath at 60 °C, not boiling/);
    expect(sheetOf(planOf("6"))).not.toMatch(/second crop/);
  });

  it("warns of heat where heat changes the product, and not where it does not", () => {
    const limit = "keep below the drying limit: more heat changes the product";
    // ferrous sulfate crystals turn damp and brown in warm air
    expect(cautionsIn(planOf("10"))).toContain(limit);
    // a monohydrate keeps its one water to 100 °C: 40 °C is usual, and no edge
    expect(cautionsIn(planOf("26"))).not.toContain(limit);
    // strontium carbonate stands a thousand degrees (general chemistry)
    expect(cautionsIn(planOf("1"))).not.toContain(limit);
    // what is fired has no drying
    expect(sheetOf(planOf("22"))).not.toContain("drying limit");
  });

  it("names no mass of a metal to lift out that no balance shows", () => {
    const bits: PlanRequest = {
      equation: "CuCl2 + Cu -> CuCl",
      product: "CuCl",
      materials: [
        { name: "cupric chloride", form: "CuCl2·2H2O" },
        { name: "turnings", form: "Cu" },
      ],
      scale: { material: "turnings", portion: "6.4 g" },
      readability: { mass: "0.001 g" },
    };
    const lifts = (request: PlanRequest): readonly string[] =>
      planPreparation(request)
        .steps.map(({ text }) => text)
        .filter((text) => text.startsWith("Lift out"));
    // 6.4 g of copper take 17.17 g of the salt, and 17.05 g of the salt 6.356 g: only metal that is left over is lifted out
    expect(lifts(bits)).toEqual([]);
    expect(lifts({ ...bits, scale: { material: "cupric chloride", portion: "17.05 g" } })).toEqual([
      "Lift out what is left of the turnings, if any is seen, and rinse it over the vessel.",
    ]);
  });

  it.each(FRESH_PREPARATIONS)(
    "$id asks for nothing that cannot be weighed or poured, at 1 g of product",
    ({ request }) => {
      const { steps } = planPreparation({ ...request, scale: { product: "1 g" } });
      const text = steps.map((step) => step.text).join("\n");
      expect(text).not.toMatch(/(about|at most) less than/);
      expect(text).not.toMatch(/Rinse the crystals with 0\.\d+ mL/);
      // half of a few drops is no second crop
      expect(text).not.toMatch(/second crop boil the mother liquor down to .* \(0\.\d+ mL/);
    },
  );

  it("says of a complex that its liquor keeps what is not known", () => {
    const plan = planPreparation({
      equation: "NiCl2 + NH3 -> [Ni(NH3)6]Cl2",
      product: "[Ni(NH3)6]Cl2",
      materials: [
        { name: "nickel chloride", form: "NiCl2·6H2O" },
        { name: "ammonia", form: "NH3", strength: "25 %", excess: "50 %" },
      ],
      scale: { material: "nickel chloride", portion: "10.0 g" },
    });
    const text = sheetOf(plan);
    expect(text).toContain(
      "at most 9.8 g, violet-blue (the theory; how much less is not known: solubility of [Ni(NH₃)₆]Cl₂)",
    );
    expect(text).toContain("9.8 g at 100 % yield, less what the liquor keeps, which is not known");
    expect(text).not.toContain("more was lost than handling explains");
  });

  it("crystallises calcium lactate as its pentahydrate (Wikipedia, Calcium lactate: 5.8 g of it in 100 mL at 20 °C)", () => {
    const plan = planOf("29", { equation: "CaCO3 + C3H6O3 -> Ca(C3H5O3)2 + CO2 + H2O", product: "Ca(C3H5O3)2" });
    expect(plan.product.formula).toBe("Ca(C₃H₅O₃)₂·5H₂O");
    expect(plan.unknown.join()).not.toContain("solubility of Ca(C");
  });
});

describe("a hydrate that melts in its own water", () => {
  it("is dried no warmer than it stays a solid, with five degrees to spare", () => {
    const hydrates = PHYSICAL().filter(({ formula, change }) => change === "melts" && /·.*H2O/.test(formula));
    expect(hydrates.length).toBeGreaterThan(40);
    const tooWarm = hydrates.flatMap(({ formula, celsius }) => {
      const { upTo } = dryingOf(parseFormula(formula));
      const melts = Number(celsius);
      return upTo !== undefined && upTo.toNumber("°C") > Math.max(melts - 5, 25) ? [`${formula} ${upTo} ${melts}`] : [];
    });
    expect(tooWarm).toEqual([]);
  });
});

describe("the test of the last wash", () => {
  const testFor = (product: string, washedOut: string[], ion: string): string | undefined =>
    washAdvice({ product, washedOut }).endTests.find((one) => one.ion === ion)?.test;

  it("finds acid by paper", () => {
    for (const acid of ["H2SO4", "HCl", "H2C2O4", "CH3COOH"])
      expect(testFor("FeC2O4·2H2O", [acid], "H^+") ?? testFor("FeC2O4·2H2O", [acid], "H+"), acid).toContain("litmus");
    expect(testFor("FeC2O4·2H2O", ["H2SO4"], "SO4^2-")).toContain("barium chloride");
    expect(washAdvice({ product: "CaCO3", washedOut: ["H3BO3"] }).endTests).toEqual([]);
  });

  it("asks for no neutral paper of a product that is alkaline itself", () => {
    // magnesium hydroxide in water: pH 10.4 by its solubility product (general chemistry); strontium carbonate above pH 9
    expect(testFor("Mg(OH)2", ["NaOH"], "OH-")).toContain("as in pure water that some of the product was stirred with");
    expect(testFor("SrCO3", ["Na2CO3"], "CO3^2-")).toContain("as in pure water");
    expect(testFor("BaSO4", ["NaOH"], "OH-")).toContain("indicator paper neutral");
  });
});
