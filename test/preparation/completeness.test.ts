// How much of a product the liquor of its own reaction keeps: what a plan says is what the beaker says of the same amounts in the
// same water. Acid, ammonium and excess of the reaction count; in pure water each of these precipitates to 99 % and more.
import { describe, expect, it } from "vitest";
import { aqueousComposition, type PlanRequest, planPreparation, tryPlanPreparation } from "../../src";

const cases: readonly (readonly [
  what: string,
  equation: string,
  product: string,
  salt: readonly [form: string, mass: string, moles: number],
  precipitant: readonly [
    form: string,
    more: Partial<PlanRequest["materials"][number]>,
    moles: number,
    dissolved: string,
  ],
  percent: readonly [low: number, high: number],
])[] = [
  [
    "calcium oxalate from oxalic acid: the acid set free keeps a tenth",
    "CaCl2 + H2C2O4 + H2O -> CaC2O4·H2O + 2 HCl",
    "CaC2O4·H2O",
    ["CaCl2·2H2O", "14.701 g", 0.1],
    ["H2C2O4·2H2O", {}, 0.1, "H2C2O4"],
    [88, 95],
  ],
  [
    "aluminium hydroxide with 5 % of lye over: each OH- in excess takes one Al(OH)3, 0.015 mol of 0.1",
    "AlCl3 + 3 NaOH -> Al(OH)3 + 3 NaCl",
    "Al(OH)3",
    ["AlCl3·6H2O", "24.143 g", 0.1],
    ["NaOH", { excess: "5 %" }, 0.315, "NaOH"],
    [84, 86],
  ],
  [
    "zinc hydroxide with twice the lye: much of it is zincate",
    "ZnSO4 + 2 NaOH -> Zn(OH)2 + Na2SO4",
    "Zn(OH)2",
    ["ZnSO4·7H2O", "28.756 g", 0.1],
    ["NaOH", { excess: "100 %" }, 0.4, "NaOH"],
    [40, 80],
  ],
];

describe("completeness of a precipitation", () => {
  it.each(cases)(
    "%s",
    (_, equation, product, [form, mass, moles], [other, more, otherMoles, dissolved], [low, high]) => {
      const plan = planPreparation({
        equation,
        product,
        materials: [
          { name: "salt", form },
          { name: "precipitant", form: other, ...more } as PlanRequest["materials"][number],
        ],
        scale: { material: "salt", portion: mass as "1 g" },
      });
      const { completeness } = plan;
      if (completeness === undefined || !("dissolved" in completeness)) throw new Error("unknown");
      const percent = completeness.precipitated.in("%").toNumber();
      expect(percent).toBeGreaterThan(low);
      expect(percent).toBeLessThan(high);
      const beaker = aqueousComposition({
        water: plan.liquor.water!.toString() as "1 g",
        dissolved: [
          { formula: form.replace(/·.*/, ""), amount: `${moles} mol` as "1 mol" },
          { formula: dissolved, amount: `${otherMoles} mol` as "1 mol" },
        ],
      });
      const stands = beaker.solids.reduce((all, { amount }) => all + amount.in("mol").toNumber(), 0);
      expect(Math.abs((100 * stands) / moles - percent)).toBeLessThan(1.5);
    },
  );

  it("is none at all where the excess takes everything back, or the other solid is the stable one: such plans are refused", () => {
    const code = (equation: string, product: string, a: string, b: string, excess?: "50 %") => {
      const plan = tryPlanPreparation({
        equation,
        product,
        materials: [
          { name: "a", form: a },
          { name: "b", form: b, ...(excess && { excess }) },
        ],
        scale: { material: "a", portion: "10 g" },
      });
      return plan.ok ? undefined : plan.error.code;
    };
    expect(code("AlCl3 + 3 NaOH -> Al(OH)3 + 3 NaCl", "Al(OH)3", "AlCl3·6H2O", "NaOH", "50 %")).toBe(
      "plan.does-not-go",
    );
    expect(code("MgCl2 + NiO + H2O -> Mg(OH)2 + NiCl2", "Mg(OH)2", "MgCl2·6H2O", "NiO")).toBe("plan.does-not-go");
  });
});
