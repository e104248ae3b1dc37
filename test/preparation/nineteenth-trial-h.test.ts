// What independent readers objected to in printed sheets, as rules; the preparations are theirs. Facts of the bench are common
// practice, no source.
import { type PlanRequest, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

const BLEACHED: PlanRequest = {
  equation: "MnSO4·H2O + NaOCl + 2 NaOH -> MnO2 + NaCl + Na2SO4 + 2 H2O",
  product: "MnO2",
  materials: [
    { name: "manganese sulfate", form: "MnSO4·H2O", assay: "98 %" },
    { name: "bleach", form: "NaOCl", strength: "6.0 %", excess: "15 %" },
    { name: "caustic soda", form: "NaOH", assay: "98 %", excess: "5 %" },
  ],
  scale: { product: "10.00 g" },
};

describe("the salt against a slime that goes colloidal in its wash", () => {
  const washOf = (request: PlanRequest): string => texts(request).find((text) => text.startsWith("Wash"))!;

  it("is no ammonium salt beside hypochlorite, which makes chloramines of it", () => {
    expect(washOf(BLEACHED)).toMatch(
      /put 1 g of sodium sulfate into each 100 mL of the water, and wash once more without it before the test\.$/,
    );
    expect(washOf(BLEACHED)).not.toContain("ammonium");
  });

  it("is none beside silver, which ammonia makes explosive deposits of", () => {
    const silver = washOf({
      equation: "4 AgNO3 + K4[Fe(CN)6]·3H2O -> Ag4[Fe(CN)6] + 4 KNO3 + 3 H2O",
      product: "Ag4[Fe(CN)6]",
      materials: [
        { name: "silver nitrate", form: "AgNO3" },
        { name: "yellow prussiate", form: "K4[Fe(CN)6]·3H2O", excess: "5 %" },
      ],
      scale: { product: "5 g" },
    });
    expect(silver).toContain("sodium sulfate");
  });

  it("is ammonium acetate, which leaves with the drying, where permanganate made the slime", () => {
    const purple = washOf({
      equation: "KMnO4 + MnSO4 + H2O -> MnO2 + K2SO4 + H2SO4",
      product: "MnO2",
      materials: [
        { name: "potassium permanganate", form: "KMnO4" },
        { name: "manganese sulfate", form: "MnSO4·H2O", excess: "5 %" },
      ],
      scale: { product: "20 g" },
    });
    expect(purple).toMatch(/put 1 g of ammonium acetate into each 100 mL of the water\.$/);
  });
});

describe("the end of manganese dioxide", () => {
  const warmed = (request: PlanRequest): string => texts(request).find((text) => text.startsWith("Warm it to 80 °C"))!;
  const by = (equation: string, oxidiser: PlanRequest["materials"][number]): PlanRequest => ({
    equation,
    product: "MnO2",
    materials: [
      { name: "manganese sulfate", form: "MnSO4·H2O" },
      oxidiser,
      { name: "lye", form: "NaOH", excess: "5 %" },
    ],
    scale: { product: "10.00 g" },
  });

  it("from bleach is that bleach is left after half an hour, and only the manganese salt takes a purple away", () => {
    // 2 % and 5 % of 10 g
    expect(warmed(BLEACHED)).toBe(
      "Warm it to 80 °C and keep it there, covered and stirred, for half an hour and until nothing pale is left in the solid (if the clear liquor turns purple, put in 0.2 g of the manganese sulfate at a time, 0.5 g at most).",
    );
    expect(sheet(BLEACHED)).toMatch(
      /complete when a drop of the clear liquor still turns iodide starch paper blue: where it does not, put in a tenth more of the bleach/,
    );
    expect(sheet(BLEACHED)).not.toMatch(/neither purple|no longer purple/);
    expect(sheet(BLEACHED)).toContain("[ ] iodide starch paper");
  });

  it("from peroxide, which decays on it, is that more of it only foams", () => {
    const peroxide = by("MnSO4·H2O + H2O2 + 2 NaOH -> MnO2 + Na2SO4 + 3 H2O", {
      name: "peroxide",
      form: "H2O2",
      strength: "3 %",
      excess: "20 %",
    });
    expect(warmed(peroxide)).toMatch(/until it is brown-black all through and no more gas rises\.$/);
    expect(sheet(peroxide)).toContain("some drops more of the peroxide foam in it and darken nothing");
  });

  it("from permanganate stays that of its colour", () => {
    const purple = by("2 KMnO4 + 3 MnSO4·H2O + 4 NaOH -> 5 MnO2 + K2SO4 + 2 Na2SO4 + 5 H2O", {
      name: "permanganate",
      form: "KMnO4",
    });
    expect(warmed(purple)).toMatch(
      /until neither purple nor pink is left in the clear liquor \(if it stays purple, put in 0\.2 g of the manganese sulfate at a time\)/,
    );
  });

  it("is not told by the mass: hydroxides that are not oxidised all the way weigh about as much", () => {
    // MnO(OH) 87.945, Mn(OH)2 88.953, MnO2 86.936 g/mol: 10.00 g is 10.12 g and 10.23 g; with 20 % of water 10.23 / 0.8 = 12.8 g
    expect(sheet(BLEACHED)).toContain(
      "10.1 to 12.8 g MnO(OH), or Mn(OH)₂, or as expected: the mass alone does not tell",
    );
  });

  it("of lead dioxide is not told either: 223.2 of 239.2 g/mol is less than 10 % below", () => {
    const lead: PlanRequest = {
      equation: "Pb(CH3COO)2·3H2O + NaClO + 2 NaOH -> PbO2 + NaCl + 2 NaCH3COO + 4 H2O",
      product: "PbO2",
      materials: [
        { name: "sugar of lead", form: "Pb(CH3COO)2·3H2O" },
        { name: "bleach", form: "NaClO", strength: "5 %", excess: "10 %" },
        { name: "caustic soda", form: "NaOH", excess: "5 %" },
      ],
      scale: { product: "10.0 g" },
    };
    // 15.9 g of the acetate, 379.3 g/mol: 10.03 g; PbO 10.03 × 223.2 / 239.2 = 9.36 g; Pb(OH)2 10.03 × 241.2 / 239.2 = 10.1 g
    expect(sheet(lead)).toContain("9.4 to 10.1 g PbO, or Pb(OH)₂, or as expected: the mass alone does not tell");
    expect(sheet(lead)).toMatch(/where it does not, a little more of the bleach is needed/);
  });
});

describe("alum from foil through lye", () => {
  const alum: PlanRequest = {
    equation: "2 Al + 2 KOH + 4 H2SO4 + 22 H2O -> 2 KAl(SO4)2·12H2O + 3 H2",
    product: "KAl(SO4)2·12H2O",
    materials: [
      { name: "aluminium foil", form: "Al", assay: "99 %" },
      { name: "caustic potash", form: "KOH", assay: "85 %", excess: "20 %" },
      { name: "battery acid", form: "H2SO4", strength: "37 %", excess: "10 %" },
    ],
    scale: { product: "30.00 g" },
  };
  const steps = texts(alum);

  it("cools before the acid comes: warmed lye of 70 °C and the rise of 43 K would spit", () => {
    // 80 °C less 43 K is 37 °C, and 30 °C the next ten below
    const acid = steps.find((text) => text.startsWith("Pour the battery acid solution"))!;
    expect(acid).toMatch(/it warms by about 43 K: let the lye cool below 30 °C first, or it spits\.$/);
  });

  it("is judged clear hot, for in the cold its own crystals are the haze", () => {
    // 5.9 g of KAl(SO4)2 in 100 g of water at 20 °C, and the liquor holds 25.8 g
    const at = steps.findIndex((text) => text.startsWith("Warm the liquor to 80 °C"));
    expect(steps[at]).toBe(
      "Warm the liquor to 80 °C, stirring until the white hydroxide that forms at first has dissolved again; only a haze that stays ten minutes there goes with a few drops more of the acid, for colder the white may be KAl(SO₄)₂·12H₂O.",
    );
    expect(steps[at - 1]).toMatch(/^Pour the battery acid solution/);
  });

  it("is made in glass, which both the lye and the hot acid leave alone", () => {
    expect(steps.join(" ")).toContain("in glass, for lye dissolves aluminium, and the hot acid after it steel");
    expect(steps.join(" ")).not.toContain("stainless");
  });
});

describe("crystals whose liquor is nearly full of another salt", () => {
  const ferrioxalate = texts({
    equation: "FeCl3·6H2O + 3 K2C2O4·H2O -> K3[Fe(C2O4)3]·3H2O + 3 KCl + 6 H2O",
    product: "K3[Fe(C2O4)3]·3H2O",
    materials: [
      { name: "etching salt", form: "FeCl3·6H2O", assay: "98 %" },
      { name: "potassium oxalate", form: "K2C2O4·H2O", assay: "99.5 %", excess: "5 %" },
    ],
    scale: { product: "15.00 g" },
  });

  it("cools no further than was counted: in ice potassium chloride would come", () => {
    // 6.8 g of KCl in 24.3 g of water, 28 g in 100 g; 29.6 g is all that water alone keeps at 5 °C (34.2 g at 20 °C), and the
    // potassium of the complex takes from that
    expect(ferrioxalate.join("\n")).toMatch(
      /^Let it cool undisturbed to 20 °C, overnight if there is time, and no colder \(KCl would come with it\): 12\.5 g/m,
    );
  });

  it("is tested for it: nitric acid keeps silver oxalate in solution, and leaves the chloride", () => {
    const at = ferrioxalate.findIndex((text) => /^Test 1 g of the crystals .* for Cl⁻/.test(text));
    expect(ferrioxalate[at]).toMatch(/silver nitrate with dilute nitric acid.*of KCl, twice what the rinse leaves/);
    expect(ferrioxalate[at - 1]).toMatch(/^Rinse the crystals/);
  });

  it("says nothing where ice brings only more of the product", () => {
    const vitriol = texts({
      equation: "CuSO4·5H2O -> CuSO4·5H2O",
      product: "CuSO4·5H2O",
      materials: [{ name: "crude vitriol", form: "CuSO4·5H2O", assay: "98 %" }],
      scale: { material: "crude vitriol", portion: "50.0 g" },
    });
    expect(vitriol.join(" ")).not.toMatch(/no colder|come with it/);
  });
});
