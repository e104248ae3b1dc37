// Classic preparations read line by line as a teacher would: what each sheet must say, and must not. Practice of the bench from
// memory of printed school preparations, where no source stands beside it.
import { benchSheet, crystallise, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";
import { handOf } from "../../src/preparation/procedure/words";
import { quantity } from "../../src/quantity";

describe("alum from foil, lye and acid", () => {
  const plan = planPreparation({
    equation: "Al + KOH + H2SO4 + H2O -> KAl(SO4)2·12H2O + H2",
    product: "KAl(SO4)2·12H2O",
    materials: [
      { name: "foil", form: "Al" },
      { name: "caustic potash", form: "KOH", assay: "85 %" },
      { name: "acid", form: "H2SO4", strength: "96 %" },
    ],
    scale: { material: "foil", portion: "2 g" },
  });
  const at = (text: RegExp) => plan.steps.findIndex((step) => text.test(step.text));
  const said = (i: number) => plan.steps[i]!.cautions.map(({ text }) => text).join(" ");
  const foil = at(/^Add the 2\.0 g of foil/);
  const acid = at(/^Pour the acid solution into the vessel/);

  it("waits for the metal to dissolve before the acid comes, and for the hydroxide to dissolve after", () => {
    const wait = at(/until no more gas rises and the foil has gone into solution/);
    const clear = at(/white hydroxide that forms at first has dissolved again/);
    expect([foil, wait, acid, clear]).toEqual([foil, foil + 1, foil + 2, foil + 3]);
  });

  it("all hydrogen leaves from the lye: its cautions stand there, and those of acid where acid is", () => {
    // 2 g of aluminium, 0.0741 mol, gives 0.111 mol of hydrogen, 2.67 L at 20 °C
    expect(plan.steps[foil]!.left.map(({ what }) => what)).toEqual(["gas"]);
    expect(plan.steps[acid]!.left).toEqual([]);
    expect(said(foil)).toMatch(/the gas burns/);
    expect(said(acid)).not.toMatch(/the gas burns|gas is given off/);
    expect(said(foil)).not.toMatch(/diluted acid|the solid goes into the acid/);
    expect(said(acid)).toMatch(/diluted acid is hot/);
    expect(said(acid)).not.toMatch(/the solid goes into the acid/);
  });

  it("asks for no excess of the metal, which the lye takes whole", () => {
    expect(plan.checks.map(({ text }) => text).join(" ")).not.toMatch(/metal runs out|excess of foil/);
  });

  it("names the form of the metal that a classification is for", () => {
    const sheet = benchSheet(plan);
    expect(sheet).toMatch(/foil, Al \(powder, stabilised\)/);
    expect(sheet).toMatch(/foil, Al \(massive\)/);
  });
});

describe("copper acetate from blue vitriol and calcium acetate", () => {
  const plan = planPreparation({
    equation: "CuSO4 + Ca(CH3COO)2 + H2O -> Cu(CH3COO)2·H2O + CaSO4·2H2O",
    product: "Cu(CH3COO)2·H2O",
    materials: [
      { name: "blue vitriol", form: "CuSO4·5H2O" },
      { name: "calcium acetate", form: "Ca(CH3COO)2·H2O" },
    ],
    scale: { product: "20 g" },
  });
  const texts = plan.steps.map(({ text }) => text);

  it("all the water goes to the salt that is dissolved first, and the other is stirred into it", () => {
    expect(texts.join("\n")).not.toMatch(/in 3\.6 mL of water/);
    expect(texts.join("\n")).toMatch(/Add the blue vitriol to it and stir .*: CaSO₄·2H₂O precipitates/);
  });

  it("gypsum that the smaller water no longer keeps is filtered off before the crystals come", () => {
    // 0.2 g of anhydrite in 100 g of water at 80 °C: 278 g keep 0.56 g, 43 g of them 0.09 g (0.21 and 0.19 g/100 g, handbooks)
    const boiled = plan.steps.findIndex(({ operation }) => operation === "concentrate");
    const [gypsum] = plan.steps[boiled]!.after.solids;
    expect(gypsum!.formula).toBe("CaSO₄·2H₂O");
    expect(gypsum!.mass.toNumber("g")).toBeGreaterThan(0.3);
    expect(gypsum!.mass.toNumber("g")).toBeLessThan(0.6);
    expect(plan.steps[boiled + 1]!.operation).toBe("filter");
    expect(plan.steps[boiled + 1]!.after.solids).toEqual([]);
  });
});

describe("a second crop", () => {
  it("comes from a liquor that is boiled down no further than hot water dissolves", () => {
    // zinc sulfate: 53.8 g in 100 g of water at 20 °C, 71.1 g at 80 °C (CRC): less than twice as much
    const plan = planPreparation({
      equation: "Zn + H2SO4 + H2O -> ZnSO4·7H2O + H2",
      product: "ZnSO4·7H2O",
      materials: [
        { name: "zinc", form: "Zn", excess: "5 %" },
        { name: "acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { product: "50 g" },
    });
    const boiled = plan.steps.filter(({ operation }) => operation === "concentrate");
    const strengths = boiled.map(({ after }) => {
      const salt = after.dissolved.find(({ formula }) => formula === "ZnSO₄")!;
      return (salt.amount.toNumber("mol") * 161.44) / after.water.toNumber("g");
    });
    expect(strengths).toHaveLength(2);
    for (const strength of strengths) expect(strength).toBeLessThan(0.73);
    // both are boiled down to the same strength
    expect(strengths[1]).toBeCloseTo(strengths[0]!, 2);
  });

  it("is warned of where the liquor is boiled down further than that", () => {
    const beyond = { formula: "MgSO4·7H2O", mass: "100 g", hot: "80 °C", cold: "20 °C" } as const;
    const warned = (evaporateTo: `${number}`) =>
      crystallise({ ...beyond, evaporateTo }).warnings.some((text) => text.includes("crystallises hot"));
    // 33.7 g in 100 g of water at 20 °C, 55.8 g at 80 °C (CRC): 0.60 of the water is as strong as it was hot
    expect(warned("0.5")).toBe(true);
    expect(warned("0.65")).toBe(false);
  });
});

describe("chromate in a waste", () => {
  const notes = (equation: string, product: string, forms: readonly [string, string]) =>
    planPreparation({
      equation,
      product,
      materials: [
        { name: "one", form: forms[0] },
        { name: "other", form: forms[1], excess: "10 %" },
      ],
      scale: { product: "10 g" },
    }).waste;

  it("is reduced first: no soda is counted for it", () => {
    const waste = notes("Pb(NO3)2 + K2CrO4 -> PbCrO4 + KNO3", "PbCrO4", ["Pb(NO3)2", "K2CrO4"]);
    expect(waste.notes.join(" ")).toMatch(/chromium\(VI\) must be reduced first: soda does not precipitate it/);
    for (const { purpose } of waste.treatment) expect(purpose).not.toContain("Cr");
  });

  it("is not spoken of where the chromium is chromium(III)", () => {
    const waste = notes("CrCl3 + Na3PO4 -> CrPO4 + NaCl", "CrPO4", ["Na3PO4·12H2O", "CrCl3·6H2O"]);
    expect(waste.metals.map(({ symbol }) => symbol)).toContain("Cr");
    expect(waste.notes.join(" ")).not.toContain("chromium(VI)");
    expect(waste.treatment.map(({ purpose }) => purpose).join(" ")).toContain("Cr");
  });
});

describe("figures for the hand", () => {
  it("are rounded once", () => {
    const { grams } = handOf({ mass: quantity("0.1 g"), volume: quantity("1 mL") });
    // to three figures 9.95 first, and then to 9.9, they were rounded twice
    expect(["9.9531 g", "9.949 g", "12.349 g", "99.96 g"].map((text) => grams(quantity(text as "1 g")))).toEqual([
      "10.0 g",
      "9.9 g",
      "12.3 g",
      "100 g",
    ]);
  });
});
