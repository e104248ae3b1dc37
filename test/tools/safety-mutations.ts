// Are the safety facts worth anything? Every row of the safety tables is taken out, and every figure, hood and severity in
// them shifted, one at a time; each time the facts of ../data/safety-facts.ts are asked again. A change that no fact notices
// survives and is printed. `npx tsx test/tools/safety-mutations.ts [every]`: with 5 only every fifth change.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join, relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { Script } from "node:vm";
import { build } from "esbuild";
import type { SafetyFact } from "../data/safety-facts";

const require = createRequire(import.meta.url);
const root = fileURLToPath(new URL("../..", import.meta.url));

const TABLES = [
  "src/substance/data/hazards.ts",
  "src/substance/data/incompatibilities.ts",
  "src/substance/data/concentration-limits.ts",
  "src/substance/data/never-made.ts",
  "src/preparation/data/drying.ts",
  "src/preparation/data/gases.ts",
  "src/preparation/data/waste.ts",
  "src/preparation/data/work-cautions.ts",
];

/** One changed line of a table; an empty one where the row is gone. */
interface Mutation {
  readonly table: string;
  readonly line: number;
  readonly was: string;
  readonly now: string;
  readonly kind: string;
}

/** Rows that stand on a line of their own, and what may be done to them. */
function mutationsOf(table: string): Mutation[] {
  const lines = readFileSync(`${root}${table}`, "utf8").split("\n");
  return lines.flatMap((was, line): Mutation[] => {
    const found: Mutation[] = [];
    const to = (kind: string, now: string): void => {
      if (now !== was) found.push({ table, line, was, now, kind });
    };
    const isRow =
      /^ {2,6}\{ (formula|group|code|metal|step|of): .*\},?$/.test(was) || /^ {2}(gas|room)\(.*\),$/.test(was);
    const isEntry = /^ {2}[\w"()]+: "[^"]+",$/.test(was) && table.endsWith("never-made.ts");
    if (isRow || isEntry) to("row taken out", "");
    to("severity lowered", was.replace('severity: "forbid",', 'severity: "warn",'));
    to("hood taken away", was.replace("hood: true, ", ""));
    to(
      "limit raised tenfold",
      was.replace(/share: "([\d.]+) %"/, (_, n) => `share: "${Number(n) * 10} %"`),
    );
    to(
      "lower end doubled",
      was.replace(/from: "([\d.]+)"/, (_, n) => `from: "${Number(n) * 2}"`),
    );
    to(
      "drying limit raised by 200 K",
      was.replace(/upTo\("(\d+)"/, (_, n) => `upTo("${Number(n) + 200}"`),
    );
    to("first statement dropped", was.replace(/codes: \["[^"]+", /, "codes: ["));
    to(
      "pH shifted",
      was.replace(/pH: "(\d+)/, (_, n) => `pH: "${Number(n) - 3}`),
    );
    if (/\.\.\.upTo\(/.test(was))
      for (const [formula] of was.matchAll(/, "[^"]+"/g)) to(`${formula.slice(2)} taken out`, was.replace(formula, ""));
    return found;
  });
}

const every = Number(process.argv[2] ?? 1);
const mutations = TABLES.flatMap(mutationsOf).filter((_, i) => i % every === 0);

/** A table as CommonJS. */
const compiled = async (table: string, contents: string): Promise<string> => {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: dirname(join(root, table)), sourcefile: table, loader: "ts" },
    bundle: true,
    platform: "node",
    format: "cjs",
    logLevel: "silent",
    write: false,
  });
  return outputFiles[0]!.text;
};

/** The library and the facts, with the tables left outside. */
const { outputFiles } = await build({
  stdin: { contents: 'export { SAFETY_FACTS } from "./test/data/safety-facts";', resolveDir: root, loader: "ts" },
  bundle: true,
  platform: "node",
  format: "cjs",
  logLevel: "silent",
  write: false,
  plugins: [
    {
      name: "tables apart",
      setup: ({ onResolve }) => {
        onResolve({ filter: /^\.{1,2}\// }, ({ path, resolveDir }) => {
          const file = relative(root, `${resolve(resolveDir, path)}.ts`).replaceAll("\\", "/");
          return TABLES.includes(file) ? { path: file, external: true } : undefined;
        });
      },
    },
  ],
});
type Module = { exports: Record<string, unknown> };
type Load = (name: string) => unknown;
const asModule = (code: string): Script => new Script(`(module, exports, require) => {${code}\n}`);
const run = (script: Script, load: Load): Module["exports"] => {
  const module: Module = { exports: {} };
  (script.runInThisContext() as (...given: unknown[]) => void)(module, module.exports, load);
  return module.exports;
};
const library = asModule(outputFiles[0]!.text);
const unchanged = new Map<string, Script>();
for (const table of TABLES)
  unchanged.set(table, asModule(await compiled(table, readFileSync(join(root, table), "utf8"))));

/** The facts over a changed table, read anew: the first that is broken, or nothing. Those that name the row come first. */
async function noticed(mutation: Mutation | undefined): Promise<string> {
  try {
    const scripts = new Map(unchanged);
    if (mutation !== undefined) {
      const lines = readFileSync(join(root, mutation.table), "utf8").split("\n");
      lines[mutation.line] = mutation.now;
      scripts.set(mutation.table, asModule(await compiled(mutation.table, lines.join("\n"))));
    }
    const loaded = new Map<string, unknown>();
    const { SAFETY_FACTS } = run(library, (name) => {
      const script = scripts.get(name);
      if (script === undefined) return require(name);
      if (!loaded.has(name)) loaded.set(name, run(script, require));
      return loaded.get(name);
    }) as { SAFETY_FACTS: readonly SafetyFact[] };
    const key = /(?:formula|code|metal): "([^"]+)"|\w*\("([^"]+)"/.exec(mutation?.was ?? "");
    const name = key?.[1] ?? key?.[2] ?? " ";
    const sorted = [...SAFETY_FACTS].sort((a, b) => Number(b.fact.includes(name)) - Number(a.fact.includes(name)));
    const first = sorted.find((one) => {
      try {
        return one.broken() !== undefined;
      } catch {
        return true;
      }
    });
    return first?.fact ?? "";
  } catch {
    return "the tables could not be read any more";
  }
}

const clean = await noticed(undefined);
if (clean !== "") throw new Error(`a fact is broken without any change: ${clean}`);
const byTable = new Map<string, { all: number; noticed: number }>();
for (const mutation of mutations) {
  const count = byTable.get(mutation.table) ?? { all: 0, noticed: 0 };
  const by = await noticed(mutation);
  byTable.set(mutation.table, { all: count.all + 1, noticed: count.noticed + (by === "" ? 0 : 1) });
  if (by === "")
    console.log(
      `SURVIVES ${mutation.table}:${mutation.line + 1} ${mutation.kind}: ${mutation.was.trim().slice(0, 110)}`,
    );
}
for (const [table, { all, noticed: seen }] of byTable) console.log(`${seen} of ${all} noticed: ${table}`);
const [seen, all] = [...byTable.values()].reduce(([a, b], one) => [a + one.noticed, b + one.all], [0, 0]);
console.log(`${seen} of ${all} changes noticed (${((100 * seen) / all).toFixed(1)} %)`);
