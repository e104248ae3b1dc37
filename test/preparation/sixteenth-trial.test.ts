// What a ninth independent reader objected to, of ten sheets and four refusals, as rules; the preparations are theirs, chosen before
// any sheet was printed. Facts of the bench are common practice, no source.
import { type PlanRequest, planPreparation, tryPlanPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);

const refusal = (request: PlanRequest): { code: string; message: string; hint: string } => {
  const outcome = tryPlanPreparation(request);
  if (outcome.ok) throw new Error("it has a plan");
  const { code, message, hint = "" } = outcome.error;
  return { code, message, hint };
};

const bare = (equation: string, product: string, mass: string, materials: readonly string[]): PlanRequest => ({
  equation,
  product,
  materials: materials.map((form) => ({ name: form, form })),
  scale: { product: mass as "1 g" },
});

describe("an ammonium salt of nitrous acid", () => {
  const request = bare("NaNO2 + NH4Cl -> NH4NO2 + NaCl", "NH4NO2", "50 g", ["NaNO2", "NH4Cl"]);

  // ammonium nitrite explodes at 60 to 70 °C (handbooks, from memory)
  it("is never planned, whatever is acknowledged", () => {
    const { code, message } = refusal({ ...request, acknowledge: ["nitrite-ammonium"] });
    expect(code).toBe("plan.dangerous-product");
    expect(message).toMatch(/ammonium salt of an oxidising acid: it goes off dry, warmed or boiled down/);
  });

  it("does not stop a nitrito complex beside ammonia, nor the nitrogen that is made of the two", () => {
    const nitrogen = bare("NaNO2 + NH4Cl -> N2 + NaCl + 2 H2O", "NaCl", "5 g", ["NaNO2", "NH4Cl"]);
    expect(refusal(nitrogen).code).toBe("plan.forbidden-combination");
    const complex = bare("CoCl3 + 3 NH3 + 3 NaNO2 -> [Co(NH3)3(NO2)3] + 3 NaCl", "[Co(NH3)3(NO2)3]", "5 g", [
      "CoCl3",
      "NH3",
      "NaNO2",
    ]);
    const outcome = tryPlanPreparation(complex);
    expect(outcome.ok || outcome.error.code).not.toBe("plan.dangerous-product");
  });
});

describe("ammonia on silver hydroxide", () => {
  // common practice: used as it is made, in a test tube, and never kept or dried
  it("is never a product", () => {
    const request = bare("Ag2O + 4 NH3 + H2O -> 2 [Ag(NH3)2]OH", "[Ag(NH3)2]OH", "10 g", ["Ag2O", "NH3"]);
    expect(refusal({ ...request, acknowledge: ["silver-ammonia", "silver-oxide-ammonia"] }).code).toBe(
      "plan.dangerous-product",
    );
  });
});

describe("a refusal of what does not exist in water", () => {
  // 20 g / 150.14 g/mol × 3 × 24.06 L/mol = 9.6 L
  it("tells what happens, and how much of a deadly gas", () => {
    const { hint } = refusal(
      bare("Al2(SO4)3·18H2O + 3 Na2S -> Al2S3 + 3 Na2SO4 + 18 H2O", "Al2S3", "20 g", ["Al2(SO4)3·18H2O", "Na2S"]),
    );
    expect(hint).toMatch(
      /^what happens is Al₂\(SO₄\)₃ \+ 3 Na₂S \+ 6 H₂O → 2 Al\(OH\)₃ \+ 3 H₂S \+ 3 Na₂SO₄, here 9\.6 L of H₂S;/,
    );
  });

  it("tells what happens of iodide and copper, of which half is iodine", () => {
    const { hint } = refusal(bare("CuSO4·5H2O + 2 KI -> CuI2 + K2SO4 + 5 H2O", "CuI2", "20 g", ["CuSO4·5H2O", "KI"]));
    expect(hint).toMatch(/^what happens is 2 CuSO₄ \+ 4 KI → 2 CuI \+ I₂ \+ 2 K₂SO₄;/);
  });

  it("tells what soda makes of iron(III)", () => {
    const { hint } = refusal(
      bare("2 FeCl3·6H2O + 3 Na2CO3 -> Fe2(CO3)3 + 6 NaCl + 12 H2O", "Fe2(CO3)3", "10 g", ["FeCl3·6H2O", "Na2CO3"]),
    );
    expect(hint).toMatch(/2 FeCl₃ \+ 3 Na₂CO₃ \+ 3 H₂O → 2 Fe\(OH\)₃ \+ 3 CO₂ \+ 6 NaCl/);
  });
});

describe("a complex of chromium from dichromate, brought out with alcohol that is at hand", () => {
  const request: PlanRequest = {
    equation: "K2Cr2O7 + 7 H2C2O4·2H2O + 2 K2C2O4·H2O -> 2 K3[Cr(C2O4)3]·3H2O + 6 CO2 + 17 H2O",
    product: "K3[Cr(C2O4)3]·3H2O",
    materials: [
      { name: "potassium dichromate", form: "K2Cr2O7" },
      { name: "oxalic acid", form: "H2C2O4·2H2O" },
      { name: "potassium oxalate", form: "K2C2O4·H2O", excess: "5 %" },
      { name: "ethanol", form: "C2H5OH", strength: "96 %", aside: true, portion: "15 mL" },
    ],
    scale: { material: "potassium dichromate", portion: "10.0 g" },
    acknowledge: ["chromate-organic"],
  };

  it("is boiled down first: alcohol in much water brings nothing out", () => {
    const steps = texts(request);
    const boiled = steps.findIndex((text) => /^Boil the liquor down/.test(text));
    const alcohol = steps.findIndex((text) => /^Add the 15 mL of ethanol/.test(text));
    expect(boiled).toBeGreaterThan(0);
    expect(alcohol).toBeGreaterThan(boiled);
  });

  it("has the dichromate in hot, and a test that none is left before the alcohol, with its caution there", () => {
    const { steps } = planPreparation(request);
    const find = (start: RegExp) => steps.find(({ text }) => start.test(text))!;
    expect(find(/^Pour the potassium dichromate solution/).text).toMatch(/kept at 60 °C/);
    expect(find(/^Warm it to 80 °C/).text).toMatch(/a drop of it, diluted with water on a white plate/);
    const alcohol = find(/^Add the 15 mL of ethanol/);
    expect(alcohol.text).toMatch(/once it is cold and none of the potassium dichromate is left by the test above/);
    expect(alcohol.cautions.map(({ text }) => text).join()).toMatch(/acknowledged, and only as the steps say/);
    expect(
      find(/^Pour the potassium dichromate solution/)
        .cautions.map(({ text }) => text)
        .join(),
    ).not.toMatch(/acknowledged/i);
  });
});

describe("a piece of metal that is hung in", () => {
  it("is covered by the liquor, and takes its time rather than more metal", () => {
    const steps = texts({
      equation: "2 AgNO3 + Cu -> 2 Ag + Cu(NO3)2",
      product: "Ag",
      materials: [
        { name: "silver nitrate", form: "AgNO3" },
        { name: "copper sheet", form: "Cu", excess: "200 %" },
      ],
      scale: { material: "silver nitrate", portion: "10.0 g" },
    });
    expect(steps.find((text) => /^Hang/.test(text))).toMatch(/which is to cover it/);
    const until = steps.find((text) => /^Stir until/.test(text));
    expect(until).toMatch(
      /where it turns dull, it takes longer, an hour or more; more of the copper sheet is needed only where none is left/,
    );
    expect(until).toMatch(/Shake or brush the Ag off what is left of the copper sheet/);
  });
});

describe("a gas that its pack says is in a cylinder", () => {
  const led = (name: string): string =>
    planPreparation({
      equation: "K2CO3 + CO2 + H2O -> 2 KHCO3",
      product: "KHCO3",
      materials: [
        { name: "potash", form: "K2CO3" },
        { name, form: "CO2", excess: "100 %" },
      ],
      scale: { material: "potash", portion: "100 g" },
    })
      .cautions.substances.flatMap(({ statements }) => statements.map(({ code }) => code))
      .join(" ");

  // gases under pressure, H280 (CLP, Annex I, 2.5; Annex VI leaves the class to whoever fills the cylinder)
  it("is under pressure, and made in a flask it is not", () => {
    expect(led("carbon dioxide from a cylinder")).toMatch(/H280/);
    expect(led("carbon dioxide from chalk")).not.toMatch(/H280/);
  });
});

describe("iron of a shop salt, with peroxide and a base of the salt's own metal at hand", () => {
  const request: PlanRequest = {
    equation: "CuSO4·5H2O -> CuSO4·5H2O",
    product: "CuSO4·5H2O",
    materials: [
      {
        name: "crude vitriol",
        form: "CuSO4·5H2O",
        assay: "98 %",
        also: [{ form: "FeSO4·7H2O", share: "2 %" }],
      },
      { name: "peroxide", form: "H2O2", strength: "3 %", aside: true, portion: "8 g" },
      { name: "copper carbonate", form: "CuCO3·Cu(OH)2", assay: "95 %", aside: true, portion: "1 g" },
    ],
    scale: { material: "crude vitriol", portion: "100 g" },
  };
  const plan = planPreparation(request);
  const filter = plan.steps.find(({ text }) => /^Filter hot/.test(text))!;

  // 2 g / 278.01 g/mol = 7.19 mmol of iron; 0.95 g / 221.11 g/mol = 4.30 mmol of basic carbonate, of which
  // 2 FeSO4 + H2O2 + Cu2(OH)2CO3 -> 2 FeO(OH) + 2 CuSO4 + CO2 + H2O uses half of 7.19: 0.70 mmol, 0.155 g, is left;
  // 7.19 mmol × 88.85 g/mol = 0.639 g of FeO(OH), and 7.19 mmol more of copper sulfate
  it("is on the filter as hydroxide, and its acid has taken the base", () => {
    const solids = filter.before.solids.map(({ formula, mass }) => [formula, mass.toNumber("g")] as const);
    const mass = (formula: string): number => solids.find(([one]) => one === formula)![1];
    expect(mass("FeO(OH)")).toBeCloseTo(0.639, 2);
    expect(mass("CuCO₃·Cu(OH)₂")).toBeCloseTo(0.155, 2);
    const copper = filter.before.dissolved.find(({ formula }) => formula === "CuSO₄")!.amount.toNumber("mol");
    expect(copper).toBeCloseTo(98 / 249.68 + 0.00719, 4);
    expect(filter.before.dissolved.map(({ formula }) => formula).sort()).toEqual(["CuSO₄"]);
  });

  it("is told what each is for, to which pH, and that acid comes again", () => {
    const steps = texts(request).join("\n");
    expect(steps).toMatch(/8\.0 g of peroxide in small portions.*it makes iron\(III\) of the 1\.1 g of FeSO₄/);
    expect(steps).toMatch(/a pinch at a time.* shows pH 3\.5 to 4: the iron precipitates as brown FeO\(OH\)/);
    expect(steps).toMatch(/10 to 15 minutes, until the brown has gathered in flocks/);
    expect(steps).toMatch(/dilute sulfuric acid in by drops.* shows pH 1 to 2/);
  });

  it("loses nothing where the iron salt does not balance, or where nobody says how much base: the base goes in as it is", () => {
    const [pack, peroxide, base] = request.materials as PlanRequest["materials"][0][];
    const mohr = { ...pack!, also: [{ form: "(NH4)2Fe(SO4)2·6H2O", share: "2 %" as const }] };
    expect(texts({ ...request, materials: [mohr, peroxide!, base!] }).join("\n")).toMatch(
      /Put the 1\.0 g of copper carbonate/,
    );
    const { portion: _, ...some } = base!;
    expect(texts({ ...request, materials: [pack!, peroxide!, some] }).join("\n")).toMatch(
      /^Put the copper carbonate into the vessel and stir\.$/m,
    );
  });

  it("is left alone without a base, and without iron the two only go in", () => {
    const [pack, peroxide] = request.materials as [PlanRequest["materials"][0], PlanRequest["materials"][0]];
    const noBase = texts({ ...request, materials: [pack, peroxide] }).join("\n");
    expect(noBase).not.toMatch(/FeO\(OH\)/);
    const pure = { ...pack, also: undefined };
    const noIron = texts({ ...request, materials: [pure, ...request.materials.slice(1)] }).join("\n");
    expect(noIron).not.toMatch(/iron/);
  });
});
