// A stage before the last feed, metal that hangs in a liquor, and what a kiln leaves: order, tools and cautions of the steps.
// Amounts by hand from molar masses (IUPAC 2021); the rest is common practice, no source.
import { describe, expect, it } from "vitest";
import { type Plan, type PlanRequest, planPreparation } from "../../src/preparation";
import { benchSheet } from "../../src/sheet";

const texts = (plan: Plan): string[] => plan.steps.map(({ text }) => text);
const at = (plan: Plan, words: RegExp): number => texts(plan).findIndex((text) => words.test(text));
const sheet = (plan: Plan): string => benchSheet(plan).toString().replace(/\s+/g, " ");

const aluminate = planPreparation({
  equation: "2 Al + 6 KOH + 6 H2C2O4.2H2O -> 2 K3[Al(C2O4)3].3H2O + 12 H2O + 3 H2",
  product: "K3[Al(C2O4)3].3H2O",
  materials: [
    { name: "aluminium foil", form: "Al", assay: "99 %" },
    { name: "potash flakes", form: "KOH", assay: "90 %" },
    { name: "wood bleach", form: "H2C2O4.2H2O", assay: "99.6 %" },
  ],
  scale: { material: "aluminium foil", portion: "2.73 g" },
});

describe("a metal that goes through lye", () => {
  it("has the acid dissolved hot only when the metal is gone: in its jug it would crystallise meanwhile", () => {
    const acid = at(aluminate, /^Dissolve the wood bleach in a jug of its own .* at 80 °C/);
    expect(acid).toBeGreaterThan(at(aluminate, /^Let it stand until no more gas rises/));
    expect(at(aluminate, /^Pour the wood bleach solution/)).toBe(acid + 1);
  });

  it("waits for each portion to be gone: before the metal starts there is no foam either", () => {
    expect(texts(aluminate).join("\n")).toMatch(
      /foil, with no other metal, paint or grease on it, in at least .* wait until this portion has gone and the foam has subsided/,
    );
  });
});

const BISMUTH: PlanRequest = {
  equation: "2 BiOCl + 3 Fe + 4 HCl -> 2 Bi + 3 FeCl2 + 2 H2O",
  product: "Bi",
  materials: [
    { name: "pearl pigment", form: "BiOCl", assay: "99 %" },
    { name: "steel strip", form: "Fe", assay: "99 %", excess: "100 %" },
    { name: "muriatic acid", form: "HCl", strength: "31 %", excess: "137 %" },
  ],
  scale: { material: "pearl pigment", portion: "20 g" },
};

describe("a strip that hangs in a sour liquor", () => {
  const plan = planPreparation(BISMUTH);
  const printed = sheet(plan);

  it("is bare metal, and its gas comes for hours, not in portions", () => {
    expect(printed).toContain("not cut up, with no other metal, paint or grease on it, and shake it now and then");
    const [hang] = plan.steps.filter(({ text }) => text.startsWith("Hang the"));
    const cautions = hang!.cautions.map(({ text }) => text).join("\n");
    expect(cautions).toContain("gas is given off for hours");
    expect(cautions).not.toContain("in portions");
  });

  it("is washed with the acid of the plan, not with one that nobody has", () => {
    // 60 mL × 1 % = 0.60 g of HCl, 1.94 g of 31 %, at 1.154 g/mL (20 °C) 1.68 mL
    expect(printed).toMatch(/\(1\.7 mL, about 34 drops, of the muriatic acid of 31 % into 60 mL of water;/);
    expect(printed).toContain("[ ] 1.7 mL more of muriatic acid, for 60 mL of wash (step 9; goggles)");
    expect(printed).not.toContain("HCl, 20 % by mass");
  });

  it("has acid put to a liquor that turns milky, before the end is looked for", () => {
    expect(printed).toMatch(
      /where the liquor itself turns milky, put a little more of the muriatic acid to it until it is clear, and test it then; more of the steel strip is needed only where none is left/,
    );
  });

  it("takes acid from the shelf where the pack is dilute", () => {
    const thin = planPreparation({
      ...BISMUTH,
      materials: [...BISMUTH.materials.slice(0, 2), { name: "dilute acid", form: "HCl", strength: "9 %" }],
    });
    expect(sheet(thin)).toContain("of the acid of 20 % into");
  });
});

const WHITES = ["whiting", "tin oxide", "flint"];
const pink = (colour?: string): Plan => {
  const chrome = { name: "chrome oxide", form: colour ?? "", aside: true, portion: "0.80 g" as const };
  return planPreparation({
    equation: "CaCO3 + SnO2 + SiO2 -> CaSnSiO5 + CO2",
    product: "CaSnSiO5",
    materials: [
      ...["CaCO3", "SnO2", "SiO2"].map((form, i) => ({ name: WHITES[i]!, form, assay: "99 %" as const })),
      ...(colour === undefined ? [] : [chrome]),
    ],
    scale: { product: "100 g" },
  });
};

describe("a charge for the kiln", () => {
  it("is ground for a time where all its powders are white, and until no specks show where one is not", () => {
    expect(sheet(pink())).toMatch(/for 20 to 30 minutes, .* until no grit is felt \(alike in colour/);
    expect(sheet(pink("Cr2O3"))).toContain("nothing dusts, until no specks show;");
  });

  it("that may hold chromate has its card, its caution before the cake is touched, and a filter for its wash", () => {
    const printed = sheet(pink("Cr2O3"));
    // Regulation (EC) No 1272/2008, Annex VI, index 024-008-00-9: calcium chromate, Carc. 1B, Acute Tox. 4 (swallowed)
    expect(printed).toMatch(/CaCrO₄ Pictogram: GHS07 GHS08 GHS09 Hazard: DANGER: May cause cancer \(H350\)/);
    expect(printed).toMatch(/With gloves on, for the raw cake may hold chromate .* crush it wet, under a little water/);
    expect(printed).toContain("[ ] filter, funnel and flask");
    expect(sheet(pink())).not.toMatch(/chromate|CaCrO₄/);
  });
});
