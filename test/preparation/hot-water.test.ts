// How much hot water crystals come from: more where the hot solution is filtered, where another hydrate would crystallise first, and
// where the boiling liquor would be a mush. Shares common practice, no source; solubilities of our table, sums by hand.
import { type Plan, type PlanRequest, planPreparation, solubilityOf } from "preparative";
import { describe, expect, it } from "vitest";
import { ZINC_ACETATE } from "../data/common-requests";

const grams = (q: { in(unit: string): { toNumber(): number } } | undefined): number => q!.in("g").toNumber();
const put = (plan: Plan): number => grams(plan.steps.find(({ operation }) => operation === "dissolve")!.amounts[0]);
const per = (formula: string, at: "100 °C" | "80 °C" | "65 °C" | "57.2 °C" | "20 °C" | "5 °C"): number =>
  grams(solubilityOf(formula, at).perHundredGramsWater) / 100;

const again = (form: string, portion: "100 g", assay?: "95 %"): Plan =>
  planPreparation({
    equation: `${form} -> ${form}`,
    product: form,
    materials: [{ name: "salt", form, ...(assay === undefined ? {} : { assay }) }],
    scale: { material: "salt", portion },
  });

describe("a hot solution that is filtered", () => {
  // 15 % more water left 4 to 7 K of cooling where a salt dissolves so much better hot, and set in the funnel
  it("is saturated 15 K below it, where the pack has something besides", () => {
    expect(put(again("KNO3", "100 g"))).toBeCloseTo(100 / per("KNO3", "80 °C"), 1);
    expect(put(again("KNO3", "100 g", "95 %"))).toBeCloseTo(95 / per("KNO3", "65 °C"), 1);
  });
});

describe("a hydrate that changes between hot and cold", () => {
  it("comes from water in which it is saturated only below the change: borax below 58.2 °C", () => {
    // 100 g are 52.8 g of Na2B4O7 and 47.2 g of water
    const dry = (100 * 201.22) / 381.37;
    expect(put(again("Na2B4O7·10H2O", "100 g"))).toBeCloseTo(dry / per("Na2B4O7", "57.2 °C") - (100 - dry), 0);
  });
});

describe("a liquor that is boiled down into its crystals", () => {
  const LEAD: PlanRequest = {
    equation: "PbO + HNO3 -> Pb(NO3)2 + H2O",
    product: "Pb(NO3)2",
    materials: [
      { name: "litharge", form: "PbO" },
      { name: "nitric acid", form: "HNO3", strength: "30 %", excess: "5 %" },
    ],
    scale: { product: "40 g" },
    acknowledge: ["lead-acid"],
  };

  it("keeps half of the crop at least dissolved in the boil; of lead what is left is too little to boil again", () => {
    const { steps } = planPreparation(LEAD);
    const water = grams(steps.find(({ operation }) => operation === "concentrate")!.after.water);
    const standing = 40 - per("Pb(NO3)2", "100 °C") * water;
    const coming = 40 - per("Pb(NO3)2", "5 °C") * water;
    expect(standing / coming).toBeLessThanOrEqual(0.505);
    expect(standing / coming).toBeGreaterThan(0.45);
    const stays = per("Pb(NO3)2", "5 °C") * water;
    expect(stays).toBeLessThan(0.25 * 40);
    expect(steps.some(({ text }) => text.startsWith("For a second crop"))).toBe(false);
  });

  it("is evaporated on a water bath, not boiled, where nobody knows what hot water dissolves", () => {
    const { steps } = planPreparation(ZINC_ACETATE);
    const text = steps.find(({ operation }) => operation === "concentrate")!.text;
    expect(text).toMatch(
      /^Evaporate the liquor slowly in a wide dish on a water bath, not boiling, stirring often, until/,
    );
    expect(text).not.toContain("boiled off");
  });
});
