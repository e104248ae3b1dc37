// Solutes with a single figure, most of them at 25 °C, asked about at the temperature of the room; and converted products.
import { describe, expect, it } from "vitest";
import { solubilityOf, trySolubilityOf } from "../../src/solubility/curves/solubility";
import { SOLUBILITY } from "../../src/solubility/data/curves";
import { hydroxidePrecipitationRange } from "../../src/solubility/precipitating/hydroxide";

const lone = SOLUBILITY().filter(({ points }) => points.length === 1);

describe("a lone figure", () => {
  it("answers at 20 °C for every solute whose figure lies within 6 K, 10 K for a converted product", () => {
    const near = lone.filter(
      ({ points, knownAs }) => Math.abs(points[0]![0] - 20) <= (knownAs === "converted" ? 10 : 6),
    );
    expect(near.length).toBeGreaterThan(80);
    for (const { formula } of near) expect(trySolubilityOf(formula, "20 °C").ok, formula).toBe(true);
  });

  it("widens by the steepness of curves: root mean square of d ln S / dT at 25 °C, sparing salts apart", () => {
    // measured on our own curves (CRC Handbook 98th ed. and others), weak ones apart: ln S(30 °C) − ln S(20 °C) over 10 K
    const slopes = SOLUBILITY().flatMap(({ formula, points, weak }) => {
      const [cold, mid, warm] = (["20 °C", "25 °C", "30 °C"] as const).map((at) => trySolubilityOf(formula, at));
      if (points.length < 3 || weak === true || !cold!.ok || !mid!.ok || !warm!.ok) return [];
      const grams = [cold!, mid!, warm!].map((s) => s.value!.perHundredGramsWater.in("g").toNumber());
      return [{ slope: Math.log(grams[2]! / grams[0]!) / 10, sparing: grams[1]! < 1 }];
    });
    const rms = (of: typeof slopes) => Math.sqrt(of.reduce((all, { slope }) => all + slope ** 2, 0) / of.length);
    expect(slopes.length).toBeGreaterThan(200);
    expect(rms(slopes)).toBeCloseTo(0.022, 3);
    expect(rms(slopes.filter(({ sparing }) => sparing))).toBeCloseTo(0.033, 3);
    const drift = (formula: string) =>
      solubilityOf(formula, "20 °C").uncertainty.find(({ cause }) => cause === "distance from the only figure")!
        .relative;
    expect(drift("AgBr")).toBeCloseTo(5 * 0.033, 6);
    expect(drift("NH4Cr(SO4)2")).toBeCloseTo(5 * 0.022, 6);
  });

  it("covers the measured figure of another temperature with twice its uncertainty, for nineteen curves in twenty", () => {
    const inside = SOLUBILITY()
      .filter(({ points }) => points.length >= 3)
      .flatMap(({ formula }) => {
        const [at25, at20] = (["25 °C", "20 °C"] as const).map((at) => trySolubilityOf(formula, at));
        if (!at25!.ok || !at20!.ok) return [];
        const [a, b] = [at25!, at20!].map((s) => s.value!.perHundredGramsWater.in("g").toNumber()) as [number, number];
        return [Math.abs(Math.log(a / b)) <= 2 * 5 * (a < 1 ? 0.033 : 0.022)];
      });
    expect(inside.filter(Boolean).length / inside.length).toBeGreaterThan(0.95);
  });
});

describe("a curve that begins at 25 °C", () => {
  // of 414 solutes; the room of the library is 20 °C
  it("answers at 20 °C, as saying so: 181 g of ammonium thiocyanate and 10.2 g of hydrogen phthalate at 25 °C", () => {
    for (const formula of ["NH4SCN", "KHC8H4O4", "NH4IO3", "Cd(ClO4)2", "MgCr2O7", "Mn(IO3)2", "K2MoO4"]) {
      const answer = solubilityOf(formula, "20 °C");
      expect(answer.kind, formula).toBe("extrapolated");
      expect(answer.warnings.join(), formula).toContain("below the coldest figure, which is at 25 °C");
    }
    // Stephen and Stephen 1963 print 170 g at 20 °C (memory)
    const thiocyanate = solubilityOf("NH4SCN", "20 °C").perHundredGramsWater;
    expect(Math.abs(thiocyanate.in("g").toNumber() - 170)).toBeLessThan(2 * thiocyanate.in("g").toNumber() * 0.04);
    expect(solubilityOf("NaHSO4", "20 °C").kind).toBe("near a single figure");
    expect(trySolubilityOf("Sr(NO2)2", "20 °C").ok, "ten kelvin are too far").toBe(false);
  });

  it("covers the measured figure five kelvin below a figure with twice its uncertainty, for nineteen curves in twenty", () => {
    const inside = SOLUBILITY().flatMap(({ formula, points }) =>
      points.slice(0, -1).flatMap(([near, grams], i) => {
        const [far, farther] = points[i + 1]!;
        const [below, here, beyond] = [near - 5, near, far].map((at) => trySolubilityOf(formula, `${at} °C`));
        if (!below!.ok || !here!.ok || !beyond!.ok || near < 10) return [];
        const solids = [below!, here!, beyond!].map((s) => s.value!.solidPhase);
        if (new Set(solids).size > 1) return [];
        const [s, t] = [Number(grams), Number(farther)];
        const x = (at: number) => -1000 / (at + 273.15);
        const change = (Math.log(s / t) / (x(near) - x(far))) * (x(near - 5) - x(near));
        const found = Math.log(below!.value!.perHundredGramsWater.in("g").toNumber() / s);
        return [Math.abs(found - change) <= 2 * 0.3 * Math.abs(change) + 1e-3];
      }),
    );
    expect(inside.length).toBeGreaterThan(500);
    expect(inside.filter(Boolean).length / inside.length).toBeGreaterThan(0.95);
  });
});

describe("a converted solubility product", () => {
  const converted = SOLUBILITY().filter(({ knownAs }) => knownAs === "converted");

  it("is never called tabulated", () => {
    expect(converted.length).toBe(52);
    for (const { formula } of converted) {
      expect(solubilityOf(formula, "25 °C").kind, formula).toBe("converted");
      expect(solubilityOf(formula, "20 °C").kind, formula).toBe("near a single figure");
    }
  });

  it("says how far it falls short: 37 times for lead carbonate, powers of ten for aluminium phosphate (memory)", () => {
    expect(solubilityOf("PbCO3", "25 °C").warnings.join()).toContain("2 (calcium) to 40 times (lead)");
    expect(solubilityOf("AlPO4", "25 °C").warnings.join()).toContain("100 to 10 000 times");
    expect(solubilityOf("AgBr", "25 °C").warnings.join()).toContain("order of magnitude");
  });
});

describe("hydroxide windows and the hydrolysis of the metal", () => {
  it("counts the first hydroxide complex from the pKa of the aquated ion where the complexes have none", () => {
    // by hand for Bi(III): pKsp 37.89, c 0.1; free Bi 10^(4.11 − 3 pH), BiOH 10^(pH − 1.10) times that: pH 2.03
    const bismuth = hydroxidePrecipitationRange({ metal: "Bi^3+", concentration: "0.1 mol/L" });
    expect(bismuth.complexes).toEqual(["BiOH^2+"]);
    expect(bismuth.byHand.startsAt!.value.toNumber()).toBeCloseTo(2.03, 1);
    // Bi6(OH)12^6+ keeps it: 6 x 4.11 + 0.33 - 6 pH = log(0.1/6) + log γ with log γ = -36 x 0.136 (Davies, 0.5 mol/L): pH 5.28
    expect(bismuth.startsAt!.value.toNumber()).toBeCloseTo(5.28, 1);
    for (const metal of ["La^3+", "Ce^3+", "Be^2+"])
      expect(hydroxidePrecipitationRange({ metal, concentration: "0.1 mol/L" }).complexes, metal).toHaveLength(1);
  });

  it("names the basic salts of the anions a metal is used with (BiOCl from acid, brochantite from blue vitriol)", () => {
    const warned = (metal: string) =>
      hydroxidePrecipitationRange({ metal, concentration: "0.1 mol/L" }).warnings.join();
    expect(warned("Bi^3+")).toContain("BiOCl");
    expect(warned("Cu^2+")).toContain("Cu4SO4(OH)6");
    expect(warned("Fe^3+")).not.toContain("basic salt");
  });
});
