// Products that heat spoils, and peroxide: a laboratory manual of inorganic preparations (page on sodium perborate) dissolves 24 g
// of borax and 5 g of lye in 150 mL of warm water, cools that to the room, pours the peroxide in slowly and cools it in ice. The
// rest is common practice, no source.
import { describe, expect, it } from "vitest";
import type { TemperatureLike, VolumeLike } from "../../src/amount";
import { type PlanRequest, planPreparation } from "../../src/preparation";
import { AMMINE } from "../data/common-requests";

const PERBORATE: PlanRequest = {
  equation: "Na2B4O7 + NaOH + H2O2 + H2O -> NaBO3·4H2O",
  product: "NaBO3·4H2O",
  materials: [
    { name: "borax", form: "Na2B4O7·10H2O" },
    { name: "caustic soda", form: "NaOH", assay: "98 %" },
    { name: "peroxide", form: "H2O2", strength: "12 %", excess: "10 %" },
  ],
  scale: { material: "borax", portion: "30.0 g" },
};
const warmed = (water: VolumeLike, temperature: TemperatureLike): PlanRequest => ({
  ...PERBORATE,
  materials: PERBORATE.materials.map((one, i) => (i === 0 ? { ...one, dissolve: { water, temperature } } : one)),
});
const textsOf = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);

/** Salts without a solubility of their own in the table, of anions that heat spoils. */
const plain = (equation: string, product: string, ...forms: string[]): PlanRequest => ({
  equation,
  product,
  materials: forms.map((form, i) => ({
    name: ["the first", "the second"][i]!,
    form,
    ...(form === "H2O2" ? { strength: "12 %" } : {}),
  })),
  scale: { product: "10 g" },
});

describe("sodium perborate", () => {
  const plan = planPreparation(PERBORATE);
  const texts = plan.steps.map(({ text }) => text);
  const all = texts.join("\n");

  it("takes the water that keeps the metaborate of the lye dissolved, and no more", () => {
    // 30.0 g / 381.36 g/mol = 0.07867 mol, four times that of NaBO2 (65.80 g/mol) is 20.70 g; 25.4 g in 100 g of water at 20 °C:
    // 81.5 g. Borax itself, 15.83 g anhydrous, needs 90.5 g at 60 °C (17.5 g in 100 g). 1.2 × 90.5 − 14.17 of crystal water = 94.4 g
    expect(all).toMatch(/Dissolve the borax in 94 mL of water at 60 °C/);
  });

  it("keeps a small part of the product dissolved", () => {
    // Water: 94.4 + 14.2 (crystals of borax) + 40 (lye) + 86.4 (peroxide) + 0.6 (its excess), and 5 H2O for each of borax, as 4 NaBO3
    // and 16 H2O come of 11 H2O: 7.1 g; 242.7 g, of which the crystals bind 0.282 mol × 4 × 18.015 = 20.3 g. 1.21 g anhydrous in 100 g
    // of water: 2.69 g, which is 5.06 g of tetrahydrate (81.80 to 153.86 g/mol)
    const kept = 48.41 - Number(/(\d+\.\d) g of NaBO₃·4H₂O in all/.exec(all)![1]);
    expect(kept).toBeCloseTo(5.06, 0);
  });

  it("says what stays dissolved as what does not crystallise", () => {
    const [, comes, stays] = /(\d+\.\d) g of NaBO₃·4H₂O in all, and (\d+\.\d) g stays dissolved/.exec(all)!;
    expect(Number(comes) + Number(stays)).toBeCloseTo(plan.product.theoreticalYield.toNumber("g"), 0);
  });

  it("is never boiled down nor warmed once the peroxide is in, but seeded and iced", () => {
    expect(all).not.toMatch(/boil|evaporat/i);
    expect(all).toMatch(
      /Do not warm it: warm it gives off oxygen.*scratch the glass or put a crystal of it in.*in ice more comes/,
    );
  });

  it.each([
    ["as it is planned", PERBORATE],
    ["as the borax is dissolved hot on request", warmed("120 mL", "60 °C")],
    ["as it is dissolved in the cold, for lye warms", warmed("800 mL", "20 °C")],
  ])("cools the alkaline liquor before the peroxide, %s, and bounds it", (_, request) => {
    const { steps } = planPreparation(request);
    const cooled = steps.findIndex(({ text }) => /^Cool it below 25 °C.*before the peroxide comes/.test(text));
    expect(steps[cooled]!.operation).toBe("cool");
    expect(steps[cooled]!.target!.toNumber("°C")).toBeCloseTo(25, 6);
    expect(steps[cooled + 1]!.text).toMatch(/peroxide into the vessel.*never above 25 °C/);
  });
});

describe("peroxide elsewhere", () => {
  it("comes into ammonia that is cooled, never above 30 °C", () => {
    const texts = textsOf({
      equation: "CoCl2 + NH4Cl + NH3 + H2O2 -> [Co(NH3)6]Cl3 + H2O",
      product: "[Co(NH3)6]Cl3",
      materials: [
        { name: "cobalt chloride", form: "CoCl2·6H2O" },
        { name: "sal ammoniac", form: "NH4Cl" },
        { name: "ammonia", form: "NH3", strength: "25 %", excess: "20 %" },
        { name: "peroxide", form: "H2O2", strength: "12 %" },
      ],
      scale: { product: "20 g" },
    });
    const cooled = texts.findIndex((text) => text.startsWith("Cool it below 25 °C"));
    expect(cooled).toBeGreaterThan(0);
    expect(texts[cooled + 1]).toMatch(/peroxide into the vessel.*never above 30 °C/);
  });

  it("comes into soda that is cooled, which warms as it dissolves", () => {
    const texts = textsOf(plain("2 Na2CO3 + 3 H2O2 -> 2Na2CO3·3H2O2", "2Na2CO3·3H2O2", "Na2CO3", "H2O2"));
    expect(texts.some((text) => text.startsWith("Cool it below 25 °C"))).toBe(true);
  });

  it("comes into acid of the room without a step for it, never above 40 °C", () => {
    const all = textsOf({
      equation: "Cu + H2O2 + H2SO4 + H2O -> CuSO4·5H2O",
      product: "CuSO4·5H2O",
      materials: [
        { name: "copper", form: "Cu" },
        { name: "peroxide", form: "H2O2", strength: "12 %", excess: "20 %" },
        { name: "acid", form: "H2SO4", strength: "20 %" },
      ],
      scale: { product: "50 g" },
      acknowledge: ["peroxide-sulfuric"],
    }).join("\n");
    expect(all).not.toMatch(/Cool it below 25 °C/);
    expect(all).toMatch(/peroxide into the vessel.*never above 40 °C/);
  });
});

describe("a liquor of which no solubility is known", () => {
  it.each([
    ["percarbonate", plain("2 Na2CO3 + 3 H2O2 -> 2Na2CO3·3H2O2", "2Na2CO3·3H2O2", "Na2CO3", "H2O2")],
    ["an ammine", AMMINE],
  ])("is never boiled down for the sake of it: %s", (_, request) => {
    const all = textsOf(request).join("\n");
    expect(all).not.toMatch(/boil it down a little|boil it down, or/);
  });
});
