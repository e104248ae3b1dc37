import { describe, expect, test } from "vitest";
import { attempt } from "../../src/foundation/error";
import { hydrateOf, hydrationNumber, meanHydration, waterContent } from "../../src/hydrate";
import { explain, quantity } from "../../src/quantity";

describe("waters from heating", () => {
  // Classroom worksheet on a public study-help page (figures only): crucible 53.200 g, with hydrate 58.200 g, after 56.396 g.
  test("the worksheet's copper sulfate has five", () => {
    const x = hydrationNumber({ before: "58.200 g", after: "56.396 g", vessel: "53.200 g", anhydrous: "CuSO4" });
    expect(x.waters.in("").toFixed(0)).toBe("5");
    expect(x.formula.toString()).toBe("CuSO4.5H2O");
    expect(x.candidates[0]!.fits).toBe(true);
  });

  test("carry the readability of the balance, and say which whole numbers it allows", () => {
    const at = (readability: string) => (value: string) => ({ value, unit: "g", readability }) as const;
    const coarse = at("0.1");
    const fine = at("0.001");
    const weigh = (g: typeof coarse) =>
      hydrationNumber({ before: g("58.200"), after: g("56.396"), vessel: g("53.200"), anhydrous: "CuSO4" });
    expect(weigh(fine).candidates.filter((c) => c.fits)).toHaveLength(1);
    expect(weigh(coarse).waters.standardUncertainty!.toNumber()).toBeGreaterThan(0.1);
    const fitting = weigh(coarse).candidates.filter((c) => c.fits);
    expect(fitting[0]!.inUncertainties).toBeLessThan(1);
    const plain = hydrationNumber({ before: "58.2 g", after: "56.4 g", vessel: "53.2 g", anhydrous: "CuSO4" });
    expect(plain.candidates[0]!.inUncertainties).toBeUndefined();
  });

  test("count the vessel once: its uncertainty is in both differences", () => {
    const x = hydrationNumber({
      before: "58.200 g",
      after: "56.396 g",
      vessel: { value: "53.200", unit: "g", standardUncertainty: "0.010" },
      anhydrous: "CuSO4",
    });
    // only the residue feels the vessel: u(x)/x = 0.010/3.196, plus the atomic weights
    expect(x.waters.standardUncertainty!.div(x.waters.value).toNumber()).toBeCloseTo(0.01 / 3.196, 4);
  });

  test("rank known forms with fractions of water among the whole numbers", () => {
    const plaster = hydrationNumber({ before: "1.066 g", after: "1.000 g", anhydrous: "CaSO4·2H2O" });
    expect(plaster.formula.toString()).toBe("CaSO4.0.5H2O");
    expect(plaster.candidates[0]!.known).toBe(true);
    const cadmium = hydrationNumber({ before: "1.2305 g", after: "1.000 g", anhydrous: "CdSO4" });
    expect(cadmium.formula.toString()).toBe("3CdSO4.8H2O");
  });

  // By hand, with M from the formulas: 249.68 g of CuSO4·5H2O leave 79.54 g of CuO, 246.47 g of MgSO4·7H2O 40.30 g of MgO,
  // 278.01 g of FeSO4·7H2O 79.84 g of Fe2O3 (half a mole), 146.11 g of CaC2O4·H2O 56.08 g of CaO.
  test.each([
    ["CuSO4", "5.000 g", "1.593 g", "CuSO4.5H2O", "CuO"],
    ["ZnSO4", "5.000 g", "1.415 g", "ZnSO4.7H2O", "ZnO"],
    ["FeSO4", "5.000 g", "1.436 g", "FeSO4.7H2O", "Fe2O3"],
    ["CaC2O4", "3.000 g", "1.1514 g", "CaC2O4.H2O", "CaO"],
  ] as const)(
    "%s that was ignited to its oxide is no hydrate of twenty waters",
    (salt, before, after, formula, oxide) => {
      const x = hydrationNumber({ before, after, anhydrous: salt });
      expect(x.formula.toString()).toBe(formula);
      expect(x.candidates[0]!.residue.toString()).toBe(oxide);
      expect(x.warnings.join()).toContain(`${formula} ignited to ${oxide} fits`);
      expect(x.candidates.find((c) => c.residue.toString() === salt)!.improbable).toMatch(
        /^no form of .* waters is listed$/,
      );
    },
  );

  test("a number of waters that no form comes near is doubted, and a listed one is not", () => {
    // 244.26 g of BaCl2·2H2O leave 208.23 g; barium chloride stays as it is over a burner
    expect(hydrationNumber({ before: "2.4426 g", after: "2.0823 g", anhydrous: "BaCl2" }).warnings).toEqual([]);
    const wrong = hydrationNumber({ before: "10 g", after: "2 g", anhydrous: "BaCl2" });
    expect(wrong.warnings.join()).toContain("improbable");
    expect(wrong.candidates.every((c) => c.improbable !== undefined)).toBe(true);
    const alum = hydrationNumber({ before: "4.744 g", after: "2.582 g", anhydrous: "KAl(SO4)2" });
    expect([alum.formula.toString(), alum.warnings]).toEqual(["KAl(SO4)2.12H2O", []]);
  });

  test("add what a residue still holds", () => {
    const full = hydrationNumber({ before: "249.68 g", after: "159.60 g", anhydrous: "CuSO4" });
    const part = hydrationNumber({
      before: "249.68 g",
      after: "177.62 g",
      anhydrous: "CuSO4",
      residue: "CuSO4·H2O",
    });
    expect(full.waters.in("").toNumber()).toBeCloseTo(5, 2);
    expect(part.waters.in("").toNumber()).toBeCloseTo(5, 2);
    expect(explain(part.waters).steps.at(-1)!.rule).toContain("still in the residue");
  });

  test("find nothing in a dry salt", () => {
    const x = hydrationNumber({ before: "1.000 g", after: "1.000 g", anhydrous: "NaCl" });
    expect(x.waters.isZero()).toBe(true);
    expect(x.formula.toString()).toBe("NaCl");
  });

  test.each([
    [{ before: "1 g", after: "2 g", anhydrous: "CuSO4" }, "hydrate.gained-mass"],
    [{ before: "10 g", after: "5 g", vessel: "5 g", anhydrous: "CuSO4" }, "hydrate.not-positive"],
    [{ before: "10 g", after: "5 g", anhydrous: "CuSO4", residue: "ZnSO4·H2O" }, "hydrate.no-common-part"],
    [{ before: "0 g", after: "0 g", anhydrous: "CuSO4" }, "amount.not-positive"],
    [{ before: "5 g", after: "3 g", anhydrous: "H2O" }, "hydrate.only-water"],
  ] as const)("%o is refused with %s", (experiment, code) => {
    const outcome = attempt(() => hydrationNumber(experiment));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
  });
});

describe("mean water of a weathered salt", () => {
  test("from the assay undoes the water content", () => {
    for (const n of [0.5, 1, 5, 7, 10]) {
      const assay = quantity("1").minus(waterContent(hydrateOf("Na2CO3", n)));
      expect(meanHydration({ salt: "Na2CO3", assay }).waters.in("").toNumber()).toBeCloseTo(n, 10);
    }
  });

  test("from drying and from assay agree", () => {
    const byMass = meanHydration({ salt: "Na2CO3", before: "100 g", after: "60 g" });
    const byAssay = meanHydration({ salt: "Na2CO3", assay: "60 %" });
    expect(byMass.waters.in("").toNumber()).toBeCloseTo(byAssay.waters.in("").toNumber(), 10);
  });

  test("tells between which known forms it lies, and in what share", () => {
    const soda = meanHydration({ salt: "Na2CO3·10H2O", assay: "60 %" });
    expect(soda.between!.less.toString()).toBe("Na2CO3.H2O");
    expect(soda.between!.more.toString()).toBe("Na2CO3.7H2O");
    const mixed =
      soda.between!.shareOfMore.in("").toNumber() * 7 + (1 - soda.between!.shareOfMore.in("").toNumber()) * 1;
    expect(mixed).toBeCloseTo(soda.waters.in("").toNumber(), 10);
    expect(meanHydration({ salt: "Na2CO3", assay: "30 %" }).between).toBeUndefined();
  });

  test("takes the vessel off both weighings", () => {
    const dry = meanHydration({ salt: "Na2CO3", before: "5.00 g", after: "2.90 g" });
    const dish = meanHydration({ salt: "Na2CO3", before: "25.00 g", after: "22.90 g", vessel: "20.00 g" });
    expect(dish.waters.equals(dry.waters)).toBe(true);
    expect(dish.anhydrousFraction.in("%").toString()).toBe("58");
  });

  test("names the sources of the two forms", () => {
    expect(meanHydration({ salt: "Na2CO3", assay: "60 %" }).between!.sources.length).toBeGreaterThan(0);
    const [first] = hydrationNumber({ before: "5.000 g", after: "3.196 g", anhydrous: "CuSO4" }).candidates;
    expect(first!.source).toMatch(/\d{4}/);
  });

  test.each([
    [{ salt: "Na2CO3", assay: "0.001 %" }, "hydrate.water-count"],
    [{ salt: "Na2CO3", assay: "50 %", before: "2 g", after: "1 g" }, "hydrate.too-many-inputs"],
  ] as const)("of %o is refused with %s", (material, code) => {
    const outcome = attempt(() => meanHydration(material));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
    expect(outcome.ok ? undefined : outcome.error.hint).toMatch(/check it|compare the two/);
  });

  test("is refused without figures, or with an assay that is no fraction", () => {
    const nothing = attempt(() => meanHydration({ salt: "Na2CO3" }));
    expect(nothing.ok ? "" : nothing.error.code).toBe("hydrate.missing-input");
    const much = attempt(() => meanHydration({ salt: "Na2CO3", assay: "120 %" }));
    expect(much.ok ? "" : much.error.code).toBe("amount.fraction-above-one");
  });
});
