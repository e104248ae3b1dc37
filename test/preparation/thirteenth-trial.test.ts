// What a sixth independent reader objected to, of eleven sheets and three refusals, as rules; the preparations are theirs, chosen
// before any sheet was printed. Facts of the bench are common practice, no source; molar masses: IUPAC 2021.
import { type PlanRequest, planPreparation, tryPlanPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const words = (request: PlanRequest): string => texts(request).join("\n");
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

describe("a hexacyanidoferrate that is oxidised in dilute acid", () => {
  const byPermanganate: PlanRequest = {
    equation: "5 K4[Fe(CN)6]·3H2O + KMnO4 + 8 HCl -> 5 K3[Fe(CN)6] + MnCl2 + 6 KCl + 19 H2O",
    product: "K3[Fe(CN)6]",
    materials: [
      { name: "yellow prussiate", form: "K4[Fe(CN)6]·3H2O" },
      { name: "permanganate", form: "KMnO4", excess: "1 %" },
      { name: "dilute acid", form: "HCl", strength: "10 %" },
    ],
    scale: { product: "30 g" },
  };
  const { steps } = planPreparation(byPermanganate);
  const at = (find: RegExp): number => steps.findIndex(({ text }) => find.test(text));

  it("is not warmed before it is neutral, by carbonate, cold", () => {
    const neutral = at(/^Stir in potassium carbonate.*still cold.*pH 8.*hydrogen cyanide/);
    expect(neutral).toBeGreaterThan(0);
    const warmest = steps
      .slice(0, neutral)
      .map(({ vessel, after }) => (vessel === "pot" ? after.temperature.toNumber("°C") : 20));
    expect(Math.max(...warmest)).toBeLessThanOrEqual(20);
    expect(neutral).toBeLessThan(at(/^Warm the liquor to 80 °C/));
  });

  // 30.0 g / 329.2 g/mol / 5 = 0.0182 mol of MnCl2, as much K2CO3 of 138.2 g/mol: 2.5 g, and 0.1 g more for what is left of the rest
  it("takes carbonate for the manganese, which precipitates, and the chloride that this makes is counted where it crystallises", () => {
    const step = steps[at(/^Stir in potassium carbonate/)]!;
    expect(step.amounts[0]!.toNumber("g")).toBeGreaterThan(2.5);
    expect(step.amounts[0]!.toNumber("g")).toBeLessThan(2.8);
    expect(step.after.solids.some(({ formula }) => formula === "MnCO₃")).toBe(true);
    const purity = planPreparation(byPermanganate).crystallising!.parted!.purity.toNumber("%");
    expect(purity).toBeGreaterThanOrEqual(95);
  });

  it("has its end by iron(III), and a hood in words and on the list", () => {
    expect(words(byPermanganate)).toMatch(
      /turns brown, and no longer blue, with a drop of iron\(III\) chloride solution/,
    );
    expect(sheet(byPermanganate)).toContain("[ ] fume hood");
    expect(sheet(byPermanganate)).toMatch(/warm or strong acid sets hydrogen cyanide free from the complex/);
  });

  it("is the same with peroxide; without acid nothing is made neutral", () => {
    const byPeroxide: PlanRequest = {
      equation: "2 K4[Fe(CN)6]·3H2O + H2O2 + 2 HCl -> 2 K3[Fe(CN)6] + 2 KCl + 8 H2O",
      product: "K3[Fe(CN)6]",
      materials: [
        { name: "yellow prussiate", form: "K4[Fe(CN)6]·3H2O" },
        { name: "peroxide", form: "H2O2", strength: "3 %", excess: "10 %" },
        { name: "dilute acid", form: "HCl", strength: "10 %" },
      ],
      scale: { product: "30 g" },
    };
    expect(words(byPeroxide)).toMatch(/Stir in potassium carbonate/);
    const recrystallised: PlanRequest = {
      equation: "K3[Fe(CN)6] -> K3[Fe(CN)6]",
      product: "K3[Fe(CN)6]",
      materials: [{ name: "red prussiate", form: "K3[Fe(CN)6]", assay: "97 %" }],
      scale: { product: "30 g" },
    };
    expect(words(recrystallised)).not.toMatch(/carbonate/);
  });
});

describe("a compound that water does not leave", () => {
  it("has no sheet, whatever is acknowledged, and no route to it is looked for", () => {
    const outcome = tryPlanPreparation({
      equation: "FeCl3·6H2O + 3 KI -> FeI3 + 3 KCl + 6 H2O",
      product: "FeI3",
      materials: [
        { name: "ferric chloride", form: "FeCl3·6H2O" },
        { name: "potassium iodide", form: "KI" },
      ],
      scale: { product: "10 g" },
      acknowledge: ["does-not-go"],
    });
    expect(outcome.ok).toBe(false);
    if (outcome.ok) return;
    expect(outcome.error.code).toBe("plan.does-not-go");
    expect(outcome.error.hint).toMatch(/what does not exist is never planned/);
    expect(outcome.error.hint).not.toMatch(/findRoutes|acknowledge:/);
  });
});

describe("a salt that water makes basic", () => {
  const bismuth: PlanRequest = {
    equation: "2 BiCl3 + 3 Fe -> 2 Bi + 3 FeCl2",
    product: "Bi",
    materials: [
      { name: "bismuth chloride", form: "BiCl3" },
      { name: "iron nails", form: "Fe", excess: "50 %" },
    ],
    scale: { material: "bismuth chloride", portion: "15.4 g" },
  };

  // 15.4 g × 2.5 × 20 % / 36.46 g/mol = 0.211 mol of HCl takes half as much iron of 55.845 g/mol: 5.90 g; the bismuth of 315.34 g/mol
  // takes 15.4 / 315.34 × 3/2 = 0.0733 mol, half as much more is over: 6.14 g
  it("has metal weighed for the acid it is dissolved in, and hydrogen in the books: 0.1056 mol, 2.54 L at 20 °C", () => {
    const plan = planPreparation(bismuth);
    expect(plan.weighings.find(({ material }) => material === "iron nails")!.portion.toNumber("g")).toBeCloseTo(
      12.1,
      0,
    );
    expect(plan.gas.map(({ formula }) => formula)).toEqual(["H₂"]);
    expect(plan.gas[0]!.volume.toNumber("L")).toBeCloseTo(2.54, 2);
    const check = plan.checks.find(({ text }) => text.includes("is weighed for the HCl that the"))!;
    expect(check.figure!.toNumber("g")).toBeCloseTo(5.9, 1);
    expect(words(bismuth)).toMatch(/^Put 38\.5 g of dilute hydrochloric acid \(20 %\) into the vessel/m);
    expect(sheet(bismuth)).toMatch(/the gas burns/i);
  });

  it("keeps its acid in the liquor: of what is over pieces are left", () => {
    const { checks } = planPreparation(bismuth);
    expect(checks.map(({ text }) => text).join("\n")).toMatch(/2\.\d+ g of iron nails is left over/);
  });

  // 10.0 g / 485.07 g/mol takes 3 × 0.0206 = 0.0618 mol of lye, the 25 g of 20 % nitric acid of 63.01 g/mol takes 0.0793 mol
  it("has lye weighed for it: (0.0618 × 1.1 + 0.0793) mol × 40.0 g/mol = 5.9 g", () => {
    const plan = planPreparation({
      equation: "Bi(NO3)3·5H2O + 3 NaOH -> Bi(OH)3 + 3 NaNO3 + 5 H2O",
      product: "Bi(OH)3",
      materials: [
        { name: "bismuth nitrate", form: "Bi(NO3)3·5H2O" },
        { name: "caustic soda", form: "NaOH", excess: "10 %" },
      ],
      scale: { material: "bismuth nitrate", portion: "10.0 g" },
    });
    expect(plan.weighings[1]!.portion.toNumber("g")).toBeCloseTo(5.9, 1);
  });

  it("takes the acid of a pack where there is one, and none where water is to make something else of it", () => {
    const own: PlanRequest = {
      ...bismuth,
      materials: [
        ...bismuth.materials,
        { name: "muriatic acid", form: "HCl", strength: "30 %", portion: "30 g", aside: true },
      ],
    };
    expect(words(own)).not.toMatch(/^Put [\d.]+ g of dilute hydrochloric acid/m);
    const algarot: PlanRequest = {
      equation: "4 SbCl3 + 5 H2O -> Sb4O5Cl2 + 10 HCl",
      product: "Sb4O5Cl2",
      materials: [{ name: "antimony chloride", form: "SbCl3" }],
      scale: { product: "10 g" },
    };
    expect(words(algarot)).not.toMatch(/hydrochloric acid \(20 %\)/);
  });
});

describe("iron alum", () => {
  const alum: PlanRequest = {
    equation: "Fe2(SO4)3·9H2O + (NH4)2SO4 + 15 H2O -> 2 NH4Fe(SO4)2·12H2O",
    product: "NH4Fe(SO4)2·12H2O",
    materials: [
      { name: "ferric sulfate", form: "Fe2(SO4)3·9H2O" },
      { name: "ammonium sulfate", form: "(NH4)2SO4" },
    ],
    scale: { material: "ferric sulfate", portion: "30.0 g" },
  };

  it("is made with much acid in little water, and never above 60 °C", () => {
    const { steps } = planPreparation(alum);
    const text = words(alum);
    expect(text).toMatch(/Put 24\.0 g of dilute sulfuric acid \(20 %\)/);
    expect(text).toMatch(/rusty brown it has too little acid/);
    const from = steps.findIndex(({ text: one }) => one.startsWith("Put 24"));
    expect(Math.max(...steps.slice(from + 1).map(({ after }) => after.temperature.toNumber("°C")))).toBeLessThanOrEqual(
      60,
    );
    const off = steps.find(({ operation }) => operation === "concentrate");
    expect(off === undefined ? 0 : off.before.water.minus(off.after.water).toNumber("g")).toBeLessThan(30);
  });

  it("is no reason for acid where iron(III) hydroxide is to precipitate", () => {
    const hydroxide: PlanRequest = {
      equation: "Fe2(SO4)3·9H2O + 6 NaOH -> 2 Fe(OH)3 + 3 Na2SO4 + 9 H2O",
      product: "Fe(OH)3",
      materials: [
        { name: "ferric sulfate", form: "Fe2(SO4)3·9H2O" },
        { name: "caustic soda", form: "NaOH" },
      ],
      scale: { product: "10 g" },
    };
    expect(words(hydroxide)).not.toMatch(/dilute sulfuric acid \(20 %\)/);
  });
});

describe("strong acid that is warmed", () => {
  it("fumes: a hood from then on, and the time that tin takes", () => {
    const tin: PlanRequest = {
      equation: "Sn + 2 HCl + 2 H2O -> SnCl2·2H2O + H2",
      product: "SnCl2·2H2O",
      materials: [
        { name: "granulated tin", form: "Sn", excess: "20 %" },
        { name: "strong acid", form: "HCl", strength: "36 %" },
      ],
      scale: { product: "40 g" },
    };
    // acid of 36 % boils near 60 °C and of 31 % near 87 °C: it is warmed with the metal in it, and no hotter
    expect(words(tin)).toMatch(/^Warm it slowly to 50 to 60 °C, no hotter,/m);
    expect(words(tin)).toMatch(/some hours to a day, until no more gas rises.*what of it leaves makes no SnCl₂·2H₂O/);
    expect(sheet(tin)).toContain("[ ] fume hood");
  });
});

describe("a complex that is mixed hot", () => {
  // published recipes of K2[Cu(C2O4)2]·2H2O take four oxalates for each copper, twice what the formula has
  it("tells what twice the ligand brings", () => {
    const { feasibility } = planPreparation({
      equation: "CuSO4·5H2O + 2 K2C2O4·H2O -> K2[Cu(C2O4)2]·2H2O + K2SO4 + 5 H2O",
      product: "K2[Cu(C2O4)2]·2H2O",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "potassium oxalate", form: "K2C2O4·H2O", excess: "5 %" },
      ],
      scale: { product: "20 g" },
    });
    expect(feasibility.verdict).toBe("goes in part");
    const more = feasibility.reasons.find(({ code }) => code === "excess")!;
    expect(more.text).toMatch(/^with twice the K₂C₂O₄·H₂O it would be 100 %/);
    expect(more.numbers[0]!.toNumber()).toBeGreaterThan(0.99);
  });
});

describe("a dry product", () => {
  it("takes water again where heat drove it out, and slakes where it is quicklime: the label says so", () => {
    const dried = (equation: string, product: string, form: string): string =>
      sheet({ equation, product, materials: [{ name: "feed", form }], scale: { product: "30 g" } });
    expect(dried("CuSO4·5H2O -> CuSO4 + 5 H2O", "CuSO4", "CuSO4·5H2O")).toMatch(
      /takes water from the air again.*keep tightly closed/,
    );
    expect(dried("CaCO3 -> CaO + CO2", "CaO", "CaCO3")).toMatch(/slakes in air.*keep tightly closed/);
    expect(dried("ZnCO3 -> ZnO + CO2", "ZnO", "ZnCO3")).not.toMatch(/keep tightly closed/);
  });

  it("is not ground where its dust harms for good", () => {
    const again = (form: string): string =>
      sheet({
        equation: `${form} -> ${form}`,
        product: form,
        materials: [{ name: "technical salt", form, assay: "97 %" }],
        scale: { product: "30 g" },
      });
    expect(again("K2Cr2O7")).toContain("do not grind it");
    expect(again("KNO3")).not.toContain("do not grind it");
  });
});
