// What readers of printed sheets found, mended by rule: heat of an ammine and of crystals that come as they form, tests that the
// product itself hides, flux and silica in the kiln. Sums beside each check are worked out by hand.
import { describe, expect, it } from "vitest";
import { doesItGo, type PlanRequest, planPreparation, tryPlanPreparation } from "../../src/preparation";
import { benchSheet } from "../../src/sheet";

const said = (request: PlanRequest): string =>
  benchSheet(planPreparation(request), { format: "text" }).replace(/\s+/g, " ");

const ammine: PlanRequest = {
  equation: "CuSO4·5H2O + 4 NH3 -> [Cu(NH3)4]SO4·H2O + 4 H2O",
  product: "[Cu(NH3)4]SO4·H2O",
  materials: [
    { name: "blue stone", form: "CuSO4·5H2O", assay: "99.0 %" },
    { name: "ammonia water", form: "NH3", strength: "25 %", excess: "50 %" },
    { name: "spirit", form: "C2H5OH", strength: "94 %", aside: true, portion: "75 mL" },
  ],
  scale: { material: "blue stone", portion: "25.0 g" },
};

describe("an ammine", () => {
  // NBS tables of 1982: -348.5 - (64.77 + 4 (-80.29)) = -92.1 kJ/mol; 0.09913 mol in 104 g at 4.0 J/(g K): 22 K
  it("has the heat of its ion in the liquor where no figure of its crystals is known", () => {
    const { heat } = planPreparation(ammine);
    if (!("rise" in heat)) throw new Error(heat.missing);
    expect(heat.enthalpy.toNumber("kJ/mol")).toBeCloseTo(-92.1, 1);
    expect(heat.rise.rise.toNumber("ΔK")).toBeCloseTo((92.1 * 0.09913) / (0.104 * 4.0), 0);
  });

  // ammonia of 25 % boils at 38 °C (common practice, no source): the salt is cold before it comes, and a bath keeps it so
  it("is kept cool while the ammonia comes", () => {
    const text = said(ammine);
    expect(text).toContain("let it cool to 25 °C");
    expect(text).toContain(
      "it warms by up to 22 K if added at once: a little at a time, in a bath of cold water, never above 40 °C",
    );
  });

  it("says what is missing of the usual alcohol", () => {
    // 104 g less 24.4 g of crystals are 79 mL of liquor over them (was 100 mL, the crystals counted as liquor): 75 mL is nearly as much
    expect(said(ammine)).toMatch(/As much alcohol as liquor, 79 mL, precipitates most of it \(common practice\)\. /);
    const [blue, ammonia, spirit] = ammine.materials;
    const little = { ...ammine, materials: [blue!, ammonia!, { ...spirit!, portion: "50 mL" as const }] };
    expect(said(little)).toMatch(
      /As much alcohol as liquor, 79 mL, .* of the 50 mL that is planned it keeps more: another (29|30) mL/,
    );
  });
});

describe("a salt pair whose crystals come while the salt dissolves", () => {
  // 25.4 kJ for 1.0216 mol of NH4HCO3, less 18.7 kJ/mol for the 0.794 mol of NaHCO3 that come: 10.6 kJ in 342 g at 4.0 J/(g K)
  it("cools by what dissolves less what comes", () => {
    const { heat } = planPreparation({
      equation: "NaCl + NH4HCO3 -> NaHCO3 + NH4Cl",
      product: "NaHCO3",
      materials: [
        { name: "pickling salt", form: "NaCl", assay: "99.5 %" },
        { name: "baker's ammonia", form: "NH4HCO3", assay: "98.5 %" },
      ],
      scale: { material: "pickling salt", portion: "60.0 g" },
    });
    if (!("rise" in heat)) throw new Error(heat.missing);
    const kelvin = heat.rise.rise.toNumber("ΔK");
    expect(Math.abs(kelvin + 10.6 / (0.342 * 4.0))).toBeLessThan(0.7);
  });
});

describe("copper(I) chloride that acid washes", () => {
  // copper(I) in chloride takes iodine's colour: 0.41 V of Cu2+/CuCl2- against 0.54 V of iodine (handbook potentials, from memory)
  it("is not tested for sulfite by iodine", () => {
    const text = said({
      equation: "2 CuSO4·5H2O + 2 NaCl + Na2SO3 -> 2 CuCl + 2 Na2SO4 + H2SO4 + 9 H2O",
      product: "CuCl",
      materials: [
        { name: "blue stone", form: "CuSO4·5H2O", assay: "99.0 %" },
        { name: "pickling salt", form: "NaCl", assay: "99.5 %", excess: "10 %" },
        { name: "sodium sulfite", form: "Na2SO3", assay: "97.0 %", excess: "15 %" },
      ],
      scale: { material: "blue stone", portion: "50.0 g" },
    });
    expect(text).not.toContain("iodine");
    expect(text).toMatch(/no test tells .*SO₃²⁻/);
  });
});

describe("a charge with flux and silica", () => {
  const blue: PlanRequest = {
    equation: "Cu2CO3(OH)2 + 2 CaCO3 + 8 SiO2 -> 2 CaCuSi4O10 + 3 CO2 + H2O",
    product: "CaCuSi4O10",
    materials: [
      { name: "copper carbonate", form: "Cu2CO3(OH)2", assay: "96.0 %" },
      { name: "whiting", form: "CaCO3", assay: "98.0 %" },
      { name: "flint", form: "SiO2", assay: "99.0 %", excess: "5 %" },
      { name: "soda ash", form: "Na2CO3", assay: "99.0 %", aside: true, portion: "5.13 g", note: "flux" },
    ],
    scale: { material: "copper carbonate", portion: "25.0 g" },
  };

  // 24.0 g of malachite are 0.10855 mol: 0.3256 mol of CO2; the silica over takes the soda: 2.66 g or 0.0442 mol more, 8.9 L in all
  it("gives off the carbon dioxide of the soda as far as silica is over", () => {
    const gas = planPreparation(blue).gas.find(({ formula }) => formula.toString().includes("CO"));
    expect(gas?.volume.toNumber("L")).toBeCloseTo((0.3256 + 0.0442) * 24.055, 1);
    expect(said(blue)).toContain("of Na₂SiO₃, 87.0 g in all");
  });

  // sodium metasilicate is corrosive by its own entry (014-010-00-8 of the list: H314, H335)
  it("names the silicate among the hazards and on the label", () => {
    expect(said(blue)).toContain("with Na₂CO₃ and Na₂SiO₃ in it");
    const { substances } = planPreparation(blue).cautions;
    const silicate = substances.find(({ formula }) => formula === "Na₂SiO₃" || formula === "Na2SiO3");
    expect(silicate?.statements.map(({ code }) => code)).toContain("H314");
  });

  it("is not tested for lime by its alkali, for the flux is alkaline", () => {
    expect(said(blue)).not.toContain("pH 11");
    expect(said({ ...blue, materials: blue.materials.filter(({ aside }) => aside !== true) })).toContain(
      "pH 11 and more",
    );
  });

  // 900 °C, then 10 to 100 hours at 800 °C: Pigments through the Ages (webexhibits.org)
  it("is kept as long as the blue takes, and ground in what closes", () => {
    expect(said(blue)).toContain("for an hour, and then at 800 °C for 10 hours or more");
    expect(said(blue)).toContain("[ ] jar or mill that closes, for grinding");
  });
});

describe("an anion that a base splits", () => {
  // 2 Ba2+ + Cr2O7^2- + H2O give BaCrO4 and acid before any lye comes: pKsp 9.93 (handbook), so the two are never in one clear vessel
  it("meets the base in its own jug, and the metal after", () => {
    const plan = planPreparation({
      equation: "2 BaCl2·2H2O + K2Cr2O7 + 2 NaOH -> 2 BaCrO4 + 2 KCl + 2 NaCl + 5 H2O",
      product: "BaCrO4",
      materials: [
        { name: "barium chloride", form: "BaCl2·2H2O", excess: "2 %" },
        { name: "potassium dichromate", form: "K2Cr2O7" },
        { name: "lye", form: "NaOH", strength: "30 %" },
      ],
      scale: { product: "50 g" },
    });
    const texts = plan.steps.map(({ text }) => text).join(" ");
    expect(texts).toContain("Dissolve the potassium dichromate in a jug of its own");
    expect(texts).toContain("then pour it into the potassium dichromate solution");
    expect(texts).not.toContain("in the same vessel");
    // what is over, barium, shows what is left of the chromate; lye shows nothing
    expect(texts).toContain("with a drop of fresh barium chloride solution");
  });
});

describe("lead beside sulfuric acid", () => {
  // 4.3 mg of PbSO4 in 100 g of water at 20 °C (handbook): lead in technical zinc stays as sludge; other acids make soluble salts
  it("is no soluble poison, beside others it is", () => {
    const zinc = (acid: string): PlanRequest => ({
      equation: acid === "H2SO4" ? "Zn + H2SO4 + 7 H2O -> ZnSO4·7H2O + H2" : "Zn + 2 HCl -> ZnCl2 + H2",
      product: acid === "H2SO4" ? "ZnSO4·7H2O" : "ZnCl2",
      materials: [
        { name: "roofing zinc", form: "Zn", assay: "98.5 %", excess: "5 %", also: [{ form: "Pb", share: "0.7 %" }] },
        { name: "acid", form: acid, strength: "25 %" },
      ],
      scale: { material: "roofing zinc", portion: "100 g" },
    });
    expect(tryPlanPreparation(zinc("H2SO4")).ok).toBe(true);
    const other = tryPlanPreparation(zinc("HCl"));
    expect(!other.ok && other.error.message).toContain("Pb and HCl: soluble poison");
  });
});

describe("iodate by permanganate", () => {
  const plan = planPreparation({
    equation: "KI + 2 KMnO4 + H2O -> KIO3 + 2 MnO2 + 2 KOH",
    product: "KIO3",
    materials: [
      { name: "potassium iodide", form: "KI", assay: "99 %" },
      { name: "potassium permanganate", form: "KMnO4", assay: "98 %", excess: "3 %" },
      { name: "alcohol", form: "C2H5OH", strength: "94 %", aside: true, portion: "0.3 g" },
      { name: "acetic acid", form: "CH3COOH", strength: "25 %", aside: true, portion: "57.3 g" },
    ],
    scale: { material: "potassium iodide", portion: "20 g" },
    acknowledge: ["permanganate-organic"],
  });
  const at = (start: RegExp): number => plan.steps.findIndex(({ text }) => start.test(text));

  // in acid permanganate and iodate set iodine free of iodide (any textbook of inorganic analysis): the acid comes last
  it("meets its acid once the reaction is over and the dioxide filtered off", () => {
    expect(at(/^Add 57\.3 g of acetic acid to the clear liquor/)).toBeGreaterThan(at(/^Filter hot/));
    expect(at(/acetic acid into the vessel/)).toBe(-1);
    // 0.1193 mol of KI: 0.2386 mol of KOH, of which the acid takes what the filter has not kept
    const after = plan.steps[at(/^Add 57\.3 g/)]!.after;
    expect(after.dissolved.some(({ formula }) => formula.toString() === "KOH")).toBe(false);
  });

  it("is still purple before alcohol clears it, or iodide would be left", () => {
    expect(plan.steps.some(({ text }) => text.includes("the clear liquor is purple or green still"))).toBe(true);
  });

  // 3 KMnO4 left over by 3 %: about 0.3 g of alcohol; so little is no antisolvent
  it("takes the drops of alcohol of the plan for what is left of the permanganate", () => {
    expect(plan.steps[at(/^Put in alcohol, a drop at a time/)]!.materials).toEqual(["alcohol"]);
    expect(plan.steps.filter(({ text }) => text.includes("brings the product out"))).toEqual([]);
  });
});

describe("moisture that a pack is known to have", () => {
  // 46.995 g of 97 % are 0.24915 mol: 20.00 g of Co3O4, 8.97 g of water of the crystals and 1.41 g of moisture as steam
  it("leaves a fired charge, which stands at the oxide alone", () => {
    const plan = planPreparation({
      equation: "3 CoC2O4·2H2O + 2 O2 -> Co3O4 + 6 CO2 + 6 H2O",
      product: "Co3O4",
      materials: [
        { name: "cobalt oxalate", form: "CoC2O4·2H2O", assay: "97 %", also: [{ form: "H2O", share: "3 %" }] },
      ],
      scale: { product: "20 g" },
    });
    const fired = plan.steps.find(({ operation }) => operation === "fire")!;
    expect(fired.after.mass.toNumber("g")).toBeCloseTo(20.0, 1);
    expect(fired.text).toContain("10.4 g of steam");
    // nobody stirs in a kiln that glows
    expect(fired.text).toContain("in a layer no thicker than 2 cm, in a kiln that is vented");
    // by thermogravimetry in air over at 436 °C (Journal of Applied Chemistry 2014, article 767695); Co3O4 gives oxygen back at 900
    expect(fired.target?.toNumber("°C")).toBe(700);
  });
});

describe("a sparing salt that is crystallised again", () => {
  // 0.5 g of KHC4H4O6 in 100 g of water at 20 °C, 3.8 at 80 (handbook): dissolved hot and cooled, nothing of it has to react
  it("is not judged as a precipitation", () => {
    const { verdict } = doesItGo({
      equation: "KHC4H4O6 -> KHC4H4O6",
      product: "KHC4H4O6",
      materials: [
        { name: "wine stone", form: "KHC4H4O6", assay: "82 %", also: [{ form: "CaC4H4O6·4H2O", share: "8 %" }] },
      ],
      scale: { material: "wine stone", portion: "250 g" },
    });
    expect(verdict).toBe("goes");
  });
});
