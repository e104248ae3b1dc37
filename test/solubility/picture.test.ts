import { describe, expect, it } from "vitest";
import { attempt } from "../../src/foundation/error";
import { crystallise } from "../../src/solubility/crystallising/crystallise";
import { solubilityDiagram } from "../../src/solubility/curves/picture";
import { SOLUBILITY } from "../../src/solubility/data/curves";
import { washAdvice } from "../../src/solubility/washing/wash-advice";

/** Every opened tag is closed, in order; enough of XML for what the library writes. */
function isWellFormed(svg: string): boolean {
  const open: string[] = [];
  for (const [, close, name, self] of svg.matchAll(/<(\/?)([a-zA-Z]+)(?:\s[^<>]*?)?(\/?)>/g)) {
    if (close === "/") {
      if (open.pop() !== name) return false;
    } else if (self !== "/") open.push(name!);
  }
  return open.length === 0;
}

describe("a solubility diagram", () => {
  const run = crystallise({ formula: "KNO3", mass: "100 g", hot: "80 °C", cold: "10 °C" });
  const svg = solubilityDiagram({ formulas: ["KNO3", "Na2SO4"], points: run.path, path: true });

  it("is one well-formed SVG with a title and a description that tells what it shows", () => {
    expect(isWellFormed(svg)).toBe(true);
    expect(svg).toMatch(/<title id="[\w-]+">Solubility of KNO₃, Na₂SO₄ in water<\/title>/);
    const [, labelled] = /aria-labelledby="([^"]+)"/.exec(svg)!;
    let tested = 0;
    for (const id of labelled!.split(" ")) {
      expect(svg).toContain(`id="${id}"`);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(2);
    expect(svg).toContain("the solid changes at 32.38 °C");
    expect(svg).toContain("liquor");
    expect(svg).toContain('role="img"');
  });

  it("shares no id with another picture in the same page", () => {
    const ids = (text: string) => [...text.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    const other = solubilityDiagram({ formulas: ["KNO3"] });
    expect(ids(svg).length).toBe(3);
    expect(ids(other).filter((id) => ids(svg).includes(id))).toEqual([]);
  });

  it("carries no script, style, outside reference, or number that is none", () => {
    expect(svg).not.toMatch(/<script|<style|href|url\((?!#)/);
    expect(svg).not.toMatch(/NaN|Infinity|undefined|e[-+]\d/);
  });

  it("escapes labels", () => {
    const hostile = solubilityDiagram({
      formulas: ["NaCl"],
      points: [{ celsius: 20, grams: 30, label: `<script>"&'` }],
    });
    expect(hostile).not.toContain("<script>");
    expect(isWellFormed(hostile)).toBe(true);
  });

  it("tells branches apart without colour", () => {
    const dashes = new Set([...svg.matchAll(/stroke-dasharray="([^"]+)"/g)].map(([, dash]) => dash));
    expect(dashes.size).toBeGreaterThanOrEqual(2);
    expect(svg).not.toMatch(/(?:stroke|fill)="#(?!000|fff|ddd|555)/);
  });

  it("draws every salt of the table that has a curve, and a lone figure", () => {
    expect(isWellFormed(solubilityDiagram({ formulas: ["Ca(ClO4)2"] }))).toBe(true);
    expect(isWellFormed(solubilityDiagram({ formulas: ["FeCl3"] }))).toBe(true);
  });

  it("writes the name of every curve of the table beside the curve, not on it", () => {
    /** Labels that a line of the picture runs through: 12 px letters of about 6 px, the line looked at every 2 px. */
    const crossed = (svg: string): string[] => {
      const lines = [...svg.matchAll(/<path d="M([^"]+)" fill="none" stroke="#000" stroke-width="2"/g)].map(([, d]) =>
        d!.split("L").map((place) => place.split(" ").map(Number) as [number, number]),
      );
      return [...svg.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)" font-style="italic"[^>]*>([^<]+)</g)].flatMap(
        ([, left, base, name]) => {
          const [x, y, width] = [Number(left), Number(base), name!.length * 6];
          const inside = ([a, b]: readonly [number, number]): boolean =>
            a > x && a < x + width && b > y - 10 && b < y + 2;
          const hit = lines.some((line) =>
            line.some(([a, b], i) => {
              const [c, d] = line[i + 1] ?? [a, b];
              const n = Math.max(1, Math.ceil(Math.hypot(c - a, d - b) / 2));
              return Array.from({ length: n + 1 }, (_, k) => k / n).some((t) =>
                inside([a + (c - a) * t, b + (d - b) * t]),
              );
            }),
          );
          return hit ? [name!] : [];
        },
      );
    };
    const formulas = SOLUBILITY().map(({ formula }) => formula);
    expect(formulas.length).toBeGreaterThan(200);
    expect(formulas.flatMap((formula) => crossed(solubilityDiagram({ formulas: [formula] })))).toEqual([]);
    for (const four of [
      ["KNO3", "NaCl", "KCl", "NaNO3"],
      ["Na2SO4", "Na2CO3", "MgSO4", "ZnSO4"],
    ])
      expect(crossed(solubilityDiagram({ formulas: four }))).toEqual([]);
    expect(crossed(svg)).toEqual([]);
  });

  describe("with labels", () => {
    interface Text {
      readonly name: string;
      readonly x: number;
      readonly y: number;
      readonly width: number;
    }
    /** Labels of curves, then of points; a letter is about 6.6 px wide and 12 px high. */
    const labelsOf = (svg: string): Text[] =>
      [...svg.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"[^>]*paint-order[^>]*>([^<]+)</g)].map(([, x, y, name]) => ({
        name: name!,
        x: Number(x),
        y: Number(y),
        width: name!.length * 6.6,
      }));
    const overlap = (a: Text, b: Text): boolean =>
      a.x < b.x + b.width && b.x < a.x + a.width && Math.abs(a.y - b.y) < 12;
    const drawn = (label: string, celsius: number, grams: number) =>
      labelsOf(solubilityDiagram({ formulas: ["NaCl"], points: [{ celsius, grams, label }] })).find(
        ({ name }) => name === "NaCl",
      )!;

    it("puts none on another", () => {
      let tested = 0;
      for (const formulas of [
        ["KNO3", "NaCl", "KCl", "NaNO3"],
        ["Na2SO4", "Na2CO3", "MgSO4", "ZnSO4"],
        ["NaCl", "KCl", "NH4Cl", "BaCl2"],
        ["CuSO4", "FeSO4", "NiSO4", "CoSO4"],
      ]) {
        const labels = labelsOf(solubilityDiagram({ formulas }));
        labels.forEach((a, i) => {
          for (const b of labels.slice(i + 1)) {
            expect(overlap(a, b), `${a.name} ${b.name}`).toBe(false);
            tested += 1;
          }
        });
      }
      expect(tested).toBeGreaterThan(40);
    });

    it("moves one aside for a point beside it, and for no other", () => {
      const alone = labelsOf(solubilityDiagram({ formulas: ["NaCl"] })).find(({ name }) => name === "NaCl")!;
      // the axes reach from 0 to 100 °C and to 40 g with these points too, so that the curve stays where it is
      const at = (dx: number, dy: number): readonly [number, number] => {
        const [left, right, top, bottom] = [62, 640 - 24, 34, 420 - 48];
        const [x, y] = [alone.x + dx - 9, alone.y + dy - 4];
        return [((x - left) / (right - left)) * 100, ((bottom - y) / (bottom - top)) * 40];
      };
      const stays = (dx: number, dy: number, label = "mm") => {
        const { x, y } = drawn(label, ...at(dx, dy));
        return Math.hypot(x - alone.x, y - alone.y) < 0.1;
      };
      expect(stays(0, 0)).toBe(false);
      // its end is within three pixels of the other's beginning, or it begins within three of the other's end
      expect([stays(-13.2 - 2, 3), stays(alone.width + 2, 3)]).toEqual([false, false]);
      expect([stays(-13.2 - 5, 3), stays(alone.width + 14, 3)]).toEqual([true, true]);
      // a line of text below is too near within 14 px
      expect([stays(0, 13), stays(0, 15), stays(0, 40)]).toEqual([false, true, true]);
      expect([stays(200, 0), stays(-200, 0)]).toEqual([true, true]);
    });
  });

  it("refuses by code what it cannot draw", () => {
    const code = (picture: Parameters<typeof solubilityDiagram>[0]) => {
      const outcome = attempt(() => solubilityDiagram(picture));
      return outcome.ok ? undefined : outcome.error.code;
    };
    expect(code({ formulas: [] })).toBe("solubility.missing-option");
    expect(code({ formulas: ["NaCl", "KCl", "KNO3", "NaNO3", "KBr"] })).toBe("solubility.too-many");
    expect(code({ formulas: ["Fe(CH3COO)2"] })).toBe("solubility.no-data");
    expect(code({ formulas: ["NaCl"], width: 10 })).toBe("solubility.out-of-reach");
    expect(code({ formulas: ["NaCl"], points: [{ celsius: Number.NaN, grams: 1, label: "" }] })).toBe(
      "solubility.out-of-reach",
    );
  });
});

describe("wash advice", () => {
  it("takes plain water for what hardly dissolves and spares what does", () => {
    expect(washAdvice({ product: "CaCO3", washedOut: ["NaCl"] }).liquid).toBe("water");
    expect(washAdvice({ product: "Zn5(CO3)2(OH)6", washedOut: ["Na2SO4"] }).liquid).toContain("water");
    expect(washAdvice({ product: "KNO3", washedOut: ["NaCl"] }).liquid).toContain("alcohol");
    expect(washAdvice({ product: "CuCl", washedOut: ["NaCl"] }).liquid).toContain("hydrochloric");
  });

  it("tests for what is washed out, never for an ion of the product", () => {
    const { endTests } = washAdvice({ product: "BaSO4", washedOut: ["KCl", "K2SO4"] });
    expect(endTests.map(({ ion }) => ion)).toEqual(["Cl-", "SO4^2-"]);
    expect(endTests[0]!.test).toContain("silver nitrate");
  });
});
