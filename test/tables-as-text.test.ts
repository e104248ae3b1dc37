// The build writes the large tables as text: it must give back the rows of the source, to the last cell.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { packed, UNPACK, withPackedTables } from "../tsup.config";
import { type Table, tablesOf } from "./tools/tables";

const { unpack } = (await import(`data:text/javascript,${encodeURIComponent(UNPACK)}`)) as {
  unpack(head: string, ...columns: readonly string[]): unknown;
};
const readBack = (rows: readonly object[]): unknown => {
  const { head, columns } = packed(rows);
  return unpack(head, ...columns.values());
};
const tables = (await tablesOf()).filter(({ large }) => large) as (Table & { rows: readonly object[] })[];

describe("a table as text", () => {
  it.each(tables)("$layer/data/$file $name reads back", ({ rows }) => {
    expect(readBack(rows)).toEqual(rows);
  });

  it("keeps what looks like another cell, an absent one, or the end of a line", () => {
    const rows = [
      { name: "a|b", note: "", more: ["x", 1.5, { deep: true }] },
      { note: "two\nlines", name: "~", flag: false },
      { name: "12", value: 12, text: "null" },
    ];
    expect(readBack(rows)).toEqual(rows);
    const nested = [
      {
        points: [
          [0, "1.0"],
          [10, "2|0"],
        ],
        range: ["1", "2"],
        at: [5, -0.5],
        solid: { formula: "NaCl" },
      },
      { points: [], range: [""], at: [1e-7], steps: [{ n: 1, more: { deep: [true] } }, {}] },
      {
        solid: { note: "a\nb", parts: ["x"] },
        steps: [{ more: { deep: [] } }],
        at: [],
        except: { "slightly soluble": ["Li+"] },
        mixed: ["a", { b: 1 }],
      },
      { mixed: [null], points: [[25, "3"], []] },
    ];
    expect(readBack(nested)).toStrictEqual(nested);
    expect(
      readBack([
        ["H", 1, "1.0"],
        ["H", 2, "2.0", "estimated"],
      ]),
    ).toEqual([
      ["H", 1, "1.0"],
      ["H", 2, "2.0", "estimated"],
    ]);
  });

  it("keeps a text that begins like JSON, beside records and numbers", () => {
    const rows = [{ a: "!true" }, { a: { b: "!" } }, { a: "{x}" }, { a: 12 }, { a: "12" }, { a: true }, { a: null }];
    expect(readBack(rows)).toStrictEqual(rows);
  });

  it("writes the first of short lists beside each other where that is shorter", () => {
    const points = Array.from({ length: 60 }, (_, i) => [
      `${i % 10}0`,
      (1 + i / 40).toFixed(3),
      ...(i % 17 ? [] : ["x"]),
    ]);
    const curves = [{ points: points.slice(0, 30) }, { points: points.slice(30) }];
    expect(readBack(curves)).toStrictEqual(curves);
    expect(packed(curves).columns.get("points")).toMatch(/\n[=+]?0\|.*\n\+1\|/);
    const uneven = [{ range: ["1.0", "2.0"] }, { range: ["1.5", "2.5", "3.5", "4.5"] }, { range: ["7.1", "0.5"] }];
    expect(readBack(uneven)).toStrictEqual(uneven);
  });

  it("writes decimals as steps in their own last place, with what follows them", () => {
    const last = ["44.59", "44.74", "45.1", "1.21e-09", "0.00001", "100", "12.5(13)", "-0.5", "0.0", "0.10", "-3.250"];
    const rows = Array.from({ length: 110 }, (_, i) => ({ at: last[i % last.length]! }));
    expect(readBack(rows)).toStrictEqual(rows);
    const masses = Array.from({ length: 90 }, (_, i) => ({
      mass: `${i + 1}.${String(i * 123_456_789).padStart(12, "0")}(7)`,
    }));
    expect(readBack(masses)).toStrictEqual(masses);
    const curve = Array.from({ length: 200 }, (_, i) => ({ grams: (35.65 + i * 0.07).toFixed(2) }));
    expect(readBack(curve)).toStrictEqual(curve);
    expect([...packed(curve).columns.values()].join("").length).toBeLessThan(200 * 3);
  });

  it("writes few kinds of cells as letters, and whole numbers as steps", () => {
    const kinds = Array.from({ length: 400 }, (_, i) => ({
      kind: `kind of number ${Math.floor(((i * 0.7548776662466927) % 1) * 75)}`,
      ...(i % 5 ? {} : { note: "x" }),
    }));
    expect(readBack(kinds)).toStrictEqual(kinds);
    expect([...packed(kinds).columns.values()].join("").length).toBeLessThan((400 * 18) / 3);
    const texts = ["9.98", "9.99", "10.01", "-0.05", "0.05", "-0.10", "0.0", "7", "12", "-3", "1e-7", "03"];
    const decimals = (used: readonly string[]) =>
      Array.from({ length: 120 }, (_, i) => (i % 11 === 3 ? {} : { at: used[i % used.length]!, n: i * 3 - 40 }));
    for (const used of [texts, texts.slice(0, 10), texts.slice(0, 6)])
      expect(readBack(decimals(used))).toStrictEqual(decimals(used));
    const rising = Array.from({ length: 200 }, (_, i) => ({ at: 100_000 + 3 * i + (i % 7) }));
    expect(readBack(rising)).toStrictEqual(rising);
    expect([...packed(rising).columns.values()].join("").length).toBeLessThan(200 * 4);
  });

  it("takes the place of every large table, and of nothing else", async () => {
    const files = new Set(
      tables.map(({ layer, file }) => fileURLToPath(new URL(`../src/${layer}/data/${file}`, import.meta.url))),
    );
    let written = 0;
    let selections = 0;
    expect(files.size, "rows to test").toBeGreaterThan(0);
    for (const file of files) {
      const source = readFileSync(file, "utf8");
      selections += source.split(" columns(").length - 1;
      const text = await withPackedTables(file, source);
      expect(text).not.toContain(" columns(");
      written += text.split(" once(() => unpack(").length - 1;
    }
    expect(written).toBe(tables.length + selections);
    expect(selections).toBeGreaterThan(0);
    expect(await withPackedTables("small.ts", "export const SMALL = [1];")).toBe("export const SMALL = [1];");
  });
});
