// What a cake of another solid keeps of a wanted liquor. Chalk on suction keeps 0.5 to 1 mL of liquor for each gram (planning
// values of the library, common practice); the washing is counted by hand, each portion mixing with what the cake keeps.
import { describe, expect, it } from "vitest";
import { type PlanRequest, planPreparation } from "../../src/preparation";

const SALTPETRE: PlanRequest = {
  equation: "Ca(NO3)2 + K2CO3 -> KNO3 + CaCO3",
  product: "KNO3",
  materials: [
    { name: "lime saltpetre", form: "Ca(NO3)2·4H2O" },
    { name: "potash", form: "K2CO3" },
  ],
  scale: { product: "50 g" },
};

describe("saltpetre over chalk", () => {
  const plan = planPreparation(SALTPETRE);
  const step = plan.steps.find(({ operation }) => operation === "filter")!;
  const [residue] = step.left;
  const inResidue = residue!.contents.dissolved.find(({ formula }) => formula === "KNO₃")!.amount.toNumber("mol");
  const inPot = step.before.dissolved.find(({ formula }) => formula === "KNO₃")!.amount.toNumber("mol");

  it("is washed out of the chalk with hot water of a stated amount, which is in the table", () => {
    expect(step.text).toMatch(/wash it twice with (?:1[5-9]|2[0-5]) mL of water each, hot, into the liquor/);
    const each = Number(/twice with (\d+) mL/.exec(step.text)![1]);
    expect(step.put[0]!.water.toNumber("g") / (2 * each)).toBeCloseTo(1, 1);
  });

  it("loses what two portions leave, and the crystals are counted from the rest", () => {
    // liquor: 50.0 g of KNO3 in some 100 g of water and more; the cake keeps a volume of it, and each portion of as much water leaves
    // half of that
    const water = step.put[0]!.water.toNumber("g") / 2;
    const liquor = step.before.water.toNumber("g") + inPot * 101.1;
    const chalk = step.before.solids[0]!.mass.toNumber("g");
    expect(chalk).toBeCloseTo(24.8, 0);
    // 38.6 % by weight: some 1.28 g/mL at 20 °C (1.163 g/mL for 24 %, and on in a straight line; from memory); it swells as water, 0.972 g/mL at 80 °C
    const kept = water;
    const left = (kept / (liquor / (1.28 * 0.974))) * inPot * (kept / (kept + water / 0.972)) ** 2;
    expect(inResidue / left).toBeCloseTo(1, 1);
    const after = step.after.dissolved.find(({ formula }) => formula === "KNO₃")!.amount.toNumber("mol");
    expect((after + inResidue) / inPot).toBeCloseTo(1, 6);
    const crop = plan.steps.find(({ operation }) => operation === "cool")!.after.solids[0]!.mass.toNumber("g");
    expect(crop).toBeLessThan(40.6);
  });

  it("a little oxide over an acid is filtered off as before", () => {
    const { steps } = planPreparation({
      equation: "MgO + H2SO4 + H2O -> MgSO4·7H2O",
      product: "MgSO4·7H2O",
      materials: [
        { name: "magnesia", form: "MgO", excess: "3 %" },
        { name: "acid", form: "H2SO4", strength: "20 %" },
      ],
      scale: { product: "100 g" },
    });
    expect(steps.map(({ text }) => text).join("\n")).toMatch(
      /from the MgO that is not dissolved, and rinse it with a little hot water; the clear liquor/,
    );
  });
});
