// What a step makes for the next one and stays dissolved is used as its liquor (common practice: copperas liquor, causticised lye
// and the like are never boiled down for a precipitation). Strength, masses and cost go on from plan to plan.
import {
  benchSheet,
  findRoutes,
  molarMass,
  parseFormula,
  planPreparation,
  quantity,
  routeFromJSON,
  tryPlanPreparation,
} from "preparative";
import { describe, expect, it } from "vitest";
import { jars } from "./shelves";

const first = (target: string, ...forms: readonly string[]) => findRoutes({ target, shelf: jars(...forms) }).routes[0]!;

const COPPERAS = first("FeC2O4·2H2O", "Fe", "H2SO4", "Na2C2O4");
const LYE = first("Cu(OH)2", "Na2CO3", "Ca(OH)2", "CuSO4·5H2O");

describe("an intermediate that stays dissolved", () => {
  it.each([
    ["iron and acid, precipitated with oxalate", COPPERAS, "FeSO₄"],
    ["lime and soda, for its lye", LYE, "NaOH"],
    ["zinc and acid, precipitated with soda", first("Zn5(OH)6(CO3)2", "Zn", "H2SO4", "Na2CO3"), "ZnSO₄"],
    [
      "iron and acid, crystallised with ammonium sulfate",
      first("(NH4)2Fe(SO4)2·6H2O", "Fe", "H2SO4", "(NH4)2SO4"),
      "FeSO₄",
    ],
  ])("is used as its liquor: %s", (_, route, product) => {
    const [one, two] = route.steps;
    expect([one!.kept, one!.product, two!.kept]).toEqual(["liquor", product, "solid"]);
    const operations = one!.plan.steps.map(({ operation }) => operation);
    for (const operation of ["concentrate", "cool", "dry", "rinse"]) expect(operations).not.toContain(operation);
    expect(one!.plan.steps.at(-1)!.text).toContain("is used as it is");
    // where a solid is filtered off its pressed cake keeps 0.75 mL of liquor for each gram, slaked lime 10, of which three rinses of as
    // much leave an eighth (was nothing, and the rinses were not counted); 2 % for vessel and filter
    const held = (one!.plan.steps.find(({ text }) => text.includes("press it"))?.before.solids ?? []).reduce(
      (all, { formula, mass }) => all + (formula === "Ca(OH)₂" ? 10 : 0.75) * mass.toNumber("g"),
      0,
    );
    const liquor = one!.plan.keptLiquor!.volume.toNumber("mL") - 2 * held; // three come in, one stays in the cake
    expect(one!.yield.toNumber()).toBeCloseTo(0.98 * (1 - held / liquor / 8), 3);
    // no crystal water that never was there
    expect(String(two!.equation)).not.toContain(`${product.replace("₄", "4")}.`);
  });

  it("goes on with its strength and its mass", () => {
    for (const { steps } of [COPPERAS, LYE]) {
      const liquor = steps[0]!.plan.keptLiquor!;
      const taken = steps[1]!.plan.weighings.find(({ material }) => material.endsWith(" liquor"))!;
      const told = steps[1]!.plan.request.materials.find(({ name }) => name === taken.material)!;
      expect(quantity(told.strength as "12 %").toNumber("%")).toBeCloseTo(liquor.strength.toNumber("%"), 3);
      // what the next plan pours is what this one gives, less the 2 % that vessel and filter keep; both round to 0.1 g
      const ratio = taken.portion.toNumber("g") / liquor.mass.toNumber("g");
      expect(ratio).toBeGreaterThan(0.96);
      expect(ratio).toBeLessThan(1.0);
      const used = steps[1]!.plan.materialBalance.supplied.find(({ material }) => material === taken.material)!;
      expect(used.amount.toNumber("mol")).toBeCloseTo(
        liquor.amount.times(taken.portion.dividedBy(liquor.mass)).toNumber("mol"),
        5,
      );
    }
  });

  it("is thin enough to stay dissolved in the room: 100 g of water dissolves 26 g of FeSO4 at 20 °C (CRC Handbook)", () => {
    const { keptLiquor } = COPPERAS.steps[0]!.plan;
    const water = keptLiquor!.mass.toNumber("g") * (1 - keptLiquor!.strength.toNumber(""));
    const salt = keptLiquor!.amount.times(molarMass("FeSO4")).toNumber("g");
    expect((100 * salt) / water).toBeLessThan(26);
  });

  it("is no waste", () => {
    expect(COPPERAS.steps[0]!.plan.waste.vessels.map(({ vessel }) => vessel)).toEqual(["residue"]);
    expect(LYE.steps[0]!.plan.waste.volume).toBeUndefined();
  });

  it("loses less, and costs less, than one that is crystallised", () => {
    const equation = "Fe + H2SO4 + 7 H2O -> FeSO4·7H2O + H2";
    const materials = [
      { name: "steel wool", form: "Fe", inExcess: true, excess: "5 %" },
      { name: "battery acid", form: "H2SO4", strength: "37 %", density: "1.28 g/mL" },
    ] as const;
    const crystals = planPreparation({ equation, product: "FeSO4·7H2O", materials, scale: { product: "20 g" } });
    const share = crystals.steps.at(-1)!.after.solids[0]!.mass.toNumber("g") / 20;
    // saturated 10 K below its filter at 60 °C: 10.93 g of FeSO4 in 22.4 g of water (48.8 g in 100 g at 50 °C); at 5 °C, where
    // 100 g keeps 17.9 g, (10.93 - x) / (22.4 - 0.830 x) = 0.179 gives x = 8.1 g, 74 %
    expect(share).toBeCloseTo(0.74, 2);
    expect(COPPERAS.steps[0]!.yield.toNumber()).toBeGreaterThan(share);
  });

  it("is asked for in a plan of its own, and only where something stays dissolved", () => {
    const request = {
      equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
      product: "Zn5(CO3)2(OH)6",
      materials: [
        { name: "moss killer", form: "ZnSO4·7H2O" },
        { name: "washing soda", form: "Na2CO3·10H2O" },
      ],
      scale: { product: "10 g" },
      isolate: false,
    } as const;
    expect(tryPlanPreparation(request)).toMatchObject({ ok: false, error: { code: "plan.request" } });
    const salt = planPreparation({ ...request, product: "Na2SO4" });
    expect(salt.keptLiquor?.formula).toBe("Na₂SO₄");
    expect(salt.isolation.how).toBe("liquor");
  });

  it("survives being written down", () => {
    const again = routeFromJSON(JSON.parse(JSON.stringify(LYE)));
    expect(again.steps.map(({ kept }) => kept)).toEqual(["liquor", "solid"]);
    expect(again.steps.map(({ plan }) => plan.figures())).toEqual(LYE.steps.map(({ plan }) => plan.figures()));
  });

  it("has a sheet that dries nothing", () => {
    const [step] = LYE.steps;
    const text = benchSheet(step!.plan);
    expect(text).toContain("Liquor that is kept");
    expect(text).toContain("mass of the clear liquor");
    expect(text).not.toMatch(/dry product|Drying record|do not warm above/);
    expect(benchSheet(LYE)).toContain("NaOH liquor");
  });
});

describe("what does not crystallise at a bench", () => {
  it.each([
    ["Fe2(SO4)3", ["FeSO4·7H2O", "H2SO4", "H2O2"]],
    ["ZnCl2", ["ZnO", "HCl"]],
    ["KCH3COO", ["K2CO3", "CH3COOH"]],
    ["AlCl3·6H2O", ["Al2(SO4)3·16H2O", "BaCl2·2H2O"]],
  ])("%s is handed out as a solution", (target, forms) => {
    const route = first(target, ...forms);
    expect(route.steps.at(-1)!.kept).toBe("liquor");
    expect(String(route)).toContain("in solution");
    expect(route.steps.at(-1)!.plan.keptLiquor!.strength.toNumber("%")).toBeGreaterThan(5);
  });

  it.each([
    ["Ca(CH3COO)2·2H2O", ["CaCO3", "CH3COOH"], "Ca(CH3COO)2·H2O"],
    ["NaHCOO·2H2O", ["NaHCO3", "HCOOH"], "NaHCOO"],
    ["Co3(PO4)2", ["CoSO4·7H2O", "Na3PO4·12H2O"], "Co3(PO4)2·8H2O"],
  ])("%s is refused for the form that comes, and that is offered", (target, forms, instead) => {
    const { routes, refusals } = findRoutes({ target, shelf: jars(...forms) });
    expect(routes).toEqual([]);
    expect(refusals.find(({ code }) => code === "forms-instead")?.instead).toEqual([instead]);
    expect(first(instead, ...forms).steps.at(-1)!.plan.product.formula).toBe(parseFormula(instead).toUnicode());
  });

  it("works hot where another carbonate would settle in the cold (hydromagnesite from 50 °C on)", () => {
    const [step] = first("Mg5(CO3)4(OH)2·4H2O", "MgSO4·7H2O", "Na2CO3").steps;
    // the plan itself mixes it hot, in a room as any other
    expect(
      step!.plan.steps.some(({ target }) => target?.dimension === "temperature" && target.toNumber("°C") > 89),
    ).toBe(true);
    expect(step!.plan.steps.at(-1)!.after.solids[0]!.formula).toBe("Mg₅(CO₃)₄(OH)₂·4H₂O");
    expect(step!.yield.toNumber()).toBeGreaterThan(0.85);
    expect(benchSheet(step!.plan)).toContain("in the cold another solid settles");
  });
});
