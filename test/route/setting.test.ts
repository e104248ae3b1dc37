// What a kitchen or a classroom leaves out. Statements as in the regulation on classification (H314 for hydrochloric acid from
// 25 % on, none for vinegar); which are left to which room is common practice.
import { findRoutes } from "preparative";
import { describe, expect, it } from "vitest";
import { jars } from "./shelves";

const made = (target: string, shelf: readonly string[], setting?: "home" | "school" | "studio") => {
  const { routes, refusals } = findRoutes({ target, shelf: jars(...shelf), setting });
  return { count: routes.length, told: refusals.filter(({ code }) => code === "setting").map(({ text }) => text) };
};

describe("a setting", () => {
  it("keeps strong acid out of the kitchen, and lets vinegar in", () => {
    expect(made("ZnCl2", ["ZnO", "HCl"]).count).toBe(1);
    const { count, told } = made("ZnCl2", ["ZnO", "HCl"], "home");
    expect(count).toBe(0);
    expect(told[0]).toMatch(/HCl/);
    expect(made("Ca(CH3COO)2·H2O", ["CaCO3", "CH3COOH"], "home").count).toBe(1);
  });

  it("leaves lime burning to whoever has a kiln", () => {
    expect(made("CaO", ["CaCO3"], "studio").count).toBe(1);
    expect(made("CaO", ["CaCO3"], "school").told[0]).toMatch(/700 °C|hotter/);
  });

  it("leaves cobalt to no room that has none to spare", () => {
    expect(made("CoCO3", ["CoCl2·6H2O", "NaHCO3"]).count).toBe(1);
    expect(made("CoCO3", ["CoCl2·6H2O", "NaHCO3"], "school").count).toBe(0);
  });
});
