// The range of a hydroxide with activities and complexes of several metal ions, beside that by hand. The shifts are those of
// activity coefficients (Davies): by hand and dilute the two are one.
import { describe, expect, it } from "vitest";
import { aqueousComposition, hydroxidePrecipitationRange } from "../../src";

describe("the range of a hydroxide at equilibrium", () => {
  it.each(["Mg^2+", "Mn^2+", "Fe^2+", "Ni^2+", "Cu^2+", "Zn^2+"])(
    "of dilute %s is that by hand within 0.1",
    (metal) => {
      const { basis, startsAt, completeFrom, byHand } = hydroxidePrecipitationRange({
        metal,
        concentration: "1e-4 mol/L",
      });
      expect(basis).toBe("equilibrium");
      expect(Math.abs(startsAt!.minus(byHand.startsAt!).value.toNumber())).toBeLessThan(0.1);
      expect(Math.abs(completeFrom!.minus(byHand.completeFrom!).value.toNumber())).toBeLessThan(0.1);
    },
  );

  it.each([
    ["Zn^2+", "Zn(ClO4)2", 0.1],
    ["Al^3+", "Al(ClO4)3", 0.1],
    ["Fe^3+", "Fe(ClO4)3", 0.1],
    ["Pb^2+", "Pb(ClO4)2", 0.1],
  ] as const)("of %s begins where the whole mixture begins to let it fall", (metal, salt, molar) => {
    const { solid, form, startsAt } = hydroxidePrecipitationRange({ metal, concentration: `${molar} mol/L` });
    const stands = (pH: number): boolean =>
      aqueousComposition({
        water: "1 L",
        dissolved: [{ formula: salt, amount: `${molar} mol` }],
        pH: pH.toFixed(3),
        solids: { only: [form === undefined ? solid : `${solid} (${form})`] },
      }).solids.length > 0;
    const begins = startsAt!.value.toNumber();
    expect([stands(begins - 0.02), stands(begins + 0.02)]).toEqual([false, true]);
  });

  it("begins later for 0.1 mol/L of three charges: half a unit and more for aluminium", () => {
    const { startsAt, byHand } = hydroxidePrecipitationRange({ metal: "Al^3+", concentration: "0.1 mol/L" });
    expect(startsAt!.minus(byHand.startsAt!).value.toNumber()).toBeGreaterThan(0.5);
  });
});
