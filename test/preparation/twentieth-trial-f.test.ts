// What the card of a compound without an entry of its own says.
import { describe, expect, it } from "vitest";
import { type PlanRequest, planPreparation } from "../../src/preparation";
import { benchSheet } from "../../src/sheet";

describe("a product that two groups cover", () => {
  const printed = benchSheet(
    planPreparation({
      equation: "NiSO4 + Na2C2O4 + 2 H2O -> NiC2O4·2H2O + Na2SO4",
      product: "NiC2O4·2H2O",
      materials: [
        { name: "nickel sulfate", form: "NiSO4·6H2O" },
        { name: "sodium oxalate", form: "Na2C2O4" },
      ],
      scale: { product: "10 g" },
    }),
  )
    .toString()
    .replace(/\s+/g, " ");

  // Annex VI of Regulation (EC) No 1272/2008: nickel compounds harm by inhalation and skin, 607-007-00-3 (salts of oxalic acid)
  // H302 and H312
  it("has the statements of both on its card, and says that they are those of groups", () => {
    expect(printed).toMatch(
      /NiC₂O₄·2H₂O Pictogram: [^:]* Hazard: DANGER: .*\(H350i\).*\(H410\)\. Harmful in contact with skin \(H312\)\. Harmful if swallowed \(H302\)\. Taken as for the group: nickel compounds and salts of oxalic acid\./,
    );
  });

  it("has the gravest of them on its label", () => {
    expect(printed).toMatch(/Label -+ NiC₂O₄·2H₂O, mass, date, batch.* DANGER: may cause cancer/);
  });
});

// Common practice, no source: hydrogen fluoride etches silicates, and so does strong lye that is kept hot; dilute acid over does not.
describe("what the work is done in", () => {
  const sheetOf = (request: PlanRequest): string =>
    benchSheet(planPreparation(request)).toString().replace(/\s+/g, " ");
  const plastic =
    /! Fluoride and acid attack glass, porcelain and enamel: all vessels, .* polypropylene, warmed in hot water only/;

  it("is plastic for hydrogen fluoride, said before any is measured", () => {
    const printed = sheetOf({
      equation: "Na2CO3 + 2 HF -> 2 NaF + H2O + CO2",
      product: "NaF",
      materials: [
        { name: "soda", form: "Na2CO3" },
        { name: "hydrofluoric acid", form: "HF", strength: "10 %" },
      ],
      scale: { product: "10 g" },
      acknowledge: ["acid-fluoride"],
    });
    expect(printed).toMatch(plastic);
    expect(printed.search(plastic)).toBeLessThan(printed.search(/Pour the hydrofluoric acid/));
  });

  it("is not said of a neutral fluoride, nor of other acid over", () => {
    for (const request of [
      {
        equation: "CaCl2 + 2 NaF -> CaF2 + 2 NaCl",
        product: "CaF2",
        materials: [
          { name: "calcium chloride", form: "CaCl2·2H2O" },
          { name: "sodium fluoride", form: "NaF" },
        ],
        scale: { product: "10 g" },
      },
      {
        equation: "CaCO3 + 2 HNO3 + 3 H2O -> Ca(NO3)2·4H2O + CO2",
        product: "Ca(NO3)2·4H2O",
        materials: [
          { name: "chalk", form: "CaCO3" },
          { name: "nitric acid", form: "HNO3", strength: "30 %", excess: "5 %" },
        ],
        scale: { product: "20 g" },
      },
    ] as const satisfies readonly PlanRequest[])
      expect(sheetOf(request)).not.toMatch(/attacks? glass/);
  });

  const lye = (water: "50 g" | "200 g"): string =>
    sheetOf({
      equation: "CuSO4 + 2 NaOH -> CuO + Na2SO4 + H2O",
      product: "CuO",
      materials: [
        { name: "copper sulfate", form: "CuSO4·5H2O" },
        { name: "lye", form: "NaOH", dissolve: { water } },
      ],
      scale: { material: "copper sulfate", portion: "24.97 g" },
    });

  // 0.1 mol of copper takes 8.0 g of NaOH: in 50 g of water 14 %, in 200 g 3.8 %
  it("is steel for lye of 8 % and more that is kept hot, glass or steel for thinner", () => {
    expect(lye("50 g")).toContain("in steel where it is kept hot, for so strong it attacks glass as well");
    expect(lye("200 g")).toContain("in glass or stainless steel, for lye dissolves aluminium");
    expect(lye("200 g")).not.toMatch(/attacks? glass/);
  });
});
