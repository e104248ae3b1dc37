// What is left, vessel by vessel: what is in each, what its acid and its base leave of each other, and metals by what holds them.
// Amounts by hand beside each figure; stability constants are those of the tables.
import { benchSheet, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const plan = (
  equation: string,
  product: string,
  materials: PlanRequest["materials"],
  scale: PlanRequest["scale"],
  more: Partial<PlanRequest> = {},
) => planPreparation({ equation, product, materials, scale, ...more });
const moles = (q: { in(unit: string): { toNumber(): number } }): number => q.in("mol").toNumber();

describe("each vessel", () => {
  const { waste } = plan(
    "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
    "Zn5(CO3)2(OH)6",
    [
      { name: "zinc", form: "ZnSO4·7H2O" },
      { name: "soda", form: "Na2CO3", excess: "20 %" },
    ],
    { material: "zinc", portion: "287.5 g" },
  );

  it("has its own treatment: 0.2 mol of soda over asks for 0.4 mol of acid, less what stays in the cake", () => {
    const [filtrate, wash] = waste.vessels;
    expect([filtrate!.vessel, wash!.vessel]).toEqual(["filtrate", "wash water"]);
    const acid = waste.vessels.map(({ treatment }) => moles(treatment.find(({ reagent }) => reagent === "H+")!.amount));
    // 0.1 g of soda is 2 mmol of acid
    expect(acid[0]! + acid[1]!).toBeGreaterThan(0.39);
    expect(acid[0]! + acid[1]!).toBeLessThan(0.402);
    // vinegar of 5 %: 60.05 g/mol / 0.05 / 1.006 g/mL = 1.194 L for a mole
    const vinegar = filtrate!.treatment.find(({ reagent }) => reagent === "H+")!.vinegar!;
    expect(vinegar.in("L").toNumber() / acid[0]!).toBeCloseTo(1.194, 2);
  });

  it("adds up: the amounts of all vessels are those of the waste", () => {
    expect(waste.metals.length, "rows to test").toBeGreaterThan(0);
    for (const { symbol, amount } of waste.metals) {
      const all = waste.vessels.flatMap(({ metals }) => metals.filter((one) => one.symbol === symbol));
      expect(all.reduce((n, one) => n + moles(one.amount), 0)).toBeCloseTo(moles(amount), 9);
    }
  });

  // 73.28 g / 244.26 g/mol = 0.300 mol of barium takes 0.100 mol of the sulfate, half as much again is 0.050 over: 0.150 mol × 2 Co
  it("counts a complex ion as often as a formula has it", () => {
    const { waste: yellow } = plan(
      "[Co(NH3)6]2(SO4)3 + BaCl2 -> [Co(NH3)6]Cl3 + BaSO4",
      "BaSO4",
      [
        { name: "hexaammine", form: "[Co(NH3)6]2(SO4)3", excess: "50 %" },
        { name: "barium chloride", form: "BaCl2·2H2O" },
      ],
      { material: "barium chloride", portion: "73.28 g" },
    );
    const cobalt = yellow.vessels.flatMap(({ metals }) => metals.filter(({ symbol }) => symbol === "Co"));
    const held = cobalt.flatMap((metal) => metal.held);
    expect(held.map(({ ligand }) => ligand)).toEqual(["ammonia", "ammonia"]);
    for (const of of [cobalt, held]) {
      const all = of.reduce((n, { amount }) => n + moles(amount), 0);
      expect(all).toBeLessThan(0.3);
      expect(all).toBeGreaterThan(0.297);
    }
  });

  // as above; the ammonia that the copper lets go of is in the liquor too
  it("names what holds a metal once, by its own complex or by the liquor", () => {
    const { waste: blue } = plan(
      "[Cu(NH3)4]SO4 + BaCl2 -> [Cu(NH3)4]Cl2 + BaSO4",
      "BaSO4",
      [
        { name: "tetraammine", form: "[Cu(NH3)4]SO4·H2O", excess: "50 %" },
        { name: "barium chloride", form: "BaCl2·2H2O" },
      ],
      { material: "barium chloride", portion: "73.28 g" },
    );
    for (const { metals } of blue.vessels) {
      const { held, amount } = metals.find(({ symbol }) => symbol === "Cu")!;
      expect(held.map(({ ligand }) => ligand)).toEqual(["ammonia"]);
      expect(moles(held[0]!.amount)).toBeCloseTo(moles(amount), 9);
    }
  });

  it("nets acid against base before it asks for either", () => {
    // 0.1 mol of vitriol, 0.12 mol of sulfuric acid that came with it, 0.2 mol of lye: 0.04 mol of acid is left over the hydroxide
    const { waste: sour } = plan(
      "CuSO4 + NaOH -> Cu(OH)2 + Na2SO4",
      "Cu(OH)2",
      [
        { name: "vitriol", form: "CuSO4", strength: "10 %", also: [{ form: "H2SO4", share: "1 %" }] },
        { name: "lye", form: "NaOH", excess: "5 %" },
      ],
      { material: "vitriol", portion: "159.6 g" },
    );
    for (const { treatment } of sour.vessels) {
      const reagents = treatment.map(({ reagent }) => reagent);
      expect(reagents.filter((one) => one === "H+" || one === "Na2CO3").length).toBeLessThanOrEqual(1);
    }
  });

  it("stands on the sheet with its volume, what is in it and what is put to it", () => {
    const sheet = benchSheet(
      plan(
        "FeSO4·7H2O + (NH4)2SO4 -> (NH4)2Fe(SO4)2·6H2O + H2O",
        "(NH4)2Fe(SO4)2·6H2O",
        [
          { name: "copperas", form: "FeSO4·7H2O" },
          { name: "ammonium sulfate", form: "(NH4)2SO4" },
        ],
        { material: "copperas", portion: "27.8 g" },
      ),
    ).replace(/\s+/g, " ");
    // of one crop, in ice: 38.9 g of water less 8.5 g in the crystals keeps 20.1 g in 100 g, less what clings to them
    expect(sheet).toMatch(/Filtrate, about [\d.]+ g: 5\.\d g of \(NH₄\)₂Fe\(SO₄\)₂\. \d\.\d g of Na₂CO₃ \(anhydrous\)/);
    // with the alcohol of the last rinse, as crystals of iron(II) get it
    expect(sheet).toMatch(/Wash water, about [\d.]+ m?[gL]: [\d.]+ g of C₂H₅OH, \d\.\d g of \(NH₄\)₂Fe\(SO₄\)₂/);
  });
});

describe("a metal that a ligand holds", () => {
  it("is given by the complex at equilibrium: copper in ammonia over is [Cu(NH3)4]2+", () => {
    const made = plan(
      "CuSO4 + NH3 + H2O -> Cu(OH)2 + (NH4)2SO4",
      "Cu(OH)2",
      [
        { name: "vitriol", form: "CuSO4·5H2O" },
        { name: "ammonia", form: "NH3", strength: "10 %", excess: "400 %" },
      ],
      { material: "vitriol", portion: "25.0 g" },
      { acknowledge: ["does-not-go"] },
    );
    const { complexes } = made.steps.find(({ operation, vessel }) => operation === "add" && vessel === "pot")!.after;
    expect(complexes.map(({ metal, ligand }) => [metal, ligand])).toEqual([["Cu", "ammonia"]]);
    expect(complexes[0]!.formula).toMatch(/\[?Cu\(NH₃\)₄\]?²⁺/);
    expect(moles(complexes[0]!.amount)).toBeGreaterThan(0);
    const { metals, notes, treatment } = made.waste;
    expect(metals.find(({ symbol }) => symbol === "Cu")!.held[0]!.ligand).toBe("ammonia");
    expect(notes.join(" ")).toMatch(/ammonia keeps .*count it by the ligand/);
    // acid takes the ammonia away before soda precipitates the copper
    expect(treatment.map(({ reagent }) => reagent)).toContain("H+");
  });

  it("is counted in the formula where that is the complex: four ammonia in cuprammonium ask for four times the acid", () => {
    const made = plan(
      "CuSO4·5H2O + NH3 -> [Cu(NH3)4]SO4·H2O + H2O",
      "[Cu(NH3)4]SO4·H2O",
      [
        { name: "vitriol", form: "CuSO4·5H2O" },
        { name: "ammonia", form: "NH3", strength: "25 %", excess: "5 %" },
      ],
      { material: "vitriol", portion: "25.0 g" },
    );
    const { complexes } = made.steps.findLast(
      ({ operation, vessel }) => operation === "hold" && vessel === "pot",
    )!.after;
    // 25.0 / 249.68 = 0.1001 mol
    expect(moles(complexes.find(({ metal }) => metal === "Cu")!.amount)).toBeCloseTo(0.1001, 4);
    expect(made.waste.notes.join(" ")).toMatch(/ammonia keeps the Cu of the complex in solution/);
  });

  it("is not brought down by soda where oxalate holds it, and hexacyanidoferrate never", () => {
    const green = plan(
      "FeCl3 + K2C2O4 + H2O -> K3[Fe(C2O4)3]·3H2O + KCl",
      "K3[Fe(C2O4)3]·3H2O",
      [
        { name: "iron chloride", form: "FeCl3·6H2O" },
        { name: "oxalate", form: "K2C2O4·H2O" },
      ],
      { product: "9.8 g" },
    ).waste;
    expect(green.metals.find(({ symbol }) => symbol === "Fe")!.held[0]!.ligand).toBe("oxalate");
    expect(green.treatment).toEqual([]);
    expect(green.notes.join(" ")).toMatch(/oxalate keeps \[Fe\(C₂O₄\)₃\]³⁻/);
    const blue = plan(
      "CuSO4 + K4[Fe(CN)6] -> Cu2[Fe(CN)6] + K2SO4",
      "Cu2[Fe(CN)6]",
      [
        { name: "vitriol", form: "CuSO4·5H2O" },
        { name: "prussiate", form: "K4[Fe(CN)6]·3H2O", excess: "20 %" },
      ],
      { material: "vitriol", portion: "50 g" },
    );
    const { complexes } = blue.waste.vessels[0]!.contents;
    expect(complexes.map(({ metal, ligand }) => [metal, ligand])).toEqual([["Fe", "cyanide"]]);
    expect(blue.waste.treatment.map(({ purpose }) => purpose).join(" ")).not.toMatch(/\bFe\b/);
    expect(benchSheet(blue)).not.toMatch(/destroy/);
  });
});

// Acid on a sulfite gives SO2, EUH031 of Annex VI; on a sulfide H2S (Prudent Practices).
describe("acid and what it frees a gas from", () => {
  const sulfite = (excess: "10 %" | "0 %") =>
    plan(
      "CaCl2 + Na2SO3 -> CaSO3 + NaCl",
      "CaSO3",
      [
        { name: "calcium chloride", form: "CaCl2" },
        { name: "sulfite", form: "Na2SO3", excess },
      ],
      { material: "calcium chloride", portion: "20.0 g" },
    ).waste;

  it("are kept apart: sulfite over is never made sour", () => {
    const { notes, treatment } = sulfite("10 %");
    expect(notes.join()).toMatch(/acid frees SO2 from the Na₂SO₃/);
    expect(treatment.map(({ reagent }) => reagent)).not.toContain("H+");
  });

  it("are not spoken of where nothing is left of it", () => {
    expect(sulfite("0 %").notes.join()).not.toContain("SO2");
  });

  it("are kept apart for a sulfide too, and for what comes of it", () => {
    const { notes } = plan(
      "CuSO4 + Na2S -> CuS + Na2SO4",
      "CuS",
      [
        { name: "vitriol", form: "CuSO4·5H2O" },
        { name: "sulfide", form: "Na2S", excess: "10 %" },
      ],
      { material: "vitriol", portion: "20.0 g" },
    ).waste;
    expect(notes.join()).toMatch(/acid frees H2S from the Na₂S/);
  });
});

describe("a salt of the liquor that is worth keeping", () => {
  const why = (equation: string, product: string, one: string, other: string) =>
    plan(
      equation,
      product,
      [
        { name: "one", form: one },
        { name: "other", form: other },
      ],
      { product: "50 g" },
    ).byProducts.map((by) => [by.formula, by.worthKeeping, by.why]);

  // lead chloride dissolves by 1 g in 100 g of water, chalk by next to nothing, and calcium is left in a waste (handbooks, practice)
  it("is had after the metal that the water keeps of the product, and never where that is lead", () => {
    expect(why("AgNO3 + Na2SO4 -> Ag2SO4 + NaNO3", "Ag2SO4", "AgNO3", "Na2SO4")).toEqual([
      [
        "NaNO₃",
        true,
        expect.stringMatching(/^the liquor boiled down gives it .* salts with it, after all Ag is precip/),
      ],
    ]);
    expect(why("Pb(NO3)2 + NaCl -> PbCl2 + NaNO3", "PbCl2", "Pb(NO3)2", "NaCl")).toEqual([
      ["NaNO₃", false, "it comes out of a pot with Pb: nothing is boiled down from it"],
    ]);
    expect(why("CaCl2 + Na2CO3 -> CaCO3 + NaCl", "CaCO3", "CaCl2", "Na2CO3")).toEqual([
      // common salt costs less than the heat (common practice, no source)
      ["NaCl", false, "common salt is not worth the boiling"],
    ]);
  });
});

// 20.82 g of barium chloride, 0.1000 mol, in 208.2 g; as much sodium sulfate, 14.20 g, in 142.0 g.
describe("acid and base that came with two solutions", () => {
  const needs = (acid: "3.65 %" | "1 %", base: "Na2CO3" | "NaOH", share: "1 %" | "4 %") => {
    const { vessels } = plan(
      "BaCl2 + Na2SO4 -> BaSO4 + NaCl",
      "BaSO4",
      [
        { name: "barium chloride", form: "BaCl2", strength: "10 %", also: [{ form: "HCl", share: acid }] },
        { name: "sulfate", form: "Na2SO4", strength: "10 %", also: [{ form: base, share }] },
      ],
      { material: "barium chloride", portion: "208.2 g" },
    ).waste;
    const all = vessels.flatMap(({ treatment }) => treatment).filter(({ reagent }) => reagent !== "Na2SO4");
    return {
      reagents: [...new Set(all.map(({ reagent }) => reagent))],
      amount: all.reduce((n, { amount }) => n + moles(amount), 0),
    };
  };

  // 3.65 % of 208.2 g is 7.60 g of hydrogen chloride, 0.2084 mol; 1.42 g of soda takes 2 × 0.0134 mol: 0.1816 / 2 × 1.1 = 0.0999 mol of soda
  it("leave acid for soda where there is more of it", () => {
    const { reagents, amount } = needs("3.65 %", "Na2CO3", "1 %");
    expect(reagents).toEqual(["Na2CO3"]);
    expect(amount).toBeCloseTo(0.0999, 3);
  });

  // 2.08 g of hydrogen chloride, 0.0571 mol; 5.68 g of lye, 0.1420 mol: 0.0849 mol of acid, no more than that
  it("leave base for acid where there is more of that", () => {
    const { reagents, amount } = needs("1 %", "NaOH", "4 %");
    expect(reagents).toEqual(["H+"]);
    expect(amount).toBeCloseTo(0.0849, 3);
  });
});
