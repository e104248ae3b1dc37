// What a program pays: bytes of small programs, bundled as the build makes the package, minified and compressed. A ceiling is
// there to be lowered; what a program must not carry at all is named beside it.
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { type BuildOptions, build, type Plugin } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { asBuilt, OWN_CHUNKS, SHORTENED } from "../../tsup.config";

const root = fileURLToPath(new URL("../..", import.meta.url));

interface Program {
  readonly uses: Readonly<Record<string, string>>;
  /** Bytes in units of 1000, minified and compressed. */
  readonly ceiling: number;
  /** Files it must not carry. */
  readonly without: RegExp;
}

const PROGRAMS: Readonly<Record<string, Program>> = {
  "read a formula": {
    uses: { formula: "parseFormula" },
    ceiling: 23.8,
    without: /decimal|quantity|data\/(?!standard)/,
  },
  "balance an equation": {
    uses: { equation: "balance" },
    ceiling: 36.8,
    without: /decimal|src\/quantity|data\/(?!standard)/,
  },
  "weigh a formula": {
    uses: { formula: "parseFormula, molarMass" },
    ceiling: 61.8,
    without: /src\/(?!foundation|quantity|element|formula)|data\/isotopic/,
  },
  "formulas, equations and quantities": {
    uses: { equation: "balance", formula: "parseFormula, molarMass", quantity: "quantity" },
    ceiling: 74.8,
    without: /src\/(?!foundation|quantity|element|formula|equation)|equation\/data|data\/isotopic/,
  },
  "look a solubility up": {
    uses: { solubility: "solubilityOf" },
    ceiling: 103.1,
    without: /substance\/|data\/(complexes|products)/,
  },
  "name a formula and read a name": {
    uses: { substance: "nameOf, formulaOf" },
    ceiling: 76.6,
    without: /decimal|src\/(facts|quantity|amount|aqueous|solubility)|data\/(hazards|physical|thermal)/,
  },
  "cautions for formulas": {
    uses: { substance: "cautionsForFormulas" },
    ceiling: 71.7,
    without: /decimal|src\/(facts|quantity)\/|data\/(registry|shop|ambiguous|molecules|ligands|physical|thermal)/,
  },
  "plan and sheet": {
    uses: { preparation: "planPreparation", sheet: "benchSheet" },
    ceiling: 543,
    without: /isotopic|src\/facts\//,
  },
};

const common = {
  bundle: true,
  format: "esm",
  logLevel: "silent",
  nodePaths: [join(root, "node_modules")],
} satisfies BuildOptions;

/** The library as the package has it: chunks, beside a manifest that says they have no side effects. */
const library = mkdtempSync(join(tmpdir(), "preparative-size-"));

const layers = readdirSync(join(root, "src"), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

beforeAll(async () => {
  await build({
    ...common,
    absWorkingDir: root,
    entryPoints: ["src/index.ts", ...layers.map((layer) => `src/${layer}/index.ts`), ...OWN_CHUNKS],
    outbase: "src",
    outdir: library,
    splitting: true,
    target: "es2022",
    ...SHORTENED,
    external: ["decimal.js", "fraction.js"],
    plugins: [asBuilt],
  });
  writeFileSync(join(library, "package.json"), JSON.stringify({ type: "module", sideEffects: false }));
}, 60_000);

afterAll(() => rmSync(library, { recursive: true, force: true }));

/** A program that uses functions of some layers, found in a folder. */
const program = (uses: Program["uses"], folder: string, extension: string): string => {
  const imports = Object.entries(uses).map(
    ([layer, what]) => `import { ${what} } from ${JSON.stringify(`${folder}/${layer}/index.${extension}`)};`,
  );
  return `${imports.join("\n")}\nconsole.log(${Object.values(uses).join(", ")});`;
};

/** Files of the source which a program carries. */
async function filesIn(uses: Program["uses"]): Promise<string[]> {
  const { metafile } = await build({
    ...common,
    stdin: { contents: program(uses, "./src", "ts"), resolveDir: root, loader: "ts" },
    metafile: true,
    write: false,
  });
  const [output] = Object.values(metafile.outputs);
  return Object.entries(output!.inputs).flatMap(([file, { bytesInOutput }]) => (bytesInOutput > 0 ? [file] : []));
}

/** What a program takes from the built library, minified and compressed. */
async function kilobytesOf(uses: Program["uses"]): Promise<number> {
  const { outputFiles } = await build({
    ...common,
    stdin: { contents: program(uses, library, "js"), resolveDir: library, loader: "js" },
    minify: true,
    write: false,
  });
  return gzipSync(outputFiles[0]!.contents, { level: 9 }).length / 1000;
}

/** What is left of every file of the source when nobody uses anything of it. */
async function leftOver(): Promise<string> {
  const files = readdirSync(join(root, "src"), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts") && file !== "index.ts")
    .map((file) => join(root, "src", file));
  const own = new Set(files);
  const alone: Plugin = {
    name: "each file by itself",
    setup({ onResolve }) {
      onResolve({ filter: /./ }, ({ path }) =>
        own.has(path) ? { path, sideEffects: true } : { path, external: true, sideEffects: false },
      );
    },
  };
  const { outputFiles } = await build({
    ...common,
    stdin: {
      contents: files.map((file) => `import ${JSON.stringify(file)};`).join(""),
      resolveDir: root,
      loader: "ts",
    },
    plugins: [alone, asBuilt],
    minify: true,
    write: false,
  });
  return outputFiles[0]!.text.replace(/import(?:\{[^}]*\}from)?"[^"]*";/g, "").trim();
}

describe("size of a program", () => {
  it.each(Object.entries(PROGRAMS))("%s", { timeout: 60_000 }, async (_, { uses, ceiling, without }) => {
    expect((await filesIn(uses)).filter((file) => without.test(file))).toEqual([]);
    const kilobytes = await kilobytesOf(uses);
    expect(kilobytes).toBeLessThanOrEqual(ceiling);
    // a ceiling far above the figure holds nothing
    expect(kilobytes).toBeGreaterThan(ceiling * 0.9);
  });

  // numbers worked out from others, and the patterns that every reader of formulas has
  it("has nothing that it does not use", { timeout: 60_000 }, async () => {
    const left = await leftOver();
    expect(left).not.toMatch(/=>|function|new Set|\.\.\./);
    expect(left.length).toBeLessThan(600);
  });
});
