// Salts that turn basic without free acid, and a metal that only warm strong acid dissolves: common practice, no source. Of tin
// and hydrochloric acid encyclopedias say that dilute acid is slow, and of tin(II) chloride that water makes a basic chloride of it.
import { describe, expect, it } from "vitest";
import { type PlanRequest, planPreparation } from "../../src/preparation";
import { TIN_SALT, ZINC_ACETATE } from "../data/common-requests";

const VERDIGRIS: PlanRequest = {
  equation: "CuSO4 + Ca(CH3COO)2 + H2O -> Cu(CH3COO)2·H2O + CaSO4·2H2O",
  product: "Cu(CH3COO)2·H2O",
  materials: [
    { name: "blue vitriol", form: "CuSO4·5H2O" },
    { name: "calcium acetate", form: "Ca(CH3COO)2·H2O" },
  ],
  scale: { product: "20 g" },
};

const textsOf = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const checksOf = (request: PlanRequest): string =>
  planPreparation(request)
    .checks.map(({ text }) => text)
    .join("\n");
const times = (texts: readonly string[], find: RegExp): number => texts.filter((text) => find.test(text)).length;

describe("tin in hydrochloric acid", () => {
  const texts = textsOf(TIN_SALT);

  // warm from the start the acid fumes away before any tin is in it, and cold acid hardly takes it: all of it goes in cold
  it("goes into the acid as strong as it is and cold, and is warmed in it", () => {
    expect(texts.join("\n")).not.toMatch(/into \d+ mL of water|it is then/);
    const put = texts.findIndex((text) =>
      text.startsWith("Put all of the 17.4 g of granulated tin into the cold acid"),
    );
    expect(put).toBeGreaterThan(0);
    expect(texts[put + 1]).toMatch(/^Warm it slowly to 50 to 60 °C.*until no more gas rises/);
  });

  it("zinc goes into diluted acid, cold", () => {
    const zinc = textsOf({
      ...TIN_SALT,
      equation: "Zn + HCl -> ZnCl2 + H2",
      product: "ZnCl2",
      materials: [{ name: "zinc", form: "Zn", excess: "10 %" }, TIN_SALT.materials[1]!],
      isolate: false,
    });
    expect(zinc.join("\n")).toMatch(/it is then 25 %/);
    expect(zinc.join("\n")).not.toMatch(/Warm the contents/);
  });

  it("leaves a liquor that is kept acid with a stated amount, and crystals that no water touches", () => {
    // a twentieth of 32.3 g of acid
    expect(times(texts, /keep it strongly acid.*\(1\.6 g more of the hydrochloric acid first\)/)).toBe(1);
    expect(times(texts, /^Do not rinse, water would turn them basic/)).toBe(1);
    expect(checksOf(TIN_SALT)).not.toMatch(/free of acid/);
    expect(texts.join("\n")).not.toMatch(/alcohol\b(?!: it dissolves)/);
  });
});

describe("an acetate that turns basic", () => {
  it.each([
    ["zinc acetate, which is warmed", ZINC_ACETATE],
    ["copper acetate, which is hot already", VERDIGRIS],
    [
      "zinc acetate without an excess of acid",
      { ...ZINC_ACETATE, materials: ZINC_ACETATE.materials.map(({ excess: _, ...one }) => one) },
    ],
  ] as const)("%s keeps the smell of its acid, said once", (_, request) => {
    expect(times(textsOf(request as PlanRequest), /keep it smelling of acetic acid/)).toBe(1);
    expect(checksOf(request as PlanRequest)).not.toMatch(
      /leaves as the liquor is boiled down|free of acid: it|so that no free acid/,
    );
  });

  it("has the acid that is over for its good, and needs none on top", () => {
    expect(checksOf(ZINC_ACETATE)).toMatch(
      /1\.14 g of CH₃COOH is left free: it keeps the Zn\(CH₃COO\)₂·2H₂O from turning basic/,
    );
    expect(textsOf(ZINC_ACETATE).join("\n")).not.toMatch(/more of the acetic acid first/);
  });

  it("calcium acetate needs none", () => {
    const lime: PlanRequest = {
      ...ZINC_ACETATE,
      equation: "CaCO3 + CH3COOH -> Ca(CH3COO)2·H2O + CO2",
      product: "Ca(CH3COO)2·H2O",
      materials: [{ name: "chalk", form: "CaCO3" }, ZINC_ACETATE.materials[1]!],
    };
    expect(textsOf(lime).join("\n")).not.toMatch(/acetic acid,/);
  });
});
