// The build. The large tables of `src/*/data` are written as rows and built as text, which is taken apart on first
// use: fewer bytes, and an import that does not compile what nobody asks.
import { readFile } from "node:fs/promises";
import { isDeepStrictEqual } from "node:util";
import { deflateRawSync } from "node:zlib";
import { build, type Plugin } from "esbuild";
import { defineConfig } from "tsup";

type Row = Readonly<Record<string, unknown>>;

/** Separators of cells, the first that no cell has. */
const SEPARATORS = ["|", "~", "\t"];

/** A line of cells, its head first: how its cells are written, and the name of the column. */
type Line = readonly [head: string, ...cells: string[]];

/** A text that can stand as it is; `!` is the mark of JSON. */
const isText = (cell: unknown): boolean => typeof cell === "string" && /^[^!\n][^\n]*$/.test(cell);
const isNumber = (cell: unknown): boolean => typeof cell === "number" && Number.isFinite(cell) && !Object.is(cell, -0);
const isRecord = (cell: unknown): boolean => typeof cell === "object" && cell !== null;
/** A list of more than texts or numbers may be a row without names, such as a point of a curve. */
const isTuple = (cell: unknown): boolean =>
  Array.isArray(cell) && cell.length > 0 && new Set(cell.map((one) => typeof one)).size > 1;

/** Short lists, such as the points of a line: the first of each may be better off beside the other firsts. */
const areShort = (cells: readonly unknown[][]): boolean =>
  cells.length > 1 && cells.every((cell) => cell.length >= 2 && cell.length <= 4 && !cell.includes(undefined));

/** The lines of rows: those of each column after another. */
function linesOfRows(rows: readonly Row[]): Map<string, readonly Line[]> {
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  return new Map(
    names.map((name) => [
      name,
      linesOf(
        name,
        rows.map((row) => row[name]),
      ),
    ]),
  );
}

/**
 * The lines of a column: texts and numbers as they are, lists as their lengths and a column of all their items, records as a mark
 * where there is one and their columns; the rest as JSON. What is absent is empty.
 */
function linesOf(name: string, cells: readonly unknown[]): readonly Line[] {
  const there = cells.filter((cell) => cell !== undefined);
  const line = (kind: string, text: (cell: never) => string): Line => [
    `${kind}${name}`,
    ...cells.map((cell) => (cell === undefined ? "" : text(cell as never))),
  ];
  if (there.every(isText)) return [line("", (cell: string) => cell)];
  if (there.every(isNumber)) return [line("#", (cell: number) => String(cell))];
  const asRows = (shape: string): readonly Line[] => {
    const columns = linesOfRows(there as Row[]);
    const head = `${shape}${columns.size} `;
    return [
      there.length === cells.length ? [`${head}${name}`] : line(head, () => "1"),
      ...[...columns.values()].flat(),
    ];
  };
  if (there.every(isTuple)) return asRows("[");
  if (there.every((cell) => isRecord(cell) && !Array.isArray(cell))) return asRows("{");
  if (there.every((cell) => Array.isArray(cell))) {
    const asItems = [line("*", (cell: unknown[]) => String(cell.length)), ...linesOf("", there.flat())];
    return areShort(there)
      ? smallest([asItems, asRows("[")], (lines) => lines.map((one) => textOf(one, "|")).join("\n"))
      : asItems;
  }
  return [line("", (cell) => (isText(cell) ? cell : `!${JSON.stringify(cell)}`))];
}

/**
 * Rows as text: what stands before the columns, which is the shape of a row, the separator and how many rows there are, and the
 * lines of each column. By columns, because like stands beside like, which compresses better than rows do, and because a program
 * may need some of them only.
 */
export function packed(rows: readonly object[]): {
  readonly head: string;
  readonly columns: ReadonlyMap<string, string>;
} {
  const columns = [...linesOfRows(rows as readonly Row[])];
  const separator = SEPARATORS.find(
    (one) => !columns.some(([, lines]) => lines.flat().some((cell) => cell.includes(one))),
  );
  if (separator === undefined) throw new Error("a table has all separators in its cells");
  return {
    head: `${Array.isArray(rows[0]) ? "[" : "{"}${separator}${rows.length}`,
    columns: new Map(columns.map(([name, lines]) => [name, lines.map((line) => textOf(line, separator)).join("\n")])),
  };
}

/** Most kinds of cells that one letter each can tell apart. */
const MOST_KINDS = 75;

/** A column of few kinds of cells: the kinds, the most frequent first, and a letter a cell; the backslash is no letter. */
function asKinds([head, ...cells]: Line): Line | undefined {
  const counts = new Map<string, number>();
  for (const cell of cells) counts.set(cell, (counts.get(cell) ?? 0) + 1);
  if (counts.size > MOST_KINDS || counts.size > cells.length / 2) return undefined;
  const kinds = [...counts.keys()].sort((a, b) => counts.get(b)! - counts.get(a)!);
  const letters = new Map(kinds.map((kind, i) => [kind, String.fromCharCode(48 + i + Number(i > 43))]));
  return [`=${head}`, ...kinds, cells.map((cell) => letters.get(cell)).join("")];
}

/** A decimal, and what may follow it: its uncertainty or its power of ten. */
const DECIMAL = /^(-?)(0|[1-9]\d*)(?:\.(\d+))?((?:[(e].*)?)$/;

/**
 * A column of decimals: by how much each differs from the one before, in its own last place. A letter in front tells how many
 * places there are from there on: `b15` after `1.1` is `2.60`.
 */
function asSteps([head, ...cells]: Line): Line | undefined {
  let last = 0;
  let places = 0;
  const steps: string[] = [];
  for (const cell of cells) {
    if (cell === "") {
      steps.push("");
      continue;
    }
    const [, sign, whole = "", fraction = "", rest = ""] = DECIMAL.exec(cell) ?? [];
    const digits = Number(`${sign}${whole}${fraction}`);
    if (sign === undefined || Object.is(digits, -0)) return undefined;
    const more = fraction.length - places;
    const letter = more === 0 ? "" : String.fromCharCode(96 + fraction.length);
    // no negative power: what engines make of it differs in the last place
    last = more < 0 ? Math.trunc(last / 10 ** -more) : last * 10 ** more;
    places = fraction.length;
    if (Math.max(Math.abs(last), Math.abs(digits)) > 1e15) return undefined;
    steps.push(`${letter}${digits - last}${rest === "" ? "" : "_"}${rest}`);
    last = digits;
  }
  return [`+${head}`, ...steps];
}

/** The text of a line, in whichever way compresses best. */
function textOf(line: Line, separator: string): string {
  const ways = [line, asKinds(line), asSteps(line)].flatMap((way) => (way === undefined ? [] : [way.join(separator)]));
  return smallest(ways, String);
}

/** The first of those whose text compresses best. */
function smallest<T>(ways: readonly T[], textOfWay: (way: T) => string): T {
  const sizes = ways.map((way) => deflateRawSync(textOfWay(way)).length);
  return ways[sizes.indexOf(Math.min(...sizes))]!;
}

/** The opposite, as text of the module that every packed table loads. */
export const UNPACK = `export function unpack(head, ...columns) {
  const lines = columns.flatMap((text) => text.split("\\n")).reverse();
  const rowsOf = (shape, count, width) => {
    const rows = Array.from({ length: count }, () => (shape === "[" ? [] : {}));
    for (let c = 0; c < width; c += 1) {
      const [name, cells] = column(count);
      for (let i = 0; i < count; i += 1) if (cells[i] !== undefined) rows[i][name] = cells[i];
    }
    return rows;
  };
  const column = (count) => {
    const cells = lines.pop().split(head[1]);
    const [, way, kind, width, name] = /^([=+]?)([#*{[]?)(?:(\\d+) )?(.*)/.exec(cells.shift());
    const letters = way === "=" ? cells.pop() : undefined;
    if (way === "+") {
      let last = 0;
      let places = 0;
      for (let i = 0; i < cells.length; i += 1) {
        let cell = cells[i];
        if (cell === "") continue;
        const letter = cell.charCodeAt(0) - 96;
        if (letter >= 0) {
          last = letter < places ? Math.trunc(last / 10 ** (places - letter)) : last * 10 ** (letter - places);
          places = letter;
          cell = cell.slice(1);
        }
        const at = cell.indexOf("_");
        last += parseFloat(cell);
        cells[i] = (last / 10 ** places).toFixed(places) + (at < 0 ? "" : cell.slice(at + 1));
      }
    }
    const each = (read) => {
      const there = cells.map((cell) => (cell === "" ? undefined : read(cell)));
      if (letters === undefined) return there;
      const all = [];
      for (let i = 0; i < letters.length; i += 1) {
        const letter = letters.charCodeAt(i) - 48;
        all.push(there[letter > 43 ? letter - 1 : letter]);
      }
      return all;
    };
    if (kind === "#") return [name, each(Number)];
    if (kind === "") return [name, each((cell) => (cell.charCodeAt(0) === 33 ? JSON.parse(cell.slice(1)) : cell))];
    const there = each(Number);
    const sum = there.reduce((a, b) => a + (b ?? 0), 0);
    let at = 0;
    if (kind === "*") {
      const [, items] = column(sum);
      return [name, there.map((size) => size === undefined ? size : items.slice(at, (at += size)))];
    }
    if (there.length === 0) return [name, rowsOf(kind, count, width)];
    const rows = rowsOf(kind, sum, width);
    return [name, there.map((one) => one && rows[at++])];
  };
  return rowsOf(head[0], +head.slice(2), columns.length);
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

const CONSTANT =
  /^((?:export )?const \w+(?:: [^=]+?)? = )([{[](?:.*(?=;$)|(?:.*(?<!;)\n)(?:(?: .*)?\n)*\S.*(?=;$)));$/gm;
const SPREAD = /[{[,]\s*\.\.\./;

/**
 * Records and lists with a spread, made in a call that is marked pure: a bundler keeps a spread whether or not anybody uses it,
 * and all that it spreads with it.
 */
export function withRemovableSpreads(source: string): string {
  return source.replace(CONSTANT, (whole, start: string, value: string) =>
    SPREAD.test(value) ? `${start}/* @__PURE__ */ (() => (${value}))();` : whole,
  );
}

const ERROR_CLASS = /^(export class (\w+) extends [^{]*\{)\}$/gm;

/** Error classes that say their name themselves: consoles ask the class, and a minifier renames it. */
export function withNamedErrors(source: string): string {
  return source.replace(ERROR_CLASS, '$1 static get name(): string { return "$2"; } }');
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
        ? withRemovableSpreads(await withPackedTables(path, source))
        : withNamedErrors(withRemovableClasses(withRemovableSpreads(source)));
      return { contents, loader: "ts" };
    });
  },
};

/** Files with a chunk of their own, for a reason that each of them tells. */
export const OWN_CHUNKS = ["src/quantity/value/decimal.ts"];

/**
 * How the ES modules are shortened: a good part of the time of an import is the reading of names. Spaces stay: without them
 * the marks of pure calls go as well, and nothing of a layer could be left out of a program.
 */
export const SHORTENED = { minifyIdentifiers: true } as const;

export default defineConfig({
  entry: ["src/index.ts", "src/*/index.ts", ...OWN_CHUNKS],
  format: ["esm", "cjs"],
  dts: true,
  splitting: true,
  clean: true,
  target: "es2022",
  treeshake: false,
  esbuildOptions(options, { format }) {
    if (format === "esm") Object.assign(options, SHORTENED);
  },
  esbuildPlugins: [asBuilt],
});
