// The kind of each published preparation, read from its equation, against the kind its compiler gave it. Five differ, each
// for a reason that is written here; a plan can always be told its kind.
import { benchSheet, bottleLabel, type PlanRequest, planPreparation, tryPlanPreparation } from "preparative";
import { describe, expect, it } from "vitest";
import { PREPARATIONS } from "../data/preparations";

const OTHERWISE: Readonly<Record<string, string>> = {
  // the metal goes into acid, whatever else is reduced
  "cu-sulfate-from-copper-1936": "metal and acid",
  // a chain of five steps; its first is copper into acid
  "cu-cycle-0.685g": "metal and acid",
  // the overall equation of a precipitation and an ignition
  "zn-oxide-via-carbonate-57g": "precipitation",
  // products that dissolve to 5 and 10 g in 100 g of water, and are cooled or crowded out
  "na-bicarbonate-solvay-60g": "crystallisation",
  "b-boric-acid-1911": "crystallisation",
};

/** Forbidden unless they are known and meant: alcohol with a dichromate. */
const MEANT: Readonly<Record<string, readonly string[]>> = {
  "cr-chrome-alum-1936": ["chromate-organic"],
};

const planOf = ({ id, recipe }: (typeof PREPARATIONS)[number]) => {
  const chained = typeof recipe.equation !== "string";
  const { form } = recipe.materials[0]!;
  const request = {
    equation: chained ? recipe.equation[0]! : recipe.equation,
    product: chained ? "Cu(NO3)2" : recipe.product,
    materials: [{ name: "first", form: typeof form === "string" ? form : form[0]! }],
    scale: { material: "first", portion: "100 g" },
    acknowledge: MEANT[id],
  } satisfies PlanRequest;
  return planPreparation(request);
};

/** The report ground and fired it; in water, where plans work, dichromate and sulfur leave each other alone. */
const FIRED = "cr-oxide-green-3g";

it("a dichromate is not planned with sulfur in water, whatever is acknowledged", () => {
  const { recipe } = PREPARATIONS.find(({ id }) => id === FIRED)!;
  const outcome = tryPlanPreparation({
    equation: recipe.equation as string,
    product: recipe.product,
    materials: [{ name: "first", form: "Na2Cr2O7·2H2O" }],
    scale: { material: "first", portion: "3.0 g" },
    acknowledge: ["chromate-fuel", "does-not-go"],
  });
  expect(outcome.ok ? undefined : outcome.error.code).toBe("plan.does-not-go");
});

/** Its first half is a melt of solid lye: in water chlorate leaves manganese dioxide alone, and no plan says that it does not. */
const MELTED = "k-permanganate-1936";

it("manganese dioxide is not planned with chlorate in water, whatever is acknowledged", () => {
  const { recipe } = PREPARATIONS.find(({ id }) => id === MELTED)!;
  const outcome = tryPlanPreparation({
    equation: recipe.equation as string,
    product: recipe.product,
    materials: [{ name: "first", form: "MnO2" }],
    scale: { material: "first", portion: "50 g" },
    acknowledge: ["does-not-go"],
  });
  expect(outcome.ok ? undefined : outcome.error.code).toBe("plan.does-not-go");
});

describe.each(PREPARATIONS.filter(({ id }) => id !== FIRED && id !== MELTED))("$id", (published) => {
  it("is of the kind its equation shows, and can be printed", () => {
    const plan = planOf(published);
    expect(plan.procedure.kind).toBe(OTHERWISE[published.id] ?? published.kind.replace("metal+acid", "metal and acid"));
    expect(benchSheet(plan).length).toBeGreaterThan(1000);
    // where the equilibrium has another solid in place of the product, that is what is weighed and bottled
    const instead = /^Weigh the dry (\S+) \(not/.exec(plan.steps.at(-1)!.text)?.[1];
    expect(bottleLabel(plan)).toContain(instead ?? plan.product.formula);
  });
});
