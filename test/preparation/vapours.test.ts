// What boils lower than water leaves a warm liquor: it is in the vapour of that step, and not in the filtrate.
import { benchSheet, cautions, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const alum = planPreparation({
  equation: "K2Cr2O7 + H2SO4 + C2H5OH + H2O -> KCr(SO4)2·12H2O + CH3CHO",
  product: "KCr(SO4)2·12H2O",
  materials: [
    { name: "dichromate", form: "K2Cr2O7" },
    { name: "acid", form: "H2SO4", strength: "96 %" },
    { name: "spirit", form: "C2H5OH", strength: "95 %", excess: "10 %" },
  ],
  scale: { material: "dichromate", portion: "9.81 g" },
  acknowledge: ["chromate-organic"],
});

const vapourOf = ({ left }: (typeof alum.steps)[number]) =>
  left.flatMap(({ what, contents }) => (what === "vapour" ? contents.dissolved : []));

describe("a by-product that boils near room temperature", () => {
  it("leaves in the step that warms the liquor, all of it, and says so", () => {
    const step = alum.steps.find((one) => vapourOf(one).some(({ formula }) => formula === "CH₃CHO"))!;
    // 9.81 g / 294.18 g/mol × 3 = 0.1000 mol; 44.05 g/mol
    expect(vapourOf(step)[0]!.amount.toNumber("mol")).toBeCloseTo(0.1, 3);
    // above the 20 °C at which it boils
    expect(step.target!.toNumber("°C")).toBe(40);
    // boiling point: 20 °C, from memory of handbooks
    expect(step.text).toMatch(/4\.4 g of CH₃CHO leaves as vapour \(it boils at 20 °C\): under a hood, no flame near/);
    expect(step.after.dissolved.map(({ formula }) => formula)).not.toContain("CH₃CHO");
  });

  it("is in no filtrate, and where it is at the end is told", () => {
    expect(alum.filtrate?.dissolved.map(({ formula }) => formula) ?? []).not.toContain("CH₃CHO");
    expect(alum.byProducts.find(({ formula }) => formula === "CH₃CHO")!.where).toBe("gas");
  });

  it("has its hazards, a hood and no flame on the sheet", () => {
    // Regulation (EC) No 1272/2008, Annex VI, index 605-003-00-6 as of the 13th adaptation (EU) 2018/1480, from memory
    const [entry] = cautions(["CH3CHO"]).substances;
    expect(entry!.statements.map(({ code }) => code).sort()).toEqual(["H224", "H319", "H335", "H341", "H350"]);
    const sheet = benchSheet(alum);
    expect(sheet).toMatch(/Gas {2,}vapour of CH₃CHO/);
    expect(sheet).toMatch(/no flame or spark near/);
    expect(sheet).toMatch(/hot plate or water bath, no flame/);
    expect(sheet).toMatch(/boils near room temperature, and its\s+vapour burns: under a hood/);
    expect(sheet).not.toMatch(/Filtrate[^.]*CH₃CHO/);
  });

  it("takes the spirit that is left with the first of the steam", () => {
    const gone = alum.steps.flatMap(vapourOf).map(({ formula }) => formula);
    expect(gone).toContain("C₂H₅OH");
    expect(alum.checks.map(({ text }) => text).join("\n")).toMatch(
      /is left over and leaves with the first of the steam/,
    );
  });
});

describe("ammonia in a liquor that is boiled down", () => {
  const salt = planPreparation({
    equation: "NH4Cl + NaOH -> NaCl + NH3 + H2O",
    product: "NaCl",
    materials: [
      { name: "sal ammoniac", form: "NH4Cl" },
      { name: "lye", form: "NaOH" },
    ],
    scale: { material: "sal ammoniac", portion: "20.0 g" },
  });

  it("leaves with the steam", () => {
    const step = salt.steps.find((one) => vapourOf(one).some(({ formula }) => formula === "NH₃"))!;
    // 20.0 g / 53.49 g/mol = 0.374 mol
    expect(vapourOf(step)[0]!.amount.toNumber("mol")).toBeCloseTo(0.374, 3);
    expect(step.text).toMatch(/6\.4 g of NH₃ leaves as vapour: under a hood/);
  });
});
