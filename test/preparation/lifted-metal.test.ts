// Copper turns copper(II) chloride into copper(I) chloride, which precipitates; what is left of the metal is lifted out of it.
import { evaluateRun, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

describe("the metal of a redox reaction that gives a precipitate", () => {
  const lifted = (excess: "20 %") =>
    planPreparation({
      equation: "Cu + CuCl2 -> CuCl",
      product: "CuCl",
      materials: [
        { name: "copper", form: "Cu", excess },
        { name: "chloride", form: "CuCl2·2H2O" },
      ],
      scale: { material: "chloride", portion: "17.048 g" },
      readability: { mass: "0.001 g" },
    })
      .steps.map(({ text }) => text)
      .filter((text) => text.startsWith("Lift out"));

  it("is lifted out where some is left: 0.1000 mol asks for 6.355 g (CuCl2·2H2O 170.48, Cu 63.55), and a fifth of it is over", () => {
    expect(lifted("20 %")).toEqual([
      "Lift out what is left of the copper, about 1.27 g, and rinse it over the vessel.",
    ]);
  });
});

// A fifth of the metal is over.
describe("the metal over in a displacement", () => {
  const planned = (equation: string, product: string, salt: string, metal: string) =>
    planPreparation({
      equation,
      product,
      materials: [
        { name: "salt", form: salt },
        { name: "metal", form: metal, excess: "20 %" },
      ],
      scale: { material: "salt", portion: "100.0 g" },
    });
  const texts = (plan: ReturnType<typeof planned>, start: RegExp): string[] =>
    plan.steps.map(({ text }) => text).filter((text) => start.test(text));

  // 100.0 g / 249.68 g/mol = 0.4005 mol of copper, 25.5 g; 26.9 g / 55.845 g/mol - 0.4005 mol = 0.0812 mol of iron over, 4.5 g. The
  // liquor is poured off first, or the acid would be spent on all of it: 30.0 g of a dense precipitate keep 4.5 mL/g when settled (common
  // practice), 135 mL. 0.0812 mol × 98.08 g/mol / 10 % × 1.1 = 87.6 g of acid; 2.5 % in what is left asks for 50 g only. It warms
  // aluminium only (common practice). Fe2+(aq) -89.1 kJ/mol (NBS Tables, 1982): 7.2 kJ in some 250 g are 7 K; portions as for all that foams
  it("is taken out as powder by dilute acid, where that leaves the product", () => {
    const plan = planned("CuSO4 + Fe -> FeSO4 + Cu", "Cu", "CuSO4·5H2O", "Fe");
    expect(texts(plan, /^Stir until/)[0]).toMatch(/Shake or brush the Cu off what is left in pieces\.$/);
    expect(texts(plan, /^(Lift out|What is left)/)).toEqual([
      "Lift out what is left of metal in pieces, let the Cu settle and pour the clear liquor off into the waste jar, before the acid comes: about 135 mL stays with it.",
      "What is left of metal as powder dissolves: stir the Cu with 87.6 g of dilute sulfuric acid (10 %), in at least 5 portions over at least 3 min, each when the gas of the one before has slackened, in moving air, until no more gas rises, and a magnet held to the glass draws no grains (at most 1.95 L of hydrogen: no flame; it gives 89 kJ for each mole of Fe, up to 7 K here if all came at once); the Cu stays.",
    ]);
    expect(plan.steps.at(-1)!.after.solids.map(({ formula }) => formula)).not.toContain("Fe");
    const aluminium = planned("CuSO4 + Al -> Al2(SO4)3 + Cu", "Cu", "CuSO4·5H2O", "Al");
    expect(texts(aluminium, /^What is left/)[0]).toMatch(/sulfuric acid \(10 %\), warm,/);
  });

  // 100.0 g / 169.87 g/mol / 2 × 63.546 g/mol = 18.70 g of copper, 22.5 g are weighed: 3.8 g stay in 63.5 g of silver
  it("stays in the product as powder where no acid tells them apart", () => {
    const plan = planned("AgNO3 + Cu -> Cu(NO3)2 + Ag", "Ag", "AgNO3", "Cu");
    expect(texts(plan, /^Stir until/)[0]).toMatch(
      /off what is left in pieces and lift them out; what is left as powder stays in the product\.$/,
    );
    expect(texts(plan, /^Lift out/)).toEqual([]);
    expect(plan.steps.at(-1)!.text).toMatch(/^Weigh the dry Ag: 63.5 g at 100 % yield, and with it 3.8 g of Cu/);
  });
});

// 16.0 g / 331.21 g/mol = 0.0483 mol: 10.0 g of lead and 3.16 g of zinc; 3.8 g are weighed, 0.6 g is over, and no acid takes it from lead
describe("metal over beside lead", () => {
  const lead = (name: string) =>
    planPreparation({
      equation: "Pb(NO3)2 + Zn -> Pb + Zn(NO3)2",
      product: "Pb",
      materials: [
        { name: "lead nitrate", form: "Pb(NO3)2" },
        { name, form: "Zn", excess: "20 %" },
      ],
      scale: { product: "10 g" },
      readability: { mass: "0.1 g" },
    });
  const weighed = (name: string): string => lead(name).steps.at(-1)!.text;

  it("is lifted out where its name says pieces, and is no part of what is weighed", () => {
    for (const name of ["zinc strip", "zinc granules", "zinc foil", "zinc turnings"])
      expect(weighed(name), name).toMatch(/^Weigh the dry Pb: 10\.0 g at 100 % yield\. /);
    const plan = lead("zinc strip");
    const texts = plan.steps.map(({ text }) => text);
    expect(texts.find((text) => text.startsWith("Lift out"))).toBe(
      "Lift out what is left of the zinc strip, about 0.6 g, and rinse it over the vessel.",
    );
    expect(texts.join("\n")).not.toContain("what is left as powder");
    const heavy = evaluateRun(plan, { dried: "10.7 g" }).verdict;
    expect(heavy[0]!.code).toBe("wet");
    expect(heavy.find(({ code }) => code === "unreacted")!.text).toMatch(
      /is left by the calculation and was to be taken/,
    );
  });

  it("stays as powder, or where nothing is said of it", () => {
    for (const name of ["zinc powder", "zinc dust", "zinc", "zinc filings", "zinc wool"])
      expect(weighed(name), name).toMatch(/10\.0 g at 100 % yield, and with it 0\.6 g of Zn, 10\.7 g in all/);
  });

  // common practice, no source: the sponge oxidises damp and warms itself
  it("and the sponge is kept from air until it is dry", () => {
    const text = lead("zinc strip")
      .steps.map((one) => one.text)
      .join("\n");
    expect(text).toMatch(/sucking off, only until the water is gone: no air is sucked through it/);
    expect(text).toMatch(/Wash the last time with .* of alcohol/);
    expect(text).toMatch(/only then dry it in a desiccator, or in a closed jar/);
  });
});
