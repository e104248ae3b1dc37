// The solubility diagram read back: curves, figures of the table and points of a plan stand where their figures say.
import { attempt, type SolubilityPicture, solubilityDiagram, solubilityOf } from "preparative";
import { describe, expect, it } from "vitest";
import { branchesOf } from "../../src/solubility/curves/branch";
import { SOLUBILITY, type SolubilityRow } from "../../src/solubility/data/curves";
import { drawingOf, type Point } from "../tools/svg";

const rowOf = (formula: string): SolubilityRow => SOLUBILITY().find((row) => row.formula === formula)!;
const refused = (picture: unknown) => {
  const outcome = attempt(() => solubilityDiagram(picture as SolubilityPicture));
  return outcome.ok ? undefined : outcome.error;
};

/** Is there a drawn point within a pixel of a figure? */
const isDrawn = (points: readonly Point[], [x, y]: Point, half: Point): boolean =>
  points.some(([a, b]) => Math.abs(a - x) < 2 * half[0] && Math.abs(b - y) < 2 * half[1]);

const DRAWN = ["KNO3", "Na2SO4", "ZnSO4", "KNO3 NaCl KCl", "Na2CO3 MgSO4 CuSO4 NaNO3"];

describe("a solubility diagram", () => {
  it.each(DRAWN)("has every figure of the table and every branch where it is: %s", (drawn) => {
    const formulas = drawn.split(" ");
    const svg = solubilityDiagram({ formulas });
    const { lines, spots, half, frame, across, up, labels } = drawingOf(svg);
    const rows = formulas.map(rowOf);
    const figures = rows.flatMap(({ points }) => points.map(([t, grams]): Point => [t, Number(grams)]));
    expect(spots).toHaveLength(figures.length);
    for (const figure of figures) expect(isDrawn(spots, figure, half), String(figure)).toBe(true);
    const branches = rows.flatMap((row) => branchesOf(row)).filter(({ knots }) => knots.length > 1);
    expect(lines).toHaveLength(branches.length);
    for (const [i, { points }] of lines.entries()) {
      const { knots } = branches[i]!;
      expect(points[0]![0]).toBeCloseTo(knots[0]!.celsius, 0);
      expect(points.at(-1)![0]).toBeCloseTo(knots.at(-1)!.celsius, 0);
      for (const end of [knots[0]!, knots.at(-1)!])
        expect(isDrawn([points[0]!, points.at(-1)!], [end.celsius, end.grams], half)).toBe(true);
      // 25 places, even in temperature
      expect(points).toHaveLength(25);
      const step = (points.at(-1)![0] - points[0]![0]) / 24;
      for (const [k, [celsius]] of points.entries())
        expect(Math.abs(celsius - (points[0]![0] + k * step))).toBeLessThan(2 * half[0]);
    }
    // lines that meet in one picture differ by their dashes
    if (lines.length <= 5) expect(new Set(lines.map(({ dash }) => dash)).size).toBe(lines.length);
    // the frame: from the coldest to the hottest figure, from nothing to a mark over the highest
    const temperatures = figures.map(([t]) => t);
    expect(frame.x[0]).toBeCloseTo(Math.min(...temperatures), 0);
    expect(frame.x[1]).toBeCloseTo(Math.max(...temperatures), 0);
    const most = Math.max(...figures.map(([, grams]) => grams));
    expect(frame.y[0]).toBeCloseTo(0, 6);
    expect(frame.y[1]).toBeGreaterThanOrEqual(1.02 * most * 0.999);
    expect(frame.y[1] - 1.02 * most).toBeLessThan(up[1]! - up[0]!);
    for (const marks of [across, up]) {
      const step = marks[1]! - marks[0]!;
      expect([1, 2, 5, 10]).toContain(Number((step / 10 ** Math.floor(Math.log10(step) + 1e-9)).toPrecision(6)));
      expect(marks.length).toBeGreaterThanOrEqual(4);
      expect(marks.length).toBeLessThanOrEqual(9);
    }
    expect(labels.length).toBe(rows.flatMap((row) => branchesOf(row)).filter(({ knots }) => knots.length > 0).length);
  });

  /** Names with the room they take: 6.6 pixels a letter, 12 a line. */
  const namesOf = (drawn: string) => {
    const drawing = drawingOf(solubilityDiagram({ formulas: drawn.split(" ") }));
    const { labels, half } = drawing;
    const boxes = labels.map(({ text, at: [x, y] }) => ({
      text,
      left: x,
      right: x + text.length * 6.6 * 2 * half[0],
      bottom: y,
      top: y + 12 * 2 * half[1],
    }));
    return { ...drawing, boxes };
  };

  it.each([
    ...DRAWN,
    // names of crowded curves, which stand on each other where nobody keeps them apart
    "CaBr2 (NH4)2S2O8 SbCl3",
    "NH4I Ba(NO2)2 Cd(NO3)2",
    "Cd(NO3)2 CdI2 (NH4)2SO3 (NH4)2HPO4",
    "BaS BaI2 H3BO3",
  ])("has its names apart from each other: %s", (drawn) => {
    const { boxes } = namesOf(drawn);
    for (const [i, box] of boxes.entries())
      for (const other of boxes.slice(i + 1)) {
        const apart =
          box.right < other.left || other.right < box.left || box.top < other.bottom || other.top < box.bottom;
        expect(apart, `${box.text} meets ${other.text}`).toBe(true);
      }
  });

  it.each(DRAWN)("has its names inside the picture and clear of all lines: %s", (drawn) => {
    const { boxes, lines, half, frame, width } = namesOf(drawn);
    for (const box of boxes) {
      expect(box.left).toBeGreaterThanOrEqual(frame.x[0]);
      expect((box.right - frame.x[0]) / (2 * half[0]) + 62).toBeLessThanOrEqual(width);
      expect(box.bottom).toBeGreaterThan(0);
      for (const { points } of lines)
        for (const [x, y] of points)
          expect(x > box.left && x < box.right && y > box.bottom && y < box.top, `${box.text} on a line`).toBe(false);
    }
  });

  it("marks the points of a plan with their names and joins them on request", () => {
    const points = [
      { celsius: 80, grams: 150, label: "hot" },
      { celsius: 10, grams: 150, label: "cooled" },
      { celsius: 10, grams: 21, label: "liquor" },
    ];
    const joined = solubilityDiagram({ formulas: ["KNO3"], points, path: true });
    const { half, frame } = drawingOf(joined);
    const drawn = [...joined.matchAll(/<path d="M([\d.]+) ([\d.]+)l6 6l-6 6l-6 -6z"/g)].map(([, x, y]) => [
      frame.x[0] + (Number(x) - 62) * 2 * half[0],
      frame.y[1] - (Number(y) + 6 - 34) * 2 * half[1],
    ]);
    for (const [i, { celsius, grams }] of points.entries()) {
      expect(drawn[i]![0]).toBeCloseTo(celsius, 1);
      expect(drawn[i]![1]).toBeCloseTo(grams, 0);
    }
    for (const { label, grams, celsius } of points) {
      expect(joined).toContain(`>${label}</text>`);
      expect(joined).toContain(`${label}: ${grams} g at ${celsius} °C.`);
    }
    const arrow = /marker-end="url\(#([^)]*)\)"/.exec(joined)![1]!;
    expect(joined).toContain(`id="${arrow}"`);
    const path = /<path d="([^"]*)"[^>]*marker-end/.exec(joined)![1]!;
    expect(path.match(/[ML]/g)).toEqual(["M", "L", "L"]);
    const apart = solubilityDiagram({ formulas: ["KNO3"], points });
    expect(apart).not.toContain("marker-end");
    expect(solubilityDiagram({ formulas: ["KNO3"], points: points.slice(0, 1), path: true })).not.toContain(
      "marker-end",
    );
    // several pictures in one page have names of their own
    const id = (svg: string): string => /<title id="([^"]*)"/.exec(svg)![1]!;
    expect(id(joined)).not.toBe(id(apart));
    expect(id(solubilityDiagram({ formulas: ["KNO3"] }))).not.toBe(id(solubilityDiagram({ formulas: ["NaCl"] })));
    expect(id(solubilityDiagram({ formulas: ["KNO3"] }))).not.toBe(
      id(solubilityDiagram({ formulas: ["KNO3"], width: 300 })),
    );
  });

  it("grows to hold a point outside of the curve", () => {
    const { frame } = drawingOf(
      solubilityDiagram({ formulas: ["KCl"], points: [{ celsius: 120, grams: 90, label: "far" }] }),
    );
    expect(frame.x[1]).toBeCloseTo(120, 0);
    expect(frame.y[1]).toBeGreaterThan(91);
  });

  it("draws a lone figure with ten kelvin on both sides", () => {
    const lone = SOLUBILITY().find(({ points }) => points.length === 1 && Number(points[0]![1]) > 1)!;
    const { frame, spots, lines } = drawingOf(solubilityDiagram({ formulas: [lone.formula] }));
    expect(lines).toEqual([]);
    const [celsius] = lone.points[0]!;
    expect(frame.x[0]).toBeCloseTo(celsius - 10, 1);
    expect(frame.x[1]).toBeCloseTo(celsius + 10, 1);
    expect(spots).toHaveLength(1);
  });

  it("says in words what it draws: both ends of each curve and where the solid changes", () => {
    for (const formula of ["KNO3", "Na2SO4", "ZnSO4"]) {
      const { points, solids } = rowOf(formula);
      const svg = solubilityDiagram({ formulas: [formula] });
      const [[from, low], [to, high]] = [points[0]!, points.at(-1)!];
      expect(svg).toContain(`${low} g per 100 g water at ${from} °C, ${high} g at ${to} °C`);
      for (const { upTo } of solids.slice(0, -1)) expect(svg).toContain(`${upTo} °C`);
      expect(Number(low)).toBeCloseTo(solubilityOf(formula, `${from} °C`).perHundredGramsWater.toNumber("g"), 6);
    }
  });

  it("is of the size asked for, and refused where nothing can be drawn", () => {
    for (const [width, height] of [
      [200, 200],
      [4000, 4000],
    ] as const) {
      const drawing = drawingOf(solubilityDiagram({ formulas: ["KNO3"], width, height }));
      expect([drawing.width, drawing.height]).toEqual([width, height]);
    }
    for (const size of [{ width: 199 }, { width: 4001 }, { height: 199 }, { height: 4001 }])
      expect(refused({ formulas: ["KNO3"], ...size })).toMatchObject({
        code: "solubility.out-of-reach",
        message: expect.stringContaining(Object.keys(size)[0]!),
      });
    expect(refused({ formulas: [] })?.code).toBe("solubility.missing-option");
    expect(refused({ formulas: ["KNO3", "NaCl", "KCl", "NaNO3", "LiCl"] })?.code).toBe("solubility.too-many");
    expect(refused({ formulas: ["C60"] })?.code).toBe("solubility.no-data");
    const many = (count: number) => Array.from({ length: count }, () => ({ celsius: 20, grams: 1, label: "x" }));
    expect(refused({ formulas: ["KNO3"], points: many(1000) })).toBeUndefined();
    expect(refused({ formulas: ["KNO3"], points: many(1001) })?.code).toBe("solubility.too-many");
    expect(refused({ formulas: ["KNO3"], points: [{ celsius: 20, grams: 1 }] })?.code).toBe(
      "solubility.missing-option",
    );
    expect(refused({ formulas: ["KNO3"], points: [{ celsius: Number.NaN, grams: 1, label: "x" }] })?.code).toBe(
      "solubility.out-of-reach",
    );
  });
});
