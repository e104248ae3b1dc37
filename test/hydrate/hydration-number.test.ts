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

describe("candidates", () => {
  const rows = (experiment: Parameters<typeof hydrationNumber>[0]): string[] =>
    hydrationNumber(experiment).candidates.map(
      (c) =>
        `${c.formula} to ${c.residue}: loses ${c.expectedLoss.format({ decimals: 2, uncertainty: "none" })}` +
        `${c.known ? ", listed" : ""}${c.fits ? ", fits" : ""}${c.improbable === undefined ? "" : ", improbable"}`,
    );

  // n M(H2O) / (M + n M(H2O)) with M(CuSO4) 159.602, M(CuO) 79.545, M(CdSO4) 208.471, M(H2O) 18.015 (IUPAC 2021)
  test("are the whole numbers around and the known forms near, nearest first, with the loss each would have", () => {
    expect(rows({ before: "5.000 g", after: "3.196 g", anhydrous: "CuSO4" })).toEqual([
      "CuSO4.5H2O to CuSO4: loses 36.08 % w/w, listed, fits",
      "CuSO4.4H2O to CuSO4: loses 31.11 % w/w",
      "CuSO4.6H2O to CuSO4: loses 40.38 % w/w, improbable",
      "CuSO4.7H2O to CuSO4: loses 44.14 % w/w, improbable",
    ]);
    expect(rows({ before: "7.695 g", after: "6.254 g", anhydrous: "CdSO4" })).toEqual([
      "3CdSO4.8H2O to CdSO4: loses 18.73 % w/w, listed, fits",
      "CdSO4.2H2O to CdSO4: loses 14.74 % w/w",
      "CdSO4.H2O to CdSO4: loses 7.95 % w/w, listed",
      "CdSO4.3H2O to CdSO4: loses 20.59 % w/w, fits, improbable",
      "CdSO4.4H2O to CdSO4: loses 25.69 % w/w, improbable",
    ]);
  });

  // 249.677 g of CuSO4·5H2O leave 79.545 g of CuO: 68.14 % goes
  test("that went on to the oxide come first where no number of waters is believed, unless the residue was said", () => {
    const ignited = { before: "5.000 g", after: "1.593 g", anhydrous: "CuSO4" } as const;
    expect(rows(ignited)[0]).toBe("CuSO4.5H2O to CuO: loses 68.14 % w/w, listed, fits");
    expect(hydrationNumber(ignited).warnings).toEqual([
      "CuSO4.19H2O dried to CuSO4 is improbable: no form of CuSO4 with more than 5 waters is listed; " +
        "CuSO4.5H2O ignited to CuO fits",
    ]);
    const said = hydrationNumber({ ...ignited, residue: "CuSO4" });
    expect(said.candidates.every((c) => c.residue.toString() === "CuSO4")).toBe(true);
    expect(said.candidates).toHaveLength(4);
    expect(said.formula.toString()).toBe("CuSO4.19H2O");
    expect(said.warnings).toEqual(["CuSO4.19H2O is improbable: no form of CuSO4 with more than 5 waters is listed"]);
  });

  // 392.1 g of Mohr's salt leave half a mole of Fe2O3, 79.84 g; 245.1 g of Mn(CH3COO)2·4H2O a third of Mn3O4, 76.27 g
  test("know the oxide that ignition in air leaves, and that ammonium leaves none", () => {
    expect(rows({ before: "3.9214 g", after: "0.7984 g", anhydrous: "(NH4)2Fe(SO4)2" })[0]).toBe(
      "(NH4)2Fe(SO4)2.6H2O to Fe2O3: loses 79.64 % w/w, listed, fits",
    );
    expect(rows({ before: "2.4509 g", after: "0.7627 g", anhydrous: "Mn(CH3COO)2" })[0]).toBe(
      "Mn(CH3COO)2.4H2O to Mn3O4: loses 68.88 % w/w, listed, fits",
    );
  });

  test("of a salt without a listed hydrate are doubted from the thirteenth water on", () => {
    // 74.548 g of KCl with 12 or 13 waters of 18.015 g
    const at = (n: number) => {
      const before = { value: (74.548 + n * 18.015).toFixed(3), unit: "g" } as const;
      return hydrationNumber({ before, after: "74.548 g", anhydrous: "KCl" });
    };
    const rare = "hydrates of more than 12 waters are rare, and none of KCl is listed";
    expect(at(12).warnings).toEqual([]);
    expect(
      at(13)
        .candidates.slice(0, 3)
        .map((c) => `${c.formula} ${c.improbable ?? ""}`),
    ).toEqual(["KCl.12H2O ", `KCl.13H2O ${rare}`, `KCl.14H2O ${rare}`]);
    expect(at(15).warnings).toEqual([`KCl.15H2O is improbable: ${rare}`]);
  });

  // with u(m) = 1 mg on both masses: u(x)/x of the ratio 1.804/3.196 is about 8e-4, of which two make 0.008 waters
  test("fit within two standard uncertainties of the weighings", () => {
    const weighed = hydrationNumber({ before: "5.000 ± 0.001 g", after: "3.196 ± 0.001 g", anhydrous: "CuSO4" });
    const u = weighed.waters.standardUncertainty!.toNumber();
    for (const c of weighed.candidates) {
      expect(c.inUncertainties).toBeCloseTo(c.deviation / u, 9);
      expect(c.deviation).toBeCloseTo(weighed.waters.toNumber("") - c.waters.valueOf(), 9);
      expect(c.fits).toBe(Math.abs(c.deviation) <= 2 * u);
    }
    expect(weighed.candidates.filter((c) => c.fits)).toHaveLength(1);
  });
});

describe("heating that cannot have been so", () => {
  test.each([
    [
      { before: "1 g", after: "2 g", anhydrous: "CuSO4" },
      "it weighs more after heating: 1 g before, 2 g after",
      "check the order of the weighings; a salt that oxidises or absorbs carbon dioxide gains mass",
      { before: "1 g", after: "2 g" },
    ],
    [
      { before: "10 g", after: "5 g", vessel: "5 g", anhydrous: "CuSO4" },
      "nothing is left: 5 g after heating in a vessel of 5 g",
      undefined,
      { after: "5 g", vessel: "5 g" },
    ],
    [
      { before: "10 g", after: "5 g", anhydrous: "CuSO4", residue: "ZnSO4·H2O" },
      "ZnSO4.H2O is not a form of CuSO4",
      undefined,
      { residue: "ZnSO4·H2O", anhydrous: "CuSO4" },
    ],
    [
      { before: "10 g", after: "0.0001 g", anhydrous: "CuSO4" },
      "886000 waters for each CuSO4: no salt contains so many",
      "check the weighings: most of what was weighed went away on heating",
      expect.objectContaining({ waters: expect.stringMatching(/^8859\d\d/) }),
    ],
  ] as const)("is refused: %o", (experiment, message, hint, details) => {
    const outcome = attempt(() => hydrationNumber(experiment));
    const error = outcome.ok ? undefined : outcome.error;
    expect(error?.message).toContain(message);
    expect(error?.hint).toBe(hint);
    expect(error?.details).toEqual(details);
  });
});

describe("the working of waters", () => {
  // 5.000 - 3.557 = 1.443 g of water, / 18.015 g/mol, for 3.557 g / 177.617 g/mol of the monohydrate, and the one it keeps: 4.9997
  test("names each weighing, the residue without its vessel, and the water that stayed", () => {
    const x = hydrationNumber({
      before: "58.200 g",
      after: "56.757 g",
      vessel: "53.200 g",
      anhydrous: "CuSO4",
      residue: "CuSO4·H2O",
    }).waters;
    expect(x.toNumber("")).toBeCloseTo((5 - 3.557) / 18.015 / (3.557 / 177.617) + 1, 9);
    const { steps, given } = explain(x);
    const rules = new Map(steps.map((step) => [step.symbol, step.rule]));
    expect(rules.get("m(H₂O)")).toBe("water lost = mass before - mass after");
    expect(rules.get("n(H₂O)")).toBe("amount of water = water lost / molar mass");
    expect(rules.get("m(residue)")).toBe("residue = mass after heating - vessel");
    expect(rules.get("n(CuSO₄)")).toBe("amount of salt = residue / molar mass");
    expect(rules.get("x")).toBe("waters = n(H₂O) / n(CuSO₄) + 1 still in the residue");
    const labels = given.map(({ symbol, label }) => `${symbol}: ${label}`);
    expect(labels).toEqual(
      expect.arrayContaining(["m1: mass before heating", "m2: mass after heating", "m0: empty vessel"]),
    );
  });

  test("says nothing of a residue or a vessel that were not there", () => {
    const { steps } = explain(hydrationNumber({ before: "5.000 g", after: "3.196 g", anhydrous: "CuSO4" }).waters);
    expect(steps.at(-1)!.rule).toBe("waters = n(H₂O) / n(CuSO₄)");
    expect(steps.some((step) => step.symbol === "m(residue)")).toBe(false);
  });

  // a third of the mass of 3CdSO4·8H2O goes with one CdSO4: 6.254 g of the salt and 1.441 g of water, 2.667 waters
  test("counts a residue that is written for several units by one of them", () => {
    const all = hydrationNumber({
      before: "7.6953 g",
      after: "7.6953 g",
      anhydrous: "CdSO4",
      residue: "3CdSO4·8H2O",
    });
    expect(all.waters.toNumber("")).toBeCloseTo(8 / 3, 12);
    const half = hydrationNumber({
      before: "8.6953 g",
      after: "7.6953 g",
      anhydrous: "CdSO4",
      residue: "3CdSO4·8H2O",
    });
    expect(half.waters.toNumber("")).toBeCloseTo(8 / 3 + 1 / 18.015 / (7.6953 / 256.51), 9);
  });
});

describe("the working of mean water", () => {
  test("gives the rule for waters, share and dry part", () => {
    const { waters, between } = meanHydration({ salt: "Na2CO3", assay: "60 %" });
    // 105.9875 (1/0.6 - 1) / 18.015, and (3.922 - 1) / (7 - 1) of the salt as heptahydrate
    expect(waters.toNumber("")).toBeCloseTo((105.98753856 * (1 / 0.6 - 1)) / 18.015, 9);
    expect(between!.shareOfMore.toNumber("")).toBeCloseTo((3.922196 - 1) / 6, 6);
    const last = explain(waters).steps.at(-1)!;
    expect([last.symbol, last.rule]).toEqual(["x", "mean waters = M(salt) (1/w - 1) / M(H₂O)"]);
    const share = explain(between!.shareOfMore).steps.at(-1)!;
    expect([share.symbol, share.rule]).toEqual([
      "share(Na₂CO₃·7H₂O)",
      "share of the salt in the form with more water, if the material is a mixture of the two",
    ]);
    expect(explain(waters).given.map(({ symbol, label }) => `${symbol}: ${label}`)).toContain(
      "w(Na₂CO₃): mass fraction of Na₂CO₃",
    );
    const dried = meanHydration({ salt: "Na2CO3", before: "5 g", after: "3 g" }).anhydrousFraction;
    const step = explain(dried).steps.at(-1)!;
    expect([step.symbol, step.rule]).toEqual([
      "w(Na₂CO₃)",
      "mass fraction = mass after drying / mass before, less the vessel",
    ]);
  });

  test("at a known form is that form, without a share of the next", () => {
    // between the monohydrate, where it stands, and the heptahydrate
    const { between } = meanHydration({ salt: "Na2CO3", before: "124.00253856 g", after: "105.98753856 g" });
    expect([between!.less.toString(), between!.more.toString()]).toEqual(["Na2CO3.H2O", "Na2CO3.7H2O"]);
    expect(between!.shareOfMore.toNumber("")).toBeCloseTo(0, 9);
  });

  test.each([{ before: "2 g" }, { after: "2 g" }, { vessel: "2 g" }, {}])(
    "needs both weighings, not %o alone",
    (part) => {
      const outcome = attempt(() => meanHydration({ salt: "Na2CO3", ...part } as Parameters<typeof meanHydration>[0]));
      const error = outcome.ok ? undefined : outcome.error;
      expect(error?.code).toBe("hydrate.missing-input");
      expect(error?.hint).toBe('give assay: "60 %", or before and after');
    },
  );

  test.each([{ before: "2 g" }, { after: "2 g" }, { vessel: "2 g" }])("takes no %o beside an assay", (part) => {
    const material = { salt: "Na2CO3", assay: "60 %", ...part } as Parameters<typeof meanHydration>[0];
    const outcome = attempt(() => meanHydration(material));
    expect(outcome.ok ? "" : outcome.error.code).toBe("hydrate.too-many-inputs");
  });
});
