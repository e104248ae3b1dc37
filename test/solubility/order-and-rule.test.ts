// The precipitant at which a solid begins, by hand from Ksp, and salts of which only a rule speaks: "insoluble" is less than
// 0.1 g in 100 g of water, "slightly soluble" up to 1 g. Molar masses by hand (IUPAC weights).
import { precipitationOrder, solubilityProduct, solubilityRule } from "preparative";
import { describe, expect, it } from "vitest";
import { judgePairing, pairingsOf } from "../../src/solubility/precipitating/pairings";

describe("the precipitant at which a solid begins", () => {
  const carbonates = (pH?: "7" | "8") =>
    precipitationOrder({
      precipitant: "CO3^2-",
      solids: [
        { solid: "BaCO3", concentration: "0.001 mol/L" },
        { solid: "SrCO3", concentration: "0.001 mol/L" },
      ],
      ...(pH === undefined ? {} : { pH }),
    });
  const startOf = (order: ReturnType<typeof carbonates>, solid: string): number =>
    order
      .find((one) => one.solid === solid)!
      .byHand!.startsAt!.in("mol/L")
      .toNumber();

  it.each(["BaCO3", "SrCO3"])("is Ksp over the metal: of %s in 1 mmol/L", (solid) => {
    const order = carbonates();
    const { form } = order.find((one) => one.solid === solid)!;
    const ksp = solubilityProduct(solid, form).value.value.toNumber();
    expect(startOf(order, solid) / (ksp / 0.001)).toBeCloseTo(1, 3);
  });

  it("is all the carbonate where the pH is held, in all its forms: pK 6.35 and 10.33 (25 °C, general chemistry)", () => {
    for (const pH of ["7", "8"] as const) {
      const bound = 1 + 10 ** (10.33 - Number(pH)) * (1 + 10 ** (6.35 - Number(pH)));
      for (const solid of ["BaCO3", "SrCO3"])
        expect(startOf(carbonates(pH), solid) / startOf(carbonates(), solid) / bound).toBeCloseTo(1, 1);
    }
  });

  it("is the free hydroxide: the root of Ksp over the metal", () => {
    const [first] = precipitationOrder({
      precipitant: "OH-",
      solids: [
        { solid: "Mg(OH)2", concentration: "0.01 mol/L" },
        { solid: "Ca(OH)2", concentration: "0.01 mol/L" },
      ],
    });
    expect(first!.solid).toBe("Mg(OH)2");
    const ksp = solubilityProduct("Mg(OH)2", first!.form).value.value;
    const start = first!.byHand!.startsAt!.in("mol/L").toNumber();
    expect((start ** 2 * 0.01) / ksp.toNumber()).toBeCloseTo(1, 2);
  });
});

describe("a salt of which only a rule speaks", () => {
  type Ion = readonly [formula: string, charge: number, moles: number];
  /** In half a kilogram of water. */
  const judged = (...ions: readonly Ion[]) => {
    const pool = ions.map(([formula, charge, moles]) => ({ formula, charge, moles, from: new Set([formula]) }));
    const [pairing] = pairingsOf(pool);
    return judgePairing(pairing!, 0.5, "20 °C").stays;
  };

  it.each([
    // 0.5 g of CuB4O7, 218.78 g/mol: 2.285 mmol of either ion
    ["CuB4O7", ["Cu^2+", 2, 0.00226], ["B4O7^2-", -2, 1], "unknown"],
    ["CuB4O7", ["Cu^2+", 2, 0.00231], ["B4O7^2-", -2, 1], "no"],
    ["CuB4O7", ["Cu^2+", 2, 1], ["B4O7^2-", -2, 0.00226], "unknown"],
    ["CuB4O7", ["Cu^2+", 2, 1], ["B4O7^2-", -2, 0.00231], "no"],
    // 0.5 g of Ag2B4O7, 370.97 g/mol: 1.348 mmol, twice that of silver
    ["Ag2B4O7", ["Ag+", 1, 0.00266], ["B4O7^2-", -2, 1], "unknown"],
    ["Ag2B4O7", ["Ag+", 1, 0.00273], ["B4O7^2-", -2, 1], "no"],
    // BaS2O3, 249.44 g/mol: 0.5 g is 2.004 mmol, 5 g is 20.04 mmol
    ["BaS2O3", ["Ba^2+", 2, 0.00199], ["S2O3^2-", -2, 1], "yes"],
    ["BaS2O3", ["Ba^2+", 2, 0.00202], ["S2O3^2-", -2, 1], "unknown"],
    ["BaS2O3", ["Ba^2+", 2, 0.0199], ["S2O3^2-", -2, 1], "unknown"],
    ["BaS2O3", ["Ba^2+", 2, 0.0202], ["S2O3^2-", -2, 1], "no"],
    ["HgSO4", ["Hg^2+", 2, 1], ["SO4^2-", -2, 1], "yes"],
  ] as const)("%s from %j and %j: %s", (_, cation, anion, stays) => {
    expect(judged(cation, anion)).toBe(stays);
  });
});

describe("a halide or cyanide of two metals", () => {
  it("is a complex of which no rule of simple salts speaks", () => {
    // Nessler's reagent, and the silver bath: both dissolve (every textbook, from memory)
    for (const formula of ["K2HgI4", "NaAg(CN)2", "K2PbI4"]) expect(solubilityRule(formula), formula).toBeUndefined();
    expect(solubilityRule("HgI2")?.class).toBe("insoluble");
    expect(solubilityRule("AgCN")?.class).toBe("insoluble");
    expect(solubilityRule("KMgCl3·6H2O")?.class).toBe("soluble");
  });
});
