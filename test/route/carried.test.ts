// What a solid brings into the next step beside itself is in the quantities, the contents and the purity of what follows. The law is
// that of conservation of mass; figures by hand from the formulas beside them. All names and packs are invented.
import {
  type Contents,
  evaluateRun,
  findRoutes,
  molarMass,
  type Plan,
  type PlanRequest,
  planPreparation,
  quantity,
  type Route,
  routeFromJSON,
} from "preparative";
import { describe, expect, it } from "vitest";
import { jars } from "./shelves";

const twoSteps = (target: string, ...forms: readonly string[]): Route =>
  findRoutes({ target, shelf: jars(...forms) }).routes.find(({ steps }) => steps.length === 2)!;

const ROUTES = [
  ["zinc acetate by way of the basic carbonate", twoSteps("Zn(CH3COO)2·2H2O", "ZnSO4·7H2O", "Na2CO3", "CH3COOH")],
  ["copper acetate by way of the basic carbonate", twoSteps("Cu(CH3COO)2·H2O", "CuSO4·5H2O", "Na2CO3", "CH3COOH")],
  ["copper chloride by way of the basic carbonate", twoSteps("CuCl2·2H2O", "CuSO4·5H2O", "NaHCO3", "HCl")],
  ["zinc oxide by heat", twoSteps("ZnO", "ZnSO4·7H2O", "Na2CO3")],
  ["magnesium oxide by heat", twoSteps("MgO", "MgSO4·7H2O", "Na2CO3")],
  ["copper oxide from the hydroxide", twoSteps("CuO", "CuSO4·5H2O", "NaOH")],
] as const;

const SULFATE = "Na₂SO₄";
/** Moles of a substance in a vessel, dissolved or not. */
const molesOf = ({ solids, dissolved }: Contents, formula: string): number =>
  [...solids, ...dissolved]
    .filter((one) => one.formula === formula)
    .reduce((all, { amount }) => all + amount.toNumber("mol"), 0);
const gramsOf = ({ solids }: Contents, formula: string): number =>
  solids.filter((one) => one.formula === formula).reduce((all, { mass }) => all + mass.toNumber("g"), 0);
const endOf = ({ steps }: Plan): Contents => steps.at(-1)!.after;
const takenOf = (plan: Plan, name: string) => plan.steps.find(({ vessel }) => vessel === name)!.after;

describe.each(ROUTES)("%s", (_, route) => {
  const [one, two] = route.steps as [Route["steps"][number], Route["steps"][number]];
  const whole = (plan: Plan): number => endOf(plan).mass.toNumber("g");
  const share = gramsOf(endOf(one.plan), SULFATE) / whole(one.plan);
  const portion = two.plan.weighings.find(({ material }) => material === one.product)!.portion.toNumber("g");

  it("takes what the washing left as a material takes what else is in it", () => {
    const material = two.plan.request.materials.find(({ name }) => name === one.product)!;
    expect(material.also!.map(({ form }) => form)).toContain(SULFATE);
    expect(quantity(material.assay as "99 %").toNumber("")).toBeLessThan(1);
    // the purity that the step says is that of its last vessel; a trace of the soda counts to neither
    expect(one.purity!.also[0]!.formula).toBe(SULFATE);
    expect(one.purity!.also[0]!.share.toNumber("")).toBeCloseTo(share, 5);
    const named = one.purity!.also.reduce((all, line) => all + line.share.toNumber(""), 0);
    expect(one.purity!.assay.toNumber("")).toBeCloseTo(1 - named, 9);
  });

  it("conserves the atoms of it from one step to the next, and in all vessels of the next", () => {
    const carried = molesOf(takenOf(two.plan, one.product), SULFATE);
    // n = m w / M
    expect(carried / ((portion * share) / molarMass("Na2SO4").toNumber("g/mol"))).toBeCloseTo(1, 3);
    // every vessel that something leaves: filtrate, wash water, residue, and what stands at the end
    const others = two.plan.steps.flatMap(({ left }) => left.map(({ contents }) => molesOf(contents, SULFATE)));
    const brought = two.plan.request.materials.filter(({ form }) => String(form).includes("SO4"));
    expect(brought).toEqual([]);
    const ends = molesOf(endOf(two.plan), SULFATE) + others.reduce((all, n) => all + n, 0);
    expect(ends / carried).toBeCloseTo(1, 6);
  });

  it("weighs more of it by what is not it", () => {
    const weighed = two.plan.materialBalance.supplied.find(({ material }) => material === one.product)!;
    const M = molarMass(one.product).toNumber("g/mol");
    expect(weighed.amount.toNumber("mol")).toBeCloseTo((portion * one.purity!.assay.toNumber("")) / M, 6);
  });

  it("says of the final product what the last vessel holds", () => {
    const foreign = gramsOf(endOf(two.plan), SULFATE) / whole(two.plan);
    const said = two.purity!.also.find(({ formula }) => formula === SULFATE)?.share.toNumber("") ?? 0;
    // below 0.01 % nothing is said
    if (foreign < 1e-4) expect(said).toBe(0);
    else expect(said).toBeCloseTo(foreign, 5);
  });

  it("survives being written down", () => {
    const again = routeFromJSON(JSON.parse(JSON.stringify(route)));
    expect(JSON.stringify(again.steps[1]!.purity)).toBe(JSON.stringify(two.purity));
    expect(again.steps[1]!.plan.figures()).toEqual(two.plan.figures());
  });
});

it.each(ROUTES.filter(([name]) => name.includes("oxide")))(
  "fires what stays by heat in with the oxide, all the sulfate and no more of it: %s",
  (_, { steps: [one, two] }) => {
    const carried = molesOf(takenOf(two!.plan, one!.product), SULFATE);
    expect(molesOf(endOf(two!.plan), SULFATE)).toBeCloseTo(carried, 12);
    // the oxide is less than the basic carbonate, the salt is not: its share rises
    expect(two!.purity!.assay.compare(one!.purity!.assay)).toBe(-1);
  },
);

/** Basic zinc carbonate washed to a residue, and what is made of it. */
function chain(residue: `${number} %`, next: Omit<PlanRequest, "materials" | "scale">, acid: boolean): readonly Plan[] {
  const first = planPreparation({
    equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
    product: "Zn5(CO3)2(OH)6",
    materials: [
      { name: "moss killer", form: "ZnSO4·7H2O" },
      { name: "washing soda", form: "Na2CO3", excess: "5 %" },
    ],
    scale: { product: "100 g" },
    washing: { residue },
  });
  const vinegar = { name: "vinegar", form: "CH3COOH", strength: "5 %" } as const;
  const materials = [first.asMaterial({ name: "basic zinc carbonate" }), ...(acid ? [vinegar] : [])];
  return [first, planPreparation({ ...next, materials, scale: { product: "50 g" } })];
}

describe("the next plan of a washed solid", () => {
  const RESIDUES = ["10 %", "3 %", "1 %", "0.5 %", "0.1 %", "0.02 %", "0.001 %"] as const;

  it.each([
    [
      "dissolved in vinegar",
      { equation: "Zn5(CO3)2(OH)6 + CH3COOH + H2O -> Zn(CH3COO)2·2H2O + CO2", product: "Zn(CH3COO)2·2H2O" },
      true,
    ],
    ["fired", { equation: "Zn5(CO3)2(OH)6 -> ZnO + CO2 + H2O", product: "ZnO" }, false],
  ] as const)("gives a product that is no less pure for more washing: %s", (_, next, acid) => {
    const all = RESIDUES.map((residue) => {
      const [first, second] = chain(residue, next, acid);
      const { assay = "100 %" } = second!.asMaterial();
      const washes = first!.washing !== undefined && "plan" in first!.washing ? first!.washing.plan.washes : 0;
      const work = second!.steps.map(({ operation }) => operation).join(" ");
      return { washes, work, pure: quantity(assay as "99 %").toNumber("%") };
    });
    // beside 5 % of sulfate the acetate is not evaporated to dryness but leaves a mother liquor, and beside more than a trace it is rinsed: that is other work
    const assays = all.filter(({ work }) => work === all.at(-1)!.work);
    expect(assays.length).toBeGreaterThan(3);
    for (const [i, { washes, pure }] of assays.entries()) {
      if (i === 0) continue;
      expect(washes).toBeGreaterThanOrEqual(assays[i - 1]!.washes);
      expect(pure).toBeGreaterThanOrEqual(assays[i - 1]!.pure - 1e-9);
    }
    expect(assays.at(-1)!.washes).toBeGreaterThan(assays[0]!.washes);
    // crystals leave what is beside them in their liquor; where that is so little that they are not rinsed, less than 0.1 % dries into them
    if (acid) for (const { pure } of assays) expect(pure).toBeGreaterThan(99.9);
    else expect(assays.at(-1)!.pure).toBeGreaterThan(assays[0]!.pure);
  });

  it("is not changed by traces: less than 0.01 % has no name and is not weighed for", () => {
    const [first] = chain("0.001 %", { equation: "Zn5(CO3)2(OH)6 -> ZnO + CO2 + H2O", product: "ZnO" }, false);
    expect(gramsOf(endOf(first!), SULFATE)).toBeGreaterThan(0);
    expect(first!.asMaterial()).toEqual({
      name: "Zn₅(CO₃)₂(OH)₆",
      form: "Zn5(CO3)2(OH)6",
      note: `from ${first!.title}`,
    });
  });

  it("does not make another material the one that runs out: only acid that comes along uses base", () => {
    const request = (also: NonNullable<PlanRequest["materials"][number]["also"]>): PlanRequest => ({
      equation: "Zn5(CO3)2(OH)6 + CH3COOH + H2O -> Zn(CH3COO)2·2H2O + CO2",
      product: "Zn(CH3COO)2·2H2O",
      materials: [
        { name: "basic zinc carbonate", form: "Zn5(CO3)2(OH)6", assay: "99 %", also },
        { name: "vinegar", form: "CH3COOH", strength: "5 %" },
      ],
      scale: { product: "10 g" },
    });
    const [plain, salted] = [request([]), request([{ form: "Na2SO4", share: "1 %" }])].map(planPreparation);
    expect(salted!.materialBalance.limiting).toBe(plain!.materialBalance.limiting);
    expect(salted!.weighings.map(({ portion }) => String(portion))).toEqual(
      plain!.weighings.map(({ portion }) => String(portion)),
    );
  });

  it("keeps what nobody knows unknown: a pack of 90 % lowers what is fired from it, without a name", () => {
    const fired = planPreparation({
      equation: "Zn5(CO3)2(OH)6 -> ZnO + CO2 + H2O",
      product: "ZnO",
      materials: [{ name: "zinc white paste", form: "Zn5(CO3)2(OH)6", assay: "90 %" }],
      scale: { product: "10 g" },
    });
    const { assay, also } = fired.asMaterial();
    // 5 ZnO of 548.96 g: 0.7413 g from each gram; 0.9 × 0.7413 / (0.9 × 0.7413 + 0.1) = 87.0 %
    expect(quantity(assay as "87 %").toNumber("%")).toBeCloseTo(87.0, 1);
    expect(also).toBeUndefined();
  });

  it("stands still at what is known to stay", () => {
    const [, fired] = chain("10 %", { equation: "Zn5(CO3)2(OH)6 -> ZnO + CO2 + H2O", product: "ZnO" }, false);
    const heating = fired!.steps.find(({ operation }) => operation === "fire")!;
    expect(heating.text).toContain(
      `stands still at ${heating.after.mass.format({ decimals: 1, uncertainty: "none" })}`,
    );
  });
});

describe("an assay that a trial titrated", () => {
  const shelf = jars("ZnSO4·7H2O", "Na2CO3", "CH3COOH");
  const target = "Zn(CH3COO)2·2H2O";
  const plain = findRoutes({ target, shelf }).routes[0]!;
  const titrated = (assay: `${number} %`) => {
    const run = evaluateRun(plain.trial.steps[0]!.plan, { dried: "1.90 g", assay });
    return findRoutes({ target, shelf, trials: [run] }).routes[0]!;
  };

  it("is what the next step takes it for", () => {
    const route = titrated("98.5 %");
    const [one, two] = route.steps;
    expect(one!.purity!.assay.toNumber("%")).toBeCloseTo(98.5, 6);
    const material = two!.plan.request.materials.find(({ name }) => name === one!.product)!;
    expect(quantity(material.assay as "98.5 %").toNumber("%")).toBeCloseTo(98.5, 6);
    // what has no name is in the contents as such: 1.5 % less the sulfate
    const taken = takenOf(two!.plan, one!.product);
    const portion = two!.plan.weighings[0]!.portion.toNumber("g");
    const sulfate = one!.purity!.also[0]!.share.toNumber("");
    expect(taken.other.toNumber("g")).toBeCloseTo(portion * (0.015 - sulfate), 4);
  });

  it("makes nothing purer than what is known to be in it", () => {
    const [one] = titrated("100 %").steps;
    expect(one!.purity!.assay.toNumber("")).toBeCloseTo(1 - one!.purity!.also[0]!.share.toNumber(""), 6);
  });
});

it("takes a jar as it is given now, whatever stood under its name before", () => {
  const salts = (also: PlanRequest["materials"][number]["also"]): string => {
    const soda = { name: "soda of this test", form: "Na2CO3", assay: "95 %", also } as const;
    const [route] = findRoutes({ target: "Zn5(OH)6(CO3)2", shelf: [...jars("ZnSO4·7H2O"), soda] }).routes;
    const { washing } = route!.steps[0]!.plan;
    return washing !== undefined && "plan" in washing ? washing.salts.join(" ") : "";
  };
  expect(salts(undefined)).not.toContain("NaCl");
  expect(salts([{ form: "NaCl", share: "4 %" }])).toContain("NaCl");
});
