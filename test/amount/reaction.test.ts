import { describe, expect, test } from "vitest";
import {
  atomEconomy,
  feedAmount,
  percentYield,
  reactionAmounts,
  requiredAmount,
  theoreticalYield,
} from "../../src/amount";
import { balance } from "../../src/equation";
import { attempt } from "../../src/foundation/error";
import { explain, sum } from "../../src/quantity";

const COPPER = "2 CuSO4 + 4 NaHCO3 -> Cu2(OH)2CO3 + 2 Na2SO4 + 3 CO2 + H2O";

describe("what runs out", () => {
  test("is the reagent with the smallest amount over coefficient, and the others say what is left", () => {
    const outcome = reactionAmounts(COPPER, { CuSO4: { mass: "100 g", as: "CuSO4·5H2O" }, NaHCO3: "80 g" });
    expect(outcome.limiting.map(String)).toEqual(["CuSO4"]);
    const soda = outcome.of("NaHCO3");
    expect(soda.left!.plus(soda.amount).in("mol").minus(soda.given!.in("mol")).abs().toNumber()).toBeLessThan(1e-15);
    expect(soda.excess!.in("%").toNumber()).toBeCloseTo((80 / 67.29 - 1) * 100, 1);
    expect(outcome.of("CuSO4").left!.isZero()).toBe(true);
    // exactly zero, uncertainty included: the same inputs on both sides
    expect(outcome.of("CuSO4").left!.standardUncertainty?.toNumber() ?? 0).toBe(0);
  });

  test("is both when they run out together", () => {
    expect(reactionAmounts("H2 + O2 -> H2O", { H2: "2 mol", O2: "1 mol" }).limiting.map(String)).toEqual(["H2", "O2"]);
  });

  test("is said to be assumed in excess where nothing was given", () => {
    const outcome = reactionAmounts("H2 + O2 -> H2O", { H2: "2 mol" });
    expect(explain(outcome.extent).assumptions).toEqual(["O₂ taken to be in excess"]);
    expect(outcome.of("O2").given).toBeUndefined();
    expect(outcome.of("O2").left).toBeUndefined();
    expect(outcome.of("O2").amount.in("mol").toString()).toBe("1");
  });

  test("does not matter when a product is given: everything needed is calculated back", () => {
    const outcome = reactionAmounts(COPPER, { "Cu2(OH)2CO3": "22.1 g" });
    expect(outcome.limiting).toEqual([]);
    expect(outcome.of("NaHCO3").amount.dividedBy(outcome.extent).in("").toString()).toBe("4");
  });

  test("masses used and formed are the same", () => {
    const outcome = reactionAmounts(COPPER, { CuSO4: "10 g" });
    const side = (name: "reactant" | "product"): number =>
      sum(outcome.species.filter((s) => s.side === name).map((s) => s.mass))
        .in("g")
        .toNumber();
    expect(side("reactant")).toBeCloseTo(side("product"), 10);
  });

  test("takes a balanced equation as it is", () => {
    const equation = balance("Na + Cl2 -> NaCl");
    expect(reactionAmounts(equation, { Na: "1 mol" }).equation.toString()).toBe(equation.toString());
  });

  test("finds a species in any notation", () => {
    const outcome = reactionAmounts("CH3COOH + NaOH -> CH3COONa + H2O", { C2H4O2: "1 mol" });
    expect(outcome.limiting.map(String)).toEqual(["CH3COOH"]);
  });

  test("takes a hydrate in the jar for the species it is a form of", () => {
    const equation = "BaCl2 + Na2SO4 -> BaSO4 + NaCl";
    const keyed = reactionAmounts(equation, { BaCl2·2H2O: "5.00 g", Na2SO4·10H2O: { mass: "5 g", assay: "99 %" } });
    const told = reactionAmounts(equation, {
      BaCl2: { mass: "5.00 g", as: "BaCl2·2H2O" },
      Na2SO4: { mass: "5 g", as: "Na2SO4·10H2O", assay: "99 %" },
    });
    expect(keyed.extent.equals(told.extent)).toBe(true);
    expect(keyed.limiting.map(String)).toEqual(["Na2SO4"]);
    const amount = reactionAmounts(equation, { BaCl2·2H2O: "1 mol" });
    expect(amount.extent.in("mol").toString()).toBe("1");
  });

  test("takes an equation that balances as it stands as it stands, and keeps written coefficients", () => {
    const aspirin = "C7H6O3 + C4H6O3 -> C9H8O4 + C2H4O2";
    expect(reactionAmounts(aspirin, { C7H6O3: "1 mol" }).of("C9H8O4").amount.in("mol").toString()).toBe("1");
    const peroxide = balance("2 KMnO4 + 5 H2O2 + 3 H2SO4 -> K2SO4 + 2 MnSO4 + 8 H2O + 5 O2");
    expect(reactionAmounts(peroxide, { KMnO4: "2 mol" }).of("O2").amount.in("mol").toString()).toBe("5");
    const open = attempt(() => reactionAmounts("KMnO4 + H2O2 + H2SO4 -> K2SO4 + MnSO4 + H2O + O2", { KMnO4: "2 mol" }));
    expect(open.ok ? "" : open.error.code).toBe("equation.underdetermined");
  });

  // Extent is amount over stoichiometric number of the equation as written (Green Book, section 2.10.1).
  test("counts the extent in moles of the equation as written", () => {
    const extent = (equation: string) => reactionAmounts(equation, { H2: "1 mol" }).extent.in("mol").toString();
    expect(extent("H2 + 1/2 O2 -> H2O")).toBe("1");
    expect(extent("2 H2 + O2 -> 2 H2O")).toBe("0.5");
    expect(extent("4 H2 + 2 O2 -> 4 H2O")).toBe("0.25");
    expect(extent("H2 + O2 -> H2O")).toBe("0.5");
    const water = reactionAmounts("H2 + 1/2 O2 -> H2O", { H2: "1 mol" });
    expect(water.moleOfReaction).toBe("H2 + 1/2 O2 -> H2O");
    expect(water.of("O2").coefficient.toFraction()).toBe("1/2");
    expect(water.of("O2").amount.in("mol").toString()).toBe("0.5");
  });

  test("says on which side a formula is missing", () => {
    const outcome = attempt(() => theoreticalYield("CaCO3 -> CaO + CO2", "CaCO3", { CaCO3: "1 g" }));
    expect(outcome.ok ? "" : outcome.error.message).toContain("CaCO3 is not a product of the equation");
    expect(outcome.ok ? "" : outcome.error.hint).toBe("products: CaO, CO2");
  });

  test.each([
    [{}, "amount.missing-input"],
    [{ H2: { mas: "1 g" } }, "amount.unknown-option"],
    [{ H2: { volume: "1 L", density: "70 g/mL" } }, "amount.outside-range"],
    [{ N2: "1 g" }, "amount.not-in-equation"],
    [{ H2: "1 g", H2O: "1 g" }, "amount.same-side"],
    [{ H2: "0 g" }, "amount.not-positive"],
    [{ H2: "1 L" }, "amount.missing-input"],
    [{ H2: { mass: "1 g", amount: "1 mol" } }, "amount.too-many-inputs"],
    [{ H2: "1 °C" }, "quantity.wrong-dimension"],
  ])("refuses %o", (known, code) => {
    const outcome = attempt(() => reactionAmounts("2 H2 + O2 -> 2 H2O", known as Record<string, "1 g">));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
  });

  test("refuses an equation that does not balance, with the equation room's own code", () => {
    const outcome = attempt(() => reactionAmounts("H2 -> O2", { H2: "1 g" }));
    expect(outcome.ok ? "" : outcome.error.code).toBe("equation.impossible");
  });
});

describe("feeds", () => {
  test("come as mass, moles, hydrate, solution, liquid or gas", () => {
    const moles = (species: string, feed: Parameters<typeof feedAmount>[1]): number =>
      feedAmount(species, feed).in("mol").toNumber();
    expect(moles("NaCl", "58.44 g")).toBeCloseTo(1, 3);
    expect(moles("NaCl", { amount: "250 mmol" })).toBe(0.25);
    expect(moles("CdSO4", { amount: "1 mol", as: "3CdSO4·8H2O" })).toBe(3);
    expect(moles("MgSO4·7H2O", { mass: "120.36 g", as: "MgSO4" })).toBeCloseTo(1, 3);
    expect(moles("HCl", { mass: "100 g", strength: "36.46 % w/w" })).toBeCloseTo(1, 3);
    expect(moles("HCl", { volume: "10 mL", strength: "37 % w/w" })).toBeCloseTo(0.1201, 4);
    expect(moles("C2H5OH", { volume: "100 mL", density: "0.789 g/mL", assay: "96 %" })).toBeCloseTo(1.644, 3);
    expect(moles("H2", { volume: "24.465 L", gas: {} })).toBeCloseTo(1, 4);
  });

  test.each([
    ["NaCl", { mass: "1 g", as: "KCl" }, "amount.not-possible"],
    ["NaCl", { volume: "1 L" }, "amount.missing-input"],
    ["NaCl", {}, "amount.missing-input"],
  ] as const)("of %s as %o is refused with %s", (species, feed, code) => {
    const outcome = attempt(() => feedAmount(species, feed));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
  });
});

describe("yield", () => {
  test("is a hundred percent of itself, with no doubt left", () => {
    const theory = theoreticalYield(COPPER, "Cu2(OH)2CO3", { CuSO4: "10.0 ± 0.1 g" });
    const whole = percentYield(theory, theory);
    expect(whole.in("%").toString()).toBe("100");
    expect(whole.standardUncertainty!.toNumber()).toBe(0);
  });

  test("counts the purity of what was weighed", () => {
    expect(percentYield("90 g", "100 g", { assay: "95 %", moisture: "2 %" }).in("%").toString()).toBe("83.79");
  });

  test("of a dry product is that of the product", () => {
    expect(percentYield("90 g", "100 g", { moisture: "0 %" }).in("%").toString()).toBe("90");
  });

  test("says of a yield over 100 % that it is more than the theory allows, unless its doubt reaches down to it", () => {
    const said = (yield_: ReturnType<typeof percentYield>) => explain(yield_).assumptions.join();
    expect(said(percentYield("12 g", "10 g"))).toContain("more than the theory allows");
    expect(said(percentYield("10.02(5) g", "10 g"))).toBe("");
    expect(said(percentYield("12 g", "10 g", { moisture: "20 %" }))).toBe("");
  });

  test("may be asked as the hydrate that is weighed", () => {
    const crystals = theoreticalYield("ZnO + H2SO4 -> ZnSO4 + H2O", "ZnSO4·7H2O", { ZnO: "1 mol" });
    expect(crystals.in("g").toNumber()).toBeCloseTo(287.5, 1);
    expect(explain(crystals).assumptions.join()).toContain("weighed as ZnSO₄·7H₂O");
    const twice = theoreticalYield("CdO + H2SO4 -> CdSO4 + H2O", "3CdSO4·8H2O", { CdO: "3 mol" });
    expect(twice.in("g").toNumber()).toBeCloseTo(3 * 208.47 + 8 * 18.015, 1);
  });

  test("is calculated on products only", () => {
    const outcome = attempt(() => theoreticalYield("2 H2 + O2 -> 2 H2O", "O2", { H2: "1 g" }));
    expect(outcome.ok ? "" : outcome.error.code).toBe("amount.not-in-equation");
    const back = attempt(() => theoreticalYield("2 H2 + O2 -> 2 H2O", "H2O", { H2O: "1 g" }));
    expect(back.ok ? "" : back.error.code).toBe("amount.same-side");
    expect(attempt(() => percentYield("1 g", "0 g")).ok).toBe(false);
  });

  // Lime from limestone: 56.08 of 100.09, Chemistry 2e figures of molar mass (arithmetic).
  test("atom economy is the product's share of all that went in", () => {
    expect(atomEconomy("CaCO3 -> CaO + CO2", "CaO").in("%").toFixed(1)).toBe("56.0");
    expect(atomEconomy("N2 + 3 H2 -> 2 NH3", "NH3").in("%").toString()).toBe("100");
  });
});

describe("what is needed", () => {
  test("comes as the hydrate in the jar, with excess", () => {
    const equation = "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2";
    const plain = requiredAmount(equation, { ZnSO4: "1 mol" }, "Na2CO3");
    const crystals = requiredAmount(equation, { ZnSO4: "1 mol" }, "Na2CO3", { as: "Na2CO3·10H2O", excess: "10 %" });
    expect(crystals.mass!.dividedBy(plain.mass!).in("").toNumber()).toBeCloseTo(1.1 * 2.6997, 3);
    const named = requiredAmount(equation, { ZnSO4: "1 mol" }, "Na2CO3·10H2O", { excess: "10 %" });
    expect(named.mass!.equals(crystals.mass!)).toBe(true);
  });

  test("comes as a volume of solution, whether strength is told per volume or per mass", () => {
    const known = { NaHCO3: "84.01 g" } as const;
    const equation = "NaHCO3 + CH3COOH -> CH3COONa + CO2 + H2O";
    const vinegar = requiredAmount(equation, known, "CH3COOH", { strength: "5 % w/w" });
    expect(vinegar.mass!.in("g").toNumber()).toBeCloseTo(1201, 0);
    expect(vinegar.volume!.in("mL").toNumber()).toBeCloseTo(1194.5, 0);
    const molar = requiredAmount(equation, known, "CH3COOH", { strength: "0.837 mol/L" });
    expect(molar.volume!.in("mL").toNumber()).toBeCloseTo(1194.7, 0);
  });

  test("may be none or more than twice as much", () => {
    const mass = (excess: "0 %" | "150 %"): number =>
      requiredAmount("2 H2 + O2 -> 2 H2O", { H2: "1 mol" }, "O2", { excess }).amount.in("mol").toNumber();
    expect(mass("0 %")).toBe(0.5);
    expect(mass("150 %")).toBe(1.25);
  });

  test("is refused for a stranger", () => {
    const outcome = attempt(() => requiredAmount("2 H2 + O2 -> 2 H2O", { H2: "1 g" }, "N2"));
    expect(outcome.ok ? "" : outcome.error.code).toBe("amount.not-in-equation");
  });
});
