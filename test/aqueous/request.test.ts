// What goes into a beaker, as a person writes it: amounts, water, temperature, gas, and which solids may form.
import { type AqueousRequest, aqueousComposition, attempt, pHOf, quantity, uncertaintyBudget } from "preparative";
import { describe, expect, it } from "vitest";
import { SOLUBILITY_PRODUCTS } from "../../src/aqueous/data/products";

const refused = (request: unknown) => {
  const outcome = attempt(() => aqueousComposition(request as AqueousRequest));
  return outcome.ok ? undefined : outcome.error;
};
const litre = (mixture: Readonly<Record<string, number>>, more: Partial<AqueousRequest> = {}) =>
  aqueousComposition({
    water: "1 kg",
    dissolved: Object.entries(mixture).map(([formula, moles]) => ({ formula, amount: `${moles} mol` as const })),
    ...more,
  });
const solids = (c: ReturnType<typeof litre>): string[] => c.solids.map(({ formula }) => formula);

describe("how much of a material", () => {
  const acid = (one: object, water = "1 L") =>
    aqueousComposition({ water, dissolved: [{ formula: "HCl", ...one }] } as AqueousRequest);

  it("is a mass, an amount or a concentration of the whole or of its own volume: the same either way", () => {
    // 36.46 g/mol
    const pH = acid({ amount: "0.01 mol" }).pH.toNumber();
    expect(acid({ mass: "0.3646 g" }).pH.toNumber()).toBeCloseTo(pH, 4);
    expect(acid({ mass: "0.7292 g", assay: "50 %" }).pH.toNumber()).toBeCloseTo(pH, 4);
    expect(acid({ concentration: "0.01 mol/L" }).pH.toNumber()).toBeCloseTo(pH, 9);
    // 0.1 L of 0.1 mol/L brings its own water: a tenth more in all
    const poured = acid({ concentration: "0.1 mol/L", volume: "100 mL" });
    expect(poured.water.toNumber("kg")).toBeCloseTo(1.1, 3);
    expect(poured.species.find(({ formula }) => formula === "Cl-")!.molality.toNumber("mol/kg")).toBeCloseTo(
      0.01 / 1.1,
      5,
    );
  });

  it.each([
    ["none of them", {}, "aqueous.missing-option", { argument: "dissolved[0]" }],
    ["two of them", { mass: "1 g", amount: "1 mol" }, "aqueous.bad-option", { argument: "dissolved[0]" }],
    ["all of them", { mass: "1 g", amount: "1 mol", concentration: "1 mol/L" }, "aqueous.bad-option", {}],
    ["less than nothing", { amount: "-1 mol" }, "aqueous.not-positive", { argument: "dissolved[0]" }],
    ["no volume at all", { concentration: "1 mol/L", volume: "0 mL" }, "aqueous.not-positive", {}],
  ])("is refused with a code: %s", (_, one, code, details) => {
    expect(refused({ water: "1 L", dissolved: [{ formula: "HCl", ...one }] })).toMatchObject({ code, details });
  });

  it("needs a volume for a concentration where the water is a mass", () => {
    expect(refused({ water: "1 kg", dissolved: [{ formula: "HCl", concentration: "1 mol/L" }] })).toMatchObject({
      code: "aqueous.missing-option",
      hint: expect.stringContaining("volume"),
      details: { argument: "dissolved[0]" },
    });
  });

  it("may be nothing", () => {
    expect(litre({ HCl: 0 }).pH.toNumber()).toBeCloseTo(7, 6);
  });
});

describe("where the request begins and ends", () => {
  it.each([
    ["5 °C", true],
    ["4.9 °C", false],
    ["60 °C", true],
    ["60.1 °C", false],
  ] as const)("a temperature of %s is served: %s", (temperature, served) => {
    const request = { water: "1 kg", dissolved: [], temperature } as const;
    expect(attempt(() => pHOf(request)).ok).toBe(served);
    if (!served)
      expect(refused(request)).toMatchObject({
        code: "aqueous.outside-range",
        details: { celsius: Number.parseFloat(temperature), from: 5, to: 60 },
      });
  });

  it.each([
    [-1, true],
    [-1.01, false],
    [15, true],
    [15.01, false],
  ])("a pH of %d is held: %s", (pH, served) => {
    const request = { water: "1 kg", dissolved: [], pH, activity: "ideal" } as const;
    expect(attempt(() => aqueousComposition(request)).ok).toBe(served);
    if (!served) expect(refused(request)).toMatchObject({ code: "aqueous.outside-range", details: { argument: "pH" } });
    else expect(aqueousComposition(request).pH.toNumber()).toBeCloseTo(pH, 9);
  });

  it("takes a held pH as number, text or value with its unit", () => {
    for (const pH of [4, "4", quantity("4"), { value: "4", unit: "" }])
      expect(aqueousComposition({ water: "1 kg", dissolved: [], pH: pH as never }).pH.toNumber()).toBeCloseTo(4, 9);
    expect(
      aqueousComposition({ water: "1 kg", dissolved: [], pH: quantity("4.00(5)") }).pH.standardUncertainty!.toNumber(),
    ).toBeCloseTo(0.05, 9);
  });

  it("says what it assumed: litres, what holds the pH, carbon dioxide where there is carbonate", () => {
    const of = (request: Partial<AqueousRequest>) =>
      aqueousComposition({ water: "1 kg", dissolved: [], ...request }).assumptions.join("\n");
    expect(of({})).not.toMatch(/litre|holds the pH|carbon dioxide/);
    expect(of({ water: "1 L" })).toContain("a litre counts as a kilogram of water");
    const poured = { formula: "HCl", concentration: "0.1 mol/L", volume: "1 L" } as const;
    expect(of({ dissolved: [poured] })).toContain("a litre counts as a kilogram of water");
    // said once, however many litres are poured
    expect(of({ water: "1 L", dissolved: [poured, poured] }).match(/a litre counts/g)).toHaveLength(1);
    expect(of({ dissolved: [poured, poured] }).match(/a litre counts/g)).toHaveLength(1);
    expect(of({ pH: 4 })).toContain("what holds the pH brings no counter-ion");
    const soda = [{ formula: "Na2CO3", amount: "0.01 mol" }] as const;
    expect(of({ dissolved: soda })).toContain("carbon dioxide stays in solution up to 1 atm");
    expect(of({ dissolved: soda, carbonDioxide: "leaves" })).toContain("leaves until it is at the 420 ppm of air");
    expect(of({ dissolved: soda, carbonDioxide: "open air" })).toContain("in exchange with air of 420 ppm");
    expect(of({ dissolved: soda, carbonDioxide: { pressure: "50 kPa" } })).toContain("carbon dioxide held at 50 kPa");
    expect(of({ activity: "ideal" })).toContain("activities equal molalities");
    expect(of({})).toContain("activity coefficients by Davies");
  });

  it("names the constants without a heat of reaction away from 25 °C, six at most and how many more", () => {
    const hot = litre({ CuSO4: 0.05, NH3: 0.3 }, { temperature: "40 °C" }).assumptions.join("\n");
    expect(hot).toMatch(
      /constants of 25 °C are used where the heat of reaction is not known: (?:[^,]+, ){5}[^,]+ and \d+ more/,
    );
    expect(litre({ CuSO4: 0.05, NH3: 0.3 }).assumptions.join()).not.toContain("constants of 25 °C");
    const own = litre({}, { temperature: "40 °C", constants: { only: true, pKa: { CH3COOH: 4.76 } } }).assumptions;
    expect(own.join("\n")).not.toContain("more");
  });
});

describe("what carbon dioxide may do", () => {
  // log10 of the pressure of what stands: pH 2 × , all else alike; Henry's law at 0.4 and 1 atm and at the 420 ppm of air
  const henry = (carbonDioxide: AqueousRequest["carbonDioxide"]): number =>
    litre({}, {
      carbonDioxide,
      activity: "ideal",
      constants: { only: true, pKH: { CO2: 1.47 }, pKa: { H2CO3: [6.35, 10.33] } },
    } as never)
      .species.find(({ formula }) => formula === "H2CO3" || formula === "CO2")!
      .molality.toNumber("mol/kg");

  it("stands at a pressure: molality is the pressure in atm × 10^-pKH", () => {
    expect(henry({ pressure: "101.325 kPa" }) / 10 ** -1.47).toBeCloseTo(1, 6);
    expect(henry({ pressure: "40.53 kPa" }) / 10 ** -1.47).toBeCloseTo(0.4, 6);
    expect(henry("open air") / 10 ** -1.47 / 4.2e-4).toBeCloseTo(1, 6);
  });

  it.each(["open air", "leaves", "kept"] as const)("is asked by word: %s", (carbonDioxide) => {
    // soda airs to hydrogencarbonate, takes up gas from the air, or keeps all it has
    const c = litre({ NaHCO3: 0.1 }, { carbonDioxide });
    const gas = c.gas.reduce((sum, { amount }) => sum + amount.toNumber("mol"), 0);
    if (carbonDioxide === "kept") expect(gas).toBe(0);
    else expect(gas).toBeGreaterThan(0.01);
    const lye = litre({ NaOH: 0.1 }, { carbonDioxide }).gas.reduce((sum, one) => sum + one.amount.toNumber("mol"), 0);
    if (carbonDioxide === "open air") expect(lye).toBeLessThan(-0.05);
    else expect(lye).toBe(0);
  });

  it("is refused by any other word", () => {
    expect(refused({ water: "1 kg", dissolved: [], carbonDioxide: "gone" })?.code).toBe("aqueous.bad-option");
    expect(refused({ water: "1 kg", dissolved: [], carbonDioxide: { pressure: "0 kPa" } })?.code).toBe(
      "aqueous.not-positive",
    );
  });
});

describe("which solids may form", () => {
  it("at once, by standing, or with changes: by formula, by form, or only those", () => {
    const lime = { CaCl2: 0.1, Na2CO3: 0.1 };
    const alumina = { AlCl3: 0.1, NaOH: 0.3 };
    expect(litre(alumina).solids.map(({ form }) => form)).toEqual(["amorphous, fresh"]);
    expect(litre(alumina, { solids: "fresh" }).solids.map(({ form }) => form)).toEqual(["amorphous, fresh"]);
    expect(litre(alumina, { solids: "aged" }).solids.map(({ form }) => form)).toEqual(["gibbsite, crystalline"]);
    expect(litre(alumina, { solids: { allow: ["gibbsite"] } }).solids.map(({ form }) => form)).toEqual([
      "gibbsite, crystalline",
    ]);
    expect(solids(litre(lime, { solids: { exclude: ["CaCO3"] } }))).not.toContain("CaCO3");
    // the same composition in another spelling
    expect(solids(litre(lime, { solids: { exclude: ["CO3Ca"] } }))).not.toContain("CaCO3");
    expect(litre(lime, { solids: { exclude: ["calcite"] } }).solids.map(({ form }) => form)).not.toContain("calcite");
    expect(solids(litre(lime, { solids: { only: [] } }))).toEqual([]);
    expect(litre(lime, { solids: { only: ["aragonite"] } }).solids.map(({ form }) => form)).toEqual(["aragonite"]);
    expect(litre(lime, { solids: { only: ["CaCO3 (aragonite)"] } }).solids.map(({ form }) => form)).toEqual([
      "aragonite",
    ]);
  });

  it("tells of each that is left out why", () => {
    const why = (mixture: Readonly<Record<string, number>>, formula: string, more: Partial<AqueousRequest> = {}) =>
      litre(mixture, more)
        .saturation.filter((one) => one.formula === formula && one.state === "excluded")
        .map((one) => one.why);
    const lime = { CaCl2: 0.1, Na2CO3: 0.1 };
    expect(why(lime, "CaCO3")).toContain("forms from 60 °C on");
    expect(why(lime, "CaCO3", { temperature: "60 °C" })).not.toContain("forms from 60 °C on");
    expect(why(lime, "CaCO3", { solids: { exclude: ["CaCO3"] } })).toContain("excluded by request");
    expect(why(lime, "CaCO3", { solids: { only: [] } })).toContain("not asked for");
    expect(why({ MgSO4: 0.3, Na2CO3: 0.3 }, "MgCO3·5H2O")).toEqual(["forms below 10 °C"]);
    expect(why({ MgSO4: 0.3, Na2CO3: 0.3 }, "MgCO3·5H2O", { temperature: "10 °C" })).toEqual(["forms below 10 °C"]);
    expect(why({ MgSO4: 0.3, Na2CO3: 0.3 }, "MgCO3·5H2O", { temperature: "9.9 °C" })).toEqual([]);
    expect(why({ MgSO4: 0.3, Na2CO3: 0.3 }, "MgCO3")).toEqual(["not met at the bench"]);
    expect(why({ AlCl3: 0.1, NaOH: 0.3 }, "Al(OH)3")).toEqual(["forms by standing for hours or longer"]);
    expect(why({ AlCl3: 0.1, NaOH: 0.3 }, "Al(OH)3", { solids: "aged" })).toEqual([]);
    expect(why({ LiCl: 0.1, Na2CO3: 0.1 }, "Li2CO3").join()).toMatch(/^$|its solubility curve serves/);
  });

  it("has every solid of the table that its ions make among what was considered, once for each row", () => {
    const c = litre({ MgSO4: 0.1, Na2CO3: 0.1, CaCl2: 0.1 });
    const wanted = SOLUBILITY_PRODUCTS().filter(({ solid }) => /^(Ca|Mg)CO3(·|$)/.test(solid));
    expect(wanted.length).toBeGreaterThan(4);
    for (const { solid, form } of wanted)
      expect(
        c.saturation.filter((one) => one.formula === solid && one.form === form),
        `${solid} ${form}`,
      ).toHaveLength(1);
  });

  it("is refused by any other word or field", () => {
    for (const wrong of ["old", { allow: "CaCO3" }, { exclude: "CaCO3" }, { only: "CaCO3" }])
      expect(refused({ water: "1 kg", dissolved: [], solids: wrong })?.code, String(wrong)).toBe("aqueous.bad-option");
    expect(refused({ water: "1 kg", dissolved: [], solids: { without: [] } })?.code).toBe("aqueous.unknown-option");
    expect(refused({ water: "1 kg", dissolved: [], activity: "Pitzer" })?.code).toBe("aqueous.bad-option");
    expect(refused({ water: "1 kg", dissolved: "salt" })?.code).toBe("aqueous.bad-option");
    expect(refused({ dissolved: [] })?.code).toBe("aqueous.missing-option");
  });
});

describe("the uncertainty budget of a beaker", () => {
  it("calls what was put in as the caller does", () => {
    const inputs = (dissolved: AqueousRequest["dissolved"]) =>
      uncertaintyBudget(aqueousComposition({ water: quantity("1.00(1) L", { label: "my flask" }), dissolved }).pH).map(
        ({ input }) => input,
      );
    const amount = quantity("0.10(1) mol", { label: "my vinegar" });
    const concentration = quantity("0.10(1) mol/L", { label: "as titrated" });
    expect(inputs([{ formula: "CH3COOH", amount }])).toEqual(expect.arrayContaining(["my vinegar", "my flask"]));
    expect(inputs([{ formula: "CH3COOH", concentration }])).toEqual(
      expect.arrayContaining(["as titrated", "my flask"]),
    );
  });
});
