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

vi.mock("preparative", async (original) => {
  const all = (await original()) as Record<string, unknown>;
  const wrapped = Object.entries(all).map(([name, value]) => {
    if (typeof value !== "function" || !/^[a-z]/.test(name)) return [name, value];
    const watched = (...given: unknown[]): unknown => {
      const answer = (value as (...args: unknown[]) => unknown)(...given);
      if (typeof answer === "object" && answer !== null && !Array.isArray(answer)) printed.set(name, String(answer));
      return answer;
    };
    return [name, watched];
  });
  return Object.fromEntries(wrapped);
});

const root = fileURLToPath(new URL("../..", import.meta.url)).replace(/[\\/]$/, "");
const folder = join(root, "test", ".examples", "printing");

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
});
