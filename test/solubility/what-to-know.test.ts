// What a figure says of itself: how sure it is, what to know before relying on it, and, where there is none, what is nearest.
import {
  attempt,
  gasSolubility,
  solubilityDiagram,
  solubilityOf,
  solubilityProduct,
  waterToDissolve,
} from "preparative";
import { describe, expect, it } from "vitest";
import { GASES, SOLUBILITY_PRODUCTS } from "../../src/aqueous/internal";
import { SOLUBILITY } from "../../src/solubility/data/curves";

/** The first row of each solid and form: the one that is handed out. */
const ROWS = [
  ...new Map(
    SOLUBILITY_PRODUCTS()
      .filter(({ convention }) => convention !== "free-sulfide")
      .reverse()
      .map((row) => [`${row.solid} ${row.form}`, row]),
  ).values(),
];

const refused = (call: () => unknown) => {
  const outcome = attempt(call);
  if (outcome.ok) throw new Error("not refused");
  const { code, message, hint = "", details } = outcome.error;
  return { code, message: message.split("\n")[0]!, hint, details };
};

describe("where the table has nothing", () => {
  it("sends a gas to its own table, anything else to the balance", () => {
    const hint = (formula: string) => {
      const outcome = attempt(() => solubilityOf(formula, "20 °C"));
      return outcome.ok ? undefined : outcome.error.hint;
    };
    expect(GASES().length, "rows to test").toBeGreaterThan(0);
    for (const { gas } of GASES()) expect(hint(gas), gas).toMatch(/ask gasSolubility|rules/);
    expect(hint("CO2")).toBe("as a gas over water it is known: ask gasSolubility");
    expect(hint("C60")).toBe("measure it, or pass your own figure");
  });

  it("names the gases that are known", () => {
    const outcome = attempt(() => gasSolubility("UF6", "25 °C"));
    const hint = outcome.ok ? "" : (outcome.error.hint ?? "");
    for (const gas of ["CO2", "O2", "NH3"]) expect(hint).toContain(gas);
  });

  it("takes a figure of the caller's own as it is, with nothing to warn of", () => {
    const own = waterToDissolve({ formula: "NaCl", mass: "10 g", temperature: "20 °C", solubility: "40 g" });
    expect(own.warnings).toEqual([]);
    // 10 g at 40 g in 100 g of water
    expect(own.water.toNumber("g")).toBeCloseTo(25, 9);
  });
});

describe("a solubility product", () => {
  it("warns of a doubtful constant, of a soluble salt and of what the row notes, and of nothing else", () => {
    const counts = { doubtful: 0, soluble: 0, plain: 0 };
    for (const { solid, form, doubtful, soluble, note } of ROWS) {
      const found = solubilityProduct(solid, form);
      if (found.solid !== solid || found.form !== form) continue;
      const begins = (words: string): boolean => found.warnings.some((text) => text.startsWith(words));
      expect(begins("a doubtful constant: sources"), solid).toBe(doubtful === true);
      expect(begins("a soluble salt: use its measured"), solid).toBe(soluble === true);
      expect(found.warnings.length, solid).toBe(
        [doubtful === true, soluble === true, note !== undefined].filter(Boolean).length,
      );
      if (doubtful === true) counts.doubtful += 1;
      if (soluble === true) counts.soluble += 1;
      if (found.warnings.length === 0) counts.plain += 1;
    }
    expect(Math.min(...Object.values(counts))).toBeGreaterThan(3);
  });

  it("is 10^-pKsp, with the uncertainty that a root of the spread of its sources gives", () => {
    // barium sulfate 9.98 (NBS): 1.05e-10; a lone source is trusted to 0.1, which is ln 10 / 10 = 23 % of Ksp
    const { value, pKsp } = solubilityProduct("BaSO4");
    expect(value.toNumber("")).toBeCloseTo(10 ** -9.98, 12);
    const share = value.standardUncertainty!.toNumber() / value.toNumber("");
    expect(share).toBeCloseTo(Math.LN10 * pKsp.standardUncertainty!.toNumber(), 3);
    for (const { solid, form, range } of ROWS) {
      const own = solubilityProduct(solid, form);
      if (own.solid !== solid || own.form !== form) continue;
      const half = range === undefined ? 0 : (Number(range[1]) - Number(range[0])) / 2;
      // an even spread over its half width, GUM 4.3.7
      const even = Math.max(0.1, half / Math.sqrt(3));
      expect(Math.abs(own.pKsp.standardUncertainty!.toNumber() / even - 1), solid).toBeLessThan(0.05);
    }
  });

  it("is refused for what has none, by the text that was asked", () => {
    expect(refused(() => solubilityProduct("La(CN)3"))).toEqual({
      code: "solubility.no-data",
      message: "no solubility product of La(CN)3",
      hint: "if you know it, molarSolubility takes it as ksp",
      details: { solid: "La(CN)3", form: undefined },
    });
    const form = refused(() => solubilityProduct("Mg(OH)2", "blue"));
    expect([form.code, form.message]).toEqual(["solubility.no-data", "no form 'blue' of Mg(OH)2"]);
    expect(form.hint).toContain("fresh");
  });
});

describe("a gas in water", () => {
  // The two bases agree within 2 to 8 % once the vapour pressure is allowed for: some percent, and more for those that react
  it.each([
    ["CO2", 1.5],
    ["O2", 1.5],
    ["H2S", 1.5],
    ["Cl2", 2],
    ["SO2", 5],
    ["NH3", 5],
  ] as const)("%s is known to %d %% at any temperature", (gas, percent) => {
    for (const celsius of ["12 °C", "20 °C", "35 °C"] as const) {
      const { perHundredGramsWater: grams } = gasSolubility(gas, celsius);
      expect((100 * grams.standardUncertainty!.toNumber()) / grams.toNumber("g")).toBeCloseTo(percent, 1);
    }
  });

  it("says that its figures are recalled, and of which gas", () => {
    const [carbonDioxide, ammonia] = ["CO2", "NH3"].map((gas) => gasSolubility(gas, "20 °C").warnings);
    expect(carbonDioxide).toEqual(["recalled from memory but for the figures at 40 °C"]);
    expect(ammonia).toEqual([expect.stringMatching(/^recalled from memory, believed/)]);
    expect(gasSolubility("CO2", "20 °C", "partial").warnings).toEqual([]);
    expect(gasSolubility("O2", "20 °C").warnings).toContain("pure oxygen, not air");
    expect(gasSolubility("Cl2", "20 °C").warnings).toEqual([expect.stringMatching(/solid hydrate forms/)]);
  });
});

describe("a solubility", () => {
  it("warns of what its row notes, of a weak row and of a single figure, and of nothing of the kind elsewhere", () => {
    const counts = { noted: 0, weak: 0, single: 0, plain: 0 };
    expect(SOLUBILITY().length, "rows to test").toBeGreaterThan(0);
    for (const { formula, points, note, knownAs, weak } of SOLUBILITY()) {
      const outcome = attempt(() => solubilityOf(formula, `${points[0]![0]} °C`));
      if (!outcome.ok || outcome.value.formula !== formula) continue;
      const { warnings } = outcome.value;
      if (note !== undefined) expect(warnings, formula).toContain(note);
      const isWeak = weak === true && knownAs !== "converted" && knownAs !== "memory";
      expect(
        warnings.some((text) => text.startsWith("a weak figure")),
        formula,
      ).toBe(isWeak);
      if (points.length === 1)
        expect(
          warnings.some((text) => text.startsWith("rests on a single figure at")),
          formula,
        ).toBe(true);
      if (note !== undefined) counts.noted += 1;
      if (isWeak) counts.weak += 1;
      if (points.length === 1) counts.single += 1;
      if (warnings.length === 0) counts.plain += 1;
      expect(
        warnings.every((text) => typeof text === "string"),
        formula,
      ).toBe(true);
    }
    expect(Math.min(...Object.values(counts))).toBeGreaterThan(3);
  });
});

describe("a solubility that the table does not reach", () => {
  it("names the ends of the curve and the nearest figure", () => {
    // CRC: saltpetre from 0 to 100 °C, 243.6 to 246 g at the boil
    const { code, details } = refused(() => solubilityOf("KNO3", "150 °C"));
    expect(code).toBe("solubility.outside-range");
    const { nearest, ...rest } = details as { nearest: { celsius: number; grams: number }[] };
    expect(rest).toMatchObject({ formula: "KNO3", celsius: 150, from: 0, to: 100 });
    expect(nearest).toHaveLength(1);
    expect(nearest[0]).toMatchObject({ celsius: 100 });
    expect(Number(nearest[0]!.grams)).toBeGreaterThan(230);
    expect(Number(nearest[0]!.grams)).toBeLessThan(260);
    expect(nearest[0]).not.toHaveProperty("text");
  });
});

describe("points in a picture", () => {
  it("are diamonds around their place, six up and six down, with the label on the right", () => {
    const svg = solubilityDiagram({
      formulas: ["KNO3"],
      points: [
        { celsius: 80, grams: 100, label: "hot" },
        { celsius: 20, grams: 31, label: "cold" },
      ],
    });
    const diamonds = [...svg.matchAll(/<path d="M([\d.]+) ([\d.]+)l6 6l-6 6l-6 -6z"/g)].map(([, x, y]) => [
      Number(x),
      Number(y),
    ]);
    const labels = [...svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)"[^>]*>(?:hot|cold)</g)].map(([, x, y]) => [
      Number(x),
      Number(y),
    ]);
    expect(diamonds).toHaveLength(2);
    // the tip is six above the place; the words begin nine beside it, their foot four below
    expect(labels).toEqual(diamonds.map(([x, y]) => [x! + 9, y! + 6 + 4]));
    // the cold point lies on the curve: its place is that of the figure at 20 °C, 31.6 g
    const places = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, x, y]) => [Number(x), Number(y)]);
    const [x, y] = diamonds[1]!;
    const nearest = places.find(([cx]) => Math.abs(cx! - x!) < 0.2)!;
    expect(Math.abs(nearest[1]! - (y! + 6))).toBeLessThan(3);
  });
});
