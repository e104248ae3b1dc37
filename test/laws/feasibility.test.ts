// Laws of feasibility: neither size of the batch, order, nor spelling changes what is said of a reaction.
import { doesItGo } from "preparative";
import { describe, expect, it } from "vitest";

const REACTIONS = [
  ["CaCl2 + H2C2O4 -> CaC2O4 + HCl", "CaC2O4"],
  ["MgSO4 + NH3 + H2O -> Mg(OH)2 + (NH4)2SO4", "Mg(OH)2"],
  ["ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2", "Zn5(CO3)2(OH)6"],
  ["CuSO4 + NaHCO3 -> CuCO3 + Na2SO4 + CO2 + H2O", "CuCO3"],
  ["KNO3 + NaCl -> NaNO3 + KCl", "NaNO3"],
  ["BaSO4 + Na2CO3 -> BaCO3 + Na2SO4", "BaCO3"],
  ["Cu + FeSO4 -> CuSO4 + Fe", "CuSO4"],
  ["FeCl3 + Na2CO3 -> Fe2(CO3)3 + NaCl", "Fe2(CO3)3"],
] as const;

const share = (f: ReturnType<typeof doesItGo>): number => f.share?.value.toNumber() ?? -1;
const solids = (f: ReturnType<typeof doesItGo>): string[] => f.solids.map(({ formula }) => formula);

describe.each(REACTIONS)("%s", (equation, product) => {
  const asked = doesItGo({ equation, product, scale: { product: "1 mol" } });

  it("is the same at any size: ten times the batch, ten times each solid", () => {
    const tenfold = doesItGo({ equation, product, scale: { product: "10 mol" } });
    expect(tenfold.verdict).toBe(asked.verdict);
    expect(Math.abs(share(tenfold) - share(asked))).toBeLessThan(0.01);
    expect(solids(tenfold)).toEqual(solids(asked));
    asked.solids.forEach(({ amount }, i) => {
      if (amount.in("mol").toNumber() > 0.01)
        expect(tenfold.solids[i]!.amount.in("mol").toNumber() / amount.in("mol").toNumber()).toBeCloseTo(10, 0);
    });
  });

  it("is the same with reactants and products turned round, and coefficients written or not", () => {
    const turned = equation
      .split(" -> ")
      .map((side) => side.split(" + ").reverse().join(" + "))
      .join(" -> ");
    const other = doesItGo({ equation: turned, product, scale: { product: "1 mol" } });
    expect(other.verdict).toBe(asked.verdict);
    expect(Math.abs(share(other) - share(asked))).toBeLessThan(0.01);
  });

  it("holds no more than went in: shares of the theory and of a metal are at most one", () => {
    expect(share(asked)).toBeLessThanOrEqual(1.0001);
    for (const one of asked.solids) {
      expect(one.share.value.toNumber()).toBeLessThanOrEqual(1);
      expect(one.amount.in("mol").toNumber()).toBeGreaterThanOrEqual(0);
    }
  });

  it("is not moved by having been asked before", () => {
    const again = doesItGo({ equation, product, scale: { product: "1 mol" } });
    expect(again.verdict).toBe(asked.verdict);
    expect(share(again)).toBe(share(asked));
  });
});

describe("more of a partner", () => {
  it("never lowers what becomes of barium sulfate in soda", () => {
    let before = 0;
    for (const excess of ["0 %", "100 %", "400 %", "900 %", "2600 %"] as const) {
      const f = doesItGo({
        equation: "BaSO4 + Na2CO3 -> BaCO3 + Na2SO4",
        product: "BaCO3",
        materials: [
          { name: "sulfate", form: "BaSO4" },
          { name: "soda", form: "Na2CO3", excess },
        ],
      });
      // all but a trace stands at the end: what the pairs of so strong a liquor hold is that trace
      expect(share(f)).toBeGreaterThan(before - 1e-4);
      before = share(f);
    }
    expect(before).toBeGreaterThan(0.95);
  });
});
