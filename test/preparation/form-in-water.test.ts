// A product written without crystal water leaves its water in a hydrate, and the balance sees that hydrate. Molar masses: IUPAC 2021
// abridged. Which hydrate: CRC Handbook, solubility of inorganic compounds, solid phases (gypsum below 42 °C; Glauber's salt below
// 32.4 °C; blue vitriol to 95 °C); calcium oxalate monohydrate is the form of gravimetric analysis (Vogel, Quantitative Inorganic
// Analysis); magnesium carbonate trihydrate precipitates in the cold (Davies & Bubela 1973).
import { evaluateRun, type PlanRequest, planPreparation, planSequence } from "preparative";
import { describe, expect, it } from "vitest";

const plan = (equation: string, product: string, forms: readonly [string, string], more: Partial<PlanRequest> = {}) =>
  planPreparation({
    equation,
    product,
    materials: [
      { name: "one", form: forms[0] },
      { name: "other", form: forms[1], ...(forms[1].startsWith("H2") ? { strength: "20 %" } : {}) },
    ],
    scale: { material: "one", portion: "20.0 g" },
    ...more,
  });

// 20.0 g / M of the first material × M of the hydrate
const CASES = [
  ["CaCl2 + Na2SO4 -> CaSO4 + NaCl", "CaSO4", ["CaCl2", "Na2SO4"], "CaSO4·2H2O", (20 / 110.978) * 172.164],
  ["CaCl2 + Na2C2O4 -> CaC2O4 + NaCl", "CaC2O4", ["CaCl2", "Na2C2O4"], "CaC2O4·H2O", (20 / 110.978) * 146.112],
  ["MgCl2 + Na2CO3 -> MgCO3 + NaCl", "MgCO3", ["MgCl2·6H2O", "Na2CO3"], "MgCO3·3H2O", (20 / 203.301) * 138.357],
  ["CuO + H2SO4 -> CuSO4 + H2O", "CuSO4", ["CuO", "H2SO4"], "CuSO4·5H2O", (20 / 79.545) * 249.68],
  ["Na2CO3 + H2SO4 -> Na2SO4 + CO2 + H2O", "Na2SO4", ["Na2CO3", "H2SO4"], "Na2SO4·10H2O", (20 / 105.988) * 322.19],
  ["MgO + H2SO4 -> MgSO4 + H2O", "MgSO4", ["MgO", "H2SO4"], "MgSO4·7H2O", (20 / 40.304) * 246.47],
] as const;

describe("a product written without crystal water", () => {
  it.each(CASES)("%s: the water gives another form of %s", (equation, asked, forms, hydrate, grams) => {
    const p = plan(equation, asked, forms);
    expect(p.product.formula.replace("·", ".").normalize("NFKC")).toBe(hydrate.replace("·", ".").normalize("NFKC"));
    expect(p.product.theoreticalYield.toNumber("g")).toBeCloseTo(grams, 1);
    expect(p.checks[0]!.text).toContain("not ");
    // who follows the sheet and weighs what it expects is not told that something went wrong
    const last = p.steps.at(-1)!;
    const run = evaluateRun(p, { dried: [`${Math.round(last.target!.toNumber("g") * 10) / 10} g`] });
    expect(["consistent", "loss-explained"]).toContain(run.verdict[0]!.code);
  });

  it("is what the sums are of where that is known and meant", () => {
    const [equation, asked, forms] = CASES[0];
    const p = plan(equation, asked, forms, { acknowledge: ["another-hydrate"] });
    // 20.0 g / 110.978 × 136.134
    expect(p.product.theoreticalYield.toNumber("g")).toBeCloseTo(24.53, 1);
  });

  it("sets the amount, not the mass, of a batch asked for by the mass of the written form", () => {
    const [equation, asked, forms] = CASES[4];
    const p = plan(equation, asked, forms, { scale: { product: "14.2 g" } });
    // 14.2 g / 142.04 = 0.100 mol, of soda 10.6 g
    expect(p.product.amount.toNumber("mol")).toBeCloseTo(0.1, 3);
    expect(p.product.theoreticalYield.toNumber("g")).toBeCloseTo(32.2, 1);
  });

  it("follows the room: above 32.4 °C sodium sulfate crystallises without water", () => {
    const [equation, asked, forms] = CASES[4];
    expect(plan(equation, asked, forms, { temperature: "35 °C" }).product.theoreticalYield.toNumber("g")).toBeCloseTo(
      (20 / 105.988) * 142.04,
      1,
    );
  });

  it("stays as it is where a hydrate is asked for", () => {
    const nickel = plan("NiCO3 + H2SO4 + H2O -> NiSO4·6H2O + CO2", "NiSO4·6H2O", ["NiCO3", "H2SO4"]);
    // 20.0 g / 118.70 × 262.84
    expect(nickel.product.theoreticalYield.toNumber("g")).toBeCloseTo(44.3, 1);
  });

  // Solid phases at 20 °C of the solubility tables; a drying agent at room temperature takes no crystal water of these.
  it.each([
    ["CaCO3 + HCl -> CaCl2 + CO2 + H2O", "CaCl2", "CaCO3", "CaCl₂·6H₂O", (20 / 100.087) * 219.08],
    ["Fe2O3 + HCl -> FeCl3 + H2O", "FeCl3", "Fe2O3", "FeCl₃·6H₂O", ((2 * 20) / 159.69) * 270.29],
    ["Mn + HCl -> MnCl2 + H2", "MnCl2", "Mn", "MnCl₂·4H₂O", (20 / 54.938) * 197.91],
  ])("is the hydrate where it is deliquescent: %s", (equation, product, solid, name, grams) => {
    const { product: made, checks } = plan(equation, product, [solid, "HCl"]);
    expect(made.theoreticalYield.toNumber("g")).toBeCloseTo(grams, 0);
    expect(checks.some(({ text }) => text.includes(`water gives ${name}, not`))).toBe(true);
  });

  // Cobalt violet and nickel phosphate settle with eight waters, and calcium acetate keeps one of its two: common practice, no source
  it.each([
    ["CoCl2 + Na3PO4 -> Co3(PO4)2 + NaCl", "Co3(PO4)2", ["CoCl2·6H2O", "Na3PO4·12H2O"], (20 / 237.93 / 3) * 510.86],
    ["NiSO4 + Na3PO4 -> Ni3(PO4)2 + Na2SO4", "Ni3(PO4)2", ["NiSO4·6H2O", "Na3PO4·12H2O"], (20 / 262.84 / 3) * 510.14],
    ["CaO + CH3COOH -> Ca(CH3COO)2 + H2O", "Ca(CH3COO)2", ["CaO", "CH3COOH"], (20 / 56.077) * 176.18],
  ] as const)("is the form the bench knows: %s", (equation, product, forms, grams) => {
    const made = planPreparation({
      equation,
      product,
      materials: [
        { name: "one", form: forms[0] },
        { name: "other", form: forms[1], ...(forms[1].startsWith("CH3") ? { strength: "20 %" as const } : {}) },
      ],
      scale: { material: "one", portion: "20.0 g" },
    });
    expect(made.product.theoreticalYield.toNumber("g")).toBeCloseTo(grams, 1);
  });

  // 0.1 mol of anhydrous acetate asked for, of MgCO3·3H2O 13.84 g and not 8.43 g of MgCO3
  it("is what the next step of a chain weighs", () => {
    const chain = planSequence({
      steps: [
        {
          equation: "MgSO4 + Na2CO3 -> MgCO3 + Na2SO4",
          product: "MgCO3",
          productName: "white carbonate",
          materials: [
            { name: "Epsom salt", form: "MgSO4·7H2O" },
            { name: "soda", form: "Na2CO3", excess: "5 %" },
          ],
        },
        {
          equation: "MgCO3 + CH3COOH -> Mg(CH3COO)2 + CO2 + H2O",
          product: "Mg(CH3COO)2",
          materials: [
            { name: "white carbonate", form: "MgCO3" },
            { name: "vinegar", form: "CH3COOH", strength: "5 %" },
          ],
        },
      ],
      wanted: "0.100 mol",
    });
    const taken = chain.plans[1]!.weighings.find(({ material }) => material === "white carbonate")!;
    expect(taken.portion.toNumber("g")).toBeCloseTo(13.8, 1);
    expect(chain.expected[0]!.toNumber("g")).toBeCloseTo(13.84, 1);
    // the carbonate takes 3 H2O, gives them and one of its own reaction to the acetate
    expect(String(chain.overall)).toBe("MgSO4 + Na2CO3 + 3 H2O + 2 CH3COOH -> Na2SO4 + Mg(CH3COO)2.4H2O + CO2");
  });
});

// Handbooks: magnesium sulfate crystallises with seven waters up to 48 °C and with one from 68 °C on; nickel sulfate with seven up to
// 31 °C, with six above (CRC Handbook of Chemistry and Physics, solid phases of the solubility table; from memory).
describe("a hydrate that the bench does not reach", () => {
  const asked = (equation: string, product: string, carbonate: string) =>
    planPreparation.bind(undefined, {
      equation,
      product,
      materials: [
        { name: "carbonate", form: carbonate },
        { name: "acid", form: "H2SO4", strength: "20 %" },
      ],
      scale: { product: "50 g" },
    });

  it("is another solid, said before anything is weighed, with where the wanted one crystallises", () => {
    const { feasibility } = asked("MgCO3 + H2SO4 -> MgSO4·H2O + CO2", "MgSO4·H2O", "MgCO3")();
    expect(feasibility.verdict).toBe("another solid forms");
    expect(feasibility.reasons[0]!.text).toMatch(
      /^at 20 °C MgSO₄·7H₂O crystallises, not MgSO₄·H₂O, which crystallises from 6\d(\.\d)? °C on$/,
    );
  });

  it("is planned where its liquor can be filtered warm", () => {
    const { feasibility, crystallising } = asked("NiCO3 + H2SO4 + H2O -> NiSO4·6H2O + CO2", "NiSO4·6H2O", "NiCO3")();
    expect(feasibility.verdict).toBe("goes");
    expect(crystallising!.cold.toNumber("°C")).toBeGreaterThan(crystallising!.notBelow!.toNumber("°C"));
  });
});
