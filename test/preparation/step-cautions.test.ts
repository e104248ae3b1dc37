import { describe, expect, it } from "vitest";
import { type PlanRequest, planPreparation } from "../../src/preparation";
import { cite } from "../../src/sources";
import { BENCH_PREPARATIONS, requestOf } from "../data/bench-preparations";

const zinc: PlanRequest = {
  equation: "Zn + H2SO4 + 7 H2O -> ZnSO4·7H2O + H2",
  product: "ZnSO4·7H2O",
  materials: [
    { name: "zinc", form: "Zn", excess: "5 %" },
    { name: "acid", form: "H2SO4", strength: "96 %" },
  ],
  scale: { material: "zinc", portion: "25 g" },
};
const thin: PlanRequest = {
  ...zinc,
  materials: [zinc.materials[0]!, { name: "acid", form: "H2SO4", strength: "5 %" }],
};
const lime: PlanRequest = {
  equation: "CaCO3 -> CaO + CO2",
  product: "CaO",
  materials: [{ name: "chalk", form: "CaCO3" }],
  scale: { material: "chalk", portion: "25 g" },
};
const nitrate: PlanRequest = {
  equation: "Cu(NO3)2·3H2O -> CuO + NO2 + O2 + H2O",
  product: "CuO",
  materials: [{ name: "nitrate", form: "Cu(NO3)2·3H2O" }],
  scale: { material: "nitrate", portion: "10 g" },
};
const ammine: PlanRequest = {
  equation: "CuSO4·5H2O + 4 NH3 -> [Cu(NH3)4]SO4·H2O + 4 H2O",
  product: "[Cu(NH3)4]SO4·H2O",
  materials: [
    { name: "vitriol", form: "CuSO4·5H2O" },
    { name: "ammonia", form: "NH3", strength: "25 %" },
  ],
  scale: { material: "vitriol", portion: "25 g" },
};
const hydroxide: PlanRequest = {
  equation: "NaOH + CuSO4 -> Cu(OH)2 + Na2SO4",
  product: "Cu(OH)2",
  materials: [
    { name: "lye", form: "NaOH", excess: "2 %" },
    { name: "vitriol", form: "CuSO4·5H2O" },
  ],
  scale: { material: "vitriol", portion: "25 g" },
};
/** What air oxidises: it is washed with alcohol before it is dried. */
const oxidised: PlanRequest = {
  equation: "NaOH + MnSO4 -> Mn(OH)2 + Na2SO4",
  product: "Mn(OH)2",
  materials: [
    { name: "lye", form: "NaOH", excess: "2 %" },
    { name: "manganese", form: "MnSO4·H2O" },
  ],
  scale: { material: "manganese", portion: "17 g" },
};
/** Blue vitriol off its liquor with spirit, a little strong acid in it against hydrolysis: neither is in the equation. */
const beside: PlanRequest = {
  equation: "CuO + H2SO4 + 4 H2O -> CuSO4·5H2O",
  product: "CuSO4·5H2O",
  materials: [
    { name: "oxide", form: "CuO" },
    { name: "battery acid", form: "H2SO4", strength: "10 %" },
    { name: "strong acid", form: "H2SO4", strength: "96 %", aside: true, portion: "2 g" },
    { name: "spirit", form: "C2H5OH", strength: "95 %", aside: true, portion: "50 mL" },
  ],
  scale: { product: "25 g" },
};
const all = [zinc, thin, lime, nitrate, ammine, hydroxide, beside];

const textsOf = (request: PlanRequest, step: string): string =>
  planPreparation(request)
    .stepCautions.filter((one) => one.step === step)
    .flatMap((one) => one.cautions.map((c) => c.text))
    .join(" | ");

describe("cautions of each step", () => {
  // Which step asks for what is common practice of the bench, no source.
  it("puts acid into water only where the acid is strong", () => {
    expect(textsOf(zinc, "dissolving")).toMatch(/acid goes into the water/);
    expect(textsOf(thin, "dissolving")).not.toMatch(/acid goes into the water/);
  });

  it("warns of hydrogen where it is given off and of lye where it is dissolved", () => {
    expect(textsOf(zinc, "mixing")).toMatch(/no flame/);
    expect(textsOf(zinc, "weighing")).not.toMatch(/no flame/);
    expect(textsOf(hydroxide, "dissolving")).toMatch(/never water onto it/);
    // 0.204 mol NaOH at -44.5 kJ/mol (NBS tables) in its 7.5 g and some 22 g of water: 70 K and more
    expect(textsOf(hydroxide, "dissolving")).toMatch(/warms as it dissolves/);
    expect(textsOf(ammine, "mixing")).toMatch(/ammonia/);
    expect(textsOf(ammine, "isolating")).toMatch(/very flammable/);
  });

  it("has a step of heating, and none of dissolving, where nothing is in water", () => {
    expect(planPreparation(lime).stepCautions.map((one) => one.step)).toEqual([
      "weighing",
      "heating",
      "drying",
      "waste",
    ]);
    expect(textsOf(nitrate, "heating")).toMatch(/poisonous/);
    expect(textsOf(nitrate, "heating")).toMatch(/nothing that burns/);
    expect(textsOf(lime, "heating")).not.toMatch(/poisonous|burns:/);
  });

  it("says what fire drives out of a product that is recognised by ignition", () => {
    expect(textsOf(ammine, "ignition test")).toMatch(/ammonia is given off/);
    expect(textsOf(zinc, "ignition test")).not.toMatch(/is given off|come off/);
  });

  it("leaves out nothing of the one list, and gives each classification once and with its source", () => {
    let tested = 0;
    for (const request of all) {
      const plan = planPreparation(request);
      const given = plan.stepCautions.flatMap((one) => one.cautions);
      for (const { source, citation } of given) expect(citation.startsWith(cite(source))).toBe(true);
      for (const entry of plan.cautions.substances) {
        for (const text of entry.cautions) expect(given.map((c) => c.text)).toContain(text);
        const codes = entry.statements.map((one) => one.code);
        if (codes.length === 0) continue;
        const own = given.filter((c) => c.citation === entry.citation && codes.every((code) => c.text.includes(code)));
        expect(own.length, `${request.product} ${entry.material}`).toBe(1);
        expect(own[0]!.source).toBe(entry.source);
      }
      for (const one of plan.cautions.incompatibilities)
        expect(given.filter((c) => c.source === one.source).some((c) => c.text.startsWith(one.what))).toBe(true);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(7);
  });
});

// Sulfuric acid above 15 % H314, ethanol H225: harmonised classification, from memory.
describe("what takes no part in the equation", () => {
  const { steps, stepCautions } = planPreparation(beside);
  const textsAt = (words: RegExp): string =>
    steps
      .find(({ text }) => words.test(text))!
      .cautions.map(({ text }) => text)
      .join("; ");

  it("is warned of where it is weighed, like all else", () => {
    expect(textsAt(/^Weigh 2.* of the strong acid/)).toMatch(/goggles and gloves on.*\(H314\)/);
    expect(textsAt(/^Measure 50 mL of the spirit/)).toMatch(/\(H225\)/);
    expect(stepCautions.find(({ step }) => step === "weighing")!.handled).toEqual(["CuO", "H₂SO₄", "C₂H₅OH"]);
  });

  it("goes into the water where it is a strong acid, and foams in the waste", () => {
    expect(textsAt(/^Put the 2.* of strong acid into the vessel/)).toMatch(/acid goes into the water/);
    const copperas: PlanRequest = {
      equation: "FeSO4·7H2O -> FeSO4·7H2O",
      product: "FeSO4·7H2O",
      materials: [{ name: "copperas", form: "FeSO4·7H2O" }],
      scale: { material: "copperas", portion: "50 g" },
    };
    const soured = { ...copperas, materials: [...copperas.materials, beside.materials[2]!] };
    expect(textsOf(soured, "waste")).toMatch(/soda foams in it/);
    expect(textsOf(copperas, "waste")).not.toMatch(/soda foams/);
  });

  it("is got rid of with the waste", () => {
    expect(textsOf(beside, "waste")).toMatch(/solvent collection/);
  });
});

describe("alcohol", () => {
  const flammable = /alcohol and acetone are very flammable/;
  const warned = ({ stepCautions }: ReturnType<typeof planPreparation>): boolean =>
    stepCautions.some(({ cautions }) => cautions.some(({ text }) => flammable.test(text)));

  it.each(BENCH_PREPARATIONS)("of $id is warned of where a step names it, and not where none does", (one) => {
    const plan = planPreparation(requestOf(one));
    expect(warned(plan)).toBe(
      plan.steps.some(({ text }) => /mL of (?:\S+ % |a mixture of )?alcohol|of alcohol \(/.test(text)),
    );
  });

  it.each([
    ["as a rinse that is asked for", { ...thin, washing: { rinse: "alcohol" } }, true],
    ["and ice water not", thin, false],
    ["on the table", beside, true],
    ["before a hydroxide is dried without air", oxidised, true],
    ["where it may bring an ammine out", ammine, true],
    [
      "and charcoal not",
      {
        ...beside,
        materials: [...beside.materials.slice(0, 2), { name: "charcoal", form: "C", aside: true, portion: "1 g" }],
      },
      false,
    ],
  ] as const)("is warned of %s", (_, request, is) => {
    expect(warned(planPreparation(request as PlanRequest))).toBe(is);
  });
});

describe("cautions of several addings", () => {
  it("stand in the step they are for: cooled acid before the metal, the foam of a solid with the solid", () => {
    const { steps } = planPreparation({
      equation: "Cu + H2O2 + H2SO4 + 3 H2O -> CuSO4·5H2O",
      product: "CuSO4·5H2O",
      materials: [
        { name: "copper", form: "Cu" },
        { name: "peroxide", form: "H2O2", strength: "12 %", excess: "20 %" },
        { name: "acid", form: "H2SO4", strength: "96 %" },
      ],
      scale: { product: "50 g" },
      acknowledge: ["peroxide-sulfuric"],
    });
    const [metal, peroxide] = steps.filter(({ operation }) => operation === "add");
    const textsIn = (step: typeof metal): string => step!.cautions.map(({ text }) => text).join("; ");
    expect(metal!.materials).toEqual(["copper"]);
    expect(textsIn(metal)).toMatch(/let it cool before anything goes in/);
    expect(textsIn(metal)).toMatch(/the solid goes into the acid/);
    expect(textsIn(peroxide)).not.toMatch(/before anything goes in|the solid goes/);
    expect(textsIn(peroxide)).toMatch(/small portions, cooled in between/);
  });

  // The caution says the order; how many portions, and that the foam is waited for, says the step, with its figures.
  it("leave the portions of what foams to the step, which says them wherever a solid foams in acid", () => {
    let foaming = 0;
    for (const one of BENCH_PREPARATIONS)
      for (const { text, cautions, left } of planPreparation(requestOf(one)).steps) {
        if (!cautions.some((caution) => caution.text.startsWith("the solid goes into the acid"))) continue;
        if (!left.some(({ what }) => what === "gas")) continue;
        foaming += 1;
        // tin foams by and by, as the acid is warmed with it
        expect(text).toMatch(/in at least \d+ portions.*(?:foam|below)|comes by and by/);
      }
    expect(foaming).toBeGreaterThan(10);
  });
});

describe("ammonia in a liquor", () => {
  const texts = (request: PlanRequest): string[] =>
    planPreparation(request)
      .stepCautions.filter(({ step }) => step === "isolating")
      .flatMap(({ cautions }) => cautions.map(({ text }) => text))
      .filter((text) => text.startsWith("warm liquor gives off ammonia"));
  const scale = { product: "10 g" } as const;

  it("is filtered cold where the product forms in the cold, and leaves where it is boiled down; without ammonia it is not named", () => {
    const ammine = texts({
      equation: "CuSO4 + 4 NH3 + H2O -> [Cu(NH3)4]SO4·H2O",
      product: "[Cu(NH3)4]SO4·H2O",
      materials: [
        { name: "vitriol", form: "CuSO4·5H2O" },
        { name: "ammonia", form: "NH3", strength: "25 %", excess: "30 %" },
      ],
      scale,
    });
    expect(ammine).toEqual(["warm liquor gives off ammonia: filter it cold"]);
    const sulfate = texts({
      equation: "NH3 + H2SO4 -> (NH4)2SO4",
      product: "(NH4)2SO4",
      materials: [
        { name: "ammonia", form: "NH3", strength: "25 %", excess: "5 %" },
        { name: "acid", form: "H2SO4", strength: "20 %" },
      ],
      scale,
    });
    expect(sulfate).toEqual(["warm liquor gives off ammonia: under a hood or outdoors"]);
    const vitriol = texts({
      equation: "CuO + H2SO4 -> CuSO4 + H2O",
      product: "CuSO4·5H2O",
      materials: [
        { name: "oxide", form: "CuO" },
        { name: "acid", form: "H2SO4", strength: "20 %" },
      ],
      scale,
    });
    expect(vitriol).toEqual([]);
  });
});

describe("what the work itself brings", () => {
  const plan = (equation: string, product: string, ...materials: PlanRequest["materials"]) =>
    planPreparation({ equation, product, materials, scale: { product: "10 g" } });
  const said = ({ stepCautions }: ReturnType<typeof planPreparation>, text: RegExp): boolean =>
    stepCautions.some(({ cautions }) => cautions.some((one) => text.test(one.text)));
  const acid = { name: "acid", form: "HCl", strength: "10 %" } as const;
  const vitriol = plan(
    "CuO + H2SO4 -> CuSO4 + H2O",
    "CuSO4·5H2O",
    { name: "oxide", form: "CuO" },
    { name: "acid", form: "H2SO4", strength: "20 %" },
  );
  const chalk = plan(
    "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
    "CaCO3",
    { name: "calcium", form: "CaCl2" },
    { name: "soda", form: "Na2CO3" },
  );
  const zinc = plan("Zn + HCl -> ZnCl2 + H2", "ZnCl2", { name: "zinc", form: "Zn" }, acid);
  const marble = plan("CaCO3 + HCl -> CaCl2 + CO2 + H2O", "CaCl2", { name: "marble", form: "CaCO3" }, acid);

  it("is a hot liquor where crystals are had by boiling down, not where a solid precipitates", () => {
    const hot = /^hot liquor scalds/;
    expect([vitriol, chalk].map((one) => said(one, hot))).toEqual([true, false]);
  });

  it("is gas where gas is given off, that burns where it is hydrogen", () => {
    const gas = /^gas is given off/;
    expect([zinc, marble, chalk, vitriol].map((one) => said(one, gas))).toEqual([true, true, false, false]);
    const burns = /^the gas burns/;
    expect([zinc, marble, chalk].map((one) => said(one, burns))).toEqual([true, false, false]);
  });

  it("is poison where the gas is nitrogen dioxide, and a solid that goes into the acid", () => {
    const silver = plan(
      "Ag + HNO3 -> AgNO3 + NO2 + H2O",
      "AgNO3",
      { name: "silver", form: "Ag" },
      { name: "acid", form: "HNO3", strength: "65 %", density: "1.39 g/mL", excess: "5 %" },
    );
    const poison = /^the gas is poisonous/;
    expect([silver, zinc, marble].map((one) => said(one, poison))).toEqual([true, false, false]);
    const into = /^the solid goes into the acid/;
    expect([zinc, marble, chalk].map((one) => said(one, into))).toEqual([true, true, false]);
  });
});
