// Names against forms: the water that a name states, or another substance altogether.
import { benchSheet, checkRecipe, planPreparation, type Recipe, tryCheckRecipe } from "preparative";
import { describe, expect, it } from "vitest";

const planOf = (name: string, form: string) =>
  planPreparation({
    equation: "ZnSO4 + Na2CO3 -> ZnCO3 + Na2SO4",
    product: "ZnCO3",
    materials: [
      { name, form },
      { name: "soda", form: "Na2CO3" },
    ],
    scale: { product: "20 g" },
  });

describe("a name that contradicts its form", () => {
  it.each([
    ["zinc sulfate heptahydrate", "ZnSO4", "ZnSO₄·7H₂O"],
    ["zinc sulfate heptahydrate", "ZnSO4·H2O", "ZnSO₄·7H₂O"],
    ["anhydrous zinc sulfate", "ZnSO4·7H2O", "ZnSO₄,"],
    ["magnesium sulfate", "ZnSO4", "MgSO₄"],
  ])("%s for %s is warned of, on the sheet as well", (name, form, meant) => {
    const plan = planOf(name, form);
    expect(plan.warnings).toHaveLength(1);
    expect(plan.warnings[0]).toContain(`'${name}' means ${meant}`);
    expect(benchSheet(plan).replace(/\s+/g, " ")).toContain(`CHECK: '${name}' means`);
  });

  // names that leave the water out, trade names, elements and words of one's own go with what is in the jar
  it.each([
    ["zinc sulfate heptahydrate", "ZnSO4·7H2O"],
    ["zinc sulfate", "ZnSO4·7H2O"],
    ["zinc sulfate", "ZnSO4"],
    ["white vitriol", "ZnSO4·7H2O"],
    ["moss killer", "ZnSO4·7H2O"],
    ["zinc", "ZnSO4·H2O"],
    ["jar 5", "ZnSO4"],
    // the name of an ion is no name of a pack
    ["sulfate", "ZnSO4"],
    ["chloride", "ZnSO4"],
  ])("%s for %s is not", (name, form) => expect(planOf(name, form).warnings).toEqual([]));
});

describe("a recipe", () => {
  const recipe: Recipe = {
    equation: "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
    product: "Cu2(OH)2CO3",
    materials: [
      { name: "copper sulfate pentahydrate", form: "CuSO4", amount: "64 g" },
      { form: "Na2CO3", amount: "24 g" },
    ],
  };

  it("tells a name that contradicts its form", () => {
    const codes = checkRecipe(recipe).findings.map(({ code }) => code);
    expect(codes).toContain("recipe.name-contradicts-form");
  });

  it.each([
    [{ materials: [null] }, "plan.request"],
    [{ materials: [{ form: "CuSO4", amont: "64 g" }] }, "plan.unknown-option"],
    [{ washd: false }, "plan.unknown-option"],
    [{ washed: "no" }, "plan.request"],
    [{ stated: { molarMasses: "x" } }, "plan.request"],
    [{ stated: { molarMasses: [null] } }, "plan.request"],
    [{ productForms: "x" }, "plan.request"],
    [{ product: 5 }, "plan.request"],
    [{ equation: 5 }, "plan.request"],
    [{ isolation: "sieve" }, "plan.request"],
    [{ analysis: { parts: "x" } }, "plan.request"],
    [{ analysis: { ignition: {} } }, "plan.request"],
    [{ materials: undefined }, "plan.request"],
  ])("with %j is refused", (spoilt, code) => {
    const outcome = tryCheckRecipe({ ...recipe, ...spoilt } as unknown as Recipe);
    expect(outcome.ok ? "read" : outcome.error.code).toBe(code);
  });
});
