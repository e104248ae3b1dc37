// Every table of every layer, as the tests look through them: `src/<layer>/data/`, citations apart. A large table is a function
// which makes it on first use.
import { existsSync, readdirSync, readFileSync } from "node:fs";

const src = new URL("../../src/", import.meta.url);

/** A table of some columns of another, which is the other again. */
const SELECTION = /^export const (\w+) = \/\* @__PURE__ \*\/ columns\(/gm;

/** One exported table. */
export interface Table {
  readonly layer: string;
  readonly file: string;
  readonly name: string;
  readonly rows: unknown;
  /** Made on first use, by a function; the build writes it as text. */
  readonly large: boolean;
}

/** The tables of the named layers, or of all. */
export async function tablesOf(...layers: readonly string[]): Promise<Table[]> {
  const found: Table[] = [];
  for (const layer of layers.length > 0 ? layers : readdirSync(src)) {
    const folder = new URL(`${layer}/data/`, src);
    if (!existsSync(folder)) continue;
    for (const file of readdirSync(folder).filter((name) => name.endsWith(".ts") && name !== "sources.ts")) {
      // a pattern that a bundler follows too: mutation testing reads the tests as one script
      const module = (await import(/* @vite-ignore */ `../../src/${layer}/data/${file}`)) as Record<string, unknown>;
      const selections = new Set(
        Array.from(readFileSync(new URL(file, folder), "utf8").matchAll(SELECTION), ([, name]) => name),
      );
      for (const [name, table] of Object.entries(module).filter(([key]) => !selections.has(key)))
        found.push(
          typeof table === "function"
            ? { layer, file, name, rows: (table as () => unknown)(), large: true }
            : { layer, file, name, rows: table, large: false },
        );
    }
  }
  return found;
}
