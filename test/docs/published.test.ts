// `test/published` holds only checks against a publication that a reader can find; what rests on memory of no named book, on common
// practice or on arithmetic of our own stands in `test/own`.
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const folder = fileURLToPath(new URL("../published/", import.meta.url));
const files = readdirSync(folder).filter((file) => file.endsWith(".test.ts"));

/** The file, with the tables of test/data it holds the library against. */
function sourcesOf(file: string): string {
  const text = readFileSync(folder + file, "utf8");
  const tables = Array.from(text.matchAll(/from "\.\.\/data\/([\w-]+)"/g), ([, name]) => `${folder}../data/${name}.ts`);
  return [text, ...tables.map((table) => readFileSync(table, "utf8"))].join("\n");
}

describe("published checks", () => {
  it("are many", () => expect(files.length).toBeGreaterThan(10));

  it.each(files)("%s names publications with their year, and nothing without a source", (file) => {
    expect(sourcesOf(file)).toMatch(/\b(1[89]|20)\d\d\b/);
    const text = readFileSync(folder + file, "utf8");
    expect(text.match(/common practice|no source|composed here|\(memory\)|general knowledge/i)?.[0]).toBeUndefined();
  });
});
