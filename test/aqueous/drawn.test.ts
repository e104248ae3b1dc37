// The pictures read back: every point, mark and label stands where its figure says, to a tenth of a pixel.
import {
  dissolvedOverExcess,
  endPoints,
  overExcessDiagram,
  overPHDiagram,
  solidsOverPH,
  titrationCurve,
  titrationDiagram,
} from "preparative";
import { describe, expect, it } from "vitest";
import { type Drawing, drawingOf, type Point } from "../tools/svg";

const acetic = titrationCurve({
  flask: { volume: "25 mL", dissolved: [{ formula: "CH3COOH", concentration: "0.1 mol/L" }] },
  burette: { formula: "NaOH", concentration: "0.1 mol/L" },
});
const waste = solidsOverPH({
  ions: [
    { formula: "FeCl3", concentration: "1 mmol/L" },
    { formula: "ZnSO4", concentration: "2 mmol/L" },
  ],
  from: 3,
  to: 13,
  step: 0.25,
});
const alumina = dissolvedOverExcess({
  ion: "Al^3+",
  water: "0.6 kg",
  dissolved: [{ formula: "AlCl3", amount: "0.1 mol" }],
  add: "NaOH",
  needed: "0.3 mol",
  amount: "0.45 mol",
  steps: 60,
});
const silver = dissolvedOverExcess({
  ion: "Ag+",
  water: "1 kg",
  dissolved: [{ formula: "AgNO3", amount: "0.01 mol" }],
  add: "NaCl",
  amount: "0.5 mol",
  steps: 50,
});

/** Each of those points within half a pixel of the one drawn in its place. */
function expectDrawn(points: readonly Point[], wanted: readonly Point[], { half }: Drawing): void {
  expect(points).toHaveLength(wanted.length);
  for (const [i, [x, y]] of points.entries()) {
    expect(Math.abs(x - wanted[i]![0])).toBeLessThan(half[0]);
    expect(Math.abs(y - wanted[i]![1])).toBeLessThan(half[1]);
  }
}

/** Marks from one end of an axis to the other, in even steps of 1, 2 or 5 times a power of ten, none left out. */
function expectRound(marks: readonly number[], [from, to]: readonly [number, number], most = 10): void {
  const step = marks[1]! - marks[0]!;
  expect([1, 2, 5, 10]).toContain(Number((step / 10 ** Math.floor(Math.log10(step) + 1e-9)).toPrecision(6)));
  for (const [i, mark] of marks.entries()) expect(mark).toBeCloseTo(marks[0]! + i * step, 9);
  expect(marks[0]! - from).toBeLessThan(step);
  expect(to - marks.at(-1)!).toBeLessThan(step * (1 + 1e-6));
  expect(marks.length).toBeGreaterThan(3);
  expect(marks.length).toBeLessThanOrEqual(most);
}

describe("a titration curve", () => {
  const drawing = drawingOf(titrationDiagram(acetic));

  it("runs through its points and marks the end", () => {
    expectDrawn(
      drawing.lines[0]!.points,
      acetic.points.map(({ volume, pH }) => [volume.toNumber("mL"), pH.toNumber()]),
      drawing,
    );
    const [end] = endPoints(acetic);
    expectDrawn(drawing.spots, [[end!.volume.toNumber("mL"), end!.pH.toNumber()]], drawing);
    expect(drawing.labels.map(({ text }) => text)).toEqual([`25.00 mL, pH ${end!.pH.toNumber().toFixed(2)}`]);
    // beside its spot, to the right
    expect(drawing.labels[0]!.at[0]).toBeGreaterThan(drawing.spots[0]![0]);
    expect(drawing.labels[0]!.at[0]).toBeLessThan(drawing.spots[0]![0] + 20 * drawing.half[0]);
  });

  it("has axes from the first to the last figure, the pH in whole units", () => {
    const { frame, across, up } = drawing;
    expect(frame.x[0]).toBeCloseTo(0, 1);
    expect(Math.abs(frame.x[1] - acetic.to.toNumber("mL"))).toBeLessThan(drawing.half[0]);
    // 2.9 at the start and 11 to 12 in the end
    expect(frame.y.map(Math.round)).toEqual([2, 12]);
    expect(up).toEqual([2, 4, 6, 8, 10, 12]);
    expectRound(across, frame.x);
  });

  it("marks each unit where the pH moves by eight or less", () => {
    const buffered = titrationCurve({
      flask: { volume: "25 mL", dissolved: [{ formula: "CH3COOH", concentration: "0.1 mol/L" }] },
      burette: { formula: "NaOH", concentration: "0.1 mol/L" },
      to: "20 mL",
    });
    const { up, spots, frame } = drawingOf(titrationDiagram(buffered));
    expect(up).toEqual([2, 3, 4, 5, 6]);
    expect(spots).toEqual([]);
    expect(frame.x[1]).toBeCloseTo(20, 1);
    expect(titrationDiagram(buffered)).toContain("; no end point.");
  });

  it("takes the size it is given, from 200 to 4000 pixels", () => {
    for (const [width, height] of [
      [200, 4000],
      [4000, 200],
      [640, 420],
    ] as const) {
      const svg = titrationDiagram(acetic, { width, height });
      const { width: drawn, height: high, frame, half, lines } = drawingOf(svg);
      expect([drawn, high]).toEqual([width, height]);
      expect(svg).toContain(`viewBox="0 0 ${width} ${height}"`);
      // the frame leaves room for the figures: 84 pixels of the width and 64 of the height
      expect((frame.x[1] - frame.x[0]) / (2 * half[0])).toBeCloseTo(width - 84, 0);
      expect((frame.y[1] - frame.y[0]) / (2 * half[1])).toBeCloseTo(height - 64, 0);
      expect(lines[0]!.points.length).toBe(acetic.points.length);
    }
    for (const size of [{ width: 199 }, { height: 199 }, { width: 4001 }, { height: 4001 }])
      expect(() => titrationDiagram(acetic, size)).toThrowError(
        expect.objectContaining({
          code: "aqueous.out-of-reach",
          message: expect.stringContaining(Object.keys(size)[0]!),
        }),
      );
  });

  it("is not drawn of one point", () => {
    const one = titrationCurve({
      flask: { volume: "25 mL", dissolved: [{ formula: "HCl", concentration: "0.1 mol/L" }] },
      burette: { formula: "NaOH", concentration: "0.1 mol/L" },
      at: ["5 mL"],
    });
    expect(() => titrationDiagram(one)).toThrowError(expect.objectContaining({ code: "aqueous.out-of-reach" }));
  });
});

describe("metals over pH", () => {
  it("draws the logarithm of what is dissolved, each ion with dashes of its own, and no lower than 1e-8 mol/L", () => {
    const drawing = drawingOf(overPHDiagram(waste));
    expect(drawing.lines).toHaveLength(2);
    expect(new Set(drawing.lines.map(({ dash }) => dash)).size).toBe(2);
    for (const [i, ion] of ["Zn^2+", "Fe^3+"].entries()) {
      const line = drawing.lines.find(
        ({ points }) => Math.abs(points[0]![1] - Math.log10(waste.points[0]!.dissolved[ion]!)) < drawing.half[1],
      );
      expect(line?.points.length, `${ion} ${i}`).toBe(waste.points.length);
      expectDrawn(
        line!.points,
        waste.points.map(({ pH, dissolved }) => [pH, Math.max(-8, Math.log10(dissolved[ion]!))]),
        drawing,
      );
    }
    expect(drawing.frame.y[0]).toBeCloseTo(-8, 2);
    // 2 mmol/L is the most: the axis ends at the next power of ten
    expect(drawing.frame.y[1]).toBeCloseTo(-2, 2);
    expect(drawing.up).toEqual([-8, -7, -6, -5, -4, -3, -2]);
    expect(drawing.across).toEqual([3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13]);
    expect(drawing.labels.map(({ text }) => text).sort()).toEqual(["Fe³⁺", "Zn²⁺"]);
  });

  it("draws each solid where it stands, and its label where there is most of it", () => {
    const drawing = drawingOf(overPHDiagram(waste, { show: "solids" }));
    expect(drawing.lines).toHaveLength(waste.solids.length);
    for (const [i, solid] of waste.solids.entries()) {
      const { points } = drawing.lines[i]!;
      const here = waste.points.filter(({ solids }) => (solids[solid] ?? 0) > 0);
      // one point more on each side, where nothing of it stands
      expect(points.length).toBeLessThanOrEqual(here.length + 2);
      for (const { pH, solids } of here)
        expect(
          points.some(([x, y]) => Math.abs(x - pH) < drawing.half[0] && Math.abs(y - solids[solid]!) < drawing.half[1]),
          `${solid} at ${pH}`,
        ).toBe(true);
      const most = Math.max(...here.map(({ solids }) => solids[solid]!));
      const label = drawing.labels[i]!;
      expect(label.at[1]).toBeGreaterThan(0.9 * most);
    }
    const most = Math.max(...waste.points.flatMap(({ solids }) => Object.values(solids)));
    expect(drawing.frame.y[0]).toBeCloseTo(0, 6);
    expect(drawing.frame.y[1] / most).toBeCloseTo(1.08, 2);
    expectRound(drawing.up, drawing.frame.y);
  });

  it("divides a narrow range of pH finely", () => {
    const narrow = solidsOverPH({ ions: [{ formula: "ZnSO4", concentration: "0.01 mol/L" }], from: 7, to: 9 });
    const { across, frame } = drawingOf(overPHDiagram(narrow));
    expectRound(across, frame.x);
    expect(across.length).toBeGreaterThan(4);
  });

  it("is not drawn where no solid forms", () => {
    const clear = solidsOverPH({ ions: [{ formula: "NaCl", concentration: "0.01 mol/L" }], from: 3, to: 5 });
    expect(() => overPHDiagram(clear)).toThrowError(expect.objectContaining({ code: "aqueous.out-of-reach" }));
    expect(() => overPHDiagram({ ...waste })).toThrowError(expect.objectContaining({ code: "aqueous.bad-option" }));
  });
});

describe("what an excess leaves", () => {
  it.each([
    ["over the excess in per cent", alumina, (added: number) => 100 * (added / 0.3 - 1)],
    ["over the amount", silver, (added: number) => added],
  ] as const)("is drawn %s, the least among the points and marked", (_, over, place) => {
    const drawing = drawingOf(overExcessDiagram(over));
    const least = over.least!;
    const spot: Point = [place(least.added.toNumber("mol")), Math.log10(least.concentration.toNumber("mol/L"))];
    const floor = ([x, y]: Point): Point => [x, Math.max(-8, y)];
    expectDrawn(drawing.spots, [floor(spot)], drawing);
    const wanted = [
      ...over.points.map(({ added, dissolved }): Point => [place(added), Math.log10(dissolved)]),
      spot,
    ].sort(([a], [b]) => a - b);
    expectDrawn(drawing.lines[0]!.points, wanted.map(floor), drawing);
    expectRound(drawing.across, drawing.frame.x);
    expect(drawing.frame.x[0]).toBeCloseTo(place(over.points[0]!.added), 0);
    expect(drawing.frame.x[1] / place(over.points.at(-1)!.added)).toBeCloseTo(1, 2);
  });

  it("takes two points, not one", () => {
    const over = (amount: "5 mol" | "20 mol") =>
      dissolvedOverExcess({
        ion: "Ag+",
        water: "1 kg",
        dissolved: [
          { formula: "AgNO3", amount: "0.01 mol" },
          { formula: "NaCl", amount: "0.01 mol" },
        ],
        add: "NaCl",
        amount,
        steps: 2,
      });
    // beyond 3 mol/kg the activity model ends: 0 and 2.5 mol are points, 5 and 10 mol are not
    expect(over("5 mol").points).toHaveLength(2);
    expect(drawingOf(overExcessDiagram(over("5 mol"))).lines[0]!.points.length).toBeGreaterThanOrEqual(2);
    expect(over("20 mol").points).toHaveLength(1);
    expect(() => overExcessDiagram(over("20 mol"))).toThrowError(
      expect.objectContaining({ code: "aqueous.out-of-reach" }),
    );
  });

  it("names what is across and ends with the share that is dissolved", () => {
    expect(overExcessDiagram(alumina)).toContain("NaOH in excess of what the equation needs / %");
    expect(overExcessDiagram(silver)).toContain("NaCl / mol");
    const last = silver.points.at(-1)!.share;
    expect(overExcessDiagram(silver)).toContain(`At the end ${(100 * last).toPrecision(3)} % is dissolved.`);
    expect(overExcessDiagram(silver)).toMatch(/Least Ag\+ dissolved: [\d.]+ mol\/L at 0\.\d+ mol\./);
  });
});
