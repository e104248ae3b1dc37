// What independent readers objected to in printed sheets, as rules; the preparations are theirs. Facts of the bench are common
// practice, no source; masses are worked out beside the checks with atomic masses of five digits.
import { benchSheet, type PlanRequest, planPreparation, tryPlanPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const textsOf = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);

describe("a salt that water takes apart", () => {
  const acetate: PlanRequest = {
    equation: "Al2(SO4)3·16H2O + 3 Ca(CH3COO)2·H2O -> 2 Al(CH3COO)3 + 3 CaSO4·2H2O + 13 H2O",
    product: "Al(CH3COO)3",
    materials: [
      { name: "aluminium sulfate", form: "Al2(SO4)3·16H2O", assay: "98 %" },
      { name: "calcium acetate", form: "Ca(CH3COO)2·H2O", assay: "97 %", excess: "1 %" },
    ],
    scale: { material: "aluminium sulfate", portion: "40.0 g" },
  };

  // Lueger, Lexikon der gesamten Technik, 2nd ed., 1904: known in solution only; boiled down it splits off acetic acid
  it("is said to stay in its liquor before anything is weighed", () => {
    const sheet = benchSheet(planPreparation(acetate), { format: "text" }).replace(/\s+/g, " ");
    const said =
      "CHECK: Al(CH₃COO)₃ is kept in its solution: boiled down it loses acetic acid and turns basic; this sheet makes its liquor, and no dry Al(CH₃COO)₃.";
    expect(sheet).toContain(said);
    expect(sheet.indexOf(said)).toBeLessThan(sheet.indexOf("Weigh and measure"));
    expect(sheet).not.toMatch(/25\.4 g wanted/);
    // head and label: what comes apart is no product of full strength
    expect(sheet).toMatch(/Liquor that is kept \d+ g \(at most 1\d % Al\(CH₃COO\)₃\)/);
    expect(sheet).toMatch(/Label -+ Al\(CH₃COO\)₃, at most 1\d %/);
  });

  it("is refused as a solid, whatever is asked", () => {
    const outcome = tryPlanPreparation({ ...acetate, isolate: true });
    expect(outcome.ok ? "planned" : outcome.error.code).toBe("plan.no-procedure");
    expect(outcome.ok ? "" : outcome.error.message).toContain("loses acetic acid and turns basic");
  });

  it("is made cold, its gypsum rinsed three times, and no more of it promised than is counted", () => {
    const steps = textsOf(acetate);
    expect(steps.join(" ")).not.toMatch(/80 °C|\bhot\b/);
    // dissolved first: a solid acetate in the strong sulfate gets a crust of gypsum (was stirred in as a solid)
    expect(steps.join(" ")).toMatch(/Pour the calcium acetate solution into the vessel/);
    expect(steps.join(" ")).toMatch(/wash it 3 times with \d+ mL of water each, into the liquor/);
    // 40.0 g x 0.98 / 630.37 g/mol x 2 x 204.11 g/mol = 25.4 g, less what the pressed cake keeps (was all of the 25.4 g, and the
    // rinses were not counted)
    const kept = Number(/with up to ([\d.]+) g of Al\(CH₃COO\)₃/.exec(steps.at(-1)!)![1]);
    expect(kept).toBeGreaterThan(0.97 * 25.4);
    expect(kept).toBeLessThan(25.4);
  });
});

describe("carbonates that a pack has besides", () => {
  const strontium: PlanRequest = {
    equation: "SrCO3 + 2 HCl + 5 H2O -> SrCl2·6H2O + CO2",
    product: "SrCl2·6H2O",
    materials: [
      {
        name: "strontium carbonate",
        form: "SrCO3",
        assay: "96 %",
        excess: "5 %",
        also: [
          { form: "BaCO3", share: "1 %" },
          { form: "CaCO3", share: "1 %" },
        ],
      },
      { name: "brick acid", form: "HCl", strength: "30 %" },
      { name: "sodium sulfate", form: "Na2SO4", aside: true, portion: "0.4 g" },
    ],
    scale: { product: "80 g" },
  };
  const plan = planPreparation(strontium);

  // n(Sr) = 80 g / 266.61 g/mol = 0.3001 mol; 48.5 g of the pack brings 2.458 mmol BaCO3 and 4.846 mmol CaCO3
  it("take acid, which is weighed for them, and give their gas", () => {
    // (2 x 0.3001 + 2 x 0.00730) mol x 36.461 g/mol / 0.30 = 74.7 g, up to the next mark 74.8; half of it is CO2: 0.3074 mol x 24.055 L/mol = 7.39 L
    const [, acid] = plan.weighings;
    expect(acid!.portion.toNumber("g")).toBeCloseTo(74.8, 6);
    const carbon = plan.gas.find(({ key }) => key === "CO2")!;
    expect(carbon.volume.toNumber("L")).toBeCloseTo(7.4, 1);
    expect(plan.product.theoreticalYield.toNumber("g")).toBeCloseTo(80, 0);
  });

  it("are dissolved, and the barium leaves as its sulfate once the acid is used", () => {
    const steps = plan.steps.map(({ text }) => text);
    const at = (part: string): number => steps.findIndex((text) => text.includes(part));
    // 2.458 mmol x 233.39 g/mol = 0.57 g
    expect(steps[at("of sodium sulfate, dissolved")]).toMatch(
      /^Put in the 0\.4 g of sodium sulfate, .* 0\.6 g of BaSO₄ .*Do not leave it out/,
    );
    expect(at("Stir until no more gas rises")).toBeLessThan(at("of sodium sulfate, dissolved"));
    expect(at("of sodium sulfate, dissolved")).toBeLessThan(at("Filter hot"));
    expect(steps[at("Filter hot")]).not.toMatch(/BaCO₃|CaCO₃/);
    const sheet = benchSheet(plan, { format: "text" });
    expect(sheet).toContain("Residue on the filter: 2.2 g of SrCO₃, 0.6 g of BaSO₄.");
  });

  it("stay in the liquor where nothing takes them out, and the waste says so", () => {
    const { materials, ...rest } = strontium;
    const without = benchSheet(planPreparation({ ...rest, materials: materials.slice(0, 2) }), { format: "text" });
    // 2.458 mmol x 137.33 g/mol = 0.34 g
    expect(without).toMatch(/Ba dissolved: 0\.3 g/);
    expect(without).not.toMatch(/g of BaCO₃/);
  });

  it("are left by acid where they are of aluminium or iron(III)", () => {
    const { materials, ...rest } = strontium;
    const [carbonate, acid] = materials;
    const iron = { ...carbonate!, also: [{ form: "Fe(OH)3", share: "1 %" as const }] };
    const none = { ...carbonate!, also: [] };
    const massWith = (one: typeof iron): number =>
      planPreparation({ ...rest, materials: [one, acid!] }).weighings[1]!.portion.toNumber("g");
    expect(massWith(iron)).toBe(massWith(none as typeof iron));
  });
});

describe("a liquor of tin(II) chloride", () => {
  const tin: PlanRequest = {
    equation: "Sn + 2 HCl + 2 H2O -> SnCl2·2H2O + H2",
    product: "SnCl2·2H2O",
    materials: [
      { name: "tin shot", form: "Sn", assay: "99.5 %" },
      { name: "hydrochloric acid", form: "HCl", strength: "32 %", excess: "30 %" },
    ],
    scale: { material: "tin shot", portion: "40.0 g" },
  };

  // 63.6 g of SnCl2 in 67.6 g of water, 138.7 g in all; at 5 °C 123 g to 100 g of water (geometric mean of 85.2 at 0 and 178 at 10 °C):
  // crystals are 60 % of what is there once (0.386 x 138.7 - 63.6 + 1.23 x 67.6) / (1.23 + 0.386) = 45.2 g of water are off
  it("is boiled down by what ice-cold water keeps of it", () => {
    const least = Number(/contents weigh no less than ([\d.]+) g/.exec(textsOf(tin).join(" "))![1]);
    expect(Math.abs(138.7 - 45.2 - least)).toBeLessThan(0.3);
  });

  it("gets acid where it is to get clear, never water, and what is left of the metal is weighed", () => {
    const steps = textsOf(tin).join(" ");
    expect(steps).toContain("grains that a little more of the acid dissolves are product");
    expect(steps).not.toMatch(/more hot water|little hot water/);
    expect(steps).toContain("count the product from what has dissolved");
  });
});

describe("a complex of iron(III) whose iron(II) a peroxide oxidises", () => {
  const ferrioxalate: PlanRequest = {
    equation: "2 FeC2O4·2H2O + H2O2 + H2C2O4·2H2O + 3 (NH4)2C2O4·H2O -> 2 (NH4)3[Fe(C2O4)3]·3H2O + 5 H2O",
    product: "(NH4)3[Fe(C2O4)3]·3H2O",
    materials: [
      { name: "iron(II) oxalate", form: "FeC2O4·2H2O", assay: "98 %" },
      { name: "peroxide", form: "H2O2", strength: "12 %", excess: "25 %" },
      { name: "oxalic acid", form: "H2C2O4·2H2O", assay: "99.5 %", excess: "2 %" },
      { name: "ammonium oxalate", form: "(NH4)2C2O4·H2O", assay: "99 %", excess: "2 %" },
      { name: "spirit", form: "C2H5OH", strength: "94 %", aside: true, portion: "100 mL" },
    ],
    scale: { material: "iron(II) oxalate", portion: "30.0 g" },
    acknowledge: ["peroxide-organic"],
  };
  const plan = planPreparation(ferrioxalate);
  const steps = plan.steps.map(({ text }) => text);
  const at = (part: string): number => steps.findIndex((text) => text.includes(part));

  it("is warmed once the peroxide has gone in cold, and tested for iron(II) before its liquor is boiled down", () => {
    const order = [
      "never above 40 °C",
      "warm it slowly to 85 °C",
      "hexacyanidoferrate(III)",
      "Boil the liquor down",
    ].map(at);
    expect(order.every((step) => step >= 0)).toBe(true);
    expect([...order].sort((a, b) => a - b)).toEqual(order);
    expect(steps.join(" ")).not.toContain("still at 85 °C");
    expect(steps[at("hexacyanidoferrate(III)")]).toContain("a little more of the peroxide");
    // light takes the complex apart as soon as some of it is there, and not only when all is (was said at this step)
    expect(steps[at("never above 40 °C")]).toContain("From here on work in dim light");
  });

  it("meets alcohol only where a strip shows no peroxide, and the strips are made ready", () => {
    expect(steps[at("of spirit slowly")]).toMatch(/once it is cold and a test strip shows no peroxide/);
    expect(benchSheet(plan, { format: "text" }).replace(/\s+/g, " ")).toContain("[ ] test strips for peroxide");
  });

  // 100 mL of spirit stand on the table: the liquor is boiled down to as much over the 70.0 g of product (was 210 mL, three times the
  // product, of which a third is the product itself and no liquor)
  it("is said how much alcohol is usual by what is left of its liquor", () => {
    const usual = plan.checks.find(({ text }) => text.includes("as much alcohol as liquor"))!;
    expect(usual.figure!.toNumber("mL")).toBeCloseTo(100, 0);
  });
});

// alkali stays in the acid as its acid salt, and a sample leaves it on ignition (Mohr, and Reischauer, 1863); NaHC2O4·H2O: some 1.7 g in
// 100 mL of cold water (from memory)
describe("an acid that is recrystallised beside salts of alkali metals", () => {
  const acid = (also: PlanRequest["materials"][number]["also"]): PlanRequest => ({
    equation: "H2C2O4·2H2O -> H2C2O4·2H2O",
    product: "H2C2O4·2H2O",
    materials: [{ name: "wood bleach", form: "H2C2O4·2H2O", assay: "96.5 %", also }],
    scale: { material: "wood bleach", portion: "100.0 g" },
  });
  const saltsIn = (request: PlanRequest): string[] =>
    planPreparation(request).checks.flatMap(({ text }) => (text.includes("no rinse takes that out") ? [text] : []));

  it("is tested for its acid salt", () => {
    const [text] = saltsIn(acid([{ form: "Na2SO4", share: "2.7 %" }]));
    expect(text).toMatch(
      /^Na⁺ of the wood bleach crystallises with it as NaHC₂O₄, .*turns wet red litmus paper blue.*10 % hydrochloric acid/,
    );
  });

  it("is said to be impure before anything is weighed, and once", () => {
    const sheet = benchSheet(planPreparation(acid([{ form: "Na2SO4", share: "2.7 %" }])), { format: "text" }).replace(
      /\s+/g,
      " ",
    );
    expect(sheet.match(/no rinse takes that out/g)).toHaveLength(1);
    expect(sheet.indexOf("no rinse takes that out")).toBeLessThan(sheet.indexOf("Weigh and measure"));
  });

  it("is not where the pack has none", () => {
    expect(saltsIn(acid([{ form: "MgSO4", share: "2.7 %" }]))).toEqual([]);
    expect(saltsIn(acid(undefined))).toEqual([]);
  });
});

// Sn2+(aq) -8.9 kJ/mol (CODATA 1989, from memory), Zn2+(aq) -153.9: -145.0 kJ/mol of tin
describe("tin displaced by zinc", () => {
  it("has its heat: 21.8 kJ of the exchange and 11.5 kJ of the acid in some 0.18 kg of liquor", () => {
    const { heat } = planPreparation({
      equation: "SnCl2 + Zn -> Sn + ZnCl2",
      product: "Sn",
      materials: [
        {
          name: "acid tin solution",
          form: "SnCl2",
          strength: "1.00 mol/L",
          density: "1.18 g/mL",
          also: [{ form: "HCl", share: "3.09 %" }],
        },
        { name: "zinc strip", form: "Zn", assay: "99.5 %", excess: "60 %" },
      ],
      scale: { material: "acid tin solution", portion: "150 mL" },
    });
    const rise = "rise" in heat ? heat.rise.rise.toNumber("ΔK") : Number.NaN;
    expect(rise).toBeGreaterThan(38);
    expect(rise).toBeLessThan(50);
  });
});

describe("what is weighed beside the equation", () => {
  it("has its strength beside the table as every other pack", () => {
    const sheet = benchSheet(
      planPreparation({
        equation: "NiSO4·6H2O + (NH4)2SO4 -> (NH4)2Ni(SO4)2·6H2O",
        product: "(NH4)2Ni(SO4)2·6H2O",
        materials: [
          { name: "nickel sulfate", form: "NiSO4·6H2O", assay: "98.5 %" },
          { name: "lawn ammonium sulfate", form: "(NH4)2SO4", assay: "99 %", excess: "5 %" },
          { name: "sulfuric acid", form: "H2SO4", strength: "10 %", aside: true, portion: "1 mL" },
        ],
        scale: { material: "nickel sulfate", portion: "50.0 g" },
      }),
      { format: "text" },
    );
    expect(sheet).toContain("- sulfuric acid: 10 % by mass");
  });
});

describe("a charge whose dust harms, ground wet", () => {
  it("leaves what its tools are rinsed with as waste of its metal", () => {
    const plan = planPreparation({
      equation: "CoCO3 + 2 Al(OH)3 -> CoAl2O4 + CO2 + 3 H2O",
      product: "CoAl2O4",
      materials: [
        { name: "cobalt carbonate", form: "CoCO3", assay: "92.8 %" },
        { name: "alumina hydrate", form: "Al(OH)3", assay: "98.5 %", excess: "3 %" },
      ],
      scale: { material: "cobalt carbonate", portion: "30.0 g" },
    });
    expect(benchSheet(plan, { format: "text" }).replace(/\s+/g, " ")).toContain(
      "what mortar, sieve and plate are rinsed with is collected: it settles, and the sediment is waste of its metal",
    );
  });
});
