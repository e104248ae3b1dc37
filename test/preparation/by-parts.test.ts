// Basic carbonates of which no constant is published: what the liquor keeps is bounded by the hydroxide and the carbonate that they
// are made of. A solid that lasts beside two others, of which it is the sum, has no greater solubility product than theirs together
// (ΔG of 3 Co(OH)2 + 2 CoCO3 -> Co5(OH)6(CO3)2 is not above zero). That soda gives them is common practice, from memory.
import { doesItGo, explain, planPreparation, type Quantity } from "preparative";
import { describe, expect, it } from "vitest";

const COBALT = "5 CoSO4 + 5 Na2CO3 + 3 H2O -> Co5(OH)6(CO3)2 + 5 Na2SO4 + 3 CO2";

describe("a basic carbonate without a constant", () => {
  it.each([
    ["Co5(OH)6(CO3)2", COBALT, /constants of .*CoCO₃/],
    ["Ni3(OH)4CO3·4H2O", "3 NiSO4 + 3 Na2CO3 + 6 H2O -> Ni3(OH)4CO3·4H2O + 3 Na2SO4 + 2 CO2", /Ni\(OH\)₂/],
  ])("%s goes with soda by the constants of its parts, and is said to", (product, equation, parts) => {
    const { verdict, share, solids, reasons } = doesItGo({ equation, product });
    expect(verdict).toBe("goes");
    expect(share!.toNumber("")).toBeGreaterThan(0.95);
    expect(solids).toHaveLength(1);
    expect(reasons[0]!.text).toMatch(parts);
    expect(reasons[0]!.numbers.length).toBeGreaterThan(0);
    expect(reasons[1]!.text).toMatch(/^no solubility product of .* common practice/);
  });

  it("keeps no more in the liquor than the parts leave there, and the plan says why", () => {
    const materials = [
      { name: "cobalt sulfate", form: "CoSO4·7H2O" },
      { name: "soda", form: "Na2CO3", excess: "5 %", inExcess: true },
    ] as const;
    const { completeness, unknown } = planPreparation({
      equation: COBALT,
      product: "Co5(OH)6(CO3)2",
      materials,
      scale: { product: "20 g" },
    });
    const kept = completeness as { dissolved: Quantity; limits: string };
    expect(kept.dissolved.toNumber("g")).toBeGreaterThan(0);
    expect(kept.dissolved.toNumber("g")).toBeLessThan(0.02);
    expect(explain(kept.dissolved).toString()).toMatch(
      /kept = what a kilogram of the liquor keeps × water\n +n\(.*, kept\) = /,
    );
    expect(kept.limits).toMatch(/CoCO₃.*, which it is made of/);
    expect(unknown.join()).toMatch(/its own solubility product is not known/);
  });

  it.each([
    ["bicarbonate", "5 CoSO4 + 10 NaHCO3 -> Co5(OH)6(CO3)2 + 5 Na2SO4 + 8 CO2 + 2 H2O"],
    ["ammonia in the liquor", "5 CoSO4 + 5 (NH4)2CO3 + 3 H2O -> Co5(OH)6(CO3)2 + 5 (NH4)2SO4 + 3 CO2"],
  ])("stays unknown with %s, of which the trade tells nothing", (_, equation) => {
    const { verdict, reasons } = doesItGo({ equation, product: "Co5(OH)6(CO3)2" });
    expect(verdict).toBe("unknown");
    expect(reasons[0]!.text).toMatch(/missing: the solubility product of Co₅/);
  });
});
