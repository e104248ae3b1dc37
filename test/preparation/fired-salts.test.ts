// Salts that only the last of several steps of heating takes apart: the kiln goes as far as that step, whatever row of the table
// it stands in. Equations are textbook ones; temperatures are those of the table.
import { describe, expect, it } from "vitest";
import { doesItGo } from "../../src/preparation";
import { planOrCode } from "../tools/published-plans";

const FIRED = [
  ["FeSO4·7H2O -> Fe2O3 + SO2 + SO3 + H2O", "FeSO4·7H2O", "Fe2O3", /SO₃/, 480, 680],
  ["Cu(NO3)2·3H2O -> CuO + NO2 + O2 + H2O", "Cu(NO3)2·3H2O", "CuO", /NO₂/, 170, 300],
  ["NH4Al(SO4)2·12H2O -> Al2O3 + NH3 + SO3 + H2O", "NH4Al(SO4)2·12H2O", "Al2O3", /SO₃/, 635, 770],
] as const;

describe.each(FIRED)("%s", (equation, form, product, gas, from, to) => {
  const plan = planOrCode({
    equation,
    product,
    materials: [{ name: "salt", form }],
    scale: { material: "salt", portion: "50 g" },
  });
  if (typeof plan === "string") throw new Error(plan);
  const fire = plan.steps.find(({ operation }) => operation === "fire")!;

  it("has a temperature to fire it at, and nothing unknown", () => {
    expect(fire.target!.toString()).toBe(`${to} °C`);
    expect(fire.text).toMatch(new RegExp(`^Heat slowly to ${to} °C`));
    expect(plan.unknown).toEqual([]);
  });

  it("goes from the temperature of the step that makes it", () => {
    const { verdict, reasons } = doesItGo({ equation, product });
    expect(verdict).toBe("goes");
    expect(reasons[0]!.numbers[0]!.toNumber("°C")).toBe(from);
  });

  it("is fired under a hood: the gas is named, and poisonous", () => {
    expect(fire.text).toMatch(gas);
    expect(fire.cautions.map(({ text }) => text).join("\n")).toMatch(/hood/);
  });
});
