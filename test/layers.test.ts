// The rooms of the house in order, lowest first: a room may use those before it, never those after it.
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const LAYERS = [
  "foundation",
  "quantity",
  "element",
  "formula",
  "ion",
  "equation",
  "amount",
  "hydrate",
  "substance",
  "aqueous",
  "solubility",
  "thermochemistry",
  "preparation",
  "route",
  "sheet",
];

const src = fileURLToPath(new URL("../src", import.meta.url));
const files = readdirSync(src, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".ts"));

/** Module specifiers a file imports or re-exports. */
const importsOf = (text: string): string[] => ts.preProcessFile(text).importedFiles.map((file) => file.fileName);

describe("layers", () => {
  it("knows every folder of src", () => {
    const folders = readdirSync(src, { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(folders.map((folder) => folder.name).filter((name) => !LAYERS.includes(name))).toEqual([]);
  });

  it.each(files)("%s imports only from lower layers and the two run-time dependencies", (file) => {
    const own = LAYERS.indexOf(file.split(/[\\/]/)[0]!);
    for (const specifier of importsOf(readFileSync(join(src, file), "utf8"))) {
      if (!specifier.startsWith(".")) {
        expect(["decimal.js", "fraction.js"]).toContain(specifier);
        continue;
      }
      const target = relative(src, resolve(dirname(join(src, file)), specifier)).split(/[\\/]/)[0]!;
      const layer = LAYERS.indexOf(target);
      if (own >= 0) expect.soft(layer, `${file} imports ${specifier}`).toBeGreaterThanOrEqual(0);
      if (own >= 0) expect.soft(layer, `${file} imports ${specifier}`).toBeLessThanOrEqual(own);
    }
  });

  it("uses nothing that only one runtime has", () => {
    for (const file of files) {
      const text = readFileSync(join(src, file), "utf8").replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, "");
      expect(text.match(/\b(?:process|Buffer|document|window|require)\s*[.(]|["']node:/g), file).toBeNull();
    }
  });
});
