// Pictures: complete, safe SVG that tells its figures in words.
import { describe, expect, it } from "vitest";
import { overPHDiagram, solidsAlongAddition, solidsOverPH, titrationCurve, titrationDiagram } from "../../src";

const curve = titrationCurve({
  flask: { volume: "25 mL", dissolved: [{ formula: "CH3COOH", concentration: "0.1 mol/L" }] },
  burette: { formula: "NaOH", concentration: "0.1 mol/L" },
});
const waste = solidsOverPH({
  ions: [
    { formula: "FeCl3", concentration: "1 mmol/L" },
    { formula: "CuSO4", concentration: "1 mmol/L" },
    { formula: "ZnSO4", concentration: "1 mmol/L" },
  ],
  from: 3,
  to: 13,
});

describe("pictures of the beaker", () => {
  it.each([
    ["titration", titrationDiagram(curve)],
    ["over pH", overPHDiagram(waste)],
    ["solids over pH", overPHDiagram(waste, { show: "solids" })],
  ])("%s: one svg without scripts or outside references", (_, svg) => {
    expect(svg.match(/<svg /g)).toHaveLength(1);
    expect(svg.endsWith("</svg>")).toBe(true);
    expect(svg).not.toMatch(/<script|href| style=|NaN|Infinity|undefined/);
    expect(svg).toMatch(/<title>.+<\/title>/);
  });

  it("tells the end point in the description", () => {
    expect(titrationDiagram(curve)).toMatch(/end points at 25\.00 mL, pH 8\.6/);
  });

  it("draws volumes in any order alike, and refuses a curve on which nothing is added", () => {
    const flask = { volume: "25 mL", dissolved: [{ formula: "CH3COOH", concentration: "0.1 mol/L" }] } as const;
    const burette = { formula: "NaOH", concentration: "0.1 mol/L" } as const;
    const drawn = (at: readonly `${number} mL`[]): string => titrationDiagram(titrationCurve({ flask, burette, at }));
    expect(drawn(["30 mL", "20 mL", "10 mL"])).toBe(drawn(["10 mL", "20 mL", "30 mL"]));
    expect(() => drawn(["0 mL", "0 mL"])).toThrow(/fewer than two points/);
  });

  it("tells from which pH to which each solid stands", () => {
    const svg = overPHDiagram(waste, { show: "solids" });
    expect(svg).toMatch(/<title>Solids over pH: .*Zn\^2\+.*<\/title>/);
    expect(waste.solids.length, "rows to test").toBeGreaterThan(0);
    for (const solid of waste.solids) expect(svg).toContain(`${solid} stands from pH `);
    expect(svg).toContain("solid / (mol/L)");
  });

  it("refuses a size that cannot be drawn", () => {
    expect(() => titrationDiagram(curve, { width: 10 })).toThrowError(
      expect.objectContaining({ code: "aqueous.out-of-reach" }),
    );
  });
});

describe("metals over pH", () => {
  it("takes iron out first and zinc back last (trade: waste neutralised to pH 9 to 10)", () => {
    const at = (pH: number) => waste.points.find((point) => Math.abs(point.pH - pH) < 1e-6)!;
    expect(at(5).dissolved["Fe^3+"]).toBeLessThan(1e-6);
    expect(at(5).dissolved["Cu^2+"]).toBeGreaterThan(1e-4);
    expect(at(9).dissolved["Cu^2+"]).toBeLessThan(1e-6);
    expect(at(13).dissolved["Zn^2+"]).toBeGreaterThan(5 * at(10).dissolved["Zn^2+"]!);
    const zinc = waste.least.find(({ ion }) => ion === "Zn^2+")!;
    expect(zinc.pH.value.toNumber()).toBeGreaterThan(8.5);
    expect(zinc.pH.value.toNumber()).toBeLessThan(10.5);
  });

  it("names the metals in the order of their symbols, whichever falls first", () => {
    expect(waste.points.find(({ solids }) => Object.keys(solids).length > 0)!.solids).toHaveProperty("Fe(OH)3");
    expect(waste.least.map(({ ion }) => ion)).toEqual(["Cu^2+", "Fe^3+", "Zn^2+"]);
  });

  it("follows an addition: alumina forms and dissolves", () => {
    const stretches = solidsAlongAddition({
      water: "1 L",
      dissolved: [{ formula: "AlCl3", amount: "0.1 mol" }],
      add: "NaOH",
      amount: "0.45 mol",
      steps: 90,
    });
    expect(stretches.map(({ solids }) => solids.join())).toEqual(["", "Al(OH)3", ""]);
    // precipitates from 2 to 3 hydroxide for each aluminium on, gone with the fourth
    expect(stretches[1]!.from.value.toNumber()).toBeLessThan(0.25);
    expect(stretches[2]!.from.value.toNumber()).toBeGreaterThan(0.38);
  });
});
