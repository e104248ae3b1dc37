// One way of writing formulas and ions in all tables.
import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";

/** Every string in every table of every layer, with where it stands. */
async function tableStrings(): Promise<[where: string, text: string][]> {
  const src = new URL("../../src/", import.meta.url);
  const found: [string, string][] = [];
  const walk = (where: string, value: unknown): void => {
    if (typeof value === "string") found.push([where, value]);
    else if (typeof value === "object" && value !== null)
      for (const [key, inner] of Object.entries(value)) walk(`${where}.${key}`, inner);
  };
  for (const layer of readdirSync(src, { withFileTypes: true }).filter((entry) => entry.isDirectory())) {
    const folder = new URL(`${layer.name}/data/`, src);
    let files: string[] = [];
    try {
      files = readdirSync(folder);
    } catch {
      continue;
    }
    for (const file of files.filter((name) => name.endsWith(".ts"))) {
      const module = (await import(new URL(file, folder).href)) as Record<string, unknown>;
      for (const [name, table] of Object.entries(module)) walk(`${layer.name}/data/${file} ${name}`, table);
    }
  }
  return found;
}

const strings = await tableStrings();

describe("tables", () => {
  it("write the charge of an ion as in Pb^2+", () => {
    expect(strings.length).toBeGreaterThan(10_000);
    // a formula and a trailing sign with a digit
    const trailing = /(?<![\w^.)\]])(?:[A-Z][a-z]?\d*|[()[\]]\d*)+[+-][2-9](?![\w.^+*-])/;
    expect(strings.filter(([, text]) => trailing.test(text) && !/N-P2O5|IR-\d/.test(text))).toEqual([]);
  });

  it("write dissolutions with an arrow", () => {
    const dissolutions = strings.filter(([where]) => where.endsWith(".dissolution"));
    expect(dissolutions.length).toBeGreaterThan(100);
    expect(dissolutions.filter(([, text]) => !text.includes(" -> ") || text.includes(" = "))).toEqual([]);
  });
});
