// Gas that must not go into the room, and gas that is led in: wash bottles and gas lines as vessels of the work. Equations from any
// textbook; molar volume at 20 °C and 101.325 kPa 24.05 L/mol.
import { doesItGo, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const chlorine: PlanRequest = {
  equation: "MnO2 + HCl + H2O -> MnCl2·4H2O + Cl2",
  product: "MnCl2·4H2O",
  materials: [
    { name: "pyrolusite", form: "MnO2" },
    { name: "spirits of salt", form: "HCl", strength: "36 %" },
  ],
  scale: { material: "pyrolusite", portion: "8.7 g" },
  acknowledge: ["hydrochloric-higher-oxide"],
};
const saying = (request: PlanRequest, words: RegExp) => {
  const { steps } = planPreparation(request);
  const found = steps.find(({ text }) => words.test(text));
  if (found === undefined) throw new Error(`no ${words} in:\n${steps.map(({ text }) => text).join("\n")}`);
  return found;
};
const moles = (
  list: readonly { readonly formula: string; readonly amount: { in(unit: string): { toNumber(): number } } }[],
  formula: string,
) =>
  list
    .find((one) => one.formula === formula)
    ?.amount.in("mol")
    .toNumber() ?? 0;

describe("a gas trap", () => {
  it("stands ready before the gas comes: 0.1001 mol of chlorine, twice as much lye, a tenth over, 10 % of 1.109 g/mL", () => {
    const step = saying(chlorine, /^Have a gas trap ready/);
    // 0.1001 × 2 × 1.1 × 39.997 = 8.81 g; / 0.10 / 1.109 = 79 mL
    const [volume, mass] = step.amounts;
    expect(mass!.in("g").toNumber()).toBeCloseTo(8.8, 1);
    expect(volume!.in("mL").toNumber()).toBeCloseTo(79.4, 0);
    expect(step.text).toMatch(/2\.41 L of Cl₂.*empty bottle.*79 mL of 10 % sodium hydroxide/s);
    const { steps } = planPreparation(chlorine);
    const at = steps.indexOf(steps.find(({ text }) => text === step.text)!);
    expect(steps[at + 1]!.left[0]!.what).toBe("gas");
    // what the liquor keeps of it is driven out before the trap is taken off
    expect(steps[at + 2]!.text).toMatch(/the tube still in the trap, until no more bubbles come/);
    expect(steps[at + 3]!.vessel).toBe("gas trap");
  });

  it("comes to chloride and hypochlorite, and is never made sour", () => {
    const { after, text } = saying(chlorine, /^All gas goes through the trap/);
    expect(moles(after.dissolved, "NaCl")).toBeCloseTo(0.1, 3);
    expect(moles(after.dissolved, "NaClO")).toBeCloseTo(0.1, 3);
    expect(moles(after.dissolved, "NaOH")).toBeCloseTo(0.02, 3);
    expect(text).toMatch(/never put acid to it/);
    const trap = planPreparation(chlorine).waste.vessels.find(({ vessel }) => vessel === "gas trap")!;
    expect(moles(trap.contents.dissolved, "NaClO")).toBeCloseTo(0.1, 3);
  });

  it("is the only way out, and so no vessel is called open", () => {
    const texts = planPreparation(chlorine).steps.flatMap(({ cautions }) => cautions.map(({ text }) => text));
    expect(texts.join(" ")).not.toMatch(/open vessel, never stoppered/);
    expect(texts.join(" ")).toMatch(/only way out is the tube to the trap/);
  });

  it("takes nitrogen dioxide from copper in nitric acid, and says that nothing takes nitric oxide", () => {
    const copper = (gas: "NO" | "NO2"): PlanRequest => ({
      equation: `Cu + HNO3 + H2O -> Cu(NO3)2·3H2O + ${gas}`,
      product: "Cu(NO3)2·3H2O",
      materials: [
        { name: "copper", form: "Cu" },
        { name: "aqua fortis", form: "HNO3", strength: gas === "NO" ? "30 %" : "65 %" },
      ],
      scale: { material: "copper", portion: "6.4 g" },
    });
    // Cu + 4 HNO3 -> 2 NO2: 0.2014 mol, and as much lye and a tenth
    const { amounts } = saying(copper("NO2"), /^Have a gas trap ready/);
    expect(amounts[1]!.in("g").toNumber()).toBeCloseTo(0.2014 * 1.1 * 39.997, 1);
    const { steps } = planPreparation({
      ...copper("NO"),
      equation: "Cu + HNO3 -> Cu(NO3)2 + NO + H2O",
    });
    expect(steps.some(({ vessel }) => vessel === "gas trap")).toBe(false);
    expect(steps.map(({ text }) => text).join(" ")).toMatch(
      /nothing here absorbs NO: all of it must leave through a hood/,
    );
  });

  it("is not asked for carbon dioxide", () => {
    const { steps } = planPreparation({
      equation: "CaCO3 + HCl -> CaCl2 + CO2 + H2O",
      product: "CaCl2",
      materials: [
        { name: "chalk", form: "CaCO3" },
        { name: "acid", form: "HCl", strength: "10 %" },
      ],
      scale: { material: "chalk", portion: "10 g" },
    });
    expect(steps.some(({ vessel }) => vessel === "gas trap")).toBe(false);
  });
});

describe("a gas that is led in", () => {
  const bicarbonate: PlanRequest = {
    equation: "Na2CO3 + CO2 + H2O -> NaHCO3",
    product: "NaHCO3",
    materials: [
      { name: "soda", form: "Na2CO3" },
      { name: "carbon dioxide", form: "CO2", excess: "20 %" },
    ],
    scale: { material: "soda", portion: "53.0 g" },
  };

  it("is no powder: litres through a tube, and what is not absorbed leaves as gas", () => {
    // 0.5001 mol and a fifth more: 26.4 g, 14.4 L; 2.4 L pass through
    const step = saying(bicarbonate, /^Lead the/);
    expect(step.text).toMatch(
      /in slowly, about 100 mL a minute \([^)]*\), through the wash bottle \(count its bubbles\), the empty bottle and a wide tube \([^)]*\), stirring, 14\.\d L of it \(26\.5 g\).*about 2\.4\d L of it passes through/,
    );
    expect(moles(step.after.gas, "CO₂")).toBeCloseTo(0.1, 2);
    expect(step.after.solids.some(({ formula }) => formula === "CO₂")).toBe(false);
    expect(saying(bicarbonate, /^Have .* ready/).text).toMatch(/14\.\d L/);
  });

  // Suck-back through a tube that dips in: common practice, no source
  it("goes into the water first where water takes it whole, through a funnel", () => {
    const chalk: PlanRequest = {
      equation: "CaCO3 + HCl -> CaCl2 + CO2 + H2O",
      product: "CaCl2",
      materials: [
        { name: "chalk", form: "CaCO3" },
        { name: "hydrogen chloride", form: "HCl" },
      ],
      scale: { material: "chalk", portion: "10.0 g" },
    };
    const step = saying(chalk, /^Lead the 7\.3 g of hydrogen chloride .* into \d+ mL of water .* upturned funnel/);
    // 10.0 g / 100.087 g/mol × 2
    expect(moles(step.after.dissolved, "HCl")).toBeCloseTo(0.2, 2);
    expect(step.after.unknown).toEqual([]);
    expect(step.after.solids).toHaveLength(0);
    const { steps } = planPreparation(chalk);
    expect(steps.findIndex(({ text }) => text.startsWith("Add the 10.0 g of chalk"))).toBeGreaterThan(
      steps.findIndex(({ text }) => text === step.text),
    );
  });

  it("comes last where water takes little of it", () => {
    const step = saying(
      {
        equation: "CaCO3 + SO2 + H2O -> Ca(HSO3)2 + CO2",
        product: "Ca(HSO3)2",
        materials: [
          { name: "chalk", form: "CaCO3" },
          { name: "sulfur dioxide", form: "SO2" },
        ],
        scale: { material: "chalk", portion: "10.0 g" },
      },
      /^Lead the sulfur dioxide in slowly, .* \(12\.\d g\)/,
    );
    expect(moles(step.before.solids, "CaCO₃")).toBeCloseTo(0.1, 2);
  });

  it("is washed out where it is left, and not weighed with the product", () => {
    const { steps } = planPreparation({
      equation: "CuSO4 + NH3 + H2O -> Cu(OH)2 + (NH4)2SO4",
      product: "Cu(OH)2",
      materials: [
        { name: "vitriol", form: "CuSO4·5H2O" },
        { name: "ammonia gas", form: "NH3" },
      ],
      scale: { material: "vitriol", portion: "10.0 g" },
    });
    expect(steps.some(({ text }) => /^Wash .*NH₃/.test(text))).toBe(true);
    expect(steps.at(-1)!.text).not.toContain("NH₃");
  });

  it("makes a salt that is never warmed: bicarbonate comes as it forms, and 9.6 g stays in each 100 g of water", () => {
    const { steps } = planPreparation(bicarbonate);
    for (const { after, operation } of steps)
      if (operation !== "dry") expect(after.temperature.in("°C").toNumber()).toBeLessThanOrEqual(20);
    const cold = saying(bicarbonate, /^Do not warm it/);
    expect(cold.text).toMatch(/gives off carbon dioxide/);
    const water = cold.before.water.in("g").toNumber();
    // 2 × 0.5001 mol × 84.006 g less what stays
    expect(cold.after.solids[0]!.mass.in("g").toNumber()).toBeCloseTo(84.0 - 0.096 * water, 0);
    expect(steps.some(({ operation }) => operation === "concentrate")).toBe(false);
  });

  it("goes although water holds some of it: sulfurous acid has pKa 1.85, most of it is the gas itself in strong acid", () => {
    const ask = (acid: string, salt: string) =>
      doesItGo({
        equation: `Na2SO3 + ${acid} -> ${salt} + SO2 + H2O`,
        product: "SO2",
        acknowledge: ["poison-gas"],
      } as never);
    expect(ask("H2SO4", "Na2SO4").verdict).toBe("goes");
    // acetic acid, pKa 4.76, makes hydrogensulfite only
    expect(ask("CH3COOH", "CH3COONa").verdict).toBe("does not go");
  });
});
