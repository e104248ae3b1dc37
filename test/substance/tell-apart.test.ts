import { describe, expect, it } from "vitest";
import { attempt } from "../../src/foundation/error";
import {
  cautions,
  distinguishMaterials,
  pricePerMole,
  shelfMaterialOf,
  shopMaterial,
  usualStrength,
} from "../../src/substance";

const TO_ONE = { decimals: 1, uncertainty: "none" } as const;

describe("telling forms apart", () => {
  // Losses on drying from the formulas, e.g. Na2CO3·10H2O: 180.15/286.14 = 63.0 % (atomic weights, hand calculation).
  it("gives the loss on drying, density and worth of each form", () => {
    const forms = distinguishMaterials("washing soda");
    expect(forms.map((one) => one.lossOnDrying.format(TO_ONE))).toEqual(["63.0 % w/w", "14.5 % w/w", "0.0 % w/w"]);
    expect(forms.map((one) => one.worth.format({ decimals: 2, uncertainty: "none" }))).toEqual([
      "1.00",
      "2.31",
      "2.70",
    ]);
    expect(forms[0]?.density?.toString()).toBe("1.46 g/cm3");
    expect(forms[0]?.dryBy?.toString()).toBe("100 °C");
  });

  it("tells zinc sulfates from iron sulfates sold as moss killer", () => {
    const formulas = distinguishMaterials("moss killer").map((one) => one.formula);
    expect(formulas).toEqual(expect.arrayContaining(["FeSO4·7H2O", "ZnSO4·H2O", "ZnSO4·7H2O"]));
  });

  // 2.00 EUR for 1000 g/286.14 g/mol = 3.495 mol (hand calculation).
  it("prices a mole", () => {
    expect(
      pricePerMole({ formula: "Na2CO3·10H2O", price: "2.00 EUR", size: "1 kg" }).format({
        decimals: 3,
        uncertainty: "none",
      }),
    ).toBe("0.572 EUR/mol");
    const half = pricePerMole({ formula: "Na2CO3", price: "2.00 EUR", size: "1 kg", assay: "50 %" });
    expect(half.format({ decimals: 3, uncertainty: "none" })).toBe("0.424 EUR/mol");
  });
});

describe("a shop candidate as a material of a plan", () => {
  it("carries the middle of the usual range with a rectangular spread", () => {
    const assay = usualStrength(shopMaterial("Epsom salt").candidates[0]!)!;
    expect(assay.in("%").toString()).toBe("99.5");
    // half-width 1.5 over the square root of 3 (JCGM 100, 4.3.7)
    expect(assay.standardUncertainty?.toNumber()).toBeCloseTo(1.5 / Math.sqrt(3), 9);
  });

  it("counts a figure stated as the metal, the oxide or available chlorine as the formula", () => {
    // Cu2(OH)3Cl is 59.51 % Cu, so 50 % Cu is 84.0 % of it (facts of the trade say about 84).
    const oxychloride = shelfMaterialOf(shopMaterial("copper fungicide, oxychloride").candidates[0]!);
    expect(oxychloride.assay?.format(TO_ONE)).toMatch(/^84\.0/);
    // 12 % trade = 12 g Cl2 per 100 mL = 12.6 g NaClO: M(NaClO)/M(Cl2) = 1.0499
    const pool = usualStrength(shopMaterial("pool chlorine, liquid").candidates[0]!)!;
    expect(pool.in("g/L").toFixed(0)).toBe("118");
  });

  it("takes the basis of the label where the formula would come to more than the whole", () => {
    const flakes = shelfMaterialOf(shopMaterial("calcium chloride flakes").candidates[0]!);
    expect(flakes.form).toBe("CaCl2");
    expect(flakes.assay?.format(TO_ONE)).toMatch(/^78\.5/);
  });

  it("says that a strength is not known rather than taking the whole", () => {
    const other = shopMaterial("Epsom salt").candidates.find((one) => one.formula === "MgSO4·H2O")!;
    const outcome = attempt(() => shelfMaterialOf(other));
    expect(!outcome.ok && outcome.error.code).toBe("substance.no-strength");
  });

  it("gives every usual candidate with a known strength a form that cautions know", () => {
    for (const name of ["bleach", "vinegar", "quicklime", "battery acid"])
      for (const candidate of shopMaterial(name).candidates) {
        const outcome = attempt(() => shelfMaterialOf(candidate));
        if (outcome.ok) expect(cautions([outcome.value.form]).substances[0]?.status).toBe("classified");
      }
  });
});
