// What a worker reads on the printed sheet: preparations of the textbooks, read as a chemist at the bench read them. Grounds
// are common practice of the bench (no source) unless a line names another.
import { benchSheet, bottleLabel, evaluateRun, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";
import { FOIL_ALUM, PRUSSIAN_BLUE, SILVER_CHLORIDE } from "../data/common-requests";

const sheetOf = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

/** The ticks under "Have ready". */
const ready = (sheet: string): string => /Have ready -+ (.*?) Weigh and measure/.exec(sheet)![1]!;

const GREEN_VITRIOL: PlanRequest = {
  equation: "Fe + H2SO4 + 7 H2O -> FeSO4·7H2O + H2",
  product: "FeSO4·7H2O",
  materials: [
    { name: "iron filings", form: "Fe", excess: "10 %" },
    { name: "sulfuric acid", form: "H2SO4", strength: "96 %" },
  ],
  scale: { product: "27.8 g" },
};
const TETRAAMMINE: PlanRequest = {
  equation: "CuSO4 + NH3 + H2O -> [Cu(NH3)4]SO4·H2O",
  product: "[Cu(NH3)4]SO4·H2O",
  materials: [
    { name: "blue vitriol", form: "CuSO4·5H2O" },
    { name: "ammonia", form: "NH3", strength: "25 %", excess: "50 %" },
    { name: "spirit", form: "C2H5OH", strength: "95 %", aside: true, portion: "100 mL" },
  ],
  scale: { material: "blue vitriol", portion: "25.0 g" },
};
const BLUE_VITRIOL: PlanRequest = {
  equation: "CuSO4·5H2O -> CuSO4·5H2O",
  product: "CuSO4·5H2O",
  materials: [{ name: "root killer", form: "CuSO4·5H2O", assay: "97 %" }],
  scale: { material: "root killer", portion: "100 g" },
};

describe("heat", () => {
  it("is no flame where hydrogen, spirit or what feeds a fire is in the work", () => {
    // precautionary statement P210 of hydrogen (H220), spirit (H225) and saltpetre (H272): GHS, Annex 3
    const saltpetre: PlanRequest = {
      equation: "KNO3 -> KNO3",
      product: "KNO3",
      materials: [{ name: "old saltpetre", form: "KNO3" }],
      scale: { material: "old saltpetre", portion: "300 g" },
    };
    for (const request of [GREEN_VITRIOL, saltpetre]) {
      const sheet = sheetOf(request);
      expect(sheet).toContain("[ ] no flame or spark near");
      expect(ready(sheet)).toContain("[ ] hot plate or water bath, no flame");
      expect(sheet).not.toContain("burner");
    }
    expect(sheetOf(TETRAAMMINE)).not.toContain("burner");
  });

  it("is whatever there is where nothing burns", () => {
    const sheet = sheetOf(BLUE_VITRIOL);
    expect(ready(sheet)).toContain("[ ] hot plate or burner");
    expect(sheet).not.toContain("no flame or spark near");
  });

  it("is no flame where the crystals are rinsed with alcohol that no pack of the plan brings", () => {
    const sheet = sheetOf({ ...BLUE_VITRIOL, washing: { rinse: "alcohol" } });
    expect(sheet).toContain("of 50 % alcohol");
    expect(sheet).toContain("[ ] no flame or spark near");
    expect(ready(sheet)).toContain("[ ] hot plate or water bath, no flame");
  });
});

describe("vessels", () => {
  it("have one for acid that is diluted beside the work, and the step says in what", () => {
    const sheet = sheetOf(FOIL_ALUM);
    expect(sheet).toMatch(/Pour the sulfuric acid slowly into \d+ mL of water in a jug of its own, stirring/);
    const [, size] = /jug for (\d+) mL \(sulfuric acid\)/.exec(ready(sheet))!;
    // by the contents of the step the jug has room left to stir in
    const step = planPreparation(FOIL_ALUM).steps.find(
      ({ operation, vessel }) => operation === "dilute" && vessel !== "pot",
    )!;
    expect(Number(size)).toBeGreaterThan(step.after.volume!.toNumber("mL"));
  });

  it("have the larger one in which a sludge is washed, once, with its step", () => {
    const sheet = sheetOf(PRUSSIAN_BLUE);
    const [, step, volume, size] =
      /(\d+)\. \[ \] Wash \d+ times with (\S+) mL of water.*?\(in a vessel of (\d+) mL or larger\)/.exec(sheet)!;
    expect(ready(sheet)).toContain(`[ ] vessel of ${size} mL (step ${step})`);
    expect(Number(size)).toBeGreaterThan(Number(volume));
    // where it fits the vessel of the batch nothing is added
    expect(ready(sheetOf(FOIL_ALUM))).not.toMatch(/\] vessel of/);
  });
});

describe("ignition of a sample", () => {
  const CEMENT_COPPER: PlanRequest = {
    equation: "CuSO4 + Fe -> Cu + FeSO4",
    product: "Cu",
    materials: [
      { name: "blue vitriol", form: "CuSO4·5H2O" },
      { name: "iron powder", form: "Fe" },
    ],
    scale: { material: "blue vitriol", portion: "25.0 g" },
  };
  const AMMONIUM_SULFATE: PlanRequest = {
    equation: "NH3 + H2SO4 -> (NH4)2SO4",
    product: "(NH4)2SO4",
    materials: [
      { name: "ammonia", form: "NH3", strength: "25 %", excess: "5 %" },
      { name: "sulfuric acid", form: "H2SO4", strength: "96 %" },
    ],
    scale: { material: "sulfuric acid", portion: "20.4 g" },
  };
  /** What a run of so much of the theory is told to do next, of every finding. */
  const nextOf = (request: PlanRequest, share: number): string => {
    const plan = planPreparation(request);
    const grams = Number((plan.product.theoreticalYield.toNumber("g") * share).toPrecision(4));
    return evaluateRun(plan, { dried: [`${grams} g`, `${grams} g`] })
      .verdict.map(({ next }) => next)
      .join("; ");
  };

  it("is asked for where it tells formulas apart, with how it is heated and what it leaves of a gram", () => {
    const sheet = sheetOf(BLUE_VITRIOL);
    // CuSO4 of CuSO4·5H2O: 159.60 of 249.68 (atomic weights of 2021, from memory)
    expect((159.6 / 249.68) * 100).toBeCloseTo(63.9, 1);
    expect(sheet).toContain(
      "as expected, allowing for handling; a sample heated to constant mass (220 to 250 °C) leaves 63.9 %, CuSO₄",
    );
    expect(sheet).toContain("Ignition test: open crucible, tongs, heat-proof gloves and base");
    expect(sheet).not.toContain(": heated,");
    expect(nextOf(BLUE_VITRIOL, 0.6)).toContain("ignite");
  });

  it("is not asked for where there is nothing to tell apart, and its cautions are left out", () => {
    for (const request of [SILVER_CHLORIDE, CEMENT_COPPER, AMMONIUM_SULFATE, TETRAAMMINE]) {
      expect(sheetOf(request)).not.toContain("Ignition test");
      expect(nextOf(request, 0.95)).not.toContain("ignite a sample");
    }
  });

  it("is never asked for of a cyanide: at red heat it gives off poison", () => {
    expect(sheetOf(PRUSSIAN_BLUE)).not.toContain("Ignition test");
    for (const share of [0.6, 0.95, 1.1, 1.3, 1.6])
      expect(nextOf(PRUSSIAN_BLUE, share)).not.toMatch(/(?<!never )ignite/);
    expect(nextOf(PRUSSIAN_BLUE, 1.3)).toContain("never ignite it");
  });
});

describe("the drying limit", () => {
  const CAUTION = "Keep below the drying limit: more heat changes the product";
  const from = (equation: string, product: string, feeds: readonly string[]): PlanRequest => ({
    equation,
    product,
    materials: feeds.map((form) => ({ name: `jar of ${form}`, form })),
    scale: { product: "10 g" },
  });

  it("is a caution and a line of the label where more heat changes the product", () => {
    for (const request of [
      BLUE_VITRIOL, // loses water from 63 °C on
      TETRAAMMINE, // loses ammonia in warm air
      from("CuSO4 + 2 NaOH -> Cu(OH)2 + Na2SO4", "Cu(OH)2", ["CuSO4·5H2O", "NaOH"]), // black from 80 °C on
    ]) {
      const sheet = sheetOf(request);
      expect(sheet).toContain(CAUTION);
      expect(sheet).toMatch(/batch, do not warm above \d+ °C/);
    }
  });

  it("is neither where it is only as warm as an oven: what analysis dries hotter or ignites", () => {
    // BaSO4 is ignited at 800 °C and CaCO3 dried at 250 °C by every textbook of gravimetry; (NH4)2SO4 decomposes from 235 °C on,
    // Mg(OH)2 from 350 °C on (from memory)
    for (const request of [
      from("BaCl2 + Na2SO4 -> BaSO4 + 2 NaCl", "BaSO4", ["BaCl2·2H2O", "Na2SO4"]),
      from("CaCl2 + Na2CO3 -> CaCO3 + 2 NaCl", "CaCO3", ["CaCl2·2H2O", "Na2CO3"]),
      from("MgSO4 + 2 NaOH -> Mg(OH)2 + Na2SO4", "Mg(OH)2", ["MgSO4·7H2O", "NaOH"]),
      from("(NH4)2SO4 -> (NH4)2SO4", "(NH4)2SO4", ["(NH4)2SO4"]),
    ]) {
      const sheet = sheetOf(request);
      expect(sheet).toMatch(/Dry at no more than 1\d\d °C/);
      expect(sheet).not.toContain(CAUTION);
      expect(sheet).not.toContain("do not warm above");
    }
  });

  it("is on no label of what comes out of a fire", () => {
    // copper oxide decomposes above 1000 °C; gypsum was just fired at more than any drying oven has
    for (const request of [
      from("Cu2(OH)2CO3 -> CuO + CO2 + H2O", "CuO", ["Cu2(OH)2CO3"]),
      from("CaSO4·2H2O -> CaSO4·0.5H2O + 1.5 H2O", "CaSO4·0.5H2O", ["CaSO4·2H2O"]),
    ]) {
      expect(sheetOf(request)).not.toContain("do not warm above");
      expect(bottleLabel(planPreparation(request))).not.toContain("do not warm above");
    }
  });
});

describe("the hazards of a sheet", () => {
  const hazards = (sheet: string): string => /Hazards and protection -+ (.*?) Have ready/.exec(sheet)![1]!;
  const alum = (metal: string): PlanRequest => ({
    equation: "Al + KOH + H2SO4 + H2O -> KAl(SO4)2·12H2O + H2",
    product: "KAl(SO4)2·12H2O",
    materials: [
      { name: metal, form: "Al" },
      { name: "caustic potash", form: "KOH", assay: "85 %", excess: "20 %" },
      { name: "sulfuric acid", form: "H2SO4", strength: "96 %" },
    ],
    scale: { material: metal, portion: "5.00 g" },
  });

  it("say of thin solutions and of salts in the liquor no fire, and once what they dry to", () => {
    // silver nitrate of 0.1 mol/L is 0.1 × 169.87 / 1010 = 1.7 %: its bottles carry no flame over a circle (common practice)
    const sheet = sheetOf(SILVER_CHLORIDE);
    expect(sheet).not.toMatch(/H272|oxidiser \(H|no flame or spark|nothing near that burns|feeds a fire|P210|P220/);
    expect(sheet.split("dries to an oxidiser").length - 1).toBe(1);
    expect(hazards(sheet)).toContain("AgNO₃ + NaNO₃: dries to an oxidiser: do not let it dry on paper or cloth.");
    // what poisons and what water life suffers from is said by strength as before
    expect(hazards(sheet)).toContain("Very toxic to aquatic life with long lasting effects (H410)");
    // the same salts as they are weighed are oxidisers
    const dry = sheetOf({
      ...SILVER_CHLORIDE,
      materials: [
        { name: "silver nitrate", form: "AgNO3" },
        { name: "table salt", form: "NaCl", excess: "10 %" },
      ],
      scale: { material: "silver nitrate", portion: "4.25 g" },
    });
    expect(hazards(dry)).toContain("May intensify fire; oxidiser (H272)");
    expect(hazards(dry)).toContain("[ ] nothing near that burns");
  });

  it("say of a metal what its form is, and both in one row where nothing says it", () => {
    const foil = hazards(sheetOf(alum("aluminium foil")));
    expect(foil).toContain("aluminium foil, Al Hazard: no hazard listed in the source");
    expect(foil).not.toMatch(/H228|H261|powder/);
    expect(sheetOf(alum("aluminium foil"))).not.toContain("P223");
    const powder = hazards(sheetOf(alum("aluminium powder")));
    expect(powder).toContain("DANGER: Flammable solid (H228). In contact with water releases flammable gases (H261).");
    expect(powder).not.toContain("massive");
    const either = hazards(sheetOf(alum("aluminium")));
    expect(either).toMatch(
      /aluminium, Al Pictogram: GHS02 Hazard: powder, stabilised: DANGER: Flammable solid \(H228\)\. .*?; massive: no hazard listed/,
    );
    expect(either.match(/aluminium, Al/g)).toHaveLength(1);
  });

  it("ask for gloves with lead, and for none of quartz dust where water gives the silica", () => {
    const lead = sheetOf({
      equation: "Pb(NO3)2 + 2 KI -> PbI2 + 2 KNO3",
      product: "PbI2",
      materials: [
        { name: "lead nitrate", form: "Pb(NO3)2" },
        { name: "potassium iodide", form: "KI" },
      ],
      scale: { material: "lead nitrate", portion: "3.31 g" },
      readability: { mass: "0.01 g" },
    });
    expect(hazards(lead)).toContain("[ ] gloves");
    const silica = sheetOf({
      equation: "Na2SiO3 + 2 HCl -> SiO2 + 2 NaCl + H2O",
      product: "SiO2",
      materials: [
        { name: "water glass", form: "Na2SiO3", strength: "20 %" },
        { name: "hydrochloric acid", form: "HCl", strength: "10 %", excess: "5 %" },
      ],
      scale: { material: "water glass", portion: "61 g" },
    });
    expect(hazards(silica)).not.toMatch(/H350|H372/);
  });
});

describe("the waste of a sheet", () => {
  it("asks for no precipitation of a metal that no balance would find in it", () => {
    // BaSO4 keeps 2.4 mg/L in pure water and less with sulfate over (solubility product 1.08e-10, CRC Handbook)
    const sheet = sheetOf({
      equation: "BaCl2 + Na2SO4 -> BaSO4 + 2 NaCl",
      product: "BaSO4",
      materials: [
        { name: "barium chloride", form: "BaCl2·2H2O" },
        { name: "sodium sulfate", form: "Na2SO4", excess: "5 %" },
      ],
      scale: { material: "barium chloride", portion: "24.4 g" },
    });
    expect(sheet).not.toMatch(/Metals are dissolved|metals are dissolved|Ba dissolved|Barium is precipitated/);
    // a liquor of crystals has grams of its metal
    expect(sheetOf(BLUE_VITRIOL)).toMatch(
      /Cu dissolved: [\d.]+ g; pH .*? metals are dissolved in it: precipitate them/,
    );
  });
});
