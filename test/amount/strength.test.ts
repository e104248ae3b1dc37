import { describe, expect, test } from "vitest";
import {
  convertStrength,
  mixSolutions,
  type StrengthLike,
  type StrengthOptions,
  stockSolution,
} from "../../src/amount";
import { attempt } from "../../src/foundation/error";
import { explain, quantity } from "../../src/quantity";

type Options = StrengthOptions & { to: string };
const code = (strength: StrengthLike, options: Options): string => {
  const outcome = attempt(() => convertStrength(strength, options));
  return outcome.ok ? "" : outcome.error.code;
};

describe("percent of what", () => {
  test("refuses a bare percent, shows where, and lists the readings", () => {
    const outcome = attempt(() => convertStrength("5 %", { of: "CH3COOH", to: "mol/L" }));
    expect(outcome.ok).toBe(false);
    if (outcome.ok) return;
    expect(outcome.error.code).toBe("amount.ambiguous-percent");
    expect(outcome.error.position).toBe(2);
    expect(outcome.error.details["readings"]).toEqual(["% w/w", "% w/v", "% v/v"]);
    expect(outcome.error.hint).toContain("% w/v");
  });

  test.each(["5 ppm", "5 ppb"] as const)(
    "refuses %s, which has several readings too, and each of them can be read",
    (strength) => {
      const outcome = attempt(() => convertStrength(strength as StrengthLike, { of: "NaCl", to: "mol/L" }));
      expect(outcome.ok ? "" : outcome.error.code).toBe("amount.ambiguous-percent");
      const readings = (outcome.ok ? [] : outcome.error.details["readings"]) as string[];
      expect(readings.length).toBeGreaterThan(1);
      for (const unit of readings) {
        expect(code(`5 ${unit}` as StrengthLike, { of: "C2H5OH", to: "mol/L" }), unit).toBe("");
      }
    },
  );

  test("takes a bare percent once its basis is told", () => {
    const of = "CH3COOH";
    expect(convertStrength("5 %", { of, to: "g/L", basis: "w/v" }).in("g/L").toString()).toBe("50");
    const perMass = convertStrength("5 %", { of, to: "g/L", basis: "w/w" }).in("g/L").toNumber();
    expect(perMass).toBeCloseTo(50.275, 2);
    const perVolume = convertStrength("5 %", { of, to: "g/L", basis: "v/v" }).in("g/L").toNumber();
    // pure acetic acid weighs 1.0498 g/mL
    expect(perVolume).toBeCloseTo(52.49, 1);
  });

  test("reads grams in a hundred millilitres as w/v", () => {
    expect(convertStrength("9 % w/v", { of: "NaCl", to: "mol/L" }).in("mol/L").toNumber()).toBeCloseTo(90 / 58.44, 3);
  });

  test.each(["5 g/kg", "5000 mg/kg", "5 mg/g"] as const)(
    "takes %s for a mass fraction, because both units say so",
    (strength) => {
      expect(convertStrength(strength, { to: "% w/w" }).in("%").toString()).toBe("0.5");
    },
  );
});

describe("what a conversion needs", () => {
  test.each([
    ["1 mol/L", { to: "g/L" }, "amount.missing-formula"],
    ["5 % w/w", { to: "g/L" }, "amount.missing-density"],
    ["1 mol/kg", { of: "NaCl", to: "mol/L", solvent: "CH3OH" }, "amount.missing-density"],
    ["1 mol/L", { of: "NaCl", to: "mol/kg", solvent: "CH3OH" }, "amount.missing-density"],
    ["20 °Bé", { of: "HCl", to: "% w/w", solvent: "CH3OH" }, "amount.missing-density"],
    ["5 % w/w", { of: "CsI", to: "g/L" }, "amount.no-density-table"],
    ["45 % w/w", { of: "HCl", to: "g/L" }, "amount.outside-range"],
    ["700 g/L", { of: "HCl", to: "% w/w" }, "amount.outside-range"],
    ["6 N", { of: "H2SO4", to: "mol/L" }, "amount.missing-equivalents"],
    ["6 N", { of: "H2SO4", to: "mol/L", equivalents: 0 }, "amount.not-positive"],
    ["40 % v/v", { of: "KI", to: "g/L" }, "amount.missing-density"],
    ["20 °Bé", { to: "% w/w" }, "amount.missing-formula"],
    ["150 °Bé", { of: "HCl", to: "% w/w" }, "amount.outside-range"],
    ["10 volumes", { of: "NaCl", to: "mol/L" }, "amount.unknown-strength"],
    ["10 g", { of: "NaCl", to: "mol/L" }, "amount.unknown-strength"],
    ["1 mol/L", { of: "NaCl", to: "kg" }, "amount.unknown-strength"],
    ["1 mol/L", { of: "NaCl", to: "%" }, "amount.ambiguous-percent"],
    ["-1 mol/L", { of: "NaCl", to: "g/L" }, "amount.negative"],
    ["101 % w/w", { of: "NaCl", to: "mol/kg" }, "amount.fraction-above-one"],
    ["100 % w/w", { of: "H2SO4", to: "mol/kg" }, "amount.not-possible"],
    ["1000 g/L", { of: "C2H5OH", to: "% v/v" }, "amount.not-possible"],
    ["1 mol/L", { of: "NACL", to: "g/L" }, "formula.unknown-symbol"],
    ["1,5 mol/L", { of: "NaCl", to: "g/L" }, "quantity.decimal-comma"],
    ["", { of: "NaCl", to: "g/L" }, "quantity.not-a-number"],
    [" N", { of: "NaCl", to: "g/L" }, "quantity.not-a-number"],
    [`${"9".repeat(300)} N`, { of: "NaCl", to: "g/L" }, "amount.too-long"],
    ["1 mol/L", { of: "NaCl", to: "bananas/L" }, "quantity.unknown-unit"],
  ] as const)("%s with %o is refused with %s", (strength, options, expected) => {
    expect(code(strength as StrengthLike, options as Options)).toBe(expected);
  });

  test("goes without a table where the density is given", () => {
    const c = convertStrength("50 % w/w", { of: "CsI", to: "mol/L", density: "1.55 g/mL" });
    expect(c.in("mol/L").toNumber()).toBeCloseTo((0.5 * 1550) / 259.81, 3);
  });

  test("refuses a density that the solute alone outweighs", () => {
    expect(code("1500 g/L", { of: "CsI", to: "% w/w", density: "1.2 g/mL" })).toBe("amount.not-possible");
  });

  test("says at what temperature the density was looked up when none was given", () => {
    const assumptions = explain(convertStrength("5 % w/w", { of: "NaCl", to: "mol/L" })).assumptions;
    expect(assumptions).toEqual(["density of the solution at 20 °C, the temperature of its table"]);
    expect(explain(convertStrength("5 % w/w", { of: "NaCl", to: "mol/L", temperature: "20 °C" })).assumptions).toEqual(
      [],
    );
  });

  test("names the reaction of a normality among its assumptions", () => {
    const c = convertStrength("6 N", { of: "H2SO4", to: "mol/L", equivalents: 2, reaction: "both protons" });
    expect(explain(c).assumptions).toContain("equivalents counted for: both protons");
    expect(c.in("mol/L").toString()).toBe("3");
  });
});

describe("what stands on labels and in old recipes", () => {
  const hcl = { of: "HCl", to: "% w/w" } as const;

  // Labels of spirits write % vol; it was once read as volumes of oxygen, and 5 % N of a fertiliser as a normality.
  test("reads % vol as millilitres in a hundred, never as volumes of oxygen", () => {
    const spirit = convertStrength("40 % vol", { of: "C2H5OH", to: "% v/v" });
    expect(spirit.in("%").toString()).toBe("40");
    expect(
      convertStrength("40 %vol." as StrengthLike, { of: "C2H5OH", to: "g/L" }).equals(
        convertStrength("40 % v/v", { of: "C2H5OH", to: "g/L" }),
      ),
    ).toBe(true);
    expect(code("3 % vol", { of: "H2O2", to: "mol/L", soluteDensity: "1.45 g/mL" })).toBe("");
    const c = convertStrength("3 % vol", { of: "H2O2", to: "mol/L", soluteDensity: "1.45 g/mL" });
    expect(c.in("mol/L").toNumber()).toBeCloseTo((0.03 * 1450) / 34.014, 3);
  });

  test("takes a normality for one only where a bare number stands before it", () => {
    expect(code("5 % N" as StrengthLike, { of: "H2SO4", to: "mol/L", equivalents: 2 })).toBe("quantity.ambiguous-unit");
    expect(convertStrength("0.1 eq/L", { of: "H2SO4", to: "mol/L", equivalents: 2 }).in("mol/L").toString()).toBe(
      "0.05",
    );
  });

  test.each(["20 °Bé", "20 °Be", "20° Bé", "20 Bé", "20 °Baumé"] as const)("reads %s", (text) => {
    expect(convertStrength(text as StrengthLike, hcl).equals(convertStrength("20 °Bé", hcl))).toBe(true);
  });

  test.each(["20 volumes", "20 vol", "20 vol.", "20-volume"] as const)("reads %s", (text) => {
    const grams = convertStrength(text as StrengthLike, { of: "H2O2", to: "g/L" })
      .in("g/L")
      .toNumber();
    expect(grams).toBeCloseTo(60.7, 1);
  });

  test("says that a reading belongs to the other scale", () => {
    const outcome = attempt(() => convertStrength("26 °Bé", { of: "NH3", to: "% w/w" }));
    expect(outcome.ok ? "" : outcome.error.code).toBe("amount.outside-range");
    expect(outcome.ok ? "" : outcome.error.hint).toContain('baume: "lighter than water"');
  });

  test.each([
    [{ of: "HCl", to: "mol/L", basis: "ww" }, "amount.unknown-word"],
    [{ of: "HCl", to: "mol/L", basis: "w/w", density: "1190 g/mL" }, "amount.outside-range"],
    [{ of: "HCl", to: "mol/L", basis: "w/w", density: "1.19 g/L" }, "amount.outside-range"],
  ] as const)("37 %% with %o is refused with %s", (options, expected) => {
    expect(code("37 %" as StrengthLike, options as unknown as Options)).toBe(expected);
  });

  test("does not take an unknown scale for the usual one", () => {
    expect(code("20 °Bé", { ...hcl, baume: "light" as "lighter than water" })).toBe("amount.unknown-word");
  });
});

describe("there and back", () => {
  test.each([
    ["37 % w/w", "mol/L", { of: "HCl" }],
    ["2 mol/L", "% w/w", { of: "NaOH" }],
    ["2 mol/L", "mol/kg", { of: "NaCl" }],
    ["3 mol %", "g/L", { of: "NaCl" }],
    ["40 % v/v", "mol/kg", { of: "C2H5OH" }],
    ["10 % w/w", "mol/L", { of: "CuSO4·5H2O" }],
    ["2.5 mol/kg", "% w/v", { of: "NaOH", temperature: "25 °C" }],
  ] as const)("%s to %s and back is itself", (strength, to, options) => {
    const there = convertStrength(strength, { ...options, to });
    const back = convertStrength(there, { ...options, to: quantity(strength as string).unit });
    expect(
      back
        .in(back.unit)
        .minus(quantity(strength as string).value)
        .abs()
        .toNumber(),
    ).toBeLessThan(1e-9);
  });

  test("there and back through the same table leaves no doubt behind", () => {
    const there = convertStrength("37 % w/w", { of: "HCl", to: "mol/L" });
    const back = convertStrength(there, { of: "HCl", to: "% w/w" });
    expect(there.standardUncertainty!.toNumber()).toBeGreaterThan(0.001);
    expect(back.standardUncertainty!.toNumber()).toBeLessThan(1e-6);
  });
});

describe("hydrates as solutes", () => {
  test("ten percent of the pentahydrate is 6.39 percent of the salt", () => {
    const asHydrate = convertStrength("10 % w/w", { of: "CuSO4·5H2O", to: "mol/L" });
    const asSalt = convertStrength("6.3923 % w/w", { of: "CuSO4", to: "mol/L" });
    expect(asHydrate.in("mol/L").toNumber()).toBeCloseTo(asSalt.in("mol/L").toNumber(), 4);
  });

  // Molality is amount of solute over mass of solvent (Green Book, section 2.10); dissolved crystal water is solvent. By hand:
  // 1 mol of CuSO4·5H2O (249.68 g) in 1000 g of water stands in 1000 + 5 × 18.015 g = 1090.08 g of it.
  test("crystal water is solvent in a molality and in a mole fraction", () => {
    const w = quantity("249.68 g").dividedBy("1249.68 g").to("% w/w");
    const b = convertStrength(w, { of: "CuSO4·5H2O", to: "mol/kg" });
    expect(b.in("mol/kg").toNumber()).toBeCloseTo(1 / 1.09008, 4);
    const x = convertStrength(w, { of: "CuSO4·5H2O", to: "mol/mol" });
    expect(x.in("").toNumber()).toBeCloseTo(1 / (1 + 1090.08 / 18.015), 6);
  });

  // 4 mol/L is one solution, whatever was dissolved to make it.
  test.each(["mol/kg", "mol/mol", "mol %"])("a salt and its hydrate of one mol/L have one strength in %s", (to) => {
    const [hydrate, salt] = ["CaCl2·6H2O", "CaCl2"].map((of) =>
      convertStrength("4 mol/L", { of, to }).in(to).toNumber(),
    );
    expect(hydrate).toBeCloseTo(salt!, 12);
  });

  test("a stock of one molality and a mixture hold one salt, whichever form is named", () => {
    const dry = quantity("1").times("110.98 g/mol").dividedBy("219.08 g/mol");
    const weighed = (of: string) => stockSolution({ of, strength: "0.5 mol/kg", volume: "1 L" }).concentration;
    expect(weighed("CaCl2·6H2O").in("mol/L").toNumber()).toBeCloseTo(weighed("CaCl2").in("mol/L").toNumber(), 9);
    const mixed = (of: string) =>
      mixSolutions(
        [
          { strength: "2 mol/kg", portion: "100 g" },
          { strength: "0 % w/w", portion: "100 g" },
        ],
        { of },
      ).massFraction!;
    expect(mixed("CaCl2·6H2O").times(dry).in("%").toNumber()).toBeCloseTo(mixed("CaCl2").in("%").toNumber(), 3);
  });

  test("in another solvent the crystal water is neither", () => {
    const of = "CuSO4·5H2O";
    const b = convertStrength("10 % w/w", { of, to: "mol/kg", solvent: "CH3OH" });
    expect(b.in("mol/kg").toNumber()).toBeCloseTo(100 / 249.68 / 0.9, 4);
    const x = convertStrength("10 % w/w", { of, to: "mol/mol", solvent: "CH3OH" });
    // 0.04005 mol of salt, 0.20026 mol of water, 90 g / 32.042 g/mol of methanol
    expect(x.in("").toNumber()).toBeCloseTo(0.04005 / (0.04005 + 0.20026 + 2.8088), 5);
  });

  test("refuses the percent of a hydrate that would hold less water than the hydrate itself", () => {
    expect(code("12 mol/kg", { of: "CaCl2·6H2O", to: "% w/w" })).toBe("amount.not-possible");
    expect(code("15 mol %", { of: "CaCl2·6H2O", to: "% w/w" })).toBe("amount.not-possible");
    expect(code("12 mol/kg", { of: "CaCl2", to: "% w/w" })).toBe("");
  });

  test("a fraction of water counts as well", () => {
    // 1 g of CaSO4·½H2O (145.14 g/mol) is 6.890 mmol in 99 g of water and 0.0621 g of its own
    const b = convertStrength("1 % w/w", { of: "CaSO4·0.5H2O", to: "mol/kg" });
    expect(b.in("mol/kg").toNumber()).toBeCloseTo(6.89 / 99.0621, 4);
  });

  test.each(["mol/kg", "mol %"])("10 %% w/w to %s and back is itself", (to) => {
    const there = convertStrength("10 % w/w", { of: "CuSO4·5H2O", to });
    expect(convertStrength(there, { of: "CuSO4·5H2O", to: "% w/w" }).in("%").toNumber()).toBeCloseTo(10, 12);
  });
});

describe("trade scales", () => {
  test("a hydrometer reads back what it was given", () => {
    const w = convertStrength("20 °Bé", { of: "HCl", to: "% w/w" });
    expect(convertStrength(w, { of: "HCl", to: "°Bé" }).in("").toNumber()).toBeCloseTo(20, 6);
  });

  test("ammonia is read on the light scale", () => {
    const w = convertStrength("26 °Bé", { of: "NH3", to: "% w/w", baume: "lighter than water" });
    // the ammonia trade's 26 °Bé is 29.4 % (memory)
    expect(Math.abs(w.in("%").toNumber() - 29.4)).toBeLessThan(2 * w.standardUncertainty!.toNumber());
  });

  test("volumes of oxygen come back", () => {
    const c = convertStrength("100 volumes", { of: "H2O2", to: "mol/L" });
    expect(convertStrength(c, { of: "H2O2", to: "volumes" }).in("").toNumber()).toBeCloseTo(100, 12);
  });
});
