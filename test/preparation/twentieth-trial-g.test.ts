// Charges that only fire or a melt brings together, and what water does with them: refused before anything is weighed, or planned
// so that the sheet can be followed. Facts of the bench are common practice, no source.
import { doesItGo, type PlanRequest, planPreparation, tryPlanPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const asked = (equation: string, product: string) => doesItGo({ equation, product });

const planOf = (equation: string, product: string, forms: readonly string[], grams = "30 g" as `${number} g`) =>
  planPreparation({
    equation,
    product,
    materials: forms.map((form) => ({ name: form, form })),
    scale: { product: grams },
  } as PlanRequest);

describe("soda as the base of what is more alkaline than it", () => {
  // pKa of carbonic acid 6.35 and 10.33, of boric acid 9.24, of phosphoric acid 12.35 in its last step (CRC Handbook): with
  // CO3^2- + HPO4^2- -> PO4^3- + HCO3^- K is 10^(10.33 - 12.35), a hundredth; and HCO3^- + B(OH)3 -> CO2 + B(OH)4^- has
  // 10^(6.35 - 9.24), a thousandth
  it.each([
    ["3 Na2CO3 + 2 H3PO4 -> 2 Na3PO4 + 3 CO2 + 3 H2O", "Na3PO4"],
    ["2 Na2HPO4 + Na2CO3 -> 2 Na3PO4 + CO2 + H2O", "Na3PO4"],
    ["Na2B4O7 + Na2CO3 -> 4 NaBO2 + CO2", "NaBO2"],
    ["Na2CO3 + H2S -> Na2S + CO2 + H2O", "Na2S"],
  ])("keeps its gas: %s", (equation, product) => {
    const { verdict, reasons } = asked(equation, product);
    expect(verdict).toBe("does not go");
    expect(reasons[0]!.text).toMatch(/stays in the liquor as carbonate.*too weak a base.*take hydroxide in its place/);
  });

  it("goes where the acid is the stronger one, or hydroxide takes the last hydrogen", () => {
    for (const [equation, product] of [
      ["Na2CO3 + 4 H3BO3 -> Na2B4O7 + CO2 + 6 H2O", "Na2B4O7"],
      ["Na2CO3 + H3PO4 -> Na2HPO4 + CO2 + H2O", "Na2HPO4"],
      ["Na2HPO4 + NaOH -> Na3PO4 + H2O", "Na3PO4"],
      ["Na2B4O7 + 2 NaOH -> 4 NaBO2 + H2O", "NaBO2"],
    ] as const)
      expect(asked(equation, product).verdict, equation).toBe("goes");
  });
});

describe("a charge that water does not bring together", () => {
  it("is refused with the two plans that do it, and both are planned", () => {
    const [first] = asked("Na2CO3 + SiO2 + 5 H2O -> Na2SiO3·5H2O + CO2", "Na2SiO3·5H2O").reasons;
    expect(first!.text).toBe(
      "SiO₂ stays in a solution of Na₂CO₃, and only fire brings the two together: two plans do it, Na₂SiO₃ from Na₂CO₃ and SiO₂ in fire (an equation without water), and Na₂SiO₃·5H₂O from the crushed cake and water",
    );
    const fire = planOf("Na2CO3 + SiO2 -> Na2SiO3 + CO2", "Na2SiO3", ["Na2CO3", "SiO2"]);
    expect(fire.steps.some(({ operation }) => operation === "fire")).toBe(true);
    const water = planOf("Na2SiO3 + 9 H2O -> Na2SiO3·9H2O", "Na2SiO3·9H2O", ["Na2SiO3"]);
    expect(water.steps.some(({ operation }) => operation === "filter")).toBe(true);
  });

  it.each([
    ["2 MnO2 + 4 KOH + O2 -> 2 K2MnO4 + 2 H2O", "K2MnO4", "in water O₂ leaves MnO₂ alone"],
    ["3 MnO2 + 6 KOH + KClO3 -> 3 K2MnO4 + KCl + 3 H2O", "K2MnO4", "in water KClO₃ leaves MnO₂ alone"],
    ["Cr2O3 + 4 KOH + KClO3 -> 2 K2CrO4 + KCl + 2 H2O", "K2CrO4", "in water KClO₃ leaves Cr₂O₃ alone"],
  ])("is refused where only melted alkali lets it react: %s", (equation, product, start) => {
    const outcome = tryPlanPreparation({
      equation,
      product,
      materials: equation
        .split(" -> ")[0]!
        .split(" + ")
        .map((one) => one.replace(/^\d+ /, ""))
        .filter((form) => form !== "O2")
        .map((form) => ({ name: form, form })),
      scale: { product: "10 g" },
    });
    if (outcome.ok) throw new Error("planned");
    expect(outcome.error.message).toContain(start);
    expect(outcome.error.hint).toContain("no plan includes that");
  });

  // manganate in strong hot lye from permanganate and the dioxide is work in water
  it("is not refused where permanganate is the oxidiser", () => {
    expect(asked("2 KMnO4 + MnO2 + 4 KOH -> 3 K2MnO4 + 2 H2O", "K2MnO4").verdict).not.toBe("does not go");
  });

  it("is refused where the equation leaves an oxide that water turns into lye", () => {
    const { verdict, reasons } = asked("Na2B4O7 + ZnO -> ZnB4O7 + Na2O", "ZnB4O7");
    expect(verdict).toBe("does not go");
    expect(reasons[0]!.text).toMatch(/^Na₂O does not exist in water: water turns the oxide into lye/);
  });
});

describe("a charge that melts in its crucible", () => {
  const texts = (equation: string, product: string, forms: readonly string[]) =>
    planOf(equation, product, forms).steps.map(({ text }) => text);

  // potassium hydrogensulfate melts at 197 to 214 °C and the disulfate at 325 °C or more (CRC Handbook: 325; from memory). 30 g of
  // K2S2O7 (254.31 g/mol) is 0.118 mol: 32.1 g of KHSO4 (136.16 g/mol), and 2.1 g of water leaves
  it("is kept above where its product melts, and poured out", () => {
    const all = texts("2 KHSO4 -> K2S2O7 + H2O", "K2S2O7", ["KHSO4"]);
    expect(all[1]).toMatch(
      /^Put the KHSO4 into a crucible or deep dish, no tray, no more than a third full, for the KHSO4/,
    );
    expect(all[2]).toMatch(
      /^Heat slowly to 350 °C, and not to 600 °C.*stands still at 30\.0 g, from 32\.1 g; 2\.1 g of steam/,
    );
    expect(all[2]).toMatch(/Face shield and leather gloves, and nothing damp near it/);
    expect(all.at(-1)).toMatch(
      /30\.0 g at 100 % yield\. Melt it once more then and pour it out thin on a dry steel plate/,
    );
  });

  // sodium carbonate melts at 856 °C and the metasilicate at 1089 °C (CRC Handbook); 0.246 mol of each: 26.1 g, 14.8 g
  it("stays in a crucible that is lost where alkali melts and its product does not", () => {
    const all = texts("Na2CO3 + SiO2 -> Na2SiO3 + CO2", "Na2SiO3", ["Na2CO3", "SiO2"]);
    expect(all.join(" ")).toMatch(
      /a weighed crucible that may be lost .*no more than a third full, for the Na2CO3 \(from 856 °C on\)/,
    );
    expect(all.join(" ")).toMatch(/What has melted holds to its crucible: break it out/);
    expect(all.join(" ")).not.toContain("pour it out");
  });

  it("is no melt where nothing of it melts so cold", () => {
    const all = texts("CaCO3 -> CaO + CO2", "CaO", ["CaCO3"]).join(" ");
    expect(all).not.toMatch(/melt/);
    expect(all).toContain("in a crucible or tray, no more than half full");
  });

  // borax loses its water below 320 °C and melts at 743 °C
  it("is none either where only the hydrate melts, in its water", () => {
    expect(texts("Na2B4O7·10H2O -> Na2B4O7 + 10 H2O", "Na2B4O7", ["Na2B4O7·10H2O"]).join(" ")).not.toContain("pour it");
  });
});
