// Metals by their potentials, and what keeps them from what these allow. Standard potentials: any handbook (from memory).
import { doesItGo } from "preparative";
import { describe, expect, it } from "vitest";

const ask = (equation: string, product: string, materials?: Parameters<typeof doesItGo>[0]["materials"]) =>
  doesItGo({ equation, product, materials });
const verdict = (equation: string, product: string): string => ask(equation, product).verdict;

describe("metals", () => {
  it("above hydrogen dissolve in dilute acid, below it do not", () => {
    for (const [metal, salt] of [
      ["Mg", "MgCl2"],
      ["Zn", "ZnCl2"],
      ["Fe", "FeCl2"],
      ["Sn", "SnCl2"],
      ["Ni", "NiCl2"],
    ])
      expect(verdict(`${metal} + HCl -> ${salt} + H2`, salt!), metal).toBe("goes");
    for (const [metal, salt] of [
      ["Cu", "CuCl2"],
      ["Bi", "BiCl3"],
      ["Sb", "SbCl3"],
    ])
      expect(verdict(`${metal} + HCl -> ${salt} + H2`, salt!), metal).toBe("does not go");
  });

  it("follow the series when they displace each other", () => {
    const series = [
      ["Zn", "ZnSO4"],
      ["Fe", "FeSO4"],
      ["Ni", "NiSO4"],
      ["Cu", "CuSO4"],
    ] as const;
    let tested = 0;
    for (const [i, [metal, own]] of series.entries()) {
      for (const [j, [other, salt]] of series.entries())
        if (i !== j)
          expect(verdict(`${metal} + ${salt} -> ${own} + ${other}`, own), `${metal} in ${salt}`).toBe(
            i < j ? "goes" : "does not go",
          );
      tested += 1;
    }
    expect(tested).toBe(series.length);
  });

  it("give nitrogen oxides with nitric acid, not hydrogen", () => {
    expect(verdict("Cu + HNO3 -> Cu(NO3)2 + NO + H2O", "Cu(NO3)2")).toBe("goes");
    expect(verdict("Ag + HNO3 -> AgNO3 + NO2 + H2O", "AgNO3")).toBe("goes");
    expect(verdict("Zn + HNO3 -> Zn(NO3)2 + H2", "Zn(NO3)2")).toBe("does not go");
  });

  it("dissolve with peroxide where acid alone leaves them: +1.78 against +0.34 V", () => {
    const etched = ask("Cu + H2O2 + H2SO4 -> CuSO4 + H2O", "CuSO4", [
      { name: "copper", form: "Cu" },
      { name: "peroxide", form: "H2O2", strength: "3 %" },
      { name: "acid", form: "H2SO4", strength: "20 %" },
    ]);
    expect(etched.verdict).toBe("goes");
  });

  // The reduction of sulfuric acid by copper needs the concentrated acid near 200 °C (common practice, no source).
  it("give sulfur dioxide with no sulfuric acid that a plan heats, and the nearest way is said", () => {
    const asked = (strength: "96 %" | "20 %") =>
      ask("Cu + H2SO4 -> CuSO4 + SO2 + H2O", "CuSO4", [
        { name: "copper", form: "Cu" },
        { name: "acid", form: "H2SO4", strength },
      ]);
    for (const strength of ["96 %", "20 %"] as const) {
      const { verdict: given, reasons } = asked(strength);
      expect(given).toBe("does not go");
      expect(reasons[0]!.text).toMatch(/200 °C.*hydrogen peroxide/);
    }
  });

  it("are stopped by a film: aluminium in nitric acid, with no potential against it", () => {
    const f = ask("Al + HNO3 -> Al(NO3)3 + NO + H2O", "Al(NO3)3");
    expect(f.verdict).toBe("does not go");
    expect(f.reasons[0]!.code).toBe("passive");
  });

  it("are only slow in others, and that is said of what goes", () => {
    const f = ask("Al + H2SO4 -> Al2(SO4)3 + H2", "Al2(SO4)3");
    expect(f.verdict).toBe("goes");
    expect(f.reasons.map(({ code }) => code)).toContain("passive");
  });

  it("are helped by an insoluble salt: silver iodide lowers silver's potential to -0.15 V, copper's to copper(I) chloride rises", () => {
    const silver = ask("Ag + HI -> AgI + H2", "AgI");
    expect(silver.verdict).toBe("goes");
    // E = 0.80 - 0.0592 × 16.08 = -0.15 V
    const own = silver.reasons.find(({ code }) => code === "potentials")!.numbers[1]!;
    expect(own.in("V").toNumber()).toBeCloseTo(-0.15, 2);
    // Cu + Cu(II) -> Cu(I): 0.16 - 0.52 V alone, with pKsp 6.7 of the chloride 0.56 - 0.12
    expect(verdict("CuCl2 + Cu -> CuCl", "CuCl")).toBe("goes");
  });

  it("are taken by lye only where they are amphoteric", () => {
    expect(verdict("Al + NaOH + H2O -> Na[Al(OH)4] + H2", "Na[Al(OH)4]")).not.toBe("does not go");
    expect(verdict("Ni + NaOH + H2O -> Na2[Ni(OH)4] + H2", "Na2[Ni(OH)4]")).toBe("does not go");
  });

  it("meet water first where they are base enough: magnesium in zinc chloride gives hydrogen beside zinc", () => {
    const f = ask("Mg + ZnCl2 -> MgCl2 + Zn", "Zn");
    expect(f.verdict).toBe("goes in part");
    expect(f.reasons[0]!.code).toBe("attacks-water");
  });

  it("do not go backwards in iron(III): copper is etched, gold is not", () => {
    // the liquor holds twice as much iron(II) chloride: that is what crystallises from it
    expect(verdict("Cu + FeCl3 -> CuCl2 + FeCl2", "CuCl2")).toBe("another solid forms");
    expect(verdict("Fe + FeCl3 -> FeCl2", "FeCl2")).toBe("goes");
    expect(verdict("Au + FeCl3 -> AuCl3 + FeCl2", "AuCl3")).toBe("does not go");
  });
});
