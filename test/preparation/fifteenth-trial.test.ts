// What an eighth independent reader objected to, of eight sheets and four refusals, as rules; the preparations are theirs, chosen
// before any sheet was printed. Facts of the bench are common practice, no source.
import {
  cautionsForFormulas,
  formulaOf,
  type PlanRequest,
  parseFormula,
  planPreparation,
  tryPlanPreparation,
} from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";
import { gasesThatMayCome } from "../../src/preparation/safety/gases-that-may-come";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

describe("a name with water in thirds", () => {
  it("is read as a ratio: 8/3 is eight waters to three formula units, as (3/8) is by the nomenclature", () => {
    for (const name of ["cadmium sulfate 8/3-hydrate", "cadmium sulfate (3/8)-hydrate"])
      expect(String(formulaOf(name))).toBe("3CdSO4.8H2O");
    expect(String(formulaOf("calcium sulfate 1/2-hydrate"))).toBe("CaSO4.0.5H2O");
  });
});

describe("a strong acid and a strong base in proportion", () => {
  // 15.4 g / 39.997 g/mol × 98.07 g/mol / 2 / 31 % = 60.9 g of acid; rounded up it is 0.1 g and more over
  it("have the pH of their salt, and not of what the balance put over", () => {
    const { steps } = planPreparation({
      equation: "2 NaOH + H2SO4 + 8 H2O -> Na2SO4·10H2O",
      product: "Na2SO4·10H2O",
      materials: [
        { name: "caustic soda", form: "NaOH" },
        { name: "acid", form: "H2SO4", strength: "31 %" },
      ],
      scale: { material: "caustic soda", portion: "15.4 g" },
    });
    const pH = steps.find(({ blank }) => blank === "pH")!.target!.toNumber();
    expect(pH).toBeGreaterThan(6.5);
    expect(pH).toBeLessThan(8.5);
  });
});

describe("a carbonato ammine of cobalt", () => {
  const request: PlanRequest = {
    equation: "2 Co(NO3)2·6H2O + 6 NH3 + 2 (NH4)2CO3 + H2O2 -> 2 [Co(NH3)4CO3]NO3 + 2 NH4NO3 + 14 H2O",
    product: "[Co(NH3)4CO3]NO3",
    materials: [
      { name: "cobalt nitrate", form: "Co(NO3)2·6H2O" },
      { name: "ammonia solution", form: "NH3", strength: "25 %", excess: "150 %" },
      { name: "ammonium carbonate", form: "(NH4)2CO3", excess: "200 %" },
      { name: "peroxide", form: "H2O2", strength: "30 %", excess: "50 %" },
    ],
    scale: { material: "cobalt nitrate", portion: "15 g" },
  };

  it("has ammonia and carbonate together before the cobalt, which would precipitate as carbonate, and the peroxide last", () => {
    const order = [/^Pour the .*ammonia solution/, /^Pour the cobalt nitrate solution/, /^Pour the .*peroxide/].map(
      (one) => texts(request).findIndex((text) => one.test(text)),
    );
    expect(order).not.toContain(-1);
    expect(order).toEqual([...order].sort((one, other) => one - other));
  });

  it("is never boiled down, is put into ice, and gives no brown gas for a rinse of alcohol", () => {
    const text = texts(request).join("\n");
    // in ice from the first: what is beside it stays dissolved there by figures
    expect(text).toMatch(/in ice and water to 5 °C.*never boil it down: boiled it loses carbonate and ammonia/);
    expect(sheet(request)).not.toMatch(/NO₂ may be given off/);
  });

  it("has that gas spoken of where the alcohol is what reacts", () => {
    const known = cautionsForFormulas([{ formula: "HNO3", massPercent: 65 }, "C2H5OH"]);
    const gases = (...reactants: string[]) =>
      gasesThatMayCome(
        known,
        reactants.map((one) => ({ formula: parseFormula(one) })),
      );
    expect(gases("Cu", "HNO3")).toEqual([]);
    expect(gases("C2H5OH", "HNO3")).toEqual(["NO₂"]);
  });
});

describe("sticks of a metal", () => {
  it("are pieces that are lifted out: none of them is weighed with the product", () => {
    const { steps } = planPreparation({
      equation: "CdSO4 + Zn -> Cd + ZnSO4",
      product: "Cd",
      materials: [
        { name: "cadmium sulfate", form: "3CdSO4·8H2O" },
        { name: "zinc sticks", form: "Zn", excess: "20 %" },
      ],
      scale: { material: "cadmium sulfate", portion: "10 g" },
      acknowledge: ["mercury-cadmium"],
    });
    expect(steps.some(({ text }) => /^Lift out what is left of the zinc sticks/.test(text))).toBe(true);
    expect(steps.at(-1)!.after.solids.map(({ formula }) => formula)).not.toContain("Zn");
    expect(steps.at(-1)!.text).not.toMatch(/of Zn/);
  });
});

describe("iron(II) hydroxide that peroxide oxidises", () => {
  it("is done when all of it is brown, and more of the oxidiser is needed where it is not", () => {
    const text = texts({
      equation: "2 FeSO4·7H2O + 4 NaOH + H2O2 -> 2 FeO(OH) + 2 Na2SO4 + 16 H2O",
      product: "FeO(OH)",
      materials: [
        { name: "green vitriol", form: "FeSO4·7H2O" },
        { name: "caustic soda", form: "NaOH", excess: "5 %" },
        { name: "peroxide", form: "H2O2", strength: "3 %", excess: "10 %" },
      ],
      scale: { material: "green vitriol", portion: "28 g" },
    }).join("\n");
    expect(text).toMatch(
      /^Stir until it is brown all through.*if it stays green, a little more of the peroxide is needed/m,
    );
  });
});

describe("trisodium citrate", () => {
  it("keeps its two waters to 150 °C by the table, and is dried at 60 °C", () => {
    const { drying } = planPreparation({
      equation: "2 C6H8O7·H2O + 3 Na2CO3 -> 2 Na3C6H5O7·2H2O + 3 CO2 + H2O",
      product: "Na3C6H5O7·2H2O",
      materials: [
        { name: "citric acid", form: "C6H8O7·H2O" },
        { name: "soda", form: "Na2CO3" },
      ],
      scale: { material: "citric acid", portion: "40 g" },
    });
    expect(drying.upTo!.toNumber("°C")).toBe(60);
  });
});

describe("the acid that no pack brings", () => {
  const displaced = (salt: string, metal: string, by: string): PlanRequest => ({
    equation: `2 ${salt} + 3 Zn -> 2 ${metal} + 3 ZnCl2`,
    product: metal,
    materials: [
      { name: "the chloride", form: salt },
      { name: "zinc", form: by, excess: "20 %" },
    ],
    scale: { material: "the chloride", portion: "10 g" },
  });

  it("is judged with the rest: antimony, acid and zinc give stibine, which bismuth does not", () => {
    const outcome = tryPlanPreparation(displaced("SbCl3", "Sb", "Zn"));
    expect(outcome.ok).toBe(false);
    if (!outcome.ok) expect(outcome.error.hint).toMatch(/acid-antimony-metal/);
    expect(tryPlanPreparation(displaced("BiCl3", "Bi", "Zn")).ok).toBe(true);
  });

  it("is left out beside a sulfide, of which it would set hydrogen sulfide free", () => {
    const sulfide = texts({
      equation: "SnCl2·2H2O + Na2S·9H2O -> SnS + 2 NaCl + 11 H2O",
      product: "SnS",
      materials: [
        { name: "tin salt", form: "SnCl2·2H2O" },
        { name: "sodium sulfide", form: "Na2S·9H2O" },
      ],
      scale: { material: "tin salt", portion: "10 g" },
    }).join("\n");
    expect(sulfide).not.toMatch(/hydrochloric acid/);
  });
});
