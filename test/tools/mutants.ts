// Mutation testing on a sample of lines: each small fault put into the code should make a test fail.
//
//   npm run mutants -- [lines of each layer, 20] [seed] [layer ...]
//
// All faults would take days, so lines are drawn with a seed, which is printed. Not made are faults that span several lines, and
// emptied texts: the wording of a message is free. What survives is printed to be looked at: a test is missing, or the fault
// changes nothing that can be seen, as where a fast way answers what the slow way answers too.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { seeded } from "./random";

const root = fileURLToPath(new URL("../..", import.meta.url));
const wanted = Number(process.argv[2] ?? 20);
const seed = Number(process.argv[3] ?? Date.now() % 1_000_000);
const named = process.argv.slice(4);
const layers =
  named.length > 0
    ? named
    : ["quantity", "formula", "equation", "ion", "hydrate", "aqueous", "solubility", "preparation", "sheet"];

/** Lines that say something to the machine: no comment, import, bare bracket or type. */
const SAYS = /[^\s)}\];,>]/;
const SILENT = /^\s*(\/\/|\/\*|\*|import |export (type |interface |\*)|readonly |type |interface |} from )/;

const linesOf = (layer: string): string[] =>
  readdirSync(join(root, "src", layer), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts") && !file.includes("data/"))
    .sort()
    .flatMap((file) =>
      readFileSync(join(root, "src", layer, file), "utf8")
        .split("\n")
        .flatMap((text, i) =>
          SAYS.test(text) && !SILENT.test(text) ? [`src/${layer}/${file.replaceAll("\\", "/")}:${i + 1}-${i + 1}`] : [],
        ),
    );

interface Mutant {
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly status: string;
  readonly location: { readonly start: { readonly line: number; readonly column: number } };
}
interface Count {
  readonly found: number;
  readonly all: number;
}

/** A test fails, does not end, or its file cannot be read. */
const FOUND = ["Killed", "Timeout", "RuntimeError"];

/** Put faults into lines of a layer, and count those that its tests find. */
function tried(layer: string, lines: readonly string[]): Count {
  const folder = mkdtempSync(join(tmpdir(), "mutants-"));
  const report = join(folder, "report.json");
  writeFileSync(
    join(folder, "config.json"),
    JSON.stringify({
      testRunner: "vitest",
      vitest: { configFile: "test/tools/mutants.vitest.ts", related: false },
      mutate: lines,
      mutator: { excludedMutations: ["StringLiteral"] },
      coverageAnalysis: "perTest",
      dryRunTimeoutMinutes: 60,
      // what runs once, when a module is read, would need a new process for each fault
      ignoreStatic: true,
      reporters: ["json"],
      jsonReporter: { fileName: report },
      concurrency: 1,
      tempDirName: join(folder, "copy"),
      ignorePatterns: ["docs/reference", "dist", "reports"],
      logLevel: "error",
    }),
  );
  const run = spawnSync("npx", ["stryker", "run", join(folder, "config.json")], {
    cwd: root,
    stdio: ["ignore", "ignore", "inherit"],
    env: { ...process.env, MUTANTS_OF: layer },
  });
  if (run.status !== 0) throw new Error(`the tests of ${layer} fail without a fault`);
  const { files } = JSON.parse(readFileSync(report, "utf8")) as {
    files: Record<string, { source: string; mutants: Mutant[] }>;
  };
  let [found, all] = [0, 0];
  for (const [file, { source, mutants }] of Object.entries(files))
    for (const { status, mutatorName, replacement, location } of mutants) {
      if (![...FOUND, "Survived", "NoCoverage"].includes(status)) continue;
      all += 1;
      if (FOUND.includes(status)) {
        found += 1;
        continue;
      }
      const { line, column } = location.start;
      console.log(`${status} ${file}:${line}:${column} ${mutatorName}`);
      console.log(`  - ${source.split("\n")[line - 1]!.trim()}\n  + ${(replacement ?? "").trim().slice(0, 120)}`);
    }
  rmSync(folder, { recursive: true });
  return { found, all };
}

const share = (name: string, { found, all }: Count): string =>
  `${name}: ${found} of ${all} found (${((100 * found) / all).toFixed(1)} %)`;

const random = seeded(seed);
console.log(`seed ${seed}`);
const counts = layers.map((layer) => {
  const lines = linesOf(layer);
  const drawn = new Set<string>();
  while (drawn.size < Math.min(wanted, lines.length)) drawn.add(lines[Math.floor(random() * lines.length)]!);
  const count = tried(layer, [...drawn]);
  console.log(`${share(layer, count)}, in ${drawn.size} of ${lines.length} lines`);
  return count;
});
const sum = (key: keyof Count): number => counts.reduce((total, count) => total + count[key], 0);
console.log(share("together", { found: sum("found"), all: sum("all") }));
