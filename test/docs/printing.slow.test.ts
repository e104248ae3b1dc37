// Every answer prints itself: what the functions of the examples give, as text, is lines for a person and not the name of a
// kind of object.
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, it, vi } from "vitest";
import { examplesOf, toModule } from "../tools/examples";

/** Functions whose answers are data for other functions - requests, ledgers, records - or pairs `{ ok, ... }` of a `try…` function. */
const DATA =
  /^(?:try[A-Z]|attempt$|source$|imbalance$|shelfMaterialOf$|lotAsMaterial$|withLearned$|meansOfPairedReadings$|withCorrelation$|openStock$|receive|issue|stocktake$|stockFromJSON$)/;

const printed = vi.hoisted(() => new Map<string, string>());
const silent = vi.hoisted(() => new Set<string>());

/** Records inside an answer, as deep as a person looks. */
const inside = vi.hoisted(() => {
  const walked = new WeakSet<object>();
  return function walk(value: unknown, path: string, depth: number): void {
    if (typeof value !== "object" || value === null || depth > 5 || walked.has(value)) return;
    walked.add(value);
    if (Array.isArray(value)) for (const item of value) walk(item, `${path}[]`, depth + 1);
    else {
      if (depth > 0 && String(value).startsWith("[object")) silent.add(path);
      for (const [field, held] of Object.entries(value)) walk(held, `${path}.${field}`, depth + 1);
    }
  };
});

vi.mock("preparative", async (original) => {
  const all = (await original()) as Record<string, unknown>;
  const wrapped = Object.entries(all).map(([name, value]) => {
    if (typeof value !== "function" || !/^[a-z]/.test(name)) return [name, value];
    const watched = (...given: unknown[]): unknown => {
      const answer = (value as (...args: unknown[]) => unknown)(...given);
      if (typeof answer === "object" && answer !== null && !Array.isArray(answer)) printed.set(name, String(answer));
      inside(answer, name, 0);
      return answer;
    };
    return [name, watched];
  });
  return Object.fromEntries(wrapped);
});

const root = fileURLToPath(new URL("../..", import.meta.url)).replace(/[\\/]$/, "");
const folder = join(root, "test", ".examples-printing");

it("holds for the answers of all examples", { timeout: 60_000 }, async () => {
  const names = Object.keys(await vi.importActual<object>("preparative"));
  mkdirSync(folder, { recursive: true });
  vi.spyOn(console, "log").mockImplementation(() => undefined);
  try {
    for (const [i, example] of examplesOf(root).entries()) {
      const file = join(folder, `printing-${i}.ts`);
      writeFileSync(file, toModule(example, names));
      const { default: run } = (await import(/* @vite-ignore */ file)) as { default: (check: unknown) => unknown };
      await run(() => undefined);
    }
  } finally {
    vi.restoreAllMocks();
    rmSync(folder, { recursive: true, force: true });
  }
  const wrong = [...printed].filter(([name, text]) => !DATA.test(name) && (text === "" || text.includes("[object")));
  expect(wrong.map(([name]) => name)).toEqual([]);
  expect(printed.size).toBeGreaterThan(100);
  // Of a plan and a run each record says itself; what the caller wrote is the caller's.
  const inner = [...silent].filter((path) =>
    /^(?:planPreparation|evaluateRun|cautionsFor)(?!.*\.(?:request|observations))/.test(path),
  );
  expect(inner).toEqual([]);
});
