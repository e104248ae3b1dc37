// What a worker reads on the printed sheet: preparations of the textbooks, read as a chemist at the bench read them. Grounds
// are common practice of the bench (no source) unless a line names another.
import { benchSheet, evaluateRun, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

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
  const ALUM: PlanRequest = {
    equation: "Al + KOH + H2SO4 + H2O -> KAl(SO4)2·12H2O + H2",
    product: "KAl(SO4)2·12H2O",
    materials: [
      { name: "aluminium foil", form: "Al" },
      { name: "caustic potash", form: "KOH", assay: "85 %", excess: "20 %" },
      { name: "sulfuric acid", form: "H2SO4", strength: "96 %" },
    ],
    scale: { material: "aluminium foil", portion: "5.00 g" },
  };

  it("have one for acid that is diluted beside the work, and the step says in what", () => {
    const sheet = sheetOf(ALUM);
    expect(sheet).toMatch(/Pour the sulfuric acid slowly into \d+ mL of water in a jug of its own, stirring/);
    const [, size] = /jug for (\d+) mL \(sulfuric acid\)/.exec(ready(sheet))!;
    // by the contents of the step the jug has room left to stir in
    const step = planPreparation(ALUM).steps.find(
      ({ operation, vessel }) => operation === "dilute" && vessel !== "pot",
    )!;
    expect(Number(size)).toBeGreaterThan(step.after.volume!.toNumber("mL"));
  });

  it("have the larger one in which a sludge is washed, once, with its step", () => {
    const sheet = sheetOf({
      equation: "FeCl3 + K4[Fe(CN)6] -> Fe4[Fe(CN)6]3 + KCl",
      product: "Fe4[Fe(CN)6]3",
      materials: [
        { name: "ferric chloride", form: "FeCl3·6H2O" },
        { name: "yellow prussiate", form: "K4[Fe(CN)6]·3H2O" },
      ],
      scale: { material: "ferric chloride", portion: "21.6 g" },
    });
    const [, step, volume, size] =
      /(\d+)\. \[ \] Wash \d+ times with (\S+) L of water.*?\(in a vessel of (\d+) L or larger\)/.exec(sheet)!;
    expect(ready(sheet)).toContain(`[ ] vessel of ${size} L (step ${step})`);
    expect(Number(size)).toBeGreaterThan(Number(volume));
    // where it fits the vessel of the batch nothing is added
    expect(ready(sheetOf(ALUM))).not.toMatch(/\] vessel of/);
  });
});

describe("ignition of a sample", () => {
  const PRUSSIAN_BLUE: PlanRequest = {
    equation: "FeCl3 + K4[Fe(CN)6] -> Fe4[Fe(CN)6]3 + KCl",
    product: "Fe4[Fe(CN)6]3",
    materials: [
      { name: "ferric chloride", form: "FeCl3·6H2O" },
      { name: "yellow prussiate", form: "K4[Fe(CN)6]·3H2O" },
    ],
    scale: { material: "ferric chloride", portion: "21.6 g" },
  };
  const SILVER_CHLORIDE: PlanRequest = {
    equation: "AgNO3 + NaCl -> AgCl + NaNO3",
    product: "AgCl",
    materials: [
      { name: "silver nitrate solution", form: "AgNO3", strength: "0.100 mol/L" },
      { name: "table salt", form: "NaCl", excess: "10 %" },
    ],
    scale: { material: "silver nitrate solution", portion: "250 mL" },
  };
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
    expect(sheet).toContain("Ignition test: open crucible, tongs, heat-proof base");
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
