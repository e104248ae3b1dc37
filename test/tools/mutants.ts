// Mutation testing on a sample of lines: each small fault put into the code should make a test fail.
//
//   npm run mutants -- [lines of each layer, 20] [seed] [layer ...]
//
// Lines are drawn with a seed, which is printed; a part of a layer is named by its folder or file, as in solubility/curves, and
// the parts of one layer share the run without a fault, which takes minutes for preparation. Not made are faults that span
// several lines, and emptied texts: the wording of a message is free. The tests of the layer's own folder look for them;
// MUTANTS_TESTS="laws,published" names other folders. What survives is printed to be looked at: a test is missing, or the fault
// changes nothing that can be seen, and is listed with its reason in equivalent-mutants.ts, which is taken out of the count.
import { type ChildProcess, fork } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { Instrumenter } from "@stryker-mutator/instrumenter";
import { build } from "esbuild";
import { equivalent } from "./equivalent-mutants";
import { seeded } from "./random";

const root = fileURLToPath(new URL("../..", import.meta.url));
const wanted = Number(process.argv[2] ?? 20);
const seed = Number(process.argv[3] ?? Date.now() % 1_000_000);
const named = process.argv.slice(4);
const layers =
  named.length > 0
    ? named
    : [
        "foundation",
        "quantity",
        "formula",
        "equation",
        "ion",
        "hydrate",
        "aqueous",
        "solubility",
        "preparation",
        "sheet",
      ];

/** Lines that say something to the machine: no comment, import, bare bracket or type. */
const SAYS = /[^\s)}\];,>]/;
const SILENT = /^\s*(\/\/|\/\*|\*|import |export (type |interface |\*)|readonly |type |interface |} from )/;

const filesIn = (folder: string, wants: (file: string) => boolean): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter(wants)
    .sort()
    .map((file) => join(root, folder, file));

/** A test file that waits as it is read cannot be part of one script. */
const WAITS = /^(const .* = )?await /m;

/** Milliseconds of a test file that is asked only for the tests which meet a fault. */
const LONG = 5000;

/** A fault: one expression of one line written otherwise. */
interface Fault {
  readonly id: string;
  readonly file: string;
  readonly line: number;
  readonly text: string;
  readonly replacement: string;
}

/** The layer with the faults of the drawn lines in it, switched off: the others run as they are, and so do the tests that meet them. */
async function withFaults(
  layer: string,
  draw: (lines: readonly string[]) => ReadonlySet<string>,
): Promise<{ code: ReadonlyMap<string, string>; faults: Fault[]; lines: readonly string[]; drawn: readonly string[] }> {
  const silent = { debug() {}, info() {}, warn() {}, error: console.error, isDebugEnabled: () => false };
  const sources = filesIn(join("src", layer), (file) => file.endsWith(".ts") && !file.includes("data/")).map(
    (name) => ({ name, content: readFileSync(name, "utf8") }),
  );
  const texts = new Map(sources.map(({ name, content }) => [name, content.split("\n")]));
  const says = (text: string): boolean => SAYS.test(text) && !SILENT.test(text);
  const place = (name: string, at: number): string => `${relative(join(root, "src"), name)}:${at + 1}`;
  const lines = [...texts].flatMap(([name, content]) =>
    content.flatMap((text, at) => (says(text) ? [place(name, at)] : [])),
  );
  const drawn = draw(lines);
  const asked = sources
    .map(({ name, content }) => ({
      name,
      content,
      mutate: texts
        .get(name)!
        .flatMap((text, line) =>
          drawn.has(place(name, line)) ? [{ start: { line, column: 0 }, end: { line, column: text.length } }] : [],
        ),
    }))
    .filter(({ mutate }) => mutate.length > 0);
  const { files, mutants } = await new Instrumenter(silent as never).instrument(asked, {
    plugins: null,
    excludedMutations: ["StringLiteral"],
    ignorers: [],
  });
  const faults = mutants
    .filter(({ status, location: { start, end } }) => status !== "Ignored" && start.line === end.line)
    .map(({ id, fileName, location: { start }, replacement }) => ({
      id,
      file: relative(join(root, "src"), fileName),
      line: start.line + 1,
      text: texts.get(fileName)![start.line]!,
      replacement: (replacement ?? "").replace(/\s+/g, " ").trim(),
    }));
  return {
    code: new Map(files.map(({ name, content }) => [name, content])),
    faults,
    lines,
    drawn: [...drawn],
  };
}

/** Where it is looked up which test meets a fault each test starts without answers: one that would be given them meets their faults too. */
const forgetful = (path: string, text: string): string =>
  path.endsWith("foundation/memo.ts")
    ? text.replace("if (answers.size >= most)", "globalThis.__answers__?.add(answers);\n  $&")
    : text;

/** Library and tests in one script; the library is read whole before the first test. */
async function bundled(code: ReadonlyMap<string, string>, tests: readonly string[], outfile: string): Promise<void> {
  const entries = tests.map(
    (file) => `${JSON.stringify(relative(root, file))}: () => require(${JSON.stringify(file)}),`,
  );
  await build({
    stdin: {
      contents: `import * as all from "preparative";\nglobalThis.__library__ = all;\nexport const files = {${entries.join("\n")}};`,
      resolveDir: root,
      loader: "ts",
    },
    bundle: true,
    format: "cjs",
    platform: "node",
    target: "node20",
    outfile,
    logLevel: "error",
    external: ["typescript", "fast-check", "decimal.js", "fraction.js"],
    plugins: [
      {
        name: "faults",
        setup({ onResolve, onLoad }) {
          onResolve({ filter: /^vitest$/ }, () => ({ path: "vitest", namespace: "stand-in" }));
          onLoad({ filter: /.*/, namespace: "stand-in" }, () => ({
            contents:
              "export const { describe, it, test, expect, beforeAll, beforeEach, afterAll, afterEach, expectTypeOf } = globalThis.__tests__;",
          }));
          onResolve({ filter: /^preparative$/ }, () => ({ path: join(root, "src/index.ts") }));
          onResolve({ filter: /^preparative\// }, ({ path }) => ({
            path: join(root, "src", path.slice("preparative/".length), "index.ts"),
          }));
          onLoad({ filter: /\.ts$/ }, ({ path }) => ({
            contents: forgetful(path, code.get(path) ?? readFileSync(path, "utf8")).replaceAll(
              "import.meta.url",
              JSON.stringify(`file://${path}`),
            ),
            loader: "ts",
          }));
        },
      },
    ],
  });
}

interface TestFile {
  readonly met: Readonly<Record<string, readonly string[]>>;
  readonly bad: readonly number[];
  /** Milliseconds of each test. */
  readonly each: readonly number[];
  readonly milliseconds: number;
}
interface DryRun {
  readonly fixed: readonly string[];
  readonly files: Readonly<Record<string, TestFile>>;
  readonly failing: readonly string[];
}

/** Another process, made anew where a fault keeps it running or breaks it. */
class Runner {
  private child: ChildProcess | undefined;

  constructor(private readonly bundle: string) {}

  /** The answer, or nothing where there is none in time. */
  ask<T>(message: object, milliseconds: number): Promise<T | undefined> {
    const worker = fileURLToPath(new URL("./mutants.worker.mjs", import.meta.url));
    this.child ??= fork(worker, [root, this.bundle], {
      execArgv: ["--max-old-space-size=2500"],
      stdio: ["ignore", "ignore", "inherit", "ipc"],
    });
    const { child } = this;
    return new Promise((answer) => {
      const end = (value: T | undefined): void => {
        clearTimeout(timer);
        child.removeAllListeners();
        if (value === undefined) this.stop();
        answer(value);
      };
      const timer = setTimeout(() => end(undefined), milliseconds);
      child.once("message", (value) => end(value as T));
      child.once("exit", () => end(undefined));
      child.send(message);
    });
  }

  stop(): void {
    this.child?.removeAllListeners();
    this.child?.kill("SIGKILL");
    this.child = undefined;
  }
}

interface Count {
  readonly found: number;
  readonly all: number;
  readonly equal: number;
}

/** Put faults into lines of a layer or of parts of it, and count those that its tests find. */
async function tried(layer: string, parts: readonly string[], random: () => number): Promise<Count[]> {
  const isIn = (part: string, place: string): boolean =>
    /^[/:]/.test(place.slice(part.length)) && place.startsWith(part);
  const { code, faults, lines, drawn } = await withFaults(layer, (all) => {
    const some = new Set<string>();
    for (const part of parts) {
      const own = all.filter((place) => isIn(part, place));
      const most = some.size + Math.min(wanted, own.length);
      while (some.size < most) some.add(own[Math.floor(random() * own.length)]!);
    }
    return some;
  });
  const folders = [layer, ...(process.env["MUTANTS_TESTS"]?.split(",") ?? [])];
  const tests = [...new Set(folders)]
    .flatMap((folder) =>
      filesIn(join("test", folder), (file) => file.endsWith(".test.ts") && !file.endsWith(".slow.test.ts")),
    )
    .filter((file) => !WAITS.test(readFileSync(file, "utf8")));
  const folder = mkdtempSync(join(tmpdir(), "mutants-"));
  const runner = new Runner(join(folder, "bundle.cjs"));
  await bundled(code, tests, join(folder, "bundle.cjs"));
  const dry = await runner.ask<DryRun>({ names: tests.map((file) => relative(root, file)) }, 1_800_000);
  if (dry === undefined) throw new Error(`the tests of ${layer} do not end`);
  for (const failing of dry.failing) console.log(`fails without a fault, left out: ${failing.slice(0, 200)}`);
  const counts = parts.map((part) => ({ part, found: 0, all: 0, equal: 0 }));
  for (const fault of faults) {
    const count = counts.find(({ part }) => isIn(part, `${fault.file}:${fault.line}`))!;
    const plan = Object.entries(dry.files)
      .map(([file, { met, bad, each, milliseconds }]) => {
        const first = Object.keys(met).filter((test) => met[test]!.includes(fault.id));
        return {
          file,
          bad,
          // the others may find by what is kept of an answer; where that takes long it is left out: fewer are found, never more
          rest: milliseconds < LONG,
          milliseconds,
          isMet: first.length > 0,
          first: first
            .map(Number)
            .filter((at) => at >= 0)
            .sort((a, b) => each[a]! - each[b]!),
        };
      })
      .filter(({ isMet }) => isMet)
      .sort((a, b) => a.milliseconds - b.milliseconds);
    // what runs once, when a module is read, is of no test
    if (plan.length === 0 && dry.fixed.includes(fault.id)) continue;
    if (equivalent(fault.file, fault.text, fault.replacement)) {
      count.equal += 1;
      continue;
    }
    count.all += 1;
    const time = plan.reduce((total, { milliseconds }) => total + milliseconds, 0);
    const answer =
      plan.length === 0
        ? { by: undefined }
        : await runner.ask<{ by?: string }>({ id: fault.id, plan }, 10_000 + 5 * time);
    if (answer === undefined || answer.by !== undefined) count.found += 1;
    else {
      console.log(`${plan.length === 0 ? "not met" : "survived"} src/${fault.file}:${fault.line}`);
      console.log(`  - ${fault.text.trim()}\n  + ${fault.replacement.slice(0, 160)}`);
    }
  }
  runner.stop();
  rmSync(folder, { recursive: true });
  for (const count of counts) {
    const here = (places: readonly string[]): number => places.filter((place) => isIn(count.part, place)).length;
    console.log(`${share(count.part, count)}, in ${here(drawn)} of ${here(lines)} lines`);
  }
  return counts;
}

const share = (name: string, { found, all, equal }: Count): string =>
  `${name}: ${found} of ${all} found (${((100 * found) / Math.max(all, 1)).toFixed(1)} %), ${equal} more known to change nothing`;

const random = seeded(seed);
console.log(`seed ${seed}`);
const counts: Count[] = [];
for (const layer of new Set(layers.map((part) => part.split("/")[0]!)))
  counts.push(
    ...(await tried(
      layer,
      layers.filter((part) => part.split("/")[0] === layer),
      random,
    )),
  );
const sum = (key: keyof Count): number => counts.reduce((total, count) => total + count[key], 0);
console.log(share("together", { found: sum("found"), all: sum("all"), equal: sum("equal") }));
