// A solubility diagram of figures that are easy to draw by hand: 10 g at 0 °C, 40 g at 100 °C. The picture is 640 by 420 pixels with
// margins of 62, 24, 34 and 48: 554 pixels for 100 K, so 5.54 to a kelvin, and 338 for 50 g (the next mark over 1.02 × 40 = 40.8 in
// steps of 10), so 6.76 to a gram. Letters are taken for 6.6 pixels wide and 12 high, a gap for 6.
import { facts, solubilityDiagram } from "preparative";
import { describe, expect, it } from "vitest";
import { attempt } from "../../src/foundation/error";

type Grams = readonly (readonly [`${number} °C`, `${number} g`])[];
const own = (points: Grams, formula = "KNO3") => facts({ source: "studio", solubilities: [{ formula, points }] });
const drawn = (points: Grams, more: Partial<Parameters<typeof solubilityDiagram>[0]> = {}) =>
  solubilityDiagram({ formulas: ["KNO3"], facts: own(points), ...more });

const RISING: Grams = [
  ["0 °C", "10 g"],
  ["100 °C", "40 g"],
];
const FLAT: Grams = [
  ["0 °C", "40 g"],
  ["100 °C", "40 g"],
];

const placesOf = (svg: string): [number, number][] =>
  /<path d="M([^"]+)" fill="none" stroke="#000" stroke-width="2"/
    .exec(svg)![1]!
    .split("L")
    .map((place) => place.split(" ").map(Number) as [number, number]);

const labelOf = (svg: string): [number, number] => {
  const [, x, y] = /<text x="([\d.-]+)" y="([\d.-]+)" font-style="italic"/.exec(svg)!;
  return [Number(x), Number(y)];
};

describe("the frame of a diagram", () => {
  const svg = drawn(RISING);
  const lines = svg.split("\n");

  it("has its axes, and marks every 20 K and every 10 g", () => {
    expect(lines).toContain('<path d="M62 34V372H616" fill="none" stroke="#000"/>');
    for (const [t, x] of [
      ["0", "62"],
      ["20", "172.8"],
      ["40", "283.6"],
      ["60", "394.4"],
      ["80", "505.2"],
      ["100", "616"],
    ]) {
      expect(lines).toContain(`<path d="M${x} 372v5" stroke="#000"/>`);
      expect(lines).toContain(`<text x="${x}" y="390" text-anchor="middle">${t}</text>`);
    }
    for (const [grams, y, below] of [
      ["0", "372", "376"],
      ["10", "304.4", "308.4"],
      ["20", "236.8", "240.8"],
      ["30", "169.2", "173.2"],
      ["40", "101.6", "105.6"],
      ["50", "34", "38"],
    ]) {
      expect(lines).toContain(`<path d="M62 ${y}H616" stroke="#ddd"/>`);
      expect(lines).toContain(`<text x="54" y="${below}" text-anchor="end">${grams}</text>`);
    }
    expect(lines.filter((line) => line.includes('v5" stroke="#000"'))).toHaveLength(6);
    expect(lines.filter((line) => line.includes('stroke="#ddd"'))).toHaveLength(6);
    // in the middle of 62 and 616, and of 34 and 372
    expect(lines).toContain('<text x="339" y="412" text-anchor="middle">temperature / °C</text>');
    expect(lines).toContain(
      '<text transform="translate(16 203) rotate(-90)" text-anchor="middle">g anhydrous per 100 g water</text>',
    );
  });

  it("has its figures and the ends of its curve where they belong", () => {
    expect(lines).toContain('<circle cx="62" cy="304.4" r="2.2"/>');
    expect(lines).toContain('<circle cx="616" cy="101.6" r="2.2"/>');
    const places = placesOf(svg);
    expect(places).toHaveLength(25);
    expect([places[0], places[12]![0], places[24]]).toEqual([[62, 304.4], 339, [616, 101.6]]);
  });

  it("takes another size, and a lone temperature for ten kelvin on both sides", () => {
    const small = drawn(RISING, { width: 286, height: 282 }).split("\n");
    // 200 pixels for 100 K and 200 for 50 g
    expect(small[0]).toContain('viewBox="0 0 286 282" width="286" height="282"');
    expect(small).toContain('<circle cx="62" cy="194" r="2.2"/>');
    expect(small).toContain('<circle cx="262" cy="74" r="2.2"/>');
    const lone = drawn([["20 °C", "40 g"]]).split("\n");
    expect(lone).toContain('<circle cx="339" cy="101.6" r="2.2"/>');
    expect(lone).toContain('<text x="62" y="390" text-anchor="middle">10</text>');
    expect(lone).toContain('<text x="616" y="390" text-anchor="middle">30</text>');
    for (const size of [200, 4000]) expect(drawn(RISING, { width: size, height: size })).toContain(`width="${size}"`);
    for (const size of [199, 4001, Number.NaN])
      for (const side of ["width", "height"]) expect(attempt(() => drawn(RISING, { [side]: size })).ok).toBe(false);
  });

  it("marks steps of 1, 2 and 5 times a power of ten", () => {
    const marksOf = (most: `${number} g`) =>
      [
        ...drawn([
          ["0 °C", "0.01 g"],
          ["100 °C", most],
        ]).matchAll(/text-anchor="end">([^<]+)</g),
      ].map(([, mark]) => mark);
    // a sixth of 5.8 is 0.97: steps of 1 up to the next over 5.92; of 8 it is 1.33: of 2; of 24 it is 4: of 5; of 0.24 it is 0.04: of 0.05
    expect(marksOf("5.8 g")).toEqual(["0", "1", "2", "3", "4", "5", "6"]);
    expect(marksOf("8 g")).toEqual(["0", "2", "4", "6", "8", "10"]);
    expect(marksOf("24 g")).toEqual(["0", "5", "10", "15", "20", "25"]);
    expect(marksOf("0.24 g")).toEqual(["0", "0.05", "0.1", "0.15", "0.2", "0.25"]);
  });
});

describe("the points of a plan", () => {
  const points = [
    { celsius: 50, grams: 30, label: "hot" },
    { celsius: 0, grams: 10, label: "a<b" },
  ];
  const lines = drawn(RISING, { points }).split("\n");

  it("are diamonds with their labels nine pixels to the right", () => {
    expect(lines).toContain(
      '<path d="M339 163.2l6 6l-6 6l-6 -6z" fill="#fff" stroke="#000" stroke-width="1.5"/>' +
        '<text x="348" y="173.2" paint-order="stroke" stroke="#fff" stroke-width="3">hot</text>',
    );
    expect(lines).toContain(
      '<path d="M62 298.4l6 6l-6 6l-6 -6z" fill="#fff" stroke="#000" stroke-width="1.5"/>' +
        '<text x="71" y="308.4" paint-order="stroke" stroke="#fff" stroke-width="3">a&lt;b</text>',
    );
    expect(lines.join("\n")).not.toContain("url(#");
  });

  it("are joined where a path is asked for, two of them or more", () => {
    const path = drawn(RISING, { points, path: true });
    const [, id] = / id="([^"]+)-title"/.exec(path)!;
    expect(path.split("\n")).toContain(
      `<path d="M339 169.2L62 304.4" fill="none" stroke="#555" stroke-width="1.5" stroke-dasharray="4 3" marker-end="url(#${id}-arrow)"/>`,
    );
    expect(path.indexOf("marker-end")).toBeLessThan(path.indexOf(">hot<"));
    expect(drawn(RISING, { points: points.slice(0, 1), path: true })).not.toContain("url(#");
  });

  it("are told in words, and so are the figures", () => {
    const text = (svg: string) => /<desc id="[^"]+">([^<]*)</.exec(svg)![1];
    const figures = "KNO₃: 10 g per 100 g water at 0 °C, 40 g at 100 °C.";
    expect(text(drawn(RISING))).toBe(figures);
    expect(text(drawn(RISING, { points }))).toBe(`${figures} hot: 30 g at 50 °C. a&lt;b: 10 g at 0 °C.`);
    expect(drawn(RISING)).toMatch(/<title id="[^"]+">Solubility of KNO₃ in water<\/title>/);
  });

  it("are a thousand at most, each with a label", () => {
    const many = (count: number) =>
      attempt(() => drawn(RISING, { points: Array.from({ length: count }, () => points[0]!) }));
    expect(many(1000).ok).toBe(true);
    expect(many(1001)).toMatchObject({ error: { code: "solubility.too-many" } });
    expect(attempt(() => drawn(RISING, { points: [{ celsius: 1, grams: 1 }] as never }))).toMatchObject({
      error: { code: "solubility.missing-option" },
    });
  });
});

describe("the name of a curve", () => {
  // KNO₃ has four letters: 26.4 pixels
  const WIDTH = 26.4;

  it("stands to the left of the middle of a rising curve, over it", () => {
    const svg = drawn(RISING);
    const [x, y] = placesOf(svg)[12]!;
    const [left, base] = labelOf(svg);
    expect(left).toBeCloseTo(x - 6 - WIDTH, 1);
    expect(base).toBeCloseTo(y - 6, 1);
  });

  it("stands to the right of a falling one", () => {
    const svg = drawn([
      ["0 °C", "40 g"],
      ["100 °C", "10 g"],
    ]);
    const [x, y] = placesOf(svg)[12]!;
    const [left, base] = labelOf(svg);
    expect(left).toBeCloseTo(x + 6, 1);
    expect(base).toBeCloseTo(y - 6, 1);
  });

  // beside a level curve, at 339 and 101.6 in the middle: six places, each taken by a point in it
  const places = [
    { name: "left above", at: [-6 - WIDTH, -6], point: [-31.4, -12] },
    { name: "right above", at: [6, -6], point: [31.4, -12] },
    { name: "right below", at: [6, 18], point: [31.4, 12] },
    { name: "left below", at: [-6 - WIDTH, 18], point: [-31.4, 12] },
    { name: "in the middle above", at: [-WIDTH / 2, -12], point: [0, -18] },
    { name: "in the middle below", at: [-WIDTH / 2, 24], point: [0, 18] },
  ] as const;

  it.each(places.map(({ name }, i) => [i, name] as const))("goes past %d places that are taken: %s", (taken) => {
    const points = places.slice(0, taken).map(({ point: [dx, dy] }) => ({
      celsius: (339 + dx - 62) / 5.54,
      grams: (372 - (101.6 + dy)) / 6.76,
      label: "",
    }));
    const [left, base] = labelOf(drawn(FLAT, { points }));
    expect(left).toBeCloseTo(339 + places[taken]!.at[0], 1);
    expect(base).toBeCloseTo(101.6 + places[taken]!.at[1], 1);
  });

  it("moves on along the curve when all six are taken, by a 24th of it", () => {
    const points = places.map(({ point: [dx, dy] }) => ({
      celsius: (339 + dx - 62) / 5.54,
      grams: (372 - (101.6 + dy)) / 6.76,
      label: "",
    }));
    const [left] = labelOf(drawn(FLAT, { points }));
    // 554/24 = 23.083 to one side or the other, or twice that
    const along = [-2, -1, 1, 2].map((k) => 339 + k * 23.083);
    const near = along.flatMap((x) => places.map(({ at }) => Math.abs(x + at[0] - left)));
    expect(Math.min(...near)).toBeLessThan(0.1);
    expect(places.every(({ at }) => Math.abs(339 + at[0] - left) > 1)).toBe(true);
  });

  it("stands beside a lone figure as beside a curve", () => {
    const [left, base] = labelOf(drawn([["20 °C", "40 g"]]));
    expect(left).toBeCloseTo(339 - 6 - WIDTH, 1);
    expect(base).toBeCloseTo(101.6 - 6, 1);
  });

  it("stays in the picture: of a lone figure at its edge too", () => {
    for (const grams of ["0.1 g", "40 g"] as const) {
      const svg = drawn([["20 °C", grams]]);
      const [left, base] = labelOf(svg);
      expect(left).toBeGreaterThanOrEqual(64);
      expect(left + WIDTH).toBeLessThanOrEqual(638);
      expect(base).toBeGreaterThanOrEqual(14);
      expect(base).toBeLessThanOrEqual(369);
    }
  });
});

describe("several curves", () => {
  it("differ by their dashes, in order", () => {
    const svg = solubilityDiagram({
      formulas: ["KNO3", "NaCl", "KCl", "NaNO3"],
      facts: facts({
        source: "studio",
        solubilities: ["KNO3", "NaCl", "KCl", "NaNO3"].map((formula, i) => ({
          formula,
          points: [
            ["0 °C", `${10 + 5 * i} g`],
            ["100 °C", `${40 + 5 * i} g`],
          ] as Grams,
        })),
      }),
    });
    const dashes = [...svg.matchAll(/stroke-width="2"( stroke-dasharray="([^"]+)")?\/>/g)].map(([, , dash]) => dash);
    expect(dashes).toEqual([undefined, "8 4", "2 3", "10 3 2 3"]);
  });
});
