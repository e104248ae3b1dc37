// What a program pays: bytes of small programs, bundled as the build makes the package, minified and compressed. A ceiling is
// there to be lowered; what a program must not carry at all is named beside it.
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { describe, expect, it } from "vitest";
import { tablesAsText } from "../../tsup.config";

const root = fileURLToPath(new URL("../..", import.meta.url));

interface Program {
  readonly uses: Readonly<Record<string, string>>;
  /** Bytes in units of 1000, minified and compressed. */
  readonly ceiling: number;
  /** Files it must not carry. */
  readonly without: RegExp;
}

const PROGRAMS: Readonly<Record<string, Program>> = {
  "read a formula": { uses: { formula: "parseFormula" }, ceiling: 25, without: /decimal|quantity|data\/(?!standard)/ },
  "balance an equation": {
    uses: { equation: "balance" },
    ceiling: 39,
    without: /decimal|src\/quantity|data\/(?!standard)/,
  },
  "weigh a formula": {
    uses: { formula: "parseFormula, molarMass" },
    ceiling: 63,
    without: /src\/(?!foundation|quantity|element|formula)|data\/isotopic/,
  },
  "formulas, equations and quantities": {
    uses: { equation: "balance", formula: "parseFormula, molarMass", quantity: "quantity" },
    ceiling: 78,
    without: /src\/(?!foundation|quantity|element|formula|equation)|equation\/data|data\/isotopic/,
  },
  "look a solubility up": {
    uses: { solubility: "solubilityOf" },
    ceiling: 107,
    without: /substance\/|data\/(complexes|products)/,
  },
  "name a formula and read a name": {
    uses: { substance: "nameOf, formulaOf" },
    ceiling: 86,
    without: /decimal|src\/(quantity|amount|aqueous|solubility)|data\/(hazards|physical|thermal)/,
  },
  "cautions for formulas": {
    uses: { substance: "cautionsForFormulas" },
    ceiling: 66,
    without: /decimal|src\/quantity|data\/(registry|shop|ambiguous|molecules|ligands|physical|thermal)/,
  },
  "plan and sheet": {
    uses: { preparation: "planPreparation", sheet: "benchSheet" },
    ceiling: 345,
    without: /isotopic/,
  },
};

async function bundled(uses: Program["uses"]): Promise<{ files: string[]; kilobytes: number }> {
  const names = Object.values(uses).join(", ");
  const imports = Object.entries(uses).map(([layer, what]) => `import { ${what} } from "./src/${layer}/index.ts";`);
  const { outputFiles, metafile } = await build({
    stdin: { contents: `${imports.join("\n")}\nconsole.log(${names});`, resolveDir: root, loader: "ts" },
    bundle: true,
    minify: true,
    metafile: true,
    write: false,
    format: "esm",
    logLevel: "silent",
    plugins: [tablesAsText],
  });
  const [output] = Object.values(metafile.outputs);
  const files = Object.entries(output!.inputs).filter(([, { bytesInOutput }]) => bytesInOutput > 0);
  return {
    files: files.map(([file]) => file),
    kilobytes: gzipSync(outputFiles[0]!.contents, { level: 9 }).length / 1000,
  };
}

describe("size of a program", () => {
  it.each(Object.entries(PROGRAMS))("%s", { timeout: 60_000 }, async (_, { uses, ceiling, without }) => {
    const { files, kilobytes } = await bundled(uses);
    expect(files.filter((file) => without.test(file))).toEqual([]);
    expect(kilobytes).toBeLessThanOrEqual(ceiling);
    // a ceiling far above the figure holds nothing
    expect(kilobytes).toBeGreaterThan(ceiling * 0.9);
  });
});
