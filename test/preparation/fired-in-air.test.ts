// Firings that make heavier, by what they take up from the air: how hot, what the mass says of how far they went, and what it does
// not tell. Common practice, no source, unless a line names another. Sums by hand beside the figures.
import { benchSheet, evaluateRun, type Observations, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const inAir = (product: string, form: string): PlanRequest => ({
  equation: `${form} + O2 -> ${product}`,
  product,
  materials: [{ name: "charge", form }],
  scale: { product: "50 g" },
});
const RED_LEAD = planPreparation(inAir("Pb3O4", "PbO"));
// 6 × 223.2 = 1339.2 give 2 × 685.6 = 1371.2: 48.83 g become 50.00 g, a gain of 1.17 g; 48.8 g are weighed, for 49.97 g
const BLACK_COPPER = planPreparation(inAir("CuO", "Cu"));
// 63.55 give 79.55: 39.9 g are weighed, for 49.95 g; 2 % of that is 1.0 g, a tenth of the gain of 10.0 g

const verdictOf = (plan: typeof RED_LEAD, observations: Observations) => evaluateRun(plan, observations).verdict;
const sheetOf = (plan: typeof RED_LEAD): string => benchSheet(plan, { format: "text" }).replace(/\s+/g, " ");

describe("a firing that takes up oxygen", () => {
  // red lead forms at 450 to 480 °C and gives litharge again from 500 to 550 °C on (from memory)
  it("says how hot, and where the product gives it back", () => {
    const fire = RED_LEAD.steps.find(({ operation }) => operation === "fire")!;
    expect(fire.text).toContain(
      "Heat slowly to 480 °C, and not to 500 °C, where it changes again, open to the air and stirred up now and then, and keep it there until the mass stands still at 50.0 g, from 48.8 g",
    );
    expect(RED_LEAD.feasibility.verdict).toBe("goes");
    expect(RED_LEAD.unknown).not.toContain("firing temperature of Pb₃O₄");
  });

  it("says where the product gives it back even where no table says how hot", () => {
    // manganese(II,III) oxide of manganese(III) oxide above 940 °C (thermal steps, from memory)
    const plan = planPreparation(inAir("Mn2O3", "MnO"));
    expect(plan.unknown).toContain("firing temperature of Mn₂O₃");
    expect(plan.steps.find(({ operation }) => operation === "fire")!.text).toMatch(/not to 990 °C, where it changes/);
  });

  it("is done when the mass has risen", () => {
    expect(RED_LEAD.checks.map(({ text }) => text)).toContain(
      "it is done when 48.8 g has risen to 50.0 g of Pb₃O₄ (gains 2.39 %) and stays there",
    );
  });
});

describe("its sheet", () => {
  it("does not take a mass for done that a gain smaller than the handling loss hides in", () => {
    const sheet = sheetOf(RED_LEAD);
    expect(sheet).toMatch(/more than 50\.0 g more than all of it can weigh/);
    expect(sheet).toMatch(
      /48\.8 to 50\.0 g the mass alone does not tell: handling may take 1\.0 g, and all of the gain is 1\.2 g/,
    );
    expect(sheet).toMatch(/less than 48\.8 g less than was put in/);
    expect(sheet).toContain("share that has reacted, if nothing was lost = (mass - 48.8 g) / 1.2 g");
    expect(sheet).not.toContain("not heated through");
  });

  it("says of a mass between charge and theory that it is not fired through, where handling is small beside the gain", () => {
    const sheet = sheetOf(BLACK_COPPER);
    expect(sheet).toMatch(/48\.9 to 49\.9 g as expected, allowing for handling/);
    expect(sheet).toMatch(/39\.9 to 48\.9 g not fired through: heat again/);
  });

  it("asks for goggles, and for no wet work", () => {
    const sheet = sheetOf(RED_LEAD);
    expect(sheet).toContain("[ ] goggles");
    expect(sheet).toContain("[ ] no dust: dust mask (FFP3), and wipe up wet");
    expect(sheet).not.toContain("work wet");
    expect(sheet).toContain("Firing record");
  });
});

describe("its verdict", () => {
  it("is that a charge that gained nothing was not fired through", () => {
    const [first] = verdictOf(RED_LEAD, { dried: "48.8 g" });
    expect(first!.code).toBe("unreacted");
    expect(first!.text).toContain("0.0 % has reacted and 48.8 g of charge is left");
  });

  // (45.0 - 39.9) / 10.05 = 51 %: 0.49 × 39.9 = 19.6 g of copper
  it("tells what share has reacted, and what is left of the charge", () => {
    const [first] = verdictOf(BLACK_COPPER, { dried: "45.0 g" });
    expect(first!.code).toBe("unreacted");
    expect(first!.text).toContain("51 % has reacted and 19.6 g of charge is left");
    expect(first!.figure!.toNumber("%")).toBeCloseTo(50.8, 0);
  });

  // (49.5 - 48.8) / 1.17 = 60 %
  it("is not that all is well where the gain hides in what handling takes", () => {
    const [first, second] = verdictOf(RED_LEAD, { dried: "49.5 g" });
    expect([first!.code, second!.code]).toEqual(["unreacted", "consistent"]);
    expect(second!.text).toContain("the mass alone does not tell it from 60 % reacted");
    expect(second!.next).toBe("heat again until it gains no more");
  });

  it("is that all is well where a second firing adds nothing, and that it goes on where one does", () => {
    expect(verdictOf(RED_LEAD, { dried: ["49.5 g", "49.5 g"] })[0]!.code).toBe("consistent");
    const [first] = verdictOf(RED_LEAD, { dried: ["49.2 g", "49.6 g"] });
    expect(first!.text).toBe("49.6 g is not constant: the last firing added 0.4 g, more than 0.2 g");
    expect(verdictOf(RED_LEAD, { dried: "50.0 g" })[0]!.code).toBe("consistent");
  });

  // 48.8 - 46.0 = 2.8 g; (49.97 - 46.0) / 49.97 = 7.9 %
  it("is a loss where it weighs less than was put in, and not a part of the charge that was inactive: that stays", () => {
    const found = verdictOf(RED_LEAD, { dried: "46.0 g" });
    expect(found[0]!.code).toBe("lighter-than-losses-explain");
    expect(found[0]!.text).toContain("2.8 g less than the 48.8 g that went in");
    const texts = found.map(({ text }) => text);
    expect(texts).toContain("it would fit if 7.9 % of the charge was water or something else that heat drives out");
    expect(texts.join()).not.toContain("active");
  });

  it("takes the weighings of the firing itself for no test of a sample", () => {
    const run = evaluateRun(RED_LEAD, { dried: "49.9 g", ignition: { before: "48.8 g", after: "49.9 g" } });
    expect(run.identity).toBeUndefined();
    expect(run.verdict[0]!.code).toBe("consistent");
  });
});
