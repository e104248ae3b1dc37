// What happened at the bench, and the explanation that must come first. Masses were worked out by hand from IUPAC 2021 abridged
// weights: 100.0 g ZnSO4·7H2O (287.541) is 0.34778 mol, as Zn5(CO3)2(OH)6 (548.96) 38.18 g, as ZnCO3 (125.388) 43.61 g.
import { evaluateRun, type Observations, type Plan, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const zinc = (soda: "Na2CO3·10H2O" | "Na2CO3", excess: `${number} %`): Plan =>
  planPreparation({
    equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
    product: "Zn5(CO3)2(OH)6",
    materials: [
      { name: "zinc", form: "ZnSO4·7H2O" },
      { name: "soda", form: soda, excess },
    ],
    scale: { material: "zinc", portion: "100.0 g" },
  });
const carbonate = zinc("Na2CO3·10H2O", "5 %");
const plan = (equation: string, product: string, materials: PlanRequest["materials"], portion: `${number} g`): Plan =>
  planPreparation({ equation, product, materials, scale: { material: materials[0]!.name, portion } });
const vitriol = { name: "vitriol", form: "CuSO4·5H2O" };
const malachite = plan(
  "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
  "Cu2(OH)2CO3",
  [vitriol, { name: "soda", form: "Na2CO3", excess: "60 %" }],
  "50.0 g",
);
const hydroxide = plan(
  "CuSO4 + 2 NaOH -> Cu(OH)2 + Na2SO4",
  "Cu(OH)2",
  [vitriol, { name: "lye", form: "NaOH" }],
  "50.0 g",
);
const sulfate = plan(
  "ZnO + H2SO4 + 7 H2O -> ZnSO4·7H2O + H2O",
  "ZnSO4·7H2O",
  [
    { name: "oxide", form: "ZnO" },
    { name: "acid", form: "H2SO4", strength: "20 %" },
  ],
  "14.2 g",
);
const plaster = plan(
  "CaSO4·2H2O -> CaSO4·0.5H2O + H2O",
  "CaSO4·0.5H2O",
  [{ name: "gypsum", form: "CaSO4·2H2O" }],
  "100.0 g",
);
const silver = plan(
  "AgNO3 + NaCl -> AgCl + NaNO3",
  "AgCl",
  [
    { name: "silver", form: "AgNO3" },
    { name: "salt", form: "NaCl", excess: "10 %" },
  ],
  "1.0 g",
);

const SCENARIOS: readonly (readonly [string, Plan, Observations, string, RegExp])[] = [
  [
    "still wet after several dryings",
    carbonate,
    { dried: ["70 g", "50 g", "42.0 g", "39.6 g"] },
    "still-drying",
    /dry on to constant mass/,
  ],
  // 3.8 g over 22.14 g, and more than the normal carbonate gives, 24.74 g
  ["a little wet, weighed once", malachite, { dried: "25.9 g" }, "wet", /dry again/],
  [
    "unwashed: the cake held 146 g of liquor",
    carbonate,
    { dried: ["43.9 g", "43.9 g"], wetCake: "190 g" },
    "unwashed",
    /wash one half again/,
  ],
  // the same zinc as ZnSO4·H2O: 14.2 g ZnO is 0.17449 mol, × 179.45 = 31.31 g
  [
    "crystals dried to a lower hydrate",
    sulfate,
    { dried: ["49 g", "38 g", "30.4 g", "30.4 g"] },
    "other-hydrate-fits",
    /ignite/,
  ],
  // 38.18 × 287.541 / 179.45 = 61.2 g
  [
    "the zinc was the monohydrate",
    zinc("Na2CO3", "80 %"),
    { dried: ["59.9 g", "59.9 g"], washes: 3 },
    "hydrate-mix-up",
    /heat a weighed sample of the zinc/,
  ],
  // 22.14 × 249.68 / 159.60 = 34.6 g
  [
    "the vitriol had dried out",
    malachite,
    { dried: ["34.0 g", "34.0 g"], washes: 3 },
    "hydrate-mix-up",
    /heat a weighed sample of the vitriol/,
  ],
  // 1.05 × 105.988 / 286.138 = 38.9 % of 38.18 g
  [
    "the soda was crystals, not anhydrous",
    zinc("Na2CO3", "5 %"),
    { dried: ["14.3 g", "14.3 g"] },
    "hydrate-mix-up",
    /heat a weighed sample of the soda/,
  ],
  [
    "the normal carbonate came down",
    carbonate,
    { dried: ["43.4 g", "43.4 g"], washes: 4 },
    "other-formula-fits",
    /^ignite/,
  ],
  ["the balance shows tenths of a gram", silver, { dried: "0.9 g" }, "balance-too-coarse", /finer balance/],
  ["lost on the way", carbonate, { dried: ["20.0 g", "20.0 g"] }, "lighter-than-losses-explain", /test the filtrate/],
  // both crops of its steps are some 32 g
  ["lost in the mother liquor", sulfate, { dried: ["30.0 g", "29.9 g"] }, "loss-explained", /mother liquor/],
  // black: 0.20026 mol × 79.545 = 15.93 g; washed as often as the
  // plan says (three of its six washes would leave 0.9 g of salts, which then comes first)
  [
    "the hydroxide went to oxide",
    hydroxide,
    { dried: ["15.9 g", "15.9 g"], washes: 6 },
    "other-formula-fits",
    /ignite/,
  ],
  ["the plaster is not burnt through", plaster, { dried: "95.0 g" }, "unreacted", /heat again/],
  ["as it should be", carbonate, { dried: ["36.0 g", "36.0 g"] }, "consistent", /ignite/],
  ["not weighed yet", carbonate, { wetCake: "120 g" }, "not-weighed", /dry to constant mass and weigh/],
  [
    "only ignited",
    carbonate,
    { ignition: { before: "2.000 g", after: "1.482 g" } },
    "not-weighed",
    /dry to constant mass/,
  ],
];

describe("the first explanation", () => {
  it.each(SCENARIOS)("%s", (_, made, observations, code, next) => {
    const [first] = evaluateRun(made, observations).verdict;
    expect([first!.code, first!.text]).toEqual([code, expect.any(String)]);
    expect(first!.next).toMatch(next);
  });

  it("says that a reagent weighed short ran out, beside a yield that fits what it allows", () => {
    // 60.0 g of 286.138 g/mol is 0.20969 mol of soda for 0.34778 mol of zinc: 60.3 %, and 23.0 g
    const { verdict } = evaluateRun(carbonate, { weighed: { soda: "60.0 g" }, dried: ["22.5 g", "22.5 g"] });
    expect(verdict.map((f) => f.code).slice(0, 2)).toEqual(["reagent-short", "consistent"]);
    expect(verdict[0]!.figure!.format({ decimals: 1, uncertainty: "none" })).toBe("60.3 %");
    expect(verdict[0]!.mass!.format({ decimals: 1, uncertainty: "none" })).toBe("23.0 g");
  });
});
