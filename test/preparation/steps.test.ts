// Whole step lists read as somebody at the bench would: in an order that can be done, with figures that a pencil gives. Molar
// masses are the IUPAC abridged ones; solubilities are those of our table, worked by hand beside each figure.
import { evaluateRun, type PlanRequest, type ProcedureStep, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const plan = (
  equation: string,
  product: string,
  materials: PlanRequest["materials"],
  scale: PlanRequest["scale"],
  more: Partial<PlanRequest> = {},
) => planPreparation({ equation, product, materials, scale, ...more });

type Steps = readonly ProcedureStep[];
const operations = (steps: Steps): string => steps.map((s) => s.operation).join(" ");
const step = (steps: Steps, operation: ProcedureStep["operation"], at = 0): ProcedureStep => {
  const found = steps.filter((s) => s.operation === operation)[at];
  if (found === undefined) throw new Error(`no ${operation} in ${operations(steps)}`);
  return found;
};
const grams = (q: { in(unit: string): { toNumber(): number } } | undefined): number => q!.in("g").toNumber();
const solid = (s: ProcedureStep, formula: string): number =>
  grams(s.after.solids.find((one) => one.formula === formula)?.mass);

describe("a precipitation: basic zinc carbonate from 250.0 g of moss killer, 98 %", () => {
  const { steps, filtrate } = plan(
    "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
    "Zn5(CO3)2(OH)6",
    [
      // the soda first: the order follows from what it is
      { name: "washing soda", form: "Na2CO3·10H2O", excess: "5 %" },
      { name: "moss killer", form: "ZnSO4·7H2O", assay: "98 %" },
    ],
    { material: "moss killer", portion: "250.0 g" },
  );

  it("goes from the zinc in water, through the soda in portions, to the bottle", () => {
    expect(operations(steps)).toBe("weigh weigh dissolve add hold hold filter wash wash dry collect");
    expect(step(steps, "dissolve").materials).toEqual(["moss killer"]);
    expect(step(steps, "add").materials).toEqual(["washing soda"]);
  });

  it("dissolves in 745 g of water: 245.0 / 287.54 = 0.8521 mol, a mole in a kilogram less 7 × 0.8521 × 18.015 = 107.4 g", () => {
    expect(grams(step(steps, "dissolve").amounts[0])).toBeCloseTo(744.6, 0);
  });

  it("gives 12.3 L of CO2 as it is added: 0.6 × 0.8521 mol × 24.05 L/mol at 20 °C, in portions that fit", () => {
    const adding = step(steps, "add");
    expect(adding.text).toMatch(/in at least \d+ portions/);
    expect(adding.text).toContain("12.3 L of CO₂");
    expect(grams(adding.left[0]!.contents.mass)).toBeCloseTo(0.6 * 0.8521 * 44.01, 1);
    expect(adding.cautions.some((one) => one.text.includes("open vessel"))).toBe(true);
    expect(adding.limit!.in("min").toNumber()).toBeGreaterThan(1);
  });

  it("leaves sulfate and the soda over in what passes the filter, and weighs 93.5 g at the end", () => {
    expect(filtrate!.dissolved.map((s) => s.formula)).toEqual(expect.arrayContaining(["Na₂SO₄", "Na₂CO₃"]));
    // a fifth of 0.8521 mol × 548.96 g/mol
    expect(solid(step(steps, "collect"), "Zn₅(CO₃)₂(OH)₆")).toBeCloseTo(93.55, 0);
    expect(step(steps, "wash", 1).text).toContain("for SO₄²⁻ (barium chloride");
    expect(steps.map((s) => s.blank).filter((b) => b !== undefined)).toEqual(
      expect.arrayContaining(["weighed.moss killer", "filtrateVolume", "washes", "tests.lastWash", "dried"]),
    );
  });
});

describe("a neutralisation: Epsom salt from magnesia and 96 % acid", () => {
  const { steps } = plan(
    "MgO + H2SO4 + H2O -> MgSO4·7H2O",
    "MgSO4·7H2O",
    [
      { name: "magnesia", form: "MgO", excess: "5 %" },
      { name: "oil of vitriol", form: "H2SO4", strength: "96 %" },
    ],
    { product: "246.5 g" },
  );

  it("dilutes the acid first, acid into water, and never has water below zero", () => {
    expect(operations(steps)).toBe("weigh weigh dilute add hold heat filter concentrate cool filter hold dry collect");
    const diluted = step(steps, "dilute");
    expect(diluted.text).toMatch(/^Pour the oil of vitriol slowly into \d+ mL of water/);
    // 102.2 g of 96 % acid is diluted to 25 % or less: 102.2 × 0.96 / 0.25 = 392 g in all, 290 g of water and more
    expect(grams(diluted.amounts[0])).toBeGreaterThan(289);
    expect(steps.length, "rows to test").toBeGreaterThan(0);
    for (const s of steps) expect(s.after.water.in("g").toNumber()).toBeGreaterThanOrEqual(0);
  });

  it("dilutes it for a sulfite too: the gas is not the acid's own reduction", () => {
    const own = planPreparation({
      equation: "Na2SO3 + H2SO4 + H2O -> Na2SO4·10H2O + SO2",
      product: "Na2SO4·10H2O",
      materials: [
        { name: "sulfite", form: "Na2SO3" },
        { name: "acid", form: "H2SO4", strength: "96 %" },
      ],
      scale: { material: "sulfite", portion: "20.0 g" },
    }).steps;
    // the acid comes last, from a dropping funnel: the gas goes through a trap
    expect(own.find(({ materials, operation }) => materials[0] === "acid" && operation !== "weigh")!.operation).toBe(
      "dilute",
    );
  });

  it("filters the magnesia over hot: 5 % of a mole is 2.0 g", () => {
    const hot = step(steps, "filter");
    expect(hot.before.temperature.in("°C").toNumber()).toBe(80);
    expect(grams(hot.left[0]!.contents.mass)).toBeGreaterThan(1.9);
    expect(grams(hot.left[0]!.contents.mass)).toBeLessThan(2.2);
  });

  it("stops boiling at 335 g: 120.4 g of MgSO4 with 120.4 / 0.56 = 215 g of water, saturated at 80 °C", () => {
    const down = step(steps, "concentrate");
    expect(grams(down.target)).toBeCloseTo(120.4 + 120.4 / 0.56, 0);
    expect(down.text).toContain("335 g");
  });

  it("crystallises 185 g in ice, at 5 °C: x g of crystals leave 24.9 g in each 100 g of water", () => {
    // dry left = 120.4 - 0.4883 x, water left = 215 - 0.5117 x, ratio 0.249 (22.2 g at 0 °C, 27.7 g at 10 °C):
    // x = (120.4 - 53.5) / (0.4883 - 0.1274) = 185.4
    expect(solid(step(steps, "cool"), "MgSO₄·7H₂O")).toBeCloseTo(185.4, 0);
  });

  it("says acid, magnesia and water of each vessel before and after", () => {
    const adding = step(steps, "add");
    expect(adding.before.dissolved.map((s) => s.formula)).toEqual(["H₂SO₄"]);
    expect(adding.after.dissolved.map((s) => s.formula)).toEqual(["MgSO₄"]);
  });
});

describe("crystals from a feed that hardly dissolves cold: boric acid from 200.0 g of borax", () => {
  const { steps } = plan(
    "Na2B4O7·10H2O + HCl -> H3BO3 + NaCl + H2O",
    "H3BO3",
    [
      { name: "spirits of salt", form: "HCl", strength: "31 %" },
      { name: "borax", form: "Na2B4O7·10H2O" },
    ],
    { material: "borax", portion: "200.0 g" },
  );

  it("works in 543 g of water, not in 12 kg: 129.7 g of boric acid, 23.9 g in 100 g at 80 °C", () => {
    // 200.0 / 381.36 × 4 × 61.83 = 129.7 g; / 0.239 = 542.7 g
    expect(grams(step(steps, "cool").before.water)).toBeCloseTo(542.7, 0);
    // borax itself needs 105.5 / 0.248 - 94.5 = 331 g at 80 °C
    expect(grams(step(steps, "dissolve").amounts[0])).toBeGreaterThan(325);
    expect(grams(step(steps, "dissolve").amounts[0])).toBeLessThan(450);
  });

  it("leaves 5.01 g in each 100 g at 20 °C: 129.7 - 27.2 = 102.5 g of crystals, rinsed with ice water", () => {
    expect(solid(step(steps, "cool"), "H₃BO₃")).toBeCloseTo(102.5, 0);
    expect(step(steps, "rinse").text).toContain("ice-cold water");
    expect(step(steps, "filter").operation).toBe("filter");
  });
});

describe("a salt pair: saltpetre", () => {
  const { steps } = plan(
    "NaNO3 + KCl -> KNO3 + NaCl",
    "KNO3",
    [
      { name: "Chile saltpetre", form: "NaNO3" },
      { name: "potash", form: "KCl" },
    ],
    { material: "Chile saltpetre", portion: "85.0 g" },
  );

  it("boils down, filters the sodium chloride hot, and cools the saltpetre out", () => {
    expect(operations(steps)).toBe(
      "weigh weigh dissolve dissolve concentrate filter cool filter rinse wash concentrate filter cool dry collect",
    );
    // 101.1 / 1.70 = 59.5 g of water at 80 °C just dissolve all the saltpetre, 6 % more passes a filter; 38.0 g in 100 g keep 24.0 g of
    // 58.5 g NaCl, and a quarter of the rest, 8.6 g of water, rinses it: so much less before, 54.4 g, which keeps 20.7 g
    expect(grams(step(steps, "concentrate").after.water)).toBeCloseTo(1.06 * 59.5 - 8.6, 0);
    expect(solid(step(steps, "concentrate"), "NaCl")).toBeCloseTo(58.5 - 20.7, 0);
    // 37.8 g of salt keeps 9.45 g of the 176 g of liquor, 5.4 %; with 8.6 g of water and 3.3 g that this dissolves 21.4 g, of which 9.45 g
    // stays: 98.7 g passes in 0.946 × 54.4 + 0.558 × (2.9 + 8.6) = 57.9 g of water
    expect(solid(step(steps, "cool"), "KNO₃")).toBeCloseTo(98.7 - 0.319 * 57.9, 0);
  });
});

describe("a metal, an acid and an oxidiser: blue vitriol from copper", () => {
  const { steps, gas } = plan(
    "Cu + H2O2 + H2SO4 + H2O -> CuSO4·5H2O",
    "CuSO4·5H2O",
    [
      { name: "peroxide", form: "H2O2", strength: "12 %", excess: "50 %" },
      { name: "copper", form: "Cu", excess: "5 %" },
      { name: "battery acid", form: "H2SO4", strength: "37 %" },
    ],
    { material: "battery acid", portion: "265 g" },
    { acknowledge: ["peroxide-sulfuric"] },
  );

  it("has the metal in the dilute acid and the peroxide last, in portions, cooled", () => {
    expect(operations(steps)).toMatch(/^weigh weigh weigh dilute add add hold heat filter/);
    expect([0, 1].map((at) => step(steps, "add", at).materials[0])).toEqual(["copper", "peroxide"]);
    expect(step(steps, "add", 1).text).toMatch(/portions.*cooling/s);
  });

  it("counts the oxygen of the peroxide over the need: 265 × 0.37 / 98.07 = 1.000 mol, half of it over, a quarter of a mole", () => {
    expect(gas.map((one) => one.formula)).toEqual(["O₂"]);
    expect(gas[0]!.amount.in("mol").toNumber()).toBeCloseTo(0.25, 2);
  });
});

describe("a metal in lye, then acid: alum from foil", () => {
  const { steps } = plan(
    "Al + KOH + H2SO4 + H2O -> KAl(SO4)2·12H2O + H2",
    "KAl(SO4)2·12H2O",
    [
      { name: "acid", form: "H2SO4", strength: "96 %" },
      { name: "foil", form: "Al" },
      { name: "potash lye", form: "KOH" },
    ],
    { material: "foil", portion: "5.0 g" },
  );

  it("puts the foil into the lye, where the hydrogen is given off, and the diluted acid after", () => {
    expect([0, 1].map((at) => step(steps, "add", at).materials)).toEqual([["foil"], []]);
    const [foil, acid] = [step(steps, "add", 0), step(steps, "add", 1)];
    // 5.0 / 26.982 × 3/2 = 0.278 mol of hydrogen, 0.56 g
    expect(grams(foil.left[0]!.contents.mass)).toBeCloseTo(0.278 * 2.016, 2);
    expect(foil.after.dissolved.map((s) => s.formula)).toContain("K[Al(OH)₄]");
    expect(acid.left).toEqual([]);
    expect(acid.after.dissolved.map((s) => s.formula)).toContain("KAl(SO₄)₂");
  });
});

describe("a second solid: copper hydroxide with lime", () => {
  const { steps } = plan(
    "Ca(OH)2 + CuSO4 + H2O -> Cu(OH)2 + CaSO4·2H2O",
    "Cu(OH)2",
    [
      { name: "lime", form: "Ca(OH)2" },
      { name: "blue vitriol", form: "CuSO4·5H2O" },
    ],
    { material: "blue vitriol", portion: "100.0 g" },
    { acknowledge: ["plan.does-not-go"] },
  );

  it("is on the balance with the product: 0.4005 mol are 39.1 g of Cu(OH)2 and 69 g of gypsum, less what water keeps", () => {
    const last = step(steps, "collect");
    expect(solid(last, "Cu(OH)₂")).toBeCloseTo(39.07, 0);
    expect(last.text).toMatch(/and with it 6\d\.\d g of CaSO₄·2H₂O/);
  });
});

describe("a cake that weighs as much as both solids", () => {
  const made = plan(
    "Ca(OH)2 + CuSO4 + H2O -> Cu(OH)2 + CaSO4·2H2O",
    "Cu(OH)2",
    [
      { name: "lime", form: "Ca(OH)2" },
      { name: "blue vitriol", form: "CuSO4·5H2O" },
    ],
    { material: "blue vitriol", portion: "100.0 g" },
    { acknowledge: ["plan.does-not-go"] },
  );

  it("is recognised by its second solid first: 105 g are 39.1 g of Cu(OH)2 and 66 of the 69 g of gypsum", () => {
    expect(evaluateRun(made, { dried: "105.0 g" }).verdict[0]!.code).toBe("second-solid");
  });
});

describe("a kiln: quicklime from 500.0 g of marble, 97 %", () => {
  const { steps } = plan("CaCO3 -> CaO + CO2", "CaO", [{ name: "marble", form: "CaCO3", assay: "97 %" }], {
    material: "marble",
    portion: "500.0 g",
  });

  // to the step of the balance, for the mass decides whether it is fired again
  it("ends at 286.7 g: 485 g give 271.7 g, and 15 g stay unless they are water", () => {
    expect(operations(steps)).toBe("weigh add fire cool collect");
    expect(step(steps, "fire").text).toContain("stands still at 286.7 g, from 500.0 g, with 15.0 g in it");
    expect(step(steps, "fire").text).toContain("(271.7 g if that is only water)");
    expect(step(steps, "collect").text).toContain("slakes");
    expect(step(steps, "cool").text).toContain("closed");
  });
});

describe("a complex with alcohol: cuprammonium sulfate", () => {
  const { steps } = plan(
    "CuSO4·5H2O + NH3 -> [Cu(NH3)4]SO4·H2O + H2O",
    "[Cu(NH3)4]SO4·H2O",
    [
      { name: "spirit", form: "C2H5OH", strength: "94 %", aside: true, portion: "60 mL" },
      { name: "ammonia", form: "NH3", strength: "25 %", excess: "30 %" },
      { name: "blue vitriol", form: "CuSO4·5H2O" },
    ],
    { material: "blue vitriol", portion: "20.0 g" },
  );

  it("adds ammonia to the copper and alcohol before the filter; every bottle is used once", () => {
    expect(step(steps, "dissolve").materials).toEqual(["blue vitriol"]);
    expect([0, 1].map((at) => step(steps, "add", at).materials)).toEqual([["ammonia"], ["spirit"]]);
    const filter = steps.findIndex((s) => s.operation === "filter");
    expect(steps.findIndex((s) => s.materials.includes("spirit") && s.operation === "add")).toBeLessThan(filter);
  });
});

describe("a recrystallisation", () => {
  const { procedure, steps } = plan("KNO3 -> KNO3", "KNO3", [{ name: "saltpetre", form: "KNO3", assay: "95 %" }], {
    material: "saltpetre",
    portion: "100.0 g",
  });

  it("is dissolved in 95 / 1.23 = 77.2 g of water, saturated 15 K below the filter, cooled, filtered; the liquor it keeps tells how pure it is", () => {
    expect(procedure.kind).toBe("crystallisation");
    expect(grams(step(steps, "dissolve").amounts[0])).toBeCloseTo(77.2, 0);
    // in so much water ice brings a tenth of it more: 95 - 0.172 × 77.2 = 81.7 g at 5 °C
    expect(solid(step(steps, "cool"), "KNO₃")).toBeCloseTo(81.7, 0);
    // 5 g of what the pack has besides, in 77.2 g of water: the liquor that the crystals keep has its share of it
    expect(step(steps, "filter").text).toMatch(/with it \d\.\d g of what the packs have besides/);
  });
});

describe("what is kept from air and light (common practice)", () => {
  it("is said where iron(II) is dissolved and where trioxalatoferrate is dried", () => {
    const mohr = plan(
      "FeSO4 + (NH4)2SO4 + H2O -> (NH4)2Fe(SO4)2·6H2O",
      "(NH4)2Fe(SO4)2·6H2O",
      [
        { name: "copperas", form: "FeSO4·7H2O" },
        { name: "ammonium sulfate", form: "(NH4)2SO4" },
      ],
      { product: "39.2 g" },
    );
    // where the water goes in, which the copperas dissolves in after it
    const watered = mohr.steps.find((s) => s.operation === "dissolve")!;
    expect(watered.text).toContain("a few drops of dilute sulfuric acid");
    const green = plan(
      "FeCl3 + K2C2O4 + H2O -> K3[Fe(C2O4)3]·3H2O + KCl",
      "K3[Fe(C2O4)3]·3H2O",
      [
        { name: "iron chloride", form: "FeCl3·6H2O" },
        { name: "oxalate", form: "K2C2O4·H2O" },
      ],
      { product: "9.8 g" },
    );
    expect(step(green.steps, "dry").text).toContain("in the dark");
  });
});

describe("a kiln between two steps", () => {
  it("heats to where the product stands, and tells where it changes again: burnt plaster", () => {
    const { steps } = plan(
      "CaC2O4·H2O -> CaCO3 + CO + H2O",
      "CaCO3",
      [{ name: "oxalate", form: "CaC2O4·H2O" }],
      { material: "oxalate", portion: "14.6 g" },
      { acknowledge: ["poison-gas"] },
    );
    // calcium oxalate loses water first, carbon monoxide by 500 °C, and carbon dioxide only far above (thermal steps)
    expect(step(steps, "fire").text).toMatch(/to \d{3} °C, and not to \d{3} °C, where it changes again/);
    // 14.6 / 146.11 × 100.09
    expect(step(steps, "fire").text).toContain("10.0 g");
  });
});

describe("an acid salt: cream of tartar", () => {
  const bitartrate = (excess: "0 %" | "10 %") =>
    plan(
      "K2CO3 + H2C4H4O6 -> KHC4H4O6 + CO2 + H2O",
      "KHC4H4O6",
      [
        { name: "tartaric acid", form: "H2C4H4O6" },
        { name: "potash", form: "K2CO3", excess },
      ],
      { material: "tartaric acid", portion: "150.0 g" },
    );

  // 69.1 g would be more than the 150.0 g that were asked for can take
  it("lets the base run out, whatever rounding does: 150.0 / 150.09 / 2 × 138.20 = 69.06 g of potash, 69.0 g to take", () => {
    const { weighings, checks } = bitartrate("0 %");
    const potash = weighings.find((w) => w.material === "potash")!;
    expect(potash.portion.format({ decimals: 1, uncertainty: "none" })).toBe("69.0 g");
    expect(weighings[0]!.portion.format({ decimals: 1, uncertainty: "none" })).toBe("150.0 g");
    expect(potash.limiting).toBe(true);
    expect(checks.some((c) => c.text.includes("no excess of potash"))).toBe(true);
  });

  it("says that more base makes another salt", () => {
    expect(bitartrate("10 %").checks.some((c) => c.text.includes("makes another salt of the product"))).toBe(true);
  });
});

describe("one vessel into which everything goes", () => {
  it("is told in the first step", () => {
    const { steps } = plan("KNO3 -> KNO3", "KNO3", [{ name: "saltpetre", form: "KNO3" }], {
      material: "saltpetre",
      portion: "100.0 g",
    });
    // 100 g in 100 / 1.70 = 58.8 g of water, 159 mL at most, and half as much room to stir: 250 mL
    expect(step(steps, "dissolve").text).toContain("(vessel: 250 mL or larger)");
  });
});

describe("what the person asked for", () => {
  it("a feed with its own water, and a scale in moles", () => {
    const { steps, weighings } = plan(
      "BaCl2 + Na2SO4 -> BaSO4 + NaCl",
      "BaSO4",
      [
        { name: "barium chloride", form: "BaCl2·2H2O", dissolve: { water: "400 mL" } },
        { name: "Glauber's salt", form: "Na2SO4·10H2O" },
      ],
      { material: "barium chloride", portion: "0.1 mol" },
    );
    // 0.1 mol × 244.26 g/mol = 24.4 g; its partner 32.2 g is rounded up
    expect(weighings.map((w) => w.portion.format({ decimals: 1, uncertainty: "none" }))).toEqual(["24.4 g", "32.2 g"]);
    expect(grams(step(steps, "dissolve").amounts[0])).toBe(400);
  });

  it("a portion in the unit it was asked in, with the other beside it", () => {
    const { steps } = plan(
      "CaCO3 + HCl -> CaCl2 + CO2 + H2O",
      "CaCl2",
      [
        { name: "chalk", form: "CaCO3", excess: "5 %" },
        { name: "acid", form: "HCl", strength: "10 %" },
      ],
      { material: "acid", portion: "100 mL" },
    );
    const measure = steps.find((s) => s.operation === "weigh" && s.materials[0] === "acid")!;
    // 10 % acid weighs 1.047 g/mL at 20 °C
    expect(measure.text).toMatch(/^Measure 100 mL \(105 g\) of the acid/);
  });
});

describe("spent etchant, which contains acid beside copper", () => {
  const {
    steps,
    weighings,
    gas: all,
  } = plan(
    "CuCl2 + Na2CO3 + H2O -> Cu2(OH)2CO3 + NaCl + CO2",
    "Cu2(OH)2CO3",
    [
      { name: "soda", form: "Na2CO3" },
      { name: "etchant", form: "CuCl2", strength: "13.445 %", also: [{ form: "HCl", share: "3.646 %" }] },
    ],
    { material: "etchant", portion: "100.0 g" },
  );

  it("takes soda for both: 0.1 mol for the copper and 0.05 mol for 0.1 mol of acid, 0.15 × 105.99 = 15.9 g", () => {
    const soda = weighings.find((w) => w.material === "soda")!;
    expect(grams(soda.portion)).toBeGreaterThan(15.89);
    expect(grams(soda.portion)).toBeLessThan(16.05);
  });

  it("gives the gas of both: 0.05 mol each, 4.4 g, and leaves no acid", () => {
    const adding = step(steps, "add");
    const gas = adding.left.reduce((sum, one) => sum + (one.what === "gas" ? grams(one.contents.mass) : 0), 0);
    expect(gas).toBeCloseTo(4.4, 1);
    expect(all.map((one) => one.amount.in("mol").toNumber().toFixed(3))).toEqual(["0.100"]);
    expect(adding.after.dissolved.map((s) => s.formula)).not.toContain("HCl");
    expect(adding.before.dissolved.map((s) => s.formula)).toContain("HCl");
  });
});

describe("a solid that does not stand", () => {
  it("is told in the contents with what stands instead: malachite for copper carbonate (textbooks)", () => {
    const { unknown, steps } = plan(
      "CuSO4 + NaHCO3 -> CuCO3 + Na2SO4 + CO2 + H2O",
      "CuCO3",
      [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "bicarbonate", form: "NaHCO3" },
      ],
      { material: "blue vitriol", portion: "25.0 g" },
      { acknowledge: ["plan.does-not-go"] },
    );
    const said = "by the equilibrium Cu₂(OH)₂CO₃ stands in place of CuCO₃: see whether it goes";
    expect(unknown).toContain(said);
    expect(step(steps, "add").after.unknown).toContain(said);
  });

  it("is silent where the product stands", () => {
    const { steps } = plan(
      "BaCl2 + Na2SO4 -> BaSO4 + NaCl",
      "BaSO4",
      [
        { name: "barium chloride", form: "BaCl2·2H2O" },
        { name: "sulfate", form: "Na2SO4" },
      ],
      { product: "10 g" },
    );
    expect(step(steps, "add").after.unknown).toEqual([]);
    expect(step(steps, "add").after.pH!.in("").toNumber()).toBeGreaterThan(6);
    expect(step(steps, "add").after.pH!.in("").toNumber()).toBeLessThan(8);
  });
});
