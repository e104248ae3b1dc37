// Measuring without fooling ourselves: subject and anchors interleaved in one process, many distinct inputs, medians over
// several fresh processes, results as ratios. Prints date, commit, runtime and hardware.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { cpus } from "node:os";
import { dirname, join } from "node:path";
import { buildSync } from "esbuild";

/** Nanoseconds per item of each named task, measured interleaved. */
export function interleaved(
  tasks: Readonly<Record<string, () => unknown>>,
  items: number,
  rounds = 15,
): Record<string, number> {
  const names = Object.keys(tasks);
  const times: Record<string, number[]> = Object.fromEntries(names.map((name) => [name, []]));
  for (let warm = 0; warm < 3; warm++) for (const name of names) tasks[name]!();
  for (let round = 0; round < rounds; round++) {
    for (const name of names) {
      const start = process.hrtime.bigint();
      tasks[name]!();
      times[name]!.push(Number(process.hrtime.bigint() - start) / items);
    }
  }
  return Object.fromEntries(names.map((name) => [name, median(times[name]!)]));
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/**
 * Run `measure` in `processes` fresh processes and return the median of each figure it gives.
 * Call it as the whole body of a bench file; the child processes run the same file.
 */
export function inFreshProcesses(
  file: string,
  measure: () => Record<string, number>,
  processes = 5,
): Record<string, number> | undefined {
  if (process.env["PREPARATIVE_BENCH_CHILD"] === "1") {
    console.log(JSON.stringify(measure()));
    return undefined;
  }
  // Bundled as a user's program would be: a loader that compiles on the fly wraps every closure, and that is measured too.
  const bundle = join(mkdtempSync(join(dirname(file), "../node_modules/.bench-")), "bench.mjs");
  buildSync({
    entryPoints: [file],
    outfile: bundle,
    bundle: true,
    platform: "node",
    format: "esm",
    external: ["esbuild"],
    logLevel: "error",
  });
  const runs = Array.from({ length: processes }, () => {
    const env = { ...process.env, PREPARATIVE_BENCH_CHILD: "1" };
    const out = execFileSync(process.execPath, [bundle], { env, encoding: "utf8" });
    return JSON.parse(out.trim().split("\n").pop()!) as Record<string, number>;
  });
  rmSync(dirname(bundle), { recursive: true, force: true });
  return Object.fromEntries(Object.keys(runs[0]!).map((name) => [name, median(runs.map((run) => run[name]!))]));
}

export function heading(title: string): void {
  const commit = execFileSync("git", ["rev-parse", "--short", "HEAD"], { encoding: "utf8" }).trim();
  const { model } = cpus()[0]!;
  console.log(
    `${title}\n${new Date().toISOString().slice(0, 10)}, commit ${commit}, node ${process.version}, ${cpus().length} x ${model}`,
  );
}

/** One line of a report: a figure, and the line it must hold, if any. */
export function line(name: string, value: number, unit: string, limit?: number): void {
  const verdict = limit === undefined ? "" : value <= limit ? `  holds (<= ${limit})` : `  MISSED (<= ${limit})`;
  console.log(`  ${name.padEnd(58)} ${value.toFixed(value < 10 ? 2 : 0).padStart(9)} ${unit}${verdict}`);
  if (limit !== undefined && value > limit) process.exitCode = 1;
}
