// Papers beside the sheet of a plan: a chain with and without prices, a class with and without waste, and labels of jars whose
// classification is known, thin, absent or not looked up.
import { benchSheet, bottleLabel, type PlanRequest, planPreparation, planSequence } from "preparative";
import { describe, expect, it } from "vitest";

const flat = (text: string): string => text.replace(/\s+/g, " ");
const pack = (price: "2 EUR" | "3 EUR") => ({ size: "1 kg", price }) as const;

describe("a chain", () => {
  const chainWith = (price: "2 EUR" | undefined) =>
    planSequence({
      steps: [
        {
          equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
          product: "CaCO3",
          productName: "chalk",
          materials: [
            { name: "de-icer", form: "CaCl2·2H2O", pack: pack("3 EUR") },
            { name: "soda ash", form: "Na2CO3", ...(price === undefined ? {} : { pack: pack(price) }) },
          ],
        },
        { equation: "CaCO3 -> CaO + CO2", product: "CaO", materials: [{ name: "chalk", form: "CaCO3" }] },
      ],
      wanted: "10 g",
    });

  it("begins with what the last preparation brings, the overall equation and the shelf", () => {
    const lines = benchSheet(chainWith("2 EUR")).split("\n");
    expect(lines[0]).toMatch(/^10\.0 g of CaO in 2 preparations$/);
    expect(lines[2]).toBe("CaCl₂ + Na₂CO₃ → 2 NaCl + CaO + CO₂");
    expect(lines[3]).toBe("Date ________ Worker ________");
  });

  it("costs what its packs cost, by the gram of the last product", () => {
    // 10 g of CaO takes 17.85 g of chalk, weighed 17.8: 26.1 g of de-icer at 3 EUR/kg and 18.9 g of soda at 2 EUR/kg
    const total = (26.1 * 3 + 18.9 * 2) / 1000;
    const [, cost, perGram] = /([\d.]+) EUR for all of it, ([\d.]+) EUR\/g of the last product/.exec(
      flat(benchSheet(chainWith("2 EUR"))),
    )!;
    expect(Number(cost)).toBeCloseTo(total, 2);
    expect(Number(perGram)).toBeCloseTo(total / 10, 3);
    expect(flat(benchSheet(chainWith(undefined)))).toContain(
      "The cost of the batch is unknown: price of soda ash missing.",
    );
  });

  it("has the parts that are asked for, for each preparation", () => {
    const count = (parts: readonly ("bench" | "basis")[], heading: string): number =>
      benchSheet(chainWith("2 EUR"), { parts }).split(`\n${heading}\n`).length - 1;
    expect([count(["bench"], "Procedure"), count(["bench"], "Sources")]).toEqual([2, 0]);
    expect([count(["basis"], "Procedure"), count(["basis"], "Sources")]).toEqual([0, 2]);
    expect([count(["bench", "basis"], "Procedure"), count(["bench", "basis"], "Sources")]).toEqual([2, 2]);
  });
});

describe("a class", () => {
  const chalk: PlanRequest = {
    equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
    product: "CaCO3",
    materials: [
      { name: "de-icer", form: "CaCl2·2H2O", pack: pack("3 EUR") },
      { name: "soda ash", form: "Na2CO3", pack: { size: "2 L", price: "2 EUR" } },
    ],
    scale: { product: "20 g" },
  };

  it("buys whole packs by mass, and none where a pack is of another measure", () => {
    const text = benchSheet(planPreparation(chalk), { groups: 40 });
    // 40 x 29.4 g = 1176 g
    expect(text).toMatch(/de-icer\s+CaCl₂·2H₂O\s+29\.4 g\s+1176\.0 g\s+2 of 1000 g/);
    expect(text).toMatch(/soda ash\s+Na₂CO₃\s+21\.2 g\s+848\.0 g\n/);
  });

  it("needs no water where solids are fired, and expects of a group what a plan expects", () => {
    const lime = planPreparation({
      equation: "CaCO3 -> CaO + CO2",
      product: "CaO",
      materials: [{ name: "marble", form: "CaCO3" }],
      scale: { material: "marble", portion: "100.0 g" },
    });
    const teacher = flat(benchSheet(lime, { groups: 5 }).split("\nProcedure\n")[0]!);
    expect(teacher).toContain("marble CaCO₃ 100.0 g 500.0 g");
    expect(teacher).not.toContain("water, washing included");
    // 100.0 / 100.087 x 56.077 = 56.03 g; two hundredths may stay in a crucible
    expect(teacher).toContain("Expected of each group: 54.9 to 56.0 g; 100 % = 56.0 g.");
    expect(teacher).not.toContain("of waste from all groups");
  });
});

describe("a label of a jar", () => {
  it.each([
    // CLP, Annex VI: calcium chloride H319; table salt is none of it; acetic acid is limited at 10 %
    ["CaCl2", "WARNING: Causes serious eye irritation (H319)."],
    ["NaHCO3", "no hazard"],
    ["CaCO3", "food additive E 170; no hazard listed"],
    ["Fe2O3", "no hazard listed in the source, which is not the same as safe"],
    ["Y2(C2O4)3", ""],
  ])("%s says %j", (jar, says) => {
    expect(flat(bottleLabel(jar))).toContain(says);
  });

  it("of a solution goes by its strength", () => {
    const weak = bottleLabel("CH3COOH", { strength: "5 %" });
    expect(weak).toContain("- 5 %");
    expect(flat(weak)).toContain("too dilute for any statement of its class, which is not the same as safe");
    expect(flat(bottleLabel("NaOH", { strength: "40 %" }))).toMatch(/DANGER: .*H314/);
    expect(flat(bottleLabel("NaOH", { strength: "1 %" }))).toMatch(/WARNING: .*H319/);
  });

  it("has the content in the unit a person would say", () => {
    for (const [content, shown] of [
      ["0.25 kg", "250 g"],
      ["1500 mL", "1.50 L"],
      ["250 mL", "250 mL"],
      ["12 kg", "12.0 kg"],
    ] as const)
      expect(bottleLabel("NaCl", { content })).toContain(`- ${shown}\n`);
    expect(bottleLabel("NaCl")).not.toMatch(/- [\d.]+ k?g\n/);
  });

  it("warns of what absorbs water, and how warm it may get", () => {
    const plan = planPreparation({
      equation: "K2SO4 + CaCl2 -> 2 KCl + CaSO4",
      product: "KCl",
      materials: [
        { name: "potash", form: "K2SO4" },
        { name: "de-icer", form: "CaCl2·2H2O" },
      ],
      scale: { product: "10 g" },
    });
    // an oven of 110 °C dries potassium chloride, and nothing less than its melting point, 770 °C, changes it (from memory)
    expect(flat(bottleLabel(plan))).toContain("planned: 10.0 g at 100 % yield - from potash, de-icer - ");
    expect(bottleLabel(plan)).not.toMatch(/do not warm above|deliquescent/);
    const green = planPreparation({
      equation: "FeSO4·7H2O -> FeSO4·7H2O",
      product: "FeSO4·7H2O",
      materials: [{ name: "iron vitriol", form: "FeSO4·7H2O" }],
      scale: { product: "10 g" },
    });
    expect(flat(bottleLabel(green))).toContain("- from iron vitriol - do not warm above 25 °C");
  });

  it("leaves lines for what only the person knows", () => {
    expect(bottleLabel("NaCl")).toContain("Date __________ Batch __________ By __________");
    expect(bottleLabel("NaCl", { date: "1 May", batch: "7", owner: "A. B." })).toContain("Date 1 May Batch 7 By A. B.");
  });

  it("of 60 x 30 mm has what fits: signs and statements, no advice, two lines, short blanks", () => {
    const [small, large] = (["60 x 30 mm", "100 x 62 mm"] as const).map((size) =>
      bottleLabel("NaOH", { format: "html", size, content: "250 g" }),
    ) as [string, string];
    expect(small).toMatch(/>Date ______ &nbsp; /);
    expect(large).toMatch(/>Date __________ &nbsp; /);
    expect(small).not.toContain("(P280)");
    expect(large).toContain("(P280)");
    expect(small).not.toContain('class="closing"');
    expect(large).toContain('class="closing"');
    for (const label of [small, large]) {
      expect(label).toContain('<p class="signal">DANGER</p>');
      expect(label.match(/class="pictogram"/g)).toHaveLength(1);
    }
  });
});
