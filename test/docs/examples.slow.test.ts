// Every example in docstrings, README and guides is type-checked, run, and compared with its `// =>` lines.
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import * as preparative from "preparative";
import ts from "typescript";
import { beforeAll, describe, expect, it, vi } from "vitest";
import { examplesOf, show, toModule } from "../tools/examples";

const root = fileURLToPath(new URL("../..", import.meta.url)).replace(/[\\/]$/, "");
const folder = join(root, "test", ".examples");
const examples = examplesOf(root);
const fileOf = (i: number): string => join(folder, `example-${i}.ts`);

beforeAll(() => {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const names = Object.keys(preparative);
  examples.forEach((example, i) => {
    writeFileSync(fileOf(i), toModule(example, names));
  });
});

describe("examples", () => {
  it("are there", () => expect(examples.length).toBeGreaterThan(20));

  it("compile under `strict`", { timeout: 60_000 }, () => {
    const config = ts.readConfigFile(join(root, "test/tsconfig.json"), ts.sys.readFile).config;
    const { options } = ts.parseJsonConfigFileContent(
      { ...config, include: [], files: ["layers.test.ts"] },
      ts.sys,
      join(root, "test"),
    );
    const program = ts.createProgram(
      examples.map((_, i) => fileOf(i)),
      { ...options, noUnusedLocals: false, noUnusedParameters: false, noUncheckedIndexedAccess: false },
    );
    // the examples alone: `npm run types` checks the library they are compiled with
    const found = examples.flatMap((_, i) => {
      const source = program.getSourceFile(fileOf(i));
      return [...program.getSyntacticDiagnostics(source), ...program.getSemanticDiagnostics(source)];
    });
    const problems = found.map(({ file, messageText }) => {
      const index = Number(/example-(\d+)/.exec(file?.fileName ?? "")?.[1] ?? -1);
      return `${examples[index]?.where ?? file?.fileName}: ${ts.flattenDiagnosticMessageText(messageText, "\n")}`;
    });
    expect(problems).toEqual([]);
  });

  it.each(examples.map((example, i) => [example.where, i] as const))("%s does what it says", async (_, i) => {
    const printed: string[] = [];
    const log = vi
      .spyOn(console, "log")
      .mockImplementation((...values) => void printed.push(values.map(String).join(" ")));
    try {
      const { default: run } = (await import(/* @vite-ignore */ fileOf(i))) as {
        default: (check: unknown) => Promise<void>;
      };
      await run((value: unknown, expected: string) => expect(show(value)).toBe(expected));
    } finally {
      log.mockRestore();
    }
    const { prints } = examples[i]!;
    if (prints !== undefined) expect(printed.join("\n").trimEnd()).toBe(prints.trimEnd());
  });
});
