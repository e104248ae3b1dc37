// Are the safety facts worth anything? Every row of the safety tables is taken out, and every figure, hood and severity in
// them shifted, one at a time; each time the facts of ../data/safety-facts.ts are asked again. A change that no fact notices
// survives and is printed. `npx tsx test/tools/safety-mutations.ts [every]`: with 5 only every fifth change.
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

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
    to("severity lowered", was.replace('severity: "forbid"', 'severity: "warn"'));
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
const folder = mkdtempSync(join(tmpdir(), "safety-"));

/** The facts over a changed table, in a process of its own: the first that is broken, or nothing. */
async function noticed(mutation: Mutation | undefined): Promise<string> {
  const out = join(folder, "facts.cjs");
  await build({
    stdin: {
      contents: `import { SAFETY_FACTS } from "./test/data/safety-facts";
        const first = SAFETY_FACTS.find((one) => { try { return one.broken() !== undefined; } catch { return true; } });
        process.stdout.write(first?.fact ?? "");`,
      resolveDir: root,
      loader: "ts",
    },
    bundle: true,
    platform: "node",
    format: "cjs",
    logLevel: "silent",
    outfile: out,
    plugins: [
      {
        name: "mutate",
        setup: ({ onLoad }) => {
          onLoad({ filter: /\/data\/[\w-]+\.ts$/ }, ({ path }) => {
            if (mutation === undefined || path !== join(root, mutation.table)) return undefined;
            const lines = readFileSync(path, "utf8").split("\n");
            lines[mutation.line] = mutation.now;
            return { contents: lines.join("\n"), loader: "ts" };
          });
        },
      },
    ],
  });
  try {
    return execFileSync(process.execPath, [out], {
      encoding: "utf8",
      timeout: 60_000,
      stdio: ["ignore", "pipe", "ignore"],
    });
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
rmSync(folder, { recursive: true });
for (const [table, { all, noticed: seen }] of byTable) console.log(`${seen} of ${all} noticed: ${table}`);
const [seen, all] = [...byTable.values()].reduce(([a, b], one) => [a + one.noticed, b + one.all], [0, 0]);
console.log(`${seen} of ${all} changes noticed (${((100 * seen) / all).toFixed(1)} %)`);
