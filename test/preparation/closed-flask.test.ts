// Poisonous gas leaves by a tube only: acid comes from a dropping funnel, and what the liquor keeps of the gas is driven out before
// anything is filtered or boiled down. Common practice, no source; solubilities are those of `gasSolubility`.
import { benchSheet, gasSolubility, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";
import { fromJars, type Jar } from "../tools/jars";

const plan = (equation: string, product: string, jars: readonly Jar[], acknowledge: readonly string[] = []) =>
  planPreparation(fromJars(equation, product, jars, "19.0 g", { acknowledge }));

const at = ({ steps }: ReturnType<typeof plan>, saying: RegExp): number =>
  steps.findIndex(({ text }) => saying.test(text));

describe("acid that sets a poisonous gas free", () => {
  const salt = plan("Na2S2O5 + HCl -> NaCl + SO2 + H2O", "NaCl", [["Na2S2O5"], ["HCl", "10 %"]]);

  it("comes from a dropping funnel, which stands ready", () => {
    expect(salt.steps[at(salt, /dropping funnel/)]!.text).toMatch(
      /^Let the 72\.9 g of jar of HCl in from the dropping funnel/,
    );
    expect(salt.steps.map(({ apparatus }) => apparatus).filter((one) => one !== undefined)).toEqual([
      "dropping funnel",
      "wide dish",
    ]);
    expect(benchSheet(salt)).toMatch(/dropping funnel of 100 mL in the stopper/);
  });

  it("leaves gas in the liquor that is driven out warm through the trap, before the trap is taken off", () => {
    const driven = at(salt, /^Bring the contents to 80 °C/);
    const { text, before } = salt.steps[driven]!;
    // 10.8 g in 100 g of water at 20 °C, under one atmosphere
    const { perHundredGramsWater } = gasSolubility("SO2", "20 °C");
    const most = (perHundredGramsWater.toNumber("g") * before.water.toNumber("g")) / 100;
    expect(Number(/up to ([\d.]+) g of SO₂/.exec(text)![1])).toBeCloseTo(most, 0);
    expect(driven).toBeGreaterThan(at(salt, /dropping funnel/));
    expect(driven).toBeLessThan(at(salt, /take the tube out/));
    expect(at(salt, /^(Evaporate|Filter|Boil)/)).toBeGreaterThan(driven);
  });

  it("is let into the salt, whatever the salt would be without a trap: sulfite, in its solution", () => {
    const sulfite = plan("Na2SO3 + HCl -> NaCl + SO2 + H2O", "NaCl", [["Na2SO3"], ["HCl", "20 %"]]);
    expect(at(sulfite, /^Let the .* jar of HCl in from the dropping funnel/)).toBeGreaterThan(
      at(sulfite, /^Dissolve the jar of Na2SO3/),
    );
  });

  it("may meet a solid: the flask is open for no longer than a portion takes", () => {
    const copper = plan(
      "Cu + HNO3 -> Cu(NO3)2 + NO2 + H2O",
      "Cu(NO3)2·3H2O",
      [["Cu"], ["HNO3", "50 %"]],
      ["poison-gas"],
    );
    expect(
      at(copper, /^Add the 19\.0 g of jar of Cu, the flask open for no longer than a portion takes/),
    ).toBeGreaterThan(0);
    // no solubility of NO2: it reacts with water
    expect(at(copper, /the liquor would keep NO₂, how much is not known/)).toBeGreaterThan(0);
    expect(at(copper, /^Let it stand until no more gas rises/)).toBe(-1);
  });

  it("does not warm what warmth harms: air carries the gas out", () => {
    const cold = plan(
      "Zn(HSO3)2 + Na2CO3 + H2SO4 -> ZnCO3 + Na2SO4 + SO2 + H2O",
      "ZnCO3",
      [["Zn(HSO3)2", "10 %"], ["Na2CO3"], ["H2SO4", "10 %"]],
      ["does-not-go"],
    );
    expect(at(cold, /^Blow a slow stream of air through the liquor and on through the trap/)).toBeGreaterThan(0);
  });

  it("is not asked of carbon dioxide, which may go into the room", () => {
    const chalk = plan("CaCO3 + HCl -> CaCl2 + CO2 + H2O", "CaCl2·6H2O", [["CaCO3"], ["HCl", "10 %"]]);
    expect(at(chalk, /trap|dropping funnel|Bring the contents/)).toBe(-1);
  });
});

describe("ammonia that a base sets free from its salt", () => {
  const gypsum = plan("Ca(OH)2 + (NH4)2SO4 -> CaSO4 + NH3 + H2O", "CaSO4·2H2O", [["(NH4)2SO4"], ["Ca(OH)2"]]);

  it("is driven over into acid before anything is filtered", () => {
    const driven = at(gypsum, /until moist indicator paper held into the gas no longer turns blue/);
    const { left, after } = gypsum.steps[driven]!;
    // 19.0 g / 132.14 g/mol × 2
    expect(left[0]!.contents.dissolved[0]!.amount.toNumber("mol")).toBeCloseTo(0.2876, 3);
    expect(after.dissolved.map(({ formula }) => formula)).not.toContain("NH₃");
    expect(at(gypsum, /^Filter/)).toBeGreaterThan(driven);
    expect(at(gypsum, /Have a gas trap ready .* of 10 % sulfuric acid/)).toBeLessThan(driven);
    const cautions = gypsum.steps.flatMap((step) => step.cautions.map(({ text }) => text));
    expect(cautions.join("\n")).not.toMatch(/filter it cold/);
  });

  it("stays where the product is not warmed", () => {
    const hydroxide = plan("CuSO4 + NH3 + H2O -> Cu(OH)2 + (NH4)2SO4", "Cu(OH)2", [["CuSO4·5H2O"], ["NH3", "10 %"]]);
    expect(at(hydroxide, /moist indicator paper held into the gas/)).toBe(-1);
  });
});

// C3, C4: common practice, no source
describe("a gas from a cylinder or a generator", () => {
  const soda = plan("Na2CO3 + SO2 + H2O -> NaHSO3 + CO2", "NaHSO3", [["Na2CO3"], ["SO2"]]);
  const sheet = benchSheet(soda);

  it("stands ready with tube and bottles, and not in the table of what is weighed", () => {
    expect(sheet).toMatch(
      /\[ \] jar of SO2: cylinder with pressure\s+reducer and needle\s+valve, or\s+generator; tube, empty\s+bottle, wash\s+bottle/,
    );
    expect(sheet).toMatch(/- jar of SO2: led in, about 23\.\d g; not weighed/);
    expect(sheet.slice(sheet.indexOf("Weigh and measure"), sheet.indexOf("Procedure"))).not.toMatch(/jar of SO2 +SO₂/);
    const ammonia = benchSheet(plan("CuSO4 + NH3 + H2O -> Cu(OH)2 + (NH4)2SO4", "Cu(OH)2", [["CuSO4·5H2O"], ["NH3"]]));
    expect(ammonia).toMatch(
      /jar of NH3: cylinder with pressure\s+reducer and needle\s+valve, or\s+generator; tube, empty\s+bottle, upturned\s+funnel/,
    );
  });

  it("is led into cold water until the vessel has gained what it should, and never in portions", () => {
    const step = soda.steps[at(soda, /^Lead the jar of SO2 in slowly/)]!;
    // 19.0 g of soda takes 2 × 0.1793 mol of sulfur dioxide, 22.97 g, and gives 0.1793 mol of carbon dioxide, 7.89 g
    const end = soda.steps[at(soda, /^It is done when no more is absorbed/)]!;
    expect(Number(/has gained ([\d.]+) g/.exec(end.text)![1])).toBeCloseTo(22.97 - 7.89, 0);
    expect(step.cautions.map(({ text }) => text).join("\n")).not.toMatch(/portions/);
    expect(step.cautions.map(({ text }) => text).join("\n")).toMatch(
      /the tube out of the liquid before the valve is closed/,
    );
    expect(soda.steps.length, "rows to test").toBeGreaterThan(0);
    for (const { after } of soda.steps) expect(after.temperature.toNumber("°C")).toBeLessThanOrEqual(20);
  });

  it("leaves a liquor of known strength in a vessel of known size", () => {
    expect(soda.vessel!.smallest!.toNumber("mL")).toBeGreaterThan(soda.vessel!.liquid.toNumber("mL"));
    const { strength } = soda.keptLiquor!;
    // 37.3 g of NaHSO3 in what dissolves the soda cold: far from the 49 % that 80 °C would give
    expect(strength.toNumber("%")).toBeGreaterThan(20);
    expect(strength.toNumber("%")).toBeLessThan(40);
    expect(sheet).toMatch(/Liquor that is kept/);
  });
});

// common practice, no source
describe("boiled-out water", () => {
  it("is named where the water goes in, and not one step later", () => {
    const mohr = plan("FeSO4 + (NH4)2SO4 + H2O -> (NH4)2Fe(SO4)2·6H2O", "(NH4)2Fe(SO4)2·6H2O", [
      ["FeSO4·7H2O"],
      ["(NH4)2SO4"],
    ]);
    const said = mohr.steps.filter(({ text }) => /boiled-out water/.test(text));
    expect(said).toHaveLength(1);
    expect(said[0]!.put.some(({ water }) => water.isPositive())).toBe(true);
  });
});
