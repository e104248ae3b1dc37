// A precipitant in excess. Figures for aluminium and zinc are those of a separate solver on the same tables (5 % over leaves
// 85 % of the aluminium standing, 50 % nothing; 100 % over 61 % of the zinc); outcomes are the trade's.
import { describe, expect, it } from "vitest";
import { aqueousComposition, dissolvedOverExcess, type OverExcess, overExcessDiagram, redissolving } from "../../src";

const alumina = dissolvedOverExcess({
  ion: "Al^3+",
  water: "0.6 kg",
  dissolved: [{ formula: "AlCl3·6H2O", amount: "0.1 mol" }],
  add: "NaOH",
  needed: "0.3 mol",
  amount: "0.48 mol",
  steps: 160,
});
const zinc = dissolvedOverExcess({
  ion: "Zn^2+",
  water: "0.6 kg",
  dissolved: [{ formula: "ZnSO4", amount: "0.1 mol" }],
  add: "NaOH",
  needed: "0.2 mol",
  amount: "0.8 mol",
  steps: 80,
});
const at = (over: OverExcess, excess: number) => over.points.find((one) => Math.abs(one.excess! - excess) < 1e-9)!;

describe("a metal over an excess of the precipitant", () => {
  it("takes aluminium hydroxide back with lye: 15 % at 5 % over, all at 50 % over", () => {
    expect(at(alumina, 0.05).share).toBeCloseTo(0.15, 2);
    expect(at(alumina, 0.5).share).toBe(1);
    expect(at(alumina, 0.5).solids).toEqual({});
    expect(alumina.least!.excess!.toNumber("%")).toBeCloseTo(0, 0);
    expect(alumina.least!.share.toNumber()).toBeLessThan(1e-3);
  });

  it("leaves 61 % of zinc with lye 100 % over", () => {
    expect(1 - at(zinc, 1).share).toBeCloseTo(0.61, 1);
    expect(zinc.solids).toContain("Zn(OH)2");
  });

  it("finds the least where nothing nearby is less, and agrees with the whole answer there", () => {
    for (const over of [alumina, zinc]) {
      const least = over.least!.concentration.toNumber("mol/L");
      expect(over.points.length, "rows to test").toBeGreaterThan(0);
      for (const { dissolved } of over.points) expect(dissolved).toBeGreaterThanOrEqual(least * (1 - 1e-6));
    }
    const whole = aqueousComposition({
      water: "0.6 kg",
      dissolved: [
        { formula: "AlCl3·6H2O", amount: "0.1 mol" },
        { formula: "NaOH", amount: alumina.least!.added },
      ],
    });
    const left = whole.filtrate.find(({ formula }) => formula === "Al^3+")!.share!;
    expect(left.toNumber() / alumina.least!.share.toNumber()).toBeCloseTo(1, 2);
    expect(left.standardUncertainty!.toNumber()).toBeGreaterThan(0);
  });

  it("is gone where redissolving says", () => {
    const { needed } = redissolving({
      solid: "AgCl",
      amountOfSolid: "0.01 mol",
      with: "NH3",
      water: "1 kg",
    });
    const silver = dissolvedOverExcess({
      ion: "Ag+",
      water: "1 kg",
      dissolved: [{ formula: "AgCl", amount: "0.01 mol" }],
      add: "NH3",
      amount: needed.times("2"),
      steps: 200,
    });
    const gone = silver.points.find(({ share }) => share > 1 - 1e-9)!;
    expect(gone.added / needed.toNumber("mol")).toBeCloseTo(1, 1);
    expect(silver.least!.excess).toBeUndefined();
  });

  it("dissolves silver chloride least in a little chloride and more in much (common-ion, then chloride complexes)", () => {
    const silver = dissolvedOverExcess({
      ion: "Ag+",
      water: "1 kg",
      dissolved: [{ formula: "AgNO3", amount: "0.01 mol" }],
      add: "NaCl",
      needed: "0.01 mol",
      amount: "2 mol",
      steps: 400,
    });
    // the textbook's least lies at 2 to 3 mmol/L of chloride (from memory)
    const over = silver.least!.added.toNumber("mol") - 0.01;
    expect(over).toBeGreaterThan(0.001);
    expect(over).toBeLessThan(0.01);
    expect(silver.points.at(-1)!.share).toBeGreaterThan(0.1);
  });

  it("ends where the mixture is too strong, and says so", () => {
    const strong = dissolvedOverExcess({
      ion: "Zn^2+",
      water: "1 kg",
      dissolved: [{ formula: "ZnSO4", amount: "0.1 mol" }],
      add: "NaOH",
      amount: "8 mol",
    });
    expect(strong.assumptions.join()).toMatch(/beyond 3\.\d+ mol the mixture is too strong/);
    expect(strong.points.at(-1)!.added).toBeLessThan(4);
  });

  it("takes a good of the shop by its name", () => {
    const vinegar = dissolvedOverExcess({
      ion: "Ca^2+",
      water: "1 kg",
      dissolved: [{ formula: "CaCO3", amount: "0.1 mol" }],
      add: "white vinegar",
      amount: "0.3 mol",
    });
    expect(vinegar.precipitant).toBe("CH3COOH");
    expect(vinegar.assumptions.join()).toMatch(/white vinegar taken as/);
    expect(vinegar.points.at(-1)!.share).toBeCloseTo(1, 9);
  });

  it("refuses an ion that is not there", () => {
    expect(() =>
      dissolvedOverExcess({
        ion: "Ba^2+",
        water: "1 kg",
        dissolved: [{ formula: "ZnSO4", amount: "0.1 mol" }],
        add: "NaOH",
        amount: "1 mol",
      }),
    ).toThrowError(expect.objectContaining({ code: "aqueous.bad-option" }));
  });

  it("names a solid that has no constant, and has no least where no solid contains the ion", () => {
    const salt = dissolvedOverExcess({
      ion: "Na+",
      water: "1 kg",
      dissolved: [{ formula: "NaCl", amount: "0.1 mol" }],
      add: "HCl",
      amount: "0.5 mol",
    });
    expect(salt.least).toBeUndefined();
    expect(() => overExcessDiagram(salt)).toThrowError(expect.objectContaining({ code: "aqueous.out-of-reach" }));
  });
});

describe("its picture", () => {
  it("marks the least and tells it in words", () => {
    const svg = overExcessDiagram(alumina);
    expect(svg.match(/<svg /g)).toHaveLength(1);
    expect(svg).not.toMatch(/<script|href| style=|NaN|Infinity|undefined/);
    expect(svg).toMatch(
      /<desc>Least Al\^3\+ dissolved: 0\.00000\d+ mol\/L at -?0\.\d % over\. At the end 100 % is dissolved\.<\/desc>/,
    );
    expect(svg.match(/<circle /g)).toHaveLength(1);
    expect(svg).toContain("NaOH in excess of what the equation needs / %");
  });

  it("is drawn of nothing else", () => {
    expect(() => overExcessDiagram({ ...alumina })).toThrowError(
      expect.objectContaining({ code: "aqueous.bad-option" }),
    );
  });
});
