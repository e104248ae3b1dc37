import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { attempt } from "../../src/foundation/error";
import { uncertaintyBudget } from "../../src/quantity";
import { saltConversion } from "../../src/solubility/conversion";
import { precipitatedCarbonate } from "../../src/solubility/precipitating/carbonate";
import { hydroxidePrecipitationRange } from "../../src/solubility/precipitating/hydroxide";
import { molarSolubility } from "../../src/solubility/precipitating/molar-solubility";
import { willPrecipitate } from "../../src/solubility/precipitating/precipitate";
import { precipitationOrder } from "../../src/solubility/precipitating/precipitation-order";
import { solubilityProduct } from "../../src/solubility/precipitating/product";

const molar = (request: Parameters<typeof molarSolubility>[0]) =>
  molarSolubility(request).concentration.in("mol/L").toNumber();
const byHand = (request: Parameters<typeof molarSolubility>[0]) =>
  molarSolubility(request).byHand!.concentration.in("mol/L").toNumber();

describe("molar solubility", () => {
  it("reproduces the worked examples of OpenStax Chemistry 2e, section 15.1", () => {
    // Example 15.3 follow-up: Ksp(AgI) 1.5e-16 -> 1.2e-8; 15.4 follow-up: Ksp(PbI2) 1.4e-8 -> 1.5e-3 mol/L;
    // 15.2 backwards: CaF2 3.98e-11 -> 2.15e-4; Mg(OH)2 8.99e-12 -> 1.31e-4 mol/L
    expect(molar({ solid: "AgI", ksp: "1.5e-16" }).toPrecision(2)).toBe("1.2e-8");
    expect(molar({ solid: "PbI2", ksp: "1.4e-8" }).toPrecision(2)).toBe("0.0015");
    expect(molar({ solid: "CaF2", ksp: "3.98e-11" }).toPrecision(3)).toBe("0.000215");
    expect(molar({ solid: "Mg(OH)2", ksp: "8.99e-12" }).toPrecision(3)).toBe("0.000131");
  });

  it("falls with a common ion as (Ksp/c) foretells", () => {
    // OpenStax Chemistry 2e, example 15.12 style: AgCl beside 0.1 mol/L chloride, s = Ksp / 0.1 to first order
    const k = 10 ** -9.75;
    const s = byHand({ solid: "AgCl", commonIons: [{ ion: "Cl-", concentration: "0.1 mol/L" }] });
    expect(Math.abs(s / (k / 0.1) - 1)).toBeLessThan(1e-4);
  });

  it("solves what it claims to solve", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("AgCl", "CaF2", "Ag2CrO4", "Pb3(PO4)2"),
        fc.integer({ min: 1, max: 9000 }),
        (solid, c) => {
          const product = solubilityProduct(solid);
          const common = product.ions[1]!.formula;
          const { ions } = molarSolubility({
            solid,
            commonIons: [{ ion: common, concentration: { value: c, unit: "mmol/L" } }],
          }).byHand!;
          const logQ = ions.reduce(
            (all, { concentration }, i) =>
              all + product.ions[i]!.count * Math.log10(concentration.in("mol/L").toNumber()),
            0,
          );
          expect(Math.abs(logQ + product.pKsp.value.toNumber())).toBeLessThan(1e-6);
        },
      ),
      { numRuns: 60 },
    );
  });

  it("never lets a hydroxide make pure water acid", () => {
    const iron = molarSolubility({ solid: "Fe(OH)3" }).byHand!;
    expect(
      iron.ions
        .find(({ formula }) => formula === "OH-")!
        .concentration.in("mol/L")
        .toNumber(),
    ).toBeGreaterThanOrEqual(1e-7);
    // with [OH] = 1e-7, s = Ksp / 1e-21
    expect(Math.abs(iron.concentration.in("mol/L").toNumber() / 10 ** (21 - 38.8) - 1)).toBeLessThan(1e-3);
  });

  it("rises with ionic strength by Davies, and refuses a brine", () => {
    // Skoog and West textbook figure (memory): barium sulfate dissolves about 2.5 to 3 times more at 0.1 mol/L
    const factor = byHand({ solid: "BaSO4", ionicStrength: "0.1 mol/L" }) / byHand({ solid: "BaSO4" });
    expect(factor).toBeGreaterThan(2.3);
    expect(factor).toBeLessThan(3);
    const refused = attempt(() => molarSolubility({ solid: "BaSO4", ionicStrength: "2 mol/L" }));
    expect(refused.ok ? undefined : refused.error.code).toBe("solubility.ionic-strength");
  });

  it("would need some 2e5 L for 320 g of copper carbonate (common practice, with the textbook CuCO3 constant 2.5e-10)", () => {
    const perLitre = molarSolubility({ solid: "CuCO3", ksp: "2.5e-10" }).massConcentration.in("g/L").toNumber();
    expect(320 / perLitre).toBeGreaterThan(1.5e5);
    expect(320 / perLitre).toBeLessThan(2.5e5);
  });

  it("dissolves silver chloride in ammonia, about 0.05 mol/L at 1 mol/L (memory: textbooks)", () => {
    const { concentration } = molarSolubility({
      solid: "AgCl",
      freeLigands: [{ ligand: "NH3", concentration: "1 mol/L" }],
    }).byHand!;
    expect(Math.abs(concentration.in("mol/L").toNumber() - 0.05)).toBeLessThan(0.005);
  });

  it("carries the spread of the constant and the common ion into the uncertainty", () => {
    const s = molarSolubility({
      solid: "BaSO4",
      commonIons: [{ ion: "SO4^2-", concentration: "0.100(1) mol/L" }],
    }).byHand!.concentration;
    expect(uncertaintyBudget(s).length).toBe(2);
    // u(s)/s is nearly ln(10) u(pKsp) in excess of sulfate; u(pKsp) is 0.1 at least
    expect(s.standardUncertainty!.dividedBy(s.value).toNumber()).toBeCloseTo(Math.LN10 * 0.1, 2);
  });
});

describe("precipitation on mixing", () => {
  const mix = (ba: string, so4: string) =>
    willPrecipitate({
      solid: "BaSO4",
      solutions: [
        { volume: "10 mL", ions: [{ ion: "Ba^2+", concentration: ba as "1 mol/L" }] },
        { volume: "10 mL", ions: [{ ion: "SO4^2-", concentration: so4 as "1 mol/L" }] },
      ],
    });

  it("says yes above the product and no below it", () => {
    expect(mix("0.1 mol/L", "0.1 mol/L").precipitates).toBe(true);
    expect(mix("1e-6 mol/L", "1e-6 mol/L").precipitates).toBe(false);
    expect(mix("1e-6 mol/L", "1e-6 mol/L").precipitated.isZero()).toBe(true);
  });

  it("conserves each ion and leaves the product satisfied", () => {
    const { byHand, product } = mix("0.1 mol/L", "0.11 mol/L");
    const { ions, precipitated } = byHand;
    expect(ions.length, "rows to test").toBeGreaterThan(0);
    for (const { before, after } of ions) {
      expect(before.minus(after).minus(precipitated).in("mol/L").abs().toNumber()).toBeLessThan(1e-12);
    }
    const q = ions.reduce((all, { after }) => all + Math.log10(after.in("mol/L").toNumber()), 0);
    expect(Math.abs(q + product.pKsp.value.toNumber())).toBeLessThan(1e-4);
  });

  it("decides the OpenStax mixing problem: 0.200 L Mg(NO3)2 0.10 mol/L with 0.100 L NaOH 0.20 mol/L precipitates", () => {
    // Chemistry 2e, section 15.1, exercises on mixed volumes: Q = 0.0667 x 0.0667² = 2.96e-4, Ksp(Mg(OH)2) 8.9e-12
    const verdict = willPrecipitate({
      solid: "Mg(OH)2",
      solutions: [
        { volume: "0.200 L", ions: [{ ion: "Mg^2+", concentration: "0.10 mol/L" }] },
        { volume: "0.100 L", ions: [{ ion: "OH-", concentration: "0.20 mol/L" }] },
      ],
    });
    const k = verdict.product.value.value.toNumber();
    expect(verdict.precipitates).toBe(true);
    expect((verdict.byHand.saturation.value.toNumber() * k).toPrecision(3)).toBe("0.000296");
  });

  it("counts an ion that is named twice with all there is of it", () => {
    const silver = (chloride: readonly ("0.02 mol/L" | "0.04 mol/L" | "0.06 mol/L")[]) =>
      willPrecipitate({
        solid: "AgCl",
        solutions: [
          { volume: "10 mL", ions: [{ ion: "Ag+", concentration: "0.1 mol/L" }] },
          { volume: "10 mL", ions: chloride.map((concentration) => ({ ion: "Cl-", concentration })) },
        ],
      }).ions.map(({ before, shareLeft }) => [before.toNumber("mol/L"), shareLeft.toNumber("%").toPrecision(6)]);
    expect(silver(["0.02 mol/L", "0.04 mol/L"])).toEqual(silver(["0.06 mol/L"]));
    const beside = (concentrations: readonly ("0.02 mol/L" | "0.04 mol/L" | "0.06 mol/L")[]) =>
      molarSolubility({
        solid: "AgCl",
        commonIons: concentrations.map((concentration) => ({ ion: "Cl-", concentration })),
      }).byHand!.concentration.toNumber("mol/L");
    expect(beside(["0.02 mol/L", "0.04 mol/L"])).toBeCloseTo(beside(["0.06 mol/L"]), 15);
  });

  it("refuses less than nothing of an ion, of the solid or not", () => {
    const ion = { ion: "Na+", concentration: "-0.1 mol/L" } as const;
    const codes = [
      attempt(() => molarSolubility({ solid: "AgCl", commonIons: [ion] })),
      attempt(() => molarSolubility({ solid: "AgCl", commonIons: [{ ion: "Cl-", concentration: "-0.1 mol/L" }] })),
      attempt(() =>
        willPrecipitate({
          solid: "AgCl",
          solutions: [
            { volume: "10 mL", ions: [{ ion: "Ag+", concentration: "0.1 mol/L" }] },
            { volume: "10 mL", ions: [{ ion: "Cl-", concentration: "0.1 mol/L" }, ion] },
          ],
        }),
      ),
    ].map((outcome) => (outcome.ok ? undefined : outcome.error.code));
    expect(codes).toEqual(["solubility.not-positive", "solubility.not-positive", "solubility.not-positive"]);
  });

  it("names the ion nobody brought", () => {
    const outcome = attempt(() =>
      willPrecipitate({
        solid: "BaSO4",
        solutions: [{ volume: "1 L", ions: [{ ion: "Ba^2+", concentration: "1 mol/L" }] }],
      }),
    );
    expect(outcome.ok ? undefined : outcome.error.code).toBe("solubility.missing-option");
  });

  it("orders silver halides iodide, bromide, chloride (common practice)", () => {
    const order = precipitationOrder({
      precipitant: "Ag+",
      solids: ["AgCl", "AgBr", "AgI"].map((solid) => ({ solid, concentration: "0.01 mol/L" as const })),
    });
    expect(order.map(({ solid }) => solid)).toEqual(["AgI", "AgBr", "AgCl"]);
    expect(order[0]!.leftWhenNextStarts!.in("%").toNumber()).toBeLessThan(0.1);
  });
});

describe("hydroxide windows", () => {
  it("leaves of the first what both products allow when the second begins: Ksp(AgI)/Ksp(AgCl), by hand", () => {
    const [iodide, chloride] = precipitationOrder({
      precipitant: "Ag+",
      solids: [
        { solid: "AgCl", concentration: "0.01 mol/L" },
        { solid: "AgI", concentration: "0.01 mol/L" },
      ],
    });
    const product = (solid: string): number => solubilityProduct(solid).value.toNumber();
    expect([iodide!.solid, chloride!.solid]).toEqual(["AgI", "AgCl"]);
    expect(iodide!.byHand.leftWhenNextStarts!.toNumber("") / (product("AgI") / product("AgCl"))).toBeCloseTo(1, 2);
    expect(iodide!.byHand.startsAt!.toNumber("mol/L") / (product("AgI") / 0.01)).toBeCloseTo(1, 2);
    expect(chloride!.byHand.startsAt!.toNumber("mol/L") / (product("AgCl") / 0.01)).toBeCloseTo(1, 2);
    expect(chloride!.byHand.leftWhenNextStarts).toBeUndefined();
  });

  it("covers the precipitation pH the trade uses", () => {
    // Waste treatment, pH as hydroxide (memory / common practice): Fe(III) 4-7, Al 6-7, Cu 8-9.5, Zn 9-9.5, Co 9.5-10,
    // Ni 10-10.5; the middle of each lies inside our window for 0.1 mol/L and 1e-5 mol/L left
    const trade: [string, number][] = [
      ["Fe^3+", 5.5],
      ["Al^3+", 6.5],
      ["Cu^2+", 8.75],
      ["Zn^2+", 9.25],
      ["Co^2+", 9.75],
      ["Ni^2+", 10.25],
    ];
    for (const [metal, pH] of trade) {
      const { completeFrom, redissolvesFrom } = hydroxidePrecipitationRange({ metal, concentration: "0.1 mol/L" });
      expect(completeFrom!.value.toNumber(), metal).toBeLessThan(pH);
      expect(redissolvesFrom!.value.toNumber(), metal).toBeGreaterThan(pH);
    }
  });

  it("dissolves amphoteric hydroxides again, magnesium's never", () => {
    // 0.1 mol/L, fresh solids: aluminium in weak lye, zinc from some pH 13 (common practice)
    const dissolved = (metal: "Al^3+" | "Zn^2+") =>
      hydroxidePrecipitationRange({ metal, concentration: "0.1 mol/L" }).allDissolvedFrom!.value.toNumber();
    expect(dissolved("Al^3+")).toBeCloseTo(10.8, 0);
    expect(dissolved("Zn^2+")).toBeCloseTo(13.2, 0);
    expect(hydroxidePrecipitationRange({ metal: "Mg^2+", concentration: "0.1 mol/L" }).redissolvesFrom).toBeUndefined();
  });

  it("precipitates later from a more dilute solution and earlier for the aged form", () => {
    const start = (concentration: "1 mol/L" | "0.001 mol/L", form?: string) =>
      hydroxidePrecipitationRange({
        metal: "Mg^2+",
        concentration,
        ...(form === undefined ? {} : { form }),
      }).startsAt!.value.toNumber();
    expect(start("0.001 mol/L")).toBeGreaterThan(start("1 mol/L"));
    expect(start("1 mol/L", "brucite")).toBeLessThan(start("1 mol/L", "fresh"));
  });
});

describe("normal or basic carbonate", () => {
  it("reproduces every outcome the trade knows (facts sheet section 4: common practice and preparations)", () => {
    const known: [metal: string, soda: string, bicarbonate: string][] = [
      ["Ca^2+", "normal", "normal"],
      ["Sr^2+", "normal", "normal"],
      ["Ba^2+", "normal", "normal"],
      ["Cd^2+", "normal", "normal"],
      ["Mn^2+", "normal", "normal"],
      // no constant of the basic carbonate: "basic with soda, normal with bicarbonate"
      ["Co^2+", "basic by trade", "normal"],
      // "use bicarbonate, no air": of soda 99.5 % ends as FeCO3 all the same, the liquor has no base for more hydroxide
      ["Fe^2+", "normal", "normal"],
      // "basic with soda and boiling; the trihydrate from cold bicarbonate"
      ["Mg^2+", "basic", "normal"],
      // "basic with soda; normal only from bicarbonate with carbon dioxide, cold"
      ["Zn^2+", "basic", "mixed"],
      ["Pb^2+", "basic", "normal"],
      // "basic; normal only with bicarbonate saturated with carbon dioxide, cold"
      ["Ni^2+", "basic by trade", "mixed"],
      ["Cu^2+", "basic", "basic"],
      ["Al^3+", "hydroxide", "hydroxide"],
      ["Cr^3+", "hydroxide", "hydroxide"],
      ["Fe^3+", "hydroxide", "hydroxide"],
      ["Sn^2+", "hydroxide", "hydroxide"],
      // no constants of the liquor
      ["Ti^4+", "hydroxide by trade", "hydroxide by trade"],
      ["Bi^3+", "hydroxide by trade", "hydroxide by trade"],
    ];
    const told = (metal: string, precipitant: "soda" | "bicarbonate"): string => {
      const { verdict, basis } = precipitatedCarbonate({ metal, precipitant });
      return basis === "trade" ? `${verdict} by trade` : verdict;
    };
    for (const [metal, soda, bicarbonate] of known)
      expect([told(metal, "soda"), told(metal, "bicarbonate")], metal).toEqual([soda, bicarbonate]);
  });

  it("follows the liquor, whatever the index of the precipitant says", () => {
    // the index asks for the precipitant alone, and of zinc and lead with bicarbonate has 0.3 and 9: what the carbon dioxide
    // leaves decides. Lead may stay normal without it, within the doubt of the constants; zinc may not
    for (const [metal, sure] of [
      ["Zn^2+", true],
      ["Pb^2+", false],
    ] as const) {
      const { liquor } = precipitatedCarbonate({ metal, precipitant: "bicarbonate" });
      expect([liquor.kept!.outcome, liquor.aired!.outcome]).toEqual(["normal", "basic"]);
      expect(liquor.aired!.orElse).toEqual(sure ? [] : ["normal"]);
    }
    // too dilute to precipitate: Mg 1 mmol/L is a tenth of what the trihydrate dissolves to; of calcium 5 % stays
    const dilute = (metal: string) =>
      precipitatedCarbonate({ metal, precipitant: "bicarbonate", concentration: "0.001 mol/L" });
    expect([dilute("Mg^2+").verdict, dilute("Mg^2+").expected]).toEqual(["none", []]);
    expect(dilute("Ca^2+").verdict).toBe("normal");
  });

  it("says that magnesium is basic on boiling and the trihydrate cold, and what of cobalt is not known", () => {
    const magnesium = precipitatedCarbonate({ metal: "Mg^2+", precipitant: "soda" });
    expect(magnesium.liquor.boiled!.solids.map(({ formula }) => formula)).toEqual(["Mg5(CO3)4(OH)2·4H2O"]);
    expect(magnesium.warnings.join()).toMatch(/basic on boiling; at 25 °C .*normal: MgCO3·3H2O/);
    const cobalt = precipitatedCarbonate({ metal: "Co^2+", precipitant: "soda" });
    expect(cobalt.warnings.join()).toContain("solubility product of Co5(OH)6(CO3)2 is not known");
    expect(precipitatedCarbonate({ metal: "Li+", precipitant: "soda" }).warnings.join()).toMatch(
      /nothing precipitates/,
    );
    expect(precipitatedCarbonate({ metal: "Hg^2+", precipitant: "soda" }).warnings.join()).toMatch(
      /trade's experience/,
    );
  });

  it("expects the solids by name", () => {
    expect(precipitatedCarbonate({ metal: "Cu^2+", precipitant: "soda" }).expected).toEqual(["Cu2(OH)2CO3"]);
    expect(precipitatedCarbonate({ metal: "Zn^2+", precipitant: "soda" }).expected).toEqual(["Zn5(OH)6(CO3)2"]);
    expect(precipitatedCarbonate({ metal: "Mg^2+", precipitant: "bicarbonate" }).expected).toEqual(["MgCO3·3H2O"]);
  });

  it.each(["Al^3+", "Cu^2+"])(
    "refuses a precipitant of %s that is none, or stronger than it is judged for",
    (metal) => {
      const codes = (["-1 mol/L", "5 mol/L"] as const).map((concentration) => {
        const outcome = attempt(() => precipitatedCarbonate({ metal, precipitant: "soda", concentration }));
        return outcome.ok ? undefined : outcome.error.code;
      });
      expect(codes).toEqual(["solubility.not-positive", "solubility.out-of-reach"]);
    },
  );

  it("refuses a metal it has no constants for", () => {
    const outcome = attempt(() => precipitatedCarbonate({ metal: "K+", precipitant: "soda" }));
    expect(outcome.ok ? undefined : outcome.error.code).toBe("solubility.no-data");
  });

  it("says what both liquors end as where the carbon dioxide decides", () => {
    const bench = precipitatedCarbonate({ metal: "Zn^2+", precipitant: "bicarbonate" });
    expect(bench.warnings.join()).toMatch(/it depends on the carbon dioxide: kept, normal: .*; gone, basic: /);
  });

  it("turns strontium sulfate into carbonate, barium sulfate hardly (common practice)", () => {
    expect(saltConversion({ from: "SrSO4", to: "SrCO3" }).verdict).toBe("goes");
    expect(saltConversion({ from: "BaSO4", to: "BaCO3" }).verdict).toBe("hardly");
    expect(saltConversion({ from: "CaSO4·2H2O", to: "CaCO3" }).verdict).toBe("goes");
  });

  it("stops where both solids are saturated at once: two ions of a formula count twice", () => {
    const pKsp = (solid: string): number => -Math.log10(solubilityProduct(solid).value.toNumber());
    for (const [from, to, freed, taken, count] of [
      ["SrSO4", "SrCO3", "SO4^2-", "CO3^2-", 1],
      ["AgCl", "AgI", "Cl-", "I-", 1],
      ["Ag2CO3", "Ag2CrO4", "CO3^2-", "CrO4^2-", 1],
      // [Pb][Cl]² / [Pb][I]²: the ratio of the ions is the root
      ["PbCl2", "PbI2", "Cl-", "I-", 2],
      ["Ca(OH)2", "CaF2", "OH-", "F-", 2],
    ] as const) {
      const { equilibriumRatio, ionFreed, ionTaken, verdict } = saltConversion({ from, to });
      const ratio = 10 ** ((pKsp(to) - pKsp(from)) / count);
      expect(equilibriumRatio.toNumber() / ratio, `${from} to ${to}`).toBeCloseTo(1, 6);
      expect([ionFreed, ionTaken]).toEqual([freed, taken]);
      expect(verdict).toBe(ratio > 100 ? "goes" : ratio > 1 ? "goes with excess" : "hardly");
    }
  });

  it("takes no salt of another type or of other ions for a conversion", () => {
    for (const [from, to] of [
      ["Ag2CO3", "AgCl"],
      ["CaCO3", "BaSO4"],
      ["PbI2", "PbCO3"],
    ] as const) {
      const outcome = attempt(() => saltConversion({ from, to }));
      expect(outcome.ok ? undefined : outcome.error, `${from} to ${to}`).toMatchObject({
        code: "solubility.other-solute",
        details: { from, to },
      });
    }
  });
});
