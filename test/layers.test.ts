// The layers in order, lowest first: a layer may use those before it, never those after it.
import { existsSync, readdirSync, readFileSync } from "node:fs";
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
const files = readdirSync(src, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .map((file) => file.replaceAll("\\", "/"));

/** Layer of a file, by its folder; a file of the root has none. */
const layerOf = (file: string): string | undefined => (file.includes("/") ? file.split("/")[0] : undefined);

const specifiersOf = (file: string): string[] =>
  ts.preProcessFile(readFileSync(join(src, file), "utf8")).importedFiles.map((imported) => imported.fileName);

/** File of src that a relative specifier names. */
const targetOf = (file: string, specifier: string): string => {
  const path = relative(src, resolve(dirname(join(src, file)), specifier)).replaceAll("\\", "/");
  return existsSync(join(src, `${path}.ts`)) ? `${path}.ts` : `${path}/index.ts`;
};

/** Files each file of src imports or re-exports, types included. */
const imports = new Map(
  files.map((file) => [
    file,
    specifiersOf(file)
      .filter((specifier) => specifier.startsWith("."))
      .map((specifier) => targetOf(file, specifier)),
  ]),
);

describe("layers", () => {
  it("know every folder of src", () => {
    const folders = readdirSync(src, { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(folders.map((folder) => folder.name).filter((name) => !LAYERS.includes(name))).toEqual([]);
  });

  it("import nothing but each other and the two run-time dependencies", () => {
    const foreign = files.flatMap((file) =>
      specifiersOf(file)
        .filter((specifier) => !specifier.startsWith(".") && specifier !== "decimal.js" && specifier !== "fraction.js")
        .map((specifier) => `${file} imports ${specifier}`),
    );
    expect(foreign).toEqual([]);
  });

  it("import only from lower layers", () => {
    const upward: string[] = [];
    for (const [file, targets] of imports) {
      const own = layerOf(file);
      if (own === undefined) continue;
      for (const target of targets) {
        const used = layerOf(target);
        if (used === undefined) upward.push(`layer ${own} may not use the root (${file} imports ${target})`);
        else if (LAYERS.indexOf(used) > LAYERS.indexOf(own)) {
          upward.push(`layer ${own} may not use the higher layer ${used} (${file} imports ${target})`);
        }
      }
    }
    expect(upward).toEqual([]);
  });

  // a file of the foundation is one tool and its own entry; any other layer has a front door and a back door
  it("use of another layer only its index or its internal.ts", () => {
    const deep: string[] = [];
    for (const [file, targets] of imports) {
      const own = layerOf(file);
      for (const target of targets) {
        const used = layerOf(target);
        if (own === undefined || used === undefined || used === own || used === "foundation") continue;
        if (target !== `${used}/index.ts` && target !== `${used}/internal.ts`) {
          deep.push(`${file} imports ${target}: export it through ${used}/internal.ts`);
        }
      }
    }
    expect(deep).toEqual([]);
  });

  it("leave the index and the internal.ts of a layer to the layers above", () => {
    const inward: string[] = [];
    for (const [file, targets] of imports) {
      const own = layerOf(file);
      if (own === undefined || own === "foundation") continue;
      for (const target of targets) {
        if (target === `${own}/index.ts` || target === `${own}/internal.ts`) inward.push(`${file} imports ${target}`);
      }
    }
    expect(inward).toEqual([]);
  });

  it("use nothing that only one runtime has", () => {
    for (const file of files) {
      const text = readFileSync(join(src, file), "utf8").replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, "");
      expect(text.match(/\b(?:process|Buffer|document|window|require)\s*[.(]|["']node:/g), file).toBeNull();
    }
  });
});
