// The build. The large tables of `src/*/data` are written as rows and built as text, which is taken apart on first
// use: fewer bytes, and an import that does not compile what nobody asks.
import { readFile } from "node:fs/promises";
import { isDeepStrictEqual } from "node:util";
import { build, type Plugin } from "esbuild";
import { defineConfig } from "tsup";

type Row = Readonly<Record<string, unknown>>;

/** Separators of cells, the first that no cell has. */
const SEPARATORS = ["|", "~", "\t"];

/** Whether all present cells of a column are texts that stand for themselves. */
const isPlain = (cells: readonly unknown[]): boolean =>
  cells.every((cell) => cell === undefined || (typeof cell === "string" && cell !== "" && !cell.includes("\n")));

/**
 * Rows as text: what stands before the columns, which is the shape of a row and the separator, and a line for each column, its
 * name first (with `:` where cells are JSON); an absent cell is empty. By columns, because like stands beside like, which
 * compresses better than rows do, and because a program may need some of them only.
 */
export function packed(rows: readonly object[]): {
  readonly head: string;
  readonly columns: ReadonlyMap<string, string>;
} {
  const list = rows as readonly Row[];
  const columns = [...new Set(list.flatMap((row) => Object.keys(row)))].map((name) => {
    const cells = list.map((row) => row[name]);
    const plain = isPlain(cells);
    const text = (cell: unknown): string => (cell === undefined ? "" : plain ? (cell as string) : JSON.stringify(cell));
    return { name, cells: [plain ? name : `${name}:`, ...cells.map(text)] };
  });
  const separator = SEPARATORS.find((one) => !columns.some(({ cells }) => cells.some((cell) => cell.includes(one))));
  if (separator === undefined) throw new Error("a table has all separators in its cells");
  return {
    head: `${Array.isArray(rows[0]) ? "[" : "{"}${separator}`,
    columns: new Map(columns.map(({ name, cells }) => [name, cells.join(separator)])),
  };
}

/** The opposite, as text of the module that every packed table loads. */
export const UNPACK = `export function unpack([shape, separator], ...columns) {
  const rows = [];
  for (const text of columns) {
    const [name, ...cells] = text.split(separator);
    const json = name.endsWith(":");
    const column = json ? name.slice(0, -1) : name;
    cells.forEach((cell, i) => {
      rows[i] ??= shape === "[" ? [] : {};
      if (cell !== "") rows[i][column] = json ? JSON.parse(cell) : cell;
    });
  }
  return rows;
}`;

const MODULE = "tables:unpack";
const TABLE = /^export const (\w+) = \/\* @__PURE__ \*\/ once\(\(\): readonly [\w<>]+\[\] => \[\n[\s\S]*?^\]\);$/gm;
const SELECTION = /^export const (\w+) = \/\* @__PURE__ \*\/ columns\((\w+), \[([^\]]*)\]\);$/gm;

/** What a module of tables exports, made from its source. */
async function exportsOf(path: string): Promise<Record<string, unknown>> {
  const { outputFiles } = await build({
    entryPoints: [path],
    bundle: true,
    format: "esm",
    write: false,
    logLevel: "error",
  });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0]!.contents).toString("base64")}`);
}

/** A file of tables with its rows as text; stops the build where the text would not give the same rows. */
export async function withPackedTables(path: string, source: string): Promise<string> {
  if (source.search(TABLE) < 0) return source;
  const made = await exportsOf(path);
  const { unpack } = (await import(`data:text/javascript,${encodeURIComponent(UNPACK)}`)) as {
    unpack(head: string, ...columns: string[]): object[];
  };
  const rowsOf = (name: string): readonly object[] => (made[name] as () => readonly object[])();
  const texts = new Map<string, ReturnType<typeof packed>>();
  /** A table of some columns, each of which is a constant by itself. */
  const tableOf = (name: string, from: string, columns: readonly string[]): string => {
    const { head, columns: text } = texts.get(from)!;
    if (!isDeepStrictEqual(unpack(head, ...columns.map((column) => text.get(column)!)), rowsOf(name)))
      throw new Error(`${name} of ${path} does not read back from its text`);
    const constants = columns.map((column) => `${from}_${column}`);
    return `export const ${name}: any = /* @__PURE__ */ once(() => unpack(${[JSON.stringify(head), ...constants].join(", ")}));`;
  };
  const code = source
    .replace(TABLE, (_, name: string) => {
      const text = packed(rowsOf(name));
      texts.set(name, text);
      const constants = [...text.columns].map(
        ([column, cells]) => `const ${name}_${column} = ${JSON.stringify(cells)};`,
      );
      return [...constants, tableOf(name, name, [...text.columns.keys()])].join("\n");
    })
    .replace(SELECTION, (_, name: string, from: string, names: string) =>
      tableOf(name, from, [...names.matchAll(/\w+/g)].map(String)),
    );
  return `import { unpack } from "${MODULE}";\n${code}`;
}

const CLASS = /^(export )?((?:abstract )?class (\w+)[\s\S]*?^\})$/gm;

/**
 * Classes made in a call that is marked pure. A bundler keeps a class whose members have computed names, such as a symbol of
 * ours, whether or not anybody uses it, and all that the class uses with it.
 */
export function withRemovableClasses(source: string): string {
  return source.replace(CLASS, (whole, exported: string | undefined, body: string, name: string) =>
    /^ {2}(?:static |readonly |get )*\[[A-Z]+\]/m.test(body)
      ? `${exported ?? ""}const ${name}: any = /* @__PURE__ */ (() => {\n${body}\nreturn ${name};\n})();`
      : whole,
  );
}

/** The plugin of the build. */
export const asBuilt: Plugin = {
  name: "tables as text, classes that can go",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: new RegExp(`^${MODULE}$`) }, () => ({ path: MODULE, namespace: "tables", sideEffects: false }));
    onLoad({ filter: /./, namespace: "tables" }, () => ({ contents: UNPACK, loader: "js" }));
    onLoad({ filter: /[\\/]src[\\/].*\.ts$/ }, async ({ path }) => {
      const source = await readFile(path, "utf8");
      const contents = /[\\/]data[\\/]/.test(path)
        ? await withPackedTables(path, source)
        : withRemovableClasses(source);
      return { contents, loader: "ts" };
    });
  },
};

/** Files with a chunk of their own, for a reason that each of them tells. */
export const OWN_CHUNKS = ["src/quantity/value/decimal.ts"];

export default defineConfig({
  entry: ["src/index.ts", "src/*/index.ts", ...OWN_CHUNKS],
  format: ["esm", "cjs"],
  dts: true,
  splitting: true,
  clean: true,
  target: "es2022",
  treeshake: false,
  esbuildPlugins: [asBuilt],
});
